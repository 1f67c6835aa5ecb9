"""For whom a second coach stands in, with which rights, until which day; and what is said of it."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from functools import partial
from zoneinfo import ZoneInfo

from bot.dialogue.flow import (
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    buttons,
    day_in,
    one_of,
)
from bot.words import figures
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr, tr_if

RIGHTS = {"full": mark("everything"), "alerts": mark("alerts only")}

second_button = Sentence("Second coach")
all_button = Sentence("All my athletes")
ask_rights = Sentence(
    "What may they do? Everything: see what you see, approve changes, set days, get "
    "alerts. Alerts only: get warnings and cautions, and acknowledge them."
)
ask_until = Sentence("Until and including which day? Send a date or tap one.")
until_is_past = Sentence("That day is over. Please send today or a later day.")
nobody = Sentence("You have no second coach now.")
add_button = Sentence("Invite a second coach")
not_your_own = Sentence("A second coach has to be somebody else. Forward the invitation to them.")
not_given = Sentence("That has already ended.")
ask_whom = SentenceOn("A second coach for whom: only {name}, or all your athletes?")
only_button = SentenceOn("Only {name}")
rights_button = SentenceBy({"full": mark("Everything"), "alerts": mark("Alerts only")})
until_event_button = SentenceOn("Event day, {day}", figures.short_day)
until_day_after_button = SentenceOn("The day after, {day}", figures.short_day)
until_is_far = SentenceOn(
    "That is too far ahead. Please send a day within the next {most} days; you can extend it later."
)


def what_is_invited(who: str, rights: str, until: date) -> str:
    """After "for"."""
    return tr(
        "a second coach for {who} ({rights}, until {until})",
        who=who,
        rights=tr(RIGHTS[rights]),
        until=figures.short_day(until),
    )


def who(name: str | None) -> str:
    """After "for"."""
    return name or tr("all your athletes")


def invitation(coach: str, who_for: str, rights: str, until: date, ways_in: str) -> str:
    return tr(
        "{coach} asks you to be second coach for {who_for} until {until} ({rights}). "
        "To say yes, {ways_in}",
        coach=coach,
        who_for=who_for,
        until=figures.short_day(until),
        rights=tr(RIGHTS[rights]),
        ways_in=ways_in,
    )


def theirs(name: str | None) -> str:
    """After "for"."""
    return name or tr("their athletes")


def running(lines: list[str]) -> str:
    return "\n".join([tr("Second coaches now:"), *lines])


def running_line(name: str, who_for: str, rights: str, until: date) -> str:
    return tr(
        "- {name}: {who_for}, {rights}, until {until}",
        name=name,
        who_for=who_for,
        rights=tr(RIGHTS[rights]),
        until=figures.short_day(until),
    )


def beside(name: str, rights: str) -> str:
    return tr("{name} ({rights})", name=name, rights=tr(RIGHTS[rights]))


remove_button = SentenceOn("End it for {name}")


def welcome(coach: str, who_for: str, rights: str, until: date) -> str:
    return tr_if(
        rights == "full",
        "You are second coach for {who_for} until {until}, with {coach}.\n\n/roster shows "
        "them and everything you can do. Changes to approve come to both of you; the first "
        "answer counts. {coach} is told what you do.\n\nBrimline is not a medical device; "
        "where health is concerned, a doctor decides. What you read here is private. Leave "
        "this chat's notifications on.",
        "You are second coach for {who_for} until {until}, with {coach}.\n\nWarnings and "
        "cautions come to you here as they come to their coach. Call the athlete, then tap "
        "Acknowledge, so everybody knows somebody is on it.\n\nBrimline is not a medical "
        "device; where health is concerned, a doctor decides. What you read here is private. "
        "Leave this chat's notifications on.",
        who_for=who_for,
        until=figures.short_day(until),
        coach=coach,
    )


def joined(name: str, who_for: str, rights: str, until: date) -> str:
    return tr(
        "{name} is now second coach for {who_for} ({rights}) until {until}.",
        name=name,
        who_for=who_for,
        rights=tr(RIGHTS[rights]),
        until=figures.short_day(until),
    )


def athlete_told_joined(coach: str, name: str, rights: str, until: date) -> str:
    return tr_if(
        rights == "full",
        "{name} is your second coach, with {coach}, until {until}: {name} sees your "
        "check-ins and plan, and may set your days.",
        "{name} is your second coach, with {coach}, until {until}: {name} gets alerts about you.",
        name=name,
        coach=coach,
        until=figures.short_day(until),
    )


over = SentenceOn("Your time as second coach with {coach} is over. Thank you.")
over_told = SentenceOn("{name} is no longer your second coach.")
athlete_told_over = SentenceOn(
    "{name} is no longer your second coach and can't see anything of yours any more."
)
unreachable = SentenceOn(
    "I can't reach {name}, your second coach, any more. Everything still comes to you."
)
athlete_is_no_second = SentenceOn(
    "You are one of {coach}'s athletes, and a second coach reads about other athletes' "
    "health, so that can't be you. Somebody else can still use the invitation."
)
# The end of a coaching

end_button = Sentence("End the coaching")
end_own = Sentence("You coach yourself. /pause stops the check-ins until /resume.")
end_yes_button = Sentence("End it")
end_no_button = Sentence("Keep coaching")
taken_up_own = Sentence(
    "You coach yourself now, with all earlier answers and decisions. See /roster."
)
end_waits = SentenceOn(
    "Something about {name} is still open: an alert, or a change that waits for your "
    "approval. Settle it first: /alerts, /roster."
)
end_sure = SentenceOn(
    "End the coaching of {name}? Check-ins stop, you no longer see {name}'s answers, and "
    "{name} keeps all past answers and decisions. I tell you both. {name} can take a new "
    "invitation at any time."
)
ended = SentenceOn("The coaching of {name} has ended, and I have told {name}.")
athlete_told_ended = SentenceOn(
    "{coach} has ended the coaching and no longer sees anything of yours. Check-ins stop. "
    "If you are in a low-carb week now, don't go on with it alone: eat and drink as you "
    "usually do. Your past answers and decisions stay yours: /past and /why show them. To "
    "go on, take another coach's invitation."
)
taken_up = SentenceOn(
    "{name} is now your athlete, with all earlier answers and decisions. See /roster."
)
athlete_told_taken_up = SentenceOn(
    "{coach} is now your coach and sees your earlier answers and decisions. Check-ins "
    "start again once event, plan and limits are set."
)

AT_MOST_DAYS = 31  # our own choice: a stage weekend, a trip, an illness; not another coach for good
ONE, ALL = "one", "all"


def _read_until(text: str, answers: Answers) -> str:
    today = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_zone"])).date()
    day = day_in(text, today)
    if day < today:
        raise InvalidAnswer(until_is_past())
    if day - today > timedelta(days=AT_MOST_DAYS):
        raise InvalidAnswer(until_is_far(AT_MOST_DAYS))
    return day.isoformat()


def _until_choices(answers: Answers) -> Choices:
    if answers["_event_day"] is None:
        return ()
    event = date.fromisoformat(answers["_event_day"])
    after = event + timedelta(days=1)
    return (
        (Choice(until_event_button(event), event.isoformat()),),
        (Choice(until_day_after_button(after), after.isoformat()),),
    )


def _whom_choices(answers: Answers) -> Choices:
    return ((Choice(only_button(answers["_name"]), ONE), Choice(all_button(), ALL)),)


#: Context: "_name", the athlete's; "_event_day" (ISO or None); "_zone", the coach's.
SECOND = Flow(
    id="coach-second",
    steps=(
        Step(
            key="whom",
            ask=lambda answers: ask_whom(answers["_name"]),
            read=one_of(ONE, ALL),
            choices=_whom_choices,
        ),
        Step(
            key="rights",
            ask=ask_rights,
            read=one_of(*RIGHTS),
            choices=buttons(tuple((partial(rights_button, right), right) for right in RIGHTS)),
        ),
        Step(key="until", ask=ask_until, read_with=_read_until, choices=_until_choices),
    ),
)
