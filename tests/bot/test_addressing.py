"""At whom a coach's words are put: at several, at everybody, or only of somebody."""

from __future__ import annotations

import pytest

from bot.direct.flow import addressed_together, is_of_them

NAMES = ["Mia", "Dora", "Mia K."]


@pytest.mark.parametrize(
    ("said", "named", "rest"),
    [
        ("Mia and Dora, please send photos", ["Mia", "Dora"], "please send photos"),
        ("Mia, Dora: early night", ["Mia", "Dora"], "early night"),
        ("everybody: photos tomorrow", NAMES, "photos tomorrow"),
        ("tell both that I come at nine", NAMES, "I come at nine"),
        ("Mia, say hi to Dora", [], "Mia, say hi to Dora"),
        ("all good today", [], "all good today"),
        ("both of you did well", [], "both of you did well"),
    ],
)
def test_several_who_are_addressed_together_are_known_and_their_names_left_out(
    said: str, named: list[str], rest: str
) -> None:
    assert addressed_together(NAMES, said) == (named, rest)


def test_a_name_that_is_the_subject_of_a_sentence_is_no_call() -> None:
    assert is_of_them("Mia has to sleep more", "has to sleep more")
    assert not is_of_them("Mia, has it arrived?", "has it arrived?")
    assert not is_of_them("Mia eat the rice", "eat the rice")
