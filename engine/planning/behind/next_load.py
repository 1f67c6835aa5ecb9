"""The load of the next peak week, as the weeks behind suggest it: one figure for the coach to judge.

It is made from the coach's word on how earlier days looked, whether or not mornings are followed
with the forecast. The word gives the direction, the model the size: after flat never less than that
load, after spilled over never more, after full the same, or part of the way back to the plan that
mornings had moved. The days before the load stay as they are; the load is scaled as a whole. Each day
stays inside the change allowed against the coach's own plan, the coach's floor and ceiling, and the
guard rails; the load total of a week gone by binds no other week. The chance is fixed by the athlete
and the last week behind, so that asking again gives the same.

The same again teaches next to nothing more. So after full a further trial is put beside that load,
where the model holds its look for worth it (`most_telling`), and eaten as planned; what is
planned after it lies about the load that came in full, on the side that the second look leaves open.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import NamedTuple

import numpy as np

from engine.decision.beliefs import frame_of, through
from engine.decision.sizing import tried_beside
from engine.evidence.body import tracking as known
from engine.model.forecast import DayAhead, subsample
from engine.model.particles import Belief, Covariates, side_by_side
from engine.model.tracker import first_belief, generator, next_prior
from engine.planning.behind.hindsight import Odds
from engine.planning.behind.load_room import Room, bound_of, day_ahead, planned_g, scaled
from engine.planning.drafting.bridge import Against, Load, Suggestion, most_telling, suggested_plan
from engine.values.athlete import Athlete, Baseline, EventKind
from engine.values.case import PastWeek
from engine.values.checkin import Look, TargetLook
from engine.values.limits import Limits
from engine.values.plan import PLAN_DAYS, PeakPlan

PARTICLES = 1000  # a few tenths of a second, and twice as steady as a morning's forecast
#: Weeks to the next load where none is set yet: what is forgotten in a few more hardly counts.
WEEKS_BETWEEN = 4.0


class Ahead(NamedTuple):
    """What the event ahead allows and asks for: the coach's limits, and the look.

    And what it is: the load of a trial may be there to teach.
    """

    limits: Limits | None = None
    target: TargetLook | None = None
    kind: EventKind = EventKind.SHOW


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
    that held a day back, if one did. `asks` where it is a trial's, put off what came in full to see
    how far that reaches; `between` where two such looks tell where it lies.
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
    asks: bool = False
    between: bool = False

    @property
    def changes(self) -> bool:
        """Whether it is another load than that it was made from."""
        return self.g_per_kg != self.before_g_per_kg


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
    frame = frame_of(athlete, baseline, ahead.target)
    between = tried_beside(weeks) is not None
    heard = _learnt(frame, baseline, weeks, key)
    by_looks = (
        _learnt(frame, baseline, weeks, f"{key}/looks", mornings_tell=False) if between else heard
    )
    one = _Asked(heard, by_looks, athlete, baseline, ahead.limits, f"{key}/load", weeks[-1].day)
    found = _between(one, plan, weeks) or _after_the_look(one, plan, weeks)
    if ahead.kind is EventKind.TRIAL and found.look is Look.FULL:
        return _to_ask(one, found)
    return found


@dataclass(frozen=True, slots=True)
class _Asked:
    """The model that is asked for a load, and all that an answer hangs on but the plan."""

    belief: Belief
    by_looks: Belief  # that has heard no morning, where two looks lie beside each other
    athlete: Athlete
    baseline: Baseline
    limits: Limits | None
    key: str
    day: date

    def room(self, plan: PeakPlan) -> Room:
        return Room.of(self.athlete, plan, self.limits)

    def ahead(self, plan: PeakPlan, within: Room) -> list[DayAhead]:
        return [day_ahead(plan, self.baseline, out, within) for out in PLAN_DAYS if out > 0]

    def scaled(
        self, plan: PeakPlan, within: Room, against: Against, by_looks: float = 0.0
    ) -> Suggestion:
        """`by_looks`: the share of particles that have heard no morning."""
        rng = generator(self.key, self.day)
        return suggested_plan(
            self.few(rng, by_looks), self.ahead(plan, within), rng,
            within=Load(plan.first_load_day), against=against,
        )  # fmt: skip

    def few(self, rng: np.random.Generator, by_looks: float = 0.0) -> Belief:
        deaf = round(PARTICLES * by_looks)
        heard = subsample(self.belief, PARTICLES - deaf, rng)
        return side_by_side(heard, subsample(self.by_looks, deaf, rng)) if deaf else heard

    def g_per_kg(self, plan: PeakPlan) -> float:
        return load_g_per_kg(plan, self.athlete.body_mass_kg)


def _after_the_look(one: _Asked, plan: PeakPlan, weeks: Sequence[PastWeek]) -> NextLoad:
    """As the newest word on a look asks for, in the size that the model gives it."""
    aversion, room = float(known.LOSS_AVERSION_NEXT_LOAD), one.room(plan)
    said = next(week for week in reversed(weeks) if week.look is not None)
    look = said.look or Look.FULL
    then, own = said.as_it_went, 1.0
    if look is Look.FULL and then.load_g > 0 and plan.load_g == then.load_g:
        # Full on what mornings had made of a plan: back towards that plan, where that is better; and
        # what they had cut stays cut only where that is worth it against the coach's own plan.
        as_meant = said.plan.load_g / then.load_g
        room, own = room.between(plan, 1.0, as_meant), max(as_meant, 1.0)
    free = chosen = one.scaled(plan, room, Against(aversion, own))
    held_to, disagrees = _held_to(weeks, said, plan, free, scaled(plan, free.carbs_g, room).load_g)
    if held_to is not None:
        room = room.at(plan, held_to)
        chosen = one.scaled(plan, room, Against(aversion))
    wish = scaled(plan, chosen.carbs_g, room)
    bound_by_limits = held_to is None and look is not Look.FULL
    return NextLoad(
        plan=wish,
        look=look,
        then_g_per_kg=one.g_per_kg(then),
        before_g_per_kg=one.g_per_kg(plan),
        g_per_kg=one.g_per_kg(wish),
        before=Odds(*free.as_planned),
        after=Odds(chosen.flat, chosen.full, chosen.spilled),
        disagrees=disagrees,
        bound=bound_of(plan, chosen.factor, room) if bound_by_limits else None,
    )


def _between(one: _Asked, plan: PeakPlan, weeks: Sequence[PastWeek]) -> NextLoad | None:
    """About the load that came in full, where one was tried beside it; else None."""
    full = tried_beside(weeks)
    if full is None or plan.load_days != full.plan.load_days or plan.load_g <= 0:
        return None
    last = next(week for week in reversed(weeks) if week.look is not None)
    there, far = full.as_it_went.load_g / plan.load_g, float(known.BETWEEN_LOADS)
    low = there if last.look is Look.FLAT else (1 - far) * there
    high = there if last.look is Look.SPILLED else (1 + far) * there
    room = one.room(plan).between(plan, low, high)
    # What may be lost is lost against what the coach had planned, whatever mornings made of it.
    meant = tuple(planned_g(full.plan, out) for out in range(plan.first_load_day, 0, -1))
    against = Against(
        float(known.LOSS_AVERSION_NEXT_LOAD), there, float(known.LESS_THAN_FULL), meant
    )
    chosen = one.scaled(plan, room, against, float(known.BY_LOOKS_ALONE))
    wish = scaled(plan, chosen.carbs_g, room)
    return NextLoad(
        plan=wish,
        look=last.look or Look.FULL,
        then_g_per_kg=one.g_per_kg(last.as_it_went),
        before_g_per_kg=one.g_per_kg(plan),
        g_per_kg=one.g_per_kg(wish),
        before=Odds(*chosen.as_planned),
        after=Odds(chosen.flat, chosen.full, chosen.spilled),
        disagrees=False,
        bound=None,
        between=True,
    )


def _to_ask(one: _Asked, found: NextLoad) -> NextLoad:
    """A trial's load beside the one that would be planned, where its look is worth more."""
    room = one.room(found.plan)
    rng = generator(f"{one.key}/ask", one.day)
    asked = most_telling(
        one.few(rng), one.ahead(found.plan, room), rng,
        within=Load(found.plan.first_load_day), aversion=float(known.LOSS_AVERSION_NEXT_LOAD),
    )  # fmt: skip
    if asked is None:
        return found
    plan = scaled(found.plan, asked.carbs_g, room)
    after = Odds(asked.flat, asked.full, asked.spilled)
    return replace(
        found, plan=plan, g_per_kg=one.g_per_kg(plan), after=after, asks=True, between=False
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


def _learnt(
    frame: Covariates,
    baseline: Baseline,
    weeks: Sequence[PastWeek],
    key: str,
    *,
    mornings_tell: bool = True,
) -> Belief:
    belief = first_belief(frame, generator(f"{key}/first", weeks[-1].day))
    for number, week in enumerate(weeks):
        belief = through(belief, week, key, habit_g=baseline.carb_g, mornings_tell=mornings_tell)
        last = number == len(weeks) - 1
        if last and not belief.is_calibrated:
            raise ModelMisfit("three mornings running outside what was expected")
        apart = WEEKS_BETWEEN if last else max((weeks[number + 1].day - week.day).days / 7, 1)
        rng = generator(f"{key}/between", week.day)
        belief = next_prior(belief, frame, rng, weeks=apart)
    return belief
