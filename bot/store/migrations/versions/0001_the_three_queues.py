"""the three queues, and what the bot keeps about itself

Revision ID: 0001
Revises:
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0001"
down_revision: str | None = None
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "agenda",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("subject", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("local_date", sa.Date(), nullable=False),
        sa.Column("kind", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("due_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("payload", sa.JSON(), nullable=False),
        sa.Column("status", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("claimed_until", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_agenda")),
        sa.UniqueConstraint(
            "subject", "local_date", "kind", name=op.f("uq_agenda_subject_local_date_kind")
        ),
    )
    with op.batch_alter_table("agenda", schema=None) as batch_op:
        batch_op.create_index("ix_agenda_open", ["status", "due_at"], unique=False)

    op.create_table(
        "inbox",
        sa.Column("update_id", sa.BigInteger(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=True),
        sa.Column("raw", sa.JSON(), nullable=False),
        sa.Column("received_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("status", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("not_before", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("problem", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.PrimaryKeyConstraint("update_id", name=op.f("pk_inbox")),
    )
    with op.batch_alter_table("inbox", schema=None) as batch_op:
        batch_op.create_index("ix_inbox_open", ["status", "chat_id", "update_id"], unique=False)

    op.create_table(
        "outbox",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("method", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("payload", sa.JSON(), nullable=False),
        sa.Column("topic", sqlmodel.sql.sqltypes.AutoString(), nullable=True),
        sa.Column("dedupe", sqlmodel.sql.sqltypes.AutoString(), nullable=True),
        sa.Column("edits_outbox_id", sa.Integer(), nullable=True),
        sa.Column("status", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("attempts", sa.Integer(), nullable=False),
        sa.Column("doubts", sa.Integer(), nullable=False),
        sa.Column("not_before", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("created_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("sent_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("message_id", sa.BigInteger(), nullable=True),
        sa.Column("problem", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_outbox")),
        sa.UniqueConstraint("dedupe", name=op.f("uq_outbox_dedupe")),
    )
    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.create_index("ix_outbox_open", ["status", "chat_id", "id"], unique=False)
        batch_op.create_index(batch_op.f("ix_outbox_topic"), ["topic"], unique=False)

    op.create_table(
        "setting",
        sa.Column("name", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("value", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_setting")),
    )


def downgrade() -> None:
    op.drop_table("setting")
    with op.batch_alter_table("outbox", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_outbox_topic"))
        batch_op.drop_index("ix_outbox_open")

    op.drop_table("outbox")
    with op.batch_alter_table("inbox", schema=None) as batch_op:
        batch_op.drop_index("ix_inbox_open")

    op.drop_table("inbox")
    with op.batch_alter_table("agenda", schema=None) as batch_op:
        batch_op.drop_index("ix_agenda_open")

    op.drop_table("agenda")
