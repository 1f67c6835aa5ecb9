"""A year of two hundred athletes: how long a coach waits for numbers and workbook, and what it takes.

`python -m tests.bench.year [ATHLETES] [WEEKS]` prints seconds of CPU and peak memory of each, a fresh
process for each of them, with what starting one takes beside it.
"""

from __future__ import annotations

import resource
import subprocess
import sys
import tempfile
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from time import process_time
from typing import Any

from sqlalchemy import insert
from sqlmodel import Session

from bot.store.db import make_engine, transaction
from bot.store.migrate import upgrade_to_head
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow, DaySetRow, DecisionRow, EventRow, PlanRow
from tests.support.many import BASELINE
from tests.support.weeks import in_peak_week

NOW = datetime(2027, 12, 31, 12, tzinfo=UTC)
LOOKS = ("flat", "full", "full", "spilled over")


def fill(url: str, athletes: int, weeks: int) -> None:
    """Weeks that are over, with the decisions of one that was really decided, whole."""
    engine = make_engine(url)
    upgrade_to_head(engine)
    team = in_peak_week(engine, foresight=True)
    for out, line in enumerate(("61.5 7 3.5 4 on target", "61.0 4 3.5 4 on target")):
        team.morning(3 - out)
        team.athlete.writes(line)
    with Session(engine) as session:
        first = session.get_one(DecisionRow, 1)
        case, decision = first.case, first.decision
        plan = session.get_one(PlanRow, 1).days
    with transaction(engine) as session:
        for number in range(athletes):
            person = Person(
                telegram_user_id=9000 + number, chat_id=9000 + number,
                first_name=f"Athlete {number}", created_at=NOW,
            )  # fmt: skip
            session.add(person)
            session.flush()
            session.add(AthleteProfile(
                person_id=person.id or 0, coach_id=1, status="active", sex="female",
                birth_year=1996, height_cm=165, body_mass_kg=61.2, body_fat_percent=14,
                baseline=BASELINE, zone="Europe/London", created_at=NOW,
            ))  # fmt: skip
            for week in range(weeks):
                day = date(2027, 12, 20) - timedelta(days=28 * week)
                look = LOOKS[(number + week) % 4]
                _week(session, person.id or 0, day, look, (plan, case, decision))
    engine.dispose()


def _week(
    session: Session, athlete: int, day: date, look: str, lived: tuple[Any, Any, Any]
) -> None:
    plan, case, decision = lived
    set_at = datetime(day.year, day.month, day.day, tzinfo=UTC) - timedelta(days=9)
    event = EventRow(
        athlete_id=athlete, kind="show", day=day, zone="Europe/London", active=False, look=look,
        set_by=1, set_at=set_at,
    )  # fmt: skip
    session.add(event)
    session.flush()
    session.add(PlanRow(event_id=event.id or 0, shape="even", days=plan, set_by=1, set_at=set_at))
    for out in range(7, -1, -1):
        on = day - timedelta(days=out)
        row = CheckInRow(
            athlete_id=athlete, date=on, weight_kg=61.0, fullness=5, sharpness=4, water_l=3.5,
            carb_eaten_g=400, gut="fine", note="slept well, hungry",
            answered_at=set_at + timedelta(days=9 - out, hours=7),
        )  # fmt: skip
        session.add(row)
        session.flush()
        session.connection().execute(
            insert(DecisionRow).values(
                athlete_id=athlete, event_id=event.id, checkin_id=row.id, revision=1,
                sets_date=on, outcome="adjusted", status="approved", carb_g=420.0,
                planned_carb_g=400.0, case=case, decision=decision | {"date": on.isoformat()},
                made_at=row.answered_at, sign_off_due_at=row.answered_at,
                signed_by=1, signed_at=row.answered_at + timedelta(minutes=9),
            )
        )  # fmt: skip
        session.add(DaySetRow(
            athlete_id=athlete, date=on, carb_g=420, by="decision", set_at=row.answered_at,
        ))  # fmt: skip


def work(kind: str, url: str) -> int:
    """One of them, in this process; what it made, in bytes or weeks."""
    from bot.people.people import athletes_of
    from bot.sheets.coach_numbers.gather import numbers_of
    from bot.sheets.workbook.files import pages_for
    from bot.sheets.workbook.writing import write
    from bot.week.weeks_of import weeks_of

    with Session(make_engine(url)) as session:
        coach = session.get_one(Person, 1)
        if kind == "start":
            return 0
        if kind == "numbers":
            return numbers_of(session, coach, NOW)[0].weeks
        profiles = athletes_of(session, coach)
        if kind == "compare":
            ids = [profile.person_id for profile in profiles]
            return sum(len(weeks) for weeks in weeks_of(session, ids).values())
        pages = pages_for(session, coach, profiles, whose="all", day=NOW.date())
        return len(write(pages, "csv" if kind == "csv" else "xlsx"))


def main(arguments: list[str]) -> None:
    if arguments[:1] == ["--work"]:
        begin = process_time()
        made = work(arguments[1], arguments[2])
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        print(f"{arguments[1]:8} {process_time() - begin:6.2f} s  {peak:5.0f} MB  {made}")
        return
    athletes, weeks = (int(one) for one in [*arguments, "200", "6"][:2])
    with tempfile.TemporaryDirectory() as folder:
        url = f"sqlite:///{Path(folder) / 'year.sqlite3'}"
        fill(url, athletes, weeks)
        print(f"{athletes} athletes, {weeks} weeks each: CPU time, peak memory, what was made")
        for kind in ("start", "compare", "numbers", "xlsx", "csv"):
            command = [sys.executable, "-m", "tests.bench.year", "--work", kind, url]
            subprocess.run(command, check=True)


if __name__ == "__main__":
    main(sys.argv[1:])
