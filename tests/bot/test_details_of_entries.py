"""Each kind of entry of the history is worded from what is kept with it, with what may lack left out.

Whoever keeps one gives all of that: `mypy` refuses what is forgotten, misspelt or of another type.
"""

from __future__ import annotations

from typing import Any, get_origin, get_type_hints

import pytest

from bot.people import details
from bot.people.changes import KINDS, AnyKind, Change, Kind
from bot.words.languages import Sentence, in_each

#: Words that are one of a few.
WORDS = {
    "day": "2027-05-06", "last": "2027-05-08", "days": ["2027-05-06"], "was": ["show", "2027-05-01"],
    "flag": "fainting", "level": "emergency", "now": "emergency", "use": "shows", "kind": "show",
    "rights": "full rights", "gut": "settled", "told": "fainting", "outcome": "held",
}  # fmt: skip
APART: dict[AnyKind, dict[str, Any]] = {
    Change.SIGNED_OFF: {"status": "approved"},
    Change.LOOK_CHECK: {"rule": "blurred"},
    Change.COACH_LOOK: {"look": "on course"},
    Change.LIMITS_SET: {"changed": {"step_g": [40, 50], "water_floor_l": [2, 2.5]}},
    Change.PLAN_SET: {"changed": [{"days_out": 2, "fields": {"carb_g": [400, 420]}}]},
}
BY_TYPE = {int: 3, float: 2.5, str: "baseline", bool: True, list: [], dict: {}}


def sample(kind: AnyKind) -> dict[str, Any]:
    """What may be kept with this kind, without what may lack."""
    shape, words = kind.detail, WORDS | APART.get(kind, {})
    hints = get_type_hints(shape)
    return {
        key: words[key] if key in words else BY_TYPE.get(get_origin(hints[key]) or hints[key])
        for key in shape.__required_keys__
    }


@pytest.mark.parametrize("kind", KINDS.values())
def test_each_kind_is_worded_from_what_is_kept_with_it(kind: AnyKind, ours: None) -> None:
    entry = kind(**sample(kind))
    assert entry.kind == kind
    for said in in_each(lambda: kind.told(entry.detail, volume_unit="l")):
        assert said.strip()
        assert "{" not in said


def test_a_phase_reads_in_the_words_of_each_language(ours: None) -> None:
    changed = [{"days_out": 4, "fields": {"phase": ["depletion", "load"]}}]
    kept = sample(Change.PLAN_SET) | {"changed": changed}
    english, german = in_each(lambda: Change.PLAN_SET.told(kept, volume_unit="l"))
    assert "phase Depletion to Load" in english
    assert "Phase von Entladen auf Laden" in german


def test_two_kinds_are_never_kept_as_the_same() -> None:
    assert len(KINDS) > 60
    with pytest.raises(ValueError, match='"held"'):
        Kind("held", details.Nothing, Sentence("held"))
