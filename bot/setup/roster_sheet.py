"""The sheet of many athletes, written and read: one row an athlete's event, the same in XLSX and CSV.

Code    Athlete  Event  Day         Place   Class     Stage time  Plan       Load (g/kg) ...
A2-E5   Mira     show   2027-05-09  London  Figure B  14:30       Even week  8.2

A code names athlete and event; without an event in it the row is that of the day, or one more. The
headings are in the reader's language; a sheet is read in any that there is, and columns with other
headings are the coach's own.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import partial

from bot.setup import words_sheet as words
from bot.sheets import words as sheet_words
from bot.sheets.format.cells import from_csv, width_for
from bot.sheets.format.making import Value, as_csv, lay_out, new_book, put, saved
from bot.sheets.format.opening import MOST_COLUMNS, MOST_ROWS, Cell, Content, Grid, name_of
from bot.words.languages import in_each, mark, tr
from engine.values.limits import LIMIT_KEYS

CODE, ATHLETE, KIND, DAY, PLACE, CLASS = "code", "athlete", "kind", "day", "zone", "class_name"
STAGE, PLAN, LOAD, DEPLETION = "stage", "plan", "load_g_per_kg", "depletion"
ASKED, LOOK, REASON = "asked_at", "look_before_min", "reason"
TARGET, CAP, WEIGH_DAY, WEIGH_AT = "target_look", "weigh_cap", "weigh_day", "weigh_at"

_BEFORE: Mapping[str, str] = {
    CODE: mark("Code"),
    ATHLETE: mark("Athlete"),
    KIND: mark("Event"),
    DAY: mark("Day"),
    PLACE: mark("Place"),
    CLASS: mark("Class"),
    STAGE: mark("Stage time"),
    PLAN: mark("Plan"),
    LOAD: mark("Load (g/kg)"),
    DEPLETION: mark("Depletion"),
}
_AFTER: Mapping[str, str] = {
    ASKED: mark("Check-in at"),
    LOOK: mark("Look check (min before)"),
    REASON: mark("Reason"),
    TARGET: mark("Target look"),
    CAP: mark("Weigh-in cap (kg)"),
    WEIGH_DAY: mark("Weigh-in day"),
    WEIGH_AT: mark("Weigh-in time"),
}
COLUMNS = (*_BEFORE, *LIMIT_KEYS, *_AFTER)
#: Without these a sheet is not one of many athletes.
NEEDED = (DAY,)
WHO = (CODE, ATHLETE)

_CODE = re.compile(r"a(\d{1,9})(?:\s*-\s*e(\d{1,9}))?", re.IGNORECASE)


def heading(key: str) -> str:
    """The heading of a column, with its unit."""
    if key in LIMIT_KEYS:
        return f"{sheet_words.limit_heading(key)} ({LIMIT_KEYS[key].unit})"
    return tr({**_BEFORE, **_AFTER}[key])


def headings() -> dict[str, str]:
    """How each column may be headed, in any language, to its key; the unit may be left out."""
    found: dict[str, str] = {}
    for key in COLUMNS:
        for text in in_each(partial(heading, key)):
            plain = " ".join(text.split()).casefold()
            found[plain] = key
            found.setdefault(plain.partition(" (")[0], key)
    return found


def code_of(athlete_id: int, event_id: int | None) -> str:
    return f"A{athlete_id}-E{event_id}" if event_id else f"A{athlete_id}"


def code_in(text: str) -> tuple[int, int] | None:
    """Athlete and event (0: none named) of a code; None for any other text."""
    found = _CODE.fullmatch(text.strip())
    return (int(found[1]), int(found[2] or 0)) if found else None


_LOOK_FOR_HEAD_IN = 20  # rows


@dataclass(frozen=True, slots=True)
class Row:
    """`cells` by column key; `number` is the row's own in the sheet."""

    number: int
    cells: dict[str, Cell]
    names: dict[str, str]  # each cell's name ("C7"), by column key

    def text(self, key: str) -> str:
        cell = self.cells.get(key)
        return from_csv(" ".join(cell.text.split())) if cell is not None else ""


@dataclass(frozen=True, slots=True)
class Roster:
    """`twice`: cells of headings that stand there again; `too_many`: more rows than are read."""

    rows: tuple[Row, ...]
    merged: tuple[str, ...] = ()
    twice: tuple[str, ...] = ()
    too_many: bool = False


def is_roster(grid: Grid) -> bool:
    """Whether a grid is such a sheet, by its headings."""
    return _head(grid) is not None


def read_roster(grid: Grid) -> Roster:
    """Every row that names somebody. Raises ValueError for a grid that is no such sheet."""
    head = _head(grid)
    if head is None:
        raise ValueError("no row of headings")
    known, columns, twice = headings(), dict[str, int](), []
    for column in range(1, MOST_COLUMNS + 1):
        key = known.get(grid.cell(head, column).label)
        if key in columns:
            twice.append(name_of(head, column))
        elif key is not None:
            columns[key] = column
    rows, merged = [], []
    for number in range(head + 1, len(grid.rows) + 1):
        cells = {key: grid.cell(number, column) for key, column in columns.items()}
        names = {key: name_of(number, column) for key, column in columns.items()}
        if all(cells[key].content is Content.EMPTY for key in WHO if key in cells):
            said = [key for key, cell in cells.items() if cell.content is not Content.EMPTY]
            if not said:
                continue
        merged += [
            area for key, column in columns.items() if (area := grid.merged_at(number, column))
        ]
        rows.append(Row(number, cells, names))
    return Roster(
        tuple(rows), tuple(dict.fromkeys(merged)), tuple(twice), len(grid.rows) >= MOST_ROWS
    )


def _head(grid: Grid) -> int | None:
    """The first row with the headings that such a sheet needs."""
    known = headings()
    for row in range(1, min(len(grid.rows), _LOOK_FOR_HEAD_IN) + 1):
        found = {known.get(grid.cell(row, column).label) for column in range(1, MOST_COLUMNS + 1)}
        who = any(key in found for key in WHO)
        if who and all(key in found for key in NEEDED) and len(found & set(COLUMNS)) > 2:
            return row
    return None


_WIDTHS = {CODE: 10, ATHLETE: 16, DAY: 12, PLACE: 18, PLAN: 20, REASON: 30}
_USUAL_WIDTH = 13
_LIST_MOST = 250  # what a spreadsheet program takes as a list of choices


@dataclass(frozen=True, slots=True)
class Choices:
    """What may stand in a column, for the lists that a spreadsheet program offers."""

    kinds: tuple[str, ...]
    plans: tuple[str, ...]
    depletions: tuple[str, ...]


def write(rows: list[dict[str, Value]], choices: Choices, form: str) -> bytes:
    """`rows`: values by column key. `form`: xlsx or csv."""
    table: list[list[Value]] = [[heading(key) for key in COLUMNS]]
    table += [[row.get(key) for key in COLUMNS] for row in rows]
    return _xlsx(table, choices) if form == "xlsx" else as_csv(table)


def _xlsx(table: list[list[Value]], choices: Choices) -> bytes:
    from openpyxl.styles import Alignment  # noqa: PLC0415 - loaded at the first sheet

    book, page = new_book(words.page_title())
    for number, row in enumerate(table, start=1):
        for column, value in enumerate(row, start=1):
            put(page, number, column, value)
    widths = [width_for(heading(key), _WIDTHS.get(key, _USUAL_WIDTH)) for key in COLUMNS]
    _offer(page, choices, last=max(len(table) + 39, 60))
    lay_out(page, 1, widths, beside="C")
    notes = book.create_sheet(words.notes_title())
    notes.column_dimensions["A"].width = 100
    for number, line in enumerate(words.notes(choices.plans), start=1):
        put(notes, number, 1, line)
        notes.cell(number, 1).alignment = Alignment(wrap_text=True)
    return saved(book)


def _offer(page: object, choices: Choices, last: int) -> None:
    """Lists to choose from; anything else may be written all the same, and is read with care."""
    from openpyxl.utils import get_column_letter  # noqa: PLC0415
    from openpyxl.worksheet.datavalidation import DataValidation  # noqa: PLC0415

    offered = (
        (KIND, choices.kinds), (PLAN, choices.plans), (DEPLETION, choices.depletions),
    )  # fmt: skip
    for key, listed in offered:
        text = ",".join(one for one in listed if "," not in one and '"' not in one)
        if not text or len(text) > _LIST_MOST:
            continue
        rule = DataValidation(type="list", formula1=f'"{text}"', allow_blank=True)
        rule.showErrorMessage = False
        letter = get_column_letter(COLUMNS.index(key) + 1)
        rule.add(f"{letter}2:{letter}{last}")
        page.add_data_validation(rule)  # type: ignore[attr-defined]
