"""Word of when the classes of a day are on, as it is typed."""

from __future__ import annotations

from datetime import time

import pytest

from engine.written.stage_times import LAST, StageWord, clocks_alone, parse_stage_word

AT_15, AT_17, AT_1930 = time(15), time(17), time(19, 30)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("two classes, 15:00 and 19:30", StageWord(clocks=(AT_15, AT_1930))),
        ("ich hab zwei Klassen, um 15 Uhr und um 19:30", StageWord(clocks=(AT_15, AT_1930))),
        ("I'm on stage at 3pm and 7.30pm", StageWord(clocks=(AT_15, AT_1930))),
        ("prejudging 15:00, finals 19:30", StageWord(clocks=(AT_15, AT_1930))),
        ("we're on at 3:00", StageWord(clocks=(AT_15,))),
        ("Prejudging erst um 17 uhr", StageWord(1, clocks=(AT_17,))),
        ("prejudging not before 5pm", StageWord(1, clocks=(AT_17,))),
        ("Finale um 19:30", StageWord(LAST, clocks=(AT_1930,))),
        ("they moved my second class up to 5pm", StageWord(2, clocks=(AT_17,))),
        ("second class 30 min late", StageWord(2, by_min=30)),
        ("die zweite Klasse eine Stunde früher", StageWord(2, by_min=-60)),
        ("die rufen uns schon in 20 min auf", StageWord(in_min=20)),
        ("I'm on in half an hour", StageWord(in_min=30)),
        ("Klasse 2 fällt aus", StageWord(2, off=True)),
        ("my second class is cancelled", StageWord(2, off=True)),
    ],
)
def test_when_a_class_is_on_is_read_however_it_is_put(said: str, meant: StageWord) -> None:
    assert parse_stage_word(said, "de") == meant


@pytest.mark.parametrize(
    "said",
    [
        "dinner at 7", "the gym class is at 5pm", "meine Oma kommt um 15 uhr",
        "Registrierung um 12 uhr", "show at 3pm, can I eat at 12?", "not on at 5pm",
        "I was on stage at 3pm and loved it",
        "Bin ich um 15 Uhr dran?", "my second class was better than the first at 3pm",
        "finals 18:00, prejudging 10:00", "two classes, 3 and 7", "we start at 5 with the tan",
    ],
)  # fmt: skip
def test_a_sentence_that_says_anything_else_moves_no_class(said: str) -> None:
    assert parse_stage_word(said, "de") is None


def test_several_times_alone_are_read_as_they_are_written() -> None:
    assert clocks_alone("3pm and 7.30pm") == (AT_15, AT_1930)
    assert clocks_alone("15:00, 19:30") == (AT_15, AT_1930)
    assert clocks_alone("15 Uhr") == (AT_15,)
