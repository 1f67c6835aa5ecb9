"""readiness

Revision ID: 0023
Revises: 0022
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0023"
down_revision: str | None = "0022"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "readiness",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=True),
        sa.Column("answers", sa.JSON(), nullable=False),
        sa.Column("outcome", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("reasons", sa.JSON(), nullable=False),
        sa.Column("by_id", sa.Integer(), nullable=False),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("went_on", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_readiness_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name=op.f("fk_readiness_by_id_person")),
        sa.ForeignKeyConstraint(
            ["event_id"], ["event.id"], name=op.f("fk_readiness_event_id_event")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_readiness")),
    )
    with op.batch_alter_table("readiness", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_readiness_athlete_id"), ["athlete_id"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("readiness", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_readiness_athlete_id"))

    op.drop_table("readiness")
