"""Days between two events, and plans that do not fit their limits."""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.planning.drafting.bridge import bridge_plan
from engine.planning.drafting.draft import draft_plan
from engine.planning.drafting.template import relative_limits, scaled_limits
from engine.planning.fitting import cut_to_fit, room_made
from engine.planning.review import review_plan, to_answer
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.limits import LIMIT_KEYS, Limits, plan_problems

MIRA = Athlete(sex=Sex.FEMALE, birth_year=1996, height_cm=165, body_mass_kg=61.2)
HUGO = Athlete(sex=Sex.MALE, birth_year=1990, height_cm=180, body_mass_kg=84)
HABIT = Baseline(carb_g=310, protein_g=140, fat_g=55, fibre_g=25, water_l=3.5, sodium_mg=2300)


@pytest.mark.parametrize("athlete", [MIRA, HUGO])
@pytest.mark.parametrize("between", range(1, 15))
def test_a_bridge_depletes_nothing_and_cuts_neither_water_nor_salt(
    athlete: Athlete, between: int
) -> None:
    plan = bridge_plan(athlete, HABIT, between)
    assert [day.days_out for day in plan] == list(range(min(between - 1, 7), -1, -1))
    assert all(day.carb_g >= HABIT.carb_g for day in plan if day.days_out)
    assert all((day.water_l, day.sodium_mg) == (3.5, 2300) for day in plan)
    assert not to_answer(review_plan(athlete, HABIT, plan))
    assert not plan_problems(plan, Limits.suggested(athlete, plan, HABIT))


def test_after_a_bridge_less_is_loaded_than_after_a_diet() -> None:
    # Loaded glycogen stays up for three days of light exercise (Goforth et al. 1997, J Appl Physiol
    # 82:342-347), so a second load begins from more and has less to fill.
    bridge, usual = bridge_plan(MIRA, HABIT, 7), draft_plan(MIRA, HABIT)
    for out in (3, 2, 1):
        second, first = bridge.day(out), usual.day(out)
        assert second is not None and first is not None
        assert HABIT.carb_g < second.carb_g < first.carb_g


def test_the_limits_that_a_plan_leaves_move_just_so_far_and_no_other() -> None:
    plan = draft_plan(MIRA, HABIT)
    limits = replace(Limits.suggested(MIRA, plan, HABIT), carb_ceiling_g=450, load_total_g=1400)
    room = room_made(plan, limits)
    assert room.limits is not None
    assert [moved.key for moved in room.moved] == ["carb_ceiling_g", "load_total_g"]
    assert room.limits.carb_ceiling_g == max(day.carb_g for day in plan)
    assert not plan_problems(plan, room.limits)
    same = {key for key in LIMIT_KEYS if getattr(limits, key) == getattr(room.limits, key)}
    assert set(LIMIT_KEYS) - same == {"carb_ceiling_g", "load_total_g"}


def test_no_limit_moves_past_its_safety_bound() -> None:
    plan = draft_plan(MIRA, HABIT).with_carbs(2, 760)  # over 12 g/kg of 61.2 kg
    room = room_made(plan, Limits.suggested(MIRA, draft_plan(MIRA, HABIT), HABIT))
    assert room.limits is None
    assert [problem.limit for problem in room.past_bounds] == ["carb_ceiling_g"]


def test_a_draft_cut_to_fit_fits_and_stays_as_near_as_it_can() -> None:
    plan = draft_plan(MIRA, HABIT)
    limits = replace(Limits.suggested(MIRA, plan, HABIT), carb_ceiling_g=470, load_total_g=1300)
    cut = cut_to_fit(plan, limits)
    assert not plan_problems(cut, limits)
    load = sum(day.carb_g for day in cut if day.days_out in (3, 2, 1))
    assert 1300 - 15 <= load <= 1300
    assert [day for day in cut if day.days_out > 3] == [day for day in plan if day.days_out > 3]


def test_limits_go_onto_another_body_by_its_mass_and_habit() -> None:
    limits = Limits.suggested(MIRA, draft_plan(MIRA, HABIT), HABIT)
    shares = relative_limits(limits, MIRA, HABIT)
    again = scaled_limits(shares, MIRA, HABIT)
    for key in LIMIT_KEYS:
        assert getattr(again, key) == pytest.approx(getattr(limits, key), abs=2.5), key
    hugo = scaled_limits(shares, HUGO, replace(HABIT, water_l=5))
    assert hugo.carb_ceiling_g == pytest.approx(limits.carb_ceiling_g * 84 / 61.2, abs=2.5)
    assert hugo.water_floor_l == pytest.approx(limits.water_floor_l * 5 / 3.5, abs=0.05)
