"""More of what an athlete reads about food: what to do where the list or the day falls short."""

from __future__ import annotations

from collections.abc import Sequence

from bot.languages import tr
from bot.messages import coach_figures as figures


def not_on_the_list(name: str) -> str:
    """Something eaten that the list does not have, typed as an answer."""
    return tr(
        '"{name}" is not on your list, so I cannot reckon with it yet. Leave this, add it under My '
        "foods (by a word of it, or from its label), and note it then. Or tap what comes nearest.",
        name=name,
    )


def shopping_falls_short(days: Sequence[int]) -> str:
    """`days`: days out on which the list cannot meet the plan."""
    return tr(
        "Your list cannot meet the plan on every one of these days ({days}), so this is not all you "
        "will need. Today's food says on the day what is missing; a food more on your list may do.",
        days=", ".join(figures.days_out(out) for out in days),
    )


def kcal_from_kj_hint() -> str:
    return tr("kJ will do as well, such as 1600 kJ.")
