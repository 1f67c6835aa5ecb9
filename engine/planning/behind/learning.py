"""What each peak week taught of one body: store size, fill rate, and the loads too small and too large.

The tracker is led through the weeks once more, and what is believed is read off before the first of
them and after each. "Too large" is asked of the model as a coach would ask it: of a load that is the
same on each load day of the last week's plan, from how much a day does the look spill over? So the
answer is in grams told and eaten, and means the same in whatever way a body may work.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import NamedTuple

import numpy as np

from engine.decision.beliefs import frame_of, intake_of, through
from engine.evidence.body import learning as e
from engine.model.forecast import subsample
from engine.model.particles import Belief, Person
from engine.model.structures import Bodies, Floats, Row, a_day, first_morning, hours_lifted
from engine.model.tracker import first_belief, generator, levels_of, next_prior
from engine.values.athlete import Athlete, Baseline
from engine.values.case import PastWeek
from engine.values.plan import PLAN_DAYS, DayTarget, PeakPlan

PARTICLES = 500


class Quantity(StrEnum):
    """What is believed of a body, with the unit that it is told in."""

    STORE = "store"  # g of glycogen that the muscles hold when full
    FILL = "fill"  # g of glycogen that empty muscles take up in a day, at most
    FLAT = "flat"  # g/kg and load day: less of it leaves flat
    SPILL = "spill"  # g/kg and load day: from there on it spills over


@dataclass(frozen=True, slots=True)
class Span:
    """Where a quantity lies, as believed: the `STATED` share of what is possible, and its middle."""

    low: float
    middle: float
    high: float

    @property
    def width(self) -> float:
        return self.high - self.low

    @property
    def factor(self) -> float:
        """The logarithm of its high end over its low one: how wide it is, whatever its middle."""
        return math.log(self.high / self.low)

    def holds(self, value: float) -> bool:
        return self.low <= value <= self.high


Believed = dict[Quantity, Span]


@dataclass(frozen=True, slots=True)
class Taught:
    """One week's lesson: what was believed before it and after it."""

    day: date
    before: Believed
    after: Believed

    def narrowed(self, quantity: Quantity) -> float:
        """The share by which the span became narrower, as a factor; below 0 where it grew wider."""
        was = self.before[quantity].factor
        return float(1 - self.after[quantity].factor / was) if was else 0.0


def taught(
    athlete: Athlete, baseline: Baseline, weeks: Sequence[PastWeek], plan: PeakPlan | None = None
) -> tuple[Taught, ...]:
    """What each of the weeks (oldest first) taught; `plan` gives the days before the load.

    Without it the last week's own is taken. The chance is fixed by the athlete and the weeks, so that
    asking again gives the same.
    """
    if not weeks:
        return ()
    days = plan or weeks[-1].plan
    read = [
        believed(belief, days, baseline, generator(f"{_key(athlete)}/read/{number}", weeks[0].day))
        for number, belief in enumerate(led_through(athlete, baseline, weeks))
    ]
    return tuple(
        Taught(week.day, before, after)
        for week, before, after in zip(weeks, read[:-1], read[1:], strict=True)
    )


def led_through(
    athlete: Athlete, baseline: Baseline, weeks: Sequence[PastWeek]
) -> Iterator[Belief]:
    """What is believed before the first of the weeks, and after each of them; at least one week."""
    key, frame = _key(athlete), frame_of(athlete, baseline)
    belief = first_belief(frame, generator(f"{key}/first", weeks[0].day))
    yield belief
    for number, week in enumerate(weeks):
        belief = through(belief, week, key, habit_g=baseline.carb_g)
        yield belief
        if number + 1 < len(weeks):
            apart = max((weeks[number + 1].day - week.day).days / 7, 1)
            rng = generator(f"{key}/between", week.day)
            belief = next_prior(belief, frame, rng, weeks=apart)


def _key(athlete: Athlete) -> str:
    """What fixes the chance for one athlete."""
    return (
        f"{athlete.sex}/{athlete.birth_year}/{athlete.height_cm:g}/{athlete.body_mass_kg:g}/taught"
    )


def believed(
    belief: Belief, plan: PeakPlan, baseline: Baseline, rng: np.random.Generator
) -> Believed:
    """What is thought of the body, whatever its condition today."""
    few = subsample(belief, PARTICLES, rng)
    flat, spill = edges(few.person, few.body, plan, baseline, belief.frame.body_mass_kg)
    return {
        Quantity.STORE: _span(few.body.ceiling_g, float(e.STORE_DOUBT)),
        Quantity.FILL: _span(few.body.fill_g, float(e.FILL_DOUBT)),
        Quantity.FLAT: _span(flat, float(e.FLAT_DOUBT)),
        Quantity.SPILL: _span(spill, float(e.SPILL_DOUBT)),
    }


def _span(values: Floats, doubt: float) -> Span:
    """The stated share of the particles, and as much again as the model itself is doubted.

    `doubt` is the SD of the logarithm by which a body may differ from any that the model knows.
    """
    tail = (1 - float(e.STATED)) / 2
    low, middle, high = np.log(np.quantile(np.maximum(values, 1e-3), [tail, 0.5, 1 - tail]))
    own = doubt * float(e.STATED_SDS)
    return Span(
        low=float(np.exp(middle - np.hypot(middle - low, own))),
        middle=float(np.exp(middle)),
        high=float(np.exp(middle + np.hypot(high - middle, own))),
    )


def edges(
    person: Person, bodies: Bodies, plan: PeakPlan, baseline: Baseline, body_mass_kg: float
) -> tuple[Floats, Floats]:
    """For each particle the load (g/kg told and eaten a day) that just fills, and that just spills."""
    told = np.exp(person["intake"])
    state = first_morning(bodies, np.clip(np.exp(person["start"]), 0.1, 0.95))
    for out in [out for out in PLAN_DAYS if out > plan.first_load_day]:
        state = _lived(state, plan.day(out), baseline, Eaters(bodies, told), None)
    asked = np.arange(float(e.LEAST_ASKED), float(e.MOST_ASKED) + 1e-9, float(e.ASKED_STEP))
    doses = np.asarray(asked, dtype=np.float32)
    many, each = len(doses), state.shape[1]
    state, eaters = np.tile(state, many), Eaters(bodies.repeated(many), np.tile(told, many))
    grams = np.repeat(np.asarray(doses * body_mass_kg, dtype=np.float32), each)
    for out in [out for out in PLAN_DAYS if 0 < out <= plan.first_load_day]:
        # A rest day between load days stays as planned.
        loads = grams if out in plan.load_days else None
        state = _lived(state, plan.day(out), baseline, eaters, loads)
    short = np.tile(person["flat"], many) - levels_of(state, eaters.bodies)
    return (
        _crossing(doses, -short.reshape(many, each)),
        _crossing(doses, (state[Row.SHOWN] - 1).reshape(many, each)),
    )


class Eaters(NamedTuple):
    """Bodies, and what share of what they tell each of them eats."""

    bodies: Bodies
    told: Floats


def _lived(
    state: Floats, target: DayTarget | None, baseline: Baseline, eaters: Eaters,
    carb_g: Floats | None,
) -> Floats:  # fmt: skip
    """A day of the plan, with another load where `carb_g` names one."""
    planned = target.carb_g if target is not None else baseline.carb_g
    eaten = np.float32(planned) if carb_g is None else carb_g
    lifted = hours_lifted(intake_of(target, planned))
    return a_day(state, np.asarray(eaten * eaters.told), lifted, eaters.bodies, look_only=True)


def _crossing(doses: Floats, value: Floats) -> Floats:
    """For each column the dose at which its value first comes to 0; the ends where it is beyond."""
    over = value >= 0
    first = np.where(over.any(axis=0), over.argmax(axis=0), len(doses) - 1)
    columns = np.arange(value.shape[1])
    below = np.maximum(first - 1, 0)
    low, high = value[below, columns], value[first, columns]
    share = np.where(high > low, np.clip(-low / np.where(high > low, high - low, 1), 0, 1), 0.0)
    return np.asarray(doses[below] + share * (doses[first] - doses[below]))
