"""Complaints read out of free text, as stable ids.

English and German. A doubtful find is reported as such: the chat asks one question, and until it is
answered the find counts.
"""

from engine.symptoms.finding import Concern, Hit, Screening, Suspicion
from engine.symptoms.names import CAUTIONS, EATING_AND_MOOD, WARNINGS, Symptom
from engine.symptoms.screening import from_report, screen

__all__ = [
    "CAUTIONS",
    "EATING_AND_MOOD",
    "WARNINGS",
    "Concern",
    "Hit",
    "Screening",
    "Suspicion",
    "Symptom",
    "from_report",
    "screen",
]
