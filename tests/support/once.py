"""What is played once in a test run, whichever of its processes needs it first."""

from __future__ import annotations

import fcntl
import os
from collections.abc import Callable
from pathlib import Path

import pytest


def once_a_run(factory: pytest.TempPathFactory, name: str, make: Callable[[Path], object]) -> Path:
    """A folder of this name that one of the run's processes has filled with `make`; to copy from."""
    root = factory.getbasetemp()
    if "PYTEST_XDIST_WORKER" in os.environ:
        root = root.parent  # each worker has a folder of its own in it
    folder, made = root / f"once-{name}", root / f"once-{name}.made"
    with (root / f"once-{name}.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not made.exists():
            folder.mkdir(exist_ok=True)
            make(folder)
            made.touch()
    return folder
