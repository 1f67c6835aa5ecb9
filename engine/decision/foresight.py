"""What the morning's case looks like to the model: the band for the scale, and the odds for the day.

The tracker follows the athlete through earlier peak weeks and this one; the forecast then says what
each allowed figure would lead to at stage time. Where there is too little to go by, or the model has
been surprised three mornings running, it says so and the rule table decides alone.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np

from engine.decision.band import WeightBand
from engine.decision.beliefs import (
    DAY,
    Course,
    Lived,
    after_looks,
    athlete_key,
    belief_on,
    intake_of,
    morning_of,
    weighed,
)
from engine.evidence import deciding as e
from engine.model.forecast import (
    REHEARSED,
    UNTRIED,
    DayAhead,
    DoseForecast,
    Doses,
    Stakes,
    choose,
    forecast,
)
from engine.model.particles import MODEL, Band, Belief
from engine.model.tracker import foreseen, generator, update_belief, weight_band
from engine.values.athlete import EventKind
from engine.values.case import Case, ForecastUse
from engine.values.checkin import CheckIn
from engine.values.limits import Window
from engine.values.plan import PLAN_DAYS, Phase

#: Candidates in the coach's steps from the planned figure; further out the look changes slowly.
STEPS = (-7, -5, -3, -2, -1, 0, 1, 2, 3, 5, 7)


@dataclass(frozen=True, slots=True, kw_only=True)
class Odds:
    """Chances at stage time if this much is eaten today and the rest is re-planned."""

    carb_g: float
    flat: float
    full: float
    spilled: float
    look: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Foresight:
    """What the model says of a morning. `trusted` is False where the table decides alone.

    `planned` are the odds of the plan's figure, `best` those of the best allowed one; both None
    outside the load. `proposed` are those of what was decided, where that is neither. `residual_kg`
    is today's weight against the band's middle.
    """

    trusted: bool
    why_not: str
    band: WeightBand | None
    residual_kg: float | None
    mornings: int
    past_weeks: int
    planned: Odds | None = None
    best: Odds | None = None
    proposed: Odds | None = None
    model: int = MODEL

    @property
    def odds(self) -> tuple[Odds, ...]:
        """Those of the figures that were followed to the day: as planned, best, proposed."""
        return tuple(one for one in (self.planned, self.best, self.proposed) if one is not None)


def look_ahead(case: Case, window: Window | None) -> Foresight:
    """The model's view of this case; `window` is what the limits leave for the day that is set."""
    return _looked_ahead(_as_the_model_sees_it(case), window)


def odds_of(case: Case, doses: Sequence[float]) -> tuple[Odds, ...]:
    """The odds of each of these figures for the day that is set, the rest of the week re-planned.

    None of them where the model has too little to go by, or the day is not one of the load.
    """
    return _odds_of(_as_the_model_sees_it(case), tuple(doses))


def with_proposed(view: Foresight, case: Case, carb_g: float) -> Foresight:
    """The view with the odds of what was decided, where no other figure's stand for them."""
    if not view.odds or any(abs(one.carb_g - carb_g) < 1 for one in view.odds):
        return view
    return replace(view, proposed=next(iter(odds_of(case, (carb_g,))), None))


def has_mornings_to_follow(case: Case) -> bool:
    """Whether there are mornings before this one, which is what takes the model its time."""
    return bool(case.trials) or any(_in_week(case, told) for told in case.history.checkins)


def _as_the_model_sees_it(case: Case) -> Case:
    """The case without all that the model does not go by: the clock, but for the day that it sets, what
    a coach has set and signed, and the answers that only rules and flags look at. Cases that differ in
    no more have one view, and what was worked out for one is at hand for the other.
    """
    told = case.checkin
    return replace(
        case.without_the_clock,
        frozen=False,
        overrides={},
        forecast=ForecastUse.PROPOSES,
        checkin=CheckIn(
            date=told.date, weight_kg=told.weight_kg, fullness=told.fullness,
            sharpness=told.sharpness, carb_eaten_g=told.carb_eaten_g,
            training_done=told.training_done,
        ),
    )  # fmt: skip


# For a few mornings at a time, as the beliefs; worked out anew they are the same to the bit.
@lru_cache(maxsize=48)
def _looked_ahead(case: Case, window: Window | None) -> Foresight:
    view, before, rng = _view(case)
    if not _in_load(case) or not view.trusted or window is None:
        return view
    return _with_odds(view, case, _after_answers(case, before, rng), window, rng)


@lru_cache(maxsize=48)
def _odds_of(case: Case, doses: tuple[float, ...]) -> tuple[Odds, ...]:
    if not _in_load(case):
        return ()
    view, before, rng = _view(case)
    if not view.trusted:
        return ()
    belief, wanted = _after_answers(case, before, rng), sorted(set(doses))
    by_dose = dict(zip(wanted, _outlooks(case, belief, wanted, rng), strict=True))
    return tuple(_odds(by_dose[one]) for one in doses)


def _in_load(case: Case) -> bool:
    """Whether the day that is set is one of the load, or between two of its days."""
    return 1 <= case.days_out <= case.plan.first_load_day


def _view(case: Case) -> tuple[Foresight, Belief, np.random.Generator]:
    """The view without odds, the belief before this morning's answers, and the chance that goes on
    from there.
    """
    before, mornings, rng = _until_today(case)
    band = weight_band(before, rng)
    # Of the answers only the weight says whether the model is to be believed.
    weighed_up = foreseen(before, morning_of(case.checkin))
    return _seen(case, weighed_up, band, mornings), before, rng


def _after_answers(case: Case, before: Belief, rng: np.random.Generator) -> Belief:
    """The belief after this morning's answers and what coaches saw of it."""
    course = Course(
        history=case.history, plan=case.plan, day=case.event.day, look=case.event.look,
        habit_g=case.baseline.carb_g,
    )  # fmt: skip
    told = update_belief(before, morning_of(case.checkin), rng)
    return after_looks(told, course, case.checkin.date, rng)


def _until_today(case: Case) -> tuple[Belief, int, np.random.Generator]:
    """The belief before this morning's answers, the mornings with it so far, this morning's chance."""
    today = case.checkin.date
    mornings = [c for c in case.history.checkins if _in_week(case, c) and weighed(c)]
    belief = belief_on(Lived.until(case, mornings[0].date if mornings else today))
    return belief, len(mornings) + 1, generator(f"{athlete_key(case)}/morning", today)


def _seen(case: Case, belief: Belief, middle: Band, mornings: int) -> Foresight:
    weight = case.checkin.weight_kg
    view = Foresight(
        trusted=True,
        why_not="",
        band=WeightBand(middle.low, middle.middle, middle.high),
        residual_kg=None if weight is None else weight - middle.middle,
        mornings=mornings,
        past_weeks=len(case.trials),
    )
    reason = _why_not(belief, view)
    return _with(view, trusted=False, why_not=reason) if reason else view


def _why_not(belief: Belief, view: Foresight) -> str:
    if view.mornings < e.MORNINGS_TO_TRUST.value and not view.past_weeks:
        return "too few mornings yet"
    if not belief.is_calibrated:
        return "three mornings running outside what it expected"
    return ""


def _with(view: Foresight, *, trusted: bool, why_not: str) -> Foresight:
    # The band of a model that is not believed is not used either.
    return Foresight(
        trusted=trusted,
        why_not=why_not,
        band=None,
        residual_kg=view.residual_kg,
        mornings=view.mornings,
        past_weeks=view.past_weeks,
    )


def _with_odds(
    view: Foresight, case: Case, belief: Belief, window: Window, rng: np.random.Generator
) -> Foresight:
    planned = case.planned
    assert planned is not None  # a window exists only for a planned day
    step = case.limits.step_g
    doses = sorted(
        {float(np.clip(planned.carb_g + k * step, window.low, window.high)) for k in STEPS}
    )
    outlooks = _outlooks(case, belief, doses, rng)
    stays = min(outlooks, key=lambda one: abs(one.carb_g - planned.carb_g))
    best = choose(outlooks, stays.carb_g)
    return Foresight(
        trusted=True,
        why_not="",
        band=view.band,
        residual_kg=view.residual_kg,
        mornings=view.mornings,
        past_weeks=view.past_weeks,
        planned=_odds(stays),
        best=_odds(best),
    )


def _outlooks(
    case: Case, belief: Belief, doses: list[float], rng: np.random.Generator
) -> list[DoseForecast]:
    ahead = [_day_ahead(case, out) for out in range(case.days_out, 0, -1)]
    eaten = sum(_set_or_planned(case, out) for out in case.plan.load_days if out > case.days_out)
    left_g = case.limits.load_total_g - eaten
    return list(forecast(belief, ahead, Doses(doses, left_g), rng, stakes_of(case)))


def stakes_of(case: Case) -> Stakes:
    """What a change is held to: with a week behind that was looked at, less is dared."""
    looked_at = any(week.look is not None for week in case.trials)
    return REHEARSED if looked_at or case.event.kind is EventKind.TRIAL else UNTRIED


def _odds(outlook: DoseForecast) -> Odds:
    return Odds(
        carb_g=outlook.carb_g,
        flat=outlook.flat,
        full=outlook.full,
        spilled=outlook.spilled,
        look=outlook.look,
    )


def _set_or_planned(case: Case, days_out: int) -> float:
    set_g = case.history.set_on(case.event.day - days_out * DAY)
    planned = case.plan.day(days_out)
    return set_g if set_g is not None else planned.carb_g if planned else 0.0


def _day_ahead(case: Case, days_out: int) -> DayAhead:
    target = case.plan.day(days_out)
    carb_g = target.carb_g if target else case.baseline.carb_g
    window = case.limits.window(carb_g, None)
    low, high = (window.low, window.high) if window else (carb_g, carb_g)
    return DayAhead(
        planned=intake_of(target, carb_g),
        low_g=low,
        high_g=high,
        in_load=case.plan.phase(days_out) is Phase.LOAD,
    )


def _in_week(case: Case, checkin: CheckIn) -> bool:
    days_out = case.event.days_out(checkin.date)
    return days_out in PLAN_DAYS and checkin.date < case.checkin.date
