"""A workbook as plain rows in the reader's language, ready to be written in any format."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import isnan
from typing import TYPE_CHECKING, Any

from bot.sheets.workbook import words
from bot.sheets.workbook.columns import Column, Kind
from bot.sheets.workbook.tables import COMPARED, TABLES
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
