"""What somebody wrote, as others read it."""

from __future__ import annotations

from collections.abc import Sequence

from bot.words.languages import tr

LONGEST_SHOWN = 300  # characters of a sentence that is quoted


def shown(text: str, most: int = LONGEST_SHOWN) -> str:
    """The text, cut where it is too long to be quoted."""
    plain = text.strip()
    return plain if len(plain) <= most else f"{plain[: most - 1]}…"


def wrote(name: str, said: str) -> str:
    """A sentence of an athlete's among other notes."""
    return tr("{name} wrote: {said}", name=name, said=said)


def from_athlete(name: str, said: Sequence[str]) -> str:
    """All that came in one stretch; each sentence in a line of its own."""
    lines = said if len(said) == 1 else [f"• {one}" for one in said]
    return tr("From {name}:\n{text}", name=name, text="\n".join(lines))
