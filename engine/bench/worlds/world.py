"""What the worlds of the bench share: who is drawn, how answers are rounded, how a look is scored.

A world has equations of its own for stores, spill, water and answers; none imports the model that
the engine believes in, and a test holds them to that. What all share is the meaning of the words:
a look between 0 and 1, flat, and spilled over. Arrays hold an element an athlete; chance comes in as
standard normal numbers drawn beforehand, so that every policy meets the same days.
"""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

#: Rows of chance that a day, and a morning's answers, take.
CHANCES = 8
SHARE, BLUR = "share", "blur"  # of every condition: store of its ceiling; spill that shows


@dataclass(frozen=True, slots=True, kw_only=True)
class People:
    """Those drawn in a world: masses in kg, fat in %, and the world's own hidden traits by name."""

    female: Bools
    mass: Floats
    fat_percent: Floats
    traits: Mapping[str, Floats]

    def __len__(self) -> int:
        return len(self.mass)

    def __getitem__(self, trait: str) -> Floats:
        return self.traits[trait]

    @property
    def lean(self) -> Floats:
        return np.asarray(self.mass * (1 - self.fat_percent / 100))

    def take(self, which: NDArray[np.int_]) -> People:
        """The people at those places, each as often as named."""
        return People(
            female=self.female[which],
            mass=self.mass[which],
            fat_percent=self.fat_percent[which],
            traits={name: values[which] for name, values in self.traits.items()},
        )


#: The hidden condition on one morning, by name; `SHARE` and `BLUR` always among it.
Condition = Mapping[str, Floats]


def taken(now: Condition, which: NDArray[np.int_]) -> Condition:
    return {name: values[which] for name, values in now.items()}


@dataclass(frozen=True, slots=True, kw_only=True)
class Lived:
    """A day as it was: carbohydrate truly eaten (g), and its session, 1 being an hour's lifting."""

    carb_g: Floats
    session: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Rated:
    """How full and how sharp an athlete feels, before it is rounded to the grades asked for."""

    fullness: Floats
    sharpness: Floats


@dataclass(frozen=True, slots=True, kw_only=True)
class Judging:
    """What a look is worth in a world: where flat begins, and what being short or blurred costs."""

    flat_under: float = 0.80
    full_at: float = 0.92
    flat_cost: float = 0.5  # store short of full at which the look is worth nothing
    flat_power: float = 1.2
    blur_free: float = 0.4
    blur_cost: float = 0.5

    def look(self, now: Condition) -> Floats:
        """The look, 0 to 1: full muscle, less what the blur hides."""
        short = np.clip((self.full_at - now[SHARE]) / self.flat_cost, 0, 1)
        soft = np.clip(now[BLUR] - self.blur_free, 0, None)
        return np.clip(1 - short**self.flat_power - self.blur_cost * soft, 0, 1)

    def flat(self, now: Condition) -> Bools:
        return np.asarray(now[SHARE] < self.flat_under)

    @staticmethod
    def spilled(now: Condition) -> Bools:
        return np.asarray(now[BLUR] > 1)


class World(ABC):
    """One way in which bodies might work, and in which athletes might feel and tell of it."""

    id: str
    judging = Judging()

    @abstractmethod
    def traits(self, drawn: Draw) -> dict[str, Floats]:
        """The hidden traits of those drawn."""

    @abstractmethod
    def start(self, people: People, chance: Floats) -> Condition:
        """The condition on the first morning of a week."""

    @abstractmethod
    def next_morning(self, people: People, now: Condition, day: Lived, chance: Floats) -> Condition:
        """The condition a day later."""

    @abstractmethod
    def weight_kg(self, people: People, first: Condition, now: Condition) -> Floats:
        """Morning body mass before the scale's noise."""

    @abstractmethod
    def rates(self, people: People, now: Condition, chance: Floats) -> Rated:
        """What would be answered of fullness (1 to 10) and sharpness (1 to 5)."""

    def people(self, number: int, rng: np.random.Generator) -> People:
        female = rng.random(number) < 0.5
        mass = np.where(female, rng.normal(57, 5, number), rng.normal(80, 8, number))
        fat = np.where(female, rng.normal(14, 2.5, number), rng.normal(7.5, 1.5, number))
        mass, fat = mass.clip(45, 110), fat.clip(4, 22)
        drawn = Draw(female=female, lean=mass * (1 - fat / 100), rng=rng)
        return People(female=female, mass=mass, fat_percent=fat, traits=self.traits(drawn))


@dataclass(frozen=True, slots=True, kw_only=True)
class Draw:
    """What traits are drawn from."""

    female: Bools
    lean: Floats
    rng: np.random.Generator

    def around(self, value: float, spread: float) -> Floats:
        """A factor's figure for each: spread is the SD of its logarithm."""
        return np.asarray(value * np.exp(self.rng.normal(0, spread, len(self.lean))))

    def normal(self, mean: float, spread: float) -> Floats:
        return self.rng.normal(mean, spread, len(self.lean))

    def some(self, share: float) -> Floats:
        """1 for about that share of them, else 0."""
        return np.asarray((self.rng.random(len(self.lean)) < share).astype(float))

    @property
    def muscle(self) -> Floats:
        """Skeletal muscle, kg: Janssen et al. 2000, about half of lean mass, from memory."""
        return np.asarray(self.lean * np.where(self.female, 0.46, 0.50))
