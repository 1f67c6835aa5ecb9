"""What is said about the language that is spoken."""

from __future__ import annotations

from bot.words.figures import capital, locale_of
from bot.words.languages import Sentence, SentenceOn, tr

language_menu = Sentence("In which language I write")
as_telegram_button = Sentence("As Telegram is set")
not_there = Sentence("I don't speak that language.")


def name(code: str) -> str:
    """ "Deutsch": what a language is called by those who speak it."""
    return capital(locale_of(code).get_display_name() or code)


def which(now: str) -> str:
    return tr("In which language shall I write to you? Now it is {language}.", language=now)


chosen = SentenceOn("I write {language} to you from now on. /language changes it.")
