"""Readers that several flows share: text or a button's value in, a plain value out.

What people type is understood in the language in force, and in English always.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from datetime import date
from functools import partial
from typing import TypeVar

from bot.dialogue.flow import Answers, Choice, Choices, InvalidAnswer
from bot.words import invalid_answers
from bot.words.calendar_words import calendar_words
from bot.words.languages import listed, mark, tr
from engine.written.late import Late
from engine.written.units import parse_day, parse_number

LONGEST_NOTE = 1000

# Words that answer without a button, with commas between them; a translation may have other ones,
# and as many as it likes.
YES = mark("yes, y, yeah, yep, yup, yes please, sure, of course, aye, ya")
NO = mark("no, n, nope, nah, no thanks")
SKIP = mark("skip, -, no, none, nothing")
NONE = mark("none, no, nothing")
#: What is typed where a button says that it is not known, and what such buttons say.
UNKNOWN = mark(
    "don't know, dont know, i don't know, i dont know, no idea, not sure, unsure, dunno, idk, no clue, "
    "not known, unknown, can't say, cant say, hard to say"
)
VARIES = mark("varies, it varies")
AS_ALWAYS = mark("as always, always, as usual, usual, not counted, -")
ON_TARGET = mark(
    "on target, target, yes, yeah, yep, yup, all of it, yes all of it, yep all of it, all eaten, "
    "everything, ate everything, ate it all, every gram, as planned, to the gram, spot on"
)
ABOUT = mark("about, around, roughly, approximately, approx, approx., ca, ca., circa, maybe, ~")
# Units that may stand behind a number, the longer first.
MINUTES = mark("minutes, minute, min")
HOURS = mark("hours, hour, h")
WEEKS = mark("weeks, week")
STEPS = mark("steps")

_COURTESY = Late(
    r"[\s,]*\b(?:please|pls|thanks|thank you|thx|i think|i guess|or so|bitte|danke|denk(?:e)? ich|"
    r"glaub(?:e)? ich|oder so)[.! ]*$",
    re.IGNORECASE,
)
_LEAD = Late(
    r"^(?:(?:i think|i guess|ich glaube?|ich denke?|probably|wahrscheinlich)[ ,]+)?"
    r"(?:(?:it(?:'s| is)|that(?:'s| is)|i'm on|es ist|das ist|ist) )?"
    r"(?:(?:at|around|about|on|until|um|gegen|so um|circa|ca|am|bis|den) )?(?=\d)",
    re.IGNORECASE,
)

_Value = TypeVar("_Value", bound=str)


def reason(text: str) -> str:
    """Why somebody goes ahead all the same: any words, but some."""
    words = " ".join(text.split())
    if not words:
        raise InvalidAnswer(invalid_answers.reason_empty())
    if len(words) > LONGEST_NOTE:
        raise InvalidAnswer(invalid_answers.long_note(len(words), LONGEST_NOTE))
    return words


def said(text: str, words: str) -> bool:
    """Whether the text is one of these words, in English or in the language in force."""
    return text.strip().casefold() in listed(words)


def without(text: str, units: str) -> str:
    """The text without one of these units at its end."""
    plain = text.strip().casefold()
    for unit in listed(units):
        if plain.endswith(unit):
            return plain.removesuffix(unit).rstrip()
    return plain


def plainly(text: str) -> str:
    """A figure without what people put around it: "about 480", "520 g please"."""
    plain = _LEAD.sub("", _COURTESY.sub("", text.strip()).replace("\u2019", "'"))
    for word in sorted(listed(ABOUT), key=len, reverse=True):
        if plain.casefold().startswith(word):
            rest = plain[len(word) :].lstrip()
            if rest[:1].isdigit():
                return rest
    return plain


def one_of(*values: str) -> Callable[[str], str]:
    """A reader for steps that are answered by a button; the word typed out is taken as well."""

    def read(text: str) -> str:
        word = text.strip().lower()
        if word not in values:
            raise InvalidAnswer(invalid_answers.use_buttons())
        return word

    return read


def yes_or_no(text: str) -> bool:
    if said(text, YES):
        return True
    if said(text, NO):
        return False
    raise InvalidAnswer(invalid_answers.use_buttons())


def number_between(low: float, high: float) -> Callable[[str], float]:
    def read(text: str) -> float:
        return parse_number(text, low=low, high=high)

    return read


def day_in(text: str, today: date) -> date:
    """A date as people write it; without a year it is the next such day."""
    return parse_day(text, today=today, words=calendar_words())


def free_text(text: str) -> str:
    """A note in the person's own words; "skip" is the empty note."""
    words = text.strip()
    if said(words, SKIP):
        return ""
    if not words:
        raise InvalidAnswer(invalid_answers.empty_note())
    if len(words) > LONGEST_NOTE:
        raise InvalidAnswer(invalid_answers.long_note(len(words), LONGEST_NOTE))
    return words


def buttons(*rows: tuple[tuple[str | Callable[[], str], str], ...]) -> Choices:
    """Fixed choices: rows of (label, value)."""
    return tuple(tuple(Choice(label, value) for label, value in row) for row in rows)


def two_a_row(labelled: Iterable[tuple[str | Callable[[], str], str]]) -> Choices:
    each = list(labelled)
    return buttons(*(tuple(each[i : i + 2]) for i in range(0, len(each), 2)))


def one_a_row(named: Mapping[_Value, str]) -> Choices:
    """Fixed choices below each other, as a table names them by the marked words for each."""
    return tuple((Choice(partial(tr, words), value),) for value, words in named.items())


def zone_of(answers: Answers) -> str:
    """The zone that was settled on."""
    chosen = answers.get("which_place", 0)  # not asked where only one place has the name
    if isinstance(chosen, int):
        return str(answers["place"][chosen]["zone"])
    return str(chosen[answers.get("which_of_them", 0)]["zone"])
