"""Virtual athletes of the bench as athletes of a coach, and their weeks as a sheet of past weeks."""

from __future__ import annotations

import csv
import io
from collections.abc import Collection, Iterator
from dataclasses import asdict
from datetime import datetime, timedelta

from sqlmodel import Session

from bot.sheets.past_weeks.layout import COLUMNS
from bot.store.tables.people import AthleteProfile, Person
from engine.bench.setting import Client
from engine.values.case import PastWeek
from engine.values.plan import DayTarget

DAY = timedelta(days=1)


def taken_on(session: Session, client: Client, number: int, now: datetime) -> int:
    """The athlete as the coach with id 1 has them on file; their id."""
    person = Person(
        telegram_user_id=7000 + number, chat_id=7000 + number, first_name=f"Athlete {number}",
        created_at=now,
    )  # fmt: skip
    session.add(person)
    session.flush()
    who = client.athlete
    session.add(AthleteProfile(
        person_id=person.id or 0, coach_id=1, status="active", sex=who.sex.value,
        birth_year=who.birth_year, height_cm=who.height_cm, body_mass_kg=who.body_mass_kg,
        body_fat_percent=who.body_fat_percent, baseline=asdict(client.baseline),
        zone="Europe/London", created_at=now,
    ))  # fmt: skip
    return person.id or 0


def as_sheet(
    athlete_id: int, weeks: tuple[PastWeek, ...], *, without: Collection[str] = ()
) -> bytes:
    """The weeks as their coach would have written them down, a CSV; `without`: columns left empty."""
    out = io.StringIO()
    lines = csv.writer(out)
    lines.writerows([["Past weeks of", "somebody"], ["Athlete", f"A{athlete_id}"], []])
    lines.writerow([column.titled() for column in COLUMNS])
    for week in weeks:
        for target in week.plan:
            told = dict(_row(week, target))
            lines.writerow(
                ["" if column.key in without else told.get(column.key, "") for column in COLUMNS]
            )
    return out.getvalue().encode()


def _row(week: PastWeek, target: DayTarget) -> Iterator[tuple[str, object]]:
    day = week.day - target.days_out * DAY
    yield "date", day.isoformat()
    yield "event_day", week.day.isoformat()
    if target.days_out == max(one.days_out for one in week.plan):
        yield from (("kind", "trial"), ("look", week.look.value if week.look else ""))
    set_g, told = week.history.set_on(day), week.history.on(day)
    yield from (
        ("carb_planned_g", target.carb_g), ("carb_set_g", "" if set_g is None else set_g),
        ("protein_g", target.protein_g), ("fat_g", target.fat_g), ("training", target.training),
    )  # fmt: skip
    if told is not None:
        answers = (("weight_kg", told.weight_kg), ("fullness", told.fullness))
        for key, value in (*answers, ("sharpness", told.sharpness)):
            yield key, "" if value is None else value
