"""weeks from a sheet and which consent

Revision ID: 0045
Revises: 0044
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0045"
down_revision: str | None = "0044"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "past_import",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("by_id", sa.Integer(), nullable=False),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("rows", sa.JSON(), nullable=False),
        sa.Column("days", sa.JSON(), nullable=False),
        sa.Column("taken_back_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_past_import_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name=op.f("fk_past_import_by_id_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_past_import")),
    )
    with op.batch_alter_table("past_import", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_past_import_athlete_id"), ["athlete_id"], unique=False)

    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column("consent_version", sqlmodel.sql.sqltypes.AutoString(), nullable=True)
        )
        batch_op.add_column(
            sa.Column("consent_language", sqlmodel.sql.sqltypes.AutoString(), nullable=True)
        )


def downgrade() -> None:
    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.drop_column("consent_language")
        batch_op.drop_column("consent_version")

    with op.batch_alter_table("past_import", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_past_import_athlete_id"))

    op.drop_table("past_import")
