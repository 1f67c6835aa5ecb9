"""What a sheet of a workbook holds: its columns, each with unit, kind and meaning."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from bot.words.languages import tr


class Kind(StrEnum):
    """What stands in a column's cells."""

    TEXT = "text"
    NUMBER = "number"
    DATE = "date"
    MOMENT = "moment"  # a local date and time, on the athlete's clocks


@dataclass(frozen=True, slots=True, kw_only=True)
class Column:
    """`key` names it in code, in every language; `heading` and `about` are marked sentences.

    `places` are the decimals shown, None where a figure shows as many as it has. Of a sheet of one
    athlete, `across` columns are left out; in a file for the athlete themself, `for_coaches` ones.
    """

    key: str
    heading: str
    kind: Kind = Kind.TEXT
    unit: str = ""
    about: str = ""
    places: int | None = None
    across: bool = False
    for_coaches: bool = False

    def titled(self) -> str:
        """ "Weight (kg)", in the reader's language."""
        heading = tr(self.heading)
        return f"{heading} ({self.unit})" if self.unit else heading


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """One sheet, and one CSV; `id` is the CSV's name. A row is what `about` says."""

    id: str
    title: str
    about: str
    columns: tuple[Column, ...]

    def shown(self, *, across: bool, to_coach: bool) -> tuple[Column, ...]:
        """The columns of a file for this reader."""
        return tuple(
            column
            for column in self.columns
            if (across or not column.across) and (to_coach or not column.for_coaches)
        )
