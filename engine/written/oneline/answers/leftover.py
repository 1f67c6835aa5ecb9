"""The figures that stand where no answer is open, or among words that are not known."""

# ruff: noqa: E501 - a pattern stays on one line

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from engine.written.late import Late
from engine.written.oneline.answers.labelling import LEAST_SPARE_CARBS
from engine.written.oneline.answers.plausible import fits, is_plain, likely, values_of
from engine.written.oneline.answers.told import Told, all_same
from engine.written.oneline.report import Doubt, DoubtCode, Value
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.pieces import Clause, Figure, Token, Unit

#: A share of something, or one more filling of it: beside a drink another amount, unless it was read.
_SHARE = Late(
    r"(?<![^\W_])(?<!left )(?:half|halves|hal[bv]\w*|hoibe\w*|thirds?|quarters?|drittel|(?:drei)?viertel"
    r"|(?<!  )(?:refill\w*|(?:nach|auf)gefüllt\w*))(?![^\W_])"  # behind a gap it was counted with the sum
    r"(?! ?(?:past|after|to|asleep|way|wach|tot|so|schlaf|voll|[5-9](?![.,]?\d)|1[0-2]|kilo|kg|pound|lb|pfund))"
)
_CLAUSE_END = Late(r"[;!?\n]|[.,](?!\d)")
_SENTENCE_END = Late(r"[;!?\n]|\.(?!\d)")
_CLOSER = 0.1  # of the drink: what differs by more is another
_BESIDE = 7  # characters: " and ", " then "


class Leftover(Told):
    """Asks about what is left over."""

    def _spare(self, figure: Figure) -> None:
        """A number more than there are answers."""
        self.used.add(figure.start)
        if (
            self._is_told_closer(figure)
            or self._is_told_already(figure)
            or self._second_weight(figure)
            or self._decimal(figure)
        ):
            return
        if self._on_target(figure) or self._may_be_more_drink(figure):
            return
        options: list[Mapping[str, Value]] = []
        carbs_open = "carb_eaten_g" not in self.spoken_for and not self._phrases.on_target
        grams = (
            values_of("carb_eaten_g", [figure], self._known) if fits("carb_eaten_g", figure) else []
        )
        if carbs_open and grams and grams[0] >= LEAST_SPARE_CARBS and not figure.high:
            options = [{"carb_eaten_g": grams[0]}]
            self.spoken_for.add("carb_eaten_g")
        about = "carb_eaten_g" if options else "spare"
        self._doubt(DoubtCode.SPARE, about, figure.text.strip(), options)

    def _is_told_closer(self, figure: Figure) -> bool:
        """ "just under 4 litres, 3.9 to be exact": the whole litres told before, to a tenth."""
        told, first = self._told_by.get("water_l"), self.answers.get("water_l")
        if told is None or first is None or not told.number.isdecimal() or figure.high:
            return False
        closer = values_of("water_l", [figure], self._known) if fits("water_l", figure) else []
        near = bool(closer) and 0 < abs(closer[0] - first) <= _CLOSER * first
        if not near or not closer[0] % 1 or figure.start < told.start:
            return False
        self.answers["water_l"] = closer[0]
        self.meant["water_l"] = f"{told.text.strip()}, {figure.text.strip()}"
        self._told_by["water_l"] = figure
        return True

    def _is_told_already(self, figure: Figure) -> bool:
        """Whether it says in digits what the figure right before it says in words: "six (6)"."""
        for told in self._told_by.values():
            again = told.text[:1].isalpha() and rough(told.number) == rough(figure.number)
            if again and 0 < figure.start - told.end <= 2:
                return True
            same = rough(told.number) == rough(figure.number) and not figure.high
            if same and told.unit is not figure.unit and Unit.NONE in (told.unit, figure.unit):
                return True  # "84.2/5/6 (yes, six litres)"
        return False

    def _may_be_more_drink(self, figure: Figure) -> bool:
        """ "60.2 5 1.5 and 1.5": a number of the same kind behind the drink is asked about with it."""
        told, first = self._told_by.get("water_l"), self.answers.get("water_l")
        more = values_of("water_l", [figure], self._known) if fits("water_l", figure) else []
        if told is None or first is None or not more or told.unit is not Unit.NONE:
            return False
        beside = 0 < figure.start - told.end <= _BESIDE and "." in figure.number.replace(",", ".")
        if not beside or not likely("water_l", first + more[0], self._known):
            return False
        del self.answers["water_l"]
        self._doubt(
            DoubtCode.TWO_VALUES, "water_l", f"{told.text} / {figure.text}",
            [{"water_l": round(first + more[0], 3)}, {"water_l": first}],
        )  # fmt: skip
        return True

    def _on_target(self, figure: Figure) -> bool:
        """Whether it says once more what "on target" says."""
        target = self._known.carb_g
        grams = values_of("carb_eaten_g", [figure], self._known) if target else []
        if not self._phrases.on_target or grams != [target] or not fits("carb_eaten_g", figure):
            return False
        self.answers["carb_eaten_g"] = target
        return True

    def _decimal(self, figure: Figure) -> bool:
        """A digit right behind an answer that may be its decimal: "water 3 5"."""
        for key in ("weight_kg", "water_l"):
            before = self._told_by.get(key)
            close = before is not None and 0 <= figure.start - before.end <= 1
            if before is None or not close or len(figure.number) != 1 or key not in self.answers:
                continue
            if not before.number.isdecimal():
                continue
            longer = replace(before, number=f"{before.number}.{figure.number}")
            whole = values_of(key, [longer], self._known)
            options = [*whole, self.answers.pop(key)]
            given = f"{before.text} {figure.text}"
            self._doubt(DoubtCode.UNCLEAR, key, given, [{key: value} for value in options])
            return True
        return False

    def _second_weight(self, figure: Figure) -> bool:
        """A second figure that can only be the weight: which of the two it is."""
        first = self.answers.get("weight_kg")
        values = values_of("weight_kg", [figure], self._known) if fits("weight_kg", figure) else []
        if first is None or not values or abs(values[0] - first) > 0.03 * first:
            return False
        if all_same([values[0], first]) and figure.number == self._told_by["weight_kg"].number:
            return True
        del self.answers["weight_kg"]
        self._doubt(
            DoubtCode.TWO_VALUES, "weight_kg", figure.text.strip(),
            [{"weight_kg": first}, {"weight_kg": values[0]}],
        )  # fmt: skip
        return True

    def _ask_about_odd(self) -> None:
        """Figures among words that are not known: asked about where their answer is still open."""
        if not (self.answers or self.doubts or self._phrases.skipped or self._known.asked):
            return
        if not self.answers and not self.doubts and not self._phrases.skipped:
            asked = self._known.asked[:1]
            self._odd = [(key, figure) for key, figure in self._odd if key and key in asked]
        for key, figure in self._odd:
            if figure.unit is Unit.VOLUME and self.answers.get("water_l"):
                self._ask_second_drink(figure)
                continue
            if not key and self._is_of_a_scale(figure) and self._second_weight(figure):
                self.used.add(figure.start)
                continue
            keys = (
                [key] if key else [k for k in self._known.order if is_plain(k, figure, self._known)]
            )
            open_keys = [k for k in keys if k not in self.spoken_for | set(self._phrases.skipped)]
            if not open_keys or open_keys[0] in self.answers:
                continue
            about = open_keys[0]
            self.used.add(figure.start)
            self._ask_odd(about, figure)

    def _is_of_a_scale(self, figure: Figure) -> bool:
        """Told to a tenth and of nothing else, as "reweighed 59.9" behind "60.4" is; not of a day."""
        if figure.unit is not Unit.NONE or figure.high or "." not in figure.number:
            return False
        (own,) = (clause for clause in self._clauses if figure in clause.figures)
        told = self._told_by.get("weight_kg")
        return figure.start not in own.foreign | own.dated and told not in own.figures

    def _ask_second_drink(self, figure: Figure) -> None:
        """All drinks count together: "2 l water and 1.5 l coffee" may be 3.5."""
        first, values = self.answers["water_l"], values_of("water_l", [figure], self._known)
        if first is None or not values:
            return
        del self.answers["water_l"]
        amounts = [first + values[0], first]
        self._doubt(
            DoubtCode.TWO_VALUES, "water_l", figure.text.strip(), [{"water_l": v} for v in amounts]
        )

    def more_of_drink(self, line: str) -> str:
        """The share that stands unread in the sentence of the drink that was read."""
        told = self._told_by.get("water_l")
        if told is None:
            return ""
        starts = [end.end() for end in _CLAUSE_END.finditer(line[: told.start])]
        follow = _SENTENCE_END.search(line, told.end)
        sentence = (starts[-1] if starts else 0), follow.start() if follow else len(line)
        read = [figure for clause in self._clauses for figure in clause.figures]
        for share in _SHARE.finditer(line, *sentence):
            if not any(one.start <= share.start() < one.end for one in read):
                return share[0]
        return ""

    def ask_about_more(self, given: str, drunk: float) -> None:
        """Asks whether the drink that was read is all, where more of it seems to stand there."""
        self._doubt(DoubtCode.UNCLEAR, "water_l", given.strip(), [{"water_l": drunk}])

    def ask_instead(self, doubt: Doubt) -> None:
        """Asks about an answer that was read, and takes it back."""
        self.answers.pop(doubt.answer, None)
        self.meant.pop(doubt.answer, None)
        self._add(doubt)

    def _ask_odd(self, key: str, figure: Figure) -> None:
        if key == "sleep_h":
            self.used.discard(figure.start)
            return  # nobody is asked how they slept: it stays in their words
        if figure.high:
            self._take_range(key, figure)
            return
        vessel = next(
            (self._vessel(c, figure) for c in self._clauses if figure.start in c.vessels), None
        )
        values = [] if vessel else values_of(key, [figure], self._known)
        options = [{key: v} for v in values if likely(key, v, self._known)]
        given = " ".join([figure.text.strip(), *([vessel.text] if vessel else [])])
        self._doubt(DoubtCode.UNCLEAR, key, given, options)

    def _vessel(self, clause: Clause, figure: Figure) -> Token:
        """What the figure counts: "glasses", "flaschen"."""
        vessel = clause.tokens[clause.tokens.index(figure) + 1]
        self.labels.add(vessel.start)  # it is asked about with its figure
        return vessel
