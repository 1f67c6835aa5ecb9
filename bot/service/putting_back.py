"""How each change of figures is put back: what it has to find still there, and what it restores."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date

from sqlmodel import Session

from bot.context import Context
from bot.messages import coach_signoff as signoff_words
from bot.service import event_moving
from bot.service.changes import restore_days, restore_hold
from bot.service.people import local_date
from bot.service.signoff import settle
from bot.service.week import current_event, day_set
from bot.store.people import AthleteProfile, HistoryRow, Person
from bot.store.week import DecisionRow, DecisionStatus, LimitsRow, PlanRow

SIGNED = (DecisionStatus.APPROVED, DecisionStatus.OTHER_FIGURE, DecisionStatus.PLAN_KEPT)


@dataclass(frozen=True, slots=True)
class Kind:
    """`may`: whether it still can be; `put_back`: what it restores beside days and hold."""

    may: Callable[[Session, AthleteProfile, HistoryRow, Context], bool]
    put_back: Callable[[Session, Person, AthleteProfile, HistoryRow, Context], None]


def may_be_taken_back(
    session: Session, profile: AthleteProfile, row: HistoryRow, context: Context
) -> bool:
    """Whether what held before this change is known and can hold again."""
    before = row.detail.get("before")
    if row.what not in KINDS or before is None or "hold" not in before:
        return False
    return KINDS[row.what].may(session, profile, row, context)


def put_back(
    session: Session, coach: Person, profile: AthleteProfile, row: HistoryRow, context: Context
) -> None:
    """What held before this change holds again, figures and hold included."""
    KINDS[row.what].put_back(session, coach, profile, row, context)
    restore_hold(session, profile, row.detail["before"]["hold"], context)
    days = row.detail["before"]["days"]
    restore_days(session, profile, days, local_date(profile, context), context)


def _days_left(
    _session: Session, profile: AthleteProfile, row: HistoryRow, context: Context
) -> bool:
    """Whether a day that it was about is still to come."""
    last = row.detail.get("last", row.detail.get("day"))
    return last is not None and date.fromisoformat(last) >= local_date(profile, context)


def _nothing_more(
    _session: Session, _coach: Person, _profile: AthleteProfile, _row: HistoryRow, _context: Context
) -> None:
    """Days and hold are all that such a change touches."""


def _version_is_there(
    session: Session, profile: AthleteProfile, row: HistoryRow, _context: Context
) -> bool:
    earlier = _earlier_version(session, row)
    event = current_event(session, profile.person_id)
    return earlier is not None and event is not None and earlier.event_id == event.id


def _earlier_version(session: Session, row: HistoryRow) -> PlanRow | LimitsRow | None:
    before = row.detail["before"]
    if row.what == "plan set":
        return session.get(PlanRow, before["plan"]) if before["plan"] is not None else None
    return session.get(LimitsRow, before["limits"]) if before["limits"] is not None else None


def _version_again(
    session: Session, coach: Person, _profile: AthleteProfile, row: HistoryRow, context: Context
) -> None:
    """The version before as the newest one."""
    earlier = _earlier_version(session, row)
    assert earlier is not None
    again = earlier.model_dump(exclude={"id", "set_by", "set_at"})
    session.add(type(earlier)(**again, set_by=coach.id or 0, set_at=context.now))
    session.flush()


def _still_signed(
    session: Session, profile: AthleteProfile, row: HistoryRow, context: Context
) -> bool:
    decision = session.get(DecisionRow, row.detail["decision"])
    if decision is None:
        return False
    # A warning since then may have replaced the decision; what was approved is eaten all the same.
    set_now = day_set(session, profile.person_id, decision.sets_date)
    in_force = set_now is not None and set_now.decision_id == decision.id
    signed = decision.status in SIGNED or (in_force and decision.signed_at is not None)
    return signed and _days_left(session, profile, row, context)


def _unsign(
    session: Session, coach: Person, profile: AthleteProfile, row: HistoryRow, context: Context
) -> None:
    """The word is withdrawn; the morning's proposal is to be made anew."""
    decision = session.get_one(DecisionRow, row.detail["decision"])
    settle(session, decision, lambda _: signoff_words.taken_back(coach.first_name), context)
    decision.status = DecisionStatus.REPLACED
    session.add(decision)
    session.flush()


KINDS: Mapping[str, Kind] = {
    "plan set": Kind(_version_is_there, _version_again),
    "limits set": Kind(_version_is_there, _version_again),
    "event set": Kind(event_moving.can_go_back, event_moving.go_back),
    "signed off": Kind(_still_signed, _unsign),
    "day set by hand": Kind(_days_left, _nothing_more),
    "held": Kind(_days_left, _nothing_more),
    "hold ended": Kind(_days_left, _nothing_more),
}
