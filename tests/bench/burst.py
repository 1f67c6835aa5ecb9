"""How long alerts take to the coach's chat in a burst: `python -m tests.bench.burst [--postgresql]`.

A real `brimline run` polls a Bot API stand-in on this machine and sends at Telegram's pace. All
athletes write their check-in at once; from two seconds later on, others write that they fainted.
Timed is from the moment at which an athlete sends these words to that at which the stand-in has what
the coach is told. Exit code 1 where 99 of 100 took longer than three seconds, or one never came.
"""

from __future__ import annotations

import argparse
import re
import sys
import tempfile
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path

from tests.bench.crew import FIRST_ATHLETE_CHAT, FIRST_COACH_CHAT, fill, postgresql, sqlite
from tests.bench.production import LINE, say
from tests.support.chats import BotProcess, Telegram, telegram_process

COACHES = 20
ASKED_S = 3.0
FIRST_AFTER_S, BETWEEN_S = 2.0, 0.4
PATIENCE_S = 180.0
DANGER = "I fainted, chest pain"
NAMED = re.compile(r"\bP(\d+)")  # as the stand-in calls whoever writes in a chat


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--athletes", type=int, default=500)
    parser.add_argument("--alerts", type=int, default=50)
    parser.add_argument("--postgresql", action="store_true")
    given = parser.parse_args()
    each = -(-(given.athletes + given.alerts) // COACHES)
    with (
        postgresql() if given.postgresql else sqlite() as url,
        telegram_process() as telegram,
        running(telegram, url, each),
    ):
        chats = [FIRST_ATHLETE_CHAT + n for n in range(COACHES * each)]
        # Neighbours have different coaches, as on any morning.
        mixed = [chats[place * each + n] for n in range(each) for place in range(COACHES)]
        unwell, writing = mixed[: given.alerts], mixed[given.alerts :][: given.athletes]
        alerted, answered = burst(telegram, writing, unwell)
    waits = sorted(alerted.values())
    say("PostgreSQL" if given.postgresql else "SQLite")
    say(
        f"{len(waits)} of {len(unwell)} alerts in the coach's chat: median {share(waits, 0.5):.2f} s, "
        f"99 % {share(waits, 0.99):.2f} s, longest {share(waits, 1):.2f} s"
    )
    say(
        f"{len(answered)} of {len(writing)} check-ins answered, the last after "
        f"{max(answered.values(), default=0):.0f} s"
    )
    well = len(waits) == len(unwell) and share(waits, 0.99) < ASKED_S
    return 0 if well else 1


@contextmanager
def running(telegram: Telegram, url: str, each: int) -> Iterator[None]:
    """A bot that has been at work: its first words load what listens."""
    fill(url, COACHES, each, now=datetime.now(UTC))
    with (
        tempfile.TemporaryDirectory(prefix="brimline-bench-") as folder,
        BotProcess(telegram, url, Path(folder) / "log"),
    ):
        for place in range(COACHES):
            telegram.says(FIRST_COACH_CHAT + place, "/help")
        first = FIRST_COACH_CHAT
        telegram.says(first, "slept badly, legs heavy")
        telegram.wait_until(lambda: len(telegram.texts(first)) > 1, "the first words")
        yield


def burst(
    telegram: Telegram, writing: list[int], unwell: list[int]
) -> tuple[dict[int, float], dict[int, float]]:
    """By chat the seconds until its coach was told, and until it was answered."""
    seen = len(telegram.calls())
    came: dict[int, float] = {}
    began = time.monotonic()

    def write() -> None:
        people = Telegram(int(telegram.url.rpartition(":")[2]))  # a line of their own
        for chat in writing:
            came[chat] = time.monotonic()
            people.says(chat, LINE)
        for number, chat in enumerate(unwell):
            time.sleep(max(0.0, began + FIRST_AFTER_S + number * BETWEEN_S - time.monotonic()))
            came[chat] = time.monotonic()
            people.says(chat, DANGER)
        people.close()

    at_work = threading.Thread(target=write)
    at_work.start()
    alerted: dict[int, float] = {}
    answered: dict[int, float] = {}
    while time.monotonic() - began < PATIENCE_S:
        telegram._take_in_calls(wait=0.5)
        now = time.monotonic()
        for call in telegram._calls[seen:]:
            chat, words = int(call["fields"].get("chat_id", 0)), call["fields"].get("text", "")
            if chat < FIRST_ATHLETE_CHAT and DANGER in words:
                for about in set(map(int, NAMED.findall(words))) - set(alerted):
                    alerted[about] = now - came[about]
            elif chat in came and words:
                answered.setdefault(chat, now - came[chat])
        seen = len(telegram._calls)
        if len(alerted) == len(unwell) and len(answered) == len(writing):
            break
    at_work.join()
    return alerted, answered


def share(waits: list[float], part: float) -> float:
    return waits[min(int(part * len(waits)), len(waits) - 1)] if waits else float("inf")


if __name__ == "__main__":
    sys.exit(main())
