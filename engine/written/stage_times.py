"""Word of when the classes of a day are on, as athletes and coaches type it: "two classes, 15:00 and
19:30", "prejudging erst um 17 uhr", "they call us in 20 min", "second class 30 min late".

Read only where every word of it is understood: whatever else is said goes on to a person.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import time

from engine.written.late import Late
from engine.written.units import ParseError, parse_clock
from engine.written.units.reading import in_one_line

_NUMBER = r"(?P<n>\d ?h ?[0-5]\d(?!\d)|\d{1,3}(?:[.,]5)?|an?|half an?|one|two|three|quarter of an?)"
_UNIT = r"(?P<unit>minutes?|mins?|m|hours?|hrs?|h)"
_AMOUNT = rf"{_NUMBER} ?{_UNIT}?(?P<half> and a half)?"
_CALLED = r"they(?:'ve| have)? (?:just )?called us(?: up)?|(?:we|i) (?:got|was|were) called(?: up)?"
_LEAD = (
    rf"(?:(?:{_CALLED}|they(?:'re| are)?|we(?:'re| are)?|it(?:'s| is)?|i'm|"
    r"(?:the |my )?(?:show|class|category)(?:'s| is)?|all|everything(?:'s| is)?) )?"
)
_GOING = r"(?:(?:run|running|going|now|about|about to be|roughly|around|some) )*"
_LATE = r"(?:late|later|behind|behind schedule|delayed|delay)"
_EARLY = r"(?:early|earlier|ahead|ahead of schedule)"
_MOVED = r"(?:up|forward|back)"
_ENGLISH = (
    Late(rf"{_LEAD}{_GOING}(?P<way>{_LATE}|{_EARLY}) (?:by )?{_GOING}{_AMOUNT}"),
    Late(rf"{_LEAD}{_GOING}{_AMOUNT} (?P<way>{_LATE}|{_EARLY})"),
    Late(
        r"(?:they(?:'ve|ve| have)? |we(?:'ve|ve| have)? been |we got |i got )?"
        r"(?:moved|pulled|brought|pushed|put) "
        rf"(?:(?:us|me|it|everything|all|my class) )?(?P<way>{_MOVED}) (?:by )?{_GOING}{_AMOUNT}"
    ),
)
_GERMAN_NUMBER = (
    r"(?P<n>\d ?h ?[0-5]\d(?!\d)|\d{1,3}(?:[.,]5)?|eine[nr]?|eine halbe|"
    r"einer halben|anderthalb|eineinhalb|zwei|drei|eine viertel|einer viertel)"
)
_GERMAN_UNIT = r" ?(?P<unit>minuten?|min|m|stunden?|std|h)?"
_GERMAN_LEAD = (
    r"(?:(?:wir sind|wir wurden|wir haben|wir|sie sind|sie haben uns|sie haben|sie|es ist|es gibt|"
    r"gibt|es|"
    r"haben|hat|(?:die|meine) (?:show|klasse) (?:ist|hat)|alles ist|ich bin|ich wurde|alles) )?"
)
_GERMAN_ABOUT = r"(?:(?:schon|jetzt|etwa|ca\.?|circa|ungefähr|rund|um|mit) )*"
_GERMAN_LATE = (
    r"(?:später|spaeter|spät|verspätet|verspaetet|verspätung|verspaetung|im verzug|verzug|"
    r"hinten|hinterher|hintendran|nach hinten|hinter plan)"
)
_GERMAN_EARLY = r"(?:früher|frueher|eher|zu früh|voraus|vorverlegt|vorgezogen|nach vorne?|vor plan)"
_GERMAN_PUT_OFF = r"(?:verschiebt|verzögert|verzoegert|verspätet|verspaetet)"
_GERMAN = (
    Late(
        rf"{_GERMAN_LEAD}{_GERMAN_ABOUT}(?P<way>{_GERMAN_LATE}|{_GERMAN_EARLY}) "
        rf"{_GERMAN_ABOUT}{_GERMAN_NUMBER}{_GERMAN_UNIT}"
    ),
    Late(
        rf"{_GERMAN_LEAD}{_GERMAN_ABOUT}{_GERMAN_NUMBER}{_GERMAN_UNIT} "
        rf"(?P<way>{_GERMAN_LATE}|{_GERMAN_EARLY})(?: (?:dran|aufgerufen|gerufen|geholt))?"
    ),
    Late(
        rf"(?:bei uns |hier )?(?:es |alles |die show )?(?P<way>{_GERMAN_PUT_OFF}) sich "
        rf"(?:bei uns |hier |alles |es |die show )*{_GERMAN_ABOUT}{_GERMAN_NUMBER}{_GERMAN_UNIT}"
    ),
)
_PATTERNS = {"en": _ENGLISH, "de": (*_ENGLISH, *_GERMAN)}
_WAY_IS_LATE = Late(rf"{_LATE}|{_GERMAN_LATE}|{_GERMAN_PUT_OFF}|back")
_WORDS = {
    "eine": 1.0, "einen": 1.0, "einer": 1.0, "eine halbe": 0.5, "einer halben": 0.5,
    "anderthalb": 1.5, "eineinhalb": 1.5, "zwei": 2.0, "drei": 3.0, "eine viertel": 0.25,
    "einer viertel": 0.25,
    "a": 1.0, "an": 1.0, "one": 1.0, "two": 2.0, "three": 3.0, "half a": 0.5, "half an": 0.5,
    "quarter of a": 0.25, "quarter of an": 0.25,
}  # fmt: skip
MOST_MINUTES = 600


def tells_of_delay(text: str, language: str = "en") -> bool:
    """Whether it is such word at all, plain or not: "late 1.5" leaves open what of."""
    return any(
        pattern.fullmatch(_plain_delay(text)) for pattern in _PATTERNS.get(language, _ENGLISH)
    )


#: "they called us early, 10 minutes earlier": said twice, the second time with the amount.
_SAID_BEFORE = Late(
    rf"(?:{_LEAD}{_GOING}(?:{_LATE}|{_EARLY})|{_GERMAN_LEAD}{_GERMAN_ABOUT}"
    rf"(?:{_GERMAN_LATE}|{_GERMAN_EARLY})(?: (?:dran|aufgerufen|gerufen|geholt))?)[,:.!]+ (?=.*\d)"
)


#: Who says so, and what comes of it: "they say we run an hour late", "20 min early, they called us".
_SAID_BY = Late(
    r"^(?:(?:ok|so|now|hey|update|and|und|jetzt|also)[,:]? )*"
    r"(?:(?:(?:they|the (?:organi[sz]ers?|host|mc|promoter|head judge))(?:'re| are)? (?:just |now )?"
    r"(?:say|says|said|saying|told (?:us|me)|announced?)(?: that)?|(?:i|we) (?:just )?heard(?: that)?|"
    r"apparently|looks like|es hei(?:ß|ss)t|hei(?:ß|ss)t es|(?:die|sie) (?:sagen|meinen)|"
    r"anscheinend|angeblich)[,:]? )?"
)
_COMES_OF_IT = Late(
    r"(?: again| now| jetzt| wieder)?"
    r"(?:,? (?:they say|they said|apparently|sagen (?:sie|die)|sagt man|hei(?:ß|ss)t es|angeblich|"
    r"anscheinend))?"
    r"(?:[,;.:] (?:they(?:'ve| have)?|sie haben) [^\d,.;]*"
    r"\b(?:called|moved|gerufen|aufgerufen)\b[^\d,.;]*)?$"
)


def _plain_delay(text: str) -> str:
    plain = in_one_line(text).rstrip(".!")
    plain = _COMES_OF_IT.sub("", _SAID_BY.sub("", plain))
    before = _SAID_BEFORE.match(plain)
    return plain[before.end() :] if before is not None else plain


def parse_delay(text: str, language: str = "en") -> int | None:
    """Minutes later (negative: earlier), or None where it is not plainly and wholly such word.

    `language` is what is understood beside English. A bare number is minutes. "late 45", "running an
    hour behind", "1.5 h late", "20 min early".
    """
    said = _plain_delay(text)
    for pattern in _PATTERNS.get(language, _ENGLISH):
        match = pattern.fullmatch(said)
        if match is None:
            continue
        found = match.groupdict()
        number, unit = found["n"], found["unit"] or ""
        spelt = number in _WORDS
        if "h" in number and not spelt:  # "1h15"
            hours, minutes_more = number.split("h")
            number, unit = f"{int(hours) * 60 + int(minutes_more)}", "min"
        moved = re.fullmatch(_MOVED, found["way"]) is not None  # "moved up 10" may be kilos
        if not unit and (spelt or moved or not number.isdecimal()):
            return None  # "late 1.5" may be hours: asked for, not taken for two minutes
        amount = _WORDS[number] if spelt else float(number.replace(",", "."))
        amount += 0.5 if found.get("half") else 0
        minutes = round(amount * (60 if unit.startswith(("h", "s")) else 1))
        if not 0 < minutes <= MOST_MINUTES:
            return None
        return minutes if _WAY_IS_LATE.fullmatch(found["way"]) else -minutes
    return None


_BETWEEN = Late(
    r"\s*(?:[,;.!:](?=\s)|\n|\s[-–]\s|\s(?=(?:and|but|und|aber)\s))\s*(?:(?:and|but|so|und|aber|also)\s+)?"
)
#: Behind other words it has to say who is late: in "mum is in the jam, 20 min late" nobody knows.
_SAYS_WHO = Late(
    r"(?:we|they|i|i'm|it's|the show|my class|the class|my category|everything|all|running|wir|sie|ich|"
    r"es|die show|meine klasse|alles)\b.*"
)
#: "40 min late, no, make that 50": what was said is put right, and by how much is to be asked.
TAKEN_BACK = Late(
    r"\b(?:make (?:that|it)|scratch that|corrected|correction|i mean|korrigiert|korrektur|stimmt nicht|"
    r"ich mein\w*|quatsch)\b|^(?:no|nope|nah|sorry|nein|nee|ne|doch nicht)\b"
)
_PERHAPS = Late(
    r"(?:i think|think|maybe|perhaps|probably|not sure|no idea|who knows|just kidding|kidding|jk|"
    r"joking|vielleicht|glaub\w*|ich glaub\w*|wahrscheinlich|nicht sicher|"
    r"keine ahnung|scherz|war ein scherz)"
    r"(?: (?:yet|i think|or so|ich|oder so))?"
)


def delay_beside(text: str, language: str = "en") -> tuple[int, str] | None:
    """A delay told as a clause among others: its minutes as in `parse_delay`, and what else was said.

    None where no clause is one, where two are, or where what stands beside it takes it back.
    """
    cuts = [0, *(end for match in _BETWEEN.finditer(text) for end in match.span()), len(text)]
    clauses = [(cuts[n], cuts[n + 1]) for n in range(0, len(cuts), 2)]
    told = [
        (number, minutes)
        for number, (begin, end) in enumerate(clauses)
        if (minutes := parse_delay(text[begin:end], language)) is not None
    ]
    if len(told) != 1 or len(clauses) < 2:
        return None
    number, minutes = told[0]
    begin, end = clauses[number]
    others = [text[one:last].strip() for one, last in clauses[:number] + clauses[number + 1 :]]
    if number and not _SAYS_WHO.fullmatch(in_one_line(text[begin:end])):
        return None
    beside = [other.lower().rstrip(" .!?") for other in others]
    if any(_PERHAPS.fullmatch(other) or TAKEN_BACK.search(other) for other in beside):
        return None
    before = text[: clauses[number - 1][1]] if number else ""
    after = text[clauses[number + 1][0] :] if number + 1 < len(clauses) else ""
    return minutes, " ".join(part.strip() for part in (before, after) if part.strip())


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
    return in_one_line(text).strip(" .!")


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
