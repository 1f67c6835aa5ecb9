"""The days and mornings of a bench week: the same chance whatever is decided, and for each athlete."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from engine.bench.setting import AFTER_FOOD, SCALE_NOISE, SESSIONS, Trouble, eaten_g
from engine.bench.worlds.world import CHANCES, Condition, Floats, Lived, People, World, taken


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """A morning's answers; NaN is not answered."""

    weight_kg: Floats
    fullness: Floats
    sharpness: Floats


class Week:
    """A week of all athletes of a world: what happens to them if they are told to eat so much."""

    def __init__(self, world: World, who: People, seed: int, short: Floats) -> None:
        self.world, self.who, self.short, self.seed = world, who, short, seed
        rng = np.random.default_rng([seed, 43])
        number = len(who)
        self.first = world.start(who, rng.normal(size=(CHANCES, number)))
        self.days = {out: rng.normal(size=(CHANCES + 1, number)) for out in SESSIONS}
        self.mornings = {out: rng.normal(size=(4, number)) for out in (*SESSIONS, 0)}
        self.luck = {out: rng.random(size=(2, number)) for out in (*SESSIONS, 0)}

    def told(self, out: int, now: Condition, trouble: Trouble) -> Told:
        """What is answered that many days out."""
        chance, luck = self.mornings[out], self.luck[out]
        weight = self.world.weight_kg(self.who, self.first, now) + SCALE_NOISE * chance[2]
        weight = np.round(weight + np.where(luck[0] < AFTER_FOOD, 0.9, 0), 1)
        rated = self.world.rates(self.who, now, chance)
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
            self.who, now, Lived(carb_g=carb_g, session=SESSIONS[out]), chance
        )

    def many(self, times: int) -> Week:
        """The same week lived side by side `times` over, for one who compares doses."""
        which = np.tile(np.arange(len(self.who)), times)
        copy = object.__new__(Week)
        copy.world, copy.who, copy.short = self.world, self.who.take(which), self.short[which]
        copy.first = taken(self.first, which)
        copy.days = {out: chance[:, which] for out, chance in self.days.items()}
        copy.mornings, copy.luck = {}, {}
        return copy
