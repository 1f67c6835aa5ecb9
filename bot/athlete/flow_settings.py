"""Changing one of an athlete's settings; the steps are those of the first questions."""

from __future__ import annotations

from dataclasses import replace

from bot.dialogue.flow import Flow, always
from bot.membership.onboarding.flow import ONBOARDING


def _settings_flow(*keys: str) -> Flow:
    steps = [step for step in ONBOARDING.steps if step.key in keys]
    return Flow(
        id=f"set-{keys[0]}",
        steps=tuple(replace(step, when=always) for step in steps),
    )


SETTINGS = {
    "prompt_time": _settings_flow("prompt_time"),
    "place": _settings_flow("place", "which_place"),
    "weight_unit": _settings_flow("weight_unit"),
    "volume_unit": _settings_flow("volume_unit"),
}
