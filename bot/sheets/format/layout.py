"""A plan and its limits as a sheet: what stands where, the same in XLSX and CSV, and how it is written.

Plan of     Mira
Event       Show, Sun 9 May 2027 ...
Version     A2-P12-L9

Days out    Day         Carbs (g)  Protein (g)  ...  Carbs set (g)  Carbs eaten (g)  ...
7           Sun 2 May   155        140               155            150
            Load days   1500       380               1520           1490

A column "Total (kcal)" may be added; it is held against the day's figures.
...

Limit                   Value   Unit
Carb floor a day        85      g
...

The words at the edges are in the reader's language; a sheet is read in any that there is.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from bot.plan.flow import UNCOUNTED
from bot.plan.words import FIELDS
from bot.sheets import words
from bot.sheets.format.cells import heading_font
from bot.sheets.format.making import as_csv, lay_out, new_book, put, saved
from bot.words.languages import mark, tr
from bot.words.phases import phase_words, training_words
from engine.values.limits import LIMIT_KEYS, Limits
from engine.values.plan import DayTarget, PeakPlan

SHEET_NAME = "Plan"
# Written in the reader's language, and read in any.
PLAN_OF, EVENT, VERSION = mark("Plan of"), mark("Event"), mark("Version")
DAYS_OUT, DAY = mark("Days out"), mark("Day")
LIMIT, VALUE, UNIT = mark("Limit"), mark("Value"), mark("Unit")
#: What the load total was called while every load lay on the same days.
LOAD_TOTAL_BEFORE = mark("Load total, 3 to 1 days out")
#: What a column of the days' own totals may be headed with, the first as we say it.
TOTAL = "kcal"
TOTAL_HEADINGS = mark("Total (kcal), kcal, energy (kcal), calories (kcal), kcal total")
#: What stands where fibre or sodium has no figure; an empty cell says the same.
AS_ALWAYS = mark("as always")
DECIMALS = 2  # what is written out; a finer figure that comes back so is the same figure

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


#: What stands beside the plan, for whoever reads it; it is not read back. Key, heading, unit.
BESIDE = (
    ("set_g", mark("Carbs set"), "g"),
    ("eaten_g", mark("Carbs eaten"), "g"),
    ("water_l", mark("Water drunk"), "L"),
    ("weight_kg", mark("Weight"), "kg"),
    ("fullness", mark("Fullness"), "1-10"),
    ("sharpness", mark("Sharpness"), "1-5"),
    ("kcal_planned", mark("Energy planned"), "kcal"),
    ("kcal_set", mark("Energy set"), "kcal"),
)
#: The line under the days; its first cell is empty, so that it is not read as one of them.
LOAD_TOTAL = mark("Load days")
#: The columns that are summed up in it.
SUMMED = ("carb_g", "protein_g", "fat_g", "set_g", "eaten_g", "kcal_planned", "kcal_set")


@dataclass(frozen=True, slots=True)
class PlanSheet:
    """What is written: `days` are the dates as words, and `beside` what was set, eaten and answered (by
    the keys of `BESIDE`), each by days out.
    """

    version: Version
    name: str
    event: str
    plan: PeakPlan
    days: dict[int, str]
    limits: Limits | None
    beside: dict[int, dict[str, float]] = field(default_factory=dict)


def shown(value: float | str | None) -> float | int | str:
    """A figure as it stands in a cell."""
    if value is None:
        return ""
    if isinstance(value, str):
        return value
    rounded = round(value, DECIMALS)
    return int(rounded) if rounded == int(rounded) else rounded


_WIDTHS = {1: 30, 2: 14, 9: 30, 12: 20}
_OTHERS = 10  # the other columns
#: The row of the headings.
HEAD = 5


def write(sheet: PlanSheet, form: str) -> bytes:
    """The file's bytes. `form`: one of FORMATS."""
    return _xlsx(sheet) if form == "xlsx" else as_csv(_rows(sheet))


def _rows(sheet: PlanSheet) -> list[list[float | int | str]]:
    rows: list[list[float | int | str]] = [
        [tr(PLAN_OF), sheet.name],
        [tr(EVENT), sheet.event],
        [tr(VERSION), str(sheet.version)],
        [],
        [
            tr(DAYS_OUT), tr(DAY), *(words.heading(key) for key in FIELDS),
            *(f"{tr(heading)} ({unit})" for _, heading, unit in BESIDE),
        ],
    ]  # fmt: skip
    rows += [
        [
            target.days_out,
            sheet.days[target.days_out],
            *(_shown(target, key) for key in FIELDS),
            *(shown(sheet.beside.get(target.days_out, {}).get(key)) for key, _, _ in BESIDE),
        ]
        for target in sheet.plan
    ]
    rows.append(["", tr(LOAD_TOTAL), *(_total(sheet, key) for key in _NUMBERS)])
    if sheet.limits is not None:
        rows += [[tr(LIMIT), tr(VALUE), tr(UNIT)]]
        rows += [
            [words.limit_heading(key), shown(getattr(sheet.limits, key)), limit.unit]
            for key, limit in LIMIT_KEYS.items()
        ]
    return rows


#: The columns behind the day's name, in order.
_NUMBERS = (*FIELDS, *(key for key, _, _ in BESIDE))


def _total(sheet: PlanSheet, key: str) -> float | int | str:
    """The sum over the load days; nothing where it is no amount, or not known of each of them."""
    if key not in SUMMED:
        return ""
    load = [target for target in sheet.plan if target.days_out in sheet.plan.load_days]
    told = [
        getattr(target, key, None)
        if key in FIELDS
        else sheet.beside.get(target.days_out, {}).get(key)
        for target in load
    ]
    return shown(sum(told)) if told and None not in told else ""  # type: ignore[arg-type]


def _shown(target: DayTarget, key: str) -> float | int | str:
    if key == "training":
        return training_words(target.training)
    if key == "phase":
        return phase_words(target.phase)
    value = getattr(target, key)
    return tr(AS_ALWAYS) if value is None and key in UNCOUNTED else shown(value)


def _xlsx(sheet: PlanSheet) -> bytes:
    book, page = new_book(SHEET_NAME)
    for number, row in enumerate(_rows(sheet), start=1):
        for column, value in enumerate(row, start=1):
            put(page, number, column, value)
            if row[0] == tr(LIMIT) or (column == 1 and isinstance(value, str)):
                page.cell(number, column).font = heading_font()
    widths = [_WIDTHS.get(number, _OTHERS) for number in range(1, len(_NUMBERS) + 3)]
    lay_out(page, HEAD, widths, beside="C", pages=1)
    return saved(book)
