"""Numbers behind a week between two shows: the stores are still up, so nothing is emptied again."""

from __future__ import annotations

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE
from engine.evidence.source import Number, Provenance, Source

ARNALL_2007 = Source(
    "arnall-2007",
    "Arnall et al. 2007, Eur J Appl Physiol 99:251-256: after a load, muscle glycogen of trained "
    "cyclists stayed above normal for up to five days of rest and a moderate diet",
    Provenance.MEMORY,
)
GOFORTH_1997 = Source(
    "goforth-1997",
    "Goforth et al. 1997, J Appl Physiol 82:342-347: loaded glycogen of trained men stayed high for "
    "three days of light exercise on 60 % carbohydrate",
    Provenance.MEMORY,
)

BRIDGE_WITHIN_DAYS = Number(
    "two events so close that the time between is a bridge", 14, "days",
    COMMON_PRACTICE, "shows a week or two apart; no second depletion between them",
)  # fmt: skip
BRIDGE_LOAD_SHARE = Number(
    "mean load day after a bridge, share of the published load", 0.85, "1",
    OWN_CHOICE,
    "stores begin higher than after a diet (Arnall 2007, Goforth 1997); the mornings correct it",
)  # fmt: skip
BRIDGE_CARDIO_MIN = Number("cardio of a day between two shows", 20, "min", COMMON_PRACTICE)
