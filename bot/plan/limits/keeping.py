"""A new version of the limits, put down with what held before."""

from __future__ import annotations

from bot.people.changes import Change
from bot.people.people import record
from bot.plan.prep import Prep
from bot.store.base import id_of
from bot.store.tables.week import LimitsRow
from bot.week.load import limits_row
from bot.week.snapshots import differences, take_snapshot
from engine.values.limits import LIMIT_KEYS, Limits


def store_limits(prep: Prep, limits: Limits, *, how: str = "") -> None:
    """Whether the plan fits them is for the caller to have seen."""
    turn, coach, profile, event = prep.turn, prep.coach, prep.profile, prep.event
    earlier = limits_row(turn.session, event)
    row = LimitsRow(
        event_id=id_of(event),
        bounds={key: getattr(limits, key) for key in LIMIT_KEYS},
        set_by=id_of(coach),
        set_at=turn.now,
    )
    turn.session.add(row)
    turn.session.flush()
    record(
        turn, profile.person_id, Change.LIMITS_SET, by=coach.id,
        limits=row.id, bounds=row.bounds, how=how,
        before={
            "limits": earlier.id if earlier is not None else None,
            **take_snapshot(turn, profile),
        },
        changed=differences(earlier.bounds if earlier is not None else None, row.bounds),
    )  # fmt: skip
