"""The roster as a coach reads it: a line an athlete, who needs the coach first."""

from __future__ import annotations

from datetime import date

from bot.languages import tr
from bot.messages import coach_figures as figures

LONGEST_NAME = 24  # characters of a name in a line; the card has it whole


def nobody_yet() -> str:
    return "You have no athletes yet. /invite makes an invitation."


def head(shown: str, count: int, of_all: int, page: int, pages: int) -> str:
    """`shown` is one of the filters; `count` athletes of `of_all` are in it."""
    athletes = "1 athlete" if of_all == 1 else f"{of_all} athletes"
    what = athletes if not shown else f"{FILTERS[shown].lower()}, {count} of {athletes}"
    return f"Roster: {what}" + (f", page {page + 1} of {pages}" if pages > 1 else "")


def as_of(clock: str) -> str:
    return f"As of {clock}. It is kept up to date here."


FILTERS = {"": "All", "me": "Needs me", "load": "Loading", "week": "This week"}


def filter_button(shown: str, count: int, *, chosen: bool) -> str:
    return f"{'✓ ' if chosen else ''}{FILTERS[shown]} {count}"


def nobody_here(shown: str) -> str:
    return {
        "me": "Nobody needs you just now.",
        "load": "Nobody is loading: that is three days out to one day out.",
        "week": "Nobody has a show, a shoot or a trial within seven days.",
    }.get(shown, "Nobody.")


def line(
    name: str,
    kind: str | None,
    days_out: int | None,
    morning: str | None,
    decided: str | None,
    state: str,
) -> str:
    """One athlete in a line. None: no event, no numbers this morning, nothing decided on them."""
    when = figures.days_out(days_out) if days_out is not None else "no event yet"
    what = f" ({kind})" if kind not in (None, "show") else ""
    parts = [part for part in (morning, decided) if part]
    start = f"{short(name)}, {when}{what}"
    return f"{start}: {'; '.join(parts)}. {state}" if parts else f"{start}. {state}"


def short(name: str) -> str:
    """The name as it fits a line."""
    return name if len(name) <= LONGEST_NAME else f"{name[: LONGEST_NAME - 1]}…"


def no_numbers() -> str:
    return "no numbers this morning"


def decided(
    outcome: str, carb_g: float | None, planned_g: float | None, day: date, *, waiting: bool
) -> str:
    """What the morning led to, such as "adjusted to 500 g (+20 g) for Tue 10 Nov"."""
    if outcome == "escalated":
        return "stopped by a warning, nothing adjusted"
    if carb_g is None:
        return "held, with no figure to stand"
    change = carb_g - planned_g if planned_g is not None else 0.0
    against = f" ({figures.change(change)})" if abs(change) >= 0.5 else ""
    verb = "proposed" if waiting else f"{outcome} {'to' if outcome == 'adjusted' else 'at'}"
    return f"{verb} {figures.grams(carb_g)}{against} for {figures.day(day)}"


def state_alert(level: str) -> str:
    return f"Needs you: open {level}."


def state_waiting(until: str) -> str:
    return f"Needs you: waits for your word until {until} their time."


def state_missed() -> str:
    return "Missed the check-in; the plan holds."


def state_frozen() -> str:
    return "Frozen until you lift it."


def state_unreachable() -> str:
    return "Cannot be reached here: has stopped the bot. Call them."


def state_doctor() -> str:
    return "Waits for a doctor's word."


def state_held(carb_g: float, last: date) -> str:
    return f"Held at {figures.grams(carb_g)} until {figures.day(last)}."


def state_onboarding() -> str:
    return "Still answering the first questions."


def state_to_set(what: str) -> str:
    """`what`: event, plan or limits."""
    return f"Needs you: set the {what}."


def state_missing() -> str:
    return "Has not checked in yet."


def state_asked_at(clock: str) -> str:
    return tr("Is asked at {clock}, their time.", clock=clock)


def state_paused() -> str:
    return "Paused by themself."


def state_fine() -> str:
    return "All in order."


def state_ahead() -> str:
    return "All set; the week is still ahead."


def state_over() -> str:
    return "The event is over."


def earlier_button() -> str:
    return "Earlier page"


def refresh_button() -> str:
    return "Refresh"


def next_button() -> str:
    return "Next page"


def up_to_date() -> str:
    return "Up to date."
