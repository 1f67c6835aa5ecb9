"""What is read while athletes are set up from a template or a sheet."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date, datetime, time
from typing import Any

from bot.event.words import short
from bot.plan.flow_limits import limit_moves
from bot.sheets import words as sheet_words
from bot.sheets.words import problem as misfit
from bot.words import figures
from bot.words.common import KINDS, day_and_year
from bot.words.languages import Sentence, SentenceBy, SentenceCounted, SentenceOn, tr, trn, worded
from bot.words.names import LIMIT_WORDS, cited

Facts = Mapping[str, Any]
MOST_LINES = 25

menu = Sentence("Set up athletes, one by one or by a sheet")
caption = Sentence(
    "Your athletes, a row for each event. Fill in what you want and send the file back: I show "
    "you what would happen to each before anything changes."
)


def start(missing: Sequence[tuple[str, str]], known: int) -> str:
    """`missing`: who is not set up yet, and what is not there; those who lack the same in a line."""
    lacking: dict[str, list[str]] = {}
    for name, what in missing:
        lacking.setdefault(what, []).append(name)
    head = (
        tr(
            "Not set up yet:\n{lines}",
            lines="\n".join(f"- {', '.join(names)}: {what}" for what, names in lacking.items()),
        )
        if missing
        else trn("Your athlete is set up.", "All {number} of your athletes are set up.", known)
    )
    return "\n\n".join(
        [
            head,
            tr(
                "Tap a name to set somebody up from a template, or take the sheet: a row for each "
                "athlete, all of them at once."
            ),
        ]
    )


def lacks(*, event: bool, plan: bool, limits: bool, measures: bool) -> str:
    if measures:
        return tr("first questions still open")
    lacking = [
        name
        for is_lacking, name in ((event, tr("event")), (plan, tr("plan")), (limits, tr("limits")))
        if is_lacking
    ]
    return tr("no {what} yet", what=", ".join(lacking))


sheet_button = SentenceOn("Sheet for all ({form})", str.upper)


# One athlete


def ask_template(name: str, *, self_coached: bool, none: bool) -> str:
    parts = [
        tr("Which plan for you?") if self_coached else tr("Which plan for {name}?", name=name),
        tr(
            "A template brings its limits, the time of the check-in and how the stage day is laid "
            "out; a draft is made from the published load."
        ),
    ]
    if none:
        parts.append(tr('"Save as template" under any plan makes a template of your own.'))
    return " ".join(parts)


draft_button = SentenceOn("Draft: {shape}")
ask_when = SentenceOn(
    "When is it? For example: show 9 May 14:30. The stage time can be left out, and a city "
    "can follow after a comma: trial 18 April, Madrid. Without one it is {zone}."
)
when_unread = Sentence("I can't read that. Send it like this: show 9 May 14:30, or only 9 May.")
use_button = Sentence("Set it up")
leave_button = Sentence("Change nothing")
ask_use = Sentence("Set it up like this?")
place_unknown = SentenceOn("I know no place called {place}. Send a larger city nearby.")


def preview(name: str, lines: Sequence[str], table: str, review: str, *, self_coached: bool) -> str:
    parts = [
        tr("This is how you would be set up:")
        if self_coached
        else tr("This is how {name} would be set up:", name=name),
        "\n".join(f"- {line}" for line in lines),
        table,
        review,
    ]
    return "\n\n".join(part for part in parts if part)


room_button = SentenceOn("Set it up, with {moves}")


def room_for(tight: int, count: int) -> str:
    """The button of a sheet where the limits of so many have to move."""
    use = use_all_button(count)
    return trn("Move that limit: {use}", "Move those limits: {use}", tight, use=use)


ask_use_all = SentenceCounted("Set this athlete up?", "Set these {number} up, all at once?")

use_all_button = SentenceCounted("Set it up", "Set up all {number}")


def ask_reason(names: Sequence[str], warnings: str) -> str:
    return tr(
        "Before {names}:\n\n{warnings}\n\nTo go on, send the reason in a few words; I save it with "
        "the plan of each.",
        names=figures.all_of(names), warnings=warnings,
    )  # fmt: skip


def reason_noted(names: Sequence[str], reason: str) -> str:
    return tr("Reason for {names}: {reason}", names=figures.all_of(names), reason=reason)


# What would become of one athlete


def event_lines(said: str, *, moved_from: tuple[str, date] | None, new: bool, zone: str) -> str:
    """`said`: the event in short. `zone`: the event's, "" where it is the athlete's own."""
    if zone:
        said = tr("{event}, on the clocks of {zone}", event=said, zone=zone)
    if moved_from is not None:
        return tr("{event} (now {earlier})", event=said, earlier=short(*moved_from))
    return tr("new: {event}", event=said) if new else said


def plan_line(name: str, load: float | None) -> str:
    if load is None:
        return tr("plan {name}", name=name)
    return tr("plan {name}, load {load} g/kg", name=name, load=figures.number(load, 1))


plan_stays = Sentence("plan stays")
plan_missing = Sentence("no plan yet")
no_weigh_in_line = Sentence("no weigh-in")
meals_line = Sentence("meals of the template")
stays_line = Sentence("nothing changes")


def limits_line(are: str, moves: str) -> str:
    said = {
        "none": tr("no limits yet"),
        "kept": tr("limits stay"),
        "template": tr("limits of the template"),
        "suggested": tr("limits as suggested"),
        "given": tr("limits as written"),
    }[are]
    return f"{said} ({moves})" if moves else said


def stage_line(stage: datetime, zone: str, look: float | None) -> str:
    said = tr("stage {at}", at=figures.clock_in(stage, zone))
    if look is None:
        return said
    if not look:
        return tr("{stage}, no look check", stage=said)
    return tr("{stage}, look check {minutes} min before", stage=said, minutes=figures.plain(look))


asked_line = SentenceOn("check-in at {at}", "{:%H:%M}".format)

warned_line = SentenceCounted("1 warning", "{number} warnings")

noticed_line = SentenceCounted("1 caution (see Review)", "{number} cautions (see Review)")

# Why it cannot be

TROUBLES: Mapping[str, Sentence | Callable[[Facts], str]] = {
    "not-yours": Sentence("no athlete of yours"),
    "no-measures": lambda f: tr("{name} has not answered the first questions yet", name=f["name"]),
    "event-gone": Sentence("that event is no longer ahead"),
    "day-past": lambda f: tr(
        "{day} is already past", day=day_and_year(date.fromisoformat(f["day"]))
    ),
    "day-taken": Sentence("another event is on that day already"),
    "template-gone": Sentence("that template is no longer there"),
    "load-out": lambda f: tr(
        "a load day of this shape is {low} to {high} g/kg on average",
        low=figures.plain(f["low"]), high=figures.plain(f["high"]),
    ),
    "no-bridge": Sentence("a bridge needs another event in the two weeks before"),
    "no-such-depletion": Sentence("this shape has no such depletion"),
    "limits-without-plan": Sentence("limits need a plan"),
    "guard-rail": lambda f: tr(
        "{limit} {value} is past the safety bound, {bound} ({citation})",
        limit=tr(LIMIT_WORDS[f["limit"]]),
        value=figures.limit(f["limit"], f["value"]),
        bound=figures.limit(f["limit"], f["bound"]),
        citation=cited(f["citation"]),
    ),
    "floor-over-ceiling": Sentence("a floor over its ceiling"),
    "stage-past": Sentence("that time is already past"),
    "does-not-fit": lambda f: _misfit(f),  # noqa: PLW0108 - it stands further down
}  # fmt: skip


def _misfit(facts: Facts) -> str:
    said, moved = misfit(facts["problem"]), facts["moved"]
    if moved is None:
        return said
    moves = limit_moves([(moved.key, moved.was, moved.becomes)], "l")
    return tr("{problem}; it would fit with {moves}", problem=said, moves=moves)


def trouble(why: str, facts: Facts) -> str:
    return worded(TROUBLES[why], facts)


def problems(lines: Sequence[tuple[str, str, str]]) -> str:
    """`lines`: cell, name and what is wrong, the first two "" where there is none."""
    return sheet_words.problems(
        [(", ".join(part for part in (cell, name) if part), what) for cell, name, what in lines]
    )


def too_tight(lines: Sequence[tuple[str, str, str]]) -> str:
    """`lines`: cell, name and which limit a plan leaves."""
    told = [f"- {cell}, {name}: {what}" for cell, name, what in lines[:MOST_LINES]]
    if len(lines) > MOST_LINES:
        told.append(tr("- and {count} more", count=len(lines) - MOST_LINES))
    return tr(
        "Not every plan fits the limits in the sheet:\n{lines}\n\nI can move them that far. Or "
        "correct the sheet and send it again.",
        lines="\n".join(told),
    )


def cannot(name: str, lines: Sequence[str]) -> str:
    return tr(
        "{name} can't be set up like this:\n{lines}\n\nNothing was changed.",
        name=name, lines="\n".join(f"- {line}" for line in lines),
    )  # fmt: skip


# The dry run


dry_run = SentenceCounted(
    "What the sheet would do (nothing is changed yet), 1 row:",
    "What the sheet would do (nothing is changed yet), {number} rows:",
)


def row_line(name: str, parts: Sequence[str]) -> str:
    return f"{name}: {'; '.join(parts)}"


def untouched(names: Sequence[str]) -> str:
    return tr("Left as they are: {names}.", names=figures.all_of(names)) if names else ""


def nothing_to_do(names: Sequence[str]) -> str:
    said = tr("Nothing in that sheet differs from what is set.")
    return "\n".join(part for part in (said, untouched(names)) if part)


changed_meanwhile = SentenceOn(
    "Since I showed you this, something has changed for {names}. Nothing was set up. This is "
    "how it would be now:",
    figures.all_of,
)


def done(count: int, names: Sequence[str]) -> str:
    said = trn("Done: 1 athlete is set up.", "Done: {number} athletes are set up.", count)
    return f"{said} {figures.all_of(names)}." if names else said


def done_one(name: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("Done: you are set up.")
    return tr("Done: {name} is set up.", name=figures.capital(name))


# The athlete


def event_set(coach: str, line: str, class_name: str, *, new: bool, moves: bool) -> str:
    event = f"{line} ({class_name})" if class_name else line
    if moves:
        return tr("{coach} has moved your event: {event}.", coach=coach, event=event)
    if new:
        return tr("{coach} has set an event for you: {event}.", coach=coach, event=event)
    return tr("{coach} has changed your plan for: {event}.", coach=coach, event=event)


def athlete_told(head: str, on_stage: str, *, planned: bool, asked_at: time | None) -> str:
    """`on_stage`: the clock time, "" where that is not known."""
    parts = [head]
    if on_stage:
        parts.append(tr("On stage at {at}. /stage shows the day.", at=on_stage))
    if planned:
        parts.append(tr("Plan and limits are set. /week shows the plan."))
    if asked_at is not None:
        parts.append(
            tr("I ask you at {at} in the morning; /settings changes that.", at=f"{asked_at:%H:%M}")
        )
    return " ".join(parts)


kind_short = SentenceBy(KINDS)
