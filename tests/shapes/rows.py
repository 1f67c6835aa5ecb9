"""Mornings as people type them, each with what it means: what the judge of figures learns from.

A row is `language | units | kg | text | weight | fullness | water`: `us` for pounds and ounces, `st`
for stones; kg is the weight of the morning before; then what is meant, `none` or `-` for what is not
told and `~` before what may be asked about first. 3.5 L were to be drunk.
"""

from __future__ import annotations

from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

from engine.written.oneline import CORE, Known
from engine.written.oneline.judge.model import seen
from engine.written.oneline.reading import by_grammar
from tests.engine import mended_shapes, morning_shapes, odd_shapes, odder_shapes, told_shapes
from tests.engine.test_morning_shapes import KEYS, athlete

FOLDER = Path(__file__).with_name("corpus")
_TABLES = (told_shapes, odd_shapes, odder_shapes, mended_shapes)
_LAST_KG = 72.4
_UNTOLD = ("none", "-", "")


@dataclass(frozen=True)
class Row:
    """`meant` by answer, None for what is not told; `may_ask` where any of it may be asked about."""

    table: str
    text: str
    known: Known
    meant: dict[str, float | None]
    may_ask: bool

    def is_meant(self, key: str, value: float) -> bool:
        told = self.meant[key]
        return told is not None and abs(value - told) <= KEYS[key] + 1e-9


def rows() -> list[Row]:
    """All of them, in the order of the tables."""
    found = [
        _row(path.stem, line)
        for path in sorted(FOLDER.glob("*.txt"))
        for line in path.read_text(encoding="utf-8").splitlines()
    ]
    for table in _TABLES:
        name = table.__name__.rpartition(".")[2]
        found += [_row(name, line) for line in table.MORNINGS.strip().splitlines()]
    for line in morning_shapes.MORNINGS.strip().splitlines():
        language, units, rest = line.split(" | ", 2)
        found.append(_row("morning_shapes", f"{language} | {units} | {_LAST_KG} | {rest}"))
    return found


def _row(table: str, line: str) -> Row:
    language, units, kg, rest = line.split(" | ", 3)
    text, *meant = (part.strip() for part in rest.rsplit(" | ", 3))
    told = [one.removeprefix("~") for one in meant]
    values = [None if one in _UNTOLD else float(one) for one in told]
    return Row(
        table, text.replace("\\n", "\n"), athlete(language, units, float(kg)),
        dict(zip(CORE, values, strict=True)), any(one.startswith("~") for one in meant),
    )  # fmt: skip


def digest() -> str:
    """Changes when a row does, or what is seen of its figures."""
    told = sha256()
    for at, row in enumerate(rows()):
        told.update(f"{row.text} {row.meant}".encode())
        if at % 20 == 0:
            read = by_grammar(row.text, row.known)
            told.update(repr([one.traits for one in seen(read.tokens, read.known)]).encode())
    return told.hexdigest()[:16]
