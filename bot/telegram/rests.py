"""Telegram's "retry after", as it stands in rows: all processes obey it, and those that start later.

That a chat rests stands in the row that was refused. That all of them do, since more than one was told
so, is one row that everybody reads before sending. What stands there is from when until when by the
wall clock, so that a clock that is set back ends it, and does not prolong it.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from datetime import datetime, timedelta

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.store.shares import share_of
from bot.store.tables import setting
from bot.store.tables.traffic import OutboxRow

TOLD_TO_SLOW_DOWN = "RetryAfter"
_ALL_REST = "sending_rests"
_CLOCKS_DIFFER_BY = timedelta(seconds=5)
_NONE = timedelta()

_RESTING = select(OutboxRow.chat_id, OutboxRow.not_before).where(
    OutboxRow.status == "waiting",
    OutboxRow.problem == TOLD_TO_SLOW_DOWN,
    col(OutboxRow.not_before) > bindparam("now"),
)


def chats_that_rest(
    session: Session, shares: Collection[int], now: datetime
) -> Sequence[tuple[int, timedelta]]:
    """The chats of these shares that were told to slow down, and for how long yet."""
    resting = session.exec(_RESTING, params={"now": now}).all()
    return [(chat, until - now) for chat, until in resting if share_of(chat) in shares]


def another_chat_rests(session: Session, chat_id: int, now: datetime) -> bool:
    """Whether any other chat, whoever sends to it, has been told to slow down."""
    return any(chat != chat_id for chat, _ in session.exec(_RESTING, params={"now": now}))


def let_all_rest(session: Session, now: datetime, span: timedelta) -> None:
    """From now on nobody sends anything for so long."""
    value = f"{now.isoformat()} {(now + span).isoformat()}"
    setting.keep(session, _ALL_REST, value)


def all_rest_for(session: Session, now: datetime) -> timedelta:
    """How long nobody is to send anything yet; zero where there is no such order."""
    kept = setting.kept(session, _ALL_REST)
    if not kept:
        return _NONE
    since, until = map(datetime.fromisoformat, kept.split())
    return max(_NONE, until - now) if since - _CLOCKS_DIFFER_BY <= now else _NONE
