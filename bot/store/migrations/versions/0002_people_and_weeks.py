"""people and weeks

Revision ID: 0002
Revises: 0001
"""

from __future__ import annotations

import sqlalchemy as sa
import sqlmodel.sql.sqltypes
from alembic import op

import bot.store.driver

revision: str = "0002"
down_revision: str | None = "0001"
branch_labels: str | None = None
depends_on: str | None = None


def upgrade() -> None:
    op.create_table(
        "person",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("telegram_user_id", sa.BigInteger(), nullable=False),
        sa.Column("chat_id", sa.BigInteger(), nullable=False),
        sa.Column("first_name", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("language", sqlmodel.sql.sqltypes.AutoString(), nullable=True),
        sa.Column("reachable", sa.Boolean(), nullable=False),
        sa.Column("is_coach", sa.Boolean(), nullable=False),
        sa.Column("second_contact_id", sa.Integer(), nullable=True),
        sa.Column("created_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["second_contact_id"], ["person.id"], name=op.f("fk_person_second_contact_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_person")),
        sa.UniqueConstraint("chat_id", name=op.f("uq_person_chat_id")),
        sa.UniqueConstraint("telegram_user_id", name=op.f("uq_person_telegram_user_id")),
    )
    op.create_table(
        "alert",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column("flag", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("level", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("facts", sa.JSON(), nullable=False),
        sa.Column("date", sa.Date(), nullable=False),
        sa.Column("opened_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("repeats", sa.Integer(), nullable=False),
        sa.Column("second_contact_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("acknowledged_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("acknowledged_by", sa.Integer(), nullable=True),
        sa.Column("outbox_id", sa.Integer(), nullable=True),
        sa.ForeignKeyConstraint(
            ["acknowledged_by"], ["person.id"], name=op.f("fk_alert_acknowledged_by_person")
        ),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_alert_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["coach_id"], ["person.id"], name=op.f("fk_alert_coach_id_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_alert")),
    )
    with op.batch_alter_table("alert", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_alert_athlete_id"), ["athlete_id"], unique=False)
        batch_op.create_index(
            "uq_alert_open_cause",
            ["athlete_id", "flag", "level"],
            unique=True,
            sqlite_where=sa.text("acknowledged_at IS NULL"),
            postgresql_where=sa.text("acknowledged_at IS NULL"),
        )

    op.create_table(
        "athlete_profile",
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("coach_id", sa.Integer(), nullable=False),
        sa.Column("status", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("consent_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("screening", sa.JSON(), nullable=False),
        sa.Column("cleared_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("sex", sqlmodel.sql.sqltypes.AutoString(), nullable=True),
        sa.Column("birth_year", sa.Integer(), nullable=True),
        sa.Column("height_cm", sa.Float(), nullable=True),
        sa.Column("body_mass_kg", sa.Float(), nullable=True),
        sa.Column("body_fat_percent", sa.Float(), nullable=True),
        sa.Column("baseline", sa.JSON(), nullable=False),
        sa.Column("weight_unit", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("volume_unit", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("zone", sqlmodel.sql.sqltypes.AutoString(), nullable=True),
        sa.Column("prompt_time", sa.Time(), nullable=False),
        sa.Column("always_tomorrow", sa.Boolean(), nullable=False),
        sa.Column("frozen_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("frozen_because", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("created_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["coach_id"], ["person.id"], name=op.f("fk_athlete_profile_coach_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_athlete_profile_person_id_person")
        ),
        sa.PrimaryKeyConstraint("person_id", name=op.f("pk_athlete_profile")),
    )
    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_athlete_profile_coach_id"), ["coach_id"], unique=False)

    op.create_table(
        "checkin",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("date", sa.Date(), nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("weight_kg", sa.Float(), nullable=True),
        sa.Column("fullness", sa.Integer(), nullable=True),
        sa.Column("sharpness", sa.Integer(), nullable=True),
        sa.Column("water_l", sa.Float(), nullable=True),
        sa.Column("carb_eaten_g", sa.Float(), nullable=True),
        sa.Column("gut", sqlmodel.sql.sqltypes.AutoString(), nullable=True),
        sa.Column("symptoms", sa.JSON(), nullable=False),
        sa.Column("note", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("sleep_h", sa.Float(), nullable=True),
        sa.Column("urine_colour", sa.Integer(), nullable=True),
        sa.Column("resting_pulse", sa.Float(), nullable=True),
        sa.Column("water_within_one_hour_l", sa.Float(), nullable=True),
        sa.Column("message_id", sa.Integer(), nullable=True),
        sa.Column("answered_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_checkin_athlete_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_checkin")),
        sa.UniqueConstraint("athlete_id", "date", name=op.f("uq_checkin_athlete_id_date")),
    )
    op.create_table(
        "event",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("kind", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("day", sa.Date(), nullable=False),
        sa.Column("zone", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("active", sa.Boolean(), nullable=False),
        sa.Column("set_by", sa.Integer(), nullable=False),
        sa.Column("set_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_event_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["set_by"], ["person.id"], name=op.f("fk_event_set_by_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_event")),
    )
    with op.batch_alter_table("event", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_event_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "history",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("by_id", sa.Integer(), nullable=True),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("what", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("detail", sa.JSON(), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_history_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(["by_id"], ["person.id"], name=op.f("fk_history_by_id_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_history")),
    )
    with op.batch_alter_table("history", schema=None) as batch_op:
        batch_op.create_index("ix_history_athlete", ["athlete_id", "at"], unique=False)

    op.create_table(
        "invite",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("kind", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("token_hash", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("invited_by", sa.Integer(), nullable=True),
        sa.Column("created_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("expires_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("used_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("used_by", sa.Integer(), nullable=True),
        sa.ForeignKeyConstraint(
            ["invited_by"], ["person.id"], name=op.f("fk_invite_invited_by_person")
        ),
        sa.ForeignKeyConstraint(["used_by"], ["person.id"], name=op.f("fk_invite_used_by_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_invite")),
        sa.UniqueConstraint("token_hash", name=op.f("uq_invite_token_hash")),
    )
    op.create_table(
        "open_question",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("flow", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("subject_id", sa.Integer(), nullable=True),
        sa.Column("step", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("answers", sa.JSON(), nullable=False),
        sa.Column("outbox_id", sa.Integer(), nullable=True),
        sa.Column("asked_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("closed_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(
            ["person_id"], ["person.id"], name=op.f("fk_open_question_person_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_open_question")),
    )
    with op.batch_alter_table("open_question", schema=None) as batch_op:
        batch_op.create_index(
            "ix_open_question_open",
            ["person_id", "asked_at"],
            unique=False,
            sqlite_where=sa.text("closed_at IS NULL"),
            postgresql_where=sa.text("closed_at IS NULL"),
        )

    op.create_table(
        "symptom_report",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("date", sa.Date(), nullable=False),
        sa.Column("symptom", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_symptom_report_athlete_id_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_symptom_report")),
        sa.UniqueConstraint(
            "athlete_id", "date", "symptom", name=op.f("uq_symptom_report_athlete_id_date_symptom")
        ),
    )
    op.create_table(
        "decision",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=False),
        sa.Column("checkin_id", sa.Integer(), nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("sets_date", sa.Date(), nullable=False),
        sa.Column("outcome", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("status", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("carb_g", sa.Float(), nullable=True),
        sa.Column("planned_carb_g", sa.Float(), nullable=True),
        sa.Column("case", sa.JSON(), nullable=False),
        sa.Column("decision", sa.JSON(), nullable=False),
        sa.Column("made_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.Column("sign_off_due_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("signed_by", sa.Integer(), nullable=True),
        sa.Column("signed_at", bot.store.driver.UTCDateTime(timezone=True), nullable=True),
        sa.Column("outbox_id", sa.Integer(), nullable=True),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_decision_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["checkin_id"], ["checkin.id"], name=op.f("fk_decision_checkin_id_checkin")
        ),
        sa.ForeignKeyConstraint(
            ["event_id"], ["event.id"], name=op.f("fk_decision_event_id_event")
        ),
        sa.ForeignKeyConstraint(
            ["signed_by"], ["person.id"], name=op.f("fk_decision_signed_by_person")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_decision")),
        sa.UniqueConstraint("checkin_id", "revision", name=op.f("uq_decision_checkin_id_revision")),
    )
    with op.batch_alter_table("decision", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_decision_athlete_id"), ["athlete_id"], unique=False)

    op.create_table(
        "limits",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=False),
        sa.Column("bounds", sa.JSON(), nullable=False),
        sa.Column("set_by", sa.Integer(), nullable=False),
        sa.Column("set_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["event_id"], ["event.id"], name=op.f("fk_limits_event_id_event")),
        sa.ForeignKeyConstraint(["set_by"], ["person.id"], name=op.f("fk_limits_set_by_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_limits")),
    )
    with op.batch_alter_table("limits", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_limits_event_id"), ["event_id"], unique=False)

    op.create_table(
        "plan",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("event_id", sa.Integer(), nullable=False),
        sa.Column("shape", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("days", sa.JSON(), nullable=False),
        sa.Column("set_by", sa.Integer(), nullable=False),
        sa.Column("set_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["event_id"], ["event.id"], name=op.f("fk_plan_event_id_event")),
        sa.ForeignKeyConstraint(["set_by"], ["person.id"], name=op.f("fk_plan_set_by_person")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_plan")),
    )
    with op.batch_alter_table("plan", schema=None) as batch_op:
        batch_op.create_index(batch_op.f("ix_plan_event_id"), ["event_id"], unique=False)

    op.create_table(
        "day_set",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("athlete_id", sa.Integer(), nullable=False),
        sa.Column("date", sa.Date(), nullable=False),
        sa.Column("carb_g", sa.Float(), nullable=False),
        sa.Column("by", sqlmodel.sql.sqltypes.AutoString(), nullable=False),
        sa.Column("decision_id", sa.Integer(), nullable=True),
        sa.Column("set_at", bot.store.driver.UTCDateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(
            ["athlete_id"], ["person.id"], name=op.f("fk_day_set_athlete_id_person")
        ),
        sa.ForeignKeyConstraint(
            ["decision_id"], ["decision.id"], name=op.f("fk_day_set_decision_id_decision")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_day_set")),
        sa.UniqueConstraint("athlete_id", "date", name=op.f("uq_day_set_athlete_id_date")),
    )


def downgrade() -> None:
    op.drop_table("day_set")
    with op.batch_alter_table("plan", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_plan_event_id"))

    op.drop_table("plan")
    with op.batch_alter_table("limits", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_limits_event_id"))

    op.drop_table("limits")
    with op.batch_alter_table("decision", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_decision_athlete_id"))

    op.drop_table("decision")
    op.drop_table("symptom_report")
    with op.batch_alter_table("open_question", schema=None) as batch_op:
        batch_op.drop_index(
            "ix_open_question_open",
            sqlite_where=sa.text("closed_at IS NULL"),
            postgresql_where=sa.text("closed_at IS NULL"),
        )

    op.drop_table("open_question")
    op.drop_table("invite")
    with op.batch_alter_table("history", schema=None) as batch_op:
        batch_op.drop_index("ix_history_athlete")

    op.drop_table("history")
    with op.batch_alter_table("event", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_event_athlete_id"))

    op.drop_table("event")
    op.drop_table("checkin")
    with op.batch_alter_table("athlete_profile", schema=None) as batch_op:
        batch_op.drop_index(batch_op.f("ix_athlete_profile_coach_id"))

    op.drop_table("athlete_profile")
    with op.batch_alter_table("alert", schema=None) as batch_op:
        batch_op.drop_index(
            "uq_alert_open_cause",
            sqlite_where=sa.text("acknowledged_at IS NULL"),
            postgresql_where=sa.text("acknowledged_at IS NULL"),
        )
        batch_op.drop_index(batch_op.f("ix_alert_athlete_id"))

    op.drop_table("alert")
    op.drop_table("person")
