"""Shares and means with their intervals, against scipy's."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from engine.values.shares import Z_95, Share, student_95


@given(st.integers(1, 400).flatmap(lambda n: st.tuples(st.integers(0, n), st.just(n))))
def test_the_interval_is_wilsons_as_scipy_has_it(counted: tuple[int, int]) -> None:
    count, total = counted
    from scipy.stats import binomtest  # noqa: PLC0415 - a second and more

    reference = binomtest(count, total).proportion_ci(confidence_level=0.95, method="wilson")
    share = Share(count, total)
    assert share.low == pytest.approx(reference.low, abs=1e-12)
    assert share.high == pytest.approx(reference.high, abs=1e-12)
    assert 0 <= share.low <= share.share <= share.high <= 1


def test_the_deviate_is_that_of_ninety_five_per_cent() -> None:
    from scipy.stats import norm  # noqa: PLC0415

    assert pytest.approx(norm.ppf(0.975), abs=1e-12) == Z_95


@pytest.mark.parametrize("freedom", [*range(1, 41), 99, 100, 1000, 5001])
def test_students_deviate_is_scipys(freedom: int) -> None:
    from scipy.special import stdtrit  # noqa: PLC0415

    assert student_95(freedom) == pytest.approx(float(stdtrit(freedom, 0.975)), rel=1e-10)


def test_of_one_alone_no_interval_is_told() -> None:
    with pytest.raises(ValueError, match="none"):
        student_95(0)


def test_of_none_anything_may_be_true() -> None:
    none = Share(0, 0)
    assert math.isnan(none.share) and (none.low, none.high) == (0, 1)


@pytest.mark.parametrize(("count", "total"), [(3, 2), (-1, 2)])
def test_more_than_all_is_no_share(count: int, total: int) -> None:
    with pytest.raises(ValueError, match="no share"):
        Share(count, total)
