"""How large a rule's own proposal is: what has to be seen before a load is raised or cut, and how far.

Common practice throughout: a correction grows with how far the look is off, one answer alone earns a
small step, what has been eaten can't be taken back on the last day. The figures are this project's own.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from engine.decision.decide import decide
from engine.decision.rules import first_match
from engine.decision.rules.rule import Told
from engine.decision.rules.words import say_flat_in_load
from engine.decision.sizing import graded_g
from engine.values.case import ForecastUse
from engine.values.checkin import History, Look
from tests.engine.test_foresight import case, trial
from tests.engine.test_rules import _facts

KG, STEP = 60.0, 25.0


def proposal(**facts: object) -> tuple[str, float]:
    """The rule of that morning and its grams, for 60 kg in steps of 25 g."""
    seen = _facts(**facts)
    rule = first_match(seen)
    return rule.id, graded_g(seen, rule.steps(seen), STEP, KG)


# --- raises -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("flat", "grams"),
    [
        # two under today, on course the morning before: the small step, and no more
        ({"fullness": 4, "fullness_short_before": 0}, 25),
        # the same, after a morning that was fuller than expected: 0.6 * 2 - 0.4
        ({"fullness": 4, "fullness_short_before": -1}, 0),
        # on a load over the usual one there is less room
        ({"fullness": 4, "fullness_short_before": 0, "load_over_usual": 0.1}, 0),
        ({"fullness": 4, "fullness_short_before": 2, "load_over_usual": 0.8}, 25),
        ({"fullness": 4, "fullness_short_before": 2, "load_over_usual": 0.9}, 0),
        # and on a lighter one more
        ({"fullness": 4, "fullness_short_before": -1, "load_over_usual": -0.5}, 25),
        # the last day asks for more: what spills then stays
        ({"fullness": 4, "fullness_short_before": 2, "days_out": 1}, 25),
        ({"fullness": 4, "fullness_short_before": 1, "days_out": 1}, 0),
        # before any of the load flat is what depletion leaves
        ({"fullness": 4, "load_eaten": False, "days_out": 3}, 0),
        ({"fullness": 3, "load_eaten": False, "days_out": 3}, 25),
    ],
)
def test_a_flat_load_is_raised_once_it_is_behind_far_enough(
    flat: dict[str, object], grams: float
) -> None:
    assert proposal(**flat) == ("flat-in-load", grams)


def test_a_raise_that_waits_says_what_it_waits_for() -> None:
    first = _facts(fullness=4, load_eaten=False)
    large = _facts(fullness=4, fullness_short_before=0, load_over_usual=0.75)
    little = _facts(fullness=4, fullness_short_before=-1)
    for waits in (first, large, little):
        assert not waits.raise_due
        assert "not sure enough to add carbs yet" in say_flat_in_load(Told(waits.as_dict(), 0))
    due = _facts(fullness=3, fullness_short_before=2)
    assert due.raise_due
    assert "not allowed today" in say_flat_in_load(Told(due.as_dict(), 0)), "a limit is in the way"


def test_a_raise_grows_with_how_far_two_mornings_are_behind_and_stays_small_on_one() -> None:
    grams = [proposal(fullness=6 - short, fullness_short_before=short)[1] for short in (2, 3, 4, 5)]
    assert grams == [25, 50, 75, 100]  # 0.4 g/kg a grade past 1.2
    assert proposal(fullness=2)[1] == 50, "one morning alone: the rule's own two steps"
    alone = {"fullness": 1, "fullness_short_before": 5, "water_l": None}
    assert proposal(**alone)[1] == 25, "without weight or water no large raise"


# --- the usual load ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("plan", "rule", "grams"),
    [
        # on course: by the load alone, from half a g/kg over the usual one on
        ({"load_over_usual": 0.5}, "full-and-sharp", 0),
        ({"load_over_usual": 0.6}, "load-over-usual", -25),
        ({"load_over_usual": 1.2}, "load-over-usual", -50),  # 1.3 * 0.7 g/kg
        ({"load_over_usual": 1.2, "days_out": 3, "load_eaten": False}, "load-over-usual", -50),
        # what is seen counts beside it
        ({"load_over_usual": 1.2, "fullness": 5}, "load-over-usual", -25),
        ({"load_over_usual": 1.2, "fullness": 4}, "flat-in-load", 0),
        ({"load_over_usual": 1.2, "fullness": 7, "fullness_short_before": -2}, "ahead-of-plan", -175),
        # more is asked for later, less of it, and only where nothing is against it
        ({"load_over_usual": -0.9}, "full-and-sharp", 0),
        ({"load_over_usual": -1.4}, "load-under-usual", 25),
        ({"load_over_usual": -1.4, "fullness": 5}, "load-under-usual", 25),  # one morning alone
        ({"load_over_usual": -1.4, "fullness": 5, "fullness_short_before": 1}, "load-under-usual", 50),
        ({"load_over_usual": -1.4, "days_out": 1}, "full-and-sharp", 0),  # it would be seen on the day
        ({"load_over_usual": -1.4, "fullness": 7}, "full-and-sharp", 0),
        ({"load_over_usual": -1.4, "weight_kg": 61.1}, "full-and-sharp", 0),
        ({"load_over_usual": -1.4, "sharpness": 3}, "steady", 0),
        ({"load_over_usual": -1.4, "water_l": 2.5}, "full-and-sharp", 0),
        ({"load_over_usual": -1.4, "full_from": 6}, "full-and-sharp", 0),  # less full is asked for
        ({"load_over_usual": -1.4, "loading": False}, "steady", 0),
    ],
)  # fmt: skip
def test_a_first_load_far_from_the_usual_one_is_moved_towards_it(
    plan: dict[str, object], rule: str, grams: float
) -> None:
    """Women's loads take at 8 g/kg a day and more, men's at 7 (Sedlock 2008, Areta 2018)."""
    assert proposal(**plan) == (rule, grams)


# --- cuts -------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("full", "rule", "grams"),
    [
        ({"fullness": 7, "fullness_short_before": -1}, "ahead-of-plan", -50),
        ({"fullness": 8, "fullness_short_before": -2}, "ahead-of-plan", -150),
        ({"fullness": 7, "fullness_short_before": 1}, "full-and-sharp", 0),  # 0.2 ahead
        # the last day: a grade or so may be scatter, and nothing makes good a cut for nothing
        ({"fullness": 7, "fullness_short_before": -1, "days_out": 1}, "full-and-sharp", 0),
        ({"fullness": 8, "fullness_short_before": -2, "days_out": 1}, "ahead-of-plan", -75),
        # one morning alone has to be far ahead, and earns a step
        ({"fullness": 7}, "full-and-sharp", 0),
        ({"fullness": 9}, "ahead-of-plan", -25),
        # room: over the usual load a cut comes sooner and larger
        ({"fullness": 7, "fullness_short_before": -1, "load_over_usual": 1}, "ahead-of-plan", -150),
        ({"fullness": 7, "fullness_short_before": -1, "load_over_usual": -1}, "full-and-sharp", 0),
    ],
)  # fmt: skip
def test_a_load_ahead_of_its_plan_is_cut_by_how_far(
    full: dict[str, object], rule: str, grams: float
) -> None:
    assert proposal(**full) == (rule, grams)


def test_no_rule_moves_a_day_by_more_than_the_guard_rail_of_a_change() -> None:
    far = {"fullness": 10, "fullness_short_before": -5, "load_over_usual": 3.0}
    assert proposal(**far, expected_fullness=4) == ("ahead-of-plan", -175)  # 3 g/kg, whole steps
    behind = {"fullness": 1, "fullness_short_before": 9, "load_over_usual": -3.0}
    assert proposal(**behind, expected_fullness=10) == ("flat-in-load", 175)


def test_what_a_week_has_shown_counts_for_more_than_mornings() -> None:
    """A load that was run and looked at moves by small steps, and not before any of it is eaten."""
    shown = {"load_shown": True}
    assert proposal(fullness=8, fullness_short_before=-2, **shown) == ("ahead-of-plan", -25)
    assert proposal(fullness=3, fullness_short_before=3, **shown) == ("flat-in-load", 25)
    first = {"fullness": 1, "expected_fullness": 4, "load_eaten": False, "days_out": 3}
    assert proposal(**first) == ("flat-in-load", 25)
    assert proposal(**first, **shown) == ("flat-in-load", 0)
    assert proposal(fullness=7, fullness_short_before=0, sharpness=2, **shown)[1] == -100


def test_an_own_scale_only_restrains() -> None:
    """Low answers before the load cut nobody deeper, nor do high ones raise anybody."""
    ahead = {"fullness": 8, "fullness_short_before": -2}
    assert proposal(**ahead, usual_short=3.0) == proposal(**ahead)
    assert proposal(**ahead, usual_short=-3.0)[1] > proposal(**ahead)[1]
    behind = {"fullness": 3, "fullness_short_before": 3}
    assert proposal(**behind, usual_short=-3.0) == proposal(**behind)
    assert proposal(**behind, usual_short=3.0)[1] < proposal(**behind)[1]
    # It never turns what two mornings say round.
    assert _facts(fullness=5, fullness_short_before=1, usual_short=9.0).short_lately == 0
    assert _facts(fullness=7, fullness_short_before=-1, usual_short=-9.0).short_lately == 0


def test_a_spill_is_cut_deep_and_a_fall_to_the_middle_of_the_scale_less() -> None:
    spilled = {"fullness": 7, "fullness_short_before": 0}
    assert proposal(**spilled, sharpness=2) == ("spilled-over", -100)  # 1.8 g/kg in steps of 25 g
    assert proposal(**spilled, sharpness=3, sharpness_before=5) == ("spilled-over", -50)
    assert proposal(**spilled, sharpness=2, load_over_usual=1.0) == ("spilled-over", -150)
    assert proposal(**spilled, sharpness=2, load_over_usual=-1.5) == ("spilled-over", -50)


def test_a_step_for_something_else_is_no_deep_cut() -> None:
    """Fuller than an event asks for, as full as expected today: a step, whatever was before."""
    before = {"fullness": 6, "fullness_short_before": -2}
    assert proposal(**before, fullness_most=5) == ("fuller-than-asked", -25)
    pulled = {"fullness": 8, "fullness_short_before": -2, "sharpness": 2, "coach_saw": "flat"}
    assert proposal(**pulled) == ("coach-sees-flat-over-blur", 0)
    blurred = _facts(sharpness=2, fullness_short_before=0)
    assert graded_g(blurred, -1, STEP, KG) == -25, "only the rule's two steps tell of spill"


def test_a_heavier_athlete_is_moved_by_more_grams_and_no_sooner() -> None:
    behind = _facts(fullness=4, fullness_short_before=2)  # 0.8 grades past 1.2: 0.32 g/kg
    assert [graded_g(behind, 1, STEP, kg) for kg in (60.0, 100.0, 120.0)] == [25, 25, 50]


@pytest.mark.parametrize(
    ("changed", "grams"),
    [
        ({}, -125),  # 1.8 g/kg and 0.7 for each of the load's 0.5 over the usual one
        ({"load_over_usual": 0.3}, -25),  # about the usual load: it may be a strict eye
        ({"sharpness": 4, "sharpness_before": 5}, -25),  # still crisp
        ({"fullness_short_before": None}, -25),  # one morning alone
        ({"load_shown": True}, -25),  # a week has shown what such a load does
    ],
)
def test_lines_that_soften_on_a_load_over_the_usual_one_earn_more_than_a_step(
    changed: dict[str, object], grams: float
) -> None:
    soft = {
        "fullness": 8, "expected_fullness": 8, "fullness_short_before": 0, "sharpness": 3,
        "sharpness_before": 4, "weight_kg": 61.4, "load_over_usual": 0.5,
    }  # fmt: skip
    assert proposal(**(soft | changed)) == ("softening", grams)


def test_before_the_load_no_rule_asks_for_more_than_its_steps() -> None:
    light = {"loading": False, "load_eaten": False, "depleting": True, "weight_kg": 58.0}
    assert proposal(**light, days_out=5, fullness=5) == ("dropping-too-fast", 25)
    # Nor where a refeed has spilled over, which the load has all its days to make good.
    refed = {"loading": False, "load_eaten": False, "refed": True, "days_out": 4}
    blurred = {"fullness": 7, "fullness_short_before": 0, "sharpness": 2}
    assert proposal(**refed, **blurred) == ("spilled-over", -50)


# --- after a week that was looked at ----------------------------------------------------------


def test_who_answered_as_flat_on_a_load_that_was_enough_is_not_raised_for_it_again() -> None:
    flat = {"fullness": 4, "fullness_short_before": 2, "load_shown": True}
    assert proposal(**flat) == ("flat-in-load", 25)
    for then, grams in ((0.0, 25), (0.8, 25), (1.0, 0), (2.0, 0)):
        assert proposal(**flat, short_with_enough=then) == ("flat-in-load", grams), then
    same = _facts(**flat, short_with_enough=2.0)
    assert not same.raise_due
    told = say_flat_in_load(Told(same.as_dict(), 0))
    assert "much the same on a load that turned out to be enough" in told
    # Flatter than then by as much as anybody has to be, she is raised as anybody is.
    flatter = {"fullness": 2, "fullness_short_before": 3, "load_shown": True}
    assert proposal(**flatter, short_with_enough=2.0) == ("flat-in-load", 50)


def test_who_answered_as_full_on_a_load_that_did_not_spill_is_not_cut_for_it_again() -> None:
    full = {"fullness": 8, "fullness_short_before": -2, "load_shown": True}
    assert proposal(**full) == ("ahead-of-plan", -25)
    assert proposal(**full, short_without_spill=-1.0) == ("ahead-of-plan", -25)
    assert proposal(**full, short_without_spill=-2.0) == ("full-and-sharp", 0)


def test_a_week_behind_only_restrains() -> None:
    """High answers on enough raise nobody the more, nor do low ones cut anybody deeper."""
    flat = {"fullness": 4, "fullness_short_before": 2}
    assert proposal(**flat, short_with_enough=-3.0) == proposal(**flat)
    full = {"fullness": 8, "fullness_short_before": -2}
    assert proposal(**full, short_without_spill=3.0) == proposal(**full)
    # What was not too much says nothing of a raise, nor what was enough of a cut.
    assert proposal(**flat, short_without_spill=2.0) == proposal(**flat)
    assert proposal(**full, short_with_enough=-2.0) == proposal(**full)


def test_blur_on_a_load_that_held_the_last_time_earns_the_rules_own_steps() -> None:
    blurred = {"fullness": 7, "fullness_short_before": 0, "sharpness": 2, "load_shown": True}
    assert proposal(**blurred) == ("spilled-over", -100)
    assert proposal(**blurred, load_held=True) == ("spilled-over", -50)
    seen = {**blurred, "load_held": True, "coach_saw": "spilled over"}
    assert proposal(**seen) == ("coach-sees-spill", -100), "the coach's eye is another matter"


@pytest.mark.parametrize(
    ("look", "flat_g", "blurred_g"),
    [(None, 50, -100), (Look.FLAT, 50, -50), (Look.FULL, 0, -50), (Look.SPILLED, 0, -100)],
)
def test_how_a_trial_came_in_says_what_its_answers_meant(
    look: Look | None, flat_g: float, blurred_g: float
) -> None:
    """The same two mornings after no trial and after three, whose mornings told of fullness 4."""
    behind = (trial(look, sharpness=4),) if look else ()
    for answers, grams in (({"fullness": 3}, flat_g), ({"fullness": 8, "sharpness": 2}, blurred_g)):
        morning = replace(
            case(1, **answers), trials=behind, forecast=ForecastUse.RULES_ONLY
        )  # fmt: skip
        assert decide(morning).change_g == grams


def test_mornings_before_any_load_was_eaten_say_nothing_of_it() -> None:
    full = trial(Look.FULL, sharpness=4)
    early = tuple(
        replace(told, fullness=1) if (full.day - told.date).days > 2 else told
        for told in full.history.checkins
    )
    other = replace(full, history=History(checkins=early))
    held = [
        decide(replace(case(1), trials=(week,), forecast=ForecastUse.RULES_ONLY)).trace.facts
        for week in (full, other)
    ]
    assert held[0]["short_with_enough"] == held[1]["short_with_enough"] == 2.5
