"""The digest, and how a coach sets when it comes and when it is to be quiet."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, time

from bot.languages import tr
from bot.messages import coach_figures as figures

UNITS = 4000  # UTF-16 units that a digest may take, of the 4096 that fit a message
LINES_TRIED = (60, 30, 15, 8, 4, 2)


def digest_menu() -> str:
    return "Your daily digest and quiet hours"


# Setting it


def ask_place() -> str:
    return (
        "Where are you, so that it comes at your hour? Send a city, or what time it is where you "
        "are, such as 14:35."
    )


def ask_digest_at() -> str:
    return "At what time shall the digest come? Pick a time or type one."


def ask_quiet_from() -> str:
    return (
        "From what time on shall notes wait? Warnings and cautions come at any hour. "
        "Pick a time or type one."
    )


def ask_quiet_to(begins: time) -> str:
    return f"From {begins:%H:%M} until when?"


def quiet_is_empty() -> str:
    return "That is the same time. Please send the time at which the quiet hours end."


def settings(digest_at: time | None, zone: str | None, quiet: tuple[time, time] | None) -> str:
    comes = (
        f"Your digest comes at {digest_at:%H:%M} each day that has something to tell."
        if digest_at is not None
        else "You get no digest."
    )
    hours = (
        f"Quiet hours: {quiet[0]:%H:%M} to {quiet[1]:%H:%M}. Notes wait until they are over; "
        "warnings and cautions come at any hour."
        if quiet is not None
        else "No quiet hours: notes come silently at any hour."
    )
    return f"{comes}\n{hours}\nYour clock: {zone or 'not known yet, so UTC'}."


def time_button(*, is_on: bool) -> str:
    return "Another time" if is_on else "Set a time"


def off_button() -> str:
    return "No digest"


def zone_button() -> str:
    return "Where I am"


def quiet_button() -> str:
    return "Quiet hours"


def quiet_off_button() -> str:
    return "No quiet hours"


def not_a_setting() -> str:
    return "That is not a setting of yours."


# The digest itself


def digest(day: date, sections: Sequence[tuple[str, Sequence[str]]]) -> str:
    """Headed sections of lines; long ones are cut, with a word on what is left out, until it fits."""
    text = ""
    for most in LINES_TRIED:
        text = "\n\n".join([f"Digest, {figures.day(day)}", *(_section(*s, most) for s in sections)])
        if len(text.encode("utf-16-le")) <= 2 * UNITS:
            break
    return text


def _section(heading: str, lines: Sequence[str], most: int) -> str:
    shown = list(lines[:most])
    if len(lines) > most:
        shown.append(f"and {len(lines) - most} more: /roster")
    return "\n".join([heading, *shown])


def needs_you(count: int) -> str:
    return f"Needs you ({count})"


def alerts(count: int) -> str:
    return tr("Warnings and cautions ({count})", count=count)


def alert_line(name: str, level: str, what: str, end: str) -> str:
    """`what` and `end` are whole sentences."""
    return tr("- {name}, {level}: {what} {end}", name=name, level=tr(level), what=what, end=end)


def not_acknowledged() -> str:
    return tr("Nobody has acknowledged it yet.")


def today() -> str:
    return "Today"


def changed(count: int) -> str:
    return f"Changed ({count})"


def checked_in(count: int) -> str:
    return f"Checked in ({count})"


def not_yet(count: int) -> str:
    return f"No check-in yet today ({count})"


def notes(count: int) -> str:
    return f"Notes ({count})"


def needs_line(name: str, state: str) -> str:
    return f"- {name}: {state}"


def today_line(name: str, kind: str, *, own: bool) -> str:
    whose = "your" if own else f"{name}'s"
    return f"- {whose} {kind}"


def changed_line(name: str, what: str, why: str) -> str:
    return f"- {name}: {what}. {why}"


def not_taken(proposed_g: float, day: date) -> str:
    return f"{figures.grams(proposed_g)} proposed for {figures.day(day)}, the plan holds"


def other_figure(proposed_g: float, day: date) -> str:
    return f"{figures.grams(proposed_g)} proposed for {figures.day(day)}, another figure was set"


def names(of: Sequence[str]) -> str:
    return ", ".join(of)


def note_line(text: str) -> str:
    return f"- {' '.join(text.split())}"


def you() -> str:
    return "You"
