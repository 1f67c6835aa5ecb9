"""Numbers, comparison and workbook read JSON inside the database: both kinds say the same."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime
from typing import Any

import pandas as pd
import pytest
from sqlalchemy import Engine
from sqlmodel import Session

from bot.operation.backup import move
from bot.people.people import athletes_of
from bot.sheets.coach_numbers.gather import numbers_of
from bot.sheets.workbook.gather import frames_of
from bot.store.tables.people import Person
from bot.week.weeks_of import weeks_of
from bot.words.languages import speaking
from tests.support.past_weeks import Lived, behind
from tests.support.weeks import Team
from tests.support.whole_week import lived

NOW = datetime(2027, 5, 11, 12, 0, tzinfo=UTC)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Mira's week is over, with a decision, its band and its odds; a trial lies before it."""
    team = team_at(datetime(2027, 5, 6, 5, 40, tzinfo=UTC))
    lived(team)
    behind(team, date(2027, 4, 4), Lived(load_g=420), look="flat")
    team.world.until(NOW)
    return team


def read(engine: Engine) -> tuple[Any, Any, dict[str, pd.DataFrame]]:
    with Session(engine) as session, speaking("en"):
        coach = session.get_one(Person, 1)
        return (
            numbers_of(session, coach, NOW)[0],
            weeks_of(session, [2]),
            frames_of(session, athletes_of(session, coach), reader_id=1),
        )


def test_they_read_the_same_from_postgresql_as_from_sqlite(
    team: Team, postgres_engine: Engine
) -> None:
    team.world.engine.dispose()
    move(team.world.engine, postgres_engine)
    (numbers, weeks, frames), (again, weeks_again, frames_again) = (
        read(engine) for engine in (team.world.engine, postgres_engine)
    )
    assert again == numbers and numbers.bands
    assert weeks_again == weeks
    assert any(day.band_low_kg for week in weeks[2] for day in week.days)
    assert set(frames) == set(frames_again)
    for name, frame in frames.items():
        pd.testing.assert_frame_equal(frames_again[name], frame)
    assert all(len(frames[name]) for name in ("weeks", "check-ins", "decisions", "flags", "foods"))
