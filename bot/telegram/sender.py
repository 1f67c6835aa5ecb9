"""From the outbox to Telegram: at its pace, in order within a chat, at least once.

Each chat is sent to by one process (`bot/store/shares.py`), so a row found `sending` that is not on its
way from here was left by a crash, and nobody knows whether it arrived: it is sent again, a few times.
So is one whose connection died underway. Both may put a message twice; neither may lose one.
Answers to taps and menus, and what is urgent, have lanes of their own in each chat and overtake its
messages; urgent ones go first over all chats too. A file that failed lets those behind it pass until
it is tried again, so that no picture holds up an alert; so does an alert that has failed for a day.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Collection, Coroutine, Sequence
from dataclasses import asdict, dataclass
from datetime import datetime, timedelta
from functools import partial
from typing import Any, TypeVar

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
    literal_column,
    not_,
    or_,
)
from sqlalchemy.exc import DBAPIError
from sqlmodel import Session, col, select
from sqlmodel.sql.expression import SelectOfScalar

from bot.core.chat.outbox import ON_TOPIC, Topic
from bot.core.timing.clock import Clock
from bot.core.timing.waiting import growing_pause, keep_going, wait_for
from bot.store.base import id_of
from bot.store.shares import ALL, SHARES, share_of, shares_of
from bot.store.tables.traffic import VIEWS_WAIT, OutboxRow, Urgency, urgency_by
from bot.telegram import pace
from bot.telegram.outcomes import GIVE_UP_AFTER, Outcomes, as_new_message, give_up, is_worth_another
from bot.telegram.pace import LEAVES_NO_MESSAGE, Pace
from bot.telegram.transport import Transport
from bot.telegram.uploads import Uploads

LOOK_AGAIN_S = 1.0
AMONG_OTHERS_S = 0.25  # what another process has written for a chat of ours wakes nobody here
NOTED_AFTER = 6  # tries, which is a minute
HEADS_AT_ONCE = 200
OPEN = ("waiting", "sending")
LEFT_OPEN = "LeftOpenByACrash"

_Result = TypeVar("_Result")
_log = structlog.get_logger(__name__)


# Made once, since every look at the outbox asks it.
_LANE = case(
    (col(OutboxRow.method).in_(sorted(LEAVES_NO_MESSAGE)), -1),
    (col(OutboxRow.urgency) >= Urgency.URGENT, 1),
    else_=0,
)
_PUT_OFF = and_(
    or_(
        col(OutboxRow.attached).is_not(None),
        # Ordinary ones are given up by then.
        col(OutboxRow.created_at) < bindparam("tried_for_a_day"),
    ),
    col(OutboxRow.status) == "waiting",
    col(OutboxRow.not_before) > bindparam("now"),
)
_OURS = (
    col(OutboxRow.chat_id)
    .bitwise_and(literal_column(f"{SHARES - 1}"))
    .in_(bindparam("shares", expanding=True))
)
_FIRST = (
    select(func.min(OutboxRow.id))
    .where(col(OutboxRow.status).in_(OPEN), _OURS, not_(_PUT_OFF))
    .group_by(col(OutboxRow.chat_id), _LANE)
)

#: A picture that has waited for long goes with the texts beside it.
_IS_NEW = col(OutboxRow.created_at) > bindparam("long_ago")
_URGENCY = urgency_by(col(OutboxRow.urgency), col(OutboxRow.created_at))


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
        self._shares = shares_of(engine)
        self._underway: dict[int, Call] = {}
        self._tasks: set[asyncio.Task[Any]] = set()
        self._look_at = clock.monotonic()

    async def run(self) -> None:
        """Send until cancelled."""
        await keep_going("sender", self._clock, self._step_and_wait)

    async def step(self) -> float:
        """Send off what may go now. Returns the seconds after which more may be ready."""
        # Whoever stops the sender hears out also what is being claimed: it would be left `sending`.
        return await asyncio.shield(self._begun(self._look()))

    async def drain(self) -> None:
        """Wait for the calls that are underway."""
        while self._tasks:
            await asyncio.gather(*self._tasks, return_exceptions=True)

    async def close(self) -> None:
        """Hear out the calls underway, and let other processes send."""
        await self.drain()
        self.let_go()

    def let_go(self) -> None:
        """Let other processes send, whatever is underway."""
        self._shares.release()
        self._pace.hold((), self._clock.monotonic())
        self._look_at = self._clock.monotonic()

    async def _step_and_wait(self) -> None:
        seconds = await self.step()
        await wait_for(self.wake, self._clock, seconds)

    def _begun(self, work: Coroutine[Any, Any, _Result]) -> asyncio.Task[_Result]:
        task = asyncio.create_task(work)
        self._tasks.add(task)
        task.add_done_callback(self._tasks.discard)
        return task

    async def _look(self) -> float:
        if self._clock.monotonic() >= self._look_at:
            await asyncio.to_thread(self._hold)
        if (pause := self._pace.seconds_until_any(self._clock.monotonic())) > 0:
            # Whatever waits: to look through it each time would hold up what is noted.
            return min(pause, LOOK_AGAIN_S)
        try:
            calls, wait = await asyncio.to_thread(self._claim)
        except Exception:
            self._look_at = self._clock.monotonic()  # the hold may be lost
            raise
        for call in calls:
            self._begun(self._send(call))
        return wait

    def _hold(self) -> None:
        """See which shares are ours. What rested in those that have come to us rests on."""
        self._look_at = self._clock.monotonic() + LOOK_AGAIN_S
        busy = {share_of(call.chat_id) for call in list(self._underway.values())}
        try:
            held = self._shares.hold(busy)
        except DBAPIError:
            self._pace.hold((), self._clock.monotonic())
            raise
        if new := self._pace.hold(held, self._clock.monotonic()):
            now, ran = self._clock.now(), self._clock.monotonic()
            with self._shares.claiming() as session:
                for chat, span in pace.chats_that_rest(session, new, now):
                    self._pace.pause(chat, span, ran)

    async def _send(self, call: Call) -> None:
        try:
            note = await self._outcome_of(call)
            for failures in range(1, NOTED_AFTER + 1):
                try:
                    await asyncio.to_thread(note)
                    break
                except Exception:
                    # If it stays unnoted, the row is taken up again as one of unknown outcome.
                    _log.exception("an outcome could not be noted", outbox_id=call.row_id)
                    await self._clock.sleep(growing_pause(failures))
        finally:
            del self._underway[call.row_id]
            self.wake.set()

    async def _outcome_of(self, call: Call) -> Callable[[], None]:
        """Make the call; returns what notes what came of it."""
        try:
            result = await self._call(call)
        except Exception as error:
            return partial(self._outcomes.failed, call.row_id, error)
        if result is None:
            return partial(self._outcomes.pointless, call.row_id)
        return partial(self._outcomes.arrived, call.row_id, result)

    async def _call(self, call: Call) -> Any:
        """What Telegram answered; None where there is nothing left to send."""
        if call.attached is None:
            return await self._transport.call(call.method, call.payload)
        made = await asyncio.to_thread(self._uploads.make, call.method, call.payload, call.attached)
        if made is None:
            return None
        return await self._transport.call(made.method, made.payload, made.files)

    def _claim(self) -> tuple[list[Call], float]:
        """Mark what may go now as `sending`, for good before the first byte leaves."""
        now, ran = self._clock.now(), self._clock.monotonic()
        wait = AMONG_OTHERS_S if self._shares.among_others else LOOK_AGAIN_S
        calls: list[Call] = []
        with self._shares.claiming() as session:
            if (rest := pace.all_rest_for(session, now)) > timedelta():
                self._pace.pause_all(rest, ran)
                return [], min(wait, rest.total_seconds())
            for row in self.heads(session, now, self._pace.held):
                if id_of(row) in self._underway or self._may_be_noted_yet(row, ran):
                    continue
                pause = self._pace.seconds_until_ready(row.chat_id, row.method, ran)
                if pause > 0:
                    wait = min(wait, pause)
                    if self._pace.seconds_until_any(ran) > 0:
                        break
                    continue
                session.add(row)
                if not self._is_to_go(session, row):
                    wait = 0.0
                    continue
                self._pace.take(row.chat_id, row.method, ran)
                calls.append(self._begin(session, row))
        for call in calls:
            self._underway[call.row_id] = call
        return calls, wait

    def _may_be_noted_yet(self, row: OutboxRow, ran: float) -> bool:
        """Whether another process that lost its hold, and lives, may have sent this a moment ago."""
        came = self._pace.held_for(row.chat_id, ran)
        return row.status == "sending" and came < self._shares.noting_s

    def _is_to_go(self, session: Session, row: OutboxRow) -> bool:
        """Whether this is to be sent; what is not is dropped, or given up."""
        if self._is_superseded(session, row):
            row.status = "dropped"
            return False
        if row.status != "sending":
            return True
        row.doubts += 1
        if not is_worth_another(row):
            row.problem = LEFT_OPEN
            give_up(row)
            return False
        _log.warning("sending again what a crash left open", outbox_id=row.id)
        return True

    @staticmethod
    def heads(
        session: Session, now: datetime, shares: Collection[int] = ALL
    ) -> Sequence[OutboxRow]:
        """The first open row of each lane of each chat of these shares, where it is not put off."""
        asked = {
            "now": now, "long_ago": now - VIEWS_WAIT, "tried_for_a_day": now - GIVE_UP_AFTER,
            "shares": sorted(shares),
        }  # fmt: skip
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
        row.status = "sending"
        row.attempts += 1
        return Call(id_of(row), row.chat_id, *addressed(session, row), row.attached)


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
