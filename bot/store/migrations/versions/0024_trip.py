"""trip

Revision ID: 0024
Revises: 0023
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0024"
down_revision: str | None = "0023"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "trip",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=False),
        sa.Column("leave_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("arrive_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("home_zone", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("away_zone", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("set_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("arrived_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_trip_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["event_id"], ["event.id"], name=op.f("fk_trip_event_id_event")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_trip")),
    )
    with op.batch_alter_table("trip", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_trip_athlete_id"), ["athlete_id"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("trip", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_trip_athlete_id"))

    op.drop_table("trip")
