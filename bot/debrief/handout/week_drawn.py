"""The week as three small charts on the page: carbs, weight, and how full and sharp it was.

Nothing is told by colour alone: what was planned is an open frame, what was set a filled bar, what was
eaten a dot. Fullness is a line of dots, sharpness one of squares.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.debrief.handout import words
from bot.debrief.handout.tagged import Drawing, Letters
from bot.debrief.past_week import BehindWeek
from bot.words import figures
from engine.planning.behind.debrief import DayBehind
from engine.written.units import WeightUnit

HEIGHT_MM = 41.0
_BETWEEN_MM, _TOP_MM, _FOOT_MM, _SIDE_MM = 7.0, 9.5, 8.0, 9.0
_LINE_MM = 2.8  # from one line of small figures to the next
#: Okabe & Ito's set for every kind of colour vision, as in the pictures in the chat.
_BLUE, _GREEN = (0, 114, 178), (0, 128, 94)
_INK, _QUIET, _RULE = (26, 26, 26), (85, 82, 76), (203, 197, 184)
_KG_LEAST = 1.0  # a scale that shows less makes waves of a tenth


def draw_week(drawing: Drawing, found: BehindWeek, weight_unit: str) -> None:
    """Onto the whole width of the page."""
    panels = (_carbs, _weight, _ratings)
    width = (drawing.width - _BETWEEN_MM * (len(panels) - 1)) / len(panels)
    for number, panel in enumerate(panels):
        panel(_Panel(drawing, number * (width + _BETWEEN_MM), width, found.days), weight_unit)


class _Panel:
    """A chart by days out; `low` and `high` bound its scale."""

    def __init__(
        self, drawing: Drawing, left: float, width: float, days: Sequence[DayBehind]
    ) -> None:
        self.drawing, self.left, self.right = drawing, left + _SIDE_MM, left + width
        self.days, self.low, self.high = days, 0.0, 1.0
        self.step = (self.right - self.left) / max(len(days), 1)

    def begin(self, title: str, marks: str, low: float, high: float, ends: tuple[str, str]) -> None:
        """Title, what the marks mean, the scale's two ends, and the days beneath."""
        self.low, self.high = low, high
        start = self.left - _SIDE_MM
        room = self.right - start
        quiet = Letters(7, _QUIET)
        self.drawing.text((start, 0), title, Letters(8, bold=True), room=room)
        self.drawing.text((start, 4), marks, quiet, room=room)
        for value, said in zip((high, low), ends, strict=True):
            y = self.y(value)
            self.drawing.line((self.left, y), (self.right, y), _RULE)
            lines = said.split("\n")
            for line, part in enumerate(lines):
                top = y - 1.5 + _LINE_MM * (line - (len(lines) - 1) / 2)
                self.drawing.text((start, top), part, quiet, room=_SIDE_MM - 1, align="right")
        foot = HEIGHT_MM - _FOOT_MM + 1
        for number, day in enumerate(self.days):
            self.drawing.text(
                (self.x(number) - self.step / 2, foot), str(day.days_out), Letters(7),
                room=self.step, align="middle",
            )  # fmt: skip
        self.drawing.text(
            (self.left, foot + 3.2), words.axis(), quiet, room=self.right - self.left,
            align="middle",
        )  # fmt: skip

    def x(self, number: int) -> float:
        return self.left + (number + 0.5) * self.step

    def y(self, value: float) -> float:
        share = (value - self.low) / (self.high - self.low)
        return HEIGHT_MM - _FOOT_MM - share * (HEIGHT_MM - _FOOT_MM - _TOP_MM)

    def joined(self, values: Sequence[float | None], *, square: bool = False) -> None:
        """Marks, joined where none is missing between them."""
        before: tuple[float, float] | None = None
        for number, value in enumerate(values):
            here = None if value is None else (self.x(number), self.y(value))
            if here is not None:
                if before is not None:
                    self.drawing.line(before, here, _QUIET if square else _INK)
                self.drawing.mark(here, _QUIET if square else _INK, square=square)
            before = here


def _carbs(panel: _Panel, _unit: str) -> None:
    days = panel.days
    most = max([*(max(d.target.carb_g, d.set_g, d.eaten_g or 0.0) for d in days), 100.0])
    panel.begin(*words.carbs_panel(), 0.0, most, (figures.number(most), "0"))
    for number, day in enumerate(days):
        x, base = panel.x(number), panel.y(0.0)
        wide = panel.step * 0.62
        panel.drawing.bar(x - wide / 2, panel.y(day.set_g), wide, base, _GREEN)
        panel.drawing.frame(x - panel.step * 0.42, panel.y(day.target.carb_g), panel.step * 0.84,
                            base, _BLUE)  # fmt: skip
        if day.eaten_g is not None:
            panel.drawing.mark((x, panel.y(day.eaten_g)), _INK, on_bar=True)


def _weight(panel: _Panel, unit: str) -> None:
    told = [day.morning.weight_kg if day.morning is not None else None for day in panel.days]
    known = [value for value in told if value is not None] or [0.0]
    spare = max(_KG_LEAST - (max(known) - min(known)), 0.0) / 2
    low, high = min(known) - spare, max(known) + spare
    ends = (words.mass(high, unit), words.mass(low, unit)) if any(told) else ("", "")
    panel.begin(*words.weight_panel(WeightUnit(unit)), low, high, ends)
    panel.joined(told)


def _ratings(panel: _Panel, _unit: str) -> None:
    mornings = [day.morning for day in panel.days]
    panel.begin(*words.ratings_panel(), 0.0, 1.0, ("10 / 5", "0"))
    panel.joined([m.fullness / 10 if m and m.fullness is not None else None for m in mornings])
    panel.joined(
        [m.sharpness / 5 if m and m.sharpness is not None else None for m in mornings], square=True
    )
