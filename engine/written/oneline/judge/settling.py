"""Doubts that the judge settles: figures among unknown words, whose owner has told a whole morning.

Only what the grammar asked about for want of knowing a word is settled, and only where that makes the
morning whole, each new answer is near its owner's habit, what the grammar read agrees, and every other
figure is surely something else.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from engine.written.late import Late
from engine.written.oneline.answers.plausible import likely
from engine.written.oneline.judge.model import OTHER, Judged, judged, model
from engine.written.oneline.judge.traits import Seen, seen
from engine.written.oneline.report import CORE, DoubtCode, Known, Report, Value
from engine.written.oneline.tokens.in_digits import N, in_digits, value
from engine.written.oneline.tokens.pieces import Token, Unit, Word
from engine.written.oneline.vocabulary.meanings import Means
from engine.written.units import ParseErrorCode, WeightUnit

#: How sure an answer must be, how sure a figure that is none, and how far what was read must agree.
#: Chosen on tables that the judge had not seen; what each costs and gains: `tests/shapes/train.py`.
SURE, SURELY_OTHER, AGREES = 0.8, 0.95, 0.4
_SETTLED = frozenset(
    {
        DoubtCode.UNCLEAR, DoubtCode.ORDER, DoubtCode.SPARE, ParseErrorCode.IMPLAUSIBLE,
        ParseErrorCode.OUT_OF_RANGE, ParseErrorCode.NOT_A_WHOLE_NUMBER,
    }
)  # fmt: skip
_SAME = 0.012
_NEAR_LAST = 0.05
_KG_PER_LB = 0.45359237
_A_BOTTLE_ML = (100.0, 3000.0)
_OF_ML = 50
_MORE_OF_IT = Late(
    r"(?<![^\W_])(?:half|hal[bf]\w*|quarters?|\w*viertel\w*|drittel|minus|less|plus|weniger|über|unter|over|under|or|oder)(?![^\W_])"
)
_Placed = dict[str, tuple[int, Value]]


def without_doubts(
    line: str, report: Report, tokens: Sequence[Token], known: Known
) -> tuple[Report, list[tuple[int, int]]]:
    """The report, with its doubts settled where all of them can be; and where figures of something else
    stand, which belong to the note.
    """
    if not report.doubts or known.order[: len(CORE)] != CORE or not _may_be(line, report, known):
        return report, []
    figures = seen(tokens, known)
    by = judged(figures, model())
    if by is None:
        return report, []
    placed = _placed(report, figures, by, known)
    if placed is None or not _is_told_by_words(placed, report, figures, tokens):
        return report, []
    taken = {at for at, _ in placed.values()}
    others = [one for at, one in enumerate(figures) if at not in taken]
    if any(_may_be_drink(one) for one in others) or (others and "sharpness" in known.order):
        return report, []
    new = {key: told for key, (_, told) in placed.items() if key not in report.answers}
    answers = {**report.answers, **new}
    apart = [(one.figure.start, one.figure.end) for one in others]
    return replace(report, answers=answers, doubts=(), labelled=True), apart


def _may_be(line: str, report: Report, known: Known) -> bool:
    """Whether all that is asked about is a word or a figure too many, and no sum, range or second weight."""
    asked = {doubt.answer for doubt in report.doubts}
    asked |= {key for doubt in report.doubts for option in doubt.options for key in option}
    if not asked <= {*CORE, "spare", "carb_eaten_g"}:
        return False
    if any(doubt.code not in _SETTLED for doubt in report.doubts):
        return False
    told = in_digits(line, known.language)
    if "water_l" in asked and _MORE_OF_IT.search(told):
        return False
    if known.weight_unit is WeightUnit.ST:
        return True
    per = _KG_PER_LB if known.weight_unit is WeightUnit.LB else 1.0
    last = known.weight_kg or known.on_file_kg or 0.0
    near = {
        number
        for number in re.findall(N, told)
        if abs(value(number) * per - last) <= _NEAR_LAST * last
    }
    return len(near) <= 1


def _placed(report: Report, figures: Sequence[Seen], by: Judged, known: Known) -> _Placed | None:
    """Which figure is which answer; None where one of them is not sure, or one is left untold."""
    placed: _Placed = {}
    for column, key in enumerate(CORE):
        if key in report.answers:
            told = report.answers[key]
            if told is None:
                continue
            same = [at for at, one in enumerate(figures) if _is_same(one.values[column], told)]
            if not same:
                if by.untold[column] < AGREES:
                    return None
                continue
            at = max(same, key=lambda at: by.figures[at][column])
            if by.figures[at][column] < AGREES:
                return None
            placed[key] = at, told
            continue
        at = max(range(len(figures)), key=lambda at: by.figures[at][column])
        worth = figures[at].values[column]
        if by.figures[at][column] < SURE or worth is None or not likely(key, worth, known):
            return None
        placed[key] = at, int(worth) if key == "fullness" and not worth % 1 else worth
    taken = [at for at, _ in placed.values()]
    if len(set(taken)) < len(taken):
        return None
    others = set(range(len(figures))).difference(taken)
    return placed if all(by.figures[at][OTHER] >= SURELY_OTHER for at in others) else None


def _is_same(one: float | None, other: float) -> bool:
    return one is not None and abs(one - other) <= _SAME * max(_SAME, other)


def _is_told_by_words(
    placed: _Placed, report: Report, figures: Sequence[Seen], tokens: Sequence[Token]
) -> bool:
    """Whether the answers stand in the order in which they are asked for, or say what they are.

    Bare figures in another order are asked about, however sure the judge is.
    """
    where = [placed[key][0] for key in CORE if key in placed]
    if where == sorted(where):
        return True
    return all(
        key == "weight_kg" or key in report.answers or _is_named(key, figures[at], tokens)
        for key, (at, _) in placed.items()
    )


def _is_named(key: str, one: Seen, tokens: Sequence[Token]) -> bool:
    if one.figure.unit is not Unit.NONE:
        return True
    place = next(at for at, token in enumerate(tokens) if token is one.figure)
    beside = tokens[max(0, place - 3) : place + 3]
    words = [token for token in beside if isinstance(token, Word)]
    return any(
        label.about == key for word in words if (label := word.says(Means.LABEL, Means.SCORE))
    )


def _may_be_drink(one: Seen) -> bool:
    """ "4 x 750 ml and a 500": a figure of something else that is as large as a bottle."""
    if one.figure.unit is Unit.VOLUME:
        return True
    try:
        number = float(one.figure.number.replace(",", "."))
    except ValueError:
        return False
    low, high = _A_BOTTLE_ML
    bare = one.figure.unit is Unit.NONE
    return bare and low <= number <= high and number % _OF_ML == 0
