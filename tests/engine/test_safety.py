"""Each safety threshold, at it and just past it, with its source beside the check."""

from __future__ import annotations

from dataclasses import fields
from datetime import date, timedelta
from typing import Any

import pytest

from engine.evidence import safety as evidence
from engine.evidence.source import Number, Source
from engine.safety import (
    Flag,
    Level,
    exercise_kcal,
    highest_level,
    plausible_water,
    plausible_weight,
    safety_flags,
)
from engine.symptoms import WARNINGS
from engine.values.athlete import Athlete, Baseline, Event, EventKind, Sex, energy_kcal
from engine.values.case import WeekSoFar
from engine.values.checkin import CheckIn, History
from engine.values.plan import DayTarget, PeakPlan

STAGE = date(2027, 5, 14)
TODAY = date(2027, 5, 10)  # four days out
YESTERDAY = TODAY - timedelta(days=1)
MARA = Athlete(sex=Sex.FEMALE, birth_year=1994, height_cm=165, body_mass_kg=60.0)
TOM = Athlete(sex=Sex.MALE, birth_year=1990, height_cm=178, body_mass_kg=80.0)
BASELINE = Baseline(carb_g=220, protein_g=130, fat_g=50, fibre_g=25, water_l=3.5, sodium_mg=2600)
EVENT = Event(kind=EventKind.SHOW, day=STAGE, zone="Europe/Lisbon")


def day(days_out: int, **changes: Any) -> DayTarget:
    values: dict[str, Any] = {
        "carb_g": 300, "protein_g": 130, "fat_g": 50, "fibre_g": 20, "water_l": 4.0,
        "sodium_mg": 2600,
    }  # fmt: skip
    return DayTarget(days_out=days_out, **{**values, **changes})


PLAN = PeakPlan(tuple(day(out) for out in range(7, -1, -1)))


def flags(
    *,
    athlete: Athlete = MARA,
    plan: PeakPlan = PLAN,
    before: dict[int, dict[str, Any]] | None = None,
    ceiling: float | None = 5.0,
    mornings_missed: int = 0,
    **answers: Any,
) -> dict[str, Flag]:
    """The flags of this morning by id; `before` holds earlier answers by days ago."""
    earlier = [
        CheckIn(date=TODAY - timedelta(days=ago), **told)
        for ago, told in sorted((before or {}).items(), reverse=True)
    ]
    found = safety_flags(
        WeekSoFar(
            athlete=athlete,
            baseline=BASELINE,
            event=EVENT,
            plan=plan,
            history=History(checkins=tuple(earlier)),
            checkin=CheckIn(date=TODAY, **answers),
        ),
        water_ceiling_l=ceiling,
        mornings_missed=mornings_missed,
    )
    assert len({flag.id for flag in found}) == len(found)
    return {flag.id: flag for flag in found}


def test_a_good_morning_raises_nothing() -> None:
    assert flags(
        before={1: {"weight_kg": 60.1, "water_l": 4.0, "sleep_h": 7}},
        weight_kg=59.9, fullness=6, water_l=3.9, sleep_h=7, note="all good, slept well",
    ) == {}  # fmt: skip


# NATA 2000 (Casa, J Athl Train 35:212-224): a loss of 3 % and more is "significant", over 5 % "serious"
@pytest.mark.parametrize(
    ("last", "now", "flagged"),
    [
        (60.0, 58.2, True),  # 3.0 % exactly
        (60.0, 58.3, False),
        (60.0, 58.21, False),
        (61.0, 59.17, True),  # 3.0 % exactly, where binary fractions fall short of it
        (62.0, 60.14, True),
        (70.0, 67.9, True),
        (70.1, 68.0, False),  # 2.996 %
    ],
)
def test_three_percent_below_the_last_morning_is_a_caution(
    last: float, now: float, flagged: bool
) -> None:
    heavy = Athlete(sex=Sex.FEMALE, birth_year=1994, height_cm=165, body_mass_kg=last)
    found = flags(athlete=heavy, before={1: {"weight_kg": last}}, weight_kg=now)
    assert ("weight-drop-24h" in found) is flagged
    if flagged:
        assert found["weight-drop-24h"].level is Level.CAUTION
        assert dict(found["weight-drop-24h"].facts)["down_percent"] == pytest.approx(3, abs=1e-6)
        assert evidence.NATA_2000 in found["weight-drop-24h"].sources


def test_the_last_morning_is_looked_for_two_days_back_and_no_further() -> None:
    assert "weight-drop-24h" in flags(before={2: {"weight_kg": 60.0}}, weight_kg=58.0)
    assert "weight-drop-24h" not in flags(before={3: {"weight_kg": 60.0}}, weight_kg=58.0)


def test_a_last_morning_that_cannot_be_believed_is_passed_over() -> None:
    before = {1: {"weight_kg": 600.0}, 2: {"weight_kg": 60.0}}
    assert "weight-drop-24h" in flags(before=before, weight_kg=58.0)
    assert flags(before={1: {"weight_kg": float("nan")}}, weight_kg=59.0) == {}


@pytest.mark.parametrize(("now", "flagged"), [(57.0, True), (57.02, False), (56.9, True)])
def test_five_percent_below_the_mass_before_the_week_is_a_caution(
    now: float, flagged: bool
) -> None:
    found = flags(weight_kg=now)
    assert ("weight-drop-baseline" in found) is flagged


@pytest.mark.parametrize("weight", [6.12, 612.0, 0.0, -60.0, float("nan"), float("inf"), None])
def test_a_weight_that_cannot_be_believed_raises_no_flag(weight: float | None) -> None:
    assert flags(before={1: {"weight_kg": 60.0}}, weight_kg=weight) == {}
    assert not plausible_weight(weight)


# Hew-Butler 2015 (Clin J Sport Med 25:303-320): weight gain with headache, nausea, swollen hands
@pytest.mark.parametrize(
    ("now", "water", "flagged"),
    [
        (61.2, 5.0, True),  # 2.0 % up, water at its ceiling
        (61.2, 4.99, False),
        (61.1, 5.0, False),
        (61.3, 5.5, True),
    ],
)
def test_two_percent_up_with_water_at_its_ceiling_is_the_low_sodium_pattern(
    now: float, water: float, flagged: bool
) -> None:
    found = flags(before={1: {"weight_kg": 60.0}}, weight_kg=now, water_l=water)
    assert ("low-sodium-pattern" in found) is flagged
    if flagged:
        assert evidence.HEW_BUTLER_2015 in found["low-sodium-pattern"].sources


@pytest.mark.parametrize(
    "answers",
    [
        {"symptoms": ("headache",)},
        {"symptoms": ("nausea",)},
        {"symptoms": ("swollen hands",)},
        {"symptoms": ("swollen-hands",)},
        {"note": "rings are tight today"},
        {"note": "bit of a hedache"},
        {"note": "feeling sick"},
    ],
)
def test_any_rise_with_its_signs_is_the_low_sodium_pattern(answers: dict[str, Any]) -> None:
    rise = flags(before={1: {"weight_kg": 60.0}}, weight_kg=60.1, water_l=4.0, **answers)
    assert rise["low-sodium-pattern"].level is Level.CAUTION
    level = flags(before={1: {"weight_kg": 60.0}}, weight_kg=60.0, water_l=4.0, **answers)
    assert "low-sodium-pattern" not in level


def test_a_rise_without_signs_and_without_much_water_is_no_pattern() -> None:
    before = {1: {"weight_kg": 60.0}}
    assert "low-sodium-pattern" not in flags(before=before, weight_kg=61.5, water_l=4.0)
    assert "low-sodium-pattern" not in flags(before=before, weight_kg=61.5, water_l=6, ceiling=None)


# EFSA 2010 (EFSA Journal 8(3):1459): adequate intake 2.0 L for women, 2.5 L for men
@pytest.mark.parametrize(
    ("athlete", "water", "flagged"),
    [(MARA, 2.0, False), (MARA, 1.99, True), (TOM, 2.5, False), (TOM, 2.49, True), (TOM, 0, True)],
)
def test_water_under_the_adequate_intake_is_flagged(
    athlete: Athlete, water: float, flagged: bool
) -> None:
    found = flags(athlete=athlete, water_l=water)
    assert ("water-under-adequate" in found) is flagged
    if flagged:
        assert evidence.EFSA_2010 in found["water-under-adequate"].sources


@pytest.mark.parametrize(
    ("water", "flag"),
    [
        (2.4, None),  # 60 % of 4.0 L
        (2.39, "water-under-target"),
        (6.0, None),  # 150 % of 4.0 L, and 100 mL/kg
        (6.01, "water-over-target"),
    ],
)
def test_water_is_held_against_yesterdays_target(water: float, flag: str | None) -> None:
    found = set(flags(water_l=water)) & {"water-under-target", "water-over-target"}
    assert found == ({flag} if flag else set())


def test_yesterdays_target_is_that_of_the_day_before_or_the_habit_where_there_is_none() -> None:
    only_yesterday = PeakPlan((day(5, water_l=6.0), day(4, water_l=3.0)))
    assert "water-under-target" in flags(plan=only_yesterday, water_l=3.0)  # 50 % of 6.0
    no_yesterday = PeakPlan((day(4, water_l=9.0),))
    assert "water-under-target" not in flags(plan=no_yesterday, water_l=3.0)  # 86 % of 3.5


# Reale 2018 (Int J Sport Nutr Exerc Metab 28:565-573): 100 mL/kg a day, the highest in fighters
@pytest.mark.parametrize(("water", "flagged"), [(6.0, False), (6.01, True), (14.0, True)])
def test_water_over_a_hundred_ml_per_kg_is_over_the_guard_rail(water: float, flagged: bool) -> None:
    assert ("water-over-guard-rail" in flags(water_l=water)) is flagged


@pytest.mark.parametrize("water", [-1.0, 35.0, float("nan"), float("inf"), None])
def test_water_that_cannot_be_believed_raises_no_flag(water: float | None) -> None:
    assert flags(water_l=water) == {}
    assert not plausible_water(water)


# IOM 2005: the kidneys excrete at most 0.7 to 1.0 L an hour
@pytest.mark.parametrize(
    ("answers", "flagged"),
    [
        ({"water_within_one_hour_l": 1.0}, False),
        ({"water_within_one_hour_l": 1.01}, True),
        ({"note": "drank 2 litres in an hour"}, True),
        ({"note": "Drank 2L within 1 hour"}, True),
        ({"note": "had two litres in half an hour"}, True),
        ({"note": "1,5 l in 30 minutes"}, True),
        ({"note": "1500 ml in one go"}, True),
        ({"note": "chugged 2 L at once"}, True),
        ({"note": "50 oz in the last hour"}, True),
        ({"note": "3 litres in 2 hours"}, True),
        ({"note": "sipped 2 litres of water per hour"}, True),
        ({"note": "one and a half litres in the space of an hour"}, True),
        ({"symptoms": ("2 litres in one hour",)}, True),
        ({"note": "drank 1 litre in an hour"}, False),
        ({"note": "500 ml in an hour"}, False),
        ({"note": "2 litres in 2 hours"}, False),
        ({"note": "4 litres in 16 hours"}, False),
        ({"note": "drank 3.5 litres today"}, False),
        ({"note": "12 km in 1 hour"}, False),
    ],
)
def test_more_than_a_litre_within_an_hour_is_a_caution(
    answers: dict[str, Any], flagged: bool
) -> None:
    assert ("water-too-fast" in flags(**answers)) is flagged


# Armstrong 1994 (Int J Sport Nutr 4:265-279): eight colours, 7 and 8 the darkest
@pytest.mark.parametrize(
    ("colour", "flagged"),
    [(6, False), (7, True), (8, True), (9, False), (-7, False), (None, False)],
)
def test_the_two_darkest_urine_colours_are_a_caution(colour: int | None, flagged: bool) -> None:
    assert ("urine-dark" in flags(urine_colour=colour)) is flagged


def test_dark_urine_in_words_is_a_caution_too() -> None:
    assert "urine-dark" in flags(note="my pee looks like cola")


# Tachycardia: more than 100 beats a minute at rest
@pytest.mark.parametrize(
    ("pulse", "flagged"), [(100, False), (100.5, True), (101, True), (250, True), (2500, False)]
)
def test_a_resting_pulse_over_a_hundred_is_a_caution(pulse: float, flagged: bool) -> None:
    assert ("pulse-high" in flags(resting_pulse=pulse)) is flagged


@pytest.mark.parametrize("warning", sorted(WARNINGS))
def test_every_warning_is_flagged_as_one(warning: str) -> None:
    found = flags(symptoms=(str(warning),))
    assert found[str(warning)].level is Level.WARNING
    assert "doubtful" not in dict(found[str(warning)].facts)


def test_a_doubtful_find_is_told_as_a_doubt_and_is_never_a_warning() -> None:
    found = flags(note="nearly fainted at the till")
    assert set(found) == {"doubt"}
    assert found["doubt"].level is Level.CAUTION  # no raise until it is clear
    assert dict(found["doubt"].facts) == {
        "words": "nearly fainted at the till", "about": "fainting",
    }  # fmt: skip


def test_a_doubtful_find_that_was_said_not_to_be_meant_is_none() -> None:
    assert flags(note="nearly fainted at the till", cleared=("fainting",)) == {}
    said = flags(note="nearly fainted at the till. I fainted", cleared=("fainting",))
    assert said["fainting"].level is Level.WARNING  # what is said plainly counts all the same


def test_symptoms_in_ones_own_words_are_placed() -> None:
    found = flags(symptoms=("my legs gave way", "dizzy"))
    assert set(found) == {"limb-weakness", "dizzy"}
    assert dict(found["limb-weakness"].facts)["words"] == "my legs gave way"


def test_a_reported_symptom_that_cannot_be_placed_is_for_a_person_to_read() -> None:
    found = flags(symptoms=("odd elbow",))
    assert found["symptom-unread"].level is Level.CAUTION
    assert dict(found["symptom-unread"].facts)["words"] == "odd elbow"
    for nothing in ("none", "No", "", "nothing", "no symptoms", "no dizziness"):
        assert "symptom-unread" not in flags(symptoms=(nothing,)), nothing


def test_a_drug_named_is_a_caution_and_food_is_not() -> None:
    assert flags(note="took a water pill")["drug-named"].level is Level.CAUTION
    assert "drug-named" in flags(symptoms=("took some furosamide",))
    assert "symptom-unread" not in flags(symptoms=("took some furosamide",))
    assert flags(note="bananas for potassium") == {}


def test_a_missed_morning_is_an_advisory() -> None:
    assert flags(mornings_missed=0) == {}
    found = flags(mornings_missed=1)
    assert found["missed-check-in"].level is Level.ADVISORY


@pytest.mark.parametrize(
    ("before", "now", "flagged"),
    [(4.9, 4.9, True), (5.0, 4.9, False), (4.9, 5.0, False), (4.9, None, False), (-1, 4, False)],
)
def test_two_nights_running_under_five_hours_are_an_advisory(
    before: float, now: float | None, flagged: bool
) -> None:
    found = flags(before={1: {"sleep_h": before}}, sleep_h=now)
    assert ("short-sleep" in found) is flagged
    assert "short-sleep" not in flags(before={2: {"sleep_h": 4}}, sleep_h=4)


# NCAA: at most 1.5 % of body mass a week
@pytest.mark.parametrize(
    ("days_ago", "weight", "flagged"),
    [
        (7, 59.1, False),  # 1.5 % of 60.0
        (7, 59.0, True),
        (6, 59.228, True),  # 0.772 kg in six days is 1.501 % a week
        (6, 59.23, False),
        (8, 59.0, False),  # 1.46 % a week
        (8, 58.9, True),  # 1.60 %
        (5, 58.5, False),
        (9, 58.5, False),
    ],
)
def test_losing_over_one_and_a_half_percent_a_week_is_an_advisory(
    days_ago: int, weight: float, flagged: bool
) -> None:
    found = flags(before={days_ago: {"weight_kg": 60.0}}, weight_kg=weight)
    assert ("weekly-loss-fast" in found) is flagged


# EU 1169/2011, Annex XIV: 4, 4, 9 and 2 kcal per g of carbohydrate, protein, fat and fibre
def test_energy_is_that_of_the_food_label_regulation() -> None:
    assert energy_kcal(100, 0, 0) == 400
    assert energy_kcal(0, 100, 0) == 400
    assert energy_kcal(0, 0, 100) == 900
    assert energy_kcal(0, 0, 0, 100) == 200
    # the regulation's kilojoules, 17, 17, 37 and 8 per g, at 4.184 kJ/kcal
    kilojoules = 300 * 17 + 130 * 17 + 50 * 37 + 20 * 8
    assert energy_kcal(300, 130, 50, 20) == pytest.approx(kilojoules / 4.184, rel=0.02)


# Energy availability under 30 kcal per kg fat-free mass a day (Loucks 2011, J Sports Sci 29:S7)
@pytest.mark.parametrize(("carb_g", "flagged"), [(140.0, False), (139.9, True)])
def test_a_planned_day_under_thirty_kcal_per_kg_lean_is_an_advisory(
    carb_g: float, flagged: bool
) -> None:
    # 51 kg lean x 30 = 1530 kcal; 140 g carbs, 115 g protein, 54 g fat, 12 g fibre = 1530 kcal
    lean = Athlete(
        sex=Sex.FEMALE, birth_year=1994, height_cm=165, body_mass_kg=60, body_fat_percent=15
    )
    rest = PeakPlan((day(4, carb_g=carb_g, protein_g=115, fat_g=54, fibre_g=12, training="rest"),))
    found = flags(athlete=lean, plan=rest)
    assert ("low-energy-availability" in found) is flagged
    assert "low-energy-availability" not in flags(plan=rest)  # body fat unknown


def test_exercise_is_taken_off_by_the_compendium_less_rest() -> None:
    # Ainsworth 2011: brisk walking 4.3 MET, resistance training 3.5 MET; 1 MET = 1 kcal/kg/h
    assert exercise_kcal(day(4, cardio_min=30), 60) == pytest.approx(0.5 * 3.3 * 60)
    assert exercise_kcal(day(4, training="upper body"), 60) == pytest.approx(2.5 * 60)
    for rest in ("", "rest", "Rest day", "off", "posing only", "-"):
        assert exercise_kcal(day(4, training=rest), 60) == 0


def test_flags_come_most_urgent_first_and_the_highest_level_is_told() -> None:
    found = list(flags(mornings_missed=1, note="chest pain", urine_colour=8).values())
    assert [flag.level for flag in found] == [Level.WARNING, Level.CAUTION, Level.ADVISORY]
    assert highest_level(found) is Level.WARNING
    assert highest_level(found[1:]) is Level.CAUTION
    assert highest_level([]) is None


def test_every_number_of_the_flags_has_a_unit_and_a_source() -> None:
    numbers = {name: n for name, n in vars(evidence).items() if isinstance(n, Number)}
    assert len(numbers) >= 20
    for name, number in numbers.items():
        assert number.unit, name
        assert isinstance(number.source, Source), name


def test_a_flag_can_be_kept_in_a_set_and_needs_a_source() -> None:
    first = flags(note="chest pain")["chest-pain"]
    assert len({first, flags(note="chest pain")["chest-pain"]}) == 1
    with pytest.raises(ValueError, match="source"):
        Flag("made-up", Level.CAUTION, {}, ())


def test_every_answer_of_a_check_in_is_looked_at_or_left_to_the_rules() -> None:
    """A new answer on the check-in has to be placed here: safety, or the rules alone."""
    looked_at = {
        "date", "weight_kg", "water_l", "symptoms", "note", "sleep_h", "urine_colour",
        "resting_pulse", "water_within_one_hour_l", "cleared",
    }  # fmt: skip
    rules_alone = {"fullness", "sharpness", "carb_eaten_g", "gut", "training_done"}
    assert {field.name for field in fields(CheckIn)} == looked_at | rules_alone
