"""What was told so far, and how one figure becomes an answer or a question."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from engine.written.late import Late
from engine.written.oneline.answers.phrases import Phrases
from engine.written.oneline.answers.plausible import (
    MOST_FULL,
    at_water_target,
    doubt_of_habit,
    doubt_of_parse_error,
    ends_of,
    is_plain,
    is_readable,
    likely,
    value_of,
    values_of,
)
from engine.written.oneline.report import CORE, Doubt, DoubtCode, Known, Value
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.pieces import Figure, Unit
from engine.written.units import ParseError, ParseErrorCode, VolumeUnit

_WHOLE_AND_A_HALF = Late(r"\d[.,]50?")
_MILLILITRES = Late(r"[1-9]\d[05]0")
_NARROW_WEIGHT = 1.01  # "179-180 lb" on a scale that wavers
_NARROW = 1.35  # of drinks: "4 to 5 L" is 4.5, which neither end could be told from next morning

_SAME = 0.006  # two figures nearer than this share of each other are one, in two units


class Told:
    """Takes the figures of a line's clauses. `answers` are plain, `doubts` are to be asked about.

    `used` and `labels` are the starts of figures and labels that were read; `soft` are those of
    words that stay in the note all the same.
    """

    def __init__(self, phrases: Phrases, known: Known) -> None:
        self._clauses, self._known, self._phrases = phrases.clauses, known, phrases
        self.answers: dict[str, Value] = {}
        self.doubts: list[Doubt] = []
        self.spoken_for: set[str] = set()
        self.used: set[int] = set()
        self.labels: set[int] = set()
        self.soft: set[int] = set()
        self._taken: set[int] = set()  # used, or read and left in the note all the same
        self.labelled = False
        self.meant: dict[str, str] = {}  # the words of what was worked out from them
        self._odd: list[tuple[str, Figure]] = []
        self._told_by: dict[str, Figure] = {}
        self._taken |= {start for clause in self._clauses for start in clause.foreign}

    def _take_one(self, key: str, figures: Sequence[Figure]) -> None:
        values = values_of(key, figures, self._known)
        if len(figures) > 1 and len(values) == len(figures) and not all_same(values):
            options = [*values, sum(values)] if key == "water_l" else values
            self._doubt(
                DoubtCode.TWO_VALUES, key, " / ".join(figure.text.strip() for figure in figures),
                [{key: value} for value in options[:4]],
            )  # fmt: skip
            return
        self._take_value(key, figures[0])
        if len(values) != len(figures):
            for figure in figures[1:]:
                if self._said_again(key, figure) or key not in self.answers:
                    continue  # what is in doubt is asked for whole
                self._doubt(DoubtCode.SPARE, "spare", figure.text.strip(), [])

    def _said_again(self, key: str, figure: Figure) -> bool:
        """Whether it is the answer once more, in ounces of which it is not known whose they are."""
        told = self.answers.get(key)
        if key != "water_l" or told is None:
            return False
        for unit in (VolumeUnit.FLOZ_US, VolumeUnit.FLOZ_IMP):
            values = values_of(key, [figure], replace(self._known, volume_unit=unit))
            if values and all_same([values[0], told]):
                return True
        return False

    def _take_value(self, key: str, figure: Figure) -> None:
        """The figure as this answer where it is plain, else the question it raises."""
        if figure.high:
            self._take_range(key, figure)
            return
        try:
            value = value_of(key, figure, self._known)
        except ParseError as error:
            if (
                key == "water_l"
                and _MILLILITRES.fullmatch(figure.number)
                and self._is_usual(figure)
            ):
                self._work_out(key, figure, rough(figure.number) / 1000)
                return
            half = _WHOLE_AND_A_HALF.fullmatch(figure.number)
            if half and self._is_between_scores(key, figure, rough(figure.number)):
                self._work_out(key, figure, rough(figure.number))
            else:
                self._add(doubt_of_parse_error(key, figure, error, self._known))
            return
        doubt = doubt_of_habit(key, figure, value, self._known)
        if doubt is not None:
            self._add(doubt)
        elif figure.bound:
            self._doubt(DoubtCode.BOUND, key, figure.text.strip(), [{key: value}])
        else:
            self.answers[key] = value
            self._told_by[key] = figure
            self.spoken_for.add(key)

    def _is_usual(self, figure: Figure) -> bool:
        """Whether a number without a unit can only be a day's drink in millilitres."""
        of_litres = figure.unit is Unit.NONE and self._known.volume_unit is VolumeUnit.L
        return (
            of_litres
            and self._labels_drink(figure)
            and likely("water_l", rough(figure.number) / 1000, self._known)
        )

    def _take_range(self, key: str, figure: Figure) -> None:
        ends = [end for end in ends_of(key, figure, self._known) if end is not None]
        options: list[Value] = list(ends)
        if len(ends) == 2 and key in ("weight_kg", "water_l", "carb_eaten_g", "sleep_h"):
            options = [ends[0], round((ends[0] + ends[1]) / 2, 3), ends[1]]
        usual = [{key: v} for v in options if likely(key, v, self._known)]
        only = len(usual) == 1 and figure.corrected and key != "sleep_h"
        if only and usual[0][key] == (ends[-1] if ends else None):
            self.answers[key] = usual[0][key]  # "07,0 sorry 70,0": the first can't be meant
            self._told_by[key] = figure
            self.spoken_for.add(key)
            return
        if key == "water_l" and len(usual) == 3 and not figure.corrected:
            low, middle, high = (float(one[key] or 0) for one in usual)
            if high <= _NARROW * low:
                self._work_out(key, figure, middle)
                return
        if self._took_middle(key, figure, [float(option[key] or 0) for option in usual]):
            return
        self._doubt(DoubtCode.RANGE, key, figure.text.strip(), usual)

    def _took_middle(self, key: str, figure: Figure, usual: Sequence[float]) -> bool:
        """Two scores side by side, two weights on a scale that wavers: the middle is meant."""
        if figure.corrected or len(usual) < 2:
            return False
        low, high = usual[0], usual[-1]
        if key == "weight_kg" and low < high <= _NARROW_WEIGHT * low:
            self._work_out(key, figure, (low + high) / 2)
            return True
        if high - low == 1 and self._is_between_scores(key, figure, low + 0.5):
            self._work_out(key, figure, low + 0.5)
            return True
        return False

    def _is_between_scores(self, key: str, figure: Figure, value: float) -> bool:
        """Whether a fullness of a half can be meant, and not a drink in the place of it."""
        if key != "fullness" or not 1 < value < MOST_FULL:
            return False
        labelled = any(one.figure is figure for clause in self._clauses for one in clause.named)
        drinks = any(
            other is not figure
            and (
                other.unit is Unit.VOLUME
                or self._labels_drink(other)
                or at_water_target(other, self._known)
            )
            for clause in self._clauses
            for other in clause.figures
        )
        no_drink = bool(self._known.water_l) and not likely("water_l", value, self._known)
        only = self._known.asked[:1] == ("fullness",)
        usual = likely("fullness", round(value), self._known)
        told = labelled or drinks or no_drink or only or self._is_second_of_three(figure)
        return usual and (told or figure.unit is Unit.OF_TEN)

    def _is_second_of_three(self, figure: Figure) -> bool:
        """Whether it stands between a weight and a drink, as the answers are asked for."""
        told = [other for clause in self._clauses for other in clause.figures]
        if (
            len(told) != len(CORE)
            or told[1] is not figure
            or self._known.order[: len(CORE)] != CORE
        ):
            return False
        decimal = "." in figure.number or "," in figure.number
        scored = bool(figure.high) or (
            decimal
            and (rough(told[2].number) > MOST_FULL or self._is_nearer_drink(told[2], figure))
        )
        return (
            scored
            and is_plain("weight_kg", told[0], self._known)
            and is_readable("water_l", told[2], self._known)
        )

    def _is_nearer_drink(self, one: Figure, other: Figure) -> bool:
        """Whether the one is nearer to what was to be drunk than the other, as read in litres."""
        target = self._known.water_l
        if not target or self._known.volume_unit is not VolumeUnit.L:
            return False
        return abs(rough(one.number) - target) < abs(rough(other.number) - target)

    def _labels_drink(self, figure: Figure) -> bool:
        named = (one for clause in self._clauses for one in clause.named)
        return any(one.figure is figure and one.key == "water_l" for one in named)

    def _work_out(self, key: str, figure: Figure, value: float) -> None:
        self.answers[key] = value
        self.meant[key] = figure.text.strip()
        self._told_by[key] = figure
        self.spoken_for.add(key)

    def _doubt(
        self, code: DoubtCode | ParseErrorCode, key: str, given: str,
        options: Sequence[Mapping[str, Value]],
    ) -> None:  # fmt: skip
        self._add(Doubt(code=code, answer=key, given=given, options=tuple(options)))

    def _add(self, doubt: Doubt) -> None:
        self.doubts.append(doubt)
        if doubt.answer != "spare":
            self.spoken_for.add(doubt.answer)


def all_same(values: Sequence[float]) -> bool:
    return max(values) - min(values) <= _SAME * max(values)
