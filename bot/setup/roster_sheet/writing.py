"""The sheet of a coach's own athletes, to be filled in: a row an event ahead, or one a person."""

from __future__ import annotations

import csv
import io
from dataclasses import dataclass
from datetime import date, datetime, time

from bot.setup import words_sheet as words
from bot.setup.roster_sheet import columns as at
from bot.sheets.format.cells import heading_font, height_of_headings, to_print, width_for
from bot.sheets.format.layout import FORMULA_SIGNS

Value = float | int | str | date | time
_WIDTHS = {at.CODE: 10, at.ATHLETE: 16, at.DAY: 12, at.PLACE: 18, at.PLAN: 20, at.REASON: 30}
_USUAL_WIDTH = 13
_DATE, _CLOCK = "yyyy-mm-dd", "hh:mm"
_LIST_MOST = 250  # what a spreadsheet program takes as a list of choices


@dataclass(frozen=True, slots=True)
class Choices:
    """What may stand in a column, for the lists that a spreadsheet program offers."""

    kinds: tuple[str, ...]
    plans: tuple[str, ...]
    depletions: tuple[str, ...]


def write(rows: list[dict[str, Value]], choices: Choices, form: str) -> bytes:
    """`rows`: values by column key. `form`: xlsx or csv."""
    return _xlsx(rows, choices) if form == "xlsx" else _csv(rows)


def _csv(rows: list[dict[str, Value]]) -> bytes:
    out = io.StringIO()
    lines = csv.writer(out)
    lines.writerow([at.heading(key) for key in at.COLUMNS])
    for row in rows:
        lines.writerow([_plain(row.get(key, "")) for key in at.COLUMNS])
    return out.getvalue().encode("utf-8-sig")


def _plain(value: Value) -> float | int | str:
    if isinstance(value, time):
        return f"{value:%H:%M}"
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, str) and value.startswith(FORMULA_SIGNS):
        return f"'{value}"
    return value


def _xlsx(rows: list[dict[str, Value]], choices: Choices) -> bytes:
    # Heavy: loaded at the first sheet, not at the start.
    from openpyxl import Workbook  # noqa: PLC0415
    from openpyxl.styles import Alignment  # noqa: PLC0415
    from openpyxl.utils import get_column_letter  # noqa: PLC0415

    book = Workbook()
    page = book.worksheets[0]
    page.title = words.page_title()
    headings = [at.heading(key) for key in at.COLUMNS]
    widths = [
        width_for(heading, _WIDTHS.get(key, _USUAL_WIDTH))
        for key, heading in zip(at.COLUMNS, headings, strict=True)
    ]
    page.row_dimensions[1].height = height_of_headings(list(zip(headings, widths, strict=True)))
    for column, key in enumerate(at.COLUMNS, start=1):
        head = page.cell(1, column, headings[column - 1])
        head.font = heading_font()
        head.alignment = Alignment(wrap_text=True, vertical="top")
        page.column_dimensions[get_column_letter(column)].width = widths[column - 1]
        for number, row in enumerate(rows, start=2):
            _put(page.cell(number, column), row.get(key, ""))
    _offer(page, choices, last=max(len(rows) + 40, 60))
    page.freeze_panes = "C2"
    to_print(page, head=1)
    notes = book.create_sheet(words.notes_title())
    notes.column_dimensions["A"].width = 100
    for number, line in enumerate(words.notes(choices.plans), start=1):
        cell = notes.cell(number, 1, line)
        cell.data_type = "s"
        cell.alignment = Alignment(wrap_text=True)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _put(cell: object, value: Value) -> None:
    if value == "":
        return
    cell.value = value  # type: ignore[attr-defined]
    if isinstance(value, str):
        cell.data_type = "s"  # type: ignore[attr-defined]
        cell.quotePrefix = value.startswith(FORMULA_SIGNS)  # type: ignore[attr-defined]
    elif isinstance(value, time):
        cell.number_format = _CLOCK  # type: ignore[attr-defined]
    elif isinstance(value, date | datetime):
        cell.number_format = _DATE  # type: ignore[attr-defined]


def _offer(page: object, choices: Choices, last: int) -> None:
    """Lists to choose from; anything else may be written all the same, and is read with care."""
    from openpyxl.utils import get_column_letter  # noqa: PLC0415
    from openpyxl.worksheet.datavalidation import DataValidation  # noqa: PLC0415

    offered = (
        (at.KIND, choices.kinds), (at.PLAN, choices.plans), (at.DEPLETION, choices.depletions),
    )  # fmt: skip
    for key, listed in offered:
        text = ",".join(one for one in listed if "," not in one and '"' not in one)
        if not text or len(text) > _LIST_MOST:
            continue
        rule = DataValidation(type="list", formula1=f'"{text}"', allow_blank=True)
        rule.showErrorMessage = False
        letter = get_column_letter(at.COLUMNS.index(key) + 1)
        rule.add(f"{letter}2:{letter}{last}")
        page.add_data_validation(rule)  # type: ignore[attr-defined]
