"""Which figure stands once a morning is judged: decided, held back, or kept."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from engine.decision.decide import Outcome, decide, decision_as_dict
from engine.decision.reason import reason
from engine.safety import Level
from engine.values.case import Case
from engine.values.checkin import CheckIn
from engine.values.limits import Limits, Window, fit
from engine.values.plan import PeakPlan
from tests.engine.test_decide import answering, case, limited

# --- where a gate decides -----------------------------------------------------------------------


def test_what_is_kept_needs_no_answer_and_is_said() -> None:
    frozen = decide(replace(case(), frozen=True))
    assert (frozen.outcome, frozen.carb_g, frozen.lapse_g) == (Outcome.HELD, 460, 460)
    assert not frozen.needs_sign_off
    assert frozen.trace.wanted_g == 460 and frozen.trace.bound is None
    cut = decide(replace(limited(case(), carb_ceiling_g=450), frozen=True))
    assert (cut.carb_g, cut.bound) == (450, "carb_ceiling_g")
    assert cut.trace.window == Window(360, 450, "change_per_day_g", "carb_ceiling_g")


def test_where_nothing_can_stand_there_is_no_change_either() -> None:
    gone = decide(answering(case(), date=date(2026, 12, 1)))
    assert (gone.carb_g, gone.lapse_g, gone.change_g, gone.planned_carb_g) == (None, None, 0, None)
    conflict = decide(limited(case(), carb_ceiling_g=300))
    assert (conflict.carb_g, conflict.change_g, conflict.planned_carb_g) == (None, 0, 460)
    record = decision_as_dict(gone)
    assert (record["carb_g"], record["change_g"]) == (None, 0)


def test_in_a_warning_a_day_without_a_plan_keeps_what_the_coach_signed() -> None:
    ill = answering(case(), symptoms=("chest-pain",))
    gap = PeakPlan(tuple(day for day in ill.plan if day.days_out != 2))
    decision = decide(replace(ill, plan=gap, overrides={2: 300.0}))
    assert (decision.outcome, decision.carb_g) == (Outcome.ESCALATED, 300)
    assert decide(replace(ill, plan=gap)).carb_g is None


def test_a_frozen_day_keeps_a_signed_figure_over_the_plans() -> None:
    assert decide(replace(case(), frozen=True, overrides={2: 520.0})).carb_g == 520


# --- where a rule decides -----------------------------------------------------------------------


def test_a_change_is_adjusted_and_no_change_is_held() -> None:
    assert decide(case()).outcome is Outcome.ADJUSTED
    assert decide(case("full-and-sharp")).outcome is Outcome.HELD
    bound = decide(limited(case(), change_per_day_g=0))
    assert (bound.outcome, bound.change_g, bound.bound) == (Outcome.HELD, 0, "change_per_day_g")
    assert "more is not allowed today" in reason(bound)


def test_a_caution_holds_a_raise_and_an_advisory_does_not() -> None:
    short = answering(case(), sleep_h=4.0)
    night = replace(short.history.checkins[-1], sleep_h=4.0)
    told = replace(short.history, checkins=(*short.history.checkins[:-1], night))
    advised = decide(replace(short, history=told))
    assert [flag.level for flag in advised.flags] == [Level.ADVISORY]
    assert advised.change_g == 25
    assert decide(answering(case(), urine_colour=7)).change_g == 0


def test_a_caution_beside_an_advisory_holds_a_raise_too() -> None:
    both = answering(case(), urine_colour=7, symptoms=("cramps",))
    assert {flag.level for flag in decide(both).flags} == {Level.CAUTION, Level.ADVISORY}
    assert decide(both).change_g == 0


def test_a_caution_on_a_plan_that_the_limits_cut_keeps_what_they_leave() -> None:
    low = limited(answering(case(), urine_colour=8), carb_ceiling_g=450)
    decision = decide(low)
    assert (decision.carb_g, decision.bound) == (450, "carb_ceiling_g")


def test_what_was_asked_for_and_what_was_left_are_both_kept() -> None:
    trace = decide(limited(case(), carb_ceiling_g=470)).trace
    assert (trace.steps, trace.rule_g, trace.asked_g, trace.wanted_g) == (1, 25, 25, 485)
    assert trace.forecast_g is None and not trace.disagree
    cut = decide(limited(case(), carb_ceiling_g=470))
    assert (cut.bound, cut.change_g) == ("carb_ceiling_g", 10)
    assert "so eat 10 g more today" in reason(cut)


@pytest.mark.parametrize(
    ("out", "known"), [(8, True), (9, False), (0, True), (-1, False)]
)  # fmt: skip
def test_band_and_expectation_are_told_from_the_evening_before_the_plan_to_the_event(
    out: int, known: bool
) -> None:
    day = date(2026, 11, 28 - out) if out >= 0 else date(2026, 11, 29)
    evening = replace(answering(case(), date=day), always_tomorrow=True)
    decision = decide(evening)
    assert (decision.band is not None) is known
    assert (decision.expected_fullness is not None) is known


def test_what_decided_is_named_first_among_the_sources() -> None:
    flagged = decide(answering(case("spilled-over"), urine_colour=8))
    ids = [source.id for source in flagged.sources]
    assert ids[0] == "common-practice" and "armstrong-1994" in ids


# --- what goes out without asking --------------------------------------------------------------


@pytest.mark.parametrize(
    ("planned", "wanted", "alone", "goes_out"),
    [
        (460, 485, 25, 485),  # the whole of it
        (460, 485, 20, 480),
        (460, 485, 22, 480),  # in round figures
        (460, 485, 0, 460),
        (460, 435, 25, 435),
        (460, 435, 20, 440),
        (460, 435, 22, 440),
        (460, 435, 0, 460),
        (437, 462, 25, 462),  # a bound that nobody weighs out, and inside what may go out
        (437, 485, 20, 455),
        (437, 385, 20, 420),
        (460, 460, 0, 460),
    ],
)
def test_a_small_step_of_a_change_is_as_far_as_it_may_go_unasked(
    planned: float, wanted: float, alone: float, goes_out: float
) -> None:
    limits = replace(_limits(), apply_without_asking_g=alone)
    window = Window(100, 600, "carb_floor_g", "carb_ceiling_g")
    assert limits.small_step(fit(wanted, window).target, planned) == goes_out


@pytest.mark.parametrize(
    ("low", "high", "wanted", "goes_out"),
    [
        (100, 400, 350, 400),  # the plan's 460 g is over what is left: nearest to it
        (100, 400, 400, 400),
        (500, 600, 550, 500),
        (500, 600, 500, 500),
    ],
)
def test_where_the_plan_is_shut_out_the_nearest_to_it_goes_out(
    low: float, high: float, wanted: float, goes_out: float
) -> None:
    limits = replace(_limits(), apply_without_asking_g=10)
    window = Window(low, high, "carb_floor_g", "load_total_g")
    assert limits.small_step(fit(wanted, window).target, 460) == goes_out


def _limits() -> Limits:
    return case().limits


# --- the day that is set ------------------------------------------------------------------------


def test_a_figure_set_for_a_day_that_has_begun_is_that_days() -> None:
    late = replace(case(), now=datetime(2026, 11, 26, 12, tzinfo=UTC))
    decision = decide(late)
    assert (decision.date, decision.sets_date) == (date(2026, 11, 26), date(2026, 11, 27))
    assert (decision.days_out, decision.planned_carb_g) == (1, 460)


def test_an_empty_morning_is_no_reason_to_raise() -> None:
    blank: Case = replace(case(), checkin=CheckIn(date=date(2026, 11, 26)))
    decision = decide(blank)
    assert (decision.outcome, decision.change_g, decision.carb_g) == (Outcome.HELD, 0, 460)
