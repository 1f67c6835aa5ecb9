"""stage day

Revision ID: 0022
Revises: 0021
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

import bot.store.driver

revision: str = "0022"
down_revision: str | None = "0021"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "stage_day",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("facts", sa.JSON(), nullable=False),
        sa.Column("entries", sa.JSON(), nullable=False),
        sa.Column("cancelled_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("set_by", sa.Integer(), nullable=False),
        sa.Column("set_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_stage_day_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["event_id"], ["event.id"], name=op.f("fk_stage_day_event_id_event")
        ),
        sa.ForeignKeyConstraint(["set_by"], ["person.id"], name=op.f("fk_stage_day_set_by_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_stage_day")),
        sa.UniqueConstraint("event_id", name=op.f("uq_stage_day_event_id")),
    )
    with op.batch_alter_table("stage_day", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_stage_day_athlete_id"), ["athlete_id"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("stage_day", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_stage_day_athlete_id"))

    op.drop_table("stage_day")
