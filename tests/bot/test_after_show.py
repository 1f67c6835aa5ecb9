"""The three mornings after: one short question each, and what is done about an answer."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest
from sqlmodel import select

from bot.debrief.flow_after_show import AFTER_SHOW, SYMPTOMS
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import AlertRow, CheckInRow
from engine.symptoms import Symptom
from tests.support.weeks import Team, arrive_and_read, gone_on
from tests.support.world import Said, text_of

ASKED = "How is it?"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The afternoon of the show; Mira weighed 61 kg that morning."""
    return gone_on(team_at(datetime(2027, 5, 9, 5, 31, tzinfo=UTC)), to_the_afternoon)


def to_the_afternoon(team: Team) -> None:
    team.athlete.writes("61.0 8 3.5 4 on target fine")
    team.world.until(datetime(2027, 5, 9, 15, 0, tzinfo=UTC))
    team.athlete.hears()
    team.coach.hears()


def morning(team: Team, number: int) -> list[Said]:
    """The `number`-th morning after, at half past six in London."""
    team.world.until(datetime(2027, 5, 9, 5, 31, tzinfo=UTC) + timedelta(days=number))
    return team.athlete.hears()


def alerts(team: Team) -> set[str]:
    with team.world.session() as session:
        return {row.flag for row in session.exec(select(AlertRow))}


def test_the_morning_after_brings_the_cautions_and_one_short_question(team: Team) -> None:
    said = text_of(morning(team, 1))
    assert "Your show is over" in said
    assert "Weakness, palpitations, swelling" in said
    assert "Good morning, Mira. Day 1 after. How do you feel?" in said
    assert "Your weight, if you stepped on the scale?" in text_of(team.athlete.taps("Fine"))
    assert "Ordinary meals, to appetite" in text_of(team.athlete.taps("Not today"))
    assert [m for m in team.coach.hears() if "How did Mira look" not in m.text] == []


def test_it_is_asked_on_three_mornings_and_then_no_more(team: Team) -> None:
    for number in (1, 2, 3):
        assert f"Day {number} after. How do you feel?" in text_of(morning(team, number))
        team.athlete.taps("Fine")
        last = text_of(team.athlete.taps("Not today"))
    assert "my last question" in last
    assert ASKED not in text_of(morning(team, 4))  # the look back on the week comes then
    assert morning(team, 6) == []


def test_a_warning_sign_stops_everything_as_ever(team: Team) -> None:
    morning(team, 2)
    team.athlete.taps("Something's wrong")
    team.athlete.taps("Weak or heavy limbs")
    team.athlete.taps("That's all")
    said = text_of(team.athlete.taps("Not today"))
    assert "Stop. You reported: weak or heavy limbs" in said
    assert "emergency number" in said
    assert "limb-weakness" in alerts(team)
    assert "weak or heavy limbs" in text_of(team.coach.hears()).lower()


def test_swelling_is_a_doctors_matter_today_and_the_coach_is_fetched(team: Team) -> None:
    morning(team, 2)
    team.athlete.taps("Something's wrong")
    team.athlete.taps("Swollen legs or feet")
    team.athlete.taps("That's all")
    said = text_of(team.athlete.taps("Not today"))
    assert "See a doctor today" in said
    assert "I have told Ravi" in said
    assert "after-show-complaint" in alerts(team)
    assert "can lower potassium and phosphate" in text_of(team.coach.hears())


def test_what_is_written_in_own_words_is_read_too(team: Team) -> None:
    morning(team, 1)
    team.athlete.taps("Something's wrong")
    said = text_of(team.athlete.writes("my hands are swollen"))
    said += text_of(team.athlete.taps("Not today"))
    assert "See a doctor today" in said


def test_what_cannot_be_placed_is_passed_on_to_the_coach(team: Team) -> None:
    morning(team, 1)
    team.athlete.taps("Something's wrong")
    team.athlete.writes("my left ear rings")
    assert "passed that on to Ravi" in text_of(team.athlete.taps("Not today"))
    assert 'Something I can\'t place: "my left ear rings"' in text_of(team.coach.hears())


def test_a_steep_rise_is_told_to_both(team: Team) -> None:
    morning(team, 2)
    team.athlete.taps("Fine")
    # 61 kg on the day; 5 % over is 64.05
    assert "Your weight has gone up fast" in text_of(team.athlete.writes("64.2"))
    assert "Weight up 5.2 %" in text_of(team.coach.hears())
    with team.world.session() as session:
        row = session.exec(select(CheckInRow).where(CheckInRow.date == team.world.now.date())).one()
    assert row.weight_kg == 64.2


def test_some_kilos_up_are_as_they_should_be(team: Team) -> None:
    morning(team, 2)
    team.athlete.taps("Fine")
    assert "Ordinary meals" in text_of(team.athlete.writes("63.5 kg"))
    assert not {flag for flag in alerts(team) if flag.startswith("after-show")}


def test_an_unanswered_morning_is_not_nagged_about(team: Team) -> None:
    morning(team, 1)
    team.world.later(hours=20)
    assert team.athlete.hears() == []
    assert [m for m in team.coach.hears() if "How did Mira look" not in m.text] == []


def test_a_new_week_that_has_begun_asks_its_own_questions_instead(team: Team) -> None:
    morning(team, 1)
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("16 May")
    team.coach.taps("Same time zone")
    team.athlete.hears()
    assert ASKED not in text_of(morning(team, 2))


def test_a_trial_ends_as_before(team_at: Callable[[datetime], Team]) -> None:
    team = team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A trial")
    team.coach.writes("9 May")
    team.coach.taps("Same time zone")
    team.world.until(datetime(2027, 5, 10, 8, 0, tzinfo=UTC))
    said = text_of(team.athlete.hears())
    assert "The trial is behind you" in said
    assert ASKED not in said
    with team.world.session() as session:
        kinds = [row.kind for row in session.exec(select(AgendaRow))]
    assert not [kind for kind in kinds if kind.startswith("after-show")]


def test_what_can_be_ticked_is_known_to_the_engine() -> None:
    assert set(SYMPTOMS) <= set(Symptom)


def test_a_weight_typed_before_it_is_asked_is_kept_and_good_is_fine() -> None:
    feels = AFTER_SHOW.step("feels")
    assert feels is not None
    assert feels.answer("62.9", {"_weight_unit": "kg"}) == {"weight_kg": 62.9}
    assert feels.answer("all good", {"_weight_unit": "kg"}) == {"feels": "fine"}
    assert feels.answer("not so good", {"_weight_unit": "kg"}) == {"feels": "off"}


def test_swelling_in_the_night_after_reaches_the_coach_once_and_no_target_follows(
    team: Team,
) -> None:
    team.world.until(datetime(2027, 5, 9, 22, 0, tzinfo=UTC))
    said = text_of(team.athlete.writes("my ankles are swollen"))
    assert "See a doctor today" in said and "Carbs" not in said
    assert sum("my ankles are swollen" in one.text for one in team.coach.hears()) == 1


# After the stage much food and much water come together: both are told, and the phone rings once.
def test_one_sentence_of_the_night_after_is_one_alert_that_names_all_it_may_mean(
    team: Team,
) -> None:
    team.world.until(datetime(2027, 5, 9, 22, 0, tzinfo=UTC))
    wrote = "my ankles are swollen and my head hurts, drank so much water"
    said = text_of(team.athlete.writes(wrote))
    assert "too much water in your blood" in said and "no large meals" in said
    (told,) = team.coach.hears()
    assert told.text.startswith("Caution: Mira") and told.text.count(wrote) == 1
    assert "low blood sodium" in told.text and "potassium and phosphate" in told.text
    team.coach.taps("Acknowledge", told)
    assert "No alert is open" in text_of(team.coach.writes("/alerts"))
    team.world.later(hours=3)
    assert not any("Mira" in one.text and not one.silent for one in team.coach.hears())


def test_a_further_complaint_after_the_show_stands_in_the_same_alert_and_is_told_anew_next_day(
    team: Team,
) -> None:
    team.world.until(datetime(2027, 5, 9, 22, 0, tzinfo=UTC))
    team.athlete.writes("hands a bit puffy")
    arrive_and_read(team)
    said = text_of(team.athlete.writes("my calves are cramping like mad"))
    assert "See a doctor today" in said and "as usual" not in said
    (changed,) = team.coach.hears()
    assert changed.method == "editMessageText" and "my calves are cramping" in changed.text
    team.world.until(datetime(2027, 5, 10, 7, 0, tzinfo=UTC))
    arrive_and_read(team)
    team.athlete.writes("ankles like balloons")
    (told,) = [one for one in team.coach.hears() if one.method == "sendMessage"]
    assert told.text.count("ankles like balloons") == 1 and not told.silent
