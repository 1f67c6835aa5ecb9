"""SentenceBy for anybody."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from enum import StrEnum

from bot.words import figures
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr, tr_if


class Media(StrEnum):
    """What came that holds no text to be read, by what its sender would call it."""

    VOICE = "voice"
    VIDEO = "video"
    STICKER = "sticker"
    PLACE = "place"
    CONTACT = "contact"
    ELSE = "else"


#: What an event is called inside a sentence.
KINDS = {"show": mark("show"), "shoot": mark("shoot"), "trial": mark("trial")}


def kind_word(kind: str) -> str:
    return tr(KINDS[kind]) if kind in KINDS else kind


#: The same where there is room to say more.
event_name = SentenceBy(
    {"show": mark("show"), "shoot": mark("photo shoot"), "trial": mark("trial")}
)


yes = Sentence("Yes")
no = Sentence("No")
not_yet = Sentence("Not yet")
none = Sentence("None")

not_your_button = Sentence("That button is not yours.")
question_closed = Sentence("That question is closed. /help lists what you can do now.")
already_answered = Sentence("That one is answered already. Use the newest message.")
asked_otherwise_now = Sentence(
    "My questions have changed since I last asked you. Please go on here: your answers are "
    "saved, except where I ask once more."
)
cancelled = Sentence("OK, nothing was changed.")
noted = Sentence("Saved.")
done_button = Sentence("That's all")
cancel_button = Sentence("No, leave it")
stranger = Sentence("Hello. This bot works by invitation. If you were given a code, send it here.")

private_chats_only = Sentence(
    "I only talk in private chats, since what is said here is personal. Write to me directly."
)
not_for_you = Sentence("I don't know that command. /help lists what you can do.")
help_menu = Sentence("What you can do here")
back_button = Sentence("Back to the card")
event_button = Sentence("Event")
not_your_athlete = Sentence("That athlete is not on your roster.")
no_such_day = Sentence(
    "There is no day to set yet: the event, plan and limits have to be set first."
)
nobody_coaches_you = Sentence(
    "Nobody coaches you right now. To start again, take a coach's invitation."
)
coaching_over = Sentence("Closed: the coaching has ended.")
setup_button = Sentence("Set up from a template")
draft_plan_button = Sentence("Draft a plan")
picture_button = Sentence("Chart")
sheet_button = Sentence("Plan as a sheet")
files_button = Sentence("Files")
past_weeks_button = Sentence("Past weeks")
handout_button = Sentence("Debrief as PDF")
calendar_button = Sentence("Calendar file")
message_empty = Sentence("That message was empty. Write what you want to say.")
reply_button = Sentence("Reply")
nobody_yet = Sentence("You have no athletes yet. /invite makes an invitation.")
skip_button = Sentence("Skip")
none_of_these_button = Sentence("None of these")
keep_it_button = Sentence("Keep it")
cannot_say_button = Sentence("Can't say")
no_event_ahead = Sentence("None of your athletes has an event ahead.")
something_off_button = Sentence("Something's off")
leave_out_button = Sentence("Leave it out")
take_back_button = Sentence("Take it back")
nothing_deleted = Sentence("OK, nothing was deleted.")
keep_them_button = Sentence("Keep them")
settled_already = Sentence("That is settled already.")
leave_it_button = Sentence("Leave it")
step_back_button = Sentence("Back")


def too_long_here(length: int, most: int) -> str:
    return tr(
        "That is {length} characters; {most} fit here. Please send a shorter version.",
        length=figures.number(length),
        most=most,
    )


minutes = SentenceOn("{number} min")


def refused(sentence: str, question: str) -> str:
    return f"{sentence}\n\n{question}"


def former() -> str:
    return stranger() + " " + tr("What is still saved about you: /mydata, /delete_my_data")


def gone_wrong(*, self_coached: bool = False) -> str:
    """`own`: somebody without another coach."""
    return tr_if(
        self_coached,
        "Something went wrong on my side, and your last message was not saved. All that came "
        "before it is. Please send it again in a while.",
        "Something went wrong on my side, and your last message was not saved. All that came before "
        "it is. Please send it again; if that fails too, call your coach.",
    )


def help_message(lines: Sequence[tuple[str, str]], example: str, *, self_coached: bool) -> str:
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
        rest = tr_if(
            self_coached,
            "Write anything else in your own words, at any time: what I can't answer I keep as "
            "your own note. If something feels wrong, write that too.",
            "Write anything else in your own words, at any time: what I can't answer, your coach "
            "gets. If something feels wrong, write that too.",
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
    return f"← {figures.short_day(day)}"


def later_button(day: date) -> str:
    return f"{figures.short_day(day)} →"


def not_active(status: str, *, self_coached: bool = False) -> str:
    """Why no check-ins run; `own`: somebody without another coach."""
    if self_coached and status in ON_YOUR_OWN:
        return tr(ON_YOUR_OWN[status])
    return {
        "onboarding": tr("Let's finish the first questions first."),
        "paused": tr("You have paused. /resume takes it up again."),
        "doctor-first": tr(
            "You need a doctor's clearance first. Then your coach starts the check-ins."
        ),
        "ended": (
            tr(
                "Nobody coaches you here now, so I ask nothing in the mornings. What you told me "
                "and what was decided is yours: /past, /why. To start again, take a coach's "
                "invitation."
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


def message_too_long(length: int, most: int) -> str:
    return tr(
        "That is {length} characters; {most} fit into one message. Please send it in parts.",
        length=figures.number(length),
        most=figures.number(most),
    )


def day_and_year(day: date) -> str:
    """ "Tue 10 Nov 2026"."""
    return tr("{day} {year}", day=figures.short_day(day), year=day.year)


CAPTION_UNITS = 1024  # what Telegram takes under a picture, in UTF-16 units


def fits_under_a_picture(text: str) -> bool:
    return len(text.encode("utf-16-le")) <= 2 * CAPTION_UNITS


LONGEST_SHOWN = 300  # characters of a sentence that is quoted


def shown(text: str) -> str:
    """The text, cut where it is too long to be quoted."""
    plain = text.strip()
    return plain if len(plain) <= LONGEST_SHOWN else f"{plain[: LONGEST_SHOWN - 1]}…"


def wrote(name: str, said: str) -> str:
    """A sentence of an athlete's among other notes."""
    return tr("{name} wrote: {said}", name=name, said=said)


def from_athlete(name: str, said: Sequence[str]) -> str:
    """All that came in one stretch; each sentence in a line of its own."""
    lines = said if len(said) == 1 else [f"• {one}" for one in said]
    return tr("From {name}:\n{text}", name=name, text="\n".join(lines))
