"""What is heard by itself is heard in any company, however it is typed: properties of the two ears."""

from __future__ import annotations

import random
import re

import pytest

from engine.symptoms import WARNINGS, Screening, screen

TOLD = {
    "en": [
        "my chest hurts and my left arm is numb",
        "i fainted in the shower",
        "had a seizure on the sofa",
        "i can't breathe properly",
        "my heart keeps skipping beats",
        "legs gave way and won't hold me",
        "i've been vomiting all night, nothing stays down",
        "i see two of everything",
        "i want to kill myself",
        "one side of my face is hanging",
        "the bleeding won't stop",
        "worst headache of my life, out of nowhere",
        "my urine is like cola and my thighs are swollen hard",
        "i don't know where i am",
    ],
    "de": [
        "meine brust tut weh und der linke arm ist taub",
        "ich bin in der dusche umgekippt und war kurz weg",
        "hatte einen krampfanfall auf dem sofa",
        "ich krieg keine luft",
        "mein herz stolpert dauernd",
        "die beine geben nach und tragen mich nicht",
        "ich erbreche die ganze nacht, nichts bleibt drin",
        "ich seh alles doppelt",
        "ich will mich umbringen",
        "mein mundwinkel hängt auf einer seite",
        "die blutung hört nicht auf",
        "schlimmste kopfschmerzen meines lebens, aus dem nichts",
        "mein urin ist wie cola und die schenkel sind steinhart",
        "ich weiß nicht wo ich bin",
    ],
}
BESIDE = {
    "en": ["the tan is booked for friday", "61.2 5 3.5", "my sister says hi", "all meals eaten"],
    "de": ["der tan ist am freitag", "61,2 5 3,5", "grüße von meiner schwester", "alles gegessen"],
}
DENIED = {"en": "no cramps, no nausea", "de": "keine krämpfe, keine übelkeit"}
TURN = {"en": ("but", "and"), "de": ("aber", "und")}
LANGUAGES = ("en", "de")


def heard(found: Screening) -> bool:
    return bool(found.hits or found.suspicions)


def alarms(found: Screening) -> bool:
    return any(hit.sure and hit.symptom in WARNINGS for hit in found.hits)


@pytest.mark.parametrize("language", LANGUAGES)
def test_who_plainly_tells_a_warning_of_themself_raises_an_alarm(language: str) -> None:
    assert [text for text in TOLD[language] if not alarms(screen(text))] == []


@pytest.mark.parametrize(
    "text", ["wait, chest pain", "all good otherwise, fainted", "moment, brustschmerzen"]
)
def test_a_word_or_two_beside_another_is_taken_as_it_stands(text: str) -> None:
    assert alarms(screen(text))


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_warning_beside_anything_harmless_is_heard(language: str) -> None:
    missed = []
    for index, warning in enumerate(TOLD[language]):
        other = BESIDE[language][index % len(BESIDE[language])]
        turn = TURN[language][index % 2]
        for text in (
            f"{other}. {warning}",
            f"{warning}. {other}",
            f"{other}, {warning}",
            f"{warning}, {other}",
            f"{other}\n{warning}",
            f"{other} {turn} {warning}",
        ):
            if not heard(screen(text)):
                missed.append(text)
    assert missed == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_warning_beside_denied_complaints_is_heard(language: str) -> None:
    missed = []
    for warning in TOLD[language]:
        for text in (
            f"{DENIED[language]}. {warning}",
            f"{DENIED[language]}, {TURN[language][0]} {warning}",
            f"{warning}. {DENIED[language]}",
        ):
            if not heard(screen(text)):
                missed.append(text)
    assert missed == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_capitals_and_full_stops_change_nothing(language: str) -> None:
    written = (
        str.upper,
        str.title,
        str.capitalize,
        lambda text: f"{text}!!",
        lambda t: f" {t} ...",
    )
    missed = [
        write(text)
        for text in TOLD[language]
        for write in written
        if not heard(screen(write(text)))
    ]
    assert missed == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_slip_in_a_long_word_hides_next_to_nothing(language: str) -> None:
    chance = random.Random(5)
    texts = [slipped(text, chance) for text in TOLD[language] for _ in range(5)]
    assert sum(heard(screen(text)) for text in texts) >= 0.97 * len(texts)


def slipped(text: str, chance: random.Random) -> str:
    """One letter of a word of five or more dropped, doubled or changed for its neighbour."""
    word = chance.choice([word for word in text.split() if len(word) >= 5])
    at = chance.randrange(1, len(word) - 1)
    way = chance.choice(("drop", "twice", "swap"))
    if way == "drop":
        wrong = word[:at] + word[at + 1 :]
    elif way == "twice":
        wrong = word[:at] + word[at] + word[at:]
    else:
        wrong = word[: at - 1] + word[at] + word[at - 1] + word[at + 1 :]
    return text.replace(word, wrong, 1)


def test_what_is_denied_without_an_apostrophe_is_no_warning() -> None:
    """The second ear knows "I don't feel" from limbs that are not felt, and called it by their name."""
    told = """
        i dont feel sick anymore | i dont have any headache | dont feel dizzy anymore
        im not starving myself | i no longer feel sick | suicide grips are banned at my gym
        schwindlig war mir heut kein einziges mal | bauchschmerzen vor lachen mit den mädels
    """
    sure = {
        text: [hit.symptom for hit in screen(text).hits if hit.sure]
        for text in map(str.strip, re.split(r"[|\n]", told))
        if text
    }
    assert not any(sure.values()), sure
    assert heard(screen("i dont feel my legs anymore"))
