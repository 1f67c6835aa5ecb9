"""Messages between coach and athlete, and what is said around them."""

from __future__ import annotations

from bot.words.languages import Sentence, SentenceOn, tr

ask_message = SentenceOn("What shall I tell {name}? Send it as one message.")
ask_reply = SentenceOn("What shall I tell {coach}? Send it as one message.")


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
message_sent = SentenceOn("Sent to {name}.")
message_may_not_arrive = SentenceOn(
    "{name} has stopped the bot, so this may not arrive. Please call them."
)
