"""What must be so after any faults whatever. What is found wrong is told in a line each."""

from __future__ import annotations

import json
import re
from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from sqlmodel import Session, col, select

from bot.alerts.delivery import WITHIN
from bot.store.tables.people import Person
from bot.store.tables.setting import SettingRow
from bot.store.tables.traffic import InboxRow, OutboxRow, TopicKind, Urgency
from bot.store.tables.week import AlertRow, DaySetRow, DecisionRow, EventRow, LimitsRow
from tests.support.shaken.people import ATHLETES, COACH_OF, COACHES, NAMES, Act
from tests.support.shaken.process import DUTY, UPDATE

Calls = Sequence[Mapping[str, Any]]

CARBS = re.compile(r"\bCarbs (\d+) g")
OPEN = ("waiting", "sending")


@dataclass
class Witness:
    """What people did: each update that they caused, and who had stopped the bot for a while."""

    said: dict[int, tuple[Act, datetime]] = field(default_factory=dict)
    blocked: set[int] = field(default_factory=set)


def wrong(session: Session, calls: Calls, witness: Witness) -> list[str]:
    """Everything that must not be so, once nothing waits any more."""
    taken = [call for call in calls if "refused" not in call]
    return [
        *_lost(session, witness),
        *_done_twice(session),
        *_decided_twice(session),
        *_not_told(session, taken, witness),
        *_outside_limits(session, taken),
        *_strays(session, taken),
    ]


def _lost(session: Session, witness: Witness) -> Iterator[str]:
    """Every update was confirmed by the end: each has to be there, and answered."""
    inbox = {row.update_id: row for row in session.exec(select(InboxRow))}
    for number, (act, _) in witness.said.items():
        row = inbox.get(number)
        if row is None:
            yield f"update {number} was confirmed and is not there: {act}"
        elif row.status != "done":
            yield f"update {number} is {row.status} ({row.problem}): {act}"
        elif act.text and row.raw["message"]["text"] != act.text:
            yield f"update {number} reads otherwise: {row.raw}"
    yield from _unheard(session, witness)


def _unheard(session: Session, witness: Witness) -> Iterator[str]:
    """Each morning's line went into a decision, or something was asked about it: for which day it
    counts depends on which question was open."""
    chats = {person.id: person.chat_id for person in session.exec(select(Person))}
    heard: dict[int, list[str]] = defaultdict(list)
    for decision in session.exec(select(DecisionRow)):
        heard[chats[decision.athlete_id] or 0].append(json.dumps(decision.case))
    for row in session.exec(select(OutboxRow)):
        heard[row.chat_id].append(row.payload.get("text", ""))
    for number, (act, _) in witness.said.items():
        if act.morning and not any(act.text.split()[0] in told for told in heard[act.chat]):
            yield f"update {number} came to nothing: {NAMES[act.chat]} wrote {act.text!r}"


def _notes(session: Session) -> dict[str, str]:
    """How often each update and duty was done, and when, by name."""
    return {
        row.name: row.value
        for row in session.exec(select(SettingRow))
        if row.name.startswith((UPDATE, DUTY))
    }


def _done_twice(session: Session) -> Iterator[str]:
    notes = _notes(session)
    for name, note in notes.items():
        if (times := note.split()[0]) != "1":
            yield f"{name} was done {times} times"
    for row in session.exec(select(InboxRow).where(InboxRow.status == "done")):
        if "message" in row.raw and f"{UPDATE}{row.update_id}" not in notes:
            yield f"update {row.update_id} counts as done, and nobody did it"


def _decided_twice(session: Session) -> Iterator[str]:
    counting = Counter(
        row.checkin_id
        for row in session.exec(select(DecisionRow))
        if row.status in ("in-force", "waiting")
    )
    yield from (f"check-in {n} has {count} decisions" for n, count in counting.items() if count > 1)


def _not_told(session: Session, taken: Calls, witness: Witness) -> Iterator[str]:
    """Each alert came into its coach's chat, or still waits to be sent there."""
    shown = _shown(taken)
    chats = {person.id: person.chat_id for person in session.exec(select(Person))}
    rows: dict[tuple[int | None, int | None], list[OutboxRow]] = defaultdict(list)
    about_alerts = select(OutboxRow).where(OutboxRow.topic == TopicKind.ALERT)
    for row in session.exec(about_alerts.order_by(col(OutboxRow.id))):
        rows[row.topic_about, row.topic_beside].append(row)
    alerts = session.exec(select(AlertRow).order_by(col(AlertRow.id))).all()
    for alert in alerts:
        if alert.level == "advisory":
            continue
        told = [row for row in rows[alert.id, alert.coach_id] if row.method == "sendMessage"]
        if not told and WITHIN not in alert.facts:
            yield f"alert {alert.id} ({alert.flag}) was put to nobody"
        elif told and not any(
            row.status in OPEN or row.payload["text"] in shown[chats[alert.coach_id] or 0]
            for row in told
        ):
            yield f"alert {alert.id} ({alert.flag}) came into no chat: {[row.status for row in told]}"
    for row in session.exec(select(OutboxRow).where(OutboxRow.urgency >= Urgency.URGENT)):
        if row.status == "failed" and row.chat_id not in witness.blocked:
            yield f"urgent message {row.id} was given up: {row.problem}"
    for act, _ in witness.said.values():
        coach = COACH_OF.get(act.chat)
        if act.fainted and coach and not any(act.text in text for text in shown[coach]):
            yield f"{NAMES[act.chat]} wrote {act.text!r}, and {NAMES[coach]} never read it"


def _outside_limits(session: Session, taken: Calls) -> Iterator[str]:
    bounds: dict[int, dict[str, float]] = {}
    athletes: dict[int, int] = {}
    events = {event.id: event.athlete_id for event in session.exec(select(EventRow))}
    for row in session.exec(select(LimitsRow).order_by(col(LimitsRow.id))):
        bounds[events[row.event_id]] = row.bounds
    for person in session.exec(select(Person)):
        athletes[person.chat_id or 0] = person.id or 0

    def outside(athlete: int, carb_g: float) -> bool:
        of = bounds[athlete]
        return not of["carb_floor_g"] <= carb_g <= of["carb_ceiling_g"]

    for day in session.exec(select(DaySetRow)):
        if outside(day.athlete_id, day.carb_g):
            yield f"{day.carb_g} g are set for {day.date} of athlete {day.athlete_id}"
    for chat, texts in _shown(taken).items():
        for text in texts if chat in COACH_OF else ():
            for grams in CARBS.findall(text):
                if outside(athletes[chat], float(grams)):
                    yield f"{NAMES[chat]} was told {grams} g"


def _strays(session: Session, taken: Calls) -> Iterator[str]:
    """Nobody reads of somebody who is not theirs, and what came into a chat was written for it."""
    knows = {chat: {NAMES[coach], NAMES[chat]} for chat, coach in COACH_OF.items()}
    knows |= {chat: {name, *ATHLETES[name]} for name, chat in COACHES.items()}
    names = {name: re.compile(rf"\b{name}\b") for name in NAMES.values()}
    written: dict[str, set[int]] = defaultdict(set)
    for row in session.exec(select(OutboxRow)):
        if row.method != "answerCallbackQuery":
            written[str(row.payload.get("text", f"<{row.method}>"))].add(row.chat_id)
    for call in taken:
        if "chat_id" not in call["fields"]:
            continue
        chat = int(call["fields"]["chat_id"])
        text = call["fields"].get("text", f"<{call['method']}>")
        if chat not in knows:
            yield f"a stranger's chat {chat} got {text!r}"
            continue
        told = json.dumps(call["fields"], ensure_ascii=False)
        for name, pattern in names.items():
            if name not in knows[chat] and pattern.search(told):
                yield f"{NAMES[chat]} reads of {name}: {text!r}"
        if chat not in written[text]:
            yield f"{NAMES[chat]} got what was not written for them: {text!r}"


def _shown(taken: Calls) -> dict[int, list[str]]:
    """Everything that was ever to be read in each chat."""
    shown: dict[int, list[str]] = defaultdict(list)
    for call in taken:
        if "chat_id" in call["fields"]:
            shown[int(call["fields"]["chat_id"])].append(call["fields"].get("text", ""))
    return shown
