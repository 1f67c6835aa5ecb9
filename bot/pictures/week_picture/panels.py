"""The panels of the picture of a week, one a measure, the weight first.

Each figure stands above its own column, so that the marks show the shape and the numbers can be read
off; what is told apart by colour is told apart by shape, outline or hatching too.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import NamedTuple

from bot.drawing import canvas as c
from bot.drawing.canvas import Area, Canvas, Letters, Marker, Paint, Point
from bot.pictures.week_picture import words
from bot.pictures.week_picture.layout import (
    EYES,
    HEAD_ROOM,
    LEFT,
    RIGHT,
    TEXT,
    Drawing,
    Panel,
    Scale,
    behind,
    box_key,
    eye_boxes,
    eye_key,
    gutter,
    heading,
    joined,
    line_key,
    mark_key,
    outside_key,
    round_weights,
    square_key,
    weight_mark,
)
from bot.pictures.week_picture.values import BeforeDay, ChartWeek

LEAST_SPAN = 1.5  # kg or lb that the weight's scale covers at least
BASELINE_WITHIN = 3.0  # of the other weights, kg or lb: further off it would flatten them
ROW = 40  # of figures

WEIGHT_MARKS, CARBS_MARKS, WATER_MARKS, FULLNESS_MARKS, SHARPNESS_MARKS = 250, 140, 84, 124, 52


# Weight


def _weighed(week: ChartWeek) -> bool:
    return any(d.weight_kg is not None or d.band_low_kg is not None for d in week.days)


def _weight(on: Drawing) -> None:
    page, week, unit = on.page, on.week, on.week.weight_unit
    heading(on, "weight", (("band", box_key(c.PALE_BLUE, c.BLUE)),
                           ("inside", mark_key("o", 24, c.INK)),
                           ("outside", outside_key)))  # fmt: skip
    figures = on.top + HEAD_ROOM + ROW / 2 + (8 if unit == "st" else 0)
    top = on.top + HEAD_ROOM + (ROW if unit != "st" else ROW + 34)
    y = _weight_scale(on, top, top + WEIGHT_MARKS)
    for day in week.days:
        middle = on.columns.middle(day)
        if day.band_low_kg is not None and day.band_high_kg is not None:
            high, low = (y(words.on_scale(kg, unit)) for kg in (day.band_high_kg, day.band_low_kg))
            page.box(
                Area(middle - 36, high, 72, low - high),
                Paint(fill=c.PALE_BLUE, edge=c.BLUE, line=4),
            )
    behind(on, _moved(week), y)
    for day in week.days:
        if week.missed(day):
            middle = on.columns.middle(day)
            page.box(Area(middle - 20, top + 6, 40, WEIGHT_MARKS - 8), Paint(fill=c.PAPER), above=2)
            page.words(
                (middle, top + WEIGHT_MARKS / 2), words.missed_label(),
                Letters(TEXT - 1, colour=c.QUIET, upright=True),
            )  # fmt: skip
    weights = [
        (day, y(words.on_scale(day.weight_kg, unit)) if day.weight_kg is not None else None)
        for day in week.days
    ]
    joined(on, weights)
    for day, at in weights:
        if at is None or day.weight_kg is None:
            continue
        weight_mark(page, (on.columns.middle(day), at), day, (26, 38), 3)
        page.words(
            (on.columns.middle(day), figures), words.weight_label(day.weight_kg, unit),
            Letters(TEXT, bold=True),
        )  # fmt: skip


def _moved(week: ChartWeek) -> Iterator[tuple[int, float | None]]:
    """The last trial's weights as they moved, from where this week began, on the scale."""
    first = week.first_kg
    for day in _before(week):
        known = first is not None and day.moved_kg is not None
        kg = (first or 0) + (day.moved_kg or 0)
        yield day.days_out, words.on_scale(kg, week.weight_unit) if known else None


def _before(week: ChartWeek) -> tuple[BeforeDay, ...]:
    return week.before.days if week.before is not None else ()


def weight_bounds(week: ChartWeek) -> tuple[float, float, float | None]:
    """Lowest and highest of the scale, in its unit, and the weight on file where it lies on it."""
    unit = week.weight_unit
    seen = [
        words.on_scale(kg, unit)
        for day in week.days
        for kg in (day.weight_kg, day.band_low_kg, day.band_high_kg)
        if kg is not None
    ]
    seen += [value for _, value in _moved(week) if value is not None]
    if not seen:
        return 0.0, LEAST_SPAN, None
    low, high = min(seen), max(seen)
    base = None if week.baseline_kg is None else words.on_scale(week.baseline_kg, unit)
    if base is not None and low - BASELINE_WITHIN <= base <= high + BASELINE_WITHIN:
        low, high = min(low, base), max(high, base)
    else:
        base = None
    spare = max(LEAST_SPAN - (high - low), 0.0) / 2
    return low - spare, high + spare, base


def _weight_scale(on: Drawing, top: float, bottom: float) -> Scale:
    """Lines across at round figures, the weight on file, and where a weight lies between them."""
    unit, (low, high, base) = on.week.weight_unit, weight_bounds(on.week)
    room = 22  # for half a mark at either end

    def y(value: float) -> float:
        return bottom - room - (value - low) / (high - low) * (bottom - top - 2 * room)

    for value in round_weights(low, high, unit, 6):
        at = y(value)
        on.page.line([(LEFT, at), (RIGHT, at)], colour=c.LINES, width=2, above=1)
        gutter(on, at, words.weight_tick(value, unit))
    if base is not None:
        on.page.line([(LEFT, y(base)), (RIGHT, y(base))], colour=c.INK, width=3, above=1)
    return y


# Carbohydrate


def _has_changes(week: ChartWeek) -> bool:
    return any(words.carbs_change(day) for day in week.days)


def _has_eaten(week: ChartWeek) -> bool:
    return any(day.eaten_carb_g is not None for day in week.days)


def _carbs_height(week: ChartWeek) -> float:
    rows = 1 + _has_changes(week) + _has_eaten(week) + _has_phases(week)
    return HEAD_ROOM + rows * ROW + 10 + CARBS_MARKS + 16


def _has_phases(week: ChartWeek) -> bool:
    return any(day.phase is not None for day in week.days)


def _carbs(on: Drawing) -> None:
    page, week = on.page, on.week
    keys = [("planned", box_key(None, c.BLUE, hatch="//")),
            ("set", box_key(c.GREEN, c.INK))]  # fmt: skip
    if _has_eaten(week):
        keys.append(("eaten", box_key(c.INK, c.INK, width=14)))
    heading(on, "carbs", keys)
    figures = on.top + HEAD_ROOM + ROW / 2
    changes = figures + ROW
    eaten = changes + (ROW if _has_changes(week) else 0)
    phases = eaten + (ROW if _has_eaten(week) else 0)
    top = on.top + _carbs_height(week) - 16 - CARBS_MARKS
    bottom = top + CARBS_MARKS
    most = max(
        (g for d in week.days for g in (d.planned_carb_g, d.set_carb_g, d.eaten_carb_g) if g),
        default=0.0,
    )
    most = max([most, *(day.carb_g or 0 for day in _before(week))])
    tall = CARBS_MARKS / most if most else 0.0
    for day in week.days:
        middle = on.columns.middle(day)
        planned_bar(page, middle, bottom, (day.planned_carb_g or 0) * tall)
        bar(page, (middle, bottom), (day.set_carb_g or 0) * tall, SET)
        bar(page, (middle, bottom), (day.eaten_carb_g or 0) * tall, TAKEN)
        if day.carb_g is not None:
            page.words(
                (middle, figures), words.carbs_label(day.carb_g),
                Letters(TEXT, bold=day.set_carb_g is not None),
            )  # fmt: skip
        page.words((middle, changes), words.carbs_change(day), Letters(TEXT - 1))
        page.words((middle, phases), words.phase_label(day), Letters(TEXT - 1, colour=c.QUIET))
        if day.eaten_carb_g is not None:
            page.words((middle, eaten), words.carbs_label(day.eaten_carb_g), Letters(TEXT - 1))
    if _has_changes(week):
        gutter(on, changes, words.key("change"))
    if _has_eaten(week):
        gutter(on, eaten, words.key("eaten"))
    behind(on, ((day.days_out, day.carb_g) for day in _before(week)), lambda g: bottom - g * tall)
    page.line([(LEFT, bottom), (RIGHT, bottom)], colour=c.INK, width=3, above=4)


# Water


def _waters(week: ChartWeek) -> bool:
    return any(day.water_l is not None for day in week.days)


def _water(on: Drawing) -> None:
    page, week = on.page, on.week
    heading(on, "water", (("planned", box_key(None, c.BLUE, hatch="//")),
                          ("drunk", box_key(c.INK, c.INK, width=14))))  # fmt: skip
    figures, bottom = on.top + HEAD_ROOM + ROW / 2, on.top + HEAD_ROOM + ROW + 8 + WATER_MARKS
    most = max(v for d in week.days for v in (d.planned_water_l, d.water_l) if v is not None)
    tall = WATER_MARKS / most if most else 0.0
    for day in week.days:
        middle = on.columns.middle(day)
        planned_bar(page, middle, bottom, (day.planned_water_l or 0) * tall)
        bar(page, (middle, bottom), (day.water_l or 0) * tall, TAKEN)
        if day.water_l is not None:
            page.words(
                (middle, figures), words.water_label(day.water_l, week.volume_unit), Letters(TEXT),
            )  # fmt: skip
    page.line([(LEFT, bottom), (RIGHT, bottom)], colour=c.INK, width=3, above=4)


def planned_bar(page: Canvas, middle: float, bottom: float, height: float) -> None:
    """A wide hatched bar, in the colour of what was planned."""
    if height:
        page.box(
            Area(middle - 44, bottom - height, 88, height), Paint(edge=c.BLUE, line=4, hatch="//"),
            above=2,
        )  # fmt: skip


class Bar(NamedTuple):
    """How a filled bar looks; one that stands before another is `above` it."""

    width: float
    fill: str
    above: int


SET, TAKEN = Bar(56, c.GREEN, 3), Bar(20, c.INK, 4)


def bar(page: Canvas, foot: Point, height: float, looks: Bar) -> None:
    """A filled bar; none for nothing."""
    middle, bottom = foot
    if height:
        page.box(
            Area(middle - looks.width / 2, bottom - height, looks.width, height),
            Paint(fill=looks.fill, edge=c.INK, line=4), above=looks.above,
        )  # fmt: skip


# The look


def _fullness(on: Drawing) -> None:
    page, week = on.page, on.week
    heading(on, "fullness", (("fullness", mark_key("o", 36, c.INK)),
                             ("expected", line_key)))  # fmt: skip
    y = _score_scale(on, 10, on.top + HEAD_ROOM + 30, FULLNESS_MARKS)
    for day in week.days:
        if day.fullness is not None and day.expected_fullness is not None:
            middle, level = on.columns.middle(day), y(day.expected_fullness)
            page.line([(middle - 46, level), (middle + 46, level)], colour=c.BLUE, width=8)
    _scores(on, "fullness", y, Marker("o", 50, c.INK), c.PAPER)


def _eye(on: Drawing) -> None:
    """Five small boxes a day, the one that the coach saw filled."""
    heading(on, "eye", (("eye", eye_key),))
    y = on.top + HEAD_ROOM + 24
    for day in on.week.days:
        if day.eye in EYES:
            eye_boxes(on.page, on.columns.middle(day), y, day.eye)


def _sharpness(on: Drawing) -> None:
    heading(on, "sharpness", (("sharpness", square_key),))
    y = _score_scale(on, 5, on.top + HEAD_ROOM + 28, SHARPNESS_MARKS)
    _scores(on, "sharpness", y, Marker("s", 44, c.PAPER, edge=c.INK, line=5), c.INK)


def _scores(on: Drawing, key: str, y: Scale, marker: Marker, colour: str) -> None:
    """The mornings' scores in their marks, and those of the last trial behind them."""
    behind(on, ((day.days_out, getattr(day, key)) for day in _before(on.week)), y)
    told = [(day, getattr(day, key)) for day in on.week.days]
    joined(on, ((day, y(score) if score else None) for day, score in told))
    for day, score in told:
        if score:
            at = (on.columns.middle(day), y(score))
            on.page.mark(at, marker)
            on.page.words(at, str(score), Letters(TEXT - 1, colour=colour, bold=True))


def _score_scale(on: Drawing, most: int, top: float, height: float) -> Scale:
    def y(score: float) -> float:
        return top + height - (score - 1) / (most - 1) * height

    for score in (1, most):
        on.page.line([(LEFT, y(score)), (RIGHT, y(score))], colour=c.LINES, width=2, above=1)
        gutter(on, y(score), str(score))
    return y


# Complaints


def _symptoms(on: Drawing) -> None:
    """How many there were on a morning; what they were stands in the notes below."""
    heading(on, "symptoms")
    y = on.top + HEAD_ROOM + 30
    for day in on.week.days:
        if day.symptoms:
            middle = on.columns.middle(day)
            on.page.mark((middle, y), Marker("D", 40, c.PAPER, edge=c.VERMILLION, line=6))
            on.page.words((middle, y), str(len(day.symptoms)), Letters(TEXT - 3, bold=True))


PANELS = (
    Panel(
        "weight",
        _weighed,
        lambda week: HEAD_ROOM + ROW + WEIGHT_MARKS + (50 if week.weight_unit == "st" else 16),
        _weight,
    ),
    Panel("carbs", lambda _: True, _carbs_height, _carbs),
    Panel("water", _waters, lambda _: HEAD_ROOM + ROW + 8 + WATER_MARKS + 16, _water),
    Panel(
        "fullness",
        lambda week: any(day.fullness is not None for day in week.days),
        lambda _: HEAD_ROOM + 60 + FULLNESS_MARKS,
        _fullness,
    ),
    Panel(
        "eye",
        lambda week: any(day.eye in EYES for day in week.days),
        lambda _: HEAD_ROOM + 52,
        _eye,
    ),
    Panel(
        "sharpness",
        lambda week: any(day.sharpness is not None for day in week.days),
        lambda _: HEAD_ROOM + 56 + SHARPNESS_MARKS,
        _sharpness,
    ),
    Panel(
        "symptoms",
        lambda week: any(day.symptoms for day in week.days),
        lambda _: HEAD_ROOM + 64,
        _symptoms,
    ),
)
