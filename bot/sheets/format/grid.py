"""A sheet's cells as they came, whatever file they came in."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import StrEnum


class Content(StrEnum):
    EMPTY = "empty"
    NUMBER = "number"
    TEXT = "text"
    DATE = "date"  # what spreadsheet programs make of "3.5" where they can
    TRUTH = "truth"  # TRUE, FALSE
    ERROR = "error"  # #DIV/0! and the like
    FORMULA = "formula"  # one whose result was not stored


@dataclass(frozen=True, slots=True)
class Cell:
    """`value` of a number, `text` of everything else."""

    content: Content
    text: str = ""
    value: float = 0.0

    @property
    def label(self) -> str:
        """The words in it as a heading is compared: no case, no stray blanks."""
        return " ".join(self.text.split()).casefold() if self.content is Content.TEXT else ""


NOTHING = Cell(Content.EMPTY)


@dataclass(frozen=True, slots=True)
class Grid:
    """Rows of cells from A1 on. Merged areas as (first row, first column, last row, last column)."""

    rows: Sequence[Sequence[Cell]]
    merged: Sequence[tuple[int, int, int, int]] = ()
    hidden_rows: frozenset[int] = field(default_factory=frozenset)
    hidden_columns: frozenset[int] = field(default_factory=frozenset)

    def cell(self, row: int, column: int) -> Cell:
        """Counted from 1, as spreadsheet programs do; empty past the end."""
        if not 1 <= row <= len(self.rows) or not 1 <= column <= len(self.rows[row - 1]):
            return NOTHING
        return self.rows[row - 1][column - 1]

    def merged_at(self, row: int, column: int) -> str | None:
        """The merged area that this cell is part of, by its name ("C7:D7")."""
        for top, left, bottom, right in self.merged:
            if top <= row <= bottom and left <= column <= right:
                return f"{name_of(top, left)}:{name_of(bottom, right)}"
        return None


def name_of(row: int, column: int) -> str:
    """ "C7"; `column` from 1, with A after Z as AA."""
    letters = ""
    while column:
        column, letter = divmod(column - 1, 26)
        letters = chr(ord("A") + letter) + letters
    return f"{letters}{row}"
