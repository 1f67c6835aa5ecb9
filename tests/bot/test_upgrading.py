"""From every earlier shape of the database, with people's weeks in it, and back: no row is lost."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest
from alembic import command
from alembic.script import ScriptDirectory
from sqlalchemy import Engine, inspect, text

from bot.store.db import is_sqlite, make_engine
from bot.store.migrate import _config, _pragma, check_agreement, is_at_head, upgrade_to_head
from tests.bench.crew import FIRST_ATHLETE_CHAT, fill, typed
from tests.bench.production import LINE, handle, worker_of

#: Before this one nothing was given out.
EARLIEST = "0010"


def lived(url: str) -> Engine:
    """Three athletes with a morning behind them, what they wrote, and what followed from it."""
    people = fill(url, 1, 3)
    engine = make_engine(url)
    worker = worker_of(engine)
    for words in (LINE, "I have a headache", "fullness 2"):
        handle(engine, worker, [typed(chat, words) for chat, _ in people])
    return engine


def earlier(engine: Engine) -> list[str]:
    """The revisions before the present one, the latest first."""
    with engine.connect() as connection:
        scripts = ScriptDirectory.from_config(_config(connection)).walk_revisions()
    return [one.revision for one in scripts if one.revision >= EARLIEST][1:]


def go_back(engine: Engine, revision: str) -> None:
    with engine.connect().execution_options(begin_immediate=True) as connection:
        if is_sqlite(engine):
            _pragma(connection, "foreign_keys = OFF")
        with connection.begin():
            command.downgrade(_config(connection), revision)
        if is_sqlite(engine):
            _pragma(connection, "foreign_keys = ON")


def rows(engine: Engine) -> dict[str, int]:
    with engine.connect() as connection:
        return {
            table: connection.execute(text(f'SELECT count(*) FROM "{table}"')).scalar_one()
            for table in inspect(connection).get_table_names()
            if table != "alembic_version"
        }


def is_as_good_as_new(engine: Engine, before: dict[str, int]) -> None:
    assert is_at_head(engine)
    check_agreement(engine)
    after = rows(engine)
    assert {table: after[table] for table in before} == before
    handle(engine, worker_of(engine), [typed(FIRST_ATHLETE_CHAT, "/today")])
    assert rows(engine)["outbox"] > after["outbox"]


def test_back_to_the_earliest_shape_and_up_again_every_row_is_there(any_url: str) -> None:
    engine = lived(any_url)
    before = rows(engine)
    go_back(engine, EARLIEST)
    then = rows(engine)
    assert then["checkin"] == 3 and then["decision"] >= 3
    assert then == {table: before[table] for table in then}

    upgrade_to_head(engine)

    is_as_good_as_new(engine, then)
    engine.dispose()


@pytest.mark.soak
def test_from_every_earlier_shape_the_bot_comes_up_and_answers(tmp_path: Path) -> None:
    engine = lived(f"sqlite:///{tmp_path / 'bot.sqlite3'}")
    for revision in earlier(engine):
        go_back(engine, revision)
        then = rows(engine)
        engine.dispose()
        copy = make_engine(
            f"sqlite:///{shutil.copy(tmp_path / 'bot.sqlite3', tmp_path / f'{revision}.sqlite3')}"
        )
        upgrade_to_head(copy)
        is_as_good_as_new(copy, then)
        copy.dispose()
    engine.dispose()
