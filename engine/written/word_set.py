"""A list of words as a set."""

from __future__ import annotations


def word_set(text: str) -> frozenset[str]:
    """The words of `text`, which is written out in lines for the reader's sake."""
    return frozenset(text.split())
