"""What running costs in room and memory: `python -m tests.bench.light`.

Room: what `deploy/constraints.txt` and the project itself take on the disk of this environment, with
what could be left out of it: Python's bytecode, and the tests that libraries bring along. Memory: of
`brimline run` against a Bot API stand-in on loopback, once it has started and once it has answered.
"""

from __future__ import annotations

import os
import re
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from importlib.metadata import PackageNotFoundError, distribution
from pathlib import Path

from tests.support.chats import PATIENCE_S, TOKEN, telegram_process

ROOT = Path(__file__).parents[2]
CHAT = 700
SETTLED_S = 5.0  # until what is loaded beside the first answer is there


def say(line: str) -> None:
    sys.stdout.write(f"{line}\n")


def main() -> None:
    whole, bytecode, tests, missing = room()
    say(f"libraries and project  {whole:6.0f} MB on the disk")
    say(f"  of that bytecode     {bytecode:6.0f} MB (pip install --no-compile leaves it out)")
    say(f"  tests of libraries   {tests:6.0f} MB")
    say(f"  without either       {whole - bytecode - tests:6.0f} MB")
    if missing:
        say(f"  not installed here, so not counted: {', '.join(missing)}")
    started, answered = memory()
    say(f"memory at the start    {started:6.0f} MB, after the first answer {answered:.0f} MB")


def room() -> tuple[float, float, float, list[str]]:
    """MB of all, of bytecode, of libraries' own tests; and the names of what is not there."""
    pins = (ROOT / "deploy" / "constraints.txt").read_text(encoding="utf-8")
    whole = bytecode = tests = 0
    missing = []
    for name in re.findall(r"^([a-z0-9-]+)==", pins, re.M):
        try:
            files = {Path(str(file.locate())).resolve() for file in distribution(name).files or ()}
        except PackageNotFoundError:
            missing.append(name)
            continue
        for file, size in _sizes(files):
            whole += size
            if file.suffix == ".pyc":
                bytecode += size
            elif {"tests", "test"} & set(file.parts):
                tests += size
    for folder in ("bot", "engine"):
        for file, size in _sizes(set((ROOT / folder).rglob("*"))):
            whole += size
            bytecode += size if file.suffix == ".pyc" else 0
    return whole / 1e6, bytecode / 1e6, tests / 1e6, missing


def _sizes(files: set[Path]) -> Iterator[tuple[Path, int]]:
    for file in files:
        if file.is_file():
            yield file, file.stat().st_size


def memory() -> tuple[float, float]:
    """MB of resident memory of a fresh process: started, and after its first answer."""
    with tempfile.TemporaryDirectory() as folder, telegram_process() as telegram:
        settings = {
            "BRIMLINE_BOT_TOKEN": TOKEN,
            "BRIMLINE_API_BASE_URL": telegram.url,
            "BRIMLINE_DATABASE_URL": f"sqlite:///{folder}/light.sqlite3",
            "BRIMLINE_PHOTO_DIR": f"{folder}/photos",
        }
        # At its first start ever it also loads what makes the tables.
        made = [sys.executable, "-m", "bot.cli", "migrate"]
        subprocess.run(made, cwd=ROOT, env=os.environ | settings, check=True, capture_output=True)
        bot = subprocess.Popen(  # not forked off a process that has loaded everything
            [sys.executable, "-m", "bot.cli", "run"], cwd=ROOT, env=os.environ | settings,
            stderr=subprocess.PIPE, text=True,
        )  # fmt: skip
        try:
            _has_started(bot)
            started = resident_mb(bot.pid)
            telegram.says(CHAT, "/start")
            telegram.wait_until(lambda: bool(telegram.texts(CHAT)), "the first answer")
            time.sleep(SETTLED_S)
            return started, resident_mb(bot.pid)
        finally:
            bot.terminate()
            bot.communicate(timeout=PATIENCE_S)


def _has_started(bot: subprocess.Popen[str]) -> None:
    assert bot.stderr is not None
    while '"started"' not in bot.stderr.readline():
        assert bot.poll() is None, "the bot did not start"


def resident_mb(pid: int) -> float:
    status = Path(f"/proc/{pid}/status").read_text(encoding="ascii")
    found = re.search(r"VmRSS:\s+(\d+) kB", status)
    assert found is not None
    return int(found.group(1)) * 1024 / 1e6


if __name__ == "__main__":
    main()
