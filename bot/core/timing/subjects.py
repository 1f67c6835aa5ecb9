"""How the agenda names a duty: what it is about, "athlete:7", and which of several it is, "nudge:2"."""

from __future__ import annotations

from enum import StrEnum

from bot.store.tables.traffic import AgendaRow


class Subject(StrEnum):
    """What a duty may be about. Called with a number, one of them is written as the row keeps it."""

    ATHLETE = "athlete"
    COACH = "coach"
    GONE = "gone"  # a coach of whom no more than a number is left
    SECOND = "second"
    ALERT = "alert"
    DECISION = "decision"
    QUESTION = "question"

    def __call__(self, number: int | None) -> str:
        if number is None:
            raise ValueError(f"a duty about a {self} that has not been stored yet")
        return f"{self}:{number}"

    def of(self, duty: AgendaRow) -> int:
        """The number that a duty is about, which has to be about one of these."""
        found = about(duty)
        if found is None or found[0] is not self:
            raise ValueError(f"the duty {duty.kind} is about no {self}: {duty.subject}")
        return found[1]


def about(duty: AgendaRow) -> tuple[Subject, int] | None:
    """What a duty is about; None where that is nothing of these."""
    what, _, number = duty.subject.partition(":")
    return (Subject(what), int(number)) if what in set(Subject) and number.isdigit() else None


class Several(str):
    """Such a kind. Called with what tells one from another, it is written as the row keeps it."""

    __slots__ = ()

    def __call__(self, which: int | str) -> str:
        return f"{self}:{which}"

    def of(self, duty: AgendaRow) -> str:
        """What tells this duty from others of the kind. ValueError for one of another kind."""
        kind, _, which = duty.kind.partition(":")
        if kind != self or not which:
            raise ValueError(f"the duty {duty.kind} is none of several of the kind {self}")
        return which

    def number(self, duty: AgendaRow) -> int:
        """The same, where it is a number."""
        return int(self.of(duty))


def kind_alone(kind: str) -> str:
    """The kind of a duty without what tells it from others of it."""
    return kind.partition(":")[0]
