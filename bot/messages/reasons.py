"""Why a day's carbs are what they are: one plain sentence a rule or gate, in the athlete's units."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from engine.units import VolumeUnit, WeightUnit, show_volume, show_weight

Decision = Mapping[str, Any]  # a decision as stored: `engine.decide.decision_as_dict`


def change_in_words(change_g: float) -> str:
    if change_g == 0:
        return "no change"
    return f"{abs(change_g):.0f} g {'more' if change_g > 0 else 'less'}"


class _Told:
    """A decision's facts, with the weights and waters as the athlete writes them."""

    def __init__(self, decision: Decision, weight_unit: str, volume_unit: str) -> None:
        self.facts = decision["trace"]["facts"]
        self._weight_unit = WeightUnit(weight_unit)
        self._volume_unit = VolumeUnit(volume_unit)
        self.change = change_in_words(decision["change_g"])

    def weight(self, key: str) -> str:
        return show_weight(self.facts[key], self._weight_unit)

    def water(self, key: str) -> str:
        return show_volume(self.facts[key], self._volume_unit)

    def __getitem__(self, key: str) -> Any:
        return self.facts[key]


def _steady(told: _Told) -> str:
    seen = f"Fullness {told['fullness']} and {told.weight('weight_kg')}"
    if told["above_band"]:
        return (
            f"{seen}: the weight is above the band ({told.weight('band_high_kg')} at most), and "
            "nothing else stands out. So no more on top: the plan holds."
        )
    if told["under_band"]:
        return (
            f"{seen}: the weight is under the band ({told.weight('band_low_kg')} at least), and "
            "nothing else stands out, so the plan holds."
        )
    if told["fullness_short"] >= 2:
        return (
            f"Fullness {told['fullness']} where {told['expected_fullness']} was expected, but not "
            "sharp enough to call it room for more, so the plan holds."
        )
    return f"{seen} are in the range I expected, so the plan holds."


def _dropping(told: _Told) -> str:
    signs = []
    if told["under_band"]:
        signs.append(
            f"{told.weight('weight_kg')} is under the band ({told.weight('band_low_kg')} at least)"
        )
    if told["dizzy"]:
        signs.append("you felt dizzy")
    if told["sleepless"]:
        signs.append("you hardly slept")
    return f"The low days are biting: {' and '.join(signs)}. So {told.change}."


_RULES: dict[str, Callable[[_Told], str]] = {
    "gut-unsettled": lambda told: (
        f"Your gut is struggling with the load, so {told.change}. Smaller meals, more of them, and "
        "the foods that have always sat well."
    ),
    "spilled-over": lambda told: (
        f"The lines have blurred (sharpness {told['sharpness']}) and {told.weight('weight_kg')} is "
        f"above the band ({told.weight('band_high_kg')} at most): that looks like spilling over, so "
        f"{told.change}."
    ),
    "softening": lambda told: (
        f"You are full ({told['fullness']}), and a touch softer than yesterday with the weight above "
        f"its band, so {told.change}."
    ),
    "flat-and-watery": lambda told: (
        f"Flat and blurred at once (fullness {told['fullness']}, sharpness {told['sharpness']}): "
        "that is more often salt, water, sleep or stress than carbs. So no change, and your coach "
        "has a look."
    ),
    "underdrunk": lambda told: (
        f"You are flat, but you drank {told.water('water_l')} of {told.water('water_target_l')}. "
        "Carbs are stored with water, at least 3 g for each gram: water back to target first, "
        f"{told.change}."
    ),
    "flat-in-load": lambda told: (
        f"Fullness {told['fullness']} where {told['expected_fullness']} was expected, lines sharp, "
        f"weight not above its band: there is room for {told.change}."
    ),
    "full-and-sharp": lambda told: (
        f"Full and sharp (fullness {told['fullness']}, sharpness {told['sharpness']}). That is the "
        "look, so nothing is chased: the plan holds."
    ),
    "dropping-too-fast": _dropping,
    "steady": _steady,
}

_GATES = {
    "warning-flag": "Carbs are not adjusted while a warning is open.",
    "frozen": "Your coach has frozen adjusting, so the plan holds for now.",
    "coach-override": "Your coach has set this figure.",
    "no-plan": "Your plan has no target for that day.",
    "missing-answer": "Not all the answers are there, so the plan holds.",
    "implausible-answer": (
        "One of the numbers is hard to believe, so the plan holds until it is checked."
    ),
    "stale-answer": "Those answers are from another day, so the plan holds.",
    "limits-conflict": (
        "The plan and your coach's limits don't fit together for this day. Your coach has been told."
    ),
}

BOUNDS = {
    "carb_floor_g": "the day's floor",
    "carb_ceiling_g": "the day's ceiling",
    "change_per_day_g": "the largest change a day",
    "load_total_g": "the total for the load",
    "last_day_change": "the smaller change allowed so near the day",
    "guard_rail": "the absolute bound",
    "caution": "an open caution: nothing is raised while one is there",
}


def reason(decision: Decision, weight_unit: str, volume_unit: str) -> str:
    """One or two sentences for the athlete."""
    rule = decision["rule"]
    if rule in _GATES:
        sentence = _GATES[rule]
    else:
        told = _Told(decision, weight_unit, volume_unit)
        sentence = _foreseen(decision, told) or _RULES[rule](told)
    return f"{sentence} {bound_sentence(decision)}".strip()


def _foreseen(decision: Decision, told: _Told) -> str:
    """The sentence where the forecast, and not the rule alone, made the figure what it is."""
    trace = decision["trace"]
    if trace.get("disagree"):
        return (
            f"Going by this morning alone I would have said {change_in_words(trace['rule_g'])}. "
            "Followed through to the day, that does not look better, so the smaller step: no "
            "change. Your coach has been told."
        )
    if trace.get("forecast_g") is None or trace["asked_g"] == trace["rule_g"]:
        return ""
    return (
        f"Fullness {told['fullness']} and {told.weight('weight_kg')} this morning. Followed through "
        f"to the day, {told.change} looks best."
    )


def bound_sentence(decision: Decision) -> str:
    """Which limit cut what the rule asked for, if one did."""
    bound, wanted = decision["bound"], decision["trace"]["wanted_g"]
    if bound is None or wanted is None or decision["rule"] in _GATES:
        return ""
    return f"(I would have said {wanted:.0f} g; held by {BOUNDS.get(bound, bound)}.)"
