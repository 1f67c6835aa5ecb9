"""What is known of who writes, and what a reading comes to: answers, questions, the words left over."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum

from engine.written.units import ParseErrorCode, VolumeUnit, WeightUnit

Value = float | int | None
#: The answers that a report may hold, in the order in which bare numbers are taken for them.
IN_ORDER = ("weight_kg", "fullness", "water_l", "sharpness")
CORE = ("weight_kg", "fullness", "water_l")


@dataclass(frozen=True, slots=True, kw_only=True)
class Known:
    """What is known of the athlete, as plain values; None is "not known".

    `weight_kg` and `fullness` are the last ones told (`weight_is_yesterdays`: or of a day before),
    `on_file_kg` the body mass on file, `water_before_l` what was drunk by the last morning, `water_l`
    and `carb_g` the targets of the day just past. `asked` are the answers still open, in the order
    in which they are asked for, where the check-in is being asked for just now.
    """

    weight_unit: WeightUnit | None
    volume_unit: VolumeUnit | None
    wants_sharpness: bool
    language: str = "en"
    asked: tuple[str, ...] = ()
    weight_kg: float | None = None
    weight_is_yesterdays: bool = True
    on_file_kg: float | None = None
    height_cm: float | None = None
    fullness: int | None = None
    water_l: float | None = None
    water_before_l: float | None = None
    carb_g: float | None = None

    @property
    def order(self) -> tuple[str, ...]:
        """The answers that bare numbers may be, in order."""
        if self.asked:
            return self.asked
        return IN_ORDER if self.wants_sharpness else CORE


def agreed(ways: Sequence[Mapping[str, Value]]) -> dict[str, Value]:
    """The answers that are the same by all of these ways to read."""
    first, *others = ways
    return {
        key: value
        for key, value in first.items()
        if all(key in other and other[key] == value for other in others)
    }


class DoubtCode(StrEnum):
    """Why something that was read is asked about before it is taken, beside `ParseErrorCode`."""

    FAR = "far-from-habit"  # facts: before
    ORDER = "order"
    RANGE = "range"
    BOUND = "bound"
    IN_WORDS = "in-words"
    TWO_VALUES = "two-values"
    SPARE = "spare-number"
    UNCLEAR = "unclear"
    CHANGE = "change"  # of what had been told before; raised by who keeps the answers


@dataclass(frozen=True, slots=True, kw_only=True)
class Doubt:
    """A question to put before anything is taken.

    `answer` is the key it is about, `given` what was written. Each of `options` is a likely meaning,
    as answers by key; `facts` are those of `ParseError`, and `before` for what the figure is far from.
    """

    code: DoubtCode | ParseErrorCode
    answer: str
    given: str
    options: tuple[Mapping[str, Value], ...] = ()
    facts: Mapping[str, str | float] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Report:
    """What a text says of the morning.

    `answers` by key of `CheckIn`; None where it was said that there is no figure. `training` is an
    id of `TrainingDone`. `all_fine` is said only where no note follows: with one, a person's words
    come first. `note` is what was not read, in the athlete's own words. `meant` are the words of
    answers that were worked out from them ("6-7", "same as yesterday"), by key: to be said to them.
    """

    answers: Mapping[str, Value] = field(default_factory=dict)
    doubts: tuple[Doubt, ...] = ()
    on_target: bool = False
    off_target: bool = False  # said to be other than the figure set, and not by how much
    training: str | None = None
    all_fine: bool = False
    note: str = ""
    meant: Mapping[str, str] = field(default_factory=dict)
    labelled: bool = False  # whether a label, a unit or a phrase said what at least one figure is

    @property
    def told(self) -> int:
        """How many answers were read, those in doubt included."""
        asked = [doubt for doubt in self.doubts if doubt.code is not DoubtCode.SPARE]
        offered = {key for doubt in asked for option in doubt.options for key in option}
        return len(set(self.answers) | {doubt.answer for doubt in asked} | offered)

    @property
    def whole(self) -> bool:
        """Whether weight, fullness and water were all read, and nothing is in doubt."""
        return not self.doubts and all(key in self.answers for key in CORE)
