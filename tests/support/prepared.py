"""A peak week made ready once and copied for each test: twenty questions need not be asked anew."""

from __future__ import annotations

import shutil
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest

from tests.support.warm import warm_engine
from tests.support.weeks import Team, in_peak_week
from tests.support.world import Someone, World


@pytest.fixture(scope="session")
def peak_week_file(
    shaped_sqlite: Path, tmp_path_factory: pytest.TempPathFactory
) -> tuple[Path, Team]:
    """A database with Ravi, Mira, her event, plan and limits, and the team as it then stood."""
    file = tmp_path_factory.mktemp("prepared") / "week.sqlite3"
    shutil.copy(shaped_sqlite, file)
    engine = warm_engine(f"sqlite:///{file}")
    team = in_peak_week(engine)
    engine.dispose()
    return file, team


@pytest.fixture
def team_at(
    peak_week_file: tuple[Path, Team], tmp_path: Path
) -> Iterator[Callable[[datetime], Team]]:
    """The team on a database of the test's own, at a moment; nothing said so far counts."""
    file, made = peak_week_file
    engine = warm_engine(f"sqlite:///{shutil.copy(file, tmp_path / 'week.sqlite3')}")

    def at(moment: datetime) -> Team:
        world = World(engine, moment, made.world.updates)
        team = replace(
            made,
            world=world,
            coach=Someone(world, made.coach.user_id, made.coach.name),
            athlete=Someone(world, made.athlete.user_id, made.athlete.name, 100),
        )
        world.until(moment)
        team.coach.hears()
        team.athlete.hears()
        return team

    yield at
    engine.dispose()
