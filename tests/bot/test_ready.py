"""`/ready` in chat: asked 14 and 8 days out, three outcomes with reasons, and going on with one."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.readiness.words import INJURIES, OUTCOMES, PERIODS, REASON_WORDS
from bot.store.tables.event import ReadinessRow
from bot.store.tables.people import Person
from bot.store.tables.traffic import AgendaRow
from engine.planning.readiness import CONDITIONS, REASONS, Injury, Outcome, Periods
from tests.support.weeks import Team, invited, onboarded
from tests.support.world import text_of


@pytest.fixture
def team(own_engine: Engine) -> Team:
    """Mira has answered the first questions, on 1 May; no event yet."""
    team = onboarded(own_engine)
    team.athlete.hears()
    return team


def set_event(team: Team, day: str, kind: str = "A show") -> None:
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps(kind)
    team.coach.writes(day)
    team.coach.taps("Same time zone")
    (asked,) = team.coach.all_said()[-1:]
    for label in asked.buttons:
        if label.startswith("It replaces"):
            team.coach.taps(label, asked)


def condition(number: int) -> str:
    return f"{number} {CONDITIONS[number]}"


USUAL = {
    "fat": "Not known", "loss": "0.8", "lost": "6", "weeks": "16", "periods": "Regular",
    "energy": "Good", "sleep": "7", "injury": "None",
}  # fmt: skip


def answer(team: Team, rating: int = 5, **other: str) -> str:
    """The coach answers as usual, but for these."""
    told = USUAL | other
    team.coach.writes("/ready")
    team.coach.taps(condition(rating))
    if told["fat"] == "Not known":
        team.coach.taps(told["fat"])
    else:
        team.coach.writes(told["fat"])
    for key in ("loss", "lost", "weeks"):
        team.coach.writes(told[key])
    health = {key: told[key] for key in ("periods", "energy", "sleep", "injury")}
    answer_on_health(team, **health)
    return text_of(team.coach.hears())


def answer_on_health(
    team: Team, *, periods: str = "Regular", energy: str = "Good", sleep: str = "7",
    injury: str = "None",
) -> str:  # fmt: skip
    team.athlete.writes("/ready")
    team.athlete.taps(periods)
    team.athlete.taps(energy)
    team.athlete.writes(sleep)
    return text_of(team.athlete.taps(injury))


def kept(team: Team) -> list[ReadinessRow]:
    with team.world.session() as session:
        return list(session.exec(select(ReadinessRow)))


def waiting(team: Team) -> list[datetime]:
    with team.world.session() as session:
        rows = session.exec(select(AgendaRow).where(AgendaRow.status == "waiting"))
        return sorted(row.due_at for row in rows if row.kind.startswith("ready:"))


def test_it_is_asked_fourteen_and_eight_days_out_at_nine_where_the_athlete_is(team: Team) -> None:
    set_event(team, "30 May")
    assert waiting(team) == [
        datetime(2027, 5, 16, 8, 0, tzinfo=UTC),
        datetime(2027, 5, 22, 8, 0, tzinfo=UTC),
    ]
    team.coach.hears()
    team.world.until(datetime(2027, 5, 16, 8, 0, tzinfo=UTC))
    said = team.coach.hears()[-1]
    assert "Mira's show is in 14 days. Is a peak week worth it?" in said.text
    assert "How lean is Mira" in text_of(team.coach.taps("Answer now", said))
    team.world.until(datetime(2027, 5, 22, 8, 0, tzinfo=UTC))
    assert "in 8 days" in team.coach.hears()[-1].text


def test_nobody_is_asked_how_lean_somebody_is_while_a_warning_is_open(team: Team) -> None:
    set_event(team, "30 May")
    team.world.until(datetime(2027, 5, 16, 6, 0, tzinfo=UTC))
    team.athlete.writes("I fainted this morning")
    team.world.until(datetime(2027, 5, 16, 9, 0, tzinfo=UTC))
    assert "Is a peak week worth it?" not in text_of(team.coach.hears())


def test_a_moved_event_moves_the_questions_and_a_trial_has_none(team: Team) -> None:
    set_event(team, "30 May")
    set_event(team, "6 June")
    assert waiting(team)[0] == datetime(2027, 5, 23, 8, 0, tzinfo=UTC)
    set_event(team, "30 May", "A trial")
    assert waiting(team) == []


def test_what_was_answered_just_now_is_not_asked_again(team: Team) -> None:
    set_event(team, "30 May")
    team.world.until(datetime(2027, 5, 15, 8, 0, tzinfo=UTC))
    answer(team)
    team.coach.hears()
    team.world.until(datetime(2027, 5, 17, 8, 0, tzinfo=UTC))
    assert team.coach.hears() == []
    team.world.until(datetime(2027, 5, 22, 9, 0, tzinfo=UTC))
    assert "in 8 days" in team.coach.hears()[-1].text


def test_from_run_it_the_plan_is_one_tap_away(team: Team) -> None:
    set_event(team, "30 May")
    answer(team)
    assert "load be spread" in text_of(team.coach.taps("Draft a plan"))


def test_somebody_stage_lean_runs_it_with_reasons_and_sources(team: Team) -> None:
    said = answer(team)
    assert "Mira. Run it: there is something to peak." in said
    assert "Condition 5 of 5." in said
    assert "Homer et al. 2024" in said
    assert "Estimates all" in said
    assert kept(team)[0].outcome == Outcome.RUN


def test_somebody_not_yet_lean_keeps_dieting_and_the_coach_may_go_on_with_a_reason(
    team: Team,
) -> None:
    said = answer(team, 3)
    assert "Keep dieting, no peak week" in said
    assert "What" not in said
    assert "For what reason?" in text_of(team.coach.taps("Run it anyway"))
    assert "For what reason?" in text_of(team.coach.writes("  "))
    assert "Saved: the shoot is booked" in text_of(team.coach.writes("the shoot is booked"))
    assert kept(team)[0].went_on == "the shoot is booked"
    team.coach.taps("Run it anyway")
    assert "settled already" in team.coach.answers_to_taps()[-1]


def test_periods_that_stay_away_are_a_doctors_matter_first(team: Team) -> None:
    said = answer(team, periods="Away for three months or more")
    assert "A doctor first." in said
    assert "Periods have been away" in said
    assert "Mountjoy et al. 2023" in said
    assert "Until a doctor has looked" in text_of(team.coach.taps("OK, a doctor first"))


def test_figures_are_reckoned_from_what_is_typed(team: Team) -> None:
    said = answer(team, loss="2.5 kg", lost="13", weeks="30 weeks", sleep="5.5 h", fat="19 %")
    # 2.5 kg in two weeks of 61.2 kg is 2.0 % a week; 13 kg of 74.2 kg before is 17.5 %
    assert "Weight is going at 2.0 % a week, which is too fast" in said
    assert "18 % of body mass has gone over the diet" in said
    assert "The diet has run for 30 weeks" in said
    assert "Sleep is short, 5.5 h" in said
    assert "Body fat of 19.0 %" in said
    assert "A doctor first." in said  # NICE: more than 15 %


def test_pounds_are_read_as_pounds(team: Team) -> None:
    said = answer(team, loss="5.5 lb")
    # 5.5 lb are 2.49 kg
    assert "Weight is going at 2.0 % a week" in said


def test_skinfolds_become_body_fat(team: Team) -> None:
    team.coach.writes("/ready")
    team.coach.taps(condition(5))
    assert "triceps, hip (suprailiac), thigh" in text_of(team.coach.taps("From skinfolds"))
    assert "three or seven numbers" in text_of(team.coach.writes("8 10"))
    assert "three or seven" not in text_of(team.coach.writes("10 8 12 mm"))
    # Jackson, Pollock & Ward 1980 with 31 years: 1.0674599, 13.7 % by Siri
    shown = team.coach.all_said()[-1].text
    assert "body fat 13.7 %" in shown


@pytest.mark.parametrize("nonsense", ["", "abc", "🤷", "-1", "1e9", "x" * 4096, "99"])
def test_what_cannot_be_read_is_asked_again(team: Team, nonsense: str) -> None:
    team.coach.writes("/ready")
    team.coach.taps(condition(4))
    assert "Body fat, in %" in text_of(team.coach.writes(nonsense))


def test_an_athlete_who_has_answered_nothing_yet_cannot_be_rated(own_engine: Engine) -> None:
    team = invited(own_engine)
    assert "no athlete who has answered" in text_of(team.coach.writes("/ready"))
    said = text_of(team.coach.presses(f"rd:ask:{team.athlete_id}"))
    assert "has not answered the first questions" in said


@pytest.mark.parametrize("data", ["rd", "rd:ask:x", "rd:ask:999", "rd:on:999", "rd:ok:x"])
def test_an_odd_button_breaks_nothing(team: Team, data: str) -> None:
    assert team.coach.presses(data) == []
    assert kept(team) == []


def test_health_is_asked_of_the_athlete_and_condition_of_the_coach(team: Team) -> None:
    coachs = [text_of(team.coach.writes("/ready"))]
    coachs.append(text_of(team.coach.taps(condition(5))))
    coachs.append(text_of(team.coach.taps("Not known")))
    coachs += [text_of(team.coach.writes(said)) for said in ("0.8", "6")]
    said = team.coach.writes("16")
    assert "Still open: Mira's answers on health" in text_of(said)
    assert not {"periods", "Energy", "Sleep", "injury"} & set(" ".join(coachs).split())
    (asked,) = team.athlete.hears()
    assert "Ravi is looking at whether a peak week is worth it" in asked.text
    assert "Your periods in the last months" in text_of(team.athlete.taps("Answer now"))
    assert "Your energy" in text_of(team.athlete.taps("Regular"))
    assert "Sleep on most nights" in text_of(team.athlete.taps("Low"))
    assert "Any injury?" in text_of(team.athlete.writes("7"))
    result = text_of(team.athlete.taps("None"))
    assert "Result: a peak week is worth it. Ravi has it too." in result
    assert "Energy has been low lately" in result
    told = text_of(team.coach.hears())
    assert "Mira. Run it: there is something to peak." in told
    assert "Energy has been low lately" in told
    assert len(kept(team)) == 1


def test_the_athlete_may_begin_and_what_is_open_is_said_to_both(team: Team) -> None:
    said = answer_on_health(team)
    assert "Still open: Ravi's view of your condition" in said
    assert "How lean" not in said
    (told,) = team.coach.hears()
    assert "Mira has answered the questions on health. Yours are still open" in told.text
    team.coach.taps("Answer now", told)
    team.coach.taps(condition(3))
    team.coach.taps("Not known")
    for figure in ("0.8", "6", "16"):
        said = text_of(team.coach.writes(figure))
    assert "Keep dieting, no peak week" in said
    athletes = text_of(team.athlete.hears())
    assert "Result: no peak week yet. Talk with Ravi" in athletes
    assert "hides" not in athletes and "Estimates" not in athletes


def test_asked_again_while_the_athlete_has_not_answered_it_says_so_and_can_remind(
    team: Team,
) -> None:
    team.coach.writes("/ready")
    team.coach.taps(condition(5))
    team.coach.taps("Not known")
    for figure in ("0.8", "6", "16"):
        team.coach.writes(figure)
    team.athlete.hears()
    (said,) = team.coach.writes("/ready")
    assert "You rated Mira's condition 5 of 5. Still open: Mira's answers on health." in said.text
    assert "I have asked Mira again" in text_of(team.coach.taps("Ask Mira again", said))
    assert "A few short questions on your health" in text_of(team.athlete.hears())
    assert "How lean is Mira" in text_of(team.coach.taps("Answer mine again", said))


def test_one_half_does_not_wait_for_ever(team: Team) -> None:
    answer_on_health(team, injury="Serious")
    team.world.later(days=7)
    assert "Still open: Ravi's view" in answer_on_health(team)
    assert len(kept(team)) == 2


def test_who_coaches_themselves_is_asked_everything_in_one_go(team: Team) -> None:
    with team.world.session() as session:
        profile = team.profile()
        profile.coach_id = team.athlete_id
        session.merge(profile)
        person = session.get_one(Person, team.athlete_id)
        person.is_coach = True
        session.add(person)
        session.commit()
    mira = team.athlete
    assert "How lean are you" in text_of(mira.writes("/ready"))
    mira.taps(condition(5))
    mira.taps("Not known")
    for figure in ("0.8", "6"):
        mira.writes(figure)
    assert "Your periods in the last months" in text_of(mira.writes("16"))
    mira.taps("Regular")
    mira.taps("Good")
    mira.writes("7")
    said = text_of(mira.taps("None"))
    assert "Run it: there is something to peak." in said
    assert "Result:" not in said


def test_a_waiting_doctors_word_is_a_doctor_first(team_at: Callable[[datetime], Team]) -> None:
    team = team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))
    with team.world.session() as session:
        profile = team.profile()
        profile.status = "doctor-first"
        session.merge(profile)
        session.commit()
    said = answer(team)
    assert "A doctor first." in said
    assert "still waits for a doctor's clearance" in said


def test_every_outcome_reason_and_choice_has_its_words() -> None:
    assert set(REASON_WORDS) == set(REASONS)
    assert set(OUTCOMES) == set(Outcome)
    assert set(PERIODS) == set(Periods)
    assert set(INJURIES) == set(Injury)
