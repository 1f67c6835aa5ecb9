"""Screening of German free text: nothing among the warnings is missed, few false alarms are raised."""

from __future__ import annotations

import importlib.util
import re
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from engine.safety import Level
from engine.safety.complaints import complaint_flags, complaints
from engine.safety.water import fastest_drinking_l_per_h
from engine.symptoms import WARNINGS, Symptom, from_report, screen
from engine.values.checkin import CheckIn

_spec = importlib.util.spec_from_file_location(
    "german_phrases", Path(__file__).with_name("german_phrases.py")
)
assert _spec is not None
assert _spec.loader is not None
phrases = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(phrases)


def table(blocks: dict[str, str]) -> list[tuple[str, str]]:
    return [(symptom, text) for symptom, block in blocks.items() for text in phrases.lines(block)]


WARNING_PHRASES = table(phrases.WARNINGS)
OTHER_PHRASES = table(phrases.OTHERS)
DENIED = phrases.lines(phrases.DENIED)
HARMLESS = phrases.lines(phrases.HARMLESS)


def told(*reports: str) -> CheckIn:
    return CheckIn(date=date(2027, 5, 6), symptoms=reports)


def without_umlauts(text: str) -> Iterator[str]:
    """The text as it is typed where there are no umlauts."""
    for a, o, u, ss in (("a", "o", "u", "ss"), ("ae", "oe", "ue", "ss")):
        yield text.translate(str.maketrans({"ä": a, "ö": o, "ü": u, "ß": ss, "Ü": u.title()}))


def test_every_symptom_that_is_known_in_english_is_known_in_german() -> None:
    assert {symptom for symptom, _ in WARNING_PHRASES} == {str(symptom) for symptom in WARNINGS}
    assert {symptom for symptom, _ in (*WARNING_PHRASES, *OTHER_PHRASES)} == {
        str(symptom) for symptom in Symptom
    }
    assert len(WARNING_PHRASES) >= 250
    assert len(HARMLESS) >= 150
    assert len(DENIED) >= 40


def test_no_warning_is_missed() -> None:
    missed = [pair for pair in WARNING_PHRASES if pair[0] not in screen(pair[1]).symptoms]
    assert missed == []


def test_other_complaints_are_found() -> None:
    missed = [pair for pair in OTHER_PHRASES if pair[0] not in screen(pair[1]).symptoms]
    assert missed == []


def test_a_keyboard_without_umlauts_or_with_capitals_hides_nothing() -> None:
    missed = [
        typed
        for symptom, text in (*WARNING_PHRASES, *OTHER_PHRASES)
        for typed in {*without_umlauts(text)} - {text}
        if symptom not in screen(typed).symptoms
    ]
    missed += [
        text
        for symptom, text in WARNING_PHRASES[::5]
        if symptom not in screen(text.upper()).symptoms
    ]
    assert missed == []


def test_what_is_denied_is_no_find() -> None:
    found = {text: [hit.symptom for hit in screen(text).hits] for text in DENIED}
    assert {text: hits for text, hits in found.items() if hits} == {}


def test_a_warning_is_found_within_a_longer_message() -> None:
    before = "Moin Coach! 61,2 heute, ganz ok geschlafen, alles gegessen"
    after = "Der Tan ist für Freitag gebucht und ich freue mich"
    for symptom, text in WARNING_PHRASES[::4]:
        assert symptom in screen(f"{before}. {text}. {after}").symptoms, text


def test_a_denial_elsewhere_does_not_hide_a_warning() -> None:
    for symptom, text in WARNING_PHRASES[1::4]:
        assert symptom in screen(f"kein Hunger, keine Gelüste, aber {text}").symptoms, text
    for symptom, text in WARNING_PHRASES[2::4]:
        assert symptom in screen(f"Keine Krämpfe heute. {text}").symptoms, text


def slips(word: str) -> list[str]:
    """Every way of leaving out, doubling or swapping one letter after the first."""
    found = {word[:i] + word[i + 1 :] for i in range(1, len(word))}
    found |= {word[:i] + word[i] + word[i:] for i in range(1, len(word))}
    found |= {word[:i] + word[i + 1] + word[i] + word[i + 2 :] for i in range(1, len(word) - 1)}
    return sorted(found - {word})


@pytest.mark.parametrize(
    "word",
    [
        "ohnmächtig", "umgekippt", "bewusstlos", "kollabiert", "brustschmerzen", "herzrasen",
        "herzstolpern", "atemnot", "kurzatmig", "krampfanfall", "desorientiert", "kopfschmerzen",
        "schwindelig", "übelkeit", "durchfall", "geschwollen",
    ],
)  # fmt: skip
def test_one_slip_of_the_finger_in_a_key_word_is_put_right(word: str) -> None:
    meant = screen(f"heute {word}").symptoms
    assert meant
    missed = [slip for slip in slips(word) if not screen(f"heute {slip}").symptoms & meant]
    assert missed == []


@pytest.mark.parametrize("every", [25, pytest.param(1, marks=pytest.mark.soak)])
def test_few_slips_anywhere_in_a_warning_hide_it(every: int) -> None:
    tried = missed = 0
    for symptom, text in WARNING_PHRASES[::4]:
        for number, match in enumerate(re.finditer(r"[a-zäöüß]{6,}", text)):
            for slip in slips(match[0])[number % every :: every]:
                tried += 1
                slipped = text[: match.start()] + slip + text[match.end() :]
                missed += symptom not in screen(slipped).symptoms
    assert tried > 1800 / every
    assert missed / tried < 0.30  # German has more forms of each word than can all be known


def test_everyday_messages_and_figures_of_speech_raise_no_warning() -> None:
    alarms = {text: [hit.symptom for hit in screen(text).warnings] for text in HARMLESS}
    asked = {text: found for text, found in alarms.items() if found}
    assert len(asked) <= len(HARMLESS) / 100


@pytest.mark.parametrize(
    ("text", "symptom"),
    [
        ("fast ohnmächtig geworden", Symptom.FAINTING),
        ("Herzrasen vor Aufregung", Symptom.PALPITATIONS),
        ("Brust tut weh vom Bankdrücken", Symptom.CHEST_PAIN),
        ("Beine schwach nach dem Beintraining", Symptom.LIMB_WEAKNESS),
        ("keine starken Kopfschmerzen", Symptom.HEADACHE),
        ("keine Kopfschmerzen, Brustschmerzen", Symptom.CHEST_PAIN),
        ("heute morgen erbrochen", Symptom.REPEATED_VOMITING),
    ],
)
def test_what_could_be_meant_either_way_is_doubtful_and_so_asked(
    text: str, symptom: Symptom
) -> None:
    found = {hit.symptom: hit for hit in screen(text).hits}
    assert found[symptom].sure is False


@pytest.mark.parametrize(
    ("text", "symptom"),
    [
        ("Ich bin heute Morgen ohnmächtig geworden", Symptom.FAINTING),
        ("Brustschmerzen seit gestern Abend", Symptom.CHEST_PAIN),
        ("mein Herz rast", Symptom.PALPITATIONS),
        ("kein Schlaf, Brustschmerzen", Symptom.CHEST_PAIN),
        ("den ganzen Tag nichts gegessen und kriege keine Luft", Symptom.BREATHLESSNESS),
        ("Kopfschmerzen gehen nicht weg, starke Kopfschmerzen", Symptom.SEVERE_HEADACHE),
        ("ich kann nicht mehr aufstehen", Symptom.LIMB_WEAKNESS),
        ("hatte noch nie so starke Kopfschmerzen, jetzt sind sie da", Symptom.HEADACHE),
        ("Ich will nicht mehr leben", Symptom.SELF_HARM),
        ("kein Schwindel, sondern Herzrasen", Symptom.PALPITATIONS),
    ],
)
def test_what_is_plainly_said_is_sure(text: str, symptom: Symptom) -> None:
    found = {hit.symptom: hit for hit in screen(text).hits}
    assert found[symptom].sure is True


def test_both_languages_in_one_message_are_read() -> None:
    assert Symptom.CHEST_PAIN in screen("keine Kopfschmerzen, but chest pain").symptoms
    assert Symptom.CHEST_PAIN in screen("no headache aber Brustschmerzen").symptoms
    assert screen("no headache, keine Brustschmerzen").hits == ()


def test_a_drug_named_in_german_is_noticed_and_one_not_taken_is_not() -> None:
    assert [text for text in phrases.lines(phrases.DRUGS) if not screen(text).drug] == []
    assert [text for text in phrases.lines(phrases.NO_DRUGS) if screen(text).drug] == []


@pytest.mark.parametrize(
    ("word", "symptom"),
    [
        ("schwindelig", Symptom.DIZZY),
        ("Herzrasen", Symptom.PALPITATIONS),
        ("geschwollene Hände", Symptom.SWOLLEN_HANDS),
        ("schwache Beine", Symptom.LIMB_WEAKNESS),
        ("ohnmächtig und schwindelig", Symptom.FAINTING),
        ("Ellbogen", None),
        ("keine Brustschmerzen", None),
    ],
)
def test_a_reported_word_becomes_its_symptom(word: str, symptom: Symptom | None) -> None:
    assert from_report(word) is symptom


@pytest.mark.parametrize("nothing", ["keine", "Nichts.", "nein", "alles gut", "keine Beschwerden"])
def test_nothing_reported_in_german_is_nothing_to_read(nothing: str) -> None:
    assert list(complaint_flags(complaints(told(nothing)))) == []


def test_a_warning_reported_in_german_is_a_warning() -> None:
    flags = list(complaint_flags(complaints(told("Brustschmerzen"))))
    assert [(flag.id, flag.level) for flag in flags] == [("chest-pain", Level.WARNING)]


@pytest.mark.parametrize(
    ("told", "rate"),
    [
        ("3 Liter in einer Stunde getrunken", 3),
        ("habe 2 l Wasser innerhalb von 30 Minuten getrunken", 2),
        ("in einer Stunde 2,5 Liter getrunken", 2.5),
        ("zwei Liter auf einmal", 2),
        ("anderthalb Liter auf ex", 1.5),
        ("6 Liter in drei Stunden", 2),
        ("4 Liter über den Tag", None),
        ("3 Liter in 24 Stunden", None),
        ("2 Liter Wasser und in einer Stunde esse ich", None),
    ],
)
def test_how_fast_water_was_drunk_is_read_in_german(told: str, rate: float | None) -> None:
    assert fastest_drinking_l_per_h(told) == rate


#: As it is said at home, in short, or with its verb at the head.
SPOKEN = {
    "bin zsammgsackt wie a sack mehl": Symptom.FAINTING,
    "mi hats aufm laufband zsammghaut": Symptom.FAINTING,
    "wurde im bus ohnmächtig": Symptom.FAINTING,
    "mir gingen beim posen die lichter aus": Symptom.FAINTING,
    "lag auf einmal auf dem boden im bad": Symptom.FAINTING,
    "i kriag ka luft mehr": Symptom.BREATHLESSNESS,
    "puls 150 im bett": Symptom.PALPITATIONS,
    "beim kotzen kam was rotes mit": Symptom.HEAVY_BLEEDING,
    "auf dem rechten auge seh ich plötzlich nichts mehr": Symptom.STROKE_SIGNS,
    "hab die ganze schachtel schmerztabletten genommen": Symptom.SELF_HARM,
    "wozu leb ich eigentlich noch": Symptom.SELF_HARM,
    "heit scho sechsmoi am häusl gwesn": Symptom.DIARRHOEA,
    "beine wie blei": Symptom.EXHAUSTION,
}
#: The same words, said of others, long ago, of things or in jest.
SPOKEN_OF_ELSE = (
    "der max ist gestern im gym umgekippt, alles ok bei ihm",
    "als kind bin ich oft umgekippt",
    "die spülmaschine hat einen anfall",
    "brustschmerzen? nö alles gut danke der nachfrage",
    "herzklopfen vor lauter vorfreude auf samstag",
    "hilft salz gegen krämpfe",
    "is das mit dem wunderpulver nicht alles schwindel?",
    "noch nie zsammgsackt",
    "hab die ganze packung reiswaffeln dabei",
    "mein tupperturm ist zusammengekracht",
)


def test_what_is_said_as_at_home_is_called_by_its_name_and_what_is_said_of_else_is_not() -> None:
    missed = [
        text
        for text, symptom in SPOKEN.items()
        if symptom not in {hit.symptom for hit in screen(text).hits if hit.sure}
    ]
    assert missed == []
    assert [text for text in SPOKEN_OF_ELSE if screen(text).hits] == []


#: Of the day's business by their shape; beside each one that only begins like it.
BUSINESS = {
    "heute brust, bank und fliegende": "heute brust, bank und dann ein stechen",
    "bin schon am bahnhof, gleis 4": "bin am bahnhof und weiß nicht wie ich hergekommen bin",
    "Mein Mann sagt ich seh hammer aus": "Mein Mann sagt ich seh aus wie der Tod",
    "saukalt heut früh, scheiße": "saukalt heut früh, spür meine linke Seite nicht",
    "halbe stunde rad und bissl dehnen": "halbe stunde rad und dann war alles schwarz",
}


def test_the_days_business_is_not_asked_about_and_what_only_begins_like_it_is() -> None:
    asked = {text: screen(text) for pair in BUSINESS.items() for text in pair}
    assert [text for text in BUSINESS if asked[text].hits or asked[text].suspicions] == []
    graver = BUSINESS.values()
    assert [text for text in graver if not (asked[text].hits or asked[text].suspicions)] == []
