"""Whatever somebody may type."""

from __future__ import annotations

from hypothesis import strategies as st


def any_text(longest: int) -> st.SearchStrategy[str]:
    """The same characters as `st.text()` has by itself, which tries more than a million of them in a
    process that is the first to do so.
    """
    return st.text(st.characters(exclude_categories=["Cs"]), max_size=longest)
