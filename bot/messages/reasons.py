"""Why a day's carbs are what they are: one plain sentence a rule or gate, in the athlete's units."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from bot import figures
from bot.languages import mark, tr

Decision = Mapping[str, Any]  # a decision as stored: `engine.decide.decision_as_dict`


def change_in_words(change_g: float) -> str:
    if change_g == 0:
        return tr("no change")
    if change_g > 0:
        return tr("{grams:.0f} g more", grams=change_g)
    return tr("{grams:.0f} g less", grams=-change_g)


class _Told:
    """A decision's facts, with the weights and waters as the athlete writes them."""

    def __init__(self, decision: Decision, weight_unit: str, volume_unit: str) -> None:
        self.facts = decision["trace"]["facts"]
        self._weight_unit = weight_unit
        self._volume_unit = volume_unit
        self.change = change_in_words(decision["change_g"])

    def weight(self, key: str) -> str:
        return figures.weight(self.facts[key], self._weight_unit)

    def water(self, key: str) -> str:
        return figures.volume(self.facts[key], self._volume_unit)

    def __getitem__(self, key: str) -> Any:
        return self.facts[key]


def _steady(told: _Told) -> str:
    if told["above_band"]:
        return tr(
            "Fullness {fullness} and {weight}: the weight is above the band ({band_high} at most), "
            "and nothing else stands out. So no more on top: the plan holds.",
            fullness=told["fullness"],
            weight=told.weight("weight_kg"),
            band_high=told.weight("band_high_kg"),
        )
    if told["under_band"]:
        return tr(
            "Fullness {fullness} and {weight}: the weight is under the band ({band_low} at least), "
            "and nothing else stands out, so the plan holds.",
            fullness=told["fullness"],
            weight=told.weight("weight_kg"),
            band_low=told.weight("band_low_kg"),
        )
    if told["fullness_short"] >= 2:
        return tr(
            "Fullness {fullness} where {expected} was expected, but not sharp enough to call it room "
            "for more, so the plan holds.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
        )
    return tr(
        "Fullness {fullness} and {weight} are in the range I expected, so the plan holds.",
        fullness=told["fullness"],
        weight=told.weight("weight_kg"),
    )


def _dropping(told: _Told) -> str:
    signs = []
    if told["under_band"]:
        signs.append(
            tr(
                "{weight} is under the band ({band_low} at least)",
                weight=told.weight("weight_kg"),
                band_low=told.weight("band_low_kg"),
            )
        )
    if told["dizzy"]:
        signs.append(tr("you felt dizzy"))
    if told["sleepless"]:
        signs.append(tr("you hardly slept"))
    return tr(
        "The low days are biting: {signs}. So {change}.",
        signs=figures.each_and(signs),
        change=told.change,
    )


_RULES: dict[str, Callable[[_Told], str]] = {
    "gut-unsettled": lambda told: tr(
        "Your gut is struggling with the load, so {change}. Smaller meals, more of them, and "
        "the foods that have always sat well.",
        change=told.change,
    ),
    "spilled-over": lambda told: tr(
        "The lines have blurred (sharpness {sharpness}) and {weight} is above the band "
        "({band_high} at most): that looks like spilling over, so {change}.",
        sharpness=told["sharpness"],
        weight=told.weight("weight_kg"),
        band_high=told.weight("band_high_kg"),
        change=told.change,
    ),
    "softening": lambda told: tr(
        "You are full ({fullness}), and a touch softer than yesterday with the weight above "
        "its band, so {change}.",
        fullness=told["fullness"],
        change=told.change,
    ),
    "flat-and-watery": lambda told: tr(
        "Flat and blurred at once (fullness {fullness}, sharpness {sharpness}): "
        "that is more often salt, water, sleep or stress than carbs. So no change, and your coach "
        "has a look.",
        fullness=told["fullness"],
        sharpness=told["sharpness"],
    ),
    "underdrunk": lambda told: tr(
        "You are flat, but you drank {water} of {target}. Carbs are stored with water, at least 3 g "
        "for each gram: water back to target first, {change}.",
        water=told.water("water_l"),
        target=told.water("water_target_l"),
        change=told.change,
    ),
    "flat-in-load": lambda told: tr(
        "Fullness {fullness} where {expected} was expected, lines sharp, weight not above its band: "
        "there is room for {change}.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
        change=told.change,
    ),
    "full-and-sharp": lambda told: tr(
        "Full and sharp (fullness {fullness}, sharpness {sharpness}). That is the look, so nothing "
        "is chased: the plan holds.",
        fullness=told["fullness"],
        sharpness=told["sharpness"],
    ),
    "dropping-too-fast": _dropping,
    "steady": _steady,
}

_GATES = {
    "warning-flag": mark("Carbs are not adjusted while a warning is open."),
    "frozen": mark("Your coach has frozen adjusting, so the plan holds for now."),
    "coach-override": mark("Your coach has set this figure."),
    "no-plan": mark("Your plan has no target for that day."),
    "missing-answer": mark("Not all the answers are there, so the plan holds."),
    "implausible-answer": (
        mark("One of the numbers is hard to believe, so the plan holds until it is checked.")
    ),
    "stale-answer": mark("Those answers are from another day, so the plan holds."),
    "limits-conflict": (
        mark(
            "The plan and your coach's limits don't fit together for this day. Your coach has been "
            "told."
        )
    ),
}

BOUNDS = {
    "carb_floor_g": mark("the day's floor"),
    "carb_ceiling_g": mark("the day's ceiling"),
    "change_per_day_g": mark("the largest change a day"),
    "load_total_g": mark("the total for the load"),
    "last_day_change": mark("the smaller change allowed so near the day"),
    "guard_rail": mark("the absolute bound"),
    "caution": mark("an open caution: nothing is raised while one is there"),
}


GATE_NAMES = {
    "warning-flag": mark("warning flag"),
    "frozen": mark("frozen"),
    "coach-override": mark("coach override"),
    "no-plan": mark("no plan"),
    "missing-answer": mark("missing answer"),
    "implausible-answer": mark("implausible answer"),
    "stale-answer": mark("stale answer"),
    "limits-conflict": mark("limits conflict"),
}


def bound_name(bound: str) -> str:
    """What held a figure, inside a sentence."""
    return tr(BOUNDS[bound]) if bound in BOUNDS else bound


def gate_name(gate: str) -> str:
    return tr(GATE_NAMES[gate]) if gate in GATE_NAMES else gate.replace("-", " ")


def reason(decision: Decision, weight_unit: str, volume_unit: str) -> str:
    """One or two sentences for the athlete."""
    rule = decision["rule"]
    if rule in _GATES:
        sentence = tr(_GATES[rule])
    else:
        told = _Told(decision, weight_unit, volume_unit)
        sentence = _foreseen(decision, told) or _RULES[rule](told)
    return f"{sentence} {bound_sentence(decision)}".strip()


def _foreseen(decision: Decision, told: _Told) -> str:
    """The sentence where the forecast, and not the rule alone, made the figure what it is."""
    trace = decision["trace"]
    if trace.get("disagree"):
        return tr(
            "Going by this morning alone I would have said {change}. Followed through to the day, "
            "that does not look better, so the smaller step: no change. Your coach has been told.",
            change=change_in_words(trace["rule_g"]),
        )
    if trace.get("forecast_g") is None or trace["asked_g"] == trace["rule_g"]:
        return ""
    return tr(
        "Fullness {fullness} and {weight} this morning. Followed through to the day, {change} looks "
        "best.",
        fullness=told["fullness"],
        weight=told.weight("weight_kg"),
        change=told.change,
    )


def bound_sentence(decision: Decision) -> str:
    """Which limit cut what the rule asked for, if one did."""
    bound, wanted = decision["bound"], decision["trace"]["wanted_g"]
    if bound is None or wanted is None or decision["rule"] in _GATES:
        return ""
    return tr(
        "(I would have said {wanted:.0f} g; held by {limit}.)",
        wanted=wanted,
        limit=bound_name(bound),
    )
