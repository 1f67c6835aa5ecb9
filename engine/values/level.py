"""How urgent something is that was found or told."""

from __future__ import annotations

from enum import StrEnum


class Level(StrEnum):
    """How urgent: an advisory is told, a caution must be acknowledged, a warning stops the week."""

    ADVISORY = "advisory"
    CAUTION = "caution"
    WARNING = "warning"

    @property
    def rank(self) -> int:
        """0 for an advisory, 1 for a caution, 2 for a warning."""
        return _ORDER.index(self)


_ORDER = (Level.ADVISORY, Level.CAUTION, Level.WARNING)
