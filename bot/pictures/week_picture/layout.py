"""Where all stands on the picture of a week: a column a day, a panel a measure; and its keys."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from bot.drawing import canvas as c
from bot.drawing.canvas import Area, Canvas, Letters, Marker, Paint
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
#: Draws a mark with its left edge at x, its middle at y, and says how wide it is.
Key = Callable[[float, float], float]


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
        x += draw(x, y) + 12
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


def behind(on: Drawing, values: Iterable[tuple[int, float | None]], y: Scale) -> None:
    """The last trial, faint and dashed: by days out; a day that is missing is a gap."""
    before: tuple[int, tuple[float, float]] | None = None
    for days_out, value in values:
        x = on.columns.middle_out(days_out)
        if value is None or x is None:
            continue
        here = (x, y(value))
        if before is not None and before[0] - days_out == 1:
            on.page.line([before[1], here], colour=c.FAINT, width=4, dashed=True, above=2)
        on.page.line(
            [(x - 10, here[1]), (x + 10, here[1])], colour=c.FAINT, width=6, above=2
        )  # fmt: skip
        before = days_out, here


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


def box_key(
    page: Canvas, fill: str | None, edge: str, *, width: float = 34, hatch: str = ""
) -> Key:
    """A box of a heading's keys."""

    def draw(x: float, y: float) -> float:
        page.box(Area(x, y - 17, width, 34), Paint(fill=fill, edge=edge, line=4, hatch=hatch))
        return width

    return draw


def mark_key(page: Canvas, shape: str, size: float, fill: str) -> Key:
    """A mark of a heading's keys."""

    def draw(x: float, y: float) -> float:
        page.mark((x + size / 2, y), Marker(shape, size, fill))
        return size

    return draw


def outside_key(page: Canvas) -> Key:
    def draw(x: float, y: float) -> float:
        page.mark((x + 15, y), Marker("^", 30, c.VERMILLION, edge=c.INK))
        page.mark((x + 49, y), Marker("v", 30, c.VERMILLION, edge=c.INK))
        return 64

    return draw


def line_key(page: Canvas) -> Key:
    def draw(x: float, y: float) -> float:
        page.line([(x, y), (x + 46, y)], colour=c.BLUE, width=8)
        return 46

    return draw


def square_key(page: Canvas) -> Key:
    def draw(x: float, y: float) -> float:
        page.mark((x + 17, y), Marker("s", 34, c.PAPER, edge=c.INK, line=5))
        return 34

    return draw


def eye_key(page: Canvas) -> Key:
    def draw(x: float, y: float) -> float:
        eye_boxes(page, x + 52, y, "full")
        return 104

    return draw
