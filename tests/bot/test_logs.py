"""Logs hold ids and kinds, and nothing about anybody's body, name or words."""

from __future__ import annotations

import json
import logging
import sqlite3
import sys
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
import structlog
from sqlalchemy import create_engine
from sqlalchemy.exc import OperationalError

from bot.core.logs import KEYS, WITHHELD
from bot.core.timing.clock import DrivenClock
from bot.core.turn import Context
from bot.core.use_cases import Runtime
from bot.dispatcher import USE_CASES
from bot.settings import load_settings
from bot.store.tables.traffic import OutboxRow
from bot.telegram.outcomes import Outcomes
from bot.telegram.pace import Pace
from bot.telegram.worker import Worker
from tests.bench.crew import into_inbox, typed
from tests.support.logged import logging_all
from tests.support.weeks import Team


@pytest.fixture
def lines() -> Iterator[Any]:
    """What was logged since: a function that returns the lines, parsed."""
    with logging_all() as stderr:
        yield lambda: [json.loads(line) for line in stderr.getvalue().splitlines()]


def test_a_key_that_is_not_on_the_list_is_dropped(lines: Any) -> None:
    structlog.get_logger("bot.x").info("an answer came", chat_id=5, weight_kg=61.2, text="flat")

    (line,) = lines()
    assert line["event"] == "an answer came"
    assert line["chat_id"] == 5
    assert set(line) <= KEYS


@pytest.mark.parametrize("value", ["I weigh 61.2 today", "Zoë", "a\nb", ["a word", "two words"]])
def test_a_sentence_or_a_name_under_a_listed_key_is_withheld(lines: Any, value: object) -> None:
    structlog.get_logger("bot.x").info("an answer came", kind=value)

    (line,) = lines()
    assert "weigh" not in json.dumps(line)
    assert WITHHELD in json.dumps(line["kind"])


def test_a_figure_in_the_phrase_itself_withholds_the_phrase(lines: Any) -> None:
    structlog.get_logger("bot.x").info("weight 61.2 came")

    assert lines()[0]["event"] == WITHHELD


def test_the_values_in_a_librarys_line_are_left_out(lines: Any) -> None:
    logging.getLogger("httpx").warning("HTTP Request: %s", "https://host/bot123:secret/getMe")
    logging.getLogger("some.library").error("she weighs 61.2")

    request, plain = lines()
    assert request["event"] == "HTTP Request: %s"
    assert "secret" not in json.dumps(request)
    assert "61.2" not in json.dumps(plain)
    assert plain["place"].startswith("test_logs:")


def test_routine_lines_of_libraries_are_not_printed_at_all(lines: Any) -> None:
    logging.getLogger("httpx").info("HTTP Request: %s", "https://host/bot123:secret/getMe")

    assert lines() == []


def test_an_error_is_told_by_its_class_and_our_own_places(
    lines: Any, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("BRIMLINE_LOG_LEVEL", "secret-61.2")
    try:
        load_settings()
    except Exception:
        structlog.get_logger("bot.x").exception("it failed")

    (line,) = lines()
    assert line["error"] == "SettingsError"
    assert [frame for frame in line["frames"] if frame.startswith("bot/settings.py:")]
    assert "61.2" not in json.dumps(line)


def test_a_database_that_cannot_write_is_told_by_its_own_code(lines: Any, tmp_path: Path) -> None:
    file = tmp_path / "one.sqlite3"
    sqlite3.connect(file).execute("CREATE TABLE t (x)").connection.close()
    engine = create_engine(f"sqlite:///file:{file}?mode=ro&uri=true")
    try:
        with engine.begin() as connection:
            connection.exec_driver_sql("INSERT INTO t VALUES (61.2)")
    except OperationalError:
        structlog.get_logger("bot.x").exception("storing failed")
    engine.dispose()

    (line,) = lines()
    assert line["error"] == "OperationalError<OperationalError:SQLITE_READONLY"
    assert "61.2" not in json.dumps(line)


def test_an_uncaught_error_is_logged_without_its_text(lines: Any) -> None:
    error = ValueError("weight 61.2")
    sys.excepthook(ValueError, error, None)

    (line,) = lines()
    assert line["error"] == "ValueError"
    assert "61.2" not in json.dumps(line)


async def test_what_somebody_wrote_is_followed_by_ids_to_the_messages_that_answered_it(
    lines: Any, team_at: Callable[[datetime], Team]
) -> None:
    team = team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))
    engine, clock = team.world.engine, DrivenClock(team.world.now)

    def context() -> Context:
        return Context(now=clock.now())

    raw = typed(team.athlete.user_id, "61.3 2 3.5 4 on target; I fainted")
    into_inbox(engine, [raw])
    worker = Worker(Runtime(engine, USE_CASES, clock, context), threads=1, handled=lambda: None)
    worker.handle(raw["update_id"], team.athlete.user_id)
    outcomes = Outcomes(engine, USE_CASES, clock, context, Pace(clock.monotonic()))
    (handled,) = (line for line in lines() if line["event"] == "an update was handled")
    assert handled["update_id"] == raw["update_id"]
    with team.world.session() as session:
        rows = [session.get_one(OutboxRow, number) for number in handled["outbox_ids"]]
    assert {row.chat_id for row in rows} == {team.athlete.user_id, team.coach.user_id}
    outcomes.arrived(rows[-1].id or 0, {"message_id": 7})
    sent = lines()[-1]
    assert (sent["event"], sent["outbox_id"]) == ("a message was sent", rows[-1].id)
    said = json.dumps(lines())
    assert not any(word in said for word in ("61.3", "faint", "Mira", "Ravi"))
