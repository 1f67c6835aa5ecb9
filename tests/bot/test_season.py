"""Several events ahead of one athlete: asked, planned, bridged, taken over, looked back on apart."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime

import pytest
from sqlmodel import select

from bot.people.people import get_profile
from bot.store.tables.coach import TemplateRow
from bot.store.tables.week import EventRow
from bot.week.load import current_event, current_plan, current_week, events_ahead, limits_row
from tests.bot.test_sheets_in_and_out import with_cells
from tests.support.files import files_for, sends_file
from tests.support.weeks import Team
from tests.support.world import Said, text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Five days before the show on Sunday 9 May, at six in London, before the first question."""
    return team_at(datetime(2027, 5, 4, 5, 0, tzinfo=UTC))


def adds(team: Team, day: str, kind: str = "A show") -> list[Said]:
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps(kind)
    team.coach.writes(day)
    return team.coach.taps("Same time zone")


def ahead(team: Team) -> list[tuple[str, date]]:
    with team.world.session() as session:
        return [(row.kind, row.day) for row in events_ahead(session, team.athlete_id)]


def counts(team: Team) -> date | None:
    with team.world.session() as session:
        event = current_event(session, team.athlete_id)
        return event.day if event is not None else None


def second_show(team: Team) -> list[Said]:
    """A second show, a week after the first, with the bridge that is drafted for it."""
    adds(team, "16 May")
    team.coach.taps("One more: it follows")
    label = next(b for m in team.coach.all_said()[-2:] for b in m.buttons if "Bridge" in b)
    shown = team.coach.taps(label)
    team.coach.taps("Use this plan")
    team.coach.taps("Set the limits")
    team.coach.taps("Set these limits")
    return shown


def test_a_new_date_asks_whether_it_replaces_or_follows(team: Team) -> None:
    asked = adds(team, "16 May")
    assert "Does the show on Sun 16 May replace one" in text_of(asked)
    assert {"It replaces the show on Sun 9 May", "One more: it follows"} <= set(asked[-1].buttons)
    team.coach.taps("One more: it follows")
    assert ahead(team) == [("show", date(2027, 5, 9)), ("show", date(2027, 5, 16))]
    assert counts(team) == date(2027, 5, 9)


def test_the_card_and_the_athletes_week_list_what_is_ahead(team: Team) -> None:
    adds(team, "16 May")
    team.coach.taps("One more: it follows")
    for said in (
        team.coach.presses(f"c:card:{team.athlete_id}"), team.athlete.writes("/week"),
    ):  # fmt: skip
        assert "After that: show on Sun 16 May" in text_of(said)


def test_between_two_shows_a_bridge_is_drafted_with_no_second_depletion(team: Team) -> None:
    shown = text_of(second_show(team))
    assert "7 days after the show on Sun 9 May" in shown
    with team.world.session() as session:
        (_, second) = events_ahead(session, team.athlete_id)
        plan = current_plan(session, second)
    assert plan is not None
    # The day of the first show is not planned twice, and no day lies under habit (310 g).
    assert [day.days_out for day in plan] == [6, 5, 4, 3, 2, 1, 0]
    assert min(day.carb_g for day in plan if day.days_out) >= 310
    assert {day.water_l for day in plan} == {3.5}


def test_the_card_stays_with_the_event_that_counts(team: Team) -> None:
    adds(team, "16 May")
    team.coach.taps("One more: it follows")
    said = text_of(team.coach.presses(f"c:card:{team.athlete_id}"))
    assert "Show, Sun 9 May 2027" in said
    assert "set the event" not in said


def test_when_one_is_over_the_next_takes_over_by_itself(team: Team) -> None:
    second_show(team)
    team.morning(0)
    team.athlete.writes("60.2 8 3.5 5 on target fine")
    team.athlete.hears()
    team.world.until(datetime(2027, 5, 10, 5, 45, tzinfo=UTC))
    assert counts(team) == date(2027, 5, 16)
    heard = text_of(team.athlete.hears())
    assert "Next: Show, Sun 16 May 2027" in heard
    assert "Good morning" in heard  # and is asked the same day
    assert "Next for Mira" in text_of(team.coach.hears())
    said = text_of(team.athlete.writes("61.9 8 3.5 on target fine"))
    assert "5 days out" in said or "6 days out" in said
    # The look back, four days after the first show, is on the first show.
    team.world.until(datetime(2027, 5, 13, 6, 0, tzinfo=UTC))
    assert "Sun 9 May" in text_of(team.coach.hears())


def test_a_trial_set_before_a_planned_show_comes_first_once_it_is_planned(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 1, 15, 0, tzinfo=UTC))
    adds(team, "16 May")
    team.coach.taps("It replaces the show on Sun 9 May")
    adds(team, "11 May", "A trial")
    team.coach.taps("One more: it comes first")
    assert counts(team) == date(2027, 5, 11)
    assert ahead(team) == [("trial", date(2027, 5, 11)), ("show", date(2027, 5, 16))]


def test_a_running_week_goes_on_until_an_earlier_event_has_its_plan(team: Team) -> None:
    adds(team, "7 May", "A photo shoot")
    team.coach.taps("One more: it comes first")
    assert counts(team) == date(2027, 5, 9)
    with team.world.session() as session:
        profile = get_profile(session, team.athlete_id)
        assert current_week(session, profile) is not None
        number = session.exec(select(EventRow.id).where(EventRow.kind == "shoot")).one()
    team.coach.presses(f"c:draft:{team.athlete_id}:{number}")
    for label in ("even", "8.2 g/kg", "None", "Use this plan", "Set the limits"):
        team.coach.taps(label)
    team.coach.taps("Set these limits")
    assert counts(team) == date(2027, 5, 7)


def test_an_event_that_waits_is_taken_out_by_a_second_tap(team: Team) -> None:
    adds(team, "16 May")
    team.coach.taps("One more: it follows")
    team.coach.presses(f"c:season:{team.athlete_id}")
    team.coach.taps("Remove: show on Sun 16 May")
    assert len(ahead(team)) == 2
    team.coach.taps("Yes, remove it")
    assert ahead(team) == [("show", date(2027, 5, 9))]
    assert "out of the season" in text_of(team.coach.presses(f"c:history:{team.athlete_id}"))


def test_one_more_event_is_taken_back(team: Team) -> None:
    adds(team, "16 May")
    team.coach.taps("One more: it follows")
    team.coach.presses(f"c:history:{team.athlete_id}")
    team.coach.taps("Take back the last change")
    team.coach.taps("Take it back")
    assert ahead(team) == [("show", date(2027, 5, 9))]
    assert counts(team) == date(2027, 5, 9)


def test_the_plan_of_an_event_that_waits_is_changed_as_any_and_moves_nothing_of_now(
    team: Team,
) -> None:
    second_show(team)
    with team.world.session() as session:
        (first, second) = events_ahead(session, team.athlete_id)
        before = current_plan(session, first)
    (season,) = team.coach.presses(f"c:season:{team.athlete_id}")
    (shown,) = team.coach.taps("Plan: show on Sun 16 May", season)
    (day,) = team.coach.taps("2 out", shown)
    team.coach.taps("Carbs", day)
    assert "2 days out" in text_of(team.coach.writes("420"))
    (limits,) = team.coach.presses(f"c:limits:{team.athlete_id}:{second.id}")
    team.coach.taps("Step", limits)
    team.coach.writes("20")
    (asks,) = team.coach.taps("Look, weigh-in: show on Sun 16 May", season)
    team.coach.taps("Target look", asks)
    team.coach.taps("Fullness 6-8, sharpness 2-4")
    assert "Saved." in text_of(team.coach.taps("Skip"))
    with team.world.session() as session:
        (first, second) = events_ahead(session, team.athlete_id)
        plan, limits_now = current_plan(session, second), limits_row(session, second)
        assert plan is not None and limits_now is not None
        assert plan.with_carbs(2, 420) == plan
        assert limits_now.bounds["step_g"] == 20
        assert second.asks["look"]["fullness_high"] == 8
        assert current_plan(session, first) == before
        assert first.asks == {}


def test_template_and_sheet_can_be_those_of_an_event_that_waits(team: Team) -> None:
    team.coach.presses(f"c:plan:{team.athlete_id}")
    team.coach.taps("Save as template")
    team.coach.writes("Even week")
    adds(team, "16 May")
    team.coach.taps("One more: it follows")
    with team.world.session() as session:
        (first, second) = events_ahead(session, team.athlete_id)
        before = current_plan(session, first)
    # Without a plan it is offered there too; the plan that counts stays as it is.
    team.coach.presses(f"c:plan:{team.athlete_id}:{second.id}")
    team.coach.taps("Use a template")
    assert "Sun 16 May" in text_of(team.coach.taps("Even week"))
    assert "The plan is set" in text_of(team.coach.taps("Use this plan"))
    team.coach.taps("Set the limits")
    team.coach.taps("Set these limits")
    (shown,) = team.coach.presses(f"c:plan:{team.athlete_id}:{second.id}")
    assert "Sun 16 May" in shown.text
    # Out as a sheet and back with one figure changed.
    (formats,) = team.coach.taps("Plan as a sheet", shown)
    team.coach.taps("XLSX", formats)
    _, documents = files_for(team.coach, "sendDocument")[-1]
    assert documents[0].name == "plan-2027-05-16.xlsx"
    asked = sends_file(team.coach, with_cells(documents[0].content, C11=430), name="plan.xlsx")
    assert "For: show on Sun 16 May" in text_of(asked)
    assert "2 days out, carbs" in text_of(asked)
    assert "1 change is now set" in text_of(team.coach.taps("Use these changes"))
    team.coach.taps("Save as template", shown)
    team.coach.writes("Second week")
    with team.world.session() as session:
        (first, second) = events_ahead(session, team.athlete_id)
        plan = current_plan(session, second)
        assert plan is not None and plan.with_carbs(2, 430) == plan
        assert current_plan(session, first) == before
        kept = session.exec(select(TemplateRow).where(TemplateRow.name == "Second week")).one()
    (two_out,) = [day for day in kept.days if day["days_out"] == 2]
    assert two_out["carb_g"][1] == pytest.approx(430 / 61.2, abs=0.01)
