"""Figures without label or unit: which answer each is by its place among them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import permutations

from engine.written.late import Late
from engine.written.oneline.answers.labelling import LEAST_SPARE_CARBS
from engine.written.oneline.answers.leftover import Leftover
from engine.written.oneline.answers.plausible import (
    KEY_OF_UNIT,
    at_last_weight,
    at_water_target,
    fits,
    is_plain,
    is_readable,
    value_of,
    values_of,
)
from engine.written.oneline.answers.told import all_same
from engine.written.oneline.report import CORE, DoubtCode, agreed
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.pieces import Figure, Unit

_SLIPPED = Late(r"\d{2,3}[.,][a-z]{1,2}")
_HALF = 0.5
_CLOSE = 2  # characters: "60 2", "60. 2"


class Placed(Leftover):
    """Takes what is left bare, in the order in which the answers are asked for."""

    def _take_bare(self) -> None:
        odd = {start for clause in self._clauses for start in clause.odd}
        bare = []
        for clause in self._clauses:
            for figure in clause.figures:
                if figure.start in self._taken or figure.unit in KEY_OF_UNIT:
                    continue
                if any(figure.start == other.start for _, other in self._odd):
                    continue
                if figure.unit is Unit.HOURS:
                    continue  # hours of nothing named
                if figure.start in odd:
                    by_vessel = figure.start in clause.vessels
                    self._odd.append(("water_l" if by_vessel else "", figure))
                elif figure.unit is Unit.GRAMS:
                    self._spare(figure)
                else:
                    bare.append(figure)
        if not bare or self._is_chatter(bare):
            return
        held = {"weight_kg", "water_l"} & {key for key, _ in self._odd}
        shut = set(self._phrases.skipped) | self._phrases.later | self.spoken_for
        if not any(is_plain("weight_kg", figure, self._known) for figure in bare):
            shut |= held & {"weight_kg"}
        keys = [key for key in self._known.order if key not in shut]
        if self._begins_unreadable():
            keys = [key for key in keys if key != "weight_kg"]
        core = [key for key in keys if key in CORE]
        if len(bare) < len(core):
            keys = [key for key in keys if key not in self._phrases.reserved and key not in held]
        self._place(bare, keys)

    def _begins_unreadable(self) -> bool:
        """Whether what can't be read stands in the place of the weight: "57.s, 6, 4"."""
        first = next((token for clause in self._clauses for token in clause.tokens), None)
        return first.unknown and bool(_SLIPPED.fullmatch(first.text)) if first else False

    def _is_chatter(self, bare: Sequence[Figure]) -> bool:
        """A lone number that nobody asked for is a weight, or nothing of a check-in."""
        said = self._known.asked or self.answers or self.doubts or self._phrases.skipped
        if said or self._phrases.reserved or len(bare) > 1:
            return False
        return not is_plain("weight_kg", bare[0], self._known)

    def _place(self, bare: Sequence[Figure], keys: Sequence[str]) -> None:
        if self._weight_again(bare[0], keys) or self._is_second_weight(bare[0], keys):
            self.used.add(bare[0].start)
            bare = bare[1:]
        spare = list(bare[len(keys) :])
        placed = list(zip(keys, bare, strict=False))
        if placed and placed[-1][0] == "sharpness" and self._is_carbs(placed[-1]):
            spare.insert(0, placed.pop()[1])
        if not placed:
            for figure in spare:
                self._spare(figure)
            return
        if spare and (self._ask_about_split(bare, keys) or self._moved_on(placed, spare)):
            return
        moved = any(not self._is_carbs(("", figure)) for figure in spare)
        if moved and not all(is_readable(*pair, self._known) for pair in placed):
            # a number too many among them, and none of them may stand where it was meant to
            self.used.update(figure.start for figure in bare)
            given = " ".join(figure.text.strip() for figure in bare)
            self._doubt(DoubtCode.ORDER, keys[0], given, [])
            return
        self._take_placed(placed, keys)
        for figure in spare:
            self._spare(figure)

    def _weight_again(self, figure: Figure, keys: Sequence[str]) -> bool:
        """ "159.6 (72.4 kg)": the weight told with its unit, once more in one's own."""
        told, weight = self._told_by.get("weight_kg"), self.answers.get("weight_kg")
        again = values_of("weight_kg", [figure], self._known)
        if told is None or weight is None or told.unit is not Unit.WEIGHT or not again:
            return False
        other = any(is_plain(key, figure, self._known) for key in keys)
        return not other and all_same([again[0], weight])

    def _is_second_weight(self, figure: Figure, keys: Sequence[str]) -> bool:
        """ "72.4 6 3.5, weight 72.2": which of the two it is."""
        first = bool(keys) and not is_readable(keys[0], figure, self._known)
        return first and "weight_kg" not in keys and self._second_weight(figure)

    def _moved_on(self, placed: Sequence[tuple[str, Figure]], spare: Sequence[Figure]) -> bool:
        """Asks anew where the water told stands among the numbers too many: "72. 4, 6, 3.5"."""
        water = next((figure for key, figure in placed if key == "water_l"), None)
        if water is None or at_water_target(water, self._known):
            return False
        if not any(at_water_target(figure, self._known) for figure in spare):
            return False
        figures = [*(figure for _, figure in placed), *spare]
        self.used.update(figure.start for figure in figures)
        given = " ".join(figure.text.strip() for figure in figures)
        self._doubt(DoubtCode.ORDER, placed[0][0], given, [])
        self.spoken_for |= {key for key, _ in placed}
        return True

    def _ask_about_split(self, bare: Sequence[Figure], keys: Sequence[str]) -> bool:
        """A number too many, because the first two may be one: "60 2 5 3.5"."""
        first, second, rest = bare[0], bare[1], bare[2:]
        close = 0 <= second.start - first.end <= _CLOSE and len(second.number) == 1
        if not close or not first.number.isdecimal() or len(rest) + 1 > len(keys):
            return False
        whole = replace(first, number=f"{first.number}.{second.number}")
        way = list(zip(keys, [whole, *rest], strict=False))
        if not all(is_plain(key, figure, self._known) for key, figure in way):
            return False
        self.used.update(figure.start for figure in bare)
        option = {key: value_of(key, figure, self._known) for key, figure in way}
        given = " ".join(figure.text.strip() for figure in bare)
        if len(keys) == 1 and at_last_weight(whole, self._known):
            self._work_out(keys[0], replace(whole, text=given), float(option[keys[0]] or 0))
            return True  # the other answers are told, so the digit is no other
        self._doubt(DoubtCode.ORDER, keys[0], given, [option])
        self.spoken_for |= set(option)
        return True

    def _is_carbs(self, pair: tuple[str, Figure]) -> bool:
        key, figure = pair
        if is_plain(key, figure, self._known):
            return False
        values = (
            values_of("carb_eaten_g", [figure], self._known) if fits("carb_eaten_g", figure) else []
        )
        return bool(values) and values[0] >= LEAST_SPARE_CARBS

    def _take_placed(self, placed: Sequence[tuple[str, Figure]], keys: Sequence[str]) -> None:
        if all(
            is_plain(key, figure, self._known)
            or (key == "fullness" and self._is_half_score(figure))
            for key, figure in placed
        ):
            for key, figure in placed:
                self._use(key, figure)
            return
        figures = [figure for _, figure in placed]
        others = [
            list(zip(chosen, figures, strict=True))
            for chosen in permutations(keys, len(figures))
            if chosen != tuple(key for key, _ in placed)
        ]
        readable = [way for way in others if all(is_readable(*pair, self._known) for pair in way)]
        usual = [way for way in readable if all(is_plain(*pair, self._known) for pair in way)]
        if not usual:
            for key, figure in placed:
                self._use(key, figure)
            return
        in_order_readable = all(is_readable(key, figure, self._known) for key, figure in placed)
        if len(readable) == 1 and not in_order_readable and self._certain(readable[0], keys):
            for key, figure in readable[0]:
                self._use(key, figure)
            return
        ways = [*usual, list(placed)] if in_order_readable else usual
        self._ask_which(ways[:3], figures)

    def _is_half_score(self, figure: Figure) -> bool:
        """Whether "5 and a half" in the place of the fullness is meant as one."""
        value = rough(figure.number) if not figure.high else 0.0
        return value % 1 == _HALF and self._is_between_scores("fullness", figure, value)

    def _certain(self, way: Sequence[tuple[str, Figure]], keys: Sequence[str]) -> bool:
        """Whether every open answer got its figure, and all but the weight stand in their order."""
        core = [key for key in keys if key in CORE]
        told = [key for key, _ in way]
        without = [key for key in told if key != "weight_kg"]
        in_order = without == [key for key in keys if key in without]
        return len(way) >= len(core) and in_order

    def _ask_which(
        self, ways: Sequence[Sequence[tuple[str, Figure]]], figures: Sequence[Figure]
    ) -> None:
        # what is a range has no value yet: it is asked for when these are settled
        told = [[(key, figure) for key, figure in way if not figure.high] for way in ways]
        options = [{key: value_of(key, figure, self._known) for key, figure in way} for way in told]
        shared = agreed(options)
        # with a single way there is nothing to compare it with: only the weight is beyond doubt
        if len(options) == 1:
            shared = {key: v for key, v in shared.items() if key == "weight_kg"}
        self.answers |= shared
        rest = [{k: v for k, v in option.items() if k not in shared} for option in options]
        given = " ".join(figure.text.strip() for figure in figures)
        about = next((key for option in rest for key in option), ways[0][0][0])
        for figure in figures:
            self.used.add(figure.start)
        self._doubt(DoubtCode.ORDER, about, given, rest)
        self.spoken_for |= {key for option in rest for key in option}

    def _use(self, key: str, figure: Figure) -> None:
        self.used.add(figure.start)
        self._take_value(key, figure)

    def _placed(self, figures: Sequence[Figure], keys: Sequence[str]) -> list[tuple[str, Figure]]:
        """Bare figures on open answers: the first fitting way in order."""
        for chosen in permutations(keys, min(len(figures), len(keys))):
            pairs = list(zip(chosen, figures, strict=False))
            if all(is_plain(key, figure, self._known) for key, figure in pairs):
                return pairs
        return []
