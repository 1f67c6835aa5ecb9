"""Readers that several flows share: text or a button's value in, a plain value out."""

from __future__ import annotations

from collections.abc import Callable

from bot.dialogue import Answers, Choice, Choices, Unread
from bot.messages import refusals
from engine.units import parse_number

LONGEST_NOTE = 1000


def one_of(*values: str) -> Callable[[str, Answers], str]:
    """A reader for steps that are answered by a button; the word typed out is taken as well."""

    def read(text: str, answers: Answers) -> str:
        word = text.strip().lower()
        if word not in values:
            raise Unread(refusals.use_buttons())
        return word

    return read


def yes_or_no(text: str, answers: Answers) -> bool:
    word = text.strip().lower()
    if word in ("yes", "y", "yeah", "yep"):
        return True
    if word in ("no", "n", "nope"):
        return False
    raise Unread(refusals.use_buttons())


def number_between(low: float, high: float) -> Callable[[str, Answers], float]:
    def read(text: str, answers: Answers) -> float:
        return parse_number(text, low=low, high=high)

    return read


def free_text(text: str, answers: Answers) -> str:
    """A note in the person's own words; "skip" is the empty note."""
    words = text.strip()
    if words.lower() in ("skip", "-", "no", "none", "nothing"):
        return ""
    if not words:
        raise Unread(refusals.empty_note())
    if len(words) > LONGEST_NOTE:
        raise Unread(refusals.long_note(len(words), LONGEST_NOTE))
    return words


def buttons(*rows: tuple[tuple[str, str], ...]) -> Callable[[Answers], Choices]:
    """Fixed choices: rows of (label, value)."""
    fixed = tuple(tuple(Choice(label, value) for label, value in row) for row in rows)

    def choices(answers: Answers) -> Choices:
        return fixed

    return choices
