"""What is said when an athlete has their data deleted."""

from __future__ import annotations

from bot.languages import tr, trn


def deletion_menu() -> str:
    return tr("Delete everything that is kept about you")


def ask(coach: str, keep_days: int, *, own: bool) -> str:
    parts = [
        tr(
            "This deletes everything kept here about you as an athlete: your answers, check-ins, "
            "decisions, plans, limits, alerts, notes and pictures. It cannot be undone, the mornings "
            "end, and nobody is called for you any more."
        )
    ]
    if not own:
        parts.append(tr("{coach} is told that it was done, and nothing else.", coach=coach))
        parts.append(
            trn(
                "What was written to {coach} leaves this bot's own records within {number} day.",
                "What was written to {coach} leaves this bot's own records within {number} days.",
                keep_days,
                coach=coach,
            )
        )
    parts.append(
        tr("What stands in Telegram chats stays there; you can delete your own chat in Telegram.")
    )
    return " ".join(parts) + "\n\n" + tr("Delete it all?")


def yes_button() -> str:
    return tr("Yes, delete it all")


def no_button() -> str:
    return tr("Keep it")


def kept() -> str:
    return tr("Kept. Nothing was deleted.")


def nothing_there() -> str:
    return tr("There is nothing of yours to delete.")


def done() -> str:
    return tr(
        "Done. Everything kept here about you as an athlete is deleted. Pictures go within a minute. "
        "If you feel unwell, don't wait for anybody to write: see a doctor, or call the local "
        "emergency number."
    )


def coach_told(name: str, *, warning_open: bool) -> str:
    text = tr(
        "{name} has deleted their data here. There are no more check-ins from them.", name=name
    )
    if not warning_open:
        return text
    return (
        text
        + " "
        + tr(
            "An alert about them was open. Nothing here follows it up any more: reach {name} directly.",
            name=name,
        )
    )
