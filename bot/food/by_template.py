"""An athlete's meals as a template holds them, and put on another athlete.

Times stay; amounts go by body mass. Only foods of the table are held, and nothing is put on a list
unasked: what the new athlete has not got, or does not digest, is suggested or left out.
"""

from __future__ import annotations

from functools import partial
from typing import Any

from sqlmodel import Session

from bot.core.chat.outbox import SILENTLY, Button
from bot.core.turn import Turn
from bot.food import flow_coach
from bot.food.buttons import TAKE
from bot.food.list import begin_menus_anew, rows_of, set_times
from bot.people.people import get_person
from bot.people.telling import say_to
from bot.store.tables.food import FoodRow, MealTimesRow
from bot.store.tables.people import AthleteProfile, Person
from engine.food.foods import Food, known_food

Held = dict[str, Any]


def held(session: Session, profile: AthleteProfile) -> Held:
    """Times, what is fixed for the day and whole meals, in g/kg by the food table's ids."""
    row, kg = session.get(MealTimesRow, profile.person_id), profile.body_mass_kg
    if kg is None:
        return {}
    foods = {str(one.id): one for one in rows_of(session, profile.person_id)}
    day = {
        one.source: one.fixed_g / kg
        for one in foods.values()
        if one.fixed_g is not None and known_food(one.source) is not None
    }
    meals = {
        at: {
            foods[id].source: steps * foods[id].step_g / kg
            for id, steps in meal.items()
            if id in foods and known_food(foods[id].source) is not None
        }
        for at, meal in (row.fixed if row is not None else {}).items()
    }
    found: Held = {"day": day, "meals": {at: meal for at, meal in meals.items() if meal}}
    if row is not None:
        found["times"] = list(row.times)
    return {key: one for key, one in found.items() if one}


def put(turn: Turn, coach: Person, profile: AthleteProfile, held: Held) -> None:
    """The same for this athlete; what is not on the list is suggested."""
    listed = {one.source: one for one in rows_of(turn.session, profile.person_id)}
    kg = profile.body_mass_kg or 0
    athlete = get_person(turn.session, profile.person_id)
    for source, share in held.get("day", {}).items():
        one = listed.get(source)
        if one is not None and one.liking != "never":
            one.fixed_g = _steps(one, share * kg) * one.step_g
    row = set_times(turn, profile.person_id, list(held["times"])) if "times" in held else None
    if row is not None:
        row.fixed = {
            at: here
            for at, meal in held.get("meals", {}).items()
            if (here := _meal(meal, listed, kg)) and at in row.times
        }
    begin_menus_anew(turn, athlete)
    if athlete.id == coach.id:
        return
    wanted = {*held.get("day", {}), *(id for meal in held.get("meals", {}).values() for id in meal)}
    for food in (known_food(source) for source in sorted(wanted - listed.keys())):
        if food is not None:
            suggest(turn, coach, athlete, food)


def suggest(turn: Turn, coach: Person, athlete: Person, food: Food) -> None:
    """The athlete is asked whether it goes on the list."""
    say_to(
        turn,
        athlete,
        partial(flow_coach.athlete_told_suggested, coach.first_name, food.name),
        buttons=lambda: [[Button(flow_coach.take_button(), TAKE(food.id))]],
        how=SILENTLY,
    )


def _meal(meal: Held, listed: dict[str, FoodRow], kg: float) -> dict[str, int]:
    return {
        str(listed[source].id): _steps(listed[source], share * kg)
        for source, share in meal.items()
        if source in listed and listed[source].liking != "never"
    }


def _steps(row: FoodRow, grams: float) -> int:
    return max(round(grams / row.step_g), 1)
