"""Body mass in kilograms, pounds, or stones and pounds."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import StrEnum

from engine.evidence.units import KG_PER_LB, LB_PER_STONE, LEAST_BODY_MASS, MOST_BODY_MASS
from engine.written.late import Late
from engine.written.units.reading import (
    NUMBER,
    ParseError,
    ParseErrorCode,
    decimal,
    number_typed,
    why_not_read,
)


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
    return _believable(value * _KG_PER_UNIT[unit], unit, value, hint)


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
    return _believable(in_pounds * float(KG_PER_LB), WeightUnit.ST, given)


def _believed(kg: float) -> bool:
    return _LEAST_KG <= kg <= _MOST_KG


def _believable(kg: float, unit: WeightUnit, given: float, hint: str | None = None) -> Weight:
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
