"""The case: all that one decision may know, time included."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time, timedelta
from enum import StrEnum
from functools import cached_property
from zoneinfo import ZoneInfo

from engine.values.athlete import Athlete, Baseline, Event
from engine.values.body import Prior
from engine.values.checkin import CheckIn, History, Look, TargetLook
from engine.values.limits import Limits
from engine.values.plan import DayTarget, PeakPlan, Phase


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekSoFar:
    """Whose week it is and what is planned, the mornings so far, and this morning's answers."""

    athlete: Athlete
    baseline: Baseline
    event: Event
    plan: PeakPlan
    history: History
    checkin: CheckIn

    @property
    def days_out(self) -> int:
        """Days from this morning to the event; negative after it."""
        return self.event.days_out(self.checkin.date)

    @property
    def yesterday(self) -> DayTarget | None:
        """The target of the day that this morning's answers speak of."""
        return self.plan.day(self.days_out + 1)


#: An answer before this local time still sets the day that has begun.
DEFAULT_CUT_OFF = time(11, 0)


class ForecastUse(StrEnum):
    """What the model's forecast may do for an athlete; the coach says which."""

    PROPOSES = "proposes"  # its larger step waits for the coach, a small one goes out
    SHOWS = "shows"  # the rules decide as if it were not there; what it would have done is kept
    RULES_ONLY = "rules-only"  # it is not asked


@dataclass(frozen=True, slots=True, kw_only=True)
class PastWeek:
    """An earlier peak week of the same athlete, a trial or a show, and how the day looked.

    `target` is what it asked for, which `look` was held against.
    """

    day: date
    plan: PeakPlan
    history: History
    look: Look | None = None
    target: TargetLook | None = None

    @property
    def as_it_went(self) -> PeakPlan:
        """The week's plan with its load days as they were set in the end."""
        plan = self.plan
        for out in plan.load_days:
            set_g = self.history.set_on(self.day - timedelta(days=out))
            if set_g is not None and plan.day(out) is not None:
                plan = plan.with_carbs(out, set_g)
        return plan


@dataclass(frozen=True, kw_only=True)
class Case:
    """One morning's answers and what they are judged by.

    `now` is the aware instant of the answer; None means that it came in time. `zone` is where the
    athlete is, if not where the event is. `overrides` holds the coach's signed figures (g of
    carbohydrate) by days out. `trials` are earlier peak weeks, oldest first; `prior` is what weeks of
    the coach's other athletes have taught (None: as published); `forecast` says what the
    model may do beside the rules. Nothing else is looked at.
    """

    athlete: Athlete
    baseline: Baseline
    event: Event
    plan: PeakPlan
    limits: Limits
    history: History
    checkin: CheckIn
    now: datetime | None = None
    zone: str | None = None
    cut_off: time = DEFAULT_CUT_OFF
    always_tomorrow: bool = False
    frozen: bool = False
    overrides: Mapping[int, float] = field(default_factory=dict, hash=False)
    trials: tuple[PastWeek, ...] = ()
    prior: Prior | None = None
    forecast: ForecastUse = ForecastUse.RULES_ONLY

    def __post_init__(self) -> None:
        if self.now is not None and self.now.tzinfo is None:
            raise ValueError("the instant of the answer needs its zone")
        if self.zone is not None:
            ZoneInfo(self.zone)  # an unknown zone is refused here, by name
        moments = [self.event.day, self.checkin.date] + ([self.now] if self.now else [])
        if not all(2000 <= moment.year < 2100 for moment in moments):
            raise ValueError("a peak week lies in this century: check the dates")
        if not all(math.isfinite(grams) and grams >= 0 for grams in self.overrides.values()):
            raise ValueError("a signed figure is a number of grams, 0 or more")

    @cached_property
    def local_now(self) -> datetime | None:
        """The instant of the answer on the clocks where the athlete is."""
        return self.now.astimezone(ZoneInfo(self.zone or self.event.zone)) if self.now else None

    @cached_property
    def sets_date(self) -> date:
        """The eating day this answer sets: the day now starting, or tomorrow after the cut-off."""
        local = self.local_now
        late = local is not None and local.time() >= self.cut_off
        tomorrow = self.always_tomorrow or late
        return self.checkin.date + timedelta(days=1) if tomorrow else self.checkin.date

    @property
    def without_the_clock(self) -> Case:
        """The same case, told at no particular instant; the day that it sets is the same."""
        return replace(
            self, now=None, zone=None, always_tomorrow=self.sets_date > self.checkin.date
        )

    @cached_property
    def days_out(self) -> int:
        """Days from the day that is set to the event; negative after it."""
        return self.event.days_out(self.sets_date)

    @cached_property
    def planned(self) -> DayTarget | None:
        """The plan's target for the day that is set."""
        return self.plan.day(self.days_out)

    @cached_property
    def week_so_far(self) -> WeekSoFar:
        """The week as it stands this morning, whatever the limits and the coach's settings."""
        return WeekSoFar(
            athlete=self.athlete, baseline=self.baseline, event=self.event, plan=self.plan,
            history=self.history, checkin=self.checkin,
        )  # fmt: skip

    @property
    def override_g(self) -> float | None:
        """The coach's signed figure for the day that is set."""
        return self.overrides.get(self.days_out)

    @cached_property
    def load_room_g(self) -> float | None:
        """What the load total leaves for the day that is set, None outside the load.

        The other load days count as set so far, else as the coach signed, else as planned.
        """
        load_days = self.plan.load_days
        if self.days_out not in load_days:
            return None
        others = sum(self._carbs_of(out) for out in load_days if out != self.days_out)
        return round(self.limits.load_total_g - others, 6)  # no dust of binary fractions

    def _carbs_of(self, days_out: int) -> float:
        set_g = self.history.set_on(self.event.day - timedelta(days=days_out))
        if set_g is not None:
            return set_g
        if days_out in self.overrides:
            return self.overrides[days_out]
        planned = self.plan.day(days_out)
        return planned.carb_g if planned else 0.0


#: A plan that says nothing: the load is where it is for everybody.
_ANY = PeakPlan(())


def answers_needed(days_out: int, plan: PeakPlan = _ANY) -> tuple[str, ...]:
    """The answers that are asked for on a day that many days out, as `CheckIn` fields."""
    always = ("weight_kg", "fullness", "water_l")
    refed = plan.phase(days_out) is Phase.REFEED or plan.after_refeed(days_out)
    return (*always, "sharpness") if plan.loading(days_out) or refed else always


def answers_decisive(days_out: int, plan: PeakPlan = _ANY) -> tuple[str, ...]:
    """Those of them without which nothing is decided: the look. The rest may be skipped."""
    return ("fullness", "sharpness") if plan.loading(days_out) else ("fullness",)
