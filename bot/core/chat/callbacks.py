"""Answering a button's press, and rewriting the message that it stood under."""

from __future__ import annotations

from bot.core.chat.outbox import Button, Buttons, Shown, answer_tap, edit, say
from bot.core.turn import ChatTurn, Turn
from bot.store.tables.people import Person


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
