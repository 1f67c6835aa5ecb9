"""What stands where in a plan's sheet, the same in XLSX and CSV.

Plan of     Mira
Event       Show, Sun 9 May 2027 ...
Version     A2-P12-L9

Days out    Day         Carbs (g)  Protein (g)  ...
7           Sun 2 May   155        140

A column "Total (kcal)" may be added; it is held against the day's figures.
...

Limit                   Value   Unit
Carb floor a day        85      g
...

The words at the edges are in the reader's language; a sheet is read in any that there is.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from bot.words.languages import mark
from engine.values.limits import Limits
from engine.values.plan import PeakPlan

SHEET_NAME = "Plan"
# Written in the reader's language, and read in any.
PLAN_OF, EVENT, VERSION = mark("Plan of"), mark("Event"), mark("Version")
DAYS_OUT, DAY = mark("Days out"), mark("Day")
LIMIT, VALUE, UNIT = mark("Limit"), mark("Value"), mark("Unit")
#: Headings by which the line of headings of a CSV is known, whatever sheet it is.
LANDMARKS = (DAYS_OUT, mark("Event day"))
#: What a column of the days' own totals may be headed with, the first as we say it.
TOTAL = "kcal"
TOTAL_HEADINGS = mark("Total (kcal), kcal, energy (kcal), calories (kcal), kcal total")
#: What stands where fibre or sodium has no figure; an empty cell says the same.
AS_ALWAYS = mark("as always")
DECIMALS = 2  # what is written out; a finer figure that comes back so is the same figure

#: Signs that make a formula of a cell, the wide ones too, which some programs read alike.
FORMULA_SIGNS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
_VERSION = re.compile(r"a(\d{1,9})-p(\d{1,9})-l(\d{1,9})", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Version:
    """What a sheet was made from: rows of plan and limits (0: none were set), and whose."""

    athlete_id: int
    plan_id: int
    limits_id: int

    def __str__(self) -> str:
        return f"A{self.athlete_id}-P{self.plan_id}-L{self.limits_id}"


def version_in(text: str) -> Version | None:
    found = _VERSION.fullmatch(text.strip())
    return Version(*(int(number) for number in found.groups())) if found else None


@dataclass(frozen=True, slots=True)
class PlanSheet:
    """What is written: `days` are the dates as words, by days out."""

    version: Version
    name: str
    event: str
    plan: PeakPlan
    days: dict[int, str]
    limits: Limits | None


def shown(value: float | str | None) -> float | int | str:
    """A figure as it stands in a cell."""
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    rounded = round(value, DECIMALS)
    return int(rounded) if rounded == int(rounded) else rounded
