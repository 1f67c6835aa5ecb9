"""Bot processes killed at any point, a clock that is set, a full disk, a server that crashes, a Bot API
that fails: nothing is lost by it.

`python -m tests.e2e.test_faults_for_real SEED FAULTS [--postgresql] [--keep FOLDER]`: for longer.
"""

from __future__ import annotations

import argparse
import signal
import sys
import time
from pathlib import Path

import pytest

from tests.support.shaken.people import fill
from tests.support.shaken.place import place
from tests.support.shaken.play import Chapter, play

pytestmark = [pytest.mark.loopback, pytest.mark.soak, pytest.mark.timeout(600)]

FAULTS_A_CHAPTER = 250


def played(kind: str, seed: int, faults: int, keep: Path | None = None) -> Chapter:
    """So many faults in chapters, each told as it ends; the first with something wrong is the last."""
    whole = Chapter()
    began = time.monotonic()
    with place(kind, fill) as where:
        number = 0
        while (left := faults - whole.faults.total()) > 0 and not whole.wrong:
            number += 1
            chapter = play(where, f"{seed}.{number}", min(left, FAULTS_A_CHAPTER), keep)
            for name in ("faults", "met", "ended", "starts", "logged"):
                getattr(whole, name).update(getattr(chapter, name))
            whole.written += chapter.written
            whole.cpu_s += chapter.cpu_s
            whole.wrong += [f"{seed}.{number}: {what}" for what in chapter.wrong]
            sys.stdout.write(
                f"{kind} {seed}.{number}: {chapter.faults.total()} faults in {chapter.seconds:.0f} s "
                f"({chapter.settling:.0f} s of them to settle), {chapter.written} written, "
                f"{len(chapter.wrong)} wrong\n"
            )
            sys.stdout.flush()
    whole.seconds = time.monotonic() - began
    return whole


@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_after_fifty_faults_around_real_processes_nothing_is_lost_done_twice_or_led_astray(
    kind: str,
) -> None:
    whole = played(kind, seed=20270503, faults=50)
    assert whole.wrong == []
    assert whole.faults["kill"] > 5


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("seed", type=int)
    parser.add_argument("faults", type=int)
    parser.add_argument("--postgresql", action="store_true")
    parser.add_argument(
        "--keep", type=Path, help="where databases and logs of what failed are kept"
    )
    given = parser.parse_args()
    kind = "postgresql" if given.postgresql else "sqlite"
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(143))  # what it has started ends with it
    whole = played(kind, given.seed, given.faults, given.keep)
    for name, counts in (
        ("faults", whole.faults), ("calls that met trouble", whole.met), ("starts", whole.starts),
        ("ended by themselves, by exit code", whole.ended), ("logged", whole.logged),
    ):  # fmt: skip
        told = ", ".join(f"{count} {what}" for what, count in counts.most_common())
        sys.stdout.write(f"{name}: {told}\n")
    total = whole.faults.total()
    sys.stdout.write(
        f"{total} faults, {whole.written} messages and taps in {whole.seconds:.0f} s, "
        f"{whole.seconds / max(1, total):.2f} s a fault, of the bots' CPU time "
        f"{whole.cpu_s / max(1, total):.2f} s\n"
    )
    for what in whole.wrong:
        sys.stdout.write(f"WRONG {what}\n")
    return 1 if whole.wrong else 0


if __name__ == "__main__":
    sys.exit(main())
