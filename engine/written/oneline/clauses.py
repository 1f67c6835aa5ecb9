"""The clauses of a report: which label names which figure, and which figures only look like answers."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import combinations, pairwise, product

from engine.written.oneline.digits import rough
from engine.written.oneline.meanings import Means
from engine.written.oneline.pieces import Figure, Mark, Token, Unit, Word
from engine.written.oneline.plausible import fits, is_readable, likely, value_of
from engine.written.oneline.report import Known
from engine.written.oneline.tokens import is_skipped
from engine.written.units import ParseError

_ENDS = frozenset("\n;.!?|()[]")
_PARTS = frozenset(",/-")
_MOST_LABELS = 6
LEAST_SPARE_CARBS = 20.0  # g: what is less is some other number
# after a figure these say that so much is not done yet
_STILL_OPEN = frozenset(
    {"left", "to go", "still to go", "remaining", "still to drink", "noch offen", "offen", "übrig"}
)
_IN_PLACE_OF = frozenset({"statt", "anstatt", "instead of", "rather than", "up from", "down from"})
_SCORES_AGREE = 2  # so far the figure may be from what the word is usually said of
_LEAST_WEIGHT = 20  # kg, lb; nobody weighs less
_ARTICLES = frozenset({"the", "a", "my", "der", "die", "das", "den", "mein", "meine"})
# a number after one of these, or before it with "of", may count what an unknown word names
_SEE_THROUGH = _ARTICLES | {"of", "at", "up", "von", "um", "am"}


@dataclass(slots=True)
class Named:
    """A figure whose answer a label names; several keys where it may be either of two labels."""

    key: str
    figure: Figure
    label: Word


@dataclass(slots=True)
class Clause:
    """What stands between two marks, and what is made of it."""

    tokens: list[Token]
    end: str = ""  # the mark that ends it
    asks: bool = False
    named: list[Named] = field(default_factory=list)
    torn: list[list[Named]] = field(default_factory=list)  # labels that can be read in two ways
    odd: set[int] = field(default_factory=set)  # starts of figures not to be taken unasked
    trailed: set[int] = field(default_factory=set)  # of these, for nothing but a word behind them
    beside: set[int] = field(default_factory=set)  # for nothing but words beside them, or for a day
    dated: set[int] = field(default_factory=set)  # of these, for the name of another day
    foreign: set[int] = field(default_factory=set)  # starts of figures that are no answers
    vessels: set[int] = field(default_factory=set)  # starts of figures that count glasses
    pointing: frozenset[int] = frozenset()  # starts of labels with a colon: they name what follows
    figures: list[Figure] = field(init=False)
    words: list[Word] = field(init=False)

    def __post_init__(self) -> None:
        self.figures = [token for token in self.tokens if isinstance(token, Figure)]
        self.words = [token for token in self.tokens if isinstance(token, Word)]

    @property
    def unknown(self) -> list[Word]:
        return [word for word in self.words if is_unknown(word)]

    def is_told_plainly(self, one: Named) -> bool:
        """Whether its label stands right before the figure, so that no word behind it is counted."""
        start = one.figure.start
        only_trailed = start in self.beside & self.trailed - self.dated
        after = [token for token in self.tokens if token.start > start][:2]
        if any(isinstance(token, Word) and token.says(Means.CORRECTS) for token in after):
            return False
        return only_trailed and one.label.start < start and _adjacent(self, one.label, one.figure)

    def says(self, *means: Means) -> bool:
        return any(word.says(*means) for word in self.words)


def is_unknown(token: Token) -> bool:
    return isinstance(token, Word) and not token.meanings


def clauses_of(tokens: Sequence[Token], known: Known) -> list[Clause]:
    """The line's clauses in order, each with its labels given to its figures."""
    found = [Clause(part, end) for piece in _parted(tokens) for part, end in _asked_apart(*piece)]
    pointing = frozenset(
        token.start
        for token, following in pairwise(tokens)
        if isinstance(following, Mark) and following.text in (":", "=")
    )
    for clause in found:
        clause.asks = clause.end == "?" and not _only_rounds(clause)
        clause.pointing = pointing
        _mark_odd(clause)
        _name_figures(clause, known)
    return found


def _only_rounds(clause: Clause) -> bool:
    """ "maybe 2?": a figure that is not sure, and no question."""
    said = (Means.ABOUT, Means.LABEL, Means.LINK, Means.RANGE)
    plain = all(
        isinstance(t, Figure) or (isinstance(t, Word) and t.says(*said)) for t in clause.tokens
    )
    return plain and bool(clause.figures) and clause.says(Means.ABOUT)


def _parted(tokens: Sequence[Token]) -> Iterator[tuple[list[Token], str]]:
    part: list[Token] = []
    for index, token in enumerate(tokens):
        if isinstance(token, Mark) and _parts_here(tokens, index, token):
            if part:
                yield part, "|" if _is_gap(part, token) else token.text
            part = []
        elif not is_skipped(token):
            part.append(token)
    if part:
        yield part, ""


def _is_gap(part: Sequence[Token], mark: Mark) -> bool:
    """Whether "?" stands in the place of an answer, as in "72.4 6 ?"; "is 72.4 fine ?" asks."""
    apart = mark.text == "?" and mark.start > part[-1].end
    return apart and all(
        isinstance(token, Figure) or (isinstance(token, Word) and token.says(Means.LABEL))
        for token in part
    )


def _asked_apart(part: list[Token], end: str) -> Iterator[tuple[list[Token], str]]:
    """What is put as a question ("on target? yes") is a clause of its own after figures."""
    at = next((i for i, t in enumerate(part) if isinstance(t, Word) and t.says(Means.ON_TARGET)), 0)
    if end == "?" and at:
        yield part[:at], ","
        yield part[at:], end
    else:
        yield part, end


def _parts_here(tokens: Sequence[Token], index: int, mark: Mark) -> bool:
    if mark.text == ".":
        before = tokens[index - 1] if index else None
        # the point of "ca. 60" is no end
        return not (isinstance(before, Word) and before.says(Means.ABOUT) and len(before.text) <= 6)
    return mark.text in _ENDS or mark.text in _PARTS


def _mark_odd(clause: Clause) -> None:
    tokens = clause.tokens
    wished = denied = False
    alone = len(clause.figures) == 1
    for index, token in enumerate(tokens):
        if isinstance(token, Word):
            if token.says(Means.OTHERWISE) and not token.says(Means.ON_TARGET):
                wished = True
            if token.says(Means.NOT) and len(token.meanings) <= 3:
                denied = _denies_answer(tokens, index)
            if is_unknown(token):
                denied = False
        elif isinstance(token, Figure):
            beside = _bounded(tokens, index) or _of_an_hour_or_open(tokens, index)
            if wished or denied or clause.asks or beside:
                clause.odd.add(token.start)
            _mark_beside(clause, token, index)
            denied = False
    if alone and clause.says(Means.OTHERWISE) and not _drunk_down(clause):
        clause.odd.add(clause.figures[0].start)
        clause.trailed.clear()
        clause.beside.clear()


def _mark_beside(clause: Clause, figure: Figure, index: int) -> None:
    """What the words directly beside a figure make of it."""
    tokens = clause.tokens
    if _is_eaten(tokens, index) or _stands_aside(tokens, index):
        clause.foreign.add(figure.start)
    following = tokens[index + 1] if index + 1 < len(tokens) else None
    if isinstance(following, Word) and following.says(Means.VESSEL):
        clause.vessels.add(figure.start)
        clause.odd.add(figure.start)
    counts = _counts(tokens, index, +1)
    if _of_other_day(tokens, index):
        clause.dated.add(figure.start)
    if counts or _counts(tokens, index, -1) or figure.start in clause.dated:
        if figure.start not in clause.odd:
            clause.beside.add(figure.start)
        clause.odd.add(figure.start)
    if counts:
        clause.trailed.add(figure.start)


def _stands_aside(tokens: Sequence[Token], index: int) -> bool:
    """Whether the figure is what another stands in place of: "8 instead of 7", "statt 4"."""
    before = tokens[index - 1] if index else None
    return isinstance(before, Word) and before.text in _IN_PLACE_OF


def _drunk_down(clause: Clause) -> bool:
    """ "got 3.5 L down"."""
    (figure,) = clause.figures
    said = [word for word in clause.words if word.says(Means.OTHERWISE)]
    down = all(word.text == "down" and word.start > figure.end for word in said)
    return down and figure.unit is Unit.VOLUME


def _of_an_hour_or_open(tokens: Sequence[Token], index: int) -> bool:
    """Whether the figure is the "till 5" of a sentence, with no first end, or what is "still to go"."""
    before = tokens[index - 1] if index else None
    after = tokens[index + 1] if index + 1 < len(tokens) else None
    ends = isinstance(before, Word) and before.says(Means.RANGE) is not None
    return ends or (isinstance(after, Word) and after.text in _STILL_OPEN)


def _denies_answer(tokens: Sequence[Token], index: int) -> bool:
    """Whether what is denied is a figure or its label, rather than a word that is not known."""
    for token in tokens[index + 1 :]:
        if isinstance(token, Figure):
            return True
        if is_unknown(token):
            return False
        if isinstance(token, Word) and token.says(Means.LABEL):
            return True
    return False


def _bounded(tokens: Sequence[Token], index: int) -> bool:
    before = tokens[index - 1] if index else None
    return isinstance(before, Word) and before.says(Means.BOUND) is not None


def _of_other_day(tokens: Sequence[Token], index: int) -> bool:
    """Whether a figure of this morning stands beside the name of another day."""
    beside = [tokens[i] for i in (index - 1, index + 1, index - 2) if 0 <= i < len(tokens)]
    far = [t for t in beside if isinstance(t, Word) and t.says(Means.OTHER_DAY)]
    if not far:
        return False
    if any(_labels_past(token) for token in tokens[max(0, index - 2) : index]):
        return False
    labels = [t.says(Means.LABEL) for t in tokens if isinstance(t, Word)]
    figure = tokens[index]
    assert isinstance(figure, Figure)
    keys = {label.about for label in labels if label is not None}
    if keys & {"water_l", "carb_eaten_g", "sleep_h"} and not keys & {"weight_kg", "fullness"}:
        return False
    return figure.unit is not Unit.VOLUME


def _labels_past(token: Token) -> bool:
    """Whether it labels what is always told of the day before: "water yesterday 3.5"."""
    label = token.says(Means.LABEL) if isinstance(token, Word) else None
    return label is not None and label.about in ("water_l", "carb_eaten_g", "sleep_h")


def _is_eaten(tokens: Sequence[Token], index: int) -> bool:
    """Whether a bare number counts pieces of what was eaten: "ate 5 rice cakes"."""
    figure = tokens[index]
    following = tokens[index + 1] if index + 1 < len(tokens) else None
    assert isinstance(figure, Figure)
    if figure.unit is not Unit.NONE or not figure.number.isdecimal() or following is None:
        return False
    eaten = any(isinstance(token, Word) and token.says(Means.EATEN) for token in tokens)
    return eaten and is_unknown(following)


def _counts(tokens: Sequence[Token], index: int, step: int) -> bool:
    """Whether an unknown word beside the figure may be what it counts, or what it is told of."""
    word = _neighbour(tokens, index, step)
    following = tokens[index + 1] if index + 1 < len(tokens) else None
    if step > 0 and isinstance(following, Word) and following.text in _ARTICLES:
        return False  # "4 the hotel bed was hard" counts no hotels
    if word is None or word.says(Means.LABEL) or word.says(Means.SCORE):
        return False
    if not word.meanings:
        return not any(char.isdecimal() for char in word.text)  # "5 days" is counted already
    return step < 0 and {meaning.means for meaning in word.meanings} == {Means.COUNTS_NOT}


def _neighbour(tokens: Sequence[Token], index: int, step: int) -> Word | None:
    at = index + step
    while 0 <= at < len(tokens):
        token = tokens[at]
        if not isinstance(token, Word):
            return None
        if token.text not in _SEE_THROUGH:
            return token
        at += step
    return None


def _name_figures(clause: Clause, known: Known) -> None:
    """Give labels to figures beside them, each as many of them as it can."""
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
    if not others:
        clause.named = ways[0]
        _mark_robbed(clause, items, labels)
        return
    clause.torn = [ways[0], *others]


def _mark_robbed(clause: Clause, items: Sequence[Token], labels: Sequence[int]) -> None:
    """ "full 5 h sleep 7": the word's own figure went to the hours, so no other is surely its."""
    served = {one.label.start for one in clause.named}
    taken = {one.figure.start for one in clause.named}
    for at in labels:
        figure = items[at + 1] if at + 1 < len(items) else None
        if items[at].start in served or not isinstance(figure, Figure):
            continue
        if figure.unit is Unit.HOURS and _adjacent(clause, items[at], figure):
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
    if not isinstance(word, Word) or not word.says(Means.LABEL):
        return False
    return not (isinstance(following, Word) and following.says(Means.SKIP))


def _scores(word: Word, following: Token | None) -> bool:
    """Whether a score in words is said once more as a figure: "flat, 3"."""
    score = word.says(Means.SCORE)
    if score is None or not score.value or word.says(Means.LABEL):
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
    if not names and (score := label.says(Means.SCORE)):
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
        return figure.unit is Unit.HOURS or (step == 1 and _adjacent(clause, label, figure))
    if len(label.text) == 1 or not label.says(Means.LABEL):
        return step == 1 and _adjacent(clause, label, figure)
    return not _unknown_between(clause, label, figure)


def _adjacent(clause: Clause, label: Token, figure: Token) -> bool:
    return clause.tokens.index(figure) - clause.tokens.index(label) == 1


def _unknown_between(clause: Clause, one: Token, other: Token) -> bool:
    first, last = sorted((clause.tokens.index(one), clause.tokens.index(other)))
    return any(is_unknown(token) for token in clause.tokens[first + 1 : last])


def _valid(one: Named, known: Known) -> bool:
    try:
        value = value_of(one.key, one.figure, known)
    except ParseError:
        return False
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
