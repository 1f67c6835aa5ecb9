"""What a text may say of when the classes of a day are on, among whatever else: enough to ask about
with one tap, never to be done by itself. What is plain and whole is `stage_times`.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import time

from engine.written.late import Late
from engine.written.oneline.tokens.numbers import in_digits
from engine.written.stage_times import EARLIEST, LAST, MOST_MINUTES, TAKEN_BACK, StageWord
from engine.written.units import ParseError, parse_clock
from engine.written.units.reading import in_one_line

_MORNING = (
    r"in the morning|this morning|in der fr[üu]h|früh|morgens|vormittags?|am vormittag|am morgen"
)
_EVENING = (
    r"in the afternoon|this afternoon|in the evening|this evening|tonight|at night|the night|"
    r"(?:am )?nachmittags?|(?:am )?abends?|auf d'?nacht|auf die nacht|nachts"
)
_AM = rf"a\.?m\b\.?(?! (?:nachmittag|abend|morgen|vormittag))|(?:{_MORNING})\b"
_PM = rf"p\.?m\b\.?|(?:{_EVENING})\b"
_PAST, _TO = r"(?:past|after|nach)", r"(?:to|before|vor)"
_QUARTERS = rf"(?:quarter|viertel) (?:{_PAST}|{_TO})|dreiviertel|viertel"
_MINUTES = rf"\d{{1,2}}(?: min(?:utes|uten)?)? (?:{_PAST}|{_TO})"
_NO_AMOUNT = r"(?![\d:]|[.,]\d| ?%)"
_END = r"(?=\s*(?:$|[,;.!]|(?:and|und|dran)\b))"
_CLOCK = Late(
    r"\b(?:"
    rf"(?:a )?(?P<part>half past|half|halb|{_QUARTERS}|{_MINUTES})"
    r" (?P<near>\d{1,2})(?! ?\d| ?(?:min|h\b|hour|stund|std))(?: uhr)?"
    rf"|(?P<hour>\d{{1,2}})(?: ?[:.h] ?(?=\d\d)| ?uhr (?:und )?(?=\d\d|\d{_END}))"
    r"(?P<minute>[0-5]?\d)(?: uhr)?(?!\d)"
    r"|(?P<four>(?!20[1-3]\d)(?:[01]\d|2[0-3])[0-5]\d)(?: (?:hours|uhr))?"  # 2027 is a year
    r"(?! ?(?:kcal|g\b|ml\b|steps|schritte))"
    r"|(?P<three>\d{3})(?= ?[ap]\.?m\b)|(?P<alone>\d{1,2}) (?P<more>[0-5]\d)(?= ?[ap]\.?m\b)"
    rf"|(?P<ten>1\d|2[0-3]) (?P<past>[0-5]\d){_END}"
    r"|(?P<full>\d{1,2}(?= ?(?:uhr|o'?clock))|[12]\d(?= hundred))"
    r" ?(?:uhr|o'?clock|hundred(?: hours)?)"
    r"|(?P<said>\d{1,2})(?= ?[ap]\.?m\b)"
    rf"|(?:(?<=\bat )|(?<=\bum )|(?<=\bfrom )|(?<=\bab ))(?P<at>\d{{1,2}}){_NO_AMOUNT}"
    rf"|(?P<of_day>\d{{1,2}})(?= (?:{_MORNING}|{_EVENING})\b)"
    r"|(?P<noon>noon|midday)"
    r")(?! ?(?:min|stunden?\b|hours?\b|weeks|wochen|days|tage))"
    rf"(?: ?(?P<am>{_AM})| ?(?P<pm>{_PM}))?"
)
_SPAN = Late(
    r"\b(?:(?P<halved>half an?|(?:eine? )?halbe?n?|einer halben) (?:hours?|stunde?)"
    r"|(?P<quarter>(?:quarter of an|eine[rm]? viertel) (?:hour|stunde?)|viertelstunde?)"
    r"|(?P<three>dreiviertelstunde?|three quarters of an hour)"
    r"|(?P<five>fünfviertel) stunden"
    r"|(?P<hours>\d+(?:[.,]\d+)?|an?|eine[r]?|ne)? ?(?P<unit>hours?|hrs?|h|stunden?|stund|std)\b"
    r"(?: and (?P<and>a half|a quarter|\d{1,2}(?: min\w*)?)| (?P<more>\d{1,2}) ?min\w*)?"
    r"|(?P<minutes>\d{1,3}) ?(?:minutes?|mins?|minuten?|min|m))(?![^\W_])"
)
_PARTS_OF = {"a half": 30, "a quarter": 15}
#: In minutes.
_NAMED = {"halved": 30, "quarter": 15, "three": 45, "five": 75}


@dataclass(frozen=True, slots=True)
class ClockSaid:
    """A time of day and where it stands in a text of `plain_in_digits`. `open` where nothing says which
    half of the day is meant.
    """

    at: time
    begin: int
    end: int
    open: bool


def plain_in_digits(text: str, language: str = "en") -> str:
    """The text in lower case with its spelt numbers as digits: "half seven", "neunzehn Uhr dreißig"."""
    said = in_one_line(text)
    return " ".join(in_digits(said, language).split()).replace(" ,", ",")


def clocks_said(said: str) -> Iterator[ClockSaid]:
    """Every time of day in a text of `plain_in_digits`, as said: "3" is `open`, and three at night."""
    for match in _CLOCK.finditer(said):
        found = {key: value for key, value in match.groupdict().items() if value is not None}
        try:
            at = _time_of(found)
        except ParseError:
            continue
        half = "pm" in found or "am" in found or "noon" in found
        if "pm" in found and at.hour < 12:
            at = at.replace(hour=at.hour + 12)
        left_open = (
            not half and at.hour < 12 and not match[0].startswith("0") and "four" not in found
        )
        yield ClockSaid(at, match.start(), match.end(), left_open)


def _time_of(found: dict[str, str]) -> time:
    if "noon" in found:
        return time(12)
    if "near" in found:
        return _around(found["part"], int(found["near"]))
    if "minute" in found:
        return parse_clock(f"{found['hour']}:{found['minute']:0>2}")
    if "more" in found:
        return parse_clock(f"{found['alone']}:{found['more']}")
    if "past" in found:
        return parse_clock(f"{found['ten']}:{found['past']}")
    digits = found.get("four") or found.get("three")
    if digits is not None:
        return parse_clock(f"{digits[:-2]}:{digits[-2:]}")
    return parse_clock(next(found[key] for key in _BARE if key in found))


_BARE = ("full", "said", "at", "of_day")


def _around(part: str, hour: int) -> time:
    """ "half 7" is half past in English, "halb 7" half to in German; "viertel 7" is the first of it."""
    amount, *way = part.removeprefix("a ").split()
    if amount.isdecimal():
        minutes = int(amount)
    else:
        minutes = {"half": 30, "halb": -30, "dreiviertel": -15}.get(amount, 15)
    if amount == "viertel" and not way:
        minutes = -45
    if way and way[-1] in ("to", "before", "vor"):
        minutes = -minutes
    minutes += hour * 60
    return parse_clock(f"{minutes // 60}:{minutes % 60:02}")


def spans_said(said: str) -> list[int]:
    """Every span of time in a text of `plain_in_digits`, in minutes."""
    return [minutes for match in _SPAN.finditer(said) if (minutes := _minutes(match.groupdict()))]


def _minutes(found: dict[str, str | None]) -> int:
    for key, minutes in _NAMED.items():
        if found[key]:
            return minutes
    if found["minutes"]:
        return int(found["minutes"])
    number = found["hours"] or "a"
    whole = 60.0 if not number[0].isdigit() else 60 * float(number.replace(",", "."))
    beside = found["and"] or found["more"] or ""
    more = _PARTS_OF.get(beside) or int(beside.split()[0] if beside else 0)
    return round(whole + more)


_PREJUDGING = r"pre-?judg\w*|vorentscheid\w*|vorwahl|vorrunde"
_FINALS = r"finals?|finale|finalrunde|night show|evening show|abendshow"
#: What is on a stage; the names of classes are the sport's own.
_STAGE = Late(
    rf"\b(?:{_PREJUDGING}|{_FINALS}|class(?:es)?|category|division|klassen?|kategorie|stage|bühne|"
    r"overall|gesamtsieg|open|offenen?|novices?|newcomer|masters?|juniors?|junioren|teens?|jugend|"
    r"classic|physique|bikini|figure|wellness|fitness|bodybuilding|pairs|paare|over \d\d'?s|ü ?\d\d|"
    r"dran|auftritt|(?:my|meine?) (?:start|slot|startzeit)|not on|now on|"
    r"(?:i'm|i am|we're|we are|she's|he's|she is|he is|they're) (?:now )?(?:on|up)"
    r"(?= (?:now|at|again|in|around|about|half|quarter|\d)))\b"
)
#: What is said of a stage, unless it is said of something else.
_MOVED = Late(
    r"\b(?:(?:put|pushed|moved|swapped|called) (?:me|us|her|him|back|to)|"
    r"(?:delayed|verschoben|verlegt) (?:till?|until|to|bis|auf)|"
    r"(?:ich bin|i bin?|bin|mine's|meine ist) jetzt?|geschoben)\b"
)
_FIRST, _LAST = Late(rf"\b(?:{_PREJUDGING})\b"), Late(rf"\b(?:{_FINALS})\b")
_ELSEWHERE = Late(
    r"\b(?:weigh\w*|waage|\w*wiegen|venue|halls?|halle|doors?(?: [^,.;]* open)?|einlass\w*|"
    r"\w*einlass|athleten bis|athletes in|be (?:at|there)|get (?:to|there)|treffpunkt|check-?in|"
    r"registration|registrierung|meeting|besprechung|tan|tanning|farbe|bed|bett|train|zug|bus|"
    r"flight|flug|wake|aufstehen|breakfast|lunch|dinner|meal|frühstück|mittagessen|abendessen|"
    r"essen|esse|eat)\b"
)
_JOINS = Late(r"[\s,;/&+]*(?:(?:and|und|then|dann|again|nochmal|at|um|the|at the)\b[\s,]*)*")
_NO_MORE = Late(
    r"\b(?:an?statt|statt|instead of|rather than|not|nicht(?: mehr)?|no longer)(?: (?:um|at))? $"
)
_ASKED = Late(r"[^,.;!?\n]*\?")
_CUT = Late(r"[,;.!](?=\s|$)")
_LATE = Late(
    r"\b(?:late|later|behind|delay\w*|hold ?up|wait(?:ing)?|pushed back|verzug|verspät\w*|"
    r"hinten|hinterher|später|warten|verzöger\w*|verschoben|nach hinten)\b"
)
_EARLY = Late(
    r"\b(?:early|earlier|sooner|"
    r"ahead|forward|moved (?:us|me|her|him|it)? ?up|before schedule|früher|eher|"
    r"vorgezogen|vorverlegt|voraus|vor (?:dem )?plan|vorm plan|nach vorn\w*)\b"
)


def tells_a_time(text: str, language: str = "en") -> bool:
    """Whether any time of day or span of time is said at all; where none is, it is no such word."""
    said = plain_in_digits(text, language)
    return any(clocks_said(said)) or bool(spans_said(said))


def perhaps_stage_word(text: str, language: str = "en") -> StageWord | None:
    """When the classes may be on by this text (`clocks`, in order, with `which` where it is one of
    them), or by how much the day may be late (`by_min`); None where it sounds like neither. What is
    asked is left out. `language` is what numbers are understood in beside English.
    """
    said = plain_in_digits(_ASKED.sub("", text), language)
    clocks = _of_stage(said)
    if clocks:
        which = clocks[0][0] if len(clocks) == 1 else 0
        return StageWord(which, clocks=tuple(sorted({at for _, at in clocks})))
    return _delay(said)


def _delay(said: str) -> StageWord | None:
    late, early = _LATE.search(said), _EARLY.search(said)
    spans = set(spans_said(said))
    taken_back = any(TAKEN_BACK.search(clause.strip()) for clause in _CUT.split(said))
    if len(spans) != 1 or bool(late) == bool(early) or taken_back:
        return None
    minutes = spans.pop()
    if not 0 < minutes <= MOST_MINUTES:
        return None
    return StageWord(by_min=minutes if late else -minutes)


def _of_stage(said: str) -> list[tuple[int, time]]:
    """The clocks that are said of a stage, each with the class that is named, or 0."""
    found: list[tuple[int, time]] = []
    begin, of_stage = 0, False
    every = list(clocks_said(said))
    for number, clock in enumerate(every):
        before = said[begin : clock.begin]
        ahead = every[number + 1].begin if number + 1 < len(every) else len(said)
        begin = clock.end
        if _NO_MORE.search(before):
            continue
        if not _JOINS.fullmatch(before) or not number:
            of_stage = _is_of_stage(before, said[clock.end : ahead])
        if of_stage:
            which = _which(before) if found or not number else _which(said[: clock.begin])
            found.append((which, _in_its_half(clock, which, found)))
    return found


def _is_of_stage(before: str, after: str) -> bool:
    """Whether the clause before a clock is of a stage; else what follows up to the next cut, else all
    that stands before.
    """
    for told in (_CUT.split(before)[-1], _CUT.split(after)[0], before):
        if _ELSEWHERE.search(told):
            return _last(_STAGE, told) > _last(_ELSEWHERE, told)
        if _STAGE.search(told) or _MOVED.search(told):
            return True
    return False


def _last(pattern: Late, text: str) -> int:
    return max((match.end() for match in pattern.finditer(text)), default=-1)


def _which(before: str) -> int:
    if _LAST.search(before):
        return LAST
    return 1 if _FIRST.search(before) else 0


def _in_its_half(clock: ClockSaid, which: int, earlier: list[tuple[int, time]]) -> time:
    """Where the half of the day is left open: nobody is on stage before seven in the morning, finals
    are in the evening, and classes are told in their order.
    """
    behind = [at for number, at in earlier if (number == LAST) == (which == LAST) or which == LAST]
    out_of_order = bool(behind) and clock.at <= max(behind)
    at = clock.at
    if clock.open and (1 <= at.hour < EARLIEST or out_of_order or (which == LAST and at.hour < 10)):
        return at.replace(hour=at.hour + 12)
    return at
