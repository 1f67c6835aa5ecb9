"""How many steps each rule asks for, what leads to it, and when it fetches the coach.

What is asked for where is common practice, as the table says of itself.
"""

from __future__ import annotations

import pytest

from engine.decision.rules import RULES, Rule, first_match, in_words
from engine.decision.rules.rule import Told
from tests.engine.test_rules import _facts


def judged(**told: object) -> tuple[str, int, bool]:
    """The rule of that morning, its steps, and whether the coach is fetched."""
    facts = _facts(**told)
    rule = first_match(facts)
    return rule.id, rule.steps(facts), bool(rule.tell_coach(facts))


@pytest.mark.parametrize(
    ("told", "steps", "coach"),
    [
        ({}, 0, False),
        ({"severe_gut": "vomiting"}, -1, True),
        ({"gut": "fine", "severe_gut": "vomiting"}, -1, True),
        # blurred lines beside it: with load behind them spill or water, before it the coach's matter
        ({"sharpness": 2, "fullness": 4}, -2, True),
        ({"sharpness": 2, "load_eaten": False}, 0, True),
        ({"sharpness": 4, "sharpness_before": 5, "fullness": 8, "weight_kg": 60.5}, -1, False),
        ({"coach_saw": "spilled over"}, -2, False),
        ({"coach_saw": "spilled over", "load_eaten": False}, 0, False),
        ({"coach_saw": "softening"}, -1, False),
        ({"coach_saw": "full"}, 0, False),
        ({"fullness": 8}, -1, False),  # ahead of the plan
        ({"told_spilled": True, "sharpness": 3}, -1, False),
        ({"told_spilled": True}, 0, False),  # crisp: nothing bears it out
    ],
)
def test_a_bad_gut_in_the_load_takes_off_what_the_rest_of_the_morning_asks_for(
    told: dict[str, object], steps: int, coach: bool
) -> None:
    assert judged(**{"gut": "bad", **told}) == ("gut-unsettled", steps, coach)


@pytest.mark.parametrize(
    ("told", "steps"),
    [
        ({"sharpness": 3}, -1),  # as full as expected bears it out
        ({"sharpness": 3, "fullness": 5}, 0),
        ({"sharpness": 3, "fullness": 5, "weight_kg": 61.5}, -1),  # or a heavy scale
        ({"sharpness": 4}, 0),  # crisp lines bear it out not
        ({"sharpness": 4, "fullness": 8}, -1),  # but for one ahead of the plan
        ({"sharpness": 3, "coach_saw": "on course"}, 0),  # nor against what the coach sees
        ({"sharpness": 4, "fullness": 8, "coach_saw": "on course"}, -1),
    ],
)
def test_a_word_of_spill_takes_a_step_off_where_something_bears_it_out(
    told: dict[str, object], steps: int
) -> None:
    usual: dict[str, object] = {"told_spilled": True, "sharpness_before": None}
    assert judged(**{**usual, **told}) == ("says-spilled", steps, True)


@pytest.mark.parametrize(
    ("told", "rule", "steps"),
    [
        ({"coach_saw": "spilled over"}, "coach-sees-spill", -2),
        ({"coach_saw": "spilled over", "load_eaten": False}, "coach-sees-spill", 0),
        ({"coach_saw": "softening"}, "coach-sees-softening", -1),
        ({"coach_saw": "softening", "load_eaten": False}, "coach-sees-softening", 0),
        ({"coach_saw": "softening", "sharpness": 2}, "coach-sees-softening", -2),
        # after a refeed the coach's eye counts before the load too, and else it does not
        ({"coach_saw": "spilled over", "loading": False, "refed": True}, "coach-sees-spill", -2),
        ({"coach_saw": "softening", "loading": False, "refed": True}, "coach-sees-softening", -1),
        ({"coach_saw": "spilled over", "loading": False}, "steady", 0),
        ({"coach_saw": "softening", "loading": False}, "steady", 0),
        # where the two pull apart nothing moves
        ({"coach_saw": "flat", "sharpness": 2}, "coach-sees-flat-over-blur", 0),
        ({"coach_saw": "flat", "told_spilled": True}, "coach-sees-flat-over-blur", 0),
        (
            {"coach_saw": "flat", "fullness": 8, "sharpness_before": 5, "weight_kg": 60.5},
            "coach-sees-flat-over-blur",
            0,
        ),
        ({"coach_saw": "flat"}, "coach-sees-flat", 1),
        ({"coach_saw": "flat", "weight_kg": 61.5}, "full-and-sharp", 0),
        ({"coach_saw": "flat", "water_l": 2.0}, "full-and-sharp", 0),
        ({"coach_saw": "flat", "sharpness": None}, "steady", 0),
        ({"coach_saw": "flat", "loading": False}, "steady", 0),
        ({"coach_saw": "full", "fullness": 4}, "coach-sees-full", 0),
        ({"coach_saw": "full", "fullness": 5}, "steady", 0),
        ({"coach_saw": "on course", "fullness": 4}, "coach-sees-on-course", 0),
        ({"coach_saw": "on course", "fullness": 5}, "steady", 0),
        ({"coach_saw": "full", "fullness": 4, "loading": False}, "flat-before-load", 0),
        ({"coach_saw": "on course", "fullness": 4, "loading": False}, "flat-before-load", 0),
        ({"coach_saw": "on course", "coach_sharpness": 2}, "coach-sees-blur", 0),
        ({"coach_saw": "full", "coach_sharpness": 2, "fullness": 8}, "coach-sees-blur", -1),
        ({"coach_saw": "full", "coach_sharpness": 3}, "full-and-sharp", 0),
        ({"coach_saw": "full", "coach_sharpness": 2, "loading": False}, "steady", 0),
    ],
)
def test_what_the_coach_sees_goes_before_what_was_told(
    told: dict[str, object], rule: str, steps: int
) -> None:
    assert judged(**told)[:2] == (rule, steps)


@pytest.mark.parametrize(
    ("told", "judgement"),
    [
        # fuller than this event asks for
        ({"fullness_most": 5}, ("fuller-than-asked", -1, False)),
        ({"fullness_most": 6}, ("full-and-sharp", 0, False)),
        ({"fullness_most": 5, "load_eaten": False}, ("full-and-sharp", 0, False)),
        ({"sharpness": 2}, ("spilled-over", -2, False)),
        ({"sharpness": 2, "fullness": 5}, ("blurring", 0, True)),
        ({"sharpness": 2, "fullness": 8, "load_eaten": False}, ("blurring", 0, True)),
        ({"sharpness": 2, "fullness": 4}, ("flat-and-watery", 0, True)),
        ({"fullness": 4, "weight_kg": 61.5}, ("flat-but-heavy", 0, True)),
        ({"fullness": 4, "water_l": 2.0}, ("underdrunk", 0, False)),
        ({"fullness": 4}, ("flat-in-load", 1, False)),
        ({"fullness": 2}, ("flat-in-load", 2, False)),
        # no raise is made large, nor goes without the coach, where weight or water were not told
        ({"fullness": 2, "weight_kg": None}, ("flat-in-load", 1, True)),
        ({"fullness": 2, "water_l": None}, ("flat-in-load", 1, True)),
        ({"fullness": 4, "load_eaten": False, "water_l": None}, ("flat-in-load", 0, False)),
        ({"fullness": 4, "sharpness": 3}, ("flat-and-softening", 0, True)),
        ({"fullness": 8}, ("ahead-of-plan", -1, False)),
        ({"loading": False, "depleting": True, "dizzy": True}, ("dropping-too-fast", 1, True)),
        ({"loading": False, "depleting": True, "sleepless": True}, ("dropping-too-fast", 1, True)),
        ({"loading": False, "depleting": True, "weight_kg": 58.0}, ("dropping-too-fast", 1, False)),
        (
            {"loading": False, "depleting": True, "dizzy": True, "weight_kg": 61.5},
            ("unwell-and-heavy", 0, True),
        ),
        ({"loading": False, "dizzy": True}, ("steady", 0, False)),
        ({"loading": False, "weight_kg": 58.0}, ("steady", 0, False)),
        ({"loading": False, "fullness": 8}, ("steady", 0, False)),
        ({"fullness": 5}, ("steady", 0, False)),
    ],
)
def test_each_look_has_its_steps_and_fetches_the_coach_where_it_has_to(
    told: dict[str, object], judgement: tuple[str, int, bool]
) -> None:
    assert judged(**told) == judgement


def test_a_change_is_said_as_more_less_or_none() -> None:
    assert [in_words(grams) for grams in (25, -25, 0, 12.5, 1)] == [
        "25 g more", "25 g less", "no change", "12.5 g more", "1 g more",
    ]  # fmt: skip


def test_a_change_is_said_as_what_is_left_of_it_once_the_limits_have_cut_it() -> None:
    rule: Rule = next(one for one in RULES if one.id == "flat-in-load")
    facts = _facts(fullness=4).as_dict()
    assert rule.tells(Told(facts, 25)).endswith("still sharp, so eat 25 g more today.")
    assert rule.tells(Told(facts, 10)).endswith("still sharp, so eat 10 g more today.")
    assert rule.tells(Told(facts, 0)).endswith("but more is not allowed today. Stay on plan.")
