"""what coaches saw

Revision ID: 0041
Revises: 0040
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0041"
down_revision: str | None = "0040"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "coach_look",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("date", sa.Date(), nullable=False),
        sa.Column("by_id", sa.Integer(), nullable=False),
        sa.Column("look", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("sharpness", sa.Integer(), nullable=True),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_coach_look_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name=op.f("fk_coach_look_by_id_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_coach_look")),
        sa.UniqueConstraint(
            "athlete_id", "date", "by_id", name=op.f("uq_coach_look_athlete_id_date_by_id")
        ),
    )
    with op.batch_alter_table("coach_look", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_coach_look_athlete_id"), ["athlete_id"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("coach_look", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_coach_look_athlete_id"))

    op.drop_table("coach_look")
