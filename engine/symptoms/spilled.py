"""Whether somebody says of their look this morning that it has spilled over; in English and German.

It is no complaint: what it weighs beside the figures is the rules' matter. Doubt, fear, denial, a
question and another day are not taken for it.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.clauses import clauses
from engine.written.late import Late
from engine.written.word_set import word_set

_SAID = Late(
    r"\b(?:spil(?:led|t|ling) ?over|spill(?:ed)? right over|(?:have|did|i've|must have|i) spill over"
    r"|overspilled|gespillt|uberladen|ueberladen|ubergelaufen)\b"
)
#: The trade's short form, where nothing is named that was poured: "soft and blurry, spilled".
_SHORT = Late(
    r"\b(?:spilled|spilt)(?= *$| (?:now|today|already|a bit|a little|badly|i think)\b| *,)"
)
_UNDONE = word_set("""
    not no never don't didn't haven't hasn't isn't wasn't won't without nor neither avoid afraid scared
    worried worry fear if unless before until would could might may should hope hoping want if when
    yesterday last previous trial once usually always year week coach he she they
    nicht nie kein keine ohne weder angst sorge falls wenn bevor bis wurde konnte sollte hoffe hoffentlich
    gestern letzte letzten letztes letzter vorher damals sonst immer jahr woche probe er sie trainer
""")  # fmt: skip


def says_spilled(text: str) -> bool:
    """Whether the text says that the look has spilled over this morning."""
    for clause in clauses(text):
        words = [word.plain for word in clause.words]
        plain = " ".join(words)
        found = _SAID.search(plain) or _SHORT.search(plain)
        if found and clause.mark != "?" and not _UNDONE.intersection(words):
            return True
    return False
