"""Tokens that belong together: ranges, corrections, stones with pounds, numbers written out."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from engine.written.oneline.digits import rough
from engine.written.oneline.meanings import Means
from engine.written.oneline.numbers import is_surely_number
from engine.written.oneline.pieces import Figure, Mark, Token, Unit, Word
from engine.written.oneline.report import CORE
from engine.written.oneline.tokens import expanded, scan


def interpretations(line: str, *, language: str, bare_stones: bool) -> list[list[Token]]:
    """The ways in which the line can be cut into tokens: commas may part numbers or mark decimals.

    With `bare_stones`, two numbers at the start may be stones and pounds.
    """
    cut = [_without_lone_words(list(tokens)) for tokens in expanded(scan(line, language))]
    pieces = [_ranged(_corrected(tokens)) for tokens in cut]
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
        if any(isinstance(t, Word) and t.says(Means.LABEL, Means.VESSEL) for t in (left, right)):
            return True
        if is_surely_number(figure.number):
            return True
        small = (
            (Means.ABOUT, Means.LINK, Means.RANGE, Means.CORRECTS) if figure.number != "1" else ()
        )
        return all(
            token is None or not isinstance(token, Word) or token.says(*small) is not None
            for token in (left, right)
        )

    return [
        Word(start=token.start, end=token.end, text=token.text)
        if isinstance(token, Figure) and not stays(index, token)
        else token
        for index, token in enumerate(tokens)
    ]


_LEAST_OF_A_WEIGHT = 30
_DIGITS = 10


def _point_unsaid(tokens: list[Token]) -> Iterator[list[Token]]:
    """The line as it is, and with "fifty nine four" as 59.4: so a weight is said aloud, and so are two
    answers.
    """
    yield tokens
    first = next((i for i, token in enumerate(tokens) if isinstance(token, Figure)), None)
    if first is None or first + 1 >= len(tokens):
        return
    whole, tenth = tokens[first], tokens[first + 1]
    assert isinstance(whole, Figure)
    if not isinstance(tenth, Figure) or whole.high or tenth.high:
        return
    spelt = all(figure.text[:1].isalpha() for figure in (whole, tenth))
    digits = whole.number.isdecimal() and tenth.number.isdecimal()
    if not spelt or not digits or tenth.unit is not Unit.NONE or whole.unit is not Unit.NONE:
        return
    if int(whole.number) >= _LEAST_OF_A_WEIGHT and 0 < int(tenth.number) < _DIGITS:
        joined = replace(
            whole, end=tenth.end, number=f"{whole.number}.{tenth.number}",
            text=f"{whole.text} {tenth.text}",
        )  # fmt: skip
        yield [*tokens[:first], joined, *tokens[first + 2 :]]


_MOST_CORRECTED = 0.1  # of the number: what differs by more may be another answer
# these correct what is near, and say nothing before what is not
_HESITATES = frozenset(
    {"ne", "äh", "ähm", "öh", "uh", "uhm", "erm", "er", "err", "hm", "hmm", "wait"}
)
_BETWEEN = frozenset(",-:(;.!*")


def _corrected(tokens: list[Token]) -> list[Token]:
    """ "61.2, no, 61.4" is 61.4; two numbers farther apart become a range, to be asked about."""
    out: list[Token] = []
    for at, token in enumerate(tokens):
        first = next((i for i in range(len(out) - 1, -1, -1) if isinstance(out[i], Figure)), None)
        before = out[first] if first is not None else None
        if not isinstance(token, Figure) or not isinstance(before, Figure) or before.high:
            out.append(token)
            continue
        between = out[first + 1 :] if first is not None else []
        words = [t for t in between if isinstance(t, Word)]
        marks = [t for t in between if isinstance(t, Mark)]
        corrects = words and all(word.says(Means.CORRECTS) for word in words)
        units = {before.unit, token.unit} - {Unit.NONE}
        following = tokens[at + 1] if at + 1 < len(tokens) else None
        counted = isinstance(following, Word) and not following.meanings
        if not corrects or counted or len(units) > 1 or any(m.text not in _BETWEEN for m in marks):
            out.append(token)
            continue
        one, other = rough(before.number), rough(token.number)
        joined = replace(
            token, start=before.start, unit=token.unit if before.unit is Unit.NONE else before.unit,
            unit_text=token.unit_text or before.unit_text,
        )  # fmt: skip
        apart = abs(other - one) > _MOST_CORRECTED * abs(one)
        if apart and all(word.text in _HESITATES for word in words):
            out.append(token)
            continue
        if apart:
            text = f"{before.number}-{token.number}"
            joined = replace(joined, number=before.number, high=token.number, text=text)
        del out[first:]
        out.append(joined)
    return out


def _ranged(tokens: list[Token]) -> list[Token]:
    """Two figures with "to", "or" or a dash between them are one figure with two ends."""
    out: list[Token] = []
    at = 0
    while at < len(tokens):
        first = tokens[at]
        if isinstance(first, Figure) and at + 2 < len(tokens) and not first.high:
            between, second = tokens[at + 1], tokens[at + 2]
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
                    )
                )
                at += 3
                continue
        out.append(first)
        at += 1
    return out


def _makes_range(
    tokens: list[Token], at: int, first: Figure, between: Token, second: Figure
) -> bool:
    if isinstance(between, Word):
        if between.says(Means.RANGE):
            return True
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
    return (
        tight and scores and enough and not chained
        and int(second.number) == int(first.number) + 1 <= _DIGITS
    )  # fmt: skip


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
