"""Chances in words, never more precise than the model is: tenths, and the three add up to ten."""

from __future__ import annotations

import math
from typing import Protocol

from bot.words.languages import SentenceBy, mark, tr, tr_if

LOOKS = ("full", "flat", "spilled")
#: What a look is called.
look_name = SentenceBy(
    {"full": mark("full"), "flat": mark("flat"), "spilled": mark("spilled over")}
)


class Chances(Protocol):
    """Any three chances of how a day will look; together they are 1."""

    @property
    def flat(self) -> float: ...

    @property
    def full(self) -> float: ...

    @property
    def spilled(self) -> float: ...


def in_ten(odds: Chances) -> dict[str, int]:
    """How many of ten such days would be full, flat and spilled over; each a tenth off at most."""
    exact = {look: 10 * float(getattr(odds, look)) for look in LOOKS}
    tenths = {look: math.floor(value) for look, value in exact.items()}
    by_rest = sorted(LOOKS, key=lambda look: tenths[look] - exact[look])
    for look in by_rest[: 10 - sum(tenths.values())]:
        tenths[look] += 1
    return tenths


def about(tenths: int) -> str:
    """ "about 7 in 10"."""
    if tenths == 0:
        return tr("under 1 in 10")
    return tr_if(tenths == 10, "over 9 in 10", "about {tenths} in 10", tenths=tenths)


def all_three(odds: Chances) -> str:
    """ "full about 7 in 10, flat about 1 in 10, spilled over about 2 in 10"."""
    tenths = in_ten(odds)
    return tr(
        "full {full}, flat {flat}, spilled over {spilled}",
        full=about(tenths["full"]),
        flat=about(tenths["flat"]),
        spilled=about(tenths["spilled"]),
    )
