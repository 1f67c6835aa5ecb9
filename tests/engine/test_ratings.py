"""How an athlete's ratings compare with the coach's, against scipy's standard error of a mean."""

from __future__ import annotations

import pytest

from engine.planning.behind.ratings import BothSaid, fullness_apart, seen_fullness, sharpness_apart
from engine.values.checkin import CoachLook


def both(
    fullness: int | None,
    look: CoachLook,
    *,
    expected: int | None = 6,
    sharpness: int | None = None,
    seen: int | None = None,
) -> BothSaid:
    return BothSaid(
        fullness=fullness, expected=expected, sharpness=sharpness, look=look, seen_sharpness=seen
    )


def test_nothing_is_said_before_five_mornings_have_both() -> None:
    four = [both(4, CoachLook.ON_COURSE)] * 4
    assert fullness_apart(four) is None
    assert fullness_apart([*four, both(None, CoachLook.FULL), both(9, CoachLook.SPILLED)]) is None
    found = fullness_apart([*four, both(4, CoachLook.ON_COURSE)])
    assert found is not None and found.mornings == 5


def test_the_difference_is_a_mean_with_its_standard_error() -> None:
    told = (4, 5, 3, 6, 4, 5)
    found = fullness_apart([both(one, CoachLook.ON_COURSE) for one in told])
    assert found is not None
    off = [one - 6 for one in told]
    assert found.grades == pytest.approx(sum(off) / 6)
    from scipy.stats import sem  # noqa: PLC0415 - a second and more

    assert found.error == pytest.approx(float(sem(off)))
    assert found.worth_a_word


def test_a_look_is_a_grade_against_what_was_expected_and_past_full_is_none() -> None:
    grades = [seen_fullness(both(5, look)) for look in CoachLook]
    assert grades[0] < grades[1] < grades[2]  # type: ignore[operator]
    assert grades[1] == 6
    assert grades[3:] == [None, None]
    assert seen_fullness(both(5, CoachLook.FULL, expected=10)) == 10
    assert seen_fullness(both(5, CoachLook.FLAT, expected=None)) is None


def test_a_difference_that_chance_would_make_is_not_worth_a_word() -> None:
    apart = fullness_apart([both(f, CoachLook.ON_COURSE) for f in (2, 9, 3, 9, 2)])
    assert apart is not None and not apart.worth_a_word


def test_sharpness_is_compared_where_the_coach_gave_it() -> None:
    said = [both(6, CoachLook.FULL, sharpness=3, seen=4)] * 5
    found = sharpness_apart([*said, both(6, CoachLook.FULL, sharpness=1)])
    assert found is not None
    assert (found.mornings, found.grades) == (5, -1)
