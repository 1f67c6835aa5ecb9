"""Stored decisions as Decision objects: the one place that knows how older versions wrote them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields
from typing import Any

from engine.decision.decide import Decision
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


def decided_in_short(data: Mapping[str, Any]) -> Decision:
    """The same without what no reason and no odds are read from: for the reasons of thousands.

    Gates, flags, sources, limits and bands are left out, and a forecast without odds.
    """
    trace = data["trace"] | {"gates": (), "limits": {}, "window": None}
    short = {"flags": (), "sources": (), "band": None, "trace": trace}
    if view := data.get("foresight"):
        short["foresight"] = {**view, "band": None} if view.get("best") else None
    return decision_from_dict({**data, **short})


def _flag(kept: Mapping[str, Any]) -> Flag:
    return Flag(
        id=kept["id"],
        level=Level(kept["level"]),
        facts=[(name, value) for name, value in kept["facts"]],
        sources=tuple(built(Source, one) for one in kept["sources"]),
    )
