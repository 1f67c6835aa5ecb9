"""What a coach reads and is asked around an athlete's food."""

from __future__ import annotations

from collections.abc import Sequence

from bot.dialogue.flow import Answers, Flow, Step
from bot.food.flow import ADD_FOOD, MOST_USUAL_G
from bot.food.words_names import food_name
from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, tr
from engine.written.units import parse_grams

button = Sentence("Food")
no_menu = Sentence("No menu for today yet.")
meals_button = Sentence("Fix whole meals")
suggest_button = Sentence("Suggest a food")
take_button = Sentence("Put it on my list")


def view(name: str, foods: Sequence[str], times: Sequence[str], today: str) -> str:
    if not foods:
        return tr(
            "{name} has no foods on the list yet. Suggest some; {name} takes them with a tap.",
            name=name,
        )
    return "\n\n".join(
        [
            tr("{name}'s foods:\n{lines}", name=name, lines="\n".join(foods)),
            tr("Meals at {times}.", times=", ".join(times)),
            today,
            tr("Tap a food to fix how much of it is in each menu, or to let it go."),
        ]
    )


def food_line(name: str, mark: str, fixed_g: float | None) -> str:
    """ "- White rice, cooked ★: 250 g in each menu"."""
    line = " ".join(part for part in (f"- {food_name(name)}", mark) if part)
    if fixed_g is None:
        return line
    return tr("{food}: {grams} in each menu", food=line, grams=figures.grams(fixed_g))


menu_of_today = SentenceOnTwo("Today:\n{plates}\nEaten so far: {eaten}.", "\n".join, str)
fixed_line = SentenceOn("Fixed as whole meals: {times}.", ", ".join)
which_meal = SentenceOn(
    "Today's menu:\n{plates}\n\nTap a meal to keep it as it is here, every day. The other meals "
    "fill the rest of the day's target. Tap it again to let it go.",
    "\n".join,
)


def meal_button(at: str, *, fixed: bool) -> str:
    return tr("{time}: let it go", time=at) if fixed else tr("{time}: keep it", time=at)


def athlete_told_meal(coach: str, at: str, *, fixed: bool) -> str:
    if fixed:
        return tr(
            "{coach} has fixed your {time} meal as it is in today's menu. /food shows it.",
            coach=coach, time=at,
        )  # fmt: skip
    return tr("{coach} lets your {time} meal vary again.", coach=coach, time=at)


ask_grams = SentenceOnTwo(
    "How much {food} in each menu, in g a day? It is rounded to {step} g. 0: as the menu needs.",
    food_name,
    figures.plain,
)


def fixed(food: str, grams: float) -> str:
    if not grams:
        return tr("{food} is as each menu needs it again.", food=food_name(food))
    return tr(
        "{food}: {grams} a day in each menu from now on. What it leaves open is filled from the list.",
        food=food_name(food),
        grams=figures.grams(grams),
    )


def athlete_told_fixed(coach: str, food: str, grams: float) -> str:
    if not grams:
        return tr(
            "{coach} lets {food} vary again in your menus.", coach=coach, food=food_name(food)
        )
    return tr(
        "{coach} has fixed {food} in your menus: {grams} a day. /food shows today's.",
        coach=coach, food=food_name(food), grams=figures.grams(grams),
    )  # fmt: skip


def suggested(food: str, name: str) -> str:
    return tr("Suggested to {name}: {food}.", name=name, food=food_name(food))


athlete_told_suggested = SentenceOnTwo(
    "{coach} suggests {food} for your list. Take it only if you digest it well.", str, food_name
)


def _read_grams(text: str, answers: Answers) -> float:
    """To whole steps, so that it can be weighed or counted."""
    step = float(answers["_step_g"])
    return round(parse_grams(text, high=MOST_USUAL_G) / step) * step


SUGGEST = Flow(
    id="coach-food-suggest",
    steps=tuple(step for step in ADD_FOOD.steps if step.key in ("query", "food")),
)
#: Context: "_food", the row; "_called"; "_step_g".
FIX = Flow(
    id="coach-food-fix",
    steps=(
        Step(
            key="grams",
            ask=lambda answers: ask_grams(answers["_called"], answers["_step_g"]),
            read_with=_read_grams,
        ),
    ),
)
