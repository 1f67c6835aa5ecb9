"""What a drafted plan has for training, in the reader's language; a coach's own words as they stand."""

from __future__ import annotations

from functools import partial

from bot.words.languages import in_each, mark, tr

#: As `engine.planning.draft` and `engine.planning.bridge` have them.
DRAFTED = (
    mark("upper body, usual session"),
    mark("legs, the last time"),
    mark("upper body, short pump session at half effort, far from failure"),
    mark("whole upper body, short pump session at half effort, far from failure"),
    mark("rest, posing only"),
    mark("pump-up before going on"),
    mark("light pump session and posing, no legs, nothing to failure"),
)


def as_drafted(said: str) -> str:
    """What a draft would call it, where it is that in any language; else as it was said."""
    return next((one for one in DRAFTED if said in in_each(partial(tr, one))), said)


def training_words(training: str) -> str:
    return tr(training) if training in DRAFTED else training
