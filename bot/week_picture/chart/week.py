"""The week at a glance, for a phone held upright: a column a day, a panel a measure.

Each figure stands above its own column, so that the marks show the shape and the numbers can be
read off; what is told apart by colour is told apart by shape, outline or hatching too.
"""

from __future__ import annotations

import math
import threading
from collections.abc import Callable, Iterable

import matplotlib as mpl

from bot.week_picture import words
from bot.week_picture.chart import canvas as c
from bot.week_picture.chart.canvas import Canvas
from bot.week_picture.chart.values import ChartDay, ChartOdds, ChartWeek

WIDTH, HEIGHT = 1080, 1280
LEFT, RIGHT = 126, 1070
TOP, BOTTOM = 150, 1264

TEXT = 31  # about 9 points on a phone that shows the picture as wide as its screen
HEADING = 34

# Where panels begin, and where their marks may lie: (heading, top of the marks, bottom of them).
WEIGHT = (176, 282, 532)
CARBS = (582, 692, 836)
FULLNESS = (890, 946, 1070)
SHARPNESS = (1130, 1186, 1238)

# The strip of chances under it all, where there is one.
ODDS_HEADING, ODDS_BOXES, ODDS_KEYS = 1318, 1352, 1436
ODDS_ROOM = 190
TEN = 10

LEAST_SPAN = 1.5  # kg or lb that the weight's scale covers at least
STEPS = (0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0)

Scale = Callable[[float], float]

# Matplotlib keeps its settings and fonts for the whole process and is not safe to use in two
# threads at a time: https://matplotlib.org/stable/users/faq.html (work with threads).
_one_at_a_time = threading.Lock()


def week_png(week: ChartWeek) -> bytes:
    """The picture, 1080 by 1280 pixels, more with a strip of chances; the same from the same."""
    with _one_at_a_time, mpl.rc_context():
        mpl.rcdefaults()  # whatever this machine's own settings are
        mpl.rcParams.update(c.STYLE)
        return draw(week).png()


def draw(week: ChartWeek) -> Canvas:
    page = Canvas(WIDTH, HEIGHT + (ODDS_ROOM if week.odds is not None else 0))
    columns = _Columns(week)
    _days(page, week, columns)
    _weight(page, week, columns)
    _carbs(page, week, columns)
    _fullness(page, week, columns)
    _sharpness(page, week, columns)
    if week.odds is not None:
        _odds(page, week, week.odds)
    return page


class _Columns:
    """Where each day stands."""

    def __init__(self, week: ChartWeek) -> None:
        self.width = (RIGHT - LEFT) / max(len(week.days), 1)
        self._place = {day.date: number for number, day in enumerate(week.days)}

    def left(self, day: ChartDay) -> float:
        return LEFT + self._place[day.date] * self.width

    def middle(self, day: ChartDay) -> float:
        return self.left(day) + self.width / 2


def _days(page: Canvas, week: ChartWeek, columns: _Columns) -> None:
    for day in week.days:
        left, middle = columns.left(day), columns.middle(day)
        if week.ahead(day):
            page.box(left, TOP, columns.width, BOTTOM - TOP, fill=c.WASH, above=0)
        page.line([(left, TOP), (left, BOTTOM)], colour=c.LINES, width=2, above=1)
        event, today = day.days_out == 0, day.date == week.today
        if event:
            page.box(left + 4, 8, columns.width - 8, TOP - 16, fill=c.INK)
        if today:
            page.box(left + 3, 7, columns.width - 6, BOTTOM - 8, edge=c.INK, line=5, above=1)
        for y, text, bold in zip((36, 77, 116), words.column(week, day), (1, 0, 0), strict=True):
            page.words(
                middle, y, text, size=TEXT if y < 40 else TEXT - 2, bold=bool(bold),
                colour=c.PAPER if event else c.INK,
            )  # fmt: skip
    page.line([(RIGHT, TOP), (RIGHT, BOTTOM)], colour=c.LINES, width=2, above=1)


def _weight(page: Canvas, week: ChartWeek, columns: _Columns) -> None:
    heading, top, bottom = WEIGHT
    unit = week.weight_unit
    _heading(page, heading, words.heading("weight", unit))
    page.box(392, heading - 18, 34, 36, fill=c.PALE_BLUE, edge=c.BLUE, line=4)
    _key(page, 438, heading, "band")
    page.mark(638, heading, "o", size=24, fill=c.INK)
    _key(page, 660, heading, "inside")
    page.mark(848, heading, "^", size=30, fill=c.VERMILLION, edge=c.INK)
    page.mark(882, heading, "v", size=30, fill=c.VERMILLION, edge=c.INK)
    _key(page, 906, heading, "outside")

    seen = [
        words.on_scale(kg, unit)
        for day in week.days
        for kg in (day.weight_kg, day.band_low_kg, day.band_high_kg)
        if kg is not None
    ]
    y = _weight_scale(page, seen, week, top, bottom) if seen else None
    for day in week.days:
        middle = columns.middle(day)
        if week.missed(day):
            page.words(
                middle, (top + bottom) / 2, words.missed_label(), size=TEXT - 1, colour=c.QUIET,
                upright=True,
            )  # fmt: skip
        if y is not None and day.band_low_kg is not None and day.band_high_kg is not None:
            high, low = (y(words.on_scale(kg, unit)) for kg in (day.band_high_kg, day.band_low_kg))
            page.box(middle - 36, high, 72, low - high, fill=c.PALE_BLUE, edge=c.BLUE, line=4)
    if y is None:
        return
    weights = [
        (day, y(words.on_scale(day.weight_kg, unit)) if day.weight_kg is not None else None)
        for day in week.days
    ]
    _joined(page, weights, columns, colour=c.INK)
    for day, at in weights:
        if at is None or day.weight_kg is None:
            continue
        shape = {1: "^", -1: "v"}.get(day.against_band or 0, "o")
        outside = shape != "o"
        page.mark(
            columns.middle(day), at, shape, size=38 if outside else 26,
            fill=c.VERMILLION if outside else c.INK, edge=c.INK if outside else c.PAPER,
        )  # fmt: skip
        page.words(
            columns.middle(day), (heading + top) / 2 + 9, words.weight_label(day.weight_kg, unit),
            size=TEXT, bold=True,
        )  # fmt: skip


def _weight_scale(
    page: Canvas, seen: list[float], week: ChartWeek, top: float, bottom: float
) -> Scale:
    """Lines across at round figures, and where a weight lies between them."""
    low, high = min(seen), max(seen)
    spare = max(LEAST_SPAN - (high - low), 0.0) / 2
    low, high = low - spare, high + spare
    room = 22  # for half a mark at either end

    def y(value: float) -> float:
        return bottom - room - (value - low) / (high - low) * (bottom - top - 2 * room)

    # Stones are counted in whole pounds.
    steps = STEPS if week.weight_unit != "st" else STEPS[1:]
    step = next((step for step in steps if (high - low) / step <= 6), steps[-1])
    first = math.ceil(low / step)
    for number in range(first, math.floor(high / step) + 1):
        at = y(number * step)
        page.line([(LEFT, at), (RIGHT, at)], colour=c.LINES, width=2, above=1)
        page.words(
            LEFT - 10, at, words.weight_tick(number * step, week.weight_unit), size=TEXT - 4,
            colour=c.QUIET, align="right",
        )  # fmt: skip
    return y


def _carbs(page: Canvas, week: ChartWeek, columns: _Columns) -> None:
    heading, top, bottom = CARBS
    _heading(page, heading, words.heading("carbs", week.weight_unit))
    page.box(392, heading - 17, 34, 34, edge=c.QUIET, line=4, hatch="//")
    _key(page, 438, heading, "planned")
    page.box(638, heading - 17, 24, 34, fill=c.VERMILLION, edge=c.INK, line=4)
    _key(page, 674, heading, "set")
    most = max(
        (g for d in week.days for g in (d.planned_carb_g, d.set_carb_g) if g is not None),
        default=0.0,
    )
    tall = (bottom - top) / most if most else 0.0
    for day in week.days:
        middle = columns.middle(day)
        stands = day.set_carb_g if day.set_carb_g is not None else day.planned_carb_g
        _bar(page, middle, bottom, (day.planned_carb_g or 0) * tall, width=88)
        _bar(page, middle, bottom, (day.set_carb_g or 0) * tall, width=48, fill=c.VERMILLION)
        if stands is not None:
            page.words(
                middle, heading + 46, words.carbs_label(stands), size=TEXT,
                bold=day.set_carb_g is not None,
            )  # fmt: skip
        page.words(middle, heading + 85, words.carbs_change(day), size=TEXT - 1)
    page.line([(LEFT, bottom), (RIGHT, bottom)], colour=c.INK, width=3, above=4)


def _bar(
    page: Canvas, middle: float, bottom: float, height: float, *, width: float, fill: str = ""
) -> None:
    """A filled bar in front, or a hatched one behind it; none for no grams."""
    if height:
        page.box(
            middle - width / 2, bottom - height, width, height, line=4, fill=fill or None,
            edge=c.INK if fill else c.QUIET, hatch="" if fill else "//", above=3 if fill else 2,
        )  # fmt: skip


def _fullness(page: Canvas, week: ChartWeek, columns: _Columns) -> None:
    heading, top, bottom = FULLNESS
    _heading(page, heading, words.heading("fullness", week.weight_unit))
    page.mark(409, heading, "o", size=38, fill=c.BLUE)
    _key(page, 438, heading, "fullness")
    page.line([(616, heading), (662, heading)], colour=c.INK, width=8)
    _key(page, 674, heading, "expected")
    y = _score_scale(page, 10, top, bottom)
    for day in week.days:
        if day.fullness is not None and day.expected_fullness is not None:
            middle, level = columns.middle(day), y(day.expected_fullness)
            page.line([(middle - 46, level), (middle + 46, level)], colour=c.INK, width=8)
    told = [(day, y(day.fullness) if day.fullness else None) for day in week.days]
    _joined(page, told, columns, colour=c.BLUE)
    for day, at in told:
        if at is not None:
            page.mark(columns.middle(day), at, "o", size=50, fill=c.BLUE)
            page.words(
                columns.middle(day), at, str(day.fullness), size=TEXT - 1, bold=True,
                colour=c.PAPER,
            )  # fmt: skip


def _sharpness(page: Canvas, week: ChartWeek, columns: _Columns) -> None:
    heading, top, bottom = SHARPNESS
    _heading(page, heading, words.heading("sharpness", week.weight_unit))
    page.mark(409, heading, "s", size=34, fill=c.PAPER, edge=c.INK, line=5)
    _key(page, 438, heading, "sharpness")
    y = _score_scale(page, 5, top, bottom)
    told = [(day, y(day.sharpness) if day.sharpness else None) for day in week.days]
    _joined(page, told, columns, colour=c.INK)
    for day, at in told:
        if at is not None:
            page.mark(columns.middle(day), at, "s", size=44, fill=c.PAPER, edge=c.INK, line=5)
            page.words(columns.middle(day), at, str(day.sharpness), size=TEXT - 1, bold=True)


def _odds(page: Canvas, week: ChartWeek, odds: ChartOdds) -> None:
    """Ten boxes, as many of each look as of ten such days; from too little to too much."""
    _heading(page, ODDS_HEADING, words.odds_heading())
    given = words.odds_given(week, odds)
    page.words(RIGHT - 10, ODDS_HEADING, given, size=TEXT - 2, colour=c.QUIET, align="right")
    looks = [("flat", odds.flat), ("full", odds.full), ("spilled", odds.spilled)]
    width = (RIGHT - 20) / TEN
    told = [look for look, tenths in looks for _ in range(tenths)]
    for number, look in enumerate(told):
        _odds_box(page, look, 20 + number * width, ODDS_BOXES, width - 10, 46)
    for (look, tenths), x in zip(looks, (20, 320, 620), strict=True):
        _odds_box(page, look, x, ODDS_KEYS - 17, 34, 34)
        page.words(
            x + 46, ODDS_KEYS, words.odds_label(look, tenths), size=TEXT, bold=True, align="left"
        )  # fmt: skip


def _odds_box(
    page: Canvas, look: str, left: float, top: float, width: float, height: float
) -> None:
    """Hatched for flat, solid for full, solid with a bar across for spilled over."""
    fill = {"full": c.BLUE, "spilled": c.VERMILLION}.get(look)
    page.box(
        left, top, width, height, fill=fill, edge=c.QUIET if look == "flat" else c.INK, line=4,
        hatch="//" if look == "flat" else "",
    )  # fmt: skip
    if look == "spilled":
        middle = top + height / 2
        page.line([(left, middle), (left + width, middle)], colour=c.INK, width=10, above=4)


def _score_scale(page: Canvas, most: int, top: float, bottom: float) -> Scale:
    def y(score: float) -> float:
        return bottom - (score - 1) / (most - 1) * (bottom - top)

    for score in (1, most):
        page.line([(LEFT, y(score)), (RIGHT, y(score))], colour=c.LINES, width=2, above=1)
        page.words(
            LEFT - 10, y(score), str(score), size=TEXT - 4, colour=c.QUIET, align="right"
        )  # fmt: skip
    return y


def _joined(
    page: Canvas, told: Iterable[tuple[ChartDay, float | None]], columns: _Columns, *, colour: str
) -> None:
    """A line from each morning to the next; none across a morning without an answer."""
    before: tuple[float, float] | None = None
    for day, at in told:
        here = (columns.middle(day), at) if at is not None else None
        if before is not None and here is not None:
            page.line([before, here], colour=colour, width=5, above=4)
        before = here


def _heading(page: Canvas, y: float, text: str) -> None:
    page.box(0, y - 28, WIDTH, 56, fill=c.PAPER, above=2)
    page.words(20, y, text, size=HEADING, bold=True, align="left")


def _key(page: Canvas, x: float, y: float, key: str) -> None:
    page.words(x, y, words.key(key), size=TEXT - 2, align="left")
