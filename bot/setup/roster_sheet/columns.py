"""What stands where in a sheet of many athletes: one row an athlete's event, the same in XLSX and CSV.

Code    Athlete  Event  Day         Place   Class     Stage time  Plan       Load (g/kg) ...
A2-E5   Mira     show   2027-05-09  London  Figure B  14:30       Even week  8.2

A code names athlete and event; without an event in it the row is that of the day, or one more. The
headings are in the reader's language; a sheet is read in any that there is, and columns with other
headings are the coach's own.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import partial

from bot.sheets import words as sheet_words
from bot.words.languages import in_each, mark, tr
from engine.values.limits import LIMIT_KEYS

CODE, ATHLETE, KIND, DAY, PLACE, CLASS = "code", "athlete", "kind", "day", "zone", "class_name"
STAGE, PLAN, LOAD, DEPLETION = "stage", "plan", "load_g_per_kg", "depletion"
ASKED, LOOK, REASON = "asked_at", "look_before_min", "reason"
TARGET, CAP, WEIGH_DAY, WEIGH_AT = "target_look", "weigh_cap", "weigh_day", "weigh_at"

_BEFORE: Mapping[str, str] = {
    CODE: mark("Code"),
    ATHLETE: mark("Athlete"),
    KIND: mark("Event"),
    DAY: mark("Day"),
    PLACE: mark("Place"),
    CLASS: mark("Class"),
    STAGE: mark("Stage time"),
    PLAN: mark("Plan"),
    LOAD: mark("Load (g/kg)"),
    DEPLETION: mark("Depletion"),
}
_AFTER: Mapping[str, str] = {
    ASKED: mark("Check-in at"),
    LOOK: mark("Look check (min before)"),
    REASON: mark("Reason"),
    TARGET: mark("Target look"),
    CAP: mark("Weigh-in cap (kg)"),
    WEIGH_DAY: mark("Weigh-in day"),
    WEIGH_AT: mark("Weigh-in time"),
}
COLUMNS = (*_BEFORE, *LIMIT_KEYS, *_AFTER)
#: Without these a sheet is not one of many athletes.
NEEDED = (DAY,)
WHO = (CODE, ATHLETE)

_CODE = re.compile(r"a(\d{1,9})(?:\s*-\s*e(\d{1,9}))?", re.IGNORECASE)


def heading(key: str) -> str:
    """The heading of a column, with its unit."""
    if key in LIMIT_KEYS:
        return f"{sheet_words.limit_heading(key)} ({LIMIT_KEYS[key].unit})"
    return tr({**_BEFORE, **_AFTER}[key])


def headings() -> dict[str, str]:
    """How each column may be headed, in any language, to its key; the unit may be left out."""
    found: dict[str, str] = {}
    for key in COLUMNS:
        for text in in_each(partial(heading, key)):
            plain = " ".join(text.split()).casefold()
            found[plain] = key
            found.setdefault(plain.partition(" (")[0], key)
    return found


def code_of(athlete_id: int, event_id: int | None) -> str:
    return f"A{athlete_id}-E{event_id}" if event_id else f"A{athlete_id}"


def code_in(text: str) -> tuple[int, int] | None:
    """Athlete and event (0: none named) of a code; None for any other text."""
    found = _CODE.fullmatch(text.strip())
    return (int(found[1]), int(found[2] or 0)) if found else None
