"""A morning of many athletes to its end: `python -m tests.bench.morning 10000`.

The real queues, worker, sender and pace on an SQLite file, against a clock that is driven: every answer
is given the processor time that it takes on a machine (`--answer-ms`; `tests.bench.production each`
prints it), and Telegram takes each call at once. The use cases are stood in for by what they write:
two messages to the athlete and one edit of the coach's roster; for what is urgent, an alert and a word
back.
Printed are the waits by the bot's clock, from the moment at which something came to that at which what
answers it was sent. With `--modelled` the queues are in memory, in the order that the real ones keep;
run both with a few hundred to hold the one against the other.
"""

from __future__ import annotations

import argparse
import asyncio
import heapq
import random
from collections import deque
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import event

from bot.core.chat import outbox
from bot.core.chat.outbox import Topic
from bot.core.timing.clock import DrivenClock
from bot.core.turn import ChatTurn, Context
from bot.core.use_cases import Runtime, UseCases
from bot.dispatcher import USE_CASES
from bot.store.db import make_engine
from bot.store.migrate import upgrade_to_head
from bot.store.shares import ALL
from bot.store.tables.traffic import TopicKind, Urgency
from bot.telegram.intake import Intake
from bot.telegram.outcomes import Outcomes
from bot.telegram.pace import Pace
from bot.telegram.sender import Sender
from bot.telegram.uploads import Uploads
from bot.telegram.worker import Worker
from tests.bench.crew import FIRST_ATHLETE_CHAT, FIRST_COACH_CHAT, NOW, sqlite, typed
from tests.bench.production import LINE, quiet, say

ATHLETES_OF_A_COACH = 25
ONE_URGENT_IN = 200
DANGER = "I fainted in the bathroom"
AT_ONCE = 4


class Town:
    """Who writes when, and when what answers them was sent."""

    def __init__(self, athletes: int, within: timedelta, seed: int) -> None:
        chance = random.Random(seed)
        self.ahead: list[tuple[datetime, int, str]] = []
        for number in range(athletes):
            # Most write soon after the prompt, some late: a triangle with its peak at a quarter.
            at = NOW + within * chance.triangular(0, 1, 0.25)
            danger = number % ONE_URGENT_IN == 0
            chat = FIRST_ATHLETE_CHAT + number
            heapq.heappush(self.ahead, (at, chat, DANGER if danger else LINE))
        self.danger = {chat for _, chat, words in self.ahead if words == DANGER}
        self.came: dict[int, datetime] = {}
        self.answered: dict[int, timedelta] = {}
        self.alerted: dict[int, timedelta] = {}

    def until(self, now: datetime) -> list[dict[str, Any]]:
        raws = []
        while self.ahead and self.ahead[0][0] <= now:
            at, chat, words = heapq.heappop(self.ahead)
            self.came[chat] = at
            raws.append(typed(chat, words))
        return raws


class Line:
    """Telegram, which takes everything; the waits are noted as it comes."""

    def __init__(self, town: Town, clock: DrivenClock) -> None:
        self._town = town
        self._clock = clock
        self.calls = 0

    async def call(self, method: str, payload: dict[str, Any], _files: Any = None) -> Any:
        self.take(int(payload["chat_id"]), str(payload.get("text", "")))
        return {"message_id": self.calls, "chat": {"id": int(payload["chat_id"])}}

    def take(self, chat: int, words: str) -> None:
        self.calls += 1
        now = self._clock.now()
        if words.startswith("Alert "):
            about = int(words.split()[1])
            self._town.alerted[about] = now - self._town.came[about]
        elif words == "target":
            self._town.answered[chat] = now - self._town.came[chat]

    async def download(self, _file_id: str, _most_bytes: int) -> bytes:
        raise NotImplementedError


def incoming(turn: ChatTurn) -> None:
    """What a check-in and a word of danger write, without what they think."""
    chat = turn.incoming.chat_id
    coach = FIRST_COACH_CHAT + (chat - FIRST_ATHLETE_CHAT) // ATHLETES_OF_A_COACH
    if turn.incoming.text == DANGER:
        for reader, words in ((coach, f"Alert {chat}"), (chat, "target")):
            outbox.say(
                turn, chat_id=reader, text=words, how=outbox.Delivery(urgency=Urgency.URGENT),
            )  # fmt: skip
        return
    outbox.say(turn, chat_id=chat, text="saved")
    target, roster = Topic(TopicKind.TARGET, chat), Topic(TopicKind.ROSTER, coach)
    outbox.say(turn, chat_id=chat, text="target", how=outbox.Delivery(topic=target))
    outbox.edit(turn, outbox.Shown(coach, message_id=1, topic=roster), text="roster")


async def play(url: str, town: Town, answer: timedelta) -> tuple[DrivenClock, Line]:
    engine = make_engine(url)
    upgrade_to_head(engine)
    engine.dispose()
    engine = make_engine(url)
    event.listen(engine, "connect", _without_waiting_for_the_disk)
    clock = DrivenClock(NOW)
    line = Line(town, clock)
    use_cases = UseCases(
        incoming, lambda *_: None, lambda *_: None, how_urgent=USE_CASES.how_urgent
    )

    def context() -> Context:
        return Context(now=clock.now())

    intake = Intake(engine, clock, use_cases.how_urgent)
    worker = Worker(
        Runtime(engine, use_cases, clock, context), threads=AT_ONCE, handled=lambda: None
    )
    sender = Sender(
        engine, line, clock,
        lambda pace: Outcomes(engine, use_cases, clock, context, pace),
        Uploads(engine, use_cases, context),
    )  # fmt: skip
    while True:
        came = town.until(clock.now())
        if came:
            intake.store(came)
        heads = worker._next_per_chat()
        for update_id, chat, _urgency in heads[:AT_ONCE]:
            clock.advance(answer)
            worker.handle(update_id, chat)
        before = line.calls
        waits = await sender.step()
        await sender.drain()
        if heads or line.calls > before:
            continue
        if not town.ahead and _nothing_waits(engine):
            break
        then = clock.now() + timedelta(seconds=max(waits, 0.01))
        clock.move_to(min([then, *(at for at, *_ in town.ahead[:1])]))
    await worker.close()
    await sender.close()
    engine.dispose()
    return clock, line


def modelled(town: Town, answer: timedelta) -> tuple[DrivenClock, Line]:
    """The same with the queues in memory, in the order that the real ones keep, and the real pace: what
    is urgent first, then what came first, in a chat one after the other.
    """
    clock = DrivenClock(NOW)
    line, pace = Line(town, clock), Pace(clock.monotonic())
    pace.hold(ALL, clock.monotonic())
    inbox: tuple[deque[int], deque[int]] = (deque(), deque())
    outbox_: tuple[deque[tuple[int, str]], deque[tuple[int, str]]] = (deque(), deque())
    busy_until: datetime | None = None
    at_work = 0
    while True:
        now = clock.now()
        for raw in town.until(now):
            chat = int(raw["message"]["chat"]["id"])
            inbox[raw["message"]["text"] != DANGER].append(chat)
        if busy_until is not None and busy_until <= now:
            for urgent, row in _written(at_work, town.danger):
                if row[1] != "roster" or row not in outbox_[1]:
                    outbox_[not urgent].append(row)
            busy_until = None
        if busy_until is None and (inbox[0] or inbox[1]):
            at_work = (inbox[0] or inbox[1]).popleft()
            busy_until = now + answer
        wait = _send(outbox_, pace, line, clock.monotonic())
        ahead = [at for at, *_ in town.ahead[:1]]
        ahead += [busy_until] if busy_until is not None else []
        ahead += [now + timedelta(seconds=wait)] if outbox_[0] or outbox_[1] else []
        if not ahead:
            return clock, line
        clock.move_to(max(min(ahead), now + timedelta(milliseconds=1)))


def _written(chat: int, danger: set[int]) -> list[tuple[bool, tuple[int, str]]]:
    """What `incoming` writes for this chat: whether it is urgent, the reader, the words."""
    coach = FIRST_COACH_CHAT + (chat - FIRST_ATHLETE_CHAT) // ATHLETES_OF_A_COACH
    if chat in danger:
        return [(True, (coach, f"Alert {chat}")), (True, (chat, "target"))]
    return [(False, (chat, "saved")), (False, (chat, "target")), (False, (coach, "roster"))]


def _send(queues: tuple[deque[tuple[int, str]], ...], pace: Pace, line: Line, now: float) -> float:
    """Send what may go; returns the seconds after which more may."""
    for queue in queues:
        held: set[int] = set()
        for row in list(queue):
            chat, words = row
            overall = pace.seconds_until_ready(-1, "sendChatAction", now)
            if overall > 0:
                return overall
            if chat in held or pace.seconds_until_ready(chat, "sendMessage", now) > 0:
                held.add(chat)
                continue
            pace.take(chat, "sendMessage", now)
            queue.remove(row)
            line.take(chat, words)
    return 0.05


def _nothing_waits(engine: Any) -> bool:
    with engine.connect() as connection:
        for query in (
            "SELECT 1 FROM inbox WHERE status = 'new' LIMIT 1",
            "SELECT 1 FROM outbox WHERE status IN ('waiting', 'sending') LIMIT 1",
        ):
            if connection.exec_driver_sql(query).first() is not None:
                return False
    return True


def _without_waiting_for_the_disk(connection: Any, _record: object) -> None:
    connection.execute("PRAGMA synchronous = OFF").close()


def share(waits: list[timedelta], part: float) -> float:
    return sorted(waits)[min(int(part * len(waits)), len(waits) - 1)].total_seconds()


def main() -> None:
    quiet()
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("athletes", type=int)
    parser.add_argument("--answer-ms", type=float, default=30.0)
    parser.add_argument("--minutes", type=float, default=60.0, help="in which all of them write")
    parser.add_argument(
        "--modelled", action="store_true", help="queues in memory: minutes, not hours"
    )
    parser.add_argument("--seed", type=int, default=1)
    given = parser.parse_args()
    town = Town(given.athletes, timedelta(minutes=given.minutes), given.seed)
    answer = timedelta(milliseconds=given.answer_ms)
    if given.modelled:
        clock, line = modelled(town, answer)
    else:
        with sqlite() as url:
            clock, line = asyncio.run(play(url, town, answer))
    alerts, answers = list(town.alerted.values()), list(town.answered.values())
    assert len(answers) == given.athletes, (len(answers), given.athletes)
    say(
        f"{given.athletes} athletes within {given.minutes:g} minutes, "
        f"{given.answer_ms:g} ms an answer: "
        f"{line.calls} calls in {(clock.now() - NOW).total_seconds() / 60:.1f} minutes"
    )
    say(
        f"{len(alerts)} alerts, from arrival to the coach's chat: median {share(alerts, 0.5):.1f} s, "
        f"99 % {share(alerts, 0.99):.1f} s, longest {share(alerts, 1):.1f} s"
    )
    say(
        f"answers, to the day's target: median {share(answers, 0.5):.0f} s, "
        f"99 % {share(answers, 0.99):.0f} s, the last {share(answers, 1):.0f} s"
    )


if __name__ == "__main__":
    main()
