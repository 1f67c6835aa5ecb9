"""German, as far as complaints go."""

from __future__ import annotations

from engine.symptoms.cues import Cued
from engine.symptoms.finding import ComplaintLanguage
from engine.symptoms.german.body import GERMAN_BODY, GERMAN_MUSCLES_HURT
from engine.symptoms.german.daily import GERMAN_DAILY
from engine.symptoms.german.dangers import GERMAN_DANGERS
from engine.symptoms.german.dialect import GERMAN_DIALECT
from engine.symptoms.german.drugs import german_drugs
from engine.symptoms.german.figures import GERMAN_EVERYDAY, GERMAN_FIGURES
from engine.symptoms.german.images import GERMAN_IMAGES
from engine.symptoms.german.mood import GERMAN_MOOD
from engine.symptoms.german.negation import german_polarity
from engine.symptoms.german.other_images import GERMAN_OTHER_IMAGES
from engine.symptoms.german.others import GERMAN_OTHERS
from engine.symptoms.german.setting import GERMAN_SETTINGS
from engine.symptoms.german.spelling import GERMAN_CORRECTOR, folded
from engine.symptoms.german.warnings import GERMAN_WARNINGS
from engine.symptoms.patterns import PhraseBook
from engine.written.late import Late
from engine.written.word_set import word_set

GERMAN = ComplaintLanguage(
    phrases=PhraseBook(
        (
            *GERMAN_WARNINGS,
            *GERMAN_DANGERS,
            *GERMAN_IMAGES,
            *GERMAN_BODY,
            *GERMAN_MOOD,
            *GERMAN_OTHERS,
            *GERMAN_OTHER_IMAGES,
            *GERMAN_DAILY,
            *GERMAN_DIALECT,
        )
    ),
    figures=Cued(GERMAN_FIGURES),
    everyday=GERMAN_EVERYDAY,
    corrector=GERMAN_CORRECTOR,
    said=german_polarity,
    settings=GERMAN_SETTINGS,
    taken_back=Late(
        r"(?:heute|jetzt|seit heute|heute morgen)\b.{0,30}\b(?:schon|doch|ja|habe|ist|wieder|da)\b|"
        r"(?:doch|jetzt schon|wieder da)"
    ),
    muscles_hurt=Late(rf"\b(?:{folded(GERMAN_MUSCLES_HURT)})\b"),
    no=word_set(
        "nein ne nee no keine keinen kein keins nichts nie negativ null 0 nicht nope nö noe"
    ),
    drugs=german_drugs,
)
