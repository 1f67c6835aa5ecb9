"""Carbohydrate by the coach's own word, for a day or held: checked, and confirmed past a limit."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from bot.decision import words_holding
from bot.decision.signoff import words
from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step, yes_or_no
from bot.words import invalid_answers
from bot.words.figures import limit_label
from engine.written.units import ParseError, parse_grams, parse_number


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


def _sure(limits_of: Callable[[Answers], Answers]) -> Step:
    """A second look where a figure passes one of the coach's own limits."""

    def past(answers: Answers) -> tuple[str, float] | None:
        return past_limit(answers["carb_g"], limits_of(answers))

    def ask(answers: Answers) -> str:
        found = past(answers)
        assert found is not None
        label, bound = found
        return words.past_own_limit(answers["carb_g"], bound, label)

    def choices(answers: Answers) -> Choices:
        anyway = Choice(words.set_anyway_button(answers["carb_g"]), "yes")
        return ((anyway, Choice(words.rather_not_button(), "no")),)

    return Step(
        key="sure",
        ask=ask,
        read=yes_or_no,
        choices=choices,
        when=lambda answers: "carb_g" in answers and past(answers) is not None,
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
    _sure(lambda answers: answers["_limits"]),
    REASON,
)
OTHER_FIGURE = Flow(id="coach-figure", steps=_STEPS)  # the subject is the decision
DAY_BY_HAND = Flow(id="coach-day", steps=_STEPS)  # the subject is the athlete


# Holding an athlete at one figure


def days_left(answers: Answers) -> int:
    first, last = date.fromisoformat(answers["_first"]), date.fromisoformat(answers["_last"])
    return (last - first).days + 1


def last_day(answers: Answers) -> date:
    """The last day of the hold that was answered for."""
    return date.fromisoformat(answers["_first"]) + timedelta(days=answers["days"] - 1)


def limits_of_hold(answers: Answers) -> Answers:
    """The limits for each held day; what the load total leaves is shared among those held."""
    last = last_day(answers).isoformat()
    load: dict[str, float] = answers["_load"]
    held = [day for day in load if answers["_first"] <= day <= last]
    others = sum(carb_g for day, carb_g in load.items() if day not in held)
    room = (answers["_limits"]["load_total_g"] - others) / len(held) if held else None
    return {**answers["_limits"], "load_room_g": room}


def _read_days(text: str, answers: Answers) -> int:
    most = days_left(answers)
    try:
        days = parse_number(text, low=1, high=most)
    except ParseError:
        raise InvalidAnswer(words_holding.days_range(most)) from None
    if not days.is_integer():
        raise InvalidAnswer(words_holding.days_range(most))
    return int(days)


def _days_choices(answers: Answers) -> Choices:
    most = days_left(answers)
    few = tuple(
        Choice(words_holding.days_button(days), str(days)) for days in (1, 2, 3) if days < most
    )
    return (few, (Choice(words_holding.to_the_end_button(most), str(most)),))


def _ask_carbs(answers: Answers) -> str:
    return words_holding.ask_carbs(answers["days"], last_day(answers), answers["_stands_g"])


def _carb_choices(answers: Answers) -> Choices:
    stands = answers["_stands_g"]
    return ((Choice(words_holding.as_now_button(stands), f"{stands:g}"),),)


#: Context: "_name", "_own", "_first" and "_last" (ISO: today and the event's day), "_stands_g",
#: "_load" (load days, ISO, with what stands for each), "_limits" and "_rail" as for a figure.
HOLD = Flow(
    id="coach-hold",
    steps=(
        Step(
            key="days",
            ask=lambda answers: words_holding.ask_days(
                answers["_name"], date.fromisoformat(answers["_last"]), self_coached=answers["_own"]
            ),
            read_with=_read_days,
            choices=_days_choices,
        ),
        Step(key="carb_g", ask=_ask_carbs, read_with=read_figure, choices=_carb_choices),
        _sure(limits_of_hold),
        REASON,
    ),
)
