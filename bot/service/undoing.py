"""The coach takes the last change back: silently where nothing had gone out, else with a correction.

The last change of figures (with the event that they hang on) and the last one of the day's times
are two: neither stands in the way of the other.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime

from sqlmodel import Session, col, select

from bot.context import Context
from bot.incoming import Incoming
from bot.messages import taking_back as words
from bot.outbox import ARRIVED, Button, say
from bot.service import deciding, stage_back
from bot.service.history_view import in_words, when, who
from bot.service.people import local_date, record
from bot.service.putting_back import KINDS, may_be_taken_back, put_back
from bot.service.tapping import answer, rewrite
from bot.service.week import checkin_row, current_week
from bot.store.people import AthleteProfile, HistoryRow, Person
from bot.store.traffic import OutboxRow
from bot.store.week import CheckInRow, DecisionRow
from engine.decide import Outcome

SETS_FIGURES = (*KINDS, "decided", "sign-off lapsed", "taken back")
#: What sets plan and limits in one go, as a change of each notes it.
BY_SHEET, BY_LEARNT_LOAD = "sheet", "next load"
LOOKED_THROUGH = 20  # entries, the latest first: more mornings than a week can be stopped


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
    row, times = _last(session, profile), stage_back.last_change(session, profile, context)
    may = row is not None and may_be_taken_back(session, profile, row, context)
    if row is None and times is None:
        say(session, chat_id=coach.chat_id, text=words.nothing_to_undo(), now=context.now)
        return
    if row is not None and not may and times is None:
        text = words.cannot_undo(in_words(row, profile))
        say(session, chat_id=coach.chat_id, text=text, now=context.now)
        return
    if row is not None and may:
        told = _told(session, profile, row)
        change = _sentence(session, profile, row)
        _ask(session, coach, profile, row, change, told, context, times=False)
    if times is not None:
        told = stage_back.told(session, profile, times)
        change = in_words(times, profile)
        _ask(session, coach, profile, times, change, told, context, times=True)


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
    named, own = (rest or [""])[0], coach.id == profile.person_id
    times = stage_back.last_change(session, profile, context)
    if times is not None and named == str(times.id):
        told = stage_back.take_back(session, coach, profile, times, context)
        rewrite(session, incoming, words.undone(told=told, own=own), context)
        return
    row = _last(session, profile)
    if row is None or named != str(row.id) or not may_be_taken_back(session, profile, row, context):
        rewrite(session, incoming, words.undo_moved_on(), context)
        return
    targets = _targets_since(session, profile, row)
    told, figures_told = _told(session, profile, row), _any_arrived(targets)
    unsent = [one for one in [*targets, *_said(session, row)] if one.status == "waiting"]
    for message in unsent:
        message.status = "dropped"
        session.add(message)
    sentence = _sentence(session, profile, row)
    for one in _together(session, row):
        put_back(session, coach, profile, one, context)
    record(
        session, profile.person_id, "taken back", context, by=coach.id, of=row.id,
        sentence=sentence, day=row.detail.get("day", local_date(profile, context).isoformat()),
    )  # fmt: skip
    rewrite(session, incoming, words.undone(told=told, own=own), context)
    if row.what == "event set":
        told = figures_told  # the event's own words have gone out
    _tell_figures(session, profile, row, unsent, context, told=told)


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


def _ask(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    row: HistoryRow,
    change: str,
    told: bool,
    context: Context,
    *,
    times: bool,
) -> None:
    own, number = coach.id == profile.person_id, profile.person_id
    text = words.undo_sure(when(row, profile), who(session, row), change, told=told, own=own)
    yes = words.undo_times_button() if times else words.undo_yes_button()
    say(
        session, chat_id=coach.chat_id, text=text, now=context.now,
        buttons=[
            [
                Button(yes, f"c:undo-yes:{number}:{row.id}"),
                Button(words.undo_no_button(), f"c:undo-no:{number}"),
            ]
        ],
    )  # fmt: skip


def _last(session: Session, profile: AthleteProfile) -> HistoryRow | None:
    """The last thing that set figures; the decision that a change itself led to goes with it.

    A morning that was stopped set none: it must not hide the approval that it came after.
    """
    query = (
        select(HistoryRow)
        .where(HistoryRow.athlete_id == profile.person_id, col(HistoryRow.what).in_(SETS_FIGURES))
        .order_by(col(HistoryRow.id).desc())
        .limit(LOOKED_THROUGH)
    )
    rows = [row for row in session.exec(query) if not _stopped(row)][:2]
    if len(rows) == 2 and rows[0].what == "decided" and _led_to(rows[1], rows[0]):
        return rows[1]
    return rows[0] if rows else None


def _stopped(row: HistoryRow) -> bool:
    return row.what == "decided" and row.detail.get("outcome") == Outcome.ESCALATED.value


def _led_to(change: HistoryRow, decided: HistoryRow) -> bool:
    """A coach's word on a proposal decides nothing anew: what is decided after it is news."""
    return change.at == decided.at and change.what != "signed off"


def _together(session: Session, row: HistoryRow) -> list[HistoryRow]:
    """All that was changed with it: one sheet may set plan and limits, a learnt load too."""
    how = row.detail.get("how")
    if how not in (BY_SHEET, BY_LEARNT_LOAD):
        return [row]
    query = select(HistoryRow).where(
        HistoryRow.athlete_id == row.athlete_id,
        HistoryRow.at == row.at,
        HistoryRow.by_id == row.by_id,
        col(HistoryRow.what).in_(("plan set", "limits set")),
    )
    found = session.exec(query.order_by(col(HistoryRow.id).desc())).all()
    return [one for one in found if one.detail.get("how") == how]


def _sentence(session: Session, profile: AthleteProfile, row: HistoryRow) -> str:
    changes = [in_words(one, profile) for one in reversed(_together(session, row))]
    return "; ".join(changes)


def _targets_since(session: Session, profile: AthleteProfile, row: HistoryRow) -> list[OutboxRow]:
    """Targets to the athlete since the change that have gone out or wait to."""
    query = select(OutboxRow).where(
        col(OutboxRow.topic).startswith(f"target:{profile.person_id}:"),
        OutboxRow.created_at >= row.at,
        col(OutboxRow.status).in_(("waiting", *ARRIVED)),
    )
    return list(session.exec(query))


def _said(session: Session, row: HistoryRow) -> list[OutboxRow]:
    """What the athlete was told of the change itself."""
    rows = [session.get(OutboxRow, number) for number in row.detail.get("said", [])]
    return [one for one in rows if one is not None]


def _told(session: Session, profile: AthleteProfile, row: HistoryRow) -> bool:
    return _any_arrived([*_targets_since(session, profile, row), *_said(session, row)])


def _any_arrived(messages: Sequence[OutboxRow]) -> bool:
    return any(one.status in ARRIVED for one in messages)


def _tell_figures(
    session: Session,
    profile: AthleteProfile,
    row: HistoryRow,
    unsent: Sequence[OutboxRow],
    context: Context,
    *,
    told: bool,
) -> None:
    """Decide anew where there is something to decide on; say what is not known already."""
    because, today = "taken-back" if told else "", local_date(profile, context)
    checkin = _checkin(session, profile, row, today)
    if checkin is not None and current_week(session, profile) is not None:
        deciding.decide_again(
            session, profile, checkin, context=context, because=because,
            answer_by=_answer_by(session, row),
        )  # fmt: skip
        if not told:
            _drop_what_was_read(session, profile)
        return
    if told:
        about = row.detail.get("day", "") if row.what != "event set" else ""
        day = date.fromisoformat(max(today.isoformat(), about))
        deciding.send_target(session, profile, day, context=context, because=because)
        return
    # What was dropped may itself have taken the place of a message that had not arrived.
    for topic in dict.fromkeys(one.topic for one in unsent if one.topic):
        newest = _newest_before(session, topic, min(one.id or 0 for one in unsent))
        if newest is not None and newest.status == "dropped":
            day = date.fromisoformat(topic.rpartition(":")[2])
            deciding.send_target(session, profile, day, context=context, because="")


def _checkin(
    session: Session, profile: AthleteProfile, row: HistoryRow, today: date
) -> CheckInRow | None:
    """The morning that is decided anew: the one whose proposal was signed, else today's."""
    if row.what == "signed off":
        decision = session.get_one(DecisionRow, row.detail["decision"])
        return session.get(CheckInRow, decision.checkin_id)
    return checkin_row(session, profile.person_id, today)


def _answer_by(session: Session, row: HistoryRow) -> datetime | None:
    """The deadline that a proposal had, on which a word is taken back."""
    if row.what != "signed off":
        return None
    return session.get_one(DecisionRow, row.detail["decision"]).sign_off_due_at


def _drop_what_was_read(session: Session, profile: AthleteProfile) -> None:
    """A target that waits and reads as the one that arrived before it need not be sent."""
    waiting = select(OutboxRow).where(
        col(OutboxRow.topic).startswith(f"target:{profile.person_id}:"),
        OutboxRow.status == "waiting",
    )
    for message in session.exec(waiting).all():
        assert message.topic is not None
        arrived = _newest_before(session, message.topic, message.id or 0, arrived=True)
        if arrived is not None and arrived.payload["text"] == message.payload["text"]:
            message.status = "dropped"
            session.add(message)


def _newest_before(
    session: Session, topic: str, number: int, *, arrived: bool = False
) -> OutboxRow | None:
    query = select(OutboxRow).where(OutboxRow.topic == topic, col(OutboxRow.id) < number)
    if arrived:
        query = query.where(col(OutboxRow.status).in_(ARRIVED))
    return session.exec(query.order_by(col(OutboxRow.id).desc())).first()
