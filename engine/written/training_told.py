"""How yesterday's training went, as people put it: "did half my cardio", "doppelt so viel cardio".

Every word of such a text is of that business; with one word more it says something else.
"""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum

from engine.written.late import Late, word_set
from engine.written.units.reading import in_one_line


class Went(StrEnum):
    """Beside what was planned."""

    AS_PLANNED = "as-planned"
    LESS = "less"
    MORE = "more"
    NONE = "none"


_CARDIO = word_set("cardio cardioeinheit hiit liss")
_SESSION = word_set("""
    training trainings session sessions workout workouts gym lifting lifted train trained trainiert
    trainieren einheit einheiten trainingseinheit krafttraining sport
""")
_TRAINED = word_set("trained lifted trainiert")  # of these words alone, it was done
_LESS = word_set("""
    less fewer half shorter short cut weniger halb halbe halben halbes hälfte kürzer verkürzt gekürzt
    abgebrochen
""")
_MORE = word_set("""
    more longer extra double doubled twice additional mehr länger doppelt doppelte doppeltes doppelten
    zusätzlich zusätzliches zusätzliche
""")
_NONE = word_set("""
    no not none didn't didnt skipped skip missed never without nicht kein keine keins ausgelassen
    weggelassen geschwänzt ausgefallen ohne verpasst
""")
_DONE = word_set("""
    did done do went complete completed finished gemacht erledigt absolviert durchgezogen war lief
""")
_PLAN = word_set("planned plan geplant plangemäß")
_BESIDE = word_set("""
    i my the a an at all of as per on to than then it was were and but also either actually only just a
    bit little much many so yesterday yesterday's about around roughly again min mins minute minutes
    minuten h hour hours stunde stunden
    ich hab habe hatte mein meine meinen das die der den vom von und aber auch doch etwas ein eine
    einen bisschen viel nur als wie nach gestern etwa ungefähr so ganz gar halt dann im beim ne
""")
_KNOWN = _CARDIO | _SESSION | _LESS | _MORE | _NONE | _DONE | _PLAN | _BESIDE
_TOKEN = Late(r"[^\W\d_]+(?:'[^\W\d_]+)?|\d+|%")
_CLAUSES = Late(r"[,;.!\n]+|\s[-–]\s|\s(?:but|aber)\s")
_CLAUSE = Late(r"(?:[^,;.!\n]|[,.](?=\d))+")
#: The figures that a clause begins with, up to one that has a unit of time behind it.
_BEFORE = Late(r"\s*(?:\d[\d.,/]*(?!\s*(?:min|h\b|hour|stund|%))\s+)*")
_TOGETHER = {
    frozenset({Went.NONE, Went.LESS}): Went.NONE,
    frozenset({Went.AS_PLANNED, Went.LESS}): Went.LESS,
    frozenset({Went.AS_PLANNED, Went.NONE}): Went.LESS,
    frozenset({Went.AS_PLANNED, Went.MORE}): Went.MORE,
}


def how_training_went(text: str) -> Went | None:
    """How it went; None where the text says anything else besides, or two things at once."""
    plain = in_one_line(text)
    if "?" in plain:
        return None
    clauses = [clause for clause in _CLAUSES.split(plain) if clause.strip()]
    ways = [_clause(_TOKEN.findall(clause)) for clause in clauses]
    found = [way for way in ways if way is not None]
    return together(found) if found and len(found) == len(ways) else None


def cut_out(text: str) -> tuple[str, tuple[Went, ...], str]:
    """The text with spaces where it tells of training and of nothing else, in which ways it does, and
    the words of such as told figures besides ("20 min more cardio"), which no way holds.
    """
    left, ways, with_figures = text, [], []
    for clause in _CLAUSE.finditer(text):
        begin = _BEFORE.match(clause[0])
        start = clause.start() + (begin.end() if begin is not None else 0)
        said = text[start : clause.end()]
        way = how_training_went(said)
        if way is None:
            continue
        ways.append(way)
        if any(map(str.isdigit, said)):
            with_figures.append(said.strip())
        left = left[:start] + " " * len(said) + left[start + len(said) :]
    return left, tuple(ways), ", ".join(with_figures)


def together(ways: Iterable[Went]) -> Went | None:
    """What several things said of it come to; None where they go against each other."""
    found = frozenset(ways)
    return next(iter(found)) if len(found) == 1 else _TOGETHER.get(found)


def _clause(words: list[str]) -> Went | None:
    said = set(words)
    if not all(word in _KNOWN or word.isdecimal() for word in words) or not said & (
        _CARDIO | _SESSION
    ):
        return None
    ways = [
        way for way, of in ((Went.NONE, _NONE), (Went.LESS, _LESS), (Went.MORE, _MORE)) if said & of
    ]
    if len(ways) > 1:
        return None
    if not ways:
        figures = any(word.isdecimal() for word in words)  # "40 min cardio": who knows of how many
        return Went.AS_PLANNED if said & (_PLAN | _DONE | _TRAINED) and not figures else None
    if ways[0] is Went.NONE and not said & _SESSION:
        return Went.LESS  # the cardio alone
    return ways[0]
