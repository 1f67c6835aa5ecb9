"""A second coach for a while, and the end of a coaching."""

from __future__ import annotations

from datetime import date

from bot.languages import tr
from bot.messages import coach_figures as figures

RIGHTS = {"full": "everything", "alerts": "alerts only"}


def second_button() -> str:
    return "Second coach"


def ask_whom(name: str) -> str:
    return f"For whom shall another coach stand beside you: only {name}, or all your athletes?"


def only_button(name: str) -> str:
    return f"Only {name}"


def all_button() -> str:
    return "All my athletes"


def ask_rights() -> str:
    return (
        "What may they do? Everything: see what you see, sign off, set figures, be told of alerts. "
        "Alerts only: be told of warnings and cautions, and acknowledge them."
    )


def rights_button(rights: str) -> str:
    return RIGHTS[rights].capitalize()


def ask_until() -> str:
    return "Until when, that day included? Send a date or tap one."


def until_event_button(day: date) -> str:
    return f"The day itself, {figures.day(day)}"


def until_day_after_button(day: date) -> str:
    return f"The day after, {figures.day(day)}"


def until_is_past() -> str:
    return "That day is over. Please send today or a later day."


def until_is_far(most: int) -> str:
    return f"That is far ahead. Please send a day within {most} days; it can be given again."


def what_is_invited(who: str, rights: str, until: date) -> str:
    return f"a second coach for {who} ({RIGHTS[rights]}, until {figures.day(until)})"


def who(name: str | None) -> str:
    return name or "all your athletes"


def invitation(coach: str, who_for: str, rights: str, until: date, ways_in: str) -> str:
    return (
        f"{coach} asks you to be second coach for {who_for} until {figures.day(until)} "
        f"({RIGHTS[rights]}). To say yes, {ways_in}"
    )


def theirs(name: str | None) -> str:
    return name or "their athletes"


def running(lines: list[str]) -> str:
    return "\n".join(["Beside you now:", *lines])


def running_line(name: str, who_for: str, rights: str, until: date) -> str:
    return f"- {name}: {who_for}, {RIGHTS[rights]}, until {figures.day(until)}"


def nobody() -> str:
    return "Nobody stands beside you now."


def add_button() -> str:
    return "Invite a second coach"


def remove_button(name: str) -> str:
    return f"End it for {name}"


def welcome(coach: str, who_for: str, rights: str, until: date) -> str:
    what = (
        "/roster shows them with everything that can be done; what waits for a word comes to you "
        f"as well, and the first of you to answer settles it. {coach} is told what you do."
        if rights == "full"
        else "Warnings and cautions come to you here as they come to their coach. Call the athlete, "
        "then press Acknowledge, so that everybody knows somebody is on it."
    )
    return (
        f"You are second coach for {who_for} until {figures.day(until)}, beside {coach}.\n\n{what}"
        "\n\nBrimline is no medical device; where health is concerned, a doctor decides. What you "
        "read here is private. Leave this chat's notifications on."
    )


def joined(name: str, who_for: str, rights: str, until: date) -> str:
    return (
        f"{name} is now second coach for {who_for} ({RIGHTS[rights]}) until {figures.day(until)}."
    )


def athlete_told_joined(coach: str, name: str, rights: str, until: date) -> str:
    sees = (
        "sees your check-ins and plan, and may set your figures"
        if rights == "full"
        else "is told of alerts about you"
    )
    return f"{name} stands beside your coach {coach} until {figures.day(until)}: {name} {sees}."


def did(second: str, name: str, what: str) -> str:
    """To the first coach; `what` as the history has it, such as "froze the adjusting"."""
    return tr("{second}, standing in, about {name}: {what}.", second=second, name=name, what=what)


def over(coach: str) -> str:
    return f"Your time as second coach beside {coach} is over. Thank you."


def over_told(name: str) -> str:
    return f"{name} is no longer second coach beside you."


def athlete_told_over(name: str) -> str:
    return f"{name} no longer stands beside your coach, and sees nothing of yours any more."


def unreachable(name: str) -> str:
    return (
        f"I can't reach {name}, your second coach, any more, so nothing arrives there. Everything "
        "still comes to you."
    )


def not_your_own() -> str:
    return "A second coach has to be somebody else. Forward the invitation to them."


def athlete_is_no_second(coach: str) -> str:
    return (
        f"You are one of {coach}'s athletes, and a second coach reads of other athletes' health, so "
        "that can't be you. The invitation is still good for somebody else."
    )


def not_given() -> str:
    return "That has ended already."


# The end of a coaching


def end_button() -> str:
    return "End the coaching"


def end_own() -> str:
    return "You coach yourself. /pause stops the check-ins until /resume."


def end_waits(name: str) -> str:
    return (
        f"Something about {name} is still open: an alert, or a figure that waits for your word. "
        "Settle it first: /alerts, /roster."
    )


def end_sure(name: str) -> str:
    return (
        f"End the coaching of {name}? Check-ins stop, you no longer see {name}'s answers, and "
        f"{name} keeps everything that was told and decided. Both of you are told. {name} can take "
        "up an invitation again at any time."
    )


def end_yes_button() -> str:
    return "End it"


def end_no_button() -> str:
    return "Go on"


def ended(name: str) -> str:
    return f"The coaching of {name} is ended, and {name} knows. They keep what is theirs."


def athlete_told_ended(coach: str) -> str:
    return (
        f"{coach} has ended the coaching, and sees nothing of yours any more. I stop asking in the "
        "mornings. What you told and what was decided stays yours: /past and /why show it. "
        "Another coach's invitation takes it up again. If you are in a low-carb week now, don't go "
        "on with it alone: eat and drink as you usually do."
    )


def goes_on() -> str:
    return "The coaching goes on."


def taken_up(name: str) -> str:
    return f"{name} is your athlete now, with what was told and decided before. See /roster."


def taken_up_own() -> str:
    return "You coach yourself now, with what was told and decided before. See /roster."


def athlete_told_taken_up(coach: str) -> str:
    return (
        f"{coach} is your coach now, and sees what you told and what was decided before. Check-ins "
        "begin again once event, plan and limits are set."
    )
