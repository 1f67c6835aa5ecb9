"""looks and forecast

Revision ID: 0003
Revises: 0002
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

revision: str = "0003"
down_revision: str | None = "0002"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column("foresight", sa.Boolean(), nullable=False, server_default=sa.false())
        )

    with op.batch_alter_table("event", schema=None) as batch_op:
        batch_op.add_column(sa.Column("look", sqlmodel.sql.sqltypes.AutoString(), nullable=True))


def downgrade() -> None:
    with op.batch_alter_table("event", schema=None) as batch_op:
        batch_op.drop_column("look")

    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.drop_column("foresight")
