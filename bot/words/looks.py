"""What a coach sees of a morning, in words: shared by whoever shows it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from bot.words.languages import mark, tr
from engine.values.observed import CoachLook

#: Each look inside a sentence.
SEEN: Mapping[CoachLook, str] = {
    CoachLook.FLAT: mark("flat"),
    CoachLook.ON_COURSE: mark("on course"),
    CoachLook.FULL: mark("full"),
    CoachLook.SOFTENING: mark("softening"),
    CoachLook.SPILLED: mark("spilled over"),
}


def seen_look(look: str) -> str:
    return tr(SEEN[CoachLook(look)])


def seen(look: str, sharpness: int | None) -> str:
    """ "softening, sharpness 3", inside a sentence."""
    if sharpness is None:
        return seen_look(look)
    return tr("{look}, sharpness {score}", look=seen_look(look), score=sharpness)


def seen_in(facts: Mapping[str, Any]) -> str:
    """The same from the facts of a stored decision; "" where no coach had looked."""
    if not facts.get("coach_saw"):
        return ""
    return seen(facts["coach_saw"], facts.get("coach_sharpness"))
