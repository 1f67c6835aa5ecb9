"""What may tell of the day's times, among other things: asked about with one tap, which sets it."""

from __future__ import annotations

from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import Act, Turn
from bot.event.stage import day as stage_day
from bot.event.stage import times_told, views, words
from bot.event.stage.buttons import LATE, TOLD, Told
from bot.people.people import name_of
from bot.people.telling import answer, say_to
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.words.languages import language
from engine.written.stage_perhaps import perhaps_stage_word, tells_a_time
from engine.written.stage_times import StageWord

#: How long before an event a time of day may well be one of the stage's.
AHEAD = timedelta(days=3)
#: As it stands on a button.
_CLOCK, _JOINT = "%H%M", "-"


def asked_about(turn: Turn, person: Person, text: str) -> bool:
    """Whether it may tell of when the classes of a day are on that this person may set; then it is
    asked, with the button that does it.
    """
    if not tells_a_time(text, language()):
        return False
    found = times_told.whose(turn, person, text, perhaps_stage_word)
    if found is None:
        return False
    profile, event, word = found
    own = profile.person_id == person.id
    name = name_of(turn.session, profile.person_id)
    if word.by_min is not None:
        row = stage_day.stage_row(turn.session, event)
        if not (stage_day.local_day(event, turn.context) and stage_day.running(row, turn.context)):
            return False
        label = words.late_button if word.by_min > 0 else words.early_button
        key = Button(label(abs(word.by_min)), LATE(profile.person_id, word.by_min))
        say_to(
            turn,
            person,
            words.perhaps_late() if own else words.perhaps_late_of(name),
            buttons=[[key]],
        )
        return True
    if not _is_near(turn, event):
        return False
    sentence = words.perhaps_times() if own else words.perhaps_times_of(name)
    say_to(turn, person, sentence, buttons=_keys(profile, word))
    return True


def tapped(turn: Act, pressed: Told) -> None:
    """Yes, that is when they are on."""
    found = views.day_of(turn, pressed.athlete)
    if found is None:
        return
    try:
        clocks = tuple(map(_clock, pressed.clocks.split(_JOINT)))
    except ValueError:  # no button of ours
        clocks = ()
    word = StageWord(pressed.which, clocks=clocks)
    done = bool(clocks) and times_told.set_by_word(turn, turn.person, *found, word)
    answer(turn, "" if done else words.day_not_here())


def _keys(profile: AthleteProfile, word: StageWord) -> Buttons:
    clocks = _JOINT.join(f"{clock:{_CLOCK}}" for clock in word.clocks)
    label = words.on_stage_button([f"{clock:%H:%M}" for clock in word.clocks])
    return [[Button(label, TOLD(profile.person_id, word.which, clocks))]]


def _clock(said: str) -> time:
    return datetime.strptime(said, _CLOCK).time()  # noqa: DTZ007 (a time of day has no zone)


def _is_near(turn: Turn, event: EventRow) -> bool:
    today = turn.now.astimezone(ZoneInfo(event.zone)).date()
    return timedelta(0) <= event.day - today <= AHEAD
