"""What a coach saw, weighed against each particle: a second observer, steadier than the athlete.

A coach calls a look flat, on course or full against what the plan leads one to expect that morning,
and softening or spilled over by the blur. Each coach rates a little high or low for good; that is
learnt beside the rest. Nothing is drawn where nobody has looked, so such mornings stay as they were.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from engine.evidence.body import observing as e
from engine.evidence.body import tracking as known
from engine.model.normal import normal_below
from engine.model.particles import Belief
from engine.model.structures import Floats, Row
from engine.model.tracker import levels, resample
from engine.values.checkin import CoachLook, Observed


def learn_seen(belief: Belief, seen: Observed, expected: float, rng: np.random.Generator) -> Belief:
    """Belief after one coach's word on a morning; `expected` is the fullness (of 10) on plan."""
    off = dict(belief.eyes).get(seen.by)
    if off is None:
        spread = float(e.SEEN_BIAS)
        off = np.asarray(rng.normal(0, spread, belief.state.shape[1]), dtype=np.float32)
        belief = replace(belief, eyes=(*belief.eyes, (seen.by, off)))
    looks = look_chances(seen_grade(belief) + off, belief.state[Row.SHOWN], expected)
    slip = float(e.SEEN_SLIP)
    chance = np.log(slip / len(CoachLook) + (1 - slip) * looks[seen.look.order])
    if seen.sharpness is not None:
        chance = chance + _sharpness_chance(belief, seen.sharpness)
    return resample(belief, np.asarray(chance, dtype=np.float32), rng)


def seen_grade(belief: Belief) -> Floats:
    """The fullness (1 to 10) that a coach without bias would read off each particle's muscle."""
    empty, fullest = float(known.EMPTY_LEVEL), float(known.FULLEST_LEVEL)
    return np.asarray(1 + 9 * (levels(belief) - empty) / (fullest - empty))


def look_chances(grade: Floats, shown: Floats, expected: float) -> Floats:
    """Chances of each `CoachLook` (rows, in its order) for fullness grades and spill that shows."""
    edge, noise = float(e.SEEN_SPILL_EDGE), float(e.SEEN_NOISE)
    spilled = normal_below((shown - 1) / edge)
    softened = normal_below((shown - float(e.SEEN_SOFT_FROM)) / edge)
    flat_under, full_from = edges(expected)
    flat = normal_below((flat_under - grade) / noise)
    full = normal_below((grade - full_from) / noise)
    clear = 1 - softened
    return np.stack(
        [clear * flat, clear * (1 - flat - full), clear * full, softened - spilled, spilled]
    )


def edges(expected: float) -> tuple[float, float]:
    """The grades under which a look is called flat, and from which it is called full."""
    flat_under = expected - float(e.SEEN_FLAT_BY)
    full_from = min(expected + float(e.SEEN_FULL_BY), float(e.SEEN_FULL_FROM))
    return flat_under, max(full_from, flat_under + float(e.SEEN_FULL_BY))


def _sharpness_chance(belief: Belief, sharpness: int) -> Floats:
    noise = float(e.SEEN_SHARPNESS_NOISE)
    mean = float(known.CRISP) - float(known.BLUR_GRADES) * belief.state[Row.SHOWN]
    none, all_of_it = np.zeros(1, dtype=np.float32), np.ones(1, dtype=np.float32)
    upper = all_of_it if sharpness >= 5 else normal_below((sharpness + 0.5 - mean) / noise)
    lower = none if sharpness <= 1 else normal_below((sharpness - 0.5 - mean) / noise)
    slip = float(e.SEEN_SLIP)
    return np.asarray(np.log(slip / 5 + (1 - slip) * (upper - lower)))
