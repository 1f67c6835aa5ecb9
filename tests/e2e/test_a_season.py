"""Two coaches and thirty athletes through six weeks over the Bot API: trials, shows a week and two days
apart, a class that is moved, a weigh-in, and a sheet with errors before the one that counts.

The clock is driven. What everybody must and must not have seen is held against the calendar.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from sqlmodel import Session, col, select

from bot.event.stage.day import day_of
from bot.people.people import get_profile
from bot.store.db import transaction
from bot.store.tables.event import DebriefRow, StageRow
from bot.store.tables.people import Person
from bot.store.tables.week import EventRow, PlanRow
from engine.values.case import ForecastUse
from tests.support import witness
from tests.support.chats import Telegram
from tests.support.crowd import Crowd, Script, Someone, file_ids
from tests.support.driven_bot import DrivenBot
from tests.support.many import Alike, not_set_up
from tests.support.mornings import ORDINARY
from tests.support.roster_sheets import csv_of, filled

pytestmark = [pytest.mark.loopback, pytest.mark.soak, pytest.mark.timeout(1800)]

BEGIN = datetime(2027, 3, 1, 12, 0, tzinfo=UTC)
END = datetime(2027, 4, 16, 12, 0, tzinfo=UTC)
LONDON, NEW_YORK = "Europe/London", "America/New_York"
#: Europe's clocks go forward on the day of this show.
ONE_SHOW = (("show", date(2027, 3, 28), "even"),)
A_SEASON = (
    ("trial", date(2027, 3, 14), "even"), ("show", date(2027, 4, 4), "front-load"),
    ("show", date(2027, 4, 11), "bridge"),
)  # fmt: skip
SHOOT_AFTER_SHOW = (
    ("show", date(2027, 3, 27), "even"), ("shoot", date(2027, 3, 29), "bridge"),
)  # fmt: skip
#: The weigh-in of those with a season, the evening before their first show; a cap nobody can make.
WEIGHS_IN, WEIGH_IN_DAY, CAP_KG = date(2027, 4, 4), date(2027, 4, 3), 57
WEIGH_IN = {
    "Weigh-in cap (kg)": str(CAP_KG), "Weigh-in day": WEIGH_IN_DAY.isoformat(),
    "Weigh-in time": "17:00", "Target look": "full 7-9 sharp 3-4",
}  # fmt: skip
Events = tuple[tuple[str, date, str], ...]
ONE = tuple(f"Hedwig{letter}" for letter in "ABCDEFGHI")
MANY = tuple(f"Helmer{letter}" for letter in "ABCDEFGHI")
FAR = tuple(f"Ingrid{letter}" for letter in "ABCDEFGHIJKL")
SEASONS: dict[str, Events] = {
    **dict.fromkeys(ONE, ONE_SHOW), **dict.fromkeys(MANY, A_SEASON),
    **dict.fromkeys(FAR, SHOOT_AFTER_SHOW),
}  # fmt: skip
COACH_OF = {**dict.fromkeys((*ONE, *MANY), "Hedda"), **dict.fromkeys(FAR, "Ilmar")}
ZONES = {**dict.fromkeys((*ONE, *MANY), LONDON), **dict.fromkeys(FAR, NEW_YORK)}
STAGE, LATE_MIN = time(14, 30), 45
EVERY_HOUR = ("Drink a glass of water", "A meal now", "Take a few sips")


async def test_a_season_of_thirty_is_asked_planned_and_looked_back_on_event_by_event(
    telegram: Telegram, own_url: str, tmp_path: Path
) -> None:
    async with DrivenBot(telegram, own_url, BEGIN, tmp_path / "photos") as bot:
        crowd = Crowd(telegram, bot)
        people = cast(bot, crowd)
        await crowd.together(hedda_sets_up(people["Hedda"]), ilmar_sets_up(people["Ilmar"]))
        set_up = bot.now
        await lived(crowd, people)
        with bot.session() as session:
            found = {
                "mornings asked": differences(asked_on(people), due_mornings()),
                "plans of events": plans_other_than_written(session),
                "looks back": looks_back(session),
                "still ahead": [
                    row.id for row in session.exec(select(EventRow)) if row.active or row.waits
                ],
                "the class that was moved": moved_classes(session),
                "caps that the coach does not know of": caps_untold(people["Hedda"], session),
                "said twice": said_twice(people, set_up),
                "faster than Telegram's pace": witness.haste(bot.line.calls),
                "of somebody else": witness.strays(crowd, may_know(people), numbers(session)),
                "mishaps": witness.mishaps(session, ()),
                "refused by Telegram": telegram.refused(),
            }
        assert {name: what for name, what in found.items() if what} == {}


def cast(bot: DrivenBot, crowd: Crowd) -> dict[str, Someone]:
    """Everybody in their chats; athletes have answered the first questions, and have no event."""
    people: dict[str, Someone] = {}
    chat = 7_500_001
    with transaction(bot.engine) as session:
        for coach, names in (("Hedda", (*ONE, *MANY)), ("Ilmar", FAR)):
            row = Person(telegram_user_id=chat, chat_id=chat, first_name=coach, is_coach=True,
                         created_at=BEGIN)  # fmt: skip
            session.add(row)
            session.flush()
            people[coach] = crowd.person(chat, coach)
            ids = not_set_up(
                session,
                row.id or 0,
                names,
                BEGIN,
                Alike(first_chat=chat + 2, zones=(ZONES[names[0]],)),
            )
            for number, (name, one) in enumerate(zip(names, ids, strict=True)):
                people[name] = crowd.person(chat + 2 + 2 * number, name)
                profile = get_profile(session, one)
                profile.forecast = ForecastUse.RULES_ONLY  # what it costs is measured elsewhere
                session.add(profile)
            chat += 1000
    return people


# The coaches


def hedda_sets_up(hedda: Someone) -> Script:
    """By the sheet that she takes, first with errors; those with a season by rows of their own."""
    hedda.says("/setup")
    yield
    hedda.heard("Not set up yet")
    hedda.taps("Sheet for all (XLSX)")
    yield
    sheet = next(m for m in reversed(hedda.messages.values()) if m.method == "sendDocument")
    (file_id,) = file_ids(sheet, "document")
    content = hedda.crowd.telegram.downloads(file_id)
    row = {"Event": "show", "Day": ONE_SHOW[0][1], "Stage time": STAGE, "Plan": "even"}
    wrong = {**dict.fromkeys(ONE, row), "HedwigB": row | {"Day": "31 April", "Plan": "odd"}}
    hedda.sends(filled(content, wrong), name="athletes.xlsx")
    yield
    told = hedda.heard("I changed nothing")
    assert "D3" in told and "H3" in told, told
    hedda.sends(filled(content, dict.fromkeys(ONE, row)), name="athletes.xlsx")
    yield
    hedda.heard("Left as they are: HelmerA")
    hedda.taps(f"Set up all {len(ONE)}")
    yield
    hedda.heard(f"Done: {len(ONE)} athletes are set up")
    yield from sends_season(hedda, MANY)


def ilmar_sets_up(ilmar: Someone) -> Script:
    yield from sends_season(ilmar, FAR)


def sends_season(coach: Someone, names: tuple[str, ...]) -> Iterator[None]:
    """A CSV with a row for every event of each."""
    rows = [
        {"Athlete": name, "Event": kind, "Day": day.isoformat(), "Plan": plan}
        | (WEIGH_IN if name in MANY and day == WEIGHS_IN else dict.fromkeys(WEIGH_IN, ""))
        for name in names
        for kind, day, plan in SEASONS[name]
    ]
    coach.sends(csv_of(*rows, delimiter=";"), name="season.csv")
    yield
    coach.heard(f"Set these {len(rows)} up")
    coach.taps(f"Set up all {len(rows)}")
    yield
    coach.heard(f"Done: {len(names)} athletes are set up")


# The weeks


async def lived(crowd: Crowd, people: dict[str, Someone]) -> None:
    """Everybody answers in a line when they are asked; coaches acknowledge what they are told."""
    answered: Counter[str] = Counter()
    day = BEGIN.date()
    while day <= END.date():
        for zone in (LONDON, NEW_YORK):
            await crowd.until(_at(day, time(6, 31), zone))
            await crowd.together(*answers(people, answered, zone))
            if zone == LONDON and day == ONE_SHOW[0][1]:
                await crowd.until(_at(day, time(9, 0), zone))
                await crowd.together(is_late(people["Hedda"]))
        await crowd.until(_at(day, time(19, 0), NEW_YORK))
        await crowd.together(*(acknowledges(people[one]) for one in ("Hedda", "Ilmar")))
        day += timedelta(days=1)
    await crowd.until(END)


def answers(people: dict[str, Someone], answered: Counter[str], zone: str) -> list[Script]:
    found = []
    for name, person in people.items():
        if ZONES.get(name) != zone:
            continue
        asked = [at for who, at in witness.asked([person]) if who == name]
        if len(asked) > answered[name]:
            answered[name] = len(asked)
            on = asked[-1].astimezone(ZoneInfo(zone)).date()
            found.append(says_line(person, days_to_next(name, on)))
    return found


def days_to_next(name: str, on: date) -> int:
    return min((day - on).days for _, day, _ in SEASONS[name] if day >= on)


def says_line(person: Someone, days_out: int) -> Script:
    kg, fullness, sharpness = ORDINARY[days_out]
    sharp = f" {sharpness}" if days_out <= 3 else ""
    person.says(f"{kg} {fullness} 3.5{sharp} on target")
    yield


def acknowledges(coach: Someone) -> Script:
    while any("Acknowledge" in message.buttons for message in coach.messages.values()):
        coach.taps("Acknowledge")
        yield


def is_late(hedda: Someone) -> Script:
    """One class of several that day: whose it is, is asked."""
    hedda.says(f"/late {LATE_MIN}")
    yield
    hedda.heard("Which athlete")
    hedda.taps("HedwigC")
    yield


def _at(day: date, clock: time, zone: str) -> datetime:
    return datetime.combine(day, clock, ZoneInfo(zone)).astimezone(UTC)


# What was due, by the calendar


def said_twice(people: dict[str, Someone], since: datetime) -> list[str]:
    """Repeats beside what the day of the show says every hour."""
    return [
        told
        for told in witness.repeats(people.values(), since)
        if not any(words in told for words in EVERY_HOUR)
    ]


def due_mornings() -> Counter[tuple[str, date]]:
    """From seven days out, or from the day after the event before, to the day itself."""
    due: Counter[tuple[str, date]] = Counter()
    for name, events in SEASONS.items():
        before = date.min
        for _, day, _ in events:
            first = max(day - timedelta(days=7), before + timedelta(days=1))
            due.update((name, first + timedelta(days=n)) for n in range((day - first).days + 1))
            before = day
    return due


def asked_on(people: dict[str, Someone]) -> Counter[tuple[str, date]]:
    athletes = [person for name, person in people.items() if name in SEASONS]
    return Counter(
        (name, at.astimezone(ZoneInfo(ZONES[name])).date()) for name, at in witness.asked(athletes)
    )


def differences(
    seen: Counter[tuple[str, date]], due: Counter[tuple[str, date]]
) -> list[tuple[str, date, int, int]]:
    return [
        (*pair, seen[pair], due[pair])
        for pair in sorted(seen.keys() | due.keys())
        if seen[pair] != due[pair]
    ]


def plans_other_than_written(session: Session) -> list[str]:
    found = []
    for name, events in SEASONS.items():
        rows = _events(session, name)
        shapes = [
            (row.kind, row.day, session.exec(
                select(PlanRow.shape).where(PlanRow.event_id == row.id)
            ).first())
            for row in rows
        ]  # fmt: skip
        if tuple(shapes) != events:
            found.append(f"{name}: {shapes}")
    return found


def looks_back(session: Session) -> list[str]:
    """Each event is looked back on once, and by itself."""
    found = []
    for name, events in SEASONS.items():
        sent = [
            session.exec(select(DebriefRow).where(DebriefRow.event_id == row.id)).first()
            for row in _events(session, name)
        ]
        if len([one for one in sent if one is not None and one.sent_at is not None]) != len(events):
            found.append(name)
    return found


def moved_classes(session: Session) -> list[str]:
    """One athlete's class went on later; those of the others when they were to."""
    found = []
    for name in ONE:
        (event,) = _events(session, name)
        row = session.exec(select(StageRow).where(StageRow.event_id == event.id)).one()
        late = timedelta(minutes=LATE_MIN if name == "HedwigC" else 0)
        if day_of(row).stages[0] != _at(ONE_SHOW[0][1], STAGE, LONDON) + late:
            found.append(name)
    return found


def caps_untold(coach: Someone, session: Session) -> list[str]:
    """Whoever can't make the cap: it is kept with that show alone, and the coach is told days ahead
    what can't be made safely. What is told of several in one minute stands in one message.
    """
    found = []
    for name in MANY:
        asked = [row.day for row in _events(session, name) if row.asks.get("weigh_in")]
        told = [
            part
            for text in coach.texts
            for part in text.split("\n\n")
            if part.startswith(f"{name}. Weigh-in") and "can't be made safely" in part
            and "Don't cut water or salt" in part
        ]  # fmt: skip
        if asked != [WEIGHS_IN] or not told:
            found.append(f"{name}: {asked}, told {len(told)} times")
    return found


def _events(session: Session, name: str) -> list[EventRow]:
    query = (
        select(EventRow)
        .join(Person, col(Person.id) == EventRow.athlete_id)
        .where(Person.first_name == name)
        .order_by(col(EventRow.day))
    )
    return list(session.exec(query))


def numbers(session: Session) -> dict[int, str]:
    rows = session.exec(select(Person))
    return {row.id or 0: row.first_name for row in rows}


def may_know(people: dict[str, Someone]) -> dict[str, dict[str, witness.Window | None]]:
    known: dict[str, dict[str, witness.Window | None]] = {name: {} for name in people}
    for name, coach in COACH_OF.items():
        known[coach][name] = None
        known[name][coach] = None
    return known
