"""What a message is on: of several on one topic that have not been sent yet, only the latest is."""

from __future__ import annotations

from dataclasses import asdict, dataclass, fields
from datetime import date
from typing import Any

from sqlalchemy import ColumnElement, bindparam
from sqlmodel import col

from bot.store.tables.traffic import OutboxRow, TopicKind


@dataclass(frozen=True, slots=True)
class Topic:
    """`about` is the id of what the kind names; `beside` and `day` set apart what it says so of."""

    kind: TopicKind
    about: int
    beside: int | None = None
    day: date | None = None

    @classmethod
    def of(cls, row: OutboxRow) -> Topic | None:
        if row.topic is None or row.topic_about is None:
            return None
        return cls(TopicKind(row.topic), row.topic_about, row.topic_beside, row.topic_day)

    def mark(self, row: OutboxRow) -> None:
        """Put a message on this topic."""
        row.topic, row.topic_about = self.kind, self.about
        row.topic_beside, row.topic_day = self.beside, self.day


def on(topic: Topic) -> tuple[ColumnElement[bool], ...]:
    """The conditions under which a row of the outbox is on this topic."""
    return _on(**asdict(topic))


def _on(*, kind: Any, about: Any, beside: Any, day: Any) -> tuple[ColumnElement[bool], ...]:
    return (
        col(OutboxRow.topic) == kind,
        col(OutboxRow.topic_about) == about,
        col(OutboxRow.topic_beside).is_not_distinct_from(beside),
        col(OutboxRow.topic_day).is_not_distinct_from(day),
    )


#: The same for a statement that is built once: the topic's fields are its values.
ON_TOPIC = _on(**{one.name: bindparam(one.name) for one in fields(Topic)})
