"""A day's drinking told in parts, added up: "1.5 in the morning, 2 at work and three 0.5s", "3 x 2 l".

A small grammar over the pieces of `drink_words`: a part is a number of litres or ounces, so many of a
size, or a bare number of a part of the day; parts are joined by "and", "plus" or what they are told of.
What it comes to is written out in the place of it all, and told back. Where that can't be known (a
bottle of no size, another drink than water), it is asked about; nothing of a sum is read as the whole.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from engine.evidence.units import L_PER_IMPERIAL_FLUID_OUNCE, L_PER_US_FLUID_OUNCE
from engine.written.oneline.drink_words import Piece, may_be_counted, pieces_of
from engine.written.oneline.report import Doubt, DoubtCode, Known
from engine.written.units import VolumeUnit, WeightUnit

_OUNCE_L = {
    VolumeUnit.FLOZ_US: float(L_PER_US_FLUID_OUNCE),
    VolumeUnit.FLOZ_IMP: float(L_PER_IMPERIAL_FLUID_OUNCE),
}
_OUNCES = {"g": (128, 160), "q": (32, 40), "p": (16, 20)}  # US, imperial
_CUP_OUNCES = 8
_METRIC = {"ml": 0.001, "mi": 0.001, "cl": 0.01, "ce": 0.01, "ze": 0.01, "dl": 0.1, "de": 0.1}
_HALF_BOTTLE_L, _WHOLE_BOTTLE_L = 0.5, 1.0  # "sieben Halbe und zwei ganze": common practice
_MOST_BOTTLES = 24
_LARGEST_BOTTLE_L, _LEAST_BOTTLE_ML = 3.0, 200.0
_MOST_BARE_L, _LEAST_BARE_ML = 6.0, 100.0
_LEAST_BARE_OZ, _MOST_BARE_OZ = 8.0, 200.0
_MOST_L = 15.0
_FAR_OVER = 1.8  # times the target: a bare sum beyond it is no sum
_SAME = 0.03


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """One part of a day's drink, with the pieces `first` to `last` that tell it.

    `amount` in `unit` ("l", "oz", a larger measure of nobody's country, "" where none stood there), None
    where nobody can tell; `each` is one bottle of it, which "and a half" is half of.
    """

    first: int
    last: int
    shape: str
    amount: float | None
    unit: str = ""
    each: float | None = None
    joint: str = ""  # the letters of what stands between it and the part before
    other: bool = False  # another drink than water


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
        at = parts[-1].last + 1 if parts else at + 1
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


class _Reader:
    """Reads the parts of one line."""

    def __init__(self, pieces: Sequence[Piece], known: Known, *, british: bool) -> None:
        cups = known.volume_unit is VolumeUnit.FLOZ_US  # elsewhere a cup is as large as it is
        self._all = [
            piece._replace(kind="u") if cups and piece.text in ("cup", "cups") else piece
            for piece in pieces
        ]
        self._known = known
        self._ounce = _OUNCE_L.get(known.volume_unit) if known.volume_unit else None
        if self._ounce is None and british:
            self._ounce = _OUNCE_L[VolumeUnit.FLOZ_IMP]
        self._imperial = self._ounce == _OUNCE_L[VolumeUnit.FLOZ_IMP]

    def part_at(self, at: int) -> Part | None:
        """The part that begins at this piece."""
        if at >= len(self._all) or self._all[at].kind not in _BEGINS:
            return None
        letters, places = self._core(at)
        named = letters[:1] == "n" and self._is_labelled(at)
        for shape, name in _SHAPES:
            match = shape.match(letters)
            if match is None or (named and len(match[0]) > 1 and letters[1] in "nhx"):
                continue
            own = [self._all[place] for place in places[: match.end()]]
            if len(own) > 2 and own[0].value > 1 and own[-1].text in _ONE_VESSEL and name == "many_sized":
                continue  # "6 1.5l bottle"
            read = _READERS[name](self, own)
            if read is not None:
                last = places[match.end() - 1]
                return Part(first=at, last=last, shape=name, amount=read[0], unit=read[1], each=read[2])
        return None

    def _core(self, at: int) -> tuple[str, list[int]]:
        """The letters of what may be one part, without the small words, and their places."""
        letters, places = "", []
        while at < len(self._all) and len(letters) < _LONGEST_PART:
            kind = self._all[at].kind
            if kind in _ENDS_PART:
                break
            following = self._all[at + 1].kind if at + 1 < len(self._all) else "."
            if kind not in "fw" and not (kind == "a" and following in "nsh"):
                letters += kind
                places.append(at)
            at += 1
        return letters, places

    def _is_labelled(self, at: int) -> bool:
        """Whether a word that is none of drinking stands right before, so that it is no count."""
        before = self._all[at - 1] if at else None
        return before is not None and (
            (before.kind == "n" and [piece.kind for piece in self._all[at + 1 : at + 2]] == ["h"])
            or (before.kind == "." and before.text[:1].isalpha())
        )

    # shapes

    def _unit_of(self, piece: Piece) -> tuple[str, float]:
        word = piece.text.strip(". ")
        if word[:2] in _METRIC:
            return "l", _METRIC[word[:2]]
        if word[0] in "lm":
            return "l", 1.0
        if word[0] in _OUNCES:
            if self._ounce is None:
                return word[0], 1.0
            return "oz", float(_OUNCES[word[0]][1 if self._imperial else 0])
        return "oz", float(_CUP_OUNCES if word[0] == "c" else 1)

    def _sized(self, count: float, size: float, unit: Piece) -> _Read | None:
        if count != int(count * 2) / 2 or not 0 < count <= _MOST_BOTTLES:
            return None
        name, per = self._unit_of(unit)
        return count * size * per, name, size * per

    def _many_sized(self, own: Sequence[Piece]) -> _Read | None:
        """ "3 x 1.5 l", "drei Flaschen à 1,5 l", "five half-litre bottles", "dreimal ein Liter"."""
        numbers = [piece for piece in own if piece.kind in "nahm"]
        (unit,) = (piece for piece in own if piece.kind == "u")
        size = 1.0
        for piece in numbers[1:]:
            size *= piece.value
        return self._sized(numbers[0].value, size, unit)

    def _sized_many(self, own: Sequence[Piece]) -> _Read | None:
        """ "1.5 l bottle x 2", "half a litre five times", "trinkflasche (0,75) 4 mal"."""
        numbers = [piece for piece in own if piece.kind in "nahms"]
        units = [piece for piece in own if piece.kind == "u"]
        if len(numbers) < 2:
            numbers = [Piece("a", own[0].start, own[0].start, "", 1.0), *numbers]
        if units:
            return self._sized(numbers[1].value, numbers[0].value, units[0])
        if numbers[0].kind == "s":
            return self._sizes(numbers[1].value, numbers[0].value)
        return self._bare_sizes(numbers[1].value, numbers[0].value, numbers[0].text)

    def _many_bare(self, own: Sequence[Piece]) -> _Read | None:
        """ "4 x 0.75", "3 bottles of 1.5", "zwei 1,5 Flaschen"."""
        count, size = (piece for piece in own if piece.kind in "nm")
        return self._bare_sizes(count.value, size.value, size.text)

    def _bare_sizes(self, count: float, size: float, text: str) -> _Read | None:
        vessel = any(not char.isdecimal() and char not in ".," for char in text)
        if count != int(count) or not 0 < count <= _MOST_BOTTLES or vessel:
            return None
        if size % 1 and size < _LARGEST_BOTTLE_L:
            return count * size, "l", size
        if size >= _LEAST_BOTTLE_ML:
            return count * size / 1000, "l", size / 1000
        return None

    def _sizes(self, count: float, size: float) -> _Read | None:
        return (count * size, "l", size) if 0 < count <= _MOST_BOTTLES else None

    def _many_sizes(self, own: Sequence[Piece]) -> _Read | None:
        return self._sizes(own[0].value, own[-1].value)

    def _one_size(self, own: Sequence[Piece]) -> _Read | None:
        return own[0].value, "l", own[0].value

    def _amount(self, own: Sequence[Piece]) -> _Read | None:
        name, per = self._unit_of(own[1])
        return own[0].value * per, name, (per if name != "l" or per == 1 else None)

    def _with_decimals(self, own: Sequence[Piece]) -> _Read | None:
        """ "ein Liter fünfundsiebzig", "3 l 250"."""
        whole, unit, rest = own
        name, per = self._unit_of(unit)
        spelt, digits = rest.text[0].isalpha(), rest.text
        if whole.value % 1 or rest.value % 1 or name != "l" or per != 1:
            return None
        if not spelt and not re.fullmatch(r"[1-9][05]0", digits):
            return None
        tenths = rest.value / 10 ** len(str(int(rest.value)))
        return whole.value + tenths, "l", None

    def _after_unit(self, own: Sequence[Piece]) -> _Read | None:
        """ "Liter zwei Komma fünf"."""
        name, per = self._unit_of(own[0])
        return (own[1].value * per, name, None) if own[1].value * per <= _MOST_L else None

    def _halves(self, own: Sequence[Piece]) -> _Read | None:
        """ "sieben Halbe": of half a litre each."""
        many, half = own
        if half.text[:4] not in ("half", "halb") or half.value != _HALF_BOTTLE_L or many.value < 2:
            return None
        return many.value * _HALF_BOTTLE_L, "halves", _HALF_BOTTLE_L

    def _wholes(self, own: Sequence[Piece]) -> _Read | None:
        return own[0].value * _WHOLE_BOTTLE_L, "wholes", _WHOLE_BOTTLE_L

    def _unknown(self, own: Sequence[Piece]) -> _Read | None:
        return None, "", None

    def _bare(self, own: Sequence[Piece]) -> _Read | None:
        return own[0].value, "", None

    def is_a_drink(self, part: Part) -> bool:
        """Whether a part that stands alone is drunk: not eaten, not left over, of no other drink."""
        if part.shape in ("other", "share", "wholes"):
            return False
        beside = [self._all[at] for at in (part.first - 1, part.last + 1) if 0 <= at < len(self._all)]
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
        word = before.kind == "." and before.text[:1].isalpha()
        return not word and before.text not in _OF_AN_HOUR

    def _joins(self, parts: Sequence[Part], joint: str, part: Part) -> bool:
        """Whether the part goes on what was told, and is no other answer."""
        later, _ = self._joint(part.last + 1)
        day = "p" in joint or "p" in later
        if part.shape == "share":
            return "+" in joint and parts[-1].unit != ""
        if part.shape == "other":
            return "+" in joint or "," in joint
        if part.shape == "bare":
            added = any(self._all[place].text in _ADDS for place in range(parts[-1].last + 1, part.first))
            told = "t" in joint or "i" in joint or (day and not self._is_labelled_behind(part))
            return (told or added) and part.amount is not None
        if parts[-1].shape == "bare" and (not joint or ("," in joint and "p" not in joint)):
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
            if not any(part.unit for part in own) and not self._is_of_drink(parts):
                if all(part.amount is not None for part in own):
                    return None
            return self._ask(line, span, said, [])
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
        odd = self._all[part.first].kind == "h" and self._all[part.first].value != _HALF_BOTTLE_L
        return part.amount is None or (part.shape in _PLAIN and not (odd and part.unit))

    def _start(self, part: Part) -> int:
        """With the part of the day before it: "früh 1, mittags 1"."""
        return part.first - 1 if part.first and self._all[part.first - 1].kind == "p" else part.first

    def _end(self, parts: Sequence[Part]) -> int:
        end = at = parts[-1].last + 1
        while at < len(self._all) and self._all[at].kind in "pfwv":
            if self._all[at].kind == "p":
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
        units = ["l" if unit in ("halves", "wholes") else unit or self._own_unit(parts) for unit in units]
        values = []
        for place, part in enumerate(parts):
            amount = part.amount or 0.0
            if part.shape == "share":
                amount *= parts[place - 1].each or 1.0
            elif not part.unit and units[place] == "l" and amount >= _LEAST_BARE_ML:
                amount /= 1000
            elif not part.unit and units[place] == "oz" and parts[place - 1 :] and amount < _LEAST_BARE_OZ:
                larger = next((one.each for one in parts if one.each and one.each > _MOST_SMALL), None)
                amount *= larger or 1.0
            values.append(amount)
        if len(set(units)) > 1:
            if set(units) != {"l", "oz"} or self._ounce is None:
                return None
            if self._known.volume_unit in _OUNCE_L:
                values = [v if u == "oz" else v / self._ounce for v, u in zip(values, units, strict=True)]
                return "oz", values
            values = [v if u == "l" else v * self._ounce for v, u in zip(values, units, strict=True)]
            return "l", values
        return units[0], values

    def _own_unit(self, parts: Sequence[Part]) -> str:
        least = min(part.amount or 0 for part in parts)
        return "oz" if self._known.volume_unit in _OUNCE_L and least >= _LEAST_BARE_OZ else "l"

    def _total(self, parts: Sequence[Part], values: Sequence[float]) -> float | None:
        """The sum, or the whole that was told beside its parts."""
        whole, rest = values[0], sum(values[1:])
        if len(values) == 1:
            return whole
        if any("i" in part.joint for part in parts):
            return whole if parts[1].joint.count("i") else None
        before = self._all[parts[0].first - 1] if parts[0].first else None
        if (before and before.kind == "t" and rest <= whole * (1 + _SAME)) or (
            len(values) > 2 and abs(rest - whole) <= _SAME * whole
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
        if litres is not None and not 0 < litres <= _MOST_L:
            return False
        bare = [part for part in own if not part.unit and part.shape == "bare"]
        if not bare:
            return True
        target = self._known.water_l
        if litres is not None and target and litres > _FAR_OVER * target:
            return False
        if any(not 0 < (part.amount or 0) <= _MOST_BARE for part in bare):
            return False
        named = len(bare) < len(own) or self._is_of_drink(parts)
        if named and own[0].unit:
            return True
        # no word says that the first number is a drink: there must be others for weight and fullness
        inside = range(parts[0].first, parts[-1].last + 1)
        others = sum(p.kind in "nh" for at, p in enumerate(self._all) if at not in inside)
        decimal = any((part.amount or 0) % 1 for part in bare)
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
        if litres is not None and self._known.volume_unit not in _OUNCE_L:
            amounts = [(litres, "l")]
        texts = [f"{v:.{digits}f}".rstrip("0").rstrip(".") + n for v, n in amounts for digits in (2, 1)]
        if re.search(r"\d,\d", line) and not re.search(r"\d\.\d", line):
            texts = [text.replace(".", ",") for text in texts]
        return next((text.ljust(room) for text in texts if len(text) <= room), None)

    def _ask(self, line: str, span: tuple[int, int], said: str, litres: Sequence[float]) -> Told:
        code = DoubtCode.TWO_VALUES if len(litres) > 1 else DoubtCode.UNCLEAR
        options = tuple({"water_l": one} for one in litres)
        asked = Doubt(code=code, answer="water_l", given=said, options=options)
        room = span[1] - span[0]
        return Told(line=f"{line[: span[0]]}|{' ' * (room - 1)}{line[span[1] :]}", asked=asked)


_BEGINS = "nahmsuv"
_JOINTS = "pfwtieo+,"
_ENDS_PART = "!-tiep+,."
_LONGEST_PART = 6
_PLAIN = ("amount", "bare", "share", "other")
_ADDS = ("+", "plus", "&", "noch", "nochmal", "noch mal", "nochmals", "dazu", "another", "extra", "on top")
_OF_AN_HOUR = ("at", "um", "gegen", "@")
_ONE_VESSEL = ("bottle", "glass", "jug", "flask", "can", "shaker", "flasche", "glas", "dose", "kanne")
_NOT_DRUNK = ("not", "nicht", "left", "than", "als", "statt", "instead", "of", "less", "weniger", "without", "ohne")
_OF_THE_DAY = (
    "at night", "in the evening", "in the morning", "in the afternoon", "at lunch", "at work",
    "at the gym", "abends", "morgens", "mittags", "nachmittags", "vormittags", "nachts", "am abend",
    "am morgen", "am nachmittag", "am vormittag", "auf arbeit", "im gym",
)  # fmt: skip
_MOST_SMALL = 15  # ounces: what is more is a larger measure
_MOST_BARE = 3000  # ml
#: Of what a part consists, the longest first.
_SHAPES: tuple[tuple[re.Pattern[str], str], ...] = tuple(
    (re.compile(shape), name)
    for shape, name in (
        (r"nx[anh]h?uv?", "many_sized"), (r"nxnv?(?![uhn])", "many_bare"), (r"(?:nx|[nm])s", "many_sizes"),
        (r"m[anh]?uv?", "many_sized"), (r"mn(?![nu])", "many_bare"),
        (r"(?:[anh]|nh)uv?(?:m|nx)", "sized_many"), (r"[anh]uv?xn(?![nu])", "sized_many"),
        (r"s(?:m|nx)", "sized_many"), (r"v[nh]u?(?:m|nx)", "sized_many"),
        (r"[an]v[anh]uv?", "many_sized"), (r"nvn(?![nu])", "many_bare"),
        (r"[an]nuv", "many_sized"), (r"nhuv?", "many_sized"), (r"[an]huv?", "many_sized"),
        (r"nnv", "many_bare"), (r"s", "one_size"),
        (r"[anh]un(?![nuvxhms])", "with_decimals"), (r"[anh]uv?", "amount"),
        (r"un(?![nuvxms])", "after_unit"),
        (r"nh(?!v)", "halves"), (r"[an]h?v|hv", "unknown"), (r"[na]g", "wholes"),
        (r"[na]o", "other"), (r"h", "share"), (r"[na]", "bare"),
    )
)  # fmt: skip
_READERS: dict[str, Callable[[_Reader, Sequence[Piece]], _Read | None]] = {
    "many_sized": _Reader._many_sized, "many_bare": _Reader._many_bare,
    "many_sizes": _Reader._many_sizes, "sized_many": _Reader._sized_many,
    "one_size": _Reader._one_size, "with_decimals": _Reader._with_decimals,
    "amount": _Reader._amount, "after_unit": _Reader._after_unit, "halves": _Reader._halves,
    "unknown": _Reader._unknown, "wholes": _Reader._wholes, "other": _Reader._unknown,
    "share": _Reader._bare, "bare": _Reader._bare,
}  # fmt: skip
