"""What is said when an athlete has their data deleted."""

from __future__ import annotations

from bot.words.languages import tr


def deletion_menu() -> str:
    return tr("Delete everything saved about you")


def ask(coach: str, *, own: bool) -> str:
    parts = [
        tr(
            "This deletes everything saved here about you as an athlete: your answers, "
            "check-ins, decisions, plans, limits, alerts, notes and photos. It can't be "
            "undone. Check-ins stop, and I can't fetch anybody for you any more."
        )
    ]
    if not own:
        parts.append(tr("I tell {coach} only that you did it.", coach=coach))
        parts.append(
            tr(
                "What was written to {coach} and others about you goes from this bot's records too.",
                coach=coach,
            )
        )
    return " ".join([*parts, chats_stay()]) + "\n\n" + sure()


def chats_stay() -> str:
    return tr(
        "What stands in Telegram chats stays there; you can delete your own chat in Telegram."
    )


def sure() -> str:
    return tr("Delete it all?")


def more_than_an_athlete() -> str:
    return tr("What you have here as a coach or contact stays, unless you want all of it deleted.")


def all_button() -> str:
    return tr("All of it, not only the athlete's")


def yes_button() -> str:
    return tr("Yes, delete it all")


def no_button() -> str:
    return tr("Keep it")


def kept() -> str:
    return tr("OK, nothing was deleted.")


def nothing_there() -> str:
    return tr("Nothing about you is saved here, so there is nothing to delete.")


def done() -> str:
    return tr(
        "Done. Everything saved here about you as an athlete is deleted; photos within a "
        "minute. If you feel unwell, don't wait for a message: see a doctor, or call the local "
        "emergency number."
    )


def coach_told(name: str, *, warning_open: bool) -> str:
    text = tr("{name} has deleted all data here. You get no more check-ins from {name}.", name=name)
    if not warning_open:
        return text
    return (
        text
        + " "
        + tr(
            "An alert about {name} was open. I can't follow it up any more: please call {name}.",
            name=name,
        )
    )
