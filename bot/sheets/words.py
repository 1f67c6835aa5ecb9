"""What a coach reads around plans as sheets."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence

from bot.plan.words import FIELDS
from bot.words import figures
from bot.words.languages import Sentence, SentenceAbout, mark, tr, trn, worded
from bot.words.names import FIELD_WORDS, LIMIT_WORDS, cited, field_word
from bot.words.phases import phase_words, too_many_load_days
from engine.values.limits import Problem
from engine.values.plan import Phase

Facts = Mapping[str, str | float]
MOST_LINES = 12  # of what is wrong: a sheet that went astray as a whole needs no eighty lines
_LONGEST_WORDS = 60


def heading(key: str) -> str:
    """The heading of a number of the day: "Carbs (g)"."""
    label, unit = FIELDS[key]
    return f"{tr(label)} ({unit})" if unit else tr(label)


def limit_heading(key: str) -> str:
    """ "Carb floor a day", as a limit stands in a sheet."""
    return figures.capital(figures.limit_label(key))


ask_format = Sentence(
    "Which file type? XLSX for spreadsheet programs, CSV for everything else. Change any "
    "numbers you like and send the file back here; I show you the differences before I "
    "change anything."
)


def format_button(form: str) -> str:
    return form.upper()


caption = SentenceAbout(
    "Your plan. Change what you like and send the file back here.",
    "{name}'s plan. Change what you like and send the file back here.",
)
caption_with_limits = SentenceAbout(
    "Your plan and limits. Change what you like and send the file back here.",
    "{name}'s plan and limits. Change what you like and send the file back here.",
)


# Files that are not read


def too_large(most_bytes: int) -> str:
    return tr(
        "That file is too large for a plan; I take up to {most} MB.",
        most=figures.plain(round(most_bytes / 1e6)),
    )


could_not_fetch = Sentence(
    "I could not get that file from Telegram. Nothing was changed. Please send it once more."
)
not_yours = Sentence("That is not the plan of an athlete of yours. Nothing was changed.")


REFUSED: Mapping[str, str] = {
    "too-large": mark("That file is too large for a plan."),
    "unfolds": mark("That file unpacks to far more than a plan needs, so I did not open it."),
    "old-or-locked": mark(
        "That is an older kind of spreadsheet, or one locked with a password. Please save it as "
        "XLSX without a password, or as CSV."
    ),
    "other-program": mark(
        "That is not a file I can read. Please save it as XLSX or CSV and send that."
    ),
    "unreadable": mark(
        "That spreadsheet is damaged; I could not read it. Please save and send it again."
    ),
    "not-a-sheet": mark("That is not a spreadsheet. I take plans as XLSX or CSV."),
    "not-our-sheet": mark(
        'I can\'t find a plan in that file: I look for a row "Version" near the top and a row '
        'that begins with "Days out". Tap "Plan as a sheet" on an athlete\'s card to get '
        "one to fill in."
    ),
}


def refused(why: str) -> str:
    return f"{tr(REFUSED[why])} {nothing_changed()}"


moved_on = SentenceAbout(
    "Your plan or limits have changed since this sheet was made, so I changed nothing. "
    "Please get a new sheet and put your changes into it.",
    "{name}'s plan or limits have changed since this sheet was made, so I changed nothing. "
    "Please get a new sheet and put your changes into it.",
)


# What is wrong with single cells


def _given(facts: Facts) -> str:
    given = str(facts.get("given", ""))
    given = given if len(given) <= _LONGEST_WORDS else given[:_LONGEST_WORDS] + "…"
    return f'"{given}"'


nothing_changed = Sentence("Nothing was changed.")


def _range(facts: Facts) -> str:
    """What was given, and what it has to be."""
    if "low" not in facts or "high" not in facts:
        return tr("{given}: that can't be right", given=_given(facts))
    low, high = figures.plain(float(facts["low"])), figures.plain(float(facts["high"]))
    if facts.get("unit"):
        high = f"{high} {facts['unit']}"
    return tr(
        "{given}: it has to be between {low} and {high}", given=_given(facts), low=low, high=high
    )


def _out(facts: Facts) -> str:
    return figures.days_out(int(facts["days_out"]))


def _about_given(message: str) -> Callable[[Facts], str]:
    """A sentence about what stands in the cell."""
    return lambda facts: tr(message, given=_given(facts))


EMPTY = mark("empty, but a number is needed there")


WRONG: Mapping[str, Sentence | Callable[[Facts], str]] = {
    "formula": _about_given(
        mark("a formula ({given}) without a stored result; put the number there")
    ),
    "date": _about_given(mark("a date ({given}); your program may have turned a number into it")),
    "truth": _about_given(mark("{given} is not a number")),
    "error": _about_given(mark("an error ({given})")),
    "empty": Sentence(EMPTY),
    "merged": lambda f: tr("part of merged cells ({area}); split them", area=f["area"]),
    "heading-twice": lambda f: tr(
        'the heading "{heading}" is there twice', heading=heading(str(f["heading"]))
    ),
    "no-heading": lambda f: tr(
        'the heading "{heading}" is missing from this row', heading=heading(str(f["heading"]))
    ),
    "day-twice": lambda f: tr("{when} is there twice", when=_out(f)),
    "no-such-day": _about_given(mark("{given} is not a day of the plan; days out go from 7 to 0")),
    "no-such-phase": lambda f: tr(
        "{given} is nothing that this day can be for: write {phases}, or on day 0 {event}",
        given=_given(f),
        phases=", ".join(phase_words(phase) for phase in Phase if phase is not Phase.EVENT),
        event=phase_words(Phase.EVENT),
    ),
    "many-load-days": lambda f: too_many_load_days(int(f["most"])),
    "day-missing": lambda f: tr("the row for {when} is missing", when=_out(f)),
    "day-new": lambda f: tr("{when} is not a day of this plan", when=_out(f)),
    "day-over": lambda f: tr(
        "{label} of a day that is over stays as it was ({was})",
        label=field_word(str(f["label"])),
        was=f["was"],
    ),
    "training-too-long": lambda f: tr("more than {most} characters", most=f["most"]),
    "no-such-limit": _about_given(mark("{given} is not a limit I know")),
    "limit-twice": Sentence("this limit is there twice"),
    "no-limit": lambda f: tr(
        'the limit "{label}" is missing from this list', label=limit_heading(str(f["limit"]))
    ),
    "limits-not-set": Sentence("no limits are set yet; set them in the chat first"),
    "guard-rail": lambda f: tr(
        "{value} is past the safety bound for this body mass, {bound} ({citation})",
        value=f["value"],
        bound=f["bound"],
        citation=cited(str(f["citation"])),
    ),
    "floor-over-ceiling": Sentence("a floor over its ceiling"),
    "does-not-fit": lambda f: str(f["problem"]),
    "empty-answer": Sentence(EMPTY),
    "not-a-number": _about_given(mark("I can't read a number in {given}")),
    "not-a-whole-number": _about_given(mark("{given} is not a whole number")),
    "too-many-numbers": _about_given(mark("more than one number in {given}")),
    "negative": _about_given(mark("{given} is below zero")),
    "ambiguous-separator": _about_given(
        mark("the point or comma in {given} could mark thousands or decimals")
    ),
    "unknown-unit": _about_given(mark("the unit in {given} is not one for this column")),
    "out-of-range": _range,
    "implausible": _range,
    "too-long": Sentence("too long for a number"),
}


def wrong_cell(why: str, facts: Facts) -> str:
    if why not in WRONG:
        return tr("I can't read {given} as a number", given=_given(facts))
    return worded(WRONG[why], facts)


def problems(lines: Sequence[tuple[str, str]]) -> str:
    """`lines`: cell ("" for the sheet as a whole) and what is wrong with it."""
    return tr(
        "I changed nothing, because I can't use all of the sheet:\n{lines}\n\nPlease correct "
        "that and send the file again.",
        lines=listed(lines),
    )


def listed(lines: Sequence[tuple[str, str]]) -> str:
    """What is wrong, where a line says so: as many as can be read."""
    told = [f"- {where}: {what}" if where else f"- {what}" for where, what in lines[:MOST_LINES]]
    if len(lines) > MOST_LINES:
        told.append(tr("- and {count} more", count=len(lines) - MOST_LINES))
    return "\n".join(told)


def problem(found: Problem) -> str:
    values = {
        "value": figures.limit(found.limit, found.value),
        "limit": tr(LIMIT_WORDS[found.limit]),
        "bound": figures.limit(found.limit, found.bound),
        "when": (tr("load total") if found.days_out is None else figures.days_out(found.days_out)),
    }
    if found.value < found.bound:
        return tr("{value} {when} is under the {limit} of {bound}", **values)
    return tr("{value} {when} is over the {limit} of {bound}", **values)


# The differences


nothing_differs = SentenceAbout(
    "That is your current plan; nothing in it is different.",
    "That is {name}'s current plan; nothing in it is different.",
)


def plan_change(days_out: int, key: str, was: str, becomes: str) -> str:
    label = tr(FIELD_WORDS[key])
    return f"{figures.days_out(days_out)}, {label}: {_short(was)} → {_short(becomes)}"


def limit_change(key: str, was: str, becomes: str) -> str:
    return f"{tr(LIMIT_WORDS[key])}: {was} → {becomes}"


def _short(words: str) -> str:
    return words if len(words) <= _LONGEST_WORDS else words[: _LONGEST_WORDS - 1] + "…"


def ask_to_take(
    name: str, lines: Sequence[str], hidden: Sequence[str], *, self_coached: bool
) -> str:
    head = (
        tr("What the sheet would change in your week:")
        if self_coached
        else tr("What the sheet would change in {name}'s week:", name=name)
    )
    parts = ["\n".join([head, *(f"- {line}" for line in lines)])]
    if hidden:
        cells = ", ".join(hidden[:MOST_LINES])
        parts.append(tr("Some cells that matter are hidden in the file ({cells}).", cells=cells))
    return "\n\n".join([*parts, tr("Use these changes?")])


take_button = Sentence("Use these changes")


def taken(count: int) -> str:
    return trn("Done: 1 change is now set.", "Done: {number} changes are now set.", count)
