"""what is somebody's own is found by index

Revision ID: 0050
Revises: 0049
"""

from __future__ import annotations

from alembic import op

revision: str = "0050"
down_revision: str | None = "0049"
branch_labels: str | None = None
depends_on: str | None = None

INDEXES = {
    "ix_inbox_chat": ("inbox", "chat_id"),
    "ix_outbox_chat": ("outbox", "chat_id"),
    "ix_invite_invited_by": ("invite", "invited_by"),
    "ix_invite_used_by": ("invite", "used_by"),
    "ix_open_question_person_id": ("open_question", "person_id"),
}


def upgrade() -> None:
    for name, (table, column) in INDEXES.items():
        op.create_index(name, table, [column])


def downgrade() -> None:
    for name, (table, _column) in INDEXES.items():
        op.drop_index(name, table_name=table)
