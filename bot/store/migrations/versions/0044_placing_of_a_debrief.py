"""placing of a debrief

Revision ID: 0044
Revises: 0043
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

revision: str = "0044"
down_revision: str | None = "0043"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    with op.batch_alter_table("debrief", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column(
                "placing", sqlmodel.sql.sqltypes.AutoString(), server_default="", nullable=False
            )
        )


def downgrade() -> None:
    with op.batch_alter_table("debrief", schema=None) as batch_op:
        batch_op.drop_column("placing")
