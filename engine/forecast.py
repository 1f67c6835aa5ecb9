"""What a dose of carbohydrate would lead to at stage time, and which allowed dose looks best.

Each candidate for the coming day is followed to stage time under the same particles and the same
chance, with the days after it re-planned inside the limits as well as one of a few ways can.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from engine.evidence import tracking as known
from engine.physiology import Body, Floats, Intake, advance
from engine.tracker import (
    Band,
    Belief,
    Person,
    blurs_of,
    chances_each,
    levels_of,
    own_day,
    weights_kg,
)

PARTICLES = 250
REPLANS = (-0.5, 0.0, 0.5)
STEP_H = 1.0


@dataclass(frozen=True, slots=True, kw_only=True)
class DayAhead:
    """A day still to come: what is planned, and how far its carbohydrate may be moved."""

    planned: Intake
    low_g: float
    high_g: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Outlook:
    """What one dose leads to: chances at stage time, the expected look, tomorrow's weight."""

    carb_g: float
    flat: float
    full: float
    spilled: float
    look: float  # 0 to 1
    tomorrow: Band
    replanned_g: tuple[float, ...]  # the days after it, as re-planned here


def forecast(
    belief: Belief,
    ahead: Sequence[DayAhead],
    doses: Sequence[float],
    rng: np.random.Generator,
    *,
    load_left_g: float = np.inf,
    particles: int = PARTICLES,
) -> list[Outlook]:
    """An outlook for each dose of the first day ahead, in the order of the doses.

    `ahead` holds the days up to stage morning, the day to be set first. `load_left_g` bounds the
    sum over all of them; a dose over it is followed none the less, with nothing left for later.
    """
    if not ahead or not doses:
        raise ValueError("a forecast needs a day ahead and a dose")
    plans = _plans(ahead, doses, load_left_g)
    few = _thinned(belief, particles, rng)
    many, count = few.state.shape[1], len(plans)
    errors = np.exp(rng.normal(0, float(known.INTAKE_DAILY), (len(ahead), many)))
    wide = _repeated(few, count)
    who, state = wide.body, wide.state
    told = np.exp(wide.person["intake"])
    tomorrow: Floats | None = None
    for number, day in enumerate(ahead):
        eaten = np.repeat(plans[:, number], many) * np.tile(errors[number], count) * told
        set_day = own_day(wide.person, replace(day.planned, carb_g=eaten), who)
        state = advance(state, set_day, who, hours=24, step_h=STEP_H)
        if tomorrow is None:
            weights = weights_kg(replace(wide, state=state)).reshape(count, many)
            tomorrow = weights + rng.normal(0, _TOMORROW_SD, many)
    assert tomorrow is not None  # there is a day ahead
    chances = chances_each(state, wide.person, who).reshape(3, count, many).mean(axis=2)
    looks = look_of(state, wide.person, who).reshape(count, many)
    return _outlooks(doses, plans, chances, looks, tomorrow)


def _plans(ahead: Sequence[DayAhead], doses: Sequence[float], load_left_g: float) -> Floats:
    """Rows of carbohydrate by day: each dose with each way of re-planning the rest."""
    rows = []
    ways = REPLANS if len(ahead) > 1 else (0.0,)
    for dose in doses:
        for way in ways:
            rest = []
            for day in ahead[1:]:
                planned = float(day.planned.carb_g)
                span = day.high_g - planned if way > 0 else planned - day.low_g
                rest.append(planned + way * span)
            left = max(load_left_g - dose, 0.0)
            total = sum(rest)
            scale = min(1.0, left / total) if total > 0 else 1.0
            rows.append(
                [dose, *(max(r * scale, d.low_g) for r, d in zip(rest, ahead[1:], strict=True))]
            )
    return np.array(rows)


def _thinned(belief: Belief, particles: int, rng: np.random.Generator) -> Belief:
    chosen = rng.permutation(belief.state.shape[1])[:particles]
    return replace(
        belief,
        person=Person(belief.person.values[:, chosen]),
        state=belief.state[:, chosen],
        first=belief.first[:, chosen],
    )


def _repeated(belief: Belief, times: int) -> Belief:
    return replace(
        belief,
        person=Person(np.tile(belief.person.values, times)),
        state=np.tile(belief.state, times),
        first=np.tile(belief.first, times),
    )


def look_of(state: Floats, person: Person, who: Body) -> Floats:
    """The look of each particle, 0 to 1: worth less the flatter, and the more the spill shows."""
    short = (float(known.FULL_AT) - levels_of(state, who)) / float(known.FLAT_COST)
    soft = np.maximum(blurs_of(state, person, who.lean_kg) - float(known.BLUR_FREE), 0)
    return np.clip(1 - np.clip(short, 0, 1) - float(known.BLUR_COST) * soft, 0, 1)


def _outlooks(
    doses: Sequence[float],
    plans: Floats,
    chances: Floats,
    looks: Floats,
    tomorrow: Floats,
) -> list[Outlook]:
    """The best way of each dose; `tomorrow` already carries the day's wander."""
    ways = len(plans) // len(doses)
    mean = looks.mean(axis=1)
    best_rows = [
        start + int(np.argmax(mean[start : start + ways])) for start in range(0, len(plans), ways)
    ]
    outlooks = []
    for dose, row in zip(doses, best_rows, strict=True):
        low, middle, high = np.quantile(tomorrow[row], [0.1, 0.5, 0.9])
        outlooks.append(
            Outlook(
                carb_g=float(dose),
                flat=float(chances[0, row]),
                full=float(chances[1, row]),
                spilled=float(chances[2, row]),
                look=float(mean[row]),
                tomorrow=Band(low=float(low), middle=float(middle), high=float(high)),
                replanned_g=tuple(float(g) for g in plans[row, 1:]),
            )
        )
    return outlooks


_TOMORROW_SD = float(
    np.sqrt(
        float(known.WATER_DAILY) ** 2 + float(known.GUT_DAILY) ** 2 + float(known.SCALE_NOISE) ** 2
    )
)
