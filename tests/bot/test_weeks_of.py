"""An athlete's weeks as rows: what was planned, set, eaten and answered stands on its own day."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime

import pytest

from bot.week.weeks_of import WeekRows, weeks_of, weeks_of_one
from tests.support.weeks import Team, replacing


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def weeks(team: Team) -> tuple[WeekRows, ...]:
    with team.world.session() as session:
        return weeks_of_one(session, team.athlete_id)


def test_eaten_and_drunk_stand_on_the_day_that_they_speak_of(team: Team) -> None:
    team.athlete.writes("59.3 1 3.5 5 on target fine")
    team.morning(2)
    team.athlete.writes("60.1 7 3.2 4 carbs 430 fine")
    (week,) = weeks(team)
    assert [day.days_out for day in week.days] == [7, 6, 5, 4, 3, 2, 1, 0]
    third, second = week.days[4], week.days[5]
    assert third.planned is not None
    assert (third.planned.carb_g, third.set_carb_g, third.set_by) == (500, 525, "decision")
    assert (third.eaten_carb_g, third.water_l) == (430, 3.2)
    assert (third.weight_kg, third.fullness, third.sharpness) == (59.3, 1, 5)
    assert (third.rule, third.status) == ("flat-in-load", "in-force")
    assert third.band_low_kg is not None
    assert third.against_band in (-1, 0, 1)
    assert (second.weight_kg, second.gut, second.eaten_carb_g) == (60.1, "fine", None)
    assert week.mornings == 2
    assert not week.days[0].answered
    assert week.days[0].carb_g == 185


def test_a_symptom_told_beside_the_check_in_joins_its_morning(team: Team) -> None:
    team.athlete.writes("59.3 2 3.5 5 on target fine")
    team.athlete.writes("my calves are cramping")
    (week,) = weeks(team)
    assert "cramps" in week.days[4].symptoms


def test_an_event_that_moved_away_leaves_no_week_behind_and_the_new_one_is_there(
    team: Team,
) -> None:
    team.athlete.writes("59.3 2 3.5 5 on target fine")
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("16 May")
    replacing(team.coach, team.coach.taps("Same time zone"))
    assert [week.day for week in weeks(team)] == [date(2027, 5, 16)]
    team.coach.presses(f"c:undo:{team.athlete_id}")
    undo = next(m for m in reversed(team.coach.all_said()) if m.buttons)
    team.coach.presses(next(iter(undo.buttons.values())), undo.outbox_id)
    assert [week.day for week in weeks(team)] == [date(2027, 5, 9)]


def test_weeks_are_of_the_athletes_asked_for_and_begun_by_then(team: Team) -> None:
    with team.world.session() as session:
        assert weeks_of(session, [team.athlete_id, 77])[77] == ()
        assert weeks_of_one(session, team.athlete_id, until=date(2027, 5, 1)) == ()
        assert len(weeks_of_one(session, team.athlete_id, until=date(2027, 5, 2))) == 1
