"""Python's search for objects that hold each other pauses while a large file is made, and goes on."""

from __future__ import annotations

import gc
import threading

import pytest

from bot.core.garbage import unsearched


def test_the_search_goes_on_when_the_last_of_two_files_is_made_also_after_a_failure() -> None:
    assert gc.isenabled()
    begun, done = threading.Event(), threading.Event()

    def other() -> None:
        with unsearched():
            begun.set()
            done.wait(10)

    thread = threading.Thread(target=other)
    with pytest.raises(ZeroDivisionError), unsearched():
        thread.start()
        assert begun.wait(10)
        1 / 0  # noqa: B018 - the file can't be made
    assert not gc.isenabled(), "the other file is still being made"
    done.set()
    thread.join()
    assert gc.isenabled()
