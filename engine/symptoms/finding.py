"""What a text was found to hold, and what it takes to find it in one language."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from typing import Protocol

from engine.symptoms.clauses import Correcting
from engine.symptoms.english.language import Settings
from engine.symptoms.english.negation import Polarity, Span
from engine.symptoms.names import WARNINGS, Symptom
from engine.symptoms.patterns import Cued, PhraseBook
from engine.written.late import Late


@dataclass(frozen=True, slots=True)
class Hit:
    """One complaint found. Where not `sure`, ask; until answered it counts."""

    symptom: Symptom
    sure: bool
    words: str


class Concern(StrEnum):
    """What a suspicion is about, the gravest first."""

    EMERGENCY = "emergency"
    BODY = "body"
    MOOD = "mood"


@dataclass(frozen=True, slots=True)
class Suspicion:
    """Words that no table placed and that sound like a complaint: to ask about, never a flag.

    `score` is the second ear's, from its threshold for asking up to 1: it orders suspicions and
    says nothing of how grave they are.
    """

    concern: Concern
    words: str
    score: float


@dataclass(frozen=True, slots=True)
class Screening:
    """What a text holds. `denied` lists complaints said not to be there.

    `unplaced` are the clauses, as they were typed, in which nothing was found, denied or named.
    """

    hits: tuple[Hit, ...] = ()
    denied: tuple[Symptom, ...] = ()
    drug_words: tuple[str, ...] = ()
    suspicions: tuple[Suspicion, ...] = ()
    unplaced: tuple[str, ...] = ()

    @property
    def drug(self) -> bool:
        return bool(self.drug_words)

    @property
    def symptoms(self) -> frozenset[Symptom]:
        return frozenset(hit.symptom for hit in self.hits)

    @property
    def warnings(self) -> tuple[Hit, ...]:
        return tuple(hit for hit in self.hits if hit.symptom in WARNINGS)

    @property
    def doubtful(self) -> tuple[Hit, ...]:
        return tuple(hit for hit in self.hits if not hit.sure)


@dataclass(slots=True)
class ClauseFindings:
    """What one clause says in one language."""

    found: dict[Symptom, Hit] = field(default_factory=dict)
    denied: set[Symptom] = field(default_factory=set)
    drugs: list[str] = field(default_factory=list)
    muscles_hurt: bool = False
    supposed: set[Symptom] = field(default_factory=set)
    """What was found near, feared or over, so that it stays in doubt however it sounds."""
    set_aside: set[Symptom] = field(default_factory=set)
    """What was found and befell somebody else, or long ago: whoever reads it so has understood it."""
    elsewhere: bool = False
    """Whether something was found that befell somebody else, or long ago, or is a figure of speech."""

    @property
    def placed(self) -> bool:
        """Whether the clause is accounted for."""
        return bool(self.found or self.denied or self.drugs or self.elsewhere)


class Judge(Protocol):
    """Says whether what stands at a span of a clause was said, denied, or left in doubt."""

    def __call__(
        self, clause: str, span: Span, others: Sequence[Span], *, denies: bool = False
    ) -> Polarity: ...


@dataclass(frozen=True, slots=True, kw_only=True)
class ComplaintLanguage:
    """A language, as far as complaints go."""

    phrases: PhraseBook
    figures: Cued
    everyday: Mapping[Symptom, Late]
    corrector: Correcting
    said: Judge
    settings: Settings
    taken_back: Late
    no: frozenset[str]
    muscles_hurt: Late
    drugs: Callable[[str], list[Span]]
