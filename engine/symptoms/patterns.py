"""The form of the phrase tables: patterns over one clause of plain words.

The tables are text: TOML files in the folder of their language, a subject each (`Tables`). Patterns
are regular expressions with bounded gaps, so that their cost stays in proportion to the text: `<3>`
stands for up to three words of any kind, `<,3>` for three words or commas, `<limb>` for one of a group
of words. The sure ones name the complaint; the doubtful ones lead to one question.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence, Set
from dataclasses import dataclass
from functools import cache, cached_property
from importlib.resources import files
from itertools import groupby
from typing import Any, NamedTuple

from engine.symptoms.denying import DENIALS, GERMAN_DENIALS
from engine.symptoms.names import Symptom
from engine.written.late import Late

_SHORTEST = 3
_MOST_WORDS = 8192


class CueIndex:
    """Of several lists of cues, those of which one stands in a word: looked for by each part of the
    word, which is kept, up to a bound, so that most of a text costs a lookup a word.
    """

    def __init__(self, lists: Iterable[Iterable[str]]) -> None:
        found: dict[str, set[int]] = {}
        for index, cues in enumerate(lists):
            for cue in cues:
                found.setdefault(cue, set()).add(index)
        self._of_cue = found
        self._lengths = sorted({len(cue) for cue in found})
        self._of_word: dict[str, tuple[int, ...]] = {}

    def of(self, clause: str) -> set[int]:
        """The places of those lists that have a cue in one of the clause's words."""
        found: set[int] = set()
        for word in clause.split(" "):
            known = self._of_word.get(word)
            found.update(self._looked_up(word) if known is None else known)
        return found

    def _looked_up(self, word: str) -> tuple[int, ...]:
        found: set[int] = set()
        for length in self._lengths:
            for start in range(len(word) - length + 1):
                found.update(self._of_cue.get(word[start : start + length], ()))
        known = tuple(sorted(found))
        if len(self._of_word) < _MOST_WORDS:
            self._of_word[word] = known
        return known


class Cued:
    """Patterns over a clause of plain words, in order, each tried only where it may be found."""

    def __init__(self, patterns: Iterable[Late]) -> None:
        self._patterns = tuple(patterns)

    def all(self) -> Sequence[Late]:
        return self._patterns

    def worth_trying(self, clause: str) -> Iterator[Late]:
        """Those that one of the words in the clause may belong to."""
        for index in sorted(self._index.of(clause) | self._always):
            yield self._patterns[index]

    @cached_property
    def _cues(self) -> list[frozenset[str]]:
        return [cues_of(pattern.written) for pattern in self._patterns]

    @cached_property
    def _index(self) -> CueIndex:
        return CueIndex(self._cues)

    @cached_property
    def _always(self) -> set[int]:
        return {index for index, cues in enumerate(self._cues) if not cues}


def cues_of(pattern: str) -> frozenset[str]:
    """Parts of words, one of which is in every text that this regular expression is found in.

    Empty where that cannot be told, or where one would be so short that it stands in most texts.
    """
    found: set[str] = set()
    for way in ways(pattern):
        cues = max(_needed(way), key=_worth, default=frozenset[str]())
        if _worth(cues)[0] < _SHORTEST:
            return frozenset()
        found |= cues
    return frozenset(found)


def _worth(cues: frozenset[str]) -> tuple[int, int]:
    """The longer the shortest of them the better, and then the fewer."""
    return min(map(len, cues), default=0), -len(cues)


def ways(pattern: str) -> list[str]:
    """The alternatives of a pattern, as far as they stand in no bracket."""
    found, depth, start = [], 0, 0
    for at, char in enumerate(pattern):
        depth += (char == "(") - (char == ")")
        if char == "|" and depth == 0:
            found.append(pattern[start:at])
            start = at + 1
    return [*found, pattern[start:]]


def _needed(way: str) -> Iterator[frozenset[str]]:
    """Of what has to stand in a text for this way of a pattern, the cues of each part."""
    run, at = "", 0
    while at < len(way):
        end = _end_of(way, at)
        least, after = _least(way, end)
        letter = way[at] if end == at + 1 and way[at] not in ".^$" else ""
        if letter and least:
            run += letter
        if not letter or after > end:
            yield from _of_letters(run)
            run = ""
        if way.startswith("(?:", at) and least:
            yield cues_of(way[at + 3 : end - 1])
        at = after
    yield from _of_letters(run)


def _of_letters(run: str) -> Iterator[frozenset[str]]:
    longest = max(run.split(" "), key=len)
    if longest:
        yield frozenset({longest})


def _end_of(way: str, at: int) -> int:
    """Where the letter, class, escape or bracket that begins there ends."""
    if way[at] == "\\":
        return at + 2
    if way[at] == "[":
        return way.index("]", at + 2) + 1
    if way[at] != "(":
        return at + 1
    depth = 0
    for end in range(at, len(way)):
        depth += (way[end] == "(") - (way[end] == ")")
        if depth == 0:
            return end + 1
    raise ValueError(f"a bracket is not closed: {way}")


def _least(way: str, at: int) -> tuple[int, int]:
    """How often at least what ends there has to stand (0 or 1), and where what says so ends."""
    least, end = 1, at
    if way[at : at + 1] in set("?*+"):
        least, end = int(way[at] == "+"), at + 1
    elif way[at : at + 1] == "{":
        end = way.index("}", at) + 1
        least = int(way[at + 1] not in "0,")
    if end > at and way[end : end + 1] == "?":
        end += 1
    return least, end


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


# In a pattern "kein" may go on as "keine?n?", and "hardly" denies there although it does so nowhere
# else.
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
    pattern = _with_groups(pattern, groups)
    pattern = _GAP.sub(lambda gap: _pause(gap[2]) if gap[1] else _gap(gap[2]), pattern)
    return rf"\b(?:{fold(pattern)})\b"


def _with_groups(pattern: str, groups: Mapping[str, str]) -> str:
    for name, words in groups.items():
        pattern = pattern.replace(f"<{name}>", words)
    return pattern


def spelled_briefly(pattern: str) -> str:
    """The regular expression of a pattern without groups of words."""
    return _spelled_out(pattern, {}, str)


_WHOLE_WORD = re.compile(r"(?<![a-z\\])[a-z]{8,}(?![a-z\\(?*+\[])")


class Writing(NamedTuple):
    """A language's groups of words, and how a pattern is written as the words of a clause are."""

    groups: Mapping[str, str]
    fold: Callable[[str], str]


_PLAIN = Writing({}, str)


class Tables:
    """What stands in the TOML files of a language: in the folder of `package`, a file a subject.

    `groups.toml` has its groups of words; in a file of complaints each `[[complaint]]` is one `table`,
    and the groups of its `[own]` stand as if they were written out; `figures.toml` says what is no
    complaint.
    """

    def __init__(self, package: str, fold: Callable[[str], str] = str, **groups: str) -> None:
        self._package = package
        self._writing = Writing({**self._read("groups"), **groups}, fold)

    def _read(self, subject: str) -> dict[str, Any]:
        file = files(self._package) / f"{subject}.toml"
        return tomllib.loads(file.read_text(encoding="utf-8"))

    def phrases(self, *subjects: str) -> dict[str, tuple[Phrase, ...]]:
        """The phrases of each of these subjects, in their order."""
        return {subject: tuple(self._phrases(**self._read(subject))) for subject in subjects}

    def _phrases(
        self, complaint: Sequence[dict[str, str]], own: Mapping[str, str] | None = None
    ) -> Iterator[Phrase]:
        for told in complaint:
            written = {key: _with_groups(words, own or {}) for key, words in told.items()}
            symptom, cues = Symptom(written.pop("symptom")), written.pop("cues")
            yield from table(symptom, cues, writing=self._writing, **written)

    def figures(self) -> Iterator[Late]:
        """What is said of other things: taken out of a text before anything is looked for."""
        return map(self._words, self._read("figures")["figures"])

    def everyday(self) -> dict[Symptom, Late]:
        """Where the words of a complaint have an everyday cause, so that they are in doubt."""
        causes = self._read("figures")["everyday"].items()
        return {Symptom(symptom): self._words(words) for symptom, words in causes}

    def _words(self, pattern: str) -> Late:
        return Late(rf"\b(?:{self._writing.fold(pattern)})\b")


def table(
    symptom: Symptom, cues: str, *, sure: str = "", doubtful: str = "", writing: Writing = _PLAIN
) -> list[Phrase]:
    """The phrases of one symptom, a pattern a line: the sure ones, then the doubtful ones."""
    groups, fold = writing
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
