"""food

Revision ID: 0021
Revises: 0020
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0021"
down_revision: str | None = "0020"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "food",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("source", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("name", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("figures", sa.JSON(), nullable=False),
        sa.Column("step_g", sa.Float(), nullable=False),
        sa.Column("piece", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("liking", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("usual_g", sa.Float(), nullable=True),
        sa.Column("added_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("removed_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_food_athlete_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_food")),
    )
    with op.batch_alter_table("food", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_food_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "food_day",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("date", sa.Date(), nullable=False),
        sa.Column("meals", sa.JSON(), nullable=False),
        sa.Column("settled", sa.JSON(), nullable=False),
        sa.Column("locked", sa.JSON(), nullable=False),
        sa.Column("wanted", sa.JSON(), nullable=False),
        sa.Column("left_out", sa.JSON(), nullable=False),
        sa.Column("target", sa.JSON(), nullable=False),
        sa.Column("made_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_food_day_athlete_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_food_day")),
        sa.UniqueConstraint("athlete_id", "date", name=op.f("uq_food_day_athlete_id_date")),
    )
    op.create_table(
        "meal_times",
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("times", sa.JSON(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_meal_times_athlete_id_person")
        ),
        sa.PrimaryKeyConstraint("athlete_id", name=op.f("pk_meal_times")),
    )
    op.create_table(
        "eaten",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("date", sa.Date(), nullable=False),
        sa.Column("food_id", sa.Integer(), nullable=False),
        sa.Column("grams", sa.Float(), nullable=False),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_eaten_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["food_id"], ["food.id"], name=op.f("fk_eaten_food_id_food")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_eaten")),
    )
    with op.batch_alter_table("eaten", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_eaten_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(batch_op.f("ix_eaten_date"), ["date"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("eaten", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_eaten_date"))
        batch_op.drop_index(batch_op.f("ix_eaten_athlete_id"))

    op.drop_table("eaten")
    op.drop_table("meal_times")
    op.drop_table("food_day")
    with op.batch_alter_table("food", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_food_athlete_id"))

    op.drop_table("food")
