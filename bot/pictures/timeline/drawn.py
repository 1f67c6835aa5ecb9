"""A season on one line of time, for a phone held upright: body mass, and the events above it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from datetime import date, timedelta

from bot.drawing import canvas as c
from bot.drawing.canvas import Area, Canvas, Letters, Marker, Paint, drawn
from bot.pictures.timeline import words
from bot.pictures.timeline.words import Season, SeasonEvent
from bot.pictures.week_picture import words as week_words
from bot.pictures.week_picture.layout import round_weights

WIDTH = 1080
LEFT, RIGHT = 142, 1050
TEXT = 30
TITLE, UNDER, LANES_TOP, LANE = 40, 88, 136, 50
MARKS, AXIS = 420, 60
LEAST_SPAN = 2.0  # kg or lb
#: Days without a weight over which no line is drawn.
GAP = 10
#: To where the heading above the weights may reach.
HEADING_TO = 340
#: Marks of events: a trial is hollow, what counts is solid.
SHAPES = {"trial": ("D", c.PAPER), "show": ("D", c.INK), "shoot": ("s", c.INK)}


@dataclass(frozen=True, slots=True)
class Placed:
    """An event's lane and where its words begin; `right` says that they end there."""

    event: SeasonEvent
    lane: int
    x: float
    right: bool


def season_png(season: Season) -> bytes:
    """The picture, 1080 pixels wide; the same from the same."""
    return drawn(lambda: draw(season))


def draw(season: Season) -> Canvas:
    time = _Time(season)
    placed = _lanes(season, time)
    lanes = 1 + max((one.lane for one in placed), default=0)
    top = LANES_TOP + lanes * LANE + 56
    bottom = top + (MARKS if season.weights else 40)
    page = Canvas(WIDTH, bottom + AXIS)
    page.words(
        (20, TITLE), words.title(season), Letters(42, bold=True), align="left", room=WIDTH - 40
    )
    page.words((20, UNDER), words.span(season), Letters(TEXT - 2), align="left", room=WIDTH - 40)
    _months(page, season, time, top, bottom)
    for one in placed:
        _event(page, one, bottom)
    if season.weights:
        wide = page.words(
            (20, top - 26), words.weight_heading(season), Letters(34, bold=True), align="left",
            room=300,
        )  # fmt: skip
        page.box(Area(20, top - 48, wide, 44), Paint(fill=c.PAPER), above=3)
        _weights(page, season, time, top, bottom)
    return page


class _Time:
    """Where each day stands."""

    def __init__(self, season: Season) -> None:
        first, last = season.first, season.last
        # A season of a day would have no width; and marks need room at either end.
        self.first = first - timedelta(days=2)
        self.days = max((last - first).days + 4, 14)

    def x(self, day: date) -> float:
        return LEFT + (RIGHT - LEFT) * (day - self.first).days / self.days


def _lanes(season: Season, time: _Time) -> list[Placed]:
    """Each event's words in the first lane where they lie on no others, nearest to its mark."""
    found: list[Placed] = []
    taken: list[list[tuple[float, float]]] = []
    for event in season.events:
        x = time.x(event.day)
        wide = 36 + len(words.event_label(event)) * TEXT * 0.62
        right = x + wide > WIDTH - 10
        low, high = (x - wide, x + 24) if right else (x - 24, x + wide)
        lane = 0
        while lane < len(taken) and any(low < b and a < high for a, b in taken[lane]):
            lane += 1
        if lane == len(taken):
            taken.append([])
        taken[lane].append((low, high))
        found.append(Placed(event, lane, x, right))
    return found


def _event(page: Canvas, one: Placed, bottom: float) -> None:
    y = LANES_TOP + one.lane * LANE
    shape, fill = SHAPES.get(one.event.kind, SHAPES["trial"])
    page.line([(one.x, y), (one.x, bottom)], colour=c.QUIET, width=3, dashed=True, above=2)
    page.mark((one.x, y), Marker(shape, 26, fill, edge=c.INK, line=4))
    room = one.x - 40 if one.right else WIDTH - 10 - one.x - 28
    x = one.x - 26 if one.right else one.x + 26
    wide = page.words(
        (x, y), words.event_label(one.event), Letters(TEXT - 2),
        align="right" if one.right else "left", room=room,
    )  # fmt: skip
    # Lines of other events run behind the words, not through them.
    page.box(Area(x - wide if one.right else x, y - 20, wide, 40), Paint(fill=c.PAPER), above=3)


def _months(page: Canvas, season: Season, time: _Time, top: float, bottom: float) -> None:
    """The first of each month as a line, its name to the right of it; and today."""
    page.line([(LEFT, bottom), (RIGHT, bottom)], colour=c.INK, width=3)
    end = time.first + timedelta(days=time.days)
    month = date(time.first.year, time.first.month, 1)
    starts = []
    while month <= end:
        if month >= time.first:
            starts.append(month)
        month = (month + timedelta(days=32)).replace(day=1)
    every = max(1, math.ceil(len(starts) / 9))
    for number, start in enumerate(starts):
        x = time.x(start)
        page.line([(x, top), (x, bottom + 14)], colour=c.LINES, width=2, above=1)
        if number % every == 0:
            page.words(
                (x + 4, bottom + 32), words.month_label(start), Letters(TEXT - 3), align="left",
                room=max(RIGHT + 20 - x, 40),
            )  # fmt: skip
    if time.first <= season.today <= end:
        x = time.x(season.today)
        page.line([(x, top), (x, bottom)], colour=c.INK, width=5, above=1)
        _today(page, x, top)


def _today(page: Canvas, x: float, top: float) -> None:
    """What the thick line is, above it, unless the heading stands there."""
    if x < HEADING_TO:
        return
    label = week_words.today_label()
    right = x + len(label) * TEXT * 0.4 > WIDTH - 10
    at = WIDTH - 10 if right else x
    wide = page.words(
        (at, top - 22), label, Letters(TEXT - 4), align="right" if right else "center", room=140
    )
    page.box(
        Area(at - (wide if right else wide / 2), top - 42, wide, 40), Paint(fill=c.PAPER), above=3
    )


def _weights(page: Canvas, season: Season, time: _Time, top: float, bottom: float) -> None:
    unit = season.weight_unit
    values = [(day, week_words.on_scale(kg, unit)) for day, kg in season.weights]
    low, high = min(value for _, value in values), max(value for _, value in values)
    spare = max(LEAST_SPAN - (high - low), 0.0) / 2 + 0.05 * (high - low)
    low, high = low - spare, high + spare

    def y(value: float) -> float:
        return bottom - 24 - (value - low) / (high - low) * (bottom - top - 48)

    for value in round_weights(low, high, unit, 7):
        at = y(value)
        page.line([(LEFT, at), (RIGHT, at)], colour=c.LINES, width=2, above=1)
        tick = week_words.weight_tick(value, unit)
        page.words(
            (LEFT - 10, at), tick, Letters(TEXT - 4, colour=c.QUIET), align="right", room=LEFT - 18,
        )  # fmt: skip
    before: tuple[date, float] | None = None
    for day, value in values:
        if before is not None and (day - before[0]).days <= GAP:
            points = [(time.x(before[0]), y(before[1])), (time.x(day), y(value))]
            page.line(points, colour=c.INK, width=4, above=4)
        before = day, value
        page.mark((time.x(day), y(value)), Marker("o", 12, c.INK, line=1))
