"""between danger and mornings go those of a stage day, and views after them

Revision ID: 0052
Revises: 0051
"""

from __future__ import annotations

from alembic import op

revision: str = "0052"
down_revision: str | None = "0051"
branch_labels: str | None = None
depends_on: str | None = None

QUEUES = ("inbox", "outbox")


def upgrade() -> None:
    for queue in QUEUES:
        op.execute(f"UPDATE {queue} SET urgency = 2 WHERE urgency = 1")


def downgrade() -> None:
    for queue in QUEUES:
        op.execute(f"UPDATE {queue} SET urgency = 0 WHERE urgency < 2")
        op.execute(f"UPDATE {queue} SET urgency = 1 WHERE urgency = 2")
