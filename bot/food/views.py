"""`/food`: what is left of today as portions, eaten, swapped, locked; and shopping for the load."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.core.chat.buttons import Rest
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import Act, ChatTurn, Context, Turn
from bot.dialogue import asking
from bot.food import list as food_list
from bot.food import words as list_words
from bot.food import words_day as words
from bot.food.buttons import EATEN, FOOD, LOCK, MISSED, SWAP, FoodView, OfFood, OfMeal, OnFood, Swap
from bot.food.day import Today, eat, load_needs, today
from bot.food.flow import ATE
from bot.food.list import food_of, list_keys, own_food, rows_of, say_list
from bot.food.words_names import food_name
from bot.people.people import active, is_own_coach, local_date, profile_of
from bot.people.telling import answer, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person

MISSED_AFTER = timedelta(minutes=30)
SHOWN_MEALS = 3
SWAPS_SHOWN = 12


def show_today(turn: Act) -> None:
    """`/food`."""
    profile = active(turn, turn.person)
    if profile is None:
        return
    if not _usable(turn.session, profile):
        say_list(turn, turn.person)
        return
    text, keys = _view(profile, today(turn, profile), turn.context)
    say_to(turn, turn.person, text, buttons=keys)


def back_to_today(turn: Act) -> None:
    answer(turn)
    _rewrite_today(turn, turn.person)


def ate_meal(turn: Act, pressed: OfMeal) -> None:
    """A meal was eaten as it stood: the rest stays as it is."""
    _close_meal(turn, turn.person, pressed.at, eaten=True)


def missed_meal(turn: Act, pressed: OfMeal) -> None:
    """A meal was left out: what it held goes to the meals after it."""
    _close_meal(turn, turn.person, pressed.at, eaten=False)


def ask_ate(turn: Act) -> None:
    answer(turn)
    foods = [
        (str(row.id), food_name(row.name)) for row in rows_of(turn.session, id_of(turn.person))
    ]
    if not foods:
        say_list(turn, turn.person)
        return
    asking.open_question(turn, turn.person, ATE, turn.person.id, {"_foods": foods})


def ate_given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """Something else was eaten: the rest of the day is planned anew around it."""
    profile = profile_of(turn.session, person.id)
    row = own_food(turn.session, person, int(question.answers["food"]))
    if profile is None or row is None:
        say_to(turn, person, list_words.food_gone())
        return
    grams = question.answers["grams"]
    eat(turn, profile, id_of(row), grams)
    day = today(turn, profile, anew=True)
    text, keys = _view(profile, day, turn.context)
    noted = words.ate_noted(row.name, grams)
    say_to(turn, person, f"{noted}\n\n{text}", buttons=keys)


def _which_swap(turn: Act) -> None:
    answer(turn)
    day = _day(turn, turn.person)
    foods = {p.food.id: p.food.name for meal in (day.menu.meals if day else ()) for p in meal}
    keys = [[Button(food_name(name), SWAP(int(id)))] for id, name in foods.items()]
    rewrite(turn, words.which_swap(), [*keys, _back()])


def swap(turn: Act, pressed: Swap) -> None:
    """First what is to give way, then what is to come instead (or whatever fits)."""
    row = own_food(turn.session, turn.person, pressed.food)
    day = _day(turn, turn.person)
    if row is None or day is None or row.id is None:
        _which_swap(turn)
        return
    answer(turn)
    if pressed.other is None:
        others = [
            other for other in rows_of(turn.session, id_of(turn.person))
            if other.id != row.id and other.liking != "never" and other.id not in day.row.left_out
        ][:SWAPS_SHOWN]  # fmt: skip
        keys = [
            [Button(food_name(other.name), SWAP(id_of(row), str(id_of(other))))] for other in others
        ]
        keys.append([Button(words.anything_button(), SWAP(id_of(row), "any"))])
        rewrite(turn, words.instead_of(row.name), [*keys, _back()])
        return
    other = int(pressed.other) if pressed.other.isdigit() else None
    other_row = own_food(turn.session, turn.person, other)
    day.row.left_out = sorted({*day.row.left_out, row.id})
    day.row.locked = {id: n for id, n in day.row.locked.items() if id != str(row.id)}
    wanted = {id for id in day.row.wanted if id != row.id}
    if other_row is not None and other_row.id is not None:
        wanted.add(other_row.id)
    day.row.wanted = sorted(wanted)
    turn.session.add(day.row)
    turn.session.flush()
    _rewrite_today(turn, turn.person, anew=True, lead=words.swapped(row.name))


def lock(turn: Act, pressed: OfFood) -> None:
    """What stays as it is, however the rest of the day is planned anew; a tap turns it."""
    answer(turn)
    day = _day(turn, turn.person)
    if day is None:
        _rewrite_today(turn, turn.person)
        return
    row = own_food(turn.session, turn.person, pressed.food)
    if row is not None:
        key, steps = str(row.id), round(day.grams(id_of(row)) / row.step_g)
        locked = dict(day.row.locked)
        if key in locked:
            del locked[key]
        elif steps:
            locked[key] = steps
        day.row.locked = locked
        turn.session.add(day.row)
        turn.session.flush()
    foods = {p.food.id: p.food for meal in day.menu.meals for p in meal}
    # What is locked and all eaten is on no plate any more, and has to be let go of here as well.
    own = {str(row.id): food_of(row) for row in rows_of(turn.session, id_of(turn.person))}
    foods |= {id: own[id] for id in day.row.locked if id in own}
    keys = [
        [
            Button(
                words.locked_label(food.name, day.grams(int(id)), locked=id in day.row.locked),
                LOCK(int(id)),
            )
        ]
        for id, food in foods.items()
    ]
    rewrite(turn, words.which_lock(), [*keys, _back()])


def show_shopping(turn: Act) -> None:
    answer(turn)
    profile = profile_of(turn.session, turn.person.id)
    needs = load_needs(turn, profile) if profile is not None else None
    text = words.no_load()
    if needs is not None and needs.whole:
        listed = rows_of(turn.session, id_of(turn.person))
        sources = {str(row.id): row.source.removeprefix("usda-") for row in listed}
        text = words.shopping(needs.whole, needs.day_itself, needs.days, sources)
        if needs.short:
            text += "\n\n" + list_words.shopping_falls_short(needs.short)
    say_to(turn, turn.person, text, buttons=[_back()])


def _close_meal(turn: ChatTurn, person: Person, at: str, *, eaten: bool) -> None:
    profile, day = profile_of(turn.session, person.id), _day(turn, person)
    if profile is None or day is None or at not in day.times:
        answer(turn, words.meal_gone())
        return
    answer(turn)
    locked = dict(day.row.locked)
    if eaten:
        for portion in day.menu.meals[day.times.index(at)]:
            eat(turn, profile, int(portion.food.id), portion.grams)
            if portion.food.id in locked:
                locked[portion.food.id] = max(locked[portion.food.id] - portion.steps, 0)
                # What was asked for is on the plate now: the rest of the day is free of it.
            day.row.wanted = [id for id in day.row.wanted if str(id) != portion.food.id]
    day.row.locked = locked
    day.row.settled = [*day.row.settled, at]
    day.row.meals = [meal for meal in day.row.meals if meal["at"] != at]
    turn.session.add(day.row)
    turn.session.flush()
    _rewrite_today(turn, person, anew=not eaten)


def _day(turn: Turn, person: Person) -> Today | None:
    profile = profile_of(turn.session, person.id)
    if profile is None or not _usable(turn.session, profile):
        return None
    return today(turn, profile)


def _usable(session: Session, profile: AthleteProfile) -> bool:
    rows = rows_of(session, profile.person_id)
    return bool(profile.baseline) and any(row.liking != "never" for row in rows)


def _rewrite_today(turn: ChatTurn, person: Person, *, anew: bool = False, lead: str = "") -> None:
    profile = profile_of(turn.session, person.id)
    if profile is None or not _usable(turn.session, profile):
        rewrite(turn, list_words.list_empty(), list_keys())
        return
    text, keys = _view(profile, today(turn, profile, anew=anew), turn.context)
    rewrite(turn, f"{lead}\n\n{text}" if lead else text, keys)


def _view(profile: AthleteProfile, day: Today, context: Context) -> tuple[str, Buttons]:
    standing = words.Standing(day.target, day.eaten, day.left)
    text = words.day_view(
        local_date(profile, context), standing, day.menu, day.times, usual_day=day.usual_day
    )
    if not day.times:
        met = max(day.left.carb_g, day.left.protein_g, day.left.fat_g) < 10
        text += "\n\n" + (
            words.nothing_to_eat()
            if met
            else words.still_left(day.left, self_coached=is_own_coach(profile))
        )
    now = context.now.astimezone(ZoneInfo(profile.zone or "UTC"))
    keys = []
    for at in day.times[:SHOWN_MEALS]:
        due = datetime.combine(now.date(), time.fromisoformat(at), now.tzinfo)
        line = [Button(words.eaten_button(at), EATEN(Rest(at)))]
        if now > due + MISSED_AFTER:
            line.append(Button(words.missed_button(at), MISSED(Rest(at))))
        keys.append(line)
    keys.append(
        [
            Button(words.swap_button(), SWAP()),
            Button(words.lock_button(), LOCK()),
            Button(words.ate_button(), FOOD(FoodView.ELSE)),
        ]
    )
    keys.append(
        [
            Button(list_words.list_button(), FOOD(FoodView.LIST)),
            Button(words.shopping_button(), FOOD(FoodView.SHOP)),
        ]
    )
    return text, keys


def _back() -> list[Button]:
    return [Button(list_words.back_button(), FOOD(FoodView.DAY))]


SHOWS: Mapping[FoodView, Callable[[Act], None]] = {
    FoodView.DAY: back_to_today,
    FoodView.ELSE: ask_ate,
    FoodView.SHOP: show_shopping,
    FoodView.LIST: food_list.show_list,
    FoodView.ADD: food_list.ask_food,
    FoodView.LABEL: food_list.ask_label,
    FoodView.TIMES: food_list.ask_times,
}


def food_tapped(turn: Act, pressed: OnFood) -> None:
    SHOWS[pressed.view](turn)
