"""A coach's plan is reviewed in chat: findings are shown, warnings answered before it goes live."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.plan.review.flow import LEVELS, SENTENCES, finding_text
from bot.store.tables.event import PlanReviewRow
from bot.store.tables.people import HistoryRow
from engine.evidence.deciding import OWN_CHOICE
from engine.planning.review import FINDINGS, Finding, OnDay
from engine.safety import Level
from tests.support.weeks import Team, onboarded
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Everything is set; seven days out. Mira's habit: 3.5 L of water, 2,300 mg of sodium."""
    return team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))


def change(team: Team, days_out: int, key: str, value: str) -> str:
    team.coach.presses(f"c:num:{team.athlete_id}:{days_out}:{key}")
    return text_of(team.coach.writes(value))


def water(team: Team, days_out: int) -> float:
    day = team.week().plan.day(days_out)
    assert day is not None
    return day.water_l


def kept(team: Team) -> list[PlanReviewRow]:
    with team.world.session() as session:
        return list(session.exec(select(PlanReviewRow)))


def test_a_cut_of_water_waits_for_a_reason_which_is_kept_with_the_plan(team: Team) -> None:
    said = change(team, 1, "water_l", "2.8")
    assert "Warning: water is cut. 1 day out: 2.8 L; the habit is 3.5 L" in said
    assert "Escalante et al. 2021" in said
    assert "Nothing has been changed yet" in said
    assert water(team, 1) == 3.5
    assert "What is the reason?" in text_of(team.coach.taps("Use it anyway, with a reason"))
    assert water(team, 1) == 3.5
    said = text_of(team.coach.writes("Her doctor asked for it in writing"))
    assert "Water, 1 day out: 2.8 L." in said
    assert "Your reason is saved with the plan: Her doctor asked for it in writing" in said
    assert water(team, 1) == 2.8
    (row,) = kept(team)
    assert row.reason == "Her doctor asked for it in writing"
    assert row.answered == [{"id": "water-cut", "days_out": 1, "value": 2.8}]
    seen = text_of(team.coach.presses(f"c:review:{team.athlete_id}"))
    assert "Used anyway, Sun 2 May, 06:00: Her doctor asked for it in writing" in seen


def test_left_as_it_was_nothing_changes_and_nothing_is_kept(team: Team) -> None:
    change(team, 1, "water_l", "5.0")
    said = text_of(team.coach.taps("Keep the old plan"))
    assert "othing was changed" in said
    assert water(team, 1) == 3.5
    assert kept(team) == []


def test_a_reason_cannot_be_empty_or_endless(team: Team) -> None:
    change(team, 1, "water_l", "2.8")
    team.coach.taps("Use it anyway, with a reason")
    assert "What is the reason?" in text_of(team.coach.writes("   "))
    assert "What is the reason?" in text_of(team.coach.writes("x" * 1001))
    assert water(team, 1) == 3.5


def test_what_was_answered_once_is_not_asked_again_but_another_figure_is(team: Team) -> None:
    change(team, 1, "water_l", "2.8")
    team.coach.taps("Use it anyway, with a reason")
    team.coach.writes("Tried in March")
    said = change(team, 1, "fat_g", "25")
    assert "Fat, 1 day out: 25 g." in said
    assert "Warning" not in said
    assert "Nothing has been changed yet" in change(team, 2, "water_l", "2.8")
    team.coach.taps("Keep the old plan")
    assert "Nothing has been changed yet" in change(team, 1, "water_l", "2.0")


def test_a_caution_is_told_and_goes_live_at_once_and_is_not_told_again(team: Team) -> None:
    said = change(team, 2, "fibre_g", "30")
    assert "Fibre, 2 days out: 30 g." in said
    assert "Caution: fibre is high late. 2 days out: 30 g, over 20 g" in said
    assert "Foo et al. 2022" in said
    assert "fibre" not in change(team, 2, "fat_g", "25").lower()


def test_legs_three_days_out_have_to_be_answered(team: Team) -> None:
    said = change(team, 3, "training", "legs, heavy squats")
    assert "Warning: legs are trained late: 3 days out: legs, heavy squats" in said
    assert "something new or hard close to event day" in said
    team.coach.taps("Use it anyway, with a reason")
    assert "Training, 3 days out: legs, heavy squats." in text_of(team.coach.writes("posing round"))


def test_an_answer_to_a_plan_that_has_changed_since_changes_nothing(team: Team) -> None:
    change(team, 1, "water_l", "2.8")
    first = team.coach.all_said()[-1]
    change(team, 2, "fat_g", "25")
    team.coach.taps("Use it anyway, with a reason", first)
    assert "changed since I asked" in text_of(team.coach.writes("because"))
    assert water(team, 1) == 3.5
    assert kept(team) == []


def test_a_reason_sent_twice_is_one_reason(team: Team) -> None:
    change(team, 1, "water_l", "2.8")
    question = team.coach.all_said()[-1]
    team.coach.taps("Use it anyway, with a reason", question)
    team.coach.writes("Tried in March")
    team.coach.taps("Use it anyway, with a reason", question)
    assert "question is closed" in team.coach.answers_to_taps()[-1]
    assert len(kept(team)) == 1


def test_a_draft_goes_live_with_what_the_review_has_to_say_of_it(own_engine: Engine) -> None:
    team = onboarded(own_engine)
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("9 May")
    team.coach.taps("Same time zone")
    team.coach.presses(f"c:draft:{team.athlete_id}")
    team.coach.taps("even")
    team.coach.writes("6")
    team.coach.taps("Mild")
    said = text_of(team.coach.taps("Use this plan"))
    assert "The plan is set." in said
    assert "Info: there was no trial" in said
    assert "the largest load day is 6." in said  # 6 x 61.2 kg, to the nearest 5 g
    assert "Sedlock 2008" in said
    assert "Warning" not in said


def test_a_coachs_own_total_is_held_against_the_days_macros(team: Team) -> None:
    day = team.week().plan.day(5)
    assert day is not None
    # Annex XIV of Regulation (EU) No 1169/2011: 4, 4, 9 and, for fibre, 2 kcal/g
    fits = 4 * day.carb_g + 4 * day.protein_g + 9 * day.fat_g + 2 * day.fibre_g
    team.coach.presses(f"c:kcal:{team.athlete_id}:5")
    assert "fits" in text_of(team.coach.writes(f"{fits:.0f} kcal"))
    team.coach.presses(f"c:kcal:{team.athlete_id}:5")
    said = text_of(team.coach.writes(f"{fits + 300:.0f}"))
    assert "the total does not match" in said
    assert f"{fits:,.0f} kcal where carbs are without fibre (EU labels)" in said


def test_anothers_coach_cannot_look_at_a_review(team: Team) -> None:
    team.athlete.presses(f"c:review:{team.athlete_id}")
    assert "not yours" in team.athlete.answers_to_taps()[-1]


def test_every_answered_warning_is_in_the_history_of_the_plan(team: Team) -> None:
    change(team, 1, "water_l", "2.8")
    team.coach.taps("Use it anyway, with a reason")
    team.coach.writes("Tried in March")
    with team.world.session() as session:
        assert "plan set" in [row.what for row in session.exec(select(HistoryRow))]


def test_every_finding_has_its_words_and_its_level_a_name() -> None:
    assert set(SENTENCES) == set(FINDINGS)
    assert set(LEVELS) == set(Level)
    facts = dict.fromkeys(
        (
            "habit_l", "habit_mg", "most_g", "least_g", "need_g_per_kg", "last_days_out",
            "least_kcal_per_kg", "kcal_fibre_apart", "kcal_fibre_within",
        ),
        7.0,
    )  # fmt: skip
    for id in FINDINGS:
        finding = Finding(
            id=id, level=Level.CAUTION, days=(OnDay(1, 5.0), OnDay(0, 5.0)), facts=facts,
            sources=(OWN_CHOICE,),
        )  # fmt: skip
        text = finding_text(finding, "l")
        assert text.startswith("Caution: ")
        assert OWN_CHOICE.citation in text
