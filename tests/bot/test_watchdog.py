"""A process that hangs is ended, or what it holds is taken from it."""

from __future__ import annotations

import subprocess
import sys
import time
from collections.abc import Callable

import pytest
from sqlalchemy import Engine, text
from sqlalchemy.exc import DBAPIError

from bot.store import shares, sole
from bot.store.db import make_engine

STILL_S, LONGEST_S = 0.4, 1.0
PATIENCE_S = 60  # of a busy machine
SCRIPT = f"""
import asyncio, threading, time
from bot.core.timing.waiting import Underway
from bot.watching.watchdog import watched

async def main():
    underway = Underway()
    watching = asyncio.create_task(watched(underway, still_s={STILL_S}, longest_s={LONGEST_S}))
    await asyncio.sleep({STILL_S / 2})
    {{does}}
    watching.cancel()
    await asyncio.gather(watching, return_exceptions=True)

def hangs():
    with underway_of[0].doing():
        threading.Event().wait()

underway_of = []
asyncio.run(main())
print("lived on")
time.sleep({STILL_S})  # nobody ends it any more
"""


def played(does: str) -> subprocess.CompletedProcess[str]:
    script = SCRIPT.format(does=does)
    return subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, timeout=PATIENCE_S,
        check=False,
    )  # fmt: skip


def test_a_process_that_goes_on_is_left_alone() -> None:
    found = played(f"await asyncio.sleep({3 * STILL_S})")
    assert (found.returncode, found.stdout) == (0, "lived on\n")


@pytest.mark.parametrize(
    ("does", "where"),
    [
        ("time.sleep(1000)", "in main"),
        ("threading.Lock().acquire() and [0 for _ in iter(int, 1)]", "in main"),
        (
            "underway_of.append(underway); threading.Thread(target=hangs, daemon=True).start(); "
            "await asyncio.sleep(1000)",
            "in hangs",
        ),
    ],
    ids=["its loop stands still", "it goes round and round", "what it has begun never ends"],
)
def test_a_process_that_hangs_is_ended_and_says_where_it_stood(does: str, where: str) -> None:
    found = played(does)
    assert found.returncode == 1  # which a unit starts again, as it does after any end but 2
    assert where in found.stderr
    assert "lived on" not in found.stdout


def until(holds: Callable[[], bool]) -> None:
    deadline = time.monotonic() + PATIENCE_S
    while not holds():
        assert time.monotonic() < deadline


@pytest.fixture
def another(postgres_engine: Engine) -> Engine:
    return make_engine(postgres_engine.url.render_as_string(hide_password=False))


def test_shares_of_a_process_that_asks_after_nothing_any_more_are_anothers(
    postgres_engine: Engine, another: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(shares, "IDLE_S", 0.2)
    hung, lives = shares.shares_of(postgres_engine), shares.shares_of(another)
    assert hung.hold(()) == shares.ALL
    until(lambda: lives.hold(()) == shares.ALL)
    with pytest.raises(DBAPIError):
        hung.hold(())
    with pytest.raises(shares.NotHeldError), hung.claiming():
        pass
    lives.release()
    another.dispose()


def test_the_right_to_poll_is_anothers_likewise(
    postgres_engine: Engine, another: Engine, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sole, "IDLE_S", 0.2)
    hung, lives = sole.LeaderLease(postgres_engine, "poll"), sole.LeaderLease(another, "poll")
    assert hung.hold()
    assert not lives.hold()
    until(lives.hold)
    assert not hung.hold()
    lives.release()
    another.dispose()


def test_other_connections_may_lie_idle(postgres_engine: Engine) -> None:
    right = sole.LeaderLease(postgres_engine, "poll")
    assert right.hold()
    right.release()
    with postgres_engine.connect() as connection:
        assert connection.execute(text("SHOW idle_session_timeout")).scalar() == "0"
