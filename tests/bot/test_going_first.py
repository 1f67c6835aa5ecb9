"""What goes first of what comes in: who may be in danger, who is on stage today, mornings, views."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from bot.dispatcher import USE_CASES
from bot.store.db import looking
from bot.store.tables.traffic import Urgency
from bot.store.tables.week import EventRow
from tests.support.weeks import Team

RAVI, MIRA, STRANGER = 101, 102, 999
LINE = "60.4 5 3.5 fine"


def urgency(team: Team, moment: datetime, chat: int | None, said: str) -> Urgency:
    with looking(team.world.engine) as session:
        (found,) = USE_CASES.how_urgent(session, moment, [(chat, said)])
    return Urgency(found)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    return team_at(datetime(2027, 5, 6, 5, 40, tzinfo=UTC))


@pytest.mark.parametrize(
    ("moment", "is_on_stage"),
    [
        (datetime(2027, 5, 8, 22, 59, tzinfo=UTC), False),  # London is an hour ahead in May
        (datetime(2027, 5, 8, 23, 1, tzinfo=UTC), True),
        (datetime(2027, 5, 9, 22, 59, tzinfo=UTC), True),
        (datetime(2027, 5, 9, 23, 1, tzinfo=UTC), False),
    ],
)
def test_who_is_on_stage_today_where_that_is_goes_before_mornings(
    team: Team, moment: datetime, is_on_stage: bool
) -> None:
    theirs = Urgency.STAGE_DAY if is_on_stage else Urgency.ORDINARY
    assert urgency(team, moment, MIRA, LINE) is theirs
    assert urgency(team, moment, MIRA, "/today") is theirs
    assert urgency(team, moment, RAVI, LINE) is Urgency.ORDINARY
    assert urgency(team, moment, MIRA, "I fainted in the bathroom") is Urgency.URGENT


def test_a_trial_is_a_morning_like_others(team: Team) -> None:
    with team.world.session() as session, session.begin():
        event = session.get_one(EventRow, team.week().event.id)
        event.kind = "trial"
    assert urgency(team, datetime(2027, 5, 9, 9, tzinfo=UTC), MIRA, LINE) is Urgency.ORDINARY


@pytest.mark.parametrize(
    ("said", "how"),
    [
        ("/chart", Urgency.VIEW),
        ("/CHART@brimline_test_bot please", Urgency.VIEW),
        ("/checkin", Urgency.ORDINARY),
        ("/today", Urgency.ORDINARY),
        ("chart", Urgency.ORDINARY),
        ("", Urgency.ORDINARY),
        ("/chart I fainted", Urgency.URGENT),
    ],
)
def test_what_only_shows_what_is_there_goes_after_mornings(
    team: Team, said: str, how: Urgency
) -> None:
    assert urgency(team, team.world.now, MIRA, said) is how
    assert urgency(team, team.world.now, STRANGER, said) is how
    assert urgency(team, team.world.now, None, said) is how
