"""The day itself, backwards from the stage: what is done when, and what becomes of it when times move.

Everything is worked out on instants in UTC, so neither midnight nor a change of clocks matters; the
zone is only for showing. A plan made anew keeps what has been done and puts nothing in the past.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, datetime, timedelta
from enum import StrEnum

from engine.evidence import staging as e
from engine.evidence.source import Number


class Kind(StrEnum):
    WAKE = "wake"
    LEAVE = "leave"
    REGISTRATION = "registration"
    TAN = "tan"
    MEAL = "meal"
    LAST_MEAL = "last-meal"
    BITE = "bite"
    DRINK = "drink"
    SIP = "sip"
    SIPS = "sips"
    LOOK = "look"
    SUGAR = "sugar"
    PUMP = "pump"
    STAGE = "stage"
    AFTER = "after"


MEALS = (Kind.MEAL, Kind.LAST_MEAL)
#: What has a drink with it, by its own words.
DRINKS = frozenset(
    {Kind.WAKE, *MEALS, Kind.BITE, Kind.DRINK, Kind.SIP, Kind.SIPS, Kind.SUGAR, Kind.AFTER}
)


@dataclass(frozen=True, slots=True, kw_only=True)
class StageDay:
    """What is known of the day. `stages`: when each class is on, in order; all instants aware.

    `arrive` is when the athlete has to be at the place, `travel_min` the way there. `usual_wake` is
    when they would get up anyway. `look_before_min`: how long before a class the look is checked;
    None as is common, 0 not at all.
    """

    stages: tuple[datetime, ...]
    usual_wake: datetime
    travel_min: float = 0
    arrive: datetime | None = None
    registration: datetime | None = None
    tan: datetime | None = None
    look_before_min: float | None = None

    def __post_init__(self) -> None:
        if not self.stages or list(self.stages) != sorted(set(self.stages)):
            raise ValueError("classes come one after another")
        moments = [*self.stages, self.usual_wake, self.arrive, self.registration, self.tan]
        if any(moment is not None and moment.tzinfo is None for moment in moments):
            raise ValueError("an instant needs its zone")
        if not 0 <= self.travel_min <= 24 * 60:
            raise ValueError("the way is between no time and a day")
        if self.look_before_min and not (
            float(e.LOOK_USELESS_MIN) <= self.look_before_min <= float(e.LOOK_SOONEST_MIN)
        ):
            raise ValueError(
                f"a look check is of use {e.LOOK_SOONEST_MIN.value:g} to "
                f"{e.LOOK_USELESS_MIN.value:g} min before the stage"
            )

    def moved(self, by: timedelta, now: datetime) -> StageDay:
        """The day with the classes still ahead that much later (or earlier, but not before now).

        Two classes called at once still come one after the other: none is lost.
        """
        stages: list[datetime] = []
        for stage in self.stages:
            at = max(stage + by, min(stage, now)) if stage > now else stage
            if stages and at <= stages[-1]:
                at = stages[-1] + _span(e.ROUND_TO_MIN)
            stages.append(at)
        return replace(self, stages=tuple(stages))


@dataclass(frozen=True, slots=True)
class Entry:
    """One thing to do, at an instant in UTC. `key` names it for as long as the day lasts."""

    key: str
    kind: Kind
    at: datetime
    class_number: int = 0


def estimated_stage(first: datetime, order: int, minutes: float | None = None) -> datetime:
    """When a class is on, from when the first is and its place in the order (1 is the first).

    Raises ValueError for a place before the first.
    """
    if order < 1:
        raise ValueError("the first class is number 1")
    each = float(e.CLASS_LASTS_MIN) if minutes is None else minutes
    return first.astimezone(UTC) + timedelta(minutes=each * (order - 1))


def timeline(
    day: StageDay, *, now: datetime | None = None, done: Sequence[Entry] = ()
) -> tuple[Entry, ...]:
    """What is still to do, in order; `done` is what has been done or told, and stays so.

    Nothing is put before `now`. No two meals come closer than an hour and a half, those done
    included, and none within an hour of a class. From waking to the end no hour ahead is without
    something to drink.
    """
    return _Timeline(day, now, done).entries()


class _Timeline:
    def __init__(self, day: StageDay, now: datetime | None, done: Sequence[Entry]) -> None:
        self._day = replace(
            day,
            stages=tuple(stage.astimezone(UTC) for stage in day.stages),
            usual_wake=day.usual_wake.astimezone(UTC),
            arrive=day.arrive.astimezone(UTC) if day.arrive else None,
            registration=day.registration.astimezone(UTC) if day.registration else None,
            tan=day.tan.astimezone(UTC) if day.tan else None,
        )
        self._now = now.astimezone(UTC) if now else None
        self._done = tuple(done)
        self._done_keys = {entry.key for entry in done}
        self._eaten = sorted(entry.at for entry in done if entry.kind in MEALS)
        self._found: list[Entry] = []

    def entries(self) -> tuple[Entry, ...]:
        self._morning()
        start = self._wake() + _span(e.FIRST_MEAL_AFTER_MIN)
        for number, stage in enumerate(self._day.stages, start=1):
            if self._now is None or stage >= self._now:
                self._class(number, stage, start)
            start = stage + _span(e.BETWEEN_CLASSES_FIRST_MIN)
        last = self._day.stages[-1]
        after = last + _span(e.AFTER_STAGE_MIN)
        self._put(
            "after", Kind.AFTER, max(after, self._now or after)
        )  # the last may have fallen out
        self._bites()
        self._drinks()
        return in_order(self._found)

    # The morning

    def _arrive(self) -> datetime | None:
        """When to be there: as asked, or for registration or a tan, or well before the stage."""
        given = [m for m in (self._day.arrive, self._day.registration, self._day.tan) if m]
        if given:
            return min(given)
        if not self._day.travel_min:
            return None
        return self._day.stages[0] - _span(self._look() or e.LOOK_BEFORE_MIN)

    def _look(self) -> Number | None:
        """How long before a class the look is checked; None where it is not."""
        asked = self._day.look_before_min
        if asked is None:
            return e.LOOK_BEFORE_MIN
        usual = e.LOOK_BEFORE_MIN
        return Number(usual.name, asked, usual.unit, usual.source, usual.note) if asked else None

    def _leave(self) -> datetime | None:
        arrive = self._arrive()
        if arrive is None or not self._day.travel_min:
            return None
        return _rounded(arrive - timedelta(minutes=self._day.travel_min))

    def _wake(self) -> datetime:
        needed = [self._day.usual_wake, self._day.stages[0] - _span(e.WAKE_BEFORE_STAGE_MIN)]
        first = self._leave() or self._arrive()
        if first is not None:
            needed.append(first - _span(e.WAKE_BEFORE_DUTY_MIN))
        return _rounded(min(needed))

    def _morning(self) -> None:
        self._put("wake", Kind.WAKE, self._wake())
        leave = self._leave()
        if leave is not None:
            self._put("leave", Kind.LEAVE, leave)
        if self._day.registration is not None:
            self._put("registration", Kind.REGISTRATION, self._day.registration)
        if self._day.tan is not None:
            self._put("tan", Kind.TAN, self._day.tan)

    # One class

    def _class(self, number: int, stage: datetime, start: datetime) -> None:
        before = self._day.stages[number - 2] if number > 1 else None
        gap = stage - before if before is not None else timedelta.max
        if gap >= _span(e.BETWEEN_CLASSES_MEAL_MIN):
            self._meals(stage, start)
            look = self._look()
            if look is not None:
                self._by(f"look:{number}", Kind.LOOK, stage, (look, e.LOOK_USELESS_MIN))
        # From drinking as usual to sips again before each class that has room for it.
        if number == 1:
            self._by("sips", Kind.SIPS, stage, (e.SIPS_BEFORE_MIN, None))
        elif before is not None and gap > _span(e.BITE_GAP_MIN):
            eaten = before + _span(e.BETWEEN_CLASSES_FIRST_MIN)
            self._by(f"sips:{number}", Kind.SIPS, stage, (e.SIPS_BEFORE_MIN, None), eaten)
        if gap >= _span(e.PUMP_AGAIN_MIN):
            floor = before + _span(e.ROUND_TO_MIN) if before is not None else None
            self._by(f"sugar:{number}", Kind.SUGAR, stage, (e.SUGAR_BEFORE_MIN, None), floor)
            self._by(f"pump:{number}", Kind.PUMP, stage, (e.PUMP_BEFORE_MIN, None), floor)
        self._put(f"stage:{number}", Kind.STAGE, stage, number)

    def _by(
        self,
        key: str,
        kind: Kind,
        stage: datetime,
        within: tuple[Number, Number | None],
        floor: datetime | None = None,
    ) -> None:
        """So long before the stage; where that has gone by, now, unless it is too late to be of use.

        `within`: how long before, and until when it is of use (None: up to the stage).
        """
        before, useless = within
        number = int(key.partition(":")[2] or 1)
        at = stage - _span(before)
        for bound in (floor, self._now):
            at = max(at, bound) if bound is not None else at
        latest = stage - _span(useless) if useless is not None else stage
        if kind in (Kind.PUMP, Kind.SUGAR):
            key = self._again(key, at)
        if at < latest:
            self._put(key, kind, at, number)

    def _again(self, key: str, at: datetime) -> str:
        """What was done for a stage that then moved away is done again, under a name of its own."""
        before = [entry.at for entry in self._done if entry.key.partition("+")[0] == key]
        if before and at - max(before) >= _span(e.PUMP_AGAIN_MIN):
            return f"{key}+{len(before)}"
        return key

    # Drinks

    def _bites(self) -> None:
        """Something to eat and drink between classes over an hour apart that no meal fits between."""
        for number, (before, stage) in enumerate(itertools.pairwise(self._day.stages), start=2):
            fed = [at for at in (*self._eaten, *self._planned()) if before <= at < stage]
            if stage - before <= _span(e.BITE_GAP_MIN) or fed:
                continue
            at = max(before + _span(e.BITE_AFTER_MIN), self._now or before)
            if stage - at >= _span(e.PUMP_BEFORE_MIN):
                self._put(f"bite:{number}", Kind.BITE, at, number)

    def _drinks(self) -> None:
        """A glass, or within the sips a sip, wherever an hour would pass without any."""
        most, end = _span(e.DRINK_GAP_MOST_MIN), self._day.stages[-1] + _span(e.AFTER_STAGE_MIN)
        drunk = sorted(entry.at for entry in self._done if entry.kind in DRINKS)
        ahead = sorted(entry.at for entry in self._found if entry.kind in DRINKS)
        wake = self._wake()
        cursor = drunk[-1] if drunk else ahead[0] if ahead and ahead[0] <= wake else wake
        if self._now is not None and cursor + most < self._now < end:
            # Too long already: at once.
            if not ahead or ahead[0] > self._now:
                self._drink(self._now)
            cursor = self._now
        for at in (*ahead, end):
            gaps = math.ceil((at - cursor) / (most - _span(e.ROUND_TO_MIN)))
            if at - cursor > most:
                for part in range(1, gaps):
                    when = _rounded(cursor + (at - cursor) * part / gaps)
                    if when in self._day.stages:  # nobody drinks on stage: right after it
                        when += _span(e.ROUND_TO_MIN)
                    self._drink(max(when, self._now) if self._now is not None else when)
            cursor = max(cursor, at)

    def _drink(self, at: datetime) -> None:
        told = [*self._done, *self._found]
        number = 1 + sum(entry.kind in (Kind.DRINK, Kind.SIP) for entry in told)
        coming = next((stage for stage in self._day.stages if stage > at), None)
        sipping = coming is not None and coming - at <= _span(e.SIPS_BEFORE_MIN)
        self._put(f"drink:{number}", Kind.SIP if sipping else Kind.DRINK, at)

    # Meals

    def _meals(self, stage: datetime, start: datetime) -> None:
        """From `start` to the last meal before this class, two to three hours apart."""
        end = stage - _span(e.LAST_MEAL_BEFORE_MIN)
        closest, latest = _span(e.MEAL_GAP_NEVER_UNDER_MIN), stage - _span(e.NO_MEAL_WITHIN_MIN)
        earlier = [at for at in (*self._eaten, *self._planned()) if at <= stage]
        begun = earlier[-1] if earlier else None
        times = self._spaced(begun, max(start, self._now or start), end, latest)
        number = len(self._eaten) + len(self._planned())
        taken = begun
        for at in times:
            free = self._out_of_the_way(at, latest)
            if free is None or (taken is not None and free - taken < closest):
                continue
            number += 1
            last = at == times[-1]
            kind = Kind.LAST_MEAL if last else Kind.MEAL
            self._found.append(Entry(f"meal:{number}", kind, free))
            taken = free

    def _planned(self) -> list[datetime]:
        return [entry.at for entry in self._found if entry.kind in MEALS]

    def _spaced(
        self, begun: datetime | None, first: datetime, end: datetime, latest: datetime
    ) -> list[datetime]:
        """Instants of meals. `begun` is the meal before them; `first` the earliest there may be."""
        closest = _span(e.MEAL_GAP_NEVER_UNDER_MIN)
        if begun is not None and begun + _span(e.MEAL_GAP_MOST_MIN) >= first:
            if max(end, first) - begun < closest:
                return []
            steps = _steps(end - begun)
            times = [begun + (end - begun) * i / steps for i in range(1, steps + 1)]
            times = [at for at in times if at >= first] or [end]
        elif first >= end - closest:
            times = [end]
        else:
            steps = _steps(end - first)
            times = [first + (end - first) * i / steps for i in range(steps + 1)]
        # Rounded down, then held inside what there is: an early call leaves a meal at once or none.
        held = [max(_rounded(at), first) for at in times]
        return [at for at in dict.fromkeys(held) if at <= latest]

    def _out_of_the_way(self, at: datetime, latest: datetime) -> datetime | None:
        """The nearest instant after it at which nobody is being tanned, registered or on stage."""
        busy = [
            (moment, moment + _span(length))
            for moment, length in (
                (self._day.tan, e.TAN_LASTS_MIN),
                (self._day.registration, e.REGISTRATION_LASTS_MIN),
            )
            if moment is not None
        ]
        busy += [
            (stage - _span(e.PUMP_BEFORE_MIN), stage + _span(e.ROUND_TO_MIN))
            for stage in self._day.stages
        ]
        for begin, end in sorted(busy):
            if begin <= at < end:
                at = end
        return at if at <= latest else None

    def _put(self, key: str, kind: Kind, at: datetime, number: int = 0) -> None:
        if key in self._done_keys or (self._now is not None and at < self._now):
            return
        self._found.append(Entry(key, kind, at, number))


def in_order(entries: Iterable[Entry]) -> tuple[Entry, ...]:
    """Entries by their instants; of those at one instant, the one that comes first of nature."""
    return tuple(sorted(entries, key=lambda entry: (entry.at, _ORDER[entry.kind])))


_ORDER = {kind: place for place, kind in enumerate(Kind)}


def _span(number: Number) -> timedelta:
    return timedelta(minutes=float(number))


def _steps(span: timedelta) -> int:
    """Into how many gaps a span is cut, so that each lies nearest to two to three hours."""
    minutes = span / timedelta(minutes=1)
    least, most = float(e.MEAL_GAP_LEAST_MIN), float(e.MEAL_GAP_MOST_MIN)

    def off(steps: int) -> float:
        gap = minutes / steps
        return max(least - gap, gap - most, 0)

    fewest = max(math.floor(minutes / most), 1)
    return min((fewest, fewest + 1), key=off)


def _rounded(at: datetime) -> datetime:
    """Down to the last five minutes of the hour."""
    grain = float(e.ROUND_TO_MIN)
    return at - timedelta(minutes=at.minute % grain, seconds=at.second, microseconds=at.microsecond)
