"""How a morning's facts follow from the week: which earlier answers count, and from when on."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from engine.decision.decide import decide
from engine.decision.gather import expected_fullness, gut_trouble
from engine.values.athlete import Sex
from engine.values.case import Case, PastWeek
from engine.values.checkin import CheckIn, DaySet, Gut, History, Look, TargetLook
from engine.values.plan import DayTarget, PeakPlan, Phase
from tests.engine.test_decide import answering, case

EVENT = date(2026, 11, 28)  # of every case file; 1380 g over three days, habit 180 g, 60 kg


def facts(one: Case) -> dict[str, object]:
    """The facts that the decision on this case rests on."""
    return dict(decide(one).trace.facts)


def told(one: Case, **by_day: dict[int, object]) -> Case:
    """The case with these answers on earlier days of November, and no others."""
    days: dict[int, dict[str, object]] = {}
    for name, answers in by_day.items():
        for day, answer in answers.items():
            days.setdefault(day, {})[name] = answer
    checkins = tuple(
        CheckIn(date=date(2026, 11, day), weight_kg=59.5, **days[day])  # type: ignore[arg-type]
        for day in sorted(days)
    )
    return replace(one, history=replace(one.history, checkins=checkins))


# --- the fullness that a plan leads one to expect (common practice) ---------------------------


def test_a_plan_has_depleted_once_it_falls_under_three_quarters_of_habit() -> None:
    one = case()
    for carb_g, expected in ((135, 5), (134, 4)):  # of 180 g
        low = one.plan
        for out in (7, 6, 5, 4):
            low = low.with_carbs(out, carb_g)
        assert expected_fullness(low, one.baseline, 3) == expected, carb_g


def test_without_a_load_every_day_before_the_event_may_have_depleted() -> None:
    """6 days of 140 g, over three quarters of 180 g, and a last one of nothing, under it."""
    one = case()
    phases = dict.fromkeys(range(1, 8), Phase.DEPLETION) | {0: Phase.EVENT}
    carbs = dict.fromkeys(range(2, 8), 140.0) | {1: 0.0, 0: 180.0}
    low = PeakPlan(
        tuple(replace(d, carb_g=carbs[d.days_out], phase=phases[d.days_out]) for d in one.plan)
    )
    assert [expected_fullness(low, one.baseline, out) for out in (2, 1, 0)] == [5, 5, 4]


def test_where_less_fullness_is_asked_for_than_there_is_none_is_lost() -> None:
    one = case()
    flat = TargetLook(fullness_low=2, fullness_high=3, sharpness_low=4, sharpness_high=5)
    assert [expected_fullness(one.plan, one.baseline, out, flat) for out in (3, 1, 0)] == [4, 4, 4]


def test_a_load_of_no_carbs_fills_nobody() -> None:
    one = case()
    empty = one.plan
    for out in (3, 2, 1):
        empty = empty.with_carbs(out, 0)
    assert expected_fullness(empty, one.baseline, 0) == 4
    assert facts(replace(one, plan=one.plan.with_carbs(3, 0)))["load_eaten"] is False
    assert facts(one)["load_eaten"] is True
    assert facts(case(out=3))["load_eaten"] is False


# --- which morning is compared with -----------------------------------------------------------


@pytest.mark.parametrize(
    ("sharpness", "before"),
    [
        ({24: 5, 25: 3}, 3),  # the latest
        ({24: 5}, 5),  # one missed morning is bridged
        ({23: 5}, None),  # two are not
        ({24: 4, 25: None}, 4),
        ({25: 1}, 1),
        ({24: 4, 25: 6}, 4),  # no answer of a scale to five
        ({24: 4, 25: 0}, 4),
    ],
)
def test_sharpness_is_compared_with_the_last_morning_that_told_of_it(
    sharpness: dict[int, object], before: int | None
) -> None:
    assert facts(told(case(), sharpness=sharpness))["sharpness_before"] == before


@pytest.mark.parametrize(
    ("fullness", "short"),
    [
        ({24: 1}, None),  # before the load
        ({25: 3}, 1),  # on its first morning 4 are expected
        ({25: 3, 26: 4}, 2),  # the latest: 6 are expected then
        ({25: 1, 26: None}, 3),
        ({26: 10}, -4),
        ({25: 3, 26: 11}, 1),
        ({25: 3, 26: 0}, 1),
    ],
)
def test_the_morning_before_counts_once_the_load_has_begun(
    fullness: dict[int, object], short: int | None
) -> None:
    one = answering(case(out=1), weight_kg=60.0)
    assert facts(told(one, fullness=fullness))["fullness_short_before"] == short


def test_an_answer_of_three_days_ago_is_no_morning_before() -> None:
    """On the event's own morning the first of the load lies three days back."""
    one = case("steady", out=0)
    assert facts(told(one, fullness={25: 1}))["fullness_short_before"] is None
    assert facts(told(one, fullness={26: 1}))["fullness_short_before"] == 5


@pytest.mark.parametrize(
    ("fullness", "usual"),
    [
        ({23: 3, 24: 3}, 1.5),  # 5 and 4 are expected
        ({24: 3}, 0.0),  # one morning says nothing of a habit
        ({22: 5, 23: 3, 24: 3}, 1.0),
        ({24: 3, 25: 1}, 0.0),  # the load's first morning is none before it
        ({23: 3, 24: 12}, 0.0),
    ],
)
def test_an_own_scale_is_the_mean_of_two_mornings_before_the_load_or_more(
    fullness: dict[int, object], usual: float
) -> None:
    assert facts(told(case(), fullness=fullness))["usual_short"] == usual


def test_water_is_held_against_the_habit_where_the_plan_has_not_begun() -> None:
    first = case("steady", out=7)
    wet = PeakPlan(tuple(replace(day, water_l=4.0) for day in first.plan))
    assert facts(replace(first, plan=wet))["water_target_l"] == first.baseline.water_l == 3.2
    assert facts(replace(case("steady", out=6), plan=wet))["water_target_l"] == 4.0


# --- the gut -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "sign", ["severe-gut", "diarrhoea", "vomiting", "repeated-vomiting", "stomach-pain"]
)
def test_each_sign_of_real_trouble_in_the_gut_counts_by_itself(sign: str) -> None:
    assert gut_trouble(CheckIn(date=EVENT, symptoms=(sign,)))
    assert gut_trouble(CheckIn(date=EVENT, gut=Gut.FINE, symptoms=(sign,)))


def test_a_gut_called_bad_is_trouble_and_cramps_are_the_guts_only_beside_that() -> None:
    assert gut_trouble(CheckIn(date=EVENT, gut=Gut.BAD))
    assert not gut_trouble(CheckIn(date=EVENT, gut=Gut.HEAVY))
    assert not gut_trouble(CheckIn(date=EVENT, gut=Gut.FINE, symptoms=("cramps",)))
    beside = {gut: facts(answering(case(), gut=gut, symptoms=("cramps",))) for gut in Gut}
    assert [beside[gut]["severe_gut"] for gut in Gut] == ["", "", "cramps"]


def test_what_is_said_of_spill_counts_in_the_note_and_among_the_symptoms() -> None:
    for answers in ({"note": "spilled over"}, {"symptoms": ("dizzy", "spilled over")}):
        assert facts(answering(case(), **answers))["told_spilled"] is True
    assert facts(case())["told_spilled"] is False


# --- depletion ----------------------------------------------------------------------------------


def test_a_refeed_is_no_depletion_however_small() -> None:
    one = answering(case("steady", out=5), sharpness=4)
    day = one.plan.day(5)
    assert day is not None and day.carb_g < one.baseline.carb_g
    refed = replace(one, plan=one.plan.with_day(replace(day, phase=Phase.REFEED)))
    assert facts(one)["depleting"] is True
    assert facts(refed)["depleting"] is False


# --- how the load stands beside the usual one, and beside weeks behind -------------------------


def past(
    look: Look | None, *, load_g: float = 460, weeks_before: int = 4, fullness: int | None = None,
    mornings: tuple[int, ...] = (),
) -> PastWeek:  # fmt: skip
    """A week behind with that load a day, and that fullness on mornings so many days out."""
    plan = case().plan
    for out in (3, 2, 1):
        plan = plan.with_carbs(out, load_g)
    day = EVENT - timedelta(weeks=weeks_before)
    told = tuple(
        CheckIn(date=day - timedelta(days=out), fullness=fullness)
        for out in sorted(mornings, reverse=True)
    )
    return PastWeek(day=day, plan=plan, history=History(checkins=told), look=look)


def test_the_usual_load_is_a_womans_or_a_mans_over_three_days() -> None:
    # 8.2 g/kg a day for women (Sedlock 2008), 7 for men (Areta & Hopkins 2018); planned are 7.67.
    one = case()
    assert facts(one)["load_over_usual"] == pytest.approx(-0.533333)
    he = replace(one, athlete=replace(one.athlete, sex=Sex.MALE))
    assert facts(he)["load_over_usual"] == pytest.approx(0.666667)
    four = one.plan.with_day(replace(_day(one.plan, 4), carb_g=460, phase=Phase.LOAD))
    roomy = replace(one.limits, load_total_g=2160)
    assert facts(replace(one, plan=four, limits=roomy))["load_over_usual"] == 0


def _day(plan: PeakPlan, out: int) -> DayTarget:
    day = plan.day(out)
    assert day is not None
    return day


def test_once_a_look_is_known_the_usual_load_says_nothing() -> None:
    unseen, seen = past(None, weeks_before=8), past(Look.FLAT)
    for weeks, shown in (((unseen,), False), ((seen,), True), ((unseen, seen), True)):
        found = facts(replace(case(), trials=weeks))
        assert found["load_shown"] is shown
        assert (found["load_over_usual"] == 0) is shown


@pytest.mark.parametrize(
    ("weeks", "held"),
    [
        ((), False),
        ((past(None),), False),
        ((past(Look.FULL),), True),
        ((past(Look.FLAT),), True),
        ((past(Look.SPILLED),), False),
        ((past(Look.SPILLED, weeks_before=8), past(Look.FULL)), True),
        ((past(Look.FULL, weeks_before=8), past(Look.SPILLED)), False),
        ((past(Look.FULL, weeks_before=8), past(None)), True),
        ((past(Look.FULL, load_g=437),), True),  # 5 % under this plan's is the same load
        ((past(Look.FULL, load_g=436),), False),
        ((past(Look.FULL, load_g=600),), True),
    ],
)
def test_a_load_has_held_where_the_last_look_on_as_much_was_no_spill(
    weeks: tuple[PastWeek, ...], held: bool
) -> None:
    assert facts(replace(case(), trials=weeks))["load_held"] is held


def test_a_load_behind_counts_as_it_was_set_in_the_end() -> None:
    week = past(Look.FULL)
    cut = tuple(DaySet(week.day - timedelta(days=out), 400) for out in (3, 2, 1))
    lighter = replace(week, history=replace(week.history, set_days=cut))
    assert facts(replace(case(), trials=(lighter,)))["load_held"] is False


@pytest.mark.parametrize(
    ("look", "enough", "unspilled"),
    [(Look.FLAT, None, 3.0), (Look.FULL, 3.0, 3.0), (Look.SPILLED, 3.0, None), (None, None, None)],
)
def test_how_the_day_looked_says_what_its_mornings_meant(
    look: Look | None, enough: float | None, unspilled: float | None
) -> None:
    # 6 and 7 are expected with one and two thirds of the load behind
    week = past(look, fullness=4, mornings=(2,))
    week = replace(
        week,
        history=History(
            checkins=(*week.history.checkins, CheckIn(date=week.day - timedelta(1), fullness=3))
        ),
    )
    found = facts(replace(case(), trials=(week,)))
    assert (found["short_with_enough"], found["short_without_spill"]) == (enough, unspilled)


@pytest.mark.parametrize(
    ("mornings", "short"),
    [
        ((0,), 5.0),  # the day's own morning, with all of the load behind it: 9 are expected
        ((3,), None),  # none of the load is eaten yet
        ((4, 3), None),
        ((-1,), None),  # the day after
        ((2, 1, 0), 10 / 3),
    ],
)
def test_of_a_load_behind_the_mornings_with_some_of_it_eaten_count(
    mornings: tuple[int, ...], short: float | None
) -> None:
    week = past(Look.FULL, fullness=4, mornings=mornings)
    found = facts(replace(case(), trials=(week,)))["short_with_enough"]
    assert found == (None if short is None else pytest.approx(short))


def test_what_an_earlier_event_asked_for_is_what_its_mornings_are_held_against() -> None:
    asked = TargetLook(fullness_low=5, fullness_high=5, sharpness_low=3, sharpness_high=5)
    week = replace(past(Look.FULL, fullness=4, mornings=(0,)), target=asked)
    assert facts(replace(case(), trials=(week,)))["short_with_enough"] == 1.0
