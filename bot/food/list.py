"""The athlete's own list of foods, and when they eat."""

from __future__ import annotations

from datetime import timedelta

from sqlmodel import Session, col, select

from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import Act, Turn
from bot.dialogue import asking
from bot.food import words
from bot.food.buttons import FOOD, LISTED, MARK, OFF, FoodView, Mark, OfFood
from bot.food.flow import ADD_FOOD, FOOD_LABEL, LIKINGS, MEAL_TIMES, figures_of, labelled_food
from bot.food.words_names import food_name
from bot.people.telling import answer, rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.food import FoodDayRow, FoodRow, MealTimesRow
from bot.store.tables.people import OpenQuestion, Person
from engine.food.foods import Food, known_food

#: Meals every three hours or so, where nobody has said otherwise.
USUAL_TIMES = ["07:00", "10:00", "13:00", "16:00", "19:00"]


def rows_of(session: Session, athlete_id: int) -> list[FoodRow]:
    """The list, in the order in which it was made."""
    query = select(FoodRow).where(
        FoodRow.athlete_id == athlete_id, col(FoodRow.removed_at).is_(None)
    )
    return list(session.exec(query.order_by(col(FoodRow.id))))


def food_of(row: FoodRow) -> Food:
    """The engine's food; its id is the row's."""
    return Food(id=str(row.id), name=row.name, step_g=row.step_g, piece=row.piece, **row.figures)


def own_food(session: Session, person: Person, named: int | None) -> FoodRow | None:
    """The food of that id if it is on this person's list."""
    row = session.get(FoodRow, named) if named is not None else None
    return row if row and row.athlete_id == person.id and row.removed_at is None else None


def times_of(session: Session, athlete_id: int) -> list[str]:
    row = session.get(MealTimesRow, athlete_id)
    return list(row.times) if row is not None else list(USUAL_TIMES)


def set_times(turn: Turn, athlete_id: int, times: list[str]) -> MealTimesRow:
    """When the athlete eats from now on; the row, for whoever fixes a meal."""
    row = turn.session.get(MealTimesRow, athlete_id) or MealTimesRow(
        athlete_id=athlete_id, times=[]
    )
    row.times = times
    turn.session.add(row)
    turn.session.flush()
    return row


def begin_menus_anew(turn: Turn, person: Person) -> None:
    """The list has changed: menus of today and later are made from it, not from those before.

    What was eaten, locked or swapped stays as it is.
    """
    earliest = turn.now.date() - timedelta(days=1)  # wherever the athlete's clocks are
    rows = turn.session.exec(
        select(FoodDayRow).where(FoodDayRow.athlete_id == person.id, FoodDayRow.date >= earliest)
    )
    for row in rows:
        row.meals, row.target = [], {}
        turn.session.add(row)
    turn.session.flush()


def show_list(turn: Act) -> None:
    answer(turn)
    text, keys = _list(turn.session, turn.person)
    rewrite(turn, text, keys)


def say_list(turn: Turn, person: Person) -> None:
    text, keys = _list(turn.session, person)
    say_to(turn, person, text, buttons=keys)


def list_keys() -> list[list[Button]]:
    return [
        [
            Button(words.add_button(), FOOD(FoodView.ADD)),
            Button(words.label_button(), FOOD(FoodView.LABEL)),
        ],
        [
            Button(words.times_button(), FOOD(FoodView.TIMES)),
            Button(words.back_button(), FOOD(FoodView.DAY)),
        ],
    ]


def ask_food(turn: Act) -> None:
    answer(turn)
    asking.open_question(turn, turn.person, ADD_FOOD, turn.person.id)


def ask_label(turn: Act) -> None:
    answer(turn)
    asking.open_question(turn, turn.person, FOOD_LABEL, turn.person.id)


def ask_times(turn: Act) -> None:
    answer(turn)
    asking.open_question(turn, turn.person, MEAL_TIMES, turn.person.id, {
        "_times": times_of(turn.session, id_of(turn.person)),
    })  # fmt: skip


def food_given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """A food of the table goes on the list, or gets the new mark where it is on it."""
    food = known_food(question.answers["food"])
    assert food is not None
    _keep(turn, person, food, food.id, question)


def label_given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    _keep(turn, person, labelled_food(question.answers), "label", question)


def times_given(turn: Turn, person: Person, question: OpenQuestion) -> None:
    times = question.answers["times"]
    set_times(turn, id_of(person), times)
    back = [[Button(words.back_button(), FOOD(FoodView.DAY))]]
    say_to(turn, person, words.times_set(times), buttons=back)


def show_food(turn: Act, pressed: OfFood) -> None:
    """One food of the list, with its figures and where they come from; a button a mark."""
    answer(turn)
    row = own_food(turn.session, turn.person, pressed.food)
    if row is None:
        rewrite(turn, words.food_gone(), list_keys())
        return
    marks = [
        Button(words.liking_button(liking), MARK(id_of(row), liking))
        for liking in LIKINGS
        if liking != row.liking
    ]
    keys = [
        marks,
        [
            Button(words.remove_button(), OFF(id_of(row))),
            Button(words.list_button(), FOOD(FoodView.LIST)),
        ],
    ]
    text = words.food_view(food_of(row), row.liking, row.usual_g, from_label=row.source == "label")
    rewrite(turn, text, keys)


def mark_food(turn: Act, pressed: Mark) -> None:
    row = own_food(turn.session, turn.person, pressed.food)
    if row is not None and pressed.liking in LIKINGS:
        row.liking = pressed.liking
        turn.session.add(row)
        begin_menus_anew(turn, turn.person)
    show_food(turn, OfFood(pressed.food))


def take_off(turn: Act, pressed: OfFood) -> None:
    answer(turn)
    row = own_food(turn.session, turn.person, pressed.food)
    if row is None:
        rewrite(turn, words.food_gone(), list_keys())
        return
    row.removed_at = turn.now
    turn.session.add(row)
    turn.session.flush()
    begin_menus_anew(turn, turn.person)
    rewrite(turn, words.food_removed(row.name), list_keys())


def _keep(turn: Turn, person: Person, food: Food, source: str, question: OpenQuestion) -> None:
    answers = question.answers
    listed = rows_of(turn.session, id_of(person))
    same = [row for row in listed if row.source == source != "label"]
    row = same[0] if same else FoodRow(
        athlete_id=id_of(person), source=source, name=food.name, figures=figures_of(food),
        step_g=food.step_g, piece=food.piece, liking="", added_at=turn.now,
    )  # fmt: skip
    row.liking, row.usual_g = answers["liking"], answers.get("usual_g")
    turn.session.add(row)
    turn.session.flush()
    begin_menus_anew(turn, person)
    say_to(turn, person, words.food_added(food.name, row.liking), buttons=list_keys())


def _list(session: Session, person: Person) -> tuple[str, Buttons]:
    rows = rows_of(session, id_of(person))
    if not rows:
        return words.list_empty(), list_keys()
    text = words.list_view(
        [(row.name, row.liking, row.usual_g) for row in rows], times_of(session, id_of(person))
    )
    foods = [Button(food_name(row.name), LISTED(id_of(row))) for row in rows]
    pairs = [foods[i : i + 2] for i in range(0, len(foods), 2)]
    return text, [*pairs, *list_keys()]
