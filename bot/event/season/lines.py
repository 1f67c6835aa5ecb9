"""What is ahead of an athlete, as the card and the athlete's own views list it."""

from __future__ import annotations

from bot.core.turn import Turn
from bot.event.season import words
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import EventRow
from bot.week.load import current_event, events_ahead


def waiting(turn: Turn, profile: AthleteProfile) -> list[EventRow]:
    """The events behind the one that counts, by day."""
    counts = current_event(turn.session, profile.person_id)
    return [
        row for row in events_ahead(turn.session, profile.person_id)
        if counts is None or row.id != counts.id
    ]  # fmt: skip


def ahead_line(turn: Turn, profile: AthleteProfile) -> str:
    """One line for all of them; "" where there is none."""
    return words.ahead(
        [words.short(row.kind, row.day, row.class_name) for row in waiting(turn, profile)]
    )
