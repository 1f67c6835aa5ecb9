"""whoever is named anywhere is found by index, so that a deletion reads no whole table

Revision ID: 0051
Revises: 0050
"""

from __future__ import annotations

from alembic import op

revision: str = "0051"
down_revision: str | None = "0050"
branch_labels: str | None = None
depends_on: str | None = None

COLUMNS = (
    ("event", "set_by"),
    ("history", "by_id"),
    ("limits", "set_by"),
    ("plan", "set_by"),
    ("day_set", "decision_id"),
    ("coach_note", "athlete_id"),
    ("alert", "coach_id"),
    ("alert", "acknowledged_by"),
    ("decision", "signed_by"),
    ("hold", "set_by"),
    ("second_coach", "athlete_id"),
    ("plan_review", "by_id"),
    ("stage_day", "set_by"),
    ("readiness", "event_id"),
    ("readiness", "by_id"),
    ("trip", "event_id"),
    ("coach_desk", "card_athlete_id"),
    ("coach_look", "by_id"),
    ("past_import", "by_id"),
    ("open_question", "subject_id"),
    ("eaten", "food_id"),
)


def upgrade() -> None:
    for table, column in COLUMNS:
        op.create_index(f"ix_{table}_{column}", table, [column])


def downgrade() -> None:
    for table, column in COLUMNS:
        op.drop_index(f"ix_{table}_{column}", table_name=table)
