"""The ear's second vote on what the tables found: other people's, told and spent complaints pass."""

from __future__ import annotations

import pytest

from engine.symptoms import Symptom, screen
from engine.symptoms.ear import passed_over
from engine.symptoms.ear.second_vote import LET_PASS, vote
from engine.symptoms.finding import Hit
from engine.symptoms.screening import from_report, tables_find

LET_BY = [
    "the crossword asks for a five letter word for giddy",
    "the app thinks dizzy is a warning, is that so?",
    "weak at the knees, she proposed in the gym!",
    "mutter ist von den neuen tropfen schwindelig, hab ihr gesagt sie soll zum arzt",
    "wie lange nach fieber pausiert man, frag fürs vereinsheft",
]
KEPT = [
    "I fainted in the bathroom",
    "my heart keeps skipping beats",
    "chest pain since the stairs",
    "dizzy",
    "bin umgekippt",
    "mir ist schwindelig",
    "Brustschmerzen beim Gehen",
]


@pytest.mark.parametrize("text", LET_BY)
def test_words_of_a_complaint_said_of_something_else_are_let_pass(text: str) -> None:
    assert tables_find(text)
    assert screen(text).hits == ()
    assert screen(text).suspicions == ()


@pytest.mark.parametrize("text", KEPT)
def test_a_plain_complaint_outlives_the_vote(text: str) -> None:
    assert screen(text).hits == tables_find(text) != ()


def test_what_is_let_pass_in_one_sentence_is_heard_in_the_next() -> None:
    text = f"{LET_BY[0]}. I fainted in the bathroom."
    assert Symptom.FAINTING in screen(text).symptoms


def test_a_warning_is_let_pass_only_where_it_is_clearest() -> None:
    ordered = sorted(LET_PASS, key=lambda level: level.rank)
    assert [LET_PASS[level] for level in ordered] == sorted(LET_PASS.values(), reverse=True)
    assert LET_PASS[ordered[-1]] <= 0.1


def test_the_same_words_weigh_more_in_the_first_person() -> None:
    hit = Hit(Symptom.FAINTING, True, "fainted")
    assert vote("I fainted", [hit]) > vote("the horse fainted in the film", [hit])


def test_nothing_found_is_nothing_to_vote_on() -> None:
    assert passed_over("I fainted", ()) == ()


def test_a_button_s_word_is_taken_at_its_word() -> None:
    assert from_report("dizzy") is Symptom.DIZZY
