"""An athlete ends the coaching: what it means, and who reads what of it."""

from __future__ import annotations

from bot.languages import tr


def leave_menu() -> str:
    return tr("End the coaching; what is yours stays yours")


def sure(coach: str) -> str:
    return tr(
        "End the coaching with {name}? Check-ins stop, and {name} no longer sees anything of yours, "
        "nor does anybody who stands beside {name}. They are told that you have left. You keep "
        "everything that was told and decided, and can take up another coach's invitation, or the "
        "same one's, at any time.",
        name=coach,
    )


def sure_while_warned() -> str:
    return tr(
        "A warning about you is still open. Leaving changes nothing about that: if it goes on, or "
        "you are in doubt, call your local emergency number now."
    )


def sure_while_open() -> str:
    return tr("What is still open, an alert or a figure that waits for a word, is closed with it.")


def yes_button() -> str:
    return tr("Yes, end it")


def no_button() -> str:
    return tr("No, go on")


def goes_on() -> str:
    return tr("The coaching goes on.")


def nobody_coaches_you() -> str:
    return tr("Nobody coaches you just now. Another coach's invitation begins it again.")


def left(coach: str) -> str:
    return tr(
        "You have ended the coaching with {name}, who sees nothing of yours any more. I stop asking "
        "in the mornings. What you told and what was decided stays yours: /past and /why show it. "
        "If you are in a low-carb week now, don't go on with it alone: eat and drink as you usually "
        "do.",
        name=coach,
    )


def coach_told(name: str) -> str:
    return tr(
        "{name} has ended the coaching. You no longer see {name}'s answers, and {name} keeps what is "
        "theirs. A new invitation would begin it again: /invite",
        name=name,
    )


def coach_told_while_open(name: str) -> str:
    return tr(
        "What was open about {name} is closed, and I repeat no alert about them any more. If "
        "one of them worries you, please call {name} yourself.",
        name=name,
    )


def second_told(name: str, coach: str) -> str:
    return tr(
        "{name} has ended the coaching with {coach}, so you see nothing of {name} any more.",
        name=name, coach=coach,
    )  # fmt: skip


def closed(name: str) -> str:
    return tr("Closed: {name} has ended the coaching.", name=name)


def coaching_over() -> str:
    return tr("Closed: the coaching has ended.")
