"""Ordinary figures that stand in where an athlete does not count something."""

from __future__ import annotations

from engine.evidence.source import Number, Provenance, Source

EFSA_FIBRE = Source(
    "efsa-2010-fibre",
    "EFSA (2010), Dietary reference values for carbohydrates and dietary fibre, EFSA Journal "
    "8(3):1462: adequate intake of fibre 25 g a day for adults",
    Provenance.MEMORY,
)
EFSA_SODIUM = Source(
    "efsa-2019-sodium",
    "EFSA (2019), Dietary reference values for sodium, EFSA Journal 17(9):5778: 2.0 g a day is a "
    "safe and adequate intake for adults",
    Provenance.MEMORY,
)

MODERATE_FIBRE_G = Number(
    name="ordinary fibre where it is not counted", value=25, unit="g/day", source=EFSA_FIBRE
)
MODERATE_SODIUM_MG = Number(
    name="ordinary sodium where it is not counted", value=2000, unit="mg/day", source=EFSA_SODIUM
)
