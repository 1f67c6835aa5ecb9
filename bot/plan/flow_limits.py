"""The question for one limit, and what a coach reads while setting limits."""

from __future__ import annotations

import math
from collections.abc import Sequence

from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step
from bot.words import figures
from bot.words.languages import Sentence, mark, tr, tr_if
from bot.words.names import LIMITS, cited
from engine.planning.room import Room
from engine.values.limits import LIMIT_KEYS
from engine.written.units import VolumeUnit, parse_grams, parse_volume


def limits_view(
    name: str, lines: Sequence[str], *, are_set: bool, self_coached: bool, cost: str = ""
) -> str:
    """`cost`: see `room_line`."""
    if are_set:
        head = (
            tr("Your limits. I never go past them:")
            if self_coached
            else tr("{name}'s limits. I never go past them:", name=figures.capital(name))
        )
    else:
        head = tr_if(
            self_coached,
            "Limits I suggest for your plan. They count once you have set them:",
            "Limits I suggest for {name}'s plan. They count once you have set them:",
            name=name,
        )
    parts = [head, "\n".join(lines), cost, tr("Tap one to change it.")]
    return "\n\n".join(part for part in parts if part)


#: Shares in words: from which on, and how it is said.
SHARES = (
    (0.9, mark("nearly all")),
    (0.7, mark("about three quarters")),
    (0.58, mark("about two thirds")),
    (0.42, mark("about half")),
    (0.29, mark("about a third")),
    (0.15, mark("about a quarter")),
    (0.0, mark("next to nothing")),
)


def room_line(room: Room | None, name: str, *, self_coached: bool) -> str:
    """What the limits cost: how far a load day may be corrected, beside what may be needed."""
    if room is None:
        return ""
    told = {
        "name": name,
        "up": figures.grams(math.floor(room.up_g)),
        "down": figures.grams(math.floor(room.down_g)),
        "share": tr(next(words for least, words in SHARES if room.share >= least)),
    }
    said = (
        tr(
            "With these limits an average load day of yours can be corrected by {up} up and {down} "
            "down at most: {share} of what may be needed.",
            **told,
        )
        if self_coached
        else tr(
            "With these limits {name}'s average load day can be corrected by {up} up and {down} "
            "down at most: {share} of what may be needed.",
            **told,
        )
    )
    note = tr(
        "What may be needed is worked out on virtual athletes, not measured on people. Anything over "
        "the auto-approve limit still waits for your approval."
    )
    return f"{said} {note}"


def limit_line(key: str, value: float, volume_unit: str) -> str:
    label = figures.capital(figures.limit_label(key))
    return f"{label}: {figures.limit(key, value, volume_unit)}"


def limit_button(key: str) -> str:
    return tr(LIMITS[key])


use_limits_button = Sentence("Set these limits")


def ask_limit(key: str, value: float, low: float, high: float, volume_unit: str) -> str:
    if LIMIT_KEYS[key].unit == "g":
        low, high = math.ceil(low), math.floor(high)  # what is offered has to be taken
    return tr(
        "{label}: {value} at present. Send the new number, from {low} to {high}.",
        label=figures.capital(figures.limit_label(key)),
        value=figures.limit(key, value, volume_unit),
        low=figures.limit(key, low, volume_unit),
        high=figures.limit(key, high, volume_unit),
    )


def outside_guard_rail(
    key: str, value: float, bound: float, citation: str, volume_unit: str
) -> str:
    return tr_if(
        value > bound,
        "{value} is over the safety bound: {bound} is the most for this body mass. Source: "
        "{citation}.",
        "{value} is under the safety bound: {bound} is the least for this body mass. Source: "
        "{citation}.",
        value=figures.limit(key, value, volume_unit),
        bound=figures.limit(key, bound, volume_unit),
        citation=cited(citation),
    )


def limits_contradict(key: str, volume_unit: str, floor: float, ceiling: float) -> str:
    if key.startswith("water"):
        return tr(
            "The water floor ({floor}) would then be above the water ceiling ({ceiling}), so I "
            "changed nothing.",
            floor=figures.limit("water_floor_l", floor, volume_unit),
            ceiling=figures.limit("water_floor_l", ceiling, volume_unit),
        )
    return tr(
        "The carb floor ({floor}) would then be above the carb ceiling ({ceiling}), so I "
        "changed nothing.",
        floor=figures.limit("carb_floor_g", floor, volume_unit),
        ceiling=figures.limit("carb_floor_g", ceiling, volume_unit),
    )


limits_set = Sentence("The limits are set.")


def limit_changed(line: str, cost: str = "") -> str:
    return "\n\n".join(part for part in (tr("Changed. {line}.", line=line), cost) if part)


def _ask(answers: Answers) -> str:
    return ask_limit(
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
            raise InvalidAnswer(outside_guard_rail(key, value, bound, citation, unit))
    return value


#: Context: "_key" of the limit, "_value" as it is, "_low", "_high" and their sources' citations,
#: "_volume_unit".
LIMIT = Flow(id="coach-limit", steps=(Step(key="value", ask=_ask, read_with=_read),))
