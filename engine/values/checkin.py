"""What was reported of a morning, what a coach saw of it, and what is known of the days before."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from engine.evidence import deciding as e
from engine.evidence.body import tracking

FULLEST, SHARPEST = 10, 5


class Look(StrEnum):
    FLAT = "flat"
    FULL = "full"
    SPILLED = "spilled over"


@dataclass(frozen=True, slots=True, kw_only=True)
class TargetLook:
    """The look that an event asks for: ranges of fullness (1-10) and sharpness (1-5), ends included.

    `words` are the coach's own. Some divisions want it softer or fuller than others; dryness is not
    asked for everywhere (common practice).
    """

    fullness_low: int
    fullness_high: int
    sharpness_low: int
    sharpness_high: int
    words: str = ""

    def __post_init__(self) -> None:
        for name, low, high, most in (
            ("fullness", self.fullness_low, self.fullness_high, FULLEST),
            ("sharpness", self.sharpness_low, self.sharpness_high, SHARPEST),
        ):
            if not 1 <= low <= high <= most:
                raise ValueError(f"{name} {low} to {high} is no range from 1 to {most}")

    @property
    def fullness(self) -> float:
        """The middle of what is asked for, which the load leads to."""
        return (self.fullness_low + self.fullness_high) / 2

    @property
    def blurred_to(self) -> int:
        """The sharpness up to which lines are blurred for this event; 0 where none is.

        What is blurred anyhow stays so under a softer look, unless that look asks for it.
        """
        apart = int(e.CRISP_FROM.value - e.BLURRED_TO.value)
        anyhow = min(int(e.BLURRED_TO.value), self.sharpness_low - 1)
        return max(self.sharpness_low - apart, anyhow)


#: What was meant wherever nothing is said: full, and as sharp as it comes.
USUAL_LOOK = TargetLook(
    fullness_low=int(e.FULL_FROM.value),
    fullness_high=FULLEST,
    sharpness_low=int(e.CRISP_FROM.value),
    sharpness_high=SHARPEST,
)


class CoachLook(StrEnum):
    """How a coach calls a morning's look, from too little in the muscle to too much."""

    FLAT = "flat"
    ON_COURSE = "on course"
    FULL = "full"
    SOFTENING = "softening"
    SPILLED = "spilled over"

    @property
    def order(self) -> int:
        """0 for the emptiest look, 4 for the most overfilled one."""
        return list(CoachLook).index(self)


@dataclass(frozen=True, slots=True, kw_only=True)
class Observed:
    """What one coach saw on one morning. Sharpness of 5, None where it was not judged.

    `by` tells the coaches of an athlete apart and means nothing else; `at` is the aware instant at
    which it was said. Raises ValueError for a sharpness that is none.
    """

    date: dt.date
    look: CoachLook
    sharpness: int | None = None
    by: int = 0
    at: dt.datetime | None = None

    def __post_init__(self) -> None:
        if self.sharpness is not None and not 1 <= self.sharpness <= 5:
            raise ValueError(f"sharpness {self.sharpness} is outside 1 to 5")


def most_careful(seen: Sequence[Observed]) -> Observed | None:
    """What several coaches saw of one morning, as one: the most overfilled look, the least sharp.

    Where two differ, nothing is added on the word of the one who saw less; None where nobody looked.
    """
    if not seen:
        return None
    worst = max(seen, key=lambda one: one.look.order)
    sharp = [one.sharpness for one in seen if one.sharpness is not None]
    return Observed(
        date=worst.date,
        look=worst.look,
        sharpness=min(sharp, default=None),
        by=worst.by,
        at=worst.at,
    )


class Gut(StrEnum):
    FINE = "fine"
    HEAVY = "heavy"
    BAD = "bad"


class TrainingDone(StrEnum):
    """How yesterday's training and cardio went beside what was planned for it."""

    AS_PLANNED = "as-planned"
    LESS = "less"
    MORE = "more"
    NONE = "none"


#: Share of the planned session and cardio by what was told; nothing told counts as planned.
TRAINED = {
    None: 1.0,
    TrainingDone.AS_PLANNED: 1.0,
    TrainingDone.LESS: float(tracking.TRAINED_LESS),
    TrainingDone.MORE: float(tracking.TRAINED_MORE),
    TrainingDone.NONE: 0.0,
}


def training_spread(done: TrainingDone | None) -> float:
    """How little is known of what was done (SD of the logarithm)."""
    if done is None:
        return float(tracking.TRAINED_UNKNOWN_SPREAD)
    vague = done in (TrainingDone.LESS, TrainingDone.MORE)
    return float(tracking.TRAINED_SPREAD) if vague else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckIn:
    """One morning's answers; None is "not answered", which the gates deal with.

    Water, carbohydrate, training, sleep and gut speak of the day and night just past. `symptoms`
    holds what was reported, as ids of `engine.symptoms` or in own words; `note` is free text.
    `cleared` holds the ids that a doubtful word was asked about and said not to mean.
    Values are kept as given: whether they can be believed is for the gates, not the constructor.
    """

    date: date
    weight_kg: float | None = None
    fullness: int | None = None
    sharpness: int | None = None
    water_l: float | None = None
    carb_eaten_g: float | None = None
    gut: Gut | None = None
    symptoms: tuple[str, ...] = ()
    note: str = ""
    sleep_h: float | None = None
    urine_colour: int | None = None
    resting_pulse: float | None = None
    water_within_one_hour_l: float | None = None
    cleared: tuple[str, ...] = ()
    training_done: TrainingDone | None = None


@dataclass(frozen=True, slots=True)
class DaySet:
    """The carbohydrate that was in force for a day, once something had set it.

    Raises ValueError for what is no amount: a load total that holds no number holds nothing back.
    """

    date: date
    carb_g: float

    def __post_init__(self) -> None:
        if not (math.isfinite(self.carb_g) and self.carb_g >= 0):
            raise ValueError(f"a day is set to grams, 0 or more, not {self.carb_g}")


@dataclass(frozen=True, slots=True, kw_only=True)
class History:
    """Earlier check-ins, oldest first and one a date, and the figures set for days so far.

    `observed`: what coaches saw, this morning included, oldest first and one a date and coach.
    """

    checkins: tuple[CheckIn, ...] = ()
    set_days: tuple[DaySet, ...] = ()
    observed: tuple[Observed, ...] = ()

    def __post_init__(self) -> None:
        for name, days in (
            ("check-ins", [c.date for c in self.checkins]),
            ("set days", [d.date for d in self.set_days]),
        ):
            if sorted(set(days)) != days:
                raise ValueError(f"{name} must be one a date, oldest first")
        looks = [(seen.date, seen.by) for seen in self.observed]
        if sorted(set(looks)) != looks:
            raise ValueError("what coaches saw must be one a date and coach, oldest first")

    def on(self, day: date) -> CheckIn | None:
        return next((c for c in self.checkins if c.date == day), None)

    def set_on(self, day: date) -> float | None:
        return next((d.carb_g for d in self.set_days if d.date == day), None)

    def seen_on(self, day: date) -> tuple[Observed, ...]:
        """What coaches saw that morning, one a coach."""
        return tuple(seen for seen in self.observed if seen.date == day)
