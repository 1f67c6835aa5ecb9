"""Complaints read out of free text, as stable ids.

English and German. A doubtful find is reported as such: the chat asks one question, and until it is
answered the find counts.
"""

from .finding import Concern, Hit, Screening, Suspicion
from .names import CAUTIONS, EATING_AND_MOOD, WARNINGS, Symptom
from .screening import from_report, screen

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
