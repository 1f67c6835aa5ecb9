"""Which label names which figure of a clause."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import combinations, product

from engine.written.oneline.answers.plausible import fits, is_readable, likely, value_of
from engine.written.oneline.report import Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.pieces import (
    Clause,
    Figure,
    Means,
    Named,
    Token,
    Unit,
    Word,
    adjacent,
)
from engine.written.units import ParseError

_MOST_LABELS = 6
_CLOSE = 2  # characters: "full: 6.5"
_HALF, _MOST_FULL = 0.5, 10  # a fullness of 6.5 is said, too
LEAST_SPARE_CARBS = 20.0  # g: what is less is some other number
_SCORES_AGREE = 2  # so far the figure may be from what the word is usually said of
_LEAST_WEIGHT = 20  # kg, lb; nobody weighs less


def name_figures(clauses: Iterable[Clause], known: Known) -> None:
    """Give the labels of each clause to figures beside them, as many of them as can have one."""
    for clause in clauses:
        _name_figures(clause, known)


def _name_figures(clause: Clause, known: Known) -> None:
    items = [
        token
        for index, token in enumerate(clause.tokens)
        if isinstance(token, Figure) or _is_label(clause.tokens, index)
    ]
    labels = [i for i, token in enumerate(items) if isinstance(token, Word)][:_MOST_LABELS]
    if not labels:
        return
    best: list[tuple[tuple[int, int, bool, int], list[Named]]] = []
    for steps in product((1, -1, 0), repeat=len(labels)):
        named = _given(clause, items, labels, steps, known)
        if named is None:
            continue
        valid = sum(_valid(one, known) for one in named)
        before = sum(step == 1 for step in steps) if not valid else 0
        best.append(((valid, len(named), _rest_fits(items, named, known), before), named))
    if not best:
        return
    top = max(score for score, _ in best)
    unnamed = [score for score, named in best if not named]
    if top[0] == 0 and top[1] and unnamed and unnamed[0][2]:
        return  # what the label would name it can't be, and without it all figures fit
    ways = [named for score, named in best if score == top]
    first = _as_dict(ways[0])
    others = [way for way in ways[1:] if _as_dict(way) != first]
    others = [way for way in others if not _between_drinks(ways[0], way)]
    if not others:
        others = _by_the_label_before(
            clause, ways[0], [way for score, way in best if score[:2] == top[:2]]
        )
    if not others:
        clause.named = ways[0]
        _mark_robbed(clause, items, labels)
        return
    clause.torn = [ways[0], *others]


def _between_drinks(one: Sequence[Named], other: Sequence[Named]) -> bool:
    """Whether they differ only in which of two drinks the word for it names: both are drinks."""
    first, second = _as_dict(one), _as_dict(other)
    moved = {key for key in first.keys() | second.keys() if first.get(key) != second.get(key)}
    drinks = [named.figure for named in (*one, *other) if named.key == "water_l"]
    return moved == {"water_l"} and all(figure.unit is Unit.VOLUME for figure in drinks)


def _by_the_label_before(
    clause: Clause, chosen: Sequence[Named], ways: Sequence[list[Named]]
) -> list[list[Named]]:
    """ "water 7 fullness later": a figure right behind one label that was given to the one after it."""
    served = {one.label.start for one in chosen}
    found = []
    for one in chosen:
        place = clause.tokens.index(one.figure)
        before = clause.tokens[place - 1] if place else None
        if one.label.start < one.figure.start or before is None or before.start in served:
            continue
        found += [
            way for way in ways if any(o.figure is one.figure and o.label is before for o in way)
        ][:1]
    return found


def _mark_robbed(clause: Clause, items: Sequence[Token], labels: Sequence[int]) -> None:
    """ "full 5 h sleep 7": the word's own figure went to the hours, so no other is surely its."""
    served = {one.label.start for one in clause.named}
    taken = {one.figure.start for one in clause.named}
    for at in labels:
        figure = items[at + 1] if at + 1 < len(items) else None
        if items[at].start in served or not isinstance(figure, Figure):
            continue
        if figure.unit is Unit.HOURS and adjacent(clause, items[at], figure):
            later = (one for one in clause.figures if one.start > figure.start)
            clause.odd.update(
                one.start for one in later if one.unit is Unit.NONE and one.start not in taken
            )


def _is_label(tokens: Sequence[Token], index: int) -> bool:
    """Whether a word labels a figure: "water unknown" has none."""
    word = tokens[index]
    following = tokens[index + 1] if index + 1 < len(tokens) else None
    if isinstance(word, Word) and _scores(word, following):
        return True
    if not isinstance(word, Word) or Means.LABEL not in word.means:
        return False
    if not isinstance(following, Word):
        return True
    return following.says(Means.SKIP, Means.LATER) is None and not _is_judged(tokens, index)


def _is_judged(tokens: Sequence[Token], index: int) -> bool:
    """Whether a label has a word in the place of its figure: "water 3 fullness was good"."""
    before, after = tokens[index - 1] if index else None, tokens[index + 1 : index + 3]
    said = [token for token in after if isinstance(token, Word)]
    if not isinstance(before, Figure) or len(said) != len(after) or not said:
        return False
    good = said[-1].says(Means.FINE, Means.SCORE) if len(said) > 1 else None
    return good is not None and Means.LINK in said[0].means


def _scores(word: Word, following: Token | None) -> bool:
    """Whether a score in words is said once more as a figure: "flat, 3"."""
    score = word.means.get(Means.SCORE)
    if score is None or not score.value or Means.LABEL in word.means:
        return False
    if not isinstance(following, Figure) or following.unit is not Unit.NONE or following.high:
        return False
    return abs(rough(following.number) - score.value) <= _SCORES_AGREE


def _given(
    clause: Clause,
    items: Sequence[Token],
    labels: Sequence[int],
    steps: Sequence[int],
    known: Known,
) -> list[Named] | None:
    used: set[int] = set()
    named = []
    for at, step in zip(labels, steps, strict=True):
        if step == 0:
            continue
        place = at + step
        figure = items[place] if 0 <= place < len(items) else None
        if not isinstance(figure, Figure) or place in used:
            return None
        label = items[at]
        assert isinstance(label, Word)
        about = _about(label, figure, known)
        if not _may_name(clause, about, figure, label, step):
            return None
        if about != "weight_kg" and _is_surely_weight(figure, about, known):
            return None
        used.add(place)
        named.append(Named(about, figure, label))
    return named


def _is_surely_weight(figure: Figure, key: str, known: Known) -> bool:
    """ "67.4 water as always": it can't be the drink, and it is the weight of who writes."""
    if figure.unit is not Unit.NONE or figure.high or not _usual("weight_kg", figure, known):
        return False
    return known.weight_kg is not None and not is_readable(key, figure, known)


def _about(label: Word, figure: Figure, known: Known) -> str:
    """What a label names: the "w" of "w4" is water, that of "w 61" the weight."""
    names = [meaning.about for meaning in label.meanings if meaning.means is Means.LABEL]
    if not names and (score := label.means.get(Means.SCORE)):
        return score.about
    if len(names) > 1 and "water_l" in names:
        drunk = _usual("water_l", figure, known) and not _usual("weight_kg", figure, known)
        if drunk or rough(figure.number) < _LEAST_WEIGHT:
            return "water_l"
    return names[0]


def _may_name(clause: Clause, key: str, figure: Figure, label: Word, step: int) -> bool:
    if not fits(key, figure) or (step == -1 and label.start in clause.pointing):
        return False
    if key == "sleep_h":
        # "slept 6" and "6 hours slept" are sleep, "4 slept badly" is not
        return figure.unit is Unit.HOURS or (step == 1 and adjacent(clause, label, figure))
    if len(label.text) == 1 or Means.LABEL not in label.means:
        return step == 1 and adjacent(clause, label, figure)
    return not _unknown_between(clause, label, figure)


def _unknown_between(clause: Clause, one: Token, other: Token) -> bool:
    first, last = sorted((clause.tokens.index(one), clause.tokens.index(other)))
    return any(token.unknown for token in clause.tokens[first + 1 : last])


def _valid(one: Named, known: Known) -> bool:
    try:
        value = value_of(one.key, one.figure, known)
    except ParseError:
        half = rough(one.figure.number) % 1 == _HALF and not one.figure.high
        close = 0 <= one.figure.start - one.label.end <= _CLOSE
        named = close and one.label.means.get(Means.LABEL)
        return (
            bool(named)
            and one.key == "fullness"
            and half
            and 1 < rough(one.figure.number) < _MOST_FULL
        )
    few = one.key == "carb_eaten_g" and value is not None and 0 < value < LEAST_SPARE_CARBS
    return not few or one.figure.unit is Unit.GRAMS


def _rest_fits(items: Sequence[Token], named: Sequence[Named], known: Known) -> bool:
    """Whether the figures without a label can be the other answers, each like its owner's."""
    given = {one.figure.start for one in named}
    left = [item for item in items if isinstance(item, Figure) and item.start not in given]
    keys = [key for key in known.order if key not in {one.key for one in named}]
    usual = all(_usual(one.key, one.figure, known) for one in named)
    return usual and any(
        all(_usual(key, figure, known) for key, figure in zip(chosen, left, strict=True))
        for chosen in combinations(keys, len(left))
    )


def _usual(key: str, figure: Figure, known: Known) -> bool:
    if not fits(key, figure):
        return False
    try:
        return likely(key, value_of(key, figure, known), known)
    except ParseError:
        return False


def _as_dict(named: Sequence[Named]) -> dict[str, int]:
    return {one.key: one.figure.start for one in named}
