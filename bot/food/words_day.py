"""What an athlete reads about the day's food: the menu, what changes it, and shopping for the load."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import NamedTuple

from bot.food.words_names import food_name, piece_name
from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, mark, tr, tr_if, trn
from bot.words.names import FIELD_WORDS
from engine.food.foods import Food
from engine.food.foods.table import DRY, raw_g
from engine.food.portions import Aim, DayMenu, Miss, Totals


def amount(food: Food, grams: float) -> str:
    """ "White rice, cooked 250 g", "Egg white 165 g (5 × egg white)"."""
    size = f"{food_name(food.name)} {figures.plain(grams)} g"
    if not food.piece:
        return size
    return f"{size} ({round(grams / food.step_g)} × {piece_name(food.piece)})"


def macros(totals: Totals | Aim) -> str:
    return tr(
        "carbs {carb} g, protein {protein} g, fat {fat} g",
        carb=figures.plain(round(totals.carb_g)),
        protein=figures.plain(round(totals.protein_g)),
        fat=figures.plain(round(totals.fat_g)),
    )


def plates(times: Sequence[str], menu: DayMenu) -> list[str]:
    """ "07:00  White rice, cooked 250 g; Egg white 165 g (5 × egg white)", a line a meal."""
    return [
        f"{at}  " + ("; ".join(amount(p.food, p.grams) for p in meal) if meal else tr("nothing"))
        for at, meal in zip(times, menu.meals, strict=True)
    ]


class Standing(NamedTuple):
    """A day's target, what has been eaten of it, and what is left."""

    target: Aim
    eaten: Totals
    left: Aim


def day_view(
    day: date, standing: Standing, menu: DayMenu, times: Sequence[str], *, usual_day: bool
) -> str:
    on, (target, eaten, left) = figures.short_day(day), standing
    parts = [
        tr("{day}. No plan for today, so your usual day: {macros}.", day=on, macros=macros(target))
        if usual_day
        else tr("{day}. Today's target: {macros}.", day=on, macros=macros(target))
    ]
    if eaten.kcal or eaten.sodium_mg:
        parts.append(tr("Eaten: {eaten}. Left: {left}.", eaten=macros(eaten), left=macros(left)))
    meals = plates(times, menu)
    if meals:
        parts.append("\n".join(meals))
        parts.append(_together(menu.totals, target))
        parts += misses_text(menu)
    return "\n\n".join(parts)


def _together(totals: Totals, target: Aim) -> str:
    """What the foods come to; beside what stays as always, a sum would only look like a target."""
    values = {
        "macros": macros(totals),
        "fibre": figures.plain(round(totals.fibre_g)),
        "sodium": figures.number(totals.sodium_mg),
    }
    if target.fibre_g is None and target.sodium_mg is None:
        return tr("Together: {macros}. Salt and fibre as you usually do.", **values)
    if target.fibre_g is None:
        return tr("Together: {macros}, sodium {sodium} mg. Fibre as you usually do.", **values)
    if target.sodium_mg is None:
        return tr("Together: {macros}, fibre {fibre} g. Salt as you usually do.", **values)
    return tr("Together: {macros}, fibre {fibre} g, sodium {sodium} mg.", **values)


def misses_text(menu: DayMenu) -> list[str]:
    """What is not met, and what would give."""
    missed = [_miss(miss, menu) for miss in menu.misses]
    if not missed:
        return []
    said = [tr("Not quite: {missed}.", missed="; ".join(missed))]
    said += [
        tr(
            "Your list has nothing that is mostly {nutrient}. Add one to reach the target.",
            nutrient=tr(FIELD_WORDS[nutrient]),
        )
        for nutrient in menu.lacking
    ]
    said += [tr(GIVES[name]) for name in menu.gives]
    return said


GIVES = {
    "fibre": mark("It would need more fibre than the plan allows. Add a food with less fibre."),
    "sodium": mark("Only sodium does not fit: add foods with more or less salt."),
    "locks": mark("The foods you locked don't fit the target. Unlock one."),
    "meal": mark("Add one more meal today and it fits."),
}


def _miss(miss: Miss, menu: DayMenu) -> str:
    if miss.nutrient == "sodium_mg" and miss.by < 0:
        return tr(
            "these foods have {sodium} mg of sodium, less than the plan; salt them as you "
            "usually do",
            sodium=figures.number(menu.totals.sodium_mg),
        )
    if miss.nutrient == "fibre_g":
        return tr(
            "fibre comes to {fibre} g, {by} g over the plan",
            fibre=figures.plain(round(menu.totals.fibre_g)),
            by=figures.plain(round(miss.by)),
        )
    name, by = tr(FIELD_WORDS[miss.nutrient]), abs(miss.by)
    amount = figures.milligrams(by) if miss.nutrient == "sodium_mg" else figures.grams(by)
    if miss.by > 0:
        return tr("{name}: at least {by} too much", name=name, by=amount)
    return tr("{name}: at least {by} too little", name=name, by=amount)


eaten_button = SentenceOn("Ate {at}")
missed_button = SentenceOn("Missed {at}")


swap_button = Sentence("Swap")
lock_button = Sentence("Lock")
ate_button = Sentence("Ate something else")
shopping_button = Sentence("Shopping for the load")
nothing_to_eat = Sentence("Today's meals are done.")

meal_gone = Sentence("You have already answered for that meal.")
which_swap = Sentence("Which one do you want to replace today?")
anything_button = Sentence("Anything on my list")
which_lock = Sentence("Tap a food to keep it as it is today; tap again to unlock it.")
ask_ate = Sentence("What did you eat? Tap it, or type its name.")
no_load = Sentence("There is no load to shop for yet: event, plan and limits have to be set first.")


def still_left(left: Aim, *, self_coached: bool) -> str:
    """`own`: somebody without another coach."""
    return tr_if(
        self_coached,
        "No meal is left today. Still to eat: {left}. Don't force it: set a later meal under "
        "Meal times, or leave it.",
        "No meal is left today. Still to eat: {left}. Don't force it: tell your coach, or set a later "
        "meal under Meal times.",
        left=macros(left),
    )


instead_of = SentenceOn("What instead of {name}?", food_name)
swapped = SentenceOn("{name} is out for today.", food_name)


def locked_label(name: str, grams: float, *, locked: bool) -> str:
    return f"{'✓ ' if locked else ''}{food_name(name)} {figures.plain(grams)} g"


ask_grams = SentenceOn("How much, in g? ({name})", food_name)


def ate_noted(name: str, grams: float) -> str:
    return tr(
        "Saved: {name} {grams} g. Here is the new plan for the rest of the day.",
        name=food_name(name),
        grams=figures.plain(grams),
    )


def shopping(
    needs: Sequence[tuple[Food, float]],
    day_itself: Sequence[tuple[Food, float]],
    days: int,
    sources: Mapping[str, str],
) -> str:
    """`needs`: grams from the first load day to the event; `day_itself`: what to have with you on it;
    `sources`: the number in the food table of each food by its id, for what it weighs uncooked.
    """
    parts = [
        trn(
            "For the load ({number} day) and event day, weighed as you eat it (cooked where it "
            "says so):\n{lines}",
            "For the load ({number} days) and event day, weighed as you eat it (cooked where it "
            "says so):\n{lines}",
            days,
            lines="\n".join(
                _to_buy(food, grams, sources.get(food.id, "")) for food, grams in needs
            ),
        )
    ]
    if day_itself:
        parts.append(
            tr("To pack for event day:\n{lines}\nand what you drink.", lines=_lines(day_itself))
        )
    parts.append(tr("Based on today's plan; a new target changes it a little."))
    return "\n\n".join(parts)


def _to_buy(food: Food, grams: float, number: str) -> str:
    """ "- White rice, cooked 500 g (about 180 g dry)"."""
    line, raw = f"- {amount(food, grams)}", raw_g(number, grams)
    if raw is None:
        return line
    if number in DRY:
        return tr("{food} (about {grams} dry)", food=line, grams=figures.grams(raw))
    return tr("{food} (about {grams} raw)", food=line, grams=figures.grams(raw))


def _lines(portions: Sequence[tuple[Food, float]]) -> str:
    return "\n".join(f"- {amount(food, grams)}" for food, grams in portions)
