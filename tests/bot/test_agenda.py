"""Timed duties: their instants across changes of clocks, and who gets to do them."""

from __future__ import annotations

import subprocess
from collections.abc import Sequence
from datetime import UTC, date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import Engine
from sqlmodel import Session, col, select

from bot.core.timing import agenda
from bot.core.timing.agenda import Subject, about
from bot.core.timing.instants import local_instant
from bot.people.locks import SUBJECTS
from bot.store.base import id_of
from bot.store.db import claiming, looking, make_engine, transaction
from bot.store.tables.traffic import AgendaRow, OutboxRow
from tests.support.started import Started

NOON = datetime(2027, 6, 1, 12, tzinfo=UTC)
DAY = date(2027, 6, 1)


def _utc(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


# The instants follow from the IANA time zone database (package tzdata); that it has these changes of
# clocks is checked in `test_the_zones_change_their_clocks_when_we_say`.
@pytest.mark.parametrize(
    ("zone", "day", "at", "instant"),
    [
        # Spring: 02:00 becomes 03:00, so 02:30 does not exist and the first valid instant is 03:00.
        ("Europe/Berlin", "2027-03-28", "02:30", "2027-03-28 01:00"),
        ("Europe/Berlin", "2027-03-28", "01:59", "2027-03-28 00:59"),
        ("Europe/Berlin", "2027-03-28", "03:00", "2027-03-28 01:00"),
        ("Europe/Berlin", "2027-03-28", "07:00", "2027-03-28 05:00"),
        # Autumn: 02:30 comes twice, and is taken the first time, still on summer time.
        ("Europe/Berlin", "2027-10-31", "02:30", "2027-10-31 00:30"),
        ("Europe/Berlin", "2027-10-31", "07:00", "2027-10-31 06:00"),
        ("America/New_York", "2027-11-07", "01:30", "2027-11-07 05:30"),
        # A gap at midnight: the day begins at 01:00, and a prompt at 00:30 comes then.
        ("America/Santiago", "2027-09-05", "00:30", "2027-09-05 04:00"),
        ("Asia/Beirut", "2027-03-28", "00:15", "2027-03-27 22:00"),
        ("Asia/Beirut", "2027-03-28", "00:00", "2027-03-27 22:00"),
        # Half an hour of change.
        ("Australia/Lord_Howe", "2027-10-03", "02:15", "2027-10-02 15:30"),
        ("Australia/Lord_Howe", "2027-04-04", "01:45", "2027-04-03 14:45"),
    ],
)
def test_a_local_time_is_one_instant_also_when_the_clocks_change(
    zone: str, day: str, at: str, instant: str
) -> None:
    found = local_instant(date.fromisoformat(day), time.fromisoformat(at), ZoneInfo(zone))

    assert found == _utc(instant)


@pytest.mark.parametrize(
    ("zone", "before", "after", "local_before", "local_after"),
    [
        ("Europe/Berlin", "2027-03-28 00:59", "2027-03-28 01:00", "01:59", "03:00"),
        ("America/Santiago", "2027-09-05 03:59", "2027-09-05 04:00", "23:59", "01:00"),
        ("Asia/Beirut", "2027-03-27 21:59", "2027-03-27 22:00", "23:59", "01:00"),
    ],
)
def test_the_zones_change_their_clocks_when_we_say(
    zone: str, before: str, after: str, local_before: str, local_after: str
) -> None:
    assert f"{_utc(before).astimezone(ZoneInfo(zone)):%H:%M}" == local_before
    assert f"{_utc(after).astimezone(ZoneInfo(zone)):%H:%M}" == local_after


ZONES = (
    "Europe/Berlin",
    "America/New_York",
    "America/Santiago",
    "Asia/Beirut",
    "Australia/Lord_Howe",
    "Asia/Kolkata",
    "Africa/Casablanca",
    "Pacific/Chatham",
    "America/Asuncion",
)


@settings(max_examples=300)
@given(
    zone=st.sampled_from(ZONES),
    day=st.dates(date(2024, 1, 1), date(2030, 12, 31)),
    at=st.times(max_value=time(23, 59)).map(lambda t: t.replace(second=0, microsecond=0)),
)
def test_no_earlier_instant_of_the_day_shows_the_wall_clock_at_or_past_the_time(
    zone: str, day: date, at: time
) -> None:
    """Against zoneinfo's own reading of the instants around, minute by minute."""
    found = local_instant(day, at, zone)
    wall = datetime.combine(day, at)
    shown = found.astimezone(ZoneInfo(zone)).replace(tzinfo=None)
    minute_before = (found - timedelta(minutes=1)).astimezone(ZoneInfo(zone)).replace(tzinfo=None)

    assert shown >= wall
    assert minute_before < wall
    # Either exactly then, or the first minute after the clocks jumped over it.
    assert shown == wall or shown - minute_before > timedelta(minutes=1)


@pytest.mark.parametrize("zone", ["Europe/Berlin", "America/Santiago", "Asia/Beirut"])
def test_a_year_of_prompts_has_one_instant_for_each_local_day(zone: str) -> None:
    days = [date(2027, 1, 1) + timedelta(days=n) for n in range(365)]

    instants = [local_instant(day, time(0, 30), zone) for day in days]

    assert [i.astimezone(ZoneInfo(zone)).date() for i in instants] == days
    assert len(set(instants)) == 365


def due(engine: Engine, now: datetime = NOON, limit: int = 20) -> Sequence[AgendaRow]:
    with looking(engine) as session:
        return agenda.due(session, now, limit)


def _row(session: Session, **changes: Any) -> AgendaRow:
    fields = {"subject": "athlete:7", "local_date": DAY, "kind": "prompt", "due_at": NOON} | changes
    named = agenda.Named(*(fields.pop(name) for name in agenda.Named._fields))
    put = agenda.put_in_rank if "rank" in fields else agenda.put
    return put(session, named, **fields)


def test_putting_a_duty_twice_moves_it(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        first = _row(session)
    with transaction(any_engine) as session:
        second = _row(session, due_at=NOON + timedelta(hours=1), payload={"a": 1})

    assert (first.id, second.due_at, second.payload) == (
        second.id,
        NOON + timedelta(hours=1),
        {"a": 1},
    )


def test_a_done_duty_stays_done_unless_it_is_wanted_again(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        _row(session).status = "done"
    with transaction(own_engine) as session:
        assert _row(session).status == "done"
        assert _row(session, again=True).status == "waiting"


def test_a_cancelled_duty_is_not_due_and_may_be_put_again(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        _row(session)
        _row(session, kind="nudge")
        _row(session, subject="athlete:8")
        agenda.cancel(session, subject="athlete:7", kinds=["prompt"])
    assert {(row.subject, row.kind) for row in due(any_engine)} == {
        ("athlete:7", "nudge"),
        ("athlete:8", "prompt"),
    }
    with transaction(any_engine) as session:
        assert _row(session).status == "waiting"


def test_cancelling_can_be_for_one_day_only(own_engine: Engine) -> None:
    tomorrow = DAY + timedelta(days=1)
    with transaction(own_engine) as session:
        _row(session)
        _row(session, local_date=tomorrow)
        agenda.cancel(session, subject="athlete:7", local_date=tomorrow)
        rows = session.exec(select(AgendaRow).order_by("local_date")).all()
        assert [row.status for row in rows] == ["waiting", "cancelled"]


def test_what_failed_is_put_off_and_then_due_again(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        row_id = id_of(_row(session))
    with claiming(any_engine) as session:
        agenda.retry(session, row_id, NOON)
    later = NOON + agenda.FIRST_RETRY
    assert not due(any_engine, later - timedelta(seconds=1))
    with transaction(any_engine) as session:
        assert agenda.take(session, row_id, later - timedelta(seconds=1)) is None
    assert len(due(any_engine, later)) == 1


def test_a_duty_is_not_taken_before_it_is_due(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        row_id = id_of(_row(session))
    assert not due(any_engine, NOON - timedelta(microseconds=1))
    with transaction(any_engine) as session:
        assert agenda.take(session, row_id, NOON - timedelta(microseconds=1)) is None


def test_a_duty_that_was_moved_after_it_was_looked_for_is_not_done(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        row_id = id_of(_row(session))
    assert len(due(any_engine)) == 1
    with transaction(any_engine) as session:
        _row(session, due_at=NOON + timedelta(hours=1))
    with transaction(any_engine) as session:
        assert agenda.take(session, row_id, NOON) is None


DUTIES, SUBJECTS_OF_THEM = 200, 40
DOER = """
import os, signal, sys
from datetime import UTC, datetime
import structlog
from bot.core.chat import outbox
from bot.core.turn import Context
from bot.core.timing import agenda
from bot.core.timing.clock import DrivenClock
from bot.core.timing.duties import Duties
from bot.core.use_cases import Runtime, UseCases
from bot.store.db import looking, make_engine
structlog.configure(logger_factory=structlog.PrintLoggerFactory(sys.stderr))
NOON = datetime(2027, 6, 1, 12, tzinfo=UTC)
left = int(sys.argv[2])
def due(turn, row):
    global left
    outbox.say(turn, chat_id=int(row.subject.partition(":")[2]), text=row.kind)
    turn.session.flush()
    if (left := left - 1) == 0:
        os.kill(os.getpid(), signal.SIGKILL)
engine = make_engine(sys.argv[1])
use_cases = UseCases(
    incoming=lambda turn: None, due=due, undeliverable=lambda turn, row: None, hold_their_people=True
)
duties = Duties(Runtime(engine, use_cases, DrivenClock(NOON), lambda: Context(NOON)))
sys.stdin.readline()
while True:
    duties.do_due()
    with looking(engine) as session:
        if not agenda.due(session, NOON):
            break
engine.dispose()
"""


def at_once(url: str, *kills: str) -> list[int | None]:
    """Processes that do what is due, each killed at so many; how they ended."""
    processes = [
        Started("-c", DOER, url, kill, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
        for kill in kills
    ]
    for process in processes:  # all at once, when all are up
        assert process.stdin is not None
        process.stdin.write("go\n")
        process.stdin.flush()
    for process in processes:
        process.communicate()
    return [process.returncode for process in processes]


def test_of_five_processes_three_are_killed_amid_a_duty_and_each_is_done_once_and_in_order(
    any_url: str,
) -> None:
    engine = make_engine(any_url)
    with transaction(engine) as session:
        for number in range(DUTIES):
            place, subject = divmod(number, SUBJECTS_OF_THEM)
            session.add(
                AgendaRow(
                    subject=f"athlete:{subject}", local_date=DAY, kind=f"{place}", due_at=NOON,
                    rank=place,
                )
            )  # fmt: skip
    # Each is killed at one of its duties, of which there are enough for all; then two live.
    assert at_once(any_url, "5", "10", "15") == [-9, -9, -9]
    assert at_once(any_url, "0", "0") == [0, 0]
    with Session(engine) as session:
        said = session.exec(select(OutboxRow).order_by(col(OutboxRow.id))).all()
    told = [
        [row.payload["text"] for row in said if row.chat_id == n] for n in range(SUBJECTS_OF_THEM)
    ]
    assert told == [[str(place) for place in range(DUTIES // SUBJECTS_OF_THEM)]] * SUBJECTS_OF_THEM
    engine.dispose()


def test_of_duties_at_the_same_instant_the_lower_rank_is_done_first(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        for subject, rank in (("later", 1), ("first", 0), ("later too", 1), ("first too", 0)):
            agenda.put_in_rank(
                session, agenda.Named(subject, date(2027, 5, 6), "prompt"), due_at=NOON, rank=rank,
            )  # fmt: skip
    assert [row.subject for row in due(any_engine, limit=3)] == ["first", "first too", "later"]


def test_what_a_killed_process_left_undone_is_done_before_what_comes_after_it(
    any_engine: Engine,
) -> None:
    with transaction(any_engine) as session:
        over, next_one = (
            id_of(_row(session, kind="over")),
            id_of(_row(session, kind="next", rank=9)),
        )
    with transaction(any_engine) as session:
        assert agenda.take(session, next_one, NOON) is None
    with transaction(any_engine) as session:
        assert agenda.take(session, over, NOON) is not None
        assert agenda.take(session, next_one, NOON) is not None


def test_what_fails_holds_up_nothing_behind_it(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        failing, behind = (
            id_of(_row(session, kind="over")),
            id_of(_row(session, kind="next", rank=9)),
        )
    with claiming(any_engine) as session:
        agenda.retry(session, failing, NOON)
    with transaction(any_engine) as session:
        assert agenda.take(session, behind, NOON) is not None


def test_whoever_a_duty_is_about_is_read_back_and_can_be_locked() -> None:
    def duty(subject: str) -> AgendaRow:
        return AgendaRow(subject=subject, local_date=date(2027, 5, 6), kind="prompt", due_at=NOON)

    assert Subject.ATHLETE(7) == "athlete:7"  # as rows of every version have it
    assert {one: about(duty(one(7))) for one in Subject} == {one: (one, 7) for one in Subject}
    assert set(SUBJECTS) == set(Subject)
    assert about(duty("photos")) is None
    assert about(duty("photo:7")) is None
    with pytest.raises(ValueError, match="about no coach"):
        Subject.COACH.of(duty("athlete:7"))
