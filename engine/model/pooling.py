"""From finished weeks to the prior for the next athlete: a hierarchical update, parameter by parameter.

Each athlete's belief after their weeks is the published prior times what the weeks said; the prior is
divided out, and what is left tells of that athlete. Athletes scatter around their group's mean, which
is unknown by a part of the published spread; their weeks narrow it, and the next athlete is drawn from
around it. Kinds of body go the same way by counts. With no weeks it is the published prior.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from engine.evidence.body import pooling as e
from engine.model.particles import ALIKE, MODEL, NAMES, PRIOR, Belief
from engine.model.structures import KINDS, Kind
from engine.values.body import KindShares, Prior, Spread, Taught

#: What belongs to a scale or a week, and so says nothing of other people.
NOT_SHARED = frozenset({"scale"})
ROUNDS = 30
DIGITS = 6


def taught(belief: Belief, weeks: int) -> Taught:
    """A belief after an athlete's finished weeks, summed up for the pool."""
    values, kinds = belief.person.values, belief.person.kinds
    return Taught(
        weeks=weeks,
        model=MODEL,
        parameters=tuple(
            Spread(name, _round(values[row].mean()), max(_round(values[row].std()), 1e-6))
            for row, name in enumerate(NAMES)
            if name not in NOT_SHARED
        ),
        kinds=tuple(
            KindShares(kind.name.lower(), _shares(np.bincount(kinds[kind], minlength=len(likely))))
            for kind, likely in zip(Kind, KINDS, strict=True)
        ),
    )


def pooled(athletes: Sequence[Taught]) -> Prior | None:
    """The prior that these athletes' weeks lead to; None where none is of this model."""
    counted = [one for one in athletes if one.model in ALIKE and one.weeks > 0]
    if not counted:
        return None
    return Prior(
        weeks=sum(one.weeks for one in counted),
        athletes=len(counted),
        model=MODEL,
        parameters=tuple(
            _pooled(name, [_named(one, name) for one in counted])
            for name in NAMES
            if name not in NOT_SHARED
        ),
        kinds=tuple(
            KindShares(
                kind.name.lower(),
                _pooled_kinds(likely, [one.kinds[kind].shares for one in counted]),
            )
            for kind, likely in zip(Kind, KINDS, strict=True)
        ),
    )


def _named(one: Taught, name: str) -> Spread:
    return next(each for each in one.parameters if each.name == name)


def _pooled(name: str, athletes: Sequence[Spread]) -> Spread:
    """Where people of the group lie and how far they scatter, by expectation and maximization."""
    middle, spread = PRIOR[name]
    published = spread**2
    unknown = float(e.BETWEEN) * published
    said, sure = _alone(middle, published, athletes)
    expected = published - unknown
    mean, within, held = middle, expected, float(e.SPREAD_HELD)
    for _ in range(ROUNDS):
        left = 1 / (1 / within + sure)
        each = left * (mean / within + sure * said)
        weight = len(said) / within + 1 / unknown
        mean = float((each.sum() / within + middle / unknown) / weight)
        scatter = float(((each - mean) ** 2 + left).sum())
        within = (held * expected + scatter) / (held + len(said))
    group = 1 / (float((1 / (within + 1 / sure[sure > 0])).sum()) + 1 / unknown)
    return Spread(name, _round(mean), _round(np.sqrt(within + group)))


def _alone(
    middle: float, published: float, athletes: Sequence[Spread]
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """What each athlete's weeks say without the published prior, and how surely (1/variance)."""
    left = np.array([one.spread**2 for one in athletes])
    means = np.array([one.mean for one in athletes])
    counts = left <= (1 - float(e.LEARNT_FROM)) * published
    sure = np.where(counts, 1 / left - 1 / published, 0.0)
    away = (means / left - middle / published) / np.where(counts, sure, 1.0) - middle
    farthest = float(e.FARTHEST) * np.sqrt(published)
    return middle + np.where(counts, np.clip(away, -farthest, farthest), 0.0), sure


def _pooled_kinds(
    likely: Sequence[float], athletes: Sequence[tuple[float, ...]]
) -> tuple[float, ...]:
    """Shares of kinds in the group, by expectation and maximization from the published ones."""
    published = np.asarray(likely, dtype=float)
    published = published / published.sum()
    said = np.asarray(athletes, dtype=float) / published
    shares, held = published, float(e.KINDS_HELD)
    for _ in range(ROUNDS):
        each = said * shares
        each /= each.sum(axis=1, keepdims=True)
        shares = (held * published + each.sum(axis=0)) / (held + len(said))
    shares = np.maximum(shares, float(e.KIND_LEAST))
    return _shares(shares)


def _shares(counts: np.ndarray) -> tuple[float, ...]:
    whole = np.asarray(counts, dtype=float)
    rounded = [_round(one) for one in whole / whole.sum()]
    rounded[int(np.argmax(rounded))] += 1 - sum(rounded)
    return tuple(_round(one) for one in rounded)


def _round(value: float) -> float:
    return round(float(value), DIGITS)
