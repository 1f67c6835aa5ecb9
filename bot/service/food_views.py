"""`/food`: what is left of today as portions, eaten, swapped, locked; and shopping for the load."""

from __future__ import annotations

from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.context import Context
from bot.flows.food import ATE
from bot.incoming import Incoming
from bot.messages import food as list_words
from bot.messages import food_day as words
from bot.messages import food_more as more_words
from bot.messages.food_names import food_name
from bot.outbox import Button, Buttons, say
from bot.service import asking
from bot.service.athlete_views import active
from bot.service.food_day import Today, eat, load_needs, today
from bot.service.food_list import food_of, list_keys, own_food, rows_of, say_list
from bot.service.people import local_date, profile_of
from bot.service.tapping import answer, rewrite
from bot.store.people import AthleteProfile, OpenQuestion, Person

MISSED_AFTER = timedelta(minutes=30)
SHOWN_MEALS = 3
SWAPS_SHOWN = 12


def show_today(session: Session, person: Person, rest: str, context: Context) -> None:
    """`/food`."""
    profile = active(session, person, context)
    if profile is None:
        return
    if not _usable(session, profile):
        say_list(session, person, context)
        return
    text, keys = _view(profile, today(session, profile, context), context)
    say(session, chat_id=person.chat_id, text=text, now=context.now, buttons=keys)


def back_to_today(
    session: Session, person: Person, _rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    _rewrite_today(session, person, incoming, context)


def ate_meal(
    session: Session, person: Person, rest: list[str], incoming: Incoming, context: Context
) -> None:
    """A meal was eaten as it stood: the rest stays as it is."""
    _settle(session, person, rest, incoming, context, eaten=True)


def missed_meal(
    session: Session, person: Person, rest: list[str], incoming: Incoming, context: Context
) -> None:
    """A meal was left out: what it held goes to the meals after it."""
    _settle(session, person, rest, incoming, context, eaten=False)


def ask_ate(
    session: Session, person: Person, _rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    foods = [(str(row.id), food_name(row.name)) for row in rows_of(session, person.id or 0)]
    if not foods:
        say_list(session, person, context)
        return
    asking.open_question(
        session, person, ATE, context=context, subject_id=person.id, answers={"_foods": foods}
    )


def ate_given(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """Something else was eaten: the rest of the day is planned anew around it."""
    profile = profile_of(session, person.id)
    row = own_food(session, person, str(question.answers["food"]))
    if profile is None or row is None:
        say(session, chat_id=person.chat_id, text=list_words.food_gone(), now=context.now)
        return
    grams = question.answers["grams"]
    eat(session, profile, row.id or 0, grams, context)
    day = today(session, profile, context, anew=True)
    text, keys = _view(profile, day, context)
    noted = words.ate_noted(row.name, grams)
    say(session, chat_id=person.chat_id, text=f"{noted}\n\n{text}", now=context.now, buttons=keys)


def which_swap(
    session: Session, person: Person, _rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    day = _day(session, person, context)
    foods = {p.food.id: p.food.name for meal in (day.menu.meals if day else ()) for p in meal}
    keys = [[Button(food_name(name), f"f:swap:{id}")] for id, name in foods.items()]
    rewrite(session, incoming, words.which_swap(), context, [*keys, _back()])


def swap(
    session: Session, person: Person, rest: list[str], incoming: Incoming, context: Context
) -> None:
    """First what is to give way, then what is to come instead (or whatever fits)."""
    row = own_food(session, person, rest[0] if rest else "")
    day = _day(session, person, context)
    if row is None or day is None or row.id is None:
        which_swap(session, person, [], incoming, context)
        return
    answer(session, incoming, context)
    if len(rest) == 1:
        others = [
            other for other in rows_of(session, person.id or 0)
            if other.id != row.id and other.liking != "never" and other.id not in day.row.left_out
        ][:SWAPS_SHOWN]  # fmt: skip
        keys = [[Button(food_name(other.name), f"f:swap:{row.id}:{other.id}")] for other in others]
        keys.append([Button(words.anything_button(), f"f:swap:{row.id}:any")])
        rewrite(session, incoming, words.instead_of(row.name), context, [*keys, _back()])
        return
    other_row = own_food(session, person, rest[1])
    day.row.left_out = sorted({*day.row.left_out, row.id})
    day.row.locked = {id: n for id, n in day.row.locked.items() if id != str(row.id)}
    wanted = {id for id in day.row.wanted if id != row.id}
    if other_row is not None and other_row.id is not None:
        wanted.add(other_row.id)
    day.row.wanted = sorted(wanted)
    session.add(day.row)
    session.flush()
    _rewrite_today(session, person, incoming, context, anew=True, lead=words.swapped(row.name))


def lock(
    session: Session, person: Person, rest: list[str], incoming: Incoming, context: Context
) -> None:
    """What stays as it is, however the rest of the day is planned anew; a tap turns it."""
    answer(session, incoming, context)
    day = _day(session, person, context)
    if day is None:
        _rewrite_today(session, person, incoming, context)
        return
    row = own_food(session, person, rest[0] if rest else "")
    if row is not None:
        key, steps = str(row.id), round(day.grams(row.id or 0) / row.step_g)
        locked = dict(day.row.locked)
        if key in locked:
            del locked[key]
        elif steps:
            locked[key] = steps
        day.row.locked = locked
        session.add(day.row)
        session.flush()
    foods = {p.food.id: p.food for meal in day.menu.meals for p in meal}
    # What is locked and all eaten is on no plate any more, and has to be let go of here as well.
    own = {str(row.id): food_of(row) for row in rows_of(session, person.id or 0)}
    foods |= {id: own[id] for id in day.row.locked if id in own}
    keys = [
        [
            Button(
                words.locked_label(food.name, day.grams(int(id)), locked=id in day.row.locked),
                f"f:lock:{id}",
            )
        ]
        for id, food in foods.items()
    ]
    rewrite(session, incoming, words.which_lock(), context, [*keys, _back()])


def show_shopping(
    session: Session, person: Person, _rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    profile = profile_of(session, person.id)
    needs = load_needs(session, profile, context) if profile is not None else None
    text = words.no_load()
    if needs is not None and needs.whole:
        text = words.shopping(needs.whole, needs.day_itself, needs.days)
        if needs.short:
            text += "\n\n" + more_words.shopping_falls_short(needs.short)
    say(session, chat_id=person.chat_id, text=text, now=context.now, buttons=[_back()])


def _settle(
    session: Session,
    person: Person,
    rest: list[str],
    incoming: Incoming,
    context: Context,
    *,
    eaten: bool,
) -> None:
    at = ":".join(rest)  # a time of day has a colon of its own
    profile, day = profile_of(session, person.id), _day(session, person, context)
    if profile is None or day is None or at not in day.times:
        answer(session, incoming, context, words.meal_gone())
        return
    answer(session, incoming, context)
    locked = dict(day.row.locked)
    if eaten:
        for portion in day.menu.meals[day.times.index(at)]:
            eat(session, profile, int(portion.food.id), portion.grams, context)
            if portion.food.id in locked:
                locked[portion.food.id] = max(locked[portion.food.id] - portion.steps, 0)
                # What was asked for is on the plate now: the rest of the day is free of it.
            day.row.wanted = [id for id in day.row.wanted if str(id) != portion.food.id]
    day.row.locked = locked
    day.row.settled = [*day.row.settled, at]
    day.row.meals = [meal for meal in day.row.meals if meal["at"] != at]
    session.add(day.row)
    session.flush()
    _rewrite_today(session, person, incoming, context, anew=not eaten)


def _day(session: Session, person: Person, context: Context) -> Today | None:
    profile = profile_of(session, person.id)
    if profile is None or not _usable(session, profile):
        return None
    return today(session, profile, context)


def _usable(session: Session, profile: AthleteProfile) -> bool:
    rows = rows_of(session, profile.person_id)
    return bool(profile.baseline) and any(row.liking != "never" for row in rows)


def _rewrite_today(
    session: Session,
    person: Person,
    incoming: Incoming,
    context: Context,
    *,
    anew: bool = False,
    lead: str = "",
) -> None:
    profile = profile_of(session, person.id)
    if profile is None or not _usable(session, profile):
        rewrite(session, incoming, list_words.list_empty(), context, list_keys())
        return
    text, keys = _view(profile, today(session, profile, context, anew=anew), context)
    rewrite(session, incoming, f"{lead}\n\n{text}" if lead else text, context, keys)


def _view(profile: AthleteProfile, day: Today, context: Context) -> tuple[str, Buttons]:
    text = words.day_view(
        local_date(profile, context), day.target, day.eaten, day.left, day.menu, day.times,
        usual_day=day.usual_day,
    )  # fmt: skip
    if not day.times:
        met = max(day.left.carb_g, day.left.protein_g, day.left.fat_g) < 10
        text += "\n\n" + (words.nothing_to_eat() if met else words.still_left(day.left))
    now = context.now.astimezone(ZoneInfo(profile.zone or "UTC"))
    keys = []
    for at in day.times[:SHOWN_MEALS]:
        due = datetime.combine(now.date(), time.fromisoformat(at), now.tzinfo)
        line = [Button(words.eaten_button(at), f"f:ate:{at}")]
        if now > due + MISSED_AFTER:
            line.append(Button(words.missed_button(at), f"f:missed:{at}"))
        keys.append(line)
    keys.append(
        [
            Button(words.swap_button(), "f:swap"),
            Button(words.lock_button(), "f:lock"),
            Button(words.ate_button(), "f:else"),
        ]
    )
    keys.append(
        [Button(list_words.list_button(), "f:list"), Button(words.shopping_button(), "f:shop")]
    )
    return text, keys


def _back() -> list[Button]:
    return [Button(list_words.back_button(), "f:day")]
