"""The day's menu as it is kept: made from the target in force, and made anew when that changes."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass, replace
from datetime import date

from sqlmodel import Session, select

from bot.core.turn import Turn
from bot.food import fixed_meals
from bot.food.list import food_of, rows_of, times_of
from bot.people.people import local_date
from bot.store.base import id_of
from bot.store.tables.food import EatenRow, FoodDayRow, FoodRow
from bot.store.tables.people import AthleteProfile
from bot.store.working_out import worked_out
from bot.week.load import baseline_of, current_week, target_in_force
from engine.evidence.eating import SODIUM_ROOM_SHARE
from engine.food.foods import Food
from engine.food.portions import (
    TOLERANCE,
    Aim,
    Choice,
    DayMenu,
    Liking,
    NutrientTargets,
    Portion,
    Totals,
    explain_misses,
    misses,
    plan_menu,
    totals_of,
)
from engine.food.portions.day import Fixed


@dataclass(frozen=True, slots=True)
class Needs:
    """What a load takes: grams over its days and the day itself, those of the day itself to pack.

    `days`: those ahead from the first load day to the event; `short`: days out on which the list does
    not meet the plan.
    """

    whole: list[tuple[Food, float]]
    day_itself: list[tuple[Food, float]]
    days: int
    short: list[int]


@dataclass(frozen=True, slots=True)
class Today:
    """Everything that is said of a day's food."""

    row: FoodDayRow
    target: Aim
    eaten: Totals
    left: Aim
    menu: DayMenu
    times: tuple[str, ...]
    usual_day: bool

    def grams(self, food_id: int) -> float:
        """How much of a food lies ahead."""
        return sum(p.grams for meal in self.menu.meals for p in meal if p.food.id == str(food_id))


def today(turn: Turn, profile: AthleteProfile, *, anew: bool = False) -> Today:
    """The menu for what is left of today.

    It is made anew where `anew` asks for it, where there is none yet, and where the target has
    changed since; then it stays as near to the menu before as the rest of the day allows.
    """
    day = local_date(profile, turn.context)
    row = day_row(turn, profile.person_id, day)
    target, usual_day = target_of(turn.session, profile, day)
    eaten = eaten_on(turn.session, profile.person_id, day)
    left = target.left_after(eaten)
    times = [at for at in times_of(turn.session, profile.person_id) if at not in row.settled]
    foods = {str(food.id): food_of(food) for food in rows_of(turn.session, profile.person_id)}
    kept, asked = _kept(row, foods), _Asked(target, eaten, times)
    current = row.target == asdict(target) and [meal["at"] for meal in row.meals] == times
    if anew or not current or kept is None:
        menu = _made(turn.session, profile, row, asked)
        row.meals = [
            {"at": at, "portions": {p.food.id: p.steps for p in meal}}
            for at, meal in zip(times, menu.meals, strict=False)
        ]
        row.target, row.made_at = asdict(target), turn.now
    else:
        totals = totals_of((p.food, p.grams) for meal in kept for p in meal)
        menu = DayMenu(kept, totals, misses(totals, _wish(target, eaten)))
        if menu.misses:
            menu = _explained(turn.session, profile, row, menu, asked)
    meals = menu.meals if times else ()
    return Today(row, target, eaten, left, replace(menu, meals=meals), tuple(times), usual_day)


def day_row(turn: Turn, athlete_id: int, day: date) -> FoodDayRow:
    query = select(FoodDayRow).where(FoodDayRow.athlete_id == athlete_id, FoodDayRow.date == day)
    row = turn.session.exec(query).first()
    if row is None:
        row = FoodDayRow(athlete_id=athlete_id, date=day, made_at=turn.now)
        turn.session.add(row)
        turn.session.flush()
    return row


def target_of(session: Session, profile: AthleteProfile, day: date) -> tuple[Aim, bool]:
    """The day's target, or the habitual day where no plan holds (and whether that is so)."""
    week = current_week(session, profile)
    found = target_in_force(session, week, day) if week is not None else None
    source = found or baseline_of(profile)
    target = Aim(
        carb_g=source.carb_g, protein_g=source.protein_g, fat_g=source.fat_g,
        fibre_g=source.fibre_g, sodium_mg=source.sodium_mg,
    )  # fmt: skip
    return target, found is None


def eaten_on(session: Session, athlete_id: int, day: date) -> Totals:
    rows = session.exec(
        select(EatenRow, FoodRow)
        .join(FoodRow)
        .where(EatenRow.athlete_id == athlete_id, EatenRow.date == day)
    )
    return totals_of((food_of(food), eaten.grams) for eaten, food in rows)


def eat(turn: Turn, profile: AthleteProfile, food_id: int, grams: float) -> None:
    """Note that it was eaten today."""
    turn.session.add(
        EatenRow(
            athlete_id=profile.person_id, date=local_date(profile, turn.context), food_id=food_id,
            grams=grams, at=turn.now,
        )
    )  # fmt: skip


def load_needs(turn: Turn, profile: AthleteProfile) -> Needs | None:
    """What to shop for and to pack; None where no load lies ahead."""
    week = current_week(turn.session, profile)
    first = local_date(profile, turn.context)
    load = range(week.plan.first_load_day, -1, -1) if week is not None else ()
    days = [week.date_of(out) for out in load] if week is not None else []
    ahead = [day for day in days if day >= first]
    if week is None or len(ahead) < 2:
        return None
    foods = {str(row.id): food_of(row) for row in rows_of(turn.session, profile.person_id)}
    times = times_of(turn.session, profile.person_id)
    meals = fixed_meals.fixed_meals(turn.session, profile.person_id, times)
    whole: dict[str, float] = {}
    last: dict[str, float] = {}
    short = []
    fixed = fixed_meals.less(_fixed(turn.session, profile.person_id, {}), meals)
    targets = [target_of(turn.session, profile, day)[0] for day in ahead]
    around = fixed_meals.totals(meals)
    planned = worked_out(
        turn.session, _planned, _choices(turn.session, profile, {}, {}),
        [_wish(target, around) for target in targets], fixed_meals.free(meals, times), fixed,
    )  # fmt: skip
    for day, target, filled in zip(ahead, targets, planned, strict=True):
        menu = fixed_meals.around(meals, times, _wish(target, Totals()), filled)
        last = {id: steps * foods[id].step_g for id, steps in menu.steps.items()}
        whole = {id: whole.get(id, 0) + last.get(id, 0) for id in {**whole, **last}}
        if any(miss.nutrient in TOLERANCE for miss in menu.misses):
            short.append(week.days_out(day))
    return Needs(
        [(foods[id], grams) for id, grams in whole.items()],
        [(foods[id], grams) for id, grams in last.items()],
        len(ahead) - 1,
        short,
    )


@dataclass(frozen=True, slots=True)
class _Asked:
    """What a menu is to come to, beside what is eaten, in the meals at these times."""

    target: Aim
    eaten: Totals
    times: Sequence[str]

    def beside(self, meals: fixed_meals.Meals) -> NutrientTargets:
        return _wish(self.target, self.eaten + fixed_meals.totals(meals))


def _made(session: Session, profile: AthleteProfile, row: FoodDayRow, asked: _Asked) -> DayMenu:
    choices, locked, wanted = _to_choose_from(session, profile, row)
    meals = fixed_meals.fixed_meals(session, profile.person_id, asked.times)
    filled = worked_out(
        session, plan_menu, choices, asked.beside(meals), fixed_meals.free(meals, asked.times),
        Fixed(fixed_meals.less(locked, meals), wanted),
    )  # fmt: skip
    return fixed_meals.around(meals, asked.times, _wish(asked.target, asked.eaten), filled)


def _planned(
    choices: Sequence[Choice],
    wishes: Sequence[NutrientTargets],
    meals: int,
    locked: Mapping[str, int],
) -> list[DayMenu]:
    """Days that differ by their targets alone, each by itself."""
    return [plan_menu(choices, wish, meals, Fixed(locked)) for wish in wishes]


def _explained(
    session: Session, profile: AthleteProfile, row: FoodDayRow, menu: DayMenu, asked: _Asked
) -> DayMenu:
    """A menu that stands and misses something: with what would give."""
    choices, locked, wanted = _to_choose_from(session, profile, row)
    meals = fixed_meals.fixed_meals(session, profile.person_id, asked.times)
    return worked_out(
        session, explain_misses, menu, choices, asked.beside(meals),
        max(fixed_meals.free(meals, asked.times), 1),
        Fixed(fixed_meals.less(locked, meals), wanted),
    )  # fmt: skip


def _to_choose_from(
    session: Session, profile: AthleteProfile, row: FoodDayRow
) -> tuple[list[Choice], dict[str, int], list[str]]:
    """What there is to choose from, what is locked, and what is to be there."""
    before: dict[str, int] = {}
    for meal in row.meals:
        for id, steps in meal["portions"].items():
            before[id] = before.get(id, 0) + steps
    eaten = _eaten_g(session, profile.person_id, row.date)
    choices = [
        choice for choice in _choices(session, profile, before, eaten)
        if int(choice.food.id) not in row.left_out
    ]  # fmt: skip
    listed = {choice.food.id for choice in choices}
    fixed = _fixed(session, profile.person_id, eaten)
    locked = {id: n for id, n in {**fixed, **row.locked}.items() if id in listed}
    wanted = [str(id) for id in row.wanted if str(id) in listed]
    return choices, locked, wanted


def _fixed(session: Session, athlete_id: int, eaten_g: Mapping[int, float]) -> dict[str, int]:
    """Steps of what the coach has fixed for each day, less what is eaten of it."""
    return {
        str(row.id): max(round((row.fixed_g - eaten_g.get(id_of(row), 0)) / row.step_g), 0)
        for row in rows_of(session, athlete_id)
        if row.fixed_g is not None and row.liking != "never"
    }


def _eaten_g(session: Session, athlete_id: int, day: date) -> dict[int, float]:
    """Grams of each food eaten on a day, by the row's id."""
    query = select(EatenRow).where(EatenRow.athlete_id == athlete_id, EatenRow.date == day)
    grams: dict[int, float] = {}
    for row in session.exec(query):
        grams[row.food_id] = grams.get(row.food_id, 0) + row.grams
    return grams


def _choices(
    session: Session, profile: AthleteProfile, before: dict[str, int], eaten_g: Mapping[int, float]
) -> list[Choice]:
    """The list without what never digests well. A menu before it is the usual from then on.

    Without one, the usual is what the athlete said, less what is eaten already.
    """

    def usual_g(row: FoodRow) -> float | None:
        if before:
            return before.get(str(row.id), 0) * row.step_g
        if row.usual_g is None:
            return None
        return max(row.usual_g - eaten_g.get(id_of(row), 0), 0)

    return [
        Choice(food=food_of(row), liking=Liking(row.liking), usual_g=usual_g(row))
        for row in rows_of(session, profile.person_id)
        if row.liking != "never"
    ]


def _wish(target: Aim, eaten: Totals) -> NutrientTargets:
    """Nothing bounds what has no figure: the athlete salts and picks as always."""
    left = target.left_after(eaten)
    wish = NutrientTargets(
        carb_g=left.carb_g, protein_g=left.protein_g, fat_g=left.fat_g, fibre_most_g=left.fibre_g
    )
    if target.sodium_mg is None:
        return wish
    room = float(SODIUM_ROOM_SHARE) * target.sodium_mg
    return replace(
        wish,
        sodium_least_mg=max(target.sodium_mg - room - eaten.sodium_mg, 0),
        sodium_most_mg=max(target.sodium_mg + room - eaten.sodium_mg, 0),
    )


def _kept(row: FoodDayRow, foods: dict[str, Food]) -> tuple[tuple[Portion, ...], ...] | None:
    """The menu as it was made; None where a food of it is no longer on the list."""
    if not row.made_at or not row.target:
        return None
    if any(id not in foods for meal in row.meals for id in meal["portions"]):
        return None
    return tuple(
        tuple(Portion(foods[id], steps) for id, steps in meal["portions"].items())
        for meal in row.meals
    )
