"""What a rule is: when it matches, the steps it asks for, what it says, what the forecast may do."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from engine.decision.facts import Facts
from engine.evidence.source import Source
from engine.values.telling import Telling, mark

#: A change of the day's carbs inside a sentence, by whether it is less, none or more.
CHANGES = (mark("{grams:.0f} g less"), mark("no change"), mark("{grams:.0f} g more"))


class Told(Telling):
    """A decision's facts and change; `change_g` is what the sentence asks for."""

    def __init__(self, facts: Mapping[str, Any], change_g: float) -> None:
        super().__init__(facts)
        self.change_g = change_g

    @property
    def change(self) -> str:
        return self.change_of(self.change_g)

    def change_of(self, change_g: float) -> str:
        """A change of grams in words: "25 g more"."""
        less_none_more = (change_g > 0) - (change_g < 0) + 1
        return self.tr(CHANGES[less_none_more], grams=abs(change_g))

    def look(self) -> str:
        """What the coach sees, in words; "" where none has looked."""
        seen, sharpness = self.get("coach_saw") or "", self.get("coach_sharpness")
        return f"{seen}, sharpness {sharpness}" if sharpness is not None else seen

    def gap(self, name: str) -> object:
        return GAPS[name](self) if name in GAPS else super().gap(name)


#: What a gap in a sentence on a decision stands for, where it is not a fact as it is.
GAPS: Mapping[str, Callable[[Told], object]] = {
    "band_high": lambda told: told.weight_at_most("band_high_kg"),
    "band_low": lambda told: told.weight_at_least("band_low_kg"),
    "change": lambda told: told.change,
    "expected": lambda told: told["expected_fullness"],
    "look": lambda told: told.look(),
    "most": lambda told: told["fullness_most"],
    "target": lambda told: told.water("water_target_l"),
    "water": lambda told: told.water("water_l"),
    "weight": lambda told: told.weight("weight_kg"),
}


class Forecast(StrEnum):
    """What the forecast may do where a rule matches and the model can be trusted."""

    SIZES = "gives the size"
    LOWERS = "gives the size of a lowering only"
    DEEPENS = "may only lower further: what is seen goes before what is computed"
    ASKS = "may ask the coach, and nothing of it goes out before the coach agrees"
    DECIDES = "decides: what the rule stands on, it has weighed already"
    SILENT = "has no say"


def _nothing(_: Told) -> str:
    """What a rule says that was given no sentence, and so can't be made."""
    return ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """One line of the table. Raises ValueError for one that lacks its name, sentence or source.

    `id` is stored with each decision and never changes its meaning. `name` is what people call it,
    inside a sentence. `tells` is the sentence for the athlete, worded once for whoever tells it.
    """

    id: str
    when: Callable[[Facts], bool]
    steps: Callable[[Facts], int]
    name: str = ""
    tells: Callable[[Told], str] = _nothing
    sources: tuple[Source, ...] = ()
    tell_coach: Callable[[Facts], bool] = lambda _: False
    forecast: Forecast = Forecast.SIZES

    def __post_init__(self) -> None:
        if not self.name:
            raise ValueError(f"{self.id} needs a name that people read")
        if self.tells is _nothing:
            raise ValueError(f"{self.id} needs a sentence for the athlete")
        if not self.sources:
            raise ValueError(f"{self.id} needs a source")


def in_words(change_g: float) -> str:
    """A change of grams as a coach would say it."""
    if change_g == 0:
        return "no change"
    return f"{abs(change_g):g} g {'more' if change_g > 0 else 'less'}"


def always(steps: int) -> Callable[[Facts], int]:
    return lambda _: steps
