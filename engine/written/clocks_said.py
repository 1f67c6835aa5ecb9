"""Times of day and spans of time in running text, however they are said: "half seven in the evening",
"dreiviertel elf", "twenty past one", "1400", "an hour and a half", "eine Viertelstunde".
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import time

from engine.written.late import Late
from engine.written.oneline.tokens.in_digits import in_digits
from engine.written.units import ParseError, parse_clock

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
    said = " ".join(text.lower().replace("’", "'").split())
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
