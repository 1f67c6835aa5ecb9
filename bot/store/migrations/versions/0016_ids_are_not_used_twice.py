"""ids are not used twice

Rows can be deleted from now on, and SQLite gives the highest id again once its row is gone. Buttons in
old messages name rows by id: one must never come to mean somebody else's row.

Revision ID: 0016
Revises: 0015
"""

from __future__ import annotations

from alembic import op

revision: str = "0016"
down_revision: str | None = "0015"
branch_labels: str | None = None
depends_on: str | None = None

NAMED_IN_BUTTONS = (
    "person", "alert", "open_question", "decision", "checkin", "photo", "plan_template", "hold",
    "second_coach",
)  # fmt: skip


def upgrade() -> None:
    _recreate(autoincrement=True)


def downgrade() -> None:
    _recreate(autoincrement=False)


def _recreate(*, autoincrement: bool) -> None:
    if op.get_bind().dialect.name != "sqlite":
        return
    for table in NAMED_IN_BUTTONS:
        with op.batch_alter_table(
            table, recreate="always", table_kwargs={"sqlite_autoincrement": autoincrement}
        ):
            pass
