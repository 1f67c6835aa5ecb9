"""The coach's eye in chat: tapped on the card or under photos, decided again with, compared."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path

import pytest
from sqlmodel import select

from bot.debrief import words as debrief_words
from bot.people.people import profile_of
from bot.pictures.week_picture.picture import week_values
from bot.store.db import transaction
from bot.store.tables.coach import CoachLookRow, Rights, SecondCoach
from bot.store.tables.people import HistoryRow, Person
from bot.store.tables.week import DecisionRow, DecisionStatus
from bot.words.languages import speaking
from engine.decision.decide import case_from_dict, decide, decision_as_dict
from engine.planning.behind.debrief import DayBehind
from engine.values.checkin import CheckIn, CoachLook, Observed
from engine.values.plan import DayTarget
from tests.support.decided import stored
from tests.support.files import sends_file
from tests.support.pictures import GREEN, RED, picture
from tests.support.weeks import Team
from tests.support.world import Someone, text_of

FLAT = "60.4 4 3.5 4"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, seven in the morning in London: a day of the load is eaten, all else is to come."""
    team = team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))
    team.coach.language = team.athlete.language = "en"
    return team


def decisions(team: Team) -> list[DecisionRow]:
    with team.world.session() as session:
        return list(session.exec(select(DecisionRow).order_by(DecisionRow.id)))  # type: ignore[arg-type]


def looks(team: Team) -> list[CoachLookRow]:
    with team.world.session() as session:
        return list(session.exec(select(CoachLookRow)))


def second_coach(team: Team) -> Someone:
    with transaction(team.world.engine) as session:
        kim = Person(
            telegram_user_id=170, chat_id=170, first_name="Kim", created_at=team.world.now,
            chosen_language="en",
        )  # fmt: skip
        session.add(kim)
        session.flush()
        session.add(
            SecondCoach(
                coach_id=1, person_id=kim.id or 0, athlete_id=2, rights=Rights.FULL,
                given_at=team.world.now, until_day=team.world.now.date(),
                until_at=team.world.now + timedelta(days=2),
            )
        )  # fmt: skip
    return Someone(team.world, 170, "Kim", language="en")


def test_a_spilled_athlete_who_says_flat_gets_no_raise_and_is_told_what_both_said(
    team: Team,
) -> None:
    team.athlete.writes(FLAT)
    assert decisions(team)[-1].decision["rule"] == "flat-in-load"
    team.coach.presses("c:card:2")
    shown = team.coach.taps("What I see")
    assert "fullness 4" in text_of(shown) and "(fullness 6 expected)" in text_of(shown)
    seen = team.coach.taps("Spilled over")
    decided = decisions(team)[-1]
    assert decided.decision["rule"] == "coach-sees-spill"
    assert decided.decision["change_g"] < 0
    assert "You see: spilled over" in text_of(seen)
    assert "is proposed and waits for you" in text_of(seen)
    to_athlete = text_of(team.athlete.hears())
    assert "Ravi has looked at this morning" in to_athlete
    assert "Your coach sees: spilled over; you said fullness 4" in to_athlete
    assert "Ravi" in to_athlete.split("Your coach sees")[0], "what waits is said to wait"


def test_a_look_is_part_of_the_stored_case_and_replays_to_the_bit(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.presses(f"c:eye-look:2:{team.world.now.date()}:softening")
    team.coach.taps("3")
    decided = decisions(team)[-1]
    (seen,) = decided.case["history"]["observed"]
    assert (seen["look"], seen["sharpness"], seen["by"]) == ("softening", 3, 1)
    assert datetime.fromisoformat(seen["at"]) == team.world.now
    assert decision_as_dict(decide(case_from_dict(decided.case))) == decided.decision
    (row,) = looks(team)
    assert (row.look, row.sharpness, row.by_id, row.at) == ("softening", 3, 1, team.world.now)


def test_a_look_is_changed_by_another_tap_and_taken_back_by_one(team: Team) -> None:
    team.athlete.writes(FLAT)
    before = decisions(team)[-1].carb_g
    team.coach.presses("c:eye:2")
    team.coach.taps("Softening")
    team.coach.taps("4")
    again = team.coach.taps("Full")
    assert [(row.look, row.sharpness) for row in looks(team)] == [("full", 4)]
    assert "✓ Full" in again[-1].buttons and "✓ 4" in again[-1].buttons
    team.coach.taps("✓ 4")
    assert looks(team)[0].sharpness is None
    back = team.coach.taps("Take it back")
    assert looks(team) == []
    assert decisions(team)[-1].carb_g == before
    assert "You see" not in text_of(back)
    assert "no look of yours" in _answer_to(team, "c:eye-back:2:2027-05-07")


def _answer_to(team: Team, data: str) -> str:
    team.coach.presses(data)
    return team.coach.answers_to_taps()[-1]


def test_the_athlete_is_told_only_when_the_figure_that_stands_moves(team: Team) -> None:
    team.athlete.writes("60.4 6 3.5 4")
    team.coach.presses("c:eye:2")
    said = team.coach.taps("On course")
    assert "as before" in text_of(said)
    assert team.athlete.hears() == []


def test_without_answers_a_look_is_kept_and_counts_once_they_are_in(team: Team) -> None:
    team.coach.presses("c:eye:2")
    said = text_of(team.coach.taps("Spilled over"))
    assert "hasn't answered that morning" in said
    assert "counts once the answers are in" in said
    assert decisions(team) == []
    team.athlete.writes(FLAT)
    assert decisions(team)[-1].decision["rule"] == "coach-sees-spill"


def test_a_look_at_an_earlier_morning_moves_nothing_that_is_set_and_says_so(team: Team) -> None:
    team.athlete.writes(FLAT)
    number = len(decisions(team))
    team.coach.presses("c:eye:2")
    team.coach.taps("← Thu 6 May")
    said = text_of(team.coach.taps("Flat"))
    assert "it counts from the next decision on" in said
    assert len(decisions(team)) == number
    team.morning(1)
    team.athlete.writes("60.6 6 3.5 4")
    observed = decisions(team)[-1].case["history"]["observed"]
    assert [(one["date"], one["look"]) for one in observed] == [("2027-05-06", "flat")]


def test_after_noon_and_over_the_coachs_own_figure_a_look_leaves_the_day_alone(team: Team) -> None:
    team.athlete.writes(FLAT)
    number = len(decisions(team))
    team.world.until(datetime(2027, 5, 7, 11, 30, tzinfo=UTC))
    team.coach.presses("c:eye:2")
    assert "too late to change that day" in text_of(team.coach.taps("Spilled over"))
    assert len(decisions(team)) == number
    team.morning(1)
    team.athlete.writes("60.6 4 3.5 4")
    team.coach.presses("c:hand:2:1")
    team.coach.writes("500")
    team.coach.presses("c:eye:2")
    assert "so it stays" in text_of(team.coach.taps("Spilled over"))
    assert decisions(team)[-1].carb_g != 0


def test_a_proposal_that_waited_keeps_its_deadline(team: Team) -> None:
    team.athlete.writes("60.4 2 3.5 4")
    first = decisions(team)[-1]
    assert first.status == DecisionStatus.WAITING
    team.world.later(minutes=20)
    team.coach.presses("c:eye:2")
    team.coach.taps("Spilled over")
    second = decisions(team)[-1]
    assert second.status == DecisionStatus.WAITING
    assert second.sign_off_due_at == first.sign_off_due_at


def test_a_second_coach_taps_too_and_the_more_careful_word_counts(team: Team) -> None:
    kim = second_coach(team)
    team.athlete.writes(FLAT)
    team.coach.presses("c:eye:2")
    team.coach.taps("On course")
    kim.presses("c:eye:2")
    kim.taps("Softening")
    decided = decisions(team)[-1].decision
    assert decided["trace"]["facts"]["coach_saw"] == "softening"
    assert {(row.by_id, row.look) for row in looks(team)} == {(1, "on course"), (3, "softening")}
    shown = text_of(team.coach.presses("c:eye:2"))
    assert "You see: on course" in shown and "Kim sees: softening" in shown
    assert "Kim sees: softening" in text_of(team.coach.presses("c:card:2"))


def test_why_history_and_the_chart_show_what_the_coach_saw(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.presses("c:eye:2")
    team.coach.taps("Full")
    team.coach.taps("4")
    assert "The coach sees: full, sharpness 4" in text_of(team.athlete.writes("/why"))
    history = text_of(team.coach.presses("c:history:2"))
    assert "Ravi: saw on Fri 7 May: full, sharpness 4" in history
    with team.world.session() as session:
        week = week_values(session, team.profile(), team.world.now.date())
    assert week is not None
    day = next(day for day in week.days if day.days_out == 2)
    assert day.eye == CoachLook.FULL


def test_under_a_mornings_photos_the_coach_is_asked_once_and_a_tap_is_enough(
    team: Team, tmp_path: Path
) -> None:
    team.world.photo_dir = tmp_path / "photos"
    team.athlete.writes(FLAT)
    for colour in (RED, GREEN):
        sends_file(team.athlete, picture(colour), as_photo=True)
        team.world.later(seconds=50)
    asked = [said for said in team.coach.hears() if "What do you see on Mira's photos" in said.text]
    assert len(asked) == 1 and asked[0].silent
    assert "2 days out" in asked[0].text
    team.coach.taps("Spilled over", asked[0])
    assert [row.look for row in looks(team)] == ["spilled over"]
    assert decisions(team)[-1].decision["rule"] == "coach-sees-spill"


def test_the_debrief_has_what_the_coach_saw_beside_the_mornings_answers() -> None:
    target = DayTarget(days_out=2, carb_g=500, protein_g=120, fat_g=50, water_l=3.5)
    day = date(2027, 5, 7)
    told = CheckIn(date=day, weight_kg=60.4, fullness=4, sharpness=4)
    seen = Observed(date=day, look=CoachLook.SOFTENING, sharpness=3)
    behind = DayBehind(target=target, set_g=475, morning=told, seen=seen)
    with speaking("en"):
        line = debrief_words.day_line(behind, "coach-sees-softening", "kg")
    assert line == (
        "2 out: 500 / 475 / – (the coach saw softening) · 60.4 kg, full 4, sharp 4, "
        "coach: softening, sharpness 3"
    )


def test_nobody_is_their_own_second_pair_of_eyes(team: Team) -> None:
    with transaction(team.world.engine) as session:
        profile, person = profile_of(session, 2), session.get_one(Person, 2)
        assert profile is not None
        profile.coach_id, person.is_coach = 2, True
        session.add(profile)
        session.add(person)
    card = team.athlete.presses("c:card:2")[-1]
    assert "Photos" in card.buttons and "What I see" not in card.buttons
    team.athlete.presses("c:eye-look:2:2027-05-07:flat")
    assert "second pair of eyes" in team.athlete.answers_to_taps()[-1]
    assert looks(team) == []


@pytest.mark.parametrize(
    "data",
    [
        "c:eye:2:yesterday", "c:eye:2:2027-05-08", "c:eye:2:2020-01-01", "c:eye-look:2",
        "c:eye-look:2:2027-05-07:shiny", "c:eye-sharp:2:2027-05-07:9", "c:eye-sharp:2:2027-05-07:3",
        "c:eye-back:2:2027-05-08",
    ],
)  # fmt: skip
def test_buttons_that_name_nothing_that_is_there_do_no_harm(team: Team, data: str) -> None:
    team.coach.presses(data)
    assert looks(team) == []
    assert decisions(team) == []


def test_from_a_handful_of_mornings_on_the_two_are_compared(team: Team) -> None:
    _seen_for(team, mornings=4)
    assert "flatter than you do" not in text_of(team.coach.presses("c:eye:2"))
    _seen_for(team, mornings=6)
    shown = text_of(team.coach.presses("c:eye:2"))
    assert "Mira rates fullness 2.0 grades flatter than you do (6 mornings with both)." in shown


def _seen_for(team: Team, *, mornings: int) -> None:
    """So many earlier mornings answered as two under what was expected, and seen as on course."""
    from bot.store.tables.week import CheckInRow  # noqa: PLC0415

    today = team.world.now.date()
    with transaction(team.world.engine) as session:
        event = session.connection().exec_driver_sql("select id from event").scalar_one()
        for number in range(1, mornings + 1):
            day = today - timedelta(days=number)
            if session.exec(select(CoachLookRow).where(CoachLookRow.date == day)).first():
                continue
            at = datetime.combine(day, time(6), UTC)
            row = CheckInRow(athlete_id=2, date=day, fullness=3, weight_kg=60.0, answered_at=at)
            session.add(row)
            session.flush()
            session.add(
                DecisionRow(
                    athlete_id=2, event_id=event, checkin_id=row.id or 0, revision=1, sets_date=day,
                    outcome="held", status=DecisionStatus.IN_FORCE, carb_g=100, planned_carb_g=100,
                    case={}, decision=stored(expected_fullness=5), made_at=at,
                )
            )  # fmt: skip
            session.add(
                CoachLookRow(athlete_id=2, date=day, by_id=1, look=CoachLook.ON_COURSE.value, at=at)
            )


def test_what_was_done_is_kept_with_who_and_when(team: Team) -> None:
    team.coach.presses("c:eye-look:2:2027-05-07:flat")
    team.coach.presses("c:eye-back:2:2027-05-07")
    with team.world.session() as session:
        kept = [
            (row.what, row.by_id, row.detail["look"], date.fromisoformat(row.detail["day"]))
            for row in session.exec(select(HistoryRow))
            if row.what.startswith("coach look")
        ]
    day = date(2027, 5, 7)
    assert kept == [("coach look", 1, "flat", day), ("coach look taken back", 1, "flat", day)]
