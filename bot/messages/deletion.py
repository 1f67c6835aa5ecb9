"""What is said when an athlete has their data deleted."""

from __future__ import annotations


def deletion_menu() -> str:
    return "Delete everything that is kept about you"


def ask(coach: str, keep_days: int, *, own: bool) -> str:
    copies = (
        ""
        if own
        else f" What was written to {coach} leaves this bot's own records within {keep_days} days."
    )
    told = "" if own else f" {coach} is told that it was done, and nothing else."
    return (
        "This deletes everything kept here about you as an athlete: your answers, check-ins, "
        "decisions, plans, limits, alerts, notes and pictures. It cannot be undone, the mornings end, "
        f"and nobody is called for you any more.{told}{copies} What stands in Telegram chats stays "
        "there; you can delete your own chat in Telegram.\n\nDelete it all?"
    )


def yes_button() -> str:
    return "Yes, delete it all"


def no_button() -> str:
    return "Keep it"


def kept() -> str:
    return "Kept. Nothing was deleted."


def nothing_there() -> str:
    return "There is nothing of yours to delete."


def done() -> str:
    return (
        "Done. Everything kept here about you as an athlete is deleted. Pictures go within a minute. "
        "If you feel unwell, don't wait for anybody to write: see a doctor, or call the local "
        "emergency number."
    )


def coach_told(name: str, *, warning_open: bool) -> str:
    text = f"{name} has deleted their data here. There are no more check-ins from them."
    if warning_open:
        text += (
            f" An alert about them was open. Nothing here follows it up any more: reach {name} "
            "directly."
        )
    return text
