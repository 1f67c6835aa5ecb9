"""What a coach saw of an athlete on a morning, from photos or a call: a second pair of eyes."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum


class CoachLook(StrEnum):
    """How a coach calls a morning's look, from too little in the muscle to too much."""

    FLAT = "flat"
    ON_COURSE = "on course"
    FULL = "full"
    SOFTENING = "softening"
    SPILLED = "spilled over"

    @property
    def order(self) -> int:
        """0 for the emptiest look, 4 for the most overfilled one."""
        return list(CoachLook).index(self)


@dataclass(frozen=True, slots=True, kw_only=True)
class Observed:
    """What one coach saw on one morning. Sharpness of 5, None where it was not judged.

    `by` tells the coaches of an athlete apart and means nothing else; `at` is the aware instant at
    which it was said. Raises ValueError for a sharpness that is none.
    """

    date: dt.date
    look: CoachLook
    sharpness: int | None = None
    by: int = 0
    at: dt.datetime | None = None

    def __post_init__(self) -> None:
        if self.sharpness is not None and not 1 <= self.sharpness <= 5:
            raise ValueError(f"sharpness {self.sharpness} is outside 1 to 5")


def most_careful(seen: Sequence[Observed]) -> Observed | None:
    """What several coaches saw of one morning, as one: the most overfilled look, the least sharp.

    Where two differ, nothing is added on the word of the one who saw less; None where nobody looked.
    """
    if not seen:
        return None
    worst = max(seen, key=lambda one: one.look.order)
    sharp = [one.sharpness for one in seen if one.sharpness is not None]
    return Observed(
        date=worst.date,
        look=worst.look,
        sharpness=min(sharp, default=None),
        by=worst.by,
        at=worst.at,
    )
