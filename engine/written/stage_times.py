"""Word of when the classes of a day are on, as athletes and coaches type it: "two classes, 15:00 and
19:30", "prejudging erst um 17 uhr", "they call us in 20 min", "second class 30 min late".

Read only where every word of it is understood: whatever else is said goes on to a person.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import time

from engine.written.delays import parse_delay
from engine.written.late import Late
from engine.written.units import ParseError, parse_clock

LAST = -1
EARLIEST = 7  # o'clock: an hour before it, told without its half of the day, is the afternoon's
_HALF_OF_DAY = Late(r"[ap]\.?m")


@dataclass(frozen=True, slots=True)
class StageWord:
    """What is said of the classes. `which` is the class that is meant, from 1, or LAST; 0 where that is
    left open. One of the others says what of it: `clocks` (of that class, or of all, in order),
    `in_min` from now, `by_min` later (earlier where negative), or that it is `off`.
    """

    which: int = 0
    clocks: tuple[time, ...] = ()
    in_min: int | None = None
    by_min: int | None = None
    off: bool = False


_ORDINALS = {
    1: r"(?:first|1st|erste[nrs]?|1\.)",
    2: r"(?:second|2nd|zweite[nrs]?|2\.)",
    3: r"(?:third|3rd|dritte[nrs]?|3\.)",
    4: r"(?:fourth|4th|vierte[nrs]?|4\.)",
    LAST: r"(?:last|final|letzte[nrs]?)",
}
_CLASS = (
    r"(?:class(?:es)?|category|categories|division|rounds?|klassen?|kategorien?|runden?|durchgang)"
)
_NUMBERS = r"(?:two|three|four|2|3|4|zwei|drei|vier)"
#: What names one class. Of a day with one round more, the first judging and the finals are these.
_WHICH = (
    *((number, Late(rf"\b{said} {_CLASS}\b")) for number, said in _ORDINALS.items()),
    *((number, Late(rf"\b{_CLASS} {number}\b")) for number in (1, 2, 3, 4)),
    (1, Late(r"\b(?:pre-?judging|vorentscheid(?:ung)?|vorwahl|vorrunde)\b")),
    (LAST, Late(r"\b(?:finals?|finale|finalrunde|abendshow|night show|evening show)\b")),
)
_OF_STAGE = Late(
    rf"\b(?:{_CLASS}|on ?stage|stage|bühne|auftritt|dran|show|wettkampf|shooting|shoot|contest|"
    r"competition|we(?:'re| are) on|i(?:'m| am) on|called|call us|gerufen|aufgerufen|rufen|holen)\b"
)
_CLOCK = Late(
    r"\b(?:\d{1,2}(?:[:.h]| ?uhr ?)\d{2}(?: ?uhr)?(?: ?[ap]\.?m\b\.?)?|"
    r"\d{1,2} ?(?:[ap]\.?m\b\.?|uhr\b)|noon|midday)|"
    r"(?<=\bat )\d{1,2}\b|(?<=\bum )\d{1,2}\b|(?<=\bto )\d{1,2}\b|(?<=\bauf )\d{1,2}\b"
)
_IN = Late(
    r"\bin (?:about |around |etwa |ca\.? |circa |rund )?(?:(?P<n>\d{1,3}) ?(?P<unit>minutes?|mins?|"
    r"minuten|m|hours?|h|stunden?|std)|(?P<half>half an hour|einer halben stunde))\b"
)
_OFF = Late(
    r"\b(?:is|are|was|has been|got|ist|sind|wurde|fällt|fallen)? ?(?:off|cancelled|canceled|dropped|"
    r"scrapped|abgesagt|gestrichen|aus(?:gefallen)?)\b"
)
_NOT_BEFORE = Late(r"\b(?:not before|nicht vor)\b")
#: What may stand beside all that and says nothing of its own.
_BESIDE = Late(
    r"(?:i|i'm|i've|we|we're|we've|it|it's|they|they're|they've|are|am|is|was|has|have|had|got|my|our|"
    r"the|a|on|at|and|then|now|only|just|first|from|to|until|up|forward|back|moved|pushed|"
    r"pulled|changed|shifted|starts?|starting|begins?|goes|going|go|will|be|us|me|call|calling|called|"
    r"already|today|tomorrow|sunday|saturday|time|times|new|one|so|ok|okay|hey|fyi|heads|both|well|more|another|further|mehr|weitere|noch|"
    r"ich|ich bin|wir|hab|habe|haben|hat|es|sie|die|der|das|den|dem|uns|mich|mein|meine|meiner|meinen|"
    r"um|und|dann|jetzt|erst|nur|ab|gegen|auf|bis|zu|zur|in|im|am|ist|sind|bin|wird|werden|"
    r"wurde|wurden|verlegt|verschoben|vorgezogen|geschoben|geändert|beginnt|startet|geht|los|schon|"
    r"doch|heute|morgen|sonntag|samstag|uhr|uhrzeit|zeit|zeiten|neu|neue|nun|also|außerdem|ruft|rufen|"
    r"holen|werde|gerufen|aufgerufen|habe ich|dran|bühne|auftritt|show|wettkampf|shooting|stage|"
    rf"onstage|shoot|contest|competition|{_CLASS}|{_NUMBERS})"
)
_ARTICLE = Late(r"^(?:the|my|our|die|das|meine|unsere)\s+")
_WORD = Late(r"[^\W_]+(?:'[^\W_]+)?")


def parse_stage_word(text: str, language: str = "en") -> StageWord | None:
    """What a text says of the classes; None where it says nothing of them, or anything besides.

    `language` is what delays are understood in beside English.
    """
    said = _plain(text)
    if "?" in said:
        return None
    which, rest = _which(_NOT_BEFORE.sub("", said))
    if which:
        by_min = parse_delay(_ARTICLE.sub("", rest), language)
        if by_min is not None:
            return StageWord(which, by_min=by_min)
        if _OFF.search(rest) and _says_nothing(_OFF.sub(" ", rest)):
            return StageWord(which, off=True)
    if not which and not _OF_STAGE.search(rest):
        return None
    coming = _IN.search(rest)
    if coming is not None:
        beside = f"{rest[: coming.start()]} {rest[coming.end() :]}"
        return StageWord(which, in_min=_minutes(coming)) if _says_nothing(beside) else None
    return _by_the_clock(which, rest)


def may_be_of_stage(text: str) -> bool:
    """Whether anything in it says a class or a stage; where nothing does, it is no such word."""
    which, rest = _which(_plain(text))
    return bool(which or _OF_STAGE.search(rest))


def _plain(text: str) -> str:
    return " ".join(text.lower().replace("’", "'").split()).strip(" .!")


def clocks_alone(text: str) -> tuple[time, ...]:
    """Several times of day with nothing else beside them ("3pm and 7.30pm"), or one, however written.

    Raises `ParseError` where it is neither.
    """
    said = _plain(text)
    several = [match[0] for match in _CLOCK.finditer(said)]
    if len(several) < 2 or not _says_nothing(_CLOCK.sub(" ", said)):
        return (parse_clock(text),)
    return tuple(map(_clock, several))


def _which(said: str) -> tuple[int, str]:
    """The class that is named, and the text without such names; 0 where none is, or each in order."""
    found = [(match.start(), number) for number, name in _WHICH for match in name.finditer(said)]
    rest = said
    for _, name in _WHICH:
        rest = name.sub(" class ", rest) if len(found) > 1 else name.sub(" ", rest)
    named = [number for _, number in sorted(found)]
    if len(named) == 1:
        return named[0], " ".join(rest.split())
    in_order = named == sorted(named, key=lambda number: number if number > 0 else len(_WHICH))
    return 0, " ".join(rest.split()) if in_order else ""


def _minutes(coming: re.Match[str]) -> int:
    if coming["half"]:
        return 30
    return int(coming["n"]) * (60 if coming["unit"][0] in "hs" else 1)


def _by_the_clock(which: int, rest: str) -> StageWord | None:
    found = list(_CLOCK.finditer(rest))
    if not found or not _says_nothing(_CLOCK.sub(" ", rest)) or (which and len(found) > 1):
        return None
    try:
        clocks = tuple(map(_clock, (match[0] for match in found)))
    except ParseError:
        return None
    return StageWord(which, clocks=clocks)


def _clock(said: str) -> time:
    """The time of day; nobody is on stage at three in the morning, and "3:15" is the afternoon's."""
    at = parse_clock(said)
    afternoon = 1 <= at.hour < EARLIEST and said[0] != "0" and not _HALF_OF_DAY.search(said)
    return at.replace(hour=at.hour + 12) if afternoon else at


def _says_nothing(beside: str) -> bool:
    return all(_BESIDE.fullmatch(word) for word in _WORD.findall(beside))
