"""The language that messages are written in: English as it stands in the code, others by catalogue.

Sentences stand in the `words` of each feature: as an entry `saved = Sentence("...")` where nothing is
filled in, `joined = SentenceOn("{name} has joined.")` where one thing is, `SentenceOnTwo` where two
are, `SentenceCounted` where a number decides, `SentenceBy({...})` where a key says which it is,
`SentenceAbout("You ...", "{name} ...")` where somebody reads it of themself; else in a function as
`tr("...")`, or `tr_if(own, "...", "...")` where it is one of two. Which language they come out in is
set around a use case (`speaking`), for the person who will read them, and not passed from function to
function. Catalogues are read from their source (`locale/de/LC_MESSAGES/brimline.po`) at first use, so
there is no compiled file that could be older.
"""

from __future__ import annotations

import gettext
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from functools import cache
from io import BytesIO
from pathlib import Path
from string import Formatter
from typing import Any, Generic, TypeVar, overload

from babel.messages.mofile import write_mo
from babel.messages.pofile import read_po

from engine.values.telling import mark

__all__ = [
    "CATALOGUES", "DOMAIN", "ENGLISH", "Sentence", "SentenceAbout", "SentenceBy", "SentenceCounted",
    "SentenceOn", "SentenceOnTwo", "catalogue", "in_each", "known", "language", "mark", "nearest",
    "speaking", "tr", "tr_if", "translated", "trn", "ways_written", "worded",
]  # fmt: skip

ENGLISH = "en"
DOMAIN = "brimline"
CATALOGUES = Path(__file__).with_name("locale")

_Key = TypeVar("_Key")
_What = TypeVar("_What")
_What_contra = TypeVar("_What_contra", contravariant=True)
_language: ContextVar[str] = ContextVar("language", default=ENGLISH)
#: The language in force, as a two-letter code (ISO 639-1).
language: Callable[[], str] = _language.get


def known() -> tuple[str, ...]:
    """The languages there are, English first."""
    return _found_in(CATALOGUES)


def nearest(code: str | None) -> str:
    """Of those there are, the one for a tag such as Telegram gives ("de-AT"); else English."""
    main = (code or "").replace("_", "-").partition("-")[0].lower()
    return main if main in known() else ENGLISH


def in_each(say: Callable[[], str]) -> list[str]:
    """What this says in each language there is, English first."""
    found = []
    for code in known():
        with speaking(code):
            found.append(say())
    return found


def ways_written(say: Callable[[], str]) -> set[str]:
    """How this may be written, whatever the language, spacing and case: what a heading is held to."""
    return {" ".join(text.split()).casefold() for text in in_each(say)}


def catalogue() -> gettext.NullTranslations:
    """The sentences of the language in force, for who keeps what was said in it."""
    return _catalogue(CATALOGUES, language())


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
    return translated(message).format(**values)


def tr_if(condition: object, then: str, otherwise: str, /, **values: object) -> str:
    """One of two sentences that are told of the same, as to somebody of themself or of another."""
    return tr(then if condition else otherwise, **values)


def translated(message: str, /) -> str:
    """The sentence in the language in force, its gaps still open."""
    return _catalogue(CATALOGUES, language()).gettext(message)


def trn(one: str, many: str, number: float, /, **values: object) -> str:
    """The sentence in the form that goes with this number, which it may name as {number}."""
    count = int(number) if number == int(number) else 2  # plural forms are made for whole numbers
    text = _catalogue(CATALOGUES, language()).ngettext(one, many, count)
    return text.format(**{"number": number} | values)


class Sentence:
    """An entry of a table of sentences: a call says it, in the language then in force."""

    __slots__ = ("message",)

    def __init__(self, message: str, /) -> None:
        self.message = message

    def __call__(self) -> str:
        return tr(self.message)


class SentenceOn(Generic[_What_contra]):
    """An entry of a table of sentences with one gap: a call fills it in, in the language in force,
    with what is given or with how that is `shown`.
    """

    __slots__ = ("_gap", "_shown", "message")

    @overload
    def __init__(self: SentenceOn[str | float], message: str, /) -> None: ...
    @overload
    def __init__(self, message: str, shown: Callable[[_What_contra], object], /) -> None: ...
    def __init__(self, message: str, shown: Callable[[Any], object] = lambda what: what, /) -> None:
        (self._gap,) = _gaps(message)
        self.message = message
        self._shown = shown

    def __call__(self, what: _What_contra, /) -> str:
        return tr(self.message, **{self._gap: self._shown(what)})


class SentenceOnTwo:
    """The same with two gaps, filled in the order in which the English sentence has them."""

    __slots__ = ("_gaps", "message")

    def __init__(self, message: str, /) -> None:
        self._gaps = _gaps(message)
        self.message = message

    def __call__(self, one: str | float, other: str | float, /) -> str:
        return tr(self.message, **dict(zip(self._gaps, (one, other), strict=True)))


class SentenceAbout:
    """An entry of a table of sentences about somebody: `own` as they read it themself where they are
    their own coach, the other one as somebody else reads it, who is told whom it is about.
    """

    __slots__ = ("_gap", "other", "own")

    def __init__(self, own: str, other: str, /) -> None:
        (self._gap,) = _gaps(own + other)
        self.own = own
        self.other = other

    def __call__(self, name: str, /, *, self_coached: bool) -> str:
        return tr_if(self_coached, self.own, self.other, **{self._gap: name})


class SentenceCounted:
    """An entry of a table of sentences in the form that goes with a number (`trn`)."""

    __slots__ = ("many", "one")

    def __init__(self, one: str, many: str, /) -> None:
        self.one = one
        self.many = many

    def __call__(self, number: float, /) -> str:
        return trn(self.one, self.many, number)


class SentenceBy(Generic[_Key]):
    """What a table of marked sentences has under a key: a call says it, in the language in force."""

    __slots__ = ("table",)

    def __init__(self, table: Mapping[_Key, str], /) -> None:
        self.table = table

    def __call__(self, key: _Key, /) -> str:
        return tr(self.table[key])


def _gaps(message: str) -> tuple[str, ...]:
    """The names of what is to be filled in, each once, in order."""
    return tuple(dict.fromkeys(name for _, name, _, _ in Formatter().parse(message) if name))


def worded(entry: Sentence | Callable[[_What], str], about: _What) -> str:
    """An entry of a table in which some look at what they are about, and some say the same always."""
    return entry() if isinstance(entry, Sentence) else entry(about)


def listed(words: str) -> tuple[str, ...]:
    """The words of a list with commas between them, of the language in force and of English, in
    lower case.
    """
    return _listed(CATALOGUES, language(), words)


@cache
def _listed(folder: Path, code: str, words: str) -> tuple[str, ...]:
    both = f"{_catalogue(folder, code).gettext(words)}, {words}"
    return tuple(word.strip().casefold() for word in both.split(","))


@cache
def _catalogue(folder: Path, code: str) -> gettext.NullTranslations:
    path = folder / code / "LC_MESSAGES" / f"{DOMAIN}.po"
    if code == ENGLISH or not path.is_file():
        return gettext.NullTranslations()
    compiled = BytesIO()
    with path.open("rb") as source:
        write_mo(compiled, read_po(source))
    compiled.seek(0)
    return gettext.GNUTranslations(compiled)


@cache
def _found_in(folder: Path) -> tuple[str, ...]:
    return (ENGLISH, *sorted(path.parts[-3] for path in folder.glob(f"*/LC_MESSAGES/{DOMAIN}.po")))
