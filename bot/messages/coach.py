"""What a coach reads of their athletes: the roster, one athlete's card, notes and messages."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.languages import tr
from bot.messages import coach_figures as figures
from bot.messages.names import word


def roster_menu() -> str:
    return tr("Your athletes, who needs you first")


def engine_note(name: str, why: str) -> str:
    return tr(
        "About {name}, nothing to do unless you want to. As {name} will read it:\n{why}",
        name=name,
        why=why,
    )


# The card


def card(name: str, lines: Sequence[str]) -> str:
    return "\n".join([name, *lines])


def no_event() -> str:
    return tr("No event yet")


def card_today(day: date, carb_g: float, water: str) -> str:
    return tr(
        "Today, {day}: {carb} carbs, water {water}",
        day=figures.day(day),
        carb=figures.grams(carb_g),
        water=water,
    )


def card_morning(numbers: str) -> str:
    return tr("This morning: {numbers}", numbers=numbers)


def card_also_told(
    symptoms: Sequence[str], gut: str | None, sleep_h: float | None, note: str
) -> str:
    """What came beside the morning's numbers; "" where there was nothing."""
    parts = [
        ", ".join(symptoms),
        tr("gut {gut}", gut=word(gut)) if gut not in (None, "fine") else "",
        tr("slept {hours} h", hours=figures.plain(sleep_h)) if sleep_h is not None else "",
        f'"{note}"' if note else "",
    ]
    told = "; ".join(part for part in parts if part)
    return tr("Also told today: {told}", told=told) if told else ""


def card_asked(at: str, zone: str, *, always_tomorrow: bool) -> str:
    if always_tomorrow:
        return tr("Check-in at {at} ({zone}); it sets the day after", at=at, zone=zone)
    return tr("Check-in at {at} ({zone}); it sets the day that begins", at=at, zone=zone)


def event_button() -> str:
    return tr("Event")


def plan_button() -> str:
    return tr("Plan")


def limits_button() -> str:
    return tr("Limits")


def why_button() -> str:
    return tr("Why")


def answers_button() -> str:
    return tr("First answers")


def message_button(name: str) -> str:
    return tr("Write to {name}", name=name)


def hand_button() -> str:
    return tr("Set a day by hand")


def freeze_button() -> str:
    return tr("Freeze")


def tomorrow_button(*, always_tomorrow: bool) -> str:
    return tr("Set the day that begins") if always_tomorrow else tr("Always set tomorrow")


def doctor_button() -> str:
    return tr("Doctor's word received")


def roster_button() -> str:
    return tr("Roster")


def not_your_athlete() -> str:
    return tr("That athlete is not on your roster.")


def nothing_decided_yet(name: str, *, own: bool) -> str:
    return (
        tr("Nothing has been decided for you yet.")
        if own
        else tr("Nothing is decided for {name} yet.", name=name)
    )


def why_as_seen(name: str, text: str, *, own: bool) -> str:
    return text if own else tr("As {name} sees it under /why:\n\n{text}", name=name, text=text)


def answers_as_given(name: str, lines: str) -> str:
    return tr("{name}'s first answers:\n\n{lines}", name=name, lines=lines)


def which_day() -> str:
    return tr(
        "Which day? A figure that you set by hand stays, whatever the check-in says, "
        "until you change it or the plan's figure of that day."
    )


def no_such_day() -> str:
    return tr(
        "There is no day of this week left to set. Event, plan and limits have to be there first."
    )


def always_tomorrow_changed(*, always_tomorrow: bool) -> str:
    return (
        tr("From the next check-in on, a morning sets the day after.")
        if always_tomorrow
        else tr("From the next check-in on, a morning sets the day that begins.")
    )


def doctor_sure(name: str, *, own: bool) -> str:
    if own:
        return tr(
            "Has a doctor, who knows what is planned, said that you may do this peak week? "
            "It is kept that you said so, and when."
        )
    return tr(
        "Has a doctor, who knows what is planned, said that {name} may do this peak week? "
        "It is kept that you said so, and when.",
        name=name,
    )


def doctor_yes_button() -> str:
    return tr("Yes, a doctor has")


def not_yet_button() -> str:
    return tr("Not yet")


def doctor_noted(name: str, *, own: bool) -> str:
    return (
        tr("Noted. Check-ins can begin.")
        if own
        else tr("Noted. {name}'s check-ins can begin.", name=name)
    )


def doctor_not_waiting() -> str:
    return tr("No doctor's word is being waited for.")


def left_waiting() -> str:
    return tr("Left as it is.")


def athlete_told_doctor(coach: str) -> str:
    return tr(
        "{coach} has noted that a doctor said yes to your peak week, so check-ins can "
        "begin. If that is not so, please tell your coach, and don't start.",
        coach=coach,
    )


# Messages from one to the other


def ask_message(name: str) -> str:
    return tr("What shall I tell {name}? Send it as one message.", name=name)


def ask_reply(coach: str) -> str:
    return tr("What shall I tell {coach}? Send it as one message.", coach=coach)


def message_empty() -> str:
    return tr("That was empty. Write what you want to say.")


def message_too_long(length: int, most: int) -> str:
    return tr(
        "That is {length} characters; {most} fit into one message. Please send it in parts.",
        length=figures.number(length),
        most=figures.number(most),
    )


def message_names_drug() -> str:
    return tr(
        "That names a drug, and I pass on nothing about drugs. It is a matter for a "
        "doctor. Please leave it out, or speak with them directly."
    )


def from_coach(coach: str, text: str) -> str:
    return tr("From your coach {coach}:\n{text}", coach=coach, text=text)


def from_athlete(name: str, text: str) -> str:
    return tr("From {name}:\n{text}", name=name, text=text)


def reply_button() -> str:
    return tr("Reply")


def message_sent(name: str) -> str:
    return tr("Sent to {name}.", name=name)


def message_may_not_arrive(name: str) -> str:
    return tr("{name} has stopped the bot, so this may not arrive. Please call them.", name=name)


# Somebody who cannot be reached


def athlete_unreachable(name: str) -> str:
    return tr(
        "I can't reach {name} any more: they have stopped the bot or left. No questions "
        "or targets arrive there. Please contact them directly; they only have to open "
        "this chat and press start to be back.",
        name=name,
    )


def contact_unreachable(name: str) -> str:
    return tr(
        "I can't reach {name}, your second contact, any more. Nobody would be told if "
        "you don't answer an alert. /contact invites somebody else.",
        name=name,
    )


def coach_unreachable(coach: str) -> str:
    return tr(
        "I can't reach {coach} here any more. Until {coach} is back, alerts about their "
        "athletes come to you at once. Please tell them.",
        coach=coach,
    )
