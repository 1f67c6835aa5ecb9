"""Peak weeks that lie behind an athlete, written straight into the rows: nobody need live them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime, time, timedelta
from typing import NamedTuple
from zoneinfo import ZoneInfo

from bot.store.base import id_of
from bot.store.db import transaction
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.photos import PhotoRow
from bot.store.tables.week import CheckInRow, DaySetRow, EventRow, LimitsRow, PlanRow
from bot.week.load import athlete_of, baseline_of, plan_days
from engine.planning.drafting.draft import Asked, draft_plan
from engine.values.limits import Limits
from tests.support.weeks import Team

LONDON = ZoneInfo("Europe/London")


@dataclass(frozen=True)
class Told:
    """A morning, and what was eaten and drunk the day before it."""

    weight_kg: float
    fullness: int
    sharpness: int
    carb_eaten_g: float | None = None
    water_l: float | None = 3.5
    symptoms: tuple[str, ...] = ()
    eye: str | None = None


#: By days out: an athlete who was flat until the load, and filled out in it.
ORDINARY = {
    7: Told(61.8, 5, 3), 6: Told(61.4, 5, 3, 160), 5: Told(61.0, 4, 4, 150, eye="on course"),
    4: Told(60.6, 3, 4, 155), 3: Told(60.2, 3, 5, 150, symptoms=("cramps",), eye="flat"),
    2: Told(61.1, 6, 4, 470), 1: Told(61.9, 8, 4, 490, water_l=3.2, eye="full"),
    0: Told(62.2, 8, 4, 450),
}  # fmt: skip


class Lived(NamedTuple):
    """What was told by days out, the load that was planned, and front `photos` by days out."""

    told: dict[int, Told] = ORDINARY
    load_g: float | None = None
    photos: tuple[int, ...] = ()


AS_EVER = Lived()


def behind(
    team: Team, day: date, lived: Lived = AS_EVER, *, kind: str = "trial", look: str | None = "full"
) -> int:
    """A week of that event, over and looked at; its number."""
    told, load_g, photos = lived
    profile = team.profile()
    athlete, baseline = athlete_of(profile), baseline_of(profile)
    plan = draft_plan(athlete, baseline, Asked(shape="even"))
    limits = Limits.suggested(athlete, plan, baseline)
    set_at = datetime.combine(day - timedelta(days=9), time(12), LONDON)
    with transaction(team.world.engine) as session:
        event = EventRow(
            athlete_id=team.athlete_id,
            kind=kind,
            day=day,
            zone="Europe/London",
            active=False,
            look=look,
            set_by=1,
            set_at=set_at,
        )
        session.add(event)
        session.flush()
        number = id_of(event)
        session.add(
            PlanRow(event_id=number, shape="even", days=plan_days(plan), set_by=1, set_at=set_at)
        )
        bounds = limits.by_key
        session.add(LimitsRow(event_id=number, bounds=bounds, set_by=1, set_at=set_at))
        for target in plan:
            on = day - timedelta(days=target.days_out)
            grams = target.carb_g
            if load_g is not None and target.days_out in (3, 2, 1):
                grams = load_g
            session.add(
                DaySetRow(
                    athlete_id=team.athlete_id,
                    date=on,
                    carb_g=grams,
                    by="decision" if grams == target.carb_g else "coach",
                    set_at=set_at,
                )
            )
        for days_out, morning in told.items():
            on = day - timedelta(days=days_out)
            session.add(_row(team.athlete_id, on, morning))
            if morning.eye is not None:
                session.add(
                    CoachLookRow(
                        athlete_id=team.athlete_id, date=on, by_id=1, look=morning.eye, at=set_at
                    )
                )
        for days_out in photos:
            on = day - timedelta(days=days_out)
            name = f"{number:04d}{days_out:04d}" + "x" * 24
            session.add(
                PhotoRow(
                    athlete_id=team.athlete_id,
                    date=on,
                    pose="front",
                    name=name,
                    received_at=set_at,
                    kept_at=set_at,
                )
            )
    return number


def moved(told: dict[int, Told], kg: float, fuller: int = 0) -> dict[int, Told]:
    """The same mornings of somebody that much heavier, and that much fuller."""
    return {
        out: replace(
            one, weight_kg=round(one.weight_kg + kg, 1), fullness=min(one.fullness + fuller, 10)
        )
        for out, one in told.items()
    }


def _row(athlete_id: int, on: date, told: Told) -> CheckInRow:
    return CheckInRow(
        athlete_id=athlete_id,
        date=on,
        weight_kg=told.weight_kg,
        fullness=told.fullness,
        sharpness=told.sharpness,
        water_l=told.water_l,
        carb_eaten_g=told.carb_eaten_g,
        gut="fine",
        symptoms=list(told.symptoms),
        answered_at=datetime.combine(on, time(7), LONDON),
    )
