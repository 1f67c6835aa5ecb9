"""Complaints read out of free text, as stable ids.

English and German. A doubtful find is reported as such: the chat asks one question, and until it is
answered the find counts.
"""

from functools import lru_cache

from engine.symptoms.finding import Concern, Hit, Screening, Suspicion
from engine.symptoms.names import EATING_AND_MOOD, WARNINGS, Symptom


@lru_cache(maxsize=16)  # one message is asked about from several sides
def screen(text: str) -> Screening:
    """Read free text for complaints and drugs; never raises, in time linear in the text."""
    # The phrases of both languages are many: they are loaded with the first text, not at the start.
    from engine.symptoms.screening import screen as read  # noqa: PLC0415

    return read(text)


def from_report(word: str) -> Symptom | None:
    """The symptom that an id, a button or a few words of one's own stand for, or None."""
    from engine.symptoms.screening import from_report as read  # noqa: PLC0415

    return read(word)


__all__ = [
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
