"""What the marks of the week's picture mean, as keys beside its panels."""

from __future__ import annotations

from bot.drawing import canvas as c
from bot.drawing.canvas import Area, Canvas, Marker, Paint
from bot.pictures.week_picture.chart.layout import Key
from engine.values.observed import CoachLook

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
