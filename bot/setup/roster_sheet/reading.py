"""A grid -> the rows of a sheet of many athletes, each cell by its column; not yet what it means."""

from __future__ import annotations

from dataclasses import dataclass

from bot.setup.roster_sheet import columns as at
from bot.sheets.format.opening import MOST_COLUMNS, MOST_ROWS, Cell, Content, Grid, name_of

_LOOK_FOR_HEAD_IN = 20  # rows


@dataclass(frozen=True, slots=True)
class Row:
    """`cells` by column key; `number` is the row's own in the sheet."""

    number: int
    cells: dict[str, Cell]
    names: dict[str, str]  # each cell's name ("C7"), by column key

    def text(self, key: str) -> str:
        cell = self.cells.get(key)
        return " ".join(cell.text.split()) if cell is not None else ""


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
    known, columns, twice = at.headings(), dict[str, int](), []
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
        if all(cells[key].content is Content.EMPTY for key in at.WHO if key in cells):
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
    known = at.headings()
    for row in range(1, min(len(grid.rows), _LOOK_FOR_HEAD_IN) + 1):
        found = {known.get(grid.cell(row, column).label) for column in range(1, MOST_COLUMNS + 1)}
        who = any(key in found for key in at.WHO)
        if who and all(key in found for key in at.NEEDED) and len(found & set(at.COLUMNS)) > 2:
            return row
    return None
