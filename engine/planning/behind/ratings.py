"""How an athlete's own ratings compare with what the coach sees of the same mornings.

A coach's look is read as a grade of fullness against what the plan led one to expect. Softening and
spilled over are left out of that: muscle past full may feel and look flat, so no grade is right.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import sqrt
from statistics import fmean, stdev

from engine.evidence.body import observing as e
from engine.values.checkin import CoachLook


@dataclass(frozen=True, slots=True, kw_only=True)
class BothSaid:
    """One morning as the athlete rated it (fullness of 10, sharpness of 5) and as a coach saw it."""

    fullness: int | None
    expected: int | None
    sharpness: int | None
    look: CoachLook
    seen_sharpness: int | None = None


@dataclass(frozen=True, slots=True)
class Apart:
    """The athlete's grade less the coach's, on average, with its standard error."""

    mornings: int
    grades: float
    error: float

    @property
    def worth_a_word(self) -> bool:
        """Far enough apart to be told, and further than chance would make of so few mornings."""
        return abs(self.grades) >= max(e.COMPARED_APART.value, 2 * self.error)


def fullness_apart(mornings: Iterable[BothSaid]) -> Apart | None:
    """None where fewer mornings than a handful have both."""
    return _apart(
        [
            one.fullness - grade
            for one in mornings
            if one.fullness is not None and (grade := seen_fullness(one)) is not None
        ]
    )


def sharpness_apart(mornings: Iterable[BothSaid]) -> Apart | None:
    """The same for sharpness, where the coach gave it."""
    return _apart(
        [
            float(one.sharpness - one.seen_sharpness)
            for one in mornings
            if one.sharpness is not None and one.seen_sharpness is not None
        ]
    )


def seen_fullness(one: BothSaid) -> float | None:
    """The coach's look as a grade of fullness, 1 to 10."""
    if one.expected is None:
        return None
    if one.look is CoachLook.FULL:
        over = one.expected + float(e.SEEN_FULL_GRADE)
        return min(max(over, float(e.SEEN_FULL_FROM)), 10.0)
    if one.look is CoachLook.FLAT:
        return max(one.expected + float(e.SEEN_FLAT_GRADE), 1.0)
    return float(one.expected) if one.look is CoachLook.ON_COURSE else None


def _apart(differences: Sequence[float]) -> Apart | None:
    number = len(differences)
    if number < e.COMPARED_FROM.value:
        return None
    return Apart(number, fmean(differences), stdev(differences) / sqrt(number))
