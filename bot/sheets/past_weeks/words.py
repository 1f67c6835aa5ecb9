"""What is said of weeks that lie in the past and come in as a sheet."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date

from bot.sheets import words as sheet_words
from bot.words import figures
from bot.words.common import day_and_year, event_name, past_weeks_button
from bot.words.languages import Sentence, SentenceAbout, SentenceOn, mark, tr, trn, worded
from bot.words.names import word
from bot.words.phases import load_days as load_days_in_words
from engine.values.plan import LOAD_DAYS

Facts = Mapping[str, str | float]


def offer(name: str, *, self_coached: bool) -> str:
    who = (
        tr("Earlier peak weeks teach the forecast how your body answers.")
        if self_coached
        else tr("Earlier peak weeks teach the forecast how {name}'s body answers.", name=name)
    )
    return (
        who
        + " "
        + tr(
            "Fill in the sheet, one row a day, and send it back here as XLSX or CSV. I show you "
            "what I read before I keep anything, and you can take it back as a whole."
        )
    )


sheet_button = SentenceOn("Empty sheet ({format})", str.upper)
caption = SentenceAbout(
    "For your past weeks. Fill in what you know and send it back here.",
    "For {name}'s past weeks. Fill in what you know and send it back here.",
)


def hint_lines() -> tuple[str, ...]:
    """What stands beside the table of an empty sheet."""
    return (
        tr("One row a day, up to seven days before the event. Leave empty what you don't know."),
        tr(
            "Event day, event (show, shoot or trial) and look (flat, full or spilled over) are "
            "needed in one row of each week."
        ),
        tr("Carbs are needed for the days 3, 2 and 1 before the event: planned, set or eaten."),
        tr(
            "If the load was on other days, name each day's phase (depletion, usual, refeed, load, "
            "rest) and give the carbs from the first load day on."
        ),
        tr("Eaten and drunk: on the day itself. Weight and look answers: on that day's morning."),
        tr(
            "Other units: write them in the heading, such as {example}.",
            example=tr("Weight") + " (lb)",
        ),
    )


def line(
    kind: str, day: date, mornings: int, load: tuple[Sequence[int], float], look: str | None
) -> str:
    """One week in the dry run. `load`: on which days out, and how much of it (g)."""
    load_days, load_g = load
    said = tr(
        "{kind}, {day}: {mornings}, load {load}",
        kind=figures.capital(event_name(kind)),
        day=day_and_year(day),
        mornings=trn("{number} morning", "{number} mornings", mornings),
        load=figures.grams(load_g),
    )
    if tuple(load_days) != LOAD_DAYS:
        said = f"{said} ({load_days_in_words(load_days)})"
    verdict = word(look) if look else tr("no verdict on the look")
    return f"{said}, {verdict}"


def dry_run(name: str, lines: Sequence[str], used: int, *, self_coached: bool) -> str:
    head = tr("What I read for you:") if self_coached else tr("What I read for {name}:", name=name)
    parts = ["\n".join([head, *(f"- {one}" for one in lines)])]
    if len(lines) > used:
        parts.append(tr("All are kept; the forecast learns from the latest {count}.", count=used))
    return "\n\n".join(parts)


def ask_to_import(said: str) -> str:
    question = tr("Import these weeks?")
    return f"{said}\n\n{question}"


import_button = Sentence("Import them")
leave_button = Sentence("Don't import")

left = Sentence("OK, nothing was imported.")
moved_on = Sentence(
    "Something has changed since I showed you this, so I imported nothing. Please send the "
    "sheet once more."
)


def imported(count: int) -> str:
    said = trn("Done: {number} past week is in.", "Done: {number} past weeks are in.", count)
    learns = tr(
        "The next check-in's forecast learns from them. To take them back, see {button}.",
        button=past_weeks_button(),
    )
    return f"{said} {learns}"


not_onboarded = SentenceOn(
    "{name} has not answered the first questions yet; past weeks can come in after that."
)


# What was imported, and taking it back


def batch(day: date, by: str, events: Sequence[date]) -> str:
    weeks = trn("{number} week", "{number} weeks", len(events))
    return tr(
        "Imported on {day} by {by}: {weeks} ({events})",
        day=day_and_year(day),
        by=by,
        weeks=weeks,
        events=", ".join(day_and_year(one) for one in events),
    )


def back_button(day: date, count: int) -> str:
    weeks = trn("{number} week", "{number} weeks", count)
    return tr("Take back: {weeks} of {day}", weeks=weeks, day=figures.short_day(day))


back_sure = SentenceOn(
    "{said}.\n\nTake these weeks back? They go with all that came with them. Decisions made "
    "since stay as they are."
)


back_yes_button = Sentence("Take them back")

kept = Sentence("OK, they stay.")
gone_already = Sentence("These weeks are out already.")


def taken_back(count: int) -> str:
    return trn("Done: {number} week is out again.", "Done: {number} weeks are out again.", count)


# What is wrong with single cells


def _given(message: str) -> Callable[[Facts], str]:
    return lambda facts: tr(message, given=f'"{facts.get("given", "")}"')


WRONG: Mapping[str, Sentence | Callable[[Facts], str]] = {
    "past-no-athlete": Sentence(
        "I can't see whose weeks these are. Please use the sheet from the "
        "athlete's card"
    ),
    "past-no-headings": Sentence('I can\'t find the row of headings with "Date" and "Event day"'),
    "past-empty": Sentence("there is no day in the sheet yet"),
    "past-too-many": lambda f: tr(
        "more than {most} weeks; please send several sheets", most=f["most"]
    ),
    "past-heading-twice": _given(mark("the heading {given} is there twice")),
    "past-date": _given(mark("{given} is not a date I can read; 2026-03-14 always works")),
    "past-either-date": Sentence(
            "the dates could be day first or month first, and both make sense; please write "
            "them like 2026-03-14"
        ),
    "past-date-twice": lambda f: tr("this day is in row {row} already", row=f["row"]),
    "past-not-in-week": lambda f: (
        tr("this day is after its event")
        if float(f["days"]) < 0
        else tr("this day is {days} days before its event; 7 at most", days=f["days"])
    ),
    "past-kind": _given(mark("{given}: I know show, shoot and trial")),
    "past-look": _given(mark("{given}: I know flat, full and spilled over")),
    "past-gut": _given(mark("{given}: I know fine, heavy and bad")),
    "past-phase": _given(mark("{given}: I know depletion, usual, refeed, load, rest and event day")),
    "past-long-load": lambda f: tr("more than {most} load days in one week", most=f["most"]),
    "past-two-looks": Sentence("two different looks in one week"),
    "past-two-kinds": Sentence("two different kinds of event in one week"),
    "past-no-kind": Sentence("was it a show, a shoot or a trial?"),
    "past-no-load": lambda f: tr(
        "no carbs for {when}; the load days need them", when=figures.days_out(int(f["days_out"]))
    ),
    "past-no-mornings": Sentence("no weight and no fullness in this whole week"),
    "past-not-over": Sentence("this event is not over yet"),
    "past-overlaps": lambda f: tr(
        "this week overlaps one that is here already ({day})", day=str(f["day"])
    ),
    "past-answered": Sentence("there is a check-in of this day already"),
    "past-far-weight": lambda f: tr(
        "{given} is far from the {now} given at the start; is the unit right?",
        given=f["given"], now=f["now"],
    ),
}  # fmt: skip


def wrong_cell(why: str, facts: Facts) -> str:
    return worded(WRONG[why], facts) if why in WRONG else sheet_words.wrong_cell(why, facts)


# `lines`: cell ("" for the sheet as a whole) and what is wrong with it.
problems = SentenceOn(
    "I imported nothing, because I can't use all of the sheet:\n{lines}\n\nPlease correct "
    "that and send the file again.",
    sheet_words.listed,
)


# In the history
