"""Changing one of an athlete's settings; place and time are asked as in the first questions."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import partial

from bot.dialogue.flow import Flow, Step, buttons, one_of
from bot.membership.onboarding import words
from bot.membership.onboarding.flow import ONBOARDING
from bot.words import figures
from bot.words.languages import Sentence


def _as_at_first(*keys: str) -> Flow:
    steps = [step for step in ONBOARDING.steps if step.key in keys]
    return Flow(id=f"set-{keys[0]}", steps=tuple(replace(step, when=None) for step in steps))


def _unit(key: str, ask: Sentence, units: Mapping[str, str], name: Callable[[str], str]) -> Flow:
    """The units are those in which the first answers were written, until they are chosen here."""
    step = Step(
        key=key,
        ask=ask,
        read=one_of(*units),
        choices=buttons(*(((partial(name, unit), unit),) for unit in units)),
    )
    return Flow(id=f"set-{key}", steps=(step,))


SETTINGS = {
    "prompt_time": _as_at_first("prompt_time"),
    "place": _as_at_first("place", "which_place"),
    "weight_unit": _unit(
        "weight_unit",
        words.ask_weight_unit,
        figures.weight_unit_name.table,
        figures.weight_unit_name,
    ),
    "volume_unit": _unit(
        "volume_unit",
        words.ask_volume_unit,
        figures.volume_unit_name.table,
        figures.volume_unit_name,
    ),
}
