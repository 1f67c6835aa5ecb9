"""A finding in a chat: its sentence, its line for the athlete, its name. The engine words them all."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from bot.words import figures
from bot.words.figures import InChat
from bot.words.languages import tr
from bot.words.names import symptom_names
from engine.safety import FlagId, finding
from engine.safety import words as engine_words
from engine.safety.told import OfFinding
from engine.safety.words import WORDED


class _InChat(InChat, OfFinding):
    """A finding's facts in the language in force, in the athlete's units."""

    def __init__(
        self, facts: Mapping[str, Any], name: str, weight_unit: str, volume_unit: str
    ) -> None:
        super().__init__(facts, name)
        self.weight_unit, self.volume_unit = weight_unit, volume_unit

    def plain(self, value: float) -> str:
        return figures.plain(value)

    def symptoms(self, ids: Iterable[str]) -> str:
        return symptom_names(ids)


def cause(
    flag: str, facts: Mapping[str, Any], *, name: str = "", weight_unit: str, volume_unit: str
) -> str:
    """What was found; `name` is whose words are quoted, "" for the reader's own."""
    return engine_words.cause(finding(flag), _InChat(facts, name, weight_unit, volume_unit))


def line(flag: FlagId, facts: Mapping[str, Any], *, weight_unit: str, volume_unit: str) -> str:
    """The finding for the athlete; "" where they are told otherwise."""
    says = WORDED[flag].line
    return says(_InChat(facts, "", weight_unit, volume_unit)) if says is not None else ""


def together(lines: Sequence[str], coach: str, *, no_raise: bool) -> str:
    """All of a morning's, and who knows of them. `coach` is "" for who coaches themself."""
    said = " ".join(dict.fromkeys(line for line in lines if line))
    if not no_raise:
        return said
    known = (
        tr("I've told {coach}, and I won't add carbs on these answers.", coach=coach)
        if coach
        else tr("I won't add carbs on these answers.")
    )
    return f"{said} {known}".strip()
