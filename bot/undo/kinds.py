"""How each change of figures is put back: what it has to find still there, and what it restores."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date

from sqlmodel import Session

from bot.core.turn import OnAthlete
from bot.decision.signoff import words as signoff_words
from bot.decision.signoff.signoff import close_proposal
from bot.event import asks
from bot.event import moving as event_moving
from bot.people.changes import KINDS, Back, Change
from bot.people.people import local_date
from bot.store.base import id_of
from bot.store.tables.people import HistoryRow
from bot.store.tables.week import DecisionRow, DecisionStatus, LimitsRow, PlanRow
from bot.week.load import day_set, event_ahead
from bot.week.snapshots import restore_days, restore_hold

SIGNED = (DecisionStatus.APPROVED, DecisionStatus.OTHER_FIGURE, DecisionStatus.PLAN_KEPT)


@dataclass(frozen=True, slots=True)
class Way:
    """`may`: whether it still can be; `put_back`: what it restores beside days and hold, if it does."""

    may: Callable[[OnAthlete, HistoryRow], bool]
    put_back: Callable[[OnAthlete, HistoryRow], None] | None = None


def may_be_taken_back(turn: OnAthlete, row: HistoryRow) -> bool:
    """Whether what held before this change is known and can hold again."""
    before, back = row.detail.get("before"), KINDS[row.what].back
    if back not in WAYS or not isinstance(before, dict) or "hold" not in before:
        return False
    return WAYS[back].may(turn, row)


def put_back(turn: OnAthlete, row: HistoryRow) -> None:
    """What held before this change holds again, figures and hold included."""
    back, profile = KINDS[row.what].back, turn.profile
    assert back is not None
    if (restore := WAYS[back].put_back) is not None:
        restore(turn, row)
    restore_hold(turn, profile, row.detail["before"]["hold"])
    days = row.detail["before"]["days"]
    restore_days(turn, profile, days, local_date(profile, turn.context))


def _days_left(turn: OnAthlete, row: HistoryRow) -> bool:
    """Whether a day that it was about is still to come."""
    last = row.detail.get("last", row.detail.get("day"))
    return last is not None and date.fromisoformat(last) >= local_date(turn.profile, turn.context)


def _version_is_there(turn: OnAthlete, row: HistoryRow) -> bool:
    """Also that of an event which still waits."""
    earlier = _earlier_version(turn.session, row)
    return (
        earlier is not None
        and event_ahead(turn.session, turn.profile.person_id, earlier.event_id) is not None
    )


def _earlier_version(session: Session, row: HistoryRow) -> PlanRow | LimitsRow | None:
    before = row.detail["before"]
    if row.what == Change.PLAN_SET:
        return session.get(PlanRow, before["plan"]) if before["plan"] is not None else None
    return session.get(LimitsRow, before["limits"]) if before["limits"] is not None else None


def _version_again(turn: OnAthlete, row: HistoryRow) -> None:
    """The version before as the newest one."""
    earlier = _earlier_version(turn.session, row)
    assert earlier is not None
    again = earlier.model_dump(exclude={"id", "set_by", "set_at"})
    turn.session.add(type(earlier)(**again, set_by=id_of(turn.person), set_at=turn.now))


def _still_signed(turn: OnAthlete, row: HistoryRow) -> bool:
    decision = turn.session.get(DecisionRow, Change.SIGNED_OFF.of(row)["decision"])
    if decision is None:
        return False
    # A warning since then may have replaced the decision; what was approved is eaten all the same.
    set_now = day_set(turn.session, turn.profile.person_id, decision.sets_date)
    in_force = set_now is not None and set_now.decision_id == decision.id
    signed = decision.status in SIGNED or (in_force and decision.signed_at is not None)
    return signed and _days_left(turn, row)


def _unsign(turn: OnAthlete, row: HistoryRow) -> None:
    """The word is withdrawn; the morning's proposal is to be made anew."""
    decision = turn.session.get_one(DecisionRow, Change.SIGNED_OFF.of(row)["decision"])
    close_proposal(turn, decision, lambda _: signoff_words.taken_back(turn.person.first_name))
    decision.status = DecisionStatus.REPLACED


WAYS: Mapping[Back | None, Way] = {
    Back.DAYS: Way(_days_left),
    Back.VERSION: Way(_version_is_there, _version_again),
    Back.ASKS: Way(asks.can_go_back, asks.go_back),
    Back.EVENT: Way(event_moving.can_go_back, event_moving.go_back),
    Back.SIGNATURE: Way(_still_signed, _unsign),
}
SETS_FIGURES = tuple(kind for kind in KINDS.values() if kind.back in {*WAYS, Back.NEVER})
