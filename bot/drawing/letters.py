"""The letters that come with matplotlib: the same on every machine, with every sign of Europe's names.

Found without importing matplotlib, which takes a second.
"""

from __future__ import annotations

from functools import cache
from importlib.util import find_spec
from pathlib import Path


@cache
def letters() -> Path:
    """The folder with "DejaVuSans.ttf", "DejaVuSans-Bold.ttf" and others."""
    found = find_spec("matplotlib")
    assert found is not None and found.origin is not None
    return Path(found.origin).parent / "mpl-data" / "fonts" / "ttf"
