"""The week as a calendar file: what is handed out, and what takes its place when the week changes.

Files are read back by vobject and by ical, two parsers that have nothing to do with the writer; ical
holds them against its own model of RFC 5545 too.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
import vobject
from sqlmodel import col, select

from bot.core.turn import Turn
from bot.files import document
from bot.store.db import transaction
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.store.tables.week import EventRow, LimitsRow, PlanRow
from tests.support.calendars import strictly_read
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team, gone_on
from tests.support.world import Someone, text_of

NOON_BEFORE = datetime(2027, 5, 8, 11, 0, tzinfo=UTC)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The day before, at noon in London (an hour ahead of UTC). The show is on Sunday 9 May."""
    return team_at(NOON_BEFORE)


def lay_out(team: Team, stage: str = "15:00") -> None:
    team.coach.presses(f"st:set:{team.athlete_id}")
    team.coach.writes(stage)
    team.coach.taps("One class only")
    team.coach.writes("40")
    team.coach.taps("None")
    team.coach.taps("None")


def files(team: Team, reader: Someone) -> list[OutboxRow]:
    """The calendar files to this reader that were not overtaken, oldest first."""
    query = select(OutboxRow).where(
        OutboxRow.chat_id == reader.user_id,
        OutboxRow.method == "sendDocument",
        col(OutboxRow.status) != "dropped",
    )
    with team.world.session() as session:
        return list(session.exec(query.order_by(col(OutboxRow.id))))


def sent_away(team: Team) -> None:
    """Everything said so far has gone out, so that nothing newer can take its place unsent."""
    with team.world.session() as session:
        for row in session.exec(select(OutboxRow).where(OutboxRow.status == "waiting")):
            row.status = "sent"
            session.add(row)
        session.commit()


def content_of(team: Team, row: OutboxRow) -> bytes:
    assert row.attached is not None
    with team.world.session() as session:
        made = document(Turn(session, team.world.context), row.attached["document"])
    assert made is not None
    return made.content


def read(content: bytes) -> dict[str, Any]:
    """Events by the beginning of their UID, by a parser that has nothing to do with the writer."""
    calendar = vobject.readOne(content.decode("utf-8"))
    calendar.validate(raiseException=True)
    events = {event.uid.value.partition(".")[0]: event for event in calendar.vevent_list}
    checked = strictly_read(content.decode("utf-8"))
    assert len(checked.events) == len(events)
    for event in checked.events:  # the two agree on when, and on what
        other = events[str(event.uid).partition(".")[0]]
        assert event.dtstart == other.dtstart.value
        assert event.summary == other.summary.value
        assert event.sequence == int(other.sequence.value)
    return events


def given(team: Team, reader: Someone) -> dict[str, Any]:
    reader.writes("/calendar")
    found = read(content_of(team, files(team, reader)[-1]))
    sent_away(team)
    return found


def test_the_week_its_sessions_and_meals_and_the_stage_day_are_read_back(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))
    lay_out(team)
    events = given(team, team.athlete)
    load = events["day-2"]
    assert load.dtstart.value == date(2027, 5, 7)
    assert load.dtend.value == date(2027, 5, 8)
    assert load.summary.value == "2 days out, 500 g carbs"
    assert "Water 3.5 L" in load.description.value
    assert events["session-6"].dtstart.value == date(2027, 5, 3)
    assert events["session-6"].summary.value == "Training: legs, the last time"
    meals = [e for key, e in events.items() if key.startswith("meal-2-")]
    assert meals[0].summary.value == f"Meal 1 of {len(meals)}"
    assert "500 g carbs over the whole day" in meals[0].description.value
    stage = events["stage-stage-1"]
    assert stage.dtstart.value.astimezone(UTC) == datetime(2027, 5, 9, 14, 0, tzinfo=UTC)
    assert stage.dtstart.value.utcoffset() == timedelta(hours=1)  # London in May
    assert stage.summary.value == "On stage"
    # the timetable has the day's meals, so the usual ones are not there as well
    assert not [key for key in events if key.startswith("meal-0-")]
    assert len([key for key in events if key.startswith("day-")]) == 8
    assert {e.status.value for e in events.values()} == {"CONFIRMED"}


def test_the_file_holds_no_weight_symptom_or_answer(team: Team) -> None:
    team.world.until(datetime(2027, 5, 9, 5, 31, tzinfo=UTC))
    team.athlete.writes("61.9 8 3.5 4 on target fine, bit dizzy")
    team.athlete.writes("/calendar")
    text = content_of(team, files(team, team.athlete)[-1]).decode().lower()
    for private in ("61.9", "dizzy", "fullness", "sharpness", "caution", "warning", "kg"):
        assert private not in text, private


def test_the_words_beside_it_say_how_to_open_it_and_who_sees_it(team: Team) -> None:
    team.athlete.writes("/calendar")
    caption = files(team, team.athlete)[-1].payload["caption"]
    assert caption.startswith("Your week and event day as a calendar file. It has ")
    assert "Open it and add everything" in caption
    assert "Anybody who sees that calendar sees them" in caption


def test_a_coach_gets_the_same_file_from_the_day_and_from_the_card_with_the_name_in_it(
    team: Team,
) -> None:
    team = gone_on(team, lay_out)
    team.coach.writes("/stage")
    team.coach.taps("Calendar file")
    team.coach.presses(f"c:card:{team.athlete_id}")
    team.coach.taps("Event …")
    team.coach.taps("Calendar file")
    rows = files(team, team.coach)
    assert (
        rows[-1]
        .payload["caption"]
        .startswith("Event, stage times and deadlines of 1 athlete in one calendar file.")
    )
    events = read(content_of(team, rows[-1]))
    assert events["event"].summary.value == "Mira: show"
    assert events["event"].dtstart.value == team.event_day
    assert events["stage-stage-1"].summary.value == "Mira: On stage"
    assert "load" not in events  # what is over already when it is first asked for is left out


def test_a_coachs_one_file_holds_events_times_and_deadlines_of_all_and_few_of_each(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 1, 15, 30, tzinfo=UTC))
    lay_out(team)
    with transaction(team.world.engine) as session:
        ids = many_athletes(session, 1, 29, team.world.now, Alike(answered=False))
        for row in session.exec(select(LimitsRow)).all()[-1:]:
            session.delete(row)
        moved = session.exec(select(EventRow).where(EventRow.athlete_id == ids[0])).one()
        moved.day = date(2027, 6, 12)
        session.add(moved)
    team.coach.writes("/calendar")
    row = files(team, team.coach)[-1]
    assert "of 30 athletes in one calendar file" in row.payload["caption"]
    text = content_of(team, row).decode()
    calendar = vobject.readOne(text)
    calendar.validate(raiseException=True)
    events = calendar.vevent_list
    assert len({event.uid.value for event in events}) == len(events)
    by_name: dict[str, list[str]] = {}
    for event in events:
        name, _, what = event.summary.value.partition(": ")
        by_name.setdefault(name, []).append(what)
    assert len(by_name) == 30
    assert max(map(len, by_name.values())) <= 6
    assert by_name["Athlete 0"] == ["peak week begins", "load begins", "show"]
    assert by_name["Mira"][:3] == ["peak week begins", "load begins", "show"]
    assert "On stage" in by_name["Mira"]
    checked = strictly_read(text)
    assert len(checked.events) == len(events)
    assert [e.description for e in checked.events if e.description] == [
        "The limits have to be set by then."
    ]


def test_a_new_athletes_event_comes_into_the_file_that_a_coach_has(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 1, 15, 30, tzinfo=UTC))
    given(team, team.coach)
    with transaction(team.world.engine) as session:
        (new,) = many_athletes(session, 1, 1, team.world.now, Alike(answered=False, name="Bela"))
        session.delete(session.exec(select(LimitsRow).order_by(col(LimitsRow.id).desc())).first())
        session.delete(session.exec(select(PlanRow).order_by(col(PlanRow.id).desc())).first())
        session.delete(session.exec(select(EventRow).where(EventRow.athlete_id == new)).one())
    team.coach.presses(f"c:event:{new}")
    team.coach.taps("A trial")
    team.coach.writes("20 June 2027")
    team.coach.taps("Same time zone")
    team.world.later(minutes=6)
    row = files(team, team.coach)[-1]
    assert row.payload["caption"].startswith("Bela 0's week has changed")
    text = content_of(team, row).decode()
    assert "SUMMARY:Bela 0: trial" in text
    assert "SUMMARY:Mira: show" in text
    assert "Plan and limits have to be set by then." in text


def test_asked_for_twice_it_is_the_same_to_the_byte(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.athlete.writes("/calendar")
    first = content_of(team, files(team, team.athlete)[-1])
    team.world.later(minutes=3)
    team.athlete.writes("/calendar")
    assert content_of(team, files(team, team.athlete)[-1]) == first


def test_a_delay_brings_one_silent_file_whose_entries_replace_the_earlier_ones(team: Team) -> None:
    team = gone_on(team, lay_out)
    before = given(team, team.athlete)
    given(team, team.coach)
    team.world.until(datetime(2027, 5, 9, 8, 0, tzinfo=UTC))
    count = len(files(team, team.athlete))
    team.athlete.writes("late 30")
    team.world.later(minutes=2)
    team.athlete.writes("late 15")
    team.world.later(minutes=30)
    rows = files(team, team.athlete)
    assert len(rows) == count + 1  # once for both, and not before they were still
    assert rows[-1].payload["disable_notification"] is True
    caption = rows[-1].payload["caption"]
    assert caption.startswith("Your week has changed since your last calendar file.")
    assert "replaces the last one" in caption
    assert "Mira's week has changed" in files(team, team.coach)[-1].payload["caption"]
    after = read(content_of(team, rows[-1]))
    stage = after["stage-stage-1"]
    assert stage.uid.value == before["stage-stage-1"].uid.value
    assert stage.sequence.value == "1"
    assert stage.dtstart.value - before["stage-stage-1"].dtstart.value == timedelta(minutes=45)
    assert after["day-1"].sequence.value == "0"  # what has not changed is no revision


def test_what_falls_away_is_marked_as_cancelled(team: Team) -> None:
    team = gone_on(team, lay_out)
    given(team, team.athlete)
    team.coach.writes("/stage")
    team.coach.taps("Cancelled")
    team.coach.taps("Yes, it is off")
    team.world.later(minutes=6)
    row = files(team, team.athlete)[-1]
    assert "were removed" in row.payload["caption"]
    events = read(content_of(team, row))
    assert events["stage-stage-1"].status.value == "CANCELLED"
    assert events["stage-stage-1"].sequence.value == "1"
    assert events["day-0"].status.value == "CONFIRMED"
    assert events["meal-0-1"].status.value == "CONFIRMED"  # the usual meals are back
    sent_away(team)
    lay_out(team, "16:00")
    team.world.later(minutes=6)
    again = read(content_of(team, files(team, team.athlete)[-1]))
    assert again["stage-stage-1"].status.value == "CONFIRMED"
    assert again["stage-stage-1"].sequence.value == "2"
    assert again["meal-0-1"].status.value == "CANCELLED"


def test_with_a_warning_open_no_session_stands_in_the_file_and_it_is_back_when_lifted(
    team: Team,
) -> None:
    team.world.until(datetime(2027, 5, 3, 11, 0, tzinfo=UTC))
    sessions = [key for key in given(team, team.athlete) if key.startswith("session-")]
    assert sessions
    team.athlete.writes("I fainted")
    team.world.later(minutes=6)
    after = read(content_of(team, files(team, team.athlete)[-1]))
    assert {after[key].status.value for key in sessions} == {"CANCELLED"}
    day = after[sessions[0].replace("session", "day")].description.value
    assert "no cardio until Ravi lifts that" in day and "Training:" not in day
    sent_away(team)
    team.coach.presses("alert:ack:1")
    team.coach.presses(f"c:lift-yes:{team.athlete_id}")
    team.world.later(minutes=6)
    again = read(content_of(team, files(team, team.athlete)[-1]))
    assert {again[key].status.value for key in sessions} == {"CONFIRMED"}


def test_a_changed_plan_brings_a_new_file_and_a_morning_does_not(team: Team) -> None:
    given(team, team.athlete)
    count = len(files(team, team.athlete))
    team.world.until(datetime(2027, 5, 9, 5, 31, tzinfo=UTC))
    team.athlete.writes("61.9 8 3.5 4 on target fine")
    team.world.later(minutes=10)
    assert len(files(team, team.athlete)) == count
    team.coach.presses(f"c:num:{team.athlete_id}:0:carb_g")
    said = team.coach.writes("200")
    assert "200 g" in text_of(said)
    team.world.later(minutes=10)
    rows = files(team, team.athlete)
    assert len(rows) == count + 1
    events = read(content_of(team, rows[-1]))
    assert "200 g carbs" in events["day-0"].summary.value


def test_nobody_who_never_asked_for_a_file_is_sent_one(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.coach.writes("/stage")
    team.coach.taps("Cancelled")
    team.coach.taps("Yes, it is off")
    team.world.later(minutes=30)
    assert files(team, team.athlete) == files(team, team.coach) == []
    with team.world.session() as session:
        kinds = {row.kind for row in session.exec(select(AgendaRow))}
    assert "calendar" not in kinds


def test_on_a_journey_each_meal_stands_on_the_clocks_of_its_place(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("9 May")
    choices = team.coach.writes("New York")[-1].buttons
    team.coach.taps(next(label for label in choices if "America/New_York" in label))
    team.athlete.writes("/travel")
    for answer in ("6 May", "11:00", "6 May", "14:00"):
        team.athlete.writes(answer)
    events = given(team, team.athlete)
    at_home, there = events["meal-4-1"].dtstart, events["meal-2-1"].dtstart
    assert at_home.value.utcoffset() == timedelta(hours=1)
    assert there.value.utcoffset() == timedelta(hours=-4)
    assert at_home.value.time() == there.value.time()
    on_the_way = [e for key, e in events.items() if key.startswith("meal-3-")]
    assert {e.summary.value for e in on_the_way} == {"Meal on the way"}
    # RFC 5545, 3.6.5: every zone that is named comes along
    content = content_of(team, files(team, team.athlete)[-1]).decode()
    for zone in ("Europe/London", "America/New_York"):
        assert f"TZID:{zone}" in content


def test_a_reader_who_may_not_see_the_athlete_any_more_gets_no_file(team: Team) -> None:
    team.coach.writes("/calendar")
    row = files(team, team.coach)[-1]
    team.coach.presses(f"c:end-yes:{team.athlete_id}")
    assert row.attached is not None
    with team.world.session() as session:
        assert document(Turn(session, team.world.context), row.attached["document"]) is None


def test_without_an_event_there_is_nothing_to_put_into_a_calendar(team: Team) -> None:
    team.world.until(datetime(2027, 5, 11, 12, 0, tzinfo=UTC))
    team.athlete.hears()
    assert "nothing to put into a calendar" in text_of(team.athlete.writes("/calendar"))
    assert "None of your athletes has an event ahead" in text_of(team.coach.writes("/calendar"))


@pytest.mark.parametrize(
    "data", ["cal", "cal:", "cal:get", "cal:get:999", "cal:odd:2", "cal:get:x"]
)
def test_an_odd_button_breaks_nothing(team: Team, data: str) -> None:
    team.coach.presses(data)
    assert files(team, team.coach) == []


def test_each_readers_file_is_in_their_language_and_stays_so_when_the_other_changes_the_day(
    ours: None, team: Team
) -> None:
    team.athlete.language, team.coach.language = "de", "en"
    lay_out(team)
    athletes, coachs = given(team, team.athlete), given(team, team.coach)
    assert athletes["day-1"].summary.value == "1 Tag vorher, 500 g Kohlenhydrate"
    assert "/today" in athletes["day-1"].description.value
    assert athletes["stage-stage-1"].summary.value == "Auf die Bühne"
    assert coachs["stage-stage-1"].summary.value == "Mira: On stage"
    before = len(files(team, team.athlete))
    lay_out(team, "16:00")
    team.world.later(minutes=6)
    anew = files(team, team.athlete)[before:]
    assert [row.payload["caption"].split(".")[0] for row in anew] == [
        "Deine Woche hat sich seit deiner letzten Kalenderdatei geändert"
    ]
    assert read(content_of(team, anew[-1]))["stage-stage-1"].summary.value == "Auf die Bühne"
    assert files(team, team.coach)[-1].payload["caption"].startswith("Mira's week has changed")
