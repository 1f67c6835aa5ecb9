"""calendar files and debriefs

Revision ID: 0032
Revises: 0030
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0032"
down_revision: str | None = "0030"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "calendar",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=False),
        sa.Column("reader_id", sa.Integer(), nullable=False),
        sa.Column("root", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("entries", sa.JSON(), nullable=False),
        sa.Column("issued_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_calendar_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["event_id"], ["event.id"], name=op.f("fk_calendar_event_id_event")
        ),
        sa.ForeignKeyConstraint(
            ["reader_id"], ["person.id"], name=op.f("fk_calendar_reader_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_calendar")),
        sa.UniqueConstraint("event_id", "reader_id", name=op.f("uq_calendar_event_id_reader_id")),
    )
    with op.batch_alter_table("calendar", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_calendar_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_calendar_reader_id"), ["reader_id"], unique=False)

    op.create_table(
        "debrief",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("athlete_said", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("coach_note", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("sent_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_debrief_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["event_id"], ["event.id"], name=op.f("fk_debrief_event_id_event")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_debrief")),
        sa.UniqueConstraint("event_id", name=op.f("uq_debrief_event_id")),
    )
    with op.batch_alter_table("debrief", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_debrief_athlete_id"), ["athlete_id"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("debrief", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_debrief_athlete_id"))

    op.drop_table("debrief")
    with op.batch_alter_table("calendar", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_calendar_reader_id"))
        batch_op.drop_index(batch_op.f("ix_calendar_athlete_id"))

    op.drop_table("calendar")
