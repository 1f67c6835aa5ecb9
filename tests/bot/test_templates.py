"""A coach's own templates: saved off one athlete, put on another, seen by nobody else."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlmodel import select

from bot.core.turn import Turn
from bot.membership.onboarding import onboarding
from bot.people.people import get_person
from bot.store.db import transaction
from bot.store.tables.coach import TemplateRow
from bot.store.tables.people import Person
from bot.store.tables.week import PlanRow
from bot.week.load import current_event, current_plan, limits_row
from engine.values.plan import PeakPlan
from tests.support.weeks import LATER_ANSWERS, ONBOARDING_ANSWERS, Team
from tests.support.world import Someone, text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Everything is set; seven days out, at six in London, before the first question."""
    return team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))


def somebody(team: Team, user_id: int, name: str, *, coach: bool) -> tuple[Someone, int]:
    with transaction(team.world.engine) as session:
        person = Person(
            telegram_user_id=user_id, chat_id=user_id, first_name=name, is_coach=coach,
            created_at=team.world.now,
        )  # fmt: skip
        session.add(person)
        session.flush()
        assert person.id is not None
        return Someone(team.world, user_id, name), person.id


def second_athlete(team: Team, *, body_mass: str = "80", carbs: str = "400") -> int:
    """Tess: heavier than Mira (61.2 kg, 310 g of carbs by habit), with an event and no plan."""
    tess, tess_id = somebody(team, 103, "Tess", coach=False)
    with transaction(team.world.engine) as session:
        onboarding.begin(Turn(session, team.world.context), get_person(session, tess_id), 1)
    answers = list(ONBOARDING_ANSWERS)
    answers[9], answers[10] = body_mass, f"{carbs} 140 55 3.5"
    for answer in answers:
        tess.writes(answer)
    tess.presses("more:ask")
    for answer in LATER_ANSWERS:
        tess.writes(answer)
    team.coach.hears()
    team.coach.presses(f"c:event:{tess_id}")
    team.coach.taps("A show")
    team.coach.writes("16 May")
    team.coach.taps("Same time zone")
    return tess_id


def plan_of(team: Team, athlete_id: int) -> PeakPlan | None:
    with team.world.session() as session:
        event = current_event(session, athlete_id)
        return current_plan(session, event) if event is not None else None


def saves(team: Team, name: str) -> str:
    team.coach.presses(f"c:plan:{team.athlete_id}")
    team.coach.taps("Save as template")
    return text_of(team.coach.writes(name))


def test_a_template_goes_on_another_athlete_by_body_mass_and_habit_after_it_was_shown(
    team: Team,
) -> None:
    assert "Saved as Even week" in saves(team, "Even week")
    mira = plan_of(team, team.athlete_id)
    tess_id = second_athlete(team)
    team.coach.presses(f"c:plan:{tess_id}")
    team.coach.taps("Use a template")
    shown = text_of(team.coach.taps("Even week"))
    assert "Even week, scaled for Tess" in shown
    assert plan_of(team, tess_id) is None

    assert "The plan is set" in text_of(team.coach.taps("Use this plan"))
    tess = plan_of(team, tess_id)
    assert mira is not None and tess is not None
    # By arithmetic: the load in g/kg (80 against 61.2 kg), before it by habit (400 against 310 g).
    for days_out, ratio in ((7, 400 / 310), (4, 400 / 310), (3, 80 / 61.2), (1, 80 / 61.2)):
        was, now = mira.day(days_out), tess.day(days_out)
        assert was is not None and now is not None
        assert now.carb_g == pytest.approx(was.carb_g * ratio, abs=2.5)
        assert (now.water_l, now.training) == (was.water_l, was.training)


def test_a_template_holds_no_name_and_no_weight(team: Team) -> None:
    saves(team, "Even week")
    with team.world.session() as session:
        row = session.exec(select(TemplateRow)).one()
    assert "Mira" not in str(row) and "61.2" not in str(row.days)


def test_put_back_on_the_same_athlete_a_template_gives_the_same_plan(team: Team) -> None:
    before = plan_of(team, team.athlete_id)
    saves(team, "Even week")
    team.coach.presses(f"c:tpl:{team.athlete_id}")
    team.coach.taps("Even week")
    team.coach.taps("Use this plan")
    after = plan_of(team, team.athlete_id)
    assert before is not None and after is not None
    for was, now in zip(before, after, strict=True):
        assert now.carb_g == was.carb_g
        assert now.water_l == was.water_l
        assert now.protein_g == pytest.approx(was.protein_g, abs=0.5)


def test_what_leaves_the_limits_is_named_and_not_offered(team: Team) -> None:
    saves(team, "Even week")
    team.coach.presses(f"c:lim:{team.athlete_id}:carb_ceiling_g")
    team.coach.writes("550")
    # A fuller template, made by raising a day within the old limits, no longer fits.
    with transaction(team.world.engine) as session:
        row = session.exec(select(TemplateRow)).one()
        row.days = [{**day, "carb_g": ["per_kg", 9.8]} for day in row.days]
        session.add(row)
    team.coach.presses(f"c:tpl:{team.athlete_id}")
    said = text_of(team.coach.taps("Even week"))
    assert "I changed nothing" in said and "over the carb ceiling of 550 g" in said
    assert not any("Use this plan" in m.buttons for m in team.coach.all_said())


def test_midweek_the_days_that_are_over_keep_their_figures(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))
    saves(team, "Even week")
    with transaction(team.world.engine) as session:
        row = session.exec(select(TemplateRow)).one()
        row.days = [{**day, "fat_g": ["of_habit", 1.2]} for day in row.days]
        session.add(row)
    team.coach.presses(f"c:tpl:{team.athlete_id}")
    assert "Days that are over stay" in text_of(team.coach.taps("Even week"))
    before = plan_of(team, team.athlete_id)
    team.coach.taps("Use this plan")
    after = plan_of(team, team.athlete_id)
    assert before is not None and after is not None
    assert [day for day in after if day.days_out > 3] == [d for d in before if d.days_out > 3]
    assert all(day.fat_g == 66 for day in after if day.days_out <= 3)


def test_a_plan_that_changed_meanwhile_is_not_overwritten(team: Team) -> None:
    saves(team, "Even week")
    team.coach.presses(f"c:tpl:{team.athlete_id}")
    team.coach.taps("Even week")
    team.coach.presses(f"c:num:{team.athlete_id}:4:carb_g")
    team.coach.writes("190")
    assert "plan has changed since" in text_of(team.coach.taps("Use this plan"))
    plan = plan_of(team, team.athlete_id)
    day = plan.day(4) if plan is not None else None
    assert day is not None and day.carb_g == 190


def test_another_coach_neither_sees_uses_nor_deletes_it(team: Team) -> None:
    saves(team, "Even week")
    other, _ = somebody(team, 301, "Noor", coach=True)
    assert "no templates yet" in text_of(other.writes("/templates"))
    unknown = text_of(other.presses("tpl:del-yes:999"))
    assert text_of(other.presses("tpl:del-yes:1")) == unknown
    other.presses(f"c:tpl:{team.athlete_id}:1")
    other.presses(f"c:tpl-save:{team.athlete_id}")
    with team.world.session() as session:
        assert len(session.exec(select(TemplateRow)).all()) == 1
        assert len(session.exec(select(PlanRow)).all()) == 1


def test_templates_are_listed_and_deleted_on_a_second_tap(team: Team) -> None:
    assert "no templates yet" in text_of(team.coach.writes("/templates"))
    saves(team, "Even week")
    assert "- Even week, saved Sun 2 May 2027" in text_of(team.coach.writes("/templates"))
    team.coach.taps("Delete Even week")
    assert "Kept" in text_of(team.coach.taps("Keep it"))
    team.coach.taps("Delete Even week")
    assert "Deleted: Even week" in text_of(team.coach.taps("Yes, delete it"))
    assert "no templates yet" in text_of(team.coach.writes("/templates"))


@pytest.mark.parametrize(
    ("name", "said"), [("  ", "empty"), ("x" * 41, "41 characters"), ("even WEEK", "already")]
)
def test_a_name_that_will_not_do_is_asked_for_again(team: Team, name: str, said: str) -> None:
    saves(team, "Even week")
    assert said in saves(team, name)
    assert "Saved as Other" in text_of(team.coach.writes("Other"))


def test_without_a_plan_there_is_nothing_to_save(team: Team) -> None:
    tess_id = second_athlete(team)
    assert "Set the plan first" in text_of(team.coach.presses(f"c:tpl-save:{tess_id}"))
    assert "no templates yet" in text_of(team.coach.presses(f"c:tpl:{tess_id}"))


def test_a_draft_that_does_not_fit_is_kept_and_the_limit_that_would_move_is_named(
    team: Team,
) -> None:
    saves(team, "Even week")
    before = plan_of(team, team.athlete_id)
    with transaction(team.world.engine) as session:
        row = session.exec(select(TemplateRow)).one()
        row.days = [
            {**day, "carb_g": ["per_kg", 9.8]} if day["days_out"] == 2 else day for day in row.days
        ]
        session.add(row)
    team.coach.presses(f"c:lim:{team.athlete_id}:carb_ceiling_g")
    team.coach.writes("550")
    team.coach.presses(f"c:tpl:{team.athlete_id}")
    said = team.coach.taps("Even week")
    assert "Your draft is kept" in text_of(said)
    raise_it = next(label for label in said[-1].buttons if "carb ceiling 550 g → 600 g" in label)
    # A number sent changes the draft alone; sent back, the draft does not fit again.
    assert "It fits now" in text_of(team.coach.writes("2 days out carbs 540"))
    said = team.coach.writes("2 days out carbs 600")
    assert plan_of(team, team.athlete_id) == before
    raise_it = next(label for label in said[-1].buttons if "carb ceiling 550 g → 600 g" in label)
    assert "The plan is set" in text_of(team.coach.taps(raise_it))
    after = plan_of(team, team.athlete_id)
    assert after is not None
    changed = after.day(2)
    assert changed is not None
    assert changed.carb_g == 600
    with team.world.session() as session:
        event = current_event(session, team.athlete_id)
        assert event is not None
        limits = limits_row(session, event)
    assert limits is not None
    assert limits.bounds["carb_ceiling_g"] == 600


def test_a_template_holds_limits_and_habits_too(team: Team) -> None:
    saves(team, "Even week")
    with team.world.session() as session:
        row = session.exec(select(TemplateRow)).one()
        event = current_event(session, team.athlete_id)
        assert event is not None
        limits = limits_row(session, event)
    assert limits is not None
    # By arithmetic: g per kg of her 61.2 kg.
    assert row.limits["carb_ceiling_g"][1] * 61.2 == pytest.approx(limits.bounds["carb_ceiling_g"])
    assert row.habits["asked_at"] == "06:30"
