"""How long the roster of 200 athletes takes: `python -m tests.bench.roster`.

Own time of one page, database reads included, on an SQLite file. Machines differ, so the figure is
also given as a multiple of a baseline of the same run: reading those 200 profiles one by one by
their key, which is the least that a roster built athlete by athlete would do.
"""

from __future__ import annotations

import tempfile
import time
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from statistics import median

from sqlmodel import Session

from bot.coach.roster import roster
from bot.core.turn import Context
from bot.store.db import make_engine, transaction
from bot.store.migrate import upgrade_to_head
from bot.store.tables.people import AthleteProfile, Person
from tests.support.many import many_athletes
from tests.support.typed import typed

ATHLETES, TIMES = 200, 15
MOST_MS = 100.0
MOST_TIMES_BASELINE = 2.0
NOW = datetime(2027, 5, 6, 9, 0, tzinfo=UTC)


def measure() -> tuple[float, float]:
    """Milliseconds for a page of the roster, and for the baseline (medians)."""
    with tempfile.TemporaryDirectory() as folder:
        engine = make_engine(f"sqlite:///{Path(folder) / 'bench.sqlite3'}")
        upgrade_to_head(engine)
        with transaction(engine) as session:
            coach = Person(
                telegram_user_id=1, chat_id=1, first_name="Ravi", is_coach=True, created_at=NOW
            )
            session.add(coach)
            session.flush()
            ids = many_athletes(session, coach.id or 0, ATHLETES, NOW)

        def page(session: Session) -> None:
            roster.show_roster(typed(session, Context(now=NOW), session.get_one(Person, 1)))

        def one_by_one(session: Session) -> None:
            for athlete_id in ids:
                session.get_one(AthleteProfile, athlete_id)

        def spent(work: Callable[[Session], None]) -> float:
            with transaction(engine) as session:
                began = time.perf_counter()
                work(session)
                return 1000 * (time.perf_counter() - began)

        pages, baselines = [], []
        for _ in range(TIMES):
            pages.append(spent(page))
            baselines.append(spent(one_by_one))
        engine.dispose()
    return median(pages), median(baselines)


def main() -> None:
    page, baseline = measure()
    print(  # noqa: T201
        f"roster of {ATHLETES}: {page:.1f} ms a page; reading {ATHLETES} profiles one by one: "
        f"{baseline:.1f} ms; ratio {page / baseline:.2f} (at most {MOST_TIMES_BASELINE:g})"
    )
    if page > MOST_MS or page > MOST_TIMES_BASELINE * baseline:
        raise SystemExit(1)


if __name__ == "__main__":
    main()
