"""What a rule is: when it matches, the steps it asks for, what it says, what the forecast may do."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum

from engine.decision.facts import Facts
from engine.decision.rules.told import Told
from engine.evidence.source import Source


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
