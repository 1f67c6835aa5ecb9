"""Each flag in a sentence or two, with its figures and thresholds."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from bot.languages import tr
from bot.messages import coach_figures as figures
from bot.messages.safety import symptom_name
from engine.evidence import safety as evidence
from engine.evidence.after import AFTER_RISE
from engine.evidence.source import Number
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
        return figures.plain(round(self.facts[key], 1))

    def quote(self) -> str:
        """The athlete's own words, in quotation marks."""
        words = str(self.facts.get("words", ""))
        short = words if len(words) <= LONGEST_QUOTE else words[: LONGEST_QUOTE - 1] + "…"
        return f'"{short}"'


def _symptom(flag: str, told: _Facts) -> str:
    said = [tr("Reported: {symptom}.", symptom=symptom_name(flag))]
    words = told.facts.get("words")
    if words and words != flag:
        said.append(tr("In their words: {words}.", words=told.quote()))
    if told.facts.get("doubtful"):
        said.append(tr("It may mean something else; until that is clear it counts."))
    return " ".join(said)


def _urine(told: _Facts) -> str:
    if "colour" in told.facts:
        return tr(
            "Urine colour {colour} of 8; from {dark} on that is a sign of having drunk far too "
            "little. Beetroot, vitamins and medicines darken it too.",
            colour=told.number("colour"),
            dark=_threshold(evidence.URINE_DARK),
        )
    return tr("Dark urine, in their words: {words}.", words=told.quote())


def _low_sodium(told: _Facts) -> str:
    parts = [
        tr(
            "Weight up {percent} % since the last morning, {before} to {now}",
            percent=told.number("up_percent"),
            before=told.weight("before_kg"),
            now=told.weight("weight_kg"),
        )
    ]
    if "water_l" in told.facts:
        parts.append(tr("after drinking {water}", water=told.water("water_l")))
    if "words" in told.facts:
        parts.append(tr("with {words}", words=told.quote()))
    return tr(
        "{found}. Weight that rises with much water, headache, nausea or swollen hands "
        "can be low blood sodium: a doctor has to look, and more water makes it worse.",
        found=", ".join(parts),
    )


def _drug(told: _Facts) -> str:
    then = tr(
        "I gave no advice and said to ask a doctor. Ask them what they are taking, and bring in a "
        "doctor; diuretics, potassium and insulin have killed people in peak week."
    )
    if told.facts.get("words"):
        return tr("A drug was named ({words}).", words=told.quote()) + " " + then
    return tr("A drug was named.") + " " + then


def _threshold(number: Number) -> str:
    return figures.plain(float(number))


_CAUSES: dict[str, Callable[[_Facts], str]] = {
    "weight-drop-24h": lambda told: tr(
        "Weight down {percent} % since the last morning, {before} to {now} "
        "(looked at from {bound} %).",
        percent=told.number("down_percent"),
        before=told.weight("before_kg"),
        now=told.weight("weight_kg"),
        bound=_threshold(evidence.WEIGHT_DROP_DAY),
    ),
    "weight-drop-baseline": lambda told: tr(
        "Weight down {percent} % from before the week, {before} to {now} "
        "(looked at from {bound} %).",
        percent=told.number("down_percent"),
        before=told.weight("before_kg"),
        now=told.weight("weight_kg"),
        bound=_threshold(evidence.WEIGHT_DROP_BASELINE),
    ),
    "weekly-loss-fast": lambda told: tr(
        "Weight down {percent} % in a week, {before} to {now} (told of past {bound} %).",
        percent=told.number("percent"),
        before=told.weight("before_kg"),
        now=told.weight("weight_kg"),
        bound=_threshold(evidence.WEEKLY_LOSS),
    ),
    "low-sodium-pattern": _low_sodium,
    "water-under-adequate": lambda told: tr(
        "Drank {water} yesterday, under the {adequate} a day that is taken to be enough, food "
        "included.",
        water=told.water("water_l"),
        adequate=told.water("adequate_l"),
    ),
    "water-under-target": lambda told: tr(
        "Drank {water} yesterday of a target of {target}, under {bound} % of it.",
        water=told.water("water_l"),
        target=told.water("target_l"),
        bound=_threshold(evidence.WATER_UNDER_TARGET),
    ),
    "water-over-target": lambda told: tr(
        "Drank {water} yesterday of a target of {target}, over {bound} % of it.",
        water=told.water("water_l"),
        target=told.water("target_l"),
        bound=_threshold(evidence.WATER_OVER_TARGET),
    ),
    "water-over-guard-rail": lambda told: tr(
        "Drank {water} yesterday; {most} is the most for this body mass. Too much water lowers "
        "blood sodium.",
        water=told.water("water_l"),
        most=told.water("most_l"),
    ),
    "water-too-fast": lambda told: tr(
        "Drank {water} within an hour; kidneys clear about {most} an hour at most.",
        water=told.water("water_l_per_h"),
        most=told.water("most_l_per_h"),
    ),
    "urine-dark": _urine,
    "pulse-high": lambda told: tr(
        "Resting pulse {pulse} a minute (looked at over {bound}).",
        pulse=told.number("pulse"),
        bound=_threshold(evidence.PULSE_HIGH),
    ),
    "drug-named": _drug,
    "after-show-complaint": lambda told: tr(
        "Reported after the show: {words}. Food that comes back at once after long restriction "
        "can lower potassium and phosphate: a doctor today, and no large meals until then.",
        words=told.quote(),
    ),
    "after-show-rise": lambda told: tr(
        "Weight up {percent} % since the last morning before the stage, {before} to {now} "
        "(looked at past {bound} % in the days after).",
        percent=told.number("up_percent"),
        before=told.weight("before_kg"),
        now=told.weight("weight_kg"),
        bound=_threshold(AFTER_RISE),
    ),
    "symptom-unread": lambda told: tr(
        "Reported something I cannot place: {words}. Please read it and ask.", words=told.quote()
    ),
    "missed-check-in": lambda told: tr("No check-in this morning; the plan's figure holds."),
    "short-sleep": lambda told: tr(
        "Slept {last} h and {before} h the last two nights (told of under {bound} h, both).",
        last=told.number("last_night_h"),
        before=told.number("night_before_h"),
        bound=_threshold(evidence.SHORT_SLEEP),
    ),
    "low-energy-availability": lambda told: tr(
        "The day's plan leaves {energy} kcal per kg of fat-free mass after training (told of under "
        "{bound}).",
        energy=told.number("kcal_per_kg"),
        bound=_threshold(evidence.LOW_ENERGY_AVAILABILITY),
    ),
}
