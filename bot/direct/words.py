"""Messages between coach and athlete, and what is said around them."""

from __future__ import annotations

from bot.words.languages import Sentence, tr


def ask_message(name: str) -> str:
    return tr("What shall I tell {name}? Send it as one message.", name=name)


def ask_reply(coach: str) -> str:
    return tr("What shall I tell {coach}? Send it as one message.", coach=coach)


def from_coach(coach: str, text: str) -> str:
    return tr("From your coach {coach}:\n{text}", coach=coach, text=text)


def from_second_coach(name: str, coach: str, text: str) -> str:
    return tr(
        "From {name}, second coach with {coach}:\n{text}",
        name=name, coach=coach, text=text,
    )  # fmt: skip


def read_along(sender: str, to: str, text: str) -> str:
    """A message between others, for whoever coaches the athlete too."""
    return tr("{sender} to {reader}: {text}", sender=sender, reader=to, text=text)


write_menu = Sentence("Write to your coach")
nobody_else = Sentence("You coach yourself, so there is no coach here to write to.")


def message_sent(name: str) -> str:
    return tr("Sent to {name}.", name=name)


def message_may_not_arrive(name: str) -> str:
    return tr("{name} has stopped the bot, so this may not arrive. Please call them.", name=name)
