"""The end of a week: the word on the look, the mornings after, and when it is looked back on."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.messages import athlete as words
from bot.outbox import say
from bot.service import after_show, debrief, looks, stage_day
from bot.service.people import get_person, speaking_to
from bot.store.people import AthleteProfile
from bot.store.week import EventRow


def close_week(
    session: Session, profile: AthleteProfile, event: EventRow, context: Context
) -> None:
    """To be called once the event's day has been."""
    # The last reminder of the day may still wait, where the next event is set that evening: what
    # it would say is said here.
    stage_day.cancel_reminders(session, profile, context, due_ones_too=True)
    looks.ask_look(session, profile, event, context)
    debrief.schedule(session, profile, event, context)
    person = get_person(session, profile.person_id)
    with speaking_to(person):
        if event.kind != "trial":
            after_show.begin(session, profile, event, context)
        else:
            say(session, chat_id=person.chat_id, text=words.event_over(event.kind), now=context.now)
