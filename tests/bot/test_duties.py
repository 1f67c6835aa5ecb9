"""Doing what is due: each duty on its own, and none that holds up another."""

from __future__ import annotations

import itertools
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from sqlalchemy import Engine
from sqlmodel import Session, select

from bot.core.chat import outbox
from bot.core.timing import agenda
from bot.core.timing.agenda import kind_alone
from bot.core.timing.clock import DrivenClock
from bot.core.timing.duties import Duties
from bot.core.turn import Context, Turn
from bot.core.use_cases import Runtime, UseCases
from bot.store.db import transaction
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.week.prompts import NUDGE

START = datetime(2027, 6, 1, 7, tzinfo=UTC)
DAY = date(2027, 6, 1)


def _due(turn: Turn, row: AgendaRow) -> None:
    outbox.say(turn, chat_id=1, text=f"{row.subject} {row.kind}")
    if row.kind == "bad":
        raise ZeroDivisionError
    if row.kind == "alert":  # repeats itself, as an alert does until it is acknowledged
        agenda.put(
            turn.session,
            agenda.Named(row.subject, row.local_date, row.kind),
            due_at=turn.now + timedelta(minutes=5),
            again=True,
        )


class Day:
    """Duties on a real database and a driven clock."""

    def __init__(self, engine: Engine) -> None:
        self.engine = engine
        self.clock = DrivenClock(START)
        self.duties = self.at_work(_due)

    def at_work(self, due: Callable[[Turn, AgendaRow], None]) -> Duties:
        """A process that does this with what is due."""
        use_cases = UseCases(
            incoming=lambda turn: None, due=due, undeliverable=lambda turn, row: None
        )
        return Duties(
            Runtime(self.engine, use_cases, self.clock, lambda: Context(self.clock.now()))
        )

    def put(self, subject: str, kind: str, after: timedelta = timedelta()) -> None:
        with transaction(self.engine) as session:
            agenda.put(session, agenda.Named(subject, DAY, kind), due_at=START + after)

    def said(self) -> list[str]:
        with Session(self.engine) as session:
            rows = session.exec(select(OutboxRow).order_by("id"))
            return [row.payload["text"] for row in rows]


@pytest.fixture
def day(any_engine: Engine) -> Any:
    return Day(any_engine)


async def test_what_is_due_is_done_once_and_what_is_not_waits(day: Day) -> None:
    day.put("athlete:1", "prompt")
    day.put("athlete:2", "prompt", timedelta(minutes=1))
    await day.duties.tick()
    await day.duties.tick()
    assert day.said() == ["athlete:1 prompt"]
    day.clock.advance(timedelta(minutes=1))
    await day.duties.tick()
    assert day.said() == ["athlete:1 prompt", "athlete:2 prompt"]


async def test_one_tick_does_all_that_fell_due_meanwhile(day: Day) -> None:
    for number in range(50):
        day.put(f"athlete:{number:02}", "prompt", timedelta(seconds=number))
    day.clock.advance(timedelta(hours=1))
    await day.duties.tick()

    assert day.said() == [f"athlete:{number:02} prompt" for number in range(50)]


async def test_a_duty_that_fails_leaves_nothing_behind_and_holds_up_nobody(day: Day) -> None:
    day.put("athlete:1", "bad")
    day.put("athlete:2", "prompt")
    await day.duties.tick()

    assert day.said() == ["athlete:2 prompt"]


async def test_a_duty_that_fails_is_tried_again_less_and_less_often_and_for_ever(day: Day) -> None:
    day.put("athlete:1", "bad")
    tried, before = [], 0
    for minute in range(0, 5 * 60, 1):
        await day.duties.tick()
        with Session(day.engine) as session:
            attempts = session.exec(select(AgendaRow.attempts)).one()
        if attempts > before:
            tried.append(minute)
        before = attempts
        day.clock.advance(timedelta(minutes=1))

    gaps = [later - earlier for earlier, later in itertools.pairwise(tried)]
    assert gaps == sorted(gaps)
    assert max(gaps) == 60
    assert len(tried) >= 8


async def test_a_duty_may_put_itself_again_while_it_is_being_done(day: Day) -> None:
    day.put("alert:9", "alert")
    for _ in range(3):
        await day.duties.tick()
        day.clock.advance(timedelta(minutes=5))

    assert day.said() == ["alert:9 alert"] * 3


class Killed(BaseException):
    """As at SIGKILL: nothing catches this on the way out."""


async def test_a_duty_that_a_killed_process_was_doing_is_done_at_the_next_look(day: Day) -> None:
    day.put("athlete:1", "prompt")
    day.put("athlete:1", "nudge", timedelta(seconds=1))
    day.clock.advance(timedelta(seconds=1))

    def killed(turn: Turn, row: AgendaRow) -> None:
        _due(turn, row)
        raise Killed

    with pytest.raises(Killed):
        day.at_work(killed).do_due()
    assert day.said() == []
    await day.duties.tick()
    assert day.said() == ["athlete:1 prompt", "athlete:1 nudge"]


def test_what_one_process_is_at_work_on_the_others_leave_to_it_with_all_of_the_same_subject(
    postgres_engine: Engine,
) -> None:
    day = Day(postgres_engine)
    day.put("athlete:1", "prompt")
    day.put("athlete:1", "nudge")
    day.put("athlete:2", "prompt")

    def meanwhile_another_looks(turn: Turn, row: AgendaRow) -> None:
        _due(turn, row)
        if row.kind == "prompt" and row.subject == "athlete:1":
            assert day.duties.do_due() == 1
            assert day.said() == ["athlete:2 prompt"]

    assert day.at_work(meanwhile_another_looks).do_due() == 3
    assert sorted(day.said()) == ["athlete:1 nudge", "athlete:1 prompt", "athlete:2 prompt"]


def test_what_tells_one_of_several_duties_from_another_is_read_as_it_was_written() -> None:
    row = AgendaRow(subject="athlete:1", local_date=DAY, kind=NUDGE(2), due_at=START)
    assert (row.kind, kind_alone(row.kind), NUDGE.number(row)) == ("nudge:2", "nudge", 2)
    for other in ("nudge", "prompt", "stage:leave"):
        row.kind = other
        with pytest.raises(ValueError, match=other):
            NUDGE.of(row)
