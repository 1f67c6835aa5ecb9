"""A week that is over: what was planned, set and eaten, and what of it to carry to the next one.

The coach's word on the look says how it went; the rest says whether the plan was tried at all. A load
that was not eaten is no verdict on the load.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from engine.evidence.deciding import COMMON_PRACTICE, OWN_CHOICE, SLEEPLESS_H, UNDERDRUNK_SHARE
from engine.evidence.planning import reviewing as e
from engine.evidence.source import Source
from engine.values.checkin import CheckIn, Gut, Look, Observed
from engine.values.plan import DayTarget, PeakPlan


@dataclass(frozen=True, slots=True, kw_only=True)
class DayBehind:
    """One day as planned, as set (g) and as told the morning after; `morning` is its own check-in.

    `seen`: what the coach saw of that morning.
    """

    target: DayTarget
    set_g: float
    eaten_g: float | None = None
    morning: CheckIn | None = None
    seen: Observed | None = None

    @property
    def days_out(self) -> int:
        return self.target.days_out


@dataclass(frozen=True, slots=True)
class Lesson:
    """Something to carry over. `facts` hold the figures that it speaks of."""

    id: str
    source: Source
    facts: Mapping[str, float] = field(default_factory=dict)


@dataclass(frozen=True, slots=True, kw_only=True)
class Debrief:
    """Sums over the load in g; `eaten_share` is eaten over set on the load days known, or None.

    `weight_change_kg` runs from the morning of the first load day to that of the day itself.
    """

    load_days: int
    planned_g: float
    set_g: float
    eaten_share: float | None
    mornings: int
    weight_change_kg: float | None
    lessons: tuple[Lesson, ...]


def debrief(days: Sequence[DayBehind], look: Look | None) -> Debrief:
    """The week read as a whole, the lesson of the load first. `days`: those that the plan had."""
    load_days = _load_days(days)
    load = [day for day in days if day.days_out in load_days]
    share = _eaten_share(load)
    planned, set_g = sum(day.target.carb_g for day in load), sum(day.set_g for day in load)
    return Debrief(
        load_days=len(load),
        planned_g=planned,
        set_g=set_g,
        eaten_share=share,
        mornings=sum(_has_numbers(day) for day in days),
        weight_change_kg=_weight_change(days),
        lessons=(*_of_the_load(look, share, planned, set_g), *_of_the_mornings(days)),
    )


def _load_days(days: Sequence[DayBehind]) -> tuple[int, ...]:
    targets = sorted((day.target for day in days), key=lambda target: -target.days_out)
    return PeakPlan(tuple(targets)).load_days


def _of_the_load(
    look: Look | None, share: float | None, planned: float, set_g: float
) -> Iterator[Lesson]:
    short = share is not None and share < float(e.EATEN_SHORT_SHARE)
    over = share is not None and share > float(e.EATEN_OVER_SHARE)
    eaten = {} if share is None else {"eaten_percent": round(100 * share)}
    match look:
        case None:
            yield Lesson("no-word-on-the-look", OWN_CHOICE)
        case Look.FLAT if short:
            yield Lesson("flat-not-eaten", COMMON_PRACTICE, eaten)
        case Look.FLAT:
            yield Lesson("flat-more", COMMON_PRACTICE)
        case Look.SPILLED if over:
            yield Lesson("spilled-overeaten", COMMON_PRACTICE, eaten)
        case Look.SPILLED:
            yield Lesson("spilled-less", COMMON_PRACTICE)
        case Look.FULL:
            yield Lesson("full-again", COMMON_PRACTICE)
    if look is not Look.FLAT and short:
        yield Lesson("eaten-short", COMMON_PRACTICE, eaten)
    if look is not Look.SPILLED and over:
        yield Lesson("eaten-over", COMMON_PRACTICE, eaten)
    if planned and abs(set_g - planned) > float(e.LOAD_MOVED_SHARE) * planned + 1e-9:
        moved = {"set_g": set_g, "planned_g": planned}
        yield Lesson("load-moved", e.LOAD_MOVED_SHARE.source, moved)


def _of_the_mornings(days: Sequence[DayBehind]) -> Iterator[Lesson]:
    after_load = {out - 1 for out in _load_days(days)}
    gut = [
        day.days_out
        for day in days
        if day.days_out in after_load
        and day.morning is not None
        and day.morning.gut in (Gut.HEAVY, Gut.BAD)
    ]
    if gut:
        yield Lesson("gut-in-the-load", COMMON_PRACTICE, {"mornings": len(gut)})
    dry = sum(1 for day, told in _with_told(days) if _underdrunk(day, told))
    if dry:
        yield Lesson("water-short", COMMON_PRACTICE, {"days": dry})
    sleepless = sum(
        day.morning is not None
        and day.morning.sleep_h is not None
        and day.morning.sleep_h < float(SLEEPLESS_H)
        for day in days
    )
    if sleepless:
        yield Lesson("sleep-short", COMMON_PRACTICE, {"nights": sleepless})
    missed = sum(not _has_numbers(day) for day in days)
    if missed >= e.MORNINGS_MISSED.value:
        yield Lesson("mornings-missed", e.MORNINGS_MISSED.source, {"mornings": missed})


def _with_told(days: Sequence[DayBehind]) -> Iterator[tuple[DayBehind, CheckIn]]:
    """Load days, each with the check-in of the morning after it, which speaks of it."""
    mornings = {day.days_out: day.morning for day in days}
    load_days = _load_days(days)
    for day in days:
        told = mornings.get(day.days_out - 1)
        if day.days_out in load_days and told is not None:
            yield day, told


def _underdrunk(day: DayBehind, told: CheckIn) -> bool:
    least = float(UNDERDRUNK_SHARE) * day.target.water_l
    return told.water_l is not None and told.water_l < least - 1e-9


def _eaten_share(load: Sequence[DayBehind]) -> float | None:
    known = [(day.eaten_g, day.set_g) for day in load if day.eaten_g is not None and day.set_g > 0]
    if len(known) < min(e.EATEN_KNOWN_DAYS.value, max(len(load), 1)):
        return None
    return sum(eaten for eaten, _ in known) / sum(set_g for _, set_g in known)


def _has_numbers(day: DayBehind) -> bool:
    return day.morning is not None and day.morning.weight_kg is not None


def _weight_change(days: Sequence[DayBehind]) -> float | None:
    weights = {day.days_out: day.morning.weight_kg for day in days if day.morning is not None}
    first, last = weights.get(max(_load_days(days), default=0)), weights.get(0)
    return last - first if first is not None and last is not None else None
