"""From the inbox into the use cases: in order within a chat, and nobody held up by a bad row."""

from __future__ import annotations

import threading
from collections.abc import Callable, Sequence
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from sqlalchemy import Engine, event, text
from sqlmodel import Session, col, select

from bot.core.chat import outbox
from bot.core.timing.clock import DrivenClock
from bot.core.turn import ChatTurn, Context, Turn
from bot.core.use_cases import Came, Runtime, UseCases
from bot.store.db import make_engine
from bot.store.tables.traffic import VIEWS_WAIT, InboxRow, OutboxRow, Urgency
from bot.telegram.intake import Intake
from bot.telegram.worker import Worker

START = datetime(2027, 6, 1, 7, tzinfo=UTC)
INES, MARA = 11, 12


def _echo(turn: ChatTurn) -> None:
    outbox.say(turn, chat_id=turn.incoming.chat_id, text=turn.incoming.text)
    if turn.incoming.text == "bad":
        raise ZeroDivisionError


def _apologise(turn: Turn, chat_id: int, urgent: str) -> None:
    outbox.say(turn, chat_id=chat_id, text=f"sorry {urgent}".strip())


def _how_urgent(_session: Session, _now: datetime, came: Sequence[Came]) -> list[Urgency]:
    """By what is written, as the use cases would know it of danger and of a stage day."""
    known = {"chest": Urgency.URGENT, "stage": Urgency.STAGE_DAY, "/week": Urgency.VIEW}
    return [
        next((how for word, how in known.items() if word in said), Urgency.ORDINARY)
        for _, said in came
    ]


class Office:
    """A worker at work on a real database, with an echo as its only use case."""

    def __init__(
        self,
        engine: Engine,
        incoming: Callable[[ChatTurn], None] = _echo,
        poisoned: Callable[[Turn, int, str], None] = _apologise,
    ) -> None:
        self.engine = engine
        self.clock = DrivenClock(START)
        self.worker = Worker(
            Runtime(
                engine,
                UseCases(
                    incoming=incoming,
                    due=lambda turn, row: None,
                    undeliverable=lambda turn, row: None,
                    poisoned=poisoned,
                ),
                self.clock,
                lambda: Context(self.clock.now()),
            ),
            threads=4,
            handled=lambda: None,
        )

    def receive(self, *updates: dict[str, Any]) -> None:
        Intake(self.engine, self.clock, _how_urgent).store(updates)

    async def work(self) -> None:
        """As long as there is something to begin."""
        while True:
            await self.worker.step()
            if not self.worker.busy:
                return
            await self.worker.drain()

    async def work_for(self, seconds: int) -> None:
        for _ in range(seconds):
            await self.work()
            self.clock.advance(timedelta(seconds=1))
        await self.work()

    def said(self, chat_id: int) -> list[str]:
        with Session(self.engine) as session:
            rows = select(OutboxRow).where(OutboxRow.chat_id == chat_id).order_by("id")
            return [row.payload["text"] for row in session.exec(rows)]

    def statuses(self) -> dict[int, str]:
        with Session(self.engine) as session:
            return {row.update_id: row.status for row in session.exec(select(InboxRow))}


@pytest.fixture
async def office(any_engine: Engine) -> Any:
    office = Office(any_engine)
    yield office
    await office.worker.close()


def text_update(update_id: int, chat_id: int, text: str) -> dict[str, Any]:
    person = {"id": chat_id, "is_bot": False, "first_name": "P"}
    return {
        "update_id": update_id,
        "message": {
            "message_id": update_id,
            "date": 1_780_000_000,
            "chat": {"id": chat_id, "type": "private", "first_name": "P"},
            "from": person,
            "text": text,
        },
    }


async def test_an_update_that_comes_twice_is_handled_once(office: Office) -> None:
    office.receive(text_update(1, INES, "a"), text_update(1, INES, "a"))
    await office.work()
    office.receive(text_update(1, INES, "a"))
    await office.work()

    assert office.said(INES) == ["a"]


async def test_updates_of_a_chat_are_handled_in_their_order_however_they_come(
    office: Office,
) -> None:
    office.receive(text_update(3, INES, "c"), text_update(1, INES, "a"), text_update(2, INES, "b"))
    await office.work()

    assert office.said(INES) == ["a", "b", "c"]


async def test_an_update_that_comes_after_its_successors_is_handled_all_the_same(
    office: Office,
) -> None:
    office.receive(text_update(5, INES, "later"))
    await office.work()
    office.receive(text_update(4, INES, "earlier"))
    await office.work()

    assert office.said(INES) == ["later", "earlier"]


@pytest.mark.soak
async def test_a_thousand_updates_of_fifty_chats_are_each_handled_once_and_in_order(
    office: Office,
) -> None:
    office.receive(*(text_update(n, 100 + n % 50, str(n)) for n in range(1, 1001)))
    await office.work()

    for chat in range(50):
        expected = [str(n) for n in range(1, 1001) if n % 50 == chat]
        assert office.said(100 + chat) == expected


async def test_chats_are_served_side_by_side(postgres_engine: Engine) -> None:
    """Each of the two waits, inside its transaction, until the other has begun as well."""
    begun = {INES: threading.Event(), MARA: threading.Event()}

    def wait_for_the_other(turn: ChatTurn) -> None:
        begun[turn.incoming.chat_id].set()
        assert all(event.wait(timeout=10) for event in begun.values())
        _echo(turn)

    office = Office(postgres_engine, wait_for_the_other)
    office.receive(text_update(1, INES, "a"), text_update(2, MARA, "b"))
    await office.work()
    await office.worker.close()

    assert (office.said(INES), office.said(MARA)) == (["a"], ["b"])


async def test_two_processes_at_one_inbox_handle_each_update_once_and_in_order(
    any_url: str,
) -> None:
    engines = [make_engine(any_url), make_engine(any_url)]
    offices = [Office(engine) for engine in engines]
    offices[0].receive(*(text_update(n, 100 + n % 5, str(n)) for n in range(1, 101)))
    while "new" in offices[0].statuses().values():
        for office in offices:
            await office.worker.step()
        for office in offices:
            await office.worker.drain()

    for chat in range(5):
        expected = [str(n) for n in range(1, 101) if n % 5 == chat]
        assert offices[0].said(100 + chat) == expected
    for office, engine in zip(offices, engines, strict=True):
        await office.worker.close()
        engine.dispose()


async def test_a_chat_that_another_process_serves_is_left_to_it_and_others_are_served_meanwhile(
    postgres_engine: Engine,
) -> None:
    office = Office(postgres_engine)
    office.receive(text_update(1, INES, "one"), text_update(2, MARA, "two"))
    begun = 0

    def count(*_: object) -> None:
        nonlocal begun
        begun += 1

    with postgres_engine.connect() as other, other.begin():
        other.execute(text("SELECT pg_advisory_xact_lock(:chat)"), {"chat": INES})
        await office.worker.step()
        await office.worker.drain()
        event.listen(postgres_engine, "begin", count)
        await office.worker.step()
        await office.worker.drain()
        event.remove(postgres_engine, "begin", count)
        assert office.said(MARA) == ["two"]
        assert office.said(INES) == []
        assert begun <= 1  # it looks what there is, and does not ask for the chat again
    office.clock.advance(timedelta(seconds=1))
    await office.worker.step()
    await office.worker.drain()

    assert office.said(INES) == ["one"]
    await office.worker.close()


async def test_what_a_failed_attempt_wrote_is_undone(office: Office) -> None:
    office.receive(text_update(1, INES, "bad"))
    await office.work()

    assert office.said(INES) == []
    assert office.statuses() == {1: "new"}


async def test_a_row_that_keeps_failing_is_set_aside_and_its_person_told(office: Office) -> None:
    office.receive(text_update(1, INES, "bad"), text_update(2, INES, "next"))
    office.receive(text_update(3, MARA, "other"))
    await office.work()
    assert office.said(MARA) == ["other"]  # nobody else waits
    await office.work_for(seconds=10)

    assert office.said(INES) == ["sorry", "next"]
    assert office.statuses() == {1: "poison", 2: "done", 3: "done"}


async def test_an_update_that_cannot_be_read_is_set_aside_at_once_and_its_person_told(
    office: Office,
) -> None:
    broken = {"update_id": 1, "message": {"chat": {"id": INES}, "message_id": "?"}}
    office.receive(broken, {"update_id": 2, "message": 5}, text_update(3, INES, "next"))
    await office.work()

    assert office.said(INES) == ["sorry", "next"]
    assert office.statuses() == {1: "poison", 2: "poison", 3: "done"}


async def test_a_row_is_set_aside_even_where_telling_its_person_fails(any_engine: Engine) -> None:
    def fail(turn: Turn, chat_id: int, urgent: str) -> None:
        raise ZeroDivisionError

    office = Office(any_engine, poisoned=fail)
    office.receive(text_update(1, INES, "bad"), text_update(2, INES, "next"))
    await office.work_for(seconds=10)
    await office.worker.close()

    assert office.said(INES) == ["next"]
    assert office.statuses() == {1: "poison", 2: "done"}


async def test_a_row_that_fails_once_is_handled_a_little_later(any_engine: Engine) -> None:
    failures = iter([ZeroDivisionError()])

    def once(turn: ChatTurn) -> None:
        for error in failures:
            raise error
        _echo(turn)

    office = Office(any_engine, once)
    office.receive(text_update(1, INES, "a"), text_update(2, INES, "b"))
    await office.work()
    assert office.said(INES) == []
    await office.work_for(seconds=2)
    await office.worker.close()

    assert office.said(INES) == ["a", "b"]


async def test_what_the_bot_has_no_business_with_is_done_without_a_word(office: Office) -> None:
    office.receive({"update_id": 1, "channel_post": {"a": 1}}, {"no": "id"}, [])  # type: ignore[arg-type]
    await office.work()

    assert list(office.statuses().values()) in (["done"], ["poison"])


def test_what_was_said_and_went_with_somebodys_data_keeps_nothing_from_being_done(
    any_engine: Engine,
) -> None:
    def says_and_deletes(turn: ChatTurn) -> None:
        for said in ("goes", "stays"):
            outbox.say(turn, chat_id=7, text=said)
        gone, _ = turn.session.exec(select(OutboxRow).order_by(col(OutboxRow.id))).all()
        turn.session.delete(gone)
        turn.session.flush()
        turn.session.expire_all()

    office = Office(any_engine, says_and_deletes)
    office.receive(text_update(1, 7, "delete everything"))
    assert office.worker.handle(1, 7)
    with Session(any_engine) as session:
        assert [row.payload["text"] for row in session.exec(select(OutboxRow))] == ["stays"]


async def test_after_danger_comes_a_stage_day_then_mornings_and_then_views_each_by_arrival(
    any_engine: Engine,
) -> None:
    handled: dict[str, Urgency] = {}
    office = Office(
        any_engine, lambda turn: handled.update({turn.incoming.text: turn.context.urgency})
    )
    for first, words in ((1, "/week"), (11, "60.1 5 3.5"), (21, "on stage"), (31, "chest pain")):
        office.receive(*(text_update(n, n, f"{words} {n}") for n in range(first, first + 4)))

    await office.work()
    await office.worker.close()

    of_each = [
        {text for text in handled if word in text} for word in ("chest", "stage", "60.1", "/")
    ]
    in_order = list(handled)
    assert [set(in_order[n : n + 4]) for n in range(0, 16, 4)] == of_each
    # As urgent as what is answered is the answer; whether one to danger is, the use case finds out.
    assert [{handled[text] for text in one} for one in of_each] == [
        {Urgency.ORDINARY}, {Urgency.STAGE_DAY}, {Urgency.ORDINARY}, {Urgency.VIEW},
    ]  # fmt: skip


async def test_a_view_that_has_waited_for_long_is_handled_among_the_mornings_behind_danger(
    any_engine: Engine,
) -> None:
    """In a rush that lasts, whoever asks for their week gets it; never before somebody in danger."""
    office = Office(any_engine)
    office.receive(text_update(1, 1, "/week"))
    office.clock.advance(VIEWS_WAIT)
    office.receive(text_update(2, 2, "/week"))
    office.receive(*(text_update(n, n, f"60.1 5 3.5 {n}") for n in range(10, 20)))
    office.receive(text_update(91, 91, "chest pain"), text_update(92, 92, "on stage"))

    found = [update_id for update_id, _, _ in office.worker._next_per_chat()]
    await office.worker.close()

    assert found == [91, 92, 1, *range(10, 20), 2]


async def test_what_may_be_urgent_is_handled_before_all_that_came_earlier(
    any_engine: Engine,
) -> None:
    handled: dict[str, None] = {}  # in order; a transaction that is run again counts once

    def handle(turn: ChatTurn) -> None:
        handled[turn.incoming.text] = None

    office = Office(any_engine, handle)
    office.receive(*(text_update(n, n, f"60.1 5 3.5 {n}") for n in range(1, 150)))
    office.receive(text_update(200, 200, "hello"), text_update(201, 200, "sudden chest pain"))

    await office.work()
    await office.worker.close()

    # Four chats are served side by side; within the chat the earlier word still comes first.
    order = list(handled)
    assert order.index("hello") < 4
    assert order.index("hello") < order.index("sudden chest pain") < 12
    assert len(order) == 151
