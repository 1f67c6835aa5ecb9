"""The athlete's own list of foods, and when they eat."""

from __future__ import annotations

from sqlmodel import Session, col, select

from bot.context import Context
from bot.flows.food import ADD_FOOD, FOOD_LABEL, LIKINGS, MEAL_TIMES, figures_of, labelled_food
from bot.incoming import Incoming
from bot.messages import food as words
from bot.messages.food_names import food_name
from bot.outbox import Button, Buttons, say
from bot.service import asking
from bot.service.tapping import answer, rewrite
from bot.store.food import FoodRow, MealTimesRow
from bot.store.people import OpenQuestion, Person
from engine.foods import Food, known_food

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


def own_food(session: Session, person: Person, named: str) -> FoodRow | None:
    """The food of that id if it is on this person's list."""
    row = session.get(FoodRow, int(named)) if named.isdigit() else None
    return row if row and row.athlete_id == person.id and row.removed_at is None else None


def times_of(session: Session, athlete_id: int) -> list[str]:
    row = session.get(MealTimesRow, athlete_id)
    return list(row.times) if row is not None else list(USUAL_TIMES)


def show_list(
    session: Session, person: Person, _rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    text, keys = _list(session, person)
    rewrite(session, incoming, text, context, keys)


def say_list(session: Session, person: Person, context: Context) -> None:
    text, keys = _list(session, person)
    say(session, chat_id=person.chat_id, text=text, now=context.now, buttons=keys)


def list_keys() -> list[list[Button]]:
    return [
        [Button(words.add_button(), "f:add"), Button(words.label_button(), "f:label")],
        [Button(words.times_button(), "f:times"), Button(words.back_button(), "f:day")],
    ]


def ask_food(
    session: Session, person: Person, _rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    asking.open_question(session, person, ADD_FOOD, context=context, subject_id=person.id)


def ask_label(
    session: Session, person: Person, _rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    asking.open_question(session, person, FOOD_LABEL, context=context, subject_id=person.id)


def ask_times(
    session: Session, person: Person, _rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    asking.open_question(
        session, person, MEAL_TIMES, context=context, subject_id=person.id,
        answers={"_times": times_of(session, person.id or 0)},
    )  # fmt: skip


def food_given(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    """A food of the table goes on the list, or gets the new mark where it is on it."""
    food = known_food(question.answers["food"])
    assert food is not None
    _keep(session, person, food, food.id, question, context)


def label_given(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    _keep(session, person, labelled_food(question.answers), "label", question, context)


def times_given(session: Session, person: Person, question: OpenQuestion, context: Context) -> None:
    times = question.answers["times"]
    row = session.get(MealTimesRow, person.id) or MealTimesRow(athlete_id=person.id or 0, times=[])
    row.times = times
    session.add(row)
    session.flush()
    say(
        session, chat_id=person.chat_id, text=words.times_set(times), now=context.now,
        buttons=[[Button(words.back_button(), "f:day")]],
    )  # fmt: skip


def show_food(
    session: Session, person: Person, rest: list[str], incoming: Incoming, context: Context
) -> None:
    """One food of the list, with its figures and where they come from; a button a mark."""
    answer(session, incoming, context)
    row = own_food(session, person, rest[0] if rest else "")
    if row is None:
        rewrite(session, incoming, words.food_gone(), context, list_keys())
        return
    marks = [
        Button(words.liking_button(liking), f"f:mark:{row.id}:{liking}")
        for liking in LIKINGS
        if liking != row.liking
    ]
    keys = [
        marks,
        [
            Button(words.remove_button(), f"f:off:{row.id}"),
            Button(words.list_button(), "f:list"),
        ],
    ]
    text = words.food_view(food_of(row), row.liking, row.usual_g, from_label=row.source == "label")
    rewrite(session, incoming, text, context, keys)


def mark_food(
    session: Session, person: Person, rest: list[str], incoming: Incoming, context: Context
) -> None:
    named, liking = (*rest, "", "")[:2]
    row = own_food(session, person, named)
    if row is not None and liking in LIKINGS:
        row.liking = liking
        session.add(row)
    show_food(session, person, [named], incoming, context)


def take_off(
    session: Session, person: Person, rest: list[str], incoming: Incoming, context: Context
) -> None:
    answer(session, incoming, context)
    row = own_food(session, person, rest[0] if rest else "")
    if row is None:
        rewrite(session, incoming, words.food_gone(), context, list_keys())
        return
    row.removed_at = context.now
    session.add(row)
    session.flush()
    rewrite(session, incoming, words.food_removed(row.name), context, list_keys())


def _keep(
    session: Session,
    person: Person,
    food: Food,
    source: str,
    question: OpenQuestion,
    context: Context,
) -> None:
    answers = question.answers
    listed = rows_of(session, person.id or 0)
    same = [row for row in listed if row.source == source != "label"]
    row = same[0] if same else FoodRow(
        athlete_id=person.id or 0, source=source, name=food.name, figures=figures_of(food),
        step_g=food.step_g, piece=food.piece, liking="", added_at=context.now,
    )  # fmt: skip
    row.liking, row.usual_g = answers["liking"], answers.get("usual_g")
    session.add(row)
    session.flush()
    say(
        session, chat_id=person.chat_id, text=words.food_added(food.name, row.liking),
        now=context.now, buttons=list_keys(),
    )  # fmt: skip


def _list(session: Session, person: Person) -> tuple[str, Buttons]:
    rows = rows_of(session, person.id or 0)
    if not rows:
        return words.list_empty(), list_keys()
    text = words.list_view(
        [(row.name, row.liking, row.usual_g) for row in rows], times_of(session, person.id or 0)
    )
    foods = [Button(food_name(row.name), f"f:food:{row.id}") for row in rows]
    pairs = [foods[i : i + 2] for i in range(0, len(foods), 2)]
    return text, [*pairs, *list_keys()]
