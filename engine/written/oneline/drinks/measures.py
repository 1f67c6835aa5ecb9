"""Drinks told by what they were drunk from, or against another amount, written out in litres in their place.

"2 Maß" are 2 l, "8 pints" of somebody who weighs in stones 4.546 l, "6 bottles of 750 so 4.5 l" 4.5 l.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from collections.abc import Callable

from engine.evidence.units import L_PER_IMPERIAL_FLUID_OUNCE, L_PER_US_FLUID_OUNCE
from engine.written.late import Late
from engine.written.oneline.report import Doubt, DoubtCode, Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import SMALL_NUMBERS
from engine.written.units import VolumeUnit, WeightUnit
from engine.written.units.reading import NUMBER

_OVER = r"(?![^\W_]|')"
_SMALL = "|".join(sorted(SMALL_NUMBERS, key=len, reverse=True))
_MANY = rf"(?<![\d.,])(?P<many>\d{{1,2}}(?:[.,]\d)?|\b(?:{_SMALL}))"
_LITRES = r"(?:litres?|liters?|l|ltrs?)"

_STONES = Late(r"\d ?(?:st|stone)(?![^\W_])|\b(?:stones?)\b")
_BRITISH = Late(rf"{_MANY} ?(?P<unit>pints?|pts|gallons?|quarts?){_OVER}")
_OUNCES = {"p": 20.0, "g": 160.0, "q": 40.0}
_MASS = Late(rf"{_MANY} (?:maß|mass|moaß|maßl|massl){_OVER}(?! ?nehmen)")
_POUNDS_AND_OUNCES = Late(
    r"(?<![\d.,])(?P<lb>\d{2,3}) ?(?:lbs?|pounds?),? ?(?:and )?(?P<oz>\d{1,2}) ?(?:ozs?|ounces?)(?![^\W_])"
)
_PFUND = Late(r"(?<![\d.,])(?P<many>\d{2,3}(?:[.,]\d)?) ?pfund(?![^\W_])")  # of half a kilogram
_MOST_L, _SAME_L = 15.0, 0.01
_MOST_BESIDE_L = 4.0  # so far a day's drink may be from another's
_AND_A_BIT = Late(
    rf"(?<=[\w\d]) (?:and a bit|and a little|and change|und (?:ein |n |a )?(?:bisschen|bissl|bissle|bisserl|bitzeli|bissi))(?: more| over| was| mehr)?(?=(?: {_LITRES})?(?:[,;.\n]|$| of| water| wasser))"
)
_LESS_A_GLASS = Late(
    r"\b(?:an? |one |1 )gal(?:lon)?(?: of water)? (?:less|minus|short of|but for|bar) (?:a|one|1) (?:glass|cup)(?![^\W_])"
)
_MANY_GALLONS = Late(r"(?<![\d.,/])(?P<score>[4-9]|10) (?=gallon)")
_NOT_YESTERDAYS = Late(
    rf"(?<![\d.,])(?:\d{{1,2}}(?:[.,]\d+)?|\b(?:{_SMALL}))(?: ?{_LITRES}{_OVER})?(?: today| heute)? (?:so far|by now|bisher|bis jetzt|already)(?: today| heute)?(?: and \d(?:[.,]\d)? more(?: by \w+| before \w+)?)?(?: but| aber| and|,)?{_OVER}"
    rf"|\b(?:heute?|today)(?: (?:erst|schon|bisher|so far|only|already) \d(?:[.,]\d+)?(?![\d.,]\d)(?: ?{_LITRES}{_OVER})?| \d(?:[.,]\d+)? ?{_LITRES}{_OVER})"
)
_YESTERDAYS = Late(
    rf"\b(?:yesterday|gestern)\b[^;\n]{{0,18}}?(?<![\d.,])(?:\d|{_SMALL}{_OVER})|(?<![\d.,])\d(?:[.,]\d+)?(?: ?{_LITRES})? (?:yesterday|gestern){_OVER}"
)

_PART_DRUNK = Late(
    rf"(?<![\d.,])(?P<done>\d(?:[.,]\d+)?) ?{_LITRES}? ?(?:out of|of|von|aus)(?: my| the| meinen| den)? \d(?:[.,]\d+)? ?(?:{_LITRES}|litern)(?![^\W_])"
    rf"|(?P<share>three quarters|half|dreiviertel|die hälfte|hälfte) (?:of|von)(?: my| the| meinen| den)? (?P<whole>\d(?:[.,]\d+)?) ?(?:{_LITRES}|litern)(?![^\W_])"
)
_OF_TARGET = Late(
    rf"(?:\b(?:water|wasser|drank|getrunken)[:=]? )?(?<![\d.,/])(?<!/ )(?P<done>\d(?:[.,]\d+)?) ?/ ?(?P<all>\d(?:[.,]\d+)?)(?![.,]?\d| ?/)(?P<unit> ?{_LITRES}{_OVER})?"
)  # "4/4 litres", "water 3/3.5"
_FULLNESS = Late(r"/ ?10(?!\d)|\b(?:full\w*|voll|fülle)")
_HAD = Late(r"\bhad (?P<many>\d(?:[.,]\d+)?)(?= yesterday(?![^\W_]))")
_AMOUNT = rf"(?:(?P<number>{NUMBER})|(?P<said>an? half|half an?|half|an?|one|ein(?:en)?|(?:ein(?:en)? |n |nen )?halb(?:er|en|es)?|n|nen|anderthalb|{_SMALL})) ?(?P<unit>{_LITRES}|ml|oz){_OVER}"
_ABOUT = r"(?:(?:about|around|roughly|like|ca\.?|circa|etwa|ungefähr|so|rund|just) )*"
_DRANK = r"(?:(?:drank|drunk|water|wasser|getrunken|trank|hab)(?: was| war| only| nur)? )?"
_RELATIVE = Late(
    rf"{_DRANK}{_ABOUT}{_AMOUNT}(?: of)?(?: water| wasser)? (?P<way>less|more|fewer|weniger|mehr)(?: water| wasser| getrunken)? (?:than|as|als|wie) (?P<base>yesterday|the day before|gestern|usual|normal|always|sonst|immer|üblich|planned|plan|target|the plan|geplant|der plan|im plan|vorgesehen|ziel|das ziel|the target)"
    rf"|{_DRANK}{_ABOUT}{_AMOUNT.replace('P<', 'P<b_')} (?P<b_way>short|shy|under|unter|over|über)(?: of)?(?: my| the| dem| meinem| of)? (?P<b_base>target|plan|goal|ziel|soll)"
)
_LESS = frozenset({"less", "fewer", "weniger", "short", "shy", "under", "unter"})
_OF_THE_DAY_BEFORE = frozenset({"yesterday", "the day before", "gestern"})
_OF_THE_PLAN = frozenset(
    {
        "planned",
        "plan",
        "target",
        "the plan",
        "geplant",
        "der plan",
        "im plan",
        "vorgesehen",
        "ziel",
        "das ziel",
        "the target",
        "goal",
        "soll",
    }
)


def in_litres(line: str, known: Known) -> tuple[str, str]:
    """The line, as long as before, with drinks in measures that are read; and the words that told them."""
    said: list[str] = []
    british = known.weight_unit is WeightUnit.ST or bool(_STONES.search(line))

    def put(pattern: Late, amount: Callable[[re.Match[str]], str]) -> None:
        nonlocal line
        for match in list(pattern.finditer(line)):
            text = amount(match)
            if text and len(text) <= len(match[0]):
                said.append(match[0].strip())
                line = f"{line[: match.start()]}{text.ljust(len(match[0]))}{line[match.end() :]}"

    if british and known.volume_unit is not VolumeUnit.FLOZ_IMP:
        put(_BRITISH, _british)
    if known.volume_unit is VolumeUnit.FLOZ_US:
        line = _MANY_GALLONS.sub(lambda match: f"{match['score']}|", line)
    if known.language == "de":
        put(_MASS, lambda match: f"{_many(match):g}l")
    if known.volume_unit is VolumeUnit.L and "water" not in line and "drank" not in line:
        line = _HAD.sub(lambda match: f"{match['many']}l".ljust(len(match[0])), line)
    put(_PART_DRUNK, _part_drunk)
    put(_OF_TARGET, lambda match: _of_target(match, known))
    put(_LESS_A_GLASS, lambda _: _less_a_glass(known))
    if known.language == "de" and known.weight_unit is WeightUnit.KG:
        put(_PFUND, lambda match: f"{rough(match['many']) / 2:g}kg")
    line = _POUNDS_AND_OUNCES.sub(_with_ounces, line)
    line = _AND_A_BIT.sub(lambda match: " " * len(match[0]), line)
    if _NOT_YESTERDAYS.search(line) and _YESTERDAYS.search(_NOT_YESTERDAYS.sub(" ", line)):
        line = _NOT_YESTERDAYS.sub(lambda match: " " * len(match[0]), line)
    return line, " / ".join(said)


def _many(match: re.Match[str]) -> float:
    return (
        float(SMALL_NUMBERS[match["many"]])
        if match["many"] in SMALL_NUMBERS
        else rough(match["many"])
    )


def _british(match: re.Match[str]) -> str:
    litres = _many(match) * _OUNCES[match["unit"][0]] * float(L_PER_IMPERIAL_FLUID_OUNCE)
    texts = (f"{litres:.{digits}f}l" for digits in (2, 1))
    return next((text for text in texts if len(text) <= len(match[0])), "")


def _part_drunk(match: re.Match[str]) -> str:
    """ "3 of 4 litres", "half of my 4 litres": what was drunk of them."""
    if match["done"]:
        return f"{match['done']}l"
    share = 0.75 if match["share"] in ("three quarters", "dreiviertel") else 0.5
    return f"{rough(match['whole']) * share:g}l"


def _of_target(match: re.Match[str], known: Known) -> str:
    """ "4/4 litres", "water 3/3.5" of 3.5 L that were to be drunk."""
    done, whole = rough(match["done"]), rough(match["all"])
    word = match[0][: match.start("done") - match.start()]
    target = known.water_l and abs(whole - known.water_l) < _SAME_L
    # of "4/4 l" the first may be the fullness, where none is named
    scored = _FULLNESS.search(match.string.replace(match[0], " "))
    drink = (word and done <= whole) or (match["unit"] and scored and done == whole)
    if known.volume_unit is not VolumeUnit.L or not drink or not (target or done == whole):
        return ""
    return f"{word}{match['done']}l"


def _less_a_glass(known: Known) -> str:
    if known.volume_unit is VolumeUnit.FLOZ_US:
        return "120 oz"
    return "4.25 l" if known.volume_unit is VolumeUnit.FLOZ_IMP else ""


def _with_ounces(match: re.Match[str]) -> str:
    ounces = int(match["oz"])
    if ounces >= 16:
        return match[0]
    return f"{int(match['lb']) + ounces / 16:.2f}lb".ljust(len(match[0]))


def against_another(line: str, known: Known) -> tuple[str, Doubt | None, tuple[float, str] | None]:
    """ "A litre less than yesterday": the line without it; a question with what is likely, or what it is.

    Where it is not known what was drunk the day before, only what was to be drunk, it is asked.
    """
    match = _RELATIVE.search(line)
    if match is None or not known.water_l:
        return line, None, None
    prefix = "" if match["way"] else "b_"
    if _litres_told(match, prefix) > _MOST_BESIDE_L:
        return line, None, None
    of_plan = match[f"{prefix}base"] in _OF_THE_PLAN
    of_day_before = match[f"{prefix}base"] in _OF_THE_DAY_BEFORE and known.water_before_l
    base = known.water_before_l if of_day_before and known.water_before_l else known.water_l
    amount = _litres_told(match, prefix)
    line_without = f"{line[: match.start()]}|{' ' * (len(match[0]) - 1)}{line[match.end() :]}"
    value = base + (-amount if match[f"{prefix}way"] in _LESS else amount)
    if amount <= 0 or value <= 0:
        return (
            line_without,
            Doubt(code=DoubtCode.UNCLEAR, answer="water_l", given=match[0].strip()),
            None,
        )
    value = round(value, 3)
    if of_plan or of_day_before:
        return line_without, None, (value, match[0].strip())
    doubt = Doubt(
        code=DoubtCode.BOUND,
        answer="water_l",
        given=match[0].strip(),
        options=({"water_l": value},),
    )
    return line_without, doubt, None


def _litres_told(match: re.Match[str], prefix: str) -> float:
    said, number = match[f"{prefix}said"], match[f"{prefix}number"]
    if number:
        amount = rough(number)
    elif said == "anderthalb":
        amount = 1.5
    elif "hal" in said:
        amount = 0.5
    else:
        amount = float(SMALL_NUMBERS.get(said, 1))
    unit = match[f"{prefix}unit"]
    per = 0.001 if unit == "ml" else float(L_PER_US_FLUID_OUNCE) if unit == "oz" else 1.0
    return amount * per
