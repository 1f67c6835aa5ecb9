"""Two weights of one morning, of which the words say which counts: "66.9 in clothes, 66.3 without".

What is beside it ("before the loo", "reweighed", "nimm danach") is read together with the figures; the one
that counts stays in the line, and the words are said back. Where nothing tells, both stay, to be asked about.
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from engine.written.late import Late
from engine.written.oneline.report import Doubt, DoubtCode, Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import instead
from engine.written.units import WeightUnit

_NEAR = 0.05  # of the last weight
_SAME_KG = 0.02
_LONGEST_SAID = 80  # characters of what is said back
_KG_PER_LB, _LB_PER_STONE = 0.45359237, 14
_OVER = r"(?![^\W_]|')"
_CANDIDATE = Late(
    r"(?<![\d.,/:+-])(?P<stones>\d{1,2}) ?(?:stones?|st)\.? ?(?P<pounds>\d{1,2}(?:\.\d)?)(?: ?(?:lbs?|pounds?))?(?![\d]|[.,/:]\d|[^\W_])"
    r"|(?<![\d.,/:+-])\d{2,3}(?:[.,]\d{1,2})?(?![\d]|[.,]\d|[/:]\d)(?P<unit> ?(?:kgs?|kilos?|lbs?|pounds?)(?![^\W_]))?"
    r"(?! ?(?:litres?|liters?|l|ml|oz|ounces?|g|gramm|grams?|%|cm|mm|steps|schritte|h|std|hours?|hrs?|min\w*|bpm|kcal|carbs?|kh|st|stones?|days?|tage?|reps?|x|uhr|[ap]m|°)(?![^\W_]))"
)
_BREAK = Late(
    r"[,;.()\n|!?]+(?!\d)|(?<=stimmt nicht)(?=\s)|(?<=is wrong)(?=\s)|(?<=war falsch)(?=\s)|(?<=\s)(?:--?|and|und|but|aber|though|jedoch)(?=\s)"
    rf"|(?<=\s)(?=(?:then|dann|again|reweighed|re-weighed|danach|nochmal|now|jetzt|today|heute?|afterwards|anschließend|not|nicht|instead of|rather than|statt|anstatt){_OVER})"
)
_LIGHTER_THEN = Late(
    r"\b(?:without|ohne|pyjamas|pjs|schlafanzug|pyjama|wearing|loo|toilet|bathroom|pee(?:d|ing)?|wee(?:d|ing)?|poo(?:ed|ing|ped)?|bladder|klo|wc|toilette|pinkeln|gepinkelt|pipi|blase|cloth\w*|dressed|naked|nude|barefoot|robe|jeans|shoes|hoodie|shorts|kit|towel|joggers|joggings?|leggings|t-?shirt|trunks|socks|boots|jacket|jogginghose|pulli|shirt|handtuch|jacke|hose|schuhe|socken|sachen|undressed|klamotten|kleidung|angezogen|bekleidet|nackt|ausgezogen|bademantel|unterwäsche|underwear)\b"
)
_NEXT_ONES = Late(
    r"(?:yesterday|gestern|last night|before)(?: morning)?(?: it)? (?:was|war|waren)\s*$|[:=]\s*$"
)
_MEAL = Late(
    r"\b(?:breakfast|food|eating|coffee|drinking|training|workout|gym|frühstück|essen|kaffee|trinken|sport)"
)
_EATEN = Late(r"\b(?:breakfast|food|eating|coffee|drinking|frühstück|essen|kaffee|trinken)")
_BAD = Late(
    r"\b(?:with (?:my |the )?(?:clothes|clothing|kit|shoes|robe|jeans|hoodie|trousers|pyjamas|pjs)|w(?:ith|/)? ?(?:the |my )?(?:robe|clothes)|clothed|dressed|fully clothed|clothes on|robe on|shoes on|in (?:my )?(?:\w+ )?clothes|before|pre|first(?: try| time| one)?|erste[nrs]?|at first|initially|yesterday|last night|last week|not|instead of|rather than|tomorrow|aiming|aim|goal|full bladder|(?:sister|brother|friend|mum|mom|dad|wife|husband|partner|girlfriend|boyfriend|mate|coach|gym|hotel|neighbou?r|nachbar|oma|opa)'?s(?: scales?)?|sister|brother|friend|mum|mom|dad|wife|husband|girlfriend|boyfriend|schwester|bruder|freundin|freund|mama|papa"
    r"|mit (?:klamotten|kleidung|bademantel|schuhen|hose|kleidern|gwand)|angezogen|bekleidet|in klamotten|in kleidung|vor|vorm|davor|vorher|zuerst|erst|zunächst|gestern|vorgestern|abends?|evening|at night|nachts|letzte woche|ziel|soll|nicht|statt|anstatt|volle[rn]? blase"
    rf"){_OVER}"
)
_GOOD = Late(
    r"\b(?:without|w/o|mine|my own|my usual|meine eigene|meine(?= (?:sagt|zeigt|sagte|zeigte|waage))|naked|nude|barefoot|undressed|stripped|in (?:my )?(?:underwear|undies|pants|boxers)|in the morning|after|afterwards|post|reweighed|re-weighed|weighed again|again|second(?: try| time)?|then|now|this morning|this am|today|no clothes"
    r"|morgens|früh|ohne|nackt|ausgezogen|in unterwäsche|in unterhose|danach|nach|nachm|nochmals?|noch mal|nachgewogen|zweite[rsn]?(?: mal| messung| wiegung)?|heute?|heut|jetzt|dann|anschließend|nackig"
    rf"){_OVER}"
)
_CHOICE = Late(
    r"(?:so |i'?ll |i |ich |also )*\b(?:take|use|using|count|counts|trust|going with|going by|go with|go by|log|nimm|nehm\w*|zähl(?:t|en|e)?|gilt|schreib|rechne mit)(?: the| den| die| das| dem| lieber| mal| bitte| doch| wir| please)* (?P<what>(?:[^,;\n!?()]|,(?=\d)){1,28}?)(?=[;\n!?()]|,(?!\d)|\.(?!\d)|$)"
    r"|\b(?P<which>the )?(?P<one>first|second|last|latter|lower|higher|zweite[sr]?|letzte[sr]?|erste[sr]?|niedrigere|höhere) (?:one |wert )?(?:counts|zählt|gilt)"
)
_OF_ANOTHER_DAY = Late(
    r"\b(?:yesterday|last night|last week|tomorrow|aiming|aim|goal|gestern|vorgestern|letzte woche|ziel|soll)"
)
_ONE_AND_THE_OTHER = Late(
    r"\b(?:one|eine|first|erste)\b[^;\n]*\d[^;\n]*\b(?:other|andere|second|zweite)\b|\b(?:scale|waage) 1\b[^;\n]*\b(?:scale|waage) 2\b"
)
_RANGE_BETWEEN = Late(r"\s*(?:-|–|to|bis|or|oder|/|=)\s*")
_HOUR = Late(r"\b(?:um|at|gegen|around) \d{1,2}(?![.,:\d])(?: ?uhr| ?[ap]m)?")
_NUMBERED = Late(r"\b(?:scale|waage) [12]\b")
_FIRST = Late(r"\b(?:first|1st|erste[nrs]?)\b")
_SECOND = Late(r"\b(?:second|2nd|zweite[nrs]?)\b")
_LAST = Late(r"\b(?:last|latter|later|latest|letzte[nrs]?|spätere[nrs]?)\b")
_LEAST = Late(r"\b(?:lower|lowest|lighter|niedriger\w*|niedrigste\w*|leichter\w*|kleiner\w*)\b")
_MOST = Late(r"\b(?:higher|highest|heavier|höher\w*|höchste\w*|schwerer\w*)\b")
_SAYS_NOTHING = frozenset(
    {"the", "one", "den", "die", "das", "von", "from", "und", "and", "wert", "value", "uhr"}
)


@dataclass(slots=True)
class _Weighing:
    start: int
    end: int
    kg: float
    before: tuple[int, int] = (0, 0)  # the words that belong to it
    after: tuple[int, int] = (0, 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Settled:
    """`line` as long as before, with the weighing that counts alone; `said` are the words that told it,
    `apart` where the weight of another day stood, `doubt` where both may be meant.
    """

    line: str
    said: str = ""
    apart: tuple[tuple[int, int], ...] = ()
    doubt: Doubt | None = None


def settled(line: str, known: Known) -> Settled:
    """Which of several weights of one morning counts."""
    if "=" in line or known.weight_kg is None:
        return Settled(line=line)
    choice = _CHOICE.search(line)
    found = _weighings(line, known)
    if len({round(one.kg, 2) for one in found}) < 2 or _stays_open(line, found):
        return Settled(line=line)
    rivals = [
        one for one in found if choice is None or not choice.start() <= one.start < choice.end()
    ]
    if not rivals:
        return Settled(line=line)
    _share_out_words(line, rivals, choice.start() if choice else len(line))
    chosen = _by_choice(line, rivals, choice, known) if choice else _by_words(line, rivals)
    if chosen is None:
        one_and_other = choice is None and len(rivals) == 2 and _ONE_AND_THE_OTHER.search(line)
        return _asked(line, rivals) if one_and_other else Settled(line=line)
    return _with_one(line, rivals, chosen, choice)


def _weighings(line: str, known: Known) -> list[_Weighing]:
    last = known.weight_kg or known.on_file_kg or 0.0
    found = []
    for match in _CANDIDATE.finditer(line):
        kg = _kg(match, known)
        if abs(kg - last) <= _NEAR * last:
            found.append(_Weighing(match.start(), match.end(), kg))
    return found


def _kg(match: re.Match[str], known: Known) -> float:
    if match["stones"]:
        return (int(match["stones"]) * _LB_PER_STONE + float(match["pounds"])) * _KG_PER_LB
    unit = (match["unit"] or "").strip()
    pounds = unit[:1] in ("l", "p") if unit else known.weight_unit is WeightUnit.LB
    return rough(match[0].removesuffix(match["unit"] or "")) * (_KG_PER_LB if pounds else 1.0)


def _stays_open(line: str, found: Sequence[_Weighing]) -> bool:
    """Whether two of them are the ends of a range, or one weight in two units."""
    return any(
        _RANGE_BETWEEN.fullmatch(line[one.end : other.start]) for one, other in pairwise(found)
    )


def _share_out_words(line: str, rivals: Sequence[_Weighing], end: int) -> None:
    """Which words between two weighings belong to which of them."""
    first, last = rivals[0], rivals[-1]
    breaks = [match.end() for match in _BREAK.finditer(line[: first.start])]
    first.before = (breaks[-1] if breaks else 0, first.start)
    follow = _BREAK.search(line[last.end :])
    last.after = (last.end, min(end, last.end + follow.start() if follow else len(line)))
    leading = bool(
        _BAD.search(line[slice(*first.before)]) or _GOOD.search(line[slice(*first.before)])
    )
    for one, other in pairwise(rivals):
        cuts = list(_BREAK.finditer(line[one.end : other.start]))
        if cuts:
            one.after = (one.end, one.end + cuts[-1].start())
            other.before = (one.end + cuts[-1].end(), other.start)
        elif leading or _NEXT_ONES.search(line[one.end : other.start]):
            one.after, other.before = (one.end, one.end), (one.end, other.start)
        else:
            one.after, other.before = (one.end, other.start), (other.start, other.start)


def _words_of(line: str, one: _Weighing) -> str:
    return f"{line[slice(*one.before)]} {line[slice(*one.after)]}"


def _by_words(line: str, rivals: Sequence[_Weighing]) -> _Weighing | None:
    """The one weighing that its words speak for, or against which none speak."""
    said = [_words_of(line, one) for one in rivals]
    fed = any(_MEAL.search(words) for words in said)
    if not fed and any(_LIGHTER_THEN.search(words) for words in said):
        return min(rivals, key=lambda one: one.kg)  # nobody is heavier without
    scores = []
    for words in said:
        bad, good = bool(_BAD.search(words)), bool(_GOOD.search(words))
        if fed and re.search(r"\b(?:before|vor|vorm|after|nach|nachm|danach|davor)\b", words):
            bad, good = good, bad
        scores.append(int(good) - int(bad))
    best = max(scores)
    if scores.count(best) != 1 or not any(scores):
        return None
    chosen = rivals[scores.index(best)]
    eaten = any(_EATEN.search(words) for words in said)
    # nobody is lighter after a meal: those words were the other one's
    return None if eaten and chosen.kg > min(one.kg for one in rivals) else chosen


def _by_choice(
    line: str, rivals: Sequence[_Weighing], choice: re.Match[str], known: Known
) -> _Weighing | None:
    what = choice["what"] or choice["one"] or ""
    named = _weighings(what, known)
    if named:
        return next((one for one in rivals if abs(one.kg - named[0].kg) <= _SAME_KG), None)
    if len(rivals) > 1:
        if _FIRST.search(what):
            return rivals[0]
        if _SECOND.search(what):
            return rivals[1]
        if _LAST.search(what):
            return rivals[-1]
        if _LEAST.search(what):
            return min(rivals, key=lambda one: one.kg)
        if _MOST.search(what):
            return max(rivals, key=lambda one: one.kg)
    words = [word for word in re.findall(r"\w+", what) if word not in _SAYS_NOTHING]
    meant = [
        one for one in rivals
        if any(re.search(rf"\b{re.escape(word[:6])}", _words_of(line, one)) for word in words)
    ]  # fmt: skip
    return meant[0] if len(meant) == 1 else None


def _with_one(
    line: str, rivals: Sequence[_Weighing], chosen: _Weighing, choice: re.Match[str] | None
) -> Settled:
    first, last = rivals[0], rivals[-1]
    others = [one for one in rivals if one is not chosen]
    another_day = [one for one in others if _OF_ANOTHER_DAY.search(_words_of(line, one))]
    apart = tuple((one.before[0], one.after[1]) for one in another_day)
    said = line[first.start : last.after[1]].strip(" ,;")
    if choice and choice.start() - last.after[1] <= 2:
        said = line[first.start : choice.end()].strip(" ,;")
    out = line
    for one in rivals:
        spans = [one.before, one.after] if one is not chosen else []
        for start, end in spans:
            if not re.search(r"\d", _HOUR.sub("", line[start:end])):
                out = instead(out, start, end)
        if one is chosen:
            for pattern in (_BAD, _GOOD):
                for start, end in (one.before, one.after):
                    for match in pattern.finditer(line[start:end]):
                        out = instead(out, start + match.start(), start + match.end())
            continue
        out = instead(out, one.start, one.end)
    if choice:
        out = instead(out, choice.start(), choice.end())
        out = f"{out[: choice.start()]}|{out[choice.start() + 1 :]}"
    if len(apart) == len(others):
        said = ""
    return Settled(
        line=out, said=said[:_LONGEST_SAID], apart=tuple(_stripped(line, *span) for span in apart)
    )


def _asked(line: str, rivals: Sequence[_Weighing]) -> Settled:
    """Both stand there, and nothing says which."""
    out = line
    for one in rivals:
        for start, end in (one.before, (one.start, one.end), one.after):
            if start == one.start or not re.search(r"\d", _NUMBERED.sub("", line[start:end])):
                out = instead(out, start, end)
    out = f"{out[: rivals[0].start]}|{out[rivals[0].start + 1 :]}"
    given = " / ".join(line[one.start : one.end].strip() for one in rivals)
    options = tuple({"weight_kg": round(one.kg, 2)} for one in rivals)
    doubt = Doubt(code=DoubtCode.TWO_VALUES, answer="weight_kg", given=given, options=options)
    return Settled(line=out, doubt=doubt)


def _stripped(line: str, start: int, end: int) -> tuple[int, int]:
    while start < end and not line[start].isalnum():
        start += 1
    while end > start and not line[end - 1].isalnum():
        end -= 1
    return start, end
