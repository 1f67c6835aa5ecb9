"""What an athlete reads about food: the list, the day's menu, labels, shopping."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import date

from bot.messages.athlete import short_day
from engine.foods import Food
from engine.portions import DayMenu, Miss, Totals

LIKINGS = {
    "favourite": "A favourite",
    "well": "Digests well",
    "so-so": "So-so",
    "never": "Never",
}
MARKS = {"favourite": "★", "well": "", "so-so": "(so-so)", "never": "(never)"}
NUTRIENTS = {
    "carb_g": "carbs",
    "protein_g": "protein",
    "fat_g": "fat",
    "fibre_g": "fibre",
    "sodium_mg": "sodium",
}


def menu() -> str:
    return "Today's food from your own list"


# The list


def list_empty() -> str:
    return (
        "Your list of foods is empty. I only ever suggest what is on it, so put on what you eat "
        "anyway and digest well: something for carbs, something lean for protein, a fat, and salt if "
        "you salt your food."
    )


def list_view(foods: Iterable[tuple[str, str, float | None]], times: Sequence[str]) -> str:
    """`foods`: name, liking, usual grams a day."""
    lines = [
        " ".join(
            part
            for part in (
                f"- {name}",
                MARKS[liking],
                f"usually {usual:.0f} g a day" if usual else "",
            )
            if part
        )
        for name, liking, usual in foods
    ]
    return (
        "Your foods:\n" + "\n".join(lines) + f"\n\nMeals at {', '.join(times)}.\n\n"
        "Tap a food to change its mark or take it off."
    )


def add_button() -> str:
    return "Add a food"


def label_button() -> str:
    return "Add from a label"


def times_button() -> str:
    return "Meal times"


def list_button() -> str:
    return "My foods"


def back_button() -> str:
    return "Today's food"


def ask_food() -> str:
    return "Which food? Type a word of it, such as rice or chicken."


def no_such_food() -> str:
    return (
        "I know no food by that word; I have about fifty common ones. Try another word, or leave it "
        "and add the food from its label."
    )


def which_food() -> str:
    return "Which of these?"


def none_of_these() -> str:
    return "None of these"


def tap_one() -> str:
    return "Please tap one of the buttons."


def ask_liking(name: str) -> str:
    return f"How does it sit with you? ({name})"


def ask_usual(name: str) -> str:
    return (
        f"How much of it do you eat on a usual day, in g as served? ({name}) I stay as near to that "
        "as the day allows."
    )


def varies_button() -> str:
    return "It varies"


def food_added(name: str, liking: str) -> str:
    if liking == "never":
        return f"{name} is noted as one that never sits well. I'll leave it out."
    return f"{name} is on your list. Add another, or see today's food."


def food_view(food: Food, liking: str, usual: float | None, *, from_label: bool) -> str:
    source = "your label" if from_label else "USDA National Nutrient Database, release 26"
    amount = f"\nUsually {usual:.0f} g a day." if usual else ""
    return (
        f"{food.name}: {LIKINGS[liking].lower()}.{amount}\n"
        f"Per 100 g: carbs {food.carb_g:.1f} g (without fibre), protein {food.protein_g:.1f} g, "
        f"fat {food.fat_g:.1f} g, fibre {food.fibre_g:.1f} g, sodium {food.sodium_mg:.0f} mg, "
        f"{food.kcal:.0f} kcal. From {source}."
    )


def remove_button() -> str:
    return "Take off the list"


def food_removed(name: str) -> str:
    return f"{name} is off your list."


def food_gone() -> str:
    return "That food is not on your list any more."


# A label


def ask_name() -> str:
    return "What is it called?"


def name_length(most: int) -> str:
    return f"Please send a name of 1 to {most} characters."


def ask_convention() -> str:
    return (
        "Which kind of label is it? They count differently: on an EU (or UK) label the carbs are "
        "without fibre and salt is given; on a US label total carbs include fibre and sodium is given."
    )


def eu_button() -> str:
    return "EU or UK label"


def us_button() -> str:
    return "US label"


def ask_basis() -> str:
    return "Are the figures that you will send per 100 g or per portion?"


def per_100_button() -> str:
    return "Per 100 g"


def per_portion_button() -> str:
    return "Per portion"


def ask_portion() -> str:
    return "How heavy is a portion, in g?"


def _per(basis_g: float) -> str:
    return f"per {basis_g:g} g"


def ask_figure(key: str, basis_g: float, convention: str) -> str:
    what = {
        "carb_g": "Total carbohydrate" if convention == "us" else "Carbohydrate",
        "fibre_g": "Fibre (0 if it gives none)",
        "protein_g": "Protein",
        "fat_g": "Fat",
    }[key]
    return f"{what}, in g {_per(basis_g)}?"


def ask_salt(basis_g: float, convention: str) -> str:
    what = "Sodium, in mg" if convention == "us" else "Salt, in g"
    return f"{what} {_per(basis_g)}?"


def ask_kcal(basis_g: float) -> str:
    return f"Energy, in kcal {_per(basis_g)}? I use it to check the other figures."


def skip_button() -> str:
    return "Skip"


def ask_step() -> str:
    return "In what steps do you portion it, in g? For a piece, send what one piece weighs."


def label_problem(code: str, facts: Mapping[str, float]) -> str:
    if code == "fibre-over-carbs":
        return (
            f"On a US label fibre is part of the carbs, so it cannot be more than "
            f"{facts['carb_g']:g} g. Please check the label."
        )
    if code == "more-than-whole":
        return (
            f"Together that would be {facts['sum_g']:g} g in {facts['basis_g']:g} g of food. Please "
            "check the label; if an earlier figure was wrong, leave it and begin again."
        )
    return (
        f"The carbs, protein, fat and fibre you sent come to {facts['computed_kcal']:.0f} kcal, not "
        f"{facts['stated_kcal']:.0f}. Please check; Skip takes my sum, and if an earlier figure was "
        "wrong, leave it and begin again."
    )


# The day


def amount(food: Food, grams: float) -> str:
    """ "White rice, cooked 250 g", "Egg white 165 g (5 egg whites)"."""
    size = f"{grams:g} g"
    if not food.piece:
        return f"{food.name} {size}"
    count = round(grams / food.step_g)
    return f"{food.name} {size} ({count} × {food.piece})"


def macros(totals: Totals) -> str:
    return (
        f"carbs {totals.carb_g:.0f} g, protein {totals.protein_g:.0f} g, fat {totals.fat_g:.0f} g"
    )


def day_view(
    day: date,
    target: Totals,
    eaten: Totals,
    left: Totals,
    menu: DayMenu,
    times: Sequence[str],
    *,
    usual_day: bool,
) -> str:
    head = f"{short_day(day)}. " + (
        "Your usual day, as no plan holds for today: " if usual_day else "Today's target: "
    )
    parts = [f"{head}{macros(target)}."]
    if eaten.kcal or eaten.sodium_mg:
        parts.append(f"Eaten: {macros(eaten)}. Left: {macros(left)}.")
    plates = [
        f"{at}  " + ("; ".join(amount(p.food, p.grams) for p in meal) if meal else "nothing")
        for at, meal in zip(times, menu.meals, strict=True)
    ]
    if plates:
        parts.append("\n".join(plates))
        parts.append(
            f"Together: {macros(menu.totals)}, fibre {menu.totals.fibre_g:.0f} g, "
            f"sodium {menu.totals.sodium_mg:,.0f} mg."
        )
        parts += misses_text(menu)
    return "\n\n".join(parts)


def misses_text(menu: DayMenu) -> list[str]:
    """What is not met, and what would give."""
    missed = [_miss(miss, menu) for miss in menu.misses]
    if not missed:
        return []
    said = ["Not quite: " + "; ".join(missed) + "."]
    for nutrient in menu.lacking:
        said.append(
            f"Your list has nothing that is mostly {NUTRIENTS[nutrient]}: add one, and it can be met."
        )
    said += [GIVES[name] for name in menu.gives]
    return said


GIVES = {
    "fibre": "With more fibre than the plan allows it could be met. A food with less fibre would do.",
    "sodium": "Only sodium stands in the way: foods with more or less salt would do.",
    "locks": "What you locked stands in the way: unlock it and it can be met.",
    "meal": "One meal more today would do it.",
}


def _miss(miss: Miss, menu: DayMenu) -> str:
    name, unit = NUTRIENTS[miss.nutrient], "mg" if miss.nutrient == "sodium_mg" else "g"
    if miss.nutrient == "sodium_mg" and miss.by < 0:
        return (
            f"these foods hold {menu.totals.sodium_mg:,.0f} mg of sodium, less than the plan has; salt "
            "them as you usually do"
        )
    if miss.nutrient == "fibre_g":
        return f"fibre comes to {menu.totals.fibre_g:.0f} g, {miss.by:.0f} g over the plan"
    side = "over" if miss.by > 0 else "under"
    return f"{name} would be {abs(miss.by):,.0f} {unit} further {side} than counts as met"


def eaten_button(at: str) -> str:
    return f"Ate {at}"


def missed_button(at: str) -> str:
    return f"Missed {at}"


def swap_button() -> str:
    return "Swap"


def lock_button() -> str:
    return "Lock"


def ate_button() -> str:
    return "Ate something else"


def shopping_button() -> str:
    return "Shopping for the load"


def nothing_to_eat() -> str:
    return "Today's meals are done."


def still_left(left: Totals) -> str:
    return (
        f"No meal time is left today, and {macros(left)} are. You need not force it: tell your coach, "
        "or set a later meal under Meal times."
    )


def meal_gone() -> str:
    return "That meal is settled already."


def which_swap() -> str:
    return "Which one shall give way today?"


def instead_of(name: str) -> str:
    return f"What instead of {name}?"


def anything_button() -> str:
    return "Anything on my list"


def swapped(name: str) -> str:
    return f"{name} is out for today."


def which_lock() -> str:
    return "Tap what is to stay as it is today; tap again to let it go."


def locked_label(name: str, grams: float, *, locked: bool) -> str:
    return f"{'✓ ' if locked else ''}{name} {grams:g} g"


def ask_ate() -> str:
    return "What did you eat? Tap it, or type its name."


def ask_grams(name: str) -> str:
    return f"How much, in g? ({name})"


def ate_noted(name: str, grams: float) -> str:
    return f"Noted: {name} {grams:g} g. Here is the rest of the day anew."


def ask_times(times: Sequence[str]) -> str:
    return (
        f"When do you eat? {', '.join(times)} now. Send all your times, such as: 7:00 10:00 13:00 "
        "16:30 19:30."
    )


def how_many_meals(most: int) -> str:
    return f"Please send 1 to {most} times, with spaces between, such as: 7:00 12:30 19:00."


def times_set(times: Sequence[str]) -> str:
    return f"Meals at {', '.join(times)}."


def shopping(
    needs: Sequence[tuple[Food, float]], day_itself: Sequence[tuple[Food, float]], days: int
) -> str:
    """`needs`: grams over the load; `day_itself`: what to have with you on the day."""
    lines = "\n".join(f"- {amount(food, grams)}" for food, grams in needs)
    text = (
        f"For the {days} days of the load and the day itself, as served (cooked where it says so):\n"
        f"{lines}"
    )
    if day_itself:
        packed = "\n".join(f"- {amount(food, grams)}" for food, grams in day_itself)
        text += f"\n\nTo pack for the day itself:\n{packed}\nand what you drink."
    return text + "\n\nReckoned from the plan as it stands; a new target changes it a little."


def no_load() -> str:
    return "There is no load ahead to shop for: your coach sets event, plan and limits first."
