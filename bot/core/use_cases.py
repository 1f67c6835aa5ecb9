"""The ways from the queues into the use cases, as the parts that own the queues see them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any, NamedTuple

from sqlalchemy import Engine
from sqlmodel import Session

from bot.core.timing.clock import Clock
from bot.core.turn import ChatTurn, Context, Document, Incoming, Turn
from bot.store.tables.traffic import AgendaRow, FetchRow, OutboxRow, Urgency

#: What came in, as far as it says what is to go first: its chat, and what was typed or tapped.
Came = tuple[int | None, str]
#: What is worked out ahead: in a session that writes nothing, of the chat, with what came in, once it
#: is wanted. Where nothing of this chat's will take long for a while, until when.
Foresee = Callable[[Session, Context, int, Callable[[], Incoming | None]], datetime | None]
HowUrgent = Callable[[Session, datetime, Sequence[Came]], Sequence[Urgency]]


def all_alike(_session: Session, _now: datetime, came: Sequence[Came]) -> Sequence[Urgency]:
    return [Urgency.ORDINARY] * len(came)


def _nothing_more(*_about: object) -> None:
    """For a way that a deployment has no use for."""


@dataclass(frozen=True, slots=True)
class UseCases:
    """The ways from the queues into the services; each runs inside one open transaction."""

    incoming: Callable[[ChatTurn], None]
    due: Callable[[Turn, AgendaRow], None]
    undeliverable: Callable[[Turn, OutboxRow], None]
    # A chat got another id: (old, new).
    moved: Callable[[Turn, int, int], None] = _nothing_more
    # An update from this chat failed again and again, or could not be read: (chat id, what was said in
    # it, where that may be urgent).
    poisoned: Callable[[Turn, int, str], None] = _nothing_more
    # How urgent each of the things is that came in, so that what is more so goes first.
    how_urgent: HowUrgent = all_alike
    # What the answer to something may need and takes long to work out is worked out before the answer's
    # transaction begins, and at hand in it (`bot.store.working_out`).
    foresee: Foresee = _nothing_more
    # What is made of a downloaded file, outside any transaction: (row, content).
    unpack: Callable[[FetchRow, bytes, Context], object] = _nothing_more
    # What follows from it, in one; None for a file that could not be had.
    fetched: Callable[[Turn, FetchRow, object], None] = _nothing_more
    # The file that an outbox row names; None where what it was made of is gone.
    document: Callable[[Turn, dict[str, Any]], Document | None] = _nothing_more
    # Whether each way locks the people concerned before it reads anything, so that use cases at once
    # come out as one after the other without the database watching over every read.
    hold_their_people: bool = False
    # The same for a duty, before its own row is taken: whoever cancels one has locked people already.
    hold_duty: Callable[[Session, AgendaRow], None] = _nothing_more
    # Loads what answers need and is slow to load, beside the first that comes in: within a transaction
    # everybody who writes would wait for it, and at the start it would be memory for nothing.
    load: Callable[[], None] = _nothing_more


class Runtime(NamedTuple):
    """What those who work off the queues share; `context` tells the world as it is when it is asked."""

    engine: Engine
    use_cases: UseCases
    clock: Clock
    context: Callable[[], Context]
