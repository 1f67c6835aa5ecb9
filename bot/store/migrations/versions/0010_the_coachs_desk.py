"""the coach's desk

Revision ID: 0010
Revises: 0003
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0010"
down_revision: str | None = "0003"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "coach_desk",
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("zone", sqlmodel.sql.sqltypes.AutoString(), nullable=True),
        sa.Column("digest_at", sa.Time(), nullable=True),
        sa.Column("digest_sent_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("quiet_from", sa.Time(), nullable=True),
        sa.Column("quiet_to", sa.Time(), nullable=True),
        sa.Column("roster_outbox_id", sa.Integer(), nullable=True),
        sa.Column("roster_message_id", sa.Integer(), nullable=True),
        sa.Column("roster_page", sa.Integer(), nullable=False),
        sa.Column("roster_filter", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("notes_outbox_id", sa.Integer(), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_coach_desk_person_id_person")
        ),
        sa.PrimaryKeyConstraint("person_id", name=op.f("pk_coach_desk")),
    )
    op.create_table(
        "coach_note",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("text", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("outbox_id", sa.Integer(), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_coach_note_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_coach_note_coach_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_coach_note")),
    )
    with op.batch_alter_table("coach_note", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_coach_note_coach_id"), ["coach_id"], unique=False)

    op.create_table(
        "hold",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("first", sa.Date(), nullable=False),
        sa.Column("last", sa.Date(), nullable=False),
        sa.Column("carb_g", sa.Float(), nullable=False),
        sa.Column("because", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("set_by", sa.Integer(), nullable=False),
        sa.Column("set_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("ended_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_hold_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["set_by"], ["person.id"], name=op.f("fk_hold_set_by_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_hold")),
    )
    with op.batch_alter_table("hold", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_hold_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "second_coach",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=True),
        sa.Column("rights", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("given_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("until_day", sa.Date(), nullable=False),
        sa.Column("until_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("ended_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_second_coach_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_second_coach_coach_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_second_coach_person_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_second_coach")),
    )
    with op.batch_alter_table("second_coach", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_second_coach_coach_id"), ["coach_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_second_coach_person_id"), ["person_id"], unique=False)

    with op.batch_alter_table("invite", schema=None) as batch_op:
        batch_op.add_column(sa.Column("detail", sa.JSON(), nullable=True))
