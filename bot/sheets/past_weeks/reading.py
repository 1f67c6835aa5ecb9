"""A grid -> the weeks that it holds, or everything that is wrong with it, by cell.

Nothing is half-taken. Day and month as two numbers are read by the order in which the whole sheet
makes sense: every date on one of the eight days up to its event.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from functools import partial
from typing import Any

from bot.sheets.format.opening import MOST_COLUMNS, Content, Grid, name_of
from bot.sheets.format.reading import SheetProblems, Wrong
from bot.sheets.past_weeks import layout as at
from bot.sheets.past_weeks.cells import CLOCKED, READERS, Told
from bot.sheets.past_weeks.layout import Column, Reads
from bot.words.languages import ways_written
from engine.values.plan import LOAD_DAYS, MOST_LOAD_DAYS, PLAN_DAYS, Phase
from engine.written.units import ParseError


@dataclass(frozen=True, slots=True)
class PastDay:
    """A day as filled in: figures by the keys of `layout.COLUMNS`, without what was left empty."""

    date: date
    figures: Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class PastWeekRead:
    day: date
    kind: str
    look: str | None
    days: tuple[PastDay, ...]
    row: int  # where it begins, for what is said of it later


@dataclass(frozen=True, slots=True)
class PastWeeks:
    """`cells`: where each date stands."""

    athlete_id: int
    weeks: tuple[PastWeekRead, ...]
    cells: Mapping[date, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class _Line:
    row: int
    dates: tuple[date, ...]  # all that its date may mean, by the order of day and month
    events: tuple[date, ...]
    figures: Mapping[str, Any]


def is_past_weeks(grid: Grid) -> bool:
    """Whether the sheet says that it is one of these."""
    return grid.row_of(at.PAST_WEEKS_OF) is not None


def read_past_weeks(grid: Grid, today: date) -> PastWeeks:
    """What the sheet holds. `today` is anybody's: years left out are the last ones before it.

    Raises SheetProblems.
    """
    found: list[Wrong] = []
    named = grid.row_of(at.ATHLETE)
    athlete = at.athlete_in(grid.cell(named, 2).text) if named is not None else None
    if athlete is None:
        raise SheetProblems([Wrong(name_of(named or 2, 2), "past-no-athlete")])
    head = _head(grid)
    if head is None:
        raise SheetProblems([Wrong("", "past-no-headings")])
    columns = _columns(grid, head, found)
    lines = list(_lines(grid, head, columns, today, found))
    if not found and not lines:
        found.append(Wrong(name_of(head + 1, 1), "past-empty"))
    if found:
        raise SheetProblems(found)
    weeks = _weeks(_in_order(lines, found), found, columns)
    if len(weeks) > at.MOST_WEEKS:
        found.append(Wrong("", "past-too-many", {"most": at.MOST_WEEKS}))
    if found:
        raise SheetProblems(found)
    by_date = columns[at.DATE][0]
    cells = {line.dates[0]: name_of(line.row, by_date) for line in _in_order(lines, found)}
    return PastWeeks(athlete, tuple(weeks), cells)


def _head(grid: Grid) -> int | None:
    """The row of the headings: the first in which a date and an event day are to stand."""
    date_, event = (ways_written(lambda c=c: c.titled()) for c in at.COLUMNS[:2])  # type: ignore[misc]
    for row in range(1, len(grid.rows) + 1):
        labels = {grid.cell(row, column).label for column in range(1, MOST_COLUMNS + 1)}
        if labels & date_ and labels & event:
            return row
    return None


_Columns = dict[str, tuple[int, Column, str]]  # by key: which, what, and in what unit


def _columns(grid: Grid, head: int, found: list[Wrong]) -> _Columns:
    wanted = {
        text: (column, unit)
        for column in at.COLUMNS
        for unit in column.units or ("",)
        for text in ways_written(partial(column.titled, unit or None))
    }
    columns: _Columns = {}
    for number in range(1, MOST_COLUMNS + 1):
        known = wanted.get(grid.cell(head, number).label)
        if known is None:
            continue  # a column of the coach's own
        column, unit = known
        if column.key in columns:
            given = {"given": grid.cell(head, number).text}
            found.append(Wrong(name_of(head, number), "past-heading-twice", given))
        columns[column.key] = (number, column, unit)
    return columns


def _lines(
    grid: Grid, head: int, columns: _Columns, today: date, found: list[Wrong]
) -> Iterator[_Line]:
    """Every row that says something. What belongs to the week as a whole comes down from above."""
    carried: dict[str, Any] = {at.KIND: None}
    events: tuple[date, ...] = ()
    for row in range(head + 1, len(grid.rows) + 1):
        cells = {key: grid.cell(row, number) for key, (number, _, _) in columns.items()}
        if all(cell.content is Content.EMPTY for cell in cells.values()):
            continue
        figures: dict[str, Any] = {}
        dates: tuple[date, ...] = ()
        for key, cell in cells.items():
            number, column, unit = columns[key]
            where = name_of(row, number)
            if merged := grid.merged_at(row, number):
                found.append(Wrong(where, "merged", {"area": merged}))
                continue
            if cell.content is Content.EMPTY:
                if key == at.DATE or (key == at.EVENT_DAY and not events):
                    found.append(Wrong(where, "empty"))
                continue
            value = _value(Told(cell, unit, today), column, where, found)
            if value is None:
                continue
            if key == at.DATE:
                dates = value
            elif key == at.EVENT_DAY:
                if not set(value) & set(events):
                    carried[at.KIND] = None
                events = value
            else:
                figures[key] = value
        carried[at.KIND] = figures.get(at.KIND, carried[at.KIND])
        if dates and events:
            yield _Line(row, dates, events, figures | {at.KIND: carried[at.KIND]})


def _value(told: Told, column: Column, where: str, found: list[Wrong]) -> Any:
    """What a cell says; None, and what is wrong noted, where it cannot be read."""
    cell = told.cell
    # A night of "7:30" is a time of day to a spreadsheet program.
    timed = column.reads is Reads.HOURS and CLOCKED.fullmatch(cell.text)
    if cell.content in (Content.FORMULA, Content.TRUTH, Content.ERROR) or (
        cell.content is Content.DATE and column.reads is not Reads.DAY and not timed
    ):
        found.append(Wrong(where, cell.content.value, {"given": cell.text}))
        return None
    try:
        return READERS[column.reads](told)
    except ParseError as error:
        why = "past-date" if column.reads is Reads.DAY else error.code.value
        found.append(Wrong(where, why, error.facts | {"given": cell.text}))
    except KeyError:
        found.append(Wrong(where, f"past-{column.reads}", {"given": cell.text}))
    return None


def _in_order(lines: list[_Line], found: list[Wrong]) -> list[_Line]:
    """The lines with one date each: of two orders of day and month the one by which all fits."""
    orders = [[_by(line, n) for line in lines] for n in (0, 1)]
    fitting = [order for order in orders if all(_in_its_week(line) for line in order)]
    if not fitting or fitting[0] == orders[0]:
        # Both fit, or neither: day first, unless that is a matter of taste that changes the dates.
        if len(fitting) == 2 and orders[0] != orders[1]:
            found.append(Wrong("", "past-either-date"))
        return orders[0]
    return fitting[0]


def _by(line: _Line, order: int) -> _Line:
    return replace(
        line,
        dates=(line.dates[min(order, len(line.dates) - 1)],),
        events=(line.events[min(order, len(line.events) - 1)],),
    )


def _in_its_week(line: _Line) -> bool:
    return (line.events[0] - line.dates[0]).days in PLAN_DAYS


def _weeks(lines: list[_Line], found: list[Wrong], columns: _Columns) -> list[PastWeekRead]:
    """The lines by their event, each checked for what a week needs."""
    by_event: dict[date, list[_Line]] = {}
    seen: dict[date, int] = {}
    date_column, event_column = columns[at.DATE][0], columns[at.EVENT_DAY][0]
    for line in lines:
        day = line.dates[0]
        if day in seen:
            found.append(
                Wrong(name_of(line.row, date_column), "past-date-twice", {"row": seen[day]})
            )
        seen.setdefault(day, line.row)
        if not _in_its_week(line):
            away = (line.events[0] - day).days
            found.append(Wrong(name_of(line.row, date_column), "past-not-in-week", {"days": away}))
        by_event.setdefault(line.events[0], []).append(line)
    return [_week(day, of, found, event_column) for day, of in sorted(by_event.items())]


def _week(day: date, lines: list[_Line], found: list[Wrong], event_column: int) -> PastWeekRead:
    where = name_of(lines[0].row, event_column)
    looks = {line.figures[at.LOOK] for line in lines if at.LOOK in line.figures}
    kinds = {line.figures[at.KIND] for line in lines if line.figures[at.KIND]}
    if len(looks) > 1:
        found.append(Wrong(where, "past-two-looks"))
    if len(kinds) != 1:
        found.append(Wrong(where, "past-no-kind" if not kinds else "past-two-kinds"))
    days = tuple(
        PastDay(
            line.dates[0], {k: v for k, v in line.figures.items() if k not in (at.LOOK, at.KIND)}
        )
        for line in sorted(lines, key=lambda line: line.dates[0])
    )
    fed = {(day - one.date).days for one in days if carbs_of(one) is not None}
    load = sorted((day - one.date).days for one in days if one.figures.get(at.PHASE) == Phase.LOAD)
    if len(load) > MOST_LOAD_DAYS:
        found.append(Wrong(where, "past-long-load", {"most": MOST_LOAD_DAYS}))
    # From the first load day on, rest days between and after are part of what filled.
    missing = [out for out in range(max(load, default=max(LOAD_DAYS)), 0, -1) if out not in fed]
    if missing:
        found.append(Wrong(where, "past-no-load", {"days_out": missing[0]}))
    if not any("weight_kg" in one.figures or "fullness" in one.figures for one in days):
        found.append(Wrong(where, "past-no-mornings"))
    return PastWeekRead(day, next(iter(kinds), ""), next(iter(looks), None), days, lines[0].row)


def carbs_of(day: PastDay) -> float | None:
    """What was to be eaten on that day, as far as the sheet says: planned, else set, else eaten."""
    for key in ("carb_planned_g", "carb_set_g", "carb_eaten_g"):
        if key in day.figures:
            return float(day.figures[key])
    return None
