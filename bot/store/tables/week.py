"""The week itself: event, plan, limits, check-ins, decisions, what is in force, and alerts."""

from __future__ import annotations

import datetime as dt
from datetime import datetime
from enum import StrEnum
from typing import Any

from sqlalchemy import JSON, Index, UniqueConstraint, text
from sqlmodel import Field

from bot.store.base import NumberedRow
from bot.store.driver import UTCDateTime


class EventRow(NumberedRow, table=True):
    """The newest row of an athlete with `active` is the event that counts.

    One that `waits` is part of the same season: it counts once those before it are over.
    """

    __tablename__ = "event"

    athlete_id: int = Field(foreign_key="person.id", index=True)
    kind: str
    day: dt.date
    zone: str
    active: bool = True
    waits: bool = Field(default=False, sa_column_kwargs={"server_default": "0"})
    # The class or division that the athlete starts in, in the coach's words.
    class_name: str = Field(default="", sa_column_kwargs={"server_default": ""})
    # What it asks for: "look" and "weigh_in" as `bot.week.load` reads them; "told", of the latter.
    asks: dict[str, Any] = Field(
        default_factory=dict, sa_type=JSON, sa_column_kwargs={"server_default": "{}"}
    )
    look: str | None = None  # the coach's verdict on the day: flat, full, spilled over
    set_by: int = Field(foreign_key="person.id", index=True)
    set_at: datetime = Field(sa_type=UTCDateTime)


class PlanRow(NumberedRow, table=True):
    """Every version is kept; the newest row of an event is the plan. `days`: DayTargets."""

    __tablename__ = "plan"

    event_id: int = Field(foreign_key="event.id", index=True)
    shape: str
    days: list[dict[str, Any]] = Field(sa_type=JSON)
    set_by: int = Field(foreign_key="person.id", index=True)
    set_at: datetime = Field(sa_type=UTCDateTime)


class LimitsRow(NumberedRow, table=True):
    """Every version is kept; the newest row of an event holds. `bounds`: by limit key."""

    __tablename__ = "limits"

    event_id: int = Field(foreign_key="event.id", index=True)
    bounds: dict[str, float] = Field(sa_type=JSON)
    set_by: int = Field(foreign_key="person.id", index=True)
    set_at: datetime = Field(sa_type=UTCDateTime)


class CheckInRow(NumberedRow, table=True):
    """One a local date; `revision` counts the changes of its answers."""

    __tablename__ = "checkin"
    __table_args__ = (UniqueConstraint("athlete_id", "date"),)

    athlete_id: int = Field(foreign_key="person.id")
    date: dt.date
    revision: int = 1
    weight_kg: float | None = None
    fullness: int | None = None
    sharpness: int | None = None
    water_l: float | None = None
    carb_eaten_g: float | None = None
    gut: str | None = None
    symptoms: list[str] = Field(default_factory=list, sa_type=JSON)
    note: str = ""
    sleep_h: float | None = None
    urine_colour: int | None = None
    resting_pulse: float | None = None
    water_within_one_hour_l: float | None = None
    training_done: str | None = None
    # The chat message that held a one-line check-in, so that editing it edits the check-in.
    message_id: int | None = None
    answered_at: datetime = Field(sa_type=UTCDateTime)


class SymptomReport(NumberedRow, table=True):
    """A symptom told outside a check-in; it joins the check-in of its date.

    `symptom` may also be a drug's name or a reading (see `bot.week.cases`). `words` are the
    person's own, "" where a button was tapped.
    """

    __tablename__ = "symptom_report"
    __table_args__ = (UniqueConstraint("athlete_id", "date", "symptom"),)

    athlete_id: int = Field(foreign_key="person.id")
    date: dt.date
    symptom: str
    words: str = Field(default="", sa_column_kwargs={"server_default": ""})
    at: datetime = Field(sa_type=UTCDateTime)


class DecisionStatus(StrEnum):
    IN_FORCE = "in-force"
    WAITING = "waiting"  # for the coach's approval
    APPROVED = "approved"
    OTHER_FIGURE = "other-figure"  # the coach set another
    PLAN_KEPT = "plan-kept"
    LAPSED = "lapsed"  # the deadline passed: the small step stands, or the plan
    CLOSED = "closed"  # the coaching ended before there was a word: what stood meanwhile stands
    REPLACED = "replaced"  # a changed answer led to a new decision


class DecisionRow(NumberedRow, table=True):
    """A decision, stored whole: `case` can be decided again and gives `decision`."""

    __tablename__ = "decision"
    __table_args__ = (UniqueConstraint("checkin_id", "revision"),)

    athlete_id: int = Field(foreign_key="person.id", index=True)
    event_id: int = Field(foreign_key="event.id", index=True)
    checkin_id: int = Field(foreign_key="checkin.id")
    revision: int
    sets_date: dt.date
    outcome: str
    status: str
    carb_g: float | None
    planned_carb_g: float | None
    case: dict[str, Any] = Field(sa_type=JSON)
    decision: dict[str, Any] = Field(sa_type=JSON)
    made_at: datetime = Field(sa_type=UTCDateTime)
    sign_off_due_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    signed_by: int | None = Field(default=None, foreign_key="person.id", index=True)
    signed_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    # The coach's sign-off message, so that its buttons can be taken away once it is settled.
    outbox_id: int | None = None


class DaySetRow(NumberedRow, table=True):
    """The carbohydrate in force for a local date, once set. by: decision | coach | plan."""

    __tablename__ = "day_set"
    __table_args__ = (UniqueConstraint("athlete_id", "date"),)

    athlete_id: int = Field(foreign_key="person.id")
    date: dt.date
    carb_g: float
    by: str
    decision_id: int | None = Field(default=None, foreign_key="decision.id", index=True)
    set_at: datetime = Field(sa_type=UTCDateTime)


class AlertRow(NumberedRow, table=True):
    """A flag brought to the coach. Open until acknowledged; one open row a cause and athlete.

    `about` tells doubts apart: the question that each was asked with. In `facts`, "_corrected" says
    what was put right since.
    """

    __tablename__ = "alert"
    __table_args__ = (
        Index(
            "uq_alert_open_cause",
            "athlete_id",
            "flag",
            "level",
            "about",
            unique=True,
            sqlite_where=text("acknowledged_at IS NULL"),
            postgresql_where=text("acknowledged_at IS NULL"),
        ),
    )

    athlete_id: int = Field(foreign_key="person.id", index=True)
    coach_id: int = Field(foreign_key="person.id", index=True)
    flag: str
    level: str
    about: str = Field(default="", sa_column_kwargs={"server_default": ""})
    facts: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    date: dt.date
    opened_at: datetime = Field(sa_type=UTCDateTime)
    repeats: int = 0
    second_contact_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    acknowledged_at: datetime | None = Field(default=None, sa_type=UTCDateTime)
    acknowledged_by: int | None = Field(default=None, foreign_key="person.id", index=True)
    outbox_id: int | None = None
