"""Text from people in the cells of a sheet: kept as it was said, and never a formula.

A spreadsheet program takes a cell that begins with one of these signs for something to compute. In an
XLSX such a cell is marked as text; in a CSV, which knows no such mark, a single quotation mark goes in
front, as those programs themselves write it (OWASP, "CSV Injection").
"""

from __future__ import annotations

import re

from bot.sheets.format.layout import FORMULA_SIGNS

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
