"""What is said about the language that is spoken."""

from __future__ import annotations

from bot.words.figures import capital, locale_of
from bot.words.languages import tr


def language_menu() -> str:
    return tr("In which language I write")


def name(code: str) -> str:
    """ "Deutsch": what a language is called by those who speak it."""
    return capital(locale_of(code).get_display_name() or code)


def which(now: str) -> str:
    return tr("In which language shall I write to you? Now it is {language}.", language=now)


def as_telegram_button() -> str:
    return tr("As Telegram is set")


def chosen(language: str) -> str:
    return tr("I write {language} to you from now on. /language changes it.", language=language)


def not_there() -> str:
    return tr("I don't speak that language.")
