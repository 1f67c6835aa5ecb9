"""What a word of a check-in may say."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Means(StrEnum):
    """What a word or phrase does to the figures around it."""

    LABEL = "label"  # names an answer
    SCORE = "score"  # says a score in words; `value` is the likely one
    CORRECTS = "corrects"  # between a figure and the one that stands in its stead
    VESSEL = "vessel"  # what is drunk from: its size is not known
    EATEN = "eaten"  # with what was eaten or came on top, by the piece
    LINK = "link"  # says nothing by itself: "is", "my", "this morning"
    ABOUT = "about"  # before a figure that is rounded
    BOUND = "bound"  # before a figure that is only a bound
    RANGE = "range"  # between the two ends of a range
    NOT = "not"  # denies what follows
    OTHERWISE = "otherwise"  # a wish, a plan, a limit: no report
    OTHER_DAY = "other-day"
    TODAY = "today"
    COUNTS_NOT = "counts-not"  # a number before it does not count it
    FINE = "fine"
    ON_TARGET = "on-target"
    OFF_TARGET = "off-target"
    YES = "yes"
    NO = "no"
    LATER = "later"  # after a label: it is told another time
    SKIP = "skip"  # after a label, or for the answer in `about`
    TRAINING = "training"  # `about` is how it went
    SAME = "same"  # the answer in `about` is what it was the day before
    MANNERS = "manners"


@dataclass(frozen=True, slots=True)
class Meaning:
    """`about` is the answer's key, or the way the training went; `value` a score or a number."""

    means: Means
    about: str = ""
    value: float | None = None


Table = dict[tuple[Means, str, float | None], str]
