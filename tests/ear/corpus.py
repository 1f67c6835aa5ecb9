"""The invented sentences that the second ear learns from, read from the files beside this one.

A file holds families under headings (`== emergency heart-out-of-step: palpitations`, with the name
of the symptom where it is the same for all of them, or `== body in-short mixed`, where they have
names that differ); a line is a sentence, or a template with its
choices in brackets (`my (heart|pulse) keeps (stumbling|tripping)`).
"""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from hashlib import sha256
from itertools import chain
from math import prod
from pathlib import Path
from zlib import crc32

from engine.symptoms.ear.reading import features
from engine.symptoms.names import Symptom

FOLDER = Path(__file__).with_name("corpus")
#: What is asked of the bot is no complaint: the sentences that teach what a request is teach that too.
REQUESTS = Path(__file__).parents[1] / "asked" / "corpus"
NO_REQUEST = "none"
KINDS = ("harmless", "emergency", "body", "mood")
#: As many sentences as a template gives at most.
MOST = 24
_CHOICE = re.compile(r"\(([^()]*)\)")


@dataclass(frozen=True)
class Sentence:
    """`line` is the template or the sentence itself, `family` the heading it stands under.

    `block` numbers the lines in fives: neighbours are near in meaning, so they are left out together.
    """

    text: str
    kind: str
    language: str
    family: str
    line: str
    block: int
    symptom: str = ""

    @property
    def mixed(self) -> bool:
        """Whether its family says nothing of what it is called."""
        return self.family.endswith(" mixed")

    @property
    def by_hand(self) -> bool:
        return "(" not in self.line


def sentences() -> list[Sentence]:
    """All of them, each once, in the order of the files."""
    found: dict[str, Sentence] = {}
    told = chain.from_iterable(map(_read, sorted(FOLDER.glob("*.txt"))))
    asked = chain.from_iterable(map(_requests, sorted(REQUESTS.glob("*.txt"))))
    for sentence in chain(told, asked):
        before = found.setdefault(sentence.text.lower(), sentence)
        if before.kind != sentence.kind:
            raise ValueError(f"{sentence.text!r} is {before.kind} and {sentence.kind}")
    return list(found.values())


def digest() -> str:
    """Changes when a sentence does, or how it is read."""
    told = sha256()
    for path in (*sorted(FOLDER.glob("*.txt")), *sorted(REQUESTS.glob("*.txt"))):
        told.update(path.read_text(encoding="utf-8").encode())
    for sentence in sentences()[::40]:
        told.update(repr(features(sentence.text)).encode())
    return told.hexdigest()[:16]


def _read(path: Path) -> Iterator[Sentence]:
    language = path.name[:2]
    for count, (heading, line) in enumerate(headed(path, _is_known), start=1):
        kind, family, symptom = _parts(heading)
        for text in spelt_out(line):
            about = f"{language} {kind} {family}"
            yield Sentence(text, kind, language, about, line, count // 5, symptom)


def _parts(heading: str) -> tuple[str, str, str]:
    """Kind, family and the symptom that the family is all of, if it is of one."""
    kind, _, family = heading.partition(" ")
    return kind, family, family.partition(": ")[2]


def _is_known(heading: str) -> bool:
    kind, _, symptom = _parts(heading)
    return kind in KINDS and (not symptom or symptom in set(Symptom))


def _requests(path: Path) -> Iterator[Sentence]:
    language = path.name[:2]
    asked = [(asks, line) for asks, line in headed(path, bool) if asks != NO_REQUEST]
    for count, (asks, line) in enumerate(asked, start=1):
        for text in spelt_out(line, MOST // 2):
            about = f"{language} harmless asked-for-{asks}"
            yield Sentence(text, "harmless", language, about, line, count // 5)


def headed(path: Path, knows: Callable[[str], bool]) -> Iterator[tuple[str, str]]:
    """Each line of a file of sentences with the heading that it stands under.

    Raises ValueError for a heading that its reader does not know.
    """
    heading = ""
    for raw in path.read_text(encoding="utf-8").splitlines():
        line = raw.strip()
        if line.startswith("== "):
            heading = line[3:]
            if not knows(heading):
                raise ValueError(f"{path.name}: {line}")
        elif line:
            yield heading, line


def spelt_out(line: str, most: int = MOST) -> list[str]:
    """A template's sentences: all, or as many as are wanted, drawn in a way that never changes."""
    choices = [choice.split("|") for choice in _CHOICE.findall(line)]
    if not choices:
        return [line]
    chance = random.Random(crc32(line.encode()))
    wanted = min(most, prod(map(len, choices)))
    found: dict[str, None] = {}
    for _ in range(wanted * 8):
        drawn = iter([chance.choice(choice) for choice in choices])
        text = _CHOICE.sub(lambda _, drawn=drawn: next(drawn), line)
        found[" ".join(text.split())] = None
        if len(found) == wanted:
            break
    return list(found)
