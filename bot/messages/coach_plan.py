"""What a coach reads while setting event, plan and limits."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from datetime import date, datetime
from zoneinfo import ZoneInfo

from bot.messages import coach_figures as figures
from engine.limits import LIMIT_KEYS, Problem
from engine.plan import LOAD_DAYS, DayTarget, PeakPlan

KINDS = {"show": "A show", "shoot": "A photo shoot", "trial": "A trial"}
KIND_WORDS = {"show": "show", "shoot": "photo shoot", "trial": "trial"}

# The numbers of a day by their key in the plan: what a coach calls each, and its unit.
FIELDS = {
    "carb_g": ("Carbs", "g"),
    "protein_g": ("Protein", "g"),
    "fat_g": ("Fat", "g"),
    "fibre_g": ("Fibre", "g"),
    "water_l": ("Water", "L"),
    "sodium_mg": ("Sodium", "mg"),
    "training": ("Training", ""),
    "cardio_min": ("Cardio", "min"),
    "steps": ("Steps", ""),
}


def _whose(name: str, *, own: bool) -> str:
    return "your" if own else f"{name}'s"


# The event


def ask_kind(name: str, *, own: bool) -> str:
    for_whom = "" if own else f" for {name}"
    return f"What is the peak week{for_whom} leading to? A trial is a peak week run for practice."


def ask_day() -> str:
    return "On which day? Such as 14 Nov or 2027-11-14."


def ask_place(zone: str, *, own: bool) -> str:
    home = "you live" if own else "they live"
    return (
        f"Where is it? Tap if it is in the zone where {home} ({zone}), or send the nearest large "
        "city."
    )


def same_place_button() -> str:
    return "Same zone"


def day_is_past(day: date) -> str:
    return f"{figures.day(day)} {day.year} has been already. Please check the date."


def day_is_far(day: date) -> str:
    return f"{figures.day(day)} {day.year} is more than a year away. Please check the date."


def event_so_far(kind: str | None, day: date | None) -> str:
    parts = [
        KIND_WORDS[kind].capitalize() if kind else "",
        f"{figures.day(day)} {day.year}" if day else "",
    ]
    return ", ".join(part for part in parts if part)


def draft_so_far(shape: str, load: float | None) -> str:
    return f"Shape: {shape}" + (f"; mean load day {load:g} g/kg" if load is not None else "")


def event_line(kind: str, day: date, zone: str, days_out: int) -> str:
    out = figures.days_out(days_out)
    return f"{KIND_WORDS[kind].capitalize()}, {figures.day(day)} {day.year} ({zone}), {out}"


def event_set(line: str, *, moved: bool) -> str:
    kept = " Plan and limits came along, day by day; look them over." if moved else ""
    return f"Set. {line}.{kept}"


def athlete_told_event(coach: str, line: str) -> str:
    return f"{coach} has set your day: {line}."


# The plan


def ask_shape(name: str, shapes: Iterable[tuple[str, str]], *, own: bool) -> str:
    """`shapes`: label and meaning of each."""
    lines = "\n".join(f"- {label}: {meaning}" for label, meaning in shapes)
    return f"Which shape shall {_whose(name, own=own)} load have?\n{lines}"


def ask_load(usual: float, body_mass: str) -> str:
    return (
        "How much on a mean load day, in g of carbs per kg of body mass? Tap the published figure "
        f"({usual:g} g/kg; body mass on file: {body_mass}), or type another, such as 6.5."
    )


def usual_load_button(usual: float) -> str:
    return f"{usual:g} g/kg"


def ask_use_plan(table: str) -> str:
    return f"This is the draft:\n\n{table}\n\nUse it? You can change every number afterwards."


def use_plan_button() -> str:
    return "Use this plan"


def another_draft_button() -> str:
    return "Draft another"


def plan_table(plan: PeakPlan, event_day: date, volume_unit: str) -> str:
    lines = ["days out, day: carbs / protein / fat in g, water"]
    lines += [
        f"{target.days_out}, {figures.day(date.fromordinal(event_day.toordinal() - target.days_out))}: "
        f"{target.carb_g:.0f} / {target.protein_g:.0f} / {target.fat_g:.0f}, "
        f"{figures.litres(target.water_l, volume_unit)}"
        for target in plan
    ]
    load = sum(target.carb_g for target in plan if target.days_out in LOAD_DAYS)
    lines.append(f"Over the load, 3 to 1 days out: {figures.grams(load)} carbs")
    return "\n".join(lines)


def plan_view(name: str, table: str, set_when: str, *, own: bool) -> str:
    whose = _whose(name, own=own)
    return (
        f"{whose[0].upper()}{whose[1:]} plan, as of {set_when}:\n\n{table}\n\n"
        "Tap a day to see all of it and change any number."
    )


def plan_set(*, own: bool) -> str:
    return "The plan is set." if own else "The plan is set. The check-ins will work from it."


def event_first() -> str:
    return "Set the event first: the plan counts its days from there."


def plan_first() -> str:
    return "Set the plan first: limits are suggested around it."


def no_measures_yet(name: str) -> str:
    return f"{name} has not answered the first questions yet. I'll tell you when they are through."


def draft_plan_button() -> str:
    return "Draft a plan"


def new_draft_button() -> str:
    return "New draft"


def set_limits_button() -> str:
    return "Set the limits"


def see_limits_button() -> str:
    return "See the limits"


def limits_button() -> str:
    return "Limits"


def see_plan_button() -> str:
    return "See the plan"


def back_button() -> str:
    return "Back"


def day_button(days_out: int) -> str:
    return "Day" if days_out == 0 else f"{days_out} out"


def day_view(target: DayTarget, day: date, volume_unit: str) -> str:
    lines = [f"{figures.days_out(target.days_out).capitalize()}, {figures.day(day)}"]
    lines += [
        f"{label}: {field_value(key, getattr(target, key), volume_unit)}"
        for key, (label, _) in FIELDS.items()
    ]
    return "\n".join(lines) + "\n\nWhich one shall change?"


def field_value(key: str, value: float | str | None, volume_unit: str) -> str:
    if value is None or value == "":
        return "not said"
    if isinstance(value, str):
        return value
    if key == "water_l":
        return figures.litres(value, volume_unit)
    unit = FIELDS[key][1]
    return f"{value:,.0f}{f' {unit}' if unit else ''}"


def field_button(key: str) -> str:
    return FIELDS[key][0]


def ask_field(key: str, days_out: int, value: float | str | None, volume_unit: str) -> str:
    label = FIELDS[key][0]
    now = field_value(key, value, volume_unit)
    how = "Send a few words." if key == "training" else "Send the new figure."
    return f"{label}, {figures.days_out(days_out)}: {now} now. {how}"


def training_too_long(length: int, most: int) -> str:
    return f"That is {length:,} characters; {most} is what fits here. Please send the short of it."


def training_empty() -> str:
    return "That was empty. Send a few words, such as: upper body, light."


def field_set(key: str, days_out: int, value: str) -> str:
    return f"{FIELDS[key][0]}, {figures.days_out(days_out)}: {value}."


def day_over() -> str:
    return "That day is over, so its figures stay as they were."


def does_not_fit(problems: Sequence[Problem], volume_unit: str) -> str:
    lines = "\n".join(f"- {_problem(problem, volume_unit)}" for problem in problems)
    return (
        f"Nothing was changed, because plan and limits would not fit together:\n{lines}\n\n"
        "I raise or lower nothing by myself: change the one or the other."
    )


def _problem(problem: Problem, volume_unit: str) -> str:
    where = "over the load" if problem.days_out is None else figures.days_out(problem.days_out)
    what = "water" if problem.key == "water_l" else "carbs"
    side = "under" if problem.value < problem.bound else "over"
    value = figures.limit(problem.limit, problem.value, volume_unit)
    bound = figures.limit(problem.limit, problem.bound, volume_unit)
    return f"{where}: {what} {value}, {side} the {limit_button(problem.limit).lower()} of {bound}"


# The limits


def limits_view(name: str, lines: Sequence[str], *, are_set: bool, own: bool) -> str:
    whose = _whose(name, own=own)
    head = (
        f"{whose[0].upper()}{whose[1:]} limits. Nothing goes out past them:"
        if are_set
        else f"Limits I would suggest around {whose} plan. They hold once you have set them:"
    )
    return f"{head}\n\n" + "\n".join(lines) + "\n\nTap one to change it."


def limit_line(key: str, value: float, volume_unit: str) -> str:
    label = LIMIT_KEYS[key].label
    return f"{label[0].upper()}{label[1:]}: {figures.limit(key, value, volume_unit)}"


def limit_button(key: str) -> str:
    return {
        "carb_floor_g": "Carb floor",
        "carb_ceiling_g": "Carb ceiling",
        "step_g": "Step",
        "change_per_day_g": "Largest change",
        "load_total_g": "Load total",
        "apply_without_asking_g": "Without asking",
        "water_floor_l": "Water floor",
        "water_ceiling_l": "Water ceiling",
    }[key]


def use_limits_button() -> str:
    return "Set these limits"


def ask_limit(key: str, value: float, low: float, high: float, volume_unit: str) -> str:
    if LIMIT_KEYS[key].unit == "g":
        low, high = math.ceil(low), math.floor(high)  # what is offered has to be taken
    label = LIMIT_KEYS[key].label
    return (
        f"{label[0].upper()}{label[1:]}: {figures.limit(key, value, volume_unit)} now. Send the "
        f"new figure, from {figures.limit(key, low, volume_unit)} to "
        f"{figures.limit(key, high, volume_unit)}."
    )


def outside_guard_rail(
    key: str, value: float, bound: float, citation: str, volume_unit: str
) -> str:
    side = "most" if value > bound else "least"
    return (
        f"{figures.limit(key, value, volume_unit)} is past what can be set for this body mass: "
        f"{figures.limit(key, bound, volume_unit)} is the {side}. Where that comes from: {citation}."
    )


def limits_contradict(key: str, volume_unit: str, floor: float, ceiling: float) -> str:
    what = "water" if key.startswith("water") else "carb"
    unit_key = "water_floor_l" if key.startswith("water") else "carb_floor_g"
    return (
        f"Then the {what} floor ({figures.limit(unit_key, floor, volume_unit)}) would be over the "
        f"{what} ceiling ({figures.limit(unit_key, ceiling, volume_unit)}). Nothing was changed."
    )


def limits_set() -> str:
    return "The limits are set."


def limit_changed(line: str) -> str:
    return f"Changed. {line}."


# When all three are there


def all_set(name: str, first: datetime, zone: str | None, *, own: bool) -> str:
    when = _first(first, zone)
    if own:
        return f"Day, plan and limits are set. I'll ask for your first morning numbers on {when}."
    return (
        f"Day, plan and limits are set. I'll ask {name} for the first morning numbers on {when} "
        "(their time)."
    )


def athlete_all_set(coach: str, first: datetime, zone: str | None) -> str:
    return (
        f"{coach} has set your day, plan and limits. I'll ask for your first morning numbers on "
        f"{_first(first, zone)}. /week shows the plan."
    )


def all_set_but_waiting(name: str, status: str) -> str:
    why = {
        "doctor-first": f"they begin once you have noted a doctor's word for {name}",
        "paused": f"they begin once {name} is back with /resume",
    }.get(status, "no morning of this week is left to ask on")
    return f"Day, plan and limits are set. No morning questions yet: {why}."


def _first(first: datetime, zone: str | None) -> str:
    local = first.astimezone(ZoneInfo(zone or "UTC"))
    return f"{figures.day(local.date())} at {local:%H:%M}"
