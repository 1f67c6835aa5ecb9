"""Pages as one XLSX or as CSVs in a ZIP."""

from __future__ import annotations

import csv
import io
import zipfile
from collections.abc import Sequence
from datetime import date, datetime
from typing import Any

from bot.sheets.format.harmless import computes, for_csv, sayable
from bot.workbook import words
from bot.workbook.columns import Column, Kind
from bot.workbook.pages import README, Page

FORMATS = ("xlsx", "csv")
ENDINGS = {"xlsx": "xlsx", "csv": "zip"}
_WIDTHS = {Kind.TEXT: 16, Kind.NUMBER: 11, Kind.DATE: 12, Kind.MOMENT: 17}
_WIDE = {"reason": 60, "note": 40, "cause": 50, "athlete_said": 40, "coach_note": 40, "about": 70}
_README_WIDTHS = (24, 36, 10, 20, 70)
_A4 = 9  # as spreadsheet files number paper sizes


def write(pages: Sequence[Page], form: str) -> bytes:
    """The file's bytes. `form`: one of FORMATS."""
    return xlsx(pages) if form == "xlsx" else csv_zip(pages)


def xlsx(pages: Sequence[Page]) -> bytes:
    """Typed cells, the headings frozen and repeated on paper, one page wide."""
    from openpyxl import Workbook  # noqa: PLC0415 - loaded at the first file

    book = Workbook(write_only=True)
    for page in pages:
        _sheet(book, page)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _sheet(book: Any, page: Page) -> None:
    from openpyxl.cell import WriteOnlyCell  # noqa: PLC0415
    from openpyxl.styles import Alignment, Font, PatternFill  # noqa: PLC0415
    from openpyxl.utils import get_column_letter  # noqa: PLC0415

    sheet = book.create_sheet(page.title)
    sheet.freeze_panes = "A2"
    sheet.page_setup.orientation = "landscape"
    sheet.page_setup.paperSize = _A4
    sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight = 1, 0
    sheet.sheet_properties.pageSetUpPr.fitToPage = True
    sheet.print_title_rows = "1:1"
    sheet.oddFooter.left.text = page.title
    sheet.oddFooter.right.text = "&P / &N"
    for number, column in enumerate(page.columns):
        letter = get_column_letter(number + 1)
        sheet.column_dimensions[letter].width = _width(page, number, column)
    last = get_column_letter(len(page.columns))
    if page.id != README:
        sheet.auto_filter.ref = f"A1:{last}{len(page.rows) + 1}"
    bold, grey = Font(bold=True), PatternFill("solid", fgColor="E7E7E7")
    wrapped = Alignment(wrap_text=True, vertical="top")
    head = []
    for heading in page.headings:
        cell = WriteOnlyCell(sheet, value=heading)
        cell.font, cell.fill, cell.alignment = bold, grey, wrapped
        head.append(cell)
    sheet.append(head)
    formats = [_format(column) for column in page.columns]

    def cell_of(value: Any, form: str) -> Any:
        if value is None or (not form and not isinstance(value, str)):
            return value
        if isinstance(value, str):
            said = sayable(value)
            if not computes(said):
                return said
            cell = WriteOnlyCell(sheet, value=said)
            cell.data_type = "s"  # openpyxl would make a formula of "=..."
            cell.quotePrefix = True  # it stays text when somebody edits the cell
            return cell
        cell = WriteOnlyCell(sheet, value=value)
        cell.number_format = form
        return cell

    for row in page.rows:
        sheet.append([cell_of(value, form) for value, form in zip(row, formats, strict=True)])


def _width(page: Page, number: int, column: Column) -> int:
    if page.id == README:
        return _README_WIDTHS[number]
    return _WIDE.get(column.key, _WIDTHS[column.kind])


def _format(column: Column) -> str:
    """How a cell of it shows; "" for as it is."""
    match column.kind:
        case Kind.DATE:
            return "yyyy-mm-dd"
        case Kind.MOMENT:
            return "yyyy-mm-dd hh:mm"
        case Kind.NUMBER if column.places:
            return f"0.{'0' * column.places}"
    return ""


def csv_zip(pages: Sequence[Page]) -> bytes:
    """A CSV a sheet, named by what it holds in every language; UTF-8, commas, points, ISO 8601."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for page in pages:
            # One instant for all, so that the same rows make the same bytes.
            entry = zipfile.ZipInfo(f"{page.id}.csv", (1980, 1, 1, 0, 0, 0))
            entry.compress_type = zipfile.ZIP_DEFLATED
            archive.writestr(entry, _csv(page))
    return out.getvalue()


def _csv(page: Page) -> bytes:
    out = io.StringIO(newline="")
    lines = csv.writer(out)
    lines.writerow([for_csv(heading) for heading in page.headings])
    lines.writerows([_in_csv(value) for value in row] for row in page.rows)
    # The mark in front tells spreadsheet programs that it is UTF-8.
    return out.getvalue().encode("utf-8-sig")


def _in_csv(value: Any) -> Any:
    if isinstance(value, str):
        return for_csv(value)
    if isinstance(value, datetime):
        return value.isoformat(" ", "minutes")
    return value.isoformat() if isinstance(value, date) else value


def file_name(whose: str, day: date, form: str) -> str:
    """ "mira-2027-05-09.xlsx"; whatever a name holds, the file's has only letters and figures."""
    plain = "".join(sign if sign.isalnum() else "-" for sign in whose.lower()).strip("-")
    return f"{plain[:40] or words.FILE}-{day.isoformat()}.{ENDINGS[form]}"
