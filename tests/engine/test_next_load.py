"""The load suggested for the next week: learnt from looks, inside limits, the same asked again."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

import pytest

from engine.evidence import deciding
from engine.planning.behind.next_load import (
    Ahead,
    ModelMisfit,
    NextLoad,
    NothingLearnt,
    goes_against,
    load_g_per_kg,
    next_load,
)
from engine.planning.drafting.draft import Asked, draft_plan
from engine.values.athlete import Athlete, Baseline, Sex
from engine.values.case import PastWeek
from engine.values.checkin import CheckIn, DaySet, History, Look
from engine.values.limits import GUARD_RAIL, Limits, plan_problems
from engine.values.plan import LOAD_DAYS, PeakPlan, Phase
from tests.support.twice import made_twice

MIRA = Athlete(
    sex=Sex.FEMALE, birth_year=1996, height_cm=165, body_mass_kg=61.2, body_fat_percent=14
)
HABIT = Baseline(carb_g=310, protein_g=140, fat_g=55, fibre_g=25, water_l=3.5, sodium_mg=2300)
PLAN = draft_plan(MIRA, HABIT, Asked("even", 7.0))
WIDE = replace(Limits.suggested(MIRA, PLAN, HABIT), carb_floor_g=70, load_total_g=1800)
TRIAL = date(2027, 4, 4)
#: A week of mornings that the model finds likely: down while depleting, up with the load.
WEIGHTS = {7: 61.2, 6: 60.9, 5: 60.6, 4: 60.4, 3: 60.3, 2: 61.0, 1: 61.7, 0: 62.0}


def trial(look: Look | None, *, day: date = TRIAL, off_kg: float = 0.0) -> PastWeek:
    checkins = tuple(
        CheckIn(date=day - timedelta(days=out), weight_kg=kg + off_kg * (out < 4))
        for out, kg in WEIGHTS.items()
    )
    return PastWeek(day=day, plan=PLAN, history=History(checkins=checkins), look=look)


def suggested(
    weeks: Sequence[PastWeek], plan: PeakPlan = PLAN, limits: Limits | None = WIDE
) -> NextLoad:
    return next_load(MIRA, HABIT, plan, weeks, Ahead(limits))


def planned(mean_g_per_kg: float) -> PeakPlan:
    return draft_plan(MIRA, HABIT, Asked("even", mean_g_per_kg))


def test_flat_on_a_small_load_asks_for_more_and_spilled_over_on_a_large_one_for_less() -> None:
    for look, mean, sign in ((Look.FLAT, 5.5, 1), (Look.SPILLED, 8.5, -1)):
        plan = planned(mean)
        found = suggested([replace(trial(look), plan=plan)], plan, None)
        assert sign * (found.g_per_kg - found.before_g_per_kg) > 0.3
        assert found.after.full > found.before.full
        for odds in (found.before, found.after):
            assert odds.flat + odds.full + odds.spilled == pytest.approx(1)


@pytest.mark.parametrize(
    ("look", "mean"), [(Look.FLAT, 9.5), (Look.SPILLED, 5.5), (Look.FULL, 9.5)]
)
def test_the_coachs_word_gives_the_direction_whatever_the_model_thinks(
    look: Look, mean: float
) -> None:
    plan = planned(mean)
    found = suggested([replace(trial(look), plan=plan)], plan, None)
    moved = found.g_per_kg - found.then_g_per_kg
    if look is Look.FLAT:
        assert moved >= 0
    elif look is Look.SPILLED:
        assert moved <= 0
    else:
        assert moved == 0
    # The model would have gone the other way but for the spill, which it has come to expect.
    assert found.disagrees is (look is Look.FLAT)
    assert found.changes is (found.plan != plan) is (look is Look.SPILLED)


def moved(plan_mean: float, by_g: float, look: Look = Look.FULL) -> PastWeek:
    """A trial whose mornings set every load day that far from its plan."""
    plan = planned(plan_mean)
    set_days = tuple(
        DaySet(TRIAL - timedelta(days=day.days_out), day.carb_g + by_g)
        for day in plan
        if day.days_out in LOAD_DAYS
    )
    week = trial(look)
    return replace(week, plan=plan, history=replace(week.history, set_days=set_days))


@pytest.mark.parametrize(
    ("look", "wish_g", "planned_g", "against"),
    [
        (Look.FLAT, 1399, 1400, True),  # flat on 1,400 g: never less
        (Look.FLAT, 1400, 1300, False),
        (Look.FLAT, 1500, 1400, False),
        (Look.SPILLED, 1401, 1400, True),  # spilled over on it: never more
        (Look.SPILLED, 1400, 1500, False),
        (Look.SPILLED, 1300, 1400, False),
        (Look.FULL, 1400, 1400, False),  # full on it: the same
        (Look.FULL, 1401, 1400, True),
        (Look.FULL, 1399, 1400, True),
        # or towards the plan that it had been moved from, on either side
        (Look.FULL, 1500, 1500, False),
        (Look.FULL, 1501, 1500, True),
        (Look.FULL, 1399, 1500, True),
        (Look.FULL, 1300, 1300, False),
        (Look.FULL, 1299, 1300, True),
        (Look.FULL, 1401, 1300, True),
    ],
)
def test_a_load_goes_against_the_word_by_a_gram(
    look: Look, wish_g: float, planned_g: float, against: bool
) -> None:
    assert goes_against(look, then_g=1400, wish_g=wish_g, planned_g=planned_g) is against


def test_a_load_is_told_as_its_mean_day() -> None:
    assert load_g_per_kg(PLAN, 61.2) == pytest.approx(_load(PLAN) / 3 / 61.2)
    assert load_g_per_kg(PeakPlan(()), 61.2) == 0


def test_a_new_plan_is_judged_by_the_load_that_the_word_was_said_of() -> None:
    behind = [replace(trial(Look.FULL), plan=PLAN)]
    larger = planned(9.5)
    found = suggested(behind, larger, None)
    assert found.before_g_per_kg == pytest.approx(9.5, abs=0.05)
    assert found.g_per_kg == pytest.approx(found.then_g_per_kg, abs=0.05)


def test_asked_again_it_says_the_same() -> None:
    one, other = made_twice(lambda: suggested([trial(Look.SPILLED)]))
    assert one == other


def test_only_the_load_days_are_moved_and_in_figures_that_can_be_weighed_out() -> None:
    plan = planned(8.5)
    found = suggested([replace(trial(Look.SPILLED), plan=plan)], plan)
    for was, now in zip(plan, found.plan, strict=True):
        if was.days_out in LOAD_DAYS:
            assert now == replace(was, carb_g=now.carb_g)
            assert now.carb_g % 5 == 0
        else:
            assert now == was


@pytest.mark.parametrize(
    ("changes", "bound"),
    [
        ({"carb_ceiling_g": 370.0}, "carb_ceiling_g"),
        ({"change_per_day_g": 30.0}, "change_per_day_g"),
        ({"change_per_day_g": 33.0}, "change_per_day_g"),  # in figures that can be weighed out
    ],
)
def test_a_limit_holds_the_load_back_and_is_named(changes: dict[str, float], bound: str) -> None:
    limits, plan = replace(WIDE, **changes), planned(5.5)  # type: ignore[arg-type]
    found = suggested([replace(trial(Look.FLAT), plan=plan)], plan, limits)
    assert plan_problems(found.plan, limits) == ()
    assert found.bound == bound
    assert found.changes and found.plan != plan
    # Nobody gets a load whose last day pays for the first.
    days = [found.plan.day(out) for out in LOAD_DAYS]
    carbs = [day.carb_g for day in days if day is not None]
    assert max(carbs) - min(carbs) <= 5


@pytest.mark.parametrize(
    ("changes", "bound", "carb_g"),
    [
        ({"carb_floor_g": 520.0}, "carb_floor_g", 520),
        ({"carb_floor_g": 523.0}, "carb_floor_g", 525),  # the first round figure over it
        ({"change_per_day_g": 30.0}, "change_per_day_g", 520),  # of 550 planned
        ({"change_per_day_g": 33.0}, "change_per_day_g", 520),
        ({"carb_floor_g": 547.0, "carb_ceiling_g": 549.0}, "carb_floor_g", 547),
    ],
)
def test_a_cut_is_held_back_by_floor_and_change(
    changes: dict[str, float], bound: str, carb_g: float
) -> None:
    plan = planned(9.0)
    limits = replace(WIDE, **{"load_total_g": 2000.0, **changes})  # type: ignore[arg-type]
    found = suggested([replace(trial(Look.SPILLED), plan=plan)], plan, limits)
    assert {d.carb_g for d in found.plan if d.days_out in LOAD_DAYS} == {carb_g}
    assert found.bound == bound


def uneven(*carbs: float) -> PeakPlan:
    plan = PLAN
    for out, carb_g in zip(LOAD_DAYS, carbs, strict=True):
        plan = plan.with_carbs(out, carb_g)
    return plan


@pytest.mark.parametrize(
    ("carbs", "changes", "bound"),
    [
        ((450.0, 300.0, 150.0), {"carb_ceiling_g": 480.0, "change_per_day_g": 25.0}, 475),
        ((150.0, 450.0, 300.0), {"carb_ceiling_g": 460.0, "change_per_day_g": 25.0}, 460),
    ],
)
def test_of_several_days_held_back_the_heaviest_says_by_what(
    carbs: tuple[float, ...], changes: dict[str, float], bound: float
) -> None:
    plan = uneven(*carbs)
    limits = replace(WIDE, **changes)  # type: ignore[arg-type]
    found = suggested([replace(trial(Look.FLAT), plan=plan)], plan, limits)
    heaviest = max(day.carb_g for day in found.plan if day.days_out in LOAD_DAYS)
    assert heaviest == bound
    assert found.bound == ("carb_ceiling_g" if bound == 460 else "change_per_day_g")


def test_a_heavy_day_of_a_load_stops_at_the_guard_rail_and_the_others_go_on() -> None:
    # 12 g/kg of 61.2 kg are 734.4 g: Burke LM et al. 2011, J Sports Sci 29(S1):S17-27.
    plan = uneven(700.0, 250.0, 250.0)
    found = suggested([replace(trial(Look.FLAT), plan=plan)], plan, None)
    carbs = [d.carb_g for d in found.plan if d.days_out in LOAD_DAYS]
    assert found.bound == GUARD_RAIL
    assert carbs[0] == 730
    assert carbs[1] == carbs[2] > 300


def test_a_week_whose_look_nobody_has_said_leaves_the_word_to_the_one_before() -> None:
    plan = planned(5.5)
    unseen = trial(None, day=TRIAL + timedelta(21))
    weeks = [replace(trial(Look.FLAT), plan=plan), replace(unseen, plan=planned(7.0))]
    found = suggested(weeks, plan, None)
    assert (found.look, found.changes) == (Look.FLAT, True)
    assert found.then_g_per_kg == pytest.approx(5.5, abs=0.05)


def test_the_load_total_of_the_week_behind_does_not_bind_the_next_load() -> None:
    plan = planned(5.5)
    tight = replace(WIDE, load_total_g=_load(plan) + 10.0)
    flat = [replace(trial(Look.FLAT), plan=plan)]
    found, free = suggested(flat, plan, tight), suggested(flat, plan, None)
    assert _load(found.plan) > tight.load_total_g + 60
    assert found.plan == free.plan


def test_after_two_loads_that_stayed_flat_a_gram_or_two_per_kg_more_is_offered() -> None:
    plan = planned(5.5)
    weeks = [
        replace(trial(Look.FLAT, day=TRIAL + timedelta(21 * number)), plan=plan)
        for number in range(2)
    ]
    found = suggested(weeks, plan, Limits.suggested(MIRA, plan, HABIT))
    assert found.g_per_kg - found.before_g_per_kg > 1.0
    most = Limits.suggested(MIRA, plan, HABIT).change_per_day_g
    for was, now in zip(plan, found.plan, strict=True):
        assert abs(now.carb_g - was.carb_g) <= most


def _load(plan: PeakPlan) -> float:
    return sum(day.carb_g for day in plan if day.days_out in LOAD_DAYS)


def test_without_limits_the_guard_rail_bounds_it() -> None:
    # At most 12 g/kg on a day: Burke LM et al. 2011, J Sports Sci 29(S1):S17-27 give 10 to 12.
    heavy = planned(11.8)
    found = suggested([replace(trial(Look.FLAT), plan=heavy)], heavy, None)
    most = deciding.CARB_MOST_G_PER_KG.value * MIRA.body_mass_kg
    assert all(day.carb_g <= most for day in found.plan)
    assert found.bound in (None, GUARD_RAIL)


def test_after_a_cut_that_was_not_enough_the_next_is_no_larger() -> None:
    weeks = [
        replace(trial(Look.SPILLED, day=TRIAL + timedelta(21 * k)), plan=planned(mean))
        for k, mean in enumerate((9.0, 8.5))
    ]
    found = suggested(weeks, planned(8.5), None)
    assert 7.9 <= found.g_per_kg < 8.5
    assert suggested(weeks[1:], planned(8.5), None).g_per_kg < found.g_per_kg
    assert not found.disagrees
    flat_before = replace(trial(Look.FLAT, day=TRIAL - timedelta(21)), plan=planned(8.0))
    assert suggested([flat_before, *weeks], planned(8.5), None).g_per_kg >= 7.9


def test_a_load_that_was_raised_again_after_a_spill_may_be_cut_as_far_as_it_takes() -> None:
    weeks = [
        replace(trial(Look.SPILLED, day=TRIAL + timedelta(21 * k)), plan=planned(mean))
        for k, mean in enumerate((8.5, 9.0))
    ]
    assert suggested(weeks, planned(9.0), None).g_per_kg < 8.5


def test_what_a_week_has_taught_is_forgotten_with_time() -> None:
    """Two trials: the longer ago the first, the less is known for sure of how the next comes in."""

    def spilled(days: int) -> float:
        earlier = trial(Look.SPILLED, day=TRIAL - timedelta(days))
        return suggested([earlier, trial(Look.SPILLED)]).before.spilled

    assert spilled(21) > spilled(700)


def test_more_weeks_behind_make_the_chances_surer() -> None:
    weeks = [trial(Look.SPILLED, day=TRIAL + timedelta(21 * k)) for k in range(2)]
    once, twice = (suggested(weeks[:count]).before.spilled for count in (1, 2))
    assert twice > once


def test_without_a_word_on_any_look_nothing_is_suggested() -> None:
    for weeks in ([], [trial(None)]):
        with pytest.raises(NothingLearnt):
            suggested(weeks)


@pytest.mark.parametrize("out", LOAD_DAYS)
def test_a_plan_without_a_whole_load_is_not_scaled(out: int) -> None:
    as_of_old = (replace(day, phase=None) for day in PLAN)  # its load lies where it always did
    gap = PeakPlan(tuple(day for day in as_of_old if day.days_out != out))
    with pytest.raises(NothingLearnt):
        suggested([trial(Look.FLAT)], gap)


def test_a_plan_without_any_load_is_not_scaled_and_one_without_the_day_itself_is() -> None:
    phases = {0: Phase.EVENT}
    none = PeakPlan(
        tuple(replace(d, phase=phases.get(d.days_out, Phase.DEPLETION)) for d in PLAN)
    )  # fmt: skip
    with pytest.raises(NothingLearnt):
        suggested([trial(Look.FLAT)], none)
    one = none.with_day(replace(none.days[-2], phase=Phase.LOAD, carb_g=600.0))
    assert suggested([replace(trial(Look.FLAT), plan=one)], one).g_per_kg >= 600 / 61.2
    before = PeakPlan(tuple(day for day in PLAN if day.days_out > 0))
    assert suggested([trial(Look.SPILLED)], before).changes


@pytest.mark.parametrize("look", Look)
def test_a_load_of_nothing_stays_as_small_as_it_may_be(look: Look) -> None:
    plan = uneven(0.0, 0.0, 0.0)
    found = suggested([replace(trial(look), plan=plan)], plan, None)
    least = deciding.CARB_LEAST_G_PER_KG.value * MIRA.body_mass_kg
    assert all(d.carb_g == least for d in found.plan if d.days_out in LOAD_DAYS)


def test_a_model_that_the_last_weights_contradict_is_not_asked() -> None:
    with pytest.raises(ModelMisfit):
        suggested([trial(Look.FLAT, off_kg=5.0)])


def test_the_load_as_it_went_has_the_figures_set_on_the_mornings() -> None:
    history = History(
        checkins=trial(Look.FULL).history.checkins,
        set_days=(DaySet(TRIAL - timedelta(5), 300.0), DaySet(TRIAL - timedelta(2), 425.0)),
    )
    went = replace(trial(Look.FULL), history=history).as_it_went
    assert went.day(2) == replace(PLAN.day(2), carb_g=425.0)  # type: ignore[type-var]
    assert went.day(5) == PLAN.day(5)
