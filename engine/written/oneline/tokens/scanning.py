"""From what was typed to figures, words and marks, each with its place.

A figure is a whole number with whatever stands directly at it: its sign, unit, scale, the second end
of a range. What runs on into letters or further digits is no figure at all, and stays unread.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import product
from unicodedata import category

import engine.written.oneline.tokens.pieces as at_number
from engine.written.oneline.tokens.digits import (
    MOST_WAYS,
    Choice,
    figure_at,
    figure_of,
    only,
    rough,
    unread,
    with_unit,
)
from engine.written.oneline.tokens.numbers import (
    spelt_at,
    two_ways,
    with_half,
    with_tenths,
    without_its_point,
)
from engine.written.oneline.tokens.pieces import Figure, Mark, Meaning, Means, Token, Unit, Word
from engine.written.oneline.tokens.slips import LEFT_OUT, LEFT_OUT_OF_LABEL
from engine.written.oneline.vocabulary.by_language import label_meant, longest_phrase, phrases

#: Pictures that label a drink.
_DRINKS = "💧💦🚰"
_SKIPPED = Meaning(Means.SKIP, "")
_OF_DRINK = Meaning(Means.LABEL, "water_l")


def expanded(choices: Sequence[Choice]) -> Iterator[tuple[Token, ...]]:
    ways = 1
    kept: list[Choice] = []
    for choice in choices:
        ways *= len(choice)
        kept.append(choice if ways <= MOST_WAYS else choice[:1])
    for combination in product(*kept):
        yield tuple(token for tokens in combination for token in tokens)


def scan(line: str, language: str) -> list[Choice]:
    found: list[Choice] = []
    items = _items(line)
    at = 0
    while at < len(line):
        if line[at] == " ":
            at += 1
            continue
        if at in items:
            found.append(only(Mark(start=at, end=at + 2, text="|")))
            at += 2
            continue
        figure = None if line[at].isalpha() else figure_at(line, at, language)
        choice = figure or _word(line, at, language) or _mark(line, at)
        found.append(choice)
        at = max(token.end for tokens in choice for token in tokens)
    return found


def _items(line: str) -> frozenset[int]:
    """Where the numbers of a numbered list stand: 1, 2, 3 in order."""
    found = list(at_number.ITEM.finditer(line))
    numbers = [int(match["which"]) for match in found]
    counts = len(found) > 1 and numbers == list(range(1, len(found) + 1))
    return frozenset(match.start() for match in found) if counts else frozenset()


def _word(line: str, at: int, language: str) -> Choice | None:
    match = at_number.NOT_KNOWN.match(line, at) or at_number.WORD.match(line, at)
    if match is None:
        return None
    if scale := at_number.SCALE_ALONE.match(line, at):
        return unread(line, at, scale.end())
    if to := at_number.CHANGED_TO.match(line, at):
        return unread(line, at, to.end())
    if amount := at_number.GALLON.match(line, at):
        share = "0.5" if amount["half"] else "1"
        if longer := with_half(line, share, amount.end()):
            return only(figure_of(line, (at, longer[1]), longer[0], Unit.VOLUME, amount["unit"]))
        if line[amount.end() : amount.end() + 1] == "+":
            more = figure_of(line, (at, amount.end() + 1), share, Unit.VOLUME, amount["unit"])
            return only(replace(more, bound=True))
        return only(figure_of(line, (at, amount.end()), share, Unit.VOLUME, amount["unit"]))
    changed = at_number.CHANGED.match(line, at)
    if changed and (
        rough(changed["number"]) < at_number.MOST_CHANGED or changed[0].endswith(("g", "m"))
    ):
        return unread(line, at, changed.end())
    if spelt := spelt_at(line, at, language):
        return _spelt_out(line, at, *spelt, language)
    return _phrase(line, at, match, language)


def _phrase(line: str, at: int, match: re.Match[str], language: str) -> Choice:
    """The longest phrase that begins here, a label with a slip in it, or a word that is not known."""
    known, longest = phrases(language), longest_phrase(language)
    words, ends = [match[0]], [match.end()]
    at_next = match.end()
    while len(words) < longest:
        following = re.compile(r" +").match(line, at_next)
        again = at_number.WORD.match(line, following.end()) if following else None
        if again is None:
            break
        words.append(again[0])
        ends.append(again.end())
        at_next = again.end()
    for count in range(len(words), 0, -1):
        if meanings := known.get(tuple(words[:count])):
            end = ends[count - 1]
            return only(Word(start=at, end=end, text=line[at:end], meanings=meanings))
    bare = match[0].removesuffix("'s")
    if bare != match[0] and (meanings := known.get((bare,))):  # "look's a six"
        return only(Word(start=at, end=match.end(), text=match[0], meanings=meanings))
    if label := label_meant(line, at, match.end(), language):
        return only(Word(start=at, end=match.end(), text=match[0], meanings=(label,)))
    return unread(line, at, match.end())


def _spelt_out(line: str, at: int, number: str, end: int, language: str) -> Choice:
    """A number in words, with what may be said of it without a point; see `numbers`."""
    if whole := without_its_point(line, number, end, language):
        return with_unit(line, at, *whole)
    if number.isdecimal() and (point := at_number.POINTLESS.match(line, end)):
        return unread(line, at, point.end())  # what follows the point is not known
    if (cut := two_ways(line, at, number, end, language)) is not None:
        tenths = figure_of(line, (at, cut), number[:-1])
        single = figure_of(line, (cut + 1, end), number[-1])
        return ((figure_of(line, (at, end), number),), (tenths, single))
    found = with_unit(line, at, number, end)
    figure = found[0][0]
    if len(found) == 1 and isinstance(figure, Figure) and figure.unit in (Unit.WEIGHT, Unit.VOLUME):
        longer = with_tenths(line, figure.number, figure.end, language)
        if longer and figure.unit_text.split(" ")[0] != "st":
            return only(replace(figure, number=longer[0], end=longer[1], text=line[at : longer[1]]))
    return found


def _mark(line: str, at: int) -> Choice:
    char = line[at]
    if char == LEFT_OUT:  # a clause of its own
        held = Word(start=at, end=at + 1, text=char, meanings=(_SKIPPED,))
        return ((Mark(start=at, end=at, text="|"), held, Mark(start=at + 1, end=at + 1, text="|")),)
    if char == LEFT_OUT_OF_LABEL:
        return only(Word(start=at, end=at + 1, text=char, meanings=(_SKIPPED,)))
    if char in _DRINKS:
        return only(Word(start=at, end=at + 1, text=char, meanings=(_OF_DRINK,)))
    if char.isalnum() or not char.isascii():
        # a sign or an arrow in front of a number parts it from the one before
        pointer = re.compile(r"[^\w\s]+ ?(?=\d)").match(line, at)
        if char.isalnum() or pointer is None or category(char)[0] != "S":
            return unread(line, at, at + 1)
        return only(Mark(start=at, end=pointer.end(), text="|"))
    return only(Mark(start=at, end=at + 1, text=char))
