"""The debrief on one page: asked for from an athlete's card."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from bot.core.chat.outbox import send_document
from bot.core.turn import Document, OnAthlete, Turn
from bot.debrief import words as debrief_words
from bot.debrief.debrief import paragraphs
from bot.debrief.handout import words
from bot.debrief.past_week import newest_behind, week_behind
from bot.people.people import name_of, own_athlete, profile_of
from bot.people.telling import say_to
from bot.store.tables.people import Person
from bot.store.tables.week import EventRow

MAKE = "debrief-page"


def show(turn: OnAthlete) -> None:
    """Buttons "c:handout:ATHLETE": the newest week that lies behind."""
    profile = turn.profile
    name = name_of(turn.session, profile.person_id)
    own = turn.person.id == profile.person_id
    found = newest_behind(turn, profile)
    if found is None:
        say_to(turn, turn.person, debrief_words.none_yet(name, self_coached=own))
        return
    send_document(
        turn,
        chat_id=turn.person.chat_id,
        caption=words.own_caption() if own else words.caption(name),
        document={
            "make": MAKE, "reader": turn.person.id, "athlete": profile.person_id,
            "event": found.event.id, "at": turn.now.isoformat(),
        },
    )  # fmt: skip


def make(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The page; None for a reader who may not see it any more."""
    from bot.debrief.handout.page import Handout, handout_pdf  # noqa: PLC0415 - fpdf2, at the first use

    reader = turn.session.get(Person, named["reader"])
    event = turn.session.get(EventRow, named["event"])
    if reader is None or event is None:
        return None
    profile = profile_of(turn.session, named["athlete"])
    if profile is None or own_athlete(turn.session, reader, profile.person_id) is None:
        return None
    found = week_behind(turn.session, profile, event)
    if found is None:
        return None
    name = name_of(turn.session, profile.person_id)
    what = Handout(
        found, paragraphs(turn.session, reader, profile, found, to_hand_over=True), name=name,
        coach=name_of(turn.session, profile.coach_id),
        weight_unit=profile.weight_unit, made_at=datetime.fromisoformat(named["at"]),
    )  # fmt: skip
    return Document(f"debrief-{event.day.isoformat()}.pdf", handout_pdf(what))
