"""A coach's own settings and standing messages: which roster is open, when it grows stale."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.core.timing import agenda
from bot.core.timing.agenda import Subject
from bot.core.turn import Incoming, Turn
from bot.people import locks
from bot.store.base import id_of
from bot.store.remembering import remembered
from bot.store.tables.coach import CoachSettings
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.words import figures

ROSTER = "roster"
# Our own choice: long enough to gather a morning's answers, short enough to be up to date.
REFRESH_AFTER = timedelta(seconds=20)
# Our own choice: what is typed so soon after a card was opened is taken to be about its athlete.
CARD_OPEN_FOR = timedelta(minutes=30)


# Built once: building a statement costs more than asking it.
_TO_BE_REFRESHED = select(AgendaRow.id).where(
    AgendaRow.subject == bindparam("coach"), AgendaRow.kind == ROSTER, AgendaRow.status == "waiting"
)


@dataclass(frozen=True, slots=True)
class ShownAt:
    """A message by the outbox row that sent it, or by Telegram's id: one of the two."""

    outbox_id: int | None = None
    message_id: int | None = None


def settings_kept(session: Session, coach_id: int | None) -> CoachSettings | None:
    """A coach's side; that there is none is asked once, as for any row."""
    if coach_id is None:
        return None
    return remembered(
        session, CoachSettings, (coach_id,), lambda: session.get(CoachSettings, coach_id),
        flushes=False,
    )  # fmt: skip


def coach_settings_of(session: Session, coach: Person) -> CoachSettings:
    """A coach's side, set up where there is none yet."""
    settings = settings_kept(session, id_of(coach))
    if settings is None:
        settings = CoachSettings(person_id=id_of(coach))
        session.add(settings)
        session.flush()
    return settings


def zone_of_coach(session: Session, coach: Person) -> str | None:
    """The zone that the coach has told, or that they told as an athlete; None where neither."""
    settings = settings_kept(session, coach.id)
    if settings is not None and settings.zone is not None:
        return settings.zone
    profile = remembered(
        session, AthleteProfile, (coach.id,), lambda: session.get(AthleteProfile, coach.id),
        flushes=False,
    )  # fmt: skip
    return profile.zone if profile is not None else None


def own_moment(session: Session, reader: Person, profile: AthleteProfile, instant: datetime) -> str:
    """When something was done, on this reader's clocks; on the athlete's where those are not known."""
    return figures.moment_in(instant, zone_of_coach(session, reader) or profile.zone)


def clock_for(session: Session, reader: Person, profile: AthleteProfile, instant: datetime) -> str:
    """A time of an athlete's day as this reader's clocks show it, the athlete's beside it."""
    if reader.id == profile.person_id:
        return figures.clock_in(instant, profile.zone)
    here, name = zone_of_coach(session, reader), _first_name(session, profile)
    return figures.both_clocks(instant, here, profile.zone, name)


def moment_for(session: Session, reader: Person, profile: AthleteProfile, instant: datetime) -> str:
    """The same with the day."""
    if reader.id == profile.person_id:
        return figures.moment_in(instant, profile.zone)
    here, name = zone_of_coach(session, reader), _first_name(session, profile)
    return figures.both_moments(instant, here, profile.zone, name)


def _first_name(session: Session, profile: AthleteProfile) -> str:
    person = session.get(Person, profile.person_id)
    assert person is not None
    return person.first_name


def card_opened(turn: Turn, coach: Person, athlete_id: int) -> None:
    """Remember whose card the coach has before them."""
    settings = coach_settings_of(turn.session, coach)
    settings.card_athlete_id, settings.card_at = athlete_id, turn.now


def card_open(turn: Turn, coach: Person) -> int | None:
    """The athlete whose card the coach opened a short while ago."""
    settings = settings_kept(turn.session, coach.id)
    if settings is None or settings.card_at is None or turn.now - settings.card_at > CARD_OPEN_FOR:
        return None
    return settings.card_athlete_id


def roster_shown(session: Session, coach: Person, where: ShownAt, *, page: int, shown: str) -> None:
    """Remember which message is the roster now, and what of it is shown."""
    outbox_id = where.outbox_id
    if where.message_id is not None:
        outbox_id = _sent_as(session, coach, where.message_id)
    settings = coach_settings_of(session, coach)
    settings.roster_outbox_id = outbox_id
    settings.roster_message_id = None if outbox_id is not None else where.message_id
    settings.roster_page, settings.roster_filter = page, shown


def roster_left(session: Session, coach: Person, incoming: Incoming) -> None:
    """The message that was the roster shows something else now."""
    settings = settings_kept(session, coach.id)
    if settings is None or incoming.message_id is None:
        return
    sent = session.get(OutboxRow, settings.roster_outbox_id) if settings.roster_outbox_id else None
    if incoming.message_id in (settings.roster_message_id, sent.message_id if sent else None):
        settings.roster_outbox_id = settings.roster_message_id = None


def roster_message(session: Session, coach: Person) -> ShownAt | None:
    """The roster that the coach has open; None where there is none any more."""
    settings = settings_kept(session, coach.id)
    if settings is None:
        return None
    if settings.roster_message_id is not None:
        return ShownAt(message_id=settings.roster_message_id)
    sent = session.get(OutboxRow, settings.roster_outbox_id) if settings.roster_outbox_id else None
    if sent is None or sent.status in ("dropped", "failed"):
        return None
    return ShownAt(outbox_id=sent.id)


def roster_stale(turn: Turn, coach_id: int) -> None:
    """What the roster shows has changed: refresh it soon, once for all that changes meanwhile."""
    settings = settings_kept(turn.session, coach_id)
    if settings is None or (
        settings.roster_outbox_id is None and settings.roster_message_id is None
    ):
        return
    if _is_to_be_refreshed(turn.session, coach_id):
        return  # which waits until this turn is over
    locks.hold_coaches(turn.session)
    if not _is_to_be_refreshed(turn.session, coach_id):
        agenda.put(
            turn.session, agenda.Named(subject_of(coach_id), turn.now.date(), ROSTER),
            due_at=turn.now + REFRESH_AFTER, again=True,
        )  # fmt: skip


def _is_to_be_refreshed(session: Session, coach_id: int) -> bool:
    return (
        session.exec(_TO_BE_REFRESHED, params={"coach": subject_of(coach_id)}).first() is not None
    )


def subject_of(coach_id: int) -> str:
    return Subject.COACH(coach_id)


def _sent_as(session: Session, coach: Person, message_id: int) -> int | None:
    query = (
        select(OutboxRow.id)
        .where(
            OutboxRow.status == "sent",
            OutboxRow.chat_id == coach.chat_id,
            OutboxRow.message_id == message_id,
            col(OutboxRow.edits_outbox_id).is_(None),
            OutboxRow.method == "sendMessage",
        )
        .order_by(col(OutboxRow.id).desc())
    )
    return session.exec(query).first()
