"""words of complaints, and what each doubt is about

Revision ID: 0037
Revises: 0036
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

revision: str = "0037"
down_revision: str | None = "0036"
branch_labels: str | None = None
depends_on: str | None = None

OPEN = {
    "sqlite_where": sa.text("acknowledged_at IS NULL"),
    "postgresql_where": sa.text("acknowledged_at IS NULL"),
}


def upgrade() -> None:
    with op.batch_alter_table("alert", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column(
                "about", sqlmodel.sql.sqltypes.AutoString(), server_default="", nullable=False
            )
        )
        batch_op.drop_index("uq_alert_open_cause", **OPEN)
        batch_op.create_index(
            "uq_alert_open_cause", ["athlete_id", "flag", "level", "about"], unique=True, **OPEN
        )
    with op.batch_alter_table("symptom_report", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column(
                "words", sqlmodel.sql.sqltypes.AutoString(), server_default="", nullable=False
            )
        )


def downgrade() -> None:
    with op.batch_alter_table("symptom_report", schema=None) as batch_op:
        batch_op.drop_column("words")
    with op.batch_alter_table("alert", schema=None) as batch_op:
        batch_op.drop_index("uq_alert_open_cause", **OPEN)
        batch_op.create_index(
            "uq_alert_open_cause", ["athlete_id", "flag", "level"], unique=True, **OPEN
        )
        batch_op.drop_column("about")
