"""The form of the phrase tables: patterns over one clause of plain words.

Patterns are regular expressions with bounded gaps, so that their cost stays in proportion to the
text: `<3>` stands for up to three words of any kind, `<,3>` for three words or commas, `<limb>` for one of a group of words. The sure
ones name the complaint; the doubtful ones lead to one question.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Set
from dataclasses import dataclass
from functools import cache
from itertools import groupby

from engine.symptoms.cues import CueIndex, ways
from engine.symptoms.english.denying import DENIALS
from engine.symptoms.german.denying import DENIALS as GERMAN_DENIALS
from engine.symptoms.names import Symptom


@dataclass(frozen=True, slots=True)
class Phrase:
    """One way of saying it. `cues` are stems, one of which must be in the text at all."""

    symptom: Symptom
    sure: bool
    written: str
    cues: tuple[str, ...]
    words: frozenset[str]
    """The longer words that the pattern names in full: what a misspelt word may have meant."""
    denies: bool
    """Whether words of denial are part of the complaint itself, as in "legs won't move"."""

    @property
    def pattern(self) -> re.Pattern[str]:
        """Compiled when a cue of it is first met: most of the tables are never needed, and compiling
        them all at the start took a third of it.
        """
        return _compiled(self.written)


# In a pattern "kein" may go on as "keine?n?", and "hardly" denies there although it does so nowhere else.
_DENIAL = re.compile(
    rf"n't|<can't>|kaum|nicht|kein|\b(?:{'|'.join(sorted(DENIALS | GERMAN_DENIALS))})\b"
)
_W = r"[\w']+"
_GAP = re.compile(r"<(,?)([1-9])>")


def _gap(most: str) -> str:
    return rf"(?: {_W}){{0,{most}}} "


def _pause(most: str) -> str:
    return rf"(?: (?:{_W}|,)){{0,{most}}} "


@cache
def _compiled(written: str) -> re.Pattern[str]:
    return re.compile(written)


def _spelled_out(pattern: str, groups: Mapping[str, str], fold: Callable[[str], str]) -> str:
    """The regular expression that a pattern of a table stands for."""
    for name, words in groups.items():
        if f"<{name}>" in pattern:
            pattern = pattern.replace(f"<{name}>", words)
    pattern = _GAP.sub(lambda gap: _pause(gap[2]) if gap[1] else _gap(gap[2]), pattern)
    return rf"\b(?:{fold(pattern)})\b"


_GROUPS = {
    "limb": r"(?:legs?|arms?|limbs?|hands?|feet|foot|knees?|muscles|thighs?|calf|calves|quads?|grip|body|left side|right side|face)",
    "can't": r"(?:can't|couldn't|can not|could not|can barely|could barely|can hardly|could hardly|barely|hardly|unable to|not able to|wasn't able to|struggl\w+ to|difficult\w* to|hard to|trouble)",
    "vomit": r"(?:vomit(?:ed|ing|s)?|(?:throw|threw|thrown|throwing|threwing) up|puk(?:e|ed|ing|es)|barf(?:ed|ing)?|chuck(?:ed|ing) up|hurled|spew(?:ed|ing)|retch(?:ed|ing)|dry heav(?:ed|ing)|(?:being|been) sick|(?:bring|brought|bringing) (?:it|everything|food|dinner|breakfast|water) (?:back )?up)",
    "bad": r"(?:severe|severely|splitting|pounding|thunderclap|worst|worse than ever|terrible|awful|unbearable|blinding|excruciating|horrible|horrific|horrendous|killer|massive|crushing|agoni[sz]ing|intense|extreme|extremely|brutal|insane|crippling|debilitating|violent|exploding|really bad|so bad|very bad|super bad|real bad|sudden|stabbing|murderous|monster|mega)",
    "gut": r"(?:stomach|tummy|gut|guts|belly|abdominal|abdomen)",
    "headache": r"(?:headaches?|head ?aches?|migraines?|head pains?|pain in my head)",
    "pee": r"(?:urine|pee|peeing)",
    "many": r"(?:twice|thrice|again|repeatedly|constantly|continuous(?:ly)?|nonstop|non stop|on repeat|over and over|on and off|all (?:night|day|morning|evening|weekend)|several|multiple|many|a few|few times|couple of times|couple times|(?:\d+|two|three|four|five|six|seven|eight|ten) ?(?:times|x)|x ?\d+|\dx|every (?:hour|time|few|half|thirty|meal|\d+)|everything|for hours|more than once|still|since)",
}


def spelled_briefly(pattern: str) -> str:
    """The regular expression of a pattern without groups of words."""
    return _spelled_out(pattern, {}, str)


_WHOLE_WORD = re.compile(r"(?<![a-z\\])[a-z]{8,}(?![a-z\\(?*+\[])")


def table(
    symptom: Symptom,
    cues: str,
    *,
    sure: str = "",
    doubtful: str = "",
    groups: Mapping[str, str] = _GROUPS,
    fold: Callable[[str], str] = str,
) -> list[Phrase]:
    """The phrases of one symptom, a pattern a line: the sure ones, then the doubtful ones.

    `groups` are those of the language; `fold` writes a pattern as the words of a clause are written.
    """
    return [
        _phrase(symptom, fold(cues), line, _spelled_out(line, groups, fold), certain)
        for certain, block in ((True, sure), (False, doubtful))
        for written in block.strip().splitlines()
        for line in _by_denial(written.strip())
    ]


def _by_denial(line: str) -> Iterator[str]:
    """The ways of saying it on a line, those with a word of denial in them apart from the others."""
    alternatives = ways(line)
    for denies in (False, True):
        same = [way for way in alternatives if (_DENIAL.search(way) is not None) is denies]
        if same:
            yield "|".join(same)


def _phrase(symptom: Symptom, cues: str, line: str, written: str, sure: bool) -> Phrase:
    return Phrase(
        symptom=symptom,
        sure=sure,
        written=written,
        cues=tuple(cues.split()),
        words=frozenset(_WHOLE_WORD.findall(written)),
        denies=_DENIAL.search(line) is not None,
    )


#: A phrase, and from where to where it stands in the clause.
Found = tuple[Phrase, tuple[int, int]]


class PhraseBook:
    """The phrases of a language in their order, those of one table together under their cues."""

    def __init__(self, phrases: Iterable[Phrase]) -> None:
        tables = [(cues, tuple(same)) for cues, same in groupby(phrases, key=lambda p: p.cues)]
        self._tables = [same for _, same in tables]
        self._index = CueIndex(cues for cues, _ in tables)

    def all(self) -> Iterator[Phrase]:
        """Every phrase, in order."""
        for same in self._tables:
            yield from same

    def worth_looking_for(self, clause: str) -> Iterator[Phrase]:
        """The phrases of which a cue stands in the clause."""
        for index in sorted(self._index.of(clause)):
            yield from self._tables[index]

    def found_in(self, clause: str, *, but: Set[Symptom] = frozenset()) -> list[Found]:
        """Where its phrases stand in the clause, those of some symptoms left out."""
        return [
            (phrase, match.span())
            for phrase in self.worth_looking_for(clause)
            if phrase.symptom not in but
            for match in phrase.pattern.finditer(clause)
        ]
