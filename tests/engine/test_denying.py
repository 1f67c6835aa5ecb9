"""What asks for words of denial knows them all: they stand in one list a language."""

from __future__ import annotations

from engine.symptoms import Symptom, screen
from engine.symptoms.all_clear import is_all_clear
from engine.symptoms.denying import DENIALS as ENGLISH
from engine.symptoms.denying import GERMAN_DENIALS as GERMAN
from engine.symptoms.denying import (
    GERMAN_DENIALS_IN_WRITING,
    NO_AT_HOME,
    NO_MORE,
    NO_OR_NO_IDEA,
    NOT,
)
from engine.symptoms.english import negation
from engine.symptoms.german import negation as german_negation
from engine.symptoms.patterns import table


def denied(said: object, words: str, complaint: str) -> bool:
    text = f"{words} {complaint}"
    span = (len(words) + 1, len(text))
    assert callable(said)
    return said(text, span, [span]) is negation.Polarity.NO


def test_what_stands_before_a_complaint_denies_it_in_the_clause() -> None:
    for word in ENGLISH | GERMAN_DENIALS_IN_WRITING:
        assert denied(negation.said, word, "chest pain"), word
    for word in GERMAN:
        assert denied(german_negation.german_polarity, word, "brustschmerzen"), word


def test_what_stands_before_a_drug_denies_that_it_is_taken() -> None:
    for word in ENGLISH | GERMAN_DENIALS_IN_WRITING:
        assert negation.drug_denied(f"{word} clen", (len(word) + 1, len(word) + 5)), word
    for word in GERMAN:
        clause = f"{word} clen"
        assert german_negation.german_drug_denied(clause, (len(word) + 1, len(clause))), word


def test_a_sentence_that_only_denies_is_taken_out_with_any_of_them() -> None:
    for word in ENGLISH | {word.replace("'", "") for word in ENGLISH}:
        assert is_all_clear(f"{word} headache"), word
    for word in GERMAN:
        assert is_all_clear(f"{word} kopfweh"), word


def test_a_way_of_saying_it_that_has_one_of_them_denies_nothing_of_itself() -> None:
    for word in ENGLISH | GERMAN:
        assert all(
            p.denies for p in table(Symptom.LIMB_WEAKNESS, "legs", sure=f"legs {word} move")
        ), word
    assert not any(p.denies for p in table(Symptom.LIMB_WEAKNESS, "legs", sure="legs move"))


def test_what_is_said_at_home_is_of_the_list_but_for_what_means_another_thing_too() -> None:
    listed = set(f"{NOT}|{NO_MORE}|{NO_AT_HOME}".replace("(?:", "").replace(")", "").split("|"))
    words = {word for said in listed for word in said.split()} - {"mehr", "ne"}
    assert words - GERMAN == NO_OR_NO_IDEA
    assert all(screen(f"hob {word} luft").hits for word in words - {"nimmer"})
