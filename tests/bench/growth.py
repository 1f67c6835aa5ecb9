"""Whether answers take longer where there are more people: `python -m tests.bench.growth 1000 20000`.

For each number of athletes, in a process of its own: a database with that many of them in their weeks,
each with some days of answers, decisions and messages behind them; then the CPU time of every kind of
thing that somebody waits for, the longest that clearing out holds the write lock, and peak memory. They
do each thing one right after the other, since a shared machine is faster at one time than another.
What is more than 1.1 times the first number's is marked.
"""

from __future__ import annotations

import argparse
import gc
import json
import multiprocessing
import resource
import time
from collections.abc import Callable
from datetime import timedelta
from functools import partial
from pathlib import Path
from statistics import median
from typing import Any

from sqlalchemy import Engine, event
from sqlmodel import Session, select

from bot.core.turn import Context, Turn
from bot.membership.deletion.athlete import GONE, Gone
from bot.membership.my_data.handing_out import make
from bot.store.db import make_engine, transaction
from bot.store.prune import prune_traffic
from bot.store.tables import metadata
from bot.store.tables.people import Person
from bot.telegram.worker import Worker
from tests.bench.copies import STRIDE, copies
from tests.bench.crew import (
    FIRST_ATHLETE_CHAT,
    FIRST_COACH_CHAT,
    NOW,
    beyond,
    fill,
    into_inbox,
    sqlite,
    tapped,
    typed,
)
from tests.bench.production import LINE, handle, quiet, say, worker_of

UNIT_ATHLETES = 20
TIMES, WARM = 15, 3
MOST_PRUNED = 25  # units
DAY = timedelta(days=1)


def fill_up(url: str, athletes: int) -> None:
    """One coach with twenty athletes who live through some days, and copies of them all."""
    quiet()
    people = fill(url, 1, UNIT_ATHLETES)
    engine = make_engine(url)
    worker = worker_of(engine)
    for words in (LINE, "/today", "slept badly", "fullness 4", "/week", "60.9 4 3.5 4 on target"):
        handle(engine, worker, [typed(chat, words) for chat, _ in people])
    handle(engine, worker, [typed(FIRST_COACH_CHAT, words) for words in ("/roster", "/alerts")])
    with engine.begin() as connection:
        for table in ("inbox", "outbox", "agenda"):
            rows = metadata.tables[table]
            done = {"inbox": "done", "outbox": "sent", "agenda": "waiting"}[table]
            connection.execute(rows.update().values(status=done))
    copies(engine, athletes // UNIT_ATHLETES - 1)
    with engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA analysis_limit = 400")
        connection.exec_driver_sql("ANALYZE")
    engine.dispose()


InTurn = Callable[[Callable[[], float]], float]
LONGEST_S = 600


def measure(athletes: int, in_turn: InTurn) -> dict[str, float]:
    """CPU in ms of each kind (median), memory in MB, and rows and size of the database."""
    quiet()
    found: dict[str, float] = {"memory at start (MB)": _peak_mb()}
    with sqlite() as url:
        began = time.perf_counter()
        filling = multiprocessing.get_context("spawn").Process(target=fill_up, args=(url, athletes))
        filling.start()  # apart, so that its memory is not counted
        filling.join()
        assert filling.exitcode == 0
        beyond(STRIDE * (athletes // UNIT_ATHLETES + 1))
        size_mb = Path(url.partition("///")[2]).stat().st_size / 1e6
        say(f"  filled in {time.perf_counter() - began:.0f} s, {size_mb:.0f} MB")
        engine = make_engine(url)
        worker = worker_of(engine)
        units = athletes // UNIT_ATHLETES
        # Of the middle, where neither end of an index is near.
        middle = (units // 2) * STRIDE
        chats = [FIRST_ATHLETE_CHAT + middle + n for n in range(UNIT_ATHLETES)][: TIMES + WARM]
        coach = FIRST_COACH_CHAT + middle
        with Session(engine) as session:
            number = session.exec(select(Person.id).where(Person.chat_id == chats[0])).one()
        kinds: dict[str, list[dict[str, Any]]] = {
            "/today": [typed(chat, "/today") for chat in chats],
            "/week": [typed(chat, "/week") for chat in chats],
            "one line": [typed(chat, "61.2 6 3.5 4 on target") for chat in chats],
            "words": [typed(chat, "legs heavy today") for chat in chats],
            "tap": [tapped(coach, f"c:card:{number + n % 9}", 1) for n in range(TIMES + WARM)],
            "roster": [typed(coach, "/roster") for _ in range(TIMES + WARM)],
            "/alerts": [typed(coach, "/alerts") for _ in range(TIMES + WARM)],
            "stranger": [typed(7, "hello") for _ in range(TIMES + WARM)],
        }
        for name, raws in kinds.items():
            found[name] = _each(engine, worker, raws, in_turn)
        found["/mydata"] = _timed(lambda: _my_data(engine, number), 5, in_turn)
        found["heads of the inbox"] = _timed(worker._next_per_chat, TIMES, in_turn)
        leaving = chats[len(chats) // 2 :]
        gone = [tapped(chat, GONE(Gone.YES), 1) for chat in leaving]
        found["deletion"] = _each(engine, worker, gone, in_turn)
        found["prune, longest hold"] = in_turn(lambda: _longest_hold(engine))
        found["memory in the end (MB)"] = _peak_mb()
        engine.dispose()
    return found


def _each(engine: Engine, worker: Worker, raws: list[dict[str, Any]], in_turn: InTurn) -> float:
    into_inbox(engine, raws)

    def handled(raw: dict[str, Any]) -> None:
        message = raw.get("message") or raw["callback_query"]["message"]
        assert worker.handle(raw["update_id"], message["chat"]["id"])

    gc.disable()
    spent = [in_turn(partial(_spent, partial(handled, raw))) for raw in raws]
    gc.enable()
    return median(spent[WARM:])


def _timed(work: Callable[[], object], times: int, in_turn: InTurn) -> float:
    return median([in_turn(partial(_spent, work)) for _ in range(times)])


def _spent(work: Callable[[], object]) -> float:
    began = time.process_time()
    work()
    return 1000 * (time.process_time() - began)


def _my_data(engine: Engine, person_id: int) -> None:
    with transaction(engine) as session:
        named = {"person": person_id, "day": NOW.date().isoformat()}
        assert make(Turn(session, Context(now=NOW)), named) is not None


def _longest_hold(engine: Engine) -> float:
    """Wall time in ms of the longest of the transactions in which the oldest messages go."""
    with engine.begin() as connection:
        for table, at in (("inbox", "received_at"), ("outbox", "created_at")):
            rows = metadata.tables[table]
            old = rows.update().values({at: NOW - 60 * DAY}).where(rows.c.status != "new")
            key = rows.c.update_id if table == "inbox" else rows.c.id
            connection.execute(old.where(key < MOST_PRUNED * STRIDE))
    held: list[float] = []
    began: dict[int, float] = {}

    def begin(connection: Any) -> None:
        if connection.get_execution_options().get("begin_immediate"):
            began[id(connection)] = time.perf_counter()

    def end(connection: Any) -> None:
        at = began.pop(id(connection), None)
        if at is not None:
            held.append(1000 * (time.perf_counter() - at))

    event.listen(engine, "begin", begin)
    event.listen(engine, "commit", end)
    gone = prune_traffic(engine, NOW - 30 * DAY)
    assert gone and held
    return sorted(held)[int(0.99 * len(held))]


def _peak_mb() -> float:
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def _apart(athletes: int, number: int, all_of_them: Any, results: Any) -> None:
    """One of several processes; they are at work one after the other, by their `number`."""
    quiet()

    def in_turn(work: Callable[[], float]) -> float:
        found = 0.0
        for one in range(all_of_them.parties):
            if one == number:
                found = work()
            all_of_them.wait(LONGEST_S)
        return found

    results.put(json.dumps([number, measure(athletes, in_turn)]))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("athletes", type=int, nargs="+")
    given = parser.parse_args()
    context = multiprocessing.get_context("spawn")
    results, all_of_them = context.Queue(), context.Barrier(len(given.athletes))
    processes = [
        context.Process(target=_apart, args=(athletes, number, all_of_them, results))
        for number, athletes in enumerate(given.athletes)
    ]
    for process in processes:
        process.start()
    for process in processes:
        process.join()
    if any(process.exitcode for process in processes):
        raise SystemExit("one of them fell")
    told = dict(json.loads(results.get()) for _ in processes)
    found = [told[number] for number in range(len(processes))]
    for name in found[0]:
        line = "  ".join(f"{one[name]:9.1f}" for one in found)
        ratio = found[-1][name] / found[0][name]
        mark = "  <-" if ratio > 1.1 else ""
        say(f"{name:26} {line}   {ratio:5.2f} times{mark}")


if __name__ == "__main__":
    main()
