"""How the tests are run; what they are given stands in `tests.support.fixtures`."""

from __future__ import annotations

import gc
import os
import sys

import pytest
from hypothesis import settings


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption(
        "--database",
        choices=["sqlite", "postgresql"],
        default="sqlite",
        help="what the bot's tests have as their database; with postgresql, those that have none, or "
        "one of a kind that they name, are left out, as they were no different",
    )


def pytest_configure(config: pytest.Config) -> None:
    # The processes that tests start keep what they compile; each would compile the product anew.
    os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
    sys.dont_write_bytecode = False  # nor need each run rewrite the assertions of every test anew
    config.addinivalue_line("markers", "loopback: may connect to this machine")
    config.addinivalue_line("markers", "sqlite: about how SQLite keeps things; else left out")
    config.addinivalue_line("markers", "soak: long; left out unless asked for with -m soak")
    hands_out = bool(config.getoption("numprocesses", None)) and not hasattr(config, "workerinput")
    settings.register_profile("unhurried", deadline=None)  # how busy a machine is says nothing
    settings.load_profile("unhurried")
    if not hands_out:  # it would wait for the whole product to be loaded, and never need it
        config.pluginmanager.import_plugin("tests.support.fixtures")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    if config.getoption("database") == "sqlite":
        return
    kept = [item for item in items if _may_have_either(item)]
    config.hook.pytest_deselected(items=[item for item in items if item not in kept])
    items[:] = kept


def _may_have_either(item: pytest.Item) -> bool:
    fixtures = set(getattr(item, "fixturenames", ()))
    return bool({"own_url", "another_database"} & fixtures) and not item.get_closest_marker(
        "sqlite"
    )


def pytest_collection_finish() -> None:
    """What was collected stays to the end, so that looking through it for garbage is in vain."""
    gc.collect()
    gc.freeze()
    gc.set_threshold(20_000, 20)  # and so is a look every few hundred objects, as is usual
