"""How a decision came about, as data: told to people elsewhere, tested here."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from engine.decision.facts import Fact
from engine.decision.rules import TABLE
from engine.values.limits import LIMIT_KEYS, Limits, Window


@dataclass(frozen=True, slots=True)
class GateStep:
    """One gate, and whether the case went through it."""

    id: str
    passed: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Trace:
    """The way of one decision: gates, then the facts and what the rule asked, then the limits.

    `facts`, `steps` and `asked_g` are empty where a gate decided, and `stopped` is what that gate went
    by; `window` is None where there is no plan or the limits leave no figure. `wanted_g` is the figure
    before it was fitted; `rule_g` is what the rule alone asked for, `forecast_g` what the forecast
    alone would have done, `disagree` whether the two pulled apart. `would_g` is the figure that would
    have been proposed with the forecast, where it only shows. `table` is the number of the rule table
    that judged.
    """

    gates: tuple[GateStep, ...]
    facts: Mapping[str, Fact] = field(default_factory=dict)
    stopped: Mapping[str, Fact] = field(default_factory=dict)
    steps: int | None = None
    rule_g: float | None = None
    forecast_g: float | None = None
    disagree: bool = False
    would_g: float | None = None
    asked_g: float | None = None
    wanted_g: float | None = None
    window: Window | None = None
    bound: str | None = None
    limits: Mapping[str, float]
    table: int = TABLE


def by_forecast(rule_g: float | None, forecast_g: float | None, asked_g: float | None) -> bool:
    """Whether the forecast alone asked for the change: the rule for nothing, or for the opposite."""
    return forecast_g is not None and bool(asked_g) and (rule_g or 0.0) * (asked_g or 0.0) <= 0


def in_force(limits: Limits) -> dict[str, float]:
    """The coach's limits by key, for the record of a decision."""
    return {key: getattr(limits, key) for key in LIMIT_KEYS}
