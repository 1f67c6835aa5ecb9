"""What is looked at in the days after a show."""

from __future__ import annotations

import pytest

from engine.safety import Level
from engine.safety.weight import LOOKED_AT, after_show_flags
from engine.symptoms import WARNINGS, Symptom


@pytest.mark.parametrize(("weight", "told"), [(62.99, False), (63.0, False), (63.01, True)])
def test_a_rise_is_told_past_five_per_cent_of_the_last_morning(weight: float, told: bool) -> None:
    # Medicine (Baltimore) 2017;96(40):e8251: +10 kg in four days before paralysis. 5 % of 60 kg.
    flags = list(after_show_flags([], weight, 60.0))
    assert [flag.id for flag in flags] == (["after-show-rise"] if told else [])
    assert all(flag.level is Level.CAUTION for flag in flags)


def test_without_a_weight_before_or_now_nothing_is_made_of_it() -> None:
    assert list(after_show_flags([], None, 60)) == []
    assert list(after_show_flags([], 90, None)) == []


@pytest.mark.parametrize("symptom", LOOKED_AT)
def test_complaints_short_of_an_emergency_are_a_caution_in_these_days(symptom: Symptom) -> None:
    (flag,) = after_show_flags([symptom], None, None)
    assert (flag.id, flag.level) == ("after-show-complaint", Level.CAUTION)
    assert dict(flag.facts) == {"symptoms": symptom.value}
    assert "e8251" in flag.sources[0].citation
    assert symptom not in WARNINGS  # those have their own way
