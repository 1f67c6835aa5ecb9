"""The first questions to a new athlete: consent, age, health, units, zone, time, body, ordinary day."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict
from datetime import date, datetime, time
from functools import partial

from bot.dialogue import Answers, Choice, Choices, Flow, Step, Unread
from bot.flows.reading import SKIP, buttons, number_between, one_of, said, yes_or_no
from bot.messages import common, refusals
from bot.messages import onboarding as words
from bot.zones import find_places, zones_for_clock
from engine.units import (
    Refusal,
    VolumeUnit,
    WeightUnit,
    parse_clock,
    parse_grams,
    parse_height,
    parse_number,
    parse_volume,
    parse_weight,
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


def _place_choices(answers: Answers) -> Choices:
    found = [
        [Choice(f"{place['name']} ({place['zone']})", str(number))]
        for number, place in enumerate(answers["place"])
    ]
    return [*found, [Choice(words.somewhere_else_button(), ELSEWHERE)]]


def _which_place(text: str, answers: Answers) -> int | None:
    places = answers["place"]
    if text.strip().lower() == ELSEWHERE:
        return None
    if text.isdigit() and int(text) < len(places):
        return int(text)
    raise Unread(refusals.use_buttons())


def zone_of(answers: Answers) -> str:
    """The zone that was settled on."""
    return str(answers["place"][answers["which_place"]]["zone"])


def _prompt_time(text: str, answers: Answers) -> str:
    at = parse_clock(text)
    if not EARLIEST_PROMPT <= at <= LATEST_PROMPT:
        raise Unread(words.prompt_time_range(EARLIEST_PROMPT, LATEST_PROMPT))
    return at.strftime("%H:%M")


def _body_mass(text: str, answers: Answers) -> float:
    return parse_weight(text, unit=WeightUnit(answers["weight_unit"])).kg


def _body_fat(text: str, answers: Answers) -> float | None:
    if said(text, SKIP):
        return None
    return number_between(3, 60)(text.replace("%", ""), answers)


def _grams(high: float) -> Callable[[str, Answers], float]:
    def read(text: str, answers: Answers) -> float:
        return parse_grams(text, high=high)

    return read


def _fibre(text: str, answers: Answers) -> float | None:
    if text.strip().lower() == NOT_SURE:
        return None
    return parse_grams(text, high=150)


def _sodium(text: str, answers: Answers) -> float | None:
    if text.strip().lower() == NOT_SURE:
        return None
    return parse_number(text.lower().removesuffix("mg"), low=200, high=20000)


def _water(text: str, answers: Answers) -> float:
    return parse_volume(text, unit=VolumeUnit(answers["volume_unit"])).litres


def _screening(key: str) -> Step:
    def applies(answers: Answers) -> bool:
        return _goes_on(answers) and (key != "pregnant" or answers.get("sex") == "female")

    return Step(
        key=key,
        ask=lambda answers: words.ask_screening(key),
        read=yes_or_no,
        choices=buttons(((common.yes, "yes"), (common.no, "no"))),
        when=applies,
    )


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
            ask=lambda answers: words.cautions(answers["_coach"]),
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
        *(_screening(key) for key in words.SCREENING),
        Step(
            key="weight_unit",
            ask=lambda answers: words.ask_weight_unit(),
            read=one_of(*words.WEIGHT_UNITS),
            choices=buttons(
                *(((partial(words.weight_unit_name, unit), unit),) for unit in words.WEIGHT_UNITS)
            ),
            when=_goes_on,
        ),
        Step(
            key="volume_unit",
            ask=lambda answers: words.ask_volume_unit(),
            read=one_of(*words.VOLUME_UNITS),
            choices=buttons(
                *(((partial(words.volume_unit_name, unit), unit),) for unit in words.VOLUME_UNITS)
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
            read=_which_place,
            choices=_place_choices,
            when=_goes_on,
            back_to="place",
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
        Step(
            key="height_cm",
            ask=lambda answers: words.ask_height(),
            read=lambda text, answers: parse_height(text),
            when=_goes_on,
        ),
        Step(
            key="body_mass_kg",
            ask=lambda answers: words.ask_body_mass(words.weight_unit_name(answers["weight_unit"])),
            read=_body_mass,
            when=_goes_on,
        ),
        Step(
            key="body_fat_percent",
            ask=lambda answers: words.ask_body_fat(),
            read=_body_fat,
            choices=buttons(((words.skip_button, "skip"),)),
            when=_goes_on,
        ),
        _baseline("carb_g", _grams(1500)),
        _baseline("protein_g", _grams(600)),
        _baseline("fat_g", _grams(400)),
        _baseline("fibre_g", _fibre, may_be_unsure=True),
        _baseline("water_l", _water),
        _baseline("sodium_mg", _sodium, may_be_unsure=True),
    ),
)

BASELINE_KEYS = ("carb_g", "protein_g", "fat_g", "fibre_g", "water_l", "sodium_mg")
