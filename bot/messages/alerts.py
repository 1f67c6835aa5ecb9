"""What coaches and second contacts read of a flag. Never a drug's dose, never a remedy."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from bot.messages import coach_figures as figures
from bot.messages.alert_causes import cause
from engine.safety import Level

Facts = Mapping[str, Any]

LEVEL_WORDS = {Level.WARNING: "Warning", Level.CAUTION: "Caution", Level.ADVISORY: "Note"}


def alert(
    *,
    name: str,
    flag: str,
    level: Level,
    facts: Facts,
    opened_at: datetime,
    zone: str | None,
    weight_unit: str,
    volume_unit: str,
    own: bool,
    settled: str = "",
) -> str:
    """The whole alert. `own`: the reader is the athlete, coaching themself.

    `settled` says what became of it, in place of the call to acknowledge it.
    """
    what = cause(flag, facts, weight_unit=weight_unit, volume_unit=volume_unit)
    when = figures.moment(opened_at, zone)
    head = f"{LEVEL_WORDS[level]}: you" if own else f"{LEVEL_WORDS[level]}: {name}"
    parts = [f"{head} ({when}{'' if own else ', their time'})\n{what}"]
    if level is Level.WARNING:
        parts += _warning_own() if own else _warning(name)
    elif level is Level.CAUTION:
        parts += _caution_own(flag) if own else _caution(name, flag)
    if level is not Level.ADVISORY:
        parts.append(settled or _acknowledge(level))
    return "\n\n".join(parts)


def _warning(name: str) -> list[str]:
    return [
        f"{name} was told: stop, call the local emergency number, don't drive, don't stay alone.",
        "What to do now:\n"
        f"1. Call {name}. No answer: call somebody who can go there.\n"
        "2. If it is still going on, or you are in doubt: the local emergency number where "
        f"{name} is.\n"
        "3. No extra water, salt, food or tablets as a remedy. What happens next is for a doctor.",
        "Nothing is adjusted until the coach lifts the freeze.",
    ]


def _warning_own() -> list[str]:
    return [
        "Stop. Call your local emergency number now, and somebody to be with you. Don't drive. "
        "No extra water, salt, food or tablets as a remedy.",
        "Nothing is adjusted until you lift the freeze, and please do so only with a doctor's word.",
    ]


def _caution(name: str, flag: str) -> list[str]:
    if flag == "drug-named":
        return [
            f"{name} was told that nothing here can help with drugs, and to ask a doctor.",
            f"What to do now: talk to {name}, and send them to a doctor with the question.",
        ]
    return [
        f"{name} was told that their coach has been alerted, and to stop and see a doctor if they "
        f"feel unwell.{_no_raise(flag)}",
        f"What to do now: talk to {name} before they eat or drink to plan, and ask how they feel. "
        "If they feel unwell, a doctor comes first.",
    ]


def _caution_own(flag: str) -> list[str]:
    return [f"If you feel unwell, stop and see a doctor.{_no_raise(flag)}"]


def _no_raise(flag: str) -> str:
    """A caution of the morning's numbers forbids a raise; a drug can be named at any hour."""
    return "" if flag == "drug-named" else " No raise goes out on this morning's numbers."


def _acknowledge(level: Level) -> str:
    when = "you are on it" if level is Level.WARNING else "you have seen to it"
    return f"Press Acknowledge when {when}. Until somebody does, this repeats."


def acknowledge_button() -> str:
    return "Acknowledge"


def lift_button() -> str:
    return "Lift the freeze"


def again(times: int, text: str) -> str:
    nth = "once more" if times == 1 else f"{times} times now"
    return f"Not acknowledged yet; repeated {nth}.\n\n{text}"


def stopped(text: str) -> str:
    return (
        "This has been open for 24 hours and I stop repeating it. It stays on /alerts until it is "
        f"acknowledged.\n\n{text}"
    )


def superseded(level: Level) -> str:
    return f"This has become a {LEVEL_WORDS[level].lower()}: see the newer message."


def no_answer(coach: str) -> str:
    return f"{coach} has not answered this alert yet."


def unreachable(coach: str) -> str:
    return f"{coach} cannot be reached here at the moment."


def on_their_own(coach: str) -> str:
    return f"{coach} is their own coach."


def to_contact(why: str, text: str) -> str:
    return f"This comes to you as second contact. {why}\n\n{text}"


def athlete_told_no_answer(why: str, others: Sequence[str], *, urgent: bool) -> str:
    """`why` says that the coach has not answered, or cannot be reached; `others` were told too."""
    have = "has" if len(others) == 1 else "have"
    then = (
        f" {' and '.join(others)} {have} been told too."
        if others
        else " There is no second contact to tell."
    )
    what = (
        " Don't wait for anybody: if you haven't yet, call your local emergency number now, and "
        "somebody to be with you."
        if urgent
        else " If you feel unwell, don't wait: stop, and see a doctor."
    )
    return why + then + what


def acknowledged(by: str, when: str) -> str:
    return f"Acknowledged by {by}, {when}."


def acknowledged_tap() -> str:
    return "Acknowledged. I stop repeating it."


def acknowledged_already(by: str | None, when: str) -> str:
    return f"Acknowledged already by {by}, {when}." if by else "A newer alert took its place."


def acknowledged_elsewhere(by: str, name: str) -> str:
    return f"{by} has acknowledged the alert about {name} and is on it."


def athlete_told_acknowledged(by: str) -> str:
    return f"{by} has seen the alert about you and is on it."


def not_your_alert() -> str:
    return "That alert is not yours."


def alerts_menu() -> str:
    return "Open alerts"


def none_open() -> str:
    return "No alert is open."


def how_many_open(count: int) -> str:
    return "One alert is open:" if count == 1 else f"{count} alerts are open:"


def frozen_still(name: str) -> str:
    return f"Adjusting for {name} stays frozen until you lift it."


def lift_sure(name: str, *, own: bool) -> str:
    if own:
        return (
            "Lift the freeze? Do so only once a doctor has said that you may go on. Adjusting "
            "goes on with your next check-in."
        )
    return (
        f"Lift the freeze for {name}? Do so only once you have spoken with {name} and, after a "
        "warning, a doctor has said that they may go on. Adjusting goes on with the next check-in."
    )


def lift_yes_button() -> str:
    return "Lift it"


def lift_no_button() -> str:
    return "Keep it frozen"


def lift_waits() -> str:
    return "An alert is still open. Acknowledge it first: /alerts"


def lifted(name: str, *, own: bool) -> str:
    return "The freeze is lifted." if own else f"The freeze is lifted, and {name} knows."


def not_frozen() -> str:
    return "Nothing is frozen."


def kept_frozen() -> str:
    return "It stays frozen."


def athlete_told_lifted(coach: str) -> str:
    return f"{coach} has lifted the freeze: adjusting goes on with your next check-in."


def frozen_by_hand(name: str, *, own: bool) -> str:
    whose = "your plan" if own else f"{name}'s plan"
    return f"Frozen. Nothing in {whose} is adjusted until you lift it. Check-ins go on as usual."


def athlete_told_frozen(coach: str) -> str:
    return (
        f"{coach} has frozen the adjusting: the figures stay as they are for now. "
        "Please check in each morning as usual."
    )
