"""What the tables of complaints were written for: a sentence for each way of each pattern.

`english.txt` and `german.txt` hold a sentence a line under the complaint that the tables of that
language find in it, surely or in doubt, without the second ear and without the other language: both
hear most of it too, so that a way could be lost from a table and nobody would tell. Under "doubled"
stand sentences that another way hears as well. All is invented.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from pathlib import Path

from engine.symptoms import Symptom
from engine.symptoms.clauses import clauses, spelt
from engine.symptoms.ear import SecondOpinion
from engine.symptoms.german.language import GERMAN
from engine.symptoms.judging import ComplaintLanguage, heard
from engine.symptoms.patterns import Phrase, PhraseBook, ways
from engine.symptoms.screening import ENGLISH

LANGUAGES: Mapping[str, ComplaintLanguage] = {"English": ENGLISH, "German": GERMAN}
_BOUNDS = 5, -3  # a pattern stands between word boundaries: \b(?:...)\b
_IN_DOUBT, _DOUBLED = ", in doubt", ", doubled"


class _Undecided(SecondOpinion):
    """To whom nothing sounds either way, so that what the tables say stands."""

    def harmless(self, words: str, clause: str = "") -> float:
        return 0.3


@dataclass(frozen=True, slots=True)
class Way:
    """One way of saying a complaint: an alternative of a pattern."""

    language: str
    phrase: Phrase
    way: str

    def __str__(self) -> str:
        sure = "" if self.phrase.sure else " (in doubt)"
        return f"{self.language} {self.phrase.symptom}{sure}: {self.way}"

    def stands_in(self, clause: str) -> bool:
        """Whether it is in there: itself, and not only its phrase, which is."""
        if len(ways_of(self.phrase)) == 1:
            return True
        if self.way.replace(" ", "").isalpha():
            return f" {self.way} " in f" {clause} ".replace(",", " ")
        return (
            replace(self.phrase, written=rf"\b(?:{self.way})\b").pattern.search(clause) is not None
        )

    def left_out(self) -> Sequence[Phrase]:
        """What is left of the phrase without it."""
        rest = "|".join(way for way in ways_of(self.phrase) if way != self.way)
        return (replace(self.phrase, written=rf"\b(?:{rest})\b"),) if rest else ()


@dataclass(frozen=True, slots=True)
class Told:
    """A sentence, what the tables of its language find in it, and whether surely."""

    language: str
    symptom: Symptom
    sure: bool
    text: str
    doubled: bool = False
    """Whether it is known that no way hears it alone."""

    def read(self, phrases: PhraseBook | None = None) -> bool | None:
        """Whether it is found surely, by its tables or by these phrases; None where it isn't."""
        book = phrases or _of(self.language, self.symptom)
        tongue = replace(LANGUAGES[self.language], phrases=book)
        found = [
            clause.found[self.symptom].sure
            for clause in heard(self.text, clauses(self.text), tongue, False, _Undecided(self.text))
            if self.symptom in clause.found
        ]
        return any(found) if found else None

    def missed(self) -> bool:
        """Whether it is read otherwise than it says here."""
        return self.read() is not self.sure

    def told_of(self) -> Sequence[Way]:
        """The ways without any one of which it is read otherwise; all that stand in it, if doubled."""
        standing = self._standing()
        if self.doubled or len(standing) == 1:
            return standing
        return [one for one in standing if self.read(_but(one)) != self.sure]

    def _standing(self) -> Sequence[Way]:
        """The ways that stand in it and find that, as surely."""
        parts = [
            part.text for part in spelt(clauses(self.text), LANGUAGES[self.language].corrector)
        ]
        book = _of(self.language, self.symptom)
        found: dict[Way, None] = {}
        for part in parts:
            for phrase in book.worth_looking_for(part):
                if phrase.sure >= self.sure and phrase.pattern.search(part):
                    named = (Way(self.language, phrase, way) for way in ways_of(phrase))
                    found |= dict.fromkeys(way for way in named if way.stands_in(part))
        return list(found)


def told() -> Iterator[Told]:
    """Every sentence of both files."""
    for language in LANGUAGES:
        file = Path(__file__).with_name(f"{language.lower()}.txt")
        symptom, sure, doubled = Symptom.CHEST_PAIN, True, False
        for line in file.read_text(encoding="utf-8").splitlines():
            if line.startswith("["):
                sure, doubled = _IN_DOUBT not in line, _DOUBLED in line
                symptom = Symptom(line.strip("[]").partition(",")[0])
            elif line:
                yield Told(language, symptom, sure, line, doubled)


def every_way() -> Iterator[Way]:
    """Every way of every pattern of the tables."""
    for language, tongue in LANGUAGES.items():
        for phrase in tongue.phrases.all():
            for way in ways_of(phrase):
                yield Way(language, phrase, way)


@cache
def ways_of(phrase: Phrase) -> Sequence[str]:
    """The alternatives of a pattern."""
    return tuple(dict.fromkeys(ways(phrase.written[slice(*_BOUNDS)])))


def _of(language: str, symptom: Symptom) -> PhraseBook:
    return _books()[language, symptom]


@cache
def _books() -> Mapping[tuple[str, Symptom], PhraseBook]:
    """The tables of each complaint."""
    phrases: dict[tuple[str, Symptom], list[Phrase]] = defaultdict(list)
    for language, tongue in LANGUAGES.items():
        for phrase in tongue.phrases.all():
            phrases[language, phrase.symptom].append(phrase)
    return {key: PhraseBook(of_it) for key, of_it in phrases.items()}


def _but(one: Way) -> PhraseBook:
    """The tables of its complaint without this way."""
    return PhraseBook(
        left
        for phrase in _of(one.language, one.phrase.symptom).all()
        for left in (one.left_out() if phrase is one.phrase else (phrase,))
    )
