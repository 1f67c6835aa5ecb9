"""What a change of figures has to remember so that it can be told of, and taken back."""

from __future__ import annotations

from datetime import date
from typing import Any

from sqlmodel import Session, col, select

from bot.core.turn import Turn
from bot.people.people import local_date
from bot.store.base import id_of
from bot.store.tables.coach import HoldRow
from bot.store.tables.people import AthleteProfile
from bot.store.tables.week import DaySetRow
from bot.week.load import set_around

Snapshot = dict[str, Any]


def days_before(session: Session, profile: AthleteProfile, today: date) -> list[Snapshot]:
    """The figures in force from today on, as they stand before a change."""
    return [
        {
            "date": row.date.isoformat(),
            "carb_g": row.carb_g,
            "by": row.by,
            "decision_id": row.decision_id,
        }
        for row in set_around(session, profile.person_id, today).values()
        if row.date >= today
    ]


def take_snapshot(turn: Turn, profile: AthleteProfile) -> Snapshot:
    """What a change may overrule: the figures from today on, and the hold that runs."""
    today = local_date(profile, turn.context)
    hold = running_hold(turn.session, profile.person_id, today)
    return {
        "days": days_before(turn.session, profile, today),
        "hold": id_of(hold) if hold is not None else None,
    }


def restore_hold(turn: Turn, profile: AthleteProfile, hold_id: int | None) -> None:
    """The hold that ran before runs again, and no other does."""
    end_hold(turn, profile.person_id, local_date(profile, turn.context))
    hold = turn.session.get(HoldRow, hold_id) if hold_id is not None else None
    if hold is not None:
        hold.ended_at = None


def restore_days(turn: Turn, profile: AthleteProfile, days: list[Snapshot], today: date) -> None:
    """Put the figures of today and later back to what they were; those of days gone by stay."""
    standing = turn.session.exec(
        select(DaySetRow).where(DaySetRow.athlete_id == profile.person_id, DaySetRow.date >= today)
    )
    for row in standing.all():
        turn.session.delete(row)
    turn.session.flush()
    for day in days:
        if date.fromisoformat(day["date"]) >= today:
            turn.session.add(
                DaySetRow(
                    athlete_id=profile.person_id,
                    date=date.fromisoformat(day["date"]),
                    carb_g=day["carb_g"],
                    by=day["by"],
                    decision_id=day["decision_id"],
                    set_at=turn.now,
                )
            )
    turn.session.flush()


def running_hold(session: Session, athlete_id: int, today: date) -> HoldRow | None:
    """The hold that still has days to come."""
    query = (
        select(HoldRow)
        .where(
            HoldRow.athlete_id == athlete_id, HoldRow.last >= today, col(HoldRow.ended_at).is_(None)
        )
        .order_by(col(HoldRow.id).desc())
    )
    return session.exec(query).first()


def end_hold(turn: Turn, athlete_id: int, today: date) -> None:
    """A hold gives way to what is set now."""
    hold = running_hold(turn.session, athlete_id, today)
    if hold is not None:
        hold.ended_at = turn.now


def differences(before: dict[str, Any] | None, after: dict[str, Any]) -> dict[str, list[Any]]:
    """What differs between two versions, by key: [before, after]."""
    if before is None:
        return {}
    return {
        key: [before.get(key), value] for key, value in after.items() if before.get(key) != value
    }


def days_changed(before: list[dict[str, Any]], after: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """The days of a plan that differ from the version before, each with what differs."""
    changed = [
        {"days_out": new["days_out"], "fields": differences(_before_phases(old, new), new)}
        for old, new in zip(before, after, strict=False)
    ]
    return [day for day in changed if day["fields"]]


def _before_phases(old: dict[str, Any], new: dict[str, Any]) -> dict[str, Any]:
    """The day as it was, where no day was named yet: that they are now is no change of the coach's."""
    return old if old.get("phase") is not None else {**old, "phase": new.get("phase")}
