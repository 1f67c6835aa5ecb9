"""Somebody whose chat could not be reached is back: what they, and those who were told, read."""

from __future__ import annotations

from bot.words.languages import tr, trn


def missed_alerts(count: int) -> str:
    """Above the alerts that could not reach a coach or second contact."""
    return trn(
        "Welcome back. While I could not reach you, you missed this alert:",
        "Welcome back. While I could not reach you, you missed these {number} alerts:",
        count,
    )


def athlete_back(name: str) -> str:
    return tr("{name} can be reached again and gets questions and targets as before.", name=name)


def contact_back(name: str) -> str:
    return tr("{name}, your second contact, can be reached again.", name=name)


def second_back(name: str) -> str:
    return tr("{name}, your second coach, can be reached again.", name=name)


def coach_back(coach: str) -> str:
    return tr(
        "{coach} can be reached here again. Alerts go to {coach} first, as before.", coach=coach
    )
