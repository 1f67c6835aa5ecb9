"""A text as the second ear reads it: small plain words, in pieces, and those as numbered features.

Training and listening both go through here, so that they cannot drift apart.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import combinations, pairwise
from zlib import crc32

from engine.symptoms.ear.kinds import KINDS
from engine.written.late import Late
from engine.written.word_set import word_set

#: How many features are told apart; two that fall on one number share its weight.
#: So many that an unknown word seldom falls on a known one's.
BUCKETS = 1 << 20
#: How much each family of features counts: words, their neighbours, letters, kinds of words.
FAMILIES = (1.0, 1.4, 1.0, 1.4)
#: Kinds of what a sentence can be about: the first of them is taken for its subject.
_SUBJECTS = ("me", "other", "animal", "thing", "fiction", "food", "wear", "you", "ask", "meta")

#: Kinds of what a complaint is told with: parts of a body, what they do, sleep, life, the mood.
_TELLING = word_set("""
    heart chest head breath limb face eyes speech gut throat back skin blood urine vomit nausea
    pain numb weak dizzy shake beat seen fall woke mind swell sleep fever death life low body_hate
    binge purge starve
""")
#: Words of these kinds that are said of anything, or are another word in the other language.
_OF_ANYTHING = word_set("""
    die gut back who where saw see seeing seh sehe sehen sieht gesehen vergessen forgot forget number
    numbers shaker crystals gefallen skipped zero last zehn white wieder
""")

_FOLD = str.maketrans({"ß": "ss", "’": "'", "`": "'", "´": "'", "…": ".", "é": "e", "è": "e"})
_UMLAUT = Late(r"[äa]e|ä|[öo]e|ö|[üu]e|ü")
_PLAIN = {"ä": "a", "a": "a", "ö": "o", "o": "o", "ü": "u", "u": "u"}
_TOKEN = Late(
    r"[a-z]+(?:'[a-z]+)?|\d+(?:[.,]\d+)?|[?!]|[\U0001f300-\U0001f64f\U0001f900-\U0001faff]"
)
_SENTENCE = Late(r"[.!?;:\n]+(?=\s|$)|\n+|(?<=[a-z]{3})[.!?;]+(?=[a-z])| - | – ")
_CLAUSE = Late(
    r",\s*|\s+(?:but|though|although|aber|and then|also|und dann|allerdings|jedoch|except|ausser|"
    r"and|und|weil|because)\s+"
)
#: As they are typed in a hurry; without its apostrophe a denial was a word of its own.
_APOSTROPHES = {
    word.replace("'", ""): word
    for word in word_set("""
        don't didn't dosn't can't couldn't won't wouldn't isn't wasn't aren't weren't haven't hasn't
        hadn't ain't shouldn't
    """)
}
_DIGIT = Late(r"(?<=[\d.,])\d")
_MOST = 1200  # characters of one piece that are looked at


def fold(text: str) -> str:
    """Small letters without dots and accents: "Schwäche", "schwaeche" and "schwache" are one."""
    small = text.lower().translate(_FOLD)
    return _UMLAUT.sub(lambda match: _PLAIN[match[0][0]], small)


def sentences(text: str) -> list[str]:
    """The sentences of a text, as written."""
    return [sentence for part in _SENTENCE.split(text) if (sentence := part.strip())]


def pieces(text: str) -> list[str]:
    """What is listened to one by one, as written: sentences, and where one has several, its clauses."""
    found: list[str] = []
    for whole in sentences(text):
        found.append(whole)
        parts = [part.strip() for part in _CLAUSE.split(whole)]
        if len(parts) > 1:
            found += [part for part in parts if len(part.split()) > 2]
            found += [f"{a}, {b}" for a, b in pairwise(parts) if len(parts) > 2 and a and b]
    return list(dict.fromkeys(found))


def words(piece: str) -> list[str]:
    """The words of a piece, figures by first digit and shape ("61.2" is "60.0")."""
    tokens = _TOKEN.findall(fold(piece[:_MOST]))
    return [_APOSTROPHES.get(token) or _DIGIT.sub("0", token) for token in tokens]


def features(piece: str) -> tuple[list[int], list[int], list[int], list[int]]:
    """The numbers of a piece's features, each once, by family."""
    tokens = words(piece)
    letters: set[int] = set()
    for token in tokens:
        letters.update(_letters(token))
    kinds = [kinds_of(token) for token in tokens]
    alone = {_number("w", token) for token in tokens}
    beside = _neighbours(tokens)
    present = sorted({kind for each in kinds for kind in each})
    about = subject(kinds)
    by_kind = _kinds(tokens, kinds, present)
    by_kind.update(_kind("subject ", about, "&", kind) for kind in present)
    return sorted(alone), sorted(beside), sorted(letters), sorted(by_kind)


def speaks_of_body_or_mood(piece: str) -> bool:
    """Whether it has a word of the kinds that a complaint is told with."""
    return any(
        not _TELLING.isdisjoint(kinds_of(word)) for word in words(piece) if word not in _OF_ANYTHING
    )


def subject(kinds: Sequence[tuple[str, ...]]) -> str:
    """What the piece begins to speak of: "my sister's heart" is of another, not of me."""
    first = next((at for at, of in enumerate(kinds) if any(k in _SUBJECTS for k in of)), None)
    if first is None:
        return "none"
    near = [kind for of in kinds[first : first + 3] for kind in of if kind in _SUBJECTS]
    return next((kind for kind in near if kind not in {"me", "you", "ask"}), near[0])


def _number(family: str, name: str) -> int:
    return crc32(f"{family}{name}".encode()) % BUCKETS


def _neighbours(tokens: list[str]) -> set[int]:
    """Words side by side or one apart."""
    ended = ["^", *tokens, "$"]
    names = [f"{a} {b}" for a, b in pairwise(ended)]
    names += [f"{a} _ {b}" for a, b in zip(tokens, tokens[2:], strict=False)]
    return {_number("w", name) for name in names}


@lru_cache(maxsize=4096)
def _letters(token: str) -> frozenset[int]:
    """Three to five letters in a row."""
    closed = f"<{token[:40]}>"
    return frozenset(
        _number("c", closed[start : start + size])
        for size in (3, 4, 5)
        for start in range(len(closed) - size + 1)
    )


def _kinds(tokens: list[str], kinds: list[tuple[str, ...]], present: list[str]) -> set[int]:
    """Kinds that occur together, and side by side with a word or a kind."""
    found = {_kind(kind) for kind in present}
    found.update(_kind(a, "&", b) for a, b in combinations(present, 2))
    if "me" in present:
        found.update(
            _kind("me&", a, "&", b)
            for a, b in combinations([kind for kind in present if kind != "me"], 2)
        )
    # Neighbours with one of them, or both, by kind alone: "my <heart>", "<heart> <beat>".
    for (token, of_token), (other, of_other) in pairwise(zip(tokens, kinds, strict=True)):
        for kind in of_token:
            found.add(_number("k", f"{kind} {other}"))
            found.update(_kind(kind, ">", after) for after in of_other)
        found.update(_number("k", f"{token} {kind}") for kind in of_other)
    return found


@lru_cache(maxsize=16384)
def _kind(*parts: str) -> int:
    return _number("k", "".join(parts))


def _table() -> tuple[dict[str, list[str]], dict[str, list[str]]]:
    whole: dict[str, list[str]] = {}
    stems: dict[str, list[str]] = {}
    for kind, listed in KINDS.items():
        for entry in listed.split():
            at = stems if entry.endswith("*") else whole
            at.setdefault(fold(entry.rstrip("*")), []).append(kind)
    return whole, stems


_WHOLE, _STEMS = _table()
_LONGEST = max(map(len, _STEMS))


@lru_cache(maxsize=4096)
def kinds_of(word: str) -> tuple[str, ...]:
    """The kinds that a folded word belongs to, in the order of their names."""
    word = word.removesuffix("'s") if word not in _WHOLE else word
    found = set(_WHOLE.get(word, ()))
    for size in range(2, min(len(word), _LONGEST) + 1):
        found.update(_STEMS.get(word[:size], ()))
    return tuple(sorted(found))
