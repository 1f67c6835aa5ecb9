"""Somebody whose chat could not be reached is back: what they, and those who were told, read."""

from __future__ import annotations

from bot.languages import tr, trn


def missed_alerts(count: int) -> str:
    """Above the alerts that could not reach a coach or second contact."""
    return trn(
        "Welcome back. While you could not be reached here, this alert went past you:",
        "Welcome back. While you could not be reached here, these {number} alerts went past you:",
        count,
    )


def athlete_back(name: str) -> str:
    return tr("{name} can be reached again: questions and targets arrive there.", name=name)


def contact_back(name: str) -> str:
    return tr("{name}, your second contact, can be reached again.", name=name)


def second_back(name: str) -> str:
    return tr("{name}, your second coach, can be reached again.", name=name)


def coach_back(coach: str) -> str:
    return tr(
        "{coach} can be reached here again. Alerts go to {coach} first, as before.", coach=coach
    )
