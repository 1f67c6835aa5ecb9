"""A text on its way to where it lands."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from bot.core.chat.routes import COACHING, Command
from bot.core.turn import ChatTurn
from bot.dialogue import asking
from bot.store.tables.people import OpenQuestion, Person


@dataclass(frozen=True, slots=True)
class House:
    """What the dispatcher knows: every flow, every command, and who this person is here."""

    flows: asking.Flows
    commands: Mapping[str, Command]
    roles: frozenset[str]


@dataclass(frozen=True, slots=True)
class Landing:
    """One text on its way. `heard`: a complaint in it was seen to, so that it has landed already."""

    turn: ChatTurn
    person: Person
    house: House
    asked: Sequence[OpenQuestion]
    heard: bool = False

    @property
    def text(self) -> str:
        return self.turn.incoming.text

    @property
    def latest(self) -> OpenQuestion | None:
        """The question that was put last and still waits."""
        return next((one for one in reversed(self.asked) if one.closed_at is None), None)

    @property
    def is_coach(self) -> bool:
        return bool(COACHING & self.house.roles)
