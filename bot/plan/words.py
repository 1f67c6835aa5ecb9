"""What a coach reads while setting event and plan, and when all is set."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from bot.words import figures, phases
from bot.words.common import day_and_year, event_name
from bot.words.languages import Sentence, SentenceAbout, SentenceOn, SentenceOnTwo, mark, tr, tr_if
from bot.words.names import FIELD_WORDS, LIMIT_WORDS, shape_words
from bot.words.phases import training_words
from engine.values.limits import Problem
from engine.values.plan import DayTarget, PeakPlan, Phase

#: On a button.
KINDS = {"show": mark("A show"), "shoot": mark("A photo shoot"), "trial": mark("A trial")}

# The numbers of a day by their key in the plan: what a coach calls each, and its unit.
FIELDS = {
    "carb_g": (mark("Carbs"), "g"),
    "protein_g": (mark("Protein"), "g"),
    "fat_g": (mark("Fat"), "g"),
    "fibre_g": (mark("Fibre"), "g"),
    "water_l": (mark("Water"), "L"),
    "sodium_mg": (mark("Sodium"), "mg"),
    "training": (mark("Training"), ""),
    "cardio_min": (mark("Cardio"), "min"),
    "steps": (mark("Steps"), ""),
    "phase": (mark("Phase"), ""),
}


# The event


def ask_kind(name: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("What is this peak week for? A trial is a peak week run for practice.")
    return tr("What is {name}'s peak week for? A trial is a peak week run for practice.", name=name)


ask_day = Sentence("On which day? For example 14 Nov or 2027-11-14.")
same_place_button = Sentence("Same time zone")
ask_place = SentenceAbout(
    "Where is it? Tap if it is in your own time zone ({zone}), or send the nearest large city.",
    "Where is it? Tap if it is in the athlete's own time zone ({zone}), or send the "
    "nearest large city.",
)
day_is_past = SentenceOn("{day} is already past. Please check the date.", day_and_year)
day_is_far = SentenceOn("{day} is more than a year away. Please check the date.", day_and_year)


def event_so_far(kind: str | None, day: date | None) -> str:
    parts = [figures.capital(event_name(kind)) if kind else "", day_and_year(day) if day else ""]
    return ", ".join(part for part in parts if part)


def draft_so_far(shape: str, load: float | None) -> str:
    if load is None:
        return tr("Shape: {shape}", shape=shape_words(shape))
    return tr(
        "Shape: {shape}; average load day {load} g/kg",
        shape=shape_words(shape),
        load=figures.plain(load),
    )


def event_line(kind: str, day: date, zone: str, days_out: int) -> str:
    what = figures.capital(event_name(kind))
    return f"{what}, {day_and_year(day)} ({zone}), {figures.days_out(days_out)}"


def meant_for(kind: str, day: date) -> str:
    """Over what concerns an event that still waits."""
    event = tr("{kind} on {day}", kind=event_name(kind), day=figures.short_day(day))
    return tr("For: {event}", event=event)


def event_set(line: str, *, replaced: date | None, moved: bool) -> str:
    """`replaced` is the day of the event that falls away; `moved`: plan and limits came along."""
    said = tr("Saved. {line}.", line=line)
    if replaced is not None:
        said += " " + _replaces(replaced)
    if moved:
        said += " " + tr("I moved the plan and the limits to the new date. Please check them.")
    return said


def athlete_told_event(coach: str, line: str, *, replaced: date | None) -> str:
    said = tr("{coach} has set your event: {line}.", coach=coach, line=line)
    return said if replaced is None else f"{said} {_replaces(replaced)}"


_replaces = SentenceOn("It replaces the event on {day}.", day_and_year)


# The plan


def ask_shape(name: str, shapes: Iterable[tuple[str, str]], *, self_coached: bool) -> str:
    """`shapes`: label and meaning of each."""
    lines = "\n".join(
        f"- {shape_words(label)}: {shape_words(meaning)}" for label, meaning in shapes
    )
    if self_coached:
        return tr("How should your load be spread?\n{lines}", lines=lines)
    return tr("How should {name}'s load be spread?\n{lines}", name=name, lines=lines)


ask_use_plan = SentenceOn(
    "This is the draft:\n\n{table}\n\nUse it? You can change every number afterwards."
)
use_plan_button = Sentence("Use this plan")
another_draft_button = Sentence("Draft another")
event_first = Sentence("Set the event first: the plan counts back from that day.")
plan_first = Sentence("Set the plan first: I suggest limits that fit it.")
new_draft_button = Sentence("New draft")
set_limits_button = Sentence("Set the limits")
see_limits_button = Sentence("See the limits")
limits_button = Sentence("Limits")
see_plan_button = Sentence("See the plan")
training_empty = Sentence("That was empty. Send a few words, for example: upper body, light.")
day_over = Sentence("That day is over, so its numbers stay as they were.")


def plan_table(plan: PeakPlan, event_day: date, volume_unit: str) -> str:
    lines = [tr("days out, day: carbs / protein / fat in g, water")]
    phase: Phase | None = None
    for target in plan:
        if target.phase is not None and target.phase is not phase:
            lines.append(phases.phase_words(target.phase))
        phase = target.phase
        lines.append(_plan_row(target, event_day, volume_unit))
    lines.append(phases.load_line(plan))
    return "\n".join(lines)


def _plan_row(target: DayTarget, event_day: date, volume_unit: str) -> str:
    day = figures.short_day(date.fromordinal(event_day.toordinal() - target.days_out))
    macros = " / ".join(f"{grams:.0f}" for grams in (target.carb_g, target.protein_g, target.fat_g))
    water = figures.volume(target.water_l, volume_unit)
    return f"{target.days_out}, {day}: {macros}, {water}"


def plan_view(name: str, table: str, set_when: str, *, self_coached: bool) -> str:
    if self_coached:
        head = tr("Your plan, as of {when}:", when=set_when)
    else:
        head = tr("{name}'s plan, as of {when}:", name=figures.capital(name), when=set_when)
    return "\n\n".join([head, table, tr("Tap a day to see or change its numbers.")])


def plan_set(*, self_coached: bool) -> str:
    return tr_if(
        self_coached, "The plan is set.", "The plan is set. Check-ins adjust it from here."
    )


no_measures_yet = SentenceOn(
    "{name} has not answered the first questions yet. I'll tell you when they have."
)


def day_button(days_out: int) -> str:
    return tr("Day") if days_out == 0 else tr("{days_out} out", days_out=days_out)


def day_view(target: DayTarget, day: date, volume_unit: str) -> str:
    lines = [f"{figures.capital(figures.days_out(target.days_out))}, {figures.short_day(day)}"]
    lines += [
        f"{tr(label)}: {field_value(key, getattr(target, key), volume_unit)}"
        for key, (label, _) in FIELDS.items()
    ]
    return "\n".join(lines) + "\n\n" + tr("Which one do you want to change?")


def as_always_button() -> str:
    return figures.capital(tr("as always"))


def field_value(key: str, value: float | str | None, volume_unit: str) -> str:
    if value is None and key in ("fibre_g", "sodium_mg"):
        return tr("as always")
    if value is None or value == "":
        return tr("not said")
    if isinstance(value, Phase):
        return phases.phase_words(value)
    if isinstance(value, str):
        return training_words(value)
    if key == "water_l":
        return figures.volume(value, volume_unit)
    unit = FIELDS[key][1]
    return f"{figures.number(value)}{f' {unit}' if unit else ''}"


nobody_called = SentenceOn("Nobody on your roster is called {name}. Nothing was changed.")


def ask_whose_number(days_out: int, key: str, value: str) -> str:
    """`value` as it was typed."""
    return tr(
        "Whose plan? {when}, {label}: {value}",
        when=figures.days_out(days_out), label=tr(FIELD_WORDS[key]), value=value,
    )  # fmt: skip


def field_button(key: str) -> str:
    return tr(FIELDS[key][0])


def ask_field(key: str, days_out: int, value: float | str | None, volume_unit: str) -> str:
    if key == "phase":
        return phases.ask_phase(days_out, Phase(str(value)) if value else None)
    now = tr(
        "{label}, {when}: {value} now.",
        label=field_button(key),
        when=figures.days_out(days_out),
        value=field_value(key, value, volume_unit),
    )
    how = tr("Send a few words.") if key == "training" else tr("Send the new number.")
    return f"{now} {how}"


def field_set(key: str, days_out: int, value: str) -> str:
    return f"{field_button(key)}, {figures.days_out(days_out)}: {value}."


def does_not_fit(problems: Sequence[Problem], volume_unit: str) -> str:
    return tr(
        "I changed nothing, because plan and limits don't fit together:\n{lines}\n\nChange the "
        "limit or the plan, then try again.",
        lines=problem_lines(problems, volume_unit),
    )


def problem_lines(problems: Sequence[Problem], volume_unit: str) -> str:
    return "\n".join(f"- {_problem(problem, volume_unit)}" for problem in problems)


def _problem(problem: Problem, volume_unit: str) -> str:
    key = "water_l" if problem.key == "water_l" else "carb_g"
    values = {
        "what": tr(FIELD_WORDS[key]),
        "value": figures.limit(problem.limit, problem.value, volume_unit),
        "limit": tr(LIMIT_WORDS[problem.limit]),
        "bound": figures.limit(problem.limit, problem.bound, volume_unit),
        "when": (
            tr("load total") if problem.days_out is None else figures.days_out(problem.days_out)
        ),
    }
    if problem.value < problem.bound:
        return tr("{when}: {what} {value}, under the {limit} of {bound}", **values)
    return tr("{when}: {what} {value}, over the {limit} of {bound}", **values)


# When all three are there


def all_set(name: str, when: str, *, self_coached: bool) -> str:
    """`when` is the first check-in, on the reader's clocks and the athlete's."""
    if self_coached:
        return tr("Event, plan and limits are set. Your first check-in is on {when}.", when=when)
    return tr(
        "Event, plan and limits are set. {name}'s first check-in is on {when}.",
        name=name,
        when=when,
    )


athlete_all_set = SentenceOnTwo(
    "{coach} has set your event, plan and limits. Your first check-in is on {when}. /week "
    "shows the plan."
)


def all_set_but_waiting(name: str, status: str) -> str:
    if status == "doctor-first":
        return tr(
            "Event, plan and limits are set. Check-ins begin once you have confirmed a "
            "doctor's clearance for {name}.",
            name=name,
        )
    if status == "paused":
        return tr(
            "Event, plan and limits are set. Check-ins begin once {name} is back with /resume.",
            name=name,
        )
    return tr("Event, plan and limits are set, but no morning is left in this week for a check-in.")
