"""Complaints read out of free text, as stable ids.

English and German. A doubtful find is reported as such: the chat asks one question, and until it is
answered the find counts.

To teach: phrases, idioms and everyday causes are TOML files in `english/` and `german/`, looked for
where one of a table's cues stands (for figures of speech and drugs `patterns.py` works them out; how
the files are written: its `Tables`). A new phrase gets a sentence that it alone hears in
`tests/engine/by_phrase/`; a test names those without, and a cue that leads to none. Another language
is a `ComplaintLanguage` like `german/language.py`.

Before either ear listens, sentences that only deny or say that it is over are taken out
(`all_clear.py`: every word must be of that business); what is a warning only with what the next
clause says stands in `across.py`, and signs that no symptom names are `DANGER_SIGNS`
(`english/dangers.toml`, `german/dangers.toml`). What no phrase foresaw is heard by `ear/`.
"""

from functools import lru_cache

from engine.symptoms.names import (
    EATING_AND_MOOD,
    WARNINGS,
    Concern,
    Hit,
    Screening,
    Suspicion,
    Symptom,
)


# One message is asked about from several sides, and once more when its turn has come, in a rush long
# after it came in: others would wait then for what takes milliseconds.
@lru_cache(maxsize=512)
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
