"""What is going on while a use case runs: the open transaction, the time, who does what."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import datetime

from sqlmodel import Session

from bot.core.chat.incoming import Incoming
from bot.core.context import Context
from bot.store.tables.people import AthleteProfile, Person


@dataclass(frozen=True, slots=True)
class Turn:
    """One use case at work: everything it reads and writes goes through `session`, at `now`."""

    session: Session
    context: Context
    now: datetime = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "now", self.context.now)


@dataclass(frozen=True, slots=True)
class ChatTurn(Turn):
    """One that somebody's message or tap has set going."""

    incoming: Incoming

    def by(self, person: Person, *, words: str = "") -> Act:
        """The same, once it is known who it was and what was typed after a command."""
        return Act(self.session, self.context, self.incoming, person=person, words=words)


@dataclass(frozen=True, slots=True, kw_only=True)
class Act(ChatTurn):
    """What a known person does with a command or a button; `words` were typed after a command."""

    person: Person
    words: str = ""

    def on(self, profile: AthleteProfile) -> OnAthlete:
        """The same on an athlete, who has been found to be this person's to coach."""
        return OnAthlete(
            self.session, self.context, self.incoming,
            person=self.person, words=self.words, profile=profile,
        )  # fmt: skip


@dataclass(frozen=True, slots=True, kw_only=True)
class OnAthlete(Act):
    """What somebody who coaches this athlete does on the athlete's card."""

    profile: AthleteProfile

    @property
    def self_coached(self) -> bool:
        """Whether they are the athlete themselves."""
        return self.person.id == self.profile.person_id
