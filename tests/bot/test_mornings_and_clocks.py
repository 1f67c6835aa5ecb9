"""Prompts by the athlete's own clock, across changes of clocks and of zones."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from sqlalchemy import Engine
from sqlmodel import col, select

from bot.core.turn import Turn
from bot.people.people import profile_of
from bot.store.db import transaction
from bot.store.tables.traffic import AgendaRow
from bot.week import prompts
from bot.week.load import current_event
from tests.support.weeks import Team, in_peak_week
from tests.support.world import text_of


def moved(team: Team, *, day: date, zone: str, at: time) -> None:
    """Put the event, the zone and the prompt time elsewhere, a day before the week begins."""
    team.event_day = day
    start = datetime.combine(day - timedelta(days=8), time(0, 0), UTC)
    team.world.now = start
    with transaction(team.world.engine) as session:
        profile = profile_of(session, team.athlete_id)
        event = current_event(session, team.athlete_id)
        assert profile is not None and event is not None
        profile.zone, profile.prompt_time, event.day = zone, at, day
        session.add(profile)
        session.add(event)
        session.flush()
        prompts.schedule(Turn(session, team.world.context), profile)


def prompts_of(team: Team) -> list[AgendaRow]:
    query = (
        select(AgendaRow)
        .where(AgendaRow.kind == prompts.PROMPT, AgendaRow.status != "cancelled")
        .order_by(col(AgendaRow.due_at))
    )
    with team.world.session() as session:
        return list(session.exec(query))


@pytest.mark.parametrize(
    ("zone", "day", "at"),
    [
        ("Europe/Berlin", date(2027, 4, 1), time(7, 0)),  # forward on 28 March
        ("Europe/Berlin", date(2027, 11, 4), time(7, 0)),  # back on 31 October
        ("America/New_York", date(2027, 3, 18), time(6, 30)),
        ("Australia/Lord_Howe", date(2027, 4, 8), time(5, 30)),  # half an hour
        ("America/Santiago", date(2027, 9, 8), time(6, 0)),  # the gap is at midnight
        ("Asia/Beirut", date(2027, 4, 1), time(6, 15)),
    ],
)
def test_every_morning_is_asked_once_at_the_wall_clock_time_across_a_change_of_clocks(
    own_engine: Engine, zone: str, day: date, at: time
) -> None:
    """Reference for the instants: zoneinfo, from UTC to the wall clock and not the way back."""
    team = in_peak_week(own_engine)
    moved(team, day=day, zone=zone, at=at)
    rows = prompts_of(team)
    assert [row.local_date for row in rows] == [day - timedelta(days=n) for n in range(7, -1, -1)]
    for row in rows:
        wall = row.due_at.astimezone(ZoneInfo(zone))
        assert (wall.date(), wall.time()) == (row.local_date, at)
    asked = []
    for row in rows:
        team.world.until(row.due_at)
        asked += [m for m in team.athlete.hears() if m.text.startswith("Good morning")]
    assert len(asked) == 8


def test_flying_west_mid_week_asks_no_morning_twice_and_none_is_lost(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(5)
    team.athlete.writes("61.0 6 3.5")
    team.athlete.hears()
    team.athlete.writes("/settings")
    team.athlete.taps("Another place")
    team.athlete.writes("America/Los_Angeles")
    team.athlete.taps("Los Angeles (America/Los_Angeles)")
    team.athlete.hears()
    team.world.later(hours=12)  # it is still five days out, in Los Angeles
    assert team.athlete.hears() == []
    days = [row.local_date for row in prompts_of(team)]
    assert len(days) == len(set(days))
    next_prompt = next(row for row in prompts_of(team) if row.status == "waiting")
    wall = next_prompt.due_at.astimezone(ZoneInfo("America/Los_Angeles"))
    assert (wall.hour, wall.minute) == (6, 30)
    team.world.until(next_prompt.due_at)
    assert "4 days out" in text_of(team.athlete.hears())


def test_flying_east_mid_week_asks_at_the_new_mornings(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(5)
    team.athlete.writes("61.0 6 3.5")
    team.athlete.writes("/settings")
    team.athlete.taps("Another place")
    team.athlete.writes("Tokyo")
    team.athlete.taps("Tokyo, JP (Asia/Tokyo)")
    team.athlete.hears()
    due = [row for row in prompts_of(team) if row.status == "waiting"]
    assert due[0].due_at.astimezone(ZoneInfo("Asia/Tokyo")).time() == time(6, 30)
    team.world.until(due[0].due_at)
    assert "4 days out" in text_of(team.athlete.hears())


def test_another_prompt_time_moves_the_mornings_ahead_and_repeats_none(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(6, hour=5, minute=45)
    team.athlete.hears()
    team.athlete.writes("/settings")
    team.athlete.taps("Another time")
    team.athlete.taps("8:00")
    team.athlete.hears()
    team.world.later(hours=1, minutes=20)  # 8:05 in London; this morning was asked at 6:30
    assert not any("6 days out" in m.text for m in team.athlete.hears())
    team.morning(5, hour=6, minute=59)
    assert not any("5 days out" in m.text for m in team.athlete.hears())
    team.morning(5, hour=7, minute=0)
    assert "5 days out" in text_of(team.athlete.hears())


def test_a_bot_that_was_down_all_morning_does_not_ask_for_yesterday(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.world.now = datetime(2027, 5, 3, 12, 0, tzinfo=UTC)  # 7 and 6 days out have gone by
    team.world.until(team.world.now)
    said = text_of(team.athlete.hears())
    assert "7 days out" not in said and said.count("days out") <= 1


def test_from_the_day_before_the_load_on_one_is_asked_before_others_asked_at_the_same_time(
    own_engine: Engine,
) -> None:
    """The coach's proposals come of these mornings, and have to be answered in time to eat by."""
    team = in_peak_week(own_engine)
    with team.world.session() as session:
        ranks = {
            (team.event_day - row.local_date).days: row.rank
            for row in session.exec(select(AgendaRow).where(AgendaRow.kind == prompts.PROMPT))
        }
    first = {days_out for days_out, rank in ranks.items() if rank == min(ranks.values())}
    assert first == {4, 3, 2, 1, 0}
