"""A virtual coach who looks on load mornings: store and blur as a practised eye would call them.

Assumed, all of it, and none of it the tracker's own wording: the coach compares with how full people
of that world are on their plans by then, each coach a little high or low for good.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

import numpy as np

from engine.bench.setting import (
    AFTER_FOOD,
    DAYS_OUT,
    SCALE_NOISE,
    SESSIONS,
    Client,
    Trouble,
    eaten_g,
    planned_g,
)
from engine.bench.worlds.world import (
    BLUR,
    CHANCES,
    SHARE,
    Condition,
    Floats,
    Lived,
    People,
    World,
    taken,
)
from engine.values.checkin import CoachLook, Observed
from engine.values.plan import LOAD_DAYS

OFF_FOR_GOOD, SCATTER = 0.05, 0.06  # of the store's ceiling, SD
BLUR_SCATTER = 0.22  # of a blur that is just spilled over, SD
FLAT_BY, FULL_BY, FULL_FROM = 0.11, 0.11, 0.90
SOFT_FROM, SPILLED_FROM = 0.5, 1.0


class Eye:
    """What a coach taps of each athlete of a week, by days out."""

    def __init__(self, week: Week, clients: Sequence[Client], seed: int) -> None:
        rng = np.random.default_rng([seed, 47])
        self.clients = clients
        self.scatter = {out: rng.normal(size=(2, len(clients))) for out in LOAD_DAYS}
        self.usual = _on_plan(week, clients)

    def sees(self, now: Condition, i: int, day: date, out: int) -> tuple[Observed, ...]:
        """The coach's word on athlete `i` on that morning of a week whose event is on `day`."""
        if out not in LOAD_DAYS:
            return ()
        share_off, blur_off = self.scatter[out][:, i]
        off = OFF_FOR_GOOD * self.clients[i].rated_high + SCATTER * share_off
        share, blur = now[SHARE][i] + off, now[BLUR][i] + BLUR_SCATTER * blur_off
        look = _called(float(share), float(blur), self.usual[out])
        return (Observed(date=day - timedelta(days=out), look=look),)


def _called(share: float, blur: float, usual: float) -> CoachLook:
    if blur >= SPILLED_FROM:
        return CoachLook.SPILLED
    if blur >= SOFT_FROM:
        return CoachLook.SOFTENING
    if share < usual - FLAT_BY:
        return CoachLook.FLAT
    return CoachLook.FULL if share >= min(usual + FULL_BY, FULL_FROM) else CoachLook.ON_COURSE


def _on_plan(week: Week, clients: Sequence[Client]) -> dict[int, float]:
    """How full people are on average on their plans, by days out."""
    now, found = week.first, {}
    for out in DAYS_OUT:
        found[out] = float(now[SHARE].mean())
        now = week.after(now, out, np.array([planned_g(one.plan, out) for one in clients]))
    return found


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """A morning's answers; NaN is not answered."""

    weight_kg: Floats
    fullness: Floats
    sharpness: Floats


class Week:
    """A week of all athletes of a world: what happens to them if they are told to eat so much."""

    def __init__(self, world: World, people: People, seed: int, short: Floats) -> None:
        self.world, self.people, self.short, self.seed = world, people, short, seed
        rng = np.random.default_rng([seed, 43])
        number = len(people)
        self.first = world.start(people, rng.normal(size=(CHANCES, number)))
        self.days = {out: rng.normal(size=(CHANCES + 1, number)) for out in SESSIONS}
        self.mornings = {out: rng.normal(size=(4, number)) for out in (*SESSIONS, 0)}
        self.luck = {out: rng.random(size=(2, number)) for out in (*SESSIONS, 0)}

    def told(self, out: int, now: Condition, trouble: Trouble) -> Told:
        """What is answered that many days out."""
        chance, luck = self.mornings[out], self.luck[out]
        weight = self.world.weight_kg(self.people, self.first, now) + SCALE_NOISE * chance[2]
        weight = np.round(weight + np.where(luck[0] < AFTER_FOOD, 0.9, 0), 1)
        rated = self.world.rates(self.people, now, chance)
        missed = luck[1] < trouble.missed
        return Told(
            weight_kg=np.where(missed, np.nan, weight),
            fullness=np.where(missed, np.nan, np.clip(np.round(rated.fullness), 1, 10)),
            sharpness=np.where(missed, np.nan, np.clip(np.round(rated.sharpness), 1, 5)),
        )

    def after(self, now: Condition, out: int, told_g: Floats) -> Condition:
        """The next morning's condition where that much was told to be eaten."""
        chance = self.days[out]
        carb_g = eaten_g(told_g, self.short, chance[-1])
        return self.world.next_morning(
            self.people, now, Lived(carb_g=carb_g, session=SESSIONS[out]), chance
        )

    def many(self, times: int) -> Week:
        """The same week lived side by side `times` over, for one who compares doses."""
        which = np.tile(np.arange(len(self.people)), times)
        copy = object.__new__(Week)
        copy.world, copy.people, copy.short = self.world, self.people.take(which), self.short[which]
        copy.first = taken(self.first, which)
        copy.days = {out: chance[:, which] for out, chance in self.days.items()}
        copy.mornings, copy.luck = {}, {}
        return copy
