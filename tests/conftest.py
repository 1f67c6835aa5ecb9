"""What every test has: real databases, and no network."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from tests.support.chats import Telegram, telegram_process
from tests.support.databases import (  # noqa: F401 - fixtures
    any_engine,
    any_url,
    postgres,
    postgres_engine,
    postgres_url,
    shaped_sqlite,
    sqlite_engine,
    sqlite_url,
)
from tests.support.network import no_network  # noqa: F401 - a fixture


def pytest_configure(config: pytest.Config) -> None:
    config.addinivalue_line("markers", "loopback: may connect to this machine")


@pytest.fixture
def telegram() -> Iterator[Telegram]:
    """A Bot API server of the test's own."""
    with telegram_process() as standin:
        yield standin
