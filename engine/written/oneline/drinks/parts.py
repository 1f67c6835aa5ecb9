"""One part of a day's drinking: "3 x 1.5 l", "two 750s", "half a gallon", "a glass".

What a part consists of stands in a table of shapes over the letters of its pieces, the longest first.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from engine.evidence.units import L_PER_IMPERIAL_FLUID_OUNCE, L_PER_US_FLUID_OUNCE
from engine.written.oneline.drinks.words import Piece
from engine.written.oneline.report import Known
from engine.written.units import VolumeUnit, WeightUnit

OUNCE_L = {
    VolumeUnit.FLOZ_US: float(L_PER_US_FLUID_OUNCE),
    VolumeUnit.FLOZ_IMP: float(L_PER_IMPERIAL_FLUID_OUNCE),
}
OUNCES = {"g": (128, 160), "q": (32, 40), "p": (16, 20)}  # US, imperial
_CUP_OUNCES = 8
_METRIC = {"ml": 0.001, "mi": 0.001, "cl": 0.01, "ce": 0.01, "ze": 0.01, "dl": 0.1, "de": 0.1}
HALF_BOTTLE_L, _WHOLE_BOTTLE_L = 0.5, 1.0  # "sieben Halbe und zwei ganze": common practice
#: What is half of a bottle, or of a litre, in a land where a half is ordered.
OF_A_LITRE = ("halbe", "halben", "halves", "halber", "halbes", "viertel", "dreiviertel")
_MOST_BOTTLES = 24
_LARGEST_BOTTLE_L, _LEAST_BOTTLE_ML = 3.0, 200.0
MOST_L, MOST_BARE_L = 15.0, 6.0
_JOINTS = "pfwtieo+,"
_OF_AN_HOUR = ("at", "um", "gegen", "@")
_OF_OTHERS = frozenset(
    {"full", "fullness", "weight", "weighed", "scale", "scales", "f", "v", "carbs", "slept",
     "sleep", "hr", "look", "voll", "fülle", "fuelle", "füllegrad", "gewicht", "waage", "g",
     "gew", "kh", "schlaf", "puls", "geschlafen", "gewogen", "mood", "pump", "energy", "steps",
     "schritte", "day", "tag", "hunger"}
)  # fmt: skip
BEGINS = "nahmsuv"
_ENDS_PART = "!-tiep+,."
_LONGEST_PART = 6
_ONE_VESSEL = (
    "bottle", "glass", "jug", "flask", "can", "shaker", "flasche", "glas", "dose", "kanne",
)  # fmt: skip
_ONE_OF_IT = ("litre", "liter", "gallon", "gallone", "pint", "quart", "maß")


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


_Read = tuple[float | None, str, float | None]  # the amount, its unit, one bottle of it


class Parts:
    """Reads the parts of one line."""

    def __init__(self, pieces: Sequence[Piece], known: Known, *, british: bool) -> None:
        cups = known.volume_unit is VolumeUnit.FLOZ_US  # elsewhere a cup is as large as it is
        self._all = [
            piece._replace(kind="u") if cups and piece.text in ("cup", "cups") else piece
            for piece in pieces
        ]
        self._known = known
        self._ounce = OUNCE_L.get(known.volume_unit) if known.volume_unit else None
        if self._ounce is None and british:
            self._ounce = OUNCE_L[VolumeUnit.FLOZ_IMP]
        self._imperial = self._ounce == OUNCE_L[VolumeUnit.FLOZ_IMP]

        self._set_counted_apart()
        self._pluses_part = any(
            piece.text == "+" and self._parts_answers(at) for at, piece in enumerate(self._all)
        )

    def _parts_answers(self, at: int) -> bool:
        """Whether a plus sign stands beside what is no drink: "60.4 + 5 + 3.5 l"."""
        beside = [self._all[place] for place in (at - 1, at + 1) if 0 <= place < len(self._all)]
        return any(
            piece.kind in ".!" or (piece.kind == "n" and MOST_L < piece.value < _LEAST_BOTTLE_ML)
            for piece in beside
        )

    def _set_counted_apart(self) -> None:
        """Of "2 sessions, 1 am 1 pm" the ones count sessions."""
        for at in range(1, len(self._all) - 1):
            thing, count = self._all[at], self._all[at - 1]
            if thing.kind != "." or not thing.text[0].isalpha() or count.kind != "n":
                continue
            left, place = count.value, at + 1
            places = []
            while left > 0 and place < len(self._all) and self._all[place].kind in "pfn,+":
                if self._all[place].kind == "n":
                    left -= self._all[place].value
                    places.append(place)
                place += 1
            for place in places if left == 0 and len(places) > 1 else ():
                self._all[place] = self._all[place]._replace(kind=".")

    def part_at(self, at: int) -> Part | None:
        """The part that begins at this piece."""
        if at >= len(self._all) or self._all[at].kind not in BEGINS:
            return None
        letters, places = self._core(at)
        before = self._all[at - 1] if at else None
        counted = before is not None and letters[0] in "uv" and (
            before.kind in "nah" or (before.kind == "." and before.text[0].isalpha())
        )  # fmt: skip
        named = letters[:1] == "n" and self._is_labelled(at)
        for shape, name in _SHAPES:
            match = shape.match(letters)
            if match is None or (named and len(match[0]) > 1 and letters[1] in "nhx"):
                continue
            lone = before is not None and before.kind != "." and name == "lone"
            if counted and name != "sized_many" and not lone:
                continue
            own = [self._all[place] for place in places[: match.end()]]
            if name == "many_sized" and self._is_one_vessel(own):
                continue
            read = _READERS[name](self, own)
            if read is not None:
                last = places[match.end() - 1]
                return Part(
                    first=at, last=last, shape=name, amount=read[0], unit=read[1], each=read[2]
                )
        return None

    def _core(self, at: int) -> tuple[str, list[int]]:
        """The letters of what may be one part, without the small words, and their places."""
        letters, places = "", []
        while at < len(self._all) and len(letters) < _LONGEST_PART:
            kind = self._all[at].kind
            if kind in _ENDS_PART:
                break
            following = self._all[at + 1].kind if at + 1 < len(self._all) else "."
            article = kind == "a" and following in "nsh" and letters[-1:] != "n"
            if kind not in "fw" and not article:
                letters += kind
                places.append(at)
            at += 1
        return letters, places

    def _is_one_vessel(self, own: Sequence[Piece]) -> bool:
        """ "6 1.5l bottle": one bottle, behind another answer."""
        times = any(piece.kind in "xm" for piece in own)
        return not times and len(own) > 2 and own[0].value > 1 and own[-1].text in _ONE_VESSEL

    def _is_labelled(self, at: int) -> bool:
        """Whether a word that is none of drinking stands right before, so that it is no count."""
        if not at:
            return False
        before, following = self._all[at - 1], self._all[at + 1 : at + 2]
        if before.kind == "n" and self._all[at].text[0].isdecimal():  # "60.1 6 half a litre"
            return any(one.kind == "h" and one.text not in OF_A_LITRE[:3] for one in following)
        return before.kind == "." and before.text[:1].isalpha()

    # shapes

    def _unit_of(self, piece: Piece) -> tuple[str, float]:
        word = piece.text.strip(". ")
        if word[:2] in _METRIC:
            return "l", _METRIC[word[:2]]
        if word[0] in "lm":
            return "l", 1.0
        if word[0] in OUNCES:
            if self._ounce is None:
                return word[0], 1.0
            return "oz", float(OUNCES[word[0]][1 if self._imperial else 0])
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
            litre = units[0].text[:3] == "lit" and own[-1].kind != "v"
            if litre and "v" in (p.kind for p in own) and numbers[0].value > _LARGEST_BOTTLE_L:
                return None  # "6 litre bottle times three"
            return self._sized(numbers[1].value, numbers[0].value, units[0])
        if numbers[0].kind == "s":
            return self._sizes(numbers[1].value, numbers[0].value)
        return self._bare_sizes(numbers[1].value, numbers[0].value, numbers[0].text)

    def _many_bare(self, own: Sequence[Piece]) -> _Read | None:
        """ "4 x 0.75", "3 bottles of 1.5", "zwei 1,5 Flaschen"."""
        count, size = (piece for piece in own if piece.kind in "nm")
        if count.value % 1 or count.value >= _LEAST_BOTTLE_ML:  # "0.75 x 4"
            count, size = size, count
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
        count, size = own[0], own[-1]
        if count.value > 1 and size.text.endswith(_ONE_VESSEL):
            return None
        return self._sizes(count.value, size.value)

    def _one_size(self, own: Sequence[Piece]) -> _Read | None:
        return own[0].value, "l", own[0].value

    def _half_size(self, own: Sequence[Piece]) -> _Read | None:
        """ "Eine halbe Literflasche"."""
        half, size = own
        return half.value * size.value, "l", size.value

    def _amount(self, own: Sequence[Piece]) -> _Read | None:
        name, per = self._unit_of(own[1])
        amount = own[0].value * per
        if own[-1].kind == "v":
            return amount, name, amount
        return amount, name, (per if name != "l" or per == 1 else None)

    def _lone(self, own: Sequence[Piece]) -> _Read | None:
        """ "Litre at breakfast, litre at work"."""
        if own[0].text not in _ONE_OF_IT:
            return None
        name, per = self._unit_of(own[0])
        return per, name, per

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
        return (own[1].value * per, name, None) if own[1].value * per <= MOST_L else None

    def _halves(self, own: Sequence[Piece]) -> _Read | None:
        """ "sieben Halbe": of half a litre each."""
        many, half = own
        if half.text not in OF_A_LITRE or many.value < 2:
            return None
        return many.value * half.value, "halves", half.value

    def _wholes(self, own: Sequence[Piece]) -> _Read | None:
        return own[0].value * _WHOLE_BOTTLE_L, "wholes", _WHOLE_BOTTLE_L

    def _unknown(self, own: Sequence[Piece]) -> _Read | None:
        """ "Two bottles", "2 coffees": nobody can tell how much is in `own`."""
        return (None, "", None) if own else None

    def _bare(self, own: Sequence[Piece]) -> _Read | None:
        return own[0].value, "", None

    # what stands beside it

    def joint_at(self, at: int) -> tuple[str, int]:
        letters = ""
        while at < len(self._all) and self._all[at].kind in _JOINTS:
            letters += self._all[at].kind
            at += 1
        return letters, at

    def may_begin(self, part: Part) -> bool:
        """Whether a bare number may be the first part: no label names it, and no hour is told."""
        before = self._all[part.first - 1] if part.first else None
        if before is None:
            return True
        return before.text not in _OF_OTHERS and before.text not in _OF_AN_HOUR


def is_british(line: str, known: Known) -> bool:
    stones = re.search(r"\d ?(?:st|stone)(?![^\W_])|\bstones?\b", line)
    return known.weight_unit is WeightUnit.ST or stones is not None


#: Of what a part consists, the longest first.
_SHAPES: tuple[tuple[re.Pattern[str], str], ...] = tuple(
    (re.compile(shape), name)
    for shape, name in (
        (r"nx[anh]h?uv?", "many_sized"), (r"nxnv?(?![uhn])", "many_bare"), (r"(?:nx|[nm])s", "many_sizes"),
        (r"m[anh]?uv?", "many_sized"), (r"mn(?![nu])", "many_bare"),
        (r"(?:[anh]|nh)uv?(?:m|nx)", "sized_many"), (r"[anh]uv?xn(?![nu])", "sized_many"),
        (r"s(?:m|nx|xn)", "sized_many"), (r"uv?(?:m|nx|xn)", "sized_many"), (r"v[nh]u?(?:m|nx)", "sized_many"),
        (r"[an]x?v[anh]uv?", "many_sized"), (r"nx?vn(?![nu])", "many_bare"),
        (r"[an]nuv", "many_sized"), (r"nhuv?", "many_sized"), (r"[an]huv?", "many_sized"),
        (r"nnv", "many_bare"), (r"hs", "half_size"), (r"s", "one_size"),
        (r"[anh]un(?![nuvxhms])", "with_decimals"), (r"[anh]uv?", "amount"),
        (r"un(?![nuvxms])", "after_unit"), (r"uv?", "lone"),
        (r"nh(?!v)", "halves"), (r"[an]h?v|hv", "unknown"), (r"[na]g", "wholes"),
        (r"[na]o", "other"), (r"h", "share"), (r"[na]", "bare"),
    )
)  # fmt: skip
_READERS: dict[str, Callable[[Parts, Sequence[Piece]], _Read | None]] = {
    "many_sized": Parts._many_sized, "many_bare": Parts._many_bare,
    "many_sizes": Parts._many_sizes, "sized_many": Parts._sized_many,
    "one_size": Parts._one_size, "half_size": Parts._half_size, "with_decimals": Parts._with_decimals,
    "amount": Parts._amount, "after_unit": Parts._after_unit, "halves": Parts._halves,
    "unknown": Parts._unknown, "lone": Parts._lone, "wholes": Parts._wholes, "other": Parts._unknown,
    "share": Parts._bare, "bare": Parts._bare,
}  # fmt: skip
