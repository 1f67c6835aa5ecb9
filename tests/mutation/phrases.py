"""Which ways of saying a complaint could be lost from the tables, and no test would tell.

Each way of a pattern is left out in turn. It is missed where one of the sentences that it is found in
is no longer read as that complaint, or no longer surely where a test asks for that; those of
`tests/engine/by_phrase` are read by the tables of their language alone.
"""

from __future__ import annotations

import random
from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from importlib import import_module
from typing import Any

from engine.symptoms import Symptom
from engine.symptoms.patterns import Phrase, PhraseBook
from engine.symptoms.screening import screen
from tests.engine import by_phrase
from tests.engine.by_phrase import Way, every_way

#: Where sentences stand beside the complaint that they are of.
_SENTENCES = (
    "test_symptoms", "test_symptoms_german", "test_symptoms_daily", "test_symptoms_warnings",
)  # fmt: skip


@dataclass(frozen=True, slots=True, order=True)
class Told:
    """A sentence of the tests, what it has to be read as, and whether for sure."""

    symptom: str
    text: str
    sure: bool = False

    def missed(self) -> bool:
        read = {hit.symptom: hit.sure for hit in screen(self.text).hits}.get(Symptom(self.symptom))
        return read is None or (self.sure and not read)


def sentences() -> set[Told]:
    """Every sentence of the tests beside the complaint that it has to be read as."""
    found: set[Told] = set()
    for name in _SENTENCES:
        module = import_module(f"tests.engine.{name}")
        listed = *getattr(module, "WARNING_PHRASES", ()), *getattr(module, "OTHER_PHRASES", ())
        found |= {Told(*pair) for pair in listed}
        for title, sure in (("TOLD", False), ("PLAIN", True)):
            rows = str(getattr(module, title, "")).strip().splitlines()
            found |= {Told(*row.split(" | "), sure) for row in rows}
        for title, test in vars(module).items():
            found |= {Told(symptom, text, "sure" in title) for symptom, text in _rows_of(test)}
    return found


def _rows_of(test: Any) -> Iterator[tuple[str, str]]:
    """The rows of a test that is told of a text and its symptom."""
    for mark in getattr(test, "pytestmark", ()):
        if mark.name == "parametrize" and mark.args[0] == ("text", "symptom"):
            yield from ((symptom, text) for text, symptom in mark.args[1] if symptom is not None)


def unnoticed(most: int, seed: str) -> tuple[int, list[Way]]:
    """How many were tried, and those of them that no sentence tells of."""
    found_in = _found_in()
    tried = list(every_way())
    if most:
        tried = random.Random(seed).sample(tried, min(most, len(tried)))
    return len(tried), [one for one in tried if not _missed(one, found_in)]


def _found_in() -> dict[int, list[Told | by_phrase.Told]]:
    """By each pattern, the sentences that it stands in and that are to be read as its complaint."""
    found: dict[int, list[Told | by_phrase.Told]] = defaultdict(list)
    touched: dict[int, str] = {}

    def note(phrase: Phrase, clause: str) -> Sequence[Phrase]:
        if phrase.pattern.search(clause):
            touched[id(phrase)] = phrase.symptom
        return (phrase,)

    with _looking_for(note):
        every: list[Told | by_phrase.Told] = [*sorted(sentences()), *by_phrase.told()]
        for told in every:
            touched.clear()
            if not told.missed():
                for phrase, symptom in touched.items():
                    if symptom == told.symptom:
                        found[phrase].append(told)
    return found


def _missed(one: Way, found_in: dict[int, list[Told | by_phrase.Told]]) -> bool:
    shorter = one.left_out()

    def leave_out(phrase: Phrase, clause: str) -> Sequence[Phrase]:
        return shorter if phrase is one.phrase else (phrase,)

    with _looking_for(leave_out):
        return any(sentence.missed() for sentence in found_in.get(id(one.phrase), ()))


@contextmanager
def _looking_for(instead: Callable[[Phrase, str], Sequence[Phrase]]) -> Iterator[None]:
    """Until then, each phrase that is looked for in a clause is looked for as this says."""
    as_it_is = PhraseBook.worth_looking_for

    def looking(book: PhraseBook, clause: str) -> Iterator[Phrase]:
        for phrase in as_it_is(book, clause):
            yield from instead(phrase, clause)

    PhraseBook.worth_looking_for = looking  # type: ignore[method-assign]
    try:
        yield
    finally:
        PhraseBook.worth_looking_for = as_it_is  # type: ignore[method-assign]
