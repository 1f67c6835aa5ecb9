"""what is not counted stays unknown

An ordinary figure used to stand in for fibre or sodium that an athlete does not count, and a plan
drafted from it held it as a daily target. Where the answers say that it stood in, it goes, from the
habits and from plans that have exactly that figure. Decisions are as they were made.

Revision ID: 0034
Revises: 0033
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import sqlalchemy as sa
from alembic import op

revision: str = "0034"
down_revision: str | None = "0033"
branch_labels: str | None = None
depends_on: str | None = None

STOOD_IN = {"fibre_g": 25.0, "sodium_mg": 2000.0}
ASSUMED = "_assumed"

_profile = sa.table(
    "athlete_profile",
    sa.column("person_id", sa.Integer()),
    sa.column("screening", sa.JSON()),
    sa.column("baseline", sa.JSON()),
)
_event = sa.table("event", sa.column("id", sa.Integer()), sa.column("athlete_id", sa.Integer()))
_plan = sa.table(
    "plan",
    sa.column("id", sa.Integer()),
    sa.column("event_id", sa.Integer()),
    sa.column("days", sa.JSON()),
)

Figures = dict[str, Any]


def upgrade() -> None:
    _change(lambda figures, key: figures | {key: None} if _stands_in(figures, key) else figures)


def downgrade() -> None:
    _change(
        lambda figures, key: figures | {key: STOOD_IN[key]} if figures.get(key) is None else figures
    )


def _stands_in(figures: Figures, key: str) -> bool:
    return bool(figures.get(key) == STOOD_IN[key])


def _change(one: Callable[[Figures, str], Figures]) -> None:
    bind = op.get_bind()
    for person_id, screening, kept in bind.execute(sa.select(_profile)).all():
        baseline = kept
        for key in (screening or {}).get(ASSUMED, []):
            baseline = one(baseline, key)
            _plans(bind, person_id, key, one)
        bind.execute(
            sa.update(_profile).where(_profile.c.person_id == person_id).values(baseline=baseline)
        )


def _plans(
    bind: sa.Connection, person_id: int, key: str, one: Callable[[Figures, str], Figures]
) -> None:
    events = sa.select(_event.c.id).where(_event.c.athlete_id == person_id)
    rows = bind.execute(sa.select(_plan.c.id, _plan.c.days).where(_plan.c.event_id.in_(events)))
    for plan_id, days in rows.all():
        changed = [one(day, key) for day in days]
        bind.execute(sa.update(_plan).where(_plan.c.id == plan_id).values(days=changed))
