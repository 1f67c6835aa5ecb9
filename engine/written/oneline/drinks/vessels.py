"""Drinks told by what they were drunk from, against another amount, or by what is left of it: written out
in litres in their place."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import partial

from engine.evidence.units import L_PER_IMPERIAL_FLUID_OUNCE, L_PER_US_FLUID_OUNCE
from engine.written.late import Late
from engine.written.oneline.drinks.parts import MOST_L, OUNCES, is_british
from engine.written.oneline.report import Doubt, DoubtCode, Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import NUMBER_WORDS, SMALL_NUMBERS, N, instead, rewritten
from engine.written.units import VolumeUnit, WeightUnit
from engine.written.units.reading import NUMBER

# ruff: noqa: E501 - a pattern stays on one line


_OVER = r"(?![^\W_]|')"
_MANY = rf"(?<![\d.,])(?P<many>\d{{1,2}}(?:[.,]\d)?|\b(?:{NUMBER_WORDS}))"
_LITRES = r"(?:litres?|liters?|l|ltrs?)"

_BRITISH = Late(rf"{_MANY} ?(?P<unit>pints?|pts|gallons?|quarts?){_OVER}")
_MASS = Late(rf"{_MANY} (?:maß|mass|moaß|maßl|massl){_OVER}(?! ?nehmen)")
_POUNDS_AND_OUNCES = Late(
    r"(?<![\d.,])(?P<lb>\d{2,3}) ?(?:lbs?|pounds?),? ?(?:and )?(?P<oz>\d{1,2}) ?(?:ozs?|ounces?)(?![^\W_])"
)
_PFUND = Late(r"(?<![\d.,])(?P<many>\d{2,3}(?:[.,]\d)?) ?pfund(?![^\W_])")  # of half a kilogram
_SAME_L = 0.01
_MOST_BESIDE_L = 4.0  # so far a day's drink may be from another's
_AND_A_BIT = Late(
    rf"(?<=[\w\d]) (?:and a bit|and a little|and change|und (?:ein |n |a )?(?:bisschen|bissl|bissle|bisserl|bitzeli|bissi))(?: more| over| was| mehr)?(?=(?: {_LITRES})?(?:[,;.\n]|$| of| water| wasser))"
)
_LESS_A_GLASS = Late(
    r"\b(?:an? |one |1 )gal(?:lon)?(?: of water)? (?:less|minus|short of|but for|bar) (?:a|one|1) (?:glass|cup)(?![^\W_])"
)
_MANY_GALLONS = Late(r"(?<![\d.,/])(?P<score>[4-9]|10) (?=gallon)")
_NOT_YESTERDAYS = Late(
    rf"(?<![\d.,])(?:\d{{1,2}}(?:[.,]\d+)?|\b(?:{NUMBER_WORDS}))(?: ?{_LITRES}{_OVER})?(?: today| heute)? (?:so far|by now|bisher|bis jetzt|already)(?: today| heute)?(?: and \d(?:[.,]\d)? more(?: by \w+| before \w+)?)?(?: but| aber| and|,)?{_OVER}"
    rf"|\b(?:heute?|today)(?: (?:erst|schon|bisher|so far|only|already) \d(?:[.,]\d+)?(?![\d.,]\d)(?: ?{_LITRES}{_OVER})?| \d(?:[.,]\d+)? ?{_LITRES}{_OVER})"
)
_YESTERDAYS = Late(
    rf"\b(?:yesterday|gestern)\b[^;\n]{{0,18}}?(?<![\d.,])(?:\d|{NUMBER_WORDS}{_OVER})|(?<![\d.,])\d(?:[.,]\d+)?(?: ?{_LITRES})? (?:yesterday|gestern){_OVER}"
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
_AMOUNT = rf"(?:(?P<number>{NUMBER})|(?P<said>an? half|half an?|half|an?|one|ein(?:en)?|(?:ein(?:en)? |n |nen )?halb(?:er|en|es)?|n|nen|anderthalb|{NUMBER_WORDS})) ?(?P<unit>{_LITRES}|ml|oz){_OVER}"
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
        "planned", "plan", "the plan", "target", "the target", "goal",
        "geplant", "der plan", "im plan", "vorgesehen", "ziel", "das ziel", "soll",
    }
)  # fmt: skip


def in_litres(line: str, known: Known) -> tuple[str, str]:
    """The line, as long as before, with drinks in measures that are read; and the words that told them."""
    said: list[str] = []

    def put(pattern: Late, amount: Callable[[re.Match[str]], str]) -> None:
        nonlocal line
        for match in list(pattern.finditer(line)):
            text = amount(match)
            if text and len(text) <= len(match[0]):
                said.append(match[0].strip())
                line = instead(line, *match.span(), text)

    if is_british(line, known) and known.volume_unit is not VolumeUnit.FLOZ_IMP:
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
    many = match["many"]
    return float(SMALL_NUMBERS[many]) if many in SMALL_NUMBERS else rough(many)


def _british(match: re.Match[str]) -> str:
    litres = _many(match) * OUNCES[match["unit"][0]][1] * float(L_PER_IMPERIAL_FLUID_OUNCE)
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
    line_without = instead(line, *match.span(), "|")
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


_UNITS = r"(?:millilit(?:re|er)s?|mls?|cl|dl|lit(?:re|er)[sn]?|ltrs?|l|fl\.? ?oz|ounces?|ozs?|gallon(?:en|e|s)?|gals?|pints?|quarts?|cups?)"
_ONE = r"(?:(?<![^\W_] )(?<![^\W_])(?=gallon)|(?:an? |ein(?:en|e)? |n |one )(?=(?:full |whole |ganze[nr]? )?(?:lit|gal|cup|pint|quart)))"
_VESSEL = r"(?:bottles?|flaschen?|pullen?|jugs?|kr(?:u|ü)ge?|kannen?|karaffen?|pitchers?|kanister|canisters?|containers?|tanks?|shakers?|flasks?|glass(?:es)?|gläser|glas|becher|cans?|dosen?|canteens?|thermos(?:kanne)?|bidons?|mugs?|tumblers?)"
_LEFT = r"(?:left(?: ?over)?|übrig|drin(?:nen)?|drinne|over|remaining|to go|in it|in there|stehen(?: geblieben| gelassen)?|am boden|at the bottom)"
_AT = r"(?:at|à|a|á|mit|je|zu|zu je|of|with|@|von|each)"
_AND = r"(?: *(?:,|and|und|plus|\+|&|dann|then|noch|dazu))+ *"

_AMOUNT_LEFT = rf"(?:(?P<all>{N})|{_ONE})[ -]*(?P<unit>{_UNITS}){_OVER}"
_LESS_LEFT = rf"(?:(?P<half>half (?:of )?an? |(?:an? |ein(?:en)? |n )?hal(?:f|be[nr]?) )(?P<half_unit>{_UNITS}){_OVER}|(?P<less>{N}) *(?P<less_unit>{_UNITS}{_OVER})?|{_ONE}(?P<one_unit>{_UNITS}){_OVER})"
_WITH_SOME_LEFT = Late(
    rf"{_AMOUNT_LEFT}[ -]?{_VESSEL}?{_OVER}[^\d\n;]{{0,45}}?{_LESS_LEFT}[^\d\n;,.]{{0,14}}?\b{_LEFT}{_OVER}(?: (?:in it|drin|in there|over))?"
)
_ALL_BAR = Late(
    rf"(?:\b(?:everything|all of it|all|alles|ganze?[sn]?)\b[^\d\n;]{{0,12}})?\b(?:bar|but|except(?: for)?|minus|bis auf|außer|ausser|ohne)\b[^\d\n;]{{0,14}}?{_LESS_LEFT}[^\d\n;]{{0,28}}?\b(?:of|von)\b[^\d\n;]{{0,12}}?{_AMOUNT_LEFT}(?: (?:day|tag|jug|krug|bottle|flasche))?"
)
_MINUS = Late(
    rf"{_AMOUNT_LEFT}(?: {_VESSEL}{_OVER})?,? *(?:minus|less|short of|weniger|but for|bis auf) *(?:about |the last |die letzten |the |die |den |das |etwa |ca\.? )?{_LESS_LEFT}"
)
_SHORT_OF = Late(
    rf"{_LESS_LEFT} *(?:short|shy|under|unter|weniger als|less than) *(?:of )?(?:my |the |meine[nrm]? |den |die )?(?:target |goal |ziel |soll )?(?:of |von )?(?P<all>{N})(?: *(?P<unit>{_UNITS}){_OVER})?(?![.,]?\d| ?/| ?kg)"
)
_HOLDS = Late(
    rf"{_VESSEL}{_OVER}(?: (?:of mine|i have|hat|holds?|is|fasst|has|takes|mit|of|with|ist|von))* *(?P<size>{N}) *(?P<unit>{_UNITS}){_OVER}[^\d\n;.]{{0,28}}?(?:\b(?P<many>{N}) *(?:x|times|mal)|\b(?P<word>twice|thrice|zweimal|dreimal|viermal|fünfmal|sechsmal))(?![^\W_])(?: (?:empty|leer|full|voll)(?: gemacht| getrunken)?)?"
)
_TIMES = {
    "twice": 2, "thrice": 3,
    "zweimal": 2, "dreimal": 3, "viermal": 4, "fünfmal": 5, "sechsmal": 6,
}  # fmt: skip
_EACH = Late(
    rf"(?P<many>{N}) *{_VESSEL}{_OVER},? *(?:(?:jede[rsn]?|jeweils|each)(?: one)?(?: of| with| mit| zu| à| holds| hat)* *(?P<size>{N}) *(?P<unit>{_UNITS}){_OVER}|(?P<size_>{N}) *(?P<unit_>{_UNITS}){_OVER} *(?:each|jeweils|apiece|pro stück|pro flasche))"
)
_AS_PLANNED = Late(
    rf"(?P<amount>{N} *{_UNITS}),? (?:as planned|as prescribed|as per plan|per plan|according to plan|as told|wie geplant|nach plan|laut plan)(?![^\W_])"
)
#: What was to be drunk, before what was: "supposed to be 4 litres, was 3".
_OF_A_GOAL = Late(
    rf"(?:(?:supposed to be|meant to be|should(?: have been| be)?|sollten?|target|goal|ziel|soll)(?: (?:was|is|war|ist|of|eigentlich))*:? *{N} *(?P<unit>{_UNITS}){_OVER}(?: sein| werden)?|{N} *(?P<unit_>{_UNITS}){_OVER} *(?:target|goal|ziel|soll)),? *(?:but |aber )?(?:managed|was|were|got|did|made|geschafft|waren|war|wurden|drank|had|hab)(?: (?:only|nur|about|etwa))* *(?P<now>{N})(?! *(?:kg|/|{_UNITS}{_OVER}))"
)
#: Told besides, and in the day's amount already, or not in it: "(coffee 16 oz not counted)".
_COUNTED_IN = Late(
    rf"[,(][^,;.()\n\d]{{0,25}}(?:{N} *|hal[fb]\w* (?:a )?){_UNITS}{_OVER}[^,;.()\n\d]{{0,25}}(?:mitgezählt|mitgerechnet|eingerechnet|mit drin|included|counted(?: in)?|inklusive|inclusive|not included|nicht dabei)\)?"
)
_SIZED = rf"(?P<many>{N}) *(?:x *)?(?P<vessel>{_VESSEL}) *(?:{_AT} +)+(?P<size>{N}) *(?P<size_unit>{_UNITS}{_OVER})?"
_MORE = Late(
    rf"{_AND}(?P<many>{N}|one|eine[rn]?|an?other) *(?:x *)?(?:{_VESSEL} *)?(?:{_AT} +)+(?P<size>{N}) *(?P<unit>{_UNITS}{_OVER})?"
)
_BOTTLES = Late(
    rf"{_SIZED}(?P<rest>(?:{_MORE.written.replace('P<many>', 'P<m_>').replace('P<size>', 'P<s_>').replace('P<unit>', 'P<u_>')})+)"
)
_CUPS = Late(
    rf"(?P<many>{N}) *cups?{_OVER}(?:(?P<when>[^\d\n;.]{{0,28}}?){_AND}(?P<more>{N})(?= *(?:cups?|after|before|later|more|then|in|at|during|with|on)(?![^\W_])))?"
)
_LABEL = r"\b(?:drank|drunk|drink(?:ing)?|water|wasser|getrunken|trinken|trank|h2o|💧)(?: (?:was|war|yesterday|gestern|yest|today|total|intake)|'?s)*[:=]* *"
_LIST = Late(
    rf"{_LABEL}(?P<list>{N}(?: *{_UNITS}{_OVER})?(?:(?: *(?:[,+&/]|and|und|plus) *| +){N}(?: *{_UNITS}{_OVER})?){{2,}})(?![^\W_])"
)
_LIST_TIGHT = Late(
    rf"{_LABEL}(?P<list>{N}(?: *{_UNITS}{_OVER})?(?:(?: *[+&] *| +){N}(?: *{_UNITS}{_OVER})?){{2,}})(?![^\W_])"
)
_OF_THE_DAY = Late(
    rf"{_LABEL}(?P<list>(?:{N} *(?:{_UNITS}{_OVER})?(?: [^\W\d_]+\.?){{1,3}} *(?:,|and|und|\+|;) *){{2,}}{N} *(?:{_UNITS}{_OVER})?(?: [^\W\d_]+){{0,3}})(?= *(?:[.;\n]|$))"
)
_ANSWER = Late(
    r"\b(?:full\w*|fülle|voll|look|optik|form|weight|gewicht|scale|waage|kg|kilos?|lbs?|pounds?|slept|sleep|geschlafen|carbs|kh)(?![^\W_])"
)
_UP_TO = Late(
    rf"{_LABEL}(?P<low>{N}),? *(?:(?:or|maybe|oder|bis|to|vielleicht) *)?(?P<high>{N}) *(?:litres?|liters?|l)(?![^\W_])"
)
_LEAST_ML, _MOST_BOTTLE_L, _LEAST_PART_L = 100.0, 3.0, 0.05
_LEAST_SHARE, _MOST_SHARE = 0.4, 1.8  # of the target: a bare list beyond them is none


def worked_out(line: str, known: Known) -> tuple[str, str]:
    """The line, as long as before, with such drinks in litres; and the words that told them."""
    line, _ = rewritten(
        line,
        known,
        (_COUNTED_IN, lambda _: ""),
        (_OF_A_GOAL, lambda match: f"{match['now']}{match['unit'] or match['unit_']}"),
        (_AS_PLANNED, lambda match: match["amount"]),
    )
    without_rest, so_often = partial(_without_rest, known=known), partial(_so_often, known=known)
    line, told = rewritten(
        line,
        known,
        *((one, without_rest) for one in (_ALL_BAR, _WITH_SOME_LEFT, _MINUS, _SHORT_OF)),
        *((one, so_often) for one in (_HOLDS, _EACH)),
        (_BOTTLES, partial(_bottles, known=known)),
        *([(_CUPS, _cups)] if known.volume_unit is VolumeUnit.FLOZ_US else []),
        *((one, partial(_listed, known=known)) for one in (_LIST_TIGHT, _LIST, _OF_THE_DAY)),
        (_UP_TO, _range),
    )
    return line, " / ".join(told)


def _litres(number: float, unit: str | None, known: Known) -> float | None:
    """The amount in litres; a bare one is of millilitres or of litres by its size."""
    unit = (unit or "").strip()
    american = known.volume_unit is VolumeUnit.FLOZ_US
    ounce = float(L_PER_US_FLUID_OUNCE if american else L_PER_IMPERIAL_FLUID_OUNCE)
    if not unit:
        if number >= _LEAST_ML:
            return number / 1000
        return number if number <= _MOST_BOTTLE_L else None
    for begins, litres in (("ml", 0.001), ("milli", 0.001), ("cl", 0.01), ("dl", 0.1), ("l", 1.0)):
        if unit.startswith(begins):
            return number * litres
    if unit[0] == "c":
        return number * 8 * ounce if american else None
    if not american and known.volume_unit is not VolumeUnit.FLOZ_IMP and known.weight_unit != "st":
        return None
    per = OUNCES.get(unit[0], (1, 1))
    return number * per[not american] * ounce


def _written(litres: float | None) -> str | None:
    return f"{litres:.2f}".rstrip("0").rstrip(".") + "l" if litres and litres <= MOST_L else None


def _without_rest(match: re.Match[str], known: Known) -> str | None:
    unit = match["unit"] or match["less_unit"] or match["one_unit"] or match["half_unit"]
    whole = _litres(rough(match["all"]) if match["all"] else 1.0, unit, known)
    less_unit = match["less_unit"] or match["one_unit"] or match["half_unit"]
    number = 0.5 if match["half"] else rough(match["less"]) if match["less"] else 1.0
    less = _litres(number, less_unit, known)
    if match["less"] and not match["less_unit"] and rough(match["less"]) < _LEAST_ML:
        return None
    if whole is None or less is None or not 0 < less < whole:
        return None
    return _written(whole - less)


def _so_often(match: re.Match[str], known: Known) -> str | None:
    """ "My bottle holds 800 ml, drank it four times"; "drei Flaschen, jede 1 Liter"."""
    found = match.groupdict()
    many = rough(found["many"]) if found["many"] else _TIMES[found["word"]]
    size, unit = (found["size"] or found["size_"]), (found["unit"] or found["unit_"])
    each = _litres(rough(size), unit, known)
    return _written(many * each) if each and each <= _MOST_BOTTLE_L + 1 else None


def _bottles(match: re.Match[str], known: Known) -> str | None:
    parts = [(match["many"], match["size"], match["size_unit"])]
    parts += [(more["many"], more["size"], more["unit"]) for more in _MORE.finditer(match["rest"])]
    total = 0.0
    for many, size, unit in parts:
        litres = _litres(rough(size), unit or match["size_unit"], known)
        if litres is None or litres > _MOST_BOTTLE_L + 1:
            return None
        total += (rough(many) if many[0].isdecimal() else 1.0) * litres
    return _written(total)


def _cups(match: re.Match[str]) -> str | None:
    """Cups of eight ounces, as they are counted where water is told in ounces (common practice)."""
    cups = rough(match["many"]) + (rough(match["more"]) if match["more"] else 0)
    return f"{cups * 8:g}oz" if 1 < cups <= 40 else None


def _listed(match: re.Match[str], known: Known) -> str | None:
    listed = match["list"]
    if _ANSWER.search(listed):
        return None
    found = re.findall(rf"({N}) *({_UNITS}{_OVER})?", listed)
    unit = next((unit for _, unit in found if unit), "")
    litres = [_litres(rough(number), own or unit, known) for number, own in found]
    if any(one is None or one < _LEAST_PART_L for one in litres):
        return None  # "3500ml 1/10": what is less than a sip is another answer
    total = sum(one or 0 for one in litres)
    target = known.water_l
    if target and not _LEAST_SHARE * target <= total <= _MOST_SHARE * target:
        return None
    if len({rough(number) >= _LEAST_ML for number, own in found if not (own or unit)}) > 1:
        return None  # "3500, 133.2, 1": millilitres, and then other answers
    small = all(rough(number) >= _LEAST_ML for number, _ in found)
    if not (unit or small or any(mark in listed for mark in "+,&") or re.search("[a-z]", listed)):
        return None
    text = _written(total)
    lead = match[0][: match.start("list") - match.start()]
    return f"{lead}{text}" if text else None


def _range(match: re.Match[str]) -> str | None:
    """ "water's three, three and a half litres"."""
    low, high = rough(match["low"]), rough(match["high"])
    if not 0 < high - low <= 1:
        return None
    lead = match[0][: match.start("low") - match.start()]
    return f"{lead}{low:g}-{high:g}l"
