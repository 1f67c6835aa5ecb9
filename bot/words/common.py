"""Sentences for anybody."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.words import coach_figures as figures
from bot.words.languages import mark, tr

#: What an event is called inside a sentence.
KINDS = {"show": mark("show"), "shoot": mark("shoot"), "trial": mark("trial")}


def kind_word(kind: str) -> str:
    return tr(KINDS[kind]) if kind in KINDS else kind


#: The same where there is room to say more.
EVENT_NAMES = {"show": mark("show"), "shoot": mark("photo shoot"), "trial": mark("trial")}


def event_name(kind: str) -> str:
    return tr(EVENT_NAMES[kind])


def their_time(when: str) -> str:
    """A moment on the clocks of somebody else than the reader."""
    return tr("{when} their time", when=when)


def yes() -> str:
    return tr("Yes")


def no() -> str:
    return tr("No")


def not_yet() -> str:
    return tr("Not yet")


def none() -> str:
    return tr("None")


def minutes(number: int) -> str:
    return tr("{number} min", number=number)


def refused(sentence: str, question: str) -> str:
    return f"{sentence}\n\n{question}"


def not_your_button() -> str:
    return tr("That button is not yours.")


def question_closed() -> str:
    return tr("That question is closed. /help lists what you can do now.")


def already_answered() -> str:
    return tr("That one is answered already. Use the newest message.")


def asked_otherwise_now() -> str:
    return tr(
        "My questions have changed since I last asked you. Please go on here: your answers are "
        "saved, except where I ask once more."
    )


def cancelled() -> str:
    return tr("OK, nothing was changed.")


def noted() -> str:
    return tr("Saved.")


def done_button() -> str:
    return tr("That's all")


def cancel_button() -> str:
    return tr("No, leave it")


def stranger() -> str:
    return tr("Hello. This bot works by invitation. If you were given a code, send it here.")


def former() -> str:
    return stranger() + " " + tr("What is still saved about you: /mydata, /delete_my_data")


def private_chats_only() -> str:
    return tr(
        "I only talk in private chats, since what is said here is personal. Write to me directly."
    )


def not_for_you() -> str:
    return tr("I don't know that command. /help lists what you can do.")


def gone_wrong(*, own: bool = False) -> str:
    """`own`: somebody without another coach."""
    if own:
        return tr(
            "Something went wrong on my side, and your last message was not saved. All that came "
            "before it is. Please send it again in a while."
        )
    return tr(
        "Something went wrong on my side, and your last message was not saved. All that came before "
        "it is. Please send it again; if that fails too, call your coach."
    )


def help_menu() -> str:
    return tr("What you can do here")


def help_message(lines: Sequence[tuple[str, str]], example: str, *, own: bool) -> str:
    """What this person can do, from the list of commands itself.

    `example`: an athlete's morning in one line in their units, "" for who is none; `own`: somebody
    without another coach.
    """
    parts = ["\n".join(f"/{name}  {what}" for name, what in lines)]
    if example:
        line = tr(
            "Your morning in one line: weight, fullness (1 to 10), water, and from the load on "
            "sharpness (1 to 5), such as {example}. Editing that message changes the answer.",
            example=example,
        )
        rest = (
            tr(
                "Write anything else in your own words, at any time: what I can't answer I keep as "
                "your own note. If something feels wrong, write that too."
            )
            if own
            else tr(
                "Write anything else in your own words, at any time: what I can't answer, your coach "
                "gets. If something feels wrong, write that too."
            )
        )
        parts.append(f"{line}\n{rest}")
    parts.append(
        tr(
            "I am not a doctor or a medical device. Fainting, chest pain, palpitations, weak limbs, "
            "confusion, a fit, trouble breathing, repeated vomiting, severe headache: stop and call "
            "the local emergency number."
        )
    )
    return "\n\n".join(parts)


def earlier_button(day: date) -> str:
    return f"← {figures.day(day)}"


def later_button(day: date) -> str:
    return f"{figures.day(day)} →"


def back_button() -> str:
    return tr("Back to the card")


def event_button() -> str:
    return tr("Event")


def not_your_athlete() -> str:
    return tr("That athlete is not on your roster.")


def no_such_day() -> str:
    return tr("There is no day to set yet: the event, plan and limits have to be set first.")


def nobody_coaches_you() -> str:
    return tr("Nobody coaches you right now. To start again, take a coach's invitation.")


def coaching_over() -> str:
    return tr("Closed: the coaching has ended.")


def setup_button() -> str:
    return tr("Set up from a template")


def draft_plan_button() -> str:
    return tr("Draft a plan")


def picture_button() -> str:
    return tr("Chart")


def sheet_button() -> str:
    return tr("Plan as a sheet")


def files_button() -> str:
    return tr("Files")


def past_weeks_button() -> str:
    return tr("Past weeks")


def handout_button() -> str:
    return tr("Debrief as PDF")


def calendar_button() -> str:
    return tr("Calendar file")


def not_active(status: str, *, own: bool = False) -> str:
    """Why no check-ins run; `own`: somebody without another coach."""
    if own and status in ON_YOUR_OWN:
        return tr(ON_YOUR_OWN[status])
    return {
        "onboarding": tr("Let's finish the first questions first."),
        "paused": tr("You have paused. /resume takes it up again."),
        "doctor-first": tr(
            "You need a doctor's clearance first. Then your coach starts the check-ins."
        ),
        "ended": (
            tr(
                "Nobody coaches you here now, so I ask nothing in the mornings. What you told and what "
                "was decided is yours: /past, /why. A coach's invitation takes it up again."
            )
        ),
        "declined": tr("Nothing is open for you here. Your coach can send a new invitation."),
    }[status]


ON_YOUR_OWN = {
    "doctor-first": mark(
        "You need a doctor's clearance first. Note it on your card (/roster), then check-ins start."
    ),
    "declined": mark("Nothing is open for you here. /selfcoach begins again."),
}


def message_empty() -> str:
    return tr("That message was empty. Write what you want to say.")


def message_too_long(length: int, most: int) -> str:
    return tr(
        "That is {length} characters; {most} fit into one message. Please send it in parts.",
        length=figures.number(length),
        most=figures.number(most),
    )


def reply_button() -> str:
    return tr("Reply")


def nobody_yet() -> str:
    return tr("You have no athletes yet. /invite makes an invitation.")


def day_and_year(day: date) -> str:
    """ "Tue 10 Nov 2026"."""
    return tr("{day} {year}", day=figures.day(day), year=day.year)
