"""The morning check-in, by buttons and in one line, as the athlete lives it."""

from __future__ import annotations

from datetime import timedelta

import pytest
from sqlalchemy import Engine
from sqlmodel import col, select

from bot.checkin import words
from bot.checkin.flow import IN_NOTE
from bot.core.turn import Kind
from bot.store.tables.people import OpenQuestion
from bot.store.tables.week import CheckInRow, DecisionRow, DecisionStatus
from bot.week.load import checkin_row, day_set
from bot.words.common import something_off_button
from engine.decision.decide import case_from_dict, decide, decision_as_dict
from tests.support.weeks import Team, in_peak_week, onboarded
from tests.support.world import text_of


def decisions(team: Team) -> list[DecisionRow]:
    with team.world.session() as session:
        return list(session.exec(select(DecisionRow).order_by(col(DecisionRow.id))))


def checkins(team: Team) -> list[CheckInRow]:
    with team.world.session() as session:
        return list(session.exec(select(CheckInRow).order_by(col(CheckInRow.id))))


def draft(team: Team) -> OpenQuestion:
    with team.world.session() as session:
        query = select(OpenQuestion).where(
            OpenQuestion.flow == "checkin", col(OpenQuestion.closed_at).is_(None)
        )
        return session.exec(query).one()


def given(question: OpenQuestion) -> dict[str, object]:
    """The answers told so far, without what is laid in beside them."""
    return {key: value for key, value in question.answers.items() if not key.startswith("_")}


def answered_by_buttons(team: Team, *, weight: str, fullness: str, sharpness: str | None) -> str:
    team.athlete.writes(weight)
    team.athlete.taps(fullness)
    team.athlete.taps("3.5 L")
    if sharpness is not None:
        team.athlete.taps(sharpness)
    if any(label.startswith("On target") for label in team.athlete.all_said()[-1].buttons):
        label = next(b for b in team.athlete.all_said()[-1].buttons if b.startswith("On target"))
        team.athlete.taps(label)
    else:
        team.athlete.writes("310")
    if "As planned" in team.athlete.all_said()[-1].buttons:
        team.athlete.taps("As planned")
    return text_of(team.athlete.taps(words.all_fine_button()))


def test_the_morning_is_asked_for_at_the_athletes_own_time(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7, hour=5, minute=29)
    assert team.athlete.hears() == []
    team.morning(7, hour=5, minute=30)  # 6:30 in London
    said = team.athlete.hears()
    assert len(said) == 1 and "7 days out" in said[0].text and "weight" in said[0].text.lower()


def test_a_check_in_by_buttons_ends_in_the_days_target_with_a_reason(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    said = answered_by_buttons(team, weight="61.1", fullness="6", sharpness=None)
    for part in ("7 days out", "Carbs", "Protein", "Water 3.5 L", "sodium", "Stay on plan"):
        assert part in said
    assert len(decisions(team)) == 1 and decisions(team)[0].status == DecisionStatus.IN_FORCE


def test_sharpness_is_asked_from_the_load_on_and_not_before(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    for days_out in (7, 6, 5, 4):
        team.morning(days_out)
        answered_by_buttons(team, weight="61.0", fullness="5", sharpness=None)
    team.morning(3)
    answered_by_buttons(team, weight="60.6", fullness="4", sharpness="4")
    assert [row.sharpness for row in checkins(team)] == [None, None, None, None, 4]


def test_one_line_is_a_whole_check_in(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    said = text_of(team.athlete.writes("61,2 7 3.5"))
    assert "Carbs" in said
    row = checkins(team)[0]
    assert (row.weight_kg, row.fullness, row.water_l) == (61.2, 7, 3.5)


def test_a_flat_morning_in_the_load_raises_the_carbs_by_the_coachs_step(own_engine: Engine) -> None:
    """Design of the trade (common practice): flat, sharp, weight not above its band: a step up."""
    team = in_peak_week(own_engine)
    for days_out in (7, 6, 5, 4):
        team.morning(days_out)
        team.athlete.writes("60.8 5 3.5 on target")
    team.morning(3)
    team.athlete.writes("60.5 4 3.5 4 on target")
    team.morning(2)
    said = text_of(team.athlete.writes("60.9 4 3.5 4 on target"))
    made = decisions(team)[-1]
    assert made.decision["rule"] == "flat-in-load"
    assert made.carb_g is not None and made.planned_carb_g is not None
    assert made.carb_g - made.planned_carb_g == 25
    assert "+25 on the plan's" in said and "so eat 25 g more today" in said


def test_every_stored_decision_replays_to_the_same_result(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    for days_out, line in ((7, "61.0 6 3.5"), (6, "60.9 5 1.1"), (5, "60.0 2 3.5 dizzy")):
        team.morning(days_out)
        team.athlete.writes(line)
    made = decisions(team)
    assert len(made) == 3
    for row in made:
        assert decision_as_dict(decide(case_from_dict(row.case))) == row.decision


def test_a_changed_answer_decides_again_and_says_so(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    team.athlete.taps("Change an answer")
    team.athlete.taps("Fullness")
    said = text_of(team.athlete.taps("4"))
    assert words.re_decided() in said
    assert [row.status for row in decisions(team)] == [
        DecisionStatus.REPLACED,
        DecisionStatus.IN_FORCE,
    ]
    assert (checkins(team)[0].fullness, checkins(team)[0].water_l) == (4, 3.5)


def test_editing_the_message_of_a_one_line_check_in_decides_again(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    said = text_of(
        team.athlete.writes("61.0 5 3.5", kind=Kind.EDITED, message_id=team.athlete.message_ids)
    )
    assert "fullness 6 → fullness 5" in said and words.re_decided() in said
    assert checkins(team)[0].fullness == 5


def test_editing_a_typed_answer_before_the_check_in_is_complete_changes_the_draft(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.9")
    said = team.athlete.writes("61.2", kind=Kind.EDITED, message_id=team.athlete.message_ids)
    assert "61.9 kg → 61.2 kg" in text_of(said)
    assert draft(team).answers["weight_kg"] == 61.2


def test_an_edit_that_leaves_no_doubt_goes_on_to_what_is_still_to_be_asked(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("133")  # pounds, or a slip
    assert draft(team).step == "doubt"
    team.athlete.writes("61.2", kind=Kind.EDITED, message_id=team.athlete.message_ids)
    assert draft(team).answers["weight_kg"] == 61.2 and draft(team).step == "fullness"
    said = team.athlete.writes("450")
    assert said, "whatever is typed next is answered"


def test_editing_the_answer_to_a_doubt_changes_what_it_told(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("133")
    team.athlete.writes("61.2")
    assert draft(team).answers["weight_kg"] == 61.2
    said = team.athlete.writes("61.4", kind=Kind.EDITED, message_id=team.athlete.message_ids)
    assert "61.2 kg → 61.4 kg" in text_of(said)
    assert draft(team).answers["weight_kg"] == 61.4


def test_an_edit_that_is_no_check_in_leaves_the_answer_and_says_so(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    said = team.athlete.writes("oops", kind=Kind.EDITED, message_id=team.athlete.message_ids)
    assert words.no_longer_a_check_in() in text_of(said)
    assert checkins(team)[0].fullness == 6 and len(decisions(team)) == 1


def test_yesterdays_answers_cannot_be_changed_any_more(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    old = team.athlete.all_said()[-1]
    team.morning(6)
    said = team.athlete.taps("Change an answer", old)
    assert "is past" in text_of(said)
    assert len(decisions(team)) == 1


def test_bad_input_at_every_question_of_the_check_in_asks_again_and_loses_nothing(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    team.morning(3)
    for answer in ("61.2", "6", "3.5", "4", "310", "less", "off"):
        before = draft(team)
        for bad in ("", "abc", "840 kg", "8.4 kg", "-1", "🙂", "x" * 4096, "what now"):
            said = team.athlete.writes(bad)
            assert given(draft(team)) == given(before), bad
            assert said and "?" in said[-1].text, bad
        team.athlete.writes("", kind=Kind.OTHER)
        assert given(draft(team)) == given(before)
        team.athlete.writes(answer)
    assert draft(team).step == "symptoms"


def test_an_old_button_is_answered_and_changes_nothing(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0")
    fullness = team.athlete.all_said()[-1]
    team.athlete.taps("6", fullness)
    team.athlete.taps("3", fullness)
    assert "answered already" in team.athlete.answers_to_taps()[-1]
    assert draft(team).answers["fullness"] == 6
    team.athlete.writes("61.0 6 3.5")
    team.athlete.taps("3", fullness)
    assert "closed" in team.athlete.answers_to_taps()[-1]
    assert checkins(team)[0].fullness == 6


def test_another_persons_button_does_nothing(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0")
    data = team.athlete.all_said()[-1].buttons["2"]
    team.coach.presses(data)
    assert "not yours" in team.coach.answers_to_taps()[-1]
    assert "fullness" not in draft(team).answers
    team.athlete.writes("61.0 6 3.5")
    change = team.athlete.all_said()[-1].buttons["Change an answer"]
    assert team.coach.presses(change) == []


def test_something_off_asks_for_symptoms_gut_sleep_and_a_note(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    for answer in ("61.0", "6", "3.5", "310"):
        team.athlete.writes(answer)
    if "As planned" in team.athlete.all_said()[-1].buttons:
        team.athlete.taps("As planned")
    team.athlete.taps(something_off_button())
    team.athlete.taps("Headache")
    team.athlete.taps("Dizzy")
    team.athlete.taps("✓ Headache")  # ticked by mistake
    team.athlete.taps("That's all")
    said = text_of(
        team.answers({"gut": "Heavy", "sleep_h": "5", "note": "slept badly, moving house"})
    )
    row = checkins(team)[0]
    assert (row.symptoms, row.gut, row.sleep_h) == (["dizzy"], "heavy", 5)
    note, *of_questions = row.note.split(" / ")
    assert (note, len(of_questions)) == ("slept badly, moving house", len(IN_NOTE))
    assert decisions(team)[0].decision["rule"] == "dropping-too-fast" and "You felt dizzy" in said


def test_two_nudges_then_the_coach_is_told_and_the_plan_holds(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7, hour=5, minute=30)
    team.athlete.hears()
    team.world.later(minutes=30)
    assert "still missing" in text_of(team.athlete.hears())
    team.world.later(minutes=60)
    assert "Last reminder" in text_of(team.athlete.hears())
    team.world.later(hours=3)
    assert "today stays as planned" in text_of(team.athlete.hears())
    told = team.coach.hears()
    assert len(told) == 1 and told[0].silent and "No check-in this morning" in told[0].text
    assert decisions(team) == []


def test_a_check_in_left_unfinished_is_kept_as_far_as_it_was_told(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(3, hour=5, minute=31)
    team.athlete.writes("133 5 3.5")  # a weight that is asked about, and never answered
    team.coach.hears()
    team.world.later(hours=7)
    assert "I kept what you told me: fullness 5 · water 3.5 L." in text_of(team.athlete.hears())
    told = text_of(team.coach.hears())
    assert "unfinished. Told: fullness 5 · water 3.5 L." in told and "No check-in" not in told
    (row,) = checkins(team)
    assert (row.weight_kg, row.fullness, row.water_l) == (None, 5, 3.5)
    team.athlete.writes("weight 60.3")
    assert checkins(team)[-1].weight_kg == 60.3


def test_after_the_check_in_nobody_is_nudged(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    team.athlete.hears()
    team.world.later(hours=6)
    assert team.athlete.hears() == [] and team.coach.hears() == []


def test_a_check_in_left_before_its_last_taps_is_taken_at_the_nudge(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7, hour=5, minute=30)
    for answer in ("61.0", "6", "3.5"):
        team.athlete.writes(answer)
    team.world.later(minutes=30)
    assert "Carbs" in text_of(team.athlete.hears())
    row = checkins(team)[0]
    assert (row.weight_kg, row.fullness, row.water_l, row.carb_eaten_g) == (61.0, 6, 3.5, None)


def test_after_the_cut_off_the_answer_sets_tomorrow(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7, hour=9, minute=59)  # 10:59 in London
    before = team.world.now.date()
    team.athlete.writes("61.0 6 3.5")
    assert decisions(team)[0].sets_date == before
    team.morning(6, hour=10, minute=0)  # 11:00 in London
    team.athlete.writes("60.9 6 3.5")
    assert decisions(team)[1].sets_date == before + timedelta(days=2)


def test_a_check_in_before_the_coach_has_set_anything_is_kept(own_engine: Engine) -> None:
    team = onboarded(own_engine)
    said = text_of(team.athlete.writes("61.0 6 3.5"))
    assert "has not set the event" in said
    assert checkins(team)[0].weight_kg == 61.0


def test_a_weight_far_from_yesterdays_is_held_and_asked_again(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    team.morning(6)
    said = team.athlete.writes("71.0 6 3.5")
    assert "71.0 kg" in said[-1].text and "61.0 kg" in said[-1].text  # what was read, and usual
    assert len(decisions(team)) == 1  # nothing moves on it before it is answered
    said = team.athlete.taps("71.0 kg")
    assert decisions(team)[-1].decision["rule"] == "implausible-answer"
    assert "Weight again" in said[-1].buttons
    team.athlete.taps("Weight again")
    team.athlete.writes("61.0")
    assert decisions(team)[-1].decision["rule"] == "steady"
    assert checkins(team)[-1].weight_kg == 61.0


def test_a_morning_told_again_with_a_doubtful_weight_names_it_while_it_asks_for_the_rest(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    said = team.athlete.writes("71.0 kg, fullness 5, water 3.5 l")
    assert "fullness 6 → fullness 5" in said[-1].text
    assert "71.0" in said[-1].text
    assert "71.0 kg" in team.athlete.taps("Yes")[-1].text


def test_pounds_and_fluid_ounces_go_all_the_way(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    for tap_path in (("Weight unit", "pounds"), ("Drinks unit", "US fluid ounces")):
        team.athlete.writes("/settings")
        for label in tap_path:
            team.athlete.taps(label)
    team.morning(7)
    said = text_of(team.athlete.writes("134.9 6 118"))
    row = checkins(team)[0]
    # 134.9 lb x 0.45359237 kg = 61.19 kg; 118 US fl oz x 29.5735 mL = 3.49 L (NIST SP 811).
    assert row.weight_kg == pytest.approx(61.19, abs=0.005)
    assert row.water_l == pytest.approx(3.490, abs=0.005)
    assert "lb" in said and "fl oz" in said and " kg" not in said


def test_the_days_figure_in_force_is_what_was_sent(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    with team.world.session() as session:
        row = checkin_row(session, team.athlete_id, team.world.now.date())
        in_force = day_set(session, team.athlete_id, team.world.now.date())
        assert row is not None and in_force is not None
    assert f"Carbs {in_force.carb_g:.0f} g" in text_of(team.athlete.all_said())


@pytest.mark.parametrize(
    "command", ["/today", "/week", "/why", "/past", "/settings", "/help", "/checkin", "/pause"]
)
def test_every_command_of_the_athlete_answers(own_engine: Engine, command: str) -> None:
    team = in_peak_week(own_engine)
    assert len(team.athlete.writes(command)) == 1
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    assert len(team.athlete.writes(command)) == 1


def test_paused_means_not_asked_and_the_coach_knows(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.athlete.writes("/pause")
    assert "paused" in text_of(team.coach.hears())
    team.morning(6)
    assert team.athlete.hears() == []
    team.athlete.writes("/resume")
    team.morning(5)
    assert "5 days out" in text_of(team.athlete.hears())


def test_after_the_day_the_week_is_closed_with_cautions(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(0)
    team.athlete.hears()
    team.morning(-1)
    said = text_of(team.athlete.hears())
    assert "Your show is over" in said and "palpitations" in said
    team.morning(-3)  # three short questions follow, and none after them
    team.athlete.hears()
    team.morning(-6)
    assert team.athlete.hears() == []


def written_last_night(team: Team, text: str, waited: timedelta = timedelta(hours=9)) -> str:
    """What the athlete hears of a text that has waited, on a morning with one before it."""
    team.morning(4)
    team.athlete.writes("60.4 5 3.5")
    team.morning(3)
    team.coach.hears()
    team.world.waited = waited
    said = text_of(team.athlete.writes(text))
    team.world.waited = timedelta(0)
    return said


def test_a_morning_that_was_written_yesterday_and_came_only_today_sets_nothing(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    said = written_last_night(team, "60.9 6 3.5, long day")
    assert "haven't taken its numbers for today" in said
    assert len(decisions(team)) == 1
    assert "60.9 6 3.5, long day" in text_of(team.coach.hears())
    assert "Carbs" in text_of(team.athlete.writes("60.6 6 3.5"))
    assert checkins(team)[-1].weight_kg == 60.6


def test_danger_in_a_morning_that_came_late_is_an_alarm_all_the_same(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    written_last_night(team, "60.9 6 3.5 I fainted")
    assert "I fainted" in text_of(team.coach.hears())
    assert len(decisions(team)) == 1


def test_a_clock_far_off_keeps_no_morning_from_being_taken(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    assert "Carbs" in written_last_night(team, "60.9 6 3.5", timedelta(days=300))
