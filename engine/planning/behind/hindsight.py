"""A week that is over held against what was foreseen, and what each rule's change was worth.

What was foreseen is read from the decisions as they were stored. What a change was worth is asked of
the model that all the weeks have taught since: the week as it was eaten, and the same week without
that one change, under the same bodies. It is an estimate, and told as one.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

import numpy as np

from engine.decision.beliefs import intake_of
from engine.decision.decide import Decision
from engine.evidence import deciding
from engine.evidence.body import learning as e
from engine.model.forecast import look_of, subsample
from engine.model.particles import Belief
from engine.model.structures import Floats, a_day, first_morning, hours_lifted
from engine.model.tracker import doubted, generator, outcome_probabilities
from engine.planning.behind.learning import led_through
from engine.values.athlete import Athlete, Baseline
from engine.values.case import PastWeek
from engine.values.checkin import Look
from engine.values.plan import PLAN_DAYS

PARTICLES = 500
DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Odds:
    """Chances of each look on the day, 0 to 1."""

    flat: float
    full: float
    spilled: float

    def of(self, look: Look) -> float:
        return {Look.FLAT: self.flat, Look.FULL: self.full, Look.SPILLED: self.spilled}[look]


# Foreseen


@dataclass(frozen=True, slots=True, kw_only=True)
class Foreseen:
    """`bands_held` of `bands` weights lay in their band; `fullness_off` is told less expected, on
    average, over `fullness_told` mornings. `odds` are those of the last morning that had any, for the
    figure nearest to what was eaten; `days_out` is that morning's.
    """

    bands: int
    bands_held: int
    fullness_told: int
    fullness_off: float
    odds: Odds | None = None
    days_out: int | None = None


def foreseen(decisions: Sequence[Decision], week: PastWeek) -> Foreseen:
    """From the decisions of the week, oldest first; what they lack is left out."""
    bands = held = told = 0
    off, odds, out = 0.0, None, None
    for decision in decisions:
        checkin = next((c for c in week.history.checkins if c.date == decision.date), None)
        band, expected = decision.band, decision.expected_fullness
        if checkin is not None and checkin.weight_kg is not None and band:
            bands += 1
            held += band.low_kg <= checkin.weight_kg <= band.high_kg
        if checkin is not None and checkin.fullness is not None and expected is not None:
            told += 1
            off += checkin.fullness - expected
        view = decision.foresight
        sides = view.odds if view is not None else ()
        if sides:
            out = decision.days_out
            figure = week.history.set_on(week.day - out * DAY) or decision.carb_g or 0.0
            near = min(sides, key=lambda side: abs(side.carb_g - figure))
            odds = Odds(near.flat, near.full, near.spilled)
    return Foreseen(
        bands=bands, bands_held=held, fullness_told=told,
        fullness_off=off / told if told else 0.0, odds=odds, days_out=out,
    )  # fmt: skip


# Rules


@dataclass(frozen=True, slots=True)
class Moved:
    """A day that a rule moved: its figure as planned and as set, g."""

    days_out: int
    rule: str
    planned_g: float
    set_g: float


@dataclass(frozen=True, slots=True)
class Helped:
    """The odds of the day with the change and without it.

    `better` and `worse` are the shares of bodies in which the look gained or lost by it.
    """

    moved: Moved
    given: Odds
    without: Odds
    better: float
    worse: float

    @property
    def verdict(self) -> str:
        """helped | hurt | open: open where most bodies hardly differ, or they disagree."""
        if self.better >= float(e.SURE) and self.better > self.worse:
            return "helped"
        return "hurt" if self.worse >= float(e.SURE) else "open"


def rules_weighed(
    athlete: Athlete, baseline: Baseline, weeks: Sequence[PastWeek], moved: Sequence[Moved]
) -> tuple[Helped, ...]:
    """What each change in the last of the weeks was worth; the earlier ones, oldest first, teach."""
    if not weeks or not moved:
        return ()
    week = weeks[-1]
    *_, belief = led_through(athlete, baseline, weeks)
    belief = subsample(belief, PARTICLES, generator(f"weighed/{athlete.body_mass_kg:g}", week.day))
    given, look_given = _ended(belief, week, baseline, None)
    found = []
    for one in moved:
        without, look_without = _ended(belief, week, baseline, one)
        gain = look_given - look_without
        least = float(e.LOOK_SEEN)
        found.append(
            Helped(one, given, without, float(np.mean(gain > least)), float(np.mean(gain < -least)))
        )
    return tuple(found)


def _ended(
    belief: Belief, week: PastWeek, baseline: Baseline, left_out: Moved | None
) -> tuple[Odds, Floats]:
    """The day at the end of the week as it was eaten, but for one change."""
    person, who = belief.person, belief.body
    told = np.exp(person["intake"])
    state = first_morning(who, np.clip(np.exp(person["start"]), 0.1, 0.95))
    for out in [out for out in PLAN_DAYS if out > 0]:
        target = week.plan.day(out)
        carb_g = _eaten(week, baseline, out)
        if left_out is not None and left_out.days_out == out:
            carb_g = max(carb_g - (left_out.set_g - left_out.planned_g), 0.0)
        lifted = hours_lifted(intake_of(target, carb_g))
        state = a_day(state, np.asarray(np.float32(carb_g) * told), lifted, who, look_only=True)
    flat, full, spilled = doubted(outcome_probabilities(state, person, who).mean(axis=1))
    return Odds(flat, full, spilled), look_of(state, person, who)


def _eaten(week: PastWeek, baseline: Baseline, days_out: int) -> float:
    """As told the morning after, else as set, else as planned."""
    day = week.day - days_out * DAY
    told = week.history.on(day + DAY)
    eaten = told.carb_eaten_g if told is not None else None
    if eaten is not None and 0 <= eaten <= float(deciding.CARB_EATEN_MOST_G):
        return eaten
    set_g = week.history.set_on(day)
    if set_g is not None:
        return set_g
    target = week.plan.day(days_out)
    return target.carb_g if target is not None else baseline.carb_g
