"""Figures of something else, with their words: at what hour, how fast the heart, how long the waist.

They are set aside before the answers are read, so that none is taken for one, and stay in the note.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

from engine.written.late import Late
from engine.written.oneline.tokens.numbers import SMALL_NUMBERS

_OVER = r"(?![^\W_]|')"
_SMALL = "|".join(sorted(SMALL_NUMBERS, key=len, reverse=True))
_HOUR = rf"(?:\d{{1,2}}(?:[:.]\d\d)?|{_SMALL})(?: ?(?:[ap]\.?m\.?|o'?clock|uhr|ish)){{0,2}}{_OVER}"
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
    rf"\d|\b(?:{_SMALL}|few|some|several|many|paar|einige|mehrere|viele|lots|loads)\b"
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
            line = f"{line[:start]}|{' ' * (end - start - 1)}{line[end:]}"
    return line, spans
