"""A day's drinking told in parts, added up: "1.5 in the morning, 2 at work and three 0.5s", "3 x 2 l".

A small grammar over the pieces of `drink_words`: a part is a number of litres or ounces, so many of a
size, or a bare number of a part of the day; parts are joined by "and", "plus" or what they are told of.
What it comes to is written out in the place of it all, and told back. Where that can't be known (a
bottle of no size, another drink than water), it is asked about; nothing of a sum is read as the whole.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from engine.written.oneline.drink_parts import HALF_BOTTLE_L, MOST_L, OUNCE_L, Part, Parts
from engine.written.oneline.drink_words import may_be_counted, pieces_of
from engine.written.oneline.report import Doubt, DoubtCode, Known
from engine.written.units import WeightUnit

_MOST_BARE_L, _LEAST_BARE_ML, _LEAST_BARE_OZ = 6.0, 100.0, 8.0
_FAR_OVER = 1.8  # times the target: a bare sum beyond it is no sum
_SAME = 0.03
_JOINTS = "pfwtieo+,"
_PLAIN = ("amount", "lone", "bare", "share", "other")
_ADDS = (
    "+", "plus", "&", "noch", "nochmal", "noch mal", "nochmals", "dazu", "another", "extra",
    "on top",
)  # fmt: skip
_OF_AN_HOUR = ("at", "um", "gegen", "@")
_OF_OTHERS = frozenset(
    {"full", "fullness", "weight", "weighed", "scale", "scales", "f", "v", "carbs", "slept",
     "sleep", "hr", "look", "voll", "fülle", "fuelle", "füllegrad", "gewicht", "waage", "g",
     "gew", "kh", "schlaf", "puls", "geschlafen", "gewogen", "mood", "pump", "energy", "steps",
     "schritte", "day", "tag", "hunger"}
)  # fmt: skip
_NOT_DRUNK = (
    "not", "nicht", "left", "than", "als", "statt", "instead", "of", "less", "weniger", "without",
    "ohne",
)  # fmt: skip
_OF_THE_DAY = (
    "at night", "in the evening", "in the morning", "in the afternoon", "at lunch", "at work",
    "at the gym", "abends", "morgens", "mittags", "nachmittags", "vormittags", "nachts",
    "am abend", "am morgen", "am nachmittag", "am vormittag", "auf arbeit", "im gym",
)  # fmt: skip
_MOST_SMALL = 15  # ounces: what is more is a larger measure
_MOST_BARE = 3000  # ml


@dataclass(frozen=True, slots=True, kw_only=True)
class Told:
    """The line without what was told in parts; the words of it; what is to be asked instead."""

    line: str
    said: str = ""
    asked: Doubt | None = None


def added_up(line: str, known: Known) -> Told:
    """The line, as long as before, with the drinks told in parts as the one amount that they are."""
    if not may_be_counted(line):
        return Told(line=line)
    pieces = pieces_of(line, known.language)
    reader = _Reader(pieces, known, british=_is_british(line, known))
    at = 0
    while at < len(pieces):
        parts = reader.run_at(at)
        if parts and (told := reader.come_to(line, parts)):
            return told
        at += 1
    return Told(line=line)


def passed_over(line: str, known: Known, read: Sequence[tuple[int, int]]) -> str:
    """What looks like a drink and was not read, though another was; "" where there is none.

    `read` are the places of the figures that are accounted for.
    """
    if not may_be_counted(line):
        return ""
    pieces = pieces_of(line, known.language)
    reader = _Reader(pieces, known, british=_is_british(line, known))
    at = 0
    while at < len(pieces):
        part = reader.part_at(at)
        if part is None:
            at += 1
            continue
        start, end = pieces[part.first].start, pieces[part.last].end
        accounted = any(start < to and begin < end for begin, to in read)
        if not accounted and reader.is_a_drink(part):
            return line[start:end]
        at = part.last + 1
    return ""


def _is_british(line: str, known: Known) -> bool:
    stones = re.search(r"\d ?(?:st|stone)(?![^\W_])|\bstones?\b", line)
    return known.weight_unit is WeightUnit.ST or stones is not None


_Read = tuple[float | None, str, float | None]  # the amount, its unit, one bottle of it


class _Reader(Parts):
    """Reads the parts of one line together."""

    def is_a_drink(self, part: Part) -> bool:
        """Whether a part that stands alone is drunk: not eaten, not left over, of no other drink."""
        if part.shape in ("other", "share", "wholes"):
            return False
        beside = [
            self._all[at] for at in (part.first - 1, part.last + 1) if 0 <= at < len(self._all)
        ]
        before = self._all[max(0, part.first - 3) : part.first]
        if any(piece.kind in "-o" or piece.text in _NOT_DRUNK for piece in (*before, *beside)):
            return False
        joint, behind = self._joint(part.last + 1)
        if "o" in joint:
            return False
        of = self._all[part.last + 1 : behind]
        following = self._all[behind] if behind < len(self._all) else None
        eaten = of and of[-1].text == "of" and following and following.kind == "."
        if part.shape != "bare":
            return not eaten
        day = any(piece.kind == "p" and piece.text in _OF_THE_DAY for piece in beside)
        return day and self._may_begin(part) and (part.amount or 0) <= _MOST_BARE_L

    # several parts

    def run_at(self, at: int) -> list[Part]:
        """The parts that follow each other from this piece on."""
        part = self.part_at(at)
        if part is None or (part.shape in ("bare", "share") and not self._may_begin(part)):
            return []
        parts = [part]
        while True:
            joint, behind = self._joint(parts[-1].last + 1)
            if joint[:1] == "o" or joint[:2] in ("fo", "wo"):
                parts[-1] = replace(parts[-1], other=True)
            following = self.part_at(behind)
            if following is None or not self._joins(parts, joint, following):
                return parts
            parts.append(replace(following, joint=joint or " "))

    def _joint(self, at: int) -> tuple[str, int]:
        letters = ""
        while at < len(self._all) and self._all[at].kind in _JOINTS:
            letters += self._all[at].kind
            at += 1
        return letters, at

    def _may_begin(self, part: Part) -> bool:
        """Whether a bare number may be the first part: no label names it, and no hour is told."""
        before = self._all[part.first - 1] if part.first else None
        if before is None:
            return True
        return before.text not in _OF_OTHERS and before.text not in _OF_AN_HOUR

    def _joins(self, parts: Sequence[Part], joint: str, part: Part) -> bool:
        """Whether the part goes on what was told, and is no other answer."""
        later, _ = self._joint(part.last + 1)
        day = "p" in joint or "p" in later
        if part.shape == "share":
            return "+" in joint and any(one.unit for one in parts)
        if part.shape == "other":
            return "+" in joint or "," in joint
        if part.shape == "bare":
            added = any(
                self._all[place].text in _ADDS for place in range(parts[-1].last + 1, part.first)
            )
            told = "t" in joint or "i" in joint or (day and not self._is_labelled_behind(part))
            return (told or added) and part.amount is not None
        if parts[-1].shape == "bare" and len(parts) == 1:
            apart = joint.replace("f", "").replace("w", "")
            if not apart or apart[0] == ",":  # "5, at work 2 litres"
                return False
        return "+" in joint or day or "t" in joint or "i" in joint or not joint

    def _is_labelled_behind(self, part: Part) -> bool:
        following = self._all[part.last + 1] if part.last + 1 < len(self._all) else None
        return following is not None and following.kind == "." and following.text[:1].isalpha()

    def come_to(self, line: str, parts: Sequence[Part]) -> Told | None:
        """What the parts come to; None where they are no sum, or nothing but one plain amount."""
        own = [part for part in parts if part.shape != "other"]
        while parts and parts[-1].shape == "other":
            parts = parts[:-1]
        if not own or (len(own) == 1 and self._is_plain(own[0])):
            return None
        end = self._end(parts)
        if end < len(self._all) and self._all[end].kind == "-":
            return None
        start = self._all[self._start(parts[0])].start
        span = (start, self._all[end - 1].end)
        said = line[slice(*span)].strip(" ,:")
        if any(part.amount is None for part in own) or any("e" in part.joint for part in own):
            bare = all(part.amount is not None and not part.unit for part in own)
            return (
                None if bare and not self._is_of_drink(parts) else self._ask(line, span, said, [])
            )
        amounts = self._in_one_unit(own)
        if amounts is None:
            return None
        unit, values = amounts
        total = self._total(own, values)
        others = sum(value for part, value in zip(own, values, strict=True) if part.other)
        if total is None or not self._is_believable(own, parts, total, unit):
            return None
        if others:
            litres = self._litres(total, unit), self._litres(total - others, unit)
            return self._ask(line, span, said, [one for one in litres if one])
        text = self._written(total, unit, line, span)
        if text is None:
            return None
        return Told(line=f"{line[: span[0]]}{text}{line[span[1] :]}", said=said)

    def _is_plain(self, part: Part) -> bool:
        """Whether it is read as any other figure: a number with its unit."""
        odd = self._all[part.first].kind == "h" and self._all[part.first].value != HALF_BOTTLE_L
        return part.amount is None or (part.shape in _PLAIN and not (odd and part.unit))

    def _start(self, part: Part) -> int:
        """With the part of the day before it: "früh 1, mittags 1"."""
        return (
            part.first - 1 if part.first and self._all[part.first - 1].kind == "p" else part.first
        )

    def _end(self, parts: Sequence[Part]) -> int:
        end = at = parts[-1].last + 1
        while at < len(self._all) and self._all[at].kind in "pfwv":
            if self._all[at].kind == "p" or self._all[at].text[:3] == "of ":
                end = at + 1
            at += 1
        return end

    def _is_of_drink(self, parts: Sequence[Part]) -> bool:
        """Whether a word for drinking stands in it or right before."""
        first = self._start(parts[0])
        before = self._all[max(0, first - 2) : first]
        return any(p.kind == "w" for p in (*before, *self._all[first : self._end(parts)]))

    def _in_one_unit(self, parts: Sequence[Part]) -> tuple[str, list[float]] | None:
        """The amounts of all parts in one unit; a bare one has that of the next, or the one before."""
        units: list[str] = []
        for place, part in enumerate(parts):
            if part.unit:
                units.append(part.unit)
                continue
            after = next((one.unit for one in parts[place + 1 :] if one.unit), "")
            before = next((one.unit for one in reversed(parts[:place]) if one.unit), "")
            units.append((before or after) if part.shape == "share" else (after or before))
        units = [
            "l" if unit in ("halves", "wholes") else unit or self._own_unit(parts) for unit in units
        ]
        values = []
        for place, part in enumerate(parts):
            amount = part.amount or 0.0
            if part.shape == "share":
                amount *= next((one.each for one in reversed(parts[:place]) if one.each), 1.0)
            elif not part.unit and units[place] == "l" and amount >= _LEAST_BARE_ML:
                amount /= 1000
            elif (
                not part.unit
                and units[place] == "oz"
                and parts[place - 1 :]
                and amount < _LEAST_BARE_OZ
            ):
                larger = next(
                    (one.each for one in parts if one.each and one.each > _MOST_SMALL), None
                )
                amount *= larger or 1.0
            values.append(amount)
        if len(set(units)) > 1:
            if set(units) != {"l", "oz"} or self._ounce is None:
                return None
            if self._known.volume_unit in OUNCE_L:
                values = [
                    v if u == "oz" else v / self._ounce for v, u in zip(values, units, strict=True)
                ]
                return "oz", values
            values = [
                v if u == "l" else v * self._ounce for v, u in zip(values, units, strict=True)
            ]
            return "l", values
        return units[0], values

    def _own_unit(self, parts: Sequence[Part]) -> str:
        least = min(part.amount or 0 for part in parts)
        return "oz" if self._known.volume_unit in OUNCE_L and least >= _LEAST_BARE_OZ else "l"

    def _total(self, parts: Sequence[Part], values: Sequence[float]) -> float | None:
        """The sum, or the whole that was told beside its parts."""
        whole, rest = values[0], sum(values[1:])
        if len(values) == 1:
            return whole
        if "i" in self._joint(parts[-1].last + 1)[0]:
            return whole if len(values) == 2 else None
        if any("i" in part.joint for part in parts):
            return whole if parts[1].joint.count("i") else None
        before = self._all[parts[0].first - 1] if parts[0].first else None
        if (before and before.kind == "t" and rest <= whole * (1 + _SAME)) or (
            len(values) > 2
            and abs(rest - whole) <= _SAME * whole
            and "p" not in parts[1].joint
            and not (before and before.kind == "p")
        ):
            return whole
        if "t" in parts[-1].joint:
            told, before_it = values[-1], sum(values[:-1])
            return told if abs(told - before_it) <= 0.15 * told else None
        return sum(values)

    def _is_believable(
        self, own: Sequence[Part], parts: Sequence[Part], total: float, unit: str
    ) -> bool:
        litres = self._litres(total, unit)
        if litres is not None and not 0 < litres <= MOST_L:
            return False
        target = self._known.water_l
        far = litres is not None and target and litres > _FAR_OVER * target
        if far and own[0].shape == "amount" and any(part.shape == "lone" for part in own):
            return False  # "6 litre at breakfast, litre at work": six is another answer
        bare = [part for part in own if not part.unit and part.shape == "bare"]
        if not bare:
            return True
        if far:
            return False
        if any(not 0 < (part.amount or 0) <= _MOST_BARE for part in bare):
            return False
        named = len(bare) < len(own) or self._is_of_drink(parts)
        if named and own[0].unit:
            return True
        # no word says that the first number is a drink: there must be others for weight and fullness
        inside = range(parts[0].first, parts[-1].last + 1)
        others = sum(
            p.kind in "nh" or p.text[:1].isdecimal()
            for at, p in enumerate(self._all) if at not in inside
        )  # fmt: skip
        decimal = any((part.amount or 0) % 1 for part in bare)
        decimal |= all((part.amount or 0) >= _LEAST_BARE_ML for part in bare)
        return self._is_of_drink(parts) or (others > 1 and (named or decimal))

    def _litres(self, amount: float, unit: str) -> float | None:
        if unit == "l":
            return round(amount, 3)
        return round(amount * self._ounce, 3) if unit == "oz" and self._ounce else None

    def _written(self, total: float, unit: str, line: str, span: tuple[int, int]) -> str | None:
        room = span[1] - span[0]
        name = {"g": "gal", "q": "qt", "p": "pt"}.get(unit, unit)
        amounts = [(total, name)]
        litres = self._litres(total, unit)
        if litres is not None and self._known.volume_unit not in OUNCE_L:
            amounts = [(litres, "l")]
        texts = [
            f"{v:.{digits}f}".rstrip("0").rstrip(".") + n for v, n in amounts for digits in (2, 1)
        ]
        if re.search(r"\d,\d", line) and not re.search(r"\d\.\d", line):
            texts = [text.replace(".", ",") for text in texts]
        return next((text.ljust(room) for text in texts if len(text) <= room), None)

    def _ask(self, line: str, span: tuple[int, int], said: str, litres: Sequence[float]) -> Told:
        code = DoubtCode.TWO_VALUES if len(litres) > 1 else DoubtCode.UNCLEAR
        options = tuple({"water_l": one} for one in litres)
        asked = Doubt(code=code, answer="water_l", given=said, options=options)
        room = span[1] - span[0]
        return Told(line=f"{line[: span[0]]}|{' ' * (room - 1)}{line[span[1] :]}", asked=asked)
