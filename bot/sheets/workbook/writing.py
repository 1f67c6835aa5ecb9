"""A workbook as plain rows in the reader's language, and those as one XLSX or as CSVs in a ZIP."""

from __future__ import annotations

import csv
import io
import zipfile
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import cache
from itertools import repeat
from math import isnan
from typing import TYPE_CHECKING, Any
from xml.sax.saxutils import escape

from bot.sheets.format.cells import (
    LINE,
    computes,
    for_csv,
    heading_font,
    height_of_headings,
    lines_of,
    sayable,
    to_print,
    width_for,
    width_on_one_line,
)
from bot.sheets.workbook import words
from bot.sheets.workbook.tables import COMPARED, TABLES, Column, Kind
from bot.words.languages import tr

if TYPE_CHECKING:
    import pandas as pd

README = "readme"
SHEET_TITLE_MOST = 31  # characters that spreadsheet programs allow


@dataclass(frozen=True, slots=True, kw_only=True)
class Page:
    """One sheet: `rows` hold str, int, float, date, datetime or None, in the order of `columns`."""

    id: str
    title: str
    columns: tuple[Column, ...]
    headings: tuple[str, ...]
    rows: Sequence[Sequence[Any]]


def pages_of(
    frames: dict[str, pd.DataFrame], *, whose: str, made_on: str, across: bool, to_coach: bool
) -> list[Page]:
    """The sheets of these frames (by table id), the readme first. `whose`: a line for its head."""
    found = []
    for table in TABLES:
        frame = frames[table.id]
        columns = table.shown(across=across, to_coach=to_coach)
        if table is COMPARED:
            columns = (*columns, *(_a_week(str(name)) for name in frame.columns[4:]))
        found.append(_page(table.id, tr(table.title), columns, frame))
    return [_readme(found, whose, made_on), *found]


def _a_week(label: str) -> Column:
    return Column(key=label, heading=label, kind=Kind.NUMBER)


def _page(id: str, title: str, columns: tuple[Column, ...], frame: pd.DataFrame) -> Page:
    return Page(
        id=id,
        title=title[:SHEET_TITLE_MOST],
        columns=columns,
        headings=tuple(column.titled() for column in columns),
        rows=cells(frame, columns),
    )


def cells(frame: pd.DataFrame, columns: tuple[Column, ...]) -> list[tuple[Any, ...]]:
    """The frame's rows in the order of these columns, as they are written."""
    series = [_plain(frame[column.key], column.kind) for column in columns]
    return list(zip(*series, strict=True))


def _plain(series: pd.Series[Any], kind: Kind) -> list[Any]:
    """The cells as Python has them, None for what is not known, whole numbers as such.

    Most of what stands in a column stands there many times: each is looked at once.
    """
    if kind is Kind.NUMBER:
        values = series.astype(float).round(3).tolist()
        plain = {value: _figure(value) for value in set(values)}
    else:
        values = (series.dt.to_pydatetime() if kind is Kind.MOMENT else series).tolist()
        plain = {value: _said(value) for value in set(values)}
    return [plain[value] for value in values]


def _figure(value: float) -> float | None:
    if isnan(value):
        return None
    return int(value) if value.is_integer() else value


def _said(value: Any) -> Any:
    """None where nothing was said: what is unknown to pandas is unlike itself."""
    return None if value is None or value == "" or value != value else value  # noqa: PLR0124


def _readme(pages: Sequence[Page], whose: str, made_on: str) -> Page:
    """What is in the file: a sheet that explains every column of every other."""
    columns = tuple(
        Column(key=key, heading=heading)
        for key, heading in zip(
            ("sheet", "column", "unit", "key", "about"), words.readme_headings(), strict=True
        )
    )
    rows: list[tuple[str | None, ...]] = [
        (line, None, None, None, None) for line in words.readme_lines(whose, made_on)
    ]
    about = {table.id: table.about for table in TABLES}
    for page in pages:
        rows.append((page.title, None, None, page.id, tr(about[page.id])))
        rows += [
            (page.title, heading, column.unit or None, column.key, tr(column.about) or None)
            if column.about
            else (page.title, heading, column.unit or None, column.key, None)
            for column, heading in zip(page.columns, page.headings, strict=True)
        ]
    return Page(
        id=README,
        title=words.readme_title(),
        columns=columns,
        headings=tuple(column.titled() for column in columns),
        rows=rows,
    )


ENDINGS = {"xlsx": "xlsx", "csv": "zip"}
_WIDTHS = {Kind.TEXT: 12, Kind.NUMBER: 9, Kind.DATE: 11, Kind.MOMENT: 16}
_WIDE = {
    "reason": 50, "note": 30, "cause": 45, "athlete_said": 30, "coach_note": 30, "food": 24,
    "training": 30, "rule": 18, "flag": 22, "what": 36, "which": 30, "measure": 30,
    "look": 14, "status": 22,
}  # fmt: skip
_README_WIDTHS = (24, 36, 10, 20, 70)
_MARGIN = 0.4  # inches
_INSIDE = 2  # characters that a cell keeps free: its indent, and what lies between it and the next
_END_OF_ROWS = b"</sheetData>"
_QUICK = 1  # of zlib's levels: what is written is nearly all repeated, and higher ones gain little
_PLACE = "\0"  # the number of a row until it is known; `sayable` leaves none in what people say
_ESCAPED = {"\r": "&#13;"}  # a bare one would be read back as the end of a line


def write(pages: Sequence[Page], form: str) -> bytes:
    """The file's bytes. `form`: one of FORMATS."""
    return xlsx(pages) if form == "xlsx" else csv_zip(pages)


def xlsx(pages: Sequence[Page]) -> bytes:
    """Typed cells, the headings frozen and repeated on paper, one page wide.

    openpyxl makes the book with its headings and styles; the rows below them, of which there may be
    a hundred thousand, are put into its sheets as text, which takes a tenth of the time.
    """
    from openpyxl import Workbook  # noqa: PLC0415 - loaded at the first file

    book = Workbook(write_only=True)
    styles = [_sheet(book, page) for page in pages]
    headed = io.BytesIO()
    book.save(headed)
    out = io.BytesIO()
    with (
        zipfile.ZipFile(headed) as source,
        zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED, compresslevel=_QUICK) as target,
    ):
        parts = {f"xl/worksheets/sheet{n}.xml": n - 1 for n in range(1, len(pages) + 1)}
        for name in source.namelist():
            part = source.read(name)
            if name in parts:
                page = pages[parts[name]]
                rows = _rows(page, styles[parts[name]]).encode()
                part = part.replace(_END_OF_ROWS, rows + _END_OF_ROWS, 1)
            target.writestr(name, part)
    return out.getvalue()


def _rows(page: Page, styles: Sequence[int]) -> str:
    """The rows below the headings, as ECMA-376 Part 1, 18.3.1, has them; text in its own cell.

    `styles`: of each column, then that of text which would compute. Made column by column, and what
    is said many times only once.
    """
    from openpyxl.utils import get_column_letter  # noqa: PLC0415

    if not page.rows:
        return ""
    *of_columns, risky = styles
    columns = [
        _cells(get_column_letter(number), style, risky, values)
        for number, (style, values) in enumerate(
            zip(of_columns, zip(*page.rows, strict=True), strict=True), start=1
        )
    ]
    begun = [
        f'<row r="{_PLACE}">' if lines == 1
        else f'<row r="{_PLACE}" ht="{LINE * lines}" customHeight="1">'
        for lines in _lines(page)
    ]  # fmt: skip
    rows = zip(begun, *columns, repeat("</row>"))
    return "".join(
        ["".join(row).replace(_PLACE, str(number)) for number, row in enumerate(rows, start=2)]
    )


def _lines(page: Page) -> list[int]:
    """On how many lines each row stands, by what is said in it."""
    most = [1] * len(page.rows)
    for number, column in enumerate(page.columns):
        if column.kind is Kind.TEXT and (page.id != README or number):
            width = _width(page, number) - _INSIDE
            said = [row[number] for row in page.rows]
            lines = {
                text: lines_of(text, width) if isinstance(text, str) else 1 for text in set(said)
            }
            if max(lines.values(), default=1) > 1:
                most = [max(so_far, lines[text]) for so_far, text in zip(most, said, strict=True)]
    return most


def _cells(letter: str, style: int, risky: int, values: Sequence[Any]) -> list[str]:
    """A column from row 2 on, "" for a cell that is empty; most of it stands there many times."""
    begin = f'<c r="{letter}{_PLACE}"'
    cells = {
        value: "" if value is None else begin + _end(value, style, risky) for value in set(values)
    }
    return [cells[value] for value in values]


def _end(value: str | float | date, style: int, risky: int) -> str:
    """A cell from behind its place on."""
    if not isinstance(value, str):
        figure = value if isinstance(value, int | float) else _serial(value)
        return f' s="{style}"><v>{figure}</v></c>'
    said = sayable(value)
    # As text it stays text, also when somebody edits the cell.
    styled = risky if computes(said) else style
    text = escape(said, _ESCAPED)
    return f' s="{styled}" t="inlineStr"><is><t xml:space="preserve">{text}</t></is></c>'


def _serial(value: date) -> float:
    """A date as spreadsheets count days; the time of day is a share of one (Part 1, 18.17.4.1)."""
    if isinstance(value, datetime):
        return (value - datetime(1899, 12, 30)) / timedelta(days=1)  # noqa: DTZ001 - a local time
    return (value - date(1899, 12, 30)).days


def _sheet(book: Any, page: Page) -> list[int]:
    """The sheet with its headings; the style of each column, and that of text that would compute."""
    from openpyxl.cell import WriteOnlyCell  # noqa: PLC0415
    from openpyxl.styles import Alignment, PatternFill  # noqa: PLC0415
    from openpyxl.utils import get_column_letter  # noqa: PLC0415

    sheet = book.create_sheet(page.title)
    sheet.freeze_panes = "A2"
    to_print(sheet, head=1)
    for side in ("left", "right"):
        setattr(sheet.page_margins, side, _MARGIN)
    sheet.oddFooter.left.text = page.title
    sheet.oddFooter.right.text = "&P / &N"
    widths = [_width(page, number) for number in range(len(page.columns))]
    for number, width in enumerate(widths, start=1):
        sheet.column_dimensions[get_column_letter(number)].width = width
    sheet.row_dimensions[1].height = height_of_headings(
        list(zip(page.headings, widths, strict=True))
    )
    last = get_column_letter(len(page.columns))
    if page.id != README:
        sheet.auto_filter.ref = f"A1:{last}{len(page.rows) + 1}"
    bold, grey = heading_font(), PatternFill("solid", fgColor="E7E7E7")
    wrapped = Alignment(wrap_text=True, vertical="top")
    head = []
    for heading in page.headings:
        cell = WriteOnlyCell(sheet, value=heading)
        cell.font, cell.fill, cell.alignment = bold, grey, wrapped
        head.append(cell)
    sheet.append(head)

    def style(kind: Kind, form: str, *, quoted: bool = False, wrap: bool = True) -> int:
        sample = WriteOnlyCell(sheet)
        if form:
            sample.number_format = form
        if quoted:
            sample.quotePrefix = True
        # A number ends at the right of its cell: what follows it keeps away.
        sample.alignment = Alignment(
            vertical="top",
            wrap_text=wrap and kind is Kind.TEXT,
            horizontal=None if kind is Kind.NUMBER else "left",
            indent=0 if kind is Kind.NUMBER else 1,
        )
        return int(sample.style_id)

    # What the readme says of the file runs on over the empty cells beside it.
    styles = [
        style(column.kind, _format(column), wrap=page.id != README or number > 0)
        for number, column in enumerate(page.columns)
    ]
    return [*styles, style(Kind.TEXT, "", quoted=True)]


def _width(page: Page, number: int) -> float:
    """In characters."""
    if page.id == README:
        return _README_WIDTHS[number]
    column, heading = page.columns[number], page.headings[number]
    if column.key == heading:  # a week's, whose date would be broken at its hyphens
        return width_on_one_line(heading)
    return width_for(heading, _WIDE.get(column.key, _WIDTHS[column.kind]))


def _format(column: Column) -> str:
    """How a cell of it shows; "" for as it is."""
    match column.kind:
        case Kind.DATE:
            return "yyyy-mm-dd"
        case Kind.MOMENT:
            return "yyyy-mm-dd hh:mm"
        case Kind.NUMBER if column.places is not None:
            return f"{0:.{column.places}f}"
    return ""


def csv_zip(pages: Sequence[Page]) -> bytes:
    """A CSV a sheet, named by what it holds in every language; UTF-8, commas, points, ISO 8601."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for page in pages:
            # One instant for all, so that the same rows make the same bytes.
            entry = zipfile.ZipInfo(f"{page.id}.csv", (1980, 1, 1, 0, 0, 0))
            archive.writestr(entry, _csv(page), zipfile.ZIP_DEFLATED)
    return out.getvalue()


def _csv(page: Page) -> bytes:
    out = io.StringIO(newline="")
    lines = csv.writer(out)
    lines.writerow([for_csv(heading) for heading in page.headings])
    in_csv = cache(_in_csv)  # most of what stands in a sheet stands in it many times
    columns = [
        values if column.kind is Kind.NUMBER else [in_csv(value) for value in values]
        for column, values in zip(
            page.columns, zip(*page.rows, strict=True), strict=bool(page.rows)
        )
    ]
    lines.writerows(zip(*columns, strict=True))
    # The mark in front tells spreadsheet programs that it is UTF-8.
    return out.getvalue().encode("utf-8-sig")


def _in_csv(value: str | float | date | None) -> str | float | None:
    if isinstance(value, str):
        return for_csv(value)
    if isinstance(value, datetime):
        return value.isoformat(" ", "minutes")
    return value.isoformat() if isinstance(value, date) else value


def file_name(whose: str, day: date, form: str) -> str:
    """ "mira-2027-05-09.xlsx"; whatever a name holds, the file's has only letters and figures."""
    plain = "".join(sign if sign.isalnum() else "-" for sign in whose.lower()).strip("-")
    return f"{plain[:40] or words.FILE}-{day.isoformat()}.{ENDINGS[form]}"
