"""Sheets of many athletes as a coach fills them in."""

from __future__ import annotations

import csv
import io
from collections.abc import Mapping

from openpyxl import load_workbook


def filled(content: bytes, by_name: Mapping[str, Mapping[str, object]]) -> bytes:
    """The XLSX as handed out with these cells put into the rows of the named athletes."""
    book = load_workbook(io.BytesIO(content))
    page = book.worksheets[0]
    columns = {str(cell.value): cell.column for cell in page[1]}
    for row in range(2, page.max_row + 1):
        name = str(page.cell(row, columns["Athlete"]).value)
        for heading, value in by_name.get(name, {}).items():
            page.cell(row, columns[heading]).value = value  # type: ignore[assignment]
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def csv_of(*rows: Mapping[str, str], delimiter: str = ",") -> bytes:
    """These rows, by heading."""
    keys = list(dict.fromkeys(key for row in rows for key in row))
    out = io.StringIO()
    lines = csv.DictWriter(out, keys, delimiter=delimiter)
    lines.writeheader()
    lines.writerows(rows)
    return out.getvalue().encode()
