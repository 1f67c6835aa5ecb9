"""Free text to clauses of plain words, each beside the words as they were typed."""

from __future__ import annotations

import unicodedata
from bisect import bisect_right
from collections.abc import Iterator, Mapping, Sequence, Set
from dataclasses import dataclass
from functools import lru_cache
from typing import Protocol

from engine.written.late import Late, word_set
from engine.written.units.reading import plain_with_places

_TOKEN = Late(r"w/o\b|\d+(?:[.,]\d+)*|[a-z0-9]+(?:'[a-z]+)*|[^\sa-z0-9']")
_PICTURES = {
    "🤮": " vomiting ", "🤢": " nausea ", "😵": " dizzy ", "🤕": " headache ", "💔": " ",
    "\n": " . ", "œ": "oe", "æ": "ae", "ß": "ss",
}  # fmt: skip
_ENDS = frozenset(".!?;:()[]|\n-+=•*…")
# Words that set what follows against what went before.
_TURNS = word_set("""
    but although except besides yet while whereas
    obwohl sondern dafur dagegen wahrend
""")
# The same, and as often in the midst of what they set apart: "die Brust tut aber weh".
_FLOATING_TURNS = word_set("though however tho aber jedoch allerdings trotzdem dennoch")
_BEFORE_FLOATING = word_set("""
    ist sind war waren bin bist habe hab hat hatte tut tun tat geht ging gehen wird wurde werde
    fuhlt fuhle fuhl rast schlagt macht mach kann konnte will mir mich ich es da gibt fallt
""")
# What is left after all that was denied: "no nausea only my speech is off".
_REMAINS = word_set("only just nur bloss lediglich")
_OF_WHAT = word_set("my the mein meine meinem meinen die der das")
_DENIED = word_set("no not kein keine keinen keinerlei nicht ohne without")
#: A clause that one of these ended is gone on from.
GOES_ON = word_set("and und & plus")
# What begins a statement of its own after "and" or a comma.
_STATEMENT = word_set("""
    i i'm im i've ive i'd my then now it it's there there's suddenly woke today yesterday
    ich mein meine mir mich dann jetzt nun plotzlich es bin habe hab heute gestern
""")


class Correcting(Protocol):
    """What puts words right, or gives them back."""

    def corrected(self, words: Set[str]) -> dict[str, str]: ...


@dataclass(frozen=True, slots=True)
class Word:
    """A plain word of a text, and where in it that was typed."""

    plain: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Clause:
    """What is judged by itself, the sign or word that ended it, and how it was typed."""

    words: tuple[Word, ...]
    mark: str
    typed: str

    @property
    def says_something(self) -> bool:
        """Whether it has words, and not figures alone."""
        return any(word.plain.isalpha() for word in self.words)


@dataclass(frozen=True, slots=True)
class Spelt:
    """A clause as one language reads it: words put right, joined by single spaces."""

    text: str
    starts: tuple[int, ...]
    clause: Clause

    def typed(self, source: str, span: tuple[int, int]) -> str:
        """How the words at a span of `text` were typed."""
        first = bisect_right(self.starts, span[0]) - 1
        last = bisect_right(self.starts, max(span[0], span[1] - 1)) - 1
        return source[self.clause.words[first].start : self.clause.words[last].end]


def clauses(text: str) -> list[Clause]:
    """The clauses of a text. Commas are kept as words: lists of what is denied need them."""
    found: list[Clause] = []
    words: list[Word] = []

    def end(mark: str, upto: int | None = None) -> None:
        done = words[:upto]
        typed = text[done[0].start : done[-1].end] if done else ""
        found.append(Clause(tuple(done), mark, typed.strip()))
        del words[:upto]

    tokens = list(_words(text))
    for index, word in enumerate(tokens):
        token = word.plain
        following = tokens[index + 1].plain if index + 1 < len(tokens) else ""
        if token in _ENDS or token in _TURNS:
            end(token)
        elif token in _FLOATING_TURNS:
            _floats(words, token, following, end)
        elif (
            _remains(words, token, following)
            or (token == "doch" and words and words[-1].plain == ",")
            or ((token in GOES_ON or token == ",") and following in _STATEMENT and words)
        ):
            end(token)
        elif token == "/":
            words.append(Word("or", word.start, word.end))
        elif token == "&":
            words.append(Word("and", word.start, word.end))
        elif token == "," or token[0].isalnum():
            words.append(word)
    end("")
    return found


def _remains(words: Sequence[Word], token: str, following: str) -> bool:
    """Whether it begins what is left of a list of denials."""
    denied = bool(words) and words[0].plain in _DENIED
    return denied and token in _REMAINS and following in _OF_WHAT


def _floats(words: list[Word], token: str, following: str, end: _End) -> None:
    """A turn that may stand at the head of what it sets apart, in its midst or at its end."""
    comma = max((i for i, word in enumerate(words) if word.plain == ","), default=-1)
    listed = any(word.plain in {"or", "nor", "oder", "noch"} for word in words[comma + 1 :])
    inside = bool(words) and words[-1].plain in _BEFORE_FLOATING
    at_end = not following or following in _ENDS
    if 0 <= comma < len(words) - 1 and not listed and (inside or at_end):
        end(token, comma)
    elif not inside:
        end(token)


class _End(Protocol):
    def __call__(self, mark: str, upto: int | None = None) -> None: ...


def _words(text: str) -> Iterator[Word]:
    letters, places = _folded(text)
    for match in _TOKEN.finditer(letters):
        yield Word(match[0], places[match.start()], places[match.end() - 1] + 1)


def _folded(text: str) -> tuple[str, Sequence[int]]:
    """Lower-case letters without accents, and for each the place in the text it came from."""
    characters, origins = plain_with_places(text)
    if characters.isascii() and "-" not in characters and "\n" not in characters:
        return characters, origins
    out: list[str] = []
    places: list[int] = []
    for index, char in enumerate(characters):
        new = char if char.isascii() and char != "\n" else _folded_character(char)
        if char == "-" and characters[index - 1 : index].isalpha():
            new = " " if characters[index + 1 : index + 2].isalpha() else new
        out.append(new)
        places += [origins[index]] * len(new)
    return "".join(out), places


@lru_cache(maxsize=4096)
def _folded_character(char: str) -> str:
    if (picture := _PICTURES.get(char)) is not None:
        return picture
    return "".join(c for c in unicodedata.normalize("NFKD", char) if not unicodedata.combining(c))


# "heat" and "hear" are words of their own, save before what only a heart does
_HEART_MEANT = Late(
    r"\bhea[rt](?:'s|s)?(?= (?:(?:is|was|keeps|has been|just) )?(?:rac(?:ing|ed)|pound\w*|flutter\w*|"
    r"skip\w*|beat\w*|attack|palpit\w*|thump\w*|hurts?|hurting|pains?|stopp\w*)\b)"
)


def spelt(parts: Sequence[Clause], corrector: Correcting) -> list[Spelt]:
    """The clauses with their misspelt words put right."""
    known = corrector.corrected({word.plain for clause in parts for word in clause.words} - {","})
    return [_spelt(clause, {",": ",", **known}) for clause in parts]


def _spelt(clause: Clause, known: Mapping[str, str]) -> Spelt:
    words = [known[word.plain] for word in clause.words]
    text, starts = _joined(words)
    meant = [bisect_right(starts, match.start()) - 1 for match in _HEART_MEANT.finditer(text)]
    if not meant:
        return Spelt(text, starts, clause)
    return Spelt(
        *_joined(["heart" if at in meant else word for at, word in enumerate(words)]), clause
    )


def _joined(words: Sequence[str]) -> tuple[str, tuple[int, ...]]:
    starts: list[int] = []
    at = 0
    for word in words:
        starts.append(at)
        at += len(word) + 1
    return " ".join(words), tuple(starts)
