"""How much each sign weighs, alone and with others: a row at the edge and one just past it."""

from __future__ import annotations

from typing import Any

import pytest

from engine.evidence import safety as evidence
from engine.safety import FINDINGS, Flag, FlagId, Level, finding, flags_of_words
from engine.safety.complaints import Complaints, complaint_flags
from engine.symptoms import EATING_AND_MOOD, Symptom
from tests.engine.test_safety import MARA, TODAY, TOM, CheckIn, flags


def test_every_symptom_is_told_at_the_level_it_declares() -> None:
    for symptom in Symptom:
        found = flags(symptoms=(symptom.value,))
        assert found[symptom].level is symptom.level, symptom
        assert "words" not in dict(found[symptom].facts), symptom  # a button has none to quote


def test_what_was_written_is_quoted_whole_and_never_an_internal_code() -> None:
    found = flags(symptoms=("no-urine",), note="swollen legs since last night, very odd")
    assert dict(found["swelling"].facts)["words"] == "swollen legs since last night, very odd"
    quoted = [dict(flag.facts).get("words", "") for flag in found.values()]
    assert not any("no-urine" in str(words) for words in quoted)


# Hew-Butler 2015 (Clin J Sport Med 25:303-320): signs of exercise-associated hyponatraemia are
# headache, nausea, vomiting, swollen hands or feet; confusion and vomiting belong to the grave form.
# Water was drunk against a target of 4.0 L; the last morning was 60.0 kg.
@pytest.mark.parametrize(
    ("symptoms", "water", "weight", "level"),
    [
        (("headache", "nausea"), 4.0, 60.0, Level.CAUTION),  # two signs, water at its target
        (("headache", "nausea"), 3.99, 60.0, None),  # just under it
        (("headache", "nausea"), 3.99, 60.1, Level.CAUTION),  # and the scale up
        (("headache", "nausea"), 4.0, 58.5, Level.CAUTION),  # whatever the scale says
        (("headache", "nausea"), None, 60.0, Level.CAUTION),  # nobody said what was drunk
        (("headache",), 4.0, 60.0, None),  # one sign only
        (("headache", "severe-headache"), 4.0, 60.0, None),  # the same sign twice
        (("swelling", "swollen-hands"), 4.0, 60.0, None),
        (("headache",), 6.0, 60.0, None),  # 150 % of the target exactly
        (("headache",), 6.01, 60.0, Level.CAUTION),  # past it one sign will do
        (("headache",), 4.0, 60.1, Level.CAUTION),  # one sign and any rise
        (("swollen-hands", "headache"), 4.0, 60.0, Level.CAUTION),
        (("swelling", "nausea"), 4.0, 60.0, Level.CAUTION),
        (("vomiting", "headache"), 4.0, 60.0, Level.WARNING),
        (("vomiting", "headache"), 3.99, 60.0, None),
        (("vomiting", "headache"), None, 60.0, Level.CAUTION),
        (("confusion", "nausea"), 4.0, 60.0, Level.WARNING),
        (("repeated-vomiting", "swelling"), 4.0, 60.0, Level.WARNING),
        (("vomiting",), 4.0, 61.2, Level.WARNING),  # 2.0 % up
        (("vomiting",), 4.0, 61.19, Level.CAUTION),
        (("dizzy", "cramps"), 4.0, 60.0, None),  # none of its signs
    ],
)
def test_the_low_sodium_pattern_is_read_off_signs_water_and_weight(
    symptoms: tuple[str, ...], water: float | None, weight: float, level: Level | None
) -> None:
    found = flags(
        before={1: {"weight_kg": 60.0}}, weight_kg=weight, water_l=water, symptoms=symptoms
    )
    assert getattr(found.get("low-sodium-pattern"), "level", None) is level
    if level is not None:
        assert evidence.HEW_BUTLER_2015 in found["low-sodium-pattern"].sources


def test_swollen_hands_headache_and_feeling_sick_after_the_target_was_drunk_is_a_caution() -> None:
    said = "my hands are swollen, headache and feel sick"
    found = flags(before={1: {"weight_kg": 60.0}}, weight_kg=60.0, water_l=4.0, note=said)
    assert found["low-sodium-pattern"].level is Level.CAUTION
    assert dict(found["low-sodium-pattern"].facts)["words"] == said


def test_a_doubtful_sign_does_not_make_the_pattern_a_warning() -> None:
    found = flags(before={1: {"weight_kg": 60.0}}, weight_kg=60.0, water_l=4.0,
                  note="nausea. nearly fainted at the till")  # fmt: skip
    assert all(flag.level is not Level.WARNING for flag in found.values())


def test_a_doubt_is_asked_about_unless_it_could_only_be_a_note() -> None:
    for symptom in set(Symptom) - {Symptom.URINE_DARK}:
        told = Complaints({symptom: "something odd"}, frozenset({symptom}), (), ())
        (flag,) = complaint_flags(told)
        if symptom.level is Level.ADVISORY:
            assert flag.id == symptom, symptom
            assert dict(flag.facts) == {"words": "something odd", "doubtful": "yes"}
        else:
            assert (flag.id, flag.level) == (FlagId.DOUBT, Level.CAUTION), symptom
            assert dict(flag.facts)["about"] == symptom


def test_what_was_said_alone_makes_the_pattern_too() -> None:
    told = CheckIn(date=TODAY, symptoms=("headache", "swollen-hands"))
    assert "low-sodium-pattern" in {flag.id for flag in flags_of_words(told)}


# Common teaching: no urine while the body swells is a failing kidney until shown otherwise
@pytest.mark.parametrize(
    ("symptoms", "flagged"),
    [
        (("no-urine", "swelling"), True),
        (("no-urine", "swollen-hands"), True),
        (("no-urine",), False),
        (("swelling",), False),
        (("no-urine", "headache"), False),
    ],
)
def test_no_urine_with_swelling_is_a_warning(symptoms: tuple[str, ...], flagged: bool) -> None:
    found = flags(symptoms=symptoms)
    assert ("no-urine-with-swelling" in found) is flagged
    if flagged:
        assert found["no-urine-with-swelling"].level is Level.WARNING


# The signs of exertional rhabdomyolysis: muscle pain and dark urine
@pytest.mark.parametrize(
    ("symptoms", "flagged"),
    [
        (("urine-dark", "cramps"), True),
        (("muscle-breakdown",), True),
        (("urine-dark",), False),
        (("cramps",), False),
    ],
)
def test_dark_urine_with_muscle_pain_is_a_warning(symptoms: tuple[str, ...], flagged: bool) -> None:
    found = flags(symptoms=symptoms)
    assert ("muscle-breakdown" in found) is flagged
    if flagged:
        assert found["muscle-breakdown"].level is Level.WARNING


# Our own margins: a note the first day, a caution on the second, with a complaint, or at under
# half of the adequate intake (EFSA 2010, EFSA Journal 8(3):1459: 2.0 L women, 2.5 L men)
@pytest.mark.parametrize(
    ("athlete", "water", "before", "symptoms", "told"),
    [
        (MARA, 2.39, 3.9, (), ("water-under-target", Level.ADVISORY)),  # 60 % of 4.0 L is 2.4 L
        (MARA, 2.39, 2.4, (), ("water-under-target", Level.ADVISORY)),
        (MARA, 2.39, 2.39, (), ("water-under-target", Level.CAUTION)),
        (MARA, 2.39, None, (), ("water-under-target", Level.ADVISORY)),
        (MARA, 2.39, 3.9, ("headache",), ("water-under-target", Level.CAUTION)),
        (MARA, 1.99, 3.9, (), ("water-under-adequate", Level.ADVISORY)),
        (MARA, 1.99, 1.99, (), ("water-under-adequate", Level.CAUTION)),
        (MARA, 1.0, 3.9, (), ("water-under-adequate", Level.ADVISORY)),
        (MARA, 0.99, 3.9, (), ("water-under-adequate", Level.CAUTION)),
        (TOM, 1.25, 3.9, (), ("water-under-adequate", Level.ADVISORY)),
        (TOM, 1.24, 3.9, (), ("water-under-adequate", Level.CAUTION)),
        (TOM, 2.0, 3.9, (), ("water-under-adequate", Level.ADVISORY)),  # a half-empty bottle
    ],
)  # fmt: skip
def test_too_little_water_is_a_note_first_and_a_caution_when_it_goes_on(
    athlete: Any, water: float, before: float | None, symptoms: tuple[str, ...],
    told: tuple[str, Level],
) -> None:  # fmt: skip
    found = flags(
        athlete=athlete, before={1: {"water_l": before}}, water_l=water, symptoms=symptoms
    )
    flag, level = told
    assert found[flag].level is level


def test_only_what_is_of_eating_and_mood_holds_adjusting_beside_warnings() -> None:
    assert {s.value for s in EATING_AND_MOOD} == {
        "purging", "bingeing", "starving", "body-hate", "low-mood", "self-harm",
    }  # fmt: skip


def test_the_findings_are_a_closed_list_and_each_is_told_apart() -> None:
    assert len({str(found) for found in FINDINGS}) == len(FINDINGS)
    assert finding("doubt") is FlagId.DOUBT
    assert finding("dizzy") is Symptom.DIZZY
    with pytest.raises(ValueError, match="made-up"):
        Flag("made-up", Level.CAUTION, {}, (evidence.HEW_BUTLER_2015,))
