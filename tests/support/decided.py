"""A stored decision of which only what matters to a test is said."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from engine.decision.decide import Decision
from engine.decision.kept import decision_from_dict

_ANY = {"low": 0.0, "high": 2000.0, "low_bound": "carb_floor_g", "high_bound": "carb_ceiling_g"}


def decided(**fields: Any) -> Decision:
    """What `stored` says, read."""
    return decision_from_dict(stored(**fields))


def stored(
    *,
    carb_g: float = 500.0,
    foresight: Mapping[str, Any] | None = None,
    trace: Mapping[str, Any] | None = None,
    **fields: Any,
) -> dict[str, Any]:
    """`fields` as they are stored; what is not said of the forecast or the trace is at its plainest."""
    view = {
        "trusted": True, "why_not": "", "band": None, "residual_kg": None, "mornings": 5,
        "past_weeks": 0,
    }  # fmt: skip
    return {
            "date": "2027-05-06",
            "sets_date": "2027-05-06",
            "days_out": 3,
            "outcome": "adjusted",
            "target": {"carb_g": carb_g, "window": _ANY},
            "planned_carb_g": 500.0,
            "carb_g": carb_g,
            "change_g": carb_g - 500.0,
            "lapse_g": None,
            "rule": "steady",
            "bound": None,
            "needs_sign_off": False,
            "flags": [],
            "reason": "",
            "sources": [],
            "tell_coach": False,
            "ask_again": [],
            "band": None,
            "expected_fullness": None,
            "trace": {"gates": [], "limits": {}, **(trace or {})},
            "foresight": None if foresight is None else {**view, **foresight},
            **fields,
        }  # fmt: skip
