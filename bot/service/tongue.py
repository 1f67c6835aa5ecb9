"""/language: in which language the bot writes to a person, for whoever is known here."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming
from bot.languages import known
from bot.messages import tongue as words
from bot.outbox import Button, Buttons, say
from bot.service.asking import Registered
from bot.service.desk import roster_stale
from bot.service.handles import ANYONE_KNOWN, Command, Duty, Tap
from bot.service.people import language_of, speaking_to
from bot.service.tapping import answer, rewrite
from bot.store.people import Person

AS_TELEGRAM = "auto"


def show(session: Session, person: Person, _rest: str, context: Context) -> None:
    """What is spoken now, and a button for each language."""
    text = words.which(words.name(language_of(person)))
    say(session, chat_id=person.chat_id, text=text, buttons=_buttons(), now=context.now)


def choose(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Buttons "lang:CODE", and "lang:auto" to follow Telegram's own setting again."""
    code = arguments[0] if arguments else ""
    if code not in (AS_TELEGRAM, *known()):
        answer(session, incoming, context, words.not_there())
        return
    answer(session, incoming, context)
    person.chosen_language = None if code == AS_TELEGRAM else code
    session.add(person)
    session.flush()
    with speaking_to(person):
        rewrite(session, incoming, words.chosen(words.name(language_of(person))), context)
    if person.id is not None:
        roster_stale(session, person.id, context)


def _buttons() -> Buttons:
    named = [Button(words.name(code), f"lang:{code}") for code in known()]
    return [
        *(named[i : i + 2] for i in range(0, len(named), 2)),
        [Button(words.as_telegram_button(), f"lang:{AS_TELEGRAM}")],
    ]


COMMANDS = (Command("language", ANYONE_KNOWN, show, words.language_menu),)
TAPS = (Tap("lang", ANYONE_KNOWN, choose),)
FLOWS: tuple[Registered, ...] = ()
DUTIES: tuple[Duty, ...] = ()
