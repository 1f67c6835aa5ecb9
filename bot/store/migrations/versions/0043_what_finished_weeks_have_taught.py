"""what finished weeks have taught

Revision ID: 0043
Revises: 0042
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

import bot.store.driver

revision: str = "0043"
down_revision: str | None = "0042"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "taught",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("weeks", sa.Integer(), nullable=False),
        sa.Column("model", sa.Integer(), nullable=False),
        sa.Column("taught", sa.JSON(), nullable=False),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_taught_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_taught_coach_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_taught")),
        sa.UniqueConstraint("coach_id", "athlete_id", name=op.f("uq_taught_coach_id_athlete_id")),
    )
    with op.batch_alter_table("taught", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_taught_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_taught_coach_id"), ["coach_id"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("taught", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_taught_coach_id"))
        batch_op.drop_index(batch_op.f("ix_taught_athlete_id"))

    op.drop_table("taught")
