"""whole meals fixed by the coach

Revision ID: 0048
Revises: 0047
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision: str = "0048"
down_revision: str | None = "0047"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    with op.batch_alter_table("meal_times", schema=None) as batch_op:
        batch_op.add_column(sa.Column("fixed", sa.JSON(), server_default="{}", nullable=False))


def downgrade() -> None:
    with op.batch_alter_table("meal_times", schema=None) as batch_op:
        batch_op.drop_column("fixed")
