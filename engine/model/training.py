"""What the coach's words for a session mean, and how much of it what was told stands for."""

from __future__ import annotations

from engine.evidence.body import tracking as known
from engine.model.physiology import Exercise
from engine.values.checkin import TrainingDone

RESTING = ("rest", "none", "off", "posing")
DEPLETING = ("depletion", "depleting", "legs")

#: Share of the planned session and cardio by what was told; nothing told counts as planned.
TRAINED = {
    None: 1.0,
    TrainingDone.AS_PLANNED: 1.0,
    TrainingDone.LESS: float(known.TRAINED_LESS),
    TrainingDone.MORE: float(known.TRAINED_MORE),
    TrainingDone.NONE: 0.0,
}


def exercise(training: str) -> Exercise:
    """How hard a session the coach's words mean, for the glycogen that it costs."""
    said = training.lower()
    if not said or any(said.startswith(word) for word in RESTING):
        return Exercise.NONE
    if any(word in said for word in DEPLETING):
        return Exercise.DEPLETING
    return Exercise.LIGHT


def is_training(training: str) -> bool:
    return exercise(training) is not Exercise.NONE


def training_spread(done: TrainingDone | None) -> float:
    """How little is known of what was done (SD of the logarithm)."""
    if done is None:
        return float(known.TRAINED_UNKNOWN_SPREAD)
    vague = done in (TrainingDone.LESS, TrainingDone.MORE)
    return float(known.TRAINED_SPREAD) if vague else 0.0
