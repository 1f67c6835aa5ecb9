"""What an athlete reads about their list of foods, labels, and when meals are."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from bot.food.words_names import food_name
from bot.words import figures
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr, tr_if
from engine.food.foods import Food

LIKINGS = {
    "favourite": mark("A favourite"),
    "well": mark("Digests well"),
    "so-so": mark("So-so"),
    "never": mark("Never"),
}

menu = Sentence("Today's food from your own list")
# The list

list_empty = Sentence(
    "Your list of foods is empty. I only suggest what is on it. Add what you eat anyway "
    "and digest well: something for carbs, something lean for protein, a fat, and salt if "
    "you use it."
)
add_button = Sentence("Add a food")
label_button = Sentence("Add from a label")
times_button = Sentence("Meal times")
list_button = Sentence("My foods")
back_button = Sentence("Today's food")
ask_food = Sentence("Which food? Type part of its name, for example rice or chicken.")
no_such_food = Sentence(
    "I don't know that food; I have about fifty common ones. Try another word, or cancel "
    "and add the food from its label."
)
which_food = Sentence("Which of these?")
tap_one = Sentence("Please tap one of the buttons.")
varies_button = Sentence("It varies")
remove_button = Sentence("Remove from the list")
food_gone = Sentence("That food is not on your list any more.")

#: The same inside a line, after the food's name.
LIKING_WORDS = {
    "favourite": mark("a favourite"),
    "well": mark("digests well"),
    "so-so": mark("so-so"),
    "never": mark("never"),
}

liking_button = SentenceBy(LIKINGS)


def mark_of(liking: str) -> str:
    if liking == "favourite":
        return "★"
    return "" if liking == "well" else f"({tr(LIKING_WORDS[liking])})"


def list_view(foods: Iterable[tuple[str, str, float | None]], times: Sequence[str]) -> str:
    """`foods`: name, liking, usual grams a day."""
    lines = [_list_line(name, liking, usual) for name, liking, usual in foods]
    return "\n\n".join(
        [
            tr("Your foods:\n{lines}", lines="\n".join(lines)),
            times_set(times),
            tr("Tap a food to change or remove it."),
        ]
    )


ask_liking = SentenceOn("How well do you digest it? ({name})", food_name)
ask_usual = SentenceOn(
    "How much of it do you eat on a usual day, in g, weighed as you eat it? ({name}) I "
    "stay as close to that as I can.",
    food_name,
)


def food_added(name: str, liking: str) -> str:
    if liking == "never":
        return tr("Saved: you never digest {name} well. I'll leave it out.", name=food_name(name))
    return tr("{name} is on your list. Add another, or see today's food.", name=food_name(name))


def _list_line(name: str, liking: str, usual: float | None) -> str:
    parts = [
        f"- {food_name(name)}",
        mark_of(liking),
        tr("usually {grams} g a day", grams=figures.plain(round(usual))) if usual else "",
    ]
    return " ".join(part for part in parts if part)


def food_view(food: Food, liking: str, usual: float | None, *, from_label: bool) -> str:
    lines = [f"{food_name(food.name)}: {tr(LIKING_WORDS[liking])}."]
    if usual:
        lines.append(tr("Usually {grams} g a day.", grams=figures.plain(round(usual))))
    lines.append(
        tr(
            "Per 100 g: carbs {carbs} g (without fibre), protein {protein} g, fat {fat} g, "
            "fibre {fibre} g, sodium {sodium} mg, {energy} kcal.",
            carbs=figures.number(food.carb_g, 1),
            protein=figures.number(food.protein_g, 1),
            fat=figures.number(food.fat_g, 1),
            fibre=figures.number(food.fibre_g, 1),
            sodium=figures.plain(round(food.sodium_mg)),
            energy=figures.plain(round(food.kcal)),
        )
    )
    source = tr_if(
        from_label, "From your label.", "From USDA National Nutrient Database, release 26."
    )
    return "\n".join(lines) + " " + source


food_removed = SentenceOn("{name} is removed from your list.", food_name)
# A label

ask_name = Sentence("What is it called?")
ask_convention = Sentence(
    "Which kind of label is it? On an EU or UK label, carbs are without fibre and salt is "
    "given. On a US label, total carbs include fibre and sodium is given."
)
eu_button = Sentence("EU or UK label")
us_button = Sentence("US label")
ask_basis = Sentence("Are the numbers per 100 g or per portion?")
per_100_button = Sentence("Per 100 g")
per_portion_button = Sentence("Per portion")
ask_portion = Sentence("How heavy is a portion, in g?")
ask_step = Sentence(
    "How finely can you portion it, in g? For whole pieces, send the weight of one piece."
)
name_length = SentenceOn("Please send a name of 1 to {most} characters.")

FIGURES = {
    "carb_g": mark("Carbohydrate, in g per {basis} g?"),
    "fibre_g": mark("Fibre (0 if none is given), in g per {basis} g?"),
    "protein_g": mark("Protein, in g per {basis} g?"),
    "fat_g": mark("Fat, in g per {basis} g?"),
}


def ask_figure(key: str, basis_g: float, convention: str) -> str:
    basis = figures.plain(basis_g)
    if key == "carb_g" and convention == "us":
        return tr("Total carbohydrate, in g per {basis} g?", basis=basis)
    return tr(FIGURES[key], basis=basis)


def ask_salt(basis_g: float, convention: str) -> str:
    if convention == "us":
        return tr("Sodium, in mg per {basis} g?", basis=figures.plain(basis_g))
    return tr("Salt, in g per {basis} g?", basis=figures.plain(basis_g))


ask_kcal = SentenceOn(
    "Energy, in kcal per {basis} g? I use it to check the other numbers.", figures.plain
)


def label_problem(code: str, facts: Mapping[str, float]) -> str:
    if code == "fibre-over-carbs":
        return tr(
            "On a US label fibre is part of the carbs, so it cannot be more than {carbs} g. Please "
            "check the label.",
            carbs=figures.plain(facts["carb_g"]),
        )
    if code == "more-than-whole":
        return tr(
            "Together that would be {sum} g in {basis} g of food. Please check the label. If "
            "an earlier number was wrong, cancel and start again.",
            sum=figures.plain(facts["sum_g"]),
            basis=figures.plain(facts["basis_g"]),
        )
    return tr(
        "The carbs, protein, fat and fibre you sent come to {computed} kcal, not {stated}. "
        "Please check. Tap Skip to use my sum; if an earlier number was wrong, cancel and "
        "start again.",
        computed=figures.plain(round(facts["computed_kcal"])),
        stated=figures.plain(round(facts["stated_kcal"])),
    )


# When meals are


ask_times = SentenceOn(
    "When do you eat? Now: {times}. Send all your times, for example: 7:00 10:00 13:00 "
    "16:30 19:30.",
    ", ".join,
)
how_many_meals = SentenceOn(
    "Please send 1 to {most} times, with spaces between, for example: 7:00 12:30 19:00."
)
times_set = SentenceOn("Meals at {times}.", ", ".join)

# Something eaten that the list does not have, typed as an answer.
not_on_the_list = SentenceOn(
    '"{name}" is not on your list yet, so I can\'t count it. Tap the food that is '
    "closest. Or cancel, add it under My foods, and then tell me again."
)


def shopping_falls_short(days: Sequence[int]) -> str:
    """`days`: days out on which the list cannot meet the plan."""
    return tr(
        "With your list the plan can't be met on these days: {days}. So this is not all you "
        "will need. Add more foods to your list; Today's food says on each day what is missing.",
        days=", ".join(figures.days_out(out) for out in days),
    )


kcal_from_kj_hint = Sentence("kJ is fine too, for example 1600 kJ.")
