"""A coach's own numbers over all their athletes and weeks; pure: frames in, counts out.

A day that was changed was another day than one that was not, so what is said of changes is how often
the look came nearer after them, beside how often it did by itself, and never that they were the cause.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from itertools import pairwise
from typing import TYPE_CHECKING

from engine.values.checkin import Look
from engine.values.shares import Share, student_95

if TYPE_CHECKING:
    import pandas as pd

#: Our own choice: under this many a share is shown and said to mean little.
FEW = 10
#: How far from the fullness expected, in points of ten, a morning is to be called off it.
OFF_BY = 1
RAISED, LOWERED, KEPT = "raised", "lowered", "kept"
#: Bounds between which chances of a full look are held against what came.
CHANCES = (0.0, 1 / 3, 2 / 3, 1.0)


@dataclass(frozen=True, slots=True)
class Minutes:
    """How long something took: the middle one, and what nine of ten stayed under."""

    count: int
    median: float
    nine_of_ten: float


@dataclass(frozen=True, slots=True)
class Apart:
    """A mean difference over pairs with its 95 % interval (Student's t)."""

    pairs: int
    mean: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Band:
    """Forecasts whose chance of a full look lay between two bounds: the mean chance, and what came."""

    low: float
    high: float
    said: float
    came: Share


@dataclass(frozen=True, slots=True, kw_only=True)
class Numbers:
    """`brier`: the mean squared error of the three chances, 0 best, 2/3 for a third each."""

    athletes: int
    weeks: int
    imported: int
    looks: Mapping[Look, Share]
    helped: Mapping[str, Share]
    by_rule: Mapping[str, Share]
    answered: Share
    after_prompt: Minutes | None
    signed: Share
    to_sign: Minutes | None
    sharpness: Apart | None
    fullness: Apart | None
    bands: tuple[Band, ...] = field(default=())
    brier: float | None = None


def looks(weeks: pd.DataFrame) -> dict[Look, Share]:
    """How weeks with a verdict ended. `weeks`: a row a week, `look` or None."""
    told = weeks["look"].dropna()
    return {look: Share(int((told == look.value).sum()), len(told)) for look in Look}


def changes(days: pd.DataFrame) -> pd.DataFrame:
    """The mornings off what was expected, each with what was done and whether the next was nearer.

    `days`: athlete_id, event_id, days_out, fullness, expected, change_g, rule.
    """
    later = days[["event_id", "days_out", "fullness", "expected"]].copy()
    later["days_out"] += 1
    both = days.merge(later, on=["event_id", "days_out"], suffixes=("", "_after"))
    both = both.dropna(subset=["fullness", "expected", "fullness_after", "expected_after"])
    off = (both["fullness"] - both["expected"]).abs()
    after = (both["fullness_after"] - both["expected_after"]).abs()
    both["nearer"] = after < off
    both["done"] = KEPT
    both.loc[both["change_g"] >= 0.5, "done"] = RAISED
    both.loc[both["change_g"] <= -0.5, "done"] = LOWERED
    return both[off >= OFF_BY]


def shares_by(frame: pd.DataFrame, key: str) -> dict[str, Share]:
    """How often it came nearer, by what was done; the most frequent first."""
    found = frame.dropna(subset=[key]).groupby(key)["nearer"].agg(["sum", "count"])
    found = found.sort_values("count", ascending=False, kind="stable")
    return {str(name): Share(int(row["sum"]), int(row["count"])) for name, row in found.iterrows()}


def minutes(series: pd.Series[float]) -> Minutes | None:
    """None without any."""
    told = series.dropna()
    if told.empty:
        return None
    return Minutes(len(told), float(told.median()), float(told.quantile(0.9)))


def apart(differences: pd.Series[float]) -> Apart | None:
    """None for fewer than three pairs, of which no interval can be told."""
    told = differences.dropna()
    count = len(told)
    if count < 3:
        return None
    mean = float(told.mean())
    reach = student_95(count - 1) * float(told.std(ddof=1)) / count**0.5
    return Apart(count, mean, mean - reach, mean + reach)


def calibration(forecasts: pd.DataFrame) -> tuple[tuple[Band, ...], float | None]:
    """`forecasts`: one a week, the chances `flat`, `full`, `spilled` of 1, and `look` as it came."""
    if forecasts.empty:
        return (), None
    bands = []
    for low, high in pairwise(CHANCES):
        last = high == CHANCES[-1]
        chance = forecasts["full"]
        inside = forecasts[(chance >= low) & ((chance <= high) if last else (chance < high))]
        if len(inside):
            came = int((inside["look"] == Look.FULL.value).sum())
            said = float(inside["full"].mean())
            bands.append(Band(low, high, said, Share(came, len(inside))))
    chances = forecasts[["flat", "full", "spilled"]].to_numpy(float)
    order = (Look.FLAT, Look.FULL, Look.SPILLED)
    happened = [[look == one.value for one in order] for look in forecasts["look"]]
    return tuple(bands), float(((chances - happened) ** 2).sum(axis=1).mean())
