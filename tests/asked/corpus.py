"""Invented sentences of what athletes ask for, and of what they only tell their coach.

A file in `corpus` has the sentences of a language under headings (`== today`, `== none`), templates
with their choices in brackets, as in the second ear's. That ear's sentences are none of them requests,
unless they sound like one: nobody has marked those.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

from engine.asked.views import View, features
from tests.ear.corpus import headed, spelt_out

FOLDER = Path(__file__).with_name("corpus")
#: Written apart, and only counted on: language, what is asked for, sentence.
HELD_OUT = Path(__file__).with_name("held_out.tsv")
NONE = "none"
CLASSES = (NONE, *View)
#: As many sentences as a template gives at most.
MOST = 12


@dataclass(frozen=True)
class Request:
    """`line` is the template or the sentence itself; `share` what it counts beside its siblings."""

    text: str
    asks: str
    language: str
    line: str
    share: float


def requests() -> list[Request]:
    """All of them, each once, in the order of the files."""
    found: dict[str, Request] = {}
    for path in sorted(FOLDER.glob("*.txt")):
        for request in _read(path):
            before = found.setdefault(request.text.lower(), request)
            if before.asks != request.asks:
                raise ValueError(f"{request.text!r} is {before.asks} and {request.asks}")
    return list(found.values())


def held_out() -> list[tuple[str, str, str]]:
    lines = HELD_OUT.read_text(encoding="utf-8").splitlines()
    rows = [tuple(line.split("\t")) for line in lines if line]
    return [(language, asks, text) for language, asks, text in rows]


def digest() -> str:
    """Changes when a sentence does, or how it is read."""
    told = sha256()
    for path in sorted(FOLDER.glob("*.txt")):
        told.update(path.read_text(encoding="utf-8").encode())
    for request in requests()[::40]:
        told.update(repr(features(request.text)).encode())
    return told.hexdigest()[:16]


def _read(path: Path) -> Iterator[Request]:
    for asks, line in headed(path, CLASSES.__contains__):
        texts = spelt_out(line, MOST)
        for text in texts:
            yield Request(text, asks, path.name[:2], line, min(1.0, 4.0 / len(texts)))
