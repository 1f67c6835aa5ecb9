"""Figures in digits: a number with what stands directly at it, and the ways to cut a run of them."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace

import engine.written.oneline.tokens.pieces as at_number
from engine.written.oneline.tokens.numbers import goes_on, multiplied, spelt_at, with_half
from engine.written.oneline.tokens.pieces import Figure, Mark, Means, Token, Unit, Word
from engine.written.oneline.vocabulary.by_language import label_meant, phrases
from engine.written.units.amounts import LB_WORDS, ST_WORDS
from engine.written.units.reading import NUMBER

#: The ways to read one place of a line, each as its tokens.
Choice = tuple[tuple[Token, ...], ...]
MOST_WAYS = 64


def only(token: Token) -> Choice:
    """The one way to read a place."""
    return ((token,),)


def unread(line: str, start: int, end: int) -> Choice:
    """A word that nothing is known of."""
    return only(Word(start=start, end=end, text=line[start:end]))


def figure_at(line: str, at: int, language: str) -> Choice | None:
    """The figure in digits that stands there, or the whole of what only looks like one; else None."""
    before = line[at - 1] if at else " "
    if line[at] in "-+" and not (before in " \n,;:(|~" or at == 0):
        return None
    for pattern in (at_number.DATE, at_number.CLOCK):
        if match := pattern.match(line, at):
            return unread(line, at, match.end())
    # a slash with nothing before it: "/10" is half of something
    if line[at] == "/" and before in " \n" and line[at + 1 : at + 2].isdecimal():
        run = re.compile(r"[/\d.,]+").match(line, at)
        assert run is not None
        return unread(line, at, run.end())
    match = at_number.BLOB.match(line, at)
    if match is None:
        return None
    number = match[0].rstrip(".,")
    end = at + len(number)
    if whole := _whole(line, at, number, end, language):
        return whole
    if number[0] in ".," and (before.isalnum() or "." in number[1:] or "," in number[1:]):
        return None  # the mark parts this number from what stands before it
    quoted = before == "'" and not line[at - 2 : at - 1].isalnum()
    letters = before.isalpha() or (before in "'_" and not quoted)
    if letters and not _labelled_at(line, at):
        return _run_on(line, at, end)
    if at_number.WHOLE.fullmatch(number) is None:
        return _run_on(line, at, end)
    if number.count(",") + number.count(".") > 1:
        return _cut(line, at, number) or _run_on(line, at, end)
    if number.count(",") == 1 and at_number.SLEPT.match(line, end):
        return with_unit(line, at, number, end)
    if number.count(",") == 1 and number[0] != "," and _points_elsewhere(line, at, end):
        # decimals have points here, so that this comma may part two numbers
        parted = _cut(line, at, number) or ()
        return (*with_unit(line, at, number, end), *parted[:1])
    return with_unit(line, at, number, end)


def _whole(line: str, at: int, number: str, end: int, language: str) -> Choice | None:
    """A number that is more than its digits, or that tells of something else than of an answer."""
    letters = line[at - 1 : at].isalpha() or line[at - 1 : at] == "_"
    letters = letters or bool(re.search(r"\w'$", line[:at]))
    if letters or at_number.WHOLE.fullmatch(number) is None:
        return None
    if times := multiplied(line, number, end):
        amount, to = times
        return with_unit(line, at, amount, to) if amount else _run_on(line, at, to)
    if (part := at_number.PART_OF.match(line, at)) and not line[at - 1 : at].isalnum():
        share = int(part["top"]) / int(part["of"])
        return only(figure_of(line, (at, part.end()), f"{share:g}", Unit.VOLUME, part["unit"]))
    return _said_otherwise(line, at, number, end) or _told_of_else(line, at, number, end, language)


def _said_otherwise(line: str, at: int, number: str, end: int) -> Choice | None:
    """A score as a mark ("a 7er"), a weight as "59k7", bottles with their size, what is unreadable."""
    if (grade := at_number.AS_GRADE.match(line, end)) and number.isdecimal():
        return only(figure_of(line, (at, grade.end()), number))
    if at_number.UNREADABLE.match(line, end):
        return _run_on(line, at, end)
    if (tenth := at_number.KILO_TENTH.match(line, end)) and number.isdecimal():
        kg = f"{number}.{tenth['tenth']}".rstrip("0").rstrip(".")
        return only(figure_of(line, (at, tenth.end()), kg, Unit.WEIGHT, "kg"))
    return None


def _told_of_else(line: str, at: int, number: str, end: int, language: str) -> Choice | None:
    """The whole of a number that goes on in words, and what tells of something else."""
    if longer := goes_on(line, number, end, language):
        return with_unit(line, at, *longer)
    if (apart := at_number.CHANGE_APART.match(line, at)) and line[at - 1 : at] == "(":
        return unread(line, at, apart.end())
    if at_number.DAY_OF.search(line[:at]) and number.isdecimal() and line[end : end + 2].strip():
        return unread(line, at, end)
    if at_number.POINTLESS.match(line, end):
        return _run_on(line, at, end)
    told_of = at_number.TOLD_OF.search(line[:at])
    if told_of and (
        at_number.OF_FULLNESS.match(line, end)
        or at_number.FULLNESS_BEFORE.search(line[: told_of.start()])
    ):
        told_of = None  # "up at 7 full"
    taken = told_of and at_number.TAKEN_BEFORE.search(line[: told_of.start()])
    if told_of and not taken and not at_number.NEXT_FIGURE.match(line, end):
        return unread(line, at, end)
    after = at_number.RISEN.match(line, end) or (
        at_number.AT.search(line[:at]) and at_number.GOT_UP.match(line, end)
    )
    if after and rough(number) < at_number.MOST_CHANGED:
        return unread(line, at, after.end())
    if (match := at_number.GRAMS_CHANGED.match(line, end)) and number.isdecimal():
        return unread(line, at, match.end())
    return None


def _points_elsewhere(line: str, start: int, end: int) -> bool:
    return re.search(r"\d\.\d{1,2}(?!\d)", line[:start] + " " + line[end:]) is not None


def _run_on(line: str, start: int, end: int) -> Choice:
    """A number that goes on into something else, with all of that."""
    rest = re.compile(r"[^\s;|!?]*").match(line, end)
    return unread(line, start, rest.end() if rest else end)


def _labelled_at(line: str, at: int) -> bool:
    """Whether a word stands directly before the number, as in "full5"; checked by its label later."""
    start = at
    while start and line[start - 1].isalpha():
        start -= 1
    found = phrases("de").get((line[start:at],), ())
    if any(meaning.means is Means.LABEL for meaning in found):
        return True
    return start < at and label_meant(line, start, at, "de") is not None


def with_unit(line: str, start: int, number: str, end: int) -> Choice:
    """A number with the unit, scale or second half that stands behind it."""
    if match := at_number.CLOCK.match(line, start):
        return unread(line, start, match.end())

    def figure(end: int, unit: Unit = Unit.NONE, unit_text: str = "") -> Figure:
        return figure_of(line, (start, end), number, unit, unit_text)

    if (stones := at_number.STONES.match(line, end)) and _is_stones(line, end):
        return _in_stones(line, start, number, end, stones)
    if (match := at_number.SCALE.match(line, end)) and _is_scale(line, start, number, match):
        unit = Unit.OF_FIVE if match[1] == "5" else Unit.OF_TEN
        return only(figure(match.end(), unit, "5" if unit is Unit.OF_FIVE else "10"))
    if match := at_number.COUNTED.match(line, end):
        return unread(line, start, match.end())
    if with_its_unit := _unit_at(line, start, number, end):
        return only(with_its_unit)
    if match := at_number.ISH.match(line, end):
        if longer := with_half(line, number, match.end()):
            return only(figure_of(line, (start, longer[1]), longer[0]))
        return only(figure(match.end()))
    following = line[end : end + 1]
    if _runs_on(following, line[end + 1 : end + 2]):
        return _run_on(line, start, end)
    if following == "+" and not line[end + 1 : end + 2].isdecimal():
        return only(replace(figure(end + 1), bound=True))
    return only(figure(end))


def _runs_on(following: str, next_but_one: str) -> bool:
    """Whether what follows a number belongs to it, and makes it none: "72:4", "5x", "7²"."""
    if following == "'":
        return next_but_one.isalnum()
    if following == ":":
        return next_but_one.isdecimal()
    return bool(following) and (following.isalnum() or following in "_²³½¼¾")


def _labels_next(line: str, number: str, end: int) -> bool:
    """ "fullness 6 kg 49.2": nobody weighs six, so the unit is the word for the number behind it."""
    none = rough(number) * at_number.GRAMS_PER_KG < at_number.LEAST_WEIGHT_G
    return none and bool(at_number.WEIGHT_NEXT.match(line, end))


def _unit_at(line: str, start: int, number: str, end: int) -> Figure | None:
    """The figure with the unit behind it, and what goes on behind that: "72 kilo 400"."""
    for unit, pattern in at_number.UNITS:
        match = pattern.match(line, end)
        if match is None or at_number.LABELS_NEXT.match(line, match.end()):
            continue
        if unit is Unit.WEIGHT and _labels_next(line, number, match.end()):
            continue
        if unit is Unit.GRAMS and at_number.THOUSANDS_OF_GRAMS.fullmatch(number):
            kg = number.rstrip("0").rstrip(".,")
            return figure_of(line, (start, match.end()), kg, Unit.WEIGHT, "kg")
        if unit is Unit.GRAMS and rough(number) >= at_number.LEAST_WEIGHT_G:
            kg = f"{rough(number) / 1000:g}"  # a scale that shows grams
            return figure_of(line, (start, match.end()), kg, Unit.WEIGHT, "kg")
        to, said = match.end(), match[0].strip()
        grams = at_number.AND_GRAMS.match(line, to) if unit is Unit.WEIGHT else None
        millilitres = at_number.AND_MILLILITRES.match(line, to) if said[:1] == "l" else None
        more = (grams if said[:1] == "k" else None) or (
            millilitres if unit is Unit.VOLUME else None
        )
        spelt = _grams_in_words(line, to) if unit is Unit.WEIGHT and said[:1] == "k" else None
        if spelt and number.isdecimal():
            return figure_of(line, (start, spelt[1]), f"{number}{spelt[0]}", unit, said)
        if more and number.isdecimal():
            number, to = f"{number}.{more['more']}".rstrip("0"), more.end()
        elif longer := with_half(line, number, to):
            number, to = longer
        return figure_of(line, (start, to), number, unit, said)
    if match := at_number.THOUSAND.match(line, end):
        figure = figure_of(line, (start, match.end()), number, Unit.GRAMS, "g")
        return replace(figure, thousand=True)
    return None


def _grams_in_words(line: str, at: int) -> tuple[str, int] | None:
    """The decimals that "und fünfhundert gramm" adds to kilograms, and up to where they go."""
    gap = re.compile(r" (?:und |and )?").match(line, at)
    found = spelt_at(line, gap.end(), "de") if gap else None
    grams = re.compile(r" ?(?:gramm|grams?|g)(?![^\W_])").match(line, found[1]) if found else None
    if found is None or grams is None or not 0 < rough(found[0]) < at_number.GRAMS_PER_KG:
        return None
    return f"{rough(found[0]) / at_number.GRAMS_PER_KG:.3f}"[1:].rstrip("0"), grams.end()


def figure_of(
    line: str, span: tuple[int, int], number: str, unit: Unit = Unit.NONE, unit_text: str = ""
) -> Figure:
    start, end = span
    return Figure(
        start=start, end=end, text=line[start:end], number=number.lstrip("+"), unit=unit,
        unit_text=unit_text,
    )  # fmt: skip


def _is_scale(line: str, start: int, number: str, match: re.Match[str]) -> bool:
    """Not in "60.2 / 5 / 3.5" and "60/5/10", where slashes part one answer from the next."""
    before, after = line[:start], line[match.end() :]
    if match[0].startswith(" /") and not number.isdecimal():
        return False  # the "/10" of a score that was left out
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


def _in_stones(line: str, start: int, number: str, end: int, match: re.Match[str]) -> Choice:
    alone = match.end() if match["rest"] is None else match.start("rest")
    stone_end = re.compile(rf" ?{ST_WORDS}\.?").match(line, end)
    assert stone_end is not None
    if longer := _pounds_in_words(line, stone_end.end()):
        pounds, to = longer
        return only(
            Figure(
                start=start, end=to, number=number, unit=Unit.WEIGHT, unit_text=f"st {pounds} lb",
                text=line[start:to],
            )
        )  # fmt: skip
    if re.search(r"[^\W\d_]", line[start:end]) and rough(number) % 1 == 0.5:
        # "eleven and a half stone" is half of one; "11.5 stone" may be 11 st 5
        text = line[start : stone_end.end()]
        return only(
            Figure(
                start=start, end=stone_end.end(), number=f"{int(rough(number))}", unit=Unit.WEIGHT,
                unit_text=f"st {at_number.POUNDS_PER_STONE // 2} lb", text=text,
            )
        )  # fmt: skip
    stones = Figure(
        start=start, end=min(alone, stone_end.end()), number=number, unit=Unit.WEIGHT, unit_text="st",
        text=line[start : stone_end.end()],
    )  # fmt: skip
    if match["rest"] is None:
        return only(stones)
    whole = Figure(
        start=start, end=match.end(), number=number, unit=Unit.WEIGHT,
        unit_text=f"st {match['rest']} lb", text=line[start : match.end()],
    )  # fmt: skip
    if match["lb"] is not None:
        return only(whole)
    (rest,) = with_unit(line, match.start("rest"), match["rest"], match.end("rest"))
    if any(token.end != match.end() for token in rest):
        return ((stones, *rest),)
    return ((whole,), (stones, *rest))


def _pounds_in_words(line: str, at: int) -> tuple[str, int] | None:
    """The pounds after stones where they are written out or have a half: up to where they go."""
    gap = re.compile(r"[ ,&]*(?:and )?").match(line, at)
    assert gap is not None
    if half := at_number.HALF_A_POUND.match(line, gap.end()):
        return "0.5", half.end()
    digits = re.compile(NUMBER).match(line, gap.end())
    found = (
        goes_on(line, digits[0], digits.end(), "en") if digits else spelt_at(line, gap.end(), "en")
    )
    unit = re.compile(rf" ?{LB_WORDS}{at_number.OVER}").match(line, found[1]) if found else None
    if (
        found is None
        or rough(found[0]) >= at_number.POUNDS_PER_STONE
        or (unit is None and "," in gap[0])
    ):
        return None
    return found[0], unit.end() if unit else found[1]


def _cut(line: str, start: int, number: str) -> Choice | None:
    """The ways to cut a run like "59,1,5,3.5" into numbers; None where it is none."""
    cuts: list[tuple[str, ...]]
    parts = number.split(".")
    if len(parts) > 2 and "," not in number:  # "63.1.6.3"
        cuts = list(_joined(tuple(parts))) if max(map(len, parts[1:])) < 3 else []
    elif len(parts) > 2 and re.fullmatch(r"\d+,\d(?:\.\d+(?:,\d)?)+", number):
        cuts = [tuple(parts)]  # "73,8.7.3,5"
    elif "." in number:
        groups = number.split(",")
        if any(group.count(".") > 1 or group.startswith(".") for group in groups):
            return None
        cuts = [tuple(groups)] if len(groups) > 1 else []
        if len(groups) > 2 and groups[0].isdecimal() and re.fullmatch(r"\d", groups[1]):
            cuts.append((f"{groups[0]},{groups[1]}", *groups[2:]))
        if len(groups) == 2 and "." not in groups[0] and len(groups[1].split(".")[0]) == 3:
            return None  # "1,234.5": thousands
    else:
        cuts = list(_joined(tuple(number.split(","))))
    if not cuts or len(cuts) > MOST_WAYS:
        return None
    ways = []
    for cut in cuts:
        tokens: list[Token] = []
        at = start
        for index, part in enumerate(cut):
            end = at + len(part)
            if index == len(cut) - 1:
                (last,) = with_unit(line, at, part, end)[:1]
                tokens.extend(last)
            else:
                tokens.append(figure_of(line, (at, end), part))
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


def rough(number: str) -> float:
    """About what a number is worth; not a number where that can't be said."""
    try:
        return float(number.replace(",", "."))
    except ValueError:
        return float("nan")
