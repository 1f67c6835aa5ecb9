"""What came of a call, and what follows from it: the error policy of the outbox.

| what Telegram said                   | what follows                                           |
| ------------------------------------ | ------------------------------------------------------ |
| retry after n seconds (429)          | the chat rests, or all do, everywhere; then again      |
| forbidden, chat not found            | failed, with all that waits for it; the service told   |
| the chat has another id              | the service told; all that waits goes to the new id    |
| message is not modified, tap too old | as good as sent                                        |
| the message to edit is gone          | sent as a new message                                  |
| any other bad request                | failed: it would fail for ever                         |
| server error, no connection          | again, each time later, for a day; what is urgent, for |
|                                      | a month                                                |
| line dead underway: outcome unknown  | again, three times in all; edits as often as it takes  |
| nothing: killed with it underway     | the same, by whoever sends to that chat next           |
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import timedelta
from typing import Any

import structlog
from sqlalchemy import Engine, bindparam
from sqlmodel import Session, col, select
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
)

from bot.core.logs import error_name
from bot.core.timing.clock import Clock
from bot.core.timing.waiting import retry_span
from bot.core.turn import Context, Turn
from bot.core.use_cases import UseCases
from bot.store.db import claiming, in_transaction
from bot.store.tables.traffic import OutboxRow, Urgency
from bot.telegram import pace
from bot.telegram.pace import LEAVES_NO_MESSAGE, Pace
from bot.telegram.transport import answered_by_server, span_of, surely_not_sent

FIRST_RETRY, LONGEST_RETRY = timedelta(seconds=1), timedelta(minutes=1)
GIVE_UP_AFTER = timedelta(days=1)
# Old news are a nuisance, but whoever was away for days has to learn that somebody fainted.
GIVE_UP_URGENT_AFTER, LONGEST_RETRY_OF_OLD = timedelta(days=30), timedelta(minutes=10)
MOST_DOUBTS = 3
REFUSED_TOKEN_REST = timedelta(minutes=1)

NOTHING_LOST = ("message is not modified", "query is too old", "query id is invalid")
GONE = ("message to edit not found", "message can't be edited", "message_id_invalid")
NO_CHAT = ("chat not found", "user not found", "peer_id_invalid")

# Built once: building a statement costs several times what asking it does.
_HELD = select(OutboxRow).where(OutboxRow.id == bindparam("row")).with_for_update()

_log = structlog.get_logger(__name__)


def as_new_message(edit: Mapping[str, Any]) -> dict[str, Any]:
    """The fields of an edit, for sending what it says as a new message."""
    fields = {key: value for key, value in edit.items() if key != "message_id"}
    if not fields.get("reply_markup", {}).get("inline_keyboard"):
        fields.pop("reply_markup", None)
    return fields


def is_worth_another(row: OutboxRow) -> bool:
    """Whether what may have arrived, so often already, is to be sent again. A second edit does no harm,
    and a second message is a nuisance, but one that is urgent and never arrives is worse.
    """
    twice_is_harmless = row.method.startswith("edit") or row.method in LEAVES_NO_MESSAGE
    return row.doubts < MOST_DOUBTS or twice_is_harmless or row.urgency >= Urgency.URGENT


def give_up(row: OutboxRow) -> None:
    row.status = "failed"
    _log.error(
        "a message is given up",
        outbox_id=row.id, chat_id=row.chat_id, method=row.method, attempts=row.attempts,
        error=row.problem,
    )  # fmt: skip


class Outcomes:
    """Notes what came of each call, each in a transaction of its own."""

    def __init__(
        self,
        engine: Engine,
        use_cases: UseCases,
        clock: Clock,
        context: Callable[[], Context],
        pace: Pace,
    ) -> None:
        self._engine = engine
        self._use_cases = use_cases
        self._clock = clock
        self._context = context
        self._pace = pace

    def arrived(self, row_id: int, result: Any) -> None:
        """Telegram took it; `result` is a message, the messages of an album, or True."""
        if isinstance(result, list):
            result = next(iter(result), None)
        message_id = result.get("message_id") if isinstance(result, dict) else None

        def note(session: Session) -> tuple[str, int]:
            row = session.exec(_HELD, params={"row": row_id}).one()
            self._sent(session, row, message_id)
            return row.method, row.attempts

        # Unnoted it would be sent again.
        method, attempts = in_transaction(self._engine, note, locked=True)
        _log.info("a message was sent", outbox_id=row_id, method=method, attempts=attempts)

    def pointless(self, row_id: int) -> None:
        """What was to be sent is gone: a deleted picture, a plan of deleted data."""
        with claiming(self._engine) as session:
            row = session.exec(_HELD, params={"row": row_id}).one()
            row.status = "dropped"
            session.add(row)

    def failed(self, row_id: int, error: Exception) -> None:
        """It did not go through, or nobody knows."""
        in_transaction(
            self._engine,
            lambda session: self._failed(session, row_id, error),
            locked=self._use_cases.hold_their_people,
        )

    def _failed(self, session: Session, row_id: int, error: Exception) -> None:
        row = session.exec(_HELD, params={"row": row_id}).one()
        row.problem = error_name(error)
        session.add(row)
        _log.warning(
            "a call did not go through",
            outbox_id=row.id, method=row.method, error=row.problem, attempts=row.attempts,
        )  # fmt: skip
        match error:
            case RetryAfter():
                self._rest(session, row, error)
            case Forbidden():
                self._undeliverable(session, row)
            case ChatMigrated():
                self._moved(session, row, error.new_chat_id)
            case BadRequest():  # before NetworkError, of which it is a subclass
                self._refused(session, row, error)
            case InvalidToken():
                self._pace.pause_all(REFUSED_TOKEN_REST, self._clock.monotonic())
                self._again(row)
            case NetworkError() if surely_not_sent(error) or answered_by_server(error):
                self._again(row)
            case TelegramError() | OSError():
                self._in_doubt(row)
            case _:
                _log.error("a call failed in an unforeseen way", outbox_id=row.id, exc_info=error)
                self._in_doubt(row)

    def _sent(self, session: Session, row: OutboxRow, message_id: int | None) -> None:
        row.status = "sent"
        row.sent_at = self._clock.now()
        row.problem = ""
        row.message_id = message_id
        session.add(row)
        if row.edits_outbox_id is not None and message_id is not None:
            # An edit that had to be sent anew is what later edits are to change.
            edited = session.get(OutboxRow, row.edits_outbox_id)
            if edited is not None and edited.message_id != message_id:
                edited.message_id = message_id
                session.add(edited)

    def _rest(self, session: Session, row: OutboxRow, error: RetryAfter) -> None:
        span = span_of(error)
        now, ran = self._clock.now(), self._clock.monotonic()
        another = self._pace.pause(row.chat_id, span, ran)
        if another or pace.another_chat_rests(session, row.chat_id, now):
            self._pace.pause_all(span, ran)
            pace.let_all_rest(session, now, span)
        row.problem = pace.TOLD_TO_SLOW_DOWN
        row.status = "waiting"
        row.not_before = now + span  # outlives a restart
        _log.warning(
            "told to slow down", outbox_id=row.id, chat_id=row.chat_id, seconds=span.total_seconds()
        )

    def _undeliverable(self, session: Session, row: OutboxRow) -> None:
        give_up(row)
        for other in self._rows_of(session, row.chat_id, "waiting"):
            other.status = "failed"
            other.problem = row.problem
            session.add(other)
        session.flush()
        self._use_cases.undeliverable(Turn(session, self._context()), row)

    def _moved(self, session: Session, row: OutboxRow, new_chat_id: int) -> None:
        old_chat_id = row.chat_id
        for moving in (row, *self._rows_of(session, old_chat_id, "waiting", "sending")):
            moving.chat_id = new_chat_id
            scope = moving.payload.get("scope")
            if isinstance(scope, dict) and scope.get("chat_id") == old_chat_id:
                moving.payload = moving.payload | {"scope": scope | {"chat_id": new_chat_id}}
            session.add(moving)
        row.status = "waiting"
        session.flush()
        self._use_cases.moved(Turn(session, self._context()), old_chat_id, new_chat_id)

    def _refused(self, session: Session, row: OutboxRow, error: BadRequest) -> None:
        said = error.message.lower()
        if any(phrase in said for phrase in NOTHING_LOST):
            self._sent(session, row, row.payload.get("message_id"))
        elif any(phrase in said for phrase in NO_CHAT):
            self._undeliverable(session, row)
        elif row.method.startswith("edit") and any(phrase in said for phrase in GONE):
            self._send_anew(session, row)
        else:
            give_up(row)

    def _send_anew(self, session: Session, row: OutboxRow) -> None:
        """Turn the edit of a message that is gone into a message of its own."""
        row.method, row.payload = "sendMessage", as_new_message(row.payload)
        row.status = "waiting"
        if row.edits_outbox_id is not None:
            edited = session.get(OutboxRow, row.edits_outbox_id)
            if edited is not None:
                edited.message_id = None
                session.add(edited)

    def _again(self, row: OutboxRow) -> None:
        now = self._clock.now()
        age = now - row.created_at
        if age > (GIVE_UP_URGENT_AFTER if row.urgency >= Urgency.URGENT else GIVE_UP_AFTER):
            give_up(row)
            return
        longest = LONGEST_RETRY if age <= GIVE_UP_AFTER else LONGEST_RETRY_OF_OLD
        row.status = "waiting"
        row.not_before = now + retry_span(row.attempts, FIRST_RETRY, longest)

    def _in_doubt(self, row: OutboxRow) -> None:
        """It may have arrived."""
        row.doubts += 1
        if is_worth_another(row):
            self._again(row)
        else:
            give_up(row)

    @staticmethod
    def _rows_of(session: Session, chat_id: int, *statuses: str) -> list[OutboxRow]:
        found = select(OutboxRow).where(
            OutboxRow.chat_id == chat_id, col(OutboxRow.status).in_(statuses)
        )
        return list(session.exec(found))
