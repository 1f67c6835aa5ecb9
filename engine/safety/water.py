"""Flags on drinking: too little, too much, too fast, and the picture of too much water in the blood."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import timedelta

from engine.evidence import safety as evidence
from engine.evidence.source import Number
from engine.safety.complaints import Complaints
from engine.safety.drinking import fastest_drinking_l_per_h
from engine.safety.flag import Fact, Flag, FlagId
from engine.safety.readings import (
    above,
    at_least,
    believed_water,
    believed_weight,
    below,
    last_morning,
)
from engine.symptoms import Symptom
from engine.values.athlete import Athlete, Sex
from engine.values.checkin import CheckIn, History
from engine.values.level import Level
from engine.values.week_so_far import WeekSoFar

#: Each sign once, however it is called.
LOW_SODIUM_SIGNS: tuple[frozenset[Symptom], ...] = (
    frozenset({Symptom.HEADACHE, Symptom.SEVERE_HEADACHE}),
    frozenset({Symptom.NAUSEA}),
    frozenset({Symptom.VOMITING, Symptom.REPEATED_VOMITING}),
    frozenset({Symptom.SWOLLEN_HANDS, Symptom.SWELLING}),
    frozenset({Symptom.CONFUSION}),
)
_ALL_SIGNS = frozenset[Symptom]().union(*LOW_SODIUM_SIGNS)
_GRAVE = frozenset({Symptom.VOMITING, Symptom.REPEATED_VOMITING, Symptom.CONFUSION})
TWO = 2


@dataclass(frozen=True, slots=True)
class Drunk:
    """What was drunk on a day, and what that is held against; all in L."""

    water_l: float
    target_l: float
    adequate: Number

    @property
    def under_adequate(self) -> bool:
        return below(self.water_l, float(self.adequate))

    @property
    def under_target(self) -> bool:
        least = self.target_l * float(evidence.WATER_UNDER_TARGET) / 100
        return self.target_l > 0 and below(self.water_l, least)

    @property
    def hardly_any(self) -> bool:
        least = float(self.adequate) * float(evidence.WATER_HARDLY_ANY) / 100
        return below(self.water_l, least)


def water_flags(week: WeekSoFar, said: Complaints) -> Iterator[Flag]:
    """Drinking held against its target, the adequate intake and the most that was ever studied.

    Too little is an advisory the first time, a caution on the second day running, with any
    complaint, or where hardly anything was drunk.
    """
    drunk = _drunk(week)
    if drunk is not None:
        morning_before = week.history.on(week.checkin.date - timedelta(days=1))
        before = (
            _drunk(replace(week, checkin=morning_before)) if morning_before is not None else None
        )
        again = before is not None and (before.under_adequate or before.under_target)
        serious = again or bool(said.words) or drunk.hardly_any
        yield from _too_little(drunk, Level.CAUTION if serious else Level.ADVISORY, again=again)
        yield from _too_much(drunk, week.athlete)
    yield from too_fast_flags(week.checkin)


def water_target(week: WeekSoFar) -> float:
    """The target in L of the day before this morning: what its answer speaks of."""
    yesterday = week.yesterday
    return week.baseline.water_l if yesterday is None else yesterday.water_l


def too_fast_flags(checkin: CheckIn) -> Iterator[Flag]:
    """More within an hour than kidneys can pass, by the answer or by what was written."""
    fastest = _fastest(checkin)
    most = float(evidence.WATER_IN_AN_HOUR)
    if fastest is not None and above(fastest, most):
        facts = {"water_l_per_h": fastest, "most_l_per_h": most}
        yield Flag(FlagId.WATER_TOO_FAST, Level.CAUTION, facts, (evidence.IOM_2005,))


def _drunk(week: WeekSoFar) -> Drunk | None:
    water = believed_water(week.checkin.water_l)
    if water is None:
        return None
    women = week.athlete.sex is Sex.FEMALE
    adequate = evidence.WATER_ADEQUATE_WOMEN if women else evidence.WATER_ADEQUATE_MEN
    return Drunk(water, water_target(week), adequate)


def _too_little(drunk: Drunk, level: Level, *, again: bool) -> Iterator[Flag]:
    also: dict[str, Fact] = {"again": "yes"} if again else {}
    if drunk.under_adequate:
        facts = {
            "water_l": drunk.water_l, "adequate_l": float(drunk.adequate),
            "target_l": drunk.target_l, **also,
        }  # fmt: skip
        yield Flag(FlagId.WATER_UNDER_ADEQUATE, level, facts, (drunk.adequate.source,))
    if drunk.under_target:
        facts = {"water_l": drunk.water_l, "target_l": drunk.target_l, **also}
        yield Flag(FlagId.WATER_UNDER_TARGET, level, facts, (evidence.WATER_UNDER_TARGET.source,))


def _too_much(drunk: Drunk, athlete: Athlete) -> Iterator[Flag]:
    water, target = drunk.water_l, drunk.target_l
    if target > 0 and above(water, target * float(evidence.WATER_OVER_TARGET) / 100):
        facts = {"water_l": water, "target_l": target}
        source = evidence.WATER_OVER_TARGET.source
        yield Flag(FlagId.WATER_OVER_TARGET, Level.CAUTION, facts, (source,))
    most = float(evidence.WATER_GUARD_RAIL) / 1000 * athlete.body_mass_kg
    if above(water, most):
        facts = {"water_l": water, "most_l": most}
        yield Flag(FlagId.WATER_OVER_GUARD_RAIL, Level.CAUTION, facts, (evidence.REALE_2018,))


def _fastest(checkin: CheckIn) -> float | None:
    told = [fastest_drinking_l_per_h(text) for text in (checkin.note, *checkin.symptoms)]
    told.append(believed_water(checkin.water_within_one_hour_l))
    return max((rate for rate in told if rate is not None), default=None)


def low_sodium_flags(
    history: History,
    checkin: CheckIn,
    said: Complaints,
    *,
    target_l: float | None,
    ceiling_l: float | None,
) -> Iterator[Flag]:
    """A caution: any of its signs on a rise, two with water at its target, a fast rise with much.

    A warning with confusion or vomiting among two signs, or on a fast rise. Two signs are the
    pattern too where nobody has said what was drunk: then it cannot be ruled out.
    `target_l` is that of the day the water was drunk on; None where there is no plan to ask.
    """
    told = sum(not signs.isdisjoint(said.words) for signs in LOW_SODIUM_SIGNS)
    grave = not _GRAVE.isdisjoint(said.sure)
    water, percent, facts = _readings(history, checkin)
    rising = percent is not None and above(percent, 0)
    fast = percent is not None and at_least(percent, float(evidence.WEIGHT_RISE_DAY))
    enough = water is not None and target_l is not None and at_least(water, target_l)
    much = (
        water is not None
        and target_l is not None
        and above(water, target_l * float(evidence.WATER_OVER_TARGET) / 100)
    )
    at_ceiling = water is not None and ceiling_l is not None and at_least(water, ceiling_l)
    unknown = water is None or target_l is None
    found = (
        (fast and at_ceiling)
        or (told and (rising or much))
        or (told >= TWO and (enough or unknown))
    )
    if not found:
        return
    # Nobody knows what was drunk: said as a caution, whatever the signs.
    warned = grave and ((told >= TWO and (enough or rising)) or fast)
    level = Level.WARNING if warned else Level.CAUTION
    if target_l is not None and water is not None:
        facts["target_l"] = target_l
    if words := said.quoted(_ALL_SIGNS):
        facts["words"] = words
    if told:
        facts["signs"] = ", ".join(s for s in Symptom if s in _ALL_SIGNS and s in said.words)
    yield Flag(FlagId.LOW_SODIUM, level, facts, (evidence.HEW_BUTLER_2015,))


def _readings(
    history: History, checkin: CheckIn
) -> tuple[float | None, float | None, dict[str, Fact]]:
    """Water in L, the change since the last morning in %, and both as facts."""
    water, now = believed_water(checkin.water_l), believed_weight(checkin.weight_kg)
    last = last_morning(history, checkin)
    facts: dict[str, Fact] = {}
    percent = None
    if now is not None and last is not None:
        percent = (now - last) / last * 100
        facts = {"weight_kg": now, "before_kg": last, "up_percent": round(percent, 6)}
    if water is not None:
        facts["water_l"] = water
    return water, percent, facts
