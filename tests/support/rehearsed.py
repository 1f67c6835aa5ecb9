"""A rehearsal after its opening and one morning, played once in a run and gone on with in copies."""

from __future__ import annotations

import asyncio
import pickle
import shutil
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest

from bot.rehearsal.driver import Driver
from bot.rehearsal.page import Page
from bot.rehearsal.play import Heard, Play
from bot.rehearsal.script import ATHLETE, Act, Says, Step, Until
from bot.rehearsal.week import OPENING
from tests.support.once import once_a_run

OPENED, MORNING, HEARD = "opened.sqlite3", "morning.sqlite3", "heard"


class Sitting:
    """A rehearsal that a test holds in its hands."""

    def __init__(self, file: Path, heard: Heard) -> None:
        self.heard = heard
        self.driver = Driver(file, lambda what, now, _before: heard.append((what, now)))
        page = Page()
        page.clock, page.quiet = self.driver.clock, True
        self._play = Play(self.driver, page, heard)

    async def plays(self, *steps: Step) -> None:
        await self._play.act(Act("a test", steps))


async def _play(folder: Path) -> None:
    sitting = Sitting(folder / OPENED, [])
    for act in OPENING:
        await sitting.plays(*act.steps)
    await sitting.driver.close()
    shutil.copy(folder / OPENED, folder / MORNING)
    sitting = Sitting(folder / MORNING, [])
    await sitting.plays(Until("prompt"), Says(ATHLETE, "60.4 5 3.5 fine"))
    await sitting.driver.close()
    (folder / HEARD).write_bytes(pickle.dumps(sitting.heard))


@pytest.fixture(scope="session")
def rehearsed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder with both rehearsals, and what was heard on the morning."""

    def make(folder: Path) -> None:
        with ThreadPoolExecutor(1) as thread:  # a test's own loop may be there already
            thread.submit(lambda: asyncio.run(_play(folder))).result()

    return once_a_run(tmp_path_factory, "rehearsed", make)


@pytest.fixture
def after_a_morning(rehearsed: Path, tmp_path: Path) -> Callable[[], Sitting]:
    """Takes the rehearsal up in a copy of the test's own."""

    def take_up() -> Sitting:
        file = shutil.copy(rehearsed / MORNING, tmp_path / MORNING)
        return Sitting(Path(file), pickle.loads((rehearsed / HEARD).read_bytes()))

    return take_up


@pytest.fixture
def opened(rehearsed: Path, tmp_path: Path) -> Path:
    """A rehearsal's file after the opening, the test's own."""
    return Path(shutil.copy(rehearsed / OPENED, tmp_path / OPENED))
