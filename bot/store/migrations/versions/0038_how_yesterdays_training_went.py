"""how yesterday's training went

Revision ID: 0038
Revises: 0037
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

revision: str = "0038"
down_revision: str | None = "0037"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    with op.batch_alter_table("checkin", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column("training_done", sqlmodel.sql.sqltypes.AutoString(), nullable=True)
        )


def downgrade() -> None:
    with op.batch_alter_table("checkin", schema=None) as batch_op:
        batch_op.drop_column("training_done")
