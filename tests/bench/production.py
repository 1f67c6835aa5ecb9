"""How the running bot does: `python -m tests.bench.production answers | each | profile`.

answers   a morning of one-line check-ins handled by one and by two processes, on SQLite and PostgreSQL
each      CPU, wall and statements of each kind of update, beside a bare handler with one commit
profile   where the time of one check-in goes

Everything is warm before it is measured, as in a process that has run for a day: psycopg prepares a
statement when a connection puts it for the sixth time, and the server has planned it for good after
five more. The figures are of this machine and this run; compare ratios of one run with each other.
"""

from __future__ import annotations

import argparse
import asyncio
import cProfile
import json
import multiprocessing
import os
import pstats
import threading
import time
from collections import Counter
from collections.abc import Callable
from contextlib import nullcontext
from dataclasses import asdict
from typing import Any

import structlog
from sqlmodel import Session, col, func, select

from bot.core.chat.outbox import say as say_plainly
from bot.core.garbage import leave_out_what_is_loaded
from bot.core.timing.clock import DrivenClock
from bot.core.turn import Context, Turn
from bot.core.use_cases import Runtime
from bot.dispatcher import USE_CASES
from bot.store.db import looking, make_engine, times_run_again, transaction
from bot.store.tables.traffic import InboxRow, OutboxRow
from bot.telegram.reading import read
from bot.telegram.worker import Worker
from tests.bench.crew import (
    FIRST_COACH_CHAT,
    NOW,
    Counted,
    Stopwatch,
    counting,
    fill,
    into_inbox,
    postgresql,
    sqlite,
    tapped,
    typed,
    watching_the_server,
)

LINE = "61.0 5 3.5 4 on target"
DAYS_OUT = 6  # mornings of so many kinds, by the days that are left
WARM = 10 * DAYS_OUT
THREADS = 2  # as the bot is set
WARM_PROCESS = (THREADS + 1) * WARM  # updates until all its connections are warm
BY_TURNS = 10  # the disk and the neighbours are then the same for both
COUNTED = 12  # whose statements are counted, by a listener that would cost those that are timed


def worker_of(engine: Any) -> Worker:
    return Worker(
        Runtime(engine, USE_CASES, DrivenClock(NOW), lambda: Context(now=NOW)),
        threads=THREADS,
        handled=lambda: None,
    )


# Many at once


def answers(coaches: int, each: int) -> None:
    with sqlite() as url:
        say(f"SQLite, 1 process:      {morning(url, coaches, each, 1).line()}")
    found = {}
    for processes in (1, 2):
        with postgresql() as url:
            counted = found[processes] = morning(url, coaches, each, processes)
        say(f"PostgreSQL, {processes} process{'es' * (processes > 1):2}:  {counted.line()}")
    cores, one, two = len(os.sched_getaffinity(0)), found[1], found[2]
    # One process keeps one core busy and the server a part of another; two have to share what is there.
    most = min(2.0, cores / (1 + one.server_cpu_s / one.cpu_s))
    say(
        f"two processes over one: {one.wall_s / two.wall_s:.2f} times the answers a second "
        f"(on {cores} cores, with the server on them, {most:.2f} is the most there can be)"
    )
    resting = []
    for processes in (1, 2):
        with postgresql() as url:
            resting.append(morning(url, coaches, each, processes, rests=True))
        say(f"at work for half of its time, {processes}: {resting[-1].line()}")
    say(f"two over one, with cores for all: {resting[0].wall_s / resting[1].wall_s:.2f} times")


def morning(url: str, coaches: int, each: int, processes: int, *, rests: bool = False) -> Counted:
    """Every athlete's check-in, waiting in the inbox when the processes begin. `rests`: a process rests
    after each answer for as long as it took its processor, so that a few of them and the server
    do not have to share cores, and what is left is what they keep each other from.
    """
    to_warm = processes * -(-WARM_PROCESS // each)
    athletes = fill(url, coaches + to_warm, each)
    engine = make_engine(url)
    _are_known(engine, worker_of(engine), athletes)
    athletes, warming = athletes[: coaches * each], athletes[coaches * each :]
    into_inbox(engine, _lines(warming, each))
    later = _lines(athletes, each)
    context = multiprocessing.get_context("spawn")
    begin, results = context.Barrier(processes + 1), context.Queue()
    workers = [
        context.Process(target=_work, args=(url, begin, results, rests)) for _ in range(processes)
    ]
    for one in workers:
        one.start()
    server = Counted()
    begin.wait()  # all of them are warm
    into_inbox(engine, later)
    begin.wait()
    watch = Stopwatch()
    with nullcontext() if url.startswith("sqlite") else watching_the_server(url, server):
        found = [Counted(**json.loads(results.get())) for _ in workers]
        wall = watch.wall()
    for one in workers:
        one.join()
    with Session(engine) as session:
        left = session.exec(select(func.count()).where(InboxRow.status != "done")).one()
        assert left == 0, left
    engine.dispose()
    return Counted(
        updates=len(later), wall_s=wall, cpu_s=sum(one.cpu_s for one in found),
        statements=sum(one.statements for one in found),
        run_again=sum(one.run_again for one in found), refused=sum(one.refused for one in found),
        server_cpu_s=server.server_cpu_s, waits=server.waits,
    )  # fmt: skip


def _lines(athletes: list[tuple[int, int]], each: int) -> list[dict[str, Any]]:
    """Neighbours in the queue have different coaches, as on any morning."""
    return [typed(chat, LINE) for place in range(each) for chat, _ in athletes[place::each]]


def _work(url: str, begin: Any, results: Any, rests: bool) -> None:
    quiet()
    engine = make_engine(url)
    refused, resting = 0, threading.Lock()

    class Watched(Worker):
        def handle(self, update_id: int, chat_id: int | None) -> bool:
            nonlocal refused
            began = time.thread_time()
            done = super().handle(update_id, chat_id)
            refused += not done
            if rests:
                with resting:
                    time.sleep(time.thread_time() - began)
            return done

    async def work() -> None:
        runtime = Runtime(engine, USE_CASES, DrivenClock(NOW), lambda: Context(now=NOW))
        worker = Watched(runtime, threads=THREADS, handled=lambda: None)
        while True:
            await worker.step()
            if worker.busy:
                await worker.wake.wait()
                worker.wake.clear()
            elif _open(engine):
                await asyncio.sleep(0.05)
            else:
                break
        await worker.close()

    asyncio.run(work())
    leave_out_what_is_loaded()  # as the bot does once it has all that it needs
    again, refused = sum(times_run_again().values()), 0
    begin.wait()
    with counting(engine) as said:
        begin.wait()
        watch = Stopwatch()
        asyncio.run(work())
        counted = Counted(
            cpu_s=watch.cpu(), statements=len(said), refused=refused,
            run_again=sum(times_run_again().values()) - again,
        )  # fmt: skip
    results.put(json.dumps(asdict(counted)))
    engine.dispose()


def _open(engine: Any) -> bool:
    with looking(engine) as session:
        query = select(InboxRow.update_id).where(InboxRow.status == "new").limit(1)
        return session.exec(query).first() is not None


# One after the other


def each_kind(times: int, *, on_postgresql: bool = False) -> None:
    """Kinds of updates through the dispatcher, one at a time, and a bare handler beside each."""
    with postgresql() if on_postgresql else sqlite() as url:
        athletes = fill(url, 5, max(times, WARM))
        engine = make_engine(url)
        worker = worker_of(engine)
        _are_known(engine, worker, athletes)
        leave_out_what_is_loaded()
        say("PostgreSQL" if on_postgresql else "SQLite")
        for name, raws in kinds(athletes, engine, worker, times):
            counted, bare = one_by_one(engine, worker, raws)
            say(
                f"{name:14} {counted.cpu_ms:6.1f} ms CPU {1000 * counted.wall_s / times:6.1f} ms wall "
                f"{counted.statements / times:5.1f} statements; bare {bare.cpu_ms:4.2f} / "
                f"{1000 * bare.wall_s / times:4.2f} ms: ratio {bare.cpu_s / counted.cpu_s:.3f} by CPU, "
                f"{bare.wall_s / counted.wall_s:.3f} by wall"
            )
        engine.dispose()


def _are_known(engine: Any, worker: Worker, athletes: list[tuple[int, int]]) -> None:
    """Nobody writes for the first time, which sets their menu and name."""
    handle(engine, worker, [typed(chat, "/help") for chat, _ in athletes])


def kinds(
    athletes: list[tuple[int, int]], engine: Any, worker: Worker, times: int
) -> list[tuple[str, list[dict[str, Any]]]]:
    many = times + WARM + COUNTED
    chats = [chat for chat, _ in athletes[:many]]
    yield_later: list[tuple[str, list[dict[str, Any]]]] = [
        ("one line", [typed(chat, LINE) for chat in chats]),
        ("/today", [typed(chat, "/today") for chat in chats]),
        ("/week", [typed(chat, "/week") for chat in chats]),
        ("corrected", [typed(chat, "fullness 4") for chat in chats]),
        ("words", [typed(chat, "slept badly, legs heavy") for chat in chats]),
        ("roster", [typed(FIRST_COACH_CHAT + n % 5, "/roster") for n in range(many)]),
        ("card", [
            tapped(FIRST_COACH_CHAT, f"c:card:{athletes[n % 10][1]}", 1)
            for n in range(many)
        ]),
    ]  # fmt: skip
    asking = [typed(chat, "/checkin") for chat, _ in athletes[-many:]]
    handle(engine, worker, asking)
    taps = []
    for raw in asking:
        chat = raw["message"]["chat"]["id"]
        with Session(engine) as session:
            query = select(OutboxRow).where(OutboxRow.chat_id == chat)
            rows = session.exec(query.order_by(col(OutboxRow.id).desc())).all()
        data = next(found for row in rows if (found := _button(row)))
        taps.append(tapped(chat, data, 1))
    return [*yield_later, ("tap", taps)]


def _button(row: OutboxRow) -> str:
    lines = row.payload.get("reply_markup", {}).get("inline_keyboard", [])
    return next(
        (one["callback_data"] for line in lines for one in line if "callback_data" in one), ""
    )


def one_by_one(engine: Any, worker: Worker, raws: list[dict[str, Any]]) -> tuple[Counted, Counted]:
    handle(engine, worker, raws[:WARM])
    bare_handler(engine, [typed(1, LINE) for _ in range(WARM)])
    counted, raws = raws[WARM : WARM + COUNTED], raws[WARM + COUNTED :]
    into_inbox(engine, counted)
    with counting(engine) as said:
        run(worker, counted)
    into_inbox(engine, raws)
    found, bare = Counted(statements=len(said) * len(raws) // len(counted)), Counted()
    for first in range(0, len(raws), BY_TURNS):
        portion = raws[first : first + BY_TURNS]
        watch = Stopwatch()
        run(worker, portion)
        found.add(len(portion), watch)
        bare_handler(engine, [typed(1, LINE) for _ in portion], bare)
    return found, bare


def handle(engine: Any, worker: Worker, raws: list[dict[str, Any]]) -> None:
    into_inbox(engine, raws)
    run(worker, raws)


def run(worker: Worker, raws: list[dict[str, Any]]) -> None:
    for raw in raws:
        message = raw.get("message") or raw["callback_query"]["message"]
        assert worker.handle(raw["update_id"], message["chat"]["id"])


def bare_handler(engine: Any, raws: list[dict[str, Any]], counted: Counted | None = None) -> None:
    """The least that answers with the same libraries: read the update, mark it done, write one message,
    in one transaction. What it took is added to `counted`.
    """
    into_inbox(engine, raws)
    watch = Stopwatch()
    for raw in raws:
        with transaction(engine, locked=True) as session:
            row = session.get_one(InboxRow, raw["update_id"])
            incoming = read(row.raw, row.received_at)
            assert incoming is not None
            row.status = "done"
            session.add(row)
            say_plainly(Turn(session, Context(NOW)), chat_id=1, text=f"Saved: {incoming.text}")
    if counted is not None:
        counted.add(len(raws), watch)


def profile(times: int) -> None:
    with sqlite() as url:
        athletes = fill(url, 5, max(times, WARM))
        engine = make_engine(url)
        worker = worker_of(engine)
        _are_known(engine, worker, athletes)
        chats = [chat for chat, _ in athletes[: times + WARM]]
        raws = [typed(chat, LINE) for chat in chats]
        handle(engine, worker, raws[:WARM])
        into_inbox(engine, raws[WARM:])
        with counting(engine) as said:
            profiler = cProfile.Profile()
            profiler.runcall(run, worker, raws[WARM:])
        pstats.Stats(profiler).sort_stats("tottime").print_stats(35)
        pstats.Stats(profiler).sort_stats("cumulative").print_stats("(bot|engine)/", 60)
        say(f"{len(said) / times:.1f} statements an update; the most frequent:")
        for statement, count in Counter(said).most_common(60):
            say(f"{count / times:5.2f}  {' '.join(statement.split())[:230]}")
        engine.dispose()


def say(line: str) -> None:
    print(line, flush=True)  # noqa: T201


def quiet() -> None:
    structlog.configure(wrapper_class=structlog.make_filtering_bound_logger(50))


def main() -> None:
    quiet()
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("what", choices=("answers", "each", "profile"))
    parser.add_argument("--coaches", type=int, default=20)
    parser.add_argument("--each", type=int, default=8, help="athletes of a coach")
    parser.add_argument("--times", type=int, default=40)
    given = parser.parse_args()
    doing: dict[str, Callable[[], None]] = {
        "answers": lambda: answers(given.coaches, given.each),
        "each": lambda: (each_kind(given.times), each_kind(given.times, on_postgresql=True))[0],
        "profile": lambda: profile(given.times),
    }
    doing[given.what]()


if __name__ == "__main__":
    main()
