"""What coaches and second contacts read of a flag. Never a drug's dose, never a remedy."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from bot.languages import mark, tr, trn
from bot.messages import coach_figures as figures
from bot.messages.alert_causes import cause
from engine.safety import Level

Facts = Mapping[str, Any]

LEVEL_WORDS = {
    Level.WARNING: mark("Warning"),
    Level.CAUTION: mark("Caution"),
    Level.ADVISORY: mark("Note"),
}


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
    said = tr(LEVEL_WORDS[level])
    if own:
        head = tr("{level}: you ({when})", level=said, when=when)
    else:
        head = tr("{level}: {name} ({when}, their time)", level=said, name=name, when=when)
    parts = [f"{head}\n{what}"]
    if level is Level.WARNING:
        parts += _warning_own() if own else _warning(name)
    elif level is Level.CAUTION:
        parts += _caution_own(flag) if own else _caution(name, flag)
    if level is not Level.ADVISORY:
        parts.append(settled or _acknowledge(level))
    return "\n\n".join(parts)


def _warning(name: str) -> list[str]:
    return [
        tr(
            "{name} was told: stop, call the local emergency number, don't drive, don't stay alone.",
            name=name,
        ),
        tr(
            "What to do now:\n"
            "1. Call {name}. No answer: call somebody who can go there.\n"
            "2. If it is still going on, or you are in doubt: the local emergency number where "
            "{name} is.\n"
            "3. No extra water, salt, food or tablets as a remedy. What happens next is for a "
            "doctor.",
            name=name,
        ),
        tr("Nothing is adjusted until the coach lifts the freeze."),
    ]


def _warning_own() -> list[str]:
    return [
        tr(
            "Stop. Call your local emergency number now, and somebody to be with you. Don't drive. "
            "No extra water, salt, food or tablets as a remedy."
        ),
        tr(
            "Nothing is adjusted until you lift the freeze, and please do so only with a doctor's "
            "word."
        ),
    ]


def _caution(name: str, flag: str) -> list[str]:
    if flag == "drug-named":
        return [
            tr(
                "{name} was told that nothing here can help with drugs, and to ask a doctor.",
                name=name,
            ),
            tr(
                "What to do now: talk to {name}, and send them to a doctor with the question.",
                name=name,
            ),
        ]
    told = tr(
        "{name} was told that their coach has been alerted, and to stop and see a doctor if they "
        "feel unwell.",
        name=name,
    )
    return [
        f"{told} {_no_raise()}",
        tr(
            "What to do now: talk to {name} before they eat or drink to plan, and ask how they "
            "feel. If they feel unwell, a doctor comes first.",
            name=name,
        ),
    ]


def _caution_own(flag: str) -> list[str]:
    told = tr("If you feel unwell, stop and see a doctor.")
    # A caution of the morning's numbers forbids a raise; a drug can be named at any hour.
    return [told if flag == "drug-named" else f"{told} {_no_raise()}"]


def _no_raise() -> str:
    return tr("No raise goes out on this morning's numbers.")


def _acknowledge(level: Level) -> str:
    if level is Level.WARNING:
        return tr(
            "Press Acknowledge when you are on it. Until somebody does, this repeats.",
        )
    return tr(
        "Press Acknowledge when you have seen to it. Until somebody does, this repeats.",
    )


def acknowledge_button() -> str:
    return tr("Acknowledge")


def lift_button() -> str:
    return tr("Lift the freeze")


def again(times: int, text: str) -> str:
    said = trn(
        "Not acknowledged yet; repeated once more.",
        "Not acknowledged yet; repeated {number} times now.",
        times,
    )
    return f"{said}\n\n{text}"


def stopped(text: str) -> str:
    return tr(
        "This has been open for 24 hours and I stop repeating it. It stays on /alerts "
        "until it is acknowledged.\n\n"
        "{text}",
        text=text,
    )


SUPERSEDED = {
    Level.WARNING: mark("This has become a warning: see the newer message."),
    Level.CAUTION: mark("This has become a caution: see the newer message."),
    Level.ADVISORY: mark("This has become a note: see the newer message."),
}


def superseded(level: Level) -> str:
    return tr(SUPERSEDED[level])


def no_answer(coach: str) -> str:
    return tr("{coach} has not answered this alert yet.", coach=coach)


def unreachable(coach: str) -> str:
    return tr("{coach} cannot be reached here at the moment.", coach=coach)


def on_their_own(coach: str) -> str:
    return tr("{coach} is their own coach.", coach=coach)


def to_contact(why: str, text: str) -> str:
    return tr("This comes to you as second contact. {why}\n\n{text}", why=why, text=text)


def athlete_told_no_answer(why: str, others: Sequence[str], *, urgent: bool) -> str:
    """`why` says that the coach has not answered, or cannot be reached; `others` were told too."""
    if others:
        then = trn(
            "{names} has been told too.",
            "{names} have been told too.",
            len(others),
            names=figures.all_of(others),
        )
    else:
        then = tr("There is no second contact to tell.")
    what = (
        tr(
            "Don't wait for anybody: if you haven't yet, call your local emergency number now, and "
            "somebody to be with you."
        )
        if urgent
        else tr("If you feel unwell, don't wait: stop, and see a doctor.")
    )
    return f"{why} {then} {what}"


def acknowledged(by: str, when: str) -> str:
    return tr("Acknowledged by {by}, {when}.", by=by, when=when)


def acknowledged_tap() -> str:
    return tr("Acknowledged. I stop repeating it.")


def acknowledged_already(by: str | None, when: str) -> str:
    return (
        tr("Acknowledged already by {by}, {when}.", by=by, when=when)
        if by
        else tr("A newer alert took its place.")
    )


def acknowledged_elsewhere(by: str, name: str) -> str:
    return tr("{by} has acknowledged the alert about {name} and is on it.", by=by, name=name)


def athlete_told_acknowledged(by: str) -> str:
    return tr("{by} has seen the alert about you and is on it.", by=by)


def not_your_alert() -> str:
    return tr("That alert is not yours.")


def alerts_menu() -> str:
    return tr("Open alerts")


def none_open() -> str:
    return tr("No alert is open.")


def how_many_open(count: int) -> str:
    return trn("One alert is open:", "{number} alerts are open:", count)


def frozen_still(name: str) -> str:
    return tr("Adjusting for {name} stays frozen until you lift it.", name=name)


def lift_sure(name: str, *, own: bool) -> str:
    if own:
        return tr(
            "Lift the freeze? Do so only once a doctor has said that you may go on. "
            "Adjusting goes on with your next check-in."
        )
    return tr(
        "Lift the freeze for {name}? Do so only once you have spoken with {name} and, "
        "after a warning, a doctor has said that they may go on. Adjusting goes on with "
        "the next check-in.",
        name=name,
    )


def lift_yes_button() -> str:
    return tr("Lift it")


def lift_no_button() -> str:
    return tr("Keep it frozen")


def lift_waits() -> str:
    return tr("An alert is still open. Acknowledge it first: /alerts")


def lifted(name: str, *, own: bool) -> str:
    return (
        tr("The freeze is lifted.")
        if own
        else tr("The freeze is lifted, and {name} knows.", name=name)
    )


def not_frozen() -> str:
    return tr("Nothing is frozen.")


def kept_frozen() -> str:
    return tr("It stays frozen.")


def athlete_told_lifted(coach: str) -> str:
    return tr(
        "{coach} has lifted the freeze: adjusting goes on with your next check-in.", coach=coach
    )


def frozen_by_hand(name: str, *, own: bool) -> str:
    if own:
        return tr(
            "Frozen. Nothing in your plan is adjusted until you lift it. Check-ins go on as usual.",
        )
    return tr(
        "Frozen. Nothing in {name}'s plan is adjusted until you lift it. Check-ins go on as usual.",
        name=name,
    )


def athlete_told_frozen(coach: str) -> str:
    return tr(
        "{coach} has frozen the adjusting: the figures stay as they are for now. Please "
        "check in each morning as usual.",
        coach=coach,
    )
