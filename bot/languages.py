"""The language that messages are written in: English as it stands in the code, others by catalogue.

Sentences stay in `bot.messages` as `tr("...")`; which language they come out in is set around a use
case (`speaking`), for the person who will read them, and not passed from function to function.
"""

from __future__ import annotations

import gettext
from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from pathlib import Path

ENGLISH = "en"
DOMAIN = "brimline"
CATALOGUES = Path(__file__).with_name("locale")

_language: ContextVar[str] = ContextVar("language", default=ENGLISH)


def language() -> str:
    """The language in force, as a two-letter code (ISO 639-1)."""
    return _language.get()


@contextmanager
def speaking(code: str) -> Iterator[None]:
    """Within this, `tr` and `trn` write in that language; English where it is not one of ours."""
    before = _language.set(code)
    try:
        yield
    finally:
        _language.reset(before)


def tr(message: str, /, **values: object) -> str:
    """The sentence in the language in force, its {names} filled in."""
    return _catalogue(_language.get()).gettext(message).format(**values)


def trn(one: str, many: str, number: float, /, **values: object) -> str:
    """The sentence in the form that goes with this number, which it may name as {number}."""
    text = _catalogue(_language.get()).ngettext(one, many, number)  # type: ignore[arg-type]
    return text.format(**{"number": number} | values)


def mark(message: str, /) -> str:
    """Names a sentence of a table for translation; `tr(table[key])` says it."""
    return message


@cache
def _catalogue(code: str) -> gettext.NullTranslations:
    if code == ENGLISH:
        return gettext.NullTranslations()
    return gettext.translation(DOMAIN, CATALOGUES, languages=[code], fallback=True)
