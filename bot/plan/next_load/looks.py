"""How a day looked, in the coach's verdict: tapped, or typed."""

from __future__ import annotations

import re
from datetime import timedelta
from functools import partial

from sqlmodel import col, select

from bot.core.chat.cards import LOOK, AtLook
from bot.core.chat.outbox import Button, Delivery
from bot.core.turn import Act, ChatTurn, Turn
from bot.debrief import words
from bot.debrief.words import LOOK_SAID
from bot.people.changes import Change
from bot.people.people import (
    approvers,
    athletes_seen_by,
    get_person,
    local_date,
    name_of,
    own_athlete,
    record,
)
from bot.people.telling import answer, rewrite, say_to
from bot.plan.next_load import next_load
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.words import common
from bot.words.languages import listed


def ask_look(turn: Turn, profile: AthleteProfile, event: EventRow) -> None:
    """The day after: flat, full or spilled over?"""
    coach, athlete = (
        get_person(turn.session, profile.coach_id),
        get_person(turn.session, profile.person_id),
    )
    say_to(
        turn,
        coach,
        partial(words.ask_own_look, event.kind)
        if coach.id == athlete.id
        else partial(words.ask_look, athlete.first_name, event.kind),
        buttons=partial(_buttons, event),
        how=Delivery(silent=True, dedupe=f"look:{event.id}"),
    )


def ask_look_again(turn: Turn, coach: Person, profile: AthleteProfile, event: EventRow) -> None:
    """The same, where they have begun to say it in words."""
    name = name_of(turn.session, profile.person_id)
    own = coach.id == profile.person_id
    text = words.own_look_still_asked() if own else words.look_still_asked(name)
    say_to(turn, coach, text, buttons=_buttons(event))


def _buttons(event: EventRow) -> list[list[Button]]:
    looks = [Button(words.look_button(look), LOOK(id_of(event), look)) for look in words.LOOKS]
    return [looks, [Button(common.cannot_say_button(), LOOK(id_of(event), "-"))]]


def look_tapped(turn: Act, pressed: AtLook) -> None:
    """Keep the word; a second one takes the place of the first."""
    event, look = turn.session.get(EventRow, pressed.event), pressed.look
    profile = (
        own_athlete(turn.session, turn.person, event.athlete_id) if event is not None else None
    )
    if event is None or profile is None or look not in {*words.LOOKS, "-"}:
        answer(turn, common.not_your_button())
        return
    event.look = None if look == "-" else look
    record(turn, profile.person_id, Change.LOOK(event=id_of(event), look=look), by=turn.person.id)
    name = name_of(turn.session, profile.person_id)
    self_coached = turn.person.id == profile.person_id
    kept = words.own_look_kept(look) if self_coached else words.look_kept(name, look)
    text = words.look_left() if look == "-" else kept
    rewrite(turn, text)
    if look != "-":
        next_load.offer(turn, turn.person, profile, event)


LISTENS_FOR = timedelta(days=7)  # our own choice: later a look is told of another week
BARE, MOST_WORDS = 3, 14
_WORD = re.compile(r"[\w'-]+")


def heard(turn: ChatTurn, person: Person) -> bool:
    """Whether the text was a verdict and nothing else; of a longer one that may be one the question is
    put as well, and the words are for somebody still.
    """
    words = _WORD.findall(turn.incoming.text.casefold())
    if "?" in turn.incoming.text or not 0 < len(words) <= MOST_WORDS or not _looks_in(words):
        return False
    missing = _missing(turn, person)
    if len(missing) != 1:
        return False
    profile, event = missing[0]
    ask_look_again(turn, person, profile, event)
    return len(words) <= BARE


def _looks_in(words: list[str]) -> bool:
    """Whether exactly one look is named."""
    text = f" {' '.join(words)} "
    named = {
        look for look, said in LOOK_SAID.items() if any(f" {one} " in text for one in listed(said))
    }
    return len(named) == 1


def _missing(turn: ChatTurn, person: Person) -> list[tuple[AthleteProfile, EventRow]]:
    """Events of the last days whose look this coach has not judged."""
    found = []
    for profile in athletes_seen_by(turn.session, person):
        if person.id not in {one.id for one in approvers(turn.session, profile)}:
            continue
        today = local_date(profile, turn.context)
        query = select(EventRow).where(
            EventRow.athlete_id == profile.person_id,
            col(EventRow.day) < today,
            col(EventRow.day) >= today - LISTENS_FOR,
            col(EventRow.look).is_(None),
        )
        found += [(profile, event) for event in turn.session.exec(query)]
    return found
