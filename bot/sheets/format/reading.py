"""A grid -> plan and limits as filled in, every figure with the cell it stands in.

Nothing is half-taken: either every cell that counts could be read, or the file is refused with all
that is wrong, by cell.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import partial

from bot.plan.flow import LONGEST_TRAINING, UNCOUNTED
from bot.plan.flow import MOST as MOST_OF_PLAN
from bot.plan.review.flow import MOST_KCAL
from bot.plan.words import FIELDS
from bot.sheets import words
from bot.sheets.format import layout as at
from bot.sheets.format.cells import from_csv
from bot.sheets.format.opening import MOST_COLUMNS, Cell, Content, Grid, SheetRefused, name_of
from bot.words.languages import tr, ways_written
from bot.words.phases import as_drafted, phase_in
from engine.values.limits import LIMIT_KEYS
from engine.values.plan import PLAN_DAYS, Phase
from engine.written.units import ParseError, VolumeUnit, parse_grams, parse_number, parse_volume

MOST_WATER_L = 15
MOST = MOST_OF_PLAN | {at.TOTAL: MOST_KCAL}
MAY_BE_EMPTY = frozenset({"training", "cardio_min", "steps", "phase", at.TOTAL}) | UNCOUNTED
#: Columns that a sheet may do without: what they say stays as it is.
MAY_BE_MISSING = frozenset({"phase"})
_LOOK_FOR_VERSION_IN = 30  # rows

Figure = float | int | str | None


@dataclass(frozen=True, slots=True)
class Wrong:
    """What is wrong with a cell: `why` is a key of `bot.sheets.words.WRONG`."""

    cell: str
    why: str
    facts: Mapping[str, str | float] = field(default_factory=dict)


class SheetProblems(Exception):  # noqa: N818 - it is an answer to a person, not a fault
    """Everything that is wrong with a sheet."""

    def __init__(self, found: list[Wrong]) -> None:
        super().__init__(f"{len(found)} cells")
        self.found = found


@dataclass(frozen=True, slots=True)
class Filled:
    """`days`: figures by days out and key; `bounds` by limit key; `cells`: where each stands.

    `totals`: kcal that the coach's own plan gives, by days out, where there is such a column.
    """

    version: at.Version
    days: dict[int, dict[str, Figure]]
    bounds: dict[str, float]
    cells: dict[tuple[int | None, str], str]
    hidden: tuple[str, ...] = ()
    totals: Mapping[int, float] = field(default_factory=dict)

    def cell(self, days_out: int | None, key: str) -> str:
        return self.cells.get((days_out, key), "")


def read_sheet(grid: Grid) -> Filled:
    """Plan and limits as they stand in the sheet.

    Raises SheetRefused for a sheet that is not one of ours, SheetProblems for cells that cannot be
    read.
    """
    version = _version(grid)
    head = grid.row_of(at.DAYS_OUT)
    if version is None or head is None:
        raise SheetRefused("not-our-sheet")
    found: list[Wrong] = []
    cells: dict[tuple[int | None, str], str] = {}
    days = _days(grid, head, _columns(grid, head, found), cells, found)
    bounds = _bounds(grid, cells, found)
    if found:
        raise SheetProblems(found)
    return Filled(version, days, bounds, cells, _hidden(grid, cells), _totals(days))


def _totals(days: Mapping[int, dict[str, Figure]]) -> dict[int, float]:
    """Take the stated totals out of what is the plan's own."""
    stated = {days_out: figures.pop(at.TOTAL, None) for days_out, figures in days.items()}
    return {out: float(kcal) for out, kcal in stated.items() if isinstance(kcal, int | float)}


def _version(grid: Grid) -> at.Version | None:
    row = grid.row_of(at.VERSION, _LOOK_FOR_VERSION_IN)
    return at.version_in(grid.cell(row, 2).text) if row is not None else None


def _total_headings() -> set[str]:
    every = ways_written(lambda: tr(at.TOTAL_HEADINGS))
    return {heading.strip() for headings in every for heading in headings.split(",")}


def _columns(grid: Grid, head: int, found: list[Wrong]) -> dict[str, int]:
    """The column of each number of a day, by its heading; other columns are the coach's own."""
    wanted = dict.fromkeys(_total_headings(), at.TOTAL)
    wanted |= {text: key for key in FIELDS for text in ways_written(partial(words.heading, key))}
    columns: dict[str, int] = {}
    for column in range(1, MOST_COLUMNS + 1):
        key = wanted.get(grid.cell(head, column).label)
        if key is None or (key == at.TOTAL and key in columns):
            continue
        if key in columns:
            found.append(Wrong(name_of(head, column), "heading-twice", {"heading": key}))
        columns[key] = column
    found += [
        Wrong(name_of(head, 1), "no-heading", {"heading": key})
        for key in FIELDS
        if key not in columns and key not in MAY_BE_MISSING
    ]
    return columns


def _days(
    grid: Grid,
    head: int,
    columns: dict[str, int],
    cells: dict[tuple[int | None, str], str],
    found: list[Wrong],
) -> dict[int, dict[str, Figure]]:
    days: dict[int, dict[str, Figure]] = {}
    row = head + 1
    while row <= len(grid.rows) and grid.cell(row, 1).content is not Content.EMPTY:
        days_out = _days_out(grid, row, found)
        if days_out in days:
            found.append(Wrong(name_of(row, 1), "day-twice", {"days_out": days_out or 0}))
        if days_out is not None:
            figures = {
                key: _figure(grid, row, column, key, found) for key, column in columns.items()
            }
            if figures.get("phase") is None:
                figures.pop("phase", None)  # not said: as it was
            days[days_out] = figures
            for key, column in columns.items():
                cells[days_out, key] = name_of(row, column)
        row += 1
    return days


def _days_out(grid: Grid, row: int, found: list[Wrong]) -> int | None:
    where, cell = name_of(row, 1), grid.cell(row, 1)
    if merged := grid.merged_at(row, 1):
        found.append(Wrong(where, "merged", {"area": merged}))
        return None
    try:
        number = _number(cell, 0, max(PLAN_DAYS))
    except ParseError:
        number = math.nan
    if number not in PLAN_DAYS:
        found.append(Wrong(where, "no-such-day", {"given": cell.text}))
        return None
    return int(number)


def _figure(grid: Grid, row: int, column: int, key: str, found: list[Wrong]) -> Figure:
    cell, where = grid.cell(row, column), name_of(row, column)
    if merged := grid.merged_at(row, column):
        found.append(Wrong(where, "merged", {"area": merged}))
        return None
    if cell.content in (Content.FORMULA, Content.DATE, Content.TRUTH, Content.ERROR):
        found.append(Wrong(where, cell.content.value, {"given": cell.text}))
        return None
    if cell.content is Content.EMPTY:
        if key not in MAY_BE_EMPTY:
            found.append(Wrong(where, "empty"))
        return "" if key == "training" else None
    if key == "training":
        return _training(cell, where, found)
    if key == "phase":
        return _phase(grid, row, cell, where, found)
    if key in UNCOUNTED and cell.label in ways_written(lambda: tr(at.AS_ALWAYS)):
        return None
    try:
        return _amount(cell, key)
    except ParseError as error:
        found.append(Wrong(where, error.code.value, error.facts | {"given": cell.text}))
        return None


def _phase(grid: Grid, row: int, cell: Cell, where: str, found: list[Wrong]) -> str | None:
    phase = phase_in(cell.text)
    out = grid.cell(row, 1)
    event = out.value == 0 if out.content is Content.NUMBER else out.text.strip() == "0"
    if phase is None or (phase is Phase.EVENT) is not event:
        found.append(Wrong(where, "no-such-phase", {"given": cell.text}))
        return None
    return phase.value


def _training(cell: Cell, where: str, found: list[Wrong]) -> str:
    said = from_csv(" ".join(cell.text.split()))
    if len(said) > LONGEST_TRAINING:
        found.append(Wrong(where, "training-too-long", {"most": LONGEST_TRAINING}))
    return as_drafted(said)


def _amount(cell: Cell, key: str) -> float | int:
    """The figure in the plan's own unit. Raises ParseError."""
    if cell.content is Content.NUMBER:
        most = MOST_WATER_L if key == "water_l" else MOST[key]
        number = parse_number(_plain(cell.value), low=0, high=most)
    elif key == "water_l":
        number = parse_volume(cell.text, unit=VolumeUnit.L).litres
    elif key.endswith("_g"):
        number = parse_grams(cell.text, high=MOST[key])
    else:
        plain = cell.text.casefold().replace(at.TOTAL, "") if key == at.TOTAL else cell.text
        number = parse_number(plain, low=0, high=MOST[key])
    return int(number) if key == "steps" else number


def _number(cell: Cell, low: float, high: float) -> float:
    text = _plain(cell.value) if cell.content is Content.NUMBER else cell.text
    return parse_number(text, low=low, high=high)


def _plain(value: float) -> str:
    """A cell's number for the readers: no exponent, and never three decimals, which they refuse as
    perhaps thousands (a number in a cell has no such doubt).
    """
    return f"{value:.4f}" if math.isfinite(value) else "?"


def _bounds(
    grid: Grid, cells: dict[tuple[int | None, str], str], found: list[Wrong]
) -> dict[str, float]:
    head = grid.row_of(at.LIMIT)
    if head is None:
        return {}
    wanted = {
        text: key for key in LIMIT_KEYS for text in ways_written(partial(words.limit_heading, key))
    }
    wanted |= dict.fromkeys(ways_written(lambda: tr(at.LOAD_TOTAL_BEFORE)), "load_total_g")
    bounds: dict[str, float] = {}
    row = head + 1
    while row <= len(grid.rows) and grid.cell(row, 1).content is not Content.EMPTY:
        key, where = wanted.get(grid.cell(row, 1).label), name_of(row, 2)
        cell = grid.cell(row, 2)
        if key is None:
            found.append(Wrong(name_of(row, 1), "no-such-limit", {"given": grid.cell(row, 1).text}))
        elif key in bounds:
            found.append(Wrong(name_of(row, 1), "limit-twice"))
        elif merged := grid.merged_at(row, 2):
            found.append(Wrong(where, "merged", {"area": merged}))
        elif cell.content in (Content.NUMBER, Content.TEXT):
            try:
                bounds[key] = _limit(cell, key)
            except ParseError as error:
                found.append(Wrong(where, error.code.value, error.facts | {"given": cell.text}))
        else:
            found.append(Wrong(where, cell.content.value, {"given": cell.text}))
        if key is not None:
            cells[None, key] = where
        row += 1
    found += [
        Wrong(name_of(head, 1), "no-limit", {"limit": key})
        for key in LIMIT_KEYS
        if (None, key) not in cells
    ]
    return bounds


def _limit(cell: Cell, key: str) -> float:
    if cell.content is Content.NUMBER:
        return parse_number(_plain(cell.value), low=0)
    if LIMIT_KEYS[key].unit == "L":
        return parse_volume(cell.text, unit=VolumeUnit.L).litres
    return parse_grams(cell.text, high=100_000)


def _hidden(grid: Grid, cells: dict[tuple[int | None, str], str]) -> tuple[str, ...]:
    """Cells that count and do not show: a change in one of them is not to slip by."""
    shown_not = {
        name_of(row, column)
        for row in range(1, len(grid.rows) + 1)
        for column in range(1, MOST_COLUMNS + 1)
        if row in grid.hidden_rows or column in grid.hidden_columns
    }
    return tuple(sorted(set(cells.values()) & shown_not))
