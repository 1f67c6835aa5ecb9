"""How soon another process goes on after a SIGKILL: `python -m tests.bench.takeover [--postgresql]`.

Two processes on one database; the one that polls is killed, people write at once, and a third is
started. Timed is from the kill to the last of their answers, and how often one came twice is counted.
"""

from __future__ import annotations

import argparse
import tempfile
import time
from collections import Counter
from pathlib import Path

from tests.bench.crew import postgresql, sqlite
from tests.bench.production import say
from tests.support.chats import BotProcess, Telegram, telegram_process

CHATS = range(100, 112)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--postgresql", action="store_true")
    parser.add_argument("--kills", type=int, default=5)
    given = parser.parse_args()
    with (
        postgresql() if given.postgresql else sqlite() as url,
        telegram_process() as telegram,
        tempfile.TemporaryDirectory(prefix="brimline-bench-") as folder,
    ):
        bots = [_bot(telegram, url, Path(folder) / f"{number}.log") for number in range(2)]
        answered(telegram, "hello")
        spans = []
        for number in range(given.kills):
            answered(telegram, f"before {number}")
            began = time.monotonic()
            bots.pop(0).kill()
            answered(telegram, f"after {number}")
            spans.append(time.monotonic() - began)
            bots.append(_bot(telegram, url, Path(folder) / f"more {number}.log"))
            time.sleep(5)
        for bot in bots:
            bot.kill()
        twice = sum(count - 1 for chat in CHATS for count in Counter(telegram.texts(chat)).values())
    say("PostgreSQL" if given.postgresql else "SQLite")
    say(
        f"{given.kills} kills of the process that polls, {len(CHATS)} people writing right then: all "
        f"answered after {', '.join(f'{span:.1f}' for span in spans)} s; {twice} came twice"
    )


def _bot(telegram: Telegram, url: str, log: Path) -> BotProcess:
    bot = BotProcess(telegram, url, log, module=["tests.support.small_bot"])
    bot.start()
    return bot


def answered(telegram: Telegram, words: str) -> None:
    for chat in CHATS:
        telegram.says(chat, words)
    for chat in CHATS:
        telegram.wait_for_text(chat, f"text {words}")


if __name__ == "__main__":
    main()
