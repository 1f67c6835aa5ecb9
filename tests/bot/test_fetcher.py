"""Files that people sent: fetched outside any transaction, handed over once, never left hanging."""

from __future__ import annotations

import asyncio
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import Engine
from sqlmodel import Session, select
from telegram.error import BadRequest, NetworkError, TimedOut

from bot.core.timing.clock import DrivenClock
from bot.core.turn import Context, Turn
from bot.core.use_cases import Runtime, UseCases
from bot.dispatcher import USE_CASES
from bot.store.db import transaction
from bot.store.prune import prune_traffic
from bot.store.tables.people import Person
from bot.store.tables.traffic import FetchRow
from bot.telegram.fetcher import ATTEMPTS, MOST_ATTEMPTS, Fetcher
from bot.telegram.transport import TooLarge
from tests.support.line import Line

NOW = datetime(2027, 6, 1, 12, tzinfo=UTC)


@dataclass
class Desk:
    """A domain of one sentence: it notes what came of each file."""

    engine: Engine
    line: Line = field(default_factory=Line)
    clock: DrivenClock = field(default_factory=lambda: DrivenClock(NOW))
    came: list[object] = field(default_factory=list)
    fail: list[Exception] = field(default_factory=list)

    def unpack(self, _row: FetchRow, content: bytes, _context: Context) -> object:
        if self.fail:
            raise self.fail.pop(0)
        return content.decode()

    def fetched(self, turn: Turn, row: FetchRow, outcome: object) -> None:
        self.came.append((row.kind, outcome))

    def fetcher(self) -> Fetcher:
        cases: UseCases = replace(USE_CASES, unpack=self.unpack, fetched=self.fetched)
        return Fetcher(
            Runtime(self.engine, cases, self.clock, lambda: Context(now=self.clock.now())),
            self.line,
        )

    def order(self, update_id: int = 1, most_bytes: int = 100) -> None:
        with transaction(self.engine) as session:
            if session.get(Person, 1) is None:
                session.add(
                    Person(telegram_user_id=5, chat_id=5, first_name="Ines", created_at=NOW)
                )
                session.flush()
            session.add(
                FetchRow(
                    update_id=update_id, person_id=1, kind="sheet", file_id="a",
                    most_bytes=most_bytes, not_before=NOW, created_at=NOW,
                )
            )  # fmt: skip

    def step(self) -> int:
        return asyncio.run(self.fetcher().step())

    def statuses(self) -> list[str]:
        with Session(self.engine) as session:
            return list(session.exec(select(FetchRow.status)))


@pytest.fixture
def desk(any_engine: Engine) -> Desk:
    made = Desk(any_engine)
    made.line.files["a"] = b"hello"
    return made


def test_a_file_is_fetched_and_handed_over_once(desk: Desk) -> None:
    desk.order()
    assert (desk.step(), desk.step()) == (1, 0)
    assert desk.came == [("sheet", "hello")]
    assert desk.statuses() == ["done"]


def test_a_line_that_dies_is_tried_again_later_and_then_given_up_aloud(desk: Desk) -> None:
    desk.order()
    desk.line.fail(*[TimedOut(), NetworkError("down")] * ATTEMPTS, on="a")
    for _ in range(ATTEMPTS - 1):
        assert desk.step() == 1
        assert desk.step() == 0  # not at once
        assert desk.came == []
        desk.clock.advance(timedelta(minutes=2))
    desk.step()
    assert desk.came == [("sheet", None)]
    assert desk.statuses() == ["failed"]


@pytest.mark.parametrize("error", [TooLarge(), BadRequest("wrong file_id")])
def test_what_can_never_be_had_is_said_at_once(desk: Desk, error: Exception) -> None:
    desk.order()
    desk.line.fail(error, on="a")
    desk.step()
    assert desk.came == [("sheet", None)]


def test_a_file_over_its_bound_is_not_handed_over(desk: Desk) -> None:
    desk.order(most_bytes=4)
    desk.step()
    assert desk.came == [("sheet", None)]


def test_what_a_crash_left_underway_is_fetched_again_after_its_lease(desk: Desk) -> None:
    desk.order()
    assert len(desk.fetcher()._claim()) == 1
    assert desk.step() == 0
    desk.clock.advance(timedelta(seconds=5))
    assert desk.step() == 1
    assert desk.came == [("sheet", "hello")]


def test_a_file_that_takes_long_to_come_is_fetched_by_nobody_else_meanwhile(desk: Desk) -> None:
    desk.order()
    quick = desk.line.download

    async def slow(file_id: str, most_bytes: int) -> bytes:
        await desk.clock.sleep(60)
        return await quick(file_id, most_bytes)

    async def play() -> None:
        desk.line.download = slow  # type: ignore[method-assign]
        fetching = asyncio.ensure_future(desk.fetcher().step())
        for _ in range(30):
            while desk.clock.sleepers < 2 and not fetching.done():  # the line and the lease
                await asyncio.sleep(0)
            assert desk.fetcher()._claim() == []
            desk.clock.advance(timedelta(seconds=2))
        await fetching

    asyncio.run(play())
    assert desk.came == [("sheet", "hello")]


def test_a_file_that_ends_whoever_reads_it_is_given_up_unread(desk: Desk) -> None:
    desk.order()
    with transaction(desk.engine) as session:
        session.get_one(FetchRow, 1).attempts = MOST_ATTEMPTS
    desk.step()
    assert desk.came == [("sheet", None)] and desk.statuses() == ["failed"]


def test_a_file_that_trips_the_program_does_not_hang(desk: Desk) -> None:
    desk.order()
    desk.fail = [ZeroDivisionError()] * ATTEMPTS
    for _ in range(ATTEMPTS):
        desk.step()
        desk.clock.advance(timedelta(minutes=3))
    assert desk.came == [("sheet", None)]


def test_settled_orders_are_cleared_out_with_the_rest_of_the_traffic(desk: Desk) -> None:
    desk.order(1)
    desk.step()
    desk.order(2)
    prune_traffic(desk.engine, NOW + timedelta(days=1))
    assert desk.statuses() == ["waiting"]
