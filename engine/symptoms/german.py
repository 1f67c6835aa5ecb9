"""German, as far as complaints go."""

from __future__ import annotations

import re

from .finding import Tongue
from .german_body import GERMAN_BODY
from .german_drugs import german_drugs
from .german_figures import GERMAN_EVERYDAY, GERMAN_FIGURES
from .german_mood import GERMAN_MOOD
from .german_negation import german_said, german_supposed
from .german_others import GERMAN_OTHERS
from .german_spelling import german_clauses
from .german_warnings import GERMAN_WARNINGS
from .patterns import by_cues

GERMAN = Tongue(
    phrases=by_cues((*GERMAN_WARNINGS, *GERMAN_BODY, *GERMAN_MOOD, *GERMAN_OTHERS)),
    figures=GERMAN_FIGURES,
    everyday=GERMAN_EVERYDAY,
    clauses=german_clauses,
    said=german_said,
    supposed=german_supposed,
    taken_back=re.compile(
        r"(?:heute|jetzt|seit heute|heute morgen)\b.{0,30}\b(?:schon|doch|ja|habe|ist|wieder|da)\b|"
        r"(?:doch|jetzt schon|wieder da)"
    ),
    no=frozenset(
        {
            "nein",
            "ne",
            "nee",
            "no",
            "keine",
            "keinen",
            "kein",
            "keins",
            "nichts",
            "nie",
            "negativ",
            "null",
            "0",
            "nicht",
            "nope",
        }
    ),
    drugs=german_drugs,
)
