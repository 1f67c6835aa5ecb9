"""From the outbox to Telegram: at its pace, in order within a chat, at least once.

One process sends at a time (it holds the right "send"), so a row found `sending` that is not on its
way from here was left by a crash, and nobody knows whether it arrived: it is sent again. So is one
whose connection died underway, a few times. Both may put a message twice; neither may lose one.
Answers to taps and menus, and what is urgent, have lanes of their own in each chat and overtake its
messages; urgent ones go first over all chats too. A file
that failed lets those behind it pass until it is tried again, so that no picture holds up an alert.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence
from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any

import structlog
from sqlalchemy import (
    ARRAY,
    ColumnElement,
    Engine,
    Integer,
    and_,
    any_,
    bindparam,
    case,
    func,
    not_,
)
from sqlmodel import Session, col, select
from sqlmodel.sql.expression import SelectOfScalar

from bot.core.chat.outbox import ON_TOPIC, Topic
from bot.core.timing.clock import Clock
from bot.core.timing.waiting import keep_going, wait_for
from bot.store.db import claiming
from bot.store.sole import LeaderLease
from bot.store.tables.traffic import VIEWS_WAIT, OutboxRow, Urgency
from bot.telegram.outcomes import Outcomes, as_new_message
from bot.telegram.pace import LEAVES_NO_MESSAGE, Pace
from bot.telegram.transport import Transport
from bot.telegram.uploads import Uploads

LOOK_AGAIN_S = 1.0
HEADS_AT_ONCE = 200
OPEN = ("waiting", "sending")

_log = structlog.get_logger(__name__)


# Made once, since every look at the outbox asks it.
_LANE = case(
    (col(OutboxRow.method).in_(sorted(LEAVES_NO_MESSAGE)), -1),
    (col(OutboxRow.urgency) >= Urgency.URGENT, 1),
    else_=0,
)
_PUT_OFF = and_(
    col(OutboxRow.attached).is_not(None),
    col(OutboxRow.status) == "waiting",
    col(OutboxRow.not_before) > bindparam("now"),
)
_FIRST = (
    select(func.min(OutboxRow.id))
    .where(col(OutboxRow.status).in_(OPEN), not_(_PUT_OFF))
    .group_by(col(OutboxRow.chat_id), _LANE)
)

#: What has waited for long takes its turn among the mornings, be it a view or a picture.
_IS_NEW = col(OutboxRow.created_at) > bindparam("long_ago")
_URGENCY = case(
    (and_(col(OutboxRow.urgency) < Urgency.ORDINARY, not_(_IS_NEW)), Urgency.ORDINARY.value),
    else_=col(OutboxRow.urgency),
)


def _heads(is_first: ColumnElement[bool]) -> SelectOfScalar[OutboxRow]:
    return (
        select(OutboxRow)
        .where(
            is_first, col(OutboxRow.status).in_(OPEN), col(OutboxRow.not_before) <= bindparam("now")
        )
        .order_by(
            _URGENCY.desc(), and_(col(OutboxRow.attached).is_not(None), _IS_NEW), col(OutboxRow.id)
        )
        .limit(HEADS_AT_ONCE)
        .with_for_update(skip_locked=True)
    )


# PostgreSQL may look for the rows of a plain `IN (SELECT ...)` once for each row that waits, by a plan
# that it made while few did: a look took ten seconds with 3,000 waiting. An array is made once.
_HEADS = {
    "sqlite": _heads(col(OutboxRow.id).in_(_FIRST)),
    "postgresql": _heads(
        col(OutboxRow.id) == any_(func.array(_FIRST.scalar_subquery(), type_=ARRAY(Integer)))
    ),
}
_NEWER = (
    select(OutboxRow.id)
    .where(
        *ON_TOPIC, col(OutboxRow.id) > bindparam("row"), col(OutboxRow.status).in_((*OPEN, "sent"))
    )
    .limit(1)
)


@dataclass(frozen=True, slots=True)
class Call:
    """One outbox row on its way."""

    row_id: int
    chat_id: int
    method: str
    payload: dict[str, Any]
    attached: dict[str, Any] | None = None


class Sender:
    """Sends what waits in the outbox."""

    def __init__(
        self,
        engine: Engine,
        transport: Transport,
        clock: Clock,
        outcomes: Callable[[Pace], Outcomes],
        uploads: Uploads,
    ) -> None:
        self.wake = asyncio.Event()
        self._engine = engine
        self._transport = transport
        self._clock = clock
        self._pace = Pace(clock.monotonic())
        self._outcomes = outcomes(self._pace)
        self._uploads = uploads
        self._right = LeaderLease(engine, "send")
        self._underway: dict[int, asyncio.Task[None]] = {}

    async def run(self) -> None:
        """Send until cancelled."""
        await keep_going("sender", self._clock, self._step_and_wait)

    async def step(self) -> float:
        """Send off what may go now. Returns the seconds after which more may be ready."""
        if (pause := self._pace.seconds_until_any(self._clock.monotonic())) > 0:
            return pause  # whatever waits: to look through it each time would hold up what is noted
        if not await asyncio.to_thread(self._right.hold):
            return LOOK_AGAIN_S
        calls, wait = await asyncio.to_thread(self._claim, frozenset(self._underway))
        for call in calls:
            self._underway[call.row_id] = asyncio.create_task(self._send(call))
        return wait

    async def drain(self) -> None:
        """Wait for the calls that are underway."""
        while self._underway:
            await asyncio.gather(*self._underway.values(), return_exceptions=True)

    async def close(self) -> None:
        """Hear out the calls underway, and let another process send."""
        await self.drain()
        self._right.release()

    async def _step_and_wait(self) -> None:
        seconds = await self.step()
        await wait_for(self.wake, self._clock, seconds)

    async def _send(self, call: Call) -> None:
        try:
            try:
                result = await self._call(call)
            except Exception as error:
                await asyncio.to_thread(self._outcomes.failed, call.row_id, error)
            else:
                if result is None:
                    await asyncio.to_thread(self._outcomes.pointless, call.row_id)
                else:
                    await asyncio.to_thread(self._outcomes.arrived, call.row_id, result)
        except Exception:
            # The row stays `sending` and is taken up again as one of unknown outcome.
            _log.exception("an outcome could not be noted", outbox_id=call.row_id)
            await self._clock.sleep(LOOK_AGAIN_S)
        finally:
            del self._underway[call.row_id]
            self.wake.set()

    async def _call(self, call: Call) -> Any:
        """What Telegram answered; None where there is nothing left to send."""
        if call.attached is None:
            return await self._transport.call(call.method, call.payload)
        made = await asyncio.to_thread(self._uploads.make, call.method, call.payload, call.attached)
        if made is None:
            return None
        return await self._transport.call(made.method, made.payload, made.files)

    def _claim(self, underway: frozenset[int]) -> tuple[list[Call], float]:
        """Mark what may go now as `sending`, for good before the first byte leaves."""
        now, ran = self._clock.now(), self._clock.monotonic()
        wait = LOOK_AGAIN_S
        calls: list[Call] = []
        with claiming(self._engine) as session:
            for row in self.heads(session, now):
                assert row.id is not None
                if row.id in underway:
                    continue
                pause = self._pace.seconds_until_ready(row.chat_id, row.method, ran)
                if pause > 0:
                    wait = min(wait, pause)
                    if self._pace.seconds_until_any(ran) > 0:
                        break
                    continue
                if self._is_superseded(session, row):
                    row.status = "dropped"
                    session.add(row)
                    wait = 0.0
                    continue
                self._pace.take(row.chat_id, row.method, ran)
                calls.append(self._begin(session, row))
        return calls, wait

    @staticmethod
    def heads(session: Session, now: datetime) -> Sequence[OutboxRow]:
        """The first open row of each lane of each chat, where it is not put off."""
        asked = {"now": now, "long_ago": now - VIEWS_WAIT}
        return session.exec(_HEADS[session.get_bind().dialect.name], params=asked).all()

    @staticmethod
    def _is_superseded(session: Session, row: OutboxRow) -> bool:
        """Whether a newer message on the same topic, or none to edit, makes this one pointless."""
        if row.edits_outbox_id is not None:
            edited = session.get(OutboxRow, row.edits_outbox_id)
            return edited is not None and edited.status == "dropped"
        topic = Topic.of(row)
        if topic is None:
            return False
        asked = asdict(topic) | {"row": row.id}
        return session.exec(_NEWER, params=asked).first() is not None

    @staticmethod
    def _begin(session: Session, row: OutboxRow) -> Call:
        assert row.id is not None
        if row.status == "sending":
            row.doubts += 1
            _log.warning("sending again what a crash left open", outbox_id=row.id)
        row.status = "sending"
        row.attempts += 1
        session.add(row)
        return Call(row.id, row.chat_id, *addressed(session, row), row.attached)


def addressed(session: Session, row: OutboxRow) -> tuple[str, dict[str, Any]]:
    """The method and fields of a row, once it is known which message it is to edit.

    An edit of a message that never arrived becomes a message of its own.
    """
    payload = dict(row.payload)
    if row.method in LEAVES_NO_MESSAGE:
        return row.method, payload  # they name the tap, or the scope, and take no chat
    payload["chat_id"] = row.chat_id
    if row.edits_outbox_id is None:
        return row.method, payload
    edited = session.get(OutboxRow, row.edits_outbox_id)
    if edited is None or edited.message_id is None:
        return "sendMessage", as_new_message(payload)
    return row.method, payload | {"message_id": edited.message_id}
