"""The coach says which look an event asks for, and when and at what weight it weighs in."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlmodel import select

from bot.people.people import get_profile, profile_of
from bot.store.tables.week import DecisionRow, EventRow
from bot.week.load import current_week, event_of, weigh_in_row
from engine.decision.decide import case_from_dict
from engine.values.checkin import USUAL_LOOK
from tests.support.weeks import Team
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Everything is set; seven days out, at six in London, before the first question."""
    return team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))


def event(team: Team) -> EventRow:
    with team.world.session() as session:
        profile = get_profile(session, team.athlete_id)
        week = current_week(session, profile)
        assert week is not None
        return week.event


def sets_look(team: Team, typed: str, words: str = "round, no striations") -> str:
    team.coach.presses(f"c:asks-look:{team.athlete_id}")
    team.coach.writes(typed)
    return text_of(team.coach.writes(words))


def sets_weigh_in(team: Team, cap: str, day: str = "1 day out", hour: str = "08:00") -> str:
    team.coach.presses(f"c:asks-weigh:{team.athlete_id}")
    team.coach.writes(cap)
    team.coach.taps(day)
    return text_of(team.coach.taps(hour))


def test_the_usual_look_and_no_weigh_in_are_what_an_event_asks_for_at_first(team: Team) -> None:
    shown = text_of(team.coach.presses(f"c:asks:{team.athlete_id}"))
    assert "Target look: Full and sharp (fullness 8-10, sharpness 4-5)" in shown
    assert "Weigh-in: none set" in shown
    assert event_of(event(team)).look == USUAL_LOOK


def test_a_look_is_set_by_two_ranges_with_the_coachs_words_and_goes_into_the_case(
    team: Team,
) -> None:
    said = sets_look(team, "full 6-7, sharp 3-4")
    assert 'Target look: fullness 6-7, sharpness 3-4\n"round, no striations"' in said
    team.world.now = datetime(2027, 5, 2, 7, 0, tzinfo=UTC)
    team.athlete.writes("61.2 6 3.5 on target")
    with team.world.session() as session:
        case = case_from_dict(session.exec(select(DecisionRow)).one().case)
    assert case.event.look.fullness_high == 7
    team.coach.presses(f"c:asks-look:{team.athlete_id}")
    assert "as usual" not in text_of(team.coach.taps("Full and sharp, as usual"))
    assert event_of(event(team)).target is None


@pytest.mark.parametrize(
    "typed", ["softer", "full 7-9", "full 9-7 sharp 3-4", "full 11 sharp 3", "7 8 9"]
)
def test_what_is_no_look_is_asked_again(team: Team, typed: str) -> None:
    team.coach.presses(f"c:asks-look:{team.athlete_id}")
    assert "I need a fullness from 1 to 10" in text_of(team.coach.writes(typed))
    assert event(team).asks == {}


def test_a_weigh_in_says_what_is_likely_on_the_scale_and_what_can_not_be_made_safely(
    team: Team,
) -> None:
    made = sets_weigh_in(team, "66 kg")
    assert "Weigh-in: Sat 8 May 2027, 08:00, at most 66.0 kg" in made
    assert "The cap is likely to be made. On the scale then" in made
    missed = sets_weigh_in(team, "57 kg")
    assert "The cap is likely to be missed." in missed
    assert "Load days after the weigh-in instead of before it" in missed
    assert "can't be made safely" in missed
    assert "Don't cut water or salt" in missed
    assert "next class up" in missed
    team.coach.presses(f"c:asks-weigh:{team.athlete_id}")
    assert "none set" in text_of(team.coach.taps("No weigh-in"))


def test_a_class_by_height_is_worked_out(team: Team) -> None:
    said = sets_weigh_in(team, "height +2", "Event day", "12:00")
    kept = weigh_in_row(event(team))
    assert kept is not None
    with team.world.session() as session:
        profile = profile_of(session, team.athlete_id)
        assert profile is not None and profile.height_cm is not None
        assert kept.cap_kg == pytest.approx(profile.height_cm - 100 + 2, abs=0.05)
    assert "Sun 9 May 2027, 12:00" in said
    team.coach.presses(f"c:asks-weigh:{team.athlete_id}")
    assert "can't be a class" in text_of(team.coach.writes("height +400"))
    for nonsense in ("light", "5 kg"):
        team.coach.writes(nonsense)
    assert weigh_in_row(event(team)) == kept


def test_the_coach_is_told_days_ahead_once_when_the_cap_comes_into_doubt(team: Team) -> None:
    sets_weigh_in(team, "61.5 kg")
    for day, kg in ((2, "61.2"), (3, "61.9"), (4, "62.0")):
        team.world.now = datetime(2027, 5, day, 6, 30, tzinfo=UTC)
        team.athlete.writes(f"{kg} 6 3.5 on target")
    told = [said.text for said in team.coach.all_said() if "Mira. Weigh-in" in said.text]
    assert len(told) in (1, 2)
    assert "at most 61.5 kg" in told[0]
    assert "The cap is" in told[0]


def test_a_moved_event_takes_what_it_asks_for_along(team: Team) -> None:
    sets_look(team, "6-7 3-4")
    sets_weigh_in(team, "66 kg")
    before = event(team).asks
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("10 May")
    said = team.coach.taps("Same time zone")
    if any("Instead" in label or "Replace" in label for label in said[-1].buttons):
        team.coach.taps(next(iter(said[-1].buttons)))
    assert event(team).asks == before
