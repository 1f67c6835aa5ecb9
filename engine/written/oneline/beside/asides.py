"""Figures of something else, with their words: at what hour, how fast the heart, how long the waist.

They are set aside before the answers are read, so that none is taken for one, and stay in the note.
"""

from __future__ import annotations

import re
from dataclasses import replace

from engine.evidence.units import KG_PER_LB
from engine.written.late import Late
from engine.written.oneline.report import Doubt, DoubtCode, Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import (
    NUMBER_WORDS,
    SMALL_NUMBERS,
    N,
    in_digits,
    instead,
    spelt_at,
)
from engine.written.units import WeightUnit
from engine.written.units.reading import NUMBER

# ruff: noqa: E501 - a pattern stays on one line


_OVER = r"(?![^\W_]|')"
_HOUR = rf"(?:\d{{1,2}}(?:[:.]\d\d)?|{NUMBER_WORDS})(?: ?(?:[ap]\.?m\.?|o'?clock|uhr|ish)){{0,2}}{_OVER}"
_IS = r"(?: (?:is|was|at|of|ist|war|bei|von|quality|level|score))*[:=]? ?"
#: None of these follows an hour: "up at 7 full", "up at 6 litres".
_NO_ANSWER = r"(?![.,]?\d| ?/| ?(?:full|fullness|voll|fülle|out of|von 10|kgs?|kilos?|lbs?|litres?|liters?|l|ml|oz|pounds?|stones?|st|for)(?![^\W_]))"
_RISEN = r"(?:got up|get up|gotten up|woke(?: up)?|awake|up|out of bed|alarm|went to bed|to bed|in bed|bed|asleep|fell asleep|lights out|slept)"
_AUF = r"(?:auf(?:gestanden|gewacht|gewesen)?|raus|wach|hoch|gewogen|aus dem bett|aus den federn|ins bett|im bett|eingeschlafen|schlafen)"
_OF_BODY = r"(?:waist|hips?|chest|thighs?|calves|taill\w*|hüfte?n?|bauchumfang|umfang|brustumfang)"
_HOW_ONE_IS = r"(?:mood|energy|stress|hunger|soreness|pain|libido|motivation|digestion|cravings?|doms|laune|stimmung|energie|energielevel|muskelkater|schmerz\w*|verdauung|heißhunger|stresslevel|rpe|steps goal)"

_EATEN = r"(?:rice|reis|oats|oatmeal|haferflocken|chicken|huhn|hähnchen|pute|turkey|pasta|nudeln|potato(?:es)?|kartoffeln?|fish|fisch|beef|rind|steak|quark|skyr|eggs?|eier|whey|protein|eiweiß|fat|fett|brot|bread|salt|salz|sodium|natrium)"

_ASIDE = tuple(
    Late(pattern)
    for pattern in (
        # hours
        rf"(?:(?:{_RISEN}|weighed|at|by|since|from|till|until|around|about|from) )*(?:(?:half|quarter|five|ten|twenty)(?: past| to)) {_HOUR}{_NO_ANSWER}",
        rf"\b(?:{_RISEN} )?(?:at|by|since|around|from|till|until) half {_HOUR}{_NO_ANSWER}",
        rf"\b(?:{_RISEN}) (?:at|around|about|by|since|till|until|@) (?:about |around |like )?{_HOUR}{_NO_ANSWER}",
        rf"(?:\b{_AUF} )?(?:\b(?:um|gegen|ab|seit|bis|schon|so|kurz vor|kurz nach) )*\bhalb {_HOUR}(?: {_AUF}{_OVER}| früh| morgens| abends)*",
        rf"\b(?:um|gegen|seit|kurz vor|kurz nach) (?:viertel (?:vor|nach|über) |dreiviertel |kurz (?:vor|nach) |fünf (?:vor|nach) )?{_HOUR} (?:in der früh |morgens |heute |früh |schon )*{_AUF}{_OVER}",
        rf"\b{_AUF} (?:um|gegen|seit) (?:viertel (?:vor|nach) |kurz (?:vor|nach) )?{_HOUR}{_NO_ANSWER}",
        rf"(?<=[^\W\d_] )(?:at|um) {_HOUR},? (?:and|und|&) (?:at |um )?{_HOUR}{_NO_ANSWER}",
        r"\b(?:woke(?: up)?|awake|weighed|wach|aufgestanden|gewogen)(?: at| um)? (?:[3-9]|1[0-2])(?=[,;:] )",
        r"(?<![\d.,])\d{2,3} (?:puls|ruhepuls|pulse|rhr|hr|heart rate)(?![^\W_]| ?[:=]? ?\d)",
        r"\b(?:um|at) (?:[3-9]|1[0-2]) (?=(?:i was|i weighed|hatte ich|war ich|hab ich|habe ich) )",
        rf"\b(?:sleep score|schlafscore|readiness|recovery score){_IS}\d{{1,3}}(?![.,]?\d)",
        r"\b(?:um|at) \d{1,2}[:.]\d\d(?= \d{2,3}[.,]\d)",
        rf"\b(?:bis )?(?:abends|nachts|morgens|früh) (?:so )?(?:um|gegen) {_HOUR}{_NO_ANSWER}",
        rf"\b(?:bis|um|gegen|ab) {_HOUR} (?:abends|nachts|morgens|in der früh){_OVER}",
        # the body
        rf"\b{_OF_BODY}{_IS}\d{{2,3}}(?:[.,]\d{{1,2}})?(?: ?(?:cm|in|inch(?:es)?|mm|zoll){_OVER}|\")?(?![.,]?\d)",
        rf"(?<![\d.,])\d{{2,3}}(?:[.,]\d{{1,2}})? ?(?:cm|in|inch(?:es)?|zoll|\") ?{_OF_BODY}{_OVER}",
        r"\b(?:bp|blood pressure|rr|blutdruck)(?: is| was|:|=)? ?\d{2,3} ?(?:/|over|zu|auf) ?\d{2,3}(?!\d)",
        r"(?<!\d)\d{3} ?/ ?\d{2,3} ?(?:bp|blutdruck|mmhg|blood pressure)",
        rf"\b(?:resting hr|resting heart rate|heart rate|resting pulse|ruhepuls|rhr|hrv|hr|pulse|puls|herzfrequenz)[^.,;\n\d]{{0,25}}?[:=]? ?\d{{2,3}}(?: ?bpm{_OVER})?(?![.,]?\d)",
        rf"(?<![\d.,])\d{{2}}(?:[.,]\d)? ?(?:°(?: ?c{_OVER})?|grad|degrees?|celsius){_OVER}(?: (?:celsius|fieber|temperatur))?",
        # of ten, and no fullness
        rf"\b(?:{_HOW_ONE_IS}){_IS}\d{{1,2}}(?: ?(?:/|of|out of|von) ?(?:10|5))?{_NO_ANSWER}",
        rf"\b(?:knees?|shoulders?|elbows?|hips?|ankles?|back|neck|knie|schultern?|ellbogen|hüfte|rücken|nacken)(?: (?:is|are|at|a|like|about|ist|so|bei|tut|hurts?|weh|sore|pain))*[:=]? \d{{1,2}} ?(?:/|of|out of|von) ?10{_NO_ANSWER}",
        rf"\b(?:sleep|schlaf|schlafqualität|sleep quality){_IS}\d{{1,2}} ?(?:/|out of|von) ?10(?!\d)",
        rf"(?<![\d.,])\d{{1,2}} ?(?:/|of|out of|von) ?10 (?:for |bei |beim )?(?:{_HOW_ONE_IS}|sleep|schlaf){_OVER}",
        # what was done
        r"\b(?:steps|schritte)(?: gestern| yesterday|:|=)? ?\d{1,3}(?:[.,' ]?\d{3}|[.,]?\d?k)(?![.,]?\d)",
        r"(?<![\d.,])\d{1,3}(?:[.,']?\d{3}|[.,]?\d?k) ?(?:steps|schritte)",
        r"(?<![\d.,])\d{1,2} sets? (?:of|x) ?\d{1,3}(?: reps?)?",
        r"(?<![\d.,])\d{1,2} ?x ?\d{1,3} ?(?:reps?|wdh|wiederholungen)",
        r"(?<![\d.,])\d{1,2} sätze (?:à|a|mit|zu|von|x) ?\d{1,3}(?: wdh| wiederholungen)?",
        # which part of the body moved by how much, and what else was eaten
        r"\b(?:up|down|rauf|runter) (?:an? |one |two |ein(?:en)? |zwei |\d )?(?:points?|notch(?:es)?|punkte?) (?:on |in |at |bei der |bei |in der )?(?:the )?(?=fullness|fülle|full|to |auf )",
        r"\b(?:protein|eiweiß|fat|fett|fib(?:re|er)|ballaststoffe)[: ]*\d{2,3}(?: ?g(?![^\W_]))?(?![.,]?\d)",
        r"\bp[: ]?\d{2,3}(?: ?g)?(?:[ ,/]+f[: ]?\d{2,3}(?: ?g(?![^\W_]))?)?(?![.,]?\d| ?(?:full|voll))",
        # so much that nobody knows it
        r"\b(?:a few|a couple of|some|several|many|ein paar|einige|mehrere|viele|lots of|loads of|n paar) (?:big |large |small |große |kleine )?(?:glasses|bottles|cups|gläser|flaschen|becher|tassen)(?: of water| wasser| water)?",
        # what somebody else said
        r"\b(?:coach|trainer(?:in)?|plan|ziel|goal|target)(?: (?:said|says|sagt|wanted|wants|will|meint|meinte|sagte|wollte|told me|is|was|ist|war))+(?: to drink| to be| me at)? \d{1,3}(?:[.,]\d+)?(?: ?(?:l|litres?|liters?|kgs?|kilos?|lbs?)(?![^\W_]))?(?![.,]?\d)(?: (?:by|bis|for|on|am|zum) [^\W\d_]+)?",
        # of another day than it is asked about
        r"\b(?:maybe|perhaps|hopefully|vielleicht|hoffentlich|probably|wahrscheinlich|bestimmt|then|dann) \d{1,3}(?:[.,]\d+)?(?:/10)? (?:tomorrow|morgen)(?![^\W_])",
        r"\b(?:tomorrow|morgen) (?:(?:maybe|perhaps|hopefully|vielleicht|hoffentlich|probably|wahrscheinlich|bestimmt|then|dann|a|an|ne|eine) )+\d{1,3}(?:[.,]\d+)?(?:/10)?(?![.,]?\d)",
        r"(?<=[^\W\d_] )(?:(?:yesterday|gestern)[:,]? \d{1,2}(?:[.,]\d+)?|\d{1,2}(?:[.,]\d+)? (?:yesterday|gestern))(?P<today>,? (?:and |und |but |aber )?(?:(?:today|heute)[:,]? \d{1,2}(?:[.,]\d+)?|\d{1,2}(?:[.,]\d+)? (?:today|heute))(?: so far| bisher)?)(?![.,]?\d| ?/)",
        # how old, and what was eaten or is to be
        r"\b(?:birthday|geburtstag)[^.;\n\d]{0,20}\d{1,2}(?:th|st|nd|rd|er|\.)?(?![.,]?\d)",
        r"(?<![\d.,])\d{2} (?:years old|yrs old|yo|jahre alt|jahre|years)(?![^\W_])",
        r"\b(?:today|heute|tomorrow|morgen) \d{2,3} ?(?:g|gramm|grams) (?:of )?(?:kh|carbs?|kohlenhydrate)(?:,? (?:oder|right|ok|okay|ja|yes))*(?![^\W_])",
        r"(?<![\d.,])\d{2,3} ?(?:g|gramm|grams) (?:of )?(?:kh|carbs?|kohlenhydrate) (?:today|heute|tomorrow|morgen)(?:,? (?:oder|right|ok|okay|ja|yes))*(?![^\W_])",
        rf"\b{_EATEN}(?: (?:was|were|is|war|waren|ist|sind))?[:=]? \d{{2,3}} ?(?:g|gramm|grams)(?![^\W_])",
        rf"(?<![\d.,])\d{{2,3}} ?(?:g|gramm|grams) (?:of )?{_EATEN}{_OVER}",
        # what it costs
        r"(?:[€$£] ?\d+(?:[.,]\d+)?|(?<![\d.,])\d+(?:[.,]\d+)? ?(?:€|\$|£|euros?|bucks|dollars?|quid|franken|pounds? sterling)(?![^\W_]))",
        # which day
        r"\b(?:(?:period|cycle|periode|perioden|zyklus)[ -]?)?(?:day|tag) \d{1,2}(?=\s*(?:[,;:\n)]|$))",
        r"\b(?:day|tag) \d{1,2} (?:out|vor|before|of|vom|der|des|im)\b(?: (?:the|my|der|dem|meiner|des) )?(?: ?(?:show|wettkampf|load|loading|laden|period|cycle|prep|peak week|zyklus|periode|ladephase))?",
        # what was: "82.8 (was 83.4)"; of a drink that is the answer
        r"\((?:was|from|prev\w*|yesterday|yest|gestern|vorher|war|davor|vs\.?|statt|coach said|last|gest\.?)(?: was| war| it was)?:? ?\d+(?:[.,]\d+)?(?: ?(?:kgs?|lbs?))?\)",
    )
)  # fmt: skip
#: Where the whole is told, its parts are no answers: "legs 7, upper 5, overall 6".
_OF_PARTS = Late(
    r"\b(?:legs?|arms?|upper(?: body)?|lower(?: body)?|chest|back|shoulders?|quads|glutes|abs|delts|beine?|arme?|oberkörper|unterkörper|brust|rücken|schultern?|po|bauch)(?: (?:is|are|at|a|eher|so|sind|about|like|more|only|ne|nur))*[:=]? \d{1,2}(?: ?/ ?10)?(?![.,]?\d)"
)
_BESIDE_A_LOOK = Late(
    r"\b(?:feel(?:ing)?|(?:ge)?fühl\w*)(?: (?:like|mich|wie|a|an|ne|eine|at|is|so|about|ist))*[:=]? \d{1,2}(?: ?/ ?10)?(?![.,]?\d| ?kg)"
)
_LOOK = Late(r"\b(?:look(?:s|ing)?|optik|aussehen|spiegel|mirror)\b[^,;\n.\d]{0,14}\d")
_WHOLE = Late(
    r"\b(?:overall|gesamt|insgesamt|all in all|in total|im ganzen|alles zusammen|all together|altogether|on average|im schnitt|as a whole|unterm strich)\b"
)
#: Before an hour these say that it is none: "fullness up at 7", "water at half".
_ANSWERS = Late(r"(?:full\w*|fülle|voll|water|wasser|weight|gewicht|look)(?: is| was| now)? $")

#: Of a drink the day before is told, of a look this morning.
_OF_A_DRINK = Late(r"\b(?:water|wasser|drank|drunk|getrunken|trinken|h2o|💧)[^,;.\n]*$")
_MAY_HOLD_SOME = Late(
    rf"\d|\b(?:{NUMBER_WORDS}|few|some|several|many|paar|einige|mehrere|viele|lots|loads)\b"
)

Span = tuple[int, int]


def set_aside(line: str) -> tuple[str, list[Span]]:
    """The line, as long as before, without such figures; and where they stood."""
    spans: list[Span] = []
    if not _MAY_HOLD_SOME.search(line):
        return line, spans
    parts = (_OF_PARTS,) if _WHOLE.search(line) else ()
    feeling = (_BESIDE_A_LOOK,) if _LOOK.search(line) else ()
    for pattern in (*_ASIDE, *parts, *feeling):
        for match in list(pattern.finditer(line)):
            of_today = "today" in match.groupdict()
            before = line[: match.start()]
            passed = not _OF_A_DRINK.search(before) if of_today else _ANSWERS.search(before)
            if passed or not match[0].strip():
                continue
            start, end = match.span("today" if of_today else 0)
            start += len(line[start:end]) - len(line[start:end].lstrip())
            end -= len(line[start:end]) - len(line[start:end].rstrip())
            spans.append((start, end))
            line = instead(line, start, end, "|")
    return line, spans


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


# ruff: noqa: E501 - a pattern stays on one line


_KG_PER = {"g": 0.001, "k": 1.0, "l": 0.45359237, "p": 0.45359237, "#": 0.45359237}
_MOST_KG = 3.0  # overnight, told as a difference; more is told of something else
_UNIT = r"(?:grammes?|gramm|grams?|gr|g|kilogramm|kilograms?|kilos?|kg|lbs?|pounds?|pfund|#)"
_SPELT = rf"(?:(?:{NUMBER_WORDS})?[ -]?(?:hundred|hundert)(?: and)?[ ]?(?:fifty|fünfzig)?|anderthalb|(?:ein|zwei)einhalb|{NUMBER_WORDS})"
_SAID = rf"(?:(?:an? |ein(?:en)? )?(?:quarter(?: of an?)?|viertel)|half an?|an? half|half|(?:ein |n |ne |nen? )?halbe[sn]?|{_SPELT}(?: and a half)?|an?|ein(?:en)?|nen?)"
_UNIT_SAID = r"(?:grammes?|gramm|grams?|kilos?|kilogramm|kg|pounds?|lbs?|pfund|tenths?|zehntel)"
_AMOUNT = (
    rf"(?:(?P<number>{NUMBER}) ?(?P<unit>{_UNIT})?"
    rf"|(?P<said>{_SAID}(?= )|(?=pound |kilo )) ?(?P<unit_said>{_UNIT_SAID})(?P<and_half> and a half| und ein halbes| (?:und )?einhalb)?"
    rf"|(?:zero |null |nought )?(?:point|komma|comma|punkt) (?P<tenth>[1-9]|{NUMBER_WORDS}))"
)
_DOWN = r"less|lighter|lower|down|below|under|weniger|leichter|runter|drunter|unter|weg|off|abgenommen|verloren"
_UP = r"more|heavier|higher|up|above|over|mehr|schwerer|rauf|drüber|über|drauf|hoch|zugenommen"
_THAN = r"(?:than|from|on|vs\.?|versus|compared (?:to|with)|since|as|als|gegenüber|im vergleich zu|zu|seit|wie) "
_DAY_BEFORE = r"(?:yesterday(?:'s)?|the day before|gestern)(?: morning|'s)?(?: weight)?"
_OVER_THE_OTHER = r"(?![^\W_]|')"
_ABOUT = (
    r"(?:(?:about|around|roughly|like|ca\.?|circa|etwa|ungefähr|so|rund|just|nur|genau|exactly) )*"
)
_SINCE_YESTERDAY = (
    Late(
        rf"(?<![\d.,]){_ABOUT}{_AMOUNT} (?P<way>{_DOWN}|{_UP}) (?:{_THAN})?{_DAY_BEFORE}{_OVER_THE_OTHER}"
    ),
    Late(
        rf"\b(?P<way>down|lost|minus|up|gained|plus|runter|rauf)(?: by| um| another)? {_ABOUT}{_AMOUNT} (?:overnight|over night|über nacht){_OVER_THE_OTHER}"
    ),
    Late(rf"(?<![^\s,;(])(?P<way>[-+]) ?{_AMOUNT} (?:{_THAN}){_DAY_BEFORE}{_OVER_THE_OTHER}"),
    Late(
        rf"\b(?P<way>down|lost|minus|up|gained|plus|runter|rauf)(?: by| um| another)? {_ABOUT}{_AMOUNT} {_THAN}{_DAY_BEFORE}{_OVER_THE_OTHER}"
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
_ANY_FIGURE = Late(rf"\d|\b(?:{NUMBER_WORDS}|half|an?|ein\w*|halb\w*)(?![^\W_])")
_WAYS_DOWN = frozenset(f"{_DOWN}|lost|dropped|minus|abgenommen|-".split("|"))
_MOST_FULL = 10
_SCORE_DOWN = frozenset({"-", "down", "less", "lower", "weniger", "runter", "niedriger"})
_SCORE_MOVED = Late(
    r"\b(?:fullness|full|fülle|voll)(?: is| ist|[:=])? ?(?:(?P<sign>[-+]) ?(?P<sign_by>[1-3])"
    rf"|(?P<by>{NUMBER_WORDS}|[1-3]|an?|ein(?:en)?) (?:points? |punkte? |notch )?(?P<way>up|down|more|less|higher|lower|mehr|weniger|rauf|runter|höher|niedriger))"
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
            return instead(line, *match.span()), ""
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
        return instead(line, match.start(), match.end(), figure), match[0].strip()
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
    return instead(line, *match.span(), "|"), doubt


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
