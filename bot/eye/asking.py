"""Asking a coach what they see, under the photos of a morning."""

from __future__ import annotations

from datetime import date

from bot.core.turn import Turn
from bot.eye import view, words
from bot.people.people import get_person
from bot.people.telling import say_to
from bot.store.tables.people import AthleteProfile, Person
from bot.week.observed import look_row


def ask(turn: Turn, coach: Person, profile: AthleteProfile, day: date) -> None:
    """One quiet line with a tap for each look, once a morning and coach; nothing where it is said."""
    number = profile.person_id
    if look_row(turn.session, number, day, coach.id or 0) is not None:
        return
    name = get_person(turn.session, number).first_name
    say_to(
        turn, coach,
        lambda: words.under_photos(name, view.day_words(turn.session, profile, day)),
        buttons=lambda: view.looks(number, day),
        silent=True,
        dedupe=f"eye:{number}:{day.isoformat()}:{coach.id}",
    )  # fmt: skip
