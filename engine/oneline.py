"""A whole check-in in one line: weight, fullness, water, and sharpness from the load on."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache

from engine.oneline_words import LineWords, line_words
from engine.units import (
    Refusal,
    RefusalCode,
    Volume,
    VolumeUnit,
    Weight,
    WeightUnit,
    parse_grams,
    parse_score,
    parse_volume,
    parse_weight,
)
from engine.units.reading import NUMBER, plain_with_places
from engine.units.volume import VOLUME_WORDS
from engine.units.weight import KG_WORDS, LB_WORDS, ST_WORDS


@dataclass(frozen=True, slots=True, kw_only=True)
class OneLine:
    """The answers of the line. `note` is what was left over, in the athlete's own words.

    `all_fine` is said only where no note follows: with one, a person's words come first.
    """

    weight: Weight
    fullness: int
    water: Volume
    sharpness: int | None = None
    carb_eaten_g: float | None = None
    on_target: bool = False
    all_fine: bool = False
    note: str = ""


_SIGNED = rf"-?{NUMBER}"
_OVER = r"(?![\w'])"  # no letter or digit follows
_START = re.compile(_SIGNED)
_BETWEEN = re.compile(r"(?:[\s,;|/]|-(?=\s))*")
_WEIGHT = re.compile(rf"{_SIGNED}(?: ?(?:{KG_WORDS}|{LB_WORDS})\.?{_OVER}|{_OVER})")
_STONES = re.compile(rf"{_SIGNED} ?{ST_WORDS}(?![a-z])\.?")
_POUNDS = re.compile(rf"[ ,&]*(?:and )?{NUMBER}(?P<named> ?{LB_WORDS}{_OVER})?{_OVER}")
_AFTER_NUMBERS = re.compile(r"[\s,;|/.]*")
_WHERE_NOT_GIVEN = {RefusalCode.NOT_A_CHECK_IN, RefusalCode.INCOMPLETE}


class _Patterns:
    """What is looked for after the weight, in the words of some languages."""

    def __init__(self, words: LineWords) -> None:
        of_five = rf"(?: ?(?:/|{words.of}) ?5\b)?"
        label = rf"(?:(?:{words.fullness})(?: (?:{words.says}))?[:= ]+)?"
        self.fullness_number = re.compile(rf"{label}(?P<value>{_SIGNED}){_OVER}")
        self.fullness = re.compile(
            rf"{label}(?P<value>{_SIGNED}(?:(?:/| (?:{words.of}) )10(?![.,]?\d))?){_OVER}"
        )
        self.water = re.compile(
            rf"(?:(?:{words.water}|{words.drunk})(?: (?:{words.says}))?[:= ]+)?"
            rf"(?P<value>{_SIGNED}(?: ?{VOLUME_WORDS}{_OVER}|{_OVER}))"
            rf"(?: (?:of )?(?:{words.water}){_OVER})?"
        )
        # a number that counts something belongs to the note
        self.bare = re.compile(
            rf"(?P<value>{_SIGNED}{of_five}){_OVER}(?! ?(?:{words.counted})\b)(?! ?%)"
        )
        self.sharp = re.compile(
            rf"(?:{words.sharpness})(?: (?:{words.says}))?[:= ]*(?P<value>{_SIGNED}{of_five}){_OVER}"
        )
        self.carbs = re.compile(
            rf"(?:{words.carbs})(?: (?:{words.eaten}))?[:= ]*"
            rf"(?P<value>{_SIGNED}(?: ?(?:grams?|gramm|g)\b)?){_OVER}"
        )
        self.on_target = re.compile(rf"(?:{words.on_target}){_OVER}")
        self.fine = re.compile(rf"(?:{words.fine}){_OVER}")
        self.only_manners = re.compile(rf"(?:{words.manners}|[\W_]+)*")


@cache
def _patterns(language: str) -> _Patterns:
    return _Patterns(line_words(language))


def parse_one_line(
    text: str,
    *,
    weight_unit: WeightUnit | None,
    volume_unit: VolumeUnit | None,
    wants_sharpness: bool,
    language: str = "en",
) -> OneLine:
    """Read weight, fullness and water in this order, then sharpness where it is asked for.

    The units are the athlete's own settings, `language` is what they write in beside English.
    Labelled extras ("sharp 4", "carbs 310", "on target", "fine") follow the numbers, and everything
    from the first other word on is the note. Raises
    `Refusal`: code "not-a-check-in" where the line is something else (one answer, a message), any
    other code where it is a check-in that cannot be read, or can be read in two ways.
    """
    line, places = plain_with_places(text)
    start = len(line) - len(line.lstrip())
    if not _START.match(line, start):
        raise Refusal(RefusalCode.NOT_A_CHECK_IN)
    readings: list[OneLine] = []
    refusals: list[Refusal] = []
    for words, end in _weights(line, start, weight_unit):
        try:
            reading = _Reading(line, end, wants_sharpness, _patterns(language))
            readings.append(reading.read(words, weight_unit, volume_unit, text, places))
        except Refusal as refusal:
            refusals.append(refusal)
    unfinished = any(refusal.code is RefusalCode.INCOMPLETE for refusal in refusals)
    if len(readings) > 1 or (readings and unfinished):
        raise Refusal(RefusalCode.AMBIGUOUS_STONE, given=line[start : start + 20], field="weight")
    if readings:
        return readings[0]
    raise _most_telling(refusals)


def _weights(line: str, start: int, unit: WeightUnit | None) -> Iterator[tuple[str, int]]:
    """What the weight may be, and where it ends: pounds after stones may be the fullness too."""
    stones = _STONES.match(line, start)
    simple = _WEIGHT.match(line, start)
    first = stones or simple
    if first is None:
        return
    bare_stones = unit is WeightUnit.ST and first[0].isdigit()
    pounds = _POUNDS.match(line, first.end()) if stones or bare_stones else None
    if pounds is not None:
        said = first[0] if stones else f"{first[0]} st"
        yield said + " " + pounds[0].lstrip(" ,&"), pounds.end()
    if pounds is None or pounds["named"] is None:
        yield first[0], first.end()


def _most_telling(refusals: list[Refusal]) -> Refusal:
    """A number that cannot be says more than one that is missing; a lone answer is no check-in."""
    if not refusals or any(r.code is RefusalCode.NOT_A_CHECK_IN for r in refusals):
        telling = [r for r in refusals if r.code is RefusalCode.AMBIGUOUS_SEPARATOR]
        return telling[0] if telling else Refusal(RefusalCode.NOT_A_CHECK_IN)
    return next((r for r in refusals if r.code not in _WHERE_NOT_GIVEN), refusals[0])


class _Reading:
    """Walks along one line once, from the end of the weight on."""

    def __init__(self, line: str, at: int, wants_sharpness: bool, patterns: _Patterns) -> None:
        self._line, self._at, self._wants_sharpness = line, at, wants_sharpness
        self._patterns = patterns

    def read(
        self,
        weight_words: str,
        weight_unit: WeightUnit | None,
        volume_unit: VolumeUnit | None,
        text: str,
        places: list[int],
    ) -> OneLine:
        slashed = self._line.startswith("/", self._at)  # then "7/10" is two answers, not a score
        fullness_words = self._take(
            self._patterns.fullness_number if slashed else self._patterns.fullness
        )
        if fullness_words is None:
            raise Refusal(_why_alone(weight_words))
        water_words = self._take(self._patterns.water)
        if water_words is None and not _reads_as_weight(weight_words, weight_unit):
            raise Refusal(RefusalCode.NOT_A_CHECK_IN)  # two numbers of something else
        with _field("weight"):
            weight = parse_weight(weight_words, unit=weight_unit)
        with _field("fullness"):
            fullness = parse_score(fullness_words, 1, 10)
        if water_words is None:
            raise Refusal(RefusalCode.INCOMPLETE, missing="water")
        with _field("water"):
            water = parse_volume(water_words, unit=volume_unit)
        with _field("sharpness"):
            sharpness = self._bare_sharpness()
        extras = self._extras()
        note_at = extras.fine_at if extras.fine_at is not None else self._at
        rest = text[places[self._at] :].strip() if self._at < len(places) else ""
        manners = self._patterns.only_manners.fullmatch(rest.lower()) is not None
        fine = extras.fine_at is not None and manners
        if not fine and note_at < len(places):
            rest = text[places[note_at] :].strip()
        return OneLine(
            weight=weight,
            fullness=fullness,
            water=water,
            sharpness=sharpness if extras.sharpness is None else extras.sharpness,
            carb_eaten_g=extras.carb_g,
            on_target=extras.on_target,
            all_fine=fine,
            note=rest,
        )

    def _take(self, pattern: re.Pattern[str]) -> str | None:
        gap = _BETWEEN.match(self._line, self._at)
        after = gap.end() if gap else self._at
        match = pattern.match(self._line, after)
        if match is None:
            return None
        self._at = match.end()
        return match["value"] if "value" in pattern.groupindex else match[0]

    def _bare_sharpness(self) -> int | None:
        words = self._take(self._patterns.bare)
        if words is None:
            return None
        if not self._wants_sharpness or self._take(self._patterns.bare) is not None:
            raise Refusal(RefusalCode.TOO_MANY_NUMBERS)
        return parse_score(words, 1, 5)

    def _extras(self) -> _Extras:
        extras = _Extras()
        while True:
            if (sharp := self._take(self._patterns.sharp)) is not None:
                with _field("sharpness"):
                    extras.sharpness = parse_score(sharp, 1, 5)
            elif (carbs := self._take(self._patterns.carbs)) is not None:
                with _field("carbs"):
                    extras.carb_g = parse_grams(carbs)
            elif self._take(self._patterns.on_target) is not None:
                extras.on_target = True
            elif (fine := self._take(self._patterns.fine)) is not None:
                extras.fine_at = self._at - len(fine)
            else:
                break
        gap = _AFTER_NUMBERS.match(self._line, self._at)
        self._at = gap.end() if gap else self._at
        return extras


@dataclass(slots=True)
class _Extras:
    sharpness: int | None = None
    carb_g: float | None = None
    on_target: bool = False
    fine_at: int | None = None


def _why_alone(weight_words: str) -> RefusalCode:
    """One number is an answer, not a check-in, unless commas have run several into one."""
    several = len(re.findall(r"[.,]", weight_words)) > 1 and "," in weight_words
    return RefusalCode.AMBIGUOUS_SEPARATOR if several else RefusalCode.NOT_A_CHECK_IN


def _reads_as_weight(words: str, unit: WeightUnit | None) -> bool:
    try:
        parse_weight(words, unit=unit)
    except Refusal as refusal:
        return refusal.code is RefusalCode.AMBIGUOUS_STONE
    return True


@contextmanager
def _field(name: str) -> Iterator[None]:
    """Names the answer of the line that a refusal is about."""
    try:
        yield
    except Refusal as refusal:
        refusal.facts.setdefault("field", name)
        raise
