"""What a drafted plan has for training, in the reader's language; a coach's own words as they stand."""

from __future__ import annotations

from bot.languages import mark, tr

#: As `engine.draft` has them.
DRAFTED = (
    mark("upper body, usual session"),
    mark("legs, the last time"),
    mark("upper body, short pump session, high repetitions"),
    mark("whole upper body, short and light pump session"),
    mark("rest, posing only"),
    mark("pump-up before going on"),
)


def training_words(training: str) -> str:
    return tr(training) if training in DRAFTED else training
