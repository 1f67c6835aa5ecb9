"""Which figure is which answer: by its label, by its unit; and what is doubtful."""

from __future__ import annotations

from collections.abc import Sequence

from engine.written.oneline.answers.placing import Placed
from engine.written.oneline.answers.plausible import (
    KEY_OF_UNIT,
    MOST_SHARP,
    at_last_weight,
    at_water_target,
    is_plain,
    value_of,
    values_of,
)
from engine.written.oneline.report import CORE, DoubtCode, Value, agreed
from engine.written.oneline.tokens.pieces import Figure, Unit
from engine.written.units import ParseError

#: Beside a drink these say that it was another amount.
_CHANGES_AMOUNT = frozenset(
    {
        "half", "halb", "halbe", "halber", "halben", "halbes", "another", "again", "twice",
        "thrice", "double", "shy", "short", "more", "less", "each", "per", "je", "plus",
        "zweimal", "dreimal", "viermal", "doppelt", "doppelte", "mehr", "weniger", "nochmal",
        "weitere", "weiteren", "minus", "knapp", "fast", "bottle", "bottles", "flasche",
        "flaschen", "and-a-half", "of", "left", "bis", "ausser", "außer", "except", "instead",
        "statt", "nicht", "not", "kein", "keine", "zuviel",
    }
)  # fmt: skip
_OF_THE_MORNING = frozenset({Unit.NONE, Unit.WEIGHT, Unit.VOLUME, Unit.OF_TEN})


class Figures(Placed):
    """Takes the figures of a line's clauses."""

    def take(self) -> None:
        for key in self._phrases.same:
            self.answers[key] = self._phrases.before(key)
            self.meant[key] = self._phrases.same[key].text
            self.spoken_for.add(key)
            self.labelled = True
        self._take_off_odd()
        self._take_torn()
        self._take_named()
        self._take_bare()
        self._ask_about_odd()
        for key in self.answers:
            self.spoken_for.add(key)

    # by label and unit

    def _take_named(self) -> None:
        told: dict[str, list[Figure]] = {}
        for clause in self._clauses:
            named = {one.figure.start for one in clause.named}
            for one in clause.named:
                self.labels.add(one.label.start)
                if one.figure.start in clause.odd and not clause.is_told_plainly(one):
                    self._odd.append((one.key, one.figure))
                    continue
                if one.key == "sleep_h":  # a person's words of their night stay in the note
                    self.soft.update((one.label.start, one.figure.start))
                told.setdefault(one.key, []).append(one.figure)
            for figure in clause.figures:
                key = self._key_of(figure)
                if figure.start in named or figure.start in self._taken or key is None:
                    continue
                if figure.start in clause.odd:
                    self._odd.append((key, figure))
                else:
                    told.setdefault(key, []).append(figure)
        for key, figures in told.items():
            self.labelled = True
            if key == "sharpness" and self._is_off_its_scale(figures):
                self._leave_in_note(figures)
                continue
            self._take_one(key, figures)
            for figure in figures:
                self._taken.add(figure.start)
                (self.soft if key == "sleep_h" else self.used).add(figure.start)

    def _is_off_its_scale(self, figures: Sequence[Figure]) -> bool:
        """Whether lines that nobody asked for were told from 1 to 10: no answer, and no question."""
        values = values_of("sharpness", figures, self._known)
        return bool(values) and max(values) > MOST_SHARP

    def _leave_in_note(self, figures: Sequence[Figure]) -> None:
        starts = {figure.start for figure in figures}
        self._taken |= starts
        for clause in self._clauses:
            self.labels -= {one.label.start for one in clause.named if one.figure.start in starts}

    def _key_of(self, figure: Figure) -> str | None:
        """The answer that a figure's unit names; "7/10" in the place of sharpness is sharpness."""
        key = KEY_OF_UNIT.get(figure.unit)
        if key != "fullness":
            return key
        order = self._known.order
        named = {one.figure.start: one.key for c in self._clauses for one in c.named}
        if figure.start in named:
            return key
        bare = [f for c in self._clauses for f in c.figures if f.start not in named]
        before = sum(f.unit is Unit.NONE and f.start < figure.start for f in bare)
        if before >= len(order):
            return None  # all answers stand before it: it tells of something else
        sharp = "sharpness" in order and order.index("sharpness")
        given = bare.index(figure) == sharp or key in named.values()
        return "sharpness" if sharp and given else key

    def _take_off_odd(self) -> None:
        """A figure at the day's water target stands for water, whatever words follow it.

        "61.0 6 3.5 palpitations all night": the third of three, or named by a label.
        """
        figures = [figure for clause in self._clauses for figure in clause.figures]
        named = [one for clause in self._clauses for one in clause.named]
        water = {one.figure.start for one in named if one.key == "water_l"}
        if not named and self._known.order[: len(CORE)] == CORE:
            water |= {figure.start for figure in figures[2:3]}
        for clause in self._clauses:
            if any(word.text in _CHANGES_AMOUNT for word in clause.words):
                continue
            for figure in clause.figures:
                if figure.start in clause.trailed & water and at_water_target(figure, self._known):
                    clause.odd.discard(figure.start)
        self._take_off_sole(figures)
        self._take_off_unmistakable(figures, {one.figure.start for one in named})

    def _take_off_sole(self, figures: Sequence[Figure]) -> None:
        """The only amount of a drink, and the only weight near the last one, are that among any words.

        "got through 5 litres by 9pm"; a wish, a denial or a question hides them still.
        """
        drinks = [figure for figure in figures if figure.unit is Unit.VOLUME]
        drinks = [figure for figure in drinks if is_plain("water_l", figure, self._known)]
        weights = [figure for figure in figures if at_last_weight(figure, self._known)]
        weights = [figure for figure in weights if figure.unit in (Unit.NONE, Unit.WEIGHT)]
        sole = [*(drinks if len(drinks) == 1 else ()), *(weights if len(weights) == 1 else ())]
        for clause in self._clauses:
            changed = any(word.text in _CHANGES_AMOUNT for word in clause.words)
            for figure in sole:
                if figure.start in clause.foreign or (changed and figure.unit is Unit.VOLUME):
                    continue
                first = clause.asks and clause.tokens[0] is figure  # "85.8, okay, isn't it?"
                if figure.start in clause.beside or (first and at_last_weight(figure, self._known)):
                    clause.odd.discard(figure.start)

    def _take_off_unmistakable(self, figures: Sequence[Figure], named: set[int]) -> None:
        """Words beside a weight hide nothing where it is its owner's and the other two are told too.

        "stats: 72.4, 6, 3.5"; a score stays in doubt where a word behind it may be what it counts.
        """
        told = [figure for figure in figures if figure.unit in _OF_THE_MORNING]
        weights = [figure for figure in told if at_last_weight(figure, self._known)]
        if len(told) != len(CORE) or len(weights) != 1 or self._known.order[: len(CORE)] != CORE:
            return
        in_order = not named and all(
            is_plain(key, figure, self._known) for key, figure in zip(CORE, told, strict=True)
        )
        for clause in self._clauses:
            for figure in weights:
                if figure.start in clause.beside:
                    clause.odd.discard(figure.start)
            if not in_order:
                continue
            if told[1].start in clause.beside - clause.trailed:
                clause.odd.discard(told[1].start)
            changed = any(word.text in _CHANGES_AMOUNT for word in clause.words)
            if (
                told[2].start in clause.beside
                and at_water_target(told[2], self._known)
                and not changed
            ):
                clause.odd.discard(told[2].start)

    # two ways to read labels

    def _take_torn(self) -> None:
        for clause in self._clauses:
            if not clause.torn:
                continue
            figures = [figure for figure in clause.figures if figure.unit is Unit.NONE]
            options = []
            for way in clause.torn[:3]:
                option = self._torn_option([(one.key, one.figure) for one in way], figures)
                if option and option not in options:
                    options.append(option)
            for way in clause.torn:
                self.labels.update(one.label.start for one in way)
            self.used.update(figure.start for figure in figures)
            self._taken |= self.used
            keys = {key for option in options for key in option}
            about = next((key for key in self._known.order if key in keys), "fullness")
            # "water 3 5": the numbers left over may be decimals
            all_used = bool(options) and all(len(figures) <= len(option) for option in options)
            shared = agreed(options) if all_used else {}
            self.answers |= shared
            self._doubt(
                DoubtCode.ORDER, about, " ".join(token.text for token in clause.tokens),
                [{k: v for k, v in option.items() if k not in shared} for option in options],
            )  # fmt: skip
            self.spoken_for |= keys
            self.labelled = True

    def _torn_option(
        self, named: Sequence[tuple[str, Figure]], figures: Sequence[Figure]
    ) -> dict[str, Value]:
        option: dict[str, Value] = {}
        left = [f for f in figures if all(f.start != figure.start for _, figure in named)]
        open_keys = [key for key in self._known.order if key not in {k for k, _ in named}]
        pairs = [*named, *self._placed(left, open_keys)]
        for key, figure in pairs:
            try:
                option[key] = value_of(key, figure, self._known)
            except ParseError:
                return {}
        return option
