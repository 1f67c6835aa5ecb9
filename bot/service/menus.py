"""The command menu of each chat, kept to what its person may use."""

from __future__ import annotations

from collections.abc import Iterable

from sqlmodel import Session, col, select

from bot.context import Context
from bot.outbox import set_menu
from bot.service.handles import Command
from bot.store.people import Person
from bot.store.traffic import OutboxRow


def keep_menu(
    session: Session,
    person: Person,
    roles: frozenset[str],
    commands: Iterable[Command],
    context: Context,
) -> None:
    """Set the person's menu where it is not yet what their roles call for."""
    wanted = [(c.name, c.menu()) for c in commands if c.menu is not None and c.roles & roles]
    query = (
        select(OutboxRow)
        .where(OutboxRow.topic == f"menu:{person.chat_id}")
        .order_by(col(OutboxRow.id).desc())
    )
    last = session.exec(query).first()
    shown = [(c["command"], c["description"]) for c in last.payload["commands"]] if last else []
    if wanted != shown:
        set_menu(session, chat_id=person.chat_id, commands=wanted, now=context.now)
