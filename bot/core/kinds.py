"""Kinds of duty of which a subject may have several: "nudge:1" and "nudge:2" are both a nudge."""

from __future__ import annotations

from bot.store.tables.traffic import AgendaRow


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
