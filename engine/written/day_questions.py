"""Which view answers a question about the plan, however it is put: "can I see all the days at once?".

`target_questions` and whole sentences are served in place of a person; what is read here is looser,
so it is only shown beside, after the words have gone to the coach.
"""

# ruff: noqa: E501 - a few patterns a line

from __future__ import annotations

import re

from engine.written.late import Late


def _late(*words: str) -> Late:
    return Late(rf"\b(?:{'|'.join(words)})\b", re.IGNORECASE)


_ASKS = Late(
    r"\?|^(?:\W*(?:hey|hi|hello|hallo|moin|sorry|quick one|ok|so|coach|bitte|please|pls|ähm?|und|and)\b)*\W*"
    r"(?:what|whats|what's|when|which|how|where|why|is|are|do|does|am|can|could|will|would|shall|should|show|"
    r"remind|gimme|give|tell|explain|send|list|need|lost|was|wann|(?:an |ab )?welche\w*|wie|wieviel|wo|warum|wieso|weshalb|"
    r"wozu|ist|is|sind|hab|kann|kannst|könntest|zeig\w*|gib|sag|schick\w*|listest|ab wann|erklär\w*|brauch\w*)\b"
    r"|\b(?:remind me|pls|please|bitte|help me out|gimme|sag mir|gib mir|zeig mir|schick mir|erklär\w*|in gramm|in grams|gilt)\b",
    re.IGNORECASE,
)
_FIGURES = (
    r"carbs?", r"carbohydrates?", r"protein", r"fats?", r"water", r"sodium", r"salt", r"fibre", r"fiber",
    r"steps?", r"cardio", r"macros?", r"targets?", r"numbers", r"figures", r"grams", r"meals?", r"food",
    r"kh", r"kohlenhydrate?n?", r"carb", r"eiwei(?:ß|ss)", r"proteine?", r"fett", r"wasser", r"salz",
    r"natrium", r"ballaststoffe", r"schritte?", r"makros?", r"ziele?", r"vorgaben?", r"werte", r"zahlen",
    r"mahlzeit(?:en)?", r"trinken", r"essen", r"ässe", r"drink", r"eat", r"eating", r"having", r"look(?:s|ing)? like", r"aus(?:sieht|schaut)?",
)  # fmt: skip
_KIND_OF_DAY = (
    r"(?:low|high|rest|load(?:ing)?|refeed|depletion|training|leg)(?: |-)?days?",
    r"(?:depletion|deplete|depleting|loading|load|refeed)",
    r"(?:lade|entlade|ruhe|refeed|trainings|bein|low|high)(?: |-)?tage?", r"entladen|laden|aufladen",
)  # fmt: skip
_PLAN = _late(
    *_FIGURES, *_KIND_OF_DAY, "plan", "plans", "day", "days", "tag", "tage", "vorgesehen", "gilt"
)
_OF_TODAY = _late(
    "today", "todays", "today's", "now", "tonight", "heute?", "heut", "jetzt", "hüt", "haid", "heit"
)
_THE_NUMBERS = _late("numbers", "targets?", "macros?", "ziele?", "vorgaben?", "makros?")
_DAYS = _late(
    "week", "tomorrow", "tmrw", "(?:mon|tues|wednes|thurs|fri|satur|sun)day", "thurs", "weds", "(?:all|other|rest of the|next|remaining) days",
    "(?:til|till|until|to) (?:the )?(?:show|stage|shoot)", "woche", "wochen\\w+", "morgen", "übermorgen",
    "(?:mon|diens|donners|frei|sams|sonn)tag", "mittwoch", "alle tage", "(?:bis )?zum? (?:wettkampf|auftritt|shooting|bühne)",
    "which days?", "what days?", "wel(?:che[mnrs]?|n) tag\\w*", "overview", "überblick", "glance", "(?:go|going|goes) up", "aufwärts|rauf|hoch ?geht",
)  # fmt: skip
_WEEK_ALONE = _late(
    "week", "wochen\\w+", "woche", "all (?:the |my )?days", "alle tage", "rest of the days"
)
_REASON = _late(
    "why", "how come", "explain", "logic", "reason", "warum", "wieso", "weshalb", "wozu", "erklär\\w*", "grund",
)  # fmt: skip
_CHANGED = _late(
    "carbs?",
    "carb",
    "kh",
    "kohlenhydrate?n?",
    "numbers",
    "targets?",
    "figures",
    "plan",
    "grams?",
    "gramm",
    "ziele?",
    "vorgaben?",
    "zahlen",
)
#: What is asked of judgement and of others' business, or told of what was: no view answers it.
_NOT_OF_THE_PLAN = _late(
    "should i change", "worth it", "after the show", "next season", "off ?season", "nach der saison", "weather", "wetter",
    "(?:can|could|may|should|shall) i (?!eat|drink|have|see|get)", "skip", "(?:darf|kann|sollte?|muss) ich (?!.*(?:essen|trinken|sehen|haben))", "auslassen",
    "flight", "flug", "hotel", "tan", "farbe", "photos?", "fotos?", "posing", "music", "musik", "suit", "bikini", "trunks",
)  # fmt: skip
_GIVE_TODAY = Late(
    r"^\W*(?:gimme|give me|show(?: me)?|send(?: me)?|gib mir|zeig(?: mir)?|schick(?: mir)?) (?:today|heute?|heut)\b",
    re.IGNORECASE,
)
_MOST_WORDS = 16


def view_of_the_plan(text: str) -> str | None:
    """`today`, `week` or `why`, where a view shows what a text asks; None for all else."""
    plain = " ".join(text.replace("\u2019", "'").split())
    if (
        len(plain.split()) > _MOST_WORDS
        or not _ASKS.search(plain)
        or _NOT_OF_THE_PLAN.search(plain)
    ):
        return None
    if _REASON.search(plain):
        return "why" if _CHANGED.search(plain) else None
    if _DAYS.search(plain) and (_PLAN.search(plain) or _WEEK_ALONE.search(plain)):
        return "week"
    if _OF_TODAY.search(plain) and _PLAN.search(plain):
        return "today"
    short = len(plain.split()) <= 6
    return "today" if short and (_THE_NUMBERS.search(plain) or _GIVE_TODAY.search(plain)) else None
