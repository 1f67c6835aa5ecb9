"""Two coaches and their athletes in the week before an event, and what they write. All are invented."""

from __future__ import annotations

import random
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from sqlalchemy import Engine
from sqlmodel import col, select

from bot.core.turn import Context, Turn
from bot.people.people import get_profile
from bot.store.db import transaction
from bot.store.tables.people import Person
from bot.store.tables.week import EventRow
from bot.week import prompts
from tests.support.many import Alike, many_athletes

START = datetime(2027, 5, 3, 5, 20, tzinfo=UTC)  # ten minutes before the athletes are asked
DAYS = 7
HOURS = (0.0, 0.4, 2.5, 7.0, 13.0)  # of a day, from its START on
COACHES = {"Torvald": 7001, "Ulrike": 7002}
ATHLETES = {
    "Torvald": {f"Torvaldson {n}": 7100 + n for n in range(4)},
    "Ulrike": {f"Ulrikeson {n}": 7200 + n for n in range(2)},
}
NAMES = {chat: name for name, chat in COACHES.items()} | {
    chat: name for team in ATHLETES.values() for name, chat in team.items()
}
COACH_OF = {ATHLETES[coach][name]: COACHES[coach] for coach in ATHLETES for name in ATHLETES[coach]}

PLACES = ("bathroom", "kitchen", "gym", "garden", "hall", "shower", "sauna", "car", "lift", "shop")
ASKED = (
    "can I have coffee",
    "/today",
    "my head hurts a little",
    "I slept badly",
    "dizzy and cramps",
)
BUTTONS = ("Acknowledge", "Approve")


@dataclass(frozen=True)
class Act:
    """Somebody writes; or, without words, presses their newest button that is one of BUTTONS."""

    chat: int
    text: str

    @property
    def fainted(self) -> bool:
        return self.text.startswith("I fainted")

    @property
    def morning(self) -> bool:
        return self.text[0:1].isdigit()


def something(chance: random.Random) -> Act:
    """What one of them does next."""
    if chance.random() < 0.15:
        return Act(
            chance.choice(sorted(COACHES.values())), chance.choice(("/roster", "/alerts", "", ""))
        )
    athlete = chance.choice(sorted(COACH_OF))
    drawn = chance.random()
    if drawn < 0.06:
        return Act(athlete, f"I fainted in the {chance.choice(PLACES)}")
    if drawn < 0.65:
        kg, fullness = chance.uniform(60.2, 61.9), chance.randint(3, 8)
        water, sharpness = 3 + chance.randint(2, 8) / 10, chance.randint(3, 5)
        figures = f"{kg:.1f} kg, fullness {fullness}, water {water} l, sharpness {sharpness}"
        return Act(athlete, f"{figures}, on target, fine")
    return Act(athlete, chance.choice((*ASKED, f"fullness {chance.randint(3, 8)}")))


def moments() -> list[datetime]:
    """The hours of the week, in order."""
    return [START + timedelta(days=day, hours=hour) for day in range(DAYS) for hour in HOURS]


def fill(engine: Engine) -> None:
    """Put them into a database in shape, a week before their events."""
    with transaction(engine) as session:
        for coach, chat in COACHES.items():
            person = Person(
                telegram_user_id=chat,
                chat_id=chat,
                first_name=coach,
                is_coach=True,
                created_at=START,
            )
            session.add(person)
            session.flush()
            team = ATHLETES[coach]
            alike = Alike(
                answered=False, zones=("Europe/London",), name=f"{coach}son",
                first_chat=min(team.values()), within_days=1,
            )  # fmt: skip
            ids = many_athletes(session, person.id or 0, len(team), START, alike)
            for event in session.exec(select(EventRow).where(col(EventRow.athlete_id).in_(ids))):
                event.day += timedelta(days=DAYS)
                session.add(event)
            session.flush()
            for one in ids:
                prompts.schedule(Turn(session, Context(now=START)), get_profile(session, one))
