"""Case files: one athlete's week as TOML, and the decisions its check-ins lead to.

Tests, demonstrations and support read the same files. Everything odd about a file is refused with
the section and key it is found in; only the answers of a check-in are taken as they stand, since
judging those is what the gates are for.
"""

from __future__ import annotations

import itertools
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, fields, replace
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from engine.cli.tables import (
    CaseFileError,
    Table,
    as_date,
    as_number,
    as_text,
    as_texts,
    as_time,
    as_whole,
)
from engine.decision.decide import Decision, decide
from engine.decision.reason import reason
from engine.planning.drafting.draft import draft_plan
from engine.values.athlete import Athlete, Baseline, Event, EventKind, Sex
from engine.values.case import Case, ForecastUse
from engine.values.checkin import (
    USUAL_LOOK,
    CheckIn,
    CoachLook,
    DaySet,
    Gut,
    History,
    Observed,
    TargetLook,
    TrainingDone,
)
from engine.values.limits import LIMIT_KEYS, GuardRails, Limits
from engine.values.plan import PLAN_DAYS, DayTarget, PeakPlan, Phase

SEXES = {"f": Sex.FEMALE, "female": Sex.FEMALE, "m": Sex.MALE, "male": Sex.MALE}
BASELINE_KEYS = tuple(f.name for f in fields(Baseline))
#: What not everybody counts: a file may leave these out, and then they stay as always.
UNCOUNTED_KEYS = frozenset(f.name for f in fields(Baseline) if f.default is None)
#: The answers of a check-in that are plain numbers.
NUMBER_ANSWERS = (
    "weight_kg",
    "water_l",
    "carb_eaten_g",
    "sleep_h",
    "resting_pulse",
    "water_within_one_hour_l",
)
WHOLE_ANSWERS = ("fullness", "sharpness", "urine_colour")


@dataclass(frozen=True, slots=True, kw_only=True)
class Answered:
    """One check-in, the instant of it where the file tells a time, and what the coach saw."""

    checkin: CheckIn
    now: datetime | None
    observed: tuple[Observed, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseFile:
    """A case file as read. `suggested` names the limits that the file left to suggestion."""

    athlete: Athlete
    baseline: Baseline
    event: Event
    plan: PeakPlan
    drafted: bool
    limits: Limits
    suggested: tuple[str, ...]
    answers: tuple[Answered, ...]
    overrides: Mapping[int, float]


def parse(content: str) -> CaseFile:
    """Read a case file's content. Raises `CaseFileError`, which names section and key."""
    try:
        tables = tomllib.loads(content)
    except tomllib.TOMLDecodeError as error:
        raise CaseFileError(f"this is no TOML: {error}") from error
    whole = Table("the file", tables)
    athlete = _athlete(whole.table("athlete"))
    baseline = _baseline(whole.table("baseline"))
    event = _event(whole.table("event"))
    days = [_day(row, baseline) for row in whole.rows("day")]
    plan = _plan(days) if days else draft_plan(athlete, baseline)
    limits, suggested = _limits(whole.table("limits", {}), athlete, plan, baseline)
    answers = [_answered(row, event) for row in whole.rows("checkin")]
    overrides = dict(_override(row) for row in whole.rows("override"))
    whole.refuse_the_rest()
    return CaseFile(
        athlete=athlete,
        baseline=baseline,
        event=event,
        plan=plan,
        drafted=not days,
        limits=limits,
        suggested=suggested,
        answers=_in_order(answers),
        overrides=overrides,
    )


def run(file: CaseFile, *, forecast: ForecastUse = ForecastUse.RULES_ONLY) -> tuple[Decision, ...]:
    """The decision on each check-in, in the order of dates."""
    return tuple(decision for _, decision in play(file, forecast=forecast))


def play(
    file: CaseFile, *, forecast: ForecastUse = ForecastUse.RULES_ONLY
) -> Iterator[tuple[Case, Decision]]:
    """Each check-in as a case, and its decision, each knowing what went before.

    A figure that waits for the coach's word lapses: the next check-in finds what stands without it.
    Raises `CaseFileError` for a check-in that makes no case.
    """
    earlier: list[CheckIn] = []
    set_days: dict[date, float] = {}
    observed: list[Observed] = []
    for answered in file.answers:
        observed += answered.observed
        history = History(
            checkins=tuple(earlier),
            set_days=tuple(DaySet(day, grams) for day, grams in sorted(set_days.items())),
            observed=tuple(observed),
        )
        case = replace(_case(file, answered, history), forecast=forecast)
        decision = decide(case)
        yield case, decision
        earlier.append(answered.checkin)
        stands = decision.lapse_g if decision.needs_sign_off else decision.carb_g
        if stands is not None:
            set_days[decision.sets_date] = stands


def summary(decision: Decision) -> dict[str, Any]:
    """The decision as `--json` prints it."""
    return {
        "date": decision.date.isoformat(),
        "sets_date": decision.sets_date.isoformat(),
        "days_out": decision.days_out,
        "outcome": decision.outcome.value,
        "carb_g": decision.carb_g,
        "planned_carb_g": decision.planned_carb_g,
        "change_g": decision.change_g,
        "rule": decision.rule,
        "bound": decision.bound,
        "needs_sign_off": decision.needs_sign_off,
        "flags": [{"id": flag.id, "level": flag.level.value} for flag in decision.flags],
        "reason": reason(decision),
        "sources": [source.citation for source in decision.sources],
    }


def _athlete(table: Table) -> Athlete:
    return table.build(
        Athlete,
        sex=table.need("sex", _sex, 'sex "F" or "M"'),
        birth_year=table.need("birth_year", as_whole, "a year"),
        height_cm=table.need("height_cm", as_number, "a number"),
        body_mass_kg=table.need("body_mass_kg", as_number, "a number"),
        body_fat_percent=table.number("body_fat_percent"),
    )


def _baseline(table: Table) -> Baseline:
    counted = (key for key in BASELINE_KEYS if key not in UNCOUNTED_KEYS)
    figures: dict[str, Any] = {key: table.need(key, as_number, "a number") for key in counted}
    figures |= {key: table.number(key) for key in UNCOUNTED_KEYS}
    return table.build(Baseline, **figures)


def _event(table: Table) -> Event:
    kinds = ", ".join(kind.value for kind in EventKind)
    return table.build(
        Event,
        kind=table.need("kind", EventKind, f"one of {kinds}"),
        day=table.need("day", as_date, "a date such as 2026-11-28"),
        zone=table.need("zone", as_text, "a time zone such as Europe/Lisbon"),
        target=_target(table.table("look", {})),
    )


def _target(table: Table) -> TargetLook | None:
    """The look that the event asks for; none in a file without [event.look]."""
    keys = ("fullness_low", "fullness_high", "sharpness_low", "sharpness_high")
    ends = {key: table.get(key, as_whole, "a whole number") for key in keys}
    words = table.get("words", as_text, "a text") or ""
    table.refuse_the_rest()
    if not words and not any(end is not None for end in ends.values()):
        return None
    told = {key: getattr(USUAL_LOOK, key) if end is None else end for key, end in ends.items()}
    return table.build(TargetLook, words=words, **told)


def _day(table: Table, baseline: Baseline) -> DayTarget:
    figures: dict[str, Any] = {"carb_g": table.need("carb_g", as_number, "a number")}
    for key in BASELINE_KEYS[1:]:
        told = table.number(key)
        figures[key] = getattr(baseline, key) if told is None else told
    training = table.get("training", as_text, "a text") or ""
    cardio = table.get("cardio", _cardio, "minutes or a text")
    minutes = table.number("cardio_min")
    if isinstance(cardio, str):
        training = "; cardio: ".join(part for part in (training, cardio) if part)
    elif cardio is not None and minutes is not None:
        raise CaseFileError(f"{table.name}: cardio and cardio_min say the same, give one of them")
    else:
        minutes = minutes if cardio is None else cardio
    return table.build(
        DayTarget,
        days_out=table.need("days_out", as_whole, "a whole number, 7 to 0"),
        training=training,
        cardio_min=minutes,
        steps=table.get("steps", as_whole, "a whole number"),
        phase=table.get("phase", Phase, f"one of {', '.join(phase.value for phase in Phase)}"),
        **figures,
    )


def _plan(days: list[DayTarget]) -> PeakPlan:
    try:
        return PeakPlan(tuple(sorted(days, key=lambda day: -day.days_out)))
    except ValueError as error:
        raise CaseFileError(f"[[day]]: {error}") from error


def _limits(
    table: Table, athlete: Athlete, plan: PeakPlan, baseline: Baseline
) -> tuple[Limits, tuple[str, ...]]:
    told = {key: value for key in LIMIT_KEYS if (value := table.number(key)) is not None}
    start = Limits.suggested(athlete, plan, baseline)
    values = {key: told.get(key, getattr(start, key)) for key in LIMIT_KEYS}
    limits = table.build(Limits, guard_rails=GuardRails.of(athlete), **values)
    return limits, tuple(key for key in LIMIT_KEYS if key not in told)


def _answered(table: Table, event: Event) -> Answered:
    guts = ", ".join(gut.value for gut in Gut)
    amounts = ", ".join(done.value for done in TrainingDone)
    at = table.get("time", as_time, "a time such as 07:30")
    day = table.need("date", as_date, "a date such as 2026-11-25")
    seen = _observed(table, day)
    checkin = table.build(
        CheckIn,
        date=day,
        gut=table.get("gut", Gut, f"one of {guts}"),
        training_done=table.get("training_done", TrainingDone, f"one of {amounts}"),
        symptoms=table.get("symptoms", as_texts, "a list of texts") or (),
        note=table.get("note", as_text, "a text") or "",
        **{key: table.number(key) for key in NUMBER_ANSWERS},
        **{key: table.get(key, as_whole, "a whole number") for key in WHOLE_ANSWERS},
    )
    now = datetime.combine(checkin.date, at, ZoneInfo(event.zone)) if at else None
    return Answered(checkin=checkin, now=now, observed=seen)


def _observed(table: Table, day: date) -> tuple[Observed, ...]:
    """What the coach saw that morning, where the file says so."""
    looks = ", ".join(look.value for look in CoachLook)
    look = table.get("coach_saw", CoachLook, f"one of {looks}")
    sharpness = table.get("coach_sharpness", as_whole, "a whole number, 1 to 5")
    if look is None:
        if sharpness is not None:
            raise CaseFileError(f"{table.name}: coach_sharpness needs coach_saw beside it")
        return ()
    try:
        return (Observed(date=day, look=look, sharpness=sharpness),)
    except ValueError as error:
        raise CaseFileError(f"{table.name}: coach_{error}") from error


def _override(table: Table) -> tuple[int, float]:
    days_out = table.need("days_out", as_whole, "a whole number, 7 to 0")
    carb_g = table.need("carb_g", as_number, "a number")
    table.refuse_the_rest()
    if days_out not in PLAN_DAYS:
        raise CaseFileError(f"{table.name}: days_out {days_out} is outside 7 to 0")
    return days_out, carb_g


def _in_order(answers: list[Answered]) -> tuple[Answered, ...]:
    ordered = sorted(answers, key=lambda answered: answered.checkin.date)
    for one, other in itertools.pairwise(ordered):
        if one.checkin.date == other.checkin.date:
            raise CaseFileError(f"[[checkin]]: two are dated {one.checkin.date}, one a day is read")
    return tuple(ordered)


def _case(file: CaseFile, answered: Answered, history: History) -> Case:
    try:
        return Case(
            athlete=file.athlete,
            baseline=file.baseline,
            event=file.event,
            plan=file.plan,
            limits=file.limits,
            history=history,
            checkin=answered.checkin,
            now=answered.now,
            overrides=file.overrides,
        )
    except ValueError as error:
        raise CaseFileError(str(error)) from error


def _sex(value: object) -> Sex:
    word = as_text(value).casefold()
    if word not in SEXES:
        raise ValueError(value)
    return SEXES[word]


def _cardio(value: object) -> float | str:
    return value if isinstance(value, str) else as_number(value)
