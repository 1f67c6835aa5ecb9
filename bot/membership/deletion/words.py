"""What is said when somebody has everything deleted: athlete, coach, stand-in, second contact."""

from __future__ import annotations

from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, tr, trn

deletion_menu = Sentence("Delete everything saved about you")
chats_stay = Sentence(
    "What stands in Telegram chats stays there; you can delete your own chat in Telegram."
)
sure = Sentence("Delete it all?")
more_than_an_athlete = Sentence(
    "What you have here as a coach or contact stays, unless you want all of it deleted."
)
all_button = Sentence("All of it, not only the athlete's")
yes_button = Sentence("Yes, delete it all")
nothing_there = Sentence("Nothing about you is saved here, so there is nothing to delete.")
done = Sentence(
    "Done. Everything saved here about you as an athlete is deleted; photos within a "
    "minute. If you feel unwell, don't wait for a message: see a doctor, or call the local "
    "emergency number."
)


def ask(coach: str, *, self_coached: bool) -> str:
    parts = [
        tr(
            "This deletes everything saved here about you as an athlete: your answers, "
            "check-ins, decisions, plans, limits, alerts, notes and photos. It can't be "
            "undone. Check-ins stop, and I can't fetch anybody for you any more."
        )
    ]
    if not self_coached:
        parts.append(tr("I tell {coach} only that you did it.", coach=coach))
        parts.append(
            tr(
                "What was written to {coach} and others about you goes from this bot's records too.",
                coach=coach,
            )
        )
    return " ".join([*parts, chats_stay()]) + "\n\n" + sure()


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


MOST_NAMES = 12


def named(names: list[str]) -> str:
    """The first of them, and how many more there are."""
    shown, more = ", ".join(names[:MOST_NAMES]), len(names) - MOST_NAMES
    if more <= 0:
        return shown
    return trn("{names} and 1 more", "{names} and {number} more", more, names=shown)


# What the person reads before it is done


ask_coach = Sentence(
    "This deletes everything saved here about you: settings, templates, notes, invitations "
    "and the messages of this chat. It can't be undone."
)
an_athlete_too = Sentence("What is saved about you as an athlete goes too, photos and all.")
stays = Sentence("What you set for athletes stays in their records, without your name.")
changed = Sentence(
    "Something has changed meanwhile, so nothing was deleted yet. Please read again:"
)
coach_done = Sentence(
    "Done. Everything saved here about you is deleted. To come back you need a new invitation."
)
open_alerts = SentenceOn("An alert is still open about {names}. Please see to it first.", named)
waiting = SentenceOn(
    "A change still waits for your approval for {names}. Without it they stay on plan.", named
)
alone = SentenceOn(
    "After this nobody coaches {names}. I tell them at once. They keep their own data and can "
    "take another coach's invitation. Until then nobody gets their check-ins or alerts.",
    named,
)


def taken(other: str, names: list[str]) -> str:
    return tr(
        "{other}, who stands in for you, becomes the coach of {names} and gets their check-ins and "
        "alerts. I tell them all.",
        other=other, names=named(names),
    )  # fmt: skip


no_contact_for = SentenceOn(
    "You are then no longer second contact for {names}. I tell them.", named
)
no_stand_in_for = SentenceOn("You then no longer stand in for {names}. I tell them.", named)
# What the others read

closed = Sentence("Closed: the coach has gone, and I no longer follow this up.")
athlete_alert_untold = Sentence(
    "An alert about you was open, and nobody follows it up any more. If you still feel unwell, "
    "call your local emergency number now."
)
athlete_alone = SentenceOn(
    "{coach} has deleted all data here and no longer coaches you. From now on nobody gets your "
    "check-ins or alerts. If you feel unwell, tell somebody near you and see a doctor; in "
    "an emergency call the local emergency number. If you are in a low-carb week now, don't "
    "go on with it alone: eat and drink as you usually do. Your answers and decisions stay "
    "yours: /past and /why show them. To go on, take another coach's invitation."
)
athlete_alert_told = SentenceOn(
    "An alert about you was open. I have told {names}, and can't follow it up any more. If you "
    "still feel unwell, call your local emergency number now.",
    named,
)
athlete_taken = SentenceOnTwo(
    "{coach} has deleted all data here. {other}, who already stood in for {coach}, coaches you "
    "from now on and gets your check-ins and alerts. If you don't want that: /leave"
)


def taken_over(coach: str, names: list[str], *, contact: bool) -> str:
    text = tr(
        "{coach} has deleted all data here. You now coach {names}: check-ins, changes to approve "
        "and alerts come to you. See /roster.",
        coach=coach, names=named(names),
    )  # fmt: skip
    if contact:
        return text
    return text + " " + tr("For when you can't answer an alert, name a second contact: /contact")


def please_call(coach: str, name: str, alert: str) -> str:
    return (
        tr(
            "{coach} has deleted all data here, and I can't follow up this alert any more. Please "
            "call {name} now.",
            coach=coach, name=name,
        )
        + "\n\n"
        + alert
    )  # fmt: skip


contact_over = SentenceOn(
    "{coach} has deleted all data here. You are no longer second contact and get no more alerts."
)
stand_in_over = SentenceOn("{coach} has deleted all data here, so you no longer stand in.")
contact_gone = SentenceOn(
    "{name} has deleted all data here and is no longer your second contact. To name somebody "
    "else: /contact"
)
stand_in_gone = SentenceOn("{name} has deleted all data here and no longer stands in for you.")
