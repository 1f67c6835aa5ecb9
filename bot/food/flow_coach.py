"""What a coach is asked about an athlete's food: which to suggest, how much of one is fixed."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Flow, Step
from bot.food import words_coach as words
from bot.food.flow import ADD_FOOD, MOST_USUAL_G
from engine.written.units import parse_grams


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
            ask=lambda answers: words.ask_grams(answers["_called"], answers["_step_g"]),
            read_with=_read_grams,
        ),
    ),
)
