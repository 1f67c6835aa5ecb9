"""Every peak week of an athlete as rows aligned by days out: planned, set, eaten, answered, decided.

What compares, counts or exports weeks reads them here, so that all of it speaks of the same figures.
A handful of queries whatever the number of athletes and weeks.
"""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, NamedTuple

from sqlalchemy import select as pick
from sqlmodel import Session, col, select

from bot.store.base import batches, id_of
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.week import (
    CheckInRow,
    DaySetRow,
    DecisionRow,
    DecisionStatus,
    EventRow,
    PlanRow,
    SymptomReport,
)
from bot.week.cases import READINGS, observed_of
from bot.week.events import given_way
from engine.evidence.planning.reviewing import EATEN_KNOWN_DAYS
from engine.values.body import against_band
from engine.values.checkin import Observed, most_careful
from engine.values.plan import PLAN_DAYS, DayTarget, PeakPlan

_DAY = dt.timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class DayRow:
    """One day of a week; None for what is not known.

    Weight, band, fullness, sharpness, stomach, sleep and symptoms are of that day's morning;
    `eaten_carb_g` and `water_l` are the day's own, as told the morning after. `set_carb_g` is None
    while the plan's figure stands. `eye` is what the coach saw that morning, the most careful word
    where there are two. `rule` decided on that day's figure, with `status`; `set_by` is
    decision | coach | plan.
    """

    date: dt.date
    days_out: int
    planned: DayTarget | None = None
    set_carb_g: float | None = None
    set_by: str | None = None
    eaten_carb_g: float | None = None
    water_l: float | None = None
    answered: bool = False
    weight_kg: float | None = None
    band_low_kg: float | None = None
    band_high_kg: float | None = None
    fullness: int | None = None
    expected_fullness: int | None = None
    sharpness: int | None = None
    eye: str | None = None
    gut: str | None = None
    sleep_h: float | None = None
    symptoms: tuple[str, ...] = ()
    note: str = ""
    rule: str | None = None
    status: str | None = None

    @property
    def carb_g(self) -> float | None:
        """What held for the day: what was set, else what was planned."""
        if self.set_carb_g is not None:
            return self.set_carb_g
        return self.planned.carb_g if self.planned is not None else None

    @property
    def against_band(self) -> int | None:
        return against_band(self.weight_kg, self.band_low_kg, self.band_high_kg)


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekRows:
    """A week with a plan: its days from the furthest out to the event; `look` is the verdict."""

    athlete_id: int
    event_id: int
    kind: str  # show | shoot | trial
    day: dt.date
    zone: str
    active: bool
    waits: bool  # for its turn, behind an event that comes first
    look: str | None
    days: tuple[DayRow, ...]

    def at(self, days_out: int) -> DayRow | None:
        return next((day for day in self.days if day.days_out == days_out), None)

    @property
    def load(self) -> tuple[DayRow, ...]:
        """The days of the load."""
        targets = tuple(day.planned for day in self.days if day.planned is not None)
        load_days = PeakPlan(targets).load_days
        return tuple(day for day in self.days if day.days_out in load_days)

    @property
    def load_g(self) -> float:
        """The carbohydrate that held over the load."""
        return sum(day.carb_g or 0.0 for day in self.load)

    @property
    def eaten_share(self) -> float | None:
        """Eaten of it on the load days of which that is known, two at least, or the only one."""
        known = [
            (day.eaten_carb_g, day.carb_g)
            for day in self.load
            if day.eaten_carb_g is not None and day.carb_g
        ]
        if len(known) < min(EATEN_KNOWN_DAYS.value, max(len(self.load), 1)):
            return None
        return sum(eaten for eaten, _ in known) / sum(held for _, held in known)

    @property
    def mornings(self) -> int:
        """How many mornings were answered."""
        return sum(day.answered for day in self.days)


def weeks_of(
    session: Session, athletes: Collection[int], *, until: dt.date | None = None
) -> dict[int, tuple[WeekRows, ...]]:
    """By athlete, every week that has a plan, oldest first; an event that was moved has no week.

    `until` leaves out weeks whose first day lies after it. Empty weeks are there too: whoever counts
    looks at `mornings`.
    """
    found: dict[int, tuple[WeekRows, ...]] = {}
    for chunk in batches(sorted(athletes)):
        found |= _weeks_of(session, chunk, until)
    return found


def weeks_of_one(
    session: Session, athlete_id: int, *, until: dt.date | None = None
) -> tuple[WeekRows, ...]:
    """The same for one athlete."""
    return weeks_of(session, [athlete_id], until=until)[athlete_id]


class _Morning(NamedTuple):
    """What is read of a check-in, column by column."""

    id: int
    weight_kg: float | None
    fullness: int | None
    sharpness: int | None
    water_l: float | None
    carb_eaten_g: float | None
    gut: str | None
    sleep_h: float | None
    symptoms: Sequence[str]
    note: str


class _Span(NamedTuple):
    """Athletes, and the first and last day on which something of theirs is read."""

    athletes: Sequence[int]
    first: dt.date
    last: dt.date

    def covers(self, table: Any) -> tuple[Any, Any]:
        """That a row of a table, or of its columns, is one of these."""
        return table.athlete_id.in_(self.athletes), table.date.between(self.first, self.last)


class _Expected(NamedTuple):
    """What a morning was expected to show."""

    low_kg: float | None = None
    high_kg: float | None = None
    fullness: int | None = None


_UNKNOWN = _Expected()
_NEITHER = (None, None)


@dataclass(slots=True)
class _Told:
    """What the tables hold of some athletes, each by (athlete, date)."""

    mornings: dict[tuple[int, dt.date], _Morning]
    set_days: dict[tuple[int, dt.date], tuple[float, str]]  # the figure, and who set it
    reported: dict[tuple[int, dt.date], list[str]]
    seen: dict[tuple[int, dt.date], list[Observed]]
    expected: Mapping[int, _Expected]  # by the newest decision of a morning, by its check-in
    setting: dict[tuple[int, dt.date], tuple[str, str]] = field(default_factory=dict)


def _weeks_of(
    session: Session, athletes: Sequence[int], until: dt.date | None
) -> dict[int, tuple[WeekRows, ...]]:
    events = _events(session, athletes, until)
    plans = _plans(session, [id_of(event) for event in events])
    events = [event for event in events if event.id in plans]
    found: dict[int, list[WeekRows]] = {athlete: [] for athlete in athletes}
    if events:
        told = _told(session, athletes, events)
        for event in events:
            found[event.athlete_id].append(_week(event, plans[id_of(event)], told))
    return {athlete: tuple(weeks) for athlete, weeks in found.items()}


def _events(session: Session, athletes: Sequence[int], until: dt.date | None) -> list[EventRow]:
    """Events by day; of those on one day the last one set, and none that gave way to another day."""
    query = select(EventRow).where(col(EventRow.athlete_id).in_(athletes))
    if until is not None:
        query = query.where(col(EventRow.day) <= until + max(PLAN_DAYS) * _DAY)
    gone = given_way(session, athletes)
    by_day: dict[tuple[int, dt.date], EventRow] = {}
    for event in session.exec(query.order_by(col(EventRow.id))):
        if event.active or event.id not in gone:
            by_day[event.athlete_id, event.day] = event
    return sorted(by_day.values(), key=lambda event: (event.athlete_id, event.day))


def _plans(session: Session, events: Sequence[int]) -> dict[int, dict[int, DayTarget]]:
    """The newest plan of each event, its days by days out."""
    found: dict[int, dict[int, DayTarget]] = {}
    for chunk in batches(events):
        query = select(PlanRow.event_id, col(PlanRow.days)).where(col(PlanRow.event_id).in_(chunk))
        for event_id, days in session.exec(query.order_by(col(PlanRow.id))):
            found[event_id] = {day["days_out"]: DayTarget(**day) for day in days}
    return found


def _told(session: Session, athletes: Sequence[int], events: Sequence[EventRow]) -> _Told:
    first = min(event.day for event in events) - max(PLAN_DAYS) * _DAY
    span = _Span(athletes, first, max(event.day for event in events) + _DAY)
    reports = select(SymptomReport).where(*span.covers(SymptomReport))
    # Of each decision only what is read here: a whole record is a long one.
    table = DecisionRow.__table__.c  # type: ignore[attr-defined]
    record = table.decision
    decisions = (
        pick(
            table.checkin_id, table.athlete_id, table.sets_date, table.status,
            record["rule"].as_string().label("rule"),
            record[("band", "low_kg")].as_float().label("low_kg"),
            record[("band", "high_kg")].as_float().label("high_kg"),
            record["expected_fullness"].as_integer().label("expected_fullness"),
        )
        .where(table.athlete_id.in_(athletes), table.sets_date.between(first, span.last))
        .order_by(table.athlete_id, table.id)
    )  # fmt: skip
    reported: dict[tuple[int, dt.date], list[str]] = defaultdict(list)
    for report in session.exec(reports.order_by(col(SymptomReport.id))):
        if not report.symptom.startswith(READINGS):
            reported[report.athlete_id, report.date].append(report.symptom)
    looks = select(CoachLookRow).where(*span.covers(CoachLookRow))
    seen: dict[tuple[int, dt.date], list[Observed]] = defaultdict(list)
    for look in session.exec(looks.order_by(col(CoachLookRow.id))):
        seen[look.athlete_id, look.date].append(observed_of(look))
    expected: dict[int, _Expected] = {}
    setting: dict[tuple[int, dt.date], tuple[str, str]] = {}
    # Rows are taken apart at once: by its name a column takes longer than all of them so.
    for checkin, athlete, day, status, rule, *of_morning in session.connection().execute(decisions):
        expected[checkin] = _Expected(*of_morning)
        if status != DecisionStatus.REPLACED:
            setting[athlete, day] = str(rule), status
    return _Told(
        mornings={
            (athlete, day): _Morning(*answers)
            for athlete, day, *answers in _columns(session, CheckInRow, _Morning._fields, span)
        },
        set_days={
            (athlete, day): (carb_g, by)
            for athlete, day, carb_g, by in _columns(session, DaySetRow, ("carb_g", "by"), span)
        },
        reported=reported,
        seen=seen,
        expected=expected,
        setting=setting,
    )


def _columns(
    session: Session, table: type[CheckInRow | DaySetRow], names: Sequence[str], span: _Span
) -> Iterable[Any]:
    """Athlete, date and these columns of each; of so many rows no objects are made."""
    columns = table.__table__.c  # type: ignore[union-attr]
    query = pick(*(columns[name] for name in ("athlete_id", "date", *names)))
    return session.connection().execute(query.where(*span.covers(columns)))


def _week(event: EventRow, plan: Mapping[int, DayTarget], told: _Told) -> WeekRows:
    return WeekRows(
        athlete_id=event.athlete_id,
        event_id=id_of(event),
        kind=event.kind,
        day=event.day,
        zone=event.zone,
        active=event.active,
        waits=event.waits,
        look=event.look,
        days=tuple(
            [_day(event.athlete_id, event.day, out, plan.get(out), told) for out in PLAN_DAYS]
        ),
    )


def _day(
    athlete_id: int, event: dt.date, days_out: int, planned: DayTarget | None, told: _Told
) -> DayRow:
    date = event - days_out * _DAY
    key = athlete_id, date
    morning, after = told.mornings.get(key), told.mornings.get((athlete_id, date + _DAY))
    set_carb_g, set_by = told.set_days.get(key, _NEITHER)
    rule, status = told.setting.get(key, _NEITHER)
    eye = most_careful(told.seen[key]) if key in told.seen else None
    reported = tuple(told.reported[key]) if key in told.reported else ()
    return DayRow(
        date=date, days_out=days_out, planned=planned, rule=rule, status=status,
        set_carb_g=set_carb_g, set_by=set_by,
        eaten_carb_g=after.carb_eaten_g if after is not None else None,
        water_l=after.water_l if after is not None else None,
        eye=eye.look.value if eye is not None else None,
        **({"symptoms": reported} if morning is None else _answered(morning, reported, told)),
    )  # fmt: skip


def _answered(morning: _Morning, reported: tuple[str, ...], told: _Told) -> dict[str, Any]:
    """What the day's own morning said, and what that morning's decision had expected."""
    expected = told.expected.get(morning.id, _UNKNOWN)
    # Somebody who only tapped that something is wrong has not answered the morning's questions.
    answers = (morning.weight_kg, morning.fullness, morning.sharpness, morning.water_l)
    return {
        "answered": any(answer is not None for answer in answers),
        "weight_kg": morning.weight_kg, "fullness": morning.fullness,
        "sharpness": morning.sharpness, "gut": morning.gut, "sleep_h": morning.sleep_h,
        "note": morning.note, "band_low_kg": expected.low_kg, "band_high_kg": expected.high_kg,
        "expected_fullness": expected.fullness,
        "symptoms": tuple(dict.fromkeys([*morning.symptoms, *reported])),
    }  # fmt: skip
