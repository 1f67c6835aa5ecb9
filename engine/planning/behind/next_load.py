"""The load of the next peak week, as the weeks behind suggest it: one figure for the coach to judge.

It is made from the coach's word on how earlier days looked, whether or not mornings are followed
with the forecast. The word gives the direction, the model the size: after flat never less than that
load, after spilled over never more, after full the same, or part of the way back to the plan that
mornings had moved. The days before the load stay as they are; the load is scaled as a whole. Each day
stays inside the change allowed against the coach's own plan, the coach's floor and ceiling, and the
guard rails; the load total of a week gone by binds no other week. The chance is fixed by the athlete
and the last week behind, so that asking again gives the same.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from engine.decision.beliefs import frame_of, intake_of, through
from engine.evidence import deciding as e
from engine.evidence.body import tracking as known
from engine.model.forecast import DayAhead, subsample
from engine.model.particles import Belief, Covariates
from engine.model.tracker import first_belief, generator, next_prior
from engine.planning.behind.hindsight import Odds
from engine.planning.drafting.bridge import Against, Load, Suggestion, suggested_plan
from engine.values.athlete import Athlete, Baseline
from engine.values.case import PastWeek
from engine.values.checkin import Look, TargetLook
from engine.values.limits import GUARD_RAIL, GuardRails, Limits, round_carbs
from engine.values.plan import PLAN_DAYS, PeakPlan, Phase

PARTICLES = 1000  # a few tenths of a second, and twice as steady as a morning's forecast
#: Weeks to the next load where none is set yet: what is forgotten in a few more hardly counts.
WEEKS_BETWEEN = 4.0


class NothingLearnt(ValueError):  # noqa: N818 - it names what is the case
    """There is no week behind whose look is known, or the plan has no whole load to scale."""


class ModelMisfit(ValueError):  # noqa: N818 - likewise
    """The last week's weights lay outside what the model expected: it is not to be believed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NextLoad:
    """A load to plan in place of another; loads are the mean of the load days, g/kg a day.

    `plan` is the plan it was made from with its load days scaled; the same where nothing else is
    worth a change. `look` is the newest word, `then_g_per_kg` the load that it was said of. With
    `disagrees` the model would have gone the other way, so that load is kept. `bound` is the limit
    that held a day back, if one did.
    """

    plan: PeakPlan
    look: Look
    then_g_per_kg: float
    before_g_per_kg: float
    g_per_kg: float
    before: Odds
    after: Odds
    disagrees: bool
    bound: str | None

    @property
    def changes(self) -> bool:
        """Whether it is another load than that it was made from."""
        return self.g_per_kg != self.before_g_per_kg


class Ahead(NamedTuple):
    """What the event ahead allows and asks for: the coach's limits, and the look."""

    limits: Limits | None = None
    target: TargetLook | None = None


def next_load(
    athlete: Athlete, baseline: Baseline, plan: PeakPlan, weeks: Sequence[PastWeek], ahead: Ahead
) -> NextLoad:
    """The load suggested in place of the plan's; `weeks` are those behind, oldest first.

    Of the limits the change a day, floor and ceiling bound it; without any, the change that is
    suggested and the guard rails. Raises NothingLearnt or ModelMisfit.
    """
    if not any(week.look is not None for week in weeks):
        raise NothingLearnt("no week behind has a word on its look")
    if not _whole(plan):
        raise NothingLearnt("the plan has no figure for one of its load days")
    key = f"{athlete.sex}/{athlete.birth_year}/{athlete.height_cm:g}/{athlete.body_mass_kg:g}/next"
    belief = _learnt(frame_of(athlete, baseline, ahead.target), baseline, weeks, key)
    room, kg = _Room.of(athlete, plan, ahead.limits), athlete.body_mass_kg

    said = next(week for week in reversed(weeks) if week.look is not None)
    look = said.look or Look.FULL

    def scale(within: _Room, own: float = 1.0) -> Suggestion:
        days = [_day_ahead(plan, baseline, out, within) for out in PLAN_DAYS if out > 0]
        rng = generator(f"{key}/load", weeks[-1].day)
        return suggested_plan(
            subsample(belief, PARTICLES, rng), days, rng, within=Load(plan.first_load_day),
            against=Against(float(known.LOSS_AVERSION_NEXT_LOAD), own),
        )  # fmt: skip

    then, own = said.as_it_went, 1.0
    if look is Look.FULL and then.load_g > 0 and plan.load_g == then.load_g:
        # Full on what mornings had made of a plan: back towards that plan, where that is better; and
        # what they had cut stays cut only where that is worth it against the coach's own plan.
        as_meant = said.plan.load_g / then.load_g
        room, own = room.between(plan, 1.0, as_meant), max(as_meant, 1.0)
    free = chosen = scale(room, own)
    held_to, disagrees = _held_to(weeks, said, plan, free, _scaled(plan, free, room).load_g)
    if held_to is not None:
        room = room.at(plan, held_to)
        chosen = scale(room)
    wish = _scaled(plan, chosen, room)
    bound_by_limits = held_to is None and look is not Look.FULL
    return NextLoad(
        plan=wish,
        look=look,
        then_g_per_kg=load_g_per_kg(then, kg),
        before_g_per_kg=load_g_per_kg(plan, kg),
        g_per_kg=load_g_per_kg(wish, kg),
        before=Odds(*free.as_planned),
        after=Odds(chosen.flat, chosen.full, chosen.spilled),
        disagrees=disagrees,
        bound=_bound(plan, chosen.factor, room) if bound_by_limits else None,
    )


def _held_to(
    weeks: Sequence[PastWeek], said: PastWeek, plan: PeakPlan, free: Suggestion, wish_g: float
) -> tuple[float | None, bool]:
    """The factor of the plan's load that what was seen asks for in place of the model's wish.

    None where the wish stands. And whether model and look go different ways.
    """
    look, then = said.look or Look.FULL, said.as_it_went
    back = _taken_back(said, plan)
    if back is not None and (back - free.factor) * (back - 1) > 0:
        return back, False
    if goes_against(look, then_g=then.load_g, wish_g=wish_g, planned_g=said.plan.load_g):
        held = then.load_g / max(plan.load_g, 1.0) if _whole(then) else None
        return held, look is not Look.FULL
    least_g = _least_after_a_cut(weeks)
    if least_g is not None and wish_g < least_g:
        return least_g / max(plan.load_g, 1.0), False
    return None, False


def _taken_back(said: PastWeek, plan: PeakPlan) -> float | None:
    """The factor that the load is to reach at least, where the look tells against the mornings.

    Flat on what they had cut, spilled over on what they had raised: then a share of that is taken back
    whatever the model makes of it. So it is after full on what they had raised, which would as likely
    have been full as planned, and spills sooner. None where they had not, or for another plan.
    """
    then = said.as_it_went
    if then.load_g <= 0 or plan.load_g != then.load_g:
        return None
    moved = said.plan.load_g / then.load_g - 1
    wrong = moved > 0 if said.look is Look.FLAT else moved < 0
    return 1 + float(known.TAKEN_BACK) * moved if wrong else None


def _least_after_a_cut(weeks: Sequence[PastWeek]) -> float | None:
    """The least load (g) after two that spilled over, the second cut already: no larger cut again.

    Where the first cut was too small, the way that is left is seldom longer than the way gone.
    """
    said = [week for week in weeks if week.look is not None][-2:]
    if len(said) < 2 or any(week.look is not Look.SPILLED for week in said):
        return None
    before, last = (week.as_it_went.load_g for week in said)
    return 2 * last - before if last < before else None


def goes_against(look: Look, *, then_g: float, wish_g: float, planned_g: float) -> bool:
    """Whether a load in place of the one that looked so goes against what the look says.

    `planned_g` is what had been planned in place of `then_g`: after full the way back there is open.
    """
    least, most = sorted((then_g, planned_g))
    return {
        Look.FLAT: wish_g < then_g,
        Look.SPILLED: wish_g > then_g,
        Look.FULL: not least <= wish_g <= most,
    }[look]


def _whole(plan: PeakPlan) -> bool:
    first = plan.first_load_day
    return first > 0 and all(plan.day(out) is not None for out in PLAN_DAYS if 0 < out <= first)


def load_g_per_kg(plan: PeakPlan, body_mass_kg: float) -> float:
    """The mean load day, g of carbohydrate per kg of body mass."""
    return plan.load_g / max(len(plan.load_days), 1) / body_mass_kg


def _learnt(frame: Covariates, baseline: Baseline, weeks: Sequence[PastWeek], key: str) -> Belief:
    belief = first_belief(frame, generator(f"{key}/first", weeks[-1].day))
    for number, week in enumerate(weeks):
        belief = through(belief, week, key, habit_g=baseline.carb_g)
        last = number == len(weeks) - 1
        if last and not belief.is_calibrated:
            raise ModelMisfit("three mornings running outside what was expected")
        apart = WEEKS_BETWEEN if last else max((weeks[number + 1].day - week.day).days / 7, 1)
        rng = generator(f"{key}/between", week.day)
        belief = next_prior(belief, frame, rng, weeks=apart)
    return belief


@dataclass(frozen=True, slots=True)
class _Room:
    """What each load day may have by days out, and which bound makes each end."""

    low: Mapping[int, float]
    high: Mapping[int, float]
    low_bound: Mapping[int, str]
    high_bound: Mapping[int, str]

    @classmethod
    def of(cls, athlete: Athlete, plan: PeakPlan, limits: Limits | None) -> _Room:
        rails = GuardRails.of(athlete)
        day, load = rails.rail("carb_ceiling_g"), rails.rail("load_total_g")
        change = e.SUGGESTED_CHANGE_G_PER_KG.value * athlete.body_mass_kg
        floor, ceiling = (day.low, GUARD_RAIL), (day.high, GUARD_RAIL)
        if limits is not None:
            change = limits.change_per_day_g
            floor = (limits.carb_floor_g, "carb_floor_g")
            ceiling = (limits.carb_ceiling_g, "carb_ceiling_g")
        # Each day has its share of the total, so that it is never the last day that pays for it.
        most = load.high / max(plan.load_g, 1.0)
        lows, highs = {}, {}
        for out in plan.load_days:
            carb_g = _carbs(plan, out)
            lows[out] = max(floor, (carb_g - change, "change_per_day_g"))
            high = min(ceiling, (carb_g + change, "change_per_day_g"), (carb_g * most, GUARD_RAIL))
            highs[out] = max(high, lows[out], key=lambda bound: bound[0])
        return cls(
            low={out: grams for out, (grams, _) in lows.items()},
            high={out: grams for out, (grams, _) in highs.items()},
            low_bound={out: bound for out, (_, bound) in lows.items()},
            high_bound={out: bound for out, (_, bound) in highs.items()},
        )

    def at(self, plan: PeakPlan, factor: float) -> _Room:
        """Room for no other load than the plan's times `factor`, as far as it is inside this one."""
        return self.between(plan, factor, factor)

    def between(self, plan: PeakPlan, one: float, other: float) -> _Room:
        """Room for the plan's load times factors between these two, as far as inside this one."""
        low, high = (
            {
                out: min(max(factor * _carbs(plan, out), self.low[out]), self.high[out])
                for out in plan.load_days
            }
            for factor in sorted((one, other))
        )
        return replace(self, low=low, high=high)


def _day_ahead(plan: PeakPlan, baseline: Baseline, out: int, room: _Room) -> DayAhead:
    target = plan.day(out)
    carb_g = target.carb_g if target is not None else baseline.carb_g
    in_load = plan.phase(out) is Phase.LOAD
    low, high = (room.low[out], room.high[out]) if in_load else (carb_g, carb_g)
    return DayAhead(planned=intake_of(target, carb_g), low_g=low, high_g=high, in_load=in_load)


def _scaled(plan: PeakPlan, found: Suggestion, room: _Room) -> PeakPlan:
    """The plan with the load as suggested, in figures that anyone weighs out."""
    load_days = plan.load_days
    for out, carb_g in zip((out for out in PLAN_DAYS if out > 0), found.carbs_g, strict=True):
        if out in load_days and abs(carb_g - _carbs(plan, out)) > 1e-6:
            plan = plan.with_carbs(out, _weighed_out(carb_g, room.low[out], room.high[out]))
    return plan


def _weighed_out(carb_g: float, low: float, high: float) -> float:
    """Rounded, inside both ends; an end itself where no round figure lies between them."""
    grain = e.ROUND_TO_G.value
    grams = round_carbs(carb_g)
    if grams > high:
        grams = math.floor(high / grain + 1e-9) * grain
    if grams < low:
        grams = math.ceil(low / grain - 1e-9) * grain
    return grams if low <= grams <= high else min(max(carb_g, low), high)


def _bound(plan: PeakPlan, factor: float, room: _Room) -> str | None:
    """The bound that cut the heaviest of the days that were held back."""
    for out in sorted(plan.load_days, key=lambda out: -_carbs(plan, out)):
        wanted = factor * _carbs(plan, out)
        if wanted > room.high[out] + 1e-6:
            return room.high_bound[out]
        if wanted < room.low[out] - 1e-6:
            return room.low_bound[out]
    return None


def _carbs(plan: PeakPlan, out: int) -> float:
    day = plan.day(out)
    return day.carb_g if day is not None else 0.0
