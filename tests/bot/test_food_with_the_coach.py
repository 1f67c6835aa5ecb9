"""The coach and an athlete's food: seen from the card, suggested, fixed in each menu, shopped for."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlmodel import select

from bot.core.turn import Turn
from bot.food.day import today
from bot.food.list import rows_of
from bot.people.people import get_person, get_profile
from bot.store.db import transaction
from bot.store.tables.food import FoodRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.traffic import OutboxRow
from engine.food.foods import known_foods
from engine.food.foods.table import RAW_PER_COOKED, raw_g
from tests.bot.test_food import food, listing
from tests.support.many import not_set_up
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


def at_noon(menu: str) -> str:
    return next(line for line in menu.splitlines() if line.startswith("13:00"))


def test_a_whole_meal_that_the_coach_keeps_is_the_same_each_day_and_the_rest_fills_the_target(
    team: Team,
) -> None:
    noon = at_noon(food(team).text)
    (meals,) = team.coach.taps("Fix whole meals", seen(team))
    (kept,) = team.coach.taps("13:00: keep it", meals)
    assert "13:00: let it go" in kept.buttons
    assert "Ravi has fixed your 13:00 meal" in text_of(team.athlete.hears())
    for days_out in (3, 2):
        team.morning(days_out, hour=4 if days_out == 3 else 5)
        menu = food(team).text
        assert at_noon(menu) == noon
    with team.world.session() as session:
        profile = get_profile(session, 2)
        day = today(Turn(session, team.world.context), profile)
    assert abs(day.menu.totals.carb_g - day.left.carb_g) <= 5
    assert "Fixed as whole meals: 13:00." in seen(team).text
    team.coach.taps("13:00: let it go", team.coach.taps("Fix whole meals", seen(team))[-1])
    assert "Fixed as whole meals" not in seen(team).text
    assert "lets your 13:00 meal vary again" in text_of(team.athlete.hears())


def test_a_template_sets_the_meals_by_body_mass_and_puts_no_food_on_a_list_unasked(
    team: Team,
) -> None:
    team = gone_on(team, food)
    team.coach.taps("13:00: keep it", team.coach.taps("Fix whole meals", seen(team))[-1])
    team.coach.taps("White rice, cooked", seen(team))
    team.coach.writes("350")
    team.coach.presses("c:tpl-save:2")
    team.coach.writes("With meals")
    with transaction(team.world.engine) as session:
        (number,) = not_set_up(session, 1, ("Nia",), team.world.now)
        rice = session.exec(select(FoodRow).where(FoodRow.name == "White rice, cooked")).one()
        session.add(FoodRow(**rice.model_dump(exclude={"id", "athlete_id", "fixed_g"}),
                            athlete_id=number))  # fmt: skip
        nia, mira = (session.get_one(AthleteProfile, one) for one in (number, 2))
        nia.body_mass_kg = (mira.body_mass_kg or 0) * 0.9
        session.add(nia)
    team.coach.writes("/setup Nia")
    team.coach.taps("With meals")
    assert "meals of the template" in text_of(team.coach.writes("show 23 May 14:30"))
    team.coach.taps("Set it up")
    with team.world.session() as session:
        (here,) = rows_of(session, number)
        assert here.fixed_g == pytest.approx(315, abs=here.step_g)  # 350 g x 0.9
        chat = get_person(session, number).chat_id
        told = [row.payload["text"] for row in session.exec(
            select(OutboxRow).where(OutboxRow.chat_id == chat))]  # fmt: skip
    suggested = [text for text in told if "suggests" in text and "Take it only if" in text]
    assert suggested and not any("rice" in text for text in suggested)


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
    team = gone_on(team, food)
    said = text_of(team.athlete.taps("Shopping for the load"))
    assert "White rice, cooked" in said and "g dry)" in said


def test_what_is_shopped_for_begins_with_the_plans_own_load(team: Team) -> None:
    team = gone_on(team, food)
    assert "For the load (3 days)" in text_of(team.athlete.taps("Shopping for the load"))
    team.coach.writes("Mira 3 days out phase usual")
    food(team)
    assert "For the load (2 days)" in text_of(team.athlete.taps("Shopping for the load"))


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
