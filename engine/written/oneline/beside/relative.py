"""What is told beside another figure: "300 g less than yesterday", "on a scale of 1 to 10 a 7".

A weight told by what it was yesterday is written out in its place, so that it is read as any other; what
a scale goes by is left out. Places in the line stay the same.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.written.late import Late
from engine.written.oneline.report import Doubt, DoubtCode, Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import SMALL_NUMBERS, spelt_at
from engine.written.units import WeightUnit
from engine.written.units.reading import NUMBER

_KG_PER = {"g": 0.001, "k": 1.0, "l": 0.45359237, "p": 0.45359237, "#": 0.45359237}
_MOST_KG = 3.0  # overnight, told as a difference; more is told of something else
_UNIT = r"(?:grammes?|gramm|grams?|gr|g|kilogramm|kilograms?|kilos?|kg|lbs?|pounds?|pfund|#)"
_SMALL = "|".join(sorted(SMALL_NUMBERS, key=len, reverse=True))
_SPELT = rf"(?:(?:{_SMALL})?[ -]?(?:hundred|hundert)(?: and)?[ ]?(?:fifty|fünfzig)?|anderthalb|(?:ein|zwei)einhalb|{_SMALL})"
_SAID = rf"(?:(?:an? |ein(?:en)? )?(?:quarter(?: of an?)?|viertel)|half an?|an? half|half|(?:ein |n |ne |nen? )?halbe[sn]?|{_SPELT}(?: and a half)?|an?|ein(?:en)?|nen?)"
_UNIT_SAID = r"(?:grammes?|gramm|grams?|kilos?|kilogramm|kg|pounds?|lbs?|pfund|tenths?|zehntel)"
_AMOUNT = (
    rf"(?:(?P<number>{NUMBER}) ?(?P<unit>{_UNIT})?"
    rf"|(?P<said>{_SAID}(?= )|(?=pound |kilo )) ?(?P<unit_said>{_UNIT_SAID})(?P<and_half> and a half| und ein halbes| (?:und )?einhalb)?"
    rf"|(?:zero |null |nought )?(?:point|komma|comma|punkt) (?P<tenth>[1-9]|{_SMALL}))"
)
_DOWN = r"less|lighter|lower|down|below|under|weniger|leichter|runter|drunter|unter|weg|off|abgenommen|verloren"
_UP = r"more|heavier|higher|up|above|over|mehr|schwerer|rauf|drüber|über|drauf|hoch|zugenommen"
_THAN = r"(?:than|from|on|vs\.?|versus|compared (?:to|with)|since|as|als|gegenüber|im vergleich zu|zu|seit|wie) "
_DAY_BEFORE = r"(?:yesterday(?:'s)?|the day before|gestern)(?: morning|'s)?(?: weight)?"
_OVER = r"(?![^\W_]|')"
_ABOUT = (
    r"(?:(?:about|around|roughly|like|ca\.?|circa|etwa|ungefähr|so|rund|just|nur|genau|exactly) )*"
)
_SINCE_YESTERDAY = (
    Late(rf"(?<![\d.,]){_ABOUT}{_AMOUNT} (?P<way>{_DOWN}|{_UP}) (?:{_THAN})?{_DAY_BEFORE}{_OVER}"),
    Late(
        rf"\b(?P<way>down|lost|minus|up|gained|plus|runter|rauf)(?: by| um| another)? {_ABOUT}{_AMOUNT} (?:overnight|over night|über nacht){_OVER}"
    ),
    Late(rf"(?<![^\s,;(])(?P<way>[-+]) ?{_AMOUNT} (?:{_THAN}){_DAY_BEFORE}{_OVER}"),
    Late(
        rf"\b(?P<way>down|lost|minus|up|gained|plus|runter|rauf)(?: by| um| another)? {_ABOUT}{_AMOUNT} {_THAN}{_DAY_BEFORE}{_OVER}"
    ),
)
_WEIGHT = r"(?:weight|wt|bodyweight|scales?|gewicht|gew\.?|waage|kilos?)(?: (?:is|was|has gone|went|gone|ist|war|sagt|geht))?[:=]? "
_NAMES_WEIGHT = Late(_WEIGHT)
_LIKE = r"(?:(?:like|same as|as|wie) (?:yesterday|gestern),? (?:but |just |only |aber |nur )?)?"
_ENDS = r"(?=\s*(?:[,;!\n/|]|\.(?!\d)|$)| (?:full|fullness|fülle|voll|f|water|wasser)(?![^\W_]))"
_MOVED = (
    r"(?P<way>down|up|lost|gained|dropped|put on|minus|plus|runter|rauf|hoch|zugenommen|abgenommen)"
)
#: First in a line of several figures or behind the word for it, the scale is meant: "300 g weniger, voll 6".
_AT_FIRST = (
    Late(rf"(?:^\s*|\b{_WEIGHT})(?P<way>[-+]) ?{_AMOUNT}(?=\s*(?:[,;\n]|\.(?!\d)|$))"),
    Late(
        rf"(?:^\s*{_LIKE}(?:(?:i|ich|hab|habe|have|i've) )*|\b{_WEIGHT}){_ABOUT}{_AMOUNT} (?P<way>{_DOWN}|{_UP}){_ENDS}"
    ),
    Late(rf"(?:^\s*|\b{_WEIGHT}){_MOVED} (?:by |um |another )?{_ABOUT}{_AMOUNT}{_ENDS}"),
)
#: Elsewhere a unit of weight has to say so.
_WITH_UNIT = (
    Late(rf"(?<=[,;\n/.] ){_ABOUT}{_AMOUNT} (?P<way>{_DOWN}|{_UP}){_ENDS}"),
    Late(rf"(?<=[,;\n/.] ){_MOVED} (?:by |um |another )?{_ABOUT}{_AMOUNT}{_ENDS}"),
)
_ANY_FIGURE = Late(rf"\d|\b(?:{_SMALL}|half|an?|ein\w*|halb\w*)(?![^\W_])")
_WAYS_DOWN = frozenset(f"{_DOWN}|lost|dropped|minus|abgenommen|-".split("|"))
_MOST_FULL = 10
_SCORE_DOWN = frozenset({"-", "down", "less", "lower", "weniger", "runter", "niedriger"})
_SCORE_MOVED = Late(
    r"\b(?:fullness|full|fülle|voll)(?: is| ist|[:=])? ?(?:(?P<sign>[-+]) ?(?P<sign_by>[1-3])"
    rf"|(?P<by>{_SMALL}|[1-3]|an?|ein(?:en)?) (?:points? |punkte? |notch )?(?P<way>up|down|more|less|higher|lower|mehr|weniger|rauf|runter|höher|niedriger))"
    r"(?: (?:from|than|on|als|wie) (?:yesterday|gestern|last time))?(?! ?(?:to|auf|at|bei|so|=|,? now|,? jetzt) ?(?:an? |ne )?\d)(?![^\W_]|[.,]?\d| ?/| (?:from|von) \d)"
)
#: Of a drink, of food or of a denial, the words right before say so.
_OF_ELSE = Late(
    r"(?:\b(?:water|drank|drunk|drink|ate|eaten|carbs?|rice|food|steps|wasser|getrunken|trank|gegessen|kh|reis|schritte|not|nicht|kein|sleep|schlaf|slept)\b[^,;.\n]{0,12})$"
)
#: What the scale of a score goes by: "von 1 bis 10".
_SCALE = Late(
    r"(?:(?:on|auf) (?:a |the |einer |ner |der )?(?:scale|skala) (?:of |from |von )?|\b(?:of|from|von) )"
    r"(?:1|one|eins) ?(?:to|bis|-|–) ?(?:10|ten|zehn)(?![\d.,]?\d)"
)


def written_out(line: str, known: Known) -> tuple[str, str]:
    """The line, as long as before, with such figures in the place of what told them; and the words
    that told the weight, "" where none did.
    """
    line = _SCALE.sub(lambda scale: " " * len(scale[0]), line)
    last = known.weight_kg if known.weight_is_yesterdays else None
    if last is None or not (known.asked or sum(map(str.isdecimal, line)) > 1):
        return line, ""
    of_several = "weight_kg" in known.asked and len(_ANY_FIGURE.compiled.findall(line)) > 1
    for pattern in (*_SINCE_YESTERDAY, *((*_AT_FIRST, *_WITH_UNIT) if of_several else ())):
        match = pattern.search(line)
        if match is None:
            continue
        named = _NAMES_WEIGHT.match(match[0]) is not None
        if not named and _OF_ELSE.search(line[: match.start()]):
            continue
        if line[match.end() :].lstrip().startswith("?"):
            continue
        if _told_whole(line[: match.start()] + " | " + line[match.end() :], last, known):
            return f"{line[: match.start()]}{' ' * len(match[0])}{line[match.end() :]}", ""
        change = _change(match, known)
        unit = match["unit"] or match["unit_said"]
        precise = unit or match["tenth"] or "." in match["number"].replace(",", ".")
        sure = pattern in _SINCE_YESTERDAY or (unit if pattern in _WITH_UNIT else precise)
        if change is None or not sure:
            continue  # "2 down, 1 to go"
        kg = f"{last + change:.2f}"
        if re.search(r"\d,\d", line) and not re.search(r"\d\.\d", line):
            kg = kg.replace(".", ",")
        figures = (f"{kg}kg", f"{kg.rstrip('0').rstrip('.,')}kg", kg.rstrip("0").rstrip(".,"))
        figure = next((one for one in figures if len(one) <= len(match[0])), None)
        if figure is None or (known.weight_unit is not WeightUnit.KG and "k" not in figure):
            continue
        figure = figure.ljust(len(match[0]))
        return f"{line[: match.start()]}{figure}{line[match.end() :]}", match[0].strip()
    return line, ""


def score_moved(line: str, known: Known) -> tuple[str, Doubt | None]:
    """ "Fullness +1", "fülle eins mehr als gestern": the line without it, and what is to be asked."""
    match = _SCORE_MOVED.search(line)
    if match is None:
        return line, None
    said = match["sign_by"] or match["by"] or "1"
    by = float(SMALL_NUMBERS.get(said) or (said if said.isdecimal() else 1))
    down = (match["sign"] or match["way"]) in _SCORE_DOWN
    value = (known.fullness or 0) + (-by if down else by)
    known_one = known.fullness is not None and 1 <= value <= _MOST_FULL
    doubt = Doubt(
        code=DoubtCode.UNCLEAR, answer="fullness", given=match[0].strip(),
        options=({"fullness": int(value)},) if known_one else (),
    )  # fmt: skip
    return f"{line[: match.start()]}|{' ' * (len(match[0]) - 1)}{line[match.end() :]}", doubt


def _told_whole(line: str, last: float, known: Known) -> bool:
    """Whether the weight stands there beside by how much it moved: "a kilo down! so 71.7"."""
    per = 1.0 if known.weight_unit is WeightUnit.KG else _KG_PER["l"]
    told = (
        rough(number) * per for number in re.findall(r"(?<![\d.,])\d\d\d?[.,]\d(?!\d|[.,]\d)", line)
    )
    return any(abs(kg - last) <= _MOST_KG for kg in told)


def _change(match: re.Match[str], known: Known) -> float | None:
    """By how many kilograms the weight has moved; None where that cannot be one night's."""
    unit = match["unit"] or match["unit_said"] or ""
    if not unit:
        unit = "kg" if known.weight_unit is WeightUnit.KG else "lb"
    if match["tenth"]:
        amount = float(SMALL_NUMBERS.get(match["tenth"]) or match["tenth"]) / 10
    else:
        amount = rough(match["number"]) if match["number"] else _amount(match["said"])
    amount += 0.5 if match["and_half"] else 0.0
    if unit.startswith(("tenth", "zehntel")):
        amount, unit = amount / 10, "kg" if known.weight_unit is WeightUnit.KG else "lb"
    if unit == "pfund" and known.weight_unit is WeightUnit.KG:
        amount, unit = amount / 2, "kg"  # a German pound: common practice
    kg = amount * _KG_PER[unit[0]]
    if not 0 < kg <= _MOST_KG:
        return None
    return -kg if match["way"] in _WAYS_DOWN else kg


def _amount(said: str) -> float:
    """The number of "half a", "zweihundert", "a"."""
    if "quarter" in said or "viertel" in said:
        return 0.25
    if "hal" in said and not said.endswith(("einhalb", "anderthalb", "and a half")):
        return 0.5
    spelt = spelt_at(said.strip(), 0, "de")
    return float(spelt[0]) if spelt else 1.0
