"""Screening of free text: nothing among the warnings is missed, and few false alarms are raised."""

from __future__ import annotations

import importlib.util
import re
import time
from collections.abc import Sequence
from pathlib import Path

import pytest
from hypothesis import given

from engine.symptoms import WARNINGS, Symptom, from_report, screen
from engine.symptoms.german.language import GERMAN
from engine.symptoms.screening import ENGLISH, Screening
from tests.support.any_text import any_text

_spec = importlib.util.spec_from_file_location("phrases", Path(__file__).with_name("phrases.py"))
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


def test_the_tables_are_as_wide_as_they_are_meant_to_be() -> None:
    assert {symptom for symptom, _ in WARNING_PHRASES} == {str(s) for s in WARNINGS}
    assert {symptom for symptom, _ in (*WARNING_PHRASES, *OTHER_PHRASES)} == {
        str(symptom) for symptom in Symptom
    }
    assert all(len(phrases.lines(block)) >= 6 for block in phrases.WARNINGS.values())
    assert len(WARNING_PHRASES) >= 400
    assert len(HARMLESS) >= 250
    assert len(DENIED) >= 30


def test_no_warning_is_missed() -> None:
    assert [said for said in WARNING_PHRASES if said[0] not in screen(said[1]).symptoms] == []


def test_other_complaints_are_found() -> None:
    assert [said for said in OTHER_PHRASES if said[0] not in screen(said[1]).symptoms] == []


def test_what_is_denied_is_no_find() -> None:
    assert [text for text in DENIED if screen(text).hits] == []


#: Beside every other warning one of a test's surroundings, in turn, or beside each all of them.
IN_TURN_OR_ALL = pytest.mark.parametrize(
    "of_all", [False, pytest.param(True, marks=pytest.mark.soak)]
)
AMONG_OTHER_WORDS = (
    "Morning coach! 61.2 today, slept ok, all meals in. {}. Anyway the tan is booked for friday",
    "Morning coach! 61.2 today, slept ok, all meals in\n{}\nAnyway the tan is booked for friday",
)
BESIDE_A_DENIAL = ("no cravings, no hunger, but {}", "no cramps today. {}")


def hidden(warnings: Sequence[tuple[str, str]], around: Sequence[str], of_all: bool) -> list[str]:
    """The warnings that are not found in these surroundings."""
    return [
        form.format(text)
        for number, (symptom, text) in enumerate(warnings if of_all else warnings[::2])
        for form in (around if of_all else (around[number % len(around)],))
        if symptom not in screen(form.format(text)).symptoms
    ]


@IN_TURN_OR_ALL
def test_a_warning_is_found_within_a_longer_message(of_all: bool) -> None:
    assert hidden(WARNING_PHRASES, AMONG_OTHER_WORDS, of_all) == []


@IN_TURN_OR_ALL
def test_a_denial_elsewhere_does_not_hide_a_warning(of_all: bool) -> None:
    assert hidden(WARNING_PHRASES, BESIDE_A_DENIAL, of_all) == []


def test_capitals_and_odd_spaces_change_nothing() -> None:
    for symptom, text in WARNING_PHRASES:
        assert symptom in screen(text.upper().replace(" ", "\u00a0 ")).symptoms, text


def slips(word: str) -> list[str]:
    """Every way of leaving out, doubling or swapping one letter after the first."""
    found = {word[:i] + word[i + 1 :] for i in range(1, len(word))}
    found |= {word[:i] + word[i] + word[i:] for i in range(1, len(word))}
    found |= {word[:i] + word[i + 1] + word[i] + word[i + 2 :] for i in range(1, len(word) - 1)}
    return sorted(found - {word})


GERMAN_WORDS = {"sollen"}  # "shall": far more often meant than a misspelt "swollen"
KEY_WORDS = [
    "fainted", "fainting", "unconscious", "collapsed", "seizure", "convulsions", "palpitations",
    "paralysed", "confused", "disoriented", "vomited", "vomiting", "headache", "breathless",
    "dizzy", "nauseous", "diarrhoea", "swollen",
]  # fmt: skip


@pytest.mark.parametrize("word", KEY_WORDS)
def test_one_slip_of_the_finger_in_a_key_word_is_put_right(word: str) -> None:
    meant = screen(f"i am {word} today").symptoms
    assert meant
    tried = [slip for slip in slips(word) if slip not in GERMAN_WORDS]
    missed = [slip for slip in tried if not screen(f"i am {slip} today").symptoms & meant]
    assert missed == []


@pytest.mark.parametrize("every", [25, pytest.param(1, marks=pytest.mark.soak)])
def test_few_slips_anywhere_in_a_warning_hide_it(every: int) -> None:
    tried = missed = 0
    for symptom, text in WARNING_PHRASES:
        for number, match in enumerate(re.finditer(r"[a-z]{6,}", text)):
            for slip in slips(match[0])[number % every :: every]:
                tried += 1
                slipped = text[: match.start()] + slip + text[match.end() :]
                missed += symptom not in screen(slipped).symptoms
    assert tried > 10_000 / every
    assert missed / tried < 0.20  # many of the phrases are misspelt to begin with


def test_everyday_messages_and_figures_of_speech_raise_no_sure_warning() -> None:
    alarms = {text: [hit.symptom for hit in screen(text).warnings if hit.sure] for text in HARMLESS}
    assert {text: found for text, found in alarms.items() if found} == {}


def test_at_most_one_everyday_message_in_a_hundred_leads_to_a_question_about_a_warning() -> None:
    asked = [text for text in HARMLESS if screen(text).warnings]
    assert len(asked) <= len(HARMLESS) / 100


@pytest.mark.parametrize(
    ("text", "symptom"),
    [
        ("passed out asleep at 9", Symptom.FAINTING),
        ("chest is tight from bench press", Symptom.CHEST_PAIN),
        ("legs feel weak after leg day", Symptom.LIMB_WEAKNESS),
        ("my mum said passing out", Symptom.FAINTING),
        ("not very breathless", Symptom.BREATHLESSNESS),
        ("no headache, chest pain", Symptom.CHEST_PAIN),
        ("vomited this morning", Symptom.REPEATED_VOMITING),
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
        ("I fainted this morning", Symptom.FAINTING),
        ("chest pain since last night", Symptom.CHEST_PAIN),
        ("heart is racing", Symptom.PALPITATIONS),
        ("no sleep, chest pain", Symptom.CHEST_PAIN),
        ("no food all day and can't breathe", Symptom.BREATHLESSNESS),
        ("not dizzy just short of breath", Symptom.BREATHLESSNESS),
        ("never had palpitations like this", Symptom.PALPITATIONS),
        ("can't walk without my legs buckling", Symptom.LIMB_WEAKNESS),
        ("vomiting won't stop, 5 times now", Symptom.REPEATED_VOMITING),
        ("didn't tell you I fainted", Symptom.FAINTING),
    ],
)
def test_what_is_plainly_said_is_sure(text: str, symptom: Symptom) -> None:
    found = {hit.symptom: hit for hit in screen(text).hits}
    assert found[symptom].sure is True


def test_a_drug_named_is_noticed() -> None:
    assert [text for text in phrases.lines(phrases.DRUGS) if not screen(text).drug] == []


def test_food_and_denials_are_no_drugs() -> None:
    assert [text for text in phrases.lines(phrases.NO_DRUGS) if screen(text).drug] == []


def test_a_drug_of_ones_own_is_noticed_even_when_it_was_left_out() -> None:
    assert screen("didn't take my furosemide today").drug


@pytest.mark.parametrize(
    ("word", "symptom"),
    [
        ("dizzy", Symptom.DIZZY),
        ("palpitations", Symptom.PALPITATIONS),
        ("swollen hands", Symptom.SWOLLEN_HANDS),
        ("swollen-hands", Symptom.SWOLLEN_HANDS),
        ("Swollen_Hands", Symptom.SWOLLEN_HANDS),
        ("weak legs", Symptom.LIMB_WEAKNESS),
        ("couldn't sleep", Symptom.SLEEPLESS),
        ("diarrhea", Symptom.DIARRHOEA),
        ("fainted and dizzy", Symptom.FAINTING),
        ("elbow", None),
        ("", None),
        ("no chest pain", None),
    ],
)
def test_a_reported_word_becomes_its_symptom(word: str, symptom: Symptom | None) -> None:
    assert from_report(word) is symptom


def test_every_id_stands_for_itself() -> None:
    for symptom in Symptom:
        assert from_report(str(symptom)) is symptom
        assert from_report(str(symptom).replace("-", " ")) is not None


LONG = [
    ", ".join(["no chest pain"] * 300),
    "if chest pain, " * 280,
    "heart heart my legs " * 204,
    "can't " * 680,
    "palpattion " * 370,
    "a" * 4096,
    "abcdefghijklmnopq " * 227,
    "not " * 1024,
    "1,1" * 1365,
    "my heart chest legs head pain weak vomit up sick breath arm pass out can't hands " * 50,
]


@pytest.mark.parametrize("text", LONG)
def test_the_longest_message_is_read_without_a_wait(text: str) -> None:
    text = text[:4096]
    quickest = min(_seconds(text) for _ in range(3))
    assert quickest < 1  # 0.05 on an idle machine; a run-away pattern takes many seconds


def _seconds(text: str) -> float:
    start = time.process_time()
    screen(text)
    return time.process_time() - start


@given(any_text(600))
def test_any_text_is_read(text: str) -> None:
    read = screen(text)
    assert len(read.symptoms) == len(read.hits)
    assert not read.symptoms & set(read.denied)
    from_report(text)


def test_figures_alone_name_nothing_but_two_with_a_stroke_may_be_a_blood_pressure() -> None:
    assert screen("60.2 5 3.5") == Screening()
    assert screen("200/110").unplaced == ("200/110",)


def test_every_pattern_of_the_tables_is_a_regular_expression() -> None:
    # They are compiled when first needed, so a slip in one would show in the middle of a morning.
    for book in (ENGLISH.phrases, GERMAN.phrases):
        for phrase in book.all():
            assert phrase.pattern.search("") is None
