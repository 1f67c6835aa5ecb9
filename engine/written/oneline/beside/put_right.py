"""Figures that their writer takes back: "9 lol jk 6", "85.7 ... 58.7 I mean", "60.0 not 60.2".

What was taken back is blanked, so that what was meant stands where it stood. A figure told twice counts
once, and of several weighings the one that is drawn from them ("57.5 / 57.6 / 57.5, so 57.5").
"""

# ruff: noqa: E501 - a pattern stays on one line
from __future__ import annotations

import re

from engine.written.late import Late
from engine.written.oneline.report import Known
from engine.written.oneline.tokens.digits import rough
from engine.written.oneline.tokens.numbers import N, in_digits, instead, rewritten
from engine.written.units.amounts import VOLUME_WORDS

_OVER = r"(?![^\W_]|')"
_TAKES_BACK = (
    r"(?:no+|nope|wait|sorry|sry|oops+|whoops|ups|uups|upsi|jk|joking|kidding|just kidding|i mean|i meant|meant|rather|actually|make (?:that|it)|scratch that|"
    r"correction|typo|definitely|nein|quatsch|nee+|moment|spaß|spass|scherz|witz|halt|stop+|mein ich|meine ich|ich mein(?:e|te)?|korrektur|korrigiere|doch|eigentlich|"
    r"vertippt|tippfehler|falsch|wrong|verschrieben|verlesen|misread|mistyped|my bad|besser gesagt|vielmehr)"
)
_IDLE = (
    r"(?:lol|lmao|haha(?:ha)*|hehe|hihi|xd|ugh|argh|boah|oh|ah|ach|äh+m?|öh|uh+m?|um|erm?|hm+|thumbs?|fingers?|daumen|brille|glasses|fat|dicke|it'?s|its|is|was|war|ist|an?|the|just|only|"
    r"that'?s|that|this|so|also|then|like|really|damn|shit|mist|verdammt|hab|mich|ich|i|des|das|es|eine?|ne|sagen|should be|should have been|soll|sollte|heißen|sein|on a good day|yeah|ja|yes|na|naja|und|and|but|aber|"
    r"honestly|ehrlich|honest|tbh|say|call|eher|more|lieber|better|well|probably|wohl|mehr|look|optik|full|fullness|fülle|water|wasser|for real|im ernst|seriously|ernsthaft)"
)
_UNIT = rf"(?: ?(?:kgs?|kilos?|lbs?|pounds?|{VOLUME_WORDS}|(?:/|out of|of|von|aus) ?10){_OVER})?"
_GAP = r"[ ,;.:!*()\-~'\"]"
_ANEW = Late(
    rf"(?P<old>{N})(?P<unit>{_UNIT})(?P<gap>{_GAP}+(?:{_IDLE}{_OVER}{_GAP}*)*?{_TAKES_BACK}{_OVER}{_GAP}*(?:(?:{_IDLE}|{_TAKES_BACK}){_OVER}{_GAP}*)*)(?=(?P<new>{N})(?P<unit_new>{_UNIT}))"
)
_SAID_BEHIND = Late(
    rf"(?P<old>{N}){_UNIT}[ ,;.\-/]+(?P<new>{N})(?P<behind>{_UNIT},? ?(?:mein(?:e|te)? ich|i mean|i meant|ich mein(?:e|te)?|sorry|natürlich|of course|obviously)){_OVER}"
)
#: These alone take back a score or a drink only where a word or a scale says what it is.
_BARELY = frozenset({"no", "nein", "ne", "nee", "doch", "wait", "moment", "eigentlich", "actually"})
_LABELLED = Late(
    r"[^\W\d_][:=]? *(?:(?:prob\w*|about|maybe|ca\.?|so|a|ne|eher|wohl|is|was|war|ist) *)*$"
)
#: "weight? 62.8": who asks themselves and answers.
_SELF_ASKED = Late(
    rf"(?P<label>\b(?:look|weight|water|sleep|full(?:ness)?|scale|optik|gewicht|wasser|schlaf|fülle|voll|waage|getrunken|drank|form))\?(?P<gap> *)(?={N})"
)
_STONES_BEFORE = Late(r"\d ?st(?:ones?)? ?(?:and )?$")
_CONFIRMED = Late(
    rf"(?P<old>{N}){_UNIT}[ ,;?.!()]+(?:yes|yeah|yep|yup|ja|jo|jap|genau|correct|right|really|wirklich|stimmt)[ ,;.!:]*(?=(?P<new>{N}))"
)
#: By how much a score moved, before what it is now: "look +1 so 7".
_MOVED_TO = Late(
    rf"(?<![\d\w])[-+] ?[1-3](?: points?| punkte?)?,? *(?:so|also|=|->|makes|macht|to|auf|now|jetzt)+,? *(?=(?P<new>{N}))"
)
#: "fullness went from 6 yesterday to 7 today": what it was is told besides.
_FROM_YESTERDAYS = Late(
    rf"\b(?:(?:went|gone|came|up|down|hoch|rauf|runter|ging) )*(?:from|von) {N} (?:yesterday|gestern),? (?:up |down )?(?:to|auf) (?=(?P<new>{N}))"
)
_SO_A_SCORE = Late(
    rf"(?<=[^\W\d_] )(?:so|also|hence|daher|drum|deshalb),? +(?=(?P<new>{N})(?:/10)?\s*(?:[,;\n/)]|\.(?!\d)|$))"
)
_PERCENT = Late(
    r"(?P<lead>\b(?:full(?:ness)?|fülle|voll|prall(?:heit)?|look|optik)(?: is| ist)?[:=]? *)(?P<ten>10|[1-9])0 ?%"
)
_NOT_THIS = Late(
    rf"(?P<new>{N})(?P<unit>{_UNIT})(?P<out>,? *(?:not|nicht|nich|net|ned|nöd|und nicht|and not) +(?P<old>{N}){_UNIT}(?:,? *(?:that|which|das|des|dies) (?:was|war)[^,;.\n\d]*|,? *(?:like|as|wie)[^,;.\n\d]*)?)"
)
_SO = Late(
    rf"\b(?:so|also|call it|say|sagen wir|nehm(?:en)?(?: wir)?|nehme|nimm|take|use|log|median|mostly|meistens) *(?P<it>{N})"
)
_CLAUSE_END = Late(r"[,;!?()\n]|\.(?!\d)|$")
_LEAST_WEIGHT = 30.0
_MOST_SCORE = 15.0
_MOST_FULL = 10
_NEAR, _ONE_MORNING = 0.05, 0.02


def put_right(line: str, known: Known) -> str:
    """The line, as long as before, without the figures that were taken back or told before."""
    line, _said = rewritten(
        line, known, (_SELF_ASKED, lambda match: f"{match['label']}:{match['gap']}")
    )
    for _ in range(3):  # "5, no, 4, no, definitely 5"
        before = line
        line, _said = rewritten(line, known, (_ANEW, lambda match: _anew(match, known)))
        if line == before:
            break
    line, _said = rewritten(
        line,
        known,
        (_SAID_BEHIND, lambda match: _said_behind(match, known)),
        (_NOT_THIS, _not_this),
        (_CONFIRMED, _confirmed),
        (_FROM_YESTERDAYS, _of_a_score),
        (_MOVED_TO, _of_a_score),
        (_SO_A_SCORE, _of_a_score),
    )
    return _without_told_twice(line, known)


def in_tenths(line: str, known: Known) -> tuple[str, str]:
    """The line with "fullness 60 %" as 6 of 10, and the words that said so."""
    line, said = rewritten(line, known, (_PERCENT, lambda match: f"{match['lead']}{match['ten']}"))
    return line, " / ".join(said)


def _confirmed(match: re.Match[str]) -> str | None:
    return "" if rough(match["old"]) == rough(match["new"]) else None


def _of_a_score(match: re.Match[str]) -> str | None:
    return "" if 1 <= rough(match["new"]) <= _MOST_FULL else None


def _anew(match: re.Match[str], known: Known) -> str | None:
    """Blanks for what was taken back; None where the second is another answer."""
    old, new = rough(match["old"]), rough(match["new"])
    if _STONES_BEFORE.search(match.string[: match.start()]):
        return None  # of pounds behind the stones no half is put right
    units = {match["unit"].strip(), match["unit_new"].strip()} - {""}
    if len(units) > 1 or (match["unit_new"] and not match["unit"] and not _same_digits(match)):
        return None
    if not (_is_one_answer(old, new) or _slipped(match, known)):
        return None
    words = set(re.findall(r"[^\W\d_]+", match["gap"]))
    named = match["unit"].strip() or _LABELLED.search(match.string[: match.start()])
    if max(old, new) <= _MOST_SCORE and not named and words <= _BARELY:
        return None  # "60.2 5 3.5 no 4.5" may deny something else
    return ""


def _is_one_answer(old: float, new: float) -> bool:
    if min(old, new) >= _LEAST_WEIGHT:
        return abs(old - new) <= 0.1 * max(old, new)
    return max(old, new) <= _MOST_SCORE


def _slipped(match: re.Match[str], known: Known) -> bool:
    """ "06.7 ugh 60.7": the same digits in another order, of which only the second is a weight."""
    return _same_digits(match) and _is_near(rough(match["new"]), known)


def _same_digits(match: re.Match[str]) -> bool:
    old, new = (sorted(re.sub(r"\D", "", match[key])) for key in ("old", "new"))
    return old == new


def _said_behind(match: re.Match[str], known: Known) -> str | None:
    old, new = rough(match["old"]), rough(match["new"])
    if not _slipped(match, known) and not (min(old, new) >= _LEAST_WEIGHT and _is_near(new, known)):
        return None
    at = match.start("new") - match.start()
    text = match[0]
    return f"{' ' * at}{text[at : match.start('behind') - match.start()]}"


def _not_this(match: re.Match[str]) -> str | None:
    old, new = rough(match["old"]), rough(match["new"])
    if not _is_one_answer(old, new) or (max(old, new) <= _MOST_SCORE and not match["unit"].strip()):
        return None
    return match[0][: match.start("out") - match.start()]


def _is_near(number: float, known: Known) -> bool:
    """Whether it can be this person's weight, in either of the two units of scales."""
    last = known.weight_kg or known.on_file_kg
    return last is not None and any(abs(number * per - last) <= _NEAR * last for per in (1, 0.4536))


def _without_told_twice(line: str, known: Known) -> str:
    digits = in_digits(line, known.language)
    found = [
        match for match in re.finditer(N, digits)
        if rough(match[0]) >= _LEAST_WEIGHT and "." in match[0].replace(",", ".")
        and _is_near(rough(match[0]), known)
    ]  # fmt: skip
    for so in _SO.finditer(digits):
        before = [one for one in found if one.start() < so.start()]
        same = [one for one in before if rough(one[0]) == rough(so["it"])]
        if same and max(rough(one[0]) for one in before) <= (1 + _ONE_MORNING) * rough(so["it"]):
            for one in before:
                line = instead(line, *one.span())
            return re.sub(r"^[ ,/;]+", lambda blank: " " * len(blank[0]), line)
    for place, one in enumerate(found):
        if not any(rough(one[0]) == rough(other[0]) for other in found[:place]):
            continue
        end = _CLAUSE_END.search(digits, one.end())
        ends = [mark.end() for mark in _CLAUSE_END.finditer(digits[: one.start()])]
        start, stop = (ends[-2] if len(ends) > 1 else 0), end.start() if end else len(line)
        if re.search(r"\d", digits[start : one.start()] + digits[one.end() : stop]):
            start, stop = one.span()
        line = instead(line, start, stop)
        digits = in_digits(line, known.language)
    return line
