"""A text as numbered features: its words, their neighbours and their letters.

Training and reading both go through here. Words are told apart as the second ear tells them.
"""

from __future__ import annotations

from engine.symptoms.ear.reading import features as heard

#: How much each family counts: words, their neighbours, letters.
FAMILIES = (1.0, 1.4, 1.0)


def features(text: str) -> tuple[list[int], ...]:
    """The numbers of the text's features, each once, by family; all under the ear's `BUCKETS`."""
    return heard(" ".join(text.split()))[: len(FAMILIES)]
