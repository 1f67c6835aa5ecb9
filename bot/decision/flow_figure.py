"""A day's carbohydrate set by the coach's own word: typed, checked, and confirmed past a limit."""

from __future__ import annotations

from datetime import date

from bot.decision.signoff import words
from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step, yes_or_no
from bot.words import invalid_answers
from bot.words.figures import limit_label
from engine.written.units import parse_grams


def past_limit(carb_g: float, limits: Answers) -> tuple[str, float] | None:
    """The coach's own limit that this figure would pass: its label and bound (g)."""
    floor, ceiling = limits["carb_floor_g"], limits["carb_ceiling_g"]
    if carb_g < floor:
        return limit_label("carb_floor_g"), floor
    if carb_g > ceiling:
        return limit_label("carb_ceiling_g"), ceiling
    room = limits["load_room_g"]
    if room is not None and carb_g > room:
        return words.load_room_label(), room
    return None


def _ask(answers: Answers) -> str:
    day, self_coached = date.fromisoformat(answers["_day"]), answers["_own"]
    if answers["_proposed_g"] is None:
        return words.ask_figure_by_hand(
            answers["_name"], day, answers["_stands_g"], self_coached=self_coached
        )
    return words.ask_figure(
        answers["_name"],
        day,
        answers["_planned_g"],
        answers["_proposed_g"],
        self_coached=self_coached,
    )


def read_figure(text: str, answers: Answers) -> float:
    """A day's carbohydrate in g, inside the guard rails of "_rail"."""
    grams = parse_grams(text, low=0, high=1500)
    rail = answers["_rail"]
    for bound, outside, citation in (
        (rail["low"], grams < rail["low"], rail["low_source"]),
        (rail["high"], grams > rail["high"], rail["high_source"]),
    ):
        if outside:
            raise InvalidAnswer(words.outside_guard_rail(grams, bound, citation))
    return grams


def _needs_confirming(answers: Answers) -> bool:
    return "carb_g" in answers and past_limit(answers["carb_g"], answers["_limits"]) is not None


def _ask_sure(answers: Answers) -> str:
    found = past_limit(answers["carb_g"], answers["_limits"])
    assert found is not None
    label, bound = found
    return words.past_own_limit(answers["carb_g"], bound, label)


def _sure_choices(answers: Answers) -> Choices:
    return (
        (
            Choice(words.set_anyway_button(answers["carb_g"]), "yes"),
            Choice(words.rather_not_button(), "no"),
        ),
    )


LONGEST_REASON = 500


def read_reason(text: str) -> str:
    """Why a limit of one's own is passed: some words, which are kept."""
    because = " ".join(text.split())
    if len(because) < 3:
        raise InvalidAnswer(words.reason_too_short())
    if len(because) > LONGEST_REASON:
        raise InvalidAnswer(invalid_answers.long_note(len(because), LONGEST_REASON))
    return because


#: The last step of every flow that can pass a limit: the reason, where one was passed.
REASON = Step(
    key="because",
    ask=words.ask_reason,
    read=read_reason,
    free=True,
    when=lambda answers: answers.get("sure") is True,
)
#: Context: "_name", "_own", "_day" (ISO), "_planned_g", "_proposed_g" (None: set by hand),
#: "_stands_g", "_limits" (carb_floor_g, carb_ceiling_g, load_room_g), "_rail" (low, high, sources).
_STEPS = (
    Step(key="carb_g", ask=_ask, read_with=read_figure),
    Step(key="sure", ask=_ask_sure, read=yes_or_no, choices=_sure_choices, when=_needs_confirming),
    REASON,
)
OTHER_FIGURE = Flow(id="coach-figure", steps=_STEPS)  # the subject is the decision
DAY_BY_HAND = Flow(id="coach-day", steps=_STEPS)  # the subject is the athlete
