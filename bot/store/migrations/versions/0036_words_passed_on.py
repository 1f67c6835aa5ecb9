"""words passed on

Revision ID: 0036
Revises: 0034
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0036"
down_revision: str | None = "0034"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    with op.batch_alter_table("coach_desk", schema=None) as batch_op:
        batch_op.add_column(sa.Column("card_athlete_id", sa.Integer(), nullable=True))
        batch_op.add_column(
            sa.Column("card_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True)
        )
        batch_op.create_foreign_key(
            batch_op.f("fk_coach_desk_card_athlete_id_person"),
            "person",
            ["card_athlete_id"],
            ["id"],
        )

    with op.batch_alter_table("coach_note", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column("said", sqlmodel.sql.sqltypes.AutoString(), nullable=False, server_default="")
        )
        batch_op.add_column(sa.Column("message_id", sa.BigInteger(), nullable=True))


def downgrade() -> None:
    with op.batch_alter_table("coach_note", schema=None) as batch_op:
        batch_op.drop_column("message_id")
        batch_op.drop_column("said")

    with op.batch_alter_table("coach_desk", schema=None) as batch_op:
        batch_op.drop_constraint(
            batch_op.f("fk_coach_desk_card_athlete_id_person"), type_="foreignkey"
        )
        batch_op.drop_column("card_at")
        batch_op.drop_column("card_athlete_id")
