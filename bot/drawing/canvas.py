"""A page of pixels to draw on, the first pixel at the top left; matplotlib behind it.

Everything is placed in pixels of the finished picture, because what matters is how large it is on a
phone. No pyplot: a page leaves nothing behind.
"""

from __future__ import annotations

import io
import math
import threading
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.util import find_spec
from pathlib import Path
from typing import Any, Literal, NamedTuple, cast

import matplotlib as mpl
from matplotlib.backend_bases import RendererBase
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure
from matplotlib.lines import Line2D
from matplotlib.patches import Rectangle
from matplotlib.text import Text
from matplotlib.typing import RcKeyType

# Okabe & Ito's set for every kind of colour vision: Okabe M, Ito K. Color Universal Design. 2002,
# modified 2008. https://jfly.uni-koeln.de/color/ (values as in Wong B. Nat Methods 2011;8:441).
# One colour, one meaning: blue is what was planned or expected, green what was set, ink what was
# seen and answered, vermillion what is off, grey the last trial.
BLUE = "#0072B2"
VERMILLION = "#D55E00"
GREEN = "#00805E"  # the set's bluish green, darker: on paper 3:1 for protans too

# The picture brings its own paper, so that it is the same in light and dark chats.
PAPER = "#FAF8F3"
WASH = "#EDE9DF"
LINES = "#CBC5B8"
FAINT = "#827D72"
QUIET = "#55524C"
INK = "#1A1A1A"
PALE_BLUE = "#CBE3F2"

DOTS_PER_INCH = 100
POINTS_PER_PIXEL = 72 / DOTS_PER_INCH

CAPITALS = 0.73  # height of the typeface's capitals as a share of its size
#: Nothing is written smaller: 9 points on a phone that shows 1080 pixels as 390 points.
LEAST_TEXT = 25.0

Align = Literal["left", "center", "right"]

STYLE: dict[RcKeyType, Any] = {
    "font.family": "DejaVu Sans",  # comes with matplotlib: the same letters on every machine
    "hatch.linewidth": 3.0 * POINTS_PER_PIXEL,
    "text.usetex": False,
    "text.parse_math": False,
    "path.sketch": None,
}

# Matplotlib keeps its settings and fonts for the whole process and is not safe to use in two
# threads at a time: https://matplotlib.org/stable/users/faq.html (work with threads).
_one_at_a_time = threading.Lock()


def drawn(draw: Callable[[], Canvas]) -> bytes:
    """The PNG of what is drawn, one at a time, whatever this machine's own settings are."""
    with _one_at_a_time, mpl.rc_context():
        mpl.rcdefaults()
        mpl.rcParams.update(STYLE)
        return draw().png()


Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Letters:
    """How a text is set; `size` is that of the type, in pixels."""

    size: float
    colour: str = INK
    bold: bool = False
    upright: bool = False


class Area(NamedTuple):
    left: float
    top: float
    width: float
    height: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Paint:
    """How an area looks; `line` is the width of its edge."""

    fill: str | None = None
    edge: str | None = None
    line: float = 0.0
    hatch: str = ""
    dashed: bool = False


class Marker(NamedTuple):
    """ "o", "s", "D", "^" or "v"; `size` is its width in pixels."""

    shape: str
    size: float
    fill: str
    edge: str = PAPER
    line: float = 3.0


class Canvas:
    """Draws in pixels. Made and written under `STYLE` (see `drawn`).

    What is drawn is put on the page as it is: `plot` and `add_patch` would reckon its limits anew.
    """

    def __init__(self, width: int, height: int) -> None:
        self.width, self.height = width, height
        self.figure = Figure(
            figsize=(width / DOTS_PER_INCH, height / DOTS_PER_INCH),
            dpi=DOTS_PER_INCH,
            facecolor=PAPER,
        )
        self._agg = FigureCanvasAgg(self.figure)
        self._page = self.figure.add_axes((0, 0, 1, 1))
        self._page.set_axis_off()
        self._page.set_xlim(0, width)
        self._page.set_ylim(height, 0)

    def words(
        self, at: Point, text: str, letters: Letters, *, align: Align = "center",
        room: float | None = None,
    ) -> float:  # fmt: skip
        """A text with its capitals (or the whole of two lines, or an upright one) centred there.

        With `room`, it shrinks and at last is cut to be no wider. The width it took, where there is a
        `room`.
        """
        (x, y), size = at, letters.size
        whole = letters.upright or "\n" in text
        written = self._page.text(
            x,
            y if whole else y + CAPITALS / 2 * size,
            text,
            ha=align,
            va="center" if whole else "baseline",
            fontsize=size * POINTS_PER_PIXEL,
            color=letters.colour,
            fontweight="bold" if letters.bold else "normal",
            rotation=90 if letters.upright else 0,
            linespacing=1.05,
            zorder=6,
        )
        return self._fit(written, size, room) if room is not None else 0.0

    def _fit(self, written: Text, size: float, room: float) -> float:
        renderer = cast("RendererBase", self._agg.get_renderer())  # type: ignore[no-untyped-call]

        def wide() -> float:
            return float(written.get_window_extent(renderer).width)

        taken = wide()
        while taken > room and size > LEAST_TEXT:
            # The width goes with the size, so most of the way is gone at once.
            size = max(size - max(1, math.floor(size * (1 - room / taken))), LEAST_TEXT)
            written.set_fontsize(size * POINTS_PER_PIXEL)
            taken = wide()
        text = written.get_text()
        while taken > room and len(text) > 1:
            text = text[:-1]
            written.set_text(f"{text.rstrip()}…")
            taken = wide()
        return taken

    def box(self, area: Area, paint: Paint, *, above: int = 2) -> None:
        self._page.add_artist(
            Rectangle(
                (area.left, area.top), area.width, area.height, facecolor=paint.fill or "none",
                edgecolor=paint.edge or "none", linewidth=paint.line * POINTS_PER_PIXEL,
                hatch=paint.hatch, zorder=above, linestyle="--" if paint.dashed else "-",
            )
        )  # fmt: skip

    def line(
        self, points: Sequence[tuple[float, float]], *, colour: str, width: float,
        dashed: bool = False, above: int = 3,
    ) -> None:  # fmt: skip
        self._page.add_artist(
            Line2D(
                [x for x, _ in points], [y for _, y in points], color=colour, zorder=above,
                linewidth=width * POINTS_PER_PIXEL, linestyle=(0, (2, 1.2)) if dashed else "-",
                solid_capstyle="butt",
            )
        )  # fmt: skip

    def mark(self, at: Point, marker: Marker) -> None:
        x, y, shape, size, fill, edge, line = *at, *marker
        self._page.add_artist(
            Line2D(
                [x], [y], marker=shape, markersize=size * POINTS_PER_PIXEL, color=fill,
                markeredgecolor=edge, markeredgewidth=line * POINTS_PER_PIXEL, linestyle="none",
                zorder=5,
            )
        )  # fmt: skip

    def png(self) -> bytes:
        out = io.BytesIO()
        # Without the library's name and version the same values give the same bytes.
        self.figure.savefig(out, format="png", dpi=DOTS_PER_INCH, metadata={"Software": None})
        return out.getvalue()


@cache
def letters() -> Path:
    """The folder with "DejaVuSans.ttf", "DejaVuSans-Bold.ttf" and others."""
    found = find_spec("matplotlib")
    assert found is not None and found.origin is not None
    return Path(found.origin).parent / "mpl-data" / "fonts" / "ttf"
