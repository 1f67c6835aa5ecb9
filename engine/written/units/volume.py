"""A day's drinking in litres, millilitres or fluid ounces."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from engine.evidence.units import L_PER_IMPERIAL_FLUID_OUNCE, L_PER_US_FLUID_OUNCE, MOST_WATER
from engine.written.late import Late
from engine.written.units.reading import (
    NUMBER,
    ParseError,
    ParseErrorCode,
    decimal,
    number_typed,
    why_not_read,
)


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
        return _believable(value, VolumeUnit.ML)
    value = decimal(number)
    per = 0.01 if word.startswith("c") else 0.1 if word.startswith("d") else 1.0
    return _believable(value * per, VolumeUnit.L)


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
    return _believable(value, unit)


def _bare(number: str, unit: VolumeUnit | None) -> Volume:
    value = decimal(number, thousands=unit is VolumeUnit.ML)
    if unit is None:
        raise ParseError(ParseErrorCode.NO_UNIT, given=value)
    if 0 < value < _LEAST_BARE.get(unit, 0):
        raise _unbelievable(value, unit, f"{value:g} L")
    return _believable(value, unit)


def _believable(value: float, unit: VolumeUnit) -> Volume:
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
