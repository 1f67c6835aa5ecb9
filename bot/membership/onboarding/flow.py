"""The first questions to a new athlete: consent, age, health, zone, time, body, ordinary day.

Units are those that the answers are written in.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import asdict
from datetime import date, datetime, time
from functools import partial
from typing import Any

from bot.core.zones import find_places, zones_for_clock
from bot.dialogue.flow import (
    AS_ALWAYS,
    NO,
    YES,
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    buttons,
    said,
    yes_or_no,
)
from bot.membership.onboarding import flow_health as health_screen
from bot.membership.onboarding import flow_measures as measures
from bot.membership.onboarding import in_words, words
from bot.words import common, invalid_answers
from bot.words.languages import Sentence
from bot.words.names import CONSENT, FIRST_QUESTIONS
from engine.written.late import Late
from engine.written.units import (
    ParseError,
    VolumeUnit,
    WeightUnit,
    parse_clock,
    parse_grams,
    parse_number,
    parse_volume,
)

ADULT = 18
OLDEST = 100
NOT_SURE = "not sure"
ELSEWHERE = "elsewhere"
IN_GRAMS = ("carb_g", "protein_g", "fat_g")
MOST = {"carb_g": 1500.0, "protein_g": 600.0, "fat_g": 400.0}
# Of a bare number of what is drunk a day: litres up to here, millilitres from there, ounces between.
MOST_LITRES, LEAST_ML = 15, 500
_BETWEEN_FIGURES = re.compile(r"\s*[;/,]?\s+(?:(?:and|und|&)\s+)?(?=[\d.])|\s*[;/]\s*")
_BARE = re.compile(r"\d+(?:[.,]\d+)?")
# A morning weight is wanted, and an answer well before the cut-off.
EARLIEST_PROMPT, LATEST_PROMPT = time(3, 0), time(10, 0)


def _birth_year(text: str, answers: Answers) -> int:
    this_year = date.fromisoformat(answers["_today"]).year
    low, high = this_year - OLDEST, this_year - 5
    try:
        year = parse_number(in_words.birth_year(text, low, high) or text, low=low, high=high)
    except ParseError:
        raise InvalidAnswer(invalid_answers.not_a_birth_year(low, high)) from None
    if not year.is_integer():
        raise InvalidAnswer(invalid_answers.not_a_birth_year(low, high))
    return int(year)


def _years_this_year(answers: Answers) -> int:
    return date.fromisoformat(answers["_today"]).year - int(answers["birth_year"])


def under_age(answers: Answers) -> bool:
    """Whether the answers so far say that the athlete is under 18."""
    if "birth_year" not in answers:
        return False
    years = _years_this_year(answers)
    return years < ADULT or (years == ADULT and answers.get("eighteen") is False)


def _goes_on(answers: Answers) -> bool:
    return answers.get(CONSENT) == "yes" and not under_age(answers)


def _birthday_matters(answers: Answers) -> bool:
    return _goes_on(answers) and _years_this_year(answers) == ADULT


def _consent(text: str) -> str:
    if text in ("yes", "no"):
        return text
    if in_words.agrees(text):
        return "yes"
    raise InvalidAnswer(invalid_answers.use_buttons())


def _sex(text: str) -> str:
    sex = in_words.sex(text)
    if not sex:
        raise InvalidAnswer(invalid_answers.use_buttons())
    return sex


_MEASURE = Late(
    r"(?i)\d[\d.,]*\s*(?:kg|kilos?|lbs?|pounds?|pfund|cm|m|ft|g|gramm|grams?|l|lit(?:er|re)s?|ml|%)"
)
_DIGITS_OF_A_CLOCK = 3  # "735"; fewer are an hour at best, and that says no zone


def _place(text: str, answers: Answers) -> list[dict[str, str]]:
    """Candidates: one or more places, to be chosen from."""
    if _MEASURE.fullmatch(text.strip()):
        raise InvalidAnswer(invalid_answers.unknown_place())
    if text.strip().isdecimal() and len(text.strip()) < _DIGITS_OF_A_CLOCK:
        raise InvalidAnswer(invalid_answers.no_zone_at_that_time())  # "7" may be anything
    try:
        reading = parse_clock(text)
    except ParseError:
        found = find_places(text)
        if not found:
            raise InvalidAnswer(invalid_answers.unknown_place()) from None
    else:
        found = zones_for_clock(reading, datetime.fromisoformat(answers["_now"]))
        if not found:
            raise InvalidAnswer(invalid_answers.no_zone_at_that_time())
    return [asdict(place) for place in found]


def _candidates(key: str) -> Callable[[Answers], Choices]:
    """The places found by that answer, a button each."""

    def choices(answers: Answers) -> Choices:
        found = [
            [Choice(f"{place['name']} ({place['zone']})", str(number))]
            for number, place in enumerate(answers[key])
        ]
        return [*found, [Choice(words.somewhere_else_button(), ELSEWHERE)]]

    return choices


def _which(key: str) -> Callable[[str, Answers], int | list[dict[str, str]] | None]:
    """The number of a place that was found; a city typed instead is looked up like the first one."""

    def read(text: str, answers: Answers) -> int | list[dict[str, str]] | None:
        word = text.strip().lower()
        if word == ELSEWHERE or said(text, NO):
            return None
        places = answers[key]
        if said(text, YES) and len(places) == 1:
            return 0
        if word.isdecimal() and int(word) < len(places):
            return int(word)
        return _place(text, answers)

    return read


def _number_of_them(text: str, answers: Answers) -> int | None:
    word = text.strip()
    if word.isdecimal() and int(word) < len(answers["which_place"]):
        return int(word)
    if word.lower() == ELSEWHERE or said(text, NO):
        return None
    raise InvalidAnswer(invalid_answers.use_buttons())


def _several_typed(answers: Answers) -> bool:
    chosen = answers.get("which_place")
    return _goes_on(answers) and isinstance(chosen, list) and len(chosen) > 1


def _one_place(answers: Answers) -> bool:
    """Whether only one place is called that, so that it need not be asked which."""
    return len(answers.get("place", ())) == 1


def _prompt_time(text: str, answers: Answers) -> str | None:
    """None: the place was another one, which is asked for again."""
    if text.strip().lower() == ELSEWHERE and _one_place(answers):
        return None
    at = _clock_among(text)
    if not EARLIEST_PROMPT <= at <= LATEST_PROMPT:
        raise InvalidAnswer(words.prompt_time_range(EARLIEST_PROMPT, LATEST_PROMPT))
    return at.strftime("%H:%M")


#: A time of day as it stands in a sentence: "ask me at 7 from tomorrow", "stell es auf 6:30".
_IN_A_SENTENCE = re.compile(
    r"\b(?:at|to|like|by|um|auf|gegen) (\d{1,2}(?:[:.]\d{2})?(?: ?[ap]\.?m\b\.?| ?uhr)?)(?![\d:.]*\d)",
    re.IGNORECASE,
)


def _clock_among(text: str) -> time:
    """The one time of day that a text names."""
    found = _IN_A_SENTENCE.findall(text)
    return parse_clock(found[0] if len(found) == 1 and "?" not in text else text)


def _unsure(text: str) -> bool:
    return any(said(text, words) for words in (NOT_SURE, AS_ALWAYS, measures.UNSURE))


def _day(text: str, answers: Answers) -> Answers:
    """Carbs, and what stands behind them: protein, fat (g) and what is drunk, as far as told."""
    if _unsure(text):
        raise InvalidAnswer(words.an_estimate_will_do())
    if by_name := in_words.day_by_name(text):
        water = by_name.pop("water_l", "")
        named = {key: parse_grams(part, high=MOST[key]) for key, part in by_name.items()}
        return named | (_water(water, answers) if water else {})
    parts = [part for part in _BETWEEN_FIGURES.split(text.strip()) if part]
    if len(parts) < 3:
        return {"carb_g": parse_grams(text, high=MOST["carb_g"])}
    found: Answers = {}
    for key, part in zip(IN_GRAMS, parts, strict=False):
        found[key] = parse_grams(part, high=MOST[key])
    rest = " ".join(parts[3:])
    return found | (_water(rest, answers) if rest else {})


def _grams(key: str) -> Callable[[str], float]:
    def read(text: str) -> float:
        if _unsure(text):
            raise InvalidAnswer(words.an_estimate_will_do())
        return parse_grams(text, high=MOST[key])

    return read


def _fibre(text: str) -> float | None:
    return None if _unsure(text) else parse_grams(text, high=150)


def _sodium(text: str) -> float | None:
    if _unsure(text):
        return None
    return parse_number(text.lower().strip().removesuffix("mg"), low=200, high=20000)


def _water(text: str, answers: Answers) -> Answers:
    """What is drunk a day (L) and the unit in which it was told, which is the athlete's then."""
    if _unsure(text):
        raise InvalidAnswer(words.an_estimate_will_do())
    chosen = answers.get("volume_unit")
    told = parse_volume(text, unit=VolumeUnit(chosen) if chosen else _unit_meant(text, answers))
    return {"water_l": told.litres, "volume_unit": chosen or told.unit.value}


def _unit_meant(text: str, answers: Answers) -> VolumeUnit:
    """The unit of a bare number: its size tells them apart; ounces are those of the country."""
    bare = _BARE.fullmatch(text.strip())
    value = float(bare[0].replace(",", ".")) if bare else 0.0
    if value >= LEAST_ML:
        return VolumeUnit.ML
    if bare and value <= MOST_LITRES:
        return VolumeUnit.L
    stones = answers.get("weight_unit") == WeightUnit.ST
    return VolumeUnit.FLOZ_IMP if stones else VolumeUnit.FLOZ_US


def _baseline(key: str, **more: Any) -> Step:
    return Step(
        key=key, ask=Sentence(words.BASELINE[key]),
        when=more.pop("when", _goes_on), **more,
    )  # fmt: skip


def _times(answers: Answers) -> Choices:
    other = [[Choice(words.other_place_button(), ELSEWHERE)]] if _one_place(answers) else []
    return [*_TIMES, *other]


_TIMES = buttons(
    (("6:00", "06:00"), ("6:30", "06:30"), ("7:00", "07:00")),
    (("7:30", "07:30"), ("8:00", "08:00"), ("8:30", "08:30")),
)

ONBOARDING = Flow(
    id=FIRST_QUESTIONS,
    can_cancel=False,
    steps=(
        Step(
            key=CONSENT,
            ask=lambda answers: (words.agree_again if answers.get("_again") else words.cautions)(
                answers["_coach"], self_coached=answers.get("_own", False)
            ),
            read=_consent,
            stays=True,
            choices=buttons(((words.agree_button, "yes"),), ((common.no, "no"),)),
        ),
        Step(key="birth_year", ask=words.ask_birth_year, read_with=_birth_year, when=_goes_on),
        Step(
            key="eighteen",
            ask=words.ask_eighteen,
            read=yes_or_no,
            choices=buttons(((common.yes, "yes"), (common.not_yet, "no"))),
            when=_birthday_matters,
        ),
        Step(
            key="sex",
            ask=words.ask_sex,
            read=_sex,
            choices=buttons(tuple((partial(words.sex_button, sex), sex) for sex in words.SEXES)),
            when=_goes_on,
        ),
        *health_screen.steps(_goes_on),
        Step(key="place", ask=words.ask_place, read_with=_place, when=_goes_on),
        Step(
            key="which_place",
            ask=words.ask_which_place,
            read_with=_which("place"),
            choices=_candidates("place"),
            when=lambda answers: _goes_on(answers) and not _one_place(answers),
            back_to="place",
        ),
        Step(
            key="which_of_them",
            ask=words.ask_which_place,
            read_with=_number_of_them,
            choices=_candidates("which_place"),
            when=_several_typed,
            back_to="which_place",
        ),
        Step(
            key="prompt_time",
            ask=lambda answers: words.ask_prompt_time(
                answers["place"][0] if _one_place(answers) else None
            ),
            read_with=_prompt_time,
            choices=_times,
            when=_goes_on,
            back_to="place",
        ),
        *measures.steps(_goes_on),
        _baseline("carb_g", read_with=_day, spreads=True),
        _baseline("protein_g", read=_grams("protein_g")),
        _baseline("fat_g", read=_grams("fat_g")),
        _baseline("water_l", read_with=_water, spreads=True),
    ),
)

#: What sharpens a plan and can wait until there is one to draft. Context: "sex".
LATER = Flow(
    id="later-questions",
    steps=(
        *measures.fat_steps(),
        *(
            _baseline(
                key, read=read, when=None, choices=buttons(((words.not_sure_button, NOT_SURE),))
            )
            for key, read in (("fibre_g", _fibre), ("sodium_mg", _sodium))
        ),
    ),
)

BASELINE_KEYS = (*IN_GRAMS, "water_l")
LATER_KEYS = ("fibre_g", "sodium_mg")
