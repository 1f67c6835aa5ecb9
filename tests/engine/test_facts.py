"""What one morning's figures come to: each edge of a fact, and what is said of it.

The edges themselves are common practice or this project's own, and stand in `engine.evidence`.
"""

from __future__ import annotations

import pytest

from engine.decision.facts import Facts
from engine.decision.reason import BY_RULE
from engine.decision.rules.rule import Told
from tests.engine.test_rules import _facts

# --- behind and ahead -------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("told", "grades"),
    [
        ({"fullness": 4}, 2),  # one morning alone counts whole
        ({"fullness": 4, "fullness_short_before": 2}, 2),
        ({"fullness": 4, "fullness_short_before": 0}, 1.2),  # today 0.6 of it
        ({"fullness": 6, "fullness_short_before": 2}, 0.8),
        ({"fullness": 8, "fullness_short_before": -1}, -1.6),
        # 0.28 of the own scale comes off, and nothing past zero
        ({"fullness": 4, "fullness_short_before": 2, "usual_short": 2.0}, 1.44),
        ({"fullness": 8, "fullness_short_before": -2, "usual_short": -2.0}, -1.44),
        ({"fullness": 6, "fullness_short_before": 0, "usual_short": 2.0}, 0),
        ({"fullness": None}, 0),
        # what was answered in loads that were enough, or not too much, comes off whole
        ({"fullness": 4, "fullness_short_before": -1}, 0.8),
        ({"fullness": 4, "fullness_short_before": -1, "short_with_enough": 0.5}, 0.3),
        ({"fullness": 4, "fullness_short_before": -1, "short_with_enough": 1.0}, 0),
        ({"fullness": 8, "fullness_short_before": 1, "short_without_spill": -0.5}, -0.3),
        ({"fullness": 8, "fullness_short_before": 1, "short_without_spill": -1.0}, 0),
        (
            {
                "fullness": 4,
                "fullness_short_before": -1,
                "short_with_enough": 1.0,
                "short_without_spill": -1.0,
            },
            0,
        ),
    ],
)
def test_two_mornings_together_say_how_far_behind(told: dict[str, object], grades: float) -> None:
    assert _facts(**told).short_lately == pytest.approx(grades)


@pytest.mark.parametrize(
    ("over_usual", "counts"), [(0.5, 0.5), (1.5, 1.5), (2.5, 1.5), (-0.5, -0.5), (-2.5, -1.5)]
)
def test_a_load_far_from_the_usual_one_counts_up_to_a_point(
    over_usual: float, counts: float
) -> None:
    facts = _facts(fullness=4, load_over_usual=over_usual)
    assert facts.load_counted == counts
    assert facts.behind == 2 - counts


@pytest.mark.parametrize(
    ("told", "due"),
    [
        ({"fullness": 4, "fullness_short_before": 0}, True),  # 1.2 grades
        ({"fullness": 4, "fullness_short_before": 0, "load_over_usual": 0.01}, False),
        # before any of it is eaten, 2.5
        ({"fullness": 4, "load_eaten": False, "load_over_usual": -0.5}, True),
        ({"fullness": 4, "load_eaten": False, "load_over_usual": -0.49}, False),
        ({"fullness": 1, "load_eaten": False, "load_shown": True}, False),
        # on the last day, 2.0
        ({"fullness": 4, "fullness_short_before": 2, "days_out": 1}, True),
        ({"fullness": 4, "days_out": 1, "load_over_usual": 0.01}, False),
        ({"fullness": 4, "days_out": 0, "load_over_usual": 0.01}, False),
        ({"fullness": 4, "days_out": 2, "load_over_usual": 0.8}, True),
    ],
)
def test_a_raise_is_due_from_so_many_grades_behind(told: dict[str, object], due: bool) -> None:
    assert _facts(**told).raise_due is due


@pytest.mark.parametrize(
    ("told", "ahead"),
    [
        ({"fullness": 8}, True),  # on one morning alone two over
        ({"fullness": 7}, False),
        ({"fullness": 7, "fullness_short_before": -1}, True),
        ({"fullness": 6, "fullness_short_before": -2}, False),  # not today
        # a grade over today, one under before: 0.2 together, and a load that counts against it
        ({"fullness": 7, "fullness_short_before": 1, "load_over_usual": 0.5}, True),
        ({"fullness": 7, "fullness_short_before": 2, "load_over_usual": 1.5}, False),
        # cut past 0.35 grades ahead, and not at them
        ({"fullness": 7, "fullness_short_before": 0, "load_over_usual": -0.25}, False),
        ({"fullness": 7, "fullness_short_before": 0, "load_over_usual": -0.24}, True),
        # the last day asks for 1.25
        ({"fullness": 8, "fullness_short_before": 0, "days_out": 1, "load_over_usual": 0.05}, False),
        ({"fullness": 8, "fullness_short_before": 0, "days_out": 1, "load_over_usual": 0.06}, True),
        # nothing of the load to come, none behind, or no load at all
        ({"fullness": 9, "days_out": 0}, False),
        ({"fullness": 9, "load_eaten": False}, False),
        ({"fullness": 9, "loading": False}, False),
        ({"fullness": None}, False),
    ],
)  # fmt: skip
def test_ahead_of_the_plan_is_fuller_by_enough_with_load_to_come(
    told: dict[str, object], ahead: bool
) -> None:
    assert _facts(**told).ahead is ahead


@pytest.mark.parametrize(
    ("told", "then", "same"),
    [(4, 0.5, True), (4, 0.0, False), (2, 2.5, True), (2, 2.0, False), (5, 3.0, False)],
)
def test_flat_as_on_a_load_that_was_enough_is_within_two_grades_of_it(
    told: int, then: float, same: bool
) -> None:
    assert _facts(fullness=told, short_with_enough=then).felt_so_on_enough is same
    assert not _facts(fullness=told).felt_so_on_enough


# --- the look ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("now", "before", "fell"), [(4, 5, 1), (3, 5, 2), (5, 3, 0), (3, None, 0), (None, 4, 0)]
)
def test_lines_fall_and_a_rise_is_no_fall(now: int | None, before: int | None, fell: int) -> None:
    assert _facts(sharpness=now, sharpness_before=before).sharpness_fall == fell


@pytest.mark.parametrize(
    ("told", "softening"),
    [
        ({}, True),
        ({"sharpness_before": 4}, False),  # did not fall
        ({"sharpness_before": 5, "sharpness": 3}, False),  # by two: more than that
        ({"sharpness_most": 4}, False),  # as sharp as is asked for at most
        ({"fullness": 7}, False),
        ({"fullness": None}, False),
        ({"full_from": 9}, False),
        ({"weight_kg": 60.0}, False),  # in the lower half of its band
        ({"weight_kg": None}, False),
        ({"load_eaten": False}, False),
        ({"loading": False, "load_eaten": False, "refed": True}, True),
    ],
)
def test_softening_is_a_grade_lost_by_somebody_full_and_heavy(
    told: dict[str, object], softening: bool
) -> None:
    slipped: dict[str, object] = {
        "fullness": 8, "sharpness": 4, "sharpness_before": 5, "weight_kg": 60.5,
    }  # fmt: skip
    assert _facts(**{**slipped, **told}).softening is softening


@pytest.mark.parametrize(
    ("told", "spilling"),
    [
        ({"fullness": 6}, True),  # as full as expected
        ({"fullness": 5}, False),
        ({"fullness": 5, "weight_kg": 61.1}, True),
        ({"fullness": 6, "load_eaten": False}, False),
        ({"fullness": 6, "loading": False, "load_eaten": True}, False),
        ({"fullness": 6, "loading": False, "load_eaten": False, "refed": True}, True),
        ({"fullness": 6, "sharpness": 3, "sharpness_before": 4}, False),
    ],
)
def test_spill_is_blur_on_somebody_loaded_and_full_or_heavy(
    told: dict[str, object], spilling: bool
) -> None:
    assert _facts(**{"sharpness": 2, **told}).spilling is spilling


def test_who_says_to_have_spilled_is_not_called_sharp() -> None:
    assert _facts(sharpness=5).sharp
    assert not _facts(sharpness=5, told_spilled=True).sharp
    assert _facts(sharpness=5, told_spilled=True, load_eaten=False).sharp, "nothing can have"


@pytest.mark.parametrize(
    ("fullness", "most", "over"), [(9, 9, False), (9, 8, True), (None, 8, False)]
)
def test_fuller_than_an_event_asks_for_is_past_its_most(
    fullness: int | None, most: int, over: bool
) -> None:
    assert _facts(fullness=fullness, fullness_most=most).too_full is over


def test_what_the_coach_sees_is_blurred_as_the_athletes_own_lines_are() -> None:
    assert [_facts(coach_sharpness=n).seen_blurred for n in (None, 1, 2, 3)] == [
        False, True, True, False,
    ]  # fmt: skip
    for looked in ("spilled over", "softening"):
        unloaded = _facts(coach_saw=looked, load_eaten=False)
        assert not (unloaded.seen_spilled or unloaded.seen_softening), looked
    loaded = _facts(coach_saw="spilled over"), _facts(coach_saw="softening")
    assert [(one.seen_spilled, one.seen_softening) for one in loaded] == [
        (True, False), (False, True),
    ]  # fmt: skip


def test_both_weight_and_water_are_needed_for_a_large_raise() -> None:
    assert _facts().measured
    assert not _facts(weight_kg=None).measured
    assert not _facts(water_l=None).measured


# --- what is said ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("told", "gap", "says"),
    [
        ({"weight_kg": 61.2}, "weight", "61.2 kg"),
        ({}, "band_low", "59.0 kg"),
        ({}, "band_high", "61.0 kg"),
        ({"water_l": 2.5}, "water", "2.5 L"),
        ({}, "target", "3.2 L"),
        ({}, "expected", "6"),
        ({"coach_saw": "full"}, "look", "full"),
        ({"coach_saw": "full", "coach_sharpness": 3}, "look", "full, sharpness 3"),
        ({}, "look", ""),
        ({"fullness": 4}, "fullness", "4"),
    ],
)
def test_a_sentence_says_what_was_told_and_no_more(
    told: dict[str, object], gap: str, says: str
) -> None:
    assert Told(_facts(**told).as_dict(), 0).tr("{" + gap + "}") == says


@pytest.mark.parametrize(
    ("rule", "told", "says"),
    [
        ("gut-unsettled", {"sharpness": 2}, "and the lines have blurred: no extra carbs"),
        ("gut-unsettled", {}, "with the load: no extra carbs"),
        ("dropping-too-fast", {"dizzy": True}, "You felt dizzy. Stay"),
        ("dropping-too-fast", {"sleepless": True}, "You hardly slept. Stay"),
        ("dropping-too-fast", {"weight_kg": 58.0, "dizzy": True}, "(58.0 kg, 59.0 kg at least)"),
        ("flat-but-heavy", {"water_l": 2.5}, "You drank 2.5 L of 3.2 L: get back to that"),
        ("steady", {"weight_kg": 61.2}, "61.2 kg is heavier than expected (61.0 kg at most)"),
        ("steady", {"weight_kg": 58.0}, "58.0 kg is lighter than expected (59.0 kg at least)"),
        ("steady", {}, "Fullness 6 and 60.0 kg are in the range I expected."),
        ("steady", {"weight_kg": None}, "Fullness 6 is in the range I expected."),
    ],
)
def test_a_rule_says_what_it_stands_on(rule: str, told: dict[str, object], says: str) -> None:
    assert says in BY_RULE[rule].tells(Told(_facts(**told).as_dict(), 0))


def test_beside_another_complaint_water_is_spoken_of_only_where_it_was_short() -> None:
    said = BY_RULE["flat-but-heavy"].tells(Told(_facts().as_dict(), 0))
    assert "drank" not in said


def test_what_was_not_answered_makes_nobody_flat_full_blurred_heavy_or_dry() -> None:
    unknown = _facts(fullness=None, sharpness=None, weight_kg=None, water_l=None)
    for fact in (
        "flat", "very_flat", "full", "too_full", "ahead", "blurred", "crisp", "sharp", "blurring",
        "softer_than_most", "above_band", "under_band", "upper_half", "underdrunk", "measured",
        "raise_due",
    ):  # fmt: skip
        assert getattr(unknown, fact) is False, fact


@pytest.mark.parametrize(
    ("told", "much"),
    [
        ({}, True),
        ({"fullness": None}, False),  # who did not say may be flat
        ({"fullness": 4}, False),
        ({"coach_saw": "flat"}, False),  # whatever the athlete says
        ({"fullness": 4, "coach_saw": "flat"}, False),
        ({"load_over_usual": 0.0}, False),
        ({"days_out": 0}, False),  # on the day itself nothing of it is left
    ],
)
def test_a_load_over_the_usual_one_is_much_to_come_unless_somebody_looks_flat(
    told: dict[str, object], much: bool
) -> None:
    assert _facts(**{"load_over_usual": 2.0, **told}).much_to_come is much


@pytest.mark.parametrize(("over_usual", "soft"), [(0.39, False), (0.4, True)])
def test_lines_that_soften_are_soft_on_much_from_just_so_far_over_the_usual_load(
    over_usual: float, soft: bool
) -> None:
    facts = _facts(sharpness=3, sharpness_before=4, load_over_usual=over_usual)
    assert facts.soft_on_much is soft


def test_every_fact_is_in_the_record_by_its_name() -> None:
    record = _facts().as_dict()
    assert set(record) == Facts.names()
    assert record["fullness"] == 6
    assert record["full"] is True
