"""A command as the dispatcher hands it on, for tests that call one straight."""

from __future__ import annotations

from sqlmodel import Session

from bot.core.turn import Act, Context, Incoming, Kind
from bot.store.tables.people import Person


def typed(session: Session, context: Context, person: Person, words: str = "") -> Act:
    """This person has typed a command in their private chat."""
    incoming = Incoming(
        update_id=1, chat_id=person.chat_id, private=True, user_id=person.telegram_user_id,
        first_name=person.first_name, language=None, kind=Kind.TEXT, text=words, message_id=None,
        tap_id=None, sent_at=context.now,
    )  # fmt: skip
    return Act(session, context, incoming, person=person, words=words)
