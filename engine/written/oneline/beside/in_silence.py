"""What sounds like an answer and was neither read nor asked about: it is asked about, never left out.

A number at the last weight where no weight was read, a word for a look without a score ("full, I guess?"), a
litre or a glass without a number: whoever wrote that means to have answered.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from dataclasses import replace

from engine.written.late import Late
from engine.written.oneline.report import Doubt, DoubtCode, Known, Report
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.in_digits import N, in_digits
from engine.written.units import WeightUnit

_LOOKS = Late(
    r"\b(?:(?:full|round|tight|flat|empty|deflated|pumped) (?:as(?! yesterday)|like(?! yesterday)|i guess|i think|i'd say|i suppose|probably|maybe|honestly)\b[^,;.\n?!]{0,20}"
    r"|(?:so|voll|wieder|richtig|ziemlich|echt|super|sehr|total|eher) (?:prall|voll|flach|platt|leer|rund)\b[^,;.\n?!]{0,20}"
    r"|(?:voll|prall|flach|platt|leer|rund) (?:glaub ich|denk ich|würd ich sagen|wie(?! gestern)|schätz ich|vermutlich|wohl)\b[^,;.\n?!]{0,20}"
    r"|(?:my look is|look is|looks?|looking|optik(?: ist)?|sieht|seh|sehe|schaut|form(?: ist)?) (?:(?:really|pretty|quite|very|so|echt|ganz|ziemlich|heute|aus|immer noch|still|a bit|etwas) )*(?:good|great|fine|better|worse|okay|ok|gut|super|besser|schlechter|mies|bad|awful|amazing|decent)(?: aus)?)(?![^\W_])"
)
_SATED = Late(r"\b(?:full|voll) (?:of|after|from|time|day|night|hours?|session|gas|mit)(?![^\W_])")
_DRINKS = Late(
    r"\b(?:(?:a|n|nen|einen?|one|half a|for|of|ganze[nrs]?|maybe|vielleicht|halbe[nr]?) )*(?:litres?|liters?|gallons?|gal|gallone|maß|krügerl|seidl)(?![^\W_])"
)
_OTHER_USE = Late(
    r"\b(?:per|pro|paar|few|couple|several|some|einige|euro|petrol|benzin|milk|milch|juice|saft|milliliter)(?![^\W_])"
)
_DENIED = Late(r" *(?:no|not|nein|nicht)(?![^\W_])")
_NEAR = 0.05
_KG_PER_LB = 0.45359237
_STONES = Late(r"\bst(?:ones?)?(?![^\W_])|\d ?st(?![^\W_])")


def asked_about(line: str, report: Report, known: Known) -> Report:
    """The report with a question where such a thing was passed over; nothing else is changed."""
    if not report.answers and not report.doubts:
        return report
    asked = {doubt.answer for doubt in report.doubts}
    asked |= {key for doubt in report.doubts for option in doubt.options for key in option}
    if "spare" in asked or not set(known.order) - {*report.answers, *asked}:
        return report
    found = [
        doubt
        for key, doubt in (
            ("weight_kg", _weight(line, known)),
            ("fullness", _look(line)),
            ("water_l", _drink(line)),
        )
        if doubt is not None and key in known.order and key not in {*report.answers, *asked}
    ]
    return replace(report, doubts=(*report.doubts, *found)) if found else report


def _weight(line: str, known: Known) -> Doubt | None:
    last = known.weight_kg or known.on_file_kg
    if last is None or known.weight_unit is WeightUnit.ST or _STONES.search(line):
        return None
    per = _KG_PER_LB if known.weight_unit is WeightUnit.LB else 1.0
    for match in re.finditer(N, in_digits(line, known.language)):
        denied = _DENIED.match(line, match.end())
        if not denied and abs(rough(match[0]) * per - last) <= _NEAR * last:
            return Doubt(code=DoubtCode.UNCLEAR, answer="weight_kg", given=match[0])
    return None


def _look(line: str) -> Doubt | None:
    match = _LOOKS.search(line)
    if match is None or _SATED.match(line, match.start()):
        return None
    return Doubt(code=DoubtCode.IN_WORDS, answer="fullness", given=match[0].strip())


def _drink(line: str) -> Doubt | None:
    match = _DRINKS.search(line)
    if match is None or _OTHER_USE.search(line):
        return None
    return Doubt(code=DoubtCode.UNCLEAR, answer="water_l", given=match[0].strip())
