"""Answering a button's press, and rewriting the message that it stood under."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming
from bot.outbox import Button, Buttons, answer_tap, edit, say
from bot.store.people import Person


def answer(session: Session, incoming: Incoming, context: Context, text: str = "") -> None:
    """Stop the button's spinner, with a few words where they help."""
    if incoming.tap_id is not None:
        answer_tap(
            session, chat_id=incoming.chat_id, tap_id=incoming.tap_id, text=text, now=context.now
        )


def rewrite(
    session: Session, incoming: Incoming, text: str, context: Context, buttons: Buttons = ()
) -> None:
    """Put other words and buttons in the place of the message whose button was pressed."""
    if incoming.message_id is not None:
        edit(
            session, chat_id=incoming.chat_id, message_id=incoming.message_id, text=text,
            buttons=buttons, now=context.now,
        )  # fmt: skip


def ask_sure(
    session: Session, person: Person, text: str, yes: Button, no: Button, context: Context
) -> None:
    """Say what a thing would mean; it is done, or left, by a second tap."""
    say(session, chat_id=person.chat_id, text=text, buttons=[[yes, no]], now=context.now)
