"""/language: in which language the bot writes to a person, for whoever is known here."""

from __future__ import annotations

from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import Act
from bot.membership import words
from bot.membership.buttons import LANGUAGE, Language
from bot.people.coach_settings import roster_stale
from bot.people.telling import answer, language_of, rewrite, say_to, speaking_to
from bot.words.languages import known

AS_TELEGRAM = "auto"


def show(turn: Act) -> None:
    """What is spoken now, and a button for each language."""
    text = words.which(words.name(language_of(turn.person)))
    say_to(turn, turn.person, text, buttons=_buttons())


def choose(turn: Act, pressed: Language) -> None:
    """A language, or to follow Telegram's own setting again."""
    code = pressed.code
    if code not in (AS_TELEGRAM, *known()):
        answer(turn, words.not_there())
        return
    turn.person.chosen_language = None if code == AS_TELEGRAM else code
    with speaking_to(turn.person):
        rewrite(turn, words.chosen(words.name(language_of(turn.person))))
    if turn.person.id is not None:
        roster_stale(turn, turn.person.id)


def _buttons() -> Buttons:
    named = [Button(words.name(code), LANGUAGE(code)) for code in known()]
    return [
        *(named[i : i + 2] for i in range(0, len(named), 2)),
        [Button(words.as_telegram_button(), LANGUAGE(AS_TELEGRAM))],
    ]
