"""A coach's numbers as a picture for a phone: a dot a share, a bar for its range."""

from __future__ import annotations

from datetime import date

from bot.drawing.canvas import (
    BLUE,
    FAINT,
    INK,
    LINES,
    QUIET,
    WASH,
    Area,
    Canvas,
    Letters,
    Marker,
    Paint,
    drawn,
)
from bot.sheets.coach_numbers import reckoning as r
from bot.sheets.coach_numbers import words
from bot.words import figures
from engine.values.shares import Share

WIDTH = 1080
LEFT, RIGHT = 500, 1000  # of the scale from 0 to 100 %
LABEL_LEFT = 30
TOP, HEAD, LINE, GAP = 150, 64, 84, 70
TEXT = 30.0


def numbers_png(found: r.Numbers, day: date) -> bytes:
    """1080 pixels wide and as high as what is known takes; the same from the same."""
    return drawn(lambda: _draw(found, day))


def _draw(found: r.Numbers, day: date) -> Canvas:
    panels = words.panels(found)
    height = TOP + sum(HEAD + LINE * len(lines) + GAP for _, lines in panels) + 60
    page = Canvas(WIDTH, height)
    page.words((LABEL_LEFT, 54), words.picture_title(), Letters(44, bold=True), align="left")
    page.words(
        (LABEL_LEFT, 108), words.picture_under(found, day), Letters(TEXT, colour=QUIET),
        align="left", room=WIDTH - 2 * LABEL_LEFT,
    )  # fmt: skip
    top = float(TOP)
    for head, lines in panels:
        top = _panel(page, head, lines, top)
    return page


def _panel(page: Canvas, head: str, lines: list[tuple[str, Share]], top: float) -> float:
    page.words(
        (LABEL_LEFT, top + 24), head, Letters(TEXT + 4, bold=True), align="left",
        room=WIDTH - 2 * LABEL_LEFT,
    )  # fmt: skip
    bottom = top + HEAD + LINE * len(lines)
    for percent in (0, 50, 100):
        x = _x(percent / 100)
        page.line([(x, top + HEAD - 6), (x, bottom)], colour=LINES, width=2)
        page.words((x, bottom + 20), f"{percent} %", Letters(26, colour=FAINT))
    for number, (label, share) in enumerate(lines):
        _line(page, label, share, top + HEAD + LINE * (number + 0.5))
    return bottom + GAP


def _line(page: Canvas, label: str, share: Share, y: float) -> None:
    page.words(
        (LABEL_LEFT, y - 16), label, Letters(TEXT), align="left", room=LEFT - LABEL_LEFT - 30
    )
    said = f"{share.count}/{share.total}"
    if share.total < r.FEW:
        said = f"{said}, {words.few()}"
    room = LEFT - LABEL_LEFT - 30
    page.words((LABEL_LEFT, y + 20), said, Letters(26, colour=QUIET), align="left", room=room)
    few = share.total < r.FEW
    low, high = _x(share.low), _x(share.high)
    # What is counted from few is only an outline, so that it weighs less on the eye too.
    page.box(
        Area(low, y - 13, max(high - low, 4), 26),
        Paint(fill=None if few else WASH, edge=BLUE if few else LINES, line=2, dashed=few),
    )  # fmt: skip
    page.mark((_x(share.share), y), Marker("D" if few else "o", 24, BLUE))
    x = min(max(_x(share.share), LEFT + 20), RIGHT - 20)
    page.words((x, y - 32), f"{figures.number(100 * share.share)} %", Letters(26, colour=INK))


def _x(share: float) -> float:
    return LEFT + (RIGHT - LEFT) * share
