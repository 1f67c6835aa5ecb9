"""Several processes send from one database: each chat in its order, nothing lost, at one pace together.

They come, stop, are killed and lose their lines to the database, on a driven clock, against a Bot API
that takes its time and says "retry after" now and then. The limits are those of
core.telegram.org/bots/faq#my-bot-is-hitting-limits-how-do-i-avoid-this: about 30 messages a second over
all chats, about one in a chat, with short bursts.
"""

from __future__ import annotations

import asyncio
import random
from collections import Counter
from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from itertools import groupby
from typing import Any

import pytest
from sqlalchemy import text as sql
from sqlalchemy.exc import DBAPIError
from sqlmodel import Session, col, select
from telegram.error import RetryAfter

from bot.core.chat import outbox
from bot.core.timing.clock import DrivenClock
from bot.core.turn import Context, Turn
from bot.core.use_cases import UseCases
from bot.store.db import is_sqlite, make_engine, transaction
from bot.store.shares import ALL, SHARES, NotHeldError, share_of
from bot.store.tables.traffic import OutboxRow, Urgency
from bot.telegram.outcomes import Outcomes
from bot.telegram.pace import Pace
from bot.telegram.sender import Sender
from bot.telegram.uploads import Uploads
from tests.support.line import Line

START = datetime(2027, 6, 1, 7, tzinfo=UTC)
CHATS = range(100, 160)
REST_S = 3
USE_CASES = UseCases(lambda _turn: None, lambda *_: None, lambda *_: None)


class SlowLine(Line):
    """Takes its time before and after it takes a message in. `began`: when each call did, with its
    chat; `cut`: what was underway when its process was killed.
    """

    def __init__(self, clock: DrivenClock, chance: random.Random, refused: float) -> None:
        super().__init__()
        self._clock, self._chance, self._refused = clock, chance, refused
        self.asleep = 0
        self.began: list[tuple[float, int]] = []
        self.slowed: list[tuple[float, int]] = []
        self.cut: Counter[str] = Counter()

    async def call(
        self, method: str, payload: dict[str, Any], files: Mapping[str, Any] | None = None
    ) -> Any:
        self.began.append((self._clock.monotonic(), payload["chat_id"]))
        try:
            await self._passes()
            refused = self._chance.random() < self._refused
            answer = None if refused else await super().call(method, payload, files)
            await self._passes()
        except asyncio.CancelledError:
            self.cut[payload["text"]] += 1
            raise
        if refused:
            self.slowed.append((self._clock.monotonic(), payload["chat_id"]))
            raise RetryAfter(timedelta(seconds=REST_S))
        return answer

    async def _passes(self) -> None:
        self.asleep += 1
        try:
            await self._clock.sleep(self._chance.uniform(0.01, 0.2))
        finally:
            self.asleep -= 1


class Office:
    """Processes that send, and whoever writes."""

    def __init__(self, url: str, seed: int, *, refused: float = 0.0) -> None:
        self.chance = random.Random(seed)
        self.clock = DrivenClock(START)
        self.line = SlowLine(self.clock, random.Random(seed + 1), refused)
        self.url = url
        self.engine = make_engine(url)
        self.senders: list[Sender] = []
        self.lines_lost = False
        self.said: dict[tuple[int, bool], list[str]] = {}

    def comes(self) -> Sender:
        engine = make_engine(self.url)

        def context() -> Context:
            return Context(self.clock.now())

        sender = Sender(
            engine, self.line, self.clock,
            lambda pace: Outcomes(engine, USE_CASES, self.clock, context, pace),
            Uploads(engine, USE_CASES, context),
        )  # fmt: skip
        self.senders.append(sender)
        return sender

    async def stops(self, sender: Sender) -> None:
        self.senders.remove(sender)
        closing = asyncio.ensure_future(sender.close())
        while not closing.done():
            self.clock.advance(timedelta(seconds=0.05))
            await asyncio.sleep(0)
        sender._engine.dispose()

    async def is_killed(self, sender: Sender) -> None:
        self.senders.remove(sender)
        for task in (tasks := list(sender._tasks)):
            task.cancel()
        await asyncio.gather(*tasks, return_exceptions=True)
        sender._shares.release()  # as the system and the server do for it
        sender._engine.dispose()

    def loses_its_line(self, sender: Sender) -> None:
        """To the database, as by an administrator's hand."""
        if is_sqlite(self.engine) or sender._shares._connection is None:  # type: ignore[attr-defined]
            return
        self.lines_lost = True
        number = sender._shares._connection.connection.driver_connection.info.backend_pid  # type: ignore[attr-defined]
        with self.engine.begin() as connection:
            connection.execute(
                sql("SELECT pg_terminate_backend(:number, 5000)"), {"number": number}
            )

    def say(self, *chats: int, urgent: bool = False) -> None:
        how = outbox.Delivery(urgency=Urgency.URGENT if urgent else Urgency.ORDINARY)
        with transaction(self.engine) as session:
            turn = Turn(session, Context(self.clock.now()))
            for chat in chats:
                before = self.said.setdefault((chat, urgent), [])
                before.append(f"{chat}{'!' if urgent else '.'}{len(before)}")
                outbox.say(turn, chat_id=chat, text=before[-1], how=how)

    async def look(self) -> None:
        """Everybody looks once, in any order, and then some time goes by."""
        for sender in self.chance.sample(self.senders, len(self.senders)):
            try:
                await sender.step()
            except (DBAPIError, NotHeldError):
                assert self.lines_lost
        self.clock.advance(timedelta(seconds=self.chance.uniform(0.01, 0.3)))
        await self.settle()

    async def settle(self) -> None:
        """Until all that is underway waits for the line."""
        while sum(len(sender._tasks) for sender in self.senders) > self.line.asleep:
            await asyncio.sleep(0)

    async def until_all_is_sent(self) -> None:
        for _ in range(3000):
            await self.look()
            if not self.open_rows():
                return
        raise AssertionError(f"left open: {self.open_rows()}")

    def open_rows(self) -> list[int | None]:
        with Session(self.engine) as session:
            is_open = col(OutboxRow.status).in_(("waiting", "sending"))
            return list(session.exec(select(OutboxRow.id).where(is_open)))

    async def close(self) -> None:
        for sender in list(self.senders):
            await self.stops(sender)
        self.engine.dispose()

    # What has to hold

    def nothing_is_lost_and_each_chat_has_its_order(self) -> None:
        for (chat, urgent), said in self.said.items():
            heard = [words for words in self.line.heard_in(chat) if ("!" in words) == urgent]
            assert [words for words, _ in groupby(heard)] == said

    def nothing_is_said_twice_but_what_a_kill_cut_off(self) -> None:
        counts = Counter(payload["text"] for _, payload in self.line.heard)
        for words, count in counts.items():
            assert count <= 1 + self.line.cut[words], words

    def the_pace_is_kept_by_all_together(self) -> None:
        for per_second, began in (
            (30, [at for at, _ in self.line.began]),
            # Three ahead and one more, and one for the share when it changed hands.
            *((5, [at for at, chat in self.line.began if chat == one]) for one in CHATS),
        ):
            for at, after_so_many in zip(began, began[per_second:], strict=False):
                assert after_so_many - at > 1 - 1e-6, (per_second, at)

    def who_is_told_to_rest_rests(self) -> None:
        for at, chat in self.line.slowed:
            for began, other in self.line.began:
                assert other != chat or not at < began < at + REST_S - 1e-6, (chat, at, began)


def test_in_a_second_in_which_a_rush_begins_and_its_sender_is_killed_thirty_are_sent_at_most() -> (
    None
):
    killed, next_one = Pace(0.0), Pace(0.0)
    killed.hold(ALL, 0.0)
    at, began = 60.0, []
    for pace, until in ((killed, 60.2), (next_one, 62.0)):
        pace.hold(ALL, at)
        while at < until:
            chat = len(began)
            if pace.seconds_until_ready(chat, "sendMessage", at) == 0:
                pace.take(chat, "sendMessage", at)
                began.append(at)
            at += 0.001
    assert began[30] - began[0] >= 1 > began[29] - began[0] - 0.05


async def play(url: str, seed: int, looks: int) -> Counter[str]:
    office = Office(url, seed, refused=0.01)
    happened: Counter[str] = Counter()
    for _ in range(looks):
        for _ in range(office.chance.choice((0, 0, 0, 1))):
            office.say(office.chance.choice(CHATS), urgent=office.chance.random() < 0.3)
        if len(office.open_rows()) < len(CHATS):
            office.say(*CHATS)  # there is always more than may go
        what = office.chance.choices(("", "comes", "stops", "killed", "line"), (30, 4, 1, 1, 2))[0]
        if what == "comes" and len(office.senders) < 5:
            office.comes()
            happened["comes"] += 1
        elif what and what != "comes" and office.senders:
            sender = office.chance.choice(office.senders)
            if what == "line":
                office.loses_its_line(sender)
            else:
                await (office.stops if what == "stops" else office.is_killed)(sender)
            happened[what] += 1
        await office.look()
    office.comes()
    await office.until_all_is_sent()
    office.nothing_is_lost_and_each_chat_has_its_order()
    office.nothing_is_said_twice_but_what_a_kill_cut_off()
    office.the_pace_is_kept_by_all_together()
    office.who_is_told_to_rest_rests()
    await office.close()
    return happened


async def test_whoever_comes_stops_or_is_killed_each_chat_is_sent_to_in_order_at_one_pace(
    any_url: str,
) -> None:
    happened = await play(any_url, seed=7, looks=150)
    assert set(happened) == {"comes", "stops", "killed", "line"}


@pytest.mark.soak
@pytest.mark.parametrize("seed", range(20, 30))
async def test_several_senders_hold_together_whatever_comes(any_url: str, seed: int) -> None:
    await play(any_url, seed, looks=600)


async def test_on_postgresql_two_divide_the_chats_and_one_takes_all_when_the_other_is_killed(
    postgres_url: str,
) -> None:
    office = Office(postgres_url, seed=1)
    first = office.comes()
    await office.look()
    assert first._pace.held == ALL
    second = office.comes()
    for _ in range(2):
        await office.look()
        office.clock.advance(timedelta(seconds=1))
    await office.look()
    assert len(first._pace.held) == len(second._pace.held) == SHARES / 2
    assert first._pace.held | second._pace.held == ALL
    await office.is_killed(first)
    office.clock.advance(timedelta(seconds=1))
    await office.look()
    assert second._pace.held == ALL
    await office.close()


async def test_on_sqlite_one_sends_and_another_takes_over_when_it_stops_or_is_killed(
    sqlite_url: str,
) -> None:
    office = Office(sqlite_url, seed=1)
    first, second = office.comes(), office.comes()
    for sender in (first, second):
        await sender.step()
    assert (first._pace.held, second._pace.held) == (ALL, set())
    await office.is_killed(first)
    office.clock.advance(timedelta(seconds=1))
    await second.step()
    assert second._pace.held == ALL
    await office.close()


async def test_what_a_process_that_lost_its_hold_and_lives_has_underway_is_not_sent_by_another(
    postgres_url: str,
) -> None:
    office = Office(postgres_url, seed=1)
    first, second = office.comes(), office.comes()
    for _ in range(3):
        await office.look()
        office.clock.advance(timedelta(seconds=1))
    chat = next(chat for chat in CHATS if share_of(chat) in first._pace.held)
    office.say(chat)
    await first.step()
    await office.settle()
    office.loses_its_line(first)
    office.clock.advance(timedelta(seconds=0.001))
    second._look_at = office.clock.monotonic()
    await second.step()  # before the first has noticed
    assert second._pace.held == ALL and office.line.asleep == 1
    await office.until_all_is_sent()
    office.nothing_is_said_twice_but_what_a_kill_cut_off()
    await office.close()


async def test_all_are_to_rest_where_two_processes_are_told_so_in_a_chat_each(
    postgres_url: str,
) -> None:
    office = Office(postgres_url, seed=1)
    first, second = office.comes(), office.comes()
    for _ in range(3):
        await office.look()
        office.clock.advance(timedelta(seconds=1))
    chats = [next(c for c in CHATS if share_of(c) in s._pace.held) for s in (first, second)]
    for chat in chats:
        office.line.fail(RetryAfter(timedelta(seconds=REST_S)), on=chat)
        office.say(chat)
        for _ in range(4):
            await office.look()
    told = office.clock.monotonic()
    before = len(office.line.began)
    for chat in CHATS:
        office.say(chat)
    while office.clock.monotonic() < told + REST_S - 2:
        await office.look()
    assert len(office.line.began) == before
    await office.until_all_is_sent()
    assert len(office.line.began) == before + len(CHATS) + 2
    await office.close()
