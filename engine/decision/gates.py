"""May this case be decided at all? The gates, in the order in which they are tried.

A case that a gate stops keeps the figure already in force; the reason says what would let it
through.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta

from engine.decision.gather import gut_trouble, symptoms_of
from engine.evidence import deciding as e
from engine.evidence.source import Source
from engine.safety import Flag, Level, plausible_water, plausible_weight
from engine.symptoms import EATING_AND_MOOD
from engine.values.case import Case, answers_decisive, answers_needed
from engine.values.checkin import CheckIn
from engine.values.limits import load_total_label
from engine.values.plan import PLAN_DAYS

#: What an answer is called in a sentence, by `CheckIn` field.
ANSWER_NAMES = {
    "weight_kg": "weight",
    "fullness": "fullness",
    "sharpness": "sharpness",
    "water_l": "water",
    "carb_eaten_g": "carbs eaten",
    "sleep_h": "sleep",
    "urine_colour": "urine colour",
    "resting_pulse": "resting pulse",
    "water_within_one_hour_l": "water within one hour",
}
ANSWER_UNITS = {
    "weight_kg": "kg",
    "water_l": "L",
    "carb_eaten_g": "g",
    "sleep_h": "h",
    "water_within_one_hour_l": "L",
}
LONGEST_ANSWER_SHOWN = 12


@dataclass(frozen=True, slots=True, kw_only=True)
class Stop:
    """Why a case was not decided, and what is asked again (as `CheckIn` fields)."""

    reason: str
    ask_again: tuple[str, ...] = ()
    tell_coach: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Gate:
    """`stops` looks at the case and its flags and returns why the case stops here, or None."""

    id: str
    stops: Callable[[Case, tuple[Flag, ...]], Stop | None]
    source: Source


def _warning(_: Case, flags: tuple[Flag, ...]) -> Stop | None:
    warnings = [flag.id.replace("-", " ") for flag in flags if flag.level is Level.WARNING]
    if not warnings:
        return None
    return Stop(
        reason=(
            f"Warning: {', '.join(warnings)}. Medical help comes first; carbs are not adjusted "
            "until the coach lifts it."
        ),
        tell_coach=True,
    )


def _frozen(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    if not case.frozen:
        return None
    return Stop(reason="Adjusting is frozen until the coach lifts it.")


def _override(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    if case.override_g is None:
        return None
    planned = case.planned
    beside = f", where the plan has {planned.carb_g:g} g" if planned else ""
    return Stop(reason=f"The coach has signed {case.override_g:g} g for this day{beside}.")


def _no_plan(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    if case.planned is not None:
        return None
    day, out = _day(case.sets_date), case.days_out
    if out < 0:
        return Stop(reason=f"{day} is after the event, and the plan ends with it.")
    if out > max(PLAN_DAYS):
        return Stop(reason=f"{day} is {out} days out; the plan begins {max(PLAN_DAYS)} days out.")
    return Stop(
        reason=f"The plan has no target for {day}, {out} days out: the coach has to set one.",
        tell_coach=True,
    )


def _eating_or_mood(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    if not symptoms_of(case.checkin) & EATING_AND_MOOD:
        return None
    return Stop(
        reason=(
            "Something was told of eating or mood that comes before the look. Carbs are not "
            "adjusted until the coach lifts it."
        )
    )


def _missing(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    """Without the look nothing is decided, but for a bad gut in the load, which needs none."""
    decisive = answers_decisive(case.days_out, case.plan)
    if all(getattr(case.checkin, name) is not None for name in decisive):
        return None
    if case.plan.loading(case.days_out) and gut_trouble(case.checkin):
        return None
    missing = unanswered(case)
    return Stop(
        reason=f"Not answered yet: {listed(missing)}. Without that nothing is adjusted.",
        ask_again=missing,
    )


def unanswered(case: Case) -> tuple[str, ...]:
    """The answers that were asked for and not given, as `CheckIn` fields."""
    needed = answers_needed(case.days_out, case.plan)
    return tuple(name for name in needed if getattr(case.checkin, name) is None)


def _implausible(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    unbelieved = unbelievable(case.checkin)
    if unbelieved:
        return Stop(
            reason=f"This can't be right: {_told(case.checkin, unbelieved)}. Please give it again.",
            ask_again=unbelieved,
        )
    reference = _jump_from(case)
    if reference is None:
        return None
    return Stop(
        reason=(
            f"Weight {case.checkin.weight_kg:g} kg is far from {reference:g} kg, further than a "
            "night moves it. A slip of the finger? If it is right, the coach has to know before "
            "carbs move."
        ),
        ask_again=("weight_kg",),
        tell_coach=True,
    )


def _stale(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    local = case.local_now
    if local is None or case.checkin.date == local.date():
        return None
    return Stop(
        reason=(
            f"These answers are for {_day(case.checkin.date)}, and there it is now "
            f"{_day(local)}: this morning's are needed."
        ),
        ask_again=answers_needed(case.days_out, case.plan),
    )


def _conflict(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    planned = case.planned
    if planned is None:
        return None
    if case.limits.window(planned.carb_g, case.load_room_g) is not None:
        return None
    limits = case.limits
    bounds = f"{limits.carb_floor_g:g} to {limits.carb_ceiling_g:g} g a day"
    bounds += f", {limits.change_per_day_g:g} g of change"
    if case.load_room_g is not None:
        bounds += f", {case.load_room_g:g} g left of the {load_total_label(case.plan)}"
    return Stop(
        reason=(
            f"The plan's {planned.carb_g:g} g and the limits ({bounds}) leave no figure for this "
            "day: the coach has to change one of them."
        ),
        tell_coach=True,
    )


GATES: tuple[Gate, ...] = (
    Gate(id="warning-flag", stops=_warning, source=e.OWN_CHOICE),
    Gate(id="frozen", stops=_frozen, source=e.OWN_CHOICE),
    Gate(id="coach-override", stops=_override, source=e.COMMON_PRACTICE),
    Gate(id="no-plan", stops=_no_plan, source=e.OWN_CHOICE),
    Gate(id="eating-or-mood", stops=_eating_or_mood, source=e.OWN_CHOICE),
    Gate(id="missing-answer", stops=_missing, source=e.OWN_CHOICE),
    Gate(id="implausible-answer", stops=_implausible, source=e.OWN_CHOICE),
    Gate(id="stale-answer", stops=_stale, source=e.OWN_CHOICE),
    Gate(id="limits-conflict", stops=_conflict, source=e.OWN_CHOICE),
)


def first_shut(
    case: Case, flags: tuple[Flag, ...]
) -> tuple[tuple[Gate, Stop] | None, tuple[Gate, ...]]:
    """The first gate that stops a case, with why; and those that the case went through before."""
    for at, gate in enumerate(GATES):
        stop = gate.stops(case, flags)
        if stop is not None:
            return (gate, stop), GATES[:at]
    return None, GATES


def unbelievable(checkin: CheckIn) -> tuple[str, ...]:
    """The answers that nobody can have meant, as `CheckIn` fields."""
    ranges: dict[str, tuple[float, float]] = {
        "fullness": (1, 10),
        "sharpness": (1, 5),
        "carb_eaten_g": (0, e.CARB_EATEN_MOST_G.value),
        "sleep_h": (0, 24),
        "urine_colour": (1, 8),
        "resting_pulse": (e.PULSE_LEAST.value, e.PULSE_MOST.value),
    }
    told = {name: getattr(checkin, name) for name in ANSWER_NAMES}
    believed = {
        "weight_kg": plausible_weight,
        "water_l": plausible_water,
        "water_within_one_hour_l": plausible_water,
    }

    def wrong(name: str, value: float) -> bool:
        if name in believed:
            return not believed[name](value)
        low, high = ranges[name]
        return not low <= value <= high

    return tuple(name for name, value in told.items() if value is not None and wrong(name, value))


def _jump_from(case: Case) -> float | None:
    """The weight from which today's is too far to be true, or None.

    A morning is compared with the last one, and let through when it agrees with the body mass on
    file instead: then the last one was the slip.
    """
    weight, on_file = case.checkin.weight_kg, case.athlete.body_mass_kg
    if weight is None:
        return None
    earliest = case.checkin.date - timedelta(days=int(e.JUMP_LOOKS_BACK_DAYS.value))
    last = [
        c.weight_kg
        for c in case.history.checkins
        if earliest <= c.date < case.checkin.date
        and c.weight_kg is not None
        and plausible_weight(c.weight_kg)
    ]
    if not last:
        return None if _near(weight, on_file, e.FIRST_JUMP_SHARE.value) else on_file
    references = (last[-1], on_file)
    near = any(_near(weight, reference, e.JUMP_SHARE.value) for reference in references)
    return None if near else last[-1]


def _near(weight: float, reference: float, share: float) -> bool:
    return abs(weight - reference) <= share * reference


def _told(checkin: CheckIn, names: tuple[str, ...]) -> str:
    """The answers as they were given, for the one who gave them to see the slip."""
    shown = []
    for name in names:
        value = str(getattr(checkin, name))[:LONGEST_ANSWER_SHOWN]
        shown.append(f"{ANSWER_NAMES[name]} {value} {ANSWER_UNITS.get(name, '')}".rstrip())
    return ", ".join(shown)


def _day(day: date) -> str:
    return f"{day.day} {day:%B}"


def listed(names: tuple[str, ...]) -> str:
    return ", ".join(ANSWER_NAMES[name] for name in names)
