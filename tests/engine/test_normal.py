"""The normal distribution of whole arrays, against scipy's: kept decisions replay to the bit."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
import pytest
from scipy.special import ndtr

from engine.model.normal import normal_below

#: Every so many of the numbers that single precision has between -15, under which the chance is 0,
#: and 6, over which it is 1; a prime, so that each last digit comes.
STEP = 1009


def singles() -> Iterator[np.ndarray]:
    for most, sign in ((6, 0), (15, 1 << 31)):
        bits = np.arange(0, int(np.float32(most).view(np.uint32)), STEP, dtype=np.uint32)
        yield (bits | np.uint32(sign)).view(np.float32)


def test_in_single_precision_it_is_scipys_to_the_bit() -> None:
    for numbers in singles():
        found = normal_below(numbers)
        assert found.dtype == np.float32
        assert np.array_equal(found.view(np.uint32), ndtr(numbers).view(np.uint32))


def test_in_double_precision_it_is_scipys_but_for_the_last_digits() -> None:
    numbers = np.linspace(-37, 9, 200_001)
    found = normal_below(numbers)
    assert found.dtype == np.float64
    # An exponential of 600 and more in the far tail: a last digit of its argument is 1e-13 of it.
    np.testing.assert_allclose(found, ndtr(numbers), rtol=1e-12)
    middle = np.abs(numbers) < 5
    np.testing.assert_allclose(found[middle], ndtr(numbers[middle]), rtol=2e-15)


@pytest.mark.parametrize("precision", [np.float32, np.float64])
def test_the_ends_are_none_and_all_and_what_is_no_number_stays_none(precision: type) -> None:
    ends = np.array([-np.inf, -1e30, -0.0, 0.0, 1e30, np.inf, np.nan], dtype=precision)
    assert np.array_equal(normal_below(ends), [0, 0, 0.5, 0.5, 1, 1, np.nan], equal_nan=True)
    assert normal_below(ends[:0]).shape == (0,)


def test_the_shape_is_kept() -> None:
    many = np.linspace(-9, 9, 60).reshape(3, 4, 5)
    assert np.array_equal(normal_below(many).ravel(), normal_below(many.ravel()))
