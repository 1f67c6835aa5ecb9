"""Text from people in the cells of a sheet, never a formula; headings, room and how a sheet is printed.

A spreadsheet program takes a cell that begins with one of these signs for something to compute. In an
XLSX such a cell is marked as text; in a CSV, which knows no such mark, a single quotation mark goes in
front, as those programs themselves write it (OWASP, "CSV Injection"). They differ in whether they
raise a row for what is wrapped in it: whoever wraps says how high the row is.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

#: Signs that make a formula of a cell, the wide ones too, which some programs read alike.
FORMULA_SIGNS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
MARK = "'"
#: What XML 1.0 has no way to write, so that no XLSX can hold it (https://www.w3.org/TR/xml/#charsets).
_NO_XML = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")
MOST = 32_000  # characters of a cell; spreadsheet programs hold 32,767


def sayable(text: str) -> str:
    """The text without signs that no sheet can hold."""
    return _NO_XML.sub("", text)[:MOST]


def computes(text: str) -> bool:
    """Whether a spreadsheet program would take it for a formula."""
    return text.startswith(FORMULA_SIGNS)


def for_csv(text: str) -> str:
    """The text as it stands in a CSV; `from_csv` gives it back."""
    said = sayable(text)
    return f"{MARK}{said}" if computes(said) or said.startswith(MARK) else said


def from_csv(text: str) -> str:
    """What was meant by a cell of such a CSV."""
    rest = text.removeprefix(MARK)
    return rest if rest != text and (computes(rest) or rest.startswith(MARK)) else text


if TYPE_CHECKING:
    from openpyxl.styles import Font
    from openpyxl.worksheet.worksheet import Worksheet

#: Points of a line of 11 point letters, as `defaultRowHeight` has them.
LINE = 15
A4 = 9  # as the format numbers papers
MOST_LINES = 20  # a row higher than that shows nothing else (27 are all that a program takes)
_PIECES = re.compile(r"\s+|[^\s-]*-+|[^\s-]+")
_BOLD = 1.15  # how much wider bold letters are


def heading_font() -> Font:
    """Bold, of the family that the other cells have: left out, it would be the program's own."""
    from openpyxl.styles import Font  # noqa: PLC0415 - loaded at the first file

    return Font(bold=True, name="Calibri", family=2, size=11)


def to_print(page: Worksheet, *, head: int, pages: int = 0) -> None:
    """Across A4, as wide as the paper. On `pages` of it, or as many as it takes with the row of
    headings on each.
    """
    from openpyxl.worksheet.properties import PageSetupProperties  # noqa: PLC0415

    page.page_setup.orientation, page.page_setup.paperSize = "landscape", A4
    page.page_setup.fitToWidth, page.page_setup.fitToHeight = 1, pages
    page.sheet_properties.pageSetUpPr = PageSetupProperties(fitToPage=True)
    if not pages:
        page.print_title_rows = f"{head}:{head}"


def width_for(heading: str, width: float) -> float:
    """The width of a column, in characters: no word of its heading is broken."""
    return max(width, *(round(len(word) * _BOLD + 1, 1) for word in heading.split()), 0)


def width_on_one_line(heading: str) -> float:
    """The same for a heading that is not to be broken at all."""
    return round(len(heading) * _BOLD + 1, 1)


def height_of_headings(headings: list[tuple[str, float]]) -> int:
    """Points of the row that holds these, each with its column's width."""
    return LINE * max((lines_of(text, width / _BOLD) for text, width in headings), default=1)


def lines_of(text: str, width: float) -> int:
    """On how many lines it stands in a column of so many characters; `MOST_LINES` at most."""
    room = max(int(width), 1)
    shown = text[: room * MOST_LINES].expandtabs().splitlines()
    return min(sum(_wrapped(line, room) for line in shown) or 1, MOST_LINES)


def _wrapped(line: str, room: int) -> int:
    """Broken between words and after hyphens, and what is longer than a line anywhere.

    `textwrap` of the standard library counts nearly the same, and takes three times as long for each
    of the thousands of sentences of a year.
    """
    if len(line) <= room:
        return 1
    lines, used = 1, 0
    for piece in _PIECES.findall(line):
        size = len(piece)
        if piece.isspace():
            used += size if used else 0
        elif used + size <= room:
            used += size
        else:
            lines += (size - 1) // room + (1 if used else 0)
            used = (size - 1) % room + 1
    return lines
