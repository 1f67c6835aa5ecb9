"""What sets the doses: the plan as it is, the plain rules, the rules with the forecast."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace

import numpy as np

from engine.athlete import Sex
from engine.cohort.week import LOAD_DAYS, TRAINING_DAYS, WeekLimits, load_left
from engine.forecast import DayAhead, Outlook, choose, forecast
from engine.look import Look
from engine.next_load import PARTICLES as NEXT_LOAD_PARTICLES
from engine.next_load import aversion_after, goes_against
from engine.physiology import Exercise, Intake
from engine.rescale import suggested_plan
from engine.tracker import (
    Band,
    Belief,
    Frame,
    Morning,
    after_day,
    carry_over,
    first_belief,
    learn,
    learn_look,
    weight_band,
)

#: Fullness that a plan leads one to expect, by days out.
EXPECTED_FULLNESS = {7: 5, 6: 4, 5: 4, 4: 3, 3: 3, 2: 5, 1: 7}


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """What the rules may look at on one morning."""

    days_out: int
    loading: bool
    fullness: float | None
    sharpness: float | None
    sharpness_before: float | None
    expected_fullness: float
    weight: float | None
    band: Band | None


@dataclass(frozen=True, slots=True)
class Proposal:
    """A direction in steps, and what it forbids whatever the forecast says."""

    rule: str
    steps: int
    may_rise: bool = True
    may_fall: bool = True


Rules = Callable[[Facts], Proposal]


def plain_rules(facts: Facts) -> Proposal:
    """The rule table as it stands without foresight, first match wins."""
    full, sharp, before = facts.fullness, facts.sharpness, facts.sharpness_before
    if full is None or sharp is None or facts.weight is None or facts.band is None:
        return Proposal("no-answer", 0)
    above = facts.weight > facts.band.high
    under = facts.weight < facts.band.low
    fallen = 0.0 if before is None else before - sharp
    behind = facts.expected_fullness - full
    if facts.loading:
        if (sharp <= 2 or fallen >= 2) and above:
            return Proposal("spilled-over", -2, may_rise=False)
        if fallen >= 1 and full >= 8 and above:
            return Proposal("softening", -1, may_rise=False)
        if behind >= 2 and sharp <= 2:
            return Proposal("flat-and-watery", 0, may_rise=False)
        if behind >= 2 and sharp >= 3 and not above:
            return Proposal("flat-in-load", 2 if behind >= 4 else 1)
        if behind <= 0 and sharp >= 4:
            return Proposal("full-and-sharp", 0)
    elif under:
        return Proposal("dropping-too-fast", 1)
    return Proposal("steady", 0)


@dataclass(slots=True, kw_only=True)
class Log:
    """What the bench keeps of a policy's week."""

    inside: list[bool] = field(default_factory=list)
    flags: int = 0
    outlook: Outlook | None = None


def intake_of(days_out: int, carb_g: float) -> Intake:
    training = Exercise.LIGHT if days_out in TRAINING_DAYS else Exercise.NONE
    return Intake(carb_g=carb_g, exercise=training)


def frame_of(*, female: bool, body_mass_kg: float, body_fat_percent: float) -> Frame:
    return Frame(
        sex=Sex.FEMALE if female else Sex.MALE,
        body_mass_kg=body_mass_kg,
        body_fat_percent=body_fat_percent,
    )


@dataclass(slots=True, kw_only=True)
class LastWeek:
    """The load of the week behind as it was eaten, g by days out, and how it looked."""

    load: dict[int, float] = field(default_factory=dict)
    look: Look = Look.FULL


class Foresight:
    """Follows one athlete through a week with the tracker and sets doses with the forecast."""

    def __init__(
        self,
        frame: Frame,
        rng: np.random.Generator,
        *,
        particles: int,
        belief: Belief | None = None,
        last: LastWeek | None = None,
    ) -> None:
        self.frame = frame
        self.rng = rng
        self.belief = belief or first_belief(frame, rng, particles=particles)
        self.last = last or LastWeek()
        self.log = Log()

    def twin(self, seed: Sequence[int]) -> Foresight:
        """One who believes the same, with its own randomness."""
        rng = np.random.default_rng(list(seed))
        last = replace(self.last, load=dict(self.last.load))
        return Foresight(self.frame, rng, particles=0, belief=self.belief, last=last)

    def hear(self, morning: Morning) -> Band:
        """Take a morning's answers; the band that was expected of its weight."""
        band = weight_band(self.belief, self.rng)
        if morning.weight_kg is not None:
            self.log.inside.append(band.low <= morning.weight_kg <= band.high)
        self.belief = learn(self.belief, morning, self.rng)
        return band

    def eat(self, days_out: int, told_g: float, planned_g: float) -> None:
        if days_out in LOAD_DAYS:
            self.last.load[days_out] = told_g
        self.belief = after_day(
            self.belief,
            intake_of(days_out, told_g),
            self.rng,
            planned=intake_of(days_out, planned_g),
        )

    def see(self, look: Look) -> None:
        self.belief = learn_look(self.belief, look, self.rng)
        self.last.look = look

    def next_week(self, *, weeks: float) -> None:
        self.belief = carry_over(self.belief, self.frame, self.rng, weeks=weeks)
        self.log = Log()

    def suggest(self, coached: dict[int, float], limits: WeekLimits) -> dict[int, float]:
        """The coach's plan, its load scaled by what earlier weeks have taught.

        As `engine.next_load` has it: the last week's look gives the direction, the model the size.
        """
        look, load = self.last.look, sum(self.last.load.values())
        found = suggested_plan(
            self.belief,
            _days_ahead(coached, coached, max(coached), limits),
            self.rng,
            load_total_g=limits.load_total_g,
            particles=NEXT_LOAD_PARTICLES,
            aversion=aversion_after(look),
        )
        doses = dict(zip(coached, found.carbs_g, strict=True))
        wished = sum(doses[out] for out in LOAD_DAYS)
        if goes_against(look, then_g=load, wish_g=wished):
            factor = load / sum(coached[out] for out in LOAD_DAYS)
            doses |= {
                out: float(np.clip(factor * coached[out], *limits.window(out, coached[out])))
                for out in LOAD_DAYS
            }
        return {
            out: 5.0 * float(doses[out] // 5) if out in LOAD_DAYS else doses[out] for out in doses
        }

    def choose(
        self,
        proposal: Proposal,
        days_out: int,
        *,
        coached: dict[int, float],
        plan: dict[int, float],
        given: dict[int, float],
        limits: WeekLimits,
    ) -> float:
        """The dose of the day most worth giving among those that rule and limits allow.

        `plan` is what stands if nothing is worth a change; limits are about the `coached` plan.
        """
        planned = plan[days_out]
        left = load_left(plan, given, days_out, limits.load_total_g)
        wanted = planned + proposal.steps * limits.step_g
        if days_out not in LOAD_DAYS or not self.belief.fits:
            return limits.fit(days_out, wanted, coached[days_out], left)
        low, high = limits.window(days_out, coached[days_out], left)
        doses = sorted({float(np.clip(planned + k * limits.step_g, low, high)) for k in STEPS})
        most = high if proposal.may_rise else planned
        doses = [dose for dose in doses if dose <= most] or [low]
        spent = sum(given[out] for out in LOAD_DAYS if out > days_out)
        outlooks = forecast(
            self.belief,
            _days_ahead(coached, plan, days_out, limits),
            doses,
            self.rng,
            load_left_g=limits.load_total_g - spent,
        )
        chosen = choose(outlooks, planned)
        self.log.outlook = chosen
        return limits.fit(days_out, chosen.carb_g, coached[days_out], left)


def _days_ahead(
    coached: dict[int, float], plan: dict[int, float], days_out: int, limits: WeekLimits
) -> list[DayAhead]:
    ahead = []
    for out in range(days_out, 0, -1):
        low, high = limits.window(out, coached[out])
        ahead.append(DayAhead(planned=intake_of(out, plan[out]), low_g=low, high_g=high))
    return ahead


#: Steps from the plan that are looked at; further out the look changes slowly.
STEPS = (-5, -3, -1.5, 0, 1.5, 3, 5)
