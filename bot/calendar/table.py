"""Calendar: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.calendar import file, words
from bot.calendar.file import ANEW
from bot.core.chat import cards
from bot.core.chat.routes import ATHLETE, COACH, Command, Duty, tap, view
from bot.dialogue.feature import After, Feature
from bot.people.changes import Follows, following

FEATURE = Feature(
    commands=(
        Command("calendar", ATHLETE | COACH, file.command, words.menu, rank=260, can_wait=True),
    ),
    taps=(tap(cards.CALENDAR_FILE, ATHLETE | COACH, file.tapped, words.not_here),),
    on_card=(view(cards.CALENDAR, file.on_card),),
    duties=(
        Duty(ANEW, file.send_anew, "the hour at which a changed week makes a new calendar file"),
    ),
    after=(After(following(Follows.CALENDAR), file.look_at_moved),),
)
