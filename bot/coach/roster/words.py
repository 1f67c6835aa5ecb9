"""The roster as a coach reads it: a line an athlete, who needs the coach first."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.alerts.words import LEVEL_WORDS
from bot.words import figures
from bot.words.common import KINDS
from bot.words.languages import Sentence, SentenceBy, SentenceCounted, SentenceOn, mark, tr, trn
from bot.words.names import flag_name, symptom_names, word
from engine.safety import Level

LONGEST_SAID = 60  # characters of what was written; the alert has it whole
LONGEST_WORDS = 80  # characters of what an athlete wrote; the chat has it whole
LONGEST_NAME = 24  # characters of a name in a line; the card has it whole


def head(shown: str, count: int, of_all: int, page: int, pages: int) -> str:
    """`shown` is one of the filters but the first; `count` athletes of `of_all` are in it."""
    if shown in FILTER_WORDS:
        text = trn(
            "Roster: {filter}, {count} of 1 athlete",
            "Roster: {filter}, {count} of {number} athletes",
            of_all,
            filter=tr(FILTER_WORDS[shown]),
            count=count,
        )
    else:
        text = how_many(of_all)
    return text + which_page(page, pages)


how_many = SentenceCounted("Roster: 1 athlete", "Roster: {number} athletes")


def which_page(page: int, pages: int) -> str:
    """After how many there are; nothing where there is one page."""
    return ", " + tr("page {page} of {pages}", page=page + 1, pages=pages) if pages > 1 else ""


as_of = SentenceOn("As of {clock}. I keep this up to date.")

FILTERS = {
    "": mark("Needs me"),
    "all": mark("All"),
    "load": mark("Loading"),
    "week": mark("This week"),
}


#: The same inside a line.
FILTER_WORDS = {"load": mark("loading"), "week": mark("this week")}


NOBODY_HERE = {
    "load": mark("Nobody is loading today."),
    "week": mark("Nobody has a show, shoot or trial in the next seven days."),
}


def filter_button(shown: str, count: int, *, chosen: bool) -> str:
    return f"{'✓ ' if chosen else ''}{tr(FILTERS[shown])} {count}"


def nobody_here(shown: str) -> str:
    return tr(NOBODY_HERE[shown]) if shown in NOBODY_HERE else tr("Nobody.")


def line(start: str, morning: str | None, decided: str | None, state: str, wrote: str = "") -> str:
    """One athlete (`start`, as `who` says it) in a line. None: no numbers this morning, nothing
    decided on them. `wrote` is what they wrote last and nobody has answered yet; "" for nothing.
    """
    said = wrote_last(wrote)
    parts = [part for part in (morning, decided) if part]
    text = f"{start}: {'; '.join(parts)}. {state}" if parts else f"{start}. {state}"
    return f"{text} {said}" if said else text


def who(name: str, kind: str | None, days_out: int | None) -> str:
    """ "Aino, 3 days out"; with the kind of event where it is no show."""
    when = figures.days_out(days_out) if days_out is not None else tr("no event yet")
    what = f" ({tr(KINDS[kind])})" if kind is not None and kind != "show" else ""
    return f"{short(name)}, {when}{what}"


def wrote_last(wrote: str) -> str:
    """Their last words that nobody has answered, as long as a line has room for."""
    said = cut_short(wrote)
    return tr("Wrote: “{said}”", said=said) if said else ""


def cut_short(wrote: str) -> str:
    said = " ".join(wrote.split())
    return said if len(said) <= LONGEST_WORDS else f"{said[: LONGEST_WORDS - 1]}…"


def short(name: str) -> str:
    """The name as it fits a line."""
    return name if len(name) <= LONGEST_NAME else f"{name[: LONGEST_NAME - 1]}…"


no_numbers = Sentence("no check-in this morning")
state_missed = Sentence("Missed the check-in; on plan.")
state_unreachable = Sentence("Can't be reached: has stopped the bot. Please call.")
state_doctor = Sentence("Waits for a doctor's clearance.")
state_onboarding = Sentence("Still answering the first questions.")
state_missing = Sentence("Has not checked in yet.")
state_paused = Sentence("Has paused the check-ins.")
state_fine = Sentence("All in order.")
state_ahead = Sentence("All set; the week has not started yet.")
state_over = Sentence("The event is over.")
earlier_button = Sentence("Earlier page")
refresh_button = Sentence("Refresh")
next_button = Sentence("Next page")
up_to_date = Sentence("Up to date.")

#: What a morning led to; the figures carry their change from the plan where there is one.
DECIDED = {
    "proposed": mark("proposed {carbs} for {day}"),
    "lapsed": mark("no answer in time, on plan: {carbs} for {day}"),
    "unanswered": mark("no answer in time, set to {carbs} for {day}"),
    "adjusted": mark("adjusted to {carbs} for {day}"),
    "held": mark("on plan: {carbs} for {day}"),
    "by hand": mark("set to {carbs} for {day}"),
}


def decided(outcome: str, carb_g: float | None, planned_g: float | None, day: date) -> str:
    """What the morning led to, such as "adjusted to 500 g (+20 g) for Tue 10 Nov". `outcome` is the
    decision's, or "proposed" while it waits for approval, or "lapsed" once nobody has answered.
    """
    if outcome == "escalated":
        return tr("stopped by a warning, nothing adjusted")
    if carb_g is None:
        return tr("on plan, but no figure is set")
    change = carb_g - planned_g if planned_g is not None else 0.0
    against = f" ({figures.change(change)})" if abs(change) >= 0.5 else ""
    moved = {"held": "by hand", "lapsed": "unanswered"}
    stayed = {"adjusted": "held"}
    became = (moved if against else stayed).get(outcome, outcome)
    return tr(DECIDED[became], carbs=figures.grams(carb_g) + against, day=figures.short_day(day))


state_alert = SentenceOn("Needs you: open {level}.", word)


def state_seen_to(level: str, flag: str) -> str:
    """What was acknowledged today: it is seen to, and not forgotten."""
    return tr(
        "{level} today, acknowledged: {flag}.",
        level=tr(LEVEL_WORDS[Level(level)]),
        flag=flag_name(flag),
    )


state_waiting = SentenceOn("Needs you: approve by {until}.")

#: Why adjusting is frozen, where that is more than the coach's own hand.
FROZEN = {
    "warning-flag": mark("Frozen after a warning, until you lift it."),
    "eating-and-mood": mark("Frozen, eating or mood: talk to them, then lift it."),
}


def state_frozen(because: str) -> str:
    return tr(FROZEN.get(because, FROZEN_BY_HAND))


FROZEN_BY_HAND = mark("Frozen until you lift it.")


def short_quote(words: str) -> str:
    """As much of it as a line has room for."""
    return words if len(words) <= LONGEST_SAID else f"{words[: LONGEST_SAID - 1]}…"


state_unanswered = SentenceOn('Needs you: wrote "{words}" and does not answer.', short_quote)
state_asked_about = SentenceOn('Wrote "{words}"; I have asked about it.', short_quote)


def state_complaints(told: Sequence[str]) -> str:
    named = symptom_names(told)
    return tr("Reported: {named}.", named=short_quote(named))


state_to_look_at = SentenceOn("For you to look at: {what}.")


def state_held(carb_g: float, last: date) -> str:
    return tr(
        "Hold: {carb} until {last}.", carb=figures.grams(carb_g), last=figures.short_day(last)
    )


#: `what`: event, plan or limits.
state_to_set = SentenceBy(
    {
        "event": mark("Needs you: set the event."),
        "plan": mark("Needs you: set the plan."),
        "limits": mark("Needs you: set the limits."),
    }
)
state_asked_at = SentenceOn("Check-in at {clock}.")
