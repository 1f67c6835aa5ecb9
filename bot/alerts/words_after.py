"""What is said of an alert once it was raised: acknowledged, repeated, overtaken; the freeze lifted."""

from __future__ import annotations

from collections.abc import Sequence

from bot.words import figures
from bot.words.languages import (
    Sentence,
    SentenceAbout,
    SentenceBy,
    SentenceCounted,
    SentenceOn,
    SentenceOnTwo,
    mark,
    tr,
    tr_if,
    trn,
)
from engine.safety import Level

acknowledge_button = Sentence("Acknowledge")
lift_button = Sentence("Lift the freeze")
acknowledged_tap = Sentence("Acknowledged. I stop repeating it.")
corrected_already = Sentence("This was put right since; nothing is open.")
not_your_alert = Sentence("That alert is not yours.")
alerts_menu = Sentence("Open alerts")
none_open = Sentence("No alert is open.")
lift_yes_button = Sentence("Lift it")
lift_no_button = Sentence("Keep it frozen")
not_frozen = Sentence("Nothing is frozen.")
kept_frozen = Sentence("It stays frozen.")


def again(times: int, text: str) -> str:
    said = trn(
        "Not acknowledged yet; repeated once more.",
        "Not acknowledged yet; repeated {number} times now.",
        times,
    )
    return f"{said}\n\n{text}"


stopped = SentenceOn(
    "This has been open for 24 hours and I stop repeating it. It stays on /alerts "
    "until it is acknowledged.\n\n"
    "{text}"
)
superseded = SentenceBy(
    {
        Level.WARNING: mark("This has become a warning: see the newer message."),
        Level.CAUTION: mark("This has become a caution: see the newer message."),
        Level.ADVISORY: mark("This has become an info: see the newer message."),
    }
)
no_answer = SentenceOn("{coach} has not answered this alert yet.")
unreachable = SentenceOn("{coach} cannot be reached here at the moment.")
on_their_own = SentenceOn("{coach} is their own coach.")
to_contact = SentenceOnTwo("This comes to you as second contact. {why}\n\n{text}")


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
    what = tr_if(
        urgent,
        "Don't wait for anybody: if you haven't yet, call your local emergency number now, and "
        "somebody to be with you.",
        "If you feel unwell, don't wait: stop, and see a doctor.",
    )
    return f"{why} {then} {what}"


acknowledged = SentenceOnTwo("Acknowledged by {by}, {when}.")


def acknowledged_already(by: str | None, when: str) -> str:
    return (
        tr("Acknowledged already by {by}, {when}.", by=by, when=when)
        if by
        else tr("A newer alert took its place.")
    )


#: To whoever had read the lesser finding in a note.
corrected_note = SentenceOnTwo("{name}: {what}")


def acknowledged_elsewhere(by: str, name: str, *, self_coached: bool) -> str:
    """To the coach; `self_coached`: it is of the reader."""
    if self_coached:
        return tr("{by} has acknowledged the alert about you and is on it.", by=by)
    return tr("{by} has acknowledged the alert about {name} and is on it.", by=by, name=name)


athlete_told_acknowledged = SentenceOn("{by} has seen this and will contact you.")

how_many_open = SentenceCounted("One alert is open:", "{number} alerts are open:")

lift_sure = SentenceAbout(
    "Lift the freeze? Do so only once a doctor has said that you may go on. "
    "Adjusting goes on with your next check-in.",
    "Lift the freeze for {name}? Do so only once you have spoken with {name} and, "
    "after a warning, a doctor has said that they may go on. Adjusting goes on with "
    "the next check-in.",
)

# `which`: what is still open, an alert a line.
lift_waits = SentenceOn(
    "The freeze can't be lifted yet. This is still open:\n{which}\nAcknowledge it first: /alerts"
)
lift_waits_for_answer = SentenceOnTwo(
    'The freeze can\'t be lifted yet: {name} wrote "{words}" and has not answered my question '
    "about it. Call {name}."
)


def open_line(level: str, what: str) -> str:
    return f"• {level}: {what}"


lifted = SentenceAbout("The freeze is lifted.", "The freeze is lifted, and {name} knows.")
athlete_told_lifted = SentenceOn(
    "{coach} has lifted the freeze: adjusting goes on with your next check-in."
)
frozen_by_hand = SentenceAbout(
    "Frozen. Nothing in your plan is adjusted until you lift it. Check-ins go on as usual.",
    "Frozen. Nothing in {name}'s plan is adjusted until you lift it. Check-ins go on as usual.",
)
athlete_told_frozen = SentenceOn(
    "{coach} has frozen the adjusting: the figures stay as they are for now. Please "
    "check in each morning as usual."
)
