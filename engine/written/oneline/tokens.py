"""From what was typed to figures, words and marks, each with its place.

A figure is a whole number with whatever stands directly at it: its sign, unit, scale, the second end
of a range. What runs on into letters or further digits is no figure at all, and stays unread.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import product
from unicodedata import category

from engine.written.late import Late
from engine.written.oneline.numbers import (
    goes_on,
    multiplied,
    spelt_at,
    two_ways,
    with_half,
    with_tenths,
    without_its_point,
)
from engine.written.oneline.typos import label_meant
from engine.written.oneline.words import Meaning, Means, longest_phrase, phrases
from engine.written.units.reading import NUMBER
from engine.written.units.volume import VOLUME_WORDS
from engine.written.units.weight import KG_WORDS, LB_WORDS, ST_WORDS


class Unit(StrEnum):
    NONE = "none"
    WEIGHT = "weight"
    VOLUME = "volume"
    GRAMS = "grams"
    HOURS = "hours"
    OF_TEN = "of-ten"
    OF_FIVE = "of-five"


@dataclass(frozen=True, slots=True, kw_only=True)
class Token:
    """`start` and `end` are places in the plain line."""

    start: int
    end: int
    text: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure(Token):
    """`number` as written; `high` is the other end of a range; `bound` where it is only a bound."""

    number: str
    unit: Unit = Unit.NONE
    unit_text: str = ""
    high: str = ""
    bound: bool = False
    thousand: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Word(Token):
    """`meanings` is empty for a word that is not known here."""

    meanings: tuple[Meaning, ...] = ()

    def says(self, *means: Means) -> Meaning | None:
        return next((meaning for meaning in self.meanings if meaning.means in means), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark(Token):
    pass


_BLOB = Late(r"[-+]?(?:[.,]?\d|[½¼¾])[\d.,½¼¾⁰¹²³⁴-⁹₀-₉]*")
_WHOLE = Late(rf"[-+]?{NUMBER}")
_WORD = Late(r"[^\W\d_]+(?:['-][^\W\d_]+)*")
_DATE = Late(
    r"(?:\d{1,2}(?P<mark>[./-])\d{1,2}(?P=mark)(?:20\d\d|\d\d(?!\d))|20\d\d-\d\d?-\d\d?)(?![\d.,/])"
)
_CLOCK = Late(r"\d{1,2}(?:[:.]\d\d)? ?(?:[ap]\.?m\b\.?|uhr\b|o'clock)|\d{1,2}:\d\d(?::\d\d)?\b")
_SCALE = Late(r" ?(?:/|(?:out )?of|outta|von|aus) ?(10|ten|zehn|5)(?![\d./]\d|\d)(?!/)")
_OVER = r"(?![^\W_]|')"  # no letter or digit follows
_STONES = Late(
    rf" ?{ST_WORDS}(?![^\W\d_]|')\.?"
    rf"(?:[ ,&]*(?:and )?(?P<rest>{NUMBER})(?P<lb> ?{LB_WORDS}{_OVER})?{_OVER})?"
)
_UNITS: tuple[tuple[Unit, Late], ...] = (
    (Unit.WEIGHT, Late(rf" ?(?:{KG_WORDS}|{LB_WORDS}){_OVER}\.?")),
    (Unit.VOLUME, Late(rf" ?{VOLUME_WORDS}{_OVER}")),
    (Unit.GRAMS, Late(rf" ?(?:grammes?|gramm|grams?|gr|g){_OVER}\.?")),
    (Unit.HOURS, Late(rf" ?(?:hours?|hrs?|h|std|stunden?|stdn){_OVER}\.?")),
)
_THOUSAND = Late(rf" ?k{_OVER}(?: ?(?:grams?|gramm|g){_OVER})?")
# what a number may count that is none of the answers
_COUNTED = Late(
    r" ?(?:%|°|x\b|(?:mins?|minutes?|minuten?|secs?|seconds?|km|miles?|metres?|meters?|m|steps?|mg|"
    r"kcal|cals?|calories|kalorien|times|days?|tage?n?|weeks?|wochen?|months?|years?|jahre?n?|yr|meals?|"
    r"mahlzeit(?:en)?|sets?|sätze|reps?|wdh|bpm|schritte?n?|mal|prozent|percent|"
    r"euros?|pm|o'clock|uhr|kj|cm|mm|inch(?:es)?|euro|st|nd|rd|th)" + _OVER + ")"
)
# "woke at 6", "um 6 auf"; "down 0.3", "300 g runter"
_TOLD_OF = Late(
    r"\b(?:woke|wake|awake|got up|bed|asleep|wach|aufgewacht|aufgestanden|bett)(?: up)?"
    r" (?:at|around|about|um|gegen|seit|since|till|until) $|\bup (?:at|since) $"
)
_NEXT_FIGURE = Late(r" ?[.,]?\d")
_GOT_UP = Late(rf" (?:auf|wach|aufge\w+|raus){_OVER}")
_AT = Late(r"\b(?:um|gegen|seit) $")
_CHANGED = Late(
    r"(?:so |also )?(?:down|lost|gained|dropped|abgenommen|zugenommen|runter)"
    rf"(?: by| um| about| another)? (?P<number>{NUMBER})(?![\d/]| ?{VOLUME_WORDS}{_OVER})"
    rf"(?: ?(?:{KG_WORDS}|{LB_WORDS}|g|gramm|grams?){_OVER})?{_OVER}"
)
_RISEN = Late(
    rf" ?(?:{KG_WORDS}|{LB_WORDS}) (?:down|lighter|heavier|less|runter|rauf|leichter|schwerer|"
    rf"weniger|mehr|abgenommen|zugenommen)(?! ?\d| to| from| by| um| auf){_OVER}"
)
_GRAMS_CHANGED = Late(
    rf" ?(?:grammes?|gramm|grams?|gr|g) (?:down|lighter|heavier|less|runter|rauf|leichter|schwerer|"
    rf"weniger|abgenommen|zugenommen){_OVER}"
)
_POUNDS_PER_STONE = 14
_MOST_CHANGED = 10  # kg or lb overnight; what is more is no change but the weight itself
_ISH = Late(r" ?-?ish\b")
_SKIPPED_MARKS = {":", "=", "~", "≈", "&", "+", '"', "'", "*", "_", "\u2026"}


_Choice = tuple[tuple[Token, ...], ...]
_MOST_WAYS = 64


def expanded(choices: Sequence[_Choice]) -> Iterator[tuple[Token, ...]]:
    ways = 1
    kept: list[_Choice] = []
    for choice in choices:
        ways *= len(choice)
        kept.append(choice if ways <= _MOST_WAYS else choice[:1])
    for combination in product(*kept):
        yield tuple(token for tokens in combination for token in tokens)


def scan(line: str, language: str) -> list[_Choice]:
    found: list[_Choice] = []
    at = 0
    while at < len(line):
        if line[at] == " ":
            at += 1
            continue
        choice = _figure(line, at, language) or _word(line, at, language) or _mark(line, at)
        found.append(choice)
        at = max(token.end for tokens in choice for token in tokens)
    return found


def _one(token: Token) -> _Choice:
    return ((token,),)


def _unknown(line: str, start: int, end: int) -> _Choice:
    return _one(Word(start=start, end=end, text=line[start:end]))


def _figure(line: str, at: int, language: str) -> _Choice | None:
    before = line[at - 1] if at else " "
    if line[at] in "-+" and not (before in " \n,;:(|~" or at == 0):
        return None
    for pattern in (_DATE, _CLOCK):
        if match := pattern.match(line, at):
            return _unknown(line, at, match.end())
    # a slash with nothing before it: "/10" is half of something
    if line[at] == "/" and before in " \n" and line[at + 1 : at + 2].isdecimal():
        run = re.compile(r"[/\d.,]+").match(line, at)
        assert run is not None
        return _unknown(line, at, run.end())
    match = _BLOB.match(line, at)
    if match is None:
        return None
    number = match[0].rstrip(".,")
    end = at + len(number)
    if whole := _whole(line, at, number, end, language):
        return whole
    if number[0] in ".," and (before.isalnum() or "." in number[1:] or "," in number[1:]):
        return None  # the mark parts this number from what stands before it
    letters = before.isalpha() or before in "'_"
    if letters and not _labelled_at(line, at):
        return _run_on(line, at, end)
    if _WHOLE.fullmatch(number) is None:
        return _run_on(line, at, end)
    if number.count(",") + number.count(".") > 1:
        return _cut(line, at, number) or _run_on(line, at, end)
    if number.count(",") == 1 and number[0] != "," and _points_elsewhere(line, at, end):
        # decimals have points here, so that this comma may part two numbers
        parted = _cut(line, at, number) or ()
        return (*_with_unit(line, at, number, end), *parted[:1])
    return _with_unit(line, at, number, end)


def _whole(line: str, at: int, number: str, end: int, language: str) -> _Choice | None:
    """A number that is more than its digits, or that tells of something else than of an answer."""
    letters = line[at - 1 : at].isalpha() or line[at - 1 : at] in ("'", "_")
    if letters or _WHOLE.fullmatch(number) is None:
        return None
    if times := multiplied(line, number, end):
        amount, to = times
        return _with_unit(line, at, amount, to) if amount else _run_on(line, at, to)
    if longer := goes_on(line, number, end, language):
        return _with_unit(line, at, *longer)
    if _TOLD_OF.search(line[:at]) and not _NEXT_FIGURE.match(line, end):
        return _unknown(line, at, end)
    after = _RISEN.match(line, end) or (_AT.search(line[:at]) and _GOT_UP.match(line, end))
    if after and rough(number) < _MOST_CHANGED:
        return _unknown(line, at, after.end())
    if (match := _GRAMS_CHANGED.match(line, end)) and number.isdecimal():
        return _unknown(line, at, match.end())
    return None


def _points_elsewhere(line: str, start: int, end: int) -> bool:
    return re.search(r"\d\.\d{1,2}(?!\d)", line[:start] + " " + line[end:]) is not None


def _run_on(line: str, start: int, end: int) -> _Choice:
    """A number that goes on into something else, with all of that."""
    rest = re.compile(r"[^\s;|!?]*").match(line, end)
    return _unknown(line, start, rest.end() if rest else end)


def _labelled_at(line: str, at: int) -> bool:
    """Whether a word stands directly before the number, as in "full5"; checked by its label later."""
    start = at
    while start and line[start - 1].isalpha():
        start -= 1
    found = phrases("de").get((line[start:at],), ())
    return any(meaning.means is Means.LABEL for meaning in found)


def _with_unit(line: str, start: int, number: str, end: int) -> _Choice:
    if match := _CLOCK.match(line, start):
        return _unknown(line, start, match.end())

    def figure(end: int, unit: Unit = Unit.NONE, unit_text: str = "", *, k: bool = False) -> Figure:
        return _make(line, start, number, end, unit, unit_text, thousand=k)

    if (stones := _STONES.match(line, end)) and _is_stones(line, end):
        return _in_stones(line, start, number, end, stones)
    if (match := _SCALE.match(line, end)) and _is_scale(line, start, number, match):
        unit = Unit.OF_FIVE if match[1] == "5" else Unit.OF_TEN
        return _one(figure(match.end(), unit, "5" if unit is Unit.OF_FIVE else "10"))
    if match := _COUNTED.match(line, end):
        return _unknown(line, start, match.end())
    for unit, pattern in _UNITS:
        if match := pattern.match(line, end):
            if longer := with_half(line, number, match.end()):
                number, to = longer
                return _one(figure(to, unit, match[0].strip()))
            return _one(figure(match.end(), unit, match[0].strip()))
    if match := _THOUSAND.match(line, end):
        return _one(figure(match.end(), Unit.GRAMS, "g", k=True))
    if match := _ISH.match(line, end):
        return _one(figure(match.end()))
    following = line[end : end + 1]
    if following and (following.isalpha() or following in "'_²³½¼¾" or following.isnumeric()):
        return _run_on(line, start, end)
    if following == "+" and not line[end + 1 : end + 2].isdecimal():
        return _one(replace(figure(end + 1), bound=True))
    return _one(figure(end))


def _make(
    line: str, start: int, number: str, end: int, unit: Unit = Unit.NONE, unit_text: str = "", *,
    thousand: bool = False,
) -> Figure:  # fmt: skip
    return Figure(
        start=start, end=end, text=line[start:end], number=number.lstrip("+"), unit=unit,
        unit_text=unit_text, thousand=thousand,
    )  # fmt: skip


def _is_scale(line: str, start: int, number: str, match: re.Match[str]) -> bool:
    """Not in "60.2 / 5 / 3.5" and "60/5/10", where slashes part one answer from the next."""
    before, after = line[:start], line[match.end() :]
    if re.match(r",\d", after) and not _points_elsewhere(line, start, match.end()):
        return False  # the comma may be a decimal one
    if not match[0].startswith(" /"):
        return not before.endswith("/")
    parts = before.rstrip().endswith("/") or after.lstrip().startswith("/")
    return not parts and rough(number) <= (5 if match[1] == "5" else 10)


def _is_stones(line: str, end: int) -> bool:
    # "1st" and "21st" are no weights
    return not (
        line[end : end + 2] == "st" and line[max(0, end - 2) : end] in (" 1", "1", "21", "31")
    )


def _in_stones(line: str, start: int, number: str, end: int, match: re.Match[str]) -> _Choice:
    alone = match.end() if match["rest"] is None else match.start("rest")
    stone_end = re.compile(rf" ?{ST_WORDS}\.?").match(line, end)
    assert stone_end is not None
    if longer := _pounds_in_words(line, stone_end.end()):
        pounds, to = longer
        return _one(
            Figure(
                start=start, end=to, number=number, unit=Unit.WEIGHT, unit_text=f"st {pounds} lb",
                text=line[start:to],
            )
        )  # fmt: skip
    stones = Figure(
        start=start, end=min(alone, stone_end.end()), number=number, unit=Unit.WEIGHT, unit_text="st",
        text=line[start : stone_end.end()],
    )  # fmt: skip
    if match["rest"] is None:
        return _one(stones)
    whole = Figure(
        start=start, end=match.end(), number=number, unit=Unit.WEIGHT,
        unit_text=f"st {match['rest']} lb", text=line[start : match.end()],
    )  # fmt: skip
    if match["lb"] is not None:
        return _one(whole)
    (rest,) = _with_unit(line, match.start("rest"), match["rest"], match.end("rest"))
    if any(token.end != match.end() for token in rest):
        return ((stones, *rest),)
    return ((whole,), (stones, *rest))


def _pounds_in_words(line: str, at: int) -> tuple[str, int] | None:
    """The pounds after stones where they are written out or have a half: up to where they go."""
    gap = re.compile(r"[ ,&]*(?:and )?").match(line, at)
    assert gap is not None
    digits = re.compile(NUMBER).match(line, gap.end())
    found = (
        goes_on(line, digits[0], digits.end(), "en") if digits else spelt_at(line, gap.end(), "en")
    )
    unit = re.compile(rf" ?{LB_WORDS}{_OVER}").match(line, found[1]) if found else None
    if found is None or rough(found[0]) >= _POUNDS_PER_STONE or (unit is None and "," in gap[0]):
        return None
    return found[0], unit.end() if unit else found[1]


def _cut(line: str, start: int, number: str) -> _Choice | None:
    """The ways to cut a run like "59,1,5,3.5" into numbers; None where it is none."""
    if "." in number:
        groups = number.split(",")
        if any(group.count(".") > 1 or group.startswith(".") for group in groups):
            return None
        cuts: list[tuple[str, ...]] = [tuple(groups)] if len(groups) > 1 else []
        if len(groups) > 2 and groups[0].isdecimal() and re.fullmatch(r"\d", groups[1]):
            cuts.append((f"{groups[0]},{groups[1]}", *groups[2:]))
        if len(groups) == 2 and "." not in groups[0] and len(groups[1].split(".")[0]) == 3:
            return None  # "1,234.5": thousands
    else:
        cuts = list(_joined(tuple(number.split(","))))
    if not cuts or len(cuts) > _MOST_WAYS:
        return None
    ways = []
    for cut in cuts:
        tokens: list[Token] = []
        at = start
        for index, part in enumerate(cut):
            end = at + len(part)
            if index == len(cut) - 1:
                (last,) = _with_unit(line, at, part, end)[:1]
                tokens.extend(last)
            else:
                tokens.append(_make(line, at, part, end))
                tokens.append(Mark(start=end, end=end + 1, text=","))
            at = end + 1
        ways.append(tuple(tokens))
    return tuple(ways)


def _joined(groups: tuple[str, ...]) -> Iterator[tuple[str, ...]]:
    """Each way to read commas between groups of digits as parting them or as a decimal mark."""
    if not groups:
        yield ()
        return
    for rest in _joined(groups[1:]):
        yield (groups[0], *rest)
    if len(groups) > 1 and len(groups[1]) <= 2:
        for rest in _joined(groups[2:]):
            yield (f"{groups[0]},{groups[1]}", *rest)


def _word(line: str, at: int, language: str) -> _Choice | None:
    match = _WORD.match(line, at)
    if match is None:
        return None
    changed = _CHANGED.match(line, at)
    if changed and (rough(changed["number"]) < _MOST_CHANGED or changed[0].endswith(("g", "m"))):
        return _unknown(line, at, changed.end())
    if spelt := spelt_at(line, at, language):
        return _spelt_out(line, at, *spelt, language)
    known, longest = phrases(language), longest_phrase(language)
    words, ends = [match[0]], [match.end()]
    at_next = match.end()
    while len(words) < longest:
        following = re.compile(r" +").match(line, at_next)
        again = _WORD.match(line, following.end()) if following else None
        if again is None:
            break
        words.append(again[0])
        ends.append(again.end())
        at_next = again.end()
    for count in range(len(words), 0, -1):
        if meanings := known.get(tuple(words[:count])):
            end = ends[count - 1]
            return _one(Word(start=at, end=end, text=line[at:end], meanings=meanings))
    if label := label_meant(line, at, match.end(), language):
        return _one(Word(start=at, end=match.end(), text=match[0], meanings=(label,)))
    return _unknown(line, at, match.end())


def _spelt_out(line: str, at: int, number: str, end: int, language: str) -> _Choice:
    """A number in words, with what may be said of it without a point; see `numbers`."""
    if whole := without_its_point(line, number, end, language):
        return _with_unit(line, at, *whole)
    if (cut := two_ways(line, at, number, end, language)) is not None:
        tenths = _make(line, at, number[:-1], cut)
        single = _make(line, cut + 1, number[-1], end)
        return ((_make(line, at, number, end),), (tenths, single))
    found = _with_unit(line, at, number, end)
    figure = found[0][0]
    if len(found) == 1 and isinstance(figure, Figure) and figure.unit in (Unit.WEIGHT, Unit.VOLUME):
        longer = with_tenths(line, figure.number, figure.end, language)
        if longer and figure.unit_text.split(" ")[0] != "st":
            return _one(replace(figure, number=longer[0], end=longer[1], text=line[at : longer[1]]))
    return found


def _mark(line: str, at: int) -> _Choice:
    char = line[at]
    if char.isalnum() or not char.isascii():
        # a sign or an arrow in front of a number parts it from the one before
        pointer = re.compile(r"[^\w\s]+ ?(?=\d)").match(line, at)
        if char.isalnum() or pointer is None or category(char)[0] != "S":
            return _unknown(line, at, at + 1)
        return _one(Mark(start=at, end=pointer.end(), text="|"))
    return _one(Mark(start=at, end=at + 1, text=char))


def is_skipped(token: Token) -> bool:
    """Whether this is a mark that says nothing, such as a colon after a label."""
    return isinstance(token, Mark) and token.text in _SKIPPED_MARKS


def rough(number: str) -> float:
    """About what a number is worth; not a number where that can't be said."""
    try:
        return float(number.replace(",", "."))
    except ValueError:
        return float("nan")
