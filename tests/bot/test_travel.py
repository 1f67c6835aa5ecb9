"""`/travel` in chat: the journey planned and shown, and the prompts that follow the athlete."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlmodel import col, select

from bot.store.tables.event import TripRow
from bot.store.tables.traffic import AgendaRow
from tests.support.weeks import Team
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Sunday 2 May, at six in London, where Mira is; the show is to be in New York on 9 May."""
    team = team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("9 May")
    choices = team.coach.writes("New York")[-1].buttons
    team.coach.taps(next(label for label in choices if "America/New_York" in label))
    team.athlete.hears()
    team.coach.hears()
    return team


def fly(team: Team, *answers: str) -> str:
    team.athlete.writes("/travel")
    for answer in answers:
        said = team.athlete.writes(answer)
    return text_of(said)


FLIGHT = ("6 May", "11:00", "6 May", "14:00")  # eight hours in the air, five hours back


def prompts_waiting(team: Team) -> list[datetime]:
    with team.world.session() as session:
        rows = session.exec(
            select(AgendaRow)
            .where(AgendaRow.kind == "prompt", AgendaRow.status == "waiting")
            .order_by(col(AgendaRow.due_at))
        )
        return [row.due_at for row in rows]


def test_the_shift_and_the_meals_on_the_way_are_shown_to_both(team: Team) -> None:
    said = fly(team, *FLIGHT)
    assert "America/New_York is 5 h behind Europe/London." in said
    assert "Mon 3 May 08:00; Tue 4 May 09:30; Wed 5 May 11:00" in said  # 1.5 h a day later
    assert "Meals; spread each day's target over that day's meals:" in said
    assert "- Thu 6 May, Europe/London time: 07:00, 10:00\n" in said
    assert "- Thu 6 May, America/New_York time: 08:00, 11:00, 14:00, 17:00, 20:00" in said
    assert "From your arrival on (Thu 6 May 14:00 there)" in said
    (told,) = team.coach.hears()
    assert told.text.startswith("Mira's journey:") and told.silent
    assert "5 h behind" in told.text


def test_on_arrival_the_mornings_move_to_the_clocks_there(team: Team) -> None:
    fly(team, *FLIGHT)
    # half past six in London until she flies
    assert prompts_waiting(team)[-1] == datetime(2027, 5, 9, 5, 30, tzinfo=UTC)
    team.world.until(datetime(2027, 5, 6, 18, 0, tzinfo=UTC))  # 14:00 in New York
    assert "America/New_York time" in team.athlete.hears()[-1].text
    assert "Mira's check-ins now go by America/New_York time" in text_of(team.coach.hears())
    # half past six in New York from then on
    assert prompts_waiting(team)[0] == datetime(2027, 5, 7, 10, 30, tzinfo=UTC)
    assert prompts_waiting(team)[-1] == datetime(2027, 5, 9, 10, 30, tzinfo=UTC)


def test_a_flight_told_anew_replaces_the_one_before(team: Team) -> None:
    fly(team, *FLIGHT)
    fly(team, "7 May", "11:00", "7 May", "14:00")
    team.world.until(datetime(2027, 5, 6, 20, 0, tzinfo=UTC))
    assert team.profile().zone == "Europe/London"
    team.world.until(datetime(2027, 5, 7, 20, 0, tzinfo=UTC))
    assert team.profile().zone == "America/New_York"


def test_a_place_changed_by_hand_is_left_as_it_is(team: Team) -> None:
    fly(team, *FLIGHT)
    with team.world.session() as session:
        profile = team.profile()
        profile.zone = "Europe/Lisbon"
        session.merge(profile)
        session.commit()
    team.world.until(datetime(2027, 5, 6, 20, 0, tzinfo=UTC))
    assert team.profile().zone == "Europe/Lisbon"


@pytest.mark.parametrize(
    ("answers", "why"),
    [
        (("1 May 2027",), "is already past"),
        (("10 May",), "after the event"),
        (("6 May", "25:00"), "At what time"),
        (("6 May", "11:00", "6 May", "05:00"), "before you leave, or more than three days after"),
        (("soon",), "On which day do you leave"),
    ],
)
def test_a_journey_that_cannot_be_is_asked_again(
    team: Team, answers: tuple[str, ...], why: str
) -> None:
    assert why in fly(team, *answers)
    with team.world.session() as session:
        assert session.exec(select(TripRow)).all() == []


def test_where_the_clocks_are_the_same_there_is_nothing_to_plan(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))
    assert "nothing to plan" in text_of(team.athlete.writes("/travel"))
