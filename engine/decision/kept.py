"""Stored decisions as Decision objects: the one place that knows how older versions wrote them."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import fields
from typing import Any, NamedTuple

from engine.decision.decide import Decision, difference
from engine.decision.facts import Fact
from engine.decision.foresight import Foresight, Odds
from engine.decision.record import built
from engine.evidence.source import Source
from engine.safety import Flag, Level

#: The rule table of decisions that do not say which one judged them.
FIRST_TABLE = 1
#: All that is read the same way; flags have a reader of their own.
_FIELDS = frozenset(one.name for one in fields(Decision)) - {"flags"}


def decision_from_dict(data: Mapping[str, Any]) -> Decision:
    """The decision that `decision_as_dict` wrote, by this version or an older one.

    What the record lacks takes its default; what this version does not know is left out. Raises
    KeyError, TypeError or ValueError for a record that is no decision.
    """
    kept = {key: item for key, item in data.items() if key in _FIELDS}
    kept["trace"] = {"table": FIRST_TABLE, "limits": {}, **data["trace"]}
    kept.setdefault("tell_coach", False)
    kept.setdefault("planned_carb_g", None)
    return built(Decision, kept, flags=tuple(_flag(one) for one in data.get("flags", ())))


class Asked(NamedTuple):
    """Of a `Trace`: the facts, and what rule and forecast asked for."""

    facts: Mapping[str, Fact]
    rule_g: float | None
    forecast_g: float | None
    asked_g: float | None
    disagree: bool


class InShort(NamedTuple):
    """Of a `Decision`: what its reason and its odds are told from, under the same names."""

    date: dt.date
    rule: str
    bound: str | None
    carb_g: float | None
    change_g: float
    tell_coach: bool
    ask_again: tuple[str, ...]
    trace: Asked
    foresight: Foresight | None


def decided_in_short(data: Mapping[str, Any]) -> InShort:
    """What reason and odds are told from, at a tenth of the time: for the reasons of thousands.

    A forecast has its odds and nothing else; it is None where it had none. Raises KeyError, TypeError
    or ValueError for a record that is no decision.
    """
    trace, target, planned_g = data["trace"], data["target"], data.get("planned_carb_g")
    carb_g = None if target is None else target["carb_g"]
    change_g = 0.0
    if carb_g is not None and planned_g is not None:
        change_g = difference(carb_g, planned_g)
    view = data.get("foresight")
    return InShort(
        date=dt.date.fromisoformat(data["date"]),
        rule=data["rule"],
        bound=data["bound"],
        carb_g=carb_g,
        change_g=change_g,
        tell_coach=data.get("tell_coach", False),
        ask_again=tuple(data["ask_again"]),
        trace=Asked(
            facts=trace.get("facts") or {},
            rule_g=trace.get("rule_g"),
            forecast_g=trace.get("forecast_g"),
            asked_g=trace.get("asked_g"),
            disagree=trace.get("disagree", False),
        ),
        foresight=_foreseen(view) if view and view.get("best") else None,
    )


def _foreseen(view: Mapping[str, Any]) -> Foresight:
    planned, best, proposed = (
        built(Odds, kept) if (kept := view.get(figure)) else None
        for figure in ("planned", "best", "proposed")
    )
    return Foresight(
        trusted=True, why_not="", band=None, residual_kg=None, mornings=0, past_weeks=0,
        planned=planned, best=best, proposed=proposed,
    )  # fmt: skip


def _flag(kept: Mapping[str, Any]) -> Flag:
    return Flag(
        id=kept["id"],
        level=Level(kept["level"]),
        facts=[(name, value) for name, value in kept["facts"]],
        sources=tuple(built(Source, one) for one in kept["sources"]),
    )
