"""A coach drafts a plan in chat: depletion, the load by sex and training, and why each figure."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import replace
from datetime import UTC, datetime
from itertools import product

import pytest
from sqlmodel import delete, select

from bot.core.chat.outbox import TEXT_LIMIT
from bot.people.people import profile_of
from bot.plan.words_draft_reasons import SENTENCES, line_text, why_these_numbers
from bot.store.tables.event import PlanReviewRow
from bot.store.tables.week import LimitsRow
from bot.week.load import current_event, current_plan
from engine.planning.drafting.draft import SHAPES, Asked, depletions, load_range, usual_load
from engine.planning.drafting.draft_reasons import LINES, Line, draft_reasons
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.plan import PeakPlan
from tests.support.weeks import Team, replacing
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """A show a week away, no limits yet. Mira, 61.2 kg, habitually eats 310 g of carbs."""
    team = team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))
    with team.world.session() as session:
        session.execute(delete(LimitsRow))
        session.commit()
    return team


def draft(team: Team, *taps: str) -> str:
    team.coach.presses(f"c:draft:{team.athlete_id}")
    return [text_of(team.coach.taps(label)) for label in taps][-1]


def plan(team: Team) -> PeakPlan:
    with team.world.session() as session:
        profile = profile_of(session, team.athlete_id)
        event = current_event(session, team.athlete_id)
        assert profile is not None
        assert event is not None
        found = current_plan(session, event)
        assert found is not None
        return found


def before_the_load(team: Team) -> set[float]:
    return {day.carb_g for day in plan(team) if day.days_out > 3}


def test_a_mild_depletion_is_drafted_and_used(team: Team) -> None:
    said = draft(team, "back-load", "8.2 g/kg", "Mild")
    assert "Depletion: mild" in said
    assert "This is the draft" in said
    assert "The plan is set." in text_of(team.coach.taps("Use this plan"))
    assert before_the_load(team) == {185}


def test_no_depletion_leaves_carbs_and_fat_as_they_are_until_the_load(team: Team) -> None:
    draft(team, "even", "8.2 g/kg", "None", "Use this plan")
    assert before_the_load(team) == {310}
    assert {day.fat_g for day in plan(team) if day.days_out > 3} == {55}


def test_a_deep_depletion_asks_for_a_reason_and_keeps_it_with_the_plan(team: Team) -> None:
    said = draft(team, "even", "8.2 g/kg", "Deep")
    assert "rarely adds anything if the look is already right" in said
    assert "Homer et al. 2024" in said
    team.coach.writes("  ")
    assert before_the_load(team) == {185}
    said = text_of(team.coach.writes("She holds water until she is empty, seen twice"))
    assert "Reason for a deep depletion: She holds water" in said
    said = text_of(team.coach.taps("Use this plan"))
    assert "Your reason is saved with the plan: She holds water until she is empty" in said
    assert "Info: depletion is deep" in said
    assert "7, 6, 5 and 4 days out: 60 g" in said
    assert before_the_load(team) == {60}
    with team.world.session() as session:
        (row,) = session.exec(select(PlanReviewRow))
        assert row.reason == "She holds water until she is empty, seen twice"
        assert {one["id"] for one in row.answered} == {"deep-depletion"}
    seen = text_of(team.coach.presses(f"c:review:{team.athlete_id}"))
    assert "She holds water until she is empty" in seen


def test_before_a_fat_load_there_is_no_choice_of_no_depletion(team: Team) -> None:
    draft(team, "fat first, then carbs", "8.2 g/kg")
    labels = team.coach.all_said()[-1].buttons
    assert "Mild" in labels
    assert "None" not in labels
    assert "one of the buttons" in text_of(team.coach.writes("none")).lower()


def test_more_training_may_have_more_of_a_load(team: Team) -> None:
    draft(team, "even", "9 g/kg", "Mild", "Use this plan")
    assert {day.carb_g for day in plan(team) if day.days_out in (3, 2, 1)} == {550}  # 9 x 61.2


def test_every_line_of_a_draft_is_explained_and_the_draft_is_still_there_after(team: Team) -> None:
    draft(team, "even", "8.2 g/kg", "Mild")
    said = text_of(team.coach.taps("Why these numbers"))
    assert "my starting point for women. The review says above 8 g/kg" in said
    assert "Source: Sedlock 2008, Curr Sports Med Rep 7:209-213" in said
    assert "Source: common practice" in said
    for what in ("Even load", "Mild depletion", "Event day", "Protein", "Fat", "Fibre",
                 "Water", "Sodium", "Training", "Cardio", "A trial"):  # fmt: skip
        assert f"\n{what}" in said
    assert said.count("Source: ") == 12
    assert "This is the draft" in text_of(team.coach.taps("Back to the draft"))
    assert "The plan is set." in text_of(team.coach.taps("Use this plan"))


def test_a_draft_says_when_a_trial_fits_if_there_is_time_for_one(team: Team) -> None:
    assert "time to practise" not in draft(team, "even", "8.2 g/kg", "Mild")
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("25 July")
    replacing(team.coach, team.coach.taps("Same time zone"))
    said = draft(team, "even", "8.2 g/kg", "Mild")
    assert "its event day from Sun 30 May to Sun 11 Jul (eight to two weeks before)" in said
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A trial")
    team.coach.writes("11 July")
    replacing(team.coach, team.coach.taps("Same time zone"))
    said = draft(team, "even", "8.2 g/kg", "Mild")
    assert "This is the trial" in said
    assert re.search(r"chance that it spills over is about \d+ %|unlikely to spill over", said)


def all_reasons() -> Iterator[tuple[Line, ...]]:
    habits = [
        Baseline(carb_g=310, protein_g=140, fat_g=fat, fibre_g=25, water_l=water, sodium_mg=2300)
        for fat, water in ((55, 3.5), (20, 0.5), (140, 12))
    ]
    habits.append(replace(habits[0], fibre_g=None, sodium_mg=None))  # what is not counted
    for sex, habit, fat, shape in product(Sex, habits, (None, 10), SHAPES):
        who = Athlete(
            sex=sex, birth_year=1996, height_cm=165, body_mass_kg=61, body_fat_percent=fat
        )
        loads = (usual_load(sex), usual_load(sex, "much"), load_range(shape)[0])
        for load, depletion in product(loads, depletions(shape)):
            yield draft_reasons(who, habit, Asked(shape, load, depletion))
        least = Asked(shape, loads[0], depletions(shape)[0])
        yield draft_reasons(who, habit, least, learnt_g_per_kg=loads[0])


def test_every_line_has_its_words_and_fits_a_message() -> None:
    assert set(SENTENCES) == set(LINES)
    said = set()
    for lines in all_reasons():
        said |= {line.id for line in lines}
        text = why_these_numbers(lines, "l")
        assert len(text) < TEXT_LIMIT * 3 / 4
        assert all(line.sources and "{" not in line_text(line, "l") for line in lines)
    assert said == set(LINES)
