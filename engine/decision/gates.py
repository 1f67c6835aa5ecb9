"""May this case be decided at all? The gates, in the order in which they are tried.

A case that a gate stops keeps the figure already in force. What a gate says to the athlete stands
with it in the table below; what it went by is kept with the decision.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import timedelta

from engine.decision.facts import Fact
from engine.decision.gather import gut_trouble, symptoms_of
from engine.evidence import deciding as e
from engine.evidence.source import Source
from engine.safety import Flag, Level, plausible_water, plausible_weight
from engine.symptoms import EATING_AND_MOOD
from engine.values.case import Case, answers_decisive, answers_needed
from engine.values.checkin import CheckIn
from engine.values.plan import PLAN_DAYS
from engine.values.telling import mark

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


@dataclass(frozen=True, slots=True, kw_only=True)
class Stop:
    """What stopped a case beside what the case holds, and what is asked again (as `CheckIn` fields)."""

    facts: Mapping[str, Fact] = field(default_factory=dict)
    ask_again: tuple[str, ...] = ()
    tell_coach: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Gate:
    """`stops` looks at the case and its flags and returns why the case stops here, or None.

    `name` is what people call it and `says` the sentence for the athlete, whose one gap may be
    `missing`. Raises ValueError for a gate that lacks either.
    """

    id: str
    name: str = ""
    says: str = ""
    stops: Callable[[Case, tuple[Flag, ...]], Stop | None]
    source: Source

    def __post_init__(self) -> None:
        if not (self.name and self.says):
            raise ValueError(f"{self.id} needs a name that people read, and a sentence")


def _warning(_: Case, flags: tuple[Flag, ...]) -> Stop | None:
    warnings = [flag.id.value for flag in flags if flag.level is Level.WARNING]
    return Stop(facts={"warnings": ", ".join(warnings)}, tell_coach=True) if warnings else None


def _frozen(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    return Stop() if case.frozen else None


def _override(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    return None if case.override_g is None else Stop(facts={"signed_g": case.override_g})


def _no_plan(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    """A day outside the week has none by its nature; a gap inside it is the coach's to fill."""
    if case.planned is not None:
        return None
    return Stop(tell_coach=0 <= case.days_out <= max(PLAN_DAYS))


def _eating_or_mood(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    return Stop() if symptoms_of(case.checkin) & EATING_AND_MOOD else None


def _missing(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    """Without the look nothing is decided, but for a bad gut in the load, which needs none."""
    decisive = answers_decisive(case.days_out, case.plan)
    if all(getattr(case.checkin, name) is not None for name in decisive):
        return None
    if case.plan.loading(case.days_out) and gut_trouble(case.checkin):
        return None
    return Stop(ask_again=unanswered(case))


def unanswered(case: Case) -> tuple[str, ...]:
    """The answers that were asked for and not given, as `CheckIn` fields."""
    needed = answers_needed(case.days_out, case.plan)
    return tuple(name for name in needed if getattr(case.checkin, name) is None)


def _implausible(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    if unbelieved := unbelievable(case.checkin):
        return Stop(ask_again=unbelieved)
    reference = _jump_from(case)
    if reference is None:
        return None
    # A slip of the finger? If it is right, the coach has to know before carbs move.
    return Stop(facts={"far_from_kg": reference}, ask_again=("weight_kg",), tell_coach=True)


def _stale(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    local = case.local_now
    if local is None or case.checkin.date == local.date():
        return None
    return Stop(
        facts={"today": local.date().isoformat()},
        ask_again=answers_needed(case.days_out, case.plan),
    )


def _conflict(case: Case, _: tuple[Flag, ...]) -> Stop | None:
    planned = case.planned
    if planned is None:
        return None
    if case.limits.window(planned.carb_g, case.load_room_g) is not None:
        return None
    return Stop(facts={"load_room_g": case.load_room_g}, tell_coach=True)


GATES: tuple[Gate, ...] = (
    Gate(
        id="warning-flag",
        name=mark("warning flag"),
        says=mark("Carbs are not adjusted while a warning is open."),
        stops=_warning,
        source=e.OWN_CHOICE,
    ),
    Gate(
        id="frozen",
        name=mark("frozen"),
        says=mark("Your coach has frozen adjusting. Stay on plan for now."),
        stops=_frozen,
        source=e.OWN_CHOICE,
    ),
    Gate(
        id="coach-override",
        name=mark("coach override"),
        says=mark("Your coach has set this figure."),
        stops=_override,
        source=e.COMMON_PRACTICE,
    ),
    Gate(
        id="no-plan",
        name=mark("no plan"),
        says=mark("Your plan has no target for that day."),
        stops=_no_plan,
        source=e.OWN_CHOICE,
    ),
    Gate(
        id="eating-or-mood",
        name=mark("eating or mood"),
        says=mark("Your plan stays as it is for now. Your coach knows how you feel."),
        stops=_eating_or_mood,
        source=e.OWN_CHOICE,
    ),
    Gate(
        id="missing-answer",
        name=mark("missing answer"),
        says=mark("I still need: {missing}. Stay on plan until then."),
        stops=_missing,
        source=e.OWN_CHOICE,
    ),
    Gate(
        id="implausible-answer",
        name=mark("implausible answer"),
        says=mark("One answer can't be right. Stay on plan until it is corrected."),
        stops=_implausible,
        source=e.OWN_CHOICE,
    ),
    Gate(
        id="stale-answer",
        name=mark("stale answer"),
        says=mark("Those answers are from another day. Stay on plan."),
        stops=_stale,
        source=e.OWN_CHOICE,
    ),
    Gate(
        id="limits-conflict",
        name=mark("limits conflict"),
        says=mark(
            "The plan and your coach's limits don't fit together for this day. Your coach has been "
            "told."
        ),
        stops=_conflict,
        source=e.OWN_CHOICE,
    ),
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
