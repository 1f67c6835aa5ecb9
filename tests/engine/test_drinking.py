"""How fast water was drunk, read off a sentence: every way of counting, in both languages.

IOM 2005 (Dietary Reference Intakes for Water): the kidneys pass at most 0.7 to 1.0 L an hour, so a
rate that is read too low hides what a warning is for.
"""

from __future__ import annotations

import pytest

from engine.safety import fastest_drinking_l_per_h

ENGLISH = {
    "one and a half litres in an hour": 1.5, "a couple of litres in an hour": 2.0,
    "half a litre in an hour": 0.5, "a litre in an hour": 1.0, "one litre in an hour": 1.0,
    "two litres in an hour": 2.0, "three litres in an hour": 3.0, "four litres in an hour": 4.0,
    "five litres in an hour": 5.0, "six litres in an hour": 6.0,
    "6 litres in one hour": 6.0, "6 litres in two hours": 3.0, "6 litres in three hours": 2.0,
    "6 litres in four hours": 1.5, "6 litres in five hours": 1.2, "6 litres in six hours": 1.0,
    "3 litres in one and a half hours": 2.0, "6 litres in 2.5 hours": 2.4,
    "2 litres an hour": 2.0, "2 litres per hour": 2.0, "1500 ml in one go": 1.5,
    "2 litres in the last hour": 2.0, "3 litres in a couple of hours": 1.5,
    "half an imperial gallon in an hour": 2.273, "2 litres in half hour": 2.0,
    "2 litres of water within about an hour": 2.0,
}  # fmt: skip
GERMAN = {
    "anderthalb Liter in einer Stunde": 1.5, "eineinhalb Liter in einer Stunde": 1.5,
    "einen halben Liter in einer Stunde": 0.5, "einen Liter in einer Stunde": 1.0,
    "zwei Liter in einer Stunde": 2.0, "drei Liter in einer Stunde": 3.0,
    "vier Liter in einer Stunde": 4.0, "fünf Liter in einer Stunde": 5.0,
    "fuenf Liter in einer Stunde": 5.0, "sechs Liter in einer Stunde": 6.0,
    "6 Liter in zwei Stunden": 3.0, "6 Liter in drei Stunden": 2.0, "6 Liter in vier Stunden": 1.5,
    "6 Liter in fünf Stunden": 1.2, "6 Liter in sechs Stunden": 1.0,
    "3 Liter in anderthalb Stunden": 2.0, "3 Liter in eineinhalb Stunden": 2.0,
    "2 Liter in einer halben Stunde": 2.0, "2 Liter pro Stunde": 2.0, "2 Liter auf einmal": 2.0,
    "in zwei Stunden 3 Liter getrunken": 1.5, "in der letzten halben Stunde 2 Liter": 2.0,
    "ein Liter in einer Stunde": 1.0, "einem halben Liter in einer Stunde": 0.5,
    "halben Liter in einer Stunde": 0.5, "2 Liter in halbe Stunde": 2.0,
    "2 Liter in eine Stunde": 2.0,
}  # fmt: skip
MINUTES = {
    "3 litres in 90 minutes": 2.0, "2 litres in 60 minutes": 2.0, "2 litres in 30 minutes": 2.0,
    "3 Liter in 90 Minuten": 2.0, "2 litres in half an hour": 2.0, "2 litres in a minute": 2.0,
    "3 litres in two minutes": 3.0,
}  # fmt: skip


@pytest.mark.parametrize("told", [ENGLISH, GERMAN, MINUTES], ids=["English", "German", "minutes"])
def test_each_way_of_telling_how_fast_is_read_as_litres_an_hour(told: dict[str, float]) -> None:
    read = {text: fastest_drinking_l_per_h(text) for text in told}
    assert read == pytest.approx(told, abs=0.001)


def test_what_took_most_of_a_day_or_no_time_at_all_is_no_rate() -> None:
    assert fastest_drinking_l_per_h("6 litres in 6 hours") == 1.0
    for text in ("7 litres in 6.5 hours", "14 litres in 7 hours", "2 litres in 0 hours"):
        assert fastest_drinking_l_per_h(text) is None, text
