"""Timed duties: their instants across changes of clocks, and who gets to do them."""

from __future__ import annotations

import subprocess
from datetime import UTC, date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sqlalchemy import Engine
from sqlmodel import Session, select

from bot.core.timing import agenda
from bot.core.timing.agenda import Subject, about
from bot.core.timing.instants import local_instant
from bot.people.locks import SUBJECTS
from bot.store.db import claiming, make_engine, transaction
from bot.store.tables.traffic import AgendaRow
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


def _row(session: Session, **changes: Any) -> AgendaRow:
    fields = {"subject": "athlete:7", "local_date": DAY, "kind": "prompt", "due_at": NOON} | changes
    named = agenda.Named(*(fields.pop(name) for name in agenda.Named._fields))
    return agenda.put(session, named, **fields)


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
    with claiming(any_engine) as session:
        due = agenda.claim_due(session, NOON)
        assert {(row.subject, row.kind) for row in due} == {
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


def test_a_claimed_duty_is_nobody_elses_until_the_lease_ends(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        _row(session)
    with claiming(any_engine) as session:
        assert len(agenda.claim_due(session, NOON)) == 1
    with claiming(any_engine) as session:
        assert not agenda.claim_due(session, NOON + agenda.LEASE - timedelta(seconds=1))
        assert len(agenda.claim_due(session, NOON + agenda.LEASE)) == 1


def test_a_duty_is_not_claimed_before_it_is_due(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        _row(session)
    with claiming(any_engine) as session:
        assert not agenda.claim_due(session, NOON - timedelta(microseconds=1))


def test_a_duty_that_was_moved_after_it_was_claimed_is_not_done(own_engine: Engine) -> None:
    with transaction(own_engine) as session:
        row_id = _row(session).id
    with claiming(own_engine) as session:
        agenda.claim_due(session, NOON)
    with transaction(own_engine) as session:
        _row(session, due_at=NOON + timedelta(hours=1))
    with transaction(own_engine) as session:
        assert row_id is not None
        assert agenda.take(session, row_id, NOON) is None


DUTIES = 600
CLAIMER = """
import sys
from datetime import UTC, datetime
import structlog
from bot.core.timing import agenda
from bot.store.db import claiming, make_engine
structlog.configure(logger_factory=structlog.PrintLoggerFactory(sys.stderr))
engine = make_engine(sys.argv[1])
sys.stdin.readline()
while True:
    with claiming(engine) as session:
        rows = agenda.claim_due(session, datetime(2027, 6, 1, 12, tzinfo=UTC), 7)
    if not rows:
        break
    print(*(row.id for row in rows), sep="\\n")
engine.dispose()
"""


def test_four_processes_claim_every_duty_exactly_once(any_url: str) -> None:
    engine = make_engine(any_url)
    with transaction(engine) as session:
        for number in range(DUTIES):
            session.add(
                AgendaRow(subject=f"athlete:{number}", local_date=DAY, kind="prompt", due_at=NOON)
            )
    engine.dispose()
    processes = [
        Started("-c", CLAIMER, any_url, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
        for _ in range(4)
    ]
    for process in processes:  # all at once, when all are up
        assert process.stdin is not None
        process.stdin.write("go\n")
        process.stdin.flush()
    claimed = [int(line) for process in processes for line in process.communicate()[0].split()]

    assert [process.returncode for process in processes] == [0, 0, 0, 0]
    assert len(claimed) == DUTIES
    assert len(set(claimed)) == DUTIES


def test_of_duties_at_the_same_instant_the_lower_rank_is_done_first(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        for subject, rank in (("later", 1), ("first", 0), ("later too", 1), ("first too", 0)):
            agenda.put(
                session, agenda.Named(subject, date(2027, 5, 6), "prompt"), due_at=NOON, rank=rank,
            )  # fmt: skip
    with claiming(any_engine) as session:
        claimed = agenda.claim_due(session, NOON, limit=3)
        assert [row.subject for row in claimed] == ["first", "first too", "later"]


def test_what_two_processes_have_claimed_of_one_subject_is_done_in_its_order(
    any_engine: Engine,
) -> None:
    with transaction(any_engine) as session:
        over, next_one = _row(session, kind="over").id, _row(session, kind="next", rank=9).id
    with claiming(any_engine) as session:
        assert [row.id for row in agenda.claim_due(session, NOON, limit=1)] == [over]
    with claiming(any_engine) as session:  # another process
        assert [row.id for row in agenda.claim_due(session, NOON, limit=1)] == [next_one]
    assert over is not None and next_one is not None

    with transaction(any_engine) as session:
        assert agenda.take(session, next_one, NOON) is None
    with transaction(any_engine) as session:
        assert agenda.take(session, over, NOON) is not None
    with claiming(any_engine) as session:  # left for a moment only
        again = agenda.claim_due(session, NOON + timedelta(seconds=2))
        assert [row.id for row in again] == [next_one]
        assert agenda.take(session, next_one, NOON) is not None


def test_what_fails_holds_up_nothing_behind_it(any_engine: Engine) -> None:
    with transaction(any_engine) as session:
        failing, behind = _row(session, kind="over").id, _row(session, kind="next", rank=9).id
    assert failing is not None and behind is not None
    with claiming(any_engine) as session:
        agenda.claim_due(session, NOON)
        agenda.retry(session, failing, NOON)
    with transaction(any_engine) as session:
        assert agenda.take(session, behind, NOON) is not None


#: Ways to join that the server is forbidden, so that it has to find the claimed rows otherwise.
FORBIDDEN = (
    (),
    ("hashjoin", "mergejoin", "hashagg", "material"),
    ("nestloop", "mergejoin"),
    ("indexscan", "bitmapscan", "indexonlyscan"),
    ("seqscan", "hashjoin", "sort"),
)


@pytest.mark.parametrize("forbidden", FORBIDDEN)
def test_whatever_way_the_server_finds_them_the_earliest_are_claimed_and_no_more(
    postgres_engine: Engine, forbidden: tuple[str, ...]
) -> None:
    with transaction(postgres_engine) as session:
        for number in range(60):
            minutes, rank = divmod(number * 7 % 60, 3)
            session.add(
                AgendaRow(
                    subject=f"athlete:{number}", local_date=DAY, kind="prompt", rank=rank,
                    due_at=NOON - timedelta(minutes=minutes),
                )
            )  # fmt: skip
    taken: list[tuple[datetime, int]] = []
    for _ in range(4):
        with claiming(postgres_engine) as session:
            for way in forbidden:
                session.connection().exec_driver_sql(f"SET LOCAL enable_{way} = off")
            claimed = agenda.claim_due(session, NOON, limit=15)
            assert len(claimed) == 15
            taken += [(row.due_at, row.rank) for row in claimed]
    assert taken == sorted(taken)


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
