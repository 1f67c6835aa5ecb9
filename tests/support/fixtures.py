"""What every test has: real databases, and no network. Loaded by the processes that run tests, and not
by the one that hands them out.
"""

from __future__ import annotations

import socket
from collections.abc import Iterator

import pytest

from bot.words import languages
from tests.support.chats import Telegram, telegram_process
from tests.support.databases import (  # noqa: F401 - fixtures
    another_database,
    any_engine,
    any_url,
    own_engine,
    own_url,
    postgres,
    postgres_engine,
    postgres_url,
    shaped_sqlite,
    sqlite_engine,
    sqlite_url,
)
from tests.support.foreign import OURS, heed_readers, in_code, write_plain_catalogue  # noqa: F401 - one is a fixture
from tests.support.network import no_network  # noqa: F401 - a fixture
from tests.support.prepared import later, peak_week, team_at  # noqa: F401 - fixtures
from tests.support.rehearsed import after_a_morning, opened, rehearsed  # noqa: F401 - fixtures


def pytest_configure() -> None:
    heed_readers()


@pytest.fixture(scope="session", autouse=True)
def foreign_language(tmp_path_factory: pytest.TempPathFactory) -> None:
    """Every second person of a test has their Telegram set to a language that reads like English."""
    languages.CATALOGUES = tmp_path_factory.mktemp("locale")
    write_plain_catalogue(languages.CATALOGUES)


@pytest.fixture
def ours(monkeypatch: pytest.MonkeyPatch) -> None:
    """The catalogues that are delivered."""
    monkeypatch.setattr(languages, "CATALOGUES", OURS)


@pytest.fixture
def free_port() -> int:
    """A port of loopback that nobody listens on."""
    with socket.socket() as listener:
        listener.bind(("127.0.0.1", 0))
        return int(listener.getsockname()[1])


@pytest.fixture
def telegram() -> Iterator[Telegram]:
    """A Bot API server of the test's own."""
    with telegram_process() as standin:
        yield standin
