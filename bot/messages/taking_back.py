"""Taking the last change back: what the coach is asked and told, and what the athlete reads."""

from __future__ import annotations

from bot.languages import tr
from bot.messages.coach_history import line


def nothing_to_undo() -> str:
    return tr("No change of yours is left to take back.")


def cannot_undo(what: str) -> str:
    return tr(
        "The last thing that set figures was this, and it can't be taken back: {what}. "
        "Set a day by hand, or change the plan or limits again.",
        what=what,
    )


def undo_sure(when: str, who: str, what: str, *, told: bool, own: bool) -> str:
    asked = tr("Take this back?\n{line}", line=line(when, who, what))
    if own:
        return asked
    then = (
        tr("It has gone out, so a correction follows it.")
        if told
        else tr("Nothing has gone out on it yet, so nobody is told.")
    )
    return f"{asked}\n\n{then}"


def undo_yes_button() -> str:
    return tr("Take it back")


def undo_times_button() -> str:
    return tr("Take the times back")


def undo_no_button() -> str:
    return tr("Leave it")


def undone(*, told: bool, own: bool) -> str:
    if own:
        return tr("Taken back. What held before holds again.")
    if told:
        return tr("Taken back. What held before holds again, and a correction is on its way.")
    return tr("Taken back. What held before holds again; nothing had gone out on it.")


def undo_moved_on() -> str:
    return tr("Something has been set since then, so that can't be taken back any more.")


def left() -> str:
    return tr("Left as it is.")


def athlete_told_event_back(coach: str, line: str) -> str:
    """`line` describes the event that counts again; "" where there is none."""
    if not line:
        return tr(
            "A correction: {name} has taken the event back, so none is set for you just now.",
            name=coach,
        )
    return tr(
        "A correction: {name} has taken the last change of your event back. It is again: {event}",
        name=coach, event=line,
    )  # fmt: skip
