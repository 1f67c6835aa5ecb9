"""Who is who: people, roles, who coaches whom, and the invitations that make it so."""

from __future__ import annotations

from datetime import datetime, time
from enum import StrEnum
from typing import Any

from sqlalchemy import JSON, BigInteger, Index, text
from sqlmodel import Field

from bot.store.base import NumberedRow, Row
from bot.store.driver import UTCDateTime
from engine.values.case import ForecastUse


class Person(NumberedRow, table=True):
    """Somebody in a private chat with the bot. Roles hang on this row; one person may have both."""

    __tablename__ = "person"

    telegram_user_id: int = Field(sa_type=BigInteger, unique=True)
    chat_id: int = Field(sa_type=BigInteger, unique=True)
    first_name: str
    language: str | None = None  # as Telegram gives it, such as "de-AT"
    chosen_language: str | None = None  # one of ours, where they have said which
    reachable: bool = True
    is_coach: bool = False
    # Where alerts go when this coach does not answer; and where advisories may wait until.
    second_contact_id: int | None = Field(default=None, foreign_key="person.id", index=True)
    created_at: datetime = Field(sa_type=UTCDateTime)


class AthleteStatus(StrEnum):
    ONBOARDING = "onboarding"
    ACTIVE = "active"
    PAUSED = "paused"
    DOCTOR_FIRST = "doctor-first"  # a screening answer asks for a doctor's clearance
    DECLINED = "declined"  # under age, or no consent
    ENDED = "ended"  # without a coach; what was told and decided is still the athlete's


class AthleteProfile(Row, table=True):
    """What holds for an athlete from week to week. Health data: never logged."""

    __tablename__ = "athlete_profile"

    person_id: int = Field(primary_key=True, foreign_key="person.id")
    coach_id: int = Field(foreign_key="person.id", index=True)
    status: str = AthleteStatus.ONBOARDING
    consent_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    # Which text was agreed to (`CONSENT_VERSION` as it was then), and in which language.
    consent_version: str | None = None
    consent_language: str | None = None
    screening: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    cleared_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    sex: str | None = None
    birth_year: int | None = None
    height_cm: float | None = None
    body_mass_kg: float | None = None
    body_fat_percent: float | None = None
    baseline: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    weight_unit: str = "kg"
    volume_unit: str = "l"
    zone: str | None = None
    prompt_time: time = time(7, 0)
    always_tomorrow: bool = False
    forecast: str = (
        ForecastUse.PROPOSES
    )  # what the forecast may do beside the rules; the coach says
    frozen_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    frozen_because: str = ""
    created_at: datetime = Field(sa_type=UTCDateTime)


class Invite(NumberedRow, table=True):
    """A one-time key, kept only as a hash. kind: coach | athlete | contact | second.

    `detail` is what is agreed with it (a second coach's athlete, rights and last day).
    """

    __tablename__ = "invite"

    kind: str
    token_hash: str = Field(unique=True)
    invited_by: int | None = Field(default=None, foreign_key="person.id", index=True)
    created_at: datetime = Field(sa_type=UTCDateTime)
    expires_at: datetime = Field(sa_type=UTCDateTime)
    used_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    used_by: int | None = Field(default=None, foreign_key="person.id", index=True)
    detail: dict[str, Any] | None = Field(default=None, sa_type=JSON)


class OpenQuestion(NumberedRow, table=True):
    """A question put to somebody, and the answers so far: the draft of a check-in, of a plan.

    `subject_id` is the athlete (or decision, alert) it is about. `outbox_id` sent the question.
    """

    __tablename__ = "open_question"
    __table_args__ = (
        Index(
            "ix_open_question_open",
            "person_id",
            "asked_at",
            sqlite_where=text("closed_at IS NULL"),
            postgresql_where=text("closed_at IS NULL"),
        ),
    )

    person_id: int = Field(foreign_key="person.id", index=True)
    flow: str
    subject_id: int | None = Field(default=None, index=True)
    step: str = ""
    answers: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    outbox_id: int | None = None
    asked_at: datetime = Field(sa_type=UTCDateTime)
    closed_at: datetime | None = Field(default=None, sa_type=UTCDateTime)

    @property
    def about(self) -> int:
        """Whom or what it is about. Raises ValueError for a question about nobody."""
        if self.subject_id is None:
            raise ValueError(f"{self.flow} is about nobody")
        return self.subject_id


class HistoryRow(NumberedRow, table=True):
    """Who did what about an athlete, when and why: "what was set, and by whom"."""

    __tablename__ = "history"
    __table_args__ = (Index("ix_history_athlete", "athlete_id", "at"),)

    athlete_id: int = Field(foreign_key="person.id")
    by_id: int | None = Field(
        default=None, foreign_key="person.id", index=True
    )  # None: Brimline itself
    at: datetime = Field(sa_type=UTCDateTime)
    what: str
    detail: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
