"""Who gives a change its size: what each rule lets the forecast do, by the table, without a model."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from engine.decision.foresight import Foresight, Odds
from engine.decision.rules import RULES
from engine.decision.rules.rule import Forecast, Rule
from engine.decision.sizing import settled, sized_by
from engine.planning.drafting.draft import Asked, draft_plan
from engine.values.athlete import Athlete, Baseline, Event, EventKind, Sex
from engine.values.case import Case, PastWeek
from engine.values.checkin import CheckIn, DaySet, History, Look
from engine.values.limits import Limits
from engine.values.plan import LOAD_DAYS, DayTarget, PeakPlan, Phase


def rule(id: str) -> Rule:
    return next(one for one in RULES if one.id == id)


def seen(best_g: float, planned_g: float = 460.0) -> Foresight:
    """A forecast that is best with that figure, where so much is planned."""

    def odds(carb_g: float) -> Odds:
        return Odds(carb_g=carb_g, flat=0.2, full=0.7, spilled=0.1, look=0.9)

    return Foresight(
        trusted=True, why_not="", band=None, residual_kg=0.0, mornings=5, past_weeks=0,
        planned=odds(planned_g), best=odds(best_g),
    )  # fmt: skip


@pytest.mark.parametrize(
    ("id", "rule_g", "best_g", "change_g", "disagree"),
    [
        # gives the size, either way
        ("steady", 0, 560, 100, False),
        ("steady", 0, 360, -100, False),
        ("flat-in-load", 25, 560, 100, False),
        ("flat-in-load", 50, 485, 25, False),
        # opposed, or against no change at all: the smaller step, and it is told
        ("flat-in-load", 25, 460, 0, True),
        ("flat-in-load", 25, 430, 0, True),
        ("flat-in-load", 25, 460.03125, 0.03125, False),  # a crumb more is more
        # a lowering only
        ("softening", -25, 360, -100, False),
        ("softening", -25, 450, -10, False),
        ("softening", -25, 460, 0, True),
        ("softening", -25, 560, 0, True),
        ("blurring", 0, 560, 0, False),
        ("blurring", 0, 400, -60, False),
        # what is seen may be deepened, never undone
        ("spilled-over", -50, 360, -100, False),
        ("spilled-over", -50, 430, -50, False),
        ("spilled-over", -50, 560, -50, False),
        ("gut-unsettled", 0, 560, 0, False),
        ("gut-unsettled", 0, 400, -60, False),
        # may ask, either way
        ("flat-but-heavy", 0, 560, 100, False),
        ("flat-but-heavy", 0, 360, -100, False),
        # no say
        ("underdrunk", 0, 360, 0, False),
        ("underdrunk", 0, 560, 0, False),
        ("flat-and-watery", 0, 360, 0, False),
    ],
)
def test_rule_and_forecast_come_to_one_change(
    id: str, rule_g: float, best_g: float, change_g: float, disagree: bool
) -> None:
    found = sized_by(seen(best_g), rule(id), rule_g)
    assert (found.change_g, found.disagree) == (change_g, disagree)
    if rule(id).forecast in (Forecast.SIZES, Forecast.SILENT):
        assert found.forecast_g == best_g - 460, "what the forecast alone would have done is kept"


@pytest.mark.parametrize(
    ("id", "rule_g", "best_g", "kept"),
    [
        ("steady", 0, 560, (100, 0, 100, False)),
        ("steady", 0, 460, (0, 0, 0, False)),
        ("flat-in-load", 25, 430, (0, 25, -30, True)),
        ("spilled-over", -50, 560, (-50, -50, 100, False)),
        ("spilled-over", -50, 410, (-50, -50, -50, False)),
        ("underdrunk", 0, 560, (0, 0, 100, False)),
    ],
)
def test_what_the_forecast_changed_or_would_have_is_kept_beside_what_the_rule_asked(
    id: str, rule_g: float, best_g: float, kept: tuple[float, float, float, bool]
) -> None:
    found = sized_by(seen(best_g), rule(id), rule_g)
    assert (found.change_g, found.rule_g, found.forecast_g, found.disagree) == kept


def test_without_odds_the_rule_decides_alone() -> None:
    silent = replace(seen(560), planned=None, best=None)
    for view in (None, silent):
        found = sized_by(view, rule("flat-in-load"), 25)
        assert (found.change_g, found.forecast_g, found.disagree) == (25, None, False)


# --- a load that has come in full twice -------------------------------------------------------

WHO = Athlete(sex=Sex.FEMALE, birth_year=1996, height_cm=165, body_mass_kg=60, body_fat_percent=14)
HABIT = Baseline(carb_g=280, protein_g=140, fat_g=55, fibre_g=25, water_l=3.5, sodium_mg=2300)
DAY = date(2027, 5, 9)
PLAN = draft_plan(WHO, HABIT, Asked("even", 7.0))


def week(
    look: Look, *, back: int, plan: PeakPlan = PLAN, history: History | None = None
) -> PastWeek:
    return PastWeek(
        day=DAY - timedelta(weeks=back), plan=plan, history=history or History(), look=look
    )


def behind(*weeks: PastWeek, plan: PeakPlan = PLAN) -> Case:
    return Case(
        athlete=WHO, baseline=HABIT, event=Event(kind=EventKind.SHOW, day=DAY, zone="UTC"),
        plan=plan, limits=Limits.suggested(WHO, plan, HABIT), history=History(),
        checkin=CheckIn(date=DAY - timedelta(days=2)), trials=weeks,
    )  # fmt: skip


def test_a_load_is_settled_once_it_has_come_in_full_twice_running() -> None:
    full, flat = week(Look.FULL, back=3), week(Look.FLAT, back=6)
    earlier = week(Look.FULL, back=6)
    assert settled(behind(earlier, full))
    assert settled(behind(week(Look.FLAT, back=9), earlier, full))
    assert not settled(behind(full))
    assert not settled(behind(flat, full))
    assert not settled(behind(earlier, week(Look.FLAT, back=3)))
    assert not settled(behind(earlier, replace(full, look=None)))


def test_another_load_than_that_which_came_in_full_is_not_settled() -> None:
    weeks = week(Look.FULL, back=6), week(Look.FULL, back=3)
    for mean, same in ((6.7, True), (7.3, True), (6.5, False), (7.6, False)):
        assert settled(behind(*weeks, plan=draft_plan(WHO, HABIT, Asked("even", mean)))) is same, (
            mean
        )
    # What counts is the load as it was set in the end.
    moved = tuple(
        DaySet(DAY - timedelta(weeks=3, days=out), day.carb_g + 60)
        for out in LOAD_DAYS
        if (day := PLAN.day(out)) is not None
    )
    set_otherwise = week(Look.FULL, back=3, history=History(set_days=moved))
    assert not settled(behind(weeks[0], set_otherwise))


def test_as_much_on_other_days_or_five_per_cent_apart_is_another_load_or_the_same() -> None:
    weeks = week(Look.FULL, back=6), week(Look.FULL, back=3)
    later = PeakPlan(
        tuple(
            replace(
                day,
                phase=Phase.EVENT if not day.days_out
                else Phase.LOAD if day.days_out in (4, 2, 1)
                else Phase.DEPLETION,
            )
            for day in PLAN
        )
    )  # fmt: skip
    four = day_of(later, 4)
    moved = later.with_day(replace(four, carb_g=day_of(PLAN, 3).carb_g))
    assert moved.load_g == PLAN.load_g and moved.load_days != PLAN.load_days
    assert not settled(behind(replace(weeks[0], plan=moved), weeks[1]))
    assert not settled(behind(weeks[0], replace(weeks[1], plan=moved)))
    planned, lighter, lightest = (loads_of(grams) for grams in (400, 380, 379))
    for plan, same in ((lighter, True), (lightest, False)):
        both = week(Look.FULL, back=6, plan=plan), week(Look.FULL, back=3, plan=plan)
        assert settled(behind(*both, plan=planned)) is same


def day_of(plan: PeakPlan, out: int) -> DayTarget:
    day = plan.day(out)
    assert day is not None
    return day


def loads_of(grams: float) -> PeakPlan:
    plan = PLAN
    for out in LOAD_DAYS:
        plan = plan.with_carbs(out, grams)
    return plan


def test_where_a_load_is_settled_only_what_is_seen_moves_the_plan() -> None:
    for best_g in (360, 560):
        found = sized_by(seen(best_g), rule("steady"), 0, settled=True)
        assert (found.change_g, found.forecast_g) == (0, best_g - 460)
        assert not found.disagree
    assert sized_by(seen(360), rule("flat-in-load"), 25, settled=True).change_g == 25
    assert sized_by(seen(360), rule("spilled-over"), -50, settled=True).change_g == -50


# --- a load that is looked at, or has been, beside one that came in full ----------------------


def trial_of(mean: float, *weeks: PastWeek) -> Case:
    case = behind(*weeks, plan=draft_plan(WHO, HABIT, Asked("even", mean)))
    return replace(case, event=replace(case.event, kind=EventKind.TRIAL))


def test_a_trial_beside_a_load_that_came_in_full_is_eaten_as_planned() -> None:
    full, flat = week(Look.FULL, back=3), week(Look.FLAT, back=3)
    assert settled(trial_of(8.4, full)) and settled(trial_of(5.6, full))
    assert not settled(trial_of(7.0, full)), "the same again asks nothing"
    assert not settled(trial_of(8.4, flat)), "after a miss it is a correction"
    assert not settled(trial_of(8.4)), "a first trial has nothing beside it"
    assert settled(trial_of(8.4, full, replace(flat, look=None))), "nobody has said of the last"
    assert not settled(behind(full, plan=draft_plan(WHO, HABIT, Asked("even", 8.4)))), "a show"


@pytest.mark.parametrize(
    ("mean", "look", "planned", "holds"),
    [
        (8.4, Look.FULL, 7.7, True),
        (8.4, Look.SPILLED, 6.5, True),
        (5.6, Look.FLAT, 7.5, True),
        (8.4, Look.SPILLED, 5.0, False),  # far from the load that came in full
        (8.4, Look.FLAT, 7.7, False),  # flat on more than came in full tells of something else
        (5.6, Look.SPILLED, 6.5, False),
        (8.4, None, 7.7, False),
    ],
)
def test_between_two_loads_that_were_looked_at_the_forecast_has_no_say(
    mean: float, look: Look | None, planned: float, holds: bool
) -> None:
    beside = week(Look.FULL, back=3, plan=draft_plan(WHO, HABIT, Asked("even", mean)))
    weeks = week(Look.FULL, back=6), replace(beside, look=look)
    assert settled(behind(*weeks, plan=draft_plan(WHO, HABIT, Asked("even", planned)))) is holds
