"""Figures that are put right in the same message: "61.2, no, 61.4", "full 6 ne 7"."""

from __future__ import annotations

from dataclasses import replace

from engine.written.oneline.report import CORE
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.pieces import Figure, Mark, Token, Unit, Word
from engine.written.oneline.vocabulary.meanings import Means

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
