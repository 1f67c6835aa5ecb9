"""What a check-in reports in words: complaints, drugs, and what could not be placed."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from engine.evidence import safety as evidence
from engine.evidence.source import Source
from engine.safety.flag import Flag, FlagId
from engine.symptoms import Symptom, screen
from engine.values.checkin import CheckIn
from engine.values.level import Level
from engine.written.late import Late

_NOTHING_REPORTED = Late(
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
    Symptom.MUSCLE_BREAKDOWN: (evidence.MUSCLE_BREAKDOWN,),
    Symptom.URINE_DARK: (evidence.ARMSTRONG_1994, evidence.MUSCLE_BREAKDOWN),
    Symptom.FAST_HEART: (evidence.RESTING_PULSE,),
}
_BY_LEVEL = {
    Level.WARNING: (evidence.FIRST_AID,),
    Level.CAUTION: (evidence.A_HUMAN_LOOKS,),
    Level.ADVISORY: (evidence.A_COACH_IS_TOLD,),
}
_SWELLING = frozenset({Symptom.SWELLING, Symptom.SWOLLEN_HANDS})


@dataclass(frozen=True, slots=True)
class Complaints:
    """Everything said, by complaint in the person's own words ("" where a button was ticked).

    `doubtful` are finds that may mean something else; what was asked about and said not to be
    meant is left out altogether.
    """

    words: dict[Symptom, str]
    doubtful: frozenset[Symptom]
    drug_words: tuple[str, ...]
    unread: tuple[str, ...]

    @property
    def sure(self) -> frozenset[Symptom]:
        return frozenset(self.words) - self.doubtful

    def quoted(self, symptoms: frozenset[Symptom]) -> str:
        """What was written of these, each sentence once; "" where all were ticked."""
        told = (self.words[symptom] for symptom in Symptom if symptom in symptoms & set(self.words))
        return "; ".join(dict.fromkeys(words for words in told if words))


def complaints(checkin: CheckIn) -> Complaints:
    """Read the reported symptoms and the note of a check-in."""
    words: dict[Symptom, str] = {}
    sure: set[Symptom] = set()
    drugs: list[str] = []
    unread: list[str] = []
    for report in checkin.symptoms:
        read = screen(report)
        if (symptom := _by_id(report)) is not None:
            words.setdefault(symptom, "")
            sure.add(symptom)
        elif not (read.hits or read.denied or read.drug or _says_nothing(report)):
            unread.append(report)
    for text in (*(r for r in checkin.symptoms if _by_id(r) is None), checkin.note):
        read = screen(text)
        drugs += read.drug_words
        for hit in read.hits:
            if hit.sure:
                sure.add(hit.symptom)
            elif hit.symptom in checkin.cleared:
                continue
            words[hit.symptom] = words.get(hit.symptom) or text.strip()
    return Complaints(words, frozenset(words) - sure, tuple(dict.fromkeys(drugs)), tuple(unread))


def _by_id(report: str) -> Symptom | None:
    by_id = "-".join(report.lower().replace("_", " ").replace("-", " ").split())
    return Symptom(by_id) if by_id in set(Symptom) else None


def _says_nothing(report: str) -> bool:
    return _NOTHING_REPORTED.fullmatch(report.strip().lower()) is not None


def complaint_flags(said: Complaints) -> Iterator[Flag]:
    """What was complained of at its own level, what it adds up to, and what is still in doubt.

    A doubt never rises above a caution: it is asked about, and only a yes makes it what it may be.
    Dark urine is flagged with its colour, elsewhere.
    """
    for symptom in Symptom:
        doubted = symptom in said.doubtful and symptom.level is not Level.ADVISORY
        if symptom in said.words and not doubted and symptom is not Symptom.URINE_DARK:
            facts = {"words": said.words[symptom]} if said.words[symptom] else {}
            if symptom in said.doubtful:
                facts["doubtful"] = "yes"
            yield Flag(
                symptom, symptom.level, facts, _SOURCES.get(symptom, _BY_LEVEL[symptom.level])
            )
    yield from _together(said)
    in_doubt = frozenset(s for s in said.doubtful if s.level is not Level.ADVISORY)
    if in_doubt:
        facts = {
            "words": said.quoted(in_doubt),
            "about": ", ".join(symptom for symptom in Symptom if symptom in in_doubt),
        }
        yield Flag(FlagId.DOUBT, Level.CAUTION, facts, (evidence.A_HUMAN_LOOKS,))
    if said.drug_words:
        facts = {"words": ", ".join(said.drug_words)}
        yield Flag(FlagId.DRUG_NAMED, Level.CAUTION, facts, (evidence.DRUG_HARM,))
    if said.unread:
        facts = {"words": "; ".join(said.unread)}
        yield Flag(FlagId.SYMPTOM_UNREAD, Level.CAUTION, facts, (evidence.A_HUMAN_LOOKS,))


def _together(said: Complaints) -> Iterator[Flag]:
    """Complaints that are more together than each alone, low sodium left to `low_sodium`."""
    muscle = frozenset({Symptom.URINE_DARK, Symptom.CRAMPS})
    if muscle <= said.sure and Symptom.MUSCLE_BREAKDOWN not in said.words:
        facts = {"words": words} if (words := said.quoted(muscle)) else {}
        yield Flag(
            Symptom.MUSCLE_BREAKDOWN, Level.WARNING, facts, _SOURCES[Symptom.MUSCLE_BREAKDOWN]
        )
    if Symptom.NO_URINE in said.sure and said.sure & _SWELLING:
        both = frozenset({Symptom.NO_URINE, *_SWELLING})
        facts = {"words": words} if (words := said.quoted(both)) else {}
        yield Flag(FlagId.NO_URINE_SWELLING, Level.WARNING, facts, (evidence.NO_URINE,))
