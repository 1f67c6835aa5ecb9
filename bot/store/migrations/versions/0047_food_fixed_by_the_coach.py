"""food fixed by the coach

Revision ID: 0047
Revises: 0046
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision: str = "0047"
down_revision: str | None = "0046"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    with op.batch_alter_table("food", schema=None) as batch_op:
        batch_op.add_column(sa.Column("fixed_g", sa.Float(), nullable=True))


def downgrade() -> None:
    with op.batch_alter_table("food", schema=None) as batch_op:
        batch_op.drop_column("fixed_g")
