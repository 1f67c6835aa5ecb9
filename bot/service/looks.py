"""The coach's word on how a day looked."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming
from bot.messages import common
from bot.messages import outlook as words
from bot.outbox import Button, edit, say
from bot.service import next_load
from bot.service.people import get_person, own_athlete, record, speaking_to
from bot.service.tapping import answer
from bot.store.people import AthleteProfile, Person
from bot.store.week import EventRow


def ask_look(session: Session, profile: AthleteProfile, event: EventRow, context: Context) -> None:
    """The day after: flat, full or spilled over?"""
    coach, athlete = get_person(session, profile.coach_id), get_person(session, profile.person_id)
    with speaking_to(coach):
        looks = [Button(words.look_button(look), f"look:{event.id}:{look}") for look in words.LOOKS]
        say(
            session, chat_id=coach.chat_id, now=context.now, dedupe=f"look:{event.id}",
            text=words.ask_own_look(event.kind)
            if coach.id == athlete.id
            else words.ask_look(athlete.first_name, event.kind),
            buttons=[looks, [Button(words.look_unknown_button(), f"look:{event.id}:-")]],
            silent=True,
        )  # fmt: skip


def look_tapped(
    session: Session, coach: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Keep the word; a second one takes the place of the first."""
    number, look = (*arguments, "", "")[:2]
    event = session.get(EventRow, int(number)) if number.isdigit() else None
    profile = own_athlete(session, coach, event.athlete_id) if event is not None else None
    if event is None or profile is None or look not in {*words.LOOKS, "-"}:
        answer(session, incoming, context, common.not_your_button())
        return
    answer(session, incoming, context)
    event.look = None if look == "-" else look
    session.add(event)
    record(session, profile.person_id, "look", context, by=coach.id, event=event.id, look=look)
    name = get_person(session, profile.person_id).first_name
    own = coach.id == profile.person_id
    kept = words.own_look_kept(look) if own else words.look_kept(name, look)
    text = words.look_left() if look == "-" else kept
    if incoming.message_id is not None:
        edit(
            session, chat_id=coach.chat_id, message_id=incoming.message_id, text=text,
            now=context.now,
        )  # fmt: skip
    if look != "-":
        session.flush()
        next_load.offer(session, coach, profile, event, context)
