"""Deciding with the model's forecast: sized by it, vetoed by the rules, bounded by the limits."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from engine.decision.beliefs import trained
from engine.decision.decide import Decision, case_as_dict, case_from_dict, decide, decision_as_dict
from engine.decision.foresight import stakes_of
from engine.model.particles import Covariates
from engine.model.physiology import Exercise, Intake, Row
from engine.model.tracker import after_day, first_belief, generator
from engine.planning.drafting.draft import Asked, draft_plan
from engine.values.athlete import Athlete, Baseline, Event, EventKind, Sex
from engine.values.case import Case, ForecastUse, PastWeek
from engine.values.checkin import CheckIn, DaySet, Gut, History, Look, TrainingDone, training_spread
from engine.values.limits import Limits
from tests.support.twice import made_twice

WHO = Athlete(
    sex=Sex.FEMALE, birth_year=1996, height_cm=165, body_mass_kg=60, body_fat_percent=14
)  # fmt: skip
HABIT = Baseline(carb_g=280, protein_g=140, fat_g=55, fibre_g=25, water_l=3.5, sodium_mg=2300)
DAY = date(2027, 5, 9)
PLAN = draft_plan(WHO, HABIT)
LIMITS = Limits.suggested(WHO, PLAN, HABIT)
WEIGHTS = {7: 60.0, 6: 59.6, 5: 59.3, 4: 59.1, 3: 58.9, 2: 59.3, 1: 59.8}


def checkin(days_out: int, **more: object) -> CheckIn:
    answers: dict[str, object] = {
        "date": DAY - timedelta(days=days_out),
        "weight_kg": WEIGHTS[days_out],
        "fullness": 4,
        "sharpness": 4 if days_out <= 3 else None,
        "water_l": 3.5,
    }
    return CheckIn(**(answers | more))  # type: ignore[arg-type]


def case(days_out: int, *, first: int = 7, **more: object) -> Case:
    """The week as planned up to the morning that many days out; `more` changes its answers."""
    earlier = tuple(checkin(out) for out in range(first, days_out, -1))
    set_days = tuple(
        DaySet(DAY - timedelta(days=out), day.carb_g)
        for out in range(7, days_out, -1)
        if (day := PLAN.day(out)) is not None
    )
    return Case(
        athlete=WHO,
        baseline=HABIT,
        event=Event(kind=EventKind.SHOW, day=DAY, zone="Europe/London"),
        plan=PLAN,
        limits=LIMITS,
        history=History(checkins=earlier, set_days=set_days),
        checkin=checkin(days_out, **more),
        forecast=ForecastUse.PROPOSES,
    )


def trial(look: Look, *, sharpness: int, weeks_before: int = 4) -> PastWeek:
    """The same week some weeks before, and how its day looked."""
    back = timedelta(weeks=weeks_before)
    told = tuple(
        replace(
            checkin(out, sharpness=sharpness if out <= 2 else None), date=checkin(out).date - back
        )
        for out in range(7, 0, -1)
    )
    return PastWeek(day=DAY - back, plan=PLAN, history=History(checkins=told), look=look)


def foreseen(decision: Decision) -> tuple[float, float, float]:
    assert decision.foresight is not None and decision.foresight.planned is not None
    odds = decision.foresight.planned
    return odds.flat, odds.full, odds.spilled


def test_the_same_case_gives_the_same_forecast() -> None:
    one, other = made_twice(lambda: decision_as_dict(decide(case(2))))
    assert one == other


def test_once_a_week_was_looked_at_less_is_dared() -> None:
    """Common practice: what has been practised is not moved on one morning's word."""
    weeks = [trial(Look.FULL, sharpness=4, weeks_before=back) for back in (9, 6, 3)]
    losses = [stakes_of(replace(case(2), trials=tuple(weeks[:n]))).loss for n in range(4)]
    assert losses[0] < losses[1] == losses[2] == losses[3]
    unseen = replace(weeks[0], look=None)
    assert stakes_of(replace(case(2), trials=(unseen, weeks[1]))).loss == losses[1]


def test_a_stored_case_with_its_trials_replays_to_the_same_decision() -> None:
    whole = replace(case(2), trials=(trial(Look.SPILLED, sharpness=2),))
    assert decision_as_dict(decide(case_from_dict(case_as_dict(whole)))) == decision_as_dict(
        decide(whole)
    )


def test_the_odds_of_a_day_add_up_to_one() -> None:
    assert sum(foreseen(decide(case(2)))) == pytest.approx(1, abs=1e-6)


def test_with_too_few_mornings_the_rules_decide_alone_and_it_says_so() -> None:
    alone = decide(replace(case(2, first=2), forecast=ForecastUse.RULES_ONLY))
    with_model = decide(case(2, first=2))
    assert with_model.foresight is not None and not with_model.foresight.trusted
    assert "too few mornings" in with_model.foresight.why_not
    assert (with_model.carb_g, with_model.rule) == (alone.carb_g, alone.rule)


def test_a_trial_stands_in_for_mornings() -> None:
    known = replace(case(2, first=2), trials=(trial(Look.FULL, sharpness=4),))
    view = decide(known).foresight
    assert view is not None and view.trusted


def test_a_model_surprised_three_mornings_running_is_not_used() -> None:
    week = case(2)
    odd = tuple(
        replace(c, weight_kg=(c.weight_kg or 0) + (3.0 if i % 2 else -3.0))
        for i, c in enumerate(week.history.checkins)
    )
    surprised = replace(
        week,
        history=replace(week.history, checkins=odd),
        checkin=replace(week.checkin, weight_kg=62.5),
    )
    view = decide(surprised).foresight
    assert view is not None and not view.trusted and "three mornings" in view.why_not


def test_a_trial_that_spilled_makes_the_next_load_look_riskier_than_one_that_stayed_flat() -> None:
    spilled = decide(replace(case(2), trials=(trial(Look.SPILLED, sharpness=2),)))
    flat = decide(replace(case(2), trials=(trial(Look.FLAT, sharpness=4),)))
    assert foreseen(spilled)[2] > foreseen(flat)[2] + 0.05
    assert spilled.carb_g is not None and flat.carb_g is not None
    assert spilled.carb_g <= flat.carb_g


@pytest.mark.parametrize(
    ("answers", "rule"),
    [
        ({"gut": Gut.BAD}, "gut-unsettled"),
        ({"fullness": 2, "sharpness": 1}, "flat-and-watery"),
        ({"fullness": 2, "water_l": 2.2}, "underdrunk"),
    ],
)
def test_a_veto_of_the_rules_stands_whatever_the_forecast_says(
    answers: dict[str, object], rule: str
) -> None:
    decision = decide(replace(case(2, **answers), trials=(trial(Look.FLAT, sharpness=5),)))
    assert decision.rule == rule and decision.change_g <= 0


@pytest.mark.parametrize("days_out", [2, 1])
def test_a_caution_forbids_what_the_forecast_would_raise(days_out: int) -> None:
    small = draft_plan(WHO, HABIT, Asked("even", 5.5))
    flat = case(days_out, fullness=3, sharpness=5, weight_kg=58.7)
    given = tuple(
        DaySet(one.date, day.carb_g)
        for one in flat.history.set_days
        if (day := small.day((DAY - one.date).days)) is not None
    )
    flat = replace(
        flat,
        plan=small,
        limits=Limits.suggested(WHO, small, HABIT),
        history=replace(flat.history, set_days=given),
        trials=(replace(trial(Look.FLAT, sharpness=5), plan=small),),
    )
    assert decide(flat).change_g > 0
    drank = replace(flat.checkin, water_l=6.1)
    assert decide(replace(flat, checkin=drank)).change_g <= 0


def test_where_rule_and_forecast_pull_apart_the_smaller_step_is_taken_and_the_coach_told() -> None:
    """The design's own rule; the weeks are tried until one shows it, so that it cannot go untested."""
    for fullness in (2, 3, 4):
        for look in Look:
            decision = decide(
                replace(case(2, fullness=fullness, sharpness=5), trials=(trial(look, sharpness=3),))
            )
            if decision.trace.disagree:
                assert decision.change_g == 0 and decision.tell_coach
                assert decision.trace.rule_g and decision.trace.forecast_g is not None
                return
    pytest.fail("no week showed the two pulling apart")


@settings(max_examples=12)
@given(
    days_out=st.integers(1, 3),
    fullness=st.integers(1, 10),
    sharpness=st.integers(1, 5),
    off_kg=st.floats(-1.5, 1.5),
    look=st.sampled_from(list(Look)),
)
@example(days_out=1, fullness=3, sharpness=3, off_kg=1.0, look=Look.FLAT)
def test_no_forecast_leaves_the_coachs_limits(
    days_out: int, fullness: int, sharpness: int, off_kg: float, look: Look
) -> None:
    weight = WEIGHTS[days_out] + off_kg
    whole = replace(
        case(days_out, fullness=fullness, sharpness=sharpness, weight_kg=weight),
        trials=(trial(look, sharpness=sharpness),),
    )
    decision = decide(whole)
    assert decision.carb_g is not None and decision.planned_carb_g is not None
    assert LIMITS.carb_floor_g <= decision.carb_g <= LIMITS.carb_ceiling_g
    assert abs(decision.change_g) <= LIMITS.change_per_day_g
    # Flat beside a heavy scale is the coach's to judge, however small the step.
    alone_g = 0 if decision.rule == "flat-but-heavy" else LIMITS.apply_without_asking_g
    assert decision.needs_sign_off == (abs(decision.change_g) > alone_g)


WEEKS = [
    case(out, fullness=fullness, sharpness=sharpness)
    for out in (2, 1)
    for fullness, sharpness in ((3, 5), (7, 4), (8, 2))
]


def with_use(whole: Case, use: ForecastUse) -> Decision:
    return decide(replace(whole, forecast=use, trials=(trial(Look.FLAT, sharpness=5),)))


@pytest.mark.parametrize("whole", WEEKS)
def test_where_the_forecast_only_shows_the_rules_decide_as_if_it_were_not_there(
    whole: Case,
) -> None:
    shown, alone, proposed = (
        with_use(whole, use)
        for use in (ForecastUse.SHOWS, ForecastUse.RULES_ONLY, ForecastUse.PROPOSES)
    )
    assert replace(
        shown, foresight=None, trace=replace(shown.trace, forecast_g=None, would_g=None)
    ) == alone  # fmt: skip
    assert shown.foresight is not None and proposed.foresight is not None
    assert replace(shown.foresight, proposed=None) == replace(proposed.foresight, proposed=None)
    assert shown.trace.would_g == proposed.carb_g, "what it would have proposed is kept"
    assert proposed.trace.would_g is None


@pytest.mark.parametrize("whole", WEEKS)
@pytest.mark.parametrize("use", [ForecastUse.SHOWS, ForecastUse.PROPOSES])
def test_what_is_decided_has_odds_of_its_own_beside_the_plans(
    whole: Case, use: ForecastUse
) -> None:
    decision = with_use(whole, use)
    assert decision.foresight is not None and decision.carb_g is not None
    figures = [odds.carb_g for odds in decision.foresight.odds]
    assert min(abs(figure - decision.carb_g) for figure in figures) < 1
    assert len(set(figures)) >= len(figures) - 1, "only plan and best may be the same figure"


def test_a_decision_with_a_forecast_that_only_shows_replays_from_its_record() -> None:
    whole = replace(WEEKS[0], forecast=ForecastUse.SHOWS)
    record = json.loads(json.dumps(case_as_dict(whole)))
    assert case_from_dict(record).forecast is ForecastUse.SHOWS
    assert decision_as_dict(decide(case_from_dict(record))) == decision_as_dict(decide(whole))


@pytest.mark.parametrize(
    ("was", "use"), [(True, ForecastUse.PROPOSES), (False, ForecastUse.RULES_ONLY)]
)
def test_a_record_that_knew_only_on_and_off_still_loads(was: bool, use: ForecastUse) -> None:
    record = {**case_as_dict(case(2)), "foresight": was}
    del record["forecast"]
    assert case_from_dict(record).forecast is use


def test_a_larger_step_of_the_forecast_waits_and_a_small_one_in_its_direction_goes_out() -> None:
    larger = [
        decision
        for whole in WEEKS
        for look in (Look.FLAT, Look.SPILLED)
        if (decision := decide(replace(whole, trials=(trial(look, sharpness=3),)))).needs_sign_off
    ]
    assert larger, "no week of these asks for more than a small step"
    for decision in larger:
        assert decision.lapse_g is not None and decision.planned_carb_g is not None
        alone = decision.lapse_g - decision.planned_carb_g
        assert 0 < alone / decision.change_g < 1
        assert abs(alone) <= LIMITS.apply_without_asking_g


def test_flat_beside_a_heavy_scale_the_forecast_asks_and_nothing_goes_out_before_the_answer() -> (
    None
):
    flat = (trial(Look.FLAT, sharpness=5), trial(Look.FLAT, sharpness=5, weeks_before=2))
    mornings = [
        replace(case(out, fullness=2, sharpness=5, weight_kg=WEIGHTS[out] + off), trials=flat)
        for out in (2, 1)
        for off in (1.2, 1.6, 2.0)
    ]
    heavy = [one for one in map(decide, mornings) if one.rule == "flat-but-heavy"]
    asked = [one for one in heavy if one.change_g]
    assert asked, "no morning of these has the forecast ask"
    for decision in heavy:
        assert decision.tell_coach
        assert decision.needs_sign_off == bool(decision.change_g)
        assert decision.lapse_g == decision.planned_carb_g


def test_outside_the_load_the_forecast_moves_nothing() -> None:
    decision = decide(case(5))
    assert decision.foresight is not None and decision.foresight.best is None
    assert decision.change_g == decide(replace(case(5), forecast=ForecastUse.RULES_ONLY)).change_g


# --- what was done of yesterday's training ---------------------------------------------------


def trained_week(done: TrainingDone | None) -> Case:
    """The morning after the last depletion session, of which that much was done."""
    whole = case(3, training_done=done)
    session = replace(whole.plan.days[0], days_out=4, training="legs, depletion", cardio_min=20)
    return replace(whole, plan=whole.plan.with_day(session))


def expected_kg(done: TrainingDone | None) -> float:
    view = decide(trained_week(done)).foresight
    assert view is not None and view.band is not None
    return view.band.expected_kg


def test_a_session_left_out_leaves_glycogen_and_its_water_on_the_scale() -> None:
    # A session costs glycogen, each gram with at least 3 g of water (Fernandez-Elias 2015).
    none, less, planned, more = (
        expected_kg(done)
        for done in (
            TrainingDone.NONE, TrainingDone.LESS, TrainingDone.AS_PLANNED, TrainingDone.MORE,
        )
    )  # fmt: skip
    assert none > less > planned > more
    assert 0.1 < none - planned < 2.0


def test_training_that_nobody_told_of_counts_as_planned_and_leaves_more_doubt() -> None:
    assert trained(Intake(carb_g=200), None) == trained(Intake(carb_g=200), TrainingDone.AS_PLANNED)
    assert expected_kg(None) == pytest.approx(expected_kg(TrainingDone.AS_PLANNED), abs=0.1)
    frame = Covariates(sex=Sex.FEMALE, body_mass_kg=60, body_fat_percent=14)
    session = Intake(carb_g=200, exercise=Exercise.LIGHT, cardio_h=0.5)

    def doubt(done: TrainingDone | None) -> float:
        begun = first_belief(frame, generator("doubt", DAY))
        day = trained(session, done)
        spread = training_spread(done)
        left = after_day(begun, day, generator("day", DAY), training_spread=spread)
        lost = np.log(left.state[Row.MUSCLE] / begun.state[Row.MUSCLE])
        return float(np.std(lost))

    assert doubt(None) > doubt(TrainingDone.AS_PLANNED)
    assert doubt(TrainingDone.NONE) < doubt(TrainingDone.AS_PLANNED)


def test_the_training_of_an_earlier_week_is_learnt_from_too() -> None:
    def after(done: TrainingDone) -> Decision:
        past = trial(Look.FULL, sharpness=4)
        told = tuple(replace(c, training_done=done) for c in past.history.checkins)
        return decide(replace(case(2), trials=(replace(past, history=History(checkins=told)),)))

    assert foreseen(after(TrainingDone.NONE)) != foreseen(after(TrainingDone.AS_PLANNED))
