"""What is said of the language spoken, of leaving, and of everything that is kept of somebody."""

from __future__ import annotations

from bot.words.figures import capital, locale_of
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, tr, trn

language_menu = Sentence("In which language I write")
as_telegram_button = Sentence("As Telegram is set")
not_there = Sentence("I don't speak that language.")


def name(code: str) -> str:
    """ "Deutsch": what a language is called by those who speak it."""
    return capital(locale_of(code).get_display_name() or code)


which = SentenceOn("In which language shall I write to you? Now it is {language}.")
chosen = SentenceOn("I write {language} to you from now on. /language changes it.")
leave_menu = Sentence("End the coaching; your data stays yours")
sure_while_warned = Sentence(
    "A warning about you is still open. Leaving does not change that: if you still feel "
    "unwell, or are in doubt, call your local emergency number now."
)
sure_while_open = Sentence(
    "Anything still open (an alert, or a change waiting for approval) is closed too."
)
yes_button = Sentence("Yes, end it")
no_button = Sentence("No, keep coaching")
goes_on = Sentence("The coaching goes on.")
sure = SentenceOn(
    "End the coaching with {name}? Check-ins stop, and neither {name} nor a second coach "
    "sees anything of yours any more. I tell them that you have left. You keep all your "
    "answers and decisions, and can take a new invitation from any coach at any time."
)
left = SentenceOn(
    "You have ended the coaching with {name}, who no longer sees anything of yours. "
    "Check-ins stop. If you are in a low-carb week now, don't go on with it alone: eat and "
    "drink as you usually do. Your answers and decisions stay yours: /past and /why show "
    "them."
)
coach_told = SentenceOn(
    "{name} has ended the coaching. You no longer see {name}'s answers. To coach {name} "
    "again, send a new invitation: /invite"
)
coach_told_while_open = SentenceOn(
    "Everything open about {name} is closed, and I no longer repeat those alerts. If one "
    "of them worries you, please call {name}."
)
second_told = SentenceOnTwo(
    "{name} has ended the coaching with {coach}, so you no longer see anything of {name}."
)
closed = SentenceOn("Closed: {name} has ended the coaching.")
menu = Sentence("Everything saved about you, as files")


def caption(*, keep_days: int) -> str:
    parts = [
        tr("Everything that is saved about you, with the schema that says what each part means."),
        trn(
            "Messages are kept for {number} day.", "Messages are kept for {number} days.", keep_days
        ),
        tr("It holds health data: keep it safe."),
    ]
    parts.append(tr("To have it deleted: /delete_my_data."))
    return " ".join(parts)
