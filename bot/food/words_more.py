"""More of what an athlete reads about food: what to do where the list or the day falls short."""

from __future__ import annotations

from collections.abc import Sequence

from bot.words import coach_figures as figures
from bot.words.languages import Sentence, tr


def not_on_the_list(name: str) -> str:
    """Something eaten that the list does not have, typed as an answer."""
    return tr(
        '"{name}" is not on your list yet, so I can\'t count it. Tap the food that is '
        "closest. Or cancel, add it under My foods, and then tell me again.",
        name=name,
    )


def shopping_falls_short(days: Sequence[int]) -> str:
    """`days`: days out on which the list cannot meet the plan."""
    return tr(
        "With your list the plan can't be met on these days: {days}. So this is not all you "
        "will need. Add more foods to your list; Today's food says on each day what is missing.",
        days=", ".join(figures.days_out(out) for out in days),
    )


kcal_from_kj_hint = Sentence("kJ is fine too, for example 1600 kJ.")
