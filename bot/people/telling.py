"""Telling somebody something: in their language, in their chat, at the time of the turn."""

from __future__ import annotations

from collections.abc import Callable

from bot.core.chat.outbox import Buttons, edit, say
from bot.core.chat.topics import Topic
from bot.core.turn import Turn
from bot.people.people import speaking_to
from bot.store.tables.people import Person
from bot.store.tables.traffic import OutboxRow, Urgency

#: A sentence, or what makes it once the language of its reader is set.
Said = str | Callable[[], str]
#: Buttons, or what makes them likewise.
Keys = Buttons | Callable[[], Buttons]


def say_to(
    turn: Turn,
    reader: Person,
    sentence: Said,
    *,
    buttons: Keys = (),
    silent: bool = False,
    topic: Topic | None = None,
    dedupe: str | None = None,
    decision_id: int | None = None,
    urgency: Urgency = Urgency.ORDINARY,
) -> OutboxRow:
    """A new message to somebody. What is to be read by another than who acts is given as a function,
    so that it is made in the reader's language.
    """
    with speaking_to(reader):
        return say(
            turn.session,
            chat_id=reader.chat_id,
            text=sentence() if callable(sentence) else sentence,
            now=turn.now,
            buttons=buttons() if callable(buttons) else buttons,
            silent=silent,
            topic=topic,
            dedupe=dedupe,
            decision_id=decision_id,
            urgency=urgency,
        )


def edit_to(
    turn: Turn,
    reader: Person,
    message: int | None,
    sentence: Said,
    *,
    buttons: Keys = (),
    topic: Topic | None = None,
) -> None:
    """Other words, and buttons, in place of a message of the outbox that this reader has."""
    with speaking_to(reader):
        edit(
            turn.session,
            chat_id=reader.chat_id,
            outbox_id=message,
            text=sentence() if callable(sentence) else sentence,
            now=turn.now,
            buttons=buttons() if callable(buttons) else buttons,
            topic=topic,
        )
