"""Asking a coach what they see, under the photos of a morning: one message for all of it."""

from __future__ import annotations

from datetime import date, timedelta
from functools import partial

from sqlmodel import Session, col, select

from bot.core.chat.outbox import Button, Delivery, Shown, Topic
from bot.core.turn import Turn
from bot.decision.eye import view, words
from bot.decision.eye.buttons import EYE
from bot.people.people import name_of
from bot.people.rights import athletes_seen_by
from bot.people.telling import edit_to, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.photos import PhotoRow
from bot.store.tables.traffic import OutboxRow, TopicKind
from bot.week.cases import look_row

#: Photos that came within this are one morning's, of whatever zones: asked of in one message.
ONE_MORNING = timedelta(hours=6)
MOST_NAMED = 60


def ask(turn: Turn, coach: Person, profile: AthleteProfile, day: date) -> None:
    """One quiet line with a tap for each look. Where others' photos have come before on the same
    morning, that line names them all instead, and a name opens the looks; nothing where it is said.
    """
    number = profile.person_id
    if look_row(turn.session, number, day, id_of(coach)) is not None:
        return
    asked = _asked_before(turn, coach)
    waiting = _waiting(turn, coach)
    if asked is None or len(waiting) < 2:
        name = name_of(turn.session, number)
        say_to(
            turn, coach,
            lambda: words.under_photos(name, view.day_words(turn.session, profile, day)),
            buttons=lambda: view.looks(number, day),
            how=Delivery(
                silent=True, topic=Topic(TopicKind.LOOK_ASKED, id_of(coach), number, day),
                dedupe=f"eye:{coach.id}:{number}:{day.isoformat()}",
            ),
        )  # fmt: skip
        return
    names = [
        Button(name_of(turn.session, athlete), EYE(athlete, on))
        for athlete, on in waiting[:MOST_NAMED]
    ]
    topic = Topic(TopicKind.LOOKS_GATHERED, id_of(coach), id_of(asked))
    edit_to(
        turn, coach, Shown(coach.chat_id, outbox_id=id_of(asked), topic=topic),
        partial(words.under_photos_of, len(waiting)),
        buttons=[names[at : at + 3] for at in range(0, len(names), 3)],
    )  # fmt: skip


def _asked_before(turn: Turn, coach: Person) -> OutboxRow | None:
    """The message of this morning in which this coach has been asked already."""
    query = select(OutboxRow).where(
        OutboxRow.topic == TopicKind.LOOK_ASKED,
        OutboxRow.topic_about == coach.id,
        col(OutboxRow.created_at) > turn.now - ONE_MORNING,
    )
    return turn.session.exec(query.order_by(col(OutboxRow.id))).first()


def _waiting(turn: Turn, coach: Person) -> list[tuple[int, date]]:
    """Whose photos have come on this morning and have had no look of this coach's, oldest first."""
    theirs = [profile.person_id for profile in athletes_seen_by(turn.session, coach)]
    came = select(col(PhotoRow.athlete_id), col(PhotoRow.date)).where(
        col(PhotoRow.athlete_id).in_(theirs),
        col(PhotoRow.date) >= (turn.now - ONE_MORNING).date() - timedelta(days=1),
        col(PhotoRow.forwarded_at) > turn.now - ONE_MORNING,
    )
    rows = turn.session.exec(came.order_by(col(PhotoRow.forwarded_at), col(PhotoRow.id))).all()
    mornings = dict.fromkeys((athlete, day) for athlete, day in rows)
    return [one for one in mornings if not _seen(turn.session, coach, *one)]


def _seen(session: Session, coach: Person, athlete_id: int, day: date) -> bool:
    return look_row(session, athlete_id, day, id_of(coach)) is not None
