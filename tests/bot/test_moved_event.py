"""An event that moves takes its timetable along: old reminders fall away, new ones come once."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from random import Random
from zoneinfo import ZoneInfo

import pytest
from sqlmodel import Session, col, select

from bot.core.turn import Turn
from bot.files import document
from bot.store.tables.event import StageRow, TripRow
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.week.load import current_event
from tests.support.weeks import Team, arrive_and_read, gone_on, replacing
from tests.support.world import Said, text_of

REMINDERS = (
    "It is the day", "A meal now", "Time to leave", "From here sips", "The last meal before",
    "Quick sugar now", "Pump-up now", "On stage now", "Done. Eat something ordinary",
)  # fmt: skip


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The day before, at noon in London (an hour ahead of UTC). The show is on Sunday 9 May."""
    return team_at(datetime(2027, 5, 8, 11, 0, tzinfo=UTC))


def lay_out(team: Team, stage: str = "15:00", second: str = "") -> None:
    team.coach.presses(f"st:set:{team.athlete_id}")
    team.coach.writes(stage)
    if second:
        team.coach.writes(second)
    else:
        team.coach.taps("One class only")
    team.coach.writes("40")
    team.coach.taps("None")
    team.coach.taps("None")
    team.athlete.hears()


def move(team: Team, day: str, place: str = "") -> list[Said]:
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    said = team.coach.writes(day)
    if not place:
        return replacing(team.coach, team.coach.taps("Same time zone"))
    said = team.coach.writes(place)
    choices = [label for label in said[-1].buttons if "/" in label]
    return replacing(team.coach, team.coach.taps(choices[0]) if choices else said)


def waiting(session: Session) -> list[AgendaRow]:
    query = select(AgendaRow).where(
        AgendaRow.status == "waiting", col(AgendaRow.kind).startswith("stage:")
    )
    return list(session.exec(query.order_by(col(AgendaRow.due_at))))


def reminders_ahead(team: Team) -> list[datetime]:
    with team.world.session() as session:
        return [row.due_at for row in waiting(session)]


def stages(team: Team) -> list[datetime]:
    with team.world.session() as session:
        row = session.exec(select(StageRow)).one()
    return [datetime.fromisoformat(at) for at in row.facts["stages"]]


def reminders(said: list[Said]) -> list[str]:
    return [mark for message in said for mark in REMINDERS if mark in message.text]


def once_and_whole(heard: list[str]) -> bool:
    single = [mark for mark in heard if mark != "A meal now"]
    return sorted(single) == sorted(set(REMINDERS) - {"A meal now"})


def test_a_week_later_the_times_stay_and_both_are_told_them_anew(team: Team) -> None:
    team = gone_on(team, lay_out)
    told = text_of(move(team, "16 May"))
    assert "Show, Sun 16 May 2027" in told
    assert "I moved the timetable to Sunday 16 May" in told
    assert "same times, Europe/London time" in told
    assert "15:00  on stage" in told
    heard = text_of(team.athlete.hears())
    assert heard.index("Ravi has set your event") < heard.index("I moved the timetable")
    assert "15:00  on stage" in heard


def test_the_old_days_reminders_fall_away_and_the_new_ones_come_once(team: Team) -> None:
    team = gone_on(team, lay_out)
    move(team, "16 May")
    team.athlete.hears()
    team.world.until(datetime(2027, 5, 9, 22, 0, tzinfo=UTC))
    assert reminders(team.athlete.hears()) == []
    team.world.until(datetime(2027, 5, 16, 22, 0, tzinfo=UTC))
    assert once_and_whole(reminders(team.athlete.hears()))


def test_moved_and_moved_back_each_reminder_comes_once(team: Team) -> None:
    team = gone_on(team, lay_out)
    move(team, "16 May")
    move(team, "9 May")
    team.athlete.hears()
    team.world.until(datetime(2027, 5, 9, 22, 0, tzinfo=UTC))
    assert once_and_whole(reminders(team.athlete.hears()))
    assert reminders_ahead(team) == []


def test_a_move_is_taken_back_with_its_timetable_and_both_are_told(team: Team) -> None:
    team = gone_on(team, lay_out)
    move(team, "16 May")
    arrive_and_read(team)
    team.coach.presses(f"c:undo:{team.athlete_id}")
    assert "set the event: show, Sun 16 May" in text_of(team.coach.hears() or team.coach.all_said())
    told = text_of(team.coach.taps("Take it back"))
    assert "The event is again: Show, Sun 9 May 2027" in told
    assert "moved the timetable to Sunday 9 May" in told
    heard = text_of(team.athlete.hears())
    assert "Correction: Ravi has undone the last change" in heard
    assert "Your event is again: Show, Sun 9 May 2027" in heard
    assert "moved the timetable to Sunday 9 May" in heard
    team.world.until(datetime(2027, 5, 9, 22, 0, tzinfo=UTC))
    said = team.athlete.hears()
    assert once_and_whole(reminders(said))
    assert "Good morning" in text_of(said)  # the morning's questions are back as well
    team.world.until(datetime(2027, 5, 16, 22, 0, tzinfo=UTC))
    assert reminders(team.athlete.hears()) == []


def test_an_event_set_after_the_show_was_over_leaves_none_when_taken_back(team: Team) -> None:
    team.world.until(datetime(2027, 5, 12, 11, 0, tzinfo=UTC))  # the show is over
    move(team, "30 May")
    team.coach.presses(f"c:undo:{team.athlete_id}")
    team.coach.taps("Take it back")
    assert "No event yet" in text_of(team.coach.presses(f"c:card:{team.athlete_id}"))


def test_in_another_zone_the_day_goes_by_the_clocks_there(team: Team) -> None:
    team = gone_on(team, lay_out)
    told = text_of(move(team, "9 May", "New York"))
    assert "America/New_York time" in told
    assert "15:00  on stage" in told
    assert stages(team) == [datetime(2027, 5, 9, 19, 0, tzinfo=UTC)]
    team.athlete.hears()
    team.world.until(datetime(2027, 5, 10, 3, 0, tzinfo=UTC))
    assert once_and_whole(reminders(team.athlete.hears()))


def test_a_zone_put_right_on_the_day_itself_repeats_nothing(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(datetime(2027, 5, 9, 9, 0, tzinfo=UTC))  # ten in London
    first = reminders(team.athlete.hears())
    assert first[0] == "It is the day"
    move(team, "9 May", "Lisbon")  # the same clocks as London's: nothing moves
    team.world.until(datetime(2027, 5, 9, 22, 0, tzinfo=UTC))
    assert once_and_whole(first + reminders(team.athlete.hears()))


def test_brought_forward_to_today_nothing_lies_in_the_past(team: Team) -> None:
    team = gone_on(team, lay_out)
    told = text_of(move(team, "8 May"))  # it is noon
    ahead = re.findall(r"^(\d\d:\d\d)  ", told, re.MULTILINE)
    assert ahead[0] >= "12:00"
    assert "15:00" in ahead
    assert min(reminders_ahead(team)) >= team.world.now
    team.athlete.hears()
    team.world.until(datetime(2027, 5, 8, 22, 0, tzinfo=UTC))
    heard = reminders(team.athlete.hears())
    assert "It is the day" not in heard
    assert heard.count("On stage now") == 1


def test_brought_forward_past_its_own_stage_time_it_is_asked_for_anew(team: Team) -> None:
    lay_out(team, "11:00")
    told = text_of(move(team, "8 May"))  # it is noon
    assert "I could not move Mira's timetable" in told
    assert "I could not move your timetable" in text_of(team.athlete.hears())
    assert reminders_ahead(team) == []
    assert "not set yet" in text_of(team.coach.writes("/stage"))


def test_what_had_been_called_off_does_not_come_back_by_a_move(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.coach.writes("/stage")
    team.coach.taps("Cancelled")
    team.coach.taps("Yes, it is off")
    assert "(it was cancelled" in text_of(move(team, "16 May"))
    assert reminders_ahead(team) == []
    lay_out(team, "16:00")  # and can be set anew
    assert stages_of_current(team) == [datetime(2027, 5, 16, 15, 0, tzinfo=UTC)]


def stages_of_current(team: Team) -> list[datetime]:
    with team.world.session() as session:
        row = session.exec(select(StageRow).order_by(col(StageRow.id).desc())).first()
    assert row is not None
    return [datetime.fromisoformat(at) for at in row.facts["stages"]]


def test_two_classes_and_a_stage_after_midnight_keep_their_places(team: Team) -> None:
    lay_out(team, "22:00", "00:30")
    told = text_of(move(team, "16 May"))
    assert "Monday 17 May:" in told
    assert told.index("22:00  on stage, class 1") < told.index("Monday 17 May")
    assert told.index("Monday 17 May") < told.index("00:30  on stage, class 2")
    assert stages(team) == [
        datetime(2027, 5, 16, 21, 0, tzinfo=UTC), datetime(2027, 5, 16, 23, 30, tzinfo=UTC),
    ]  # fmt: skip


def test_moved_to_a_day_on_which_the_clocks_change_the_clock_time_stays(team: Team) -> None:
    team = gone_on(team, lay_out)
    move(team, "31 October 2027")  # the clocks of London go back at two in the morning
    assert stages(team) == [datetime(2027, 10, 31, 15, 0, tzinfo=UTC)]


def test_two_classes_in_an_hour_that_the_clocks_skip_still_come_one_by_one(team: Team) -> None:
    lay_out(team, "01:10", "01:40")
    # in London the night to Sunday 26 March 2028 has no hour from one to two
    move(team, "25 March 2028")
    assert stages(team) == [
        datetime(2028, 3, 26, 1, 0, tzinfo=UTC), datetime(2028, 3, 26, 1, 5, tzinfo=UTC),
    ]  # fmt: skip


def test_a_reminder_that_was_due_at_that_very_moment_is_not_said_of_the_new_day(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(datetime(2027, 5, 9, 8, 0, tzinfo=UTC))
    team.athlete.hears()
    team.world.now = datetime(2027, 5, 9, 8, 12, tzinfo=UTC)  # a meal was due at 8:10
    move(team, "16 May")
    team.athlete.hears()
    team.world.later(minutes=30)
    assert reminders(team.athlete.hears()) == []
    with team.world.session() as session:
        row = session.exec(select(StageRow)).one()
    assert not [entry for entry in row.entries if entry["done"]]


def test_a_look_check_that_was_open_is_not_taken_for_one_of_the_new_day(team: Team) -> None:
    team.coach.presses(f"c:lim:{team.athlete_id}:apply_without_asking_g")
    team.coach.writes("10")
    lay_out(team)
    team.world.until(datetime(2027, 5, 9, 12, 1, tzinfo=UTC))
    asked = next(m for m in team.athlete.hears() if "Look check. How full" in m.text)
    team.athlete.taps("6", asked)
    team.athlete.taps("5")
    team.athlete.taps("Fine")
    to_coach = next(m for m in team.coach.hears() if "Approve it?" in m.text)
    move(team, "16 May")
    team.athlete.hears()
    team.coach.taps("Top up 25 g", to_coach)
    assert team.athlete.hears() == []
    team.world.until(datetime(2027, 5, 16, 12, 1, tzinfo=UTC))
    asked = next(m for m in team.athlete.hears() if "Look check. How full" in m.text)
    move(team, "23 May")
    team.athlete.hears()
    assert "How sharp" not in text_of(team.athlete.taps("6", asked))


def test_the_next_event_set_on_the_evening_after_the_stage_leaves_the_day_where_it_was(
    team: Team,
) -> None:
    team = gone_on(team, lay_out)
    team.world.until(datetime(2027, 5, 9, 19, 0, tzinfo=UTC))
    team.athlete.hears()
    team.coach.hears()
    said = text_of(move(team, "20 June"))
    assert "How did Mira look when it mattered?" in said
    assert "timetable" not in said
    assert "Your show is over. Eat and drink to appetite" in text_of(team.athlete.hears())
    team.world.until(datetime(2027, 5, 10, 5, 31, tzinfo=UTC))
    assert "Day 1 after. How do you feel?" in text_of(team.athlete.hears())
    # taking that back would make a day that has been one that is to come
    assert "can't be undone" in text_of(team.coach.presses(f"c:undo:{team.athlete_id}"))


def test_the_calendar_file_follows_with_the_same_names(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.athlete.writes("/calendar")
    before = events(team)
    move(team, "16 May")
    team.world.later(minutes=6)
    after = events(team)
    assert after.keys() >= before.keys() - {"meal-0"}
    assert before["stage-stage-1"] == ("0", "20270509T150000")
    assert after["stage-stage-1"] == ("1", "20270516T150000")
    assert after["day-1"] == ("1", "20270515")


def events(team: Team) -> dict[str, tuple[str, str]]:
    """SEQUENCE and DTSTART by the beginning of the UID, of the newest file."""
    with team.world.session() as session:
        row = session.exec(
            select(OutboxRow)
            .where(OutboxRow.method == "sendDocument")
            .order_by(col(OutboxRow.id).desc())
        ).first()
        assert row is not None
        assert row.attached is not None
        made = document(Turn(session, team.world.context), row.attached["document"])
    assert made is not None
    found = {}
    for block in made.content.decode().replace("\r\n ", "").split("BEGIN:VEVENT")[1:]:
        lines = dict(re.findall(r"^([A-Z]+)[^:\n]*:(.*?)\r?$", block, re.MULTILINE))
        found[lines["UID"].partition(".")[0]] = (lines["SEQUENCE"], lines["DTSTART"])
    return found


def test_a_journey_goes_along_while_it_still_leads_there(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))
    move(team, "9 May", "New York")
    team.athlete.writes("/travel")
    for answer in ("6 May", "11:00", "6 May", "14:00"):
        team.athlete.writes(answer)
    team.coach.hears()
    assert "journey" not in text_of(move(team, "16 May", "New York"))
    with team.world.session() as session:
        arrival = session.exec(
            select(AgendaRow).where(AgendaRow.kind == "travel", AgendaRow.status == "waiting")
        ).one()
    assert arrival.due_at == datetime(2027, 5, 6, 18, 0, tzinfo=UTC)
    assert arrival.local_date == date(2027, 5, 16)
    team.athlete.hears()
    said = text_of(move(team, "16 May", "Chicago"))
    assert "Mira's journey no longer leads to the event (it is now in America/Chicago" in said
    assert "Use /travel to plan" in text_of(team.athlete.hears())
    team.coach.presses(f"c:undo:{team.athlete_id}")
    team.coach.taps("Take it back")  # then it leads there again
    team.world.until(arrival.due_at + timedelta(minutes=1))
    assert team.profile().zone == "America/New_York"
    with team.world.session() as session:
        assert session.exec(select(TripRow)).one().arrived_at == arrival.due_at


SOLE = ("It is the day", "Time to leave")  # a class moved away has its pump-up again


@pytest.mark.parametrize("seed", [16, *(pytest.param(n, marks=pytest.mark.soak) for n in range(8))])
def test_whatever_happens_in_whatever_order_nothing_is_said_twice_or_of_another_day(
    team: Team, seed: int
) -> None:
    chance = Random(seed)
    said: list[tuple[date, str]] = []
    lay_out(team)
    for _ in range(14):
        _something(team, chance)
        with team.world.session() as session:
            event = current_event(session, team.athlete_id)
            ahead = waiting(session)
        assert {row.local_date for row in ahead} <= ({event.day} if event is not None else set())
        assert all(row.due_at >= team.world.now for row in ahead)
        team.world.later(hours=chance.choice((1, 5, 9)))
        today = team.world.now.astimezone(ZoneInfo("Europe/London")).date()
        said += [(today, mark) for m in team.athlete.hears() for mark in SOLE if mark in m.text]
    for mark in SOLE:
        on = [day for day, what in said if what == mark]
        assert len(on) == len(set(on)), mark


def _something(team: Team, chance: Random) -> None:
    """One of the things that coaches and athletes do to a day."""
    match chance.randrange(6):
        case 0 | 1:
            day = team.world.now.date() + timedelta(days=chance.choice((1, 2)))
            move(team, f"{day:%Y-%m-%d}")
        case 2:
            said = team.coach.presses(f"c:undo:{team.athlete_id}")
            if said and "Take it back" in said[-1].buttons:
                team.coach.taps("Take it back", said[-1])
        case 3:
            team.athlete.writes(f"late {chance.choice((15, 45))}")
        case 4:
            team.coach.presses(f"st:off-yes:{team.athlete_id}")
        case _:
            lay_out(team, chance.choice(("13:00", "15:00", "23:00", "00:30")))
    team.athlete.hears()
