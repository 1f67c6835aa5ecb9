"""How long and at what figure an athlete is held; past a limit, a second look and the reason."""

from __future__ import annotations

from datetime import date, timedelta

from bot.decision.flow_figure import REASON, past_limit, read_figure
from bot.decision.holding import words
from bot.decision.signoff import words as figure_words
from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step, yes_or_no
from engine.written.units import ParseError, parse_number


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
        raise InvalidAnswer(words.days_range(most)) from None
    if not days.is_integer():
        raise InvalidAnswer(words.days_range(most))
    return int(days)


def _days_choices(answers: Answers) -> Choices:
    most = days_left(answers)
    few = tuple(Choice(words.days_button(days), str(days)) for days in (1, 2, 3) if days < most)
    return (few, (Choice(words.to_the_end_button(most), str(most)),))


def _ask_carbs(answers: Answers) -> str:
    return words.ask_carbs(answers["days"], last_day(answers), answers["_stands_g"])


def _carb_choices(answers: Answers) -> Choices:
    stands = answers["_stands_g"]
    return ((Choice(words.as_now_button(stands), f"{stands:g}"),),)


def _past(answers: Answers) -> tuple[str, float] | None:
    return past_limit(answers["carb_g"], limits_of_hold(answers))


def _ask_sure(answers: Answers) -> str:
    found = _past(answers)
    assert found is not None
    label, bound = found
    return figure_words.past_own_limit(answers["carb_g"], bound, label)


def _sure_choices(answers: Answers) -> Choices:
    return (
        (
            Choice(figure_words.set_anyway_button(answers["carb_g"]), "yes"),
            Choice(figure_words.rather_not_button(), "no"),
        ),
    )


#: Context: "_name", "_own", "_first" and "_last" (ISO: today and the event's day), "_stands_g",
#: "_load" (load days, ISO, with what stands for each), "_limits" and "_rail" as for a figure.
HOLD = Flow(
    id="coach-hold",
    steps=(
        Step(
            key="days",
            ask=lambda answers: words.ask_days(
                answers["_name"], date.fromisoformat(answers["_last"]), self_coached=answers["_own"]
            ),
            read_with=_read_days,
            choices=_days_choices,
        ),
        Step(key="carb_g", ask=_ask_carbs, read_with=read_figure, choices=_carb_choices),
        Step(
            key="sure",
            ask=_ask_sure,
            read=yes_or_no,
            choices=_sure_choices,
            when=lambda answers: "carb_g" in answers and _past(answers) is not None,
        ),
        REASON,
    ),
)
