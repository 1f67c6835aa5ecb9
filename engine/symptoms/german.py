"""German, as far as complaints go."""

from __future__ import annotations

import re

from .finding import Tongue
from .german_body import GERMAN_BODY, GERMAN_MUSCLES_HURT
from .german_daily import GERMAN_DAILY
from .german_drugs import german_drugs
from .german_figures import GERMAN_EVERYDAY, GERMAN_FIGURES
from .german_images import GERMAN_IMAGES
from .german_mood import GERMAN_MOOD
from .german_negation import german_said
from .german_other_images import GERMAN_OTHER_IMAGES
from .german_others import GERMAN_OTHERS
from .german_setting import GERMAN_SETTINGS
from .german_spelling import GERMAN_CORRECTOR, folded
from .german_warnings import GERMAN_WARNINGS
from .patterns import PhraseBook

GERMAN = Tongue(
    phrases=PhraseBook(
        (
            *GERMAN_WARNINGS,
            *GERMAN_IMAGES,
            *GERMAN_BODY,
            *GERMAN_MOOD,
            *GERMAN_OTHERS,
            *GERMAN_OTHER_IMAGES,
            *GERMAN_DAILY,
        )
    ),
    figures=GERMAN_FIGURES,
    everyday=GERMAN_EVERYDAY,
    corrector=GERMAN_CORRECTOR,
    said=german_said,
    settings=GERMAN_SETTINGS,
    taken_back=re.compile(
        r"(?:heute|jetzt|seit heute|heute morgen)\b.{0,30}\b(?:schon|doch|ja|habe|ist|wieder|da)\b|"
        r"(?:doch|jetzt schon|wieder da)"
    ),
    muscles_hurt=re.compile(rf"\b(?:{folded(GERMAN_MUSCLES_HURT)})\b"),
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
