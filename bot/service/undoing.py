"""The coach takes the last change back: silently where nothing had gone out, else with a correction."""

from __future__ import annotations

from datetime import date

from sqlmodel import Session, col, select

from bot.context import Context
from bot.incoming import Incoming
from bot.messages import coach_history as words
from bot.outbox import Button, say
from bot.service import deciding, event_moving
from bot.service.changes import restore_days
from bot.service.history_view import in_words, when, who
from bot.service.people import local_date, record
from bot.service.tapping import answer, rewrite
from bot.service.week import checkin_row, current_event
from bot.store.desk import HoldRow
from bot.store.people import AthleteProfile, HistoryRow, Person
from bot.store.traffic import OutboxRow
from bot.store.week import LimitsRow, PlanRow

CAN_BE_TAKEN_BACK = (
    "plan set", "limits set", "day set by hand", "held", "hold ended", "event set",
)  # fmt: skip
SETS_FIGURES = (
    *CAN_BE_TAKEN_BACK,
    "decided",
    "signed off",
    "sign-off lapsed",
    "taken back",
)


def ask_undo(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Show the last change, and ask; taking it back is a second tap."""
    answer(session, incoming, context)
    row = _last(session, profile)
    if row is None:
        say(session, chat_id=coach.chat_id, text=words.nothing_to_undo(), now=context.now)
        return
    if not _may_be_taken_back(session, profile, row, context):
        text = words.cannot_undo(in_words(row, profile))
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
        return
    said = words.undo_sure(
        when(row, profile), who(session, row), in_words(row, profile),
        told=row.what == "event set"
        or any(one.status != "waiting" for one in _targets_since(session, profile, row)),
        own=coach.id == profile.person_id,
    )  # fmt: skip
    number = profile.person_id
    say(
        session, chat_id=coach.chat_id, text=said, now=context.now,
        buttons=[
            [
                Button(words.undo_yes_button(), f"c:undo-yes:{number}:{row.id}"),
                Button(words.undo_no_button(), f"c:undo-no:{number}"),
            ]
        ],
    )  # fmt: skip


def undo(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """Put back what held before; the athlete reads a correction where the change had reached them."""
    answer(session, incoming, context)
    row = _last(session, profile)
    if (
        row is None
        or rest[:1] != [str(row.id)]
        or not _may_be_taken_back(session, profile, row, context)
    ):
        rewrite(session, incoming, words.undo_moved_on(), context)
        return
    targets = _targets_since(session, profile, row)
    told = any(one.status != "waiting" for one in targets)
    for one in targets:
        if one.status == "waiting":
            one.status = "dropped"
            session.add(one)
    today = local_date(profile, context)
    _put_back(session, coach, profile, row, context)
    restore_days(session, profile, row.detail["before"]["days"], today, context)
    record(
        session, profile.person_id, "taken back", context, by=coach.id, of=row.id,
        sentence=in_words(row, profile), day=row.detail.get("day", today.isoformat()),
    )  # fmt: skip
    own = coach.id == profile.person_id
    if row.what == "event set":
        rewrite(session, incoming, words.undone(told=True, own=own), context)
        told = False  # the event's own words have gone out; a target only for a morning decided
    else:
        rewrite(session, incoming, words.undone(told=told, own=own), context)
    because = "taken-back" if told else ""
    if checkin_row(session, profile.person_id, today) is not None:
        deciding.redecide(session, profile, context=context, because=because)
    elif told:
        day = max(today.isoformat(), row.detail.get("day", ""))
        deciding.send_target(
            session, profile, date.fromisoformat(day), context=context, because=because
        )


def keep(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    answer(session, incoming, context)
    rewrite(session, incoming, words.left(), context)


def _last(session: Session, profile: AthleteProfile) -> HistoryRow | None:
    """The last thing that set figures; the decision that a change itself led to goes with it."""
    query = (
        select(HistoryRow)
        .where(HistoryRow.athlete_id == profile.person_id, col(HistoryRow.what).in_(SETS_FIGURES))
        .order_by(col(HistoryRow.id).desc())
        .limit(2)
    )
    rows = list(session.exec(query))
    if len(rows) == 2 and rows[0].what == "decided" and rows[1].at == rows[0].at:
        return rows[1]
    return rows[0] if rows else None


def _may_be_taken_back(
    session: Session, profile: AthleteProfile, row: HistoryRow, context: Context
) -> bool:
    before = row.detail.get("before")
    if row.what not in CAN_BE_TAKEN_BACK or before is None:
        return False
    if row.what in ("hold ended", "held", "day set by hand"):
        return True
    if row.what == "event set":
        return event_moving.can_go_back(session, profile, row, context)
    earlier = _earlier_version(session, row)
    event = current_event(session, profile.person_id)
    return earlier is not None and event is not None and earlier.event_id == event.id


def _earlier_version(session: Session, row: HistoryRow) -> PlanRow | LimitsRow | None:
    before = row.detail["before"]
    if row.what == "plan set" and before["plan"] is not None:
        return session.get(PlanRow, before["plan"])
    if row.what == "limits set" and before["limits"] is not None:
        return session.get(LimitsRow, before["limits"])
    return None


def _put_back(
    session: Session, coach: Person, profile: AthleteProfile, row: HistoryRow, context: Context
) -> None:
    """The version before as the newest one; or the hold as it was."""
    if row.what == "event set":
        event_moving.go_back(session, coach, profile, row, context)
        return
    earlier = _earlier_version(session, row) if row.what in ("plan set", "limits set") else None
    if earlier is not None:
        again = earlier.model_dump(exclude={"id", "set_by", "set_at"})
        session.add(type(earlier)(**again, set_by=coach.id or 0, set_at=context.now))
    elif row.what in ("held", "hold ended"):
        hold = session.get(HoldRow, row.detail["hold"])
        assert hold is not None
        hold.ended_at = context.now if row.what == "held" else None
        session.add(hold)
    session.flush()


def _targets_since(session: Session, profile: AthleteProfile, row: HistoryRow) -> list[OutboxRow]:
    """Targets to the athlete since the change that have gone out or wait to."""
    query = select(OutboxRow).where(
        col(OutboxRow.topic).startswith(f"target:{profile.person_id}:"),
        OutboxRow.created_at >= row.at,
        col(OutboxRow.status).in_(("waiting", "sending", "sent")),
    )
    return list(session.exec(query))
