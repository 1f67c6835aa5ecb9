"""What is believed of one athlete, as equally weighted particles."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from engine.evidence.body import physiology as sizes
from engine.evidence.body import tracking as known
from engine.model.aim import USUAL_AIM, Aim
from engine.model.structures import NOT_COUNTED, Bodies, Floats, Kinds, Usual, bodies
from engine.values.athlete import Sex

PARTICLES = 2000

#: Goes up with whatever makes the same mornings believed otherwise; kept with each decision, so that
#: a stored one is not held against a model that it never knew. 1: one body by the hour. 2: several.
#: 3: answers and weights count for more, and chances are told surer. 4: before any week has been looked
#: at a change is dared sooner, but for what no later day makes good. 5: flat is told less often. 6: a
#: trial, and what has one behind it, is moved less lightly.
MODEL = 6
#: The models whose parameters mean the same, so that what weeks have taught one is known to the other.
ALIKE = frozenset({3, 4, 5, 6})


@dataclass(frozen=True)
class Person:
    """A particle's parameters by row, logarithms where the figure is a factor (`PRIOR`), and kinds."""

    values: Floats  # parameters x particles
    kinds: Kinds  # kinds x particles; see `engine.model.structures`

    def __getitem__(self, name: str) -> Floats:
        return np.asarray(self.values[NAMES.index(name)])

    @cached_property
    def _made(self) -> dict[tuple[float, float], Bodies]:
        return {}

    def bodies(self, lean_kg: float, muscle_kg: float) -> Bodies:
        """The bodies of these parameters in people of that size, made once."""
        made, size = self._made, (lean_kg, muscle_kg)
        if size not in made:
            named = dict(zip(NAMES, self.values, strict=True))
            made[size] = bodies(lean_kg, muscle_kg, named, self.kinds)
        return made[size]

    def chosen(self, which: NDArray[np.int_]) -> Person:
        return Person(self.values[:, which], self.kinds[:, which])


#: Mean and SD of each parameter's prior.
PRIOR: dict[str, tuple[float, float]] = {
    "ceiling": (0.0, float(known.CEILING_SPREAD)),
    "burn": (0.0, float(known.BURN_SPREAD)),
    "fill": (0.0, float(known.FILL_SPREAD)),
    "work": (0.0, float(known.WORK_SPREAD)),
    "intake": (0.0, float(known.INTAKE_SPREAD)),
    "unseen": (0.0, float(known.SPILL_UNSEEN_SPREAD)),
    "carries": (0.0, float(known.SPILL_CARRIED_SPREAD)),
    "water": (0.0, float(known.WATER_SPREAD)),
    "late": (float(known.LATE_WATER), float(known.LATE_WATER_SPREAD)),
    "salt": (float(known.SALT_WATER), float(known.SALT_WATER_SPREAD)),
    "scale": (0.0, float(known.SCALE_SPREAD)),  # of body mass
    "empty": (float(known.EMPTY_LEVEL), float(known.EMPTY_SPREAD)),
    "fullest": (float(known.FULLEST_LEVEL), float(known.FULLEST_SPREAD)),
    "crisp": (float(known.CRISP), float(known.CRISP_SPREAD)),
    "flat": (float(known.FLAT_UNDER), float(known.FLAT_UNDER_SPREAD)),
    "start": (float(np.log(float(known.START_LEVEL))), float(known.START_SPREAD)),
}


NAMES = tuple(PRIOR)


_SCALE = NAMES.index("scale")


@dataclass(frozen=True, slots=True, kw_only=True)
class Covariates:
    """The facts that all particles share."""

    sex: Sex
    body_mass_kg: float
    body_fat_percent: float | None
    usual: Usual = NOT_COUNTED
    aim: Aim = USUAL_AIM

    @property
    def lean_kg(self) -> float:
        male = self.sex is Sex.MALE
        ordinary = float(sizes.BODY_FAT_MALE if male else sizes.BODY_FAT_FEMALE)
        fat = ordinary if self.body_fat_percent is None else self.body_fat_percent
        return self.body_mass_kg * (1 - fat / 100)

    @property
    def muscle_kg(self) -> float:
        male = self.sex is Sex.MALE
        share = sizes.MUSCLE_OF_LEAN_MALE if male else sizes.MUSCLE_OF_LEAN_FEMALE
        return self.lean_kg * float(share)


@dataclass(frozen=True, slots=True, kw_only=True)
class Belief:
    """Equally weighted particles on one morning, and how well the mornings so far were foreseen."""

    frame: Covariates
    person: Person
    state: Floats  # rows x particles
    first: Floats  # the state that mass changes are against
    planned: Floats  # the state had the plan been followed; the same object until it was not
    weighed: bool = False  # whether this week's scale is known: before that, the mass on file
    pit_values: tuple[float, ...] = ()  # where each weight fell in its forecast, 0 to 1
    eyes: tuple[
        tuple[int, Floats], ...
    ] = ()  # each coach that has looked, and how far off they rate

    @property
    def body(self) -> Bodies:
        return self.person.bodies(self.frame.lean_kg, self.frame.muscle_kg)

    @property
    def is_calibrated(self) -> bool:
        """False after three mornings running outside the 95 % band: then do not trust it."""
        last = self.pit_values[-3:]
        return not (len(last) == 3 and all(place < 0.025 or place > 0.975 for place in last))


def side_by_side(one: Belief, other: Belief) -> Belief:
    """The particles of both, as one belief about the same athlete on the same morning.

    Each counts by how many it brings; how well mornings were foreseen is the first one's.
    """

    def both(first: Floats, second: Floats) -> Floats:
        return np.concatenate([first, second], axis=1)

    person = Person(
        both(one.person.values, other.person.values),
        np.concatenate([one.person.kinds, other.person.kinds], axis=1),
    )
    state = both(one.state, other.state)
    as_planned = one.planned is one.state and other.planned is other.state
    return replace(
        one,
        person=person,
        state=state,
        first=both(one.first, other.first),
        planned=state if as_planned else both(one.planned, other.planned),
        eyes=(),
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Morning:
    """What was answered; None is not answered."""

    weight_kg: float | None = None
    fullness: int | None = None
    sharpness: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Band:
    low: float
    middle: float
    high: float
