"""The coach's say in an athlete's food: sees list and menu, suggests foods, fixes amounts."""

from __future__ import annotations

from functools import partial

from bot.core.chat.cards import CARD
from bot.core.chat.outbox import SILENTLY, Button
from bot.core.turn import Act, OnAthlete, Turn
from bot.dialogue import asking
from bot.dialogue.flow import Answers
from bot.food import flow_coach
from bot.food import words as list_words
from bot.food import words_day as day_words
from bot.food.buttons import FOOD_FIX, FOOD_MEAL, FOOD_OF, FOOD_SUGGEST, Known, OfFood, OfMealTime
from bot.food.by_template import suggest
from bot.food.day import today
from bot.food.fixed_meals import fixed_meals
from bot.food.flow import figures_of
from bot.food.flow_coach import FIX, SUGGEST
from bot.food.list import begin_menus_anew, rows_of, set_times, times_of
from bot.food.words_names import food_name
from bot.people.people import get_person, name_of
from bot.people.telling import answer, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.food import FoodRow, MealTimesRow
from bot.store.tables.people import AthleteProfile, Person
from bot.words import common
from engine.food.foods import known_food


def show(turn: OnAthlete) -> None:
    """Button "c:food:ATHLETE": the list, today's menu, and a button a food."""
    answer(turn)
    profile, session = turn.profile, turn.session
    rows = rows_of(session, profile.person_id)
    lines = [
        flow_coach.food_line(row.name, list_words.mark_of(row.liking), row.fixed_g) for row in rows
    ]
    fixed = list(fixed_meals(session, profile.person_id, times_of(session, profile.person_id)))
    lines += [flow_coach.fixed_line(fixed)] if fixed else []
    name = name_of(session, profile.person_id)
    times = times_of(session, profile.person_id)
    number = profile.person_id
    foods = [Button(food_name(row.name), FOOD_FIX(number, id_of(row))) for row in rows]
    keys = [foods[i : i + 2] for i in range(0, len(foods), 2)]
    meals = [Button(flow_coach.meals_button(), FOOD_MEAL(number))] if rows else []
    keys.append([Button(flow_coach.suggest_button(), FOOD_SUGGEST(number)), *meals])
    keys.append([Button(common.back_button(), CARD(number))])
    rewrite(turn, flow_coach.view(name, lines, times, _today(turn, profile, rows)), keys)


def fix_meal(turn: OnAthlete, pressed: OfMealTime) -> None:
    """A meal stays as it is in today's menu, or is let go."""
    answer(turn)
    profile, session = turn.profile, turn.session
    athlete = get_person(session, profile.person_id)
    times = times_of(session, profile.person_id)
    named = next((at for at in times if at.replace(":", "") == pressed.at), None)
    day = today(turn, profile)
    if named is not None:
        row = session.get(MealTimesRow, profile.person_id) or set_times(
            turn, profile.person_id, times
        )
        plates = dict(zip(day.times, day.menu.meals, strict=False))
        if named in row.fixed:
            row.fixed = {at: meal for at, meal in row.fixed.items() if at != named}
        elif plates.get(named):
            row.fixed = row.fixed | {named: {one.food.id: one.steps for one in plates[named]}}
        session.add(row)
        session.flush()
        begin_menus_anew(turn, athlete)
        day = today(turn, profile)
        if athlete.id != turn.person.id:
            told = partial(
                flow_coach.athlete_told_meal,
                turn.person.first_name,
                named,
                fixed=named in row.fixed,
            )
            say_to(turn, athlete, told, how=SILENTLY)
    fixed = fixed_meals(session, profile.person_id, times)
    number = profile.person_id
    keys = [
        [
            Button(
                flow_coach.meal_button(at, fixed=at in fixed),
                FOOD_MEAL(number, at.replace(":", "")),
            )
        ]
        for at in times
        if at in fixed or at in day.times
    ]
    keys.append([Button(common.back_button(), FOOD_OF(number))])
    rewrite(turn, flow_coach.which_meal(day_words.plates(day.times, day.menu)), keys)


def ask_fix(turn: OnAthlete, pressed: OfFood) -> None:
    """What is wrong with a food of the athlete's list."""
    answer(turn)
    row = _food(turn, turn.profile, pressed.food)
    if row is None:
        say_to(turn, turn.person, list_words.food_gone())
        return
    asking.open_question(turn, turn.person, FIX, turn.profile.person_id, {
        "_food": row.id, "_called": row.name, "_step_g": row.step_g,
    })  # fmt: skip


def fix_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    row, grams = _food(turn, profile, answers.get("_food")), float(answers["grams"])
    if row is None:
        say_to(turn, coach, common.not_your_athlete())
        return
    row.fixed_g = grams or None
    turn.session.add(row)
    athlete = get_person(turn.session, profile.person_id)
    begin_menus_anew(turn, athlete)
    say_to(turn, coach, flow_coach.fixed(row.name, grams))
    if athlete.id != coach.id:
        told = partial(flow_coach.athlete_told_fixed, coach.first_name, row.name, grams)
        say_to(turn, athlete, told, how=SILENTLY)


def ask_suggestion(turn: OnAthlete) -> None:
    """Button "c:food-suggest:ATHLETE"."""
    answer(turn)
    asking.open_question(turn, turn.person, SUGGEST, turn.profile.person_id)


def suggestion_given(turn: Turn, coach: Person, profile: AthleteProfile, answers: Answers) -> None:
    food = known_food(str(answers.get("food", "")))
    if food is None:
        say_to(turn, coach, common.not_your_athlete())
        return
    athlete = get_person(turn.session, profile.person_id)
    suggest(turn, coach, athlete, food)
    say_to(turn, coach, flow_coach.suggested(food.name, athlete.first_name))


def take(turn: Act, pressed: Known) -> None:
    """The button under a suggestion: it goes on the athlete's list."""
    food = known_food(pressed.food)
    if food is None:
        answer(turn, list_words.food_gone())
        return
    answer(turn)
    listed = [row.source for row in rows_of(turn.session, id_of(turn.person))]
    if food.id not in listed:
        turn.session.add(
            FoodRow(
                athlete_id=id_of(turn.person), source=food.id, name=food.name,
                figures=figures_of(food), step_g=food.step_g, piece=food.piece, liking="well",
                added_at=turn.now,
            )
        )  # fmt: skip
        turn.session.flush()
        begin_menus_anew(turn, turn.person)
    rewrite(turn, list_words.food_added(food.name, "well"))


def _food(turn: Turn, profile: AthleteProfile, named: int | None) -> FoodRow | None:
    row = turn.session.get(FoodRow, named) if named is not None else None
    return row if row and row.athlete_id == profile.person_id and not row.removed_at else None


def _today(turn: Turn, profile: AthleteProfile, rows: list[FoodRow]) -> str:
    """Today's plates as the athlete sees them, where there is anything to make them of."""
    if not profile.baseline or not any(row.liking != "never" for row in rows):
        return flow_coach.no_menu()
    day = today(turn, profile)
    plates = day_words.plates(day.times, day.menu)
    eaten = day_words.macros(day.eaten)
    return flow_coach.menu_of_today(plates, eaten) if plates else flow_coach.no_menu()
