"""The first questions to a new athlete: consent, age, health, units, zone, time, body, ordinary day."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict
from datetime import date, datetime, time
from functools import partial

from bot.core.zones import find_places, zones_for_clock
from bot.dialogue.flow import Answers, Choice, Choices, Flow, Step, Unread
from bot.dialogue.readers import AS_ALWAYS, NO, YES, buttons, one_of, said, yes_or_no
from bot.membership.onboarding import flow_health as health_screen
from bot.membership.onboarding import flow_measures as measures
from bot.membership.onboarding import words
from bot.membership.onboarding import words_measures as measure_words
from bot.words import common, figures, refusals
from engine.written.units import (
    Refusal,
    VolumeUnit,
    parse_clock,
    parse_grams,
    parse_number,
    parse_volume,
)

ADULT = 18
OLDEST = 100
NOT_SURE = "not sure"
ELSEWHERE = "elsewhere"
# A morning weight is wanted, and an answer well before the cut-off.
EARLIEST_PROMPT, LATEST_PROMPT = time(3, 0), time(10, 0)


def _birth_year(text: str, answers: Answers) -> int:
    this_year = date.fromisoformat(answers["_today"]).year
    low, high = this_year - OLDEST, this_year - 5
    try:
        year = parse_number(text, low=low, high=high)
    except Refusal:
        raise Unread(refusals.not_a_birth_year(low, high)) from None
    if not year.is_integer():
        raise Unread(refusals.not_a_birth_year(low, high))
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
    return answers.get("consent") == "yes" and not under_age(answers)


def _birthday_matters(answers: Answers) -> bool:
    return _goes_on(answers) and _years_this_year(answers) == ADULT


def _place(text: str, answers: Answers) -> list[dict[str, str]]:
    """Candidates: one or more places, to be chosen from."""
    try:
        reading = parse_clock(text)
    except Refusal:
        found = find_places(text)
        if not found:
            raise Unread(refusals.unknown_place()) from None
    else:
        found = zones_for_clock(reading, datetime.fromisoformat(answers["_now"]))
        if not found:
            raise Unread(refusals.no_zone_at_that_time())
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
    raise Unread(refusals.use_buttons())


def _several_typed(answers: Answers) -> bool:
    chosen = answers.get("which_place")
    return _goes_on(answers) and isinstance(chosen, list) and len(chosen) > 1


def _prompt_time(text: str, answers: Answers) -> str:
    at = parse_clock(text)
    if not EARLIEST_PROMPT <= at <= LATEST_PROMPT:
        raise Unread(words.prompt_time_range(EARLIEST_PROMPT, LATEST_PROMPT))
    return at.strftime("%H:%M")


def _unsure(text: str) -> bool:
    return any(said(text, words) for words in (NOT_SURE, AS_ALWAYS, measure_words.UNSURE))


def _grams(high: float) -> Callable[[str, Answers], float]:
    def read(text: str, answers: Answers) -> float:
        if _unsure(text):
            raise Unread(words.an_estimate_will_do())
        return parse_grams(text, high=high)

    return read


def _fibre(text: str, answers: Answers) -> float | None:
    return None if _unsure(text) else parse_grams(text, high=150)


def _sodium(text: str, answers: Answers) -> float | None:
    if _unsure(text):
        return None
    return parse_number(text.lower().strip().removesuffix("mg"), low=200, high=20000)


def _water(text: str, answers: Answers) -> float:
    if _unsure(text):
        raise Unread(words.an_estimate_will_do())
    return parse_volume(text, unit=VolumeUnit(answers["volume_unit"])).litres


def _baseline(
    key: str, read: Callable[[str, Answers], float | None], *, may_be_unsure: bool = False
) -> Step:
    rows = (((words.not_sure_button, NOT_SURE),),) if may_be_unsure else ()
    return Step(
        key=key,
        ask=lambda answers: words.ask_baseline(key),
        read=read,
        choices=buttons(*rows),
        when=_goes_on,
    )


ONBOARDING = Flow(
    id="onboarding",
    can_cancel=False,
    steps=(
        Step(
            key="consent",
            ask=lambda answers: words.cautions(answers["_coach"], own=answers.get("_own", False)),
            read=one_of("yes", "no"),
            stays=True,
            choices=buttons(((words.agree_button, "yes"),), ((words.disagree_button, "no"),)),
        ),
        Step(
            key="birth_year",
            ask=lambda answers: words.ask_birth_year(),
            read=_birth_year,
            when=_goes_on,
        ),
        Step(
            key="eighteen",
            ask=lambda answers: words.ask_eighteen(),
            read=yes_or_no,
            choices=buttons(((common.yes, "yes"), (common.not_yet, "no"))),
            when=_birthday_matters,
        ),
        Step(
            key="sex",
            ask=lambda answers: words.ask_sex(),
            read=one_of(*words.SEXES),
            choices=buttons(tuple((partial(words.sex_button, sex), sex) for sex in words.SEXES)),
            when=_goes_on,
        ),
        *health_screen.steps(_goes_on),
        Step(
            key="weight_unit",
            ask=lambda answers: words.ask_weight_unit(),
            read=one_of(*figures.WEIGHT_UNITS),
            choices=buttons(
                *(
                    ((partial(figures.weight_unit_name, unit), unit),)
                    for unit in figures.WEIGHT_UNITS
                )
            ),
            when=_goes_on,
        ),
        Step(
            key="volume_unit",
            ask=lambda answers: words.ask_volume_unit(),
            read=one_of(*figures.VOLUME_UNITS),
            choices=buttons(
                *(
                    ((partial(figures.volume_unit_name, unit), unit),)
                    for unit in figures.VOLUME_UNITS
                )
            ),
            when=_goes_on,
        ),
        Step(
            key="place",
            ask=lambda answers: words.ask_place(),
            read=_place,
            when=_goes_on,
        ),
        Step(
            key="which_place",
            ask=lambda answers: words.ask_which_place(),
            read=_which("place"),
            choices=_candidates("place"),
            when=_goes_on,
            back_to="place",
        ),
        Step(
            key="which_of_them",
            ask=lambda answers: words.ask_which_place(),
            read=_number_of_them,
            choices=_candidates("which_place"),
            when=_several_typed,
            back_to="which_place",
        ),
        Step(
            key="prompt_time",
            ask=lambda answers: words.ask_prompt_time(),
            read=_prompt_time,
            choices=buttons(
                (("6:00", "06:00"), ("6:30", "06:30"), ("7:00", "07:00")),
                (("7:30", "07:30"), ("8:00", "08:00"), ("8:30", "08:30")),
            ),
            when=_goes_on,
        ),
        *measures.steps(_goes_on),
        _baseline("carb_g", _grams(1500)),
        _baseline("protein_g", _grams(600)),
        _baseline("fat_g", _grams(400)),
        _baseline("fibre_g", _fibre, may_be_unsure=True),
        _baseline("water_l", _water),
        _baseline("sodium_mg", _sodium, may_be_unsure=True),
    ),
)

BASELINE_KEYS = ("carb_g", "protein_g", "fat_g", "fibre_g", "water_l", "sodium_mg")
