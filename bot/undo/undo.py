"""The coach takes the last change back: silently where nothing had gone out, else with a correction.

The last change of figures (with the event that they hang on) and the last one of the day's times
are two: neither stands in the way of the other.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime

from sqlmodel import Session, col, select

from bot.coach.history import in_words, when, who
from bot.core.chat.outbox import ARRIVED, Button, Topic, on
from bot.core.turn import OnAthlete, Turn
from bot.decision import deciding, to_athlete
from bot.people.changes import BY_LEARNT_LOAD, BY_SETUP, BY_SHEET, Change
from bot.people.people import local_date, record
from bot.people.telling import rewrite, say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, HistoryRow
from bot.store.tables.traffic import OutboxRow, TopicKind
from bot.store.tables.week import CheckInRow, DecisionRow
from bot.undo import times as times_of_day
from bot.undo import words
from bot.undo.buttons import UNDO_NO, UNDO_YES, OfChange
from bot.undo.kinds import SETS_FIGURES, may_be_taken_back, put_back
from bot.week.load import checkin_row, current_week
from bot.words.common import cancel_button, cancelled, take_back_button
from engine.decision.decide import Outcome

LOOKED_THROUGH = 20  # entries, the latest first: more mornings than a week can be stopped


def ask_undo(turn: OnAthlete) -> None:
    """Show the last change, and ask; taking it back is a second tap."""
    row, times = _last(turn.session, turn.profile), times_of_day.last_change(turn, turn.profile)
    may = row is not None and may_be_taken_back(turn, row)
    if row is None and times is None:
        say_to(turn, turn.person, words.nothing_to_undo())
        return
    if row is not None and not may and times is None:
        say_to(turn, turn.person, words.cannot_undo(in_words(row, turn.profile)))
        return
    if row is not None and may:
        told = _told(turn.session, turn.profile, row)
        change = _sentence(turn.session, turn.profile, row)
        _ask(turn, row, change, told=told, times=False)
    if times is not None:
        told = times_of_day.told(turn.session, turn.profile, times)
        change = in_words(times, turn.profile)
        _ask(turn, times, change, told=told, times=True)


def undo(turn: OnAthlete, pressed: OfChange) -> None:
    """Put back what held before; the athlete reads a correction where the change had reached them."""
    named, self_coached = pressed.change, turn.self_coached
    times = times_of_day.last_change(turn, turn.profile)
    if times is not None and named == times.id:
        told = times_of_day.take_back(turn, turn.person, turn.profile, times)
        rewrite(turn, words.undone(told=told, self_coached=self_coached))
        return
    row = _last(turn.session, turn.profile)
    if row is None or named != row.id or not may_be_taken_back(turn, row):
        rewrite(turn, words.undo_moved_on())
        return
    targets = _targets_since(turn.session, turn.profile, row)
    told, figures_told = _told(turn.session, turn.profile, row), _any_arrived(targets)
    unsent = [one for one in [*targets, *_said(turn.session, row)] if one.status == "waiting"]
    for message in unsent:
        message.status = "dropped"
    sentence = _sentence(turn.session, turn.profile, row)
    for one in _together(turn.session, row):
        put_back(turn, one)
    record(turn, turn.profile.person_id, by=turn.person.id, what=Change.TAKEN_BACK(
        of=id_of(row), sentence=sentence,
        day=row.detail.get("day", local_date(turn.profile, turn.context).isoformat()),
    ))  # fmt: skip
    rewrite(turn, words.undone(told=told, self_coached=self_coached))
    if row.what == Change.EVENT_SET:
        told = figures_told  # the event's own words have gone out
    _tell_figures(turn, turn.profile, row, unsent, told=told)


def keep(turn: OnAthlete) -> None:
    rewrite(turn, cancelled())


def _ask(turn: OnAthlete, row: HistoryRow, change: str, *, told: bool, times: bool) -> None:
    profile, self_coached, number = turn.profile, turn.self_coached, turn.profile.person_id
    text = words.undo_sure(
        when(row, profile), who(turn.session, row), change, told=told, self_coached=self_coached
    )
    yes = words.undo_times_button() if times else take_back_button()
    say_to(
        turn,
        turn.person,
        text,
        buttons=[
            [Button(yes, UNDO_YES(number, id_of(row))), Button(cancel_button(), UNDO_NO(number))]
        ],
    )


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
    if len(rows) == 2 and rows[0].what == Change.DECIDED and _led_to(rows[1], rows[0]):
        return rows[1]
    return rows[0] if rows else None


def _stopped(row: HistoryRow) -> bool:
    return row.what == Change.DECIDED and row.detail.get("outcome") == Outcome.ESCALATED.value


def _led_to(change: HistoryRow, decided: HistoryRow) -> bool:
    """A coach's answer to a proposal decides nothing anew: what is decided after it is news."""
    return change.at == decided.at and change.what != Change.SIGNED_OFF


def _together(session: Session, row: HistoryRow) -> list[HistoryRow]:
    """All that was changed with it: one sheet may set plan and limits, a learnt load too."""
    how = row.detail.get("how")
    if row.what == Change.EVENT_SET or how not in (BY_SHEET, BY_LEARNT_LOAD, BY_SETUP):
        return [row]
    query = select(HistoryRow).where(
        HistoryRow.athlete_id == row.athlete_id,
        HistoryRow.at == row.at,
        HistoryRow.by_id == row.by_id,
        col(HistoryRow.what).in_((Change.PLAN_SET, Change.LIMITS_SET, Change.EVENT_ASKS)),
    )
    found = session.exec(query.order_by(col(HistoryRow.id).desc())).all()
    return [one for one in found if one.detail.get("how") == how]


def _sentence(session: Session, profile: AthleteProfile, row: HistoryRow) -> str:
    changes = [in_words(one, profile) for one in reversed(_together(session, row))]
    return "; ".join(changes)


def _targets_since(session: Session, profile: AthleteProfile, row: HistoryRow) -> list[OutboxRow]:
    """Targets to the athlete since the change that have gone out or wait to."""
    query = select(OutboxRow).where(
        OutboxRow.topic == TopicKind.TARGET,
        OutboxRow.topic_about == profile.person_id,
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
    turn: Turn, profile: AthleteProfile, row: HistoryRow, unsent: Sequence[OutboxRow], *, told: bool
) -> None:
    """Decide anew where there is something to decide on; say what is not known already."""
    because, today = "taken-back" if told else "", local_date(profile, turn.context)
    checkin = _checkin(turn.session, profile, row, today)
    if checkin is not None and current_week(turn.session, profile) is not None:
        deciding.decide_again(
            turn, profile, checkin, because=because,
            answer_by=_answer_by(turn.session, row),
        )  # fmt: skip
        if not told:
            _drop_what_was_read(turn.session, profile)
        return
    if told:
        about = row.detail.get("day", "") if row.what != Change.EVENT_SET else ""
        day = date.fromisoformat(max(today.isoformat(), about))
        to_athlete.send_target(turn, profile, day, because=because)
        return
    # What was dropped may itself have taken the place of a message that had not arrived.
    for topic in dict.fromkeys(topic for one in unsent if (topic := Topic.of(one)) is not None):
        newest = _newest_before(turn.session, topic, min(id_of(one) for one in unsent))
        if newest is not None and newest.status == "dropped" and topic.day is not None:
            to_athlete.send_target(turn, profile, topic.day, because="")


def _checkin(
    session: Session, profile: AthleteProfile, row: HistoryRow, today: date
) -> CheckInRow | None:
    """The morning that is decided anew: the one whose proposal was signed, else today's."""
    if row.what == Change.SIGNED_OFF:
        decision = session.get_one(DecisionRow, Change.SIGNED_OFF.of(row)["decision"])
        return session.get(CheckInRow, decision.checkin_id)
    return checkin_row(session, profile.person_id, today)


def _answer_by(session: Session, row: HistoryRow) -> datetime | None:
    """The deadline that a proposal had, on which a word is taken back."""
    if row.what != Change.SIGNED_OFF:
        return None
    return session.get_one(DecisionRow, Change.SIGNED_OFF.of(row)["decision"]).sign_off_due_at


def _drop_what_was_read(session: Session, profile: AthleteProfile) -> None:
    """A target that waits and reads as the one that arrived before it need not be sent."""
    waiting = select(OutboxRow).where(
        OutboxRow.topic == TopicKind.TARGET,
        OutboxRow.topic_about == profile.person_id,
        OutboxRow.status == "waiting",
    )
    for message in session.exec(waiting).all():
        topic = Topic.of(message)
        assert topic is not None
        arrived = _newest_before(session, topic, id_of(message), arrived=True)
        if arrived is not None and arrived.payload["text"] == message.payload["text"]:
            message.status = "dropped"


def _newest_before(
    session: Session, topic: Topic, number: int, *, arrived: bool = False
) -> OutboxRow | None:
    query = select(OutboxRow).where(*on(topic), col(OutboxRow.id) < number)
    if arrived:
        query = query.where(col(OutboxRow.status).in_(ARRIVED))
    return session.exec(query.order_by(col(OutboxRow.id).desc())).first()
