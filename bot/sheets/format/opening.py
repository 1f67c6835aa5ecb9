"""A file's bytes -> a grid of its cells as they came, or the reason why not. The file is not trusted.

An XLSX is a zip of XML. Before anything is parsed its directory is held against bounds, so that a
small file cannot unfold into a large one; it is then read as a stream, a limited number of rows and
columns of it, because ranges in such a file (merged areas, links) may span 17 billion cells and
would be laid out one by one otherwise. Formulas are never computed: the result that was stored with
them is what the coach saw, and it is shown again before it is taken over.
"""

from __future__ import annotations

import csv
import io
import re
import zipfile
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date, time, timedelta
from enum import StrEnum
from typing import Any
from xml.etree import ElementTree

from bot.sheets.format.layout import SHEET_NAME
from bot.words.languages import tr, ways_written


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

    def row_of(self, label: str, most: int | None = None) -> int | None:
        """The first of the `most` rows at the top whose first cell says this, in whatever language."""
        wanted = ways_written(lambda: tr(label))
        rows = range(1, len(self.rows[:most]) + 1)
        return next((row for row in rows if self.cell(row, 1).label in wanted), None)

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


MOST_BYTES = 1_000_000
MOST_UNPACKED_BYTES = 8_000_000
MOST_PARTS = 200
MOST_ROWS, MOST_COLUMNS = 200, 40
MOST_MERGED = 1000
LONGEST_TEXT = 1000  # of a cell; more is cut off, and too long for any place here anyway

_ZIP, _OLD_EXCEL = b"PK\x03\x04", b"\xd0\xcf\x11\xe0"
_DOCTYPES = tuple("<!DOCTYPE".encode(code) for code in ("ascii", "utf-16-le", "utf-16-be"))
_XML_PART = re.compile(r"\.(xml|rels|vml)$", re.IGNORECASE)
_DELIMITERS = ",;\t"
_DELIMITERS_OF_A_HEADING, _DELIMITERS_OF_A_TABLE = 3, 8


class SheetRefused(Exception):  # noqa: N818 - it is an answer to a person, not a fault
    """A file that is not read at all. `why` is a key of `bot.sheets.words.REFUSED`."""

    def __init__(self, why: str) -> None:
        super().__init__(why)
        self.why = why


def open_sheet(content: bytes) -> Grid:
    """The cells of a file's plan sheet. Raises SheetRefused."""
    if len(content) > MOST_BYTES:
        raise SheetRefused("too-large")
    if content.startswith(_OLD_EXCEL):
        raise SheetRefused("old-or-locked")
    if content.startswith(_ZIP):
        return _open_xlsx(content)
    return _open_csv(content)


# XLSX


def _open_xlsx(content: bytes) -> Grid:
    try:
        _inspect_zip(content)
        return _read_xlsx(content)
    except SheetRefused:
        raise
    except Exception as error:
        # The libraries raise whatever a broken file makes them stumble over, zlib.error among it.
        raise SheetRefused("unreadable") from error


def _inspect_zip(content: bytes) -> None:
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        parts = archive.infolist()
        # zipfile never unpacks more of a part than the size that its directory states.
        if len(parts) > MOST_PARTS or sum(p.file_size for p in parts) > MOST_UNPACKED_BYTES:
            raise SheetRefused("unfolds")
        if any(part.flag_bits & 1 for part in parts):
            raise SheetRefused("old-or-locked")
        if "xl/workbook.xml" not in archive.namelist():
            raise SheetRefused("other-program")
        for part in parts:
            if _XML_PART.search(part.filename) and _declares(archive.read(part)):
                raise SheetRefused("unreadable")


def _declares(part: bytes) -> bool:
    """Whether it declares entities of its own, which no spreadsheet does."""
    return any(mark in part for mark in _DOCTYPES)


def _read_xlsx(content: bytes) -> Grid:
    from openpyxl import load_workbook  # noqa: PLC0415 - heavy: at the first sheet

    book = load_workbook(io.BytesIO(content), read_only=True, keep_links=False)
    page: Any = book[SHEET_NAME] if SHEET_NAME in book.sheetnames else book.worksheets[0]
    title, path = page.title, page._worksheet_path
    rows = list(_rows(page))
    if any(cell.content is Content.FORMULA for row in rows for cell in row):
        stored = load_workbook(
            io.BytesIO(content), read_only=True, keep_links=False, data_only=True
        )
        results = list(_rows(stored[title]))
        rows = [
            [
                results[i][j] if cell.content is Content.FORMULA and _has(results, i, j) else cell
                for j, cell in enumerate(row)
            ]
            for i, row in enumerate(rows)
        ]
    with zipfile.ZipFile(io.BytesIO(content)) as archive:
        merged, hidden_rows, hidden_columns = _extras(archive.read(path))
    return Grid(rows, merged, hidden_rows, hidden_columns)


def _has(results: list[list[Cell]], i: int, j: int) -> bool:
    return i < len(results) and j < len(results[i]) and results[i][j].content is not Content.EMPTY


def _rows(page: Any) -> Iterator[list[Cell]]:
    for row in page.iter_rows(max_row=MOST_ROWS, max_col=MOST_COLUMNS):
        yield [_cell(cell.value, cell.data_type) for cell in row]


def _cell(value: Any, data_type: str) -> Cell:
    if value is None or value == "":
        return NOTHING
    if data_type == "f":
        return Cell(Content.FORMULA, str(getattr(value, "text", value))[:LONGEST_TEXT])
    if data_type == "e":
        return Cell(Content.ERROR, str(value)[:LONGEST_TEXT])
    if isinstance(value, bool):
        return Cell(Content.TRUTH, str(value).upper())
    if isinstance(value, date | time | timedelta):
        return Cell(Content.DATE, str(value))
    if isinstance(value, int | float):
        return Cell(Content.NUMBER, f"{value:g}", float(value))
    return Cell(Content.TEXT, str(value)[:LONGEST_TEXT])


def _extras(page: bytes) -> tuple[list[tuple[int, int, int, int]], frozenset[int], frozenset[int]]:
    """Merged areas and hidden rows and columns, which a streamed reading leaves out."""
    from openpyxl.utils import range_boundaries  # noqa: PLC0415

    merged: list[tuple[int, int, int, int]] = []
    rows: set[int] = set()
    columns: set[int] = set()
    for _, element in ElementTree.iterparse(io.BytesIO(page)):
        name = element.tag.rpartition("}")[2]
        hidden = element.get("hidden") in ("1", "true")
        if name == "mergeCell" and len(merged) < MOST_MERGED:
            left, top, right, bottom = range_boundaries(element.get("ref", ""))
            assert left is not None and top is not None
            assert right is not None and bottom is not None
            merged.append((top, left, bottom, right))
        elif name == "row" and hidden and int(element.get("r", 0)) <= MOST_ROWS:
            rows.add(int(element.get("r", 0)))
        elif name == "col" and hidden:
            last = min(int(element.get("max", 0)), MOST_COLUMNS)
            columns.update(range(int(element.get("min", 1)), last + 1))
        if name in ("row", "mergeCell", "col"):
            element.clear()
    return merged, frozenset(rows), frozenset(columns)


# CSV


def _open_csv(content: bytes) -> Grid:
    text = _decoded(content)
    if "\x00" in text:
        raise SheetRefused("not-a-sheet")
    first, _, rest = text.partition("\n")
    delimiter = ""
    if first.strip().lower().startswith("sep=") and len(first.strip()) == len("sep=;"):
        delimiter, text = first.strip()[-1], rest  # a hint that some programs write; not a row
    rows = []
    try:
        lines = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter or _delimiter(text))
        for row in lines:
            rows.append([_typed(value) for value in row[:MOST_COLUMNS]])
            if len(rows) == MOST_ROWS:
                break
    except csv.Error as error:
        raise SheetRefused("not-a-sheet") from error
    return Grid(rows)


def _decoded(content: bytes) -> str:
    """Text in the encoding that its mark names, else UTF-8, else what older programs write."""
    codes = (
        ("utf-16",) if content.startswith((b"\xff\xfe", b"\xfe\xff")) else ("utf-8-sig", "cp1252")
    )
    for code in codes:
        try:
            return content.decode(code)
        except UnicodeDecodeError:
            continue
    raise SheetRefused("not-a-sheet")


def _delimiter(text: str) -> str:
    """The sign between the headings, of which there are many in their line.

    A line that has very many goes before one with a few, which may be a sentence with its commas.
    """
    lines = text.splitlines()[:MOST_ROWS]
    for least in (_DELIMITERS_OF_A_TABLE, _DELIMITERS_OF_A_HEADING):
        for line in lines:
            sign = max(_DELIMITERS, key=line.count)
            if line.count(sign) >= least:
                return sign
    return ","


def _typed(value: str) -> Cell:
    if not value.strip():
        return NOTHING
    if value.strip().startswith("#") and value.strip().endswith(("!", "?", "/A")):
        return Cell(Content.ERROR, value.strip()[:LONGEST_TEXT])
    return Cell(Content.TEXT, value[:LONGEST_TEXT])
