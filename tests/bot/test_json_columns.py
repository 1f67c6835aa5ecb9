"""JSON columns: what is written is read back as it was, and as the standard library reads it."""

from __future__ import annotations

import json
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.store.driver import from_text, to_text

#: Any text at all, half signs of UTF-16 included: RFC 8259, section 8.2, allows them in JSON.
TEXT = st.text(st.characters())
#: Nothing that is kept is a longer number: RFC 8259, section 6, promises less than these 64 bits.
INTEGERS = st.integers(-(2**63), 2**64 - 1)
VALUES = st.recursive(
    st.none() | st.booleans() | INTEGERS | st.floats(allow_nan=False, allow_infinity=False)
    | TEXT | st.text(st.characters(categories=["Cs"]), max_size=2),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(TEXT, inner, max_size=4),
    max_leaves=12,
)  # fmt: skip


@given(VALUES)
def test_what_is_written_and_read_is_what_the_standard_library_makes_of_it(value: Any) -> None:
    expected = json.loads(json.dumps(value))  # two halves of a sign become the whole one
    written = to_text(value)
    assert from_text(written) == expected
    assert json.loads(written) == expected
    assert from_text(json.dumps(value)) == expected


def test_numbers_beyond_the_finite_in_old_rows_and_numbers_as_keys_are_read() -> None:
    assert from_text('{"off": Infinity}') == {"off": float("inf")}
    assert from_text(to_text({3: "three"})) == {"3": "three"}


@pytest.mark.parametrize("value", [date(2027, 5, 9), {"a": object()}, {1, 2}])
def test_what_is_no_json_is_refused(value: Any) -> None:
    with pytest.raises(TypeError):
        to_text(value)
