"""A single number of a plan in one line, such as "Mira 2 days out carbs 420"."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from bot.words.languages import language, listed, mark
from engine.values.plan import PLAN_DAYS

# Words of such a line, with commas between them; a translation may have other ones.
DAYS_OUT = mark("days out, day out")
EVENT_DAY = mark("show day, the show day, on show day, stage day, shoot day")
NUMBERS = {
    "carb_g": mark("carbs, carb, carbohydrates, carbohydrate"),
    "protein_g": mark("protein, proteins"),
    "fat_g": mark("fat"),
    "fibre_g": mark("fibre, fiber"),
    "water_l": mark("water"),
    "sodium_mg": mark("sodium"),
    "cardio_min": mark("cardio"),
    "steps": mark("steps"),
    "phase": mark("phase"),
}
_LONGEST_VALUE = 24  # characters; it has to fit a button


@dataclass(frozen=True, slots=True)
class TypedNumber:
    """`name` is None where nobody was named; `value` as it was typed, its unit included."""

    name: str | None
    days_out: int
    key: str
    value: str


def read_number(text: str) -> TypedNumber | None:
    """What such a line says, in English or in the language in force; None for any other text."""
    pattern, keys = _line(language())
    found = pattern.fullmatch(" ".join(text.split()))
    if found is None or len(found["value"].encode()) > _LONGEST_VALUE:
        return None
    days_out = int(found["out"] or 0)
    if days_out not in PLAN_DAYS:
        return None
    return TypedNumber(found["name"], days_out, keys[found["field"].casefold()], found["value"])


@cache
def _line(_language: str) -> tuple[re.Pattern[str], dict[str, str]]:
    """The form of a line in the language in force, and the number that each of its words names."""
    keys = {word: key for key, words in NUMBERS.items() for word in listed(words)}
    pattern = re.compile(
        r"(?:(?P<name>\S.*?)[\s,:]+)?"
        rf"(?:(?P<out>\d)\s+(?:{_any(listed(DAYS_OUT))})|(?:{_any(listed(EVENT_DAY))}))[\s,:]+"
        rf"(?P<field>{_any(keys)})[\s:=]+(?P<value>[^\s:][^:]*)",
        re.IGNORECASE,
    )
    return pattern, keys


def _any(words: Iterable[str]) -> str:
    # Without regard to case, "ß" is "ss" in the lists, and the one or the other as it is typed.
    return "|".join(re.escape(word).replace("ss", "(?:ss|ß)") for word in words)
