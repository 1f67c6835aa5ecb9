"""How long a check-in keeps others from writing: `python -m tests.bench.held [--times 40]`.

Mornings of athletes who have told none before, and of athletes who have told three, whose forecast
is followed from those: each has a weight of their own, so nothing worked out for one serves another.
"""

from __future__ import annotations

import argparse
import statistics
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import timedelta

from sqlalchemy import Connection, Engine, event

from bot.store.db import make_engine, transaction
from bot.store.tables.week import CheckInRow
from engine.decision import beliefs, foresight
from tests.bench.crew import NOW, Stopwatch, fill, into_inbox, postgresql, sqlite, typed
from tests.bench.production import LINE, handle, quiet, run, say, worker_of

WARM = 20
KINDS = {"SQLite": sqlite, "PostgreSQL": postgresql}


def main() -> None:
    quiet()
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--times", type=int, default=40)
    times = parser.parse_args().times
    for name, database in KINDS.items():
        for mornings in (0, 3):
            with database() as url:
                say(f"{name:10}, {mornings} mornings before: {_held(url, mornings, times)}")


def _held(url: str, mornings: int, times: int) -> str:
    athletes = fill(url, 5, -(-(times + WARM) // 5))
    engine = make_engine(url)
    with transaction(engine) as session:
        for _, athlete_id in athletes:
            for back in range(1, mornings + 1):
                session.add(
                    CheckInRow(
                        athlete_id=athlete_id, date=NOW.date() - timedelta(days=back),
                        weight_kg=60.0 + 0.013 * athlete_id + 0.1 * back, fullness=5, sharpness=4,
                        water_l=3.5, gut="fine", answered_at=NOW - timedelta(days=back),
                    )
                )  # fmt: skip
    worker = worker_of(engine)
    handle(engine, worker, [typed(chat, "/help") for chat, _ in athletes])
    raws = [typed(chat, LINE) for chat, _ in athletes]
    into_inbox(engine, raws)
    run(worker, raws[:WARM])
    for known in (beliefs.belief_on, foresight._looked_ahead, foresight._odds_of):
        known.cache_clear()  # the same athletes may have been in another database
    cpu, wall = [], []
    with _writing(engine) as held:
        for raw in raws[WARM:]:
            watch = Stopwatch()
            run(worker, [raw])
            cpu.append(1000 * watch.cpu())
            wall.append(1000 * watch.wall())
    engine.dispose()
    return (
        f"others kept from writing for {statistics.median(held):.1f} ms; "
        f"{statistics.median(cpu):.1f} ms CPU and {statistics.median(wall):.1f} ms in all"
    )


@contextmanager
def _writing(engine: Engine) -> Iterator[list[float]]:
    """How long each transaction took that was committed, ms."""
    began: dict[Connection, float] = {}
    held: list[float] = []

    def begin(connection: Connection) -> None:
        began[connection] = time.perf_counter()

    def commit(connection: Connection) -> None:
        held.append(1000 * (time.perf_counter() - began.pop(connection)))

    event.listen(engine, "begin", begin)
    event.listen(engine, "commit", commit)
    yield held
    event.remove(engine, "begin", begin)
    event.remove(engine, "commit", commit)


if __name__ == "__main__":
    main()
