"""Telling somebody something in their language; answering a tap, and rewriting what it stood under."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager

from bot.core.chat.outbox import AS_EVER, Button, Buttons, Delivery, Shown, answer_tap, edit, say
from bot.core.turn import ChatTurn, Turn
from bot.people.people import get_person
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import OutboxRow
from bot.words.languages import nearest, speaking

#: A sentence, or what makes it once the language of its reader is set.
Said = str | Callable[[], str]
#: Buttons, or what makes them likewise.
Keys = Buttons | Callable[[], Buttons]


def as_said(sentence: Said) -> str:
    """The sentence in the language in force."""
    return sentence() if callable(sentence) else sentence


def language_of(person: Person) -> str:
    """What this person reads: as they have chosen, else as their Telegram is set."""
    return nearest(person.chosen_language or person.language)


def speaking_to(person: Person) -> AbstractContextManager[None]:
    """Within this, sentences are for this person to read, in their language."""
    return speaking(language_of(person))


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
            text=as_said(sentence),
            buttons=buttons() if callable(buttons) else buttons,
            how=how,
        )


def tell_athlete(
    turn: Turn, by: Person, profile: AthleteProfile, sentence: Said, *, how: Delivery = AS_EVER
) -> list[int]:
    """Tell an athlete what somebody else has done for them; the outbox row, none where they did it."""
    if by.id == profile.person_id:
        return []
    athlete = get_person(turn.session, profile.person_id)
    return [id_of(say_to(turn, athlete, sentence, how=how))]


def edit_to(
    turn: Turn, reader: Person, message: Shown, sentence: Said, *, buttons: Keys = ()
) -> None:
    """Other words, and buttons, in place of a message that this reader has."""
    with speaking_to(reader):
        edit(
            turn,
            message,
            text=as_said(sentence),
            buttons=buttons() if callable(buttons) else buttons,
        )


def answer(turn: ChatTurn, text: str = "") -> None:
    """Stop the button's spinner, with a few words where they help."""
    if turn.incoming.tap_id is not None:
        answer_tap(turn, chat_id=turn.incoming.chat_id, tap_id=turn.incoming.tap_id, text=text)


def rewrite(turn: ChatTurn, text: str, buttons: Buttons = ()) -> None:
    """Put other words and buttons in the place of the message whose button was pressed."""
    if turn.incoming.message_id is not None:
        edit(
            turn, Shown(turn.incoming.chat_id, message_id=turn.incoming.message_id), text=text,
            buttons=buttons,
        )  # fmt: skip


def ask_sure(turn: Turn, person: Person, text: str, yes: Button, no: Button) -> None:
    """Say what a thing would mean; it is done, or left, by a second tap."""
    say(turn, chat_id=person.chat_id, text=text, buttons=[[yes, no]])
