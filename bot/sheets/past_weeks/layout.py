"""The sheet of past weeks: one row a day, several weeks one below the other.

Past weeks of   Mira
Athlete         A2

Date        Event day   Event  Look on the day  Carbs planned (g)  ...  Weight (kg)  ...
2026-03-01  2026-03-08  trial                   180
...

Event day, event and look need to stand in one row of a week; an empty cell is as the row above. What
was eaten and drunk stands with the day on which it was; weight, fullness, sharpness, stomach and sleep
with the morning of that day. Where phases are given, the load is on the days that are called so; else
it is read off the carbs. A heading may name another unit, "Weight (lb)", and so may a cell.

Empty, it is written as XLSX or CSV with one week of dates laid out.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from bot.sheets.format.cells import width_for
from bot.sheets.format.making import DAY_SHOWN, as_csv, lay_out, new_book, put, saved
from bot.sheets.past_weeks import words
from bot.words.languages import mark, tr
from engine.values.plan import PLAN_DAYS

SHEET_NAME = mark("Past weeks")
PAST_WEEKS_OF, ATHLETE = mark("Past weeks of"), mark("Athlete")
MOST_WEEKS = 20
_ATHLETE = re.compile(r"a(\d{1,9})", re.IGNORECASE)


class Reads(StrEnum):
    """How the cells of a column are read."""

    DAY = "day"
    KIND = "kind"
    LOOK = "look"
    GRAMS = "grams"
    WEIGHT = "weight"
    VOLUME = "volume"
    OF_TEN = "of-ten"
    OF_FIVE = "of-five"
    GUT = "gut"
    HOURS = "hours"
    PHASE = "phase"
    TRAINING = "training"
    WORDS = "words"


@dataclass(frozen=True, slots=True)
class Column:
    """`units` are those that its heading may name, the first as we write it."""

    key: str
    heading: str
    reads: Reads
    units: tuple[str, ...] = ()
    needed: bool = False

    def titled(self, unit: str | None = None) -> str:
        """ "Weight (kg)"; with `unit`, as if it were in that."""
        said = unit or (self.units[0] if self.units else "")
        return f"{tr(self.heading)} ({said})" if said else tr(self.heading)


_WEIGHTS = ("kg", "lb", "st")
_VOLUMES = ("L", "ml", "US fl oz", "imp fl oz")
DATE, EVENT_DAY, KIND, LOOK = "date", "event_day", "kind", "look"
PHASE, TRAINING = "phase", "training"
COLUMNS = (
    Column(DATE, mark("Date"), Reads.DAY, needed=True),
    Column(EVENT_DAY, mark("Event day"), Reads.DAY, needed=True),
    Column(KIND, mark("Event"), Reads.KIND),
    Column(LOOK, mark("Look on the day"), Reads.LOOK),
    Column("carb_planned_g", mark("Carbs planned"), Reads.GRAMS, ("g",)),
    Column("carb_set_g", mark("Carbs set"), Reads.GRAMS, ("g",)),
    Column("carb_eaten_g", mark("Carbs eaten"), Reads.GRAMS, ("g",)),
    Column("protein_g", mark("Protein"), Reads.GRAMS, ("g",)),
    Column("fat_g", mark("Fat"), Reads.GRAMS, ("g",)),
    Column(PHASE, mark("Phase"), Reads.PHASE),
    Column(TRAINING, mark("Training"), Reads.TRAINING),
    Column("water_l", mark("Water drunk"), Reads.VOLUME, _VOLUMES),
    Column("weight_kg", mark("Weight"), Reads.WEIGHT, _WEIGHTS),
    Column("fullness", mark("Fullness"), Reads.OF_TEN, ("1-10",)),
    Column("sharpness", mark("Sharpness"), Reads.OF_FIVE, ("1-5",)),
    Column("gut", mark("Stomach"), Reads.GUT),
    Column("sleep_h", mark("Sleep"), Reads.HOURS, ("h",)),
    Column("note", mark("Note"), Reads.WORDS),
)


def code_of(athlete_id: int) -> str:
    """What names the athlete in the sheet: "A2"."""
    return f"A{athlete_id}"


def athlete_in(text: str) -> int | None:
    found = _ATHLETE.fullmatch(text.strip())
    return int(found[1]) if found else None


#: Where the table begins, and how many rows of it a spreadsheet program is told to treat as dates.
HEAD, DATED_ROWS = 10, 170
_WIDTH, _WIDTHS = 10, {TRAINING: 18, "note": 24}
Row = list[str | date | None]


def empty_sheet(name: str, athlete_id: int, last_event: date, form: str) -> bytes:
    """`last_event`: the day of the week that is laid out as an example to overwrite."""
    rows = _rows(name, athlete_id, last_event)
    return _xlsx(rows) if form == "xlsx" else as_csv(rows)


def _rows(name: str, athlete_id: int, last_event: date) -> list[Row]:
    rows: list[Row] = [[tr(PAST_WEEKS_OF), name], [tr(ATHLETE), code_of(athlete_id)], [], *_lines()]
    rows += [[] for _ in range(HEAD - 1 - len(rows))]
    rows.append([column.titled() for column in COLUMNS])
    rows += [
        [last_event - timedelta(days=out), last_event if number == 0 else None]
        for number, out in enumerate(PLAN_DAYS)
    ]
    return rows


def _lines() -> list[Row]:
    return [[line] for line in words.hint_lines()]


def _xlsx(rows: list[Row]) -> bytes:
    book, page = new_book(tr(SHEET_NAME)[:31])
    for number, row in enumerate(rows, start=1):
        for column, value in enumerate(row, start=1):
            put(page, number, column, value)
    for number in range(HEAD + 1, HEAD + DATED_ROWS):
        for column in (1, 2):
            page.cell(number, column).number_format = DAY_SHOWN
    widths = [width_for(column.titled(), _WIDTHS.get(column.key, _WIDTH)) for column in COLUMNS]
    widths[0] = max(widths[0], *(len(tr(label)) for label in (PAST_WEEKS_OF, ATHLETE)))
    lay_out(page, HEAD, widths)
    return saved(book)
