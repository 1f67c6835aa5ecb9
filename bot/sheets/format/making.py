"""How a sheet of a few columns is made as XLSX and CSV; the workbook of a year streams its rows.

Text that a spreadsheet program would take for a formula is written as text: a name or a note must not
compute anything on the coach's computer.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence
from datetime import date, time
from typing import TYPE_CHECKING

from bot.sheets.format.cells import (
    computes,
    for_csv,
    heading_font,
    height_of_headings,
    sayable,
    to_print,
)

if TYPE_CHECKING:
    from openpyxl import Workbook
    from openpyxl.worksheet.worksheet import Worksheet

FORMATS = ("xlsx", "csv")
#: What stands in a cell; None and "" for nothing.
Value = float | int | str | date | time | None
DAY_SHOWN, CLOCK_SHOWN = "yyyy-mm-dd", "hh:mm"


def new_book(title: str) -> tuple[Workbook, Worksheet]:
    """A workbook and its only page."""
    from openpyxl import Workbook  # noqa: PLC0415 - heavy: loaded at the first file

    book = Workbook()
    page: Worksheet = book.worksheets[0]
    page.title = title
    return book, page


def put(page: Worksheet, row: int, column: int, value: Value) -> None:
    """Write it as what it is; nothing where it is None or ""."""
    from openpyxl.cell.cell import Cell  # noqa: PLC0415

    if value is None or value == "":
        return
    cell = page.cell(row, column)
    assert isinstance(cell, Cell)
    cell.value = sayable(value) if isinstance(value, str) else value
    if isinstance(value, str):
        cell.data_type = "s"  # openpyxl would make a formula of "=..."
        cell.quotePrefix = computes(value)  # so that it stays text when somebody edits the cell
    elif isinstance(value, time):
        cell.number_format = CLOCK_SHOWN
    elif isinstance(value, date):
        cell.number_format = DAY_SHOWN


def lay_out(
    page: Worksheet, head: int, widths: Sequence[float], *, beside: str = "A", pages: int = 0
) -> None:
    """The headings, which stand in row `head`: they show as such, stay in sight with the columns left
    of `beside`, and are printed on every page, or all of it on so many `pages`.
    """
    from openpyxl.styles import Alignment, PatternFill  # noqa: PLC0415
    from openpyxl.utils import get_column_letter  # noqa: PLC0415

    headings = []
    for column, width in enumerate(widths, start=1):
        cell = page.cell(head, column)
        cell.font, cell.fill = heading_font(), PatternFill("solid", fgColor="E7E7E7")
        cell.alignment = Alignment(wrap_text=True, vertical="top")
        page.column_dimensions[get_column_letter(column)].width = width
        headings.append((str(cell.value or ""), width))
    page.row_dimensions[head].height = height_of_headings(headings)
    page.freeze_panes = f"{beside}{head + 1}"
    to_print(page, head=head, pages=pages)


def saved(book: Workbook) -> bytes:
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def as_csv(rows: Iterable[Iterable[Value]]) -> bytes:
    """The mark in front tells spreadsheet programs that it is UTF-8."""
    out = io.StringIO(newline="")
    csv.writer(out).writerows(map(_plain, row) for row in rows)
    return out.getvalue().encode("utf-8-sig")


def _plain(value: Value) -> float | str | None:
    if isinstance(value, str):
        return for_csv(value)
    if isinstance(value, time):
        return f"{value:%H:%M}"
    return value.isoformat() if isinstance(value, date) else value
