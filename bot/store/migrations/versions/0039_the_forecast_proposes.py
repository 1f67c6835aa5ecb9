"""the forecast proposes

Revision ID: 0039
Revises: 0038

Who had the forecast on, or was never asked, gets the new default: it proposes. Who had it switched
off by a coach's own tap stays with the rules alone; the history says who that was.
"""

from __future__ import annotations

import json

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

revision: str = "0039"
down_revision: str | None = "0038"
branch_labels: str | None = None
depends_on: str | None = None

PROPOSES, RULES_ONLY = "proposes", "rules-only"

profiles = sa.table(
    "athlete_profile",
    sa.column("person_id", sa.Integer),
    sa.column("foresight", sa.Boolean),
    sa.column("forecast", sa.String),
)
history = sa.table(
    "history",
    sa.column("id", sa.Integer),
    sa.column("athlete_id", sa.Integer),
    sa.column("what", sa.String),
    sa.column("detail", sa.JSON),
)


def upgrade() -> None:
    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column(
                "forecast",
                sqlmodel.sql.sqltypes.AutoString(),
                nullable=False,
                server_default=PROPOSES,
            )
        )
    switched_off = [number for number, on in _last_switched().items() if not on]
    op.execute(
        profiles.update()
        .where(profiles.c.foresight.is_(False), profiles.c.person_id.in_(switched_off))
        .values(forecast=RULES_ONLY)
    )
    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.drop_column("foresight")


def _last_switched() -> dict[int, bool]:
    """How the forecast was last switched by hand, by athlete."""
    query = sa.select(history.c.athlete_id, history.c.detail).where(history.c.what == "forecast")
    found = {}
    for number, detail in op.get_bind().execute(query.order_by(history.c.id)):
        known = json.loads(detail) if isinstance(detail, str) else detail
        found[number] = bool(known.get("on"))
    return found


def downgrade() -> None:
    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.add_column(
            sa.Column("foresight", sa.Boolean(), nullable=False, server_default=sa.false())
        )
    op.execute(profiles.update().where(profiles.c.forecast == PROPOSES).values(foresight=sa.true()))
    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.drop_column("forecast")
