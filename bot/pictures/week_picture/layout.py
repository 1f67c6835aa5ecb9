"""Where all stands on the picture of a week: a column a day, a panel a measure; and its keys."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from bot.drawing import canvas as c
from bot.drawing.canvas import Area, Canvas, Letters, Marker, Paint, Point
from bot.pictures.week_picture import words
from bot.pictures.week_picture.values import ChartDay, ChartWeek
from engine.values.checkin import CoachLook

WIDTH = 1080
LEFT, RIGHT = 142, 1070
TITLE, UNDER_TITLE = 40, 90
DAYS_TOP = 122  # of the columns' own lines: days out, weekday, date
TOP = 268  # of the first panel

TEXT = 31  # about 11 points on a phone that shows the picture as wide as its screen
HEADING = 34
HEAD_ROOM = 56  # of a panel's heading
KEYS_FROM = 372

Scale = Callable[[float], float]
#: Draws a mark on the page, its left edge at x and its middle at y, and says how wide it is.
Key = Callable[[Canvas, float, float], float]


class Columns:
    """Where each day stands."""

    def __init__(self, week: ChartWeek) -> None:
        self.width = (RIGHT - LEFT) / max(len(week.days), 1)
        self._place = {day.date: number for number, day in enumerate(week.days)}
        self._out = {day.days_out: number for number, day in enumerate(week.days)}

    def left(self, day: ChartDay) -> float:
        return LEFT + self._place[day.date] * self.width

    def middle(self, day: ChartDay) -> float:
        return self.left(day) + self.width / 2

    def middle_out(self, days_out: int) -> float | None:
        """The middle of the column that many days out; None where the week has none."""
        number = self._out.get(days_out)
        return None if number is None else LEFT + (number + 0.5) * self.width


@dataclass(frozen=True, slots=True)
class Drawing:
    """What a panel draws on and from; `top` is where its heading begins."""

    page: Canvas
    week: ChartWeek
    columns: Columns
    top: float


@dataclass(frozen=True, slots=True)
class Panel:
    """A measure of the week. It is left out where `shown` finds nothing to draw: no blank panels."""

    id: str
    shown: Callable[[ChartWeek], bool]
    height: Callable[[ChartWeek], float]
    draw: Callable[[Drawing], None]


@dataclass(frozen=True, slots=True)
class Layout:
    """The panels with their tops, the end of the last one and what comes below it."""

    panels: tuple[tuple[Panel, float], ...]
    bottom: float
    notes: tuple[str, ...]
    odds_top: float
    height: int

    def top(self, panel: str) -> float:
        """Where that panel begins. Raises KeyError where it is left out."""
        return {one.id: top for one, top in self.panels}[panel]


NOTE_LINE, ODDS_ROOM = 40, 190


def lay_out(week: ChartWeek, panels: Sequence[Panel]) -> Layout:
    placed, at = [], float(TOP)
    for panel in panels:
        if panel.shown(week):
            placed.append((panel, at))
            at += panel.height(week)
    notes = tuple(words.notes(week))
    odds_top = at + 16 + NOTE_LINE * len(notes) + (8 if notes else 0)
    height = odds_top + (ODDS_ROOM if week.odds is not None else 0)
    return Layout(tuple(placed), at, notes, odds_top, int(height))


def heading(on: Drawing, panel: str, keys: Sequence[tuple[str, Key]] = ()) -> None:
    """The panel's name, and what its marks mean; each of `keys` draws one and says how wide it is."""
    y = on.top + HEAD_ROOM / 2
    on.page.box(Area(0, on.top, WIDTH, HEAD_ROOM), Paint(fill=c.PAPER), above=2)
    name = words.heading(panel, on.week.weight_unit, on.week.volume_unit)
    room = KEYS_FROM - 30 if keys else WIDTH - 40
    on.page.words((20, y), name, Letters(HEADING, bold=True), align="left", room=room)
    x = float(KEYS_FROM)
    for key, draw in keys:
        x += draw(on.page, x, y) + 12
        wide = on.page.words(
            (x, y), words.key(key), Letters(TEXT - 3), align="left", room=WIDTH - 10 - x
        )
        x += wide + 30


def gutter(on: Drawing, y: float, text: str) -> None:
    """A word or a figure left of the columns."""
    on.page.words(
        (LEFT - 10, y), text, Letters(TEXT - 4, colour=c.QUIET), align="right", room=LEFT - 18,
    )  # fmt: skip


def joined(on: Drawing, told: Iterable[tuple[ChartDay, float | None]]) -> None:
    """A line from each morning to the next; none across a morning without an answer."""
    before: tuple[float, float] | None = None
    for day, at in told:
        here = (on.columns.middle(day), at) if at is not None else None
        if before is not None and here is not None:
            on.page.line([before, here], colour=c.INK, width=5, above=4)
        before = here


def day_by_day(points: Iterable[tuple[int, Point]]) -> Iterator[tuple[Point, Point]]:
    """The ends of each line from a day to the next, by days out; a day that is missing is a gap."""
    for (days_out, here), (after, there) in pairwise(points):
        if days_out - after == 1:
            yield here, there


def behind(on: Drawing, values: Iterable[tuple[int, float | None]], y: Scale) -> None:
    """The last trial, faint and dashed."""
    points = [
        (days_out, (x, y(value)))
        for days_out, value in values
        if value is not None and (x := on.columns.middle_out(days_out)) is not None
    ]
    for ends in day_by_day(points):
        on.page.line(ends, colour=c.FAINT, width=4, dashed=True, above=2)
    for _, (x, at) in points:
        on.page.line([(x - 10, at), (x + 10, at)], colour=c.FAINT, width=6, above=2)


def weight_mark(
    page: Canvas, at: Point, day: ChartDay, sizes: tuple[int, int], line: float
) -> None:
    """A morning's weight; what lies outside of what was expected is told by shape and colour, and is
    the larger of the two sizes.
    """
    shape = {1: "^", -1: "v"}.get(day.against_band or 0, "o")
    if shape == "o":
        page.mark(at, Marker(shape, sizes[0], c.INK, line=line))
    else:
        page.mark(at, Marker(shape, sizes[1], c.VERMILLION, edge=c.INK, line=line))


STEPS = (0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0)


def round_weights(low: float, high: float, unit: str, most: int) -> list[float]:
    """The round figures between two weights on the scale, about so many at most."""
    steps = STEPS if unit != "st" else STEPS[1:]  # stones are counted in whole pounds
    step = next((step for step in steps if (high - low) / step <= most), steps[-1])
    return [number * step for number in range(math.ceil(low / step), math.floor(high / step) + 1)]


#: What a coach may see, from too little to too much: the boxes of the row, left to right.
_EYE_BOX, _EYE_GAP = 17, 4
EYES = tuple(look.value for look in CoachLook)


def eye_boxes(page: Canvas, middle: float, y: float, seen: str) -> None:
    """Five small boxes around the middle, that of the word filled."""
    whole = len(EYES) * _EYE_BOX + (len(EYES) - 1) * _EYE_GAP
    for number, eye in enumerate(EYES):
        left = middle - whole / 2 + number * (_EYE_BOX + _EYE_GAP)
        there = eye == seen
        page.box(
            Area(left, y - 17, _EYE_BOX, 34),
            Paint(fill=c.INK if there else c.PAPER, edge=c.INK if there else c.FAINT, line=3),
        )  # fmt: skip


def box_key(fill: str | None, edge: str, *, width: float = 34, hatch: str = "") -> Key:
    """A box of a heading's keys."""

    def draw(page: Canvas, x: float, y: float) -> float:
        page.box(Area(x, y - 17, width, 34), Paint(fill=fill, edge=edge, line=4, hatch=hatch))
        return width

    return draw


def mark_key(shape: str, size: float, fill: str) -> Key:
    """A mark of a heading's keys."""

    def draw(page: Canvas, x: float, y: float) -> float:
        page.mark((x + size / 2, y), Marker(shape, size, fill))
        return size

    return draw


def outside_key(page: Canvas, x: float, y: float) -> float:
    page.mark((x + 15, y), Marker("^", 30, c.VERMILLION, edge=c.INK))
    page.mark((x + 49, y), Marker("v", 30, c.VERMILLION, edge=c.INK))
    return 64


def line_key(page: Canvas, x: float, y: float) -> float:
    page.line([(x, y), (x + 46, y)], colour=c.BLUE, width=8)
    return 46


def square_key(page: Canvas, x: float, y: float) -> float:
    page.mark((x + 17, y), Marker("s", 34, c.PAPER, edge=c.INK, line=5))
    return 34


def eye_key(page: Canvas, x: float, y: float) -> float:
    eye_boxes(page, x + 52, y, "full")
    return 104
