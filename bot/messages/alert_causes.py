"""Each flag in a sentence or two, with its figures and thresholds."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from bot.messages import coach_figures as figures
from bot.messages.safety import symptom_name
from engine.evidence import safety as evidence
from engine.evidence.after import AFTER_RISE
from engine.symptoms import WARNINGS

LONGEST_QUOTE = 200


def cause(flag: str, facts: Mapping[str, Any], *, weight_unit: str, volume_unit: str) -> str:
    """What was found, without a name: it stands under one."""
    told = _Facts(facts, weight_unit, volume_unit)
    if flag in WARNINGS:
        return _symptom(flag, told)
    return _CAUSES[flag](told)


@dataclass(frozen=True, slots=True)
class _Facts:
    """A flag's facts, weights and waters in the athlete's units."""

    facts: Mapping[str, Any]
    weight_unit: str
    volume_unit: str

    def weight(self, key: str) -> str:
        return figures.weight(self.facts[key], self.weight_unit)

    def water(self, key: str) -> str:
        return figures.litres(self.facts[key], self.volume_unit)

    def number(self, key: str) -> str:
        return f"{self.facts[key]:.1f}".removesuffix(".0")

    def quote(self) -> str:
        """The athlete's own words, in quotation marks."""
        words = str(self.facts.get("words", ""))
        short = words if len(words) <= LONGEST_QUOTE else words[: LONGEST_QUOTE - 1] + "…"
        return f'"{short}"'


def _symptom(flag: str, told: _Facts) -> str:
    reported = f"Reported: {symptom_name(flag)}."
    words = told.facts.get("words")
    if words and words != flag:
        reported += f" In their words: {told.quote()}."
    if told.facts.get("doubtful"):
        reported += " It may mean something else; until that is clear it counts."
    return reported


def _urine(told: _Facts) -> str:
    if "colour" in told.facts:
        return (
            f"Urine colour {told.number('colour')} of 8; from {float(evidence.URINE_DARK):g} on that "
            "is a sign of having drunk far too little. Beetroot, vitamins and medicines darken it too."
        )
    return f"Dark urine, in their words: {told.quote()}."


def _low_sodium(told: _Facts) -> str:
    parts = [
        f"Weight up {told.number('up_percent')} % since the last morning, "
        f"{told.weight('before_kg')} to {told.weight('weight_kg')}"
    ]
    if "water_l" in told.facts:
        parts.append(f"after drinking {told.water('water_l')}")
    if "words" in told.facts:
        parts.append(f"with {told.quote()}")
    return (
        ", ".join(parts) + ". Weight that rises with much water, headache, nausea or swollen hands "
        "can be low blood sodium: a doctor has to look, and more water makes it worse."
    )


_CAUSES: dict[str, Callable[[_Facts], str]] = {
    "weight-drop-24h": lambda told: (
        f"Weight down {told.number('down_percent')} % since the last morning, "
        f"{told.weight('before_kg')} to {told.weight('weight_kg')} "
        f"(looked at from {float(evidence.WEIGHT_DROP_DAY):g} %)."
    ),
    "weight-drop-baseline": lambda told: (
        f"Weight down {told.number('down_percent')} % from before the week, "
        f"{told.weight('before_kg')} to {told.weight('weight_kg')} "
        f"(looked at from {float(evidence.WEIGHT_DROP_BASELINE):g} %)."
    ),
    "weekly-loss-fast": lambda told: (
        f"Weight down {told.number('percent')} % in a week, {told.weight('before_kg')} to "
        f"{told.weight('weight_kg')} (told of past {float(evidence.WEEKLY_LOSS):g} %)."
    ),
    "low-sodium-pattern": _low_sodium,
    "water-under-adequate": lambda told: (
        f"Drank {told.water('water_l')} yesterday, under the {told.water('adequate_l')} a day that "
        "is taken to be enough, food included."
    ),
    "water-under-target": lambda told: (
        f"Drank {told.water('water_l')} yesterday of a target of {told.water('target_l')}, under "
        f"{float(evidence.WATER_UNDER_TARGET):g} % of it."
    ),
    "water-over-target": lambda told: (
        f"Drank {told.water('water_l')} yesterday of a target of {told.water('target_l')}, over "
        f"{float(evidence.WATER_OVER_TARGET):g} % of it."
    ),
    "water-over-guard-rail": lambda told: (
        f"Drank {told.water('water_l')} yesterday; {told.water('most_l')} is the most for this body "
        "mass. Too much water lowers blood sodium."
    ),
    "water-too-fast": lambda told: (
        f"Drank {told.water('water_l_per_h')} within an hour; kidneys clear about "
        f"{told.water('most_l_per_h')} an hour at most."
    ),
    "urine-dark": _urine,
    "pulse-high": lambda told: (
        f"Resting pulse {told.number('pulse')} a minute (looked at over "
        f"{float(evidence.PULSE_HIGH):g})."
    ),
    "drug-named": lambda told: (
        "A drug was named"
        + (f" ({told.quote()})" if told.facts.get("words") else "")
        + ". I gave no "
        "advice and said to ask a doctor. Ask them what they are taking, and bring in a doctor; "
        "diuretics, potassium and insulin have killed people in peak week."
    ),
    "after-show-complaint": lambda told: (
        f"Reported after the show: {told.quote()}. Food that comes back at once after long restriction "
        "can lower potassium and phosphate: a doctor today, and no large meals until then."
    ),
    "after-show-rise": lambda told: (
        f"Weight up {told.number('up_percent')} % since the last morning before the stage, "
        f"{told.weight('before_kg')} to {told.weight('weight_kg')} "
        f"(looked at past {float(AFTER_RISE):g} % in the days after)."
    ),
    "symptom-unread": lambda told: (
        f"Reported something I cannot place: {told.quote()}. Please read it and ask."
    ),
    "missed-check-in": lambda told: "No check-in this morning; the plan's figure holds.",
    "short-sleep": lambda told: (
        f"Slept {told.number('last_night_h')} h and {told.number('night_before_h')} h the last two "
        f"nights (told of under {float(evidence.SHORT_SLEEP):g} h, both)."
    ),
    "low-energy-availability": lambda told: (
        f"The day's plan leaves {told.number('kcal_per_kg')} kcal per kg of fat-free mass after "
        f"training (told of under {float(evidence.LOW_ENERGY_AVAILABILITY):g})."
    ),
}
