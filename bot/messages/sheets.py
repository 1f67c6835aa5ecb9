"""What a coach reads around plans as sheets."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from bot.messages import coach_figures as figures
from bot.messages.coach_plan import FIELDS, limit_button
from engine.limits import Problem

Facts = Mapping[str, str | float]
MOST_LINES = 12  # of what is wrong: a sheet that went astray as a whole needs no eighty lines
_LONGEST_WORDS = 60


def sheet_button() -> str:
    return "Plan as a sheet"


def ask_format() -> str:
    return (
        "For which program? Change any figures you like and send the file back here; I show you "
        "the differences before anything is taken over. CSV opens anywhere, XLSX keeps its columns "
        "in every country's spreadsheet program."
    )


def format_button(form: str) -> str:
    return form.upper()


def caption(name: str, *, with_limits: bool, own: bool) -> str:
    whose = "Your" if own else f"{name}'s"
    what = "plan and limits" if with_limits else "plan"
    return f"{whose} {what}. Change what you like and send the file back here."


def plan_is_gone() -> str:
    return "There is no plan to put into a sheet yet."


def event_words(line: str, day: str) -> str:
    return f"{line}, {day}"


# Files that are not read


def too_large(most_bytes: int) -> str:
    return f"That file is larger than a plan can be; {most_bytes / 1e6:.0f} MB is the most I take."


def could_not_fetch() -> str:
    return "I could not get that file from Telegram. Nothing was changed. Please send it once more."


REFUSED: Mapping[str, str] = {
    "too-large": "That file is larger than a plan can be.",
    "unfolds": "That file unfolds to more than a plan can hold, so I did not open it.",
    "old-or-locked": (
        "That is an older kind of spreadsheet, or one locked with a password. Please save it as "
        "XLSX without a password, or as CSV."
    ),
    "other-program": (
        "That is not a file I can read. Please save it as XLSX or CSV and send that."
    ),
    "unreadable": "That spreadsheet is damaged; I could not read it. Please save and send it again.",
    "not-a-sheet": "That is no spreadsheet. I take plans as XLSX or CSV.",
    "not-our-sheet": (
        'That is no plan of mine: I look for a row "Version" near the top and a row that begins with '
        '"Days out". "Plan as a sheet" on an athlete\'s card gives you one to fill in.'
    ),
}


def refused(why: str) -> str:
    return f"{REFUSED[why]} Nothing was changed."


def not_yours() -> str:
    return "That is not the plan of an athlete of yours. Nothing was changed."


def moved_on(name: str, *, own: bool) -> str:
    whose = "your" if own else f"{name}'s"
    return (
        f"That sheet was made from an earlier version: {whose} plan or limits have changed since. "
        "Nothing was taken over. Get a fresh sheet and put your changes into it."
    )


# What is wrong with single cells


def _given(facts: Facts) -> str:
    given = str(facts.get("given", ""))
    given = given if len(given) <= _LONGEST_WORDS else given[:_LONGEST_WORDS] + "…"
    return f'"{given}"'


def _range(facts: Facts) -> str:
    unit = f" {facts['unit']}" if facts.get("unit") else ""
    if "low" in facts and "high" in facts:
        return f"it has to be between {facts['low']:g} and {facts['high']:g}{unit}"
    return "that can't be right"


WRONG: Mapping[str, Callable[[Facts], str]] = {
    "formula": lambda f: (
        f"a formula ({_given(f)}) whose result is not stored; put the figure there"
    ),
    "date": lambda f: f"a date ({_given(f)}), which your program may have made of a figure",
    "truth": lambda f: f"{_given(f)} is no figure",
    "error": lambda f: f"an error ({_given(f)})",
    "empty": lambda f: "empty, and a figure is needed there",
    "merged": lambda f: f"part of merged cells ({f['area']}); split them",
    "heading-twice": lambda f: f'the heading "{f["heading"]}" is there twice',
    "no-heading": lambda f: f'the heading "{f["heading"]}" is missing from this row',
    "day-twice": lambda f: f"{figures.days_out(int(f['days_out']))} is there twice",
    "no-such-day": lambda f: f"{_given(f)} is no day of the plan; days out go from 7 to 0",
    "day-missing": lambda f: f"the row for {figures.days_out(int(f['days_out']))} is missing",
    "day-new": lambda f: f"{figures.days_out(int(f['days_out']))} is no day of this plan",
    "day-over": lambda f: f"{f['label']} of a day that is over stays as it was ({f['was']})",
    "training-too-long": lambda f: f"more than {f['most']} characters",
    "no-such-limit": lambda f: f"{_given(f)} is no limit that I know",
    "limit-twice": lambda f: "this limit is there twice",
    "no-limit": lambda f: f'the limit "{f["label"]}" is missing from this list',
    "limits-not-set": lambda f: "no limits are set yet; set them in the chat first",
    "guard-rail": lambda f: (
        f"{f['value']} is past what can be set for this body mass, {f['bound']} ({f['citation']})"
    ),
    "floor-over-ceiling": lambda f: "a floor over its ceiling",
    "does-not-fit": lambda f: str(f["problem"]),
    "empty-answer": lambda f: "empty, and a figure is needed there",
    "not-a-number": lambda f: f"no number can be read in {_given(f)}",
    "not-a-whole-number": lambda f: f"{_given(f)} is no whole number",
    "too-many-numbers": lambda f: f"more than one number in {_given(f)}",
    "negative": lambda f: f"{_given(f)} is below zero",
    "ambiguous-separator": lambda f: (
        f"the point or comma in {_given(f)} could mark thousands or decimals"
    ),
    "unknown-unit": lambda f: f"the unit in {_given(f)} is not one for this column",
    "out-of-range": lambda f: f"{_given(f)}: {_range(f)}",
    "implausible": lambda f: f"{_given(f)}: {_range(f)}",
    "too-long": lambda f: "too long for a figure",
}


def wrong_cell(why: str, facts: Facts) -> str:
    if why not in WRONG:
        return f"{_given(facts)} cannot be read as a figure"
    return WRONG[why](facts)


def problems(lines: Sequence[tuple[str, str]]) -> str:
    """`lines`: cell ("" for the sheet as a whole) and what is wrong with it."""
    told = [f"- {cell}: {what}" if cell else f"- {what}" for cell, what in lines[:MOST_LINES]]
    if len(lines) > MOST_LINES:
        told.append(f"- and {len(lines) - MOST_LINES} more")
    return (
        "Nothing was taken over, because not all of the sheet can be:\n" + "\n".join(told)
        + "\n\nPut that right and send the file again."
    )  # fmt: skip


def problem(found: Problem) -> str:
    side = "under" if found.value < found.bound else "over"
    where = "over the load" if found.days_out is None else figures.days_out(found.days_out)
    value = figures.limit(found.limit, found.value)
    bound = figures.limit(found.limit, found.bound)
    return f"{value} {where} is {side} the {limit_button(found.limit).lower()} of {bound}"


# The differences


def nothing_differs(name: str, *, own: bool) -> str:
    whose = "your" if own else f"{name}'s"
    return f"That is {whose} plan as it stands; nothing in it differs."


def plan_change(days_out: int, key: str, was: str, becomes: str) -> str:
    label = FIELDS[key][0].lower()
    return f"{figures.days_out(days_out)}, {label}: {_short(was)} → {_short(becomes)}"


def limit_change(key: str, was: str, becomes: str) -> str:
    return f"{limit_button(key).lower()}: {was} → {becomes}"


def _short(words: str) -> str:
    return words if len(words) <= _LONGEST_WORDS else words[: _LONGEST_WORDS - 1] + "…"


def ask_to_take(name: str, lines: Sequence[str], hidden: Sequence[str], *, own: bool) -> str:
    whose = "your week" if own else f"{name}'s week"
    note = (
        f"\n\nSome cells that count are hidden in the file ({', '.join(hidden[:MOST_LINES])})."
        if hidden
        else ""
    )
    listed = "\n".join(f"- {line}" for line in lines)
    return f"What the sheet would change in {whose}:\n{listed}{note}\n\nTake it over?"


def take_button() -> str:
    return "Take it over"


def leave_button() -> str:
    return "Leave it as it is"


def taken(count: int, *, own: bool) -> str:
    what = "1 change is" if count == 1 else f"{count} changes are"
    return f"Taken over: {what} in force."


def left() -> str:
    return "Left as it was. Nothing was changed."
