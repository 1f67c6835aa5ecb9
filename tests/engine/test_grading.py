"""How large a rule's own proposal is: what has to be seen before a load is raised or cut, and how far.

Common practice throughout: a correction grows with how far the look is off, one answer alone earns a
small step, what has been eaten can't be taken back on the last day. The figures are this project's own.
"""

from __future__ import annotations

import pytest

from engine.decision.grading import graded_g
from engine.decision.rules import first_match
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
    assert first.waits_said == "; none of the load has been eaten yet"
    large = _facts(fullness=4, fullness_short_before=0, load_over_usual=0.75)
    assert large.waits_said == "; the planned load is 0.8 g/kg a day over the usual one"
    little = _facts(fullness=4, fullness_short_before=-1)
    assert little.waits_said == "; over both mornings that is not far enough"
    assert _facts(fullness=3, fullness_short_before=2).waits_said == ""


def test_a_raise_grows_with_how_far_two_mornings_are_behind_and_stays_small_on_one() -> None:
    grams = [proposal(fullness=6 - short, fullness_short_before=short)[1] for short in (2, 3, 4, 5)]
    assert grams == [25, 50, 75, 100]  # 0.4 g/kg a grade past 1.2
    assert proposal(fullness=2)[1] == 50, "one morning alone: the rule's own two steps"
    alone = {"fullness": 1, "fullness_short_before": 5, "water_l": None}
    assert proposal(**alone)[1] == 25, "without weight or water no large raise"


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


def test_before_the_load_no_rule_asks_for_more_than_its_steps() -> None:
    light = {"loading": False, "load_eaten": False, "depleting": True, "weight_kg": 58.0}
    assert proposal(**light, days_out=5, fullness=5) == ("dropping-too-fast", 25)
