"""The command menu of each chat, kept to what its person may use."""

from __future__ import annotations

from sqlalchemy import bindparam
from sqlmodel import col, select

from bot.core.outbox import set_menu
from bot.core.turn import Turn
from bot.store.tables.people import Person
from bot.store.tables.traffic import OutboxRow, TopicKind

# Built once: building a statement costs as much as asking it.
_LAST = (
    select(OutboxRow.payload)
    .where(OutboxRow.topic == TopicKind.MENU, OutboxRow.topic_about == bindparam("chat"))
    .order_by(col(OutboxRow.id).desc())
    .limit(1)
)


def keep_menu(turn: Turn, person: Person, wanted: list[tuple[str, str]]) -> None:
    """Set the person's menu where it is not yet what is wanted: commands, and what each does."""
    last = turn.session.exec(_LAST, params={"chat": person.chat_id}).first()
    shown = [(c["command"], c["description"]) for c in last["commands"]] if last else []
    if wanted != shown:
        set_menu(turn.session, chat_id=person.chat_id, commands=wanted, now=turn.now)
