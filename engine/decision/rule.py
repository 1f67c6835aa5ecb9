"""What a rule is: when it matches, the steps it asks for, its reason, what the forecast may do."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from functools import cache
from string import Formatter

from engine.decision.facts import Facts
from engine.evidence.source import Source

CHANGE = "change"


class Forecast(StrEnum):
    """What the forecast may do where a rule matches and the model can be trusted."""

    SIZES = "gives the size"
    LOWERS = "gives the size of a lowering only"
    DEEPENS = "may only lower further: what is seen goes before what is computed"
    ASKS = "may ask the coach, and nothing of it goes out before the coach agrees"
    DECIDES = "decides: what the rule stands on, it has weighed already"
    SILENT = "has no say"


@dataclass(frozen=True, slots=True, kw_only=True)
class Rule:
    """One line of the table.

    `id` is stored with each decision and never changes its meaning. `reason` may name only facts
    and `{change}`, the grams asked for in words.
    """

    id: str
    when: Callable[[Facts], bool]
    steps: Callable[[Facts], int]
    reason: str
    sources: tuple[Source, ...]
    tell_coach: Callable[[Facts], bool] = lambda _: False
    forecast: Forecast = Forecast.SIZES

    def __post_init__(self) -> None:
        if strangers := _named(self.reason) - Facts.names() - {CHANGE}:
            raise ValueError(f"{self.id}: the reason names {sorted(strangers)}, which are no facts")
        if not self.sources:
            raise ValueError(f"{self.id} needs a source")

    def explain(self, facts: Facts, change_g: float, *, cut: bool = False) -> str:
        """The reason in words. `cut` says that the limits leave less than is asked for here."""
        change = f"that asks for {in_words(change_g)}" if cut else in_words(change_g)
        named = {name: getattr(facts, name) for name in _named(self.reason) - {CHANGE}}
        return self.reason.format(**named, change=change)


@cache
def _named(reason: str) -> frozenset[str]:
    """What a reason names."""
    return frozenset(name.split(":")[0] for _, name, _, _ in Formatter().parse(reason) if name)


def in_words(change_g: float) -> str:
    """A change of grams as a coach would say it."""
    if change_g == 0:
        return "no change"
    return f"{abs(change_g):g} g {'more' if change_g > 0 else 'less'}"


def always(steps: int) -> Callable[[Facts], int]:
    return lambda _: steps
