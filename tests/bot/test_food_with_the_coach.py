"""The coach and an athlete's food: seen from the card, suggested, fixed in each menu, shopped for."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from engine.food.foods import known_foods
from engine.food.foods.raw import RAW_PER_COOKED, raw_g
from tests.bot.test_food import food, listing
from tests.support.weeks import Team, gone_on
from tests.support.world import Said, text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, Thursday 6 May, at five in London; Mira has her list of foods."""
    return gone_on(team_at(datetime(2027, 5, 6, 4, 0, tzinfo=UTC)), listing)


def seen(team: Team) -> Said:
    (shown,) = team.coach.presses("c:food:2")
    return shown


def test_the_coach_sees_foods_and_todays_menu_from_the_card(team: Team) -> None:
    (card,) = team.coach.presses("c:card:2")
    (shown,) = team.coach.taps("Food", card)
    assert "Mira's foods:\n- White rice, cooked" in shown.text
    menu = food(team).text
    plates = [line for line in menu.splitlines() if line[:2].isdigit()]
    assert plates and all(line in shown.text for line in plates)  # what the athlete reads
    assert text_of(team.coach.taps("Back to the card", shown)).startswith("Mira\n")


def test_what_the_coach_fixes_stays_in_each_menu_until_it_is_let_go(team: Team) -> None:
    shown = seen(team)
    asked = text_of(team.coach.taps("White rice, cooked", shown))
    assert "It is rounded to 25 g" in asked
    assert "350 g a day in each menu" in text_of(team.coach.writes("355"))
    told = text_of(team.athlete.hears())
    assert "Ravi has fixed White rice, cooked in your menus: 350 g a day." in told
    for days_out in (3, 2):
        team.morning(days_out, hour=4 if days_out == 3 else 5)
        assert rice_in(food(team).text) == 350
    assert "White rice, cooked ★: 350 g in each menu" in seen(team).text
    team.coach.taps("White rice, cooked", seen(team))
    team.coach.writes("0")
    assert rice_in(food(team).text) != 350


def rice_in(menu: str) -> int:
    parts = [part.strip() for line in menu.splitlines() if line[:2].isdigit()
             for part in line[5:].split(";")]  # fmt: skip
    return sum(int(part.split()[-2]) for part in parts if part.startswith("White rice"))


def test_a_suggestion_comes_to_the_athlete_who_takes_it_with_a_tap(team: Team) -> None:
    team.coach.taps("Suggest a food", seen(team))
    team.coach.writes("jelly")
    assert "Suggested to Mira: Jelly beans." in text_of(team.coach.taps("Jelly beans"))
    (offered,) = team.athlete.hears()
    assert "Ravi suggests Jelly beans for your list. Take it only if you digest it" in offered.text
    assert "Jelly beans is on your list" in text_of(team.athlete.taps("Put it on my list"))
    assert "- Jelly beans" in seen(team).text


def test_what_is_shopped_for_is_told_as_it_is_sold_too(team: Team) -> None:
    food(team)
    said = text_of(team.athlete.taps("Shopping for the load"))
    assert "White rice, cooked" in said and "g dry)" in said


def test_raw_weights_agree_with_the_water_that_cooking_takes_or_gives() -> None:
    """Rice takes up water to about three times its weight, meat and fish lose a fifth to a quarter
    (common practice; from memory: the USDA table of cooking yields has 75 to 80 % for fish)."""
    assert 2.5 <= 1 / RAW_PER_COOKED["20045"] <= 3.1
    for number in ("05064", "15016", "15262", "15034", "23558", "15209"):
        assert 0.70 <= 1 / RAW_PER_COOKED[number] <= 0.85, number
    assert raw_g("20045", 500) == 180  # 500 g x 28.17 / 79.95 = 176.2 g, up to 5 g
    assert raw_g("09040", 59) is None


def test_portions_are_what_a_kitchen_scale_or_a_count_gives() -> None:
    """Steps of 5 g, or whole pieces; salt is weighed finer."""
    for one in known_foods():
        assert one.piece or one.step_g % 5 == 0 or one.name == "Table salt", one.name
