"""A peak week made ready once and copied for each test: twenty questions need not be asked anew."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import datetime
from pathlib import Path

import pytest
from sqlalchemy import Engine

from bot.words import languages
from tests.support.images import Image, fill, image_of
from tests.support.warm import warm_engine
from tests.support.weeks import AsPlayed, Team, in_peak_week
from tests.support.world import Someone, World

#: By a moment and the catalogues in force, what a database holds after the duties up to then were
#: done, and what had been read of each chat.
Later = dict[tuple[datetime, Path], tuple[Image, dict[int, int]]]
Another = Callable[[Path], str]


@pytest.fixture(scope="session")
def peak_week(
    another_database: Another, tmp_path_factory: pytest.TempPathFactory
) -> tuple[Image, Team]:
    """What a database holds with Ravi, Mira, her event, plan and limits, and the team as it stood."""
    engine = warm_engine(another_database(tmp_path_factory.mktemp("prepared")))
    team = in_peak_week(engine)
    image = image_of(engine)
    engine.dispose()
    return image, team


@pytest.fixture(scope="session")
def later() -> Later:
    """What has been played already, to be copied."""
    return {}


@pytest.fixture
def team_at(
    peak_week: tuple[Image, Team], later: Later, another_database: Another, tmp_path: Path
) -> Iterator[Callable[[datetime], Team]]:
    """The team on a database of the test's own, at a moment; nothing said so far counts."""
    prepared, made = peak_week
    opened: list[Engine] = []

    def at(moment: datetime) -> Team:
        if opened:  # a second moment goes on from the first
            return _wait(_team(made, opened[0], moment))
        kept = later.get((moment, languages.CATALOGUES))
        opened.append(warm_engine(another_database(tmp_path)))
        fill(opened[0], kept[0] if kept else prepared)
        team = _team(made, opened[0], moment)
        if kept:
            team.world.read_up_to.update(kept[1])
            key = ("team_at", moment, languages.CATALOGUES)
            team.as_played = AsPlayed.of(key, team.world)
            return team
        _wait(team)
        later[moment, languages.CATALOGUES] = (image_of(opened[0]), dict(team.world.read_up_to))
        return team

    yield at
    for engine in opened:
        engine.dispose()


def _team(made: Team, engine: Engine, moment: datetime) -> Team:
    world = World(engine, moment, made.world.updates)
    return replace(
        made,
        world=world,
        coach=Someone(world, made.coach.user_id, made.coach.name),
        athlete=Someone(world, made.athlete.user_id, made.athlete.name, 100),
    )


def _wait(team: Team) -> Team:
    """Every duty up to now is done, and what was said is read."""
    team.world.until(team.world.now)
    team.coach.hears()
    team.athlete.hears()
    return team
