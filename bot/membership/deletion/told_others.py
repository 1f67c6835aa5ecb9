"""What others were told of an athlete, taken out of the queues once the athlete wants it gone.

What has been sent stands in the chats; here its words, buttons and files are emptied, and the rows
stay, so that other messages that hang on them still find their way. What still waits is not sent.
"""

from __future__ import annotations

import re
from collections.abc import Collection
from dataclasses import dataclass
from datetime import timedelta
from typing import Any

from sqlalchemy import Table, update
from sqlalchemy import select as pick
from sqlmodel import Session, col, select

from bot.alerts.buttons import ALERT
from bot.core.chat.buttons import card_of
from bot.core.chat.cards import ROSTER, SIGN
from bot.core.timing import agenda
from bot.core.timing.agenda import Several, Subject
from bot.core.turn import Turn
from bot.dialogue.asking import ANSWER
from bot.people.locks import hold_coaches
from bot.store.base import batches, id_of
from bot.store.tables import metadata
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow
from bot.store.tables.week import AlertRow, DecisionRow
from bot.store.traces import leave_no_trace

FORGET, FORGET_NAME = Several("forget"), "forget-name"
#: What is read in place of a name.
NO_NAME = "–"
#: Our own choice: what was being sent at the moment of the deletion has arrived or failed by then.
LOOK_AGAIN_AFTER = timedelta(hours=1)


@dataclass(frozen=True, slots=True)
class About:
    """How a message shows whom it is about: by name, or by what its buttons and files name."""

    athlete_id: int
    name: str
    alerts: frozenset[int]
    decisions: frozenset[int]
    questions: frozenset[int]

    def is_in(self, row: OutboxRow) -> bool:
        files = (row.attached or {}).values()
        if any(self.athlete_id in (file.get("athlete"), file.get("about")) for file in files):
            return True
        said = " ".join(str(row.payload.get(key, "")) for key in ("text", "caption"))
        return _names(said, self.name) or any(self._pressed(data) for data in _buttons(row.payload))

    def _pressed(self, data: str) -> bool:
        if (alert := ALERT.found_in(data)) is not None:
            return alert.alert in self.alerts
        if (proposal := SIGN.found_in(data)) is not None:
            return proposal.decision in self.decisions
        if (answer := ANSWER.found_in(data)) is not None:
            return answer.question in self.questions
        return not ROSTER.begins(data) and card_of(data) == self.athlete_id


def about(session: Session, athlete: Person) -> About:
    """To be asked while the rows are still there."""
    number = id_of(athlete)

    def ids(query: Any) -> frozenset[int]:
        return frozenset(one for one in session.exec(query) if one is not None)

    return About(
        number,
        athlete.first_name,
        ids(select(AlertRow.id).where(AlertRow.athlete_id == number)),
        ids(select(DecisionRow.id).where(DecisionRow.athlete_id == number)),
        ids(select(OpenQuestion.id).where(OpenQuestion.subject_id == number)),
    )


def chats_told(session: Session, athlete_id: int) -> frozenset[int]:
    """The chats of everybody who stands in a row about the athlete, and of their second contacts."""
    people: set[int] = set()
    for table in metadata.sorted_tables:
        if "athlete_id" in table.c or table.name == "athlete_profile":
            people |= _named(session, table, athlete_id)
    second = select(Person.second_contact_id).where(col(Person.id).in_(people))
    people |= {one for one in session.exec(second) if one is not None}
    chats = select(Person.chat_id).where(
        col(Person.id).in_(people - {athlete_id}), Person.id != athlete_id
    )
    return frozenset(session.exec(chats))


def _named(session: Session, table: Table, athlete_id: int) -> set[int]:
    whose = table.c.athlete_id if "athlete_id" in table.c else table.c.person_id
    columns = [
        column
        for column in table.c
        if any(key.target_fullname == "person.id" for key in column.foreign_keys)
    ]
    rows = session.connection().execute(pick(*columns).where(whose == athlete_id).distinct())
    return {number for row in rows for number in row if number is not None}


def forget(session: Session, chats: Collection[int], who: About) -> None:
    """Empty what was sent, drop what waits, and what these people typed here."""
    hold_coaches(session)
    session.connection().execute(
        update(InboxRow)
        .where(col(InboxRow.chat_id).in_(chats), col(InboxRow.status) != "new")
        .values(raw={}, problem="")
    )
    emptied: set[int] = set()
    rows = select(OutboxRow).where(col(OutboxRow.chat_id).in_(chats)).order_by(col(OutboxRow.id))
    for row in session.exec(rows):
        edits = row.edits_outbox_id in emptied
        if row.status == "sending" or not (edits or who.is_in(row)):
            continue
        emptied.add(id_of(row))
        if row.status == "waiting":
            row.status = "dropped"
        # Nothing else may be left out of it: others look for these fields in a row.
        row.payload = {key: "" for key in ("text", "caption") if key in row.payload}
        row.attached, row.problem = None, ""
    session.flush()
    leave_no_trace(session)


def take_name_out_of_messages(session: Session, chats: Collection[int], name: str) -> bool:
    """The name of a coach or contact who is gone, out of what these chats were told: the messages are
    the readers' own, so the rest of them stays. Whether one that names them is still to be sent.
    """
    still = False
    for some in batches(sorted(chats)):
        rows = select(OutboxRow).where(col(OutboxRow.chat_id).in_(some))
        for row in session.exec(rows):
            said = {key: row.payload[key] for key in ("text", "caption") if key in row.payload}
            if not any(_names(str(text), name) for text in said.values()):
                continue
            if row.status in ("waiting", "sending"):
                still = True
                continue
            row.payload = row.payload | {
                key: without_name(str(text), name) for key, text in said.items()
            }
            leave_no_trace(session)
    session.flush()
    return still


def name_due(turn: Turn, duty: AgendaRow) -> None:
    """The second look for a name, and as many as it takes."""
    kept = duty.payload
    if take_name_out_of_messages(turn.session, kept.get("chats", ()), kept.get("name", "")):
        look_for_name_again(turn, duty.subject, kept["chats"], kept["name"])
        return
    duty.payload = {}
    turn.session.add(duty)


def look_for_name_again(turn: Turn, subject: str, chats: Collection[int], name: str) -> None:
    agenda.put(
        turn.session, agenda.Named(subject, turn.now.date(), FORGET_NAME),
        due_at=turn.now + LOOK_AGAIN_AFTER, again=True,
        payload={"chats": sorted(chats), "name": name},
    )  # fmt: skip


def without_name(text: str, name: str) -> str:
    """The text without this name, wherever it stands as a word of its own."""
    return _word(name).sub(NO_NAME, text) if name else text


def _names(text: str, name: str) -> bool:
    return bool(name) and _word(name).search(text) is not None


def _word(name: str) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w){re.escape(name)}(?!\w)")


def look_again(turn: Turn, coach_id: int, chats: Collection[int], who: About) -> None:
    """Once more later, for what was on its way just now."""
    agenda.put(
        turn.session,
        agenda.Named(Subject.COACH(coach_id), turn.now.date(), FORGET(who.athlete_id)),
        due_at=turn.now + LOOK_AGAIN_AFTER,
        payload={
            "chats": sorted(chats), "name": who.name, "alerts": sorted(who.alerts),
            "decisions": sorted(who.decisions), "questions": sorted(who.questions),
        },
    )  # fmt: skip


def due(turn: Turn, duty: AgendaRow) -> None:
    """The second look; then the duty itself forgets whom it was about."""
    kept = duty.payload
    number = FORGET.number(duty)
    ids = (frozenset(kept.get(key, ())) for key in ("alerts", "decisions", "questions"))
    forget(turn.session, kept.get("chats", ()), About(number, kept.get("name", ""), *ids))
    duty.payload = {}
    turn.session.add(duty)


def _buttons(payload: dict[str, Any]) -> list[str]:
    rows = payload.get("reply_markup", {}).get("inline_keyboard", [])
    return [button.get("callback_data", "") for row in rows for button in row]
