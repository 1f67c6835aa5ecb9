"""What a sentence on a finding is given: its facts, and whose words are quoted."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from engine.evidence.source import Number
from engine.values.telling import Telling

LONGEST_QUOTE = 200


class OfFinding(Telling):
    """A finding's facts; `name` is whose words are quoted, "" for the reader's own."""

    def __init__(self, facts: Mapping[str, Any], name: str = "") -> None:
        super().__init__(facts)
        self.name = name

    def number(self, key: str) -> str:
        return self.plain(round(self.facts[key], 1))

    def bound(self, number: Number) -> str:
        """The threshold that was passed."""
        return self.plain(float(number))

    def plain(self, value: float) -> str:
        return f"{value:g}"

    def symptoms(self, ids: Iterable[str]) -> str:
        """Several in a row, by their names."""
        return ", ".join(one.replace("-", " ") for one in ids)

    def quote(self) -> str:
        """The athlete's own words, in quotation marks."""
        words = str(self.facts.get("words", ""))
        short = words if len(words) <= LONGEST_QUOTE else words[: LONGEST_QUOTE - 1] + "…"
        return self.tr('"{words}"', words=short)

    def wrote(self) -> str:
        """The same as a sentence; "" where a button was tapped."""
        if not self.facts.get("words"):
            return ""
        if not self.name:
            return self.tr("You wrote {words}.", words=self.quote())
        return self.tr("{name} wrote {words}.", name=self.name, words=self.quote())

    def with_words(self, sentence: str) -> str:
        return " ".join(part for part in (sentence, self.wrote()) if part)
