"""What each figure of a line is likely to be: a weight, a fullness, a day's drink, or none of these."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import product
from math import prod
from zlib import crc32

from engine.written.oneline.answers.plausible import ends_of, fits, values_of
from engine.written.oneline.report import CORE, Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.pieces import Figure, Mark, Means, Token, Unit, Word
from engine.written.whole_weights import WholeModel

BUCKETS = 1 << 16
_HALF, _MOST_FULL = 0.5, 10
#: Of the last weight, of what was to be drunk: where one kind of value ends and the next begins.
_WEIGHTS = ((0.004, "0"), (0.012, "1"), (0.025, "2"), (0.05, "3"), (0.12, "4"))
_DRINKS = (
    (0.15, "a"), (0.4, "b"), (0.7, "c"), (0.95, "d"), (1.06, "e"), (1.4, "f"), (2.0, "g"), (3.0, "h"),
)  # fmt: skip
_USUAL_L = 3.5  # where nothing was set
_CLAUSE_ENDS = frozenset("\n;.!?|,()/")
_FAR, _NOT = "z", "x"
_SEEN = 4  # words to either side
_MOST_SHOWN = 6  # figures of a line


@dataclass(frozen=True, slots=True)
class Seen:
    """A figure with its values as each of `CORE`, None where it can't be that, and its traits."""

    figure: Figure
    values: tuple[float | None, ...]
    traits: list[int]


def seen(tokens: Sequence[Token], known: Known) -> list[Seen]:
    """The figures of a line, in order."""
    places = [place for place, token in enumerate(tokens) if isinstance(token, Figure)]
    figures = [token for token in tokens if isinstance(token, Figure)]
    values = [tuple(_value(key, figure, known) for key in CORE) for figure in figures]
    line = _Line(tokens, known, figures, values, places)
    return [
        Seen(figure, own, sorted({crc32(trait.encode()) % BUCKETS for trait in line.traits(at)}))
        for at, (figure, own) in enumerate(zip(figures, values, strict=True))
    ]


def _value(key: str, figure: Figure, known: Known) -> float | None:
    """What the figure is worth as this answer; of a range the middle."""
    if not fits(key, figure):
        return None
    if figure.high:
        ends = [end for end in ends_of(key, figure, known) if end is not None]
        return sum(ends) / len(ends) if len(ends) > 1 else None
    if told := values_of(key, [figure], known):
        return told[0]
    value = rough(figure.number) if key == "fullness" else 0.0
    return value if value % 1 == _HALF and 1 < value < _MOST_FULL else None


class _Line:
    """The traits of one line's figures."""

    def __init__(
        self, tokens: Sequence[Token], known: Known, figures: Sequence[Figure],
        values: Sequence[tuple[float | None, ...]], places: Sequence[int],
    ) -> None:  # fmt: skip
        self._tokens, self._figures, self._places = tokens, figures, places
        last = known.weight_kg or known.on_file_kg or 0.0
        self._off = [abs(w - last) if w is not None else None for w, _, _ in values]
        self._weights = [_of_weight(w, last) for w, _, _ in values]
        self._scores = [_of_score(score) for _, score, _ in values]
        self._drinks = [_of_drink(litres, known.water_l or _USUAL_L) for _, _, litres in values]
        self._kinds = [self._kind(at) for at in range(len(figures))]
        self._named = [self._labels_beside(place) for place in places]

    def _kind(self, at: int) -> str:
        """What it looks like by itself: a weight, a drink, a score."""
        unit = self._figures[at].unit
        if self._weights[at][0] in "0123":
            return "W"
        if unit is not Unit.NONE:
            return "D" if unit is Unit.VOLUME else str(unit)
        if self._scores[at] in ("low", "top", "whole"):
            return "S" if self._drinks[at] in "abxz" else "B"
        return "d" if self._drinks[at] in "cdefg" else "o"

    def _labels_beside(self, place: int) -> set[str]:
        beside = [self._tokens[i] for i in (place - 1, place + 1) if 0 <= i < len(self._tokens)]
        labels = [token.says(Means.LABEL) for token in beside if isinstance(token, Word)]
        return {label.about for label in labels if label is not None}

    def traits(self, at: int) -> Iterator[str]:
        yield from self._of_itself(at)
        yield from self._of_its_place(at)
        yield from self._of_its_side("L", self._places[at], -1)
        yield from self._of_its_side("R", self._places[at], +1)
        yield from self._of_its_clause(self._places[at])

    def _of_itself(self, at: int) -> Iterator[str]:
        figure, weight, score, drink = (
            self._figures[at], self._weights[at], self._scores[at], self._drinks[at],
        )  # fmt: skip
        yield from (
            "always",
            f"W{weight}",
            f"S{score}",
            f"D{drink}",
            f"WSD{weight[0]}{score}{drink}",
        )
        yield from (f"U{figure.unit}", f"UD{figure.unit}{drink}", f"kind{self._kinds[at]}")
        said = {
            "range": bool(figure.high), "bound": figure.bound, "corrected": figure.corrected,
            "spelt": figure.text[:1].isalpha(),
        }  # fmt: skip
        yield from (name for name, is_so in said.items() if is_so)

    def _of_its_place(self, at: int) -> Iterator[str]:
        kinds, own = self._kinds, self._kinds[at]
        many = min(len(kinds), _MOST_SHOWN)
        yield from (f"{at}of{many}", f"{own}{at}of{many}", f"many{many}")
        yield f"row{''.join(kinds[:_MOST_SHOWN])}@{at}"
        before, after = kinds[at - 1] if at else "^", kinds[at + 1] if at + 1 < len(kinds) else "$"
        yield f"between{before}{own}{after}"
        for kind, count in Counter(kinds).items():
            yield f"others{kind}{min(count - (kind == own), 2)}{own}"
        off = self._off[at]
        if off is not None:
            nearer = sum(other is not None and other < off for other in self._off)
            yield f"nearer{min(nearer, 2)}{self._weights[at][0]}"
        for key in ("weight_kg", "fullness", "water_l", "sharpness"):
            if any(key in named for named in self._named):
                yield f"label:{key}{'own' if key in self._named[at] else 'of another'}"

    def _of_its_side(self, side: str, place: int, step: int) -> Iterator[str]:
        apart = ""
        for far in range(1, _SEEN + 1):
            place += step
            if not 0 <= place < len(self._tokens):
                yield f"{side}{far}^"
                return
            token = self._tokens[place]
            for said in _said(token):
                yield f"{side}{far}{said}"
                yield f"{side}~{said}{apart}"
            if isinstance(token, Figure):
                return
            if isinstance(token, Mark):
                apart = "|"

    def _of_its_clause(self, place: int) -> Iterator[str]:
        tokens, first, last = self._tokens, place, place
        while first and not _ends_clause(tokens[first - 1]):
            first -= 1
        while last + 1 < len(tokens) and not _ends_clause(tokens[last + 1]):
            last += 1
        for at in range(first, last + 1):
            token = tokens[at]
            if isinstance(token, Word):
                side = "L" if at < place else "R"
                yield from (f"clause{side}{one.means}:{one.about}" for one in token.meanings)
                if not token.meanings:
                    yield "clause-unknown"
        if first:
            yield f"begins{tokens[first - 1].text}"
        if last + 1 < len(tokens):
            yield f"ends{tokens[last + 1].text}"


def _ends_clause(token: Token) -> bool:
    return isinstance(token, Mark) and token.text in _CLAUSE_ENDS


def _said(token: Token) -> Iterator[str]:
    """What a token says to its neighbours; of a word that is not known, how it begins and ends."""
    if not isinstance(token, Word):
        yield "#" if isinstance(token, Figure) else token.text
        return
    yield f"w={token.text}"
    yield from (f"m={one.means}:{one.about}" for one in token.meanings)
    if not token.meanings:
        yield "unknown"
        if len(token.text) > _SEEN - 1:
            yield from (f"p={token.text[:3]}", f"p={token.text[:4]}", f"s={token.text[-3:]}")


def _of_weight(kg: float | None, last: float) -> str:
    if kg is None or not last:
        return _NOT
    share = (kg - last) / last
    for most, name in _WEIGHTS:
        if abs(share) <= most:
            return name + ("-" if share < 0 else "+") if name in "23" else name
    return _FAR


def _of_score(score: float | None) -> str:
    if score is None:
        return _NOT
    if score % 1:
        return "half"
    return "top" if score >= _MOST_FULL - 1 else "low" if score <= 2 else "whole"


def _of_drink(litres: float | None, target: float) -> str:
    if litres is None:
        return _NOT
    return next((name for most, name in _DRINKS if litres / target <= most), _FAR)


#: What a figure is taken for, in the order of the weights' columns.
CLASSES = (*CORE, "other")
OTHER = len(CORE)
MOST_FIGURES = 8
_LEAST = 1e-9


class Model(WholeModel):
    __slots__ = ()
    ID, ROWS, NEXT_TO_NOTHING = "judge-1", BUCKETS, 3

    def chances(self, figure: Seen) -> tuple[float, ...]:
        """Of each of `CLASSES`, of this figure alone; they sum to 1."""
        return self.chances_by([(1.0, figure.traits)])


@dataclass(frozen=True, slots=True)
class Judged:
    """`figures[i][c]` is how likely figure i is of class c; `untold[k]` that answer k was not told."""

    figures: tuple[tuple[float, ...], ...]
    untold: tuple[float, ...]


def judged(figures: Sequence[Seen], by: Model) -> Judged | None:
    """What the figures of a line are together, each answer told once at most.

    None for a line without figures, or with so many that it is no check-in.
    """
    if not 0 < len(figures) <= MOST_FIGURES:
        return None
    chances = [by.chances(figure) for figure in figures]
    odds = [[one / max(_LEAST, own[OTHER]) for one in own] for own in chances]
    may_be = [
        [None, *(at for at, figure in enumerate(figures) if figure.values[key] is not None)]
        for key in range(len(CORE))
    ]
    told = [[0.0] * len(CLASSES) for _ in figures]
    untold, total = [0.0] * len(CORE), 0.0
    for way in product(*may_be):
        taken = [at for at in way if at is not None]
        if len(set(taken)) < len(taken):
            continue
        share = prod(odds[at][key] for key, at in enumerate(way) if at is not None)
        total += share
        for key, at in enumerate(way):
            if at is None:
                untold[key] += share
            else:
                told[at][key] += share
        for at in set(range(len(figures))).difference(taken):
            told[at][OTHER] += share
    return Judged(
        tuple(tuple(one / total for one in own) for own in told),
        tuple(one / total for one in untold),
    )


@cache
def model() -> Model:
    """The model that the package carries, read once, when first asked for."""
    return Model.unpacked((files(__package__ or "") / "weights.bin").read_bytes())
