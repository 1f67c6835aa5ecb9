"""The coach sets event, plan and limits in chat, and what is refused on the way."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlalchemy import Engine
from sqlmodel import col, select

from bot.core.turn import Kind
from bot.people.people import get_profile
from bot.plan.words import FIELDS
from bot.store.db import transaction
from bot.store.tables.people import HistoryRow
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import EventRow, LimitsRow, PlanRow
from bot.week.load import Week, current_week, day_set
from engine.values.limits import LIMIT_KEYS
from tests.support.weeks import Team, onboarded, replacing
from tests.support.world import Said, text_of

TYPED_NONSENSE = ("", "   ", "abc", "🤷", "-1", "840 kg", "x" * 4096, "1e9", "12 or 13")


@pytest.fixture
def fresh(own_engine: Engine) -> Team:
    """Mira has answered the first questions; nothing is set. It is Saturday 1 May, at four."""
    team = onboarded(own_engine)
    team.athlete.hears()
    return team


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Everything is set; seven days out, at six in London, before the first question."""
    return team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))


@pytest.fixture
def midweek(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def week(team: Team) -> Week | None:
    with team.world.session() as session:
        profile = get_profile(session, team.athlete_id)
        return current_week(session, profile)


def prompts_waiting(team: Team) -> list[datetime]:
    with team.world.session() as session:
        rows = session.exec(
            select(AgendaRow)
            .where(AgendaRow.kind == "prompt", AgendaRow.status == "waiting")
            .order_by(col(AgendaRow.due_at))
        )
        return [row.due_at for row in rows]


def set_event(team: Team, day: str = "9 May") -> list[Said]:
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes(day)
    return replacing(team.coach, team.coach.taps("Same time zone"))


def draft(team: Team, shape: str = "even", load: str = "usual") -> list[Said]:
    team.coach.presses(f"c:draft:{team.athlete_id}")
    team.coach.taps(shape)
    if load == "usual":
        team.coach.taps("8.2 g/kg")
    else:
        team.coach.writes(load)
    team.coach.taps("Mild")
    return team.coach.taps("Use this plan")


def test_event_plan_and_limits_in_a_few_taps_start_the_mornings_and_both_know_when(
    fresh: Team,
) -> None:
    set_event(fresh)
    assert "Ravi has set your event: Show, Sun 9 May 2027" in text_of(fresh.athlete.hears())
    draft(fresh)
    assert week(fresh) is None
    assert prompts_waiting(fresh) == []
    fresh.coach.taps("Set the limits")
    said = text_of(fresh.coach.taps("Set these limits"))
    assert "first check-in is on Sun 2 May, 06:30 (Mira's time)" in said
    assert "first check-in is on Sun 2 May, 06:30" in text_of(fresh.athlete.hears())
    assert prompts_waiting(fresh)[0] == datetime(2027, 5, 2, 5, 30, tzinfo=UTC)
    assert len(prompts_waiting(fresh)) == 8


def test_the_draft_is_scaled_by_body_mass_and_shown_before_it_is_used(fresh: Team) -> None:
    set_event(fresh)
    fresh.coach.presses(f"c:draft:{fresh.athlete_id}")
    fresh.coach.taps("taper")
    fresh.coach.writes("8")
    shown = text_of(fresh.coach.taps("Mild"))
    # 8 g/kg x 61.2 kg = 489.6 g on average: 1.2, 1 and 0.8 of it, to the nearest 5 g
    assert "3, Thu 6 May: 590 / " in shown
    assert "2, Fri 7 May: 490 / " in shown
    assert "1, Sat 8 May: 390 / " in shown
    with fresh.world.session() as session:
        assert session.exec(select(PlanRow)).all() == []
    assert "load be spread" in text_of(fresh.coach.taps("Draft another"))


def test_a_plan_before_an_event_and_limits_before_a_plan_say_what_comes_first(fresh: Team) -> None:
    for view in ("plan", "draft", "limits", "limits-use", "lim"):
        said = fresh.coach.presses(f"c:{view}:{fresh.athlete_id}:carb_floor_g")
        assert "Set the event first" in text_of(said), view
    set_event(fresh)
    said = fresh.coach.presses(f"c:limits:{fresh.athlete_id}")
    assert "Set the plan first" in text_of(said)
    assert "Draft a plan" in said[-1].buttons


def test_nothing_can_be_set_before_the_first_questions_are_answered(own_engine: Engine) -> None:
    team = onboarded(own_engine, answers=("yes", "1996"))
    for view in ("event", "draft", "answers"):
        said = team.coach.presses(f"c:{view}:{team.athlete_id}")
        assert "has not answered the first questions" in text_of(said), view


def test_a_day_that_cannot_be_is_refused_and_asked_again(fresh: Team) -> None:
    fresh.coach.presses(f"c:event:{fresh.athlete_id}")
    fresh.coach.taps("A show")
    for day, answered in {
        "2027-04-30": "is already past",
        "2028-06-01": "more than a year away",
        "05/06": "Day and month could be either way round",
        "31 February": "could not read a date",
        "Monday 9 May": "is a Sunday, not a Monday",
        "": "empty",
        "soon": "could not read a date",
        "🤷": "could not read a date",
        "-1": "could not read a date",
        "x" * 4096: "too long",
    }.items():
        said = text_of(fresh.coach.writes(day))
        assert answered in said, day
        assert "On which day?" in said, day
    assert "Where is it?" in text_of(fresh.coach.writes("9 May"))


def test_a_show_elsewhere_is_found_by_its_city(fresh: Team) -> None:
    fresh.coach.presses(f"c:event:{fresh.athlete_id}")
    fresh.coach.taps("A photo shoot")
    fresh.coach.writes("9 May")
    assert "don't know a place" in text_of(fresh.coach.writes("Xyzzyville"))
    choices = fresh.coach.writes("Lisbon")[-1].buttons
    label = next(label for label in choices if "Europe/Lisbon" in label)
    said = text_of(fresh.coach.taps(label))
    assert "Photo shoot, Sun 9 May 2027 (Europe/Lisbon)" in said


def test_the_event_can_be_left_as_it_is_half_way(fresh: Team) -> None:
    fresh.coach.presses(f"c:event:{fresh.athlete_id}")
    fresh.coach.taps("A trial")
    assert "othing was changed" in text_of(fresh.coach.taps("No, leave it"))
    with fresh.world.session() as session:
        assert session.exec(select(EventRow)).all() == []


def test_moving_the_day_takes_plan_and_limits_along_and_moves_the_mornings(team: Team) -> None:
    before = week(team)
    said = text_of(set_event(team, "12 May"))
    assert "I moved the plan and the limits" in said
    after = week(team)
    assert before is not None
    assert after is not None
    assert (after.plan, after.limits) == (before.plan, before.limits)
    assert prompts_waiting(team)[-1].date().isoformat() == "2027-05-12"
    with team.world.session() as session:
        assert [
            row.active for row in session.exec(select(EventRow).order_by(col(EventRow.id)))
        ] == [False, True]


def test_a_load_that_cannot_be_is_refused_and_asked_again(fresh: Team) -> None:
    set_event(fresh)
    fresh.coach.presses(f"c:draft:{fresh.athlete_id}")
    fresh.coach.taps("even")
    for load in (*TYPED_NONSENSE, "0", "2.9", "12.1"):
        assert "How much on an average load day" in text_of(fresh.coach.writes(load)), load
    fresh.coach.writes("6.5 g/kg")
    assert "This is the draft" in text_of(fresh.coach.taps("Mild"))


def change(team: Team, days_out: int, key: str, value: str) -> str:
    team.coach.presses(f"c:num:{team.athlete_id}:{days_out}:{key}")
    return text_of(team.coach.writes(value))


@pytest.mark.parametrize(
    ("key", "typed", "kept"),
    [
        ("carb_g", "520 g", 520),
        ("protein_g", "130", 130),
        ("fat_g", "25", 25),
        ("fibre_g", "12", 12),
        ("water_l", "3750 ml", 3.75),
        ("sodium_mg", "2600", 2600),
        ("training", "posing, forty minutes", "posing, forty minutes"),
        ("cardio_min", "15 min", 15),
        ("steps", "6500", 6500),
    ],
)
def test_every_number_of_every_day_can_be_changed(
    team: Team, key: str, typed: str, kept: float | str
) -> None:
    assert set(FIELDS) >= {key}
    said = change(team, 2, key, typed)
    assert "2 days out:" in said
    after = week(team)
    assert after is not None
    assert getattr(after.plan.day(2), key) == kept
    with team.world.session() as session:
        assert len(session.exec(select(PlanRow)).all()) == 2  # the earlier version is kept


@pytest.mark.parametrize("key", [key for key in FIELDS if key not in ("training", "phase")])
def test_what_is_no_number_is_refused_and_asked_again(team: Team, key: str) -> None:
    before = week(team)
    team.coach.presses(f"c:num:{team.athlete_id}:2:{key}")
    for typed in TYPED_NONSENSE:
        assert "Send the new number" in text_of(team.coach.writes(typed)), typed
    assert week(team) == before


def test_a_sticker_or_too_many_words_are_no_training(team: Team) -> None:
    team.coach.presses(f"c:num:{team.athlete_id}:2:training")
    assert "please type it" in text_of(team.coach.writes("", kind=Kind.OTHER))
    assert "200 fit here" in text_of(team.coach.writes("x" * 201))
    assert "empty" in text_of(team.coach.writes("   "))
    assert "Training, 2 days out: rest." in text_of(team.coach.writes("rest"))


def test_a_plan_that_leaves_the_limits_is_refused_with_day_and_bound_and_changes_nothing(
    team: Team,
) -> None:
    with transaction(team.world.engine) as session:
        row = session.exec(select(LimitsRow)).one()
        row.bounds = {**row.bounds, "carb_ceiling_g": 590.0, "load_total_g": 1575.0}
        session.add(row)
    before = week(team)
    said = change(team, 2, "carb_g", "650")
    assert "2 days out: carbs 650 g, over the carb ceiling of 590 g" in said
    assert "load total: carbs 1,650 g, over the load total of 1,575 g" in said
    assert any(
        label.startswith("Change the limit: carb ceiling 590 g → 650 g")
        for message in team.coach.all_said()
        for label in message.buttons
    )
    assert week(team) == before
    assert "Carbs, 2 days out: 510 g." in text_of(team.coach.writes("510"))


def test_a_day_that_is_over_keeps_its_figures(midweek: Team) -> None:
    midweek.coach.presses(f"c:num:{midweek.athlete_id}:5:carb_g")
    assert "That day is over" in midweek.coach.answers_to_taps()[-1]


def test_a_changed_plan_decides_this_morning_again_and_sends_the_new_target(midweek: Team) -> None:
    midweek.athlete.writes("61.0 4 3.5 5 on target fine")
    change(midweek, 3, "carb_g", "520")
    told = text_of(midweek.athlete.hears())
    assert "changed the plan" in told
    assert "Carbs 520 g (as planned)" in told
    with midweek.world.session() as session:
        row = day_set(session, midweek.athlete_id, midweek.world.now.date())
    assert row is not None
    assert row.carb_g == 520


def test_a_limit_is_changed_by_typing_it_and_the_version_before_is_kept(team: Team) -> None:
    team.coach.presses(f"c:lim:{team.athlete_id}:apply_without_asking_g")
    said = text_of(team.coach.writes("50"))
    assert "Auto-approve changes up to: 50 g" in said
    after = week(team)
    assert after is not None
    assert after.limits.apply_without_asking_g == 50
    with team.world.session() as session:
        assert len(session.exec(select(LimitsRow)).all()) == 2
        what = [row.what for row in session.exec(select(HistoryRow))]
    assert "limits set" in what


@pytest.mark.parametrize(
    ("key", "typed", "bound", "source"),
    [
        # 12 g/kg x 61.2 kg (Burke et al. 2011)
        ("carb_ceiling_g", "735", "734 g", "Burke et al. 2011"),
        # three days of 12 g/kg (Shiose et al. 2016)
        ("load_total_g", "2204", "2,203 g", "Shiose et al. 2016"),
        # 100 mL/kg (Reale et al. 2018)
        ("water_ceiling_l", "6.2", "6.12 L", "Reale"),
        # adequate intake from drinks, women (EFSA 2010)
        ("water_floor_l", "1.3", "1.4 L", "EFSA 2010"),
    ],
)
def test_a_limit_past_its_guard_rail_is_refused_with_bound_and_source(
    team: Team, key: str, typed: str, bound: str, source: str
) -> None:
    before = week(team)
    team.coach.presses(f"c:lim:{team.athlete_id}:{key}")
    said = text_of(team.coach.writes(typed))
    assert bound in said
    assert source in said
    assert week(team) == before


@pytest.mark.parametrize("key", LIMIT_KEYS)
def test_what_is_no_limit_is_refused_and_asked_again(team: Team, key: str) -> None:
    before = week(team)
    team.coach.presses(f"c:lim:{team.athlete_id}:{key}")
    for typed in TYPED_NONSENSE:
        assert "Send the new number" in text_of(team.coach.writes(typed)), typed
    assert week(team) == before


def test_where_limits_are_set_the_coach_reads_what_they_cost(team: Team) -> None:
    shown = text_of(team.coach.presses(f"c:limits:{team.athlete_id}"))
    # Three load days of 500 g; 460 g of room over them, and 3 g/kg x 61.2 kg either way.
    assert "Mira's average load day can be corrected by 153 g up and 180 g down at most" in shown
    assert "about three quarters of what may be needed" in shown
    assert "not measured on people" in shown
    team.coach.presses(f"c:lim:{team.athlete_id}:change_per_day_g")
    said = text_of(team.coach.writes("60"))
    assert "corrected by 60 g up and 60 g down at most: about a third of what may be needed" in said
    team.coach.presses(f"c:lim:{team.athlete_id}:step_g")
    assert "may be needed" not in text_of(team.coach.writes("30"))


def test_limits_that_the_plan_would_leave_are_refused_with_the_days(team: Team) -> None:
    before = week(team)
    team.coach.presses(f"c:lim:{team.athlete_id}:carb_ceiling_g")
    said = text_of(team.coach.writes("450"))
    assert "3 days out: carbs 500 g, over the carb ceiling of 450 g" in said
    assert week(team) == before


def test_a_floor_over_its_ceiling_is_refused_in_words(team: Team) -> None:
    before = week(team)
    team.coach.presses(f"c:lim:{team.athlete_id}:water_floor_l")
    said = text_of(team.coach.writes("5.5"))
    assert "water floor (5.5 L) would then be above the water ceiling (5.25 L)" in said
    assert week(team) == before


@pytest.mark.parametrize(
    "data", ["c:day:2:9", "c:day:2:x", "c:day:2", "c:num:2:3:salt", "c:num:2", "c:lim:2:salt"]
)
def test_an_odd_button_leads_back_and_breaks_nothing(team: Team, data: str) -> None:
    before = week(team)
    said = text_of(team.coach.presses(data))
    assert "Mira's plan" in said or "Mira's limits" in said
    assert week(team) == before


def test_an_old_question_closed_by_its_successor_takes_no_answer(team: Team) -> None:
    (first,) = team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show", first)
    assert "That question is closed" in team.coach.answers_to_taps()[-1]
