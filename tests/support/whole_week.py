"""A week that is over and holds something of everything that can be kept of one."""

from __future__ import annotations

from datetime import date, timedelta

from sqlmodel import select

from bot.people.changes import Change
from bot.store.db import transaction
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.event import DebriefRow
from bot.store.tables.food import EatenRow, FoodRow
from bot.store.tables.people import HistoryRow
from bot.store.tables.week import AlertRow, CheckInRow, DecisionRow, EventRow
from tests.support.weeks import Team


def lived(team: Team) -> None:
    """Mira's week from three days out, at 6:40 in London; only one morning is decided on."""
    team.athlete.writes("61.0 1 3.5 5 on target fine")
    team.athlete.writes("I have a headache")
    now = team.world.now
    with transaction(team.world.engine) as session:
        row = session.exec(select(CheckInRow)).one()
        row.urine_colour, row.training_done, row.note = 3, "less", "=HYPERLINK(1)"
        row.symptoms, row.sleep_h, row.resting_pulse = ["headache"], 6.5, 61
        session.add(row)
        decided = session.exec(select(DecisionRow)).all()[-1]
        decided.signed_by, decided.signed_at = 1, decided.made_at + timedelta(minutes=17)
        decided.decision = decided.decision | {
            "bound": "carb_ceiling_g",
            "foresight": {
                "trusted": True,
                "why_not": "",
                "band": None,
                "residual_kg": None,
                "mornings": 5,
                "past_weeks": 0,
                "planned": {"carb_g": 1.0, "flat": 0.2, "full": 0.5, "spilled": 0.3, "look": 0.8},
                "best": {"carb_g": 2.0, "flat": 0.1, "full": 0.7, "spilled": 0.2, "look": 0.8},
            },
        }
        session.add(decided)
        session.add(CheckInRow(
            athlete_id=2, date=date(2027, 5, 7), weight_kg=61.4, fullness=7, sharpness=4,
            water_l=3.4, carb_eaten_g=520, answered_at=now + timedelta(days=1),
        ))  # fmt: skip
        session.add(
            CheckInRow(
                athlete_id=2,
                date=date(2027, 5, 8),
                carb_eaten_g=500,
                weight_kg=61.9,
                answered_at=now,
            )
        )
        session.add(
            CheckInRow(
                athlete_id=2, date=date(2027, 5, 9), weight_kg=62.0, fullness=8, answered_at=now
            )
        )
        session.add(
            CoachLookRow(
                athlete_id=2, date=date(2027, 5, 7), by_id=1, look="on course", sharpness=4, at=now
            )
        )
        event = session.exec(select(EventRow)).one()
        event.look, event.active = "full", False
        session.add(event)
        session.add(
            DebriefRow(
                event_id=event.id or 0,
                athlete_id=2,
                athlete_said="slept badly",
                coach_note="more rice",
                placing="2nd of 9",
            )
        )
        session.add(
            HistoryRow(
                athlete_id=2, by_id=1, at=now, what=Change.DEBRIEF_NOTE, detail={"event": event.id}
            )
        )
        food = FoodRow(
            athlete_id=2, source="label", name="@rice", step_g=10, liking="well", usual_g=400,
            figures={"kcal": 350, "carb_g": 77.5, "protein_g": 7, "fat_g": 0.6, "fibre_g": 1.3,
                     "sodium_mg": 5},
            added_at=now, removed_at=now,
        )  # fmt: skip
        session.add(food)
        session.flush()
        session.add(
            EatenRow(athlete_id=2, date=now.date(), food_id=food.id or 0, grams=250, at=now)
        )
        alert = session.exec(select(AlertRow)).all()[-1]
        alert.acknowledged_at, alert.acknowledged_by = now + timedelta(minutes=3), 1
        session.add(alert)
