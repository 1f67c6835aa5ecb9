"""What goes first of all that comes in: danger, who is on stage today, mornings, and then views."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from sqlmodel import Session

from bot import features
from bot.core.use_cases import Came
from bot.safety.watch import may_be_urgent
from bot.store.tables.traffic import Urgency
from bot.week.events import chats_on_stage

_CAN_WAIT = frozenset(
    f"/{command.name}" for command in features.COMMANDS.values() if command.can_wait
)


def how_urgent(session: Session, now: datetime, came: Sequence[Came]) -> list[Urgency]:
    """How urgent each of them is; within one of these, and in a chat, who came first goes first."""
    chats = {chat for chat, _ in came if chat is not None}
    on_stage = chats_on_stage(session, chats, now)
    return [_of(said, on_stage=chat in on_stage) for chat, said in came]


def _of(said: str, *, on_stage: bool) -> Urgency:
    if may_be_urgent(said):
        return Urgency.URGENT
    if on_stage:
        return Urgency.STAGE_DAY
    word = said.partition(" ")[0].partition("@")[0].lower()
    return Urgency.VIEW if word in _CAN_WAIT else Urgency.ORDINARY
