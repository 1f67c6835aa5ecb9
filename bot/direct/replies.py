"""Which message somebody answers: by Telegram's own reply, or by the button under it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from sqlmodel import Session, col, select

from bot.alerts import notes
from bot.alerts.buttons import ALERT
from bot.core.chat.buttons import card_of
from bot.core.chat.cards import MESSAGE, ROSTER, SIGN
from bot.core.turn import Incoming
from bot.direct.buttons import REPLY
from bot.people.people import get_profile, own_athlete
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import AlertRow, DecisionRow
from engine.written.chatter import is_chatter


@dataclass(frozen=True, slots=True)
class Answered:
    """The athlete whom a message of the bot's was about; `said` is what they had written there."""

    athlete_id: int
    said: str = ""


def message_answered(session: Session, person: Person, message_id: int | None) -> OutboxRow | None:
    """The bot's message with this id in the person's chat; None where it is not known any more."""
    if message_id is None:
        return None
    query = (
        select(OutboxRow)
        .where(
            OutboxRow.chat_id == person.chat_id,
            OutboxRow.message_id == message_id,
            OutboxRow.status == "sent",
            col(OutboxRow.edits_outbox_id).is_(None),
            OutboxRow.method != "editMessageText",
        )
        .order_by(col(OutboxRow.id).desc())
    )
    return session.exec(query).first()


def question_first(
    session: Session, person: Person, incoming: Incoming, asked: Sequence[OpenQuestion]
) -> list[OpenQuestion]:
    """The open questions with the one last whose message is answered, as if it had been put last."""
    row = message_answered(session, person, incoming.reply_to)
    meant = [one for one in asked if row is not None and one.outbox_id == row.id]
    return [one for one in asked if one not in meant] + meant


def about_athlete(
    session: Session, coach: Person, message_id: int | None, quoted: str = ""
) -> Answered | None:
    """Whom a message to this coach is about, while they coach them; and what it answers."""
    row = message_answered(session, coach, message_id)
    if row is None:
        return None
    gathered = notes.gathered_in(session, id_of(row))
    named = {note.athlete_id for note in gathered} or _named(session, row)
    if len(named) != 1:
        return None
    (athlete_id,) = named
    if own_athlete(session, coach, athlete_id) is None:
        return None
    said = quoted or "\n".join(_worth_quoting([note.said for note in gathered]))
    if not said and MESSAGE(athlete_id) in _data(row):
        # A message that was written as one: what stands under its heading.
        said = str(row.payload.get("text", "")).partition("\n")[2]
    return Answered(athlete_id, said.strip())


def _worth_quoting(gathered: Sequence[str]) -> Sequence[str]:
    """What was written there, but for an "ok" or a thumb beside it."""
    return [said for said in gathered if not is_chatter(said)] or gathered


def coach_answered(session: Session, athlete: Person, incoming: Incoming) -> int | None:
    """The coach whose message the athlete answers; None where it was none of a coach's."""
    row = message_answered(session, athlete, incoming.reply_to)
    for data in _data(row) if row is not None else ():
        to = REPLY.found_in(data)
        if to is not None:
            return to.person
    return None


def profile_named(session: Session, answered: Answered) -> AthleteProfile:
    return get_profile(session, answered.athlete_id)


def _data(row: OutboxRow) -> list[str]:
    keyboard = row.payload.get("reply_markup", {}).get("inline_keyboard", [])
    return [str(button.get("callback_data", "")) for line in keyboard for button in line]


def _named(session: Session, row: OutboxRow) -> set[int]:
    """The athletes whom the buttons of a message name, themselves or by an alert or a decision."""
    found: set[int] = set()
    for data in _data(row):
        about: AlertRow | DecisionRow | None = None
        if (alert := ALERT.found_in(data)) is not None:
            about = session.get(AlertRow, alert.alert)
        elif (proposal := SIGN.found_in(data)) is not None:
            about = session.get(DecisionRow, proposal.decision)
        elif not ROSTER.begins(data) and (athlete := card_of(data)) is not None:
            found.add(athlete)
        if about is not None:
            found.add(about.athlete_id)
    return found
