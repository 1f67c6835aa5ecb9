"""what a message is on, as columns

The topic was a text such as "target:7:2027-05-08"; which decision's proposal a message put, and for
whose looks one asked, was said by its `dedupe`. What is none of the known kinds is on no topic.

Revision ID: 0049
Revises: 0048
"""

from __future__ import annotations

from datetime import date
from typing import Any

import sqlalchemy as sa
from alembic import op

revision: str = "0049"
down_revision: str | None = "0048"
branch_labels: str | None = None
depends_on: str | None = None

#: How each kind's text went on behind its name; "eye" as a topic named a message that gathers.
PARTS = {
    "target": ("about", "day"),
    "answer": ("about",),
    "alert": ("about", "beside"),
    "stage-day": ("about", "beside"),
    "learnt": ("about", "beside"),
    "eye": ("about", "beside"),
    "notes": ("about",),
    "roster": ("about",),
    "calendar": ("about",),
    "calendar-of": ("about",),
    "menu": ("about",),
    "code-refused": ("about",),
}
GATHERED, ASKED = "looks-gathered", "look-asked"

_outbox = sa.table(
    "outbox",
    sa.column("id", sa.Integer),
    sa.column("topic", sa.String),
    sa.column("dedupe", sa.String),
    sa.column("topic_about", sa.BigInteger),
    sa.column("topic_beside", sa.BigInteger),
    sa.column("topic_day", sa.Date),
    sa.column("decision_id", sa.Integer),
)


def upgrade() -> None:
    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.add_column(sa.Column("topic_about", sa.BigInteger(), nullable=True))
        batch_op.add_column(sa.Column("topic_beside", sa.BigInteger(), nullable=True))
        batch_op.add_column(sa.Column("topic_day", sa.Date(), nullable=True))
        batch_op.add_column(sa.Column("decision_id", sa.Integer(), nullable=True))
    _fill()
    op.drop_index("ix_outbox_topic", table_name="outbox")
    op.create_index("ix_outbox_topic", "outbox", ["topic", "topic_about"])
    op.create_index("ix_outbox_decision_id", "outbox", ["decision_id"])


def _fill() -> None:
    connection = op.get_bind()
    marked = sa.select(_outbox.c.id, _outbox.c.topic, _outbox.c.dedupe).where(
        sa.or_(
            _outbox.c.topic.is_not(None),
            _outbox.c.dedupe.like("sign-off:%"),
            _outbox.c.dedupe.like("eye:%"),
        )
    )
    for number, topic, dedupe in connection.execute(marked).all():
        values = {**_on(topic), **_from_dedupe(dedupe)}
        connection.execute(sa.update(_outbox).where(_outbox.c.id == number).values(**values))


def _on(topic: str | None) -> dict[str, Any]:
    kind, *rest = (topic or "").split(":")
    parts = dict(zip(PARTS.get(kind, ()), rest, strict=False))
    if not parts.get("about", "").removeprefix("-").isdigit():
        return {"topic": None}
    beside, day = parts.get("beside"), parts.get("day")
    return {
        "topic": GATHERED if kind == "eye" else kind,
        "topic_about": int(parts["about"]),
        "topic_beside": int(beside) if beside is not None and beside.isdigit() else None,
        "topic_day": date.fromisoformat(day) if day else None,
    }


def _from_dedupe(dedupe: str | None) -> dict[str, Any]:
    kind, *rest = (dedupe or "").split(":")
    if kind == "sign-off" and rest and rest[0].isdigit():
        return {"decision_id": int(rest[0])}
    if kind == "eye" and len(rest) == 3:
        coach, athlete, day = rest
        return {
            "topic": ASKED,
            "topic_about": int(coach),
            "topic_beside": int(athlete),
            "topic_day": date.fromisoformat(day),
        }
    return {}


def downgrade() -> None:
    connection = op.get_bind()
    named = sa.select(
        _outbox.c.id, _outbox.c.topic, _outbox.c.topic_about, _outbox.c.topic_beside,
        _outbox.c.topic_day,
    ).where(_outbox.c.topic.is_not(None))  # fmt: skip
    for number, kind, about, beside, day in connection.execute(named).all():
        rest = [about, *([beside] if beside is not None else []), *([day] if day else [])]
        text = ":".join([{GATHERED: "eye"}.get(kind, kind), *map(str, rest)])
        topic = None if kind == ASKED else text
        connection.execute(sa.update(_outbox).where(_outbox.c.id == number).values(topic=topic))
    op.drop_index("ix_outbox_decision_id", table_name="outbox")
    op.drop_index("ix_outbox_topic", table_name="outbox")
    op.create_index("ix_outbox_topic", "outbox", ["topic"])
    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.drop_column("decision_id")
        batch_op.drop_column("topic_day")
        batch_op.drop_column("topic_beside")
        batch_op.drop_column("topic_about")
