"""reasons for a plan that was warned about

Revision ID: 0020
Revises: 0016
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0020"
down_revision: str | None = "0016"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "plan_review",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("plan_id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=False),
        sa.Column("answered", sa.JSON(), nullable=False),
        sa.Column("reason", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("by_id", sa.Integer(), nullable=False),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name=op.f("fk_plan_review_by_id_person")),
        sa.ForeignKeyConstraint(
            ["event_id"], ["event.id"], name=op.f("fk_plan_review_event_id_event")
        ),
        sa.ForeignKeyConstraint(["plan_id"], ["plan.id"], name=op.f("fk_plan_review_plan_id_plan")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_plan_review")),
        sa.UniqueConstraint("plan_id", name=op.f("uq_plan_review_plan_id")),
    )
    with op.batch_alter_table("plan_review", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_plan_review_event_id"), ["event_id"], unique=False)


def downgrade() -> None:
    with op.batch_alter_table("plan_review", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_plan_review_event_id"))

    op.drop_table("plan_review")
