"""what may be urgent goes first

Revision ID: 0033
Revises: 0032
"""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision: str = "0033"
down_revision: str | None = "0032"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    with op.batch_alter_table("agenda", schema=None) as batch_op:
        batch_op.create_index("ix_agenda_subject", ["subject", "status"], unique=False)

    with op.batch_alter_table("coach_note", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_coach_note_outbox_id"), ["outbox_id"], unique=False)

    with op.batch_alter_table("decision", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_decision_event_id"), ["event_id"], unique=False)

    with op.batch_alter_table("inbox", schema=None) as batch_op:
        batch_op.add_column(sa.Column("urgency", sa.Integer(), server_default="0", nullable=False))

    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.add_column(sa.Column("urgency", sa.Integer(), server_default="0", nullable=False))

    with op.batch_alter_table("person", schema=None) as batch_op:
        batch_op.create_index(
            batch_op.f("ix_person_second_contact_id"), ["second_contact_id"], unique=False
        )


def downgrade() -> None:
    with op.batch_alter_table("person", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_person_second_contact_id"))

    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.drop_column("urgency")

    with op.batch_alter_table("inbox", schema=None) as batch_op:
        batch_op.drop_column("urgency")

    with op.batch_alter_table("decision", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_decision_event_id"))

    with op.batch_alter_table("coach_note", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_coach_note_outbox_id"))

    with op.batch_alter_table("agenda", schema=None) as batch_op:
        batch_op.drop_index("ix_agenda_subject")
