"""Weeks as small multiples for a phone held upright: a column a day out, a panel a measure, and in it
one strip a week under the other. A letter tells the weeks apart, so that no colour has to.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from bot.drawing import canvas as c
from bot.drawing.canvas import Area, Canvas, Letters, Marker, Paint, drawn
from bot.pictures.comparison import words
from bot.pictures.comparison.words import Compared, ComparedWeek
from bot.pictures.week_picture import words as week_words
from bot.pictures.week_picture.layout import EYES, day_by_day, eye_boxes, weight_mark
from bot.pictures.week_picture.panels import SET, TAKEN, bar, planned_bar
from bot.pictures.week_picture.values import ChartDay
from engine.values.plan import PLAN_DAYS

WIDTH = 1080
LEFT, RIGHT = 92, 1070
TEXT, HEADING = 30, 34
TITLE, LEGEND, LEGEND_LINE = 40, 96, 44
DAYS, HEAD_ROOM = 60, 54
LEAST_SPAN_KG = 1.0


@dataclass(frozen=True, slots=True)
class Strip:
    """Where one week's strip of a panel lies."""

    page: Canvas
    all: Compared
    week: ComparedWeek
    top: float

    def middle(self, days_out: int) -> float:
        width = (RIGHT - LEFT) / len(PLAN_DAYS)
        return LEFT + (PLAN_DAYS.index(days_out) + 0.5) * width

    def tall(self, room: float, *keys: str) -> float:
        """How high one of these amounts is, so that the most of any week takes all of the room."""
        days = [day for week in self.all.weeks for day in week.days]
        most = max((getattr(day, key) or 0.0 for day in days for key in keys), default=0.0)
        return room / most if most else 0.0

    def join(self, told: Iterable[tuple[int, float]], *, above: int) -> None:
        """A line from each day's height to the next one's."""
        for ends in day_by_day((out, (self.middle(out), y)) for out, y in told):
            self.page.line(ends, colour=c.INK, width=4, above=above)


@dataclass(frozen=True, slots=True)
class Measure:
    """One measure: whether any week has it, how high a strip of it is, and how that is drawn."""

    id: str
    there: Callable[[ChartDay], bool]
    height: float
    draw: Callable[[Strip], None]


def compared_png(compared: Compared) -> bytes:
    """The picture, 1080 pixels wide; the same from the same."""
    return drawn(lambda: draw(compared))


def draw(compared: Compared) -> Canvas:
    shown = [
        measure
        for measure in MEASURES
        if any(measure.there(day) for week in compared.weeks for day in week.days)
    ]
    days_top = LEGEND + LEGEND_LINE * len(compared.weeks) - 10
    tops, at = [], float(days_top + DAYS)
    for measure in shown:
        tops.append(at)
        at += HEAD_ROOM + measure.height * len(compared.weeks)
    page = Canvas(WIDTH, int(at) + 14)
    _head(page, compared)
    _days(page, days_top, at)
    for measure, top in zip(shown, tops, strict=True):
        _panel(page, compared, measure, top)
    return page


def _head(page: Canvas, compared: Compared) -> None:
    """Whose weeks they are, and what each letter stands for."""
    page.words((20, TITLE), compared.name, Letters(42, bold=True), align="left", room=WIDTH - 40)
    for number, (letter, week) in enumerate(compared.lettered()):
        y = LEGEND + number * LEGEND_LINE
        _letter(page, 42, y, letter)
        page.words((74, y), words.legend(week), Letters(TEXT), align="left", room=WIDTH - 94)


def _letter(page: Canvas, x: float, y: float, letter: str) -> None:
    page.box(Area(x - 19, y - 19, 38, 38), Paint(fill=c.INK, edge=c.INK, line=2), above=5)
    page.words((x, y), letter, Letters(TEXT - 2, colour=c.PAPER, bold=True))


def _days(page: Canvas, top: float, bottom: float) -> None:
    width = (RIGHT - LEFT) / len(PLAN_DAYS)
    for number, days_out in enumerate(PLAN_DAYS):
        left = LEFT + number * width
        event = days_out == 0
        if event:
            page.box(Area(left + 4, top + 4, width - 8, DAYS - 10), Paint(fill=c.INK))
        page.line([(left, top + DAYS), (left, bottom)], colour=c.LINES, width=2, above=1)
        page.words(
            (left + width / 2, top + DAYS / 2), words.column(days_out),
            Letters(TEXT, colour=c.PAPER if event else c.INK, bold=True), room=width - 14,
        )  # fmt: skip
    page.line([(RIGHT, top + DAYS), (RIGHT, bottom)], colour=c.LINES, width=2, above=1)


def _panel(page: Canvas, compared: Compared, measure: Measure, top: float) -> None:
    page.box(Area(0, top, WIDTH, HEAD_ROOM), Paint(fill=c.PAPER), above=2)
    name = week_words.heading(measure.id, compared.weight_unit, compared.volume_unit)
    wide = page.words(
        (20, top + HEAD_ROOM / 2), name, Letters(HEADING, bold=True), align="left", room=420,
    )  # fmt: skip
    hint = words.hint(measure.id)
    if hint:
        page.words(
            (20 + wide + 26, top + HEAD_ROOM / 2), hint, Letters(TEXT - 3, colour=c.QUIET),
            align="left", room=WIDTH - 60 - wide,
        )  # fmt: skip
    for number, (letter, week) in enumerate(compared.lettered()):
        strip = top + HEAD_ROOM + number * measure.height
        if number:
            page.line([(LEFT, strip), (RIGHT, strip)], colour=c.LINES, width=2, above=1)
        _letter(page, 42, strip + measure.height / 2, letter)
        measure.draw(Strip(page, compared, week, strip))


# The measures


def _weight(strip: Strip) -> None:
    """Each week against its own first morning, all on one scale; the figures are as weighed."""
    unit = strip.all.weight_unit
    spans = [_moves(week) for week in strip.all.weeks]
    low = min((value for span in spans for value in span), default=0.0)
    high = max((value for span in spans for value in span), default=0.0)
    spare = max(LEAST_SPAN_KG - (high - low), 0.0) / 2
    low, high = low - spare, high + spare
    first = _first(strip.week)
    # Under the figures, of which stones take two lines, with room for the sign of one outside.
    top, room = (strip.top + 92, 50) if unit == "st" else (strip.top + 58, 58)

    def y(kg: float) -> float:
        return top + room * (high - (kg - first)) / (high - low)

    for day in strip.week.days:
        x = strip.middle(day.days_out)
        if day.band_low_kg is not None and day.band_high_kg is not None:
            upper, lower = y(day.band_high_kg), y(day.band_low_kg)
            upper, lower = max(upper, top - 8), min(lower, top + room + 8)
            if lower > upper:
                strip.page.box(
                    Area(x - 34, upper, 68, lower - upper),
                    Paint(fill=c.PALE_BLUE, edge=c.BLUE, line=3),
                )  # fmt: skip
        if day.weight_kg is None:
            continue
        weight_mark(strip.page, (x, y(day.weight_kg)), day, (18, 28), 2)
        strip.page.words(
            (x, strip.top + (24 if unit != "st" else 36)),
            week_words.weight_label(day.weight_kg, unit), Letters(TEXT - 2, bold=True),
        )  # fmt: skip
    weights = [(day.days_out, day.weight_kg) for day in strip.week.days]
    strip.join(((out, y(kg)) for out, kg in weights if kg is not None), above=4)


def _first(week: ComparedWeek) -> float:
    return next((day.weight_kg for day in week.days if day.weight_kg is not None), 0.0)


def _moves(week: ComparedWeek) -> list[float]:
    first = _first(week)
    return [day.weight_kg - first for day in week.days if day.weight_kg is not None]


def _carbs(strip: Strip) -> None:
    tall = strip.tall(52, "planned_carb_g", "set_carb_g", "eaten_carb_g")
    bottom = strip.top + 130
    for day in strip.week.days:
        x = strip.middle(day.days_out)
        planned_bar(strip.page, x, bottom, (day.planned_carb_g or 0) * tall)
        bar(strip.page, (x, bottom), (day.set_carb_g or 0) * tall, SET)
        bar(strip.page, (x, bottom), (day.eaten_carb_g or 0) * tall, TAKEN)
        if day.carb_g is not None:
            strip.page.words(
                (x, strip.top + 22), week_words.carbs_label(day.carb_g), Letters(TEXT - 2, bold=True),
            )  # fmt: skip
        if day.eaten_carb_g is not None:
            strip.page.words(
                (x, strip.top + 56), week_words.carbs_label(day.eaten_carb_g),
                Letters(TEXT - 3, colour=c.QUIET),
            )  # fmt: skip


def _water(strip: Strip) -> None:
    tall, bottom = strip.tall(42, "planned_water_l", "water_l"), strip.top + 88
    for day in strip.week.days:
        x = strip.middle(day.days_out)
        planned_bar(strip.page, x, bottom, (day.planned_water_l or 0) * tall)
        bar(strip.page, (x, bottom), (day.water_l or 0) * tall, TAKEN)
        if day.water_l is not None:
            figure = week_words.water_label(day.water_l, strip.all.volume_unit)
            strip.page.words((x, strip.top + 24), figure, Letters(TEXT - 2))


def _scores(strip: Strip, key: str, most: int, *, square: bool) -> None:
    top, room = strip.top + 28, 48.0

    def y(score: int) -> float:
        return top + room * (most - score) / (most - 1)

    told = [(day.days_out, getattr(day, key)) for day in strip.week.days]
    scores = [(out, score) for out, score in told if score is not None]
    strip.join(((out, y(score)) for out, score in scores), above=3)
    for days_out, score in scores:
        here = (strip.middle(days_out), y(score))
        if square:
            strip.page.mark(here, Marker("s", 40, c.PAPER, edge=c.INK, line=4))
        else:
            strip.page.mark(here, Marker("o", 46, c.INK))
        strip.page.words(
            here, str(score), Letters(TEXT - 2, colour=c.INK if square else c.PAPER, bold=True),
        )  # fmt: skip


def _eye(strip: Strip) -> None:
    for day in strip.week.days:
        if day.eye in EYES:
            eye_boxes(strip.page, strip.middle(day.days_out), strip.top + 26, day.eye or "")


def _symptoms(strip: Strip) -> None:
    for day in strip.week.days:
        if day.symptoms:
            x, y = strip.middle(day.days_out), strip.top + 28
            strip.page.mark((x, y), Marker("D", 36, c.PAPER, edge=c.VERMILLION, line=6))
            strip.page.words((x, y), str(len(day.symptoms)), Letters(TEXT - 3, bold=True))


MEASURES = (
    Measure("weight", lambda day: day.weight_kg is not None, 152, _weight),
    Measure("carbs", lambda _: True, 142, _carbs),
    Measure("water", lambda day: day.water_l is not None, 98, _water),
    Measure(
        "fullness",
        lambda day: day.fullness is not None,
        104,
        lambda strip: _scores(strip, "fullness", 10, square=False),
    ),
    Measure("eye", lambda day: day.eye in EYES, 52, _eye),
    Measure(
        "sharpness",
        lambda day: day.sharpness is not None,
        104,
        lambda strip: _scores(strip, "sharpness", 5, square=True),
    ),
    Measure("symptoms", lambda day: bool(day.symptoms), 56, _symptoms),
)
