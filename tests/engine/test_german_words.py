"""What Germans write: complaints, a check-in in one line, delays and dates; by invented messages.

Each was read by a person and has beside it what that person would take it for.
"""

from __future__ import annotations

from datetime import time

import pytest

from engine.symptoms import Symptom, screen
from engine.written.oneline import Known, read_report
from engine.written.stage_times import parse_delay
from engine.written.units import (
    ParseError,
    ParseErrorCode,
    VolumeUnit,
    WeightUnit,
    parse_clock,
    parse_grams,
    parse_score,
    parse_volume,
)

WARNINGS = {
    Symptom.FAINTING: """
        Ich bin heute Morgen in der Dusche ohnmächtig geworden
        bin ohnmaechtig geworden
        bin umgekippt
        mir wurde schwarz vor Augen
        Bin fast zusammengebrochen beim Posing
        war kurz bewusstlos
        kein Scherz, ich bin umgekippt
        Kreislaufkollaps gehabt
    """,
    Symptom.CHEST_PAIN: """
        Habe Brustschmerzen
        Schmerzen in der Brust seit heute früh
        meine Brust tut weh
        Druck auf der Brust
        mein linker Arm ist taub
        Ich hab so ein Engegefühl in der Brust
    """,
    Symptom.BREATHLESSNESS: """
        ich bekomme keine Luft
        kriege schlecht Luft
        Atemnot beim Treppensteigen
        kann kaum atmen
    """,
    Symptom.PALPITATIONS: """
        Herzrasen seit gestern Abend
        mein Herz rast
        Mein Herz stolpert dauernd
        Herz setzt immer wieder aus
    """,
    Symptom.LIMB_WEAKNESS: """
        meine Beine sind ganz schwach
        Beine wie Blei
        kann meinen Arm kaum heben
        meine Beine knicken weg
    """,
    Symptom.CONFUSION: """
        bin verwirrt und weiß nicht wo ich bin
        kann nicht mehr klar denken
    """,
    Symptom.SEVERE_HEADACHE: """
        Sehr heftige Kopfschmerzen seit heute Nacht
        Kopfschmerzen kaum auszuhalten
        mein Kopf platzt
    """,
    Symptom.REPEATED_VOMITING: """
        habe mehrmals erbrochen
        dreimal gekotzt
        übergebe mich immer wieder
    """,
    Symptom.SEIZURE: "hatte einen Krampfanfall",
    Symptom.SELF_HARM: """
        ich will nicht mehr leben
        ich tue mir was an
    """,
}
OTHERS = {
    Symptom.DIZZY: "mir ist schwindlig",
    Symptom.NAUSEA: "mir ist übel",
    Symptom.CRAMPS: "Wadenkrämpfe in der Nacht",
    Symptom.DIARRHOEA: "Durchfall",
    Symptom.HEADACHE: "Kopfschmerzen",
    Symptom.SLEEPLESS: "kaum geschlafen",
    Symptom.SWOLLEN_HANDS: "meine Finger sind geschwollen",
    Symptom.BLOATING: "Blähbauch",
    Symptom.URINE_DARK: "dunkler Urin",
    Symptom.FEVER: "Fieber",
}
NOTHING = """
    Kein Schwindel, keine Kopfschmerzen
    keine Brustschmerzen, kein Herzrasen und keine Atemnot
    Kopfschmerzen habe ich keine
    mir ist nicht schwindlig
    Alles gut heute, gut geschlafen
    Ich will die 3 Liter heute schaffen
    Die Beine sind vom Training schwer
    Brust und Rücken trainiert, starker Muskelkater
    Herzlichen Dank
    Ich bin flat aber scharf
    Posing lief super, Pump war gut
    bin durcheinander gekommen mit den Mahlzeiten
    Ich nehme keine Diuretika
"""


def lines(block: str) -> list[str]:
    return [line.strip() for line in block.strip().splitlines()]


def test_no_complaint_in_german_is_missed() -> None:
    told = [
        (symptom, one) for symptom, block in (WARNINGS | OTHERS).items() for one in lines(block)
    ]
    assert [said for said in told if said[0] not in screen(said[1]).symptoms] == []


@pytest.mark.parametrize("text", lines(NOTHING))
def test_denials_and_everyday_words_are_no_complaint(text: str) -> None:
    found = screen(text)
    assert not found.hits
    assert not found.drug


@pytest.mark.parametrize(
    "text",
    [
        "soll ich Entwässerungstabletten nehmen", "nehme Diuretika", "Kaliumtabletten",
        "wie viel Kalium soll ich nehmen", "Insulin spritzen?", "Abführmittel heute Abend?",
    ],
)  # fmt: skip
def test_a_drug_named_in_german_is_noticed(text: str) -> None:
    assert screen(text).drug


def test_what_is_only_feared_is_asked_about_and_what_was_long_ago_is_not() -> None:
    assert [hit.sure for hit in screen("habe Angst vor Herzrasen").warnings] == [False]
    assert screen("letztes Jahr bin ich umgekippt").warnings == ()


GERMAN_ATHLETE = Known(
    weight_unit=WeightUnit.KG, volume_unit=VolumeUnit.L, wants_sharpness=True, language="de"
)


def test_a_morning_in_one_line_is_read_in_german() -> None:
    read = read_report(
        "61,2 kg, Fülle 7, Wasser 3,5 l, Schärfe 4, KH 310 g, alles gut", GERMAN_ATHLETE
    )
    assert read.answers == {
        "weight_kg": 61.2, "fullness": 7, "water_l": 3.5, "sharpness": 4, "carb_eaten_g": 310,
    }  # fmt: skip
    assert (read.all_fine, read.note) == (True, "")


def test_hours_of_sleep_in_german_are_no_sharpness() -> None:
    read = read_report("61,2 7 3,5 4 8 Stunden Schlaf", GERMAN_ATHLETE)
    assert (read.answers["sharpness"], read.note) == (4, "8 Stunden Schlaf")


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("45 min später", 45), ("Verspätung 45", 45), ("wir sind eine halbe Stunde im Verzug", 30),
        ("20 Minuten früher", -20), ("anderthalb Stunden später", 90), ("late 45", 45),
        ("später", None), ("bis später", None), ("late 1.5", None), ("1,5 später", None),
        ("late 1.5 h", 90), ("wir sind 30 hinten", 30), ("15 Minuten vorverlegt", -15),
        ("1h30 Verspätung", 90), ("haben 45 min Verspätung sagen sie", 45),
        ("es gibt 30 Minuten Verspätung", 30), ("die Show hat 20 min Verspätung", 20),
    ],
)  # fmt: skip
def test_word_of_a_delay_in_german(text: str, minutes: int | None) -> None:
    assert parse_delay(text, "de") == minutes


def test_german_words_of_a_delay_mean_nothing_where_english_is_spoken() -> None:
    assert parse_delay("45 min später") is None


def test_units_and_times_as_germans_write_them() -> None:
    assert parse_clock("7 Uhr 30") == time(7, 30)
    assert parse_clock("19 Uhr") == time(19)
    assert parse_grams("310 Gramm") == 310
    assert parse_score("7 von 10", 1, 10) == 7
    assert parse_volume("3,5 Liter Wasser").litres == 3.5


def test_a_thousand_with_a_point_is_still_not_guessed() -> None:
    with pytest.raises(ParseError) as refused:
        parse_grams("1.200")
    assert refused.value.code is ParseErrorCode.AMBIGUOUS_SEPARATOR
