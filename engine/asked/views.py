"""Which view answers what an athlete asks for, however it is put.

A view of the athlete's own plan that was not meant does no harm, one that is missing leaves somebody
without an answer: so a request is heard where it is only about as likely as not. It is only shown
beside, after the words have gone to a person.
"""

from __future__ import annotations

from enum import StrEnum
from functools import cache
from importlib.resources import files

from engine.symptoms.ear.model import WholeModel
from engine.symptoms.ear.reading import BUCKETS
from engine.symptoms.ear.reading import features as heard

# A text as numbered features: its words, their neighbours and their letters.
#
# Training and reading both go through here. Words are told apart as the second ear tells them.

#: How much each family counts: words, their neighbours, letters.
FAMILIES = (1.0, 1.4, 1.0)


def features(text: str) -> tuple[list[int], ...]:
    """The numbers of the text's features, each once, by family; all under the ear's `BUCKETS`."""
    return heard(" ".join(text.split()))[: len(FAMILIES)]


class Model(WholeModel):
    __slots__ = ()
    ID, ROWS, NEXT_TO_NOTHING = "asked-1", BUCKETS, 4

    def chances(self, text: str) -> tuple[float, ...]:
        """How likely the text is of each class; they sum to 1."""
        return self.chances_by(zip(FAMILIES, features(text), strict=True))


@cache
def model() -> Model:
    """The model that the package carries, read once, when first asked for."""
    return Model.unpacked((files(__package__ or "") / "weights.bin").read_bytes())


#: What has more words than this is a story, not a question.
_MOST_WORDS = 60
#: A request is heard from this chance on. Chosen on sentences unseen in training.
THRESHOLD = 0.35
#: Another view is named beside the likeliest from this share of its chance on.
_AS_LIKELY = 0.3


class View(StrEnum):
    """What is shown, in the order of the model's classes behind "none"; each is a command's name."""

    TODAY = "today"  # figures of the day: carbs, water, steps, cardio, what kind of day it is
    WEEK = "week"  # other days, the phases, how long to go
    WHY = "why"  # why a figure is what it is
    FOOD = "food"  # what to eat, what fits, what instead
    STAGE = "stage"  # the day of the event by the hour, and what a delay does to it
    PAST = "past"  # how the weight went, what was told on a day gone by


def views_asked_for(text: str) -> tuple[View, ...]:
    """The likeliest view and, where it may as well be another, that; none for what a person is told."""
    if not 0 < len(text.split()) <= _MOST_WORDS:
        return ()
    none, *chances = model().chances(text)
    if 1.0 - none < THRESHOLD:
        return ()
    (most, first), (less, second), *_ = sorted(zip(chances, View, strict=True), reverse=True)
    return (first, second) if less >= _AS_LIKELY * most else (first,)


def view_asked_for(text: str) -> View | None:
    """The likeliest view, where the text asks for one."""
    return next(iter(views_asked_for(text)), None)
