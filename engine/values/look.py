"""How an athlete looked on the day, in one word."""

from __future__ import annotations

from enum import StrEnum


class Look(StrEnum):
    FLAT = "flat"
    FULL = "full"
    SPILLED = "spilled over"
