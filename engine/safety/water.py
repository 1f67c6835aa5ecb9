"""Flags on drinking: too little, too much, too fast, and the picture of too much water in the blood."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import timedelta

from engine.evidence import safety as evidence
from engine.evidence.source import Number
from engine.safety.complaints import Complaints
from engine.safety.flag import Fact, Flag, FlagId
from engine.safety.weight import (
    above,
    at_least,
    believed_water,
    believed_weight,
    below,
    last_morning,
)
from engine.symptoms import Symptom
from engine.values.athlete import Athlete, Sex
from engine.values.case import WeekSoFar
from engine.values.checkin import CheckIn, History
from engine.values.level import Level
from engine.written.late import Late
from engine.written.units import ParseError, VolumeUnit, parse_volume
from engine.written.units.amounts import VOLUME_WORDS
from engine.written.units.reading import plain

_COUNTS = {
    "one and a half": 1.5, "a couple of": 2, "half an": 0.5, "half a": 0.5, "half": 0.5, "an": 1,
    "a": 1, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6,
    "anderthalb": 1.5, "eineinhalb": 1.5, "einen halben": 0.5, "einem halben": 0.5,
    "einer halben": 0.5, "halben": 0.5, "halbe": 0.5, "einen": 1, "einer": 1, "eine": 1, "ein": 1,
    "zwei": 2, "drei": 3, "vier": 4, "fünf": 5, "fuenf": 5, "sechs": 6,
}  # fmt: skip
_COUNT_WORDS = "|".join(sorted(_COUNTS, key=len, reverse=True))
_NUMBER = r"\d{1,5}(?:[.,]\d{1,3})?"  # of bounded length, for the search to stay linear
_LONGEST_H = 6.0  # past this it is a day's drinking, not a bout
_FAST = Late(
    rf"(?<![\w.,])(?P<amount>{_NUMBER}|{_COUNT_WORDS}) ?(?P<unit>{VOLUME_WORDS})\b(?: [a-z]+){{0,3}}? "
    r"(?:(?:in|within|over|inside|during)(?: about| around| under| less than| only| just)?"
    r"(?: the(?: last| past| first| space of)?)? ?"
    rf"(?P<time>{_NUMBER}|{_COUNT_WORDS})? ?(?P<span>hours?|hrs?|h|minutes?|mins?)\b"
    r"|(?P<rate>(?:an|per|every) hour(?! later| ago| after| before)|/ ?h(?:our|r)?)\b"
    r"|(?P<once>in one (?:go|sitting|gulp)|at once|in one))"
)
_AMOUNT = rf"(?P<amount>{_NUMBER}|{_COUNT_WORDS}) ?(?P<unit>{VOLUME_WORDS})\b"
_WITHIN_GERMAN = (
    r"(?:in|binnen|innerhalb|während)(?: von)?"
    r"(?: (?:nur|etwa|ca|ungefähr|knapp|weniger als|der letzten|den letzten))* ?"
    rf"(?P<time>{_NUMBER}|{_COUNT_WORDS})? ?(?P<span>stunden?|std|h|minuten?|min)\b"
)
_GAP_GERMAN = r"(?: (?!und\b|dann\b)[a-zäöüß]+){0,4}? "
_FAST_GERMAN = (
    Late(
        rf"(?<![\w.,]){_AMOUNT}{_GAP_GERMAN}(?:{_WITHIN_GERMAN}"
        r"|(?P<rate>(?:pro|je|die|jede) stunde)\b"
        r"|(?P<once>auf einmal|auf ex|in einem zug|am stück))"
    ),
    Late(rf"\b{_WITHIN_GERMAN}{_GAP_GERMAN}{_AMOUNT}"),
)


def fastest_drinking_l_per_h(text: str) -> float | None:
    """The highest rate told of in litres an hour, or None. Drunk "in one go" counts as an hour's.

    An ounce that may be US or imperial is taken for the larger, the US one: the safe side here.
    """
    told = " ".join(plain(text).split())
    rates = [
        rate
        for pattern in (_FAST, *_FAST_GERMAN)
        for match in pattern.finditer(told)
        if (rate := _rate(match)) is not None
    ]
    return max(rates, default=None)


def _rate(match: re.Match[str]) -> float | None:
    amount = match["amount"]
    try:
        number = str(_COUNTS[amount]) if amount in _COUNTS else amount
        litres = parse_volume(f"{number} {match['unit']}", unit=VolumeUnit.FLOZ_US).litres
    except ParseError:
        return None
    hours = 1.0 if match["span"] is None else _hours(match["time"], match["span"])
    if hours is None or not 0 < hours <= _LONGEST_H:
        return None
    # within less than an hour, all of it was drunk within an hour
    return litres / max(1.0, hours)


def _hours(time: str | None, span: str) -> float | None:
    if time is None:
        count = 1.0
    elif time in _COUNTS:
        count = float(_COUNTS[time])
    else:
        try:
            count = float(time.replace(",", "."))
        except ValueError:
            return None
    return count / 60 if span.startswith("m") else count


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
