"""The last change taken back: a word on a proposal, an event, a sheet, the times of the day."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime

import pytest
from sqlmodel import col, select

from bot.people.people import get_profile, profile_of
from bot.store.db import transaction
from bot.store.tables.event import StageRow
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import DecisionRow, DecisionStatus, LimitsRow, PlanRow
from bot.week.load import current_event, current_week, day_set
from tests.bot.test_sheets_in_and_out import handed_out, with_cells
from tests.support.files import sends_file
from tests.support.weeks import Team, arrive_and_read, gone_on, replacing
from tests.support.world import Said, text_of

FLAT = "61.0 1 3.5 5 on target fine"
FRIDAY, SATURDAY = date(2027, 5, 7), date(2027, 5, 8)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))


def take_back(team: Team, label: str = "Take it back") -> list[Said]:
    team.world.later(minutes=1)
    team.coach.presses("c:undo:2")
    return team.coach.taps(label)


def carbs(team: Team, day: date) -> float | None:
    with team.world.session() as session:
        row = day_set(session, 2, day)
        return row.carb_g if row is not None else None


def statuses(team: Team) -> list[str]:
    with team.world.session() as session:
        rows = session.exec(select(DecisionRow).order_by(col(DecisionRow.id)))
        return [row.status for row in rows]


def history(team: Team) -> str:
    return text_of(team.coach.presses("c:history:2"))


# A word on a proposal


@pytest.mark.parametrize(
    ("tap", "typed", "was", "kept"),
    [
        ("Approve 550 g", "", 550, "approved 550 g for Fri 7 May"),
        ("Keep the plan, 500 g", "", 500, "kept the plan at 500 g for Fri 7 May"),
        ("Set another number", "520", 520, "set another number, 520 g for Fri 7 May"),
    ],
)
def test_a_word_that_has_gone_out_is_corrected_and_asked_for_anew(
    team: Team, tap: str, typed: str, was: float, kept: str
) -> None:
    team.athlete.writes(FLAT)
    arrive_and_read(team)
    team.coach.taps(tap)
    if typed:
        team.coach.writes(typed)
    assert carbs(team, FRIDAY) == was
    arrive_and_read(team)
    said = text_of(take_back(team))
    assert "a correction is on its way" in said
    assert "Ravi has taken that answer back" in said
    assert "a change for you to approve" in said
    told = text_of(team.athlete.hears())
    assert "A correction: your coach has taken the last change back." in told
    assert "Carbs 525 g" in told  # the small step that needs no approval
    assert "550 g" in told  # what is proposed, and waits again
    assert carbs(team, FRIDAY) == 525
    assert statuses(team) == [DecisionStatus.REPLACED, DecisionStatus.WAITING]
    said = history(team)
    assert f"Ravi: {kept}" in said
    assert f"Ravi: took back: {kept}" in said
    assert "Brimline: proposed: 550 g for Fri 7 May" in said
    team.coach.taps("Approve 550 g")
    assert carbs(team, FRIDAY) == 550


def test_a_word_that_has_not_gone_out_is_taken_back_without_one(team: Team) -> None:
    team.athlete.writes(FLAT)
    arrive_and_read(team)
    team.world.later(minutes=10)
    team.coach.taps("Approve 550 g")
    team.athlete.hears()
    team.world.later(minutes=1)
    team.coach.presses("c:undo:2")
    assert "Nothing was sent about it yet" in team.coach.all_said()[-1].text
    team.coach.taps("Take it back")
    assert team.athlete.hears() == []
    assert not [said for said in team.athlete.all_said() if "approved the change" in said.text]
    assert carbs(team, FRIDAY) == 525
    assert statuses(team)[-1] == DecisionStatus.WAITING


def test_what_was_decided_after_a_word_is_not_taken_from_under_it(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Approve 550 g")
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    assert "can't be undone" in text_of(team.coach.presses("c:undo:2"))


def test_a_word_about_a_day_that_is_over_is_not_taken_back(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Approve 550 g")
    team.world.until(datetime(2027, 5, 8, 5, 0, tzinfo=UTC))
    assert "can't be undone: approved" in text_of(team.coach.presses("c:undo:2"))


def test_a_word_on_the_day_after_is_taken_back_on_that_day_before_its_check_in(team: Team) -> None:
    team.coach.presses("c:lim:2:apply_without_asking_g")
    team.coach.writes("10")
    team.coach.presses("c:tomorrow:2")
    team.athlete.writes(FLAT)
    proposed = next(m for m in team.coach.all_said()[::-1] if "for you to approve" in m.text)
    team.coach.taps(next(one for one in proposed.buttons if "Approve" in one), proposed)
    arrive_and_read(team)
    team.world.until(datetime(2027, 5, 8, 5, 0, tzinfo=UTC))
    team.coach.hears()
    approved = carbs(team, SATURDAY)
    assert approved is not None
    assert approved > 500
    said = text_of(take_back(team))
    assert "Sat 8 May: a change for you to approve" in said
    told = text_of(team.athlete.hears())
    assert "A correction" in told
    assert "Saturday 8 May" in told
    assert carbs(team, SATURDAY) == 510  # 10 g go out alone


def test_a_word_taken_back_while_a_warning_is_open_raises_nothing(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Approve 550 g")
    arrive_and_read(team)
    team.world.later(minutes=1)
    team.athlete.writes("I fainted")
    take_back(team)
    assert carbs(team, FRIDAY) == 500
    assert DecisionStatus.WAITING not in statuses(team)
    with team.world.session() as session:
        profile = profile_of(session, 2)
    assert profile is not None
    assert profile.frozen_at is not None


def test_a_target_that_was_overtaken_before_it_arrived_is_said_after_all(team: Team) -> None:
    arrive_and_read(team)
    for grams in ("480", "470"):
        team.world.later(minutes=1)
        team.coach.presses("c:hand:2:1")
        team.coach.writes(grams)
    team.athlete.hears()
    take_back(team)
    assert "Carbs 480 g" in text_of(team.athlete.hears())


def test_word_of_a_hold_that_has_not_gone_out_never_does(team: Team) -> None:
    arrive_and_read(team)
    team.coach.presses("c:hold:2")
    team.coach.writes("2")
    team.coach.writes("480")
    take_back(team)
    assert not [said for said in team.athlete.all_said() if "480 g" in said.text]


def test_a_hold_that_a_new_plan_had_ended_runs_again(team: Team) -> None:
    team.coach.presses("c:hold:2")
    team.coach.writes("2")
    team.coach.writes("480")
    team.world.later(minutes=1)
    team.coach.presses("c:event:2")
    team.coach.taps("A show")
    team.coach.writes("10 May")
    replacing(team.coach, team.coach.taps("Same time zone"))
    assert "Held at 480 g" not in text_of(team.coach.writes("/roster"))
    take_back(team)
    assert "Hold: 480 g until Sat 8 May" in text_of(team.coach.writes("/roster"))
    assert carbs(team, SATURDAY) == 480


# The event


def set_event(team: Team, day: str, kind: str = "A show") -> None:
    team.coach.presses("c:event:2")
    team.coach.taps(kind)
    team.coach.writes(day)
    replacing(team.coach, team.coach.taps("Same time zone"))


def prompts_ahead(team: Team) -> list[date]:
    query = select(AgendaRow).where(AgendaRow.kind == "prompt", AgendaRow.status == "waiting")
    with team.world.session() as session:
        return sorted(row.local_date for row in session.exec(query))


def test_an_event_that_was_moved_is_put_back_with_its_mornings_and_corrected(team: Team) -> None:
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    team.coach.presses("c:hand:2:1")
    team.coach.writes("480")
    before = prompts_ahead(team)
    set_event(team, "16 May", "A trial")
    assert prompts_ahead(team) != before
    arrive_and_read(team)
    assert "set the event: trial, Sun 16 May (before that show, Sun 9 May)" in history(team)
    take_back(team)
    told = text_of(team.athlete.hears())
    assert "Correction: Ravi has undone the last change" in told
    assert "Show, Sun 9 May 2027 (Europe/London), 2 days out" in told
    assert prompts_ahead(team) == before
    assert carbs(team, SATURDAY) == 480
    with team.world.session() as session:
        event = current_event(session, 2)
        profile = get_profile(session, 2)
        assert current_week(session, profile) is not None
    assert event is not None
    assert (event.kind, event.day) == ("show", date(2027, 5, 9))


def test_an_event_that_nobody_has_read_of_is_put_back_in_silence(team: Team) -> None:
    arrive_and_read(team)
    set_event(team, "30 May")
    team.athlete.hears()
    take_back(team)
    assert team.athlete.hears() == []
    assert not [said for said in team.athlete.all_said() if "30 May" in said.text]


def test_a_first_event_taken_back_leaves_none(onboarded_team: Team) -> None:
    team = onboarded_team
    set_event(team, "16 May 2027")
    arrive_and_read(team)
    take_back(team)
    assert "You have no event set right now" in text_of(team.athlete.hears())
    assert "No event yet" in text_of(team.coach.presses("c:card:2"))


@pytest.fixture
def onboarded_team(team: Team) -> Team:
    """As it was before there was an event."""
    with transaction(team.world.engine) as session:
        event = current_event(session, 2)
        assert event is not None
        event.active = False
        session.add(event)
    return team


def lay_out_day(team: Team) -> None:
    team.coach.presses("st:set:2")
    for typed in ("15:00", "none", "40", "none", "none"):
        if typed == "none":
            team.coach.taps("One class only" if "More classes" in last(team) else "None")
        else:
            team.coach.writes(typed)


def last(team: Team) -> str:
    return team.coach.all_said()[-1].text


def test_times_laid_out_since_go_back_with_the_event(team: Team) -> None:
    set_event(team, "16 May")
    lay_out_day(team)
    take_back(team)
    assert "15:00  on stage" in text_of(team.coach.writes("/stage"))
    team.athlete.hears()
    team.world.until(datetime(2027, 5, 9, 14, 30, tzinfo=UTC))
    assert len([m for m in team.athlete.hears() if "On stage now" in m.text]) == 1


def test_a_kind_put_right_keeps_the_days_timetable_and_so_does_taking_it_back(team: Team) -> None:
    team = gone_on(team, lay_out_day)
    set_event(team, "9 May", "A photo shoot")
    assert "15:00  on stage" in text_of(team.coach.writes("/stage"))
    take_back(team)
    assert "15:00  on stage" in text_of(team.coach.writes("/stage"))
    team.world.until(datetime(2027, 5, 9, 14, 30, tzinfo=UTC))
    assert len([m for m in team.athlete.all_said() if "On stage now" in m.text]) == 1


# A sheet


def test_a_sheet_that_set_plan_and_limits_is_taken_back_as_one_change(team: Team) -> None:
    content = with_cells(handed_out(team), C12=470, B16=180)
    said = text_of(sends_file(team.coach, content, name="plan.xlsx"))
    assert "Use these changes?" in said, said
    team.coach.taps("Use these changes")
    team.world.later(minutes=1)
    team.coach.presses("c:undo:2")
    asked = last(team)
    assert "set the plan (" in asked
    assert "set the limits (" in asked
    team.coach.taps("Take it back")
    with team.world.session() as session:
        plans = session.exec(select(PlanRow).order_by(col(PlanRow.id))).all()
        limits = session.exec(select(LimitsRow).order_by(col(LimitsRow.id))).all()
    assert len(plans) == len(limits) == 3
    assert plans[0].days == plans[2].days != plans[1].days
    assert limits[0].bounds == limits[2].bounds != limits[1].bounds


# The times of the day


def stage_row(team: Team) -> StageRow:
    with team.world.session() as session:
        return session.exec(select(StageRow)).one()


def test_a_delay_said_by_mistake_is_taken_back_and_corrected(team: Team) -> None:
    team = gone_on(team, lay_out_day)
    team.world.until(datetime(2027, 5, 9, 11, 30, tzinfo=UTC))
    team.coach.writes("late 45")
    arrive_and_read(team)
    said = text_of(take_back(team, "Take the times back"))
    assert "You have taken back the last change of the day's times" in said
    assert "15:00  on stage" in said
    told = text_of(team.athlete.hears())
    assert "A correction: Ravi has taken back the last change of the day's times" in told
    assert "15:00  on stage" in told
    assert "Ravi: took back: moved the day's times by 45 min" in history(team)
    team.world.until(datetime(2027, 5, 9, 14, 30, tzinfo=UTC))
    assert len([m for m in team.athlete.all_said() if "On stage now" in m.text]) == 1


def test_a_stage_called_off_by_mistake_is_on_again_with_its_reminders(team: Team) -> None:
    team = gone_on(team, lay_out_day)
    arrive_and_read(team)
    team.world.later(minutes=1)
    team.coach.presses("st:off-yes:2")
    team.athlete.hears()
    take_back(team, "Take the times back")
    assert team.athlete.hears() == []  # it had not gone out
    assert stage_row(team).cancelled_at is None
    team.world.until(datetime(2027, 5, 9, 14, 30, tzinfo=UTC))
    heard = text_of(team.athlete.hears())
    assert "On stage now" in heard
    assert "The stage is off" not in heard


def test_a_figure_and_the_times_are_two_changes_and_each_can_be_taken_back(team: Team) -> None:
    team = gone_on(team, lay_out_day)
    team.coach.presses("c:hand:2:1")
    team.coach.writes("480")
    team.athlete.presses("st:off-yes:2")
    take_back(team)
    assert carbs(team, SATURDAY) is None
    assert stage_row(team).cancelled_at is not None
    take_back(team, "Take the times back")
    assert stage_row(team).cancelled_at is None


def test_the_first_times_are_called_off_and_not_taken_back(team: Team) -> None:
    team = gone_on(team, lay_out_day)
    assert "You have no change left" in text_of(team.coach.presses("c:undo:2"))
