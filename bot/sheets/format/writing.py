"""A plan and its limits as XLSX or CSV.

Text that a spreadsheet program would take for a formula (= + - @ in front) is written as text: a name
or a note must not compute anything on the coach's computer.
"""

from __future__ import annotations

import csv
import io
from typing import TYPE_CHECKING

from bot.plan.flow import UNCOUNTED
from bot.plan.words import FIELDS
from bot.sheets import words
from bot.sheets.format import layout as at
from bot.sheets.format.cells import heading_font, height_of_headings, to_print
from bot.words.languages import tr
from bot.words.phases import phase_words, training_words
from engine.values.limits import LIMIT_KEYS
from engine.values.plan import DayTarget

if TYPE_CHECKING:
    from openpyxl.cell.cell import Cell
    from openpyxl.worksheet.worksheet import Worksheet

FORMATS = ("xlsx", "csv")
_WIDTHS = {"A": 30, "B": 14, "I": 30, "L": 20}
_OTHERS = 10  # the other columns
#: The row of the headings.
HEAD = 5


def write(sheet: at.PlanSheet, form: str) -> bytes:
    """The file's bytes. `form`: one of FORMATS."""
    return _xlsx(sheet) if form == "xlsx" else _csv(sheet)


def _rows(sheet: at.PlanSheet) -> list[list[float | int | str]]:
    rows: list[list[float | int | str]] = [
        [tr(at.PLAN_OF), sheet.name],
        [tr(at.EVENT), sheet.event],
        [tr(at.VERSION), str(sheet.version)],
        [],
        [
            tr(at.DAYS_OUT), tr(at.DAY), *(words.heading(key) for key in FIELDS),
            *(f"{tr(heading)} ({unit})" for _, heading, unit in at.BESIDE),
        ],
    ]  # fmt: skip
    rows += [
        [
            target.days_out,
            sheet.days[target.days_out],
            *(_shown(target, key) for key in FIELDS),
            *(at.shown(sheet.beside.get(target.days_out, {}).get(key)) for key, _, _ in at.BESIDE),
        ]
        for target in sheet.plan
    ]
    rows.append(["", tr(at.LOAD_TOTAL), *(_total(sheet, key) for key in _NUMBERS)])
    if sheet.limits is not None:
        rows += [[tr(at.LIMIT), tr(at.VALUE), tr(at.UNIT)]]
        rows += [
            [words.limit_heading(key), at.shown(getattr(sheet.limits, key)), limit.unit]
            for key, limit in LIMIT_KEYS.items()
        ]
    return rows


#: The columns behind the day's name, in order.
_NUMBERS = (*FIELDS, *(key for key, _, _ in at.BESIDE))


def _total(sheet: at.PlanSheet, key: str) -> float | int | str:
    """The sum over the load days; nothing where it is no amount, or not known of each of them."""
    if key not in at.SUMMED:
        return ""
    load = [target for target in sheet.plan if target.days_out in sheet.plan.load_days]
    told = [
        getattr(target, key, None)
        if key in FIELDS
        else sheet.beside.get(target.days_out, {}).get(key)
        for target in load
    ]
    return at.shown(sum(told)) if told and None not in told else ""  # type: ignore[arg-type]


def _shown(target: DayTarget, key: str) -> float | int | str:
    if key == "training":
        return training_words(target.training)
    if key == "phase":
        return phase_words(target.phase)
    value = getattr(target, key)
    return tr(at.AS_ALWAYS) if value is None and key in UNCOUNTED else at.shown(value)


def _xlsx(sheet: at.PlanSheet) -> bytes:
    # Heavy: loaded at the first sheet, not at the start.
    from openpyxl import Workbook  # noqa: PLC0415
    from openpyxl.cell.cell import Cell  # noqa: PLC0415
    from openpyxl.utils import get_column_letter  # noqa: PLC0415
    from openpyxl.worksheet.worksheet import Worksheet  # noqa: PLC0415

    book = Workbook()
    page = book.active
    assert isinstance(page, Worksheet)
    page.title = at.SHEET_NAME
    for number, row in enumerate(_rows(sheet), start=1):
        for column, value in enumerate(row, start=1):
            cell = page.cell(number, column)
            assert isinstance(cell, Cell)
            _put(cell, value)
            if row[0] in (tr(at.DAYS_OUT), tr(at.LIMIT)) or (
                column == 1 and isinstance(value, str)
            ):
                cell.font = heading_font()
    for number in range(1, len(_NUMBERS) + 3):
        letter = get_column_letter(number)
        page.column_dimensions[letter].width = _WIDTHS.get(letter, _OTHERS)
    page.row_dimensions[HEAD].height = height_of_headings(
        [
            (str(page[f"{letter}{HEAD}"].value or ""), _WIDTHS.get(letter, _OTHERS))
            for letter in map(get_column_letter, range(1, len(_NUMBERS) + 3))
        ]
    )
    _to_print(page)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _to_print(page: Worksheet) -> None:
    """The headings stay in sight, and all of it goes onto one page."""
    from openpyxl.styles import Alignment, PatternFill  # noqa: PLC0415

    page.freeze_panes = f"C{HEAD + 1}"
    for cell in page[HEAD]:
        cell.alignment = Alignment(wrap_text=True, vertical="top")
        cell.fill = PatternFill("solid", fgColor="E7E7E7")
    to_print(page, head=HEAD, pages=1)


def _put(cell: Cell, value: float | str) -> None:
    if value == "":
        return
    cell.value = value
    if isinstance(value, str):
        cell.data_type = "s"  # openpyxl would make a formula of "=..."
        # So that it stays text when somebody edits the cell.
        cell.quotePrefix = value.startswith(at.FORMULA_SIGNS)


def _csv(sheet: at.PlanSheet) -> bytes:
    out = io.StringIO()
    lines = csv.writer(out)
    for row in _rows(sheet):
        lines.writerow([_harmless(value) for value in row])
    # The mark in front tells spreadsheet programs that it is UTF-8.
    return out.getvalue().encode("utf-8-sig")


def _harmless(value: float | str) -> float | int | str:
    if isinstance(value, str) and value.startswith(at.FORMULA_SIGNS):
        return f"'{value}"
    return value
