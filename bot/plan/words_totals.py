"""What is said of kcal totals that came with a coach's own plan."""

from __future__ import annotations

from bot.words.languages import tr, trn
from engine.food.foods import LabelConvention


def add_totals_hint(headings: str) -> str:
    """`headings`: what the column may be headed with, and the first of them as we say it."""
    return tr(
        'If your own plan has totals, add a column "{heading}": I compare them with the '
        "day's numbers.",
        heading=tr(headings).partition(",")[0],
    )


def totals_fit(days: int, only: LabelConvention | None) -> str:
    """`only`: the one convention by which they all fit; None where either will do."""
    said = trn(
        "The total of {number} day fits its carbs, protein, fat and fibre.",
        "The totals of {number} days fit their carbs, protein, fat and fibre.",
        days,
    )
    return f"{said} {label_convention(only)}" if only else said


def label_convention(only: LabelConvention) -> str:
    """By which way of counting carbs a total fits, and what that means for the plan."""
    if only is LabelConvention.EU:
        return tr("That is with carbs without fibre, as on EU labels and in my plans.")
    return tr(
        "But only with fibre counted as carbs, as on US labels. In my plans carbs are without "
        "fibre: if yours include it, subtract it."
    )
