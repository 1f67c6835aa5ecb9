"""A day's drinking told in parts, added up: "1.5 in the morning, 2 at work and three 0.5s", "3 x 2 l".

A small grammar over the pieces of `drinks.words`: a part is a number of litres or ounces, so many of a
size, or a bare number of a part of the day; parts are joined by "and", "plus" or what they are told of.
What it comes to is written out in the place of it all, and told back. Where that can't be known (a
bottle of no size, another drink than water), it is asked about; nothing of a sum is read as the whole.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from engine.written.late import Late
from engine.written.oneline.drinks.parts import (
    BEGINS,
    HALF_BOTTLE_L,
    MOST_L,
    OF_A_LITRE,
    OUNCE_L,
    Part,
    Parts,
    is_british,
)
from engine.written.oneline.drinks.words import may_be_counted, pieces_of
from engine.written.oneline.report import Doubt, DoubtCode, Known
from engine.written.oneline.tokens.numbers import instead

_LEAST_BARE_ML, _LEAST_BARE_OZ = 100.0, 8.0
_FAR_OVER = 1.8  # times the target: a bare sum beyond it is no sum
_SAME = 0.03
_LABEL_BEFORE = Late(r"\b(?:water|wasser|drank|getrunken)(?: (?:was|were|war|waren))?[:=]? $")
_OF_ANOTHER = Late(
    r" (?:of|von) (?:[^\W\d_]+ )?(?:next|other|another|third|second|one|nächsten|zweiten|dritten)"
)
_PRODUCTS = ("many_sized", "many_bare", "many_sizes", "sized_many")
_PLAIN = ("amount", "lone", "bare", "share", "other")
_ADDS = frozenset(
    {"+", "plus", "&", "noch", "nochmal", "noch mal", "nochmals", "dazu", "another", "extra",
     "an extra", "on top"}
)  # fmt: skip
_AFTERWARDS = frozenset({"then", "and then", "dann", "und dann", "later", "später"})
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
    reader = _Reader(pieces, known, british=is_british(line, known))
    at = 0
    while at < len(pieces):
        parts = reader.run_at(at)
        while parts:
            if told := reader.come_to(line, parts):
                return told
            if parts[-1].shape != "bare" or (parts[-1].amount or 0) <= MOST_L:
                break
            parts = parts[:-1]  # "1.5 l in the morning, 1.5 l at night and 60.3"
        at += 1
    return Told(line=line)


class _Reader(Parts):
    """Reads the parts of one line together."""

    def run_at(self, at: int) -> list[Part]:
        """The parts that follow each other from this piece on."""
        part = self.part_at(at) if self._all[at].kind in BEGINS else None
        if part is None or part.shape == "share":
            return []
        if part.shape == "bare" and not self.may_begin(part):
            return []
        parts = [part]
        while True:
            joint, behind = self.joint_at(parts[-1].last + 1)
            if joint[:1] == "o" or joint[:2] in ("fo", "wo"):
                parts[-1] = replace(parts[-1], other=True)
            following = self.part_at(behind)
            if following is None or not self._joins(parts, joint, following):
                return parts
            parts.append(replace(following, joint=joint or " "))

    def _joins(self, parts: Sequence[Part], joint: str, part: Part) -> bool:
        """Whether the part goes on what was told, and is no other answer."""
        later, _ = self.joint_at(part.last + 1)
        day = "p" in joint or "p" in later
        if part.shape == "share":
            of_it = parts[-1].shape == "unknown" or any(one.unit for one in parts)
            return ("+" in joint or day) and of_it
        if part.shape == "other":
            return parts[0].shape != "bare" and ("+" in joint or "," in joint)
        between = {piece.text for piece in self._all[parts[-1].last + 1 : part.first]}
        if parts[-1].shape == "bare" and len(parts) == 1:
            apart = joint.replace("f", "")
            # "5, at work 2 litres", "5 and water 3 litres": the first is no part of it
            adds = between & _ADDS or (between & _AFTERWARDS and self._is_of_drink(parts))
            told = apart[:1] == "p" or ("p" in joint and self._begins_the_day(parts[0]))
            if not told and not (adds and "w" not in joint):
                return False
            if "+" in between and not self._adds(parts[-1], part):
                return False
        if part.shape == "bare":
            if later[:1] == "e" and parts[-1].unit:
                return True  # "a litre on waking, one with each meal": asked about
            if self._all[part.last].kind == "a" and "+" in self._kinds_behind(part)[:1]:
                return False  # "a", and more
            # "1 l at work 2": what stands before it is not told of it
            day = "p" in (joint if self._begins_the_day(parts[0]) else later)
            if self._is_labelled_behind(part) or (
                "+" in between and not self._adds(parts[-1], part)
            ):
                return False
            drunk = bool(between & _AFTERWARDS) and self._is_of_drink(parts)
            return day or "t" in joint or "i" in joint or bool(between & _ADDS) or drunk
        counted = joint == "," and parts[-1].shape in _PRODUCTS and part.shape in _PRODUCTS
        return "+" in joint or day or "t" in joint or "i" in joint or not joint or counted

    def _behind(self, part: Part) -> str:
        return self.joint_at(part.last + 1)[0]

    def _kinds_behind(self, part: Part) -> str:
        return "".join(piece.kind for piece in self._all[part.last + 1 : part.last + 3])

    def _begins_the_day(self, part: Part) -> bool:
        """Whether the part of the day stands before its amount: "früh 1, mittags 1"."""
        at = part.first - 1
        while at >= 0 and self._all[at].kind in "fw":
            at -= 1
        return at >= 0 and self._all[at].kind == "p"

    def _adds(self, one: Part, other: Part) -> bool:
        """Whether the plus sign between two parts adds; it may part one answer from the next."""
        tight = self._all[other.first].start - self._all[one.last].end == 1
        return tight or not self._pluses_part

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
        if any(part.amount is None for part in own) or any(
            "e" in letters for letters in (*(part.joint for part in own), self._behind(own[-1]))
        ):
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
        if total is None:
            return None
        if not self._is_believable(own, parts, total, unit):
            lone = any(part.shape == "lone" for part in own)
            drunk = (own[0].unit and not lone) or not any(part.unit for part in own)
            of_day = all("p" in part.joint for part in own[1:])  # 1 by noon, 2 by four, 3.5 by bed
            return self._ask(line, span, said, []) if drunk and of_day and len(own) > 1 else None
        if self._is_of_another(own, line):
            return self._ask(line, span, said, [])
        if halves := self._of_a_litre(own, values, total, unit):
            return self._ask(line, span, said, halves)
        if others:
            litres = self._litres(total, unit), self._litres(total - others, unit)
            return self._ask(line, span, said, [one for one in litres if one])
        text = self._written(total, unit, line, span)
        return None if text is None else Told(line=instead(line, *span, text), said=said)

    def _is_of_another(self, own: Sequence[Part], line: str) -> bool:
        """ "2 litres and half of the next one": of what, nobody knows."""
        if own[-1].shape != "share" or len(own) < 2 or self._all[own[-2].last].kind != "u":
            return False
        of_bottles = own[-2].shape in _PRODUCTS
        return not of_bottles and bool(_OF_ANOTHER.match(line, self._all[own[-1].last].end))

    def _of_a_litre(
        self, own: Sequence[Part], values: Sequence[float], total: float, unit: str
    ) -> list[float]:
        """Both ways to read "drei Flaschen à 1,5 und eine Halbe": of a bottle, or of a litre."""
        shares = [
            (one.amount or 0.0, value)
            for one, value in zip(own, values, strict=True)
            if one.shape == "share" and self._all[one.last].text.endswith(OF_A_LITRE)
        ]
        if unit != "l" or self._known.language != "de" or not shares:
            return []
        litres = total + sum(share - value for share, value in shares)
        return [] if abs(litres - total) < _SAME else [round(total, 3), round(litres, 3)]

    def _is_plain(self, part: Part) -> bool:
        """Whether it is read as any other figure: a number with its unit."""
        odd = self._all[part.first].kind == "h" and self._all[part.first].value != HALF_BOTTLE_L
        if part.amount is None:  # "two big bottles": of a word alone, it is asked about elsewhere
            return " " not in self._all[part.last].text
        return part.shape in _PLAIN and not (odd and part.unit)

    def _start(self, part: Part) -> int:
        """With the part of the day before it: "früh 1, mittags 1"."""
        return (
            part.first - 1 if part.first and self._all[part.first - 1].kind == "p" else part.first
        )

    def _end(self, parts: Sequence[Part]) -> int:
        end = at = parts[-1].last + 1
        while at < len(self._all) and self._all[at].kind in "pfwv":
            if self._all[at].kind == "p" or self._all[at].text.startswith(("of ", "each")):
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
        if "i" in self.joint_at(parts[-1].last + 1)[0]:
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
        decimal |= len(own) > 2 and all(part.joint.strip() == "+" for part in own[1:])
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
        return next((text for text in texts if len(text) <= room), None)

    def _ask(self, line: str, span: tuple[int, int], said: str, litres: Sequence[float]) -> Told:
        code = DoubtCode.TWO_VALUES if len(litres) > 1 else DoubtCode.UNCLEAR
        options = tuple({"water_l": one} for one in litres)
        asked = Doubt(code=code, answer="water_l", given=said, options=options)
        # "water was three bottles": the word for it names no other figure
        label = _LABEL_BEFORE.search(line[: span[0]])
        span = (label.start() if label else span[0], span[1])
        return Told(line=instead(line, *span, "|"), asked=asked)
