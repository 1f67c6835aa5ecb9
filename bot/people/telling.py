"""Telling somebody something: in their language, in their chat, at the time of the turn."""

from __future__ import annotations

from collections.abc import Callable

from bot.core.chat.outbox import AS_EVER, Buttons, Delivery, Shown, edit, say
from bot.core.turn import Turn
from bot.people.people import speaking_to
from bot.store.tables.people import Person
from bot.store.tables.traffic import OutboxRow

#: A sentence, or what makes it once the language of its reader is set.
Said = str | Callable[[], str]
#: Buttons, or what makes them likewise.
Keys = Buttons | Callable[[], Buttons]


def say_to(
    turn: Turn, reader: Person, sentence: Said, *, buttons: Keys = (), how: Delivery = AS_EVER
) -> OutboxRow:
    """A new message to somebody. What is to be read by another than who acts is given as a function,
    so that it is made in the reader's language.
    """
    with speaking_to(reader):
        return say(
            turn,
            chat_id=reader.chat_id,
            text=sentence() if callable(sentence) else sentence,
            buttons=buttons() if callable(buttons) else buttons,
            how=how,
        )


def edit_to(
    turn: Turn, reader: Person, message: Shown, sentence: Said, *, buttons: Keys = ()
) -> None:
    """Other words, and buttons, in place of a message that this reader has."""
    with speaking_to(reader):
        edit(
            turn,
            message,
            text=sentence() if callable(sentence) else sentence,
            buttons=buttons() if callable(buttons) else buttons,
        )
