"""What both ears heard is weighed together: few are asked in vain, and no danger is lost."""

from __future__ import annotations

import pytest

from engine.symptoms import Screening, screen
from engine.symptoms.ear.hearing import WEIGHTS, measures, stretches
from engine.values.level import Level
from tests.engine.test_hearing_holds import TOLD

CHATTER = {
    "en": (
        "Rice is weighed out for the whole day",
        "The neighbour lent me his cool box",
        "I packed the tan, the number and both suits",
        "Train leaves at ten past nine on Friday",
        "Posing practice went fine with the new track",
        "My sister is bringing the folding chair",
        "Oats again for breakfast, with cinnamon",
        "The hall opens at seven for everybody",
    ),
    "de": (
        "Reis ist für den ganzen Tag abgewogen",
        "Der Nachbar leiht mir die Kühlbox",
        "Farbe, Nummer und beide Hosen sind eingepackt",
        "Der Zug geht am Freitag um zehn nach neun",
        "Posing mit der neuen Musik lief gut",
        "Meine Schwester bringt den Klappstuhl mit",
        "Zum Frühstück wieder Haferflocken mit Zimt",
        "Die Halle macht um sieben für alle auf",
    ),
}
OF_OTHERS = (
    "my aunt fainted at mass on sunday, she's fine again and sends her love, rice is on",
    "two people collapsed in that marathon film, great music though",
    "my client had chest pain last year, she's back to squatting now and we are all relieved",
    "die Oma vom Nachbarn hatte einen Schlaganfall, er fährt heute zu ihr, ich füttere seine Katze",
)
NONSENSE = ("zxqv blorp, fizz? qwop!", "asdf jkl asdf jkl")


def asks_or_more(found: Screening) -> bool:
    grave = any(hit.symptom.level is not Level.ADVISORY for hit in found.hits)
    return grave or bool(found.suspicions)


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_warning_in_the_middle_of_a_long_message_is_heard(language: str) -> None:
    chatter = CHATTER[language]
    missed = []
    for at, told in enumerate(TOLD[language]):
        around = list(chatter)
        around.insert(at % len(chatter), told)
        if not asks_or_more(screen(". ".join(around) + ".")):
            missed.append(told)
    assert missed == []


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_long_message_of_nothing_but_news_is_not_asked_about(language: str) -> None:
    found = screen(". ".join(CHATTER[language]) + ".")
    assert not found.hits and not found.suspicions


@pytest.mark.parametrize("told", OF_OTHERS)
def test_what_befell_somebody_else_and_is_whole_news_is_not_asked_about(told: str) -> None:
    assert not asks_or_more(screen(told))


@pytest.mark.parametrize("text", NONSENSE)
def test_words_of_no_language_are_no_complaint(text: str) -> None:
    assert not asks_or_more(screen(text))


@pytest.mark.parametrize(
    "text",
    [
        "I feel fine. Warm office, I lost count. 3.5 it is.",
        "mir geht's gut, hab mich beim Wasser verzählt, so drei Liter",
    ],
)
def test_who_calls_themself_well_and_tells_nothing_is_not_asked(text: str) -> None:
    assert not asks_or_more(screen(text))


def test_who_calls_themself_well_and_tells_of_danger_is_heard() -> None:
    assert asks_or_more(screen("I feel fine. My left arm has gone numb though and I talk funny."))


def test_every_measure_has_its_weight_and_every_weight_its_measure() -> None:
    assert measures("my chest hurts a little today", ()).keys() == WEIGHTS.keys()


def test_a_long_text_is_weighed_a_few_sentences_at_a_time_and_none_is_left_out() -> None:
    told = [f"Sentence number {name} is here" for name in ("one", "two", "three", "four", "five")]
    parts = list(stretches(". ".join(told) + "."))
    assert len(parts) == 3
    assert all(any(one in part for part in parts) for one in told)
