"""What a check-in reports in words: complaints, drugs, and what could not be placed."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass

from engine.checkin import CheckIn
from engine.evidence import safety as evidence
from engine.evidence.source import Source
from engine.level import Level
from engine.symptoms import WARNINGS, Symptom, screen

from .flag import Flag

_NOTHING_REPORTED = re.compile(
    r"(?:none|no|nope|nothing|n/?a|nil|-|all fine|fine|ok|okay|good|all good|"
    r"(?:no|nothing)(?: new| other)? (?:symptoms?|complaints?|issues?|problems?|to report)|"
    r"keine?|nichts?|nein|ne|nö|alles (?:gut|ok|okay|bestens|fein|prima|super)|gut|passt(?: alles)?|"
    r"(?:keine|nichts)(?: neuen?| neues| anderen?| weiteren?)? ?"
    r"(?:symptome|beschwerden|probleme|auffälligkeiten|auffaelligkeiten|zu berichten|zu melden))?[.! ]*"
)
_SOURCES: dict[Symptom, tuple[Source, ...]] = {
    Symptom.CONFUSION: (evidence.HEW_BUTLER_2015,),
    Symptom.SEIZURE: (evidence.HEW_BUTLER_2015, evidence.FIRST_AID),
    Symptom.REPEATED_VOMITING: (evidence.HEW_BUTLER_2015,),
    Symptom.PALPITATIONS: (evidence.EMERGENCY_SIGNS,),
    Symptom.LIMB_WEAKNESS: (evidence.EMERGENCY_SIGNS,),
}


@dataclass(frozen=True, slots=True)
class Complaints:
    """Everything said, doubtful finds included: a question that is still open counts as a yes."""

    words: dict[Symptom, str]
    doubtful: frozenset[Symptom]
    drug_words: tuple[str, ...]
    unread: tuple[str, ...]

    def any_of(self, symptoms: frozenset[Symptom]) -> bool:
        return not symptoms.isdisjoint(self.words)


def complaints(checkin: CheckIn) -> Complaints:
    """Read the reported symptoms and the note of a check-in."""
    words: dict[Symptom, str] = {}
    sure: set[Symptom] = set()
    drugs: list[str] = []
    unread: list[str] = []
    for report in checkin.symptoms:
        read = screen(report)
        if (symptom := _by_id(report)) is not None:
            words.setdefault(symptom, report)
            sure.add(symptom)
        elif not (read.hits or read.denied or read.drug or _says_nothing(report)):
            unread.append(report)
    for text in (*(r for r in checkin.symptoms if _by_id(r) is None), checkin.note):
        read = screen(text)
        drugs += read.drug_words
        for hit in read.hits:
            words.setdefault(hit.symptom, hit.words)
            if hit.sure:
                sure.add(hit.symptom)
    return Complaints(words, frozenset(words) - sure, tuple(dict.fromkeys(drugs)), tuple(unread))


def _by_id(report: str) -> Symptom | None:
    by_id = "-".join(report.lower().replace("_", " ").replace("-", " ").split())
    return Symptom(by_id) if by_id in set(Symptom) else None


def _says_nothing(report: str) -> bool:
    return _NOTHING_REPORTED.fullmatch(report.strip().lower()) is not None


def complaint_flags(said: Complaints) -> Iterator[Flag]:
    """Warnings, then a drug named, then what nobody could place."""
    for symptom in Symptom:
        if symptom in WARNINGS and symptom in said.words:
            facts = {"words": said.words[symptom]}
            if symptom in said.doubtful:
                facts["doubtful"] = "yes"
            sources = _SOURCES.get(symptom, (evidence.FIRST_AID,))
            yield Flag(str(symptom), Level.WARNING, facts, sources)
    if said.drug_words:
        facts = {"words": ", ".join(said.drug_words)}
        yield Flag("drug-named", Level.CAUTION, facts, (evidence.DRUG_HARM,))
    if said.unread:
        facts = {"words": "; ".join(said.unread)}
        yield Flag("symptom-unread", Level.CAUTION, facts, (evidence.A_HUMAN_LOOKS,))
