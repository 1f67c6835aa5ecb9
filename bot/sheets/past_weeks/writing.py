"""The empty sheet for past weeks, as XLSX or CSV, with one week of dates laid out."""

from __future__ import annotations

import csv
import io
from datetime import date, timedelta

from bot.sheets.format.harmless import computes, for_csv, sayable
from bot.sheets.format.headings import heading_font, height_of_headings, to_print, width_for
from bot.sheets.past_weeks import layout as at
from bot.sheets.past_weeks import words
from bot.words.languages import tr
from engine.values.plan import PLAN_DAYS

FORMATS = ("xlsx", "csv")
#: Where the table begins, and how many rows of it a spreadsheet program is told to treat as dates.
HEAD, DATED_ROWS = 10, 170
_WIDTH, _WIDTHS = 10, {at.TRAINING: 18, "note": 24}
Row = list[str | date | None]


def empty_sheet(name: str, athlete_id: int, last_event: date, form: str) -> bytes:
    """`last_event`: the day of the week that is laid out as an example to overwrite."""
    rows = _rows(name, athlete_id, last_event)
    return _xlsx(rows) if form == "xlsx" else _csv(rows)


def _rows(name: str, athlete_id: int, last_event: date) -> list[Row]:
    rows: list[Row] = [
        [tr(at.PAST_WEEKS_OF), name],
        [tr(at.ATHLETE), at.code_of(athlete_id)],
        [],
        *_lines(),
    ]
    rows += [[] for _ in range(HEAD - 1 - len(rows))]
    rows.append([column.titled() for column in at.COLUMNS])
    rows += [
        [last_event - timedelta(days=out), last_event if number == 0 else None]
        for number, out in enumerate(PLAN_DAYS)
    ]
    return rows


def _lines() -> list[Row]:
    return [[line] for line in words.hint_lines()]


def _xlsx(rows: list[Row]) -> bytes:
    from openpyxl import Workbook  # noqa: PLC0415 - loaded at the first file
    from openpyxl.styles import Alignment, PatternFill  # noqa: PLC0415
    from openpyxl.utils import get_column_letter  # noqa: PLC0415

    book = Workbook()
    page = book.active
    assert page is not None
    page.title = tr(at.SHEET_NAME)[:31]
    for number, row in enumerate(rows, start=1):
        for column, value in enumerate(row, start=1):
            if value is None:
                continue
            cell = page.cell(number, column)
            cell.value = sayable(value) if isinstance(value, str) else value
            if isinstance(value, str):
                cell.data_type = "s"
                cell.quotePrefix = computes(value)
            if number == HEAD:
                cell.font, cell.fill = heading_font(), PatternFill("solid", fgColor="E7E7E7")
                cell.alignment = Alignment(wrap_text=True, vertical="top")
    for number in range(HEAD + 1, HEAD + DATED_ROWS):
        for column in (1, 2):
            page.cell(number, column).number_format = "yyyy-mm-dd"
    headings = [column.titled() for column in at.COLUMNS]
    widths = [
        width_for(heading, _WIDTHS.get(column.key, _WIDTH))
        for heading, column in zip(headings, at.COLUMNS, strict=True)
    ]
    widths[0] = max(widths[0], *(len(tr(label)) for label in (at.PAST_WEEKS_OF, at.ATHLETE)))
    for number, width in enumerate(widths, start=1):
        page.column_dimensions[get_column_letter(number)].width = width
    page.row_dimensions[HEAD].height = height_of_headings(list(zip(headings, widths, strict=True)))
    page.freeze_panes = f"A{HEAD + 1}"
    to_print(page, head=HEAD)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _csv(rows: list[Row]) -> bytes:
    out = io.StringIO(newline="")
    lines = csv.writer(out)
    for row in rows:
        lines.writerow([for_csv(v) if isinstance(v, str) else v for v in row])
    return out.getvalue().encode("utf-8-sig")
