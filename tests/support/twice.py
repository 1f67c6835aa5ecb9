"""What is made is made again: remembered by nobody, and with other dice."""

from __future__ import annotations

import random
from collections.abc import Callable
from typing import TypeVar

import numpy as np

from engine.decision import beliefs

_Made = TypeVar("_Made")


def made_twice(make: Callable[[], _Made]) -> tuple[_Made, _Made]:
    """It twice: what is kept between two decisions is forgotten, and dice without a seed fall anew."""
    made = []
    for seed in (1, 2):
        for value in vars(beliefs).values():
            if hasattr(value, "cache_clear"):
                value.cache_clear()
        random.seed(seed)
        np.random.seed(seed)
        made.append(make())
    return made[0], made[1]
