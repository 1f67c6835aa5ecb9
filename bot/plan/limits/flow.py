"""The question for one limit."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step
from bot.plan.limits import words
from engine.values.limits import LIMIT_KEYS
from engine.written.units import VolumeUnit, parse_grams, parse_volume


def _ask(answers: Answers) -> str:
    return words.ask_limit(
        answers["_key"], answers["_value"], answers["_low"], answers["_high"],
        answers["_volume_unit"],
    )  # fmt: skip


def _read(text: str, answers: Answers) -> float:
    key, unit = answers["_key"], answers["_volume_unit"]
    if LIMIT_KEYS[key].unit == "L":
        value = parse_volume(text, unit=VolumeUnit(unit)).litres
    else:
        value = parse_grams(text, high=10_000)
    for bound, outside, citation in (
        (answers["_low"], value < answers["_low"], answers["_low_source"]),
        (answers["_high"], value > answers["_high"], answers["_high_source"]),
    ):
        if outside:
            raise InvalidAnswer(words.outside_guard_rail(key, value, bound, citation, unit))
    return value


#: Context: "_key" of the limit, "_value" as it is, "_low", "_high" and their sources' citations,
#: "_volume_unit".
LIMIT = Flow(id="coach-limit", steps=(Step(key="value", ask=_ask, read_with=_read),))
