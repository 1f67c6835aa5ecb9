"""Many of something, a few hundred at a time: databases bound how many values one query may name."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import islice
from typing import TypeVar

AT_ONCE = 500

_Item = TypeVar("_Item")


def batches(items: Iterable[_Item]) -> Iterator[list[_Item]]:
    """The items in their order, in lists of at most `AT_ONCE`, none of them empty."""
    left = iter(items)
    while batch := list(islice(left, AT_ONCE)):
        yield batch
