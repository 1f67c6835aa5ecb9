"""German words that name a drug. Only to notice that one was named: nothing here is advice."""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.symptoms.german.negation import german_drug_denied
from engine.symptoms.german.spelling import folded
from engine.written.late import Late

_DRUGS = Late(
    r"\b(?:"
    + folded(
        r"diuretik\w+|entwässerungs(?:mittel\w*|tablett\w*|pille\w*|tee|kapsel\w*)|wasser ?(?:tablett\w*|pillen?)|"
        r"(?:was|etwas|mittel|tablett\w*|pillen?) zum entwässern|furosemid\w*|torasemid\w*|spironolacton\w*|hydrochlorothiazid\w*|"
        r"abführ(?:mittel\w*|tablett\w*|tropfen|tee|zäpfchen)|glaubersalz|bittersalz|einlauf|flohsamen ?kur|"
        r"kalium(?:tablett\w*|präparat\w*|chlorid|citrat|kapsel\w*|pulver|infusion|brause\w*)|kalium (?:tablett\w*|präparat\w*|kapsel\w*|brause\w*|infusion|chlorid|citrat|pulver)|"
        r"\d+ ?(?:mg|g|mmol) kalium|(?:wie ?viel|soll ich|kann ich|wann)(?: [\w']+){0,3} kalium|"
        r"insulin ?spritze\w*|"
        r"ephedrin\w*|koffein ?(?:tablett\w*|pillen?|kapsel\w*)|fettverbrenner|fatburner|"
        r"anabolika|steroide?n?|testo|testosteron ?(?:spritze\w*|kur|gel|enantat|propionat)|wachstumshormone?n?|"
        r"schilddrüsenhormone?n?|l ?thyroxin|thyroxin|t3 (?:tablett\w*|kur)|stanozolol|trenbolon|winstrol|"
        r"blutdruck ?(?:tablett\w*|mittel|senker)|betablocker|kortison\w*|cortison\w*|infusionen?|kochsalz ?infusion|"
        r"überdosis|zu viele (?:tabletten|pillen)|schlaf ?tabletten|beruhigungs ?(?:mittel|tabletten)"
    )
    + r")\b"
)


def german_drugs(clause: str) -> list[tuple[int, int]]:
    """Where in a clause of folded German words a drug is named, but for those said not to be taken."""
    return [m.span() for m in _DRUGS.finditer(clause) if not german_drug_denied(clause, m.span())]
