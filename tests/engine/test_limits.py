"""Limits, guard rails and targets: nothing outside them can be made."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.evidence.source import Provenance
from engine.planning.room import Room, room_to_correct
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.limits import (
    LIMIT_KEYS,
    GuardRails,
    Limits,
    OutOfLimits,
    OutsideGuardRail,
    Target,
    Window,
    fit,
    plan_problems,
    round_carbs,
)
from engine.values.plan import DayTarget, PeakPlan

MIRA = Athlete(sex=Sex.FEMALE, birth_year=1994, height_cm=166, body_mass_kg=60)
TOMAS = Athlete(sex=Sex.MALE, birth_year=1990, height_cm=181, body_mass_kg=80)
HABIT = Baseline(carb_g=180, protein_g=130, fat_g=50, fibre_g=28, water_l=3.2, sodium_mg=2800)


def limits(athlete: Athlete = MIRA, **changed: float) -> Limits:
    figures = {
        "carb_floor_g": 60,
        "carb_ceiling_g": 560,
        "step_g": 25,
        "change_per_day_g": 100,
        "load_total_g": 1500,
        "apply_without_asking_g": 30,
        "water_floor_l": 2.4,
        "water_ceiling_l": 4.8,
    }
    return Limits(guard_rails=GuardRails.of(athlete), **{**figures, **changed})


def plan(*carbs: float, water_l: float = 3.2) -> PeakPlan:
    rest = {"protein_g": 130, "fat_g": 40, "fibre_g": 20, "sodium_mg": 2800}
    days = zip(range(7, -1, -1), carbs, strict=True)
    return PeakPlan(
        tuple(DayTarget(days_out=out, carb_g=g, water_l=water_l, **rest) for out, g in days)
    )


WEEK = plan(110, 110, 110, 110, 460, 460, 460, 180)


# What the literature gives for a 60 kg woman and an 80 kg man:
# carbohydrate 10-12 g/kg per 24 h (Burke 2011, J Sports Sci 29:S17-27), so 720 and 960 g at most;
# 12 g/kg a day for 72 h (Shiose 2016, J Appl Physiol 121:205-211), so 2160 and 2880 g over a load;
# water from drinks 1.4 L women, 1.75 L men (EFSA 2010, EFSA J 8(3):1459);
# 100 mL/kg a day tolerated for three days (Reale 2018, IJSNEM 28:565-573), so 6 and 8 L.
@pytest.mark.parametrize(
    ("athlete", "key", "bound"),
    [
        (MIRA, "carb_ceiling_g", 720),
        (TOMAS, "carb_ceiling_g", 960),
        (MIRA, "load_total_g", 2160),
        (TOMAS, "load_total_g", 2880),
        (MIRA, "water_ceiling_l", 6.0),
        (TOMAS, "water_ceiling_l", 8.0),
        (MIRA, "step_g", 90),
        (MIRA, "change_per_day_g", 180),
        (MIRA, "apply_without_asking_g", 180),
    ],
)
def test_a_limit_may_reach_its_upper_guard_rail_and_not_pass_it(
    athlete: Athlete, key: str, bound: float
) -> None:
    assert getattr(limits(athlete, **{key: bound}), key) == bound
    with pytest.raises(OutsideGuardRail) as refused:
        limits(athlete, **{key: bound + 0.1})
    assert (refused.value.limit, refused.value.bound) == (key, bound)
    assert refused.value.source.citation in str(refused.value)


@pytest.mark.parametrize(
    ("athlete", "key", "bound"),
    [
        (MIRA, "carb_floor_g", 30),
        (TOMAS, "carb_floor_g", 40),
        (MIRA, "step_g", 5),
        (MIRA, "change_per_day_g", 0),
        (MIRA, "apply_without_asking_g", 0),
        (MIRA, "water_floor_l", 1.4),
        (TOMAS, "water_floor_l", 1.75),
    ],
)
def test_a_limit_may_reach_its_lower_guard_rail_and_not_pass_it(
    athlete: Athlete, key: str, bound: float
) -> None:
    assert getattr(limits(athlete, **{key: bound}), key) == bound
    with pytest.raises(OutsideGuardRail) as refused:
        limits(athlete, **{key: bound - 0.1})
    assert refused.value.value == bound - 0.1
    assert "at least" in str(refused.value)


def test_the_refusal_says_what_to_set_instead_and_why() -> None:
    with pytest.raises(OutsideGuardRail, match=r"at most 720 g, not 900 g: Burke et al\. 2011"):
        limits(carb_ceiling_g=900)


def test_every_rail_has_a_source_and_only_own_choices_and_practice_lack_a_publication() -> None:
    for key in LIMIT_KEYS:
        rail = GuardRails.of(MIRA).rail(key)
        assert rail.low <= rail.high
        assert rail.low_source.citation
        assert rail.high_source.citation
    published = {"carb_ceiling_g", "load_total_g", "water_floor_l", "water_ceiling_l"}
    for key in published:
        assert GuardRails.of(MIRA).rail(key).high_source.provenance in {
            Provenance.SEEN,
            Provenance.MEMORY,
        }


@pytest.mark.parametrize(
    "wrong",
    [
        {"carb_floor_g": 400, "carb_ceiling_g": 300},
        {"water_floor_l": 4.0, "water_ceiling_l": 3.0},
        {"carb_floor_g": float("nan")},
        {"load_total_g": float("inf")},
    ],
)
def test_limits_that_contradict_each_other_or_are_no_numbers_are_refused(
    wrong: dict[str, float],
) -> None:
    with pytest.raises(ValueError, match=r"is over|must be a number"):
        limits(**wrong)


def test_a_target_outside_its_window_cannot_be_made_or_replaced() -> None:
    window = Window(100, 200, "carb_floor_g", "carb_ceiling_g")
    for grams in (99.9, 200.1, float("nan"), float("inf")):
        with pytest.raises(OutOfLimits):
            Target(grams, window)
    with pytest.raises(OutOfLimits):
        replace(Target(150, window), carb_g=250)


@pytest.mark.parametrize(
    ("planned", "room", "window"),
    [
        (460, 580, Window(360, 560, "change_per_day_g", "carb_ceiling_g")),
        (400, 580, Window(300, 500, "change_per_day_g", "change_per_day_g")),
        (460, 480, Window(360, 480, "change_per_day_g", "load_total_g")),
        (110, None, Window(60, 210, "carb_floor_g", "change_per_day_g")),
        (180, None, Window(80, 280, "change_per_day_g", "change_per_day_g")),
    ],
)
def test_the_window_is_the_tightest_of_the_bounds_and_names_them(
    planned: float, room: float | None, window: Window
) -> None:
    assert limits().window(planned, room) == window


def test_no_window_is_left_where_the_limits_contradict_the_plan() -> None:
    assert limits(carb_ceiling_g=300).window(460, 580) is None
    assert limits().window(460, 200) is None


@pytest.mark.parametrize(
    ("wanted", "got", "bound"),
    [
        (150, 150, None),
        (90, 100, "floor"),
        (230, 200, "ceiling"),
        (100, 100, None),
        (200, 200, None),
    ],
)
def test_a_wish_is_fitted_last_and_the_bound_that_held_is_named(
    wanted: float, got: float, bound: str | None
) -> None:
    fitted = fit(wanted, Window(100, 200, "floor", "ceiling"))
    assert (fitted.target.carb_g, fitted.bound, fitted.wanted_g) == (got, bound, wanted)


def test_a_figure_is_rounded_to_five_grams_with_halves_up() -> None:
    rounded = [round_carbs(g) for g in (0, 2.4, 2.5, 7.4, 437, 462.5)]
    assert rounded == [0, 0, 5, 5, 435, 465]


@pytest.mark.parametrize(
    ("bad", "day", "key", "limit"),
    [
        (WEEK.with_carbs(5, 40), 5, "carb_g", "carb_floor_g"),
        (WEEK.with_carbs(0, 600), 0, "carb_g", "carb_ceiling_g"),
        (WEEK.with_carbs(2, 560).with_carbs(1, 560), None, "carb_g", "load_total_g"),
    ],
)
def test_a_plan_that_does_not_fit_is_told_by_day_key_and_bound(
    bad: PeakPlan, day: int | None, key: str, limit: str
) -> None:
    (problem,) = plan_problems(bad, limits())
    assert (problem.days_out, problem.key, problem.limit) == (day, key, limit)
    assert LIMIT_KEYS[limit].label in str(problem)
    assert str(problem).startswith("The load:" if day is None else f"{day} days out:")
    assert ("under" if "floor" in limit else "over") in str(problem)


def test_a_plan_may_use_every_limit_up_to_its_edge() -> None:
    edges = limits(carb_floor_g=110, carb_ceiling_g=460, load_total_g=1380)
    assert plan_problems(WEEK, edges) == ()


def test_with_no_change_allowed_the_plan_is_the_only_figure() -> None:
    window = limits(change_per_day_g=0).window(460, 580)
    assert window is not None
    assert (window.low, window.high) == (460, 460)


def test_too_little_and_too_much_water_in_a_plan_are_told() -> None:
    dry = plan_problems(plan(110, 110, 110, 110, 460, 460, 460, 180, water_l=1), limits())
    assert {problem.limit for problem in dry} == {"water_floor_l"}
    assert len(dry) == 8
    flooded = plan_problems(plan(110, 110, 110, 110, 460, 460, 460, 180, water_l=5), limits())
    assert {problem.limit for problem in flooded} == {"water_ceiling_l"}
    assert plan_problems(WEEK, limits()) == ()


@given(
    body_mass=st.floats(30, 250),
    sex=st.sampled_from(Sex),
    carbs=st.lists(st.floats(0, 1500), min_size=8, max_size=8),
    water=st.floats(0, 15),
)
def test_suggested_limits_exist_for_every_plan_and_hold_it_where_the_rails_do(
    body_mass: float, sex: Sex, carbs: list[float], water: float
) -> None:
    athlete = Athlete(sex=sex, birth_year=1990, height_cm=170, body_mass_kg=body_mass)
    week = plan(*carbs, water_l=water)
    suggested = Limits.suggested(athlete, week, HABIT)
    rails = GuardRails.of(athlete)
    for problem in plan_problems(week, suggested):
        rail = rails.rail(problem.limit)
        # within one rounding grain of the rail, or past it: only the rail may shut a plan out
        grain = 5 if problem.key == "carb_g" else 0.05
        assert (
            problem.bound in {rail.low, rail.high}
            or min(abs(problem.bound - rail.low), abs(problem.bound - rail.high)) < grain + 1e-6
        )


def test_suggested_limits_leave_room_for_a_step_each_way() -> None:
    suggested = Limits.suggested(MIRA, WEEK, HABIT)
    assert suggested.step_g == 25
    assert suggested.carb_floor_g <= 110 - suggested.step_g
    assert suggested.carb_ceiling_g >= 460 + 2 * suggested.step_g
    assert suggested.load_total_g >= 3 * 460 + suggested.step_g
    assert suggested.apply_without_asking_g == suggested.step_g


@pytest.mark.parametrize("athlete", [MIRA, TOMAS], ids=["60 kg", "80 kg"])
@pytest.mark.parametrize("mean", [3, 5, 7, 8.2, 9.4])
def test_suggested_limits_leave_room_for_what_may_be_needed_and_little_goes_out_alone(
    athlete: Athlete, mean: float
) -> None:
    # A usual load is 7 to 8.2 g/kg a day (Areta 2018, Sedlock 2008); up to 12 is published
    # (Burke 2011), and coaches' loads run from 3 to 12 (Escalante 2021).
    kg = athlete.body_mass_kg
    load = [round_carbs(mean * kg)] * 3
    week = plan(110, 110, 110, 110, *load, 180)
    suggested = Limits.suggested(athlete, week, HABIT)
    assert suggested.change_per_day_g == pytest.approx(3 * kg, abs=5)
    assert suggested.load_total_g - sum(load) >= 2.5 * kg
    assert suggested.load_total_g - sum(load) == pytest.approx(7.5 * kg, abs=5)
    assert suggested.carb_ceiling_g - load[0] >= 2.5 * kg
    assert suggested.apply_without_asking_g <= 0.5 * kg


def test_a_load_past_its_total_gets_a_total_around_it_and_nothing_else_changes() -> None:
    tight = limits(load_total_g=1400)
    assert tight.with_room_for(WEEK) == tight
    larger = WEEK.with_carbs(3, 540).with_carbs(2, 540)
    roomy = tight.with_room_for(larger)
    assert roomy == replace(tight, load_total_g=roomy.load_total_g)
    assert roomy.load_total_g == 540 + 540 + 460 + 7.5 * 60
    most = plan(110, 110, 110, 110, 719, 719, 719, 180)
    assert limits(load_total_g=1400).with_room_for(most).load_total_g == 2160  # 36 g/kg


# --- what limits cost ------------------------------------------------------------------------


def room(**changed: float) -> Room:
    found = room_to_correct(WEEK, limits(**({"carb_ceiling_g": 720.0} | changed)))
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("changed", "up_g", "down_g", "share"),
    [
        # A 60 kg athlete may need 180 g a day, 3 g/kg.
        ({"change_per_day_g": 60, "load_total_g": 2160}, 60, 60, 1 / 3),
        ({"change_per_day_g": 180, "load_total_g": 2160}, 180, 180, 1),
        ({"change_per_day_g": 180, "load_total_g": 1380 + 90}, 30, 180, 1 / 6),
        ({"change_per_day_g": 180, "load_total_g": 1200}, 0, 180, 0),
        ({"change_per_day_g": 180, "load_total_g": 2160, "carb_floor_g": 400}, 180, 60, 1 / 3),
        ({"change_per_day_g": 180, "load_total_g": 2160, "carb_ceiling_g": 550}, 90, 180, 1 / 2),
        ({"change_per_day_g": 0}, 0, 0, 0),
        ({"change_per_day_g": 180, "load_total_g": 2160, "carb_ceiling_g": 460}, 0, 180, 0),
        ({"change_per_day_g": 180, "load_total_g": 2160, "carb_floor_g": 460}, 180, 0, 0),
    ],
)
def test_the_tightest_of_the_limits_says_how_far_a_load_can_be_corrected(
    changed: dict[str, float], up_g: float, down_g: float, share: float
) -> None:
    found = room(**changed)
    assert (found.up_g, found.down_g) == (pytest.approx(up_g), pytest.approx(down_g))
    assert found.share == pytest.approx(share)


def test_suggested_limits_cover_most_of_what_may_be_needed() -> None:
    found = room_to_correct(WEEK, Limits.suggested(MIRA, WEEK, HABIT))
    assert found is not None
    assert found.share > 0.8


def test_where_the_guard_rail_leaves_less_than_the_need_that_less_is_all() -> None:
    most = plan(110, 110, 110, 110, 700, 700, 700, 180)
    found = room_to_correct(most, Limits.suggested(MIRA, most, HABIT))
    assert found is not None
    assert found.up_g == pytest.approx(20)
    assert found.up_share == 1
    full = plan(110, 110, 110, 110, 720, 720, 720, 180)
    none = room_to_correct(full, Limits.suggested(MIRA, full, HABIT))
    assert none is not None
    assert (none.up_g, none.up_share) == (0, 1), "nothing is left, and nothing more could be"


def test_a_plan_without_a_load_has_no_room_to_speak_of() -> None:
    before = PeakPlan(tuple(day for day in WEEK if day.days_out > 3))
    assert room_to_correct(before, limits()) is None
