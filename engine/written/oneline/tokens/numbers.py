"""Numbers that are not digits alone: written out, with a half, with "point", or multiplied.

What can be read whole comes back as digits with a decimal point, so that no part of it is ever
taken for the whole: "3 and a half" is 3.5, and neither 3 nor a note about a half.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import lru_cache

from engine.written.late import Late
from engine.written.oneline.report import Known
from engine.written.units.amounts import VOLUME_WORDS
from engine.written.units.reading import NUMBER

_OVER = r"(?![^\W_]|')"
_ENGLISH_UNITS = dict(
    zip(
        ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine"],
        range(1, 10),
        strict=True,
    )
)
_ENGLISH_TEENS = dict(
    zip(
        [
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen",
        ],
        range(10, 20),
        strict=True,
    )
)
_ENGLISH_TENS = dict(
    zip(
        ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"],
        range(20, 100, 10),
        strict=True,
    )
)
_GERMAN_UNITS = {
    "eins": 1, "ein": 1, "zwei": 2, "zwo": 2, "drei": 3, "vier": 4, "fünf": 5, "fuenf": 5,
    "sechs": 6, "sieben": 7, "acht": 8, "neun": 9,
    # as they are said in the south
    "siema": 7, "sieb'n": 7, "föif": 5, "föifi": 5, "foif": 5, "ocht": 8,
    "oans": 1, "oan": 1, "zwoa": 2, "zwöi": 2, "zwee": 2, "drü": 3, "viere": 4, "fünfe": 5,
    "fümf": 5, "füf": 5, "füfi": 5, "sechse": 6, "sächs": 6, "sächsi": 6, "siebn": 7, "siem": 7,
    "sibe": 7, "siebe": 7, "sibni": 7, "achte": 8, "achti": 8, "neune": 9, "nün": 9, "nüni": 9,
}  # fmt: skip
_GERMAN_TEENS = {
    "zehne": 10, "zehn": 10, "elf": 11, "zwölf": 12, "zwoelf": 12, "dreizehn": 13, "vierzehn": 14,
    "fünfzehn": 15, "fuenfzehn": 15, "sechzehn": 16, "siebzehn": 17, "achtzehn": 18, "neunzehn": 19,
}  # fmt: skip
_GERMAN_TENS = {
    "zwanzig": 20, "dreißig": 30, "dreissig": 30, "vierzig": 40, "fünfzig": 50, "fuenfzig": 50,
    "sechzig": 60, "siebzig": 70, "achtzig": 80, "neunzig": 90,
    "vierzg": 40, "fuffzig": 50, "fuffzg": 50, "fuchzig": 50, "fuchzg": 50, "fünfzg": 50,
    "füfzg": 50, "sechzg": 60, "sächzg": 60, "siebzg": 70, "sibezg": 70, "siebezg": 70, "sibzg": 70,
    "achtzg": 80, "achzg": 80, "achzig": 80, "neunzg": 90, "nünzg": 90,
}  # fmt: skip
_GERMAN_AND = "und|un|r?ad|ra|a|e|ä|ed"  # "zwoaradsechzg", "achtefüfzg"
#: What is said of hours and of how many bottles.
SMALL_NUMBERS = {
    **_ENGLISH_UNITS,
    **{word: value for word, value in _ENGLISH_TEENS.items() if value <= 12},
    **{word: value for word, value in _GERMAN_UNITS.items() if word not in ("ein", "oan")},
    **{word: value for word, value in _GERMAN_TEENS.items() if value <= 12},
}


def _any(words: dict[str, int]) -> str:
    return "|".join(sorted(words, key=len, reverse=True))


NUMBER_WORDS = _any(SMALL_NUMBERS)
_SMALL = (
    rf"(?:(?P<tens>{_any(_ENGLISH_TENS)})(?:[ -]?(?P<unit>{_any(_ENGLISH_UNITS)}){_OVER})?"
    rf"|(?P<teen>{_any(_ENGLISH_TEENS)}))"
)
# "one thirty three" is said of pounds and ounces
_ENGLISH = Late(
    rf"(?:(?:(?P<many>(?:(?:one|two|three|a)[ -])?hundred)(?: and)?|(?P<said>one|two|three))"
    rf"[ ]{_SMALL}{_OVER}"
    rf"|(?P<over>one|two|three|a)[ -]hundred(?: and)? (?P<ones>{_any(_ENGLISH_UNITS)}){_OVER}"
    rf"|{_SMALL.replace('P<', 'P<_')}{_OVER}"
    rf"|(?P<hundred>one|two|three|a)[ -]hundred{_OVER}"
    rf"|(?P<only>zero|{_any(_ENGLISH_UNITS)}){_OVER})"
)
_GERMAN = Late(
    rf"(?P<many>(?:ein|zwei|drei|vier|fünf|sechs|sieben|acht|neun)?hundert)?(?:und)?"
    rf"(?:(?:(?P<unit>{_any(_GERMAN_UNITS)})(?:{_GERMAN_AND}))?(?P<tens>{_any(_GERMAN_TENS)})"
    rf"|(?P<teen>{_any(_GERMAN_TEENS)})(?P<as_mark>er)?"
    rf"|(?P<only>null|{_any(_GERMAN_UNITS)})(?P<as_grade>(?<!ein)er)?)?"
    rf"(?:(?P<half>(?:und)?einhalb|[ae]ho(?:ib|alb)|[ae]halb)|(?P<three>dreiviertel)|(?P<fourth>(?:und)?einviert(?:el|l)))?(?:{_OVER}|(?=komma|punkt))"
)
# "dreitausendfünfhundert", "three thousand five hundred"
_DIGITS = _any({**_ENGLISH_UNITS, **_GERMAN_UNITS})
_MANY = _any({**_ENGLISH_UNITS, **_GERMAN_UNITS, **_ENGLISH_TEENS, **_GERMAN_TEENS})
_THOUSANDS = Late(
    rf"(?P<many>an?|ein|{_MANY})?[ -]?(?:thousand|tausend)(?: (?:and )?|und)?"
    rf"(?:(?P<hundreds>{_DIGITS}|ein)[ -]?(?:hundred|hundert)(?: (?:and )?|und)?)?"
    rf"(?P<fifty>fifty|fünfzig|fuenfzig)?(?<! ){_OVER}"
)
_HUNDREDS = Late(
    rf"(?P<many>{_any(_ENGLISH_UNITS)})[ -]hundred(?: (?:and )?(?P<fifty>fifty))?{_OVER}"
)
_ANDERTHALB = Late(rf"anderthalb{_OVER}")
_FRACTIONS = {"1/2": 0.5, "1/4": 0.25, "3/4": 0.75}
_HALF = Late(
    rf"(?: and a| ?-and-a-|-and-a-| an a| und (?:ein(?:en)?|a|n|nen|noch ein(?:en)?)| ein"
    r"|,? (?:und dann noch|und dann|dann noch|noch) (?:ein(?:en)?|n|nen)"
    rf"| plus (?:a|ein|einen)| und(?= halb{_OVER}))[ -]?(?:half|halb(?:e[rsn]?)?){_OVER}"
    rf"|(?: and a|and-a) (?P<quarter>quarter){_OVER}"
    rf"|(?: and| und)? ?(?P<three>three[ -]quarters|dreiviertel){_OVER}"
    rf"|(?:und| und)? ?(?P<fourth>einviert(?:el|l)){_OVER}"
    rf"|(?:und)? ?einhalb{_OVER}"
    r"|(?: (?:and |und )?|-)(?P<fraction>[13]/[24])(?![\d/]|[.,]\d)"
)
_POINT = Late(
    r" ?(?:point|dot|komma|kommer|koma|kommar|comma|punkt|poin|pt) ?"
    r"(?:(?P<digits>\d{1,2})(?![\d]|[.,]\d)"
    r"|(?P<words>[^\W\d_]+(?: [^\W\d_]+)?))"
)
_TIMES = Late(rf" ?(?:x|×|\*|mal|times) ?(?P<number>{NUMBER})(?![\d])")
_CORRECTED = Late(r" \*\d")  # "3.5 *72.6": a star before what was meant
_VOLUME = Late(rf" ?{VOLUME_WORDS}{_OVER}")
_GOES_ON = Late(r" ?[^\W_]")
_LARGEST_BOTTLE = 3  # L: "7 x 0.5" counts bottles, "3 x 8" does not
_MOST_GALLONS = 4  # "6 3/4 gallon" are two numbers
_MANY_HUNDREDS = 4
_MOST_SIMPLE = 12  # up to here a number word is often no number: "one of them", "two of us"


def spelt_at(line: str, at: int, language: str) -> tuple[str, int] | None:
    """The number written out at this place, as digits, and where it ends."""
    found = (
        _in_round_numbers(line, at)
        or _english_at(line, at)
        or (_german_at(line, at) if language == "de" else None)
    )
    if found is None:
        return None
    value, end = found
    if value != int(value):
        return f"{value:g}", end
    return _with_tail(line, f"{value:g}", end, language) or (f"{value:g}", end)


def _in_round_numbers(line: str, at: int) -> tuple[float, int] | None:
    """Thousands, and more hundreds than anybody weighs: so millilitres and steps are told."""
    units = {"a": 1, "an": 1, "ein": 1, **_ENGLISH_UNITS, **_GERMAN_UNITS}
    units |= _ENGLISH_TEENS | _GERMAN_TEENS
    if match := _THOUSANDS.match(line, at):
        hundreds = units.get(match["hundreds"] or "", 0) * 100
        value = units.get(match["many"] or "", 1) * 1000 + hundreds
    elif (match := _HUNDREDS.match(line, at)) and units[match["many"]] >= _MANY_HUNDREDS:
        value = units[match["many"]] * 100
    else:
        return None
    return value + (50 if match["fifty"] else 0), match.end()


def without_its_point(line: str, number: str, end: int, language: str) -> tuple[str, int] | None:
    """The whole of "siebzig null", which is said of 70.0; no other answer is ever nought there."""
    found = _simple_at(line, end + 1, language) if line[end : end + 1] == " " else None
    if found is None or found[0] != 0 or not number.isdecimal() or int(number) <= _MOST_SIMPLE:
        return None
    return f"{number}.0", found[1]


def with_tenths(line: str, number: str, end: int, language: str) -> tuple[str, int] | None:
    """The whole of "drei liter neun", where `end` is behind the unit and nothing follows the nine."""
    found = _simple_at(line, end + 1, language) if line[end : end + 1] == " " else None
    if found is None or not number.isdecimal() or _GOES_ON.match(line, found[1]):
        return None
    return f"{number}.{found[0]}", found[1]


def two_ways(line: str, at: int, number: str, end: int, language: str) -> int | None:
    """Where the first of two decimals ends, if a third word goes on: "sixty point four seven four"."""
    more = _simple_at(line, end + 1, language) if line[end : end + 1] == " " else None
    tenths = re.search(r"[^\W\d_]+ [^\W\d_]+$", line[at:end])
    if more is None or tenths is None or not re.fullmatch(r"\d+\.\d\d", number):
        return None
    return at + line[at:end].rindex(" ")


def goes_on(line: str, number: str, end: int, language: str) -> tuple[str, int] | None:
    """The whole number where digits go on in words or in a fraction; None where they don't."""
    return _with_tail(line, number, end, language) if number.lstrip("+-").isdecimal() else None


def with_half(line: str, number: str, end: int) -> tuple[str, int] | None:
    """The whole of "3 litres and a half", where `end` is behind the unit."""
    match = _HALF.match(line, end)
    other = match and any(match[share] for share in ("fraction", "quarter", "three", "fourth"))
    if match is None or other or not number.isdecimal():
        return None
    return f"{int(number)}.5", match.end()


def multiplied(line: str, number: str, end: int) -> tuple[str, int] | None:
    """ "2 x 1.5 l" as its sum and where that ends; "" for a product of nothing that is drunk."""
    match = _TIMES.match(line, end)
    if match is None or _CORRECTED.match(line, end):
        return None
    try:
        amount = float(match["number"].replace(",", "."))
    except ValueError:
        return "", match.end()
    drunk = _VOLUME.match(line, match.end()) or (amount % 1 and amount < _LARGEST_BOTTLE)
    if not drunk or not number.isdecimal():
        return "", match.end()
    return f"{int(number) * amount:g}", match.end()


def is_surely_number(number: str) -> bool:
    """Whether words for it are said of nothing but a number."""
    return not number.isdecimal() or int(number) > _MOST_SIMPLE


def _with_tail(line: str, number: str, end: int, language: str) -> tuple[str, int] | None:
    match = _HALF.match(line, end)
    apart = match and match["three"] and " and" not in match[0] and " und" not in match[0]
    if match and (match["fraction"] or apart) and float(number) > _MOST_GALLONS:
        match = None if _VOLUME.match(line, match.end()) else match
    if match:
        share = (
            0.75
            if match["three"]
            else 0.25
            if match["quarter"] or match["fourth"]
            else _FRACTIONS.get(match["fraction"] or "1/2")
        )
        if share is not None:
            sign, plain = ("-" if number.startswith("-") else ""), number.lstrip("+-")
            return f"{sign}{int(plain) + share:g}", match.end()
    match = _POINT.match(line, end)
    if match is None:
        return None
    if match["digits"]:
        return f"{number}.{match['digits']}", match.end()
    digits, at = "", match.start("words")
    while len(digits) < 2:
        found = _simple_at(line, at, language)
        if found is None:
            break
        digits += str(found[0])
        at = found[1] + 1 if line[found[1] : found[1] + 1] == " " else found[1]
        last = found[1]
    return (f"{number}.{digits}", last) if digits else None


def _simple_at(line: str, at: int, language: str) -> tuple[int, int] | None:
    word = re.compile(r"[^\W\d_]+").match(line, at)
    digits = {"zero": 0, "null": 0, "oh": 0, **_ENGLISH_UNITS}
    if language == "de":
        digits |= _GERMAN_UNITS
    if word is None or word[0] not in digits:
        return None
    return digits[word[0]], word.end()


def _english_at(line: str, at: int) -> tuple[float, int] | None:
    match = _ENGLISH.match(line, at)
    if match is None:
        return None
    many = match["said"] or match["over"] or match["hundred"]
    if match["many"]:  # "hundred and ten" is one hundred
        many = match["many"].removesuffix("hundred").strip(" -") or "a"
    hundreds = {"a": 1, **_ENGLISH_UNITS}.get(many, 0)
    tens = _ENGLISH_TENS.get(match["tens"] or match["_tens"], 0)
    unit = _ENGLISH_UNITS.get(match["unit"] or match["_unit"] or match["ones"] or match["only"], 0)
    teen = _ENGLISH_TEENS.get(match["teen"] or match["_teen"], 0)
    return hundreds * 100 + tens + unit + teen, match.end()


def _german_at(line: str, at: int) -> tuple[float, int] | None:
    if match := _ANDERTHALB.match(line, at):
        return 1.5, match.end()
    match = _GERMAN.match(line, at)
    if match is None or match.end() == at:
        return None
    # "ein" is an article, "einhalb" and "und" are no numbers by themselves
    said = match["many"] or match["tens"] or match["teen"] or match["only"]
    if (
        not said
        or (match["only"] == "ein" and not (match["half"] or match["three"] or match["fourth"]))
        or match[0].startswith("und")
    ):
        return None
    hundreds = 0
    if match["many"]:
        hundreds = _GERMAN_UNITS.get(match["many"].removesuffix("hundert"), 1)
    value = hundreds * 100 + _GERMAN_TENS.get(match["tens"] or "", 0)
    value += _GERMAN_UNITS.get(match["unit"] or match["only"] or "", 0)
    value += _GERMAN_TEENS.get(match["teen"] or "", 0)
    shares = {"half": 0.5, "three": 0.75, "fourth": 0.25}
    return value + next((share for name, share in shares.items() if match[name]), 0), match.end()


_NUMBER_OR_WORD = Late(r"(?<![\d.,])\d+(?:[.,]\d+)?(?![\d]|[.,]\d)|(?<![^\W_])[^\W\d_]{3,}")
#: A number as it stands there.
N = r"(?<![\d.,])\d+(?:[.,]\d+)?(?![.,]?\d)"

Edit = Callable[[re.Match[str]], str | None]


def instead(line: str, start: int, end: int, text: str = "") -> str:
    """The line, as long as before, with this text, and blanks, in the place of what stood there."""
    return f"{line[:start]}{text.ljust(end - start)}{line[end:]}"


@lru_cache(maxsize=32)  # many patterns are looked for in one line
def in_digits(line: str, language: str) -> str:
    """The line, as long as before, with digits and blanks where a number is written out."""
    out, at = line, 0
    while match := _NUMBER_OR_WORD.search(line, at):
        start, at = match.span()
        found = (
            goes_on(line, match[0], at, language)
            if match[0][0].isdecimal()
            else spelt_at(line, start, language)
        )
        if found is None:
            continue
        number, at = found
        if len(number) <= at - start:
            out = instead(out, start, at, number)
    return out


def rewritten(line: str, known: Known, *edits: tuple[Late, Edit]) -> tuple[str, list[str]]:
    """The line with what each edit makes of each match of its pattern in the line's digits, one pattern
    after the other; and the words that stood there.

    What is longer than the words were can't be written in their place, and is left as it stood.
    """
    said: list[str] = []
    for pattern, edit in edits:
        at = 0
        while match := pattern.search(in_digits(line, known.language), at):
            start, end = match.span()
            at = max(end, start + 1)
            text = edit(match)
            if text is None or len(text) > end - start:
                continue
            said.append(line[start:end].strip(" ,;.:"))
            line = instead(line, start, end, text)
    return line, said
