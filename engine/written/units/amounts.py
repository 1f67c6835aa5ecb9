"""Amounts by their units: height; a day's drinking; body mass."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from engine.evidence.units import (
    CM_PER_INCH,
    KG_PER_LB,
    L_PER_IMPERIAL_FLUID_OUNCE,
    L_PER_US_FLUID_OUNCE,
    LB_PER_STONE,
    LEAST_BODY_MASS,
    LEAST_HEIGHT,
    MOST_BODY_MASS,
    MOST_HEIGHT,
    MOST_WATER,
)
from engine.written.late import Late
from engine.written.units.reading import (
    BARE,
    NUMBER,
    ParseError,
    ParseErrorCode,
    decimal,
    number_typed,
    why_not_read,
)

_METRES = Late(rf"({NUMBER}) ?(?:met(?:re|er)s?|m)")
_METRES_AND = Late(r"(\d) ?m ?(\d\d)")
_CENTIMETRES = Late(rf"({NUMBER}) ?(?:centimet(?:re|er)s?|cms?)")
_FEET = Late(rf"(\d+) ?(?:feet|foot|ft|')\.?(?: ?,? ?({NUMBER}) ?(?:inch(?:es)?|ins?|\"|'')?\.?)?")
_INCHES = Late(rf"({NUMBER}) ?(?:inch(?:es)?|ins?|\"|'')")


def parse_height(text: str) -> float:
    """Read an adult's height; returns cm. "5.8" could be feet or metres gone wrong: refused."""
    answer = number_typed(text)
    return _believable_height(_centimetres(answer))


def _centimetres(answer: str) -> float:
    inch = float(CM_PER_INCH)
    if match := _CENTIMETRES.fullmatch(answer):
        return decimal(match[1])
    if match := _METRES_AND.fullmatch(answer):
        return float(match[1]) * 100 + float(match[2])
    if match := _METRES.fullmatch(answer):
        return decimal(match[1]) * 100
    if match := _FEET.fullmatch(answer):
        inches = decimal(match[2]) if match[2] else 0.0
        if inches >= 12:
            raise ParseError(ParseErrorCode.OUT_OF_RANGE, given=inches, unit="in", low=0, high=11.9)
        return (float(match[1]) * 12 + inches) * inch
    if match := _INCHES.fullmatch(answer):
        return decimal(match[1]) * inch
    if match := BARE.fullmatch(answer):
        return _bare_height(decimal(match[1]))
    raise why_not_read(answer, "cm, m, ft and in")


def _bare_height(value: float) -> float:
    """A bare number is cm, or metres where nothing else can be meant; feet are never guessed."""
    low, high = float(LEAST_HEIGHT), float(MOST_HEIGHT)
    if low / 100 <= value <= high / 100:
        return value * 100
    feet = 3 <= value < 8
    inches = low <= value * float(CM_PER_INCH) <= high and value < low
    if feet or inches:
        raise ParseError(ParseErrorCode.NO_UNIT, given=value)
    return value


def _believable_height(cm: float) -> float:
    low, high = float(LEAST_HEIGHT), float(MOST_HEIGHT)
    if not low <= cm <= high:
        raise ParseError(ParseErrorCode.IMPLAUSIBLE, given=cm, unit="cm", low=low, high=high)
    return round(cm, 1)


class VolumeUnit(StrEnum):
    L = "l"
    ML = "ml"
    FLOZ_US = "us fl oz"
    FLOZ_IMP = "imp fl oz"


@dataclass(frozen=True, slots=True)
class Volume:
    """Litres, and the unit in which they were given."""

    litres: float
    unit: VolumeUnit


_FLUID_OUNCES = {VolumeUnit.FLOZ_US, VolumeUnit.FLOZ_IMP}
_US, _IMP = float(L_PER_US_FLUID_OUNCE), float(L_PER_IMPERIAL_FLUID_OUNCE)
_LITRES_PER_UNIT = {
    VolumeUnit.L: 1.0,
    VolumeUnit.ML: 0.001,
    VolumeUnit.FLOZ_US: _US,
    VolumeUnit.FLOZ_IMP: _IMP,
}
# fluid ounces in the larger measures: the US ones first, then the imperial
_LARGER = {"gal": (128, 160), "quart": (32, 40), "pint": (16, 20)}
_METRIC_WORDS = (
    r"millilit(?:re|er)s?|mls?|centilit(?:re|er)s?|cl|decilit(?:re|er)s?|dezi(?:liter)?|dl|"
    r"lit(?:re|er)s?|ltrs?|lts?|l"
)
_OUNCE_WORDS = r"fl\.? ?oz|fluid ounces?|ounces?|unzen?|ozs?"
_LARGER_WORDS = r"gallon(?:e|en|s)?|gals?|quarts?|qts?|pints?|pts?"
_WHOSE = r"u\.?s\.?|american|imperial|imp\.?|u\.?k\.?|british"
VOLUME_WORDS = (
    rf"(?:{_METRIC_WORDS}|(?:(?:{_WHOSE}) )?(?:{_OUNCE_WORDS}|{_LARGER_WORDS})\b\.?"
    rf"(?: ?\(?(?:{_WHOSE})\b\.?\)?)?)"
)
_VOLUME = Late(
    rf"\+?(?P<number>{NUMBER}) ?(?:"
    rf"(?P<metric>{_METRIC_WORDS})"
    rf"|(?:(?P<whose1>{_WHOSE}) )?(?:(?P<ounce>{_OUNCE_WORDS})|(?P<larger>{_LARGER_WORDS}))\.?"
    rf"(?: ?\(?(?P<whose2>{_WHOSE})\)?)?"
    r")?(?: of water| water| wasser)?"
)
# a bare number below these is surely meant in litres, whatever the setting says
_LEAST_BARE = {VolumeUnit.ML: 100.0, VolumeUnit.FLOZ_US: 15.0, VolumeUnit.FLOZ_IMP: 15.0}


def parse_volume(text: str, *, unit: VolumeUnit | None = None) -> Volume:
    """Read a day's drinking; `unit` is the athlete's own setting, for a number without a unit.

    None drunk is an answer. Raises `ParseError`; never guesses between two readings.
    """
    answer = number_typed(text)
    match = _VOLUME.fullmatch(answer)
    if match is None:
        raise why_not_read(answer, "L, ml, fl oz")
    number, metric = match["number"], match["metric"]
    if metric:
        return _metric(number, metric)
    if match["ounce"] or match["larger"]:
        which = _which_ounce(match["whose1"] or match["whose2"], match["larger"], unit)
        return _ounces(decimal(number), which, match["larger"])
    return _bare(number, unit)


def _metric(number: str, word: str) -> Volume:
    if word.startswith("m"):
        value = decimal(number, thousands=True)
        if 0 < value < _LEAST_BARE[VolumeUnit.ML]:
            raise _unbelievable(value, VolumeUnit.ML, f"{value:g} L")
        return _believable_volume(value, VolumeUnit.ML)
    value = decimal(number)
    per = 0.01 if word.startswith("c") else 0.1 if word.startswith("d") else 1.0
    return _believable_volume(value * per, VolumeUnit.L)


def _which_ounce(whose: str | None, larger: str | None, setting: VolumeUnit | None) -> VolumeUnit:
    if whose:
        american = whose.replace(".", "") in {"us", "american"}
        return VolumeUnit.FLOZ_US if american else VolumeUnit.FLOZ_IMP
    if setting in _FLUID_OUNCES:
        return setting
    raise ParseError(ParseErrorCode.WHICH_FLUID_OUNCE, unit=larger or "fl oz")


def _ounces(value: float, unit: VolumeUnit, larger: str | None) -> Volume:
    if larger:
        name = {"g": "gal", "q": "quart", "p": "pint"}[larger[0]]
        value *= _LARGER[name][0 if unit is VolumeUnit.FLOZ_US else 1]
    return _believable_volume(value, unit)


def _bare(number: str, unit: VolumeUnit | None) -> Volume:
    value = decimal(number, thousands=unit is VolumeUnit.ML)
    if unit is None:
        raise ParseError(ParseErrorCode.NO_UNIT, given=value)
    if 0 < value < _LEAST_BARE.get(unit, 0):
        raise _unbelievable(value, unit, f"{value:g} L")
    return _believable_volume(value, unit)


def _believable_volume(value: float, unit: VolumeUnit) -> Volume:
    litres = value * _LITRES_PER_UNIT[unit]
    if litres > float(MOST_WATER):
        millilitres = unit is VolumeUnit.L and 100 <= value <= float(MOST_WATER) * 1000
        raise _unbelievable(value, unit, f"{value:g} ml" if millilitres else None)
    return Volume(litres, unit)


def _unbelievable(value: float, unit: VolumeUnit, hint: str | None) -> ParseError:
    high = round(float(MOST_WATER) / _LITRES_PER_UNIT[unit], 1)
    facts: dict[str, str | float] = {"given": value, "unit": str(unit), "low": 0, "high": high}
    if hint:
        facts["hint"] = hint
    return ParseError(ParseErrorCode.IMPLAUSIBLE, **facts)


def show_volume(litres: float, unit: VolumeUnit) -> str:
    """The volume as people say it: "3.5 L", "3500 ml", "118 US fl oz", "123 imp fl oz"."""
    if unit is VolumeUnit.L:
        text = f"{litres:.2f}"
        return f"{text.removesuffix('0')} L"
    value = round(litres / _LITRES_PER_UNIT[unit])
    name = {VolumeUnit.ML: "ml", VolumeUnit.FLOZ_US: "US fl oz", VolumeUnit.FLOZ_IMP: "imp fl oz"}
    return f"{value} {name[unit]}"


class WeightUnit(StrEnum):
    KG = "kg"
    LB = "lb"
    ST = "st"


class Towards(StrEnum):
    """Which tenth a figure is shown as. What is called a most or a least is shown as the last tenth
    within it: so no weight that a scale can show is over a most that prints alike.
    """

    NEAREST = "nearest"
    MOST = "most"
    LEAST = "least"

    def tenth(self, value: float) -> float:
        if self is Towards.MOST:
            return math.floor(value * 10 + _NOTHING) / 10
        return math.ceil(value * 10 - _NOTHING) / 10 if self is Towards.LEAST else value


#: Tenths of a tenth that are only the computer's rounding.
_NOTHING = 1e-6


@dataclass(frozen=True, slots=True)
class Weight:
    """Body mass in kg, and the unit in which it was given."""

    kg: float
    unit: WeightUnit


KG_WORDS = r"(?:kilograms?|kilogramm|kilogrammes?|kilos?|kgs?)"
LB_WORDS = r"(?:pounds?|pfund|lbs?|#)"
ST_WORDS = r"(?:stones?|sts?)"
_LABEL = r"(?:(?:my |morning )?(?:body ?)?(?:weight|mass|bw)(?: is| was)? ?[:=]? ?)?"
_SIMPLE = Late(rf"{_LABEL}\+?({NUMBER}) ?({KG_WORDS}|{LB_WORDS})?\.?")
_STONE = Late(rf"{_LABEL}\+?({NUMBER}) ?{ST_WORDS}\.?(?: ?(?:,|and|&)? ?({NUMBER}) ?{LB_WORDS}?)?")
_TWO_BARE = Late(rf"({NUMBER})[ ,/-]+({NUMBER})(?: ?{LB_WORDS})?")
_LEAST_KG, _MOST_KG = float(LEAST_BODY_MASS), float(MOST_BODY_MASS)
_KG_PER_UNIT = {
    WeightUnit.KG: 1.0,
    WeightUnit.LB: float(KG_PER_LB),
    WeightUnit.ST: float(KG_PER_LB) * float(LB_PER_STONE),
}


def parse_weight(text: str, *, unit: WeightUnit | None = None) -> Weight:
    """Read a body mass; `unit` is the athlete's own setting, for a number without a unit.

    Raises `ParseError`; never guesses between two readings.
    """
    answer = number_typed(text)
    if match := _SIMPLE.fullmatch(answer):
        number, said = match.groups()
        return _simple(number, _unit_said(said), unit)
    if match := _STONE.fullmatch(answer):
        return _stones(*match.groups())
    if unit is WeightUnit.ST and _TWO_BARE.fullmatch(answer):
        raise ParseError(ParseErrorCode.AMBIGUOUS_STONE, given=answer)
    raise why_not_read(answer, "kg, lb, st")


def _unit_said(word: str | None) -> WeightUnit | None:
    if word is None:
        return None
    return WeightUnit.KG if word.startswith("k") else WeightUnit.LB


def _simple(number: str, said: WeightUnit | None, setting: WeightUnit | None) -> Weight:
    value = decimal(number)
    unit = said or setting
    if unit is None:
        raise ParseError(ParseErrorCode.NO_UNIT, given=value)
    if unit is WeightUnit.ST and not value.is_integer():
        raise ParseError(ParseErrorCode.AMBIGUOUS_STONE, given=number)  # 9.8 st, or 9 st 8 lb
    others = [u for u in (WeightUnit.LB, WeightUnit.KG) if u is not unit and said is None]
    hint = next((f"{value:g} {u}" for u in others if _believed(value * _KG_PER_UNIT[u])), None)
    return _believable_weight(value * _KG_PER_UNIT[unit], unit, value, hint)


def _stones(stones: str, pounds: str | None) -> Weight:
    whole = decimal(stones)
    if not whole.is_integer():
        raise ParseError(
            ParseErrorCode.AMBIGUOUS_STONE, given=f"{stones} st {pounds or ''}".strip()
        )
    rest = decimal(pounds) if pounds else 0.0
    if not rest < float(LB_PER_STONE):
        raise ParseError(ParseErrorCode.OUT_OF_RANGE, given=rest, unit="lb", low=0, high=13.9)
    in_pounds = whole * float(LB_PER_STONE) + rest
    given = in_pounds / float(LB_PER_STONE)
    return _believable_weight(in_pounds * float(KG_PER_LB), WeightUnit.ST, given)


def _believed(kg: float) -> bool:
    return _LEAST_KG <= kg <= _MOST_KG


def _believable_weight(
    kg: float, unit: WeightUnit, given: float, hint: str | None = None
) -> Weight:
    if _believed(kg):
        return Weight(kg, unit)
    per = _KG_PER_UNIT[unit]
    facts: dict[str, str | float] = {
        "given": given,
        "unit": str(unit),
        "low": round(_LEAST_KG / per, 1),
        "high": round(_MOST_KG / per, 1),
    }
    if hint:
        facts["hint"] = hint
    raise ParseError(ParseErrorCode.IMPLAUSIBLE, **facts)


def show_weight(kg: float, unit: WeightUnit, towards: Towards = Towards.NEAREST) -> str:
    """The mass to a tenth of kg or lb: "61.2 kg", "134.9 lb", "9 st 8.9 lb"."""
    if unit is WeightUnit.KG:
        return f"{towards.tenth(kg):.1f} kg"
    pounds = round(towards.tenth(kg / float(KG_PER_LB)), 1)
    if unit is WeightUnit.LB:
        return f"{pounds:.1f} lb"
    stones, rest = divmod(round(pounds * 10), round(float(LB_PER_STONE) * 10))
    return f"{stones} st {rest / 10:.1f} lb"
