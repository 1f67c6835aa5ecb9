"""Each flag in a sentence with its figures and thresholds."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

Facts = Mapping[str, Any]


def cause(flag: str, facts: Facts, *, weight_unit: str, volume_unit: str) -> str:
    """What was found."""
    return flag.replace("-", " ") + ": " + ", ".join(f"{k} {v}" for k, v in facts.items())
