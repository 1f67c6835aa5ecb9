"""a season of events, and templates that hold more than a plan

Revision ID: 0042
Revises: 0041
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

revision: str = "0042"
down_revision: str | None = "0041"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    with op.batch_alter_table("event", schema=None) as batch_op:
        batch_op.add_column(sa.Column("waits", sa.Boolean(), server_default="0", nullable=False))
        batch_op.add_column(
            sa.Column(
                "class_name", sqlmodel.sql.sqltypes.AutoString(), server_default="", nullable=False
            )
        )
    with op.batch_alter_table("plan_template", schema=None) as batch_op:
        batch_op.add_column(sa.Column("limits", sa.JSON(), server_default="{}", nullable=False))
        batch_op.add_column(sa.Column("habits", sa.JSON(), server_default="{}", nullable=False))


def downgrade() -> None:
    with op.batch_alter_table("plan_template", schema=None) as batch_op:
        batch_op.drop_column("habits")
        batch_op.drop_column("limits")
    with op.batch_alter_table("event", schema=None) as batch_op:
        batch_op.drop_column("class_name")
        batch_op.drop_column("waits")
