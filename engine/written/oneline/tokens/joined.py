"""Tokens that belong together: ranges, corrections, stones with pounds, numbers written out."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from engine.written.oneline.report import CORE
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import is_surely_number
from engine.written.oneline.tokens.pieces import Figure, Mark, Means, Token, Unit, Word
from engine.written.oneline.tokens.scanning import expanded, scan

LEAST_OF_A_WEIGHT = 30
DIGITS = 10
_SAME_SCALE = 0.02  # of the number: so near each other lie two weights of one morning
_MOST_CORRECTED = 0.1  # of the number: what differs by more may be another answer
# these correct what is near, and say nothing before what is not
_HESITATES = frozenset(
    {"ne", "äh", "ähm", "öh", "uh", "uhm", "erm", "er", "err", "hm", "hmm", "wait"}
)
_LAUGHS = frozenset({"haha", "hihi", "lol", "lmao", "hehe"})
_BETWEEN = frozenset(",-:(;.!*")
_ARTICLES = frozenset({"a", "an", "ne", "eine", "nen", "na"})
_LEAST_SAID = 4  # "a two litre jug", "a three day weekend"


def corrected(tokens: list[Token]) -> list[Token]:
    """ "61.2, no, 61.4" is 61.4; two numbers farther apart become a range, to be asked about."""
    out: list[Token] = []
    for at, token in enumerate(tokens):
        first = next((i for i in range(len(out) - 1, -1, -1) if isinstance(out[i], Figure)), None)
        before = out[first] if first is not None else None
        if isinstance(before, Figure) and before.high and before.corrected:
            before = replace(before, number=before.high, high="")  # "5, no 6, no actually 6.5"
        if not isinstance(token, Figure) or not isinstance(before, Figure) or before.high:
            out.append(token)
            continue
        between = out[first + 1 :] if first is not None else []
        words = [t for t in between if isinstance(t, Word) and t.text not in _LAUGHS]
        marks = [t for t in between if isinstance(t, Mark)]
        of_ten = before.unit is Unit.OF_TEN
        corrects = _is_put_right(words, of_ten=of_ten) or _is_told_closer(before, token, words)
        words = [word for word in words if Means.CORRECTS in word.means]
        units = {before.unit, token.unit} - {Unit.NONE}
        following = tokens[at + 1] if at + 1 < len(tokens) else None
        counted = isinstance(following, Word) and not following.meanings
        one, other = rough(before.number), rough(token.number)
        weighed_again = one >= LEAST_OF_A_WEIGHT and abs(other - one) <= _SAME_SCALE * one
        if weighed_again and any(Means.CORRECTS in word.means for word in words):
            corrects, counted = True, False
            marks = []
        if not corrects or counted or len(units) > 1 or any(m.text not in _BETWEEN for m in marks):
            out.append(token)
            continue
        joined = replace(
            token, start=before.start, unit=token.unit if before.unit is Unit.NONE else before.unit,
            unit_text=token.unit_text or before.unit_text,
        )  # fmt: skip
        if one < LEAST_OF_A_WEIGHT <= other and before.unit in (Unit.VOLUME, Unit.OF_TEN):
            out.append(token)  # "3 litres sorry. 60.6"
            continue
        apart = abs(other - one) > _MOST_CORRECTED * abs(one)
        label = out[first - 1] if first else None
        of_score = of_ten or (isinstance(label, Word) and _is_fullness(label))
        if apart and of_score and _is_score_anew(one, other, tokens):
            apart = False  # "full 6 ne 7"
        if apart and all(word.text in _HESITATES for word in words):
            out.append(token)
            continue
        surely = any(word.text not in _HESITATES for word in words)
        if apart and surely and Unit.VOLUME in units and other <= 2 * one <= 4 * other:
            apart = False  # "4 l, no, 5"
        if apart and surely and of_score and other <= DIGITS:
            apart = False
        if apart:
            text = f"{before.number}-{token.number}"
            joined = replace(
                joined, number=before.number, high=token.number, text=text, corrected=surely
            )
        del out[first:]
        out.append(joined)
    return out


def _is_put_right(words: list[Word], *, of_ten: bool) -> bool:
    """Whether the words between two figures put the second in the place of the first."""
    return any(Means.CORRECTS in word.means for word in words) and all(
        # "10/10 full, no, 8"
        word.says(Means.CORRECTS, Means.ABOUT) or (of_ten and _is_fullness(word))
        for word in words
    )


def _is_fullness(word: Word) -> bool:
    label = word.means.get(Means.LABEL)
    return label is not None and label.about == "fullness"


def _is_score_anew(one: float, other: float, tokens: list[Token]) -> bool:
    """Whether of two scores in a row the second is meant, as the other answers stand elsewhere."""
    others = sum(isinstance(token, Figure) for token in tokens) - 2
    scores = one.is_integer() and other.is_integer() and max(one, other) <= DIGITS
    return scores and others >= len(CORE) - 1


def _is_told_closer(before: Figure, token: Figure, words: list[Word]) -> bool:
    """ "just over 5 litres, like 5.2": the drink once more, to a tenth."""
    if before.unit is not Unit.VOLUME or token.unit not in (Unit.NONE, Unit.VOLUME) or not words:
        return False
    one, other = rough(before.number), rough(token.number)
    near = 0 < abs(other - one) <= _MOST_CORRECTED * one
    return near and "." in token.number and all(Means.ABOUT in word.means for word in words)


def interpretations(line: str, *, language: str, bare_stones: bool) -> list[list[Token]]:
    """The ways in which the line can be cut into tokens: commas may part numbers or mark decimals.

    With `bare_stones`, two numbers at the start may be stones and pounds.
    """
    cut = [_without_lone_words(list(tokens)) for tokens in expanded(scan(line, language))]
    pieces = [_ranged(corrected(tokens)) for tokens in cut]
    pieces = [other for tokens in pieces for other in _point_unsaid(tokens)]
    if bare_stones:
        pieces = [other for tokens in pieces for other in _stones_and_pounds(tokens)]
    return pieces


def _without_lone_words(tokens: list[Token]) -> list[Token]:
    """A number written out counts with a unit, beside a label or alone: "one" is often a word."""

    def stays(index: int, figure: Figure) -> bool:
        spelt = figure.text[:1].isalpha()
        if not spelt or figure.unit is not Unit.NONE or len(tokens) == 1:
            return True
        left = tokens[index - 1] if index else None
        right = tokens[index + 1] if index + 1 < len(tokens) else None
        beside = [t for t in (left, right) if isinstance(t, Word) and not _is_scale(t, right)]
        if any(t.says(Means.LABEL, Means.VESSEL) for t in beside):
            return True
        if is_surely_number(figure.number):
            return True
        if (
            isinstance(left, Word)
            and left.text in _ARTICLES
            and rough(figure.number) >= _LEAST_SAID
        ):
            return True  # "an eight if I say so": read, or asked about
        small = (
            (Means.ABOUT, Means.LINK, Means.RANGE, Means.CORRECTS) if figure.number != "1" else ()
        )
        return all(
            token is None
            or not isinstance(token, Word)
            or token.says(*small) is not None
            or not any(map(str.isalnum, token.text))
            for token in (left, right)
        )

    return [
        Word(start=token.start, end=token.end, text=token.text)
        if isinstance(token, Figure) and not stays(index, token)
        else token
        for index, token in enumerate(tokens)
    ]


def _is_scale(word: Word, right: Token | None) -> bool:
    """Of "two scales" the number counts the scales."""
    return word is right and word.text.startswith(("scales", "waagen"))


def _point_unsaid(tokens: list[Token]) -> Iterator[list[Token]]:
    """The line as it is, and with "fifty nine four" as 59.4: so a weight is said aloud, and so are two
    answers.
    """
    yield tokens
    pairs = (
        index
        for index, (one, other) in enumerate(pairwise(tokens))
        if isinstance(one, Figure) and isinstance(other, Figure)
        and rough(one.number) >= LEAST_OF_A_WEIGHT
    )  # fmt: skip
    first = next(pairs, None)
    if first is None:
        return
    whole, tenth = tokens[first], tokens[first + 1]
    assert isinstance(whole, Figure) and isinstance(tenth, Figure)
    if whole.high or tenth.high:
        return
    spelt = all(figure.text[:1].isalpha() for figure in (whole, tenth))
    digits = whole.number.isdecimal() and tenth.number.isdecimal()
    if not spelt or not digits or tenth.unit is not Unit.NONE or whole.unit is not Unit.NONE:
        return
    if int(whole.number) >= LEAST_OF_A_WEIGHT and 0 < int(tenth.number) < DIGITS:
        joined = replace(
            whole, end=tenth.end, number=f"{whole.number}.{tenth.number}",
            text=f"{whole.text} {tenth.text}",
        )  # fmt: skip
        yield [*tokens[:first], joined, *tokens[first + 2 :]]


def _ranged(tokens: list[Token]) -> list[Token]:
    """Two figures with "to", "or" or a dash between them are one figure with two ends."""
    out: list[Token] = []
    at = 0
    while at < len(tokens):
        first = tokens[at]
        if isinstance(first, Figure) and at + 2 < len(tokens) and not first.high:
            if _says_or_maybe(tokens[at + 1 : at + 4]):
                tokens = [*tokens[: at + 2], *tokens[at + 3 :]]
            between, second = tokens[at + 1], tokens[at + 2]
            if isinstance(second, Figure) and _moved(tokens, at, between, second):
                before = out.pop()  # "from 82.0 to 81.8", "up from 5 to 6"
                out.append(replace(second, start=before.start))
                at += 3
                continue
            if isinstance(second, Figure) and _makes_range(tokens, at, first, between, second):
                out.append(
                    replace(
                        second,
                        start=first.start,
                        number=first.number,
                        high=second.number,
                        unit=second.unit if first.unit is Unit.NONE else first.unit,
                        unit_text=second.unit_text or first.unit_text,
                        text=f"{first.number}-{second.number}",
                        corrected=_is_from(tokens[at - 1]) if at else False,
                    )
                )
                at += 3
                continue
        out.append(first)
        at += 1
    return out


def _says_or_maybe(following: Sequence[Token]) -> bool:
    """Whether another figure is offered, with a word more than "or": "5 or maybe 8"."""
    if len(following) < 3 or not isinstance(following[2], Figure):
        return False
    between = [token.text if isinstance(token, Word) else "" for token in following[:2]]
    return between[0] in ("or", "oder") and between[1] in _MAYBE | _EVEN


_MOVES = {("up from", "to"), ("down from", "to"), ("von", "auf")}


def _moved(tokens: list[Token], at: int, between: Token, second: Figure) -> bool:
    """Whether a figure is told with the one it was before."""
    before = tokens[at - 1] if at else None
    if not isinstance(before, Word) or not isinstance(between, Word):
        return False
    if (before.text, between.text) in _MOVES:
        return True  # "fullness up from 5 to 6"
    named = before.text in ("from", "von") and between.text in ("auf", "to")
    return named and (rough(second.number) >= LEAST_OF_A_WEIGHT or _of_fullness(tokens[:at]))


def _of_fullness(before: list[Token]) -> bool:
    """Whether the words right before tell of it: "fullness went from 5 to 6"."""
    labels = (token.means.get(Means.LABEL) for token in before[-4:] if isinstance(token, Word))
    return any(label is not None and label.about == "fullness" for label in labels)


def _is_from(token: Token) -> bool:
    """Whether what follows may tell from where to where a figure went, and no range."""
    return isinstance(token, Word) and token.text in ("from", "von")


def _makes_range(
    tokens: list[Token], at: int, first: Figure, between: Token, second: Figure
) -> bool:
    if isinstance(between, Word):
        if between.means.get(Means.RANGE):
            return True
        if between.text in _MAYBE and _are_next(first, second):
            return True  # "2 maybe 3"
        before = tokens[at - 1] if at else None
        if not isinstance(before, Word):
            return False
        opened = before.text.endswith(("between", "zwischen"))
        moved = before.text in ("from", "von") and between.text == "auf"
        return moved or (opened and between.text in ("and", "und"))
    if isinstance(between, Mark) and between.text == "/":
        return _next_scores(tokens, at, first, second)
    if not (isinstance(between, Mark) and between.text == "-"):
        return False
    spaced = second.start - first.end > 2
    if spaced and sum(_is_dash(token) for token in tokens) > 1:
        return False  # dashes part the answers: "60.7 - fullness 2 - 3"
    before = tokens[at - 1] if at else None
    if (
        first.unit is Unit.NONE
        and second.unit is Unit.VOLUME
        and spaced
        and isinstance(before, Word)
    ):
        label = before.means.get(Means.LABEL)
        if label and label.about != "water_l":
            return False  # "fullness 2 - 2.5 l"
    if first.unit is Unit.VOLUME and second.unit is Unit.NONE and spaced:
        return False  # "1.5 l - 2 full"
    chained = at + 3 < len(tokens) and _is_dash(tokens[at + 3])
    chained |= at > 0 and _is_dash(tokens[at - 1])
    low, high = rough(first.number), rough(second.number)
    return not chained and low < high <= 1.35 * low + 1


def _next_scores(tokens: list[Token], at: int, first: Figure, second: Figure) -> bool:
    """Whether "6/7" are two scores between which somebody wavers, and not two answers."""
    beside = [tokens[i] for i in (at - 1, at + 3) if 0 <= i < len(tokens)]
    chained = any(isinstance(token, Mark) and token.text == "/" for token in beside)
    tight = second.start - first.end == 1 and {first.unit, second.unit} == {Unit.NONE}
    scores = first.number.isdecimal() and second.number.isdecimal()
    enough = sum(isinstance(token, Figure) for token in tokens) > len(CORE)
    return tight and scores and enough and not chained and _are_next(first, second)


_EVEN = frozenset({"even", "rather", "more", "sogar", "eher", "doch"})
_MAYBE = frozenset(
    {"maybe", "perhaps", "vielleicht", "eventuell", "evtl", "maybe a", "vielleicht ne"}
)


def _are_next(first: Figure, second: Figure) -> bool:
    """Whether they are two scores side by side."""
    whole = first.number.isdecimal() and second.number.isdecimal()
    bare = {first.unit, second.unit} <= {Unit.NONE, Unit.OF_TEN}
    return whole and bare and int(second.number) == int(first.number) + 1 <= DIGITS


def _is_dash(token: Token) -> bool:
    return isinstance(token, Mark) and token.text == "-"


def _stones_and_pounds(tokens: list[Token]) -> Iterator[list[Token]]:
    """The line as it is, and with its first two bare numbers as stones and pounds."""
    yield tokens
    first = next((i for i, t in enumerate(tokens) if isinstance(t, Figure)), None)
    if first is None:
        return
    stones = tokens[first]
    second = first + 1
    while second < len(tokens) and isinstance(tokens[second], Mark):
        second += 1
    pounds = tokens[second] if second < len(tokens) else None
    assert isinstance(stones, Figure)
    bare = isinstance(pounds, Figure) and pounds.unit in (Unit.NONE, Unit.WEIGHT)
    if not bare or stones.unit is not Unit.NONE or not stones.number.isdecimal():
        return
    assert isinstance(pounds, Figure)
    if pounds.unit is Unit.WEIGHT and not pounds.unit_text.startswith(("lb", "pound", "#")):
        return
    whole = replace(
        stones, end=pounds.end, unit=Unit.WEIGHT, unit_text=f"st {pounds.number} lb",
        text=f"{stones.number} st {pounds.number} lb",
    )  # fmt: skip
    yield [*tokens[:first], whole, *tokens[second + 1 :]]
