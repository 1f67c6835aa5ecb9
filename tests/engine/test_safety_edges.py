"""What each safety flag rests on and how urgent it is, where a slip would change that unseen."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.safety import Level, flags_of_words
from engine.values.checkin import CheckIn
from engine.values.plan import PeakPlan
from tests.engine.test_safety_unnoticed import PLAN, TODAY, day, flags


def test_nobody_is_told_of_a_missed_morning_that_was_none() -> None:
    assert flags(weight_kg=60.0, water_l=4.0) == {}


@pytest.mark.parametrize(("before", "now"), [(0.0, 0.5), (0.5, 0.0), (4.0, 3.0)])
def test_two_short_nights_are_an_advisory_with_both_of_them(before: float, now: float) -> None:
    found = flags(before={1: {"sleep_h": before}}, sleep_h=now)["short-sleep"]
    assert found.level is Level.ADVISORY
    assert dict(found.facts) == {"last_night_h": now, "night_before_h": before}


def test_low_energy_of_a_planned_day_is_an_advisory() -> None:
    hungry = PeakPlan((day(4, carb_g=20, protein_g=100, fat_g=30, training="rest"),))
    assert flags(plan=hungry)["low-energy-availability"].level is Level.ADVISORY


def test_what_was_said_alone_comes_most_urgent_first_too() -> None:
    told = CheckIn(date=TODAY, symptoms=("headache", "cramps"), note="I fainted", resting_pulse=104)
    levels = [flag.level for flag in flags_of_words(told)]
    assert levels[0] is Level.WARNING and levels[-1] is Level.ADVISORY
    assert levels == sorted(levels, key=lambda level: -level.rank)


# --- what is quoted ---------------------------------------------------------------------------


def test_no_urine_with_swelling_quotes_both_sentences() -> None:
    found = flags(note="no pee since yesterday. My legs are swollen")
    words = str(dict(found["no-urine-with-swelling"].facts)["words"])
    assert "no pee" in words and "swollen" in words
    reported = flags(symptoms=("no pee since yesterday", "my legs are swollen"))
    said = str(dict(reported["no-urine-with-swelling"].facts)["words"])
    assert "no pee since yesterday" in said and "my legs are swollen" in said
    ticked = flags(symptoms=("no-urine", "swelling"))["no-urine-with-swelling"]
    assert dict(ticked.facts) == {}


def test_dark_urine_with_cramps_quotes_both_and_is_told_once() -> None:
    found = flags(symptoms=("my pee looks like cola", "cramps in both calves"))
    words = str(dict(found["muscle-breakdown"].facts)["words"])
    assert "cola" in words and "calves" in words
    once = flags_of_words(
        CheckIn(date=TODAY, symptoms=("urine-dark", "cramps", "muscle-breakdown"))
    )
    assert [flag.id for flag in once].count("muscle-breakdown") == 1


# --- low sodium (Hew-Butler 2015) -------------------------------------------------------------


def test_a_second_sign_on_a_rise_makes_vomiting_a_warning_however_little_was_drunk() -> None:
    before = {1: {"weight_kg": 60.0}}
    two = flags(before=before, weight_kg=60.1, water_l=3.0, symptoms=("vomiting", "headache"))
    assert two["low-sodium-pattern"].level is Level.WARNING
    alone = flags(before=before, weight_kg=60.0, water_l=6.1, symptoms=("vomiting",))
    assert alone["low-sodium-pattern"].level is Level.CAUTION, "one sign, whatever was drunk"


def test_the_pattern_rests_on_weight_water_and_target_as_far_as_they_are_known() -> None:
    signs = {"symptoms": ("headache", "nausea")}
    known = flags(before={1: {"weight_kg": 60.0}}, weight_kg=60.6, water_l=4.1, **signs)
    facts = dict(known["low-sodium-pattern"].facts)
    assert facts["up_percent"] == pytest.approx(1.0)
    assert (facts["weight_kg"], facts["before_kg"]) == (60.6, 60.0)
    assert (facts["water_l"], facts["target_l"]) == (4.1, 4.0)
    unweighed = dict(flags(water_l=4.1, **signs)["low-sodium-pattern"].facts)
    assert set(unweighed) == {"water_l", "target_l", "signs"}
    dry = dict(flags(weight_kg=60.6, **signs)["low-sodium-pattern"].facts)
    assert set(dry) == {"signs"}
    (said,) = (
        flag
        for flag in flags_of_words(CheckIn(date=TODAY, water_l=2.0, **signs))
        if flag.id == "low-sodium-pattern"
    )
    assert dict(said.facts) == {"water_l": 2.0, "signs": "headache, nausea"}, "against no target"
    assert said.level is Level.CAUTION


# --- drinking ---------------------------------------------------------------------------------


def test_the_day_before_yesterday_is_held_against_its_own_target() -> None:
    """Too little twice running is a caution; the morning before spoke of the day six days out."""
    more_then = PeakPlan(tuple(replace(d, water_l=6.0 if d.days_out == 6 else 4.0) for d in PLAN))
    drank = {"before": {1: {"water_l": 3.0}}, "water_l": 2.3}
    assert flags(plan=more_then, **drank)["water-under-target"].level is Level.CAUTION
    assert flags(**drank)["water-under-target"].level is Level.ADVISORY
    facts = dict(flags(plan=more_then, **drank)["water-under-target"].facts)
    assert facts["again"] == "yes"
    long_ago = {"before": {2: {"water_l": 1.0}}, "water_l": 2.3}
    assert flags(**long_ago)["water-under-target"].level is Level.ADVISORY


def test_hardly_any_is_under_half_of_the_adequate_intake() -> None:
    # EFSA 2010: 2.0 L a day for women
    assert flags(water_l=0.996)["water-under-adequate"].level is Level.CAUTION
    assert flags(water_l=1.0)["water-under-adequate"].level is Level.ADVISORY


def test_a_small_target_is_one_and_no_target_is_none() -> None:
    small = PeakPlan(tuple(replace(d, water_l=0.8) for d in PLAN))
    assert "water-under-target" in flags(plan=small, water_l=0.4)
    assert "water-over-target" in flags(plan=small, water_l=1.3)
    none = PeakPlan(tuple(replace(d, water_l=0.0) for d in PLAN))
    assert not {"water-over-target", "water-under-target"} & set(flags(plan=none, water_l=3.0))
