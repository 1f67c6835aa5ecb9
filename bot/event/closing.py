"""The end of a week: the word on the look, the mornings after, and when it is looked back on."""

from __future__ import annotations

from functools import partial

from bot.core.turn import Turn
from bot.debrief import after_show, debrief
from bot.event.season import words as words_season
from bot.event.stage import day as stage_day
from bot.people.people import get_person, speaking_to
from bot.people.telling import say_to
from bot.plan.next_load import looks
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow


def close_week(turn: Turn, profile: AthleteProfile, event: EventRow) -> None:
    """To be called once the event's day has been."""
    # The last reminder of the day may still wait, where the next event is set that evening: what
    # it would say is said here.
    row = stage_day.stage_row(turn.session, event)
    stage_day.cancel_reminders(turn, profile, row, due_ones_too=True)
    looks.ask_look(turn, profile, event)
    debrief.schedule(turn, profile, event)
    person = get_person(turn.session, profile.person_id)
    if event.kind == "trial":
        say_to(turn, person, partial(words_season.event_over, event.kind))
        return
    with speaking_to(person):
        after_show.begin(turn, profile, event)
