"""What the judge makes of a report: doubts that it settles, and answers that it doubts.

Settled is only what the grammar asked about for want of knowing a word, and only where that makes the
morning whole, each new answer is near its owner's habit, what the grammar read agrees, and every other
figure is surely something else. Doubted is what was read of a figure that surely is no such answer.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace

from engine.evidence.units import KG_PER_LB
from engine.written.late import Late
from engine.written.oneline.answers.clauses import clauses_of
from engine.written.oneline.answers.labelling import LEAST_SPARE_CARBS
from engine.written.oneline.answers.plausible import likely, values_of
from engine.written.oneline.judge.model import OTHER, Judged, Seen, judged, model, seen
from engine.written.oneline.report import CORE, Doubt, DoubtCode, Known, Report, Value
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import N, in_digits
from engine.written.oneline.tokens.pieces import Figure, Mark, Means, Token, Unit, Word
from engine.written.units import ParseErrorCode, WeightUnit

#: How sure an answer must be, how sure a figure that is none, and how far what was read must agree;
#: what agrees less than the last is asked about. Chosen on tables that the judge had not seen.
SURE, SURELY_OTHER, AGREES, CONTRADICTS = 0.8, 0.95, 0.4, 0.12
_SETTLED = frozenset(
    {
        DoubtCode.UNCLEAR, DoubtCode.ORDER, DoubtCode.SPARE, ParseErrorCode.IMPLAUSIBLE,
        ParseErrorCode.OUT_OF_RANGE, ParseErrorCode.NOT_A_WHOLE_NUMBER,
    }
)  # fmt: skip
_SAME = 0.012
_NEAR_LAST = 0.05
_BESIDE = 3  # words
_MORE_OF_IT = Late(
    r"(?<![^\W_])(?:half|hal[bf]\w*|quarters?|\w*viertel\w*|drittel|minus|less|plus|weniger|über|unter|over|under|or|oder)(?![^\W_])"
)
_OF_TODAY = re.compile(
    r"\b(?:today|heute?)[\s:]*$"
)  # "yesterday I was at 5, today 6" leaves no doubt
_Placed = Mapping[str, tuple[int, Value]]  # by answer the place of its figure, and its worth
_Spans = list[tuple[int, int]]


def second_opinion(
    line: str, report: Report, tokens: Sequence[Token], known: Known
) -> tuple[Report, _Spans]:
    """The report as the judge leaves it; and where figures of something else stand, which belong to the
    note where they were asked about before.
    """
    habits = known.weight_kg, known.water_l
    if known.order[: len(CORE)] != CORE or not all(habits):
        return report, []  # nothing to hold the figures against
    if report.doubts and not _may_be_settled(line, report, tokens, known):
        return report, []
    figures = seen(tokens, known)
    by = judged(figures, model())
    if by is None:
        return report, []
    if not report.doubts:
        learnt = "sharpness" not in known.order  # the reviewed mornings tell of no lines
        return (_doubted(line, report, figures, by) if learnt else report), []
    placed = _placed(report, figures, by, known)
    if placed is None or not _is_told_by_words(placed, report, figures, tokens):
        return report, []
    taken = {at for at, _ in placed.values()}
    others = [one for at, one in enumerate(figures) if at not in taken]
    if any("sharpness" in known.order or _may_be_meant(one, known) for one in others):
        return report, []
    if _is_hidden({figures[at].figure.start for at in taken}, tokens, known):
        return report, []
    answers = {**report.answers, **{key: told for key, (_, told) in placed.items()}}
    apart = [(one.figure.start, one.figure.end) for one in others]
    return replace(report, answers=answers, doubts=(), labelled=True), apart


def _doubted(line: str, report: Report, figures: Sequence[Seen], by: Judged) -> Report:
    """The report, with a question instead of each answer that was read of something else."""
    same = [_same(figures, column, report.answers.get(key)) for column, key in enumerate(CORE)]
    if same == [[0], [1], [2]]:
        return report  # as they are asked for, whatever follows
    doubts = []
    for column, key in enumerate(CORE):
        if key in report.meant or len(same[column]) != 1:
            continue  # worked out of several figures, or told in two units
        (at,) = same[column]
        if by.figures[at][column] < CONTRADICTS and not _OF_TODAY.search(
            line, 0, figures[at].figure.start
        ):
            given, option = figures[at].figure.text.strip(), {key: report.answers[key]}
            doubts.append(Doubt(code=DoubtCode.UNCLEAR, answer=key, given=given, options=(option,)))
    asked = {doubt.answer for doubt in doubts}
    answers = {key: told for key, told in report.answers.items() if key not in asked}
    return replace(report, answers=answers, doubts=tuple(doubts)) if doubts else report


def _may_be_settled(line: str, report: Report, tokens: Sequence[Token], known: Known) -> bool:
    """Whether all that is asked about is a word or a figure too many: no sum, no second weight."""
    asked = {doubt.answer for doubt in report.doubts}
    asked |= {key for doubt in report.doubts for option in doubt.options for key in option}
    if not asked <= {*CORE, "spare", "carb_eaten_g"}:
        return False
    texts = {token.text.strip() for token in tokens if isinstance(token, Figure)}
    for doubt in report.doubts:
        words = doubt.code is DoubtCode.UNCLEAR and doubt.given not in texts
        if doubt.code not in _SETTLED or words:
            return False
    told = in_digits(line, known.language)
    if "water_l" in asked and _MORE_OF_IT.search(told):
        return False
    if known.weight_unit is WeightUnit.ST or "weight_kg" not in asked:
        return True
    per = float(KG_PER_LB) if known.weight_unit is WeightUnit.LB else 1.0
    last = known.weight_kg or 0.0
    near = {
        number
        for number in re.findall(N, told)
        if abs(rough(number) * per - last) <= _NEAR_LAST * last
    }
    return len(near) <= 1


def _placed(report: Report, figures: Sequence[Seen], by: Judged, known: Known) -> _Placed | None:
    """Which figure is which answer; None where one of them is not sure, or one is left untold."""
    placed: dict[str, tuple[int, Value]] = {}
    for column, key in enumerate(CORE):
        told = report.answers.get(key)
        if key in report.answers and told is None:
            continue
        among = range(len(figures)) if told is None else _same(figures, column, told)
        if not among:
            if by.untold[column] < AGREES:
                return None
            continue  # "same as yesterday"
        at = max(among, key=lambda at: by.figures[at][column])
        worth = figures[at].values[column]
        if by.figures[at][column] < (SURE if told is None else AGREES) or worth is None:
            return None
        if told is None and not likely(key, worth, known):
            return None
        whole = key == "fullness" and not worth % 1
        placed[key] = at, told if told is not None else int(worth) if whole else worth
    taken = [at for at, _ in placed.values()]
    if len(set(taken)) < len(taken):
        return None
    others = set(range(len(figures))).difference(taken)
    return placed if all(by.figures[at][OTHER] >= SURELY_OTHER for at in others) else None


def _same(figures: Sequence[Seen], column: int, told: Value) -> list[int]:
    """The figures that are worth what was read."""
    if told is None:
        return []
    worth = [one.values[column] for one in figures]
    return [
        at for at, one in enumerate(worth)
        if one is not None and abs(one - told) <= _SAME * max(_SAME, told)
    ]  # fmt: skip


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
    """Whether a unit or a word right before it says what it is, be that word known or not."""
    if one.figure.unit is not Unit.NONE:
        return True
    place = next(at for at, token in enumerate(tokens) if token is one.figure)
    before = [token for token in tokens[max(0, place - 2) : place] if not _points(token)][-1:]
    beside = tokens[max(0, place - _BESIDE) : place + _BESIDE]
    labels = [token.says(Means.LABEL, Means.SCORE) for token in beside if isinstance(token, Word)]
    known = any(label is not None and label.about == key for label in labels)
    return known or any(isinstance(token, Word) for token in before)


def _points(token: Token) -> bool:
    return isinstance(token, Mark) and token.text in (":", "=")


def _may_be_meant(one: Seen, known: Known) -> bool:
    """Whether a figure of something else may be asked about rightly all the same.

    It may be another drink ("4 x 750 ml and a 500"), what was eaten, a score.
    """
    figure = one.figure
    _, score, _ = one.values
    if figure.unit is Unit.VOLUME:
        return True
    if score is not None and figure.unit in (Unit.NONE, Unit.OF_TEN, Unit.OF_FIVE):
        return True
    grams = values_of("carb_eaten_g", [figure], known)
    bare = figure.unit in (Unit.NONE, Unit.GRAMS)
    return bare and bool(grams) and grams[0] >= LEAST_SPARE_CARBS


def _is_hidden(starts: set[int], tokens: Sequence[Token], known: Known) -> bool:
    """Whether a wish, a denial, a bound, a question or another day hides one of the figures."""
    for clause in clauses_of(tokens, known):
        hidden = (clause.odd - clause.beside) | clause.foreign | clause.dated | clause.vessels
        if starts & hidden:
            return True
    return False
