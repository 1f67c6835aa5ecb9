"""A scale that shows another unit than its owner's: "the hotel scale is in kilos: 70.3"."""

from __future__ import annotations

import re
from dataclasses import replace

from engine.evidence.units import KG_PER_LB
from engine.written.late import Late
from engine.written.oneline.report import Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.in_digits import N, in_digits
from engine.written.units import WeightUnit

#: The word for a unit that stands at no number.
_KILOS = Late(r"(?<!\d)(?<!\d )(?<![^\W_])(?:kgs?|kilos?|kilograms?|kilogramm)(?![^\W_])")
_POUNDS = Late(r"(?<!\d)(?<!\d )(?<![^\W_])(?:lbs?|pounds?)(?![^\W_])")
_NEAR = 0.03


def weighed_in(line: str, known: Known) -> Known:
    """What is known, with the unit that is named where a number in it is the last weight again."""
    last = known.weight_kg
    if last is None or known.weight_unit is None:
        return known
    named = _POUNDS if known.weight_unit is WeightUnit.KG else _KILOS
    per = float(KG_PER_LB) if known.weight_unit is WeightUnit.KG else 1.0
    if not named.search(line):
        return known
    told = re.findall(N, in_digits(line, known.language))
    if not any(abs(rough(number) * per - last) <= _NEAR * last for number in told):
        return known
    other = WeightUnit.LB if known.weight_unit is WeightUnit.KG else WeightUnit.KG
    return replace(known, weight_unit=other)
