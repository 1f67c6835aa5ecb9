"""The calendar file: what stands in it, and what is said beside it."""

from __future__ import annotations

from collections.abc import Sequence

from bot.decision.words_target import out, target_lines
from bot.event.stage import words
from bot.words import figures, phases
from bot.words.common import event_name
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, tr, trn
from bot.words.phases import training_words
from engine.stage_day.stage_day import Entry
from engine.values.plan import DayTarget, PeakPlan

menu = Sentence("The week and the event day as a calendar file")
journey_meal_summary = Sentence("Meal on the way")
calendar_name = SentenceOn("{name}'s peak week")

#: In a coach's calendar it has to be clear whose it is.
for_coach = SentenceOnTwo("{name}: {what}")


def day_summary(target: DayTarget) -> str:
    return tr(
        "{when}, {carbs} g carbs", when=out(target.days_out), carbs=figures.number(target.carb_g)
    )


def day_details(
    target: DayTarget, plan: PeakPlan, planned_carb_g: float, volume_unit: str,
    *, resting: str | None = None,
) -> str:  # fmt: skip
    """`plan` says what the day is for; `resting`: why there is no training, where a warning is open."""
    targets = target_lines(target, planned_carb_g, volume_unit, resting=resting)
    asked = tr("As of when this file was made. A check-in can change it: /today has the latest.")
    phase = figures.capital(phases.of_day(plan, target.days_out))
    return "\n".join(part for part in (phase, targets, asked) if part)


session_summary = SentenceOn("Training: {training}", training_words)


def session_details(target: DayTarget) -> str:
    """Cardio and steps of the day, as far as they are planned."""
    lines = []
    if target.cardio_min is not None:
        lines.append(
            tr("Cardio {minutes} min", minutes=figures.number(target.cardio_min))
            if target.cardio_min
            else tr("No cardio")
        )
    if target.steps is not None:
        lines.append(
            trn("{steps} step", "{steps} steps", target.steps, steps=figures.number(target.steps))
        )
    return "\n".join(lines)


meal_summary = SentenceOnTwo("Meal {number} of {meals}")


def meal_details(portions: Sequence[str], carb_g: float) -> str:
    """`carb_g`: the whole day's."""
    day = tr(
        "{carbs} g carbs over the whole day; /food has the portions.", carbs=figures.number(carb_g)
    )
    return "\n".join([*portions, day])


def stage_summary(entry: Entry, classes: int) -> str:
    return figures.capital(words.line(entry, classes))


# In a coach's file


name_of_all = Sentence("Peak weeks of your athletes")
week_begins = Sentence("peak week begins")
load_begins = Sentence("load begins")
on_the_way = Sentence("on the way to the event")


def to_set_by(*, plan: bool) -> str:
    if plan:
        return tr("The limits have to be set by then.")
    return tr("Plan and limits have to be set by then.")


def event_day(kind: str) -> str:
    return event_name(kind)


# Beside the file


def caption(*, entries: int) -> str:
    who_sees = tr(
        "It has targets and times, but no weights and no answers. Anybody who sees that "
        "calendar sees them."
    )
    return _caption(tr("Your week and event day as a calendar file."), entries, who_sees)


def caption_of_all(*, athletes: int, entries: int) -> str:
    lead = trn(
        "Event, stage times and deadlines of 1 athlete in one calendar file.",
        "Events, stage times and deadlines of {number} athletes in one calendar file.",
        athletes,
    )
    who_sees = tr(
        "It has names, days and times, but no targets, weights or answers. Anybody who sees that "
        "calendar sees them."
    )
    return _caption(lead, entries, who_sees)


def _caption(lead: str, entries: int, who_sees: str) -> str:
    count = trn("It has {number} entry.", "It has {number} entries.", entries)
    how = tr(
        "Open it and add everything, best to a calendar of its own. Times are local times of "
        "each place. If the week changes, I send a new file."
    )
    return f"{lead} {count} {how}\n\n{who_sees}"


def caption_anew(name: str, *, own: bool, changed: int, cancelled: int) -> str:
    """A file in the place of an earlier one."""
    parts = [
        tr("Your week has changed since your last calendar file.")
        if own
        else tr("{name}'s week has changed since your last calendar file.", name=name)
    ]
    if changed:
        parts.append(
            trn(
                "{number} entry is new or changed.", "{number} entries are new or changed.", changed
            )
        )
    if cancelled:
        parts.append(trn("{number} was removed.", "{number} were removed.", cancelled))
    parts.append(
        tr(
            "Open this one and add everything: it replaces the last one. If your calendar then "
            "shows anything twice, empty that calendar and open this file again."
        )
    )
    return " ".join(parts)


nothing_yet = Sentence(
    "There is nothing to put into a calendar yet: event and plan have to be set first."
)
not_here = Sentence("That calendar is not here.")
no_event_yet = SentenceOn(
    "There is nothing to put into a calendar for {name} yet: set the event first."
)
