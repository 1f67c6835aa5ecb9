"""A question about targets is answered with them, in whatever words; all else goes to a person."""

from __future__ import annotations

import pytest

from engine.symptoms import screen
from engine.written.questions import about_targets, asks_about_amount

TODAY = """
how many steps do i need today
Protein target?? cant find it
how much water am I on today, target wise
whats my cardio today coach
is it still 30 min cardio today or none
sodium goal pls, lost it
water?
auf wieviel gramm kh bin ich jetzt grad
schritte soll wieviel sein?
Könnten Sie mir bitte mein Eiweißziel noch einmal nennen?
wie viele liter wasser solln das heut werden laut plan
hab ich heut cardio und wie lang? finde es grad nicht
my macros please
today's carbs
how many grams are left
meine werte
kohlenhydrate heute
wie viel wasser fehlt mir noch
"""
WEEK = """
remind me of the macros for thursday pls
what's the plan numbers for load day
how much fat tomorrow
donnerstag, was hab ich da an fett stehen
was is mei kalorienvorgabe am ladetag
schick mir nochmal die kohlenhydrate für morgen
tomorrow's carbs
"""
#: Of a body, of a wish, of a day gone by, or with one word more: for a person.
OTHERS = """
am I fat?
bin ich zu fett?
how fat do I look
soll ich heute nichts trinken?
no water today?
can't eat my carbs, what now?
should I skip water tomorrow?
my plan is to eat
should I do cardio today?
muss ich heute cardio machen?
am I on plan?
bin ich im Plan?
are my numbers ok?
what a day
how was my water yesterday
why so many steps with this knee
wie viel wasser trotz geschwollener füße?
carbs 310
61.2 5 3.5
is my heart rate on target?
my numbers are off
what a plan today
water today
my fat
"""


@pytest.mark.parametrize(("table", "command"), [(TODAY, "today"), (WEEK, "week"), (OTHERS, None)])
def test_a_question_about_targets_shows_them_and_nothing_else_does(
    table: str, command: str | None
) -> None:
    lines = table.strip().splitlines()
    found = {line: about_targets(line) for line in lines}
    assert found == dict.fromkeys(lines, command)


def test_no_question_about_targets_is_taken_for_a_complaint() -> None:
    asked = (TODAY + WEEK).strip().splitlines()
    assert [line for line in asked if line and screen(line) != screen("")] == []


AMOUNTS = [
    "is 3.5 liters a lot?", "sind 3,5 Liter viel?", "is 4 l of water enough for today?",
    "reichen 3 Liter heute?", "would 5 litres be too much?",
]  # fmt: skip
NO_AMOUNTS = [
    "is it 3.5 liters?",
    "3.5 liters?",
    "I drank 3.5 liters, is that a lot?",
    "is 61 kg ok?",
]


def test_a_question_about_an_amount_to_drink_is_told_from_a_drink_that_was_had() -> None:
    assert [text for text in AMOUNTS if not asks_about_amount(text)] == []
    assert [text for text in NO_AMOUNTS if asks_about_amount(text)] == []
