"""What an athlete reads of a finding in the morning's answers: what it is, and what to do today."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from bot.alerts import words_advice as advice
from bot.words import figures
from bot.words.languages import tr
from engine.safety import FlagId


@dataclass(frozen=True, slots=True)
class _Told:
    """A finding's facts, in the athlete's units."""

    facts: Mapping[str, Any]
    weight_unit: str
    volume_unit: str

    def water(self, key: str) -> str:
        return figures.volume(self.facts[key], self.volume_unit)

    def number(self, key: str) -> str:
        return figures.plain(round(self.facts[key], 1))


def _too_little(told: _Told) -> str:
    return tr(
        "You drank {water} of {target}. Get back to {target} today, spread over the day. Feel unwell? "
        "Call a doctor.",
        water=told.water("water_l"),
        target=told.water("target_l"),
    )


#: None: it is answered elsewhere, or is for the coach alone.
LINES: dict[FlagId, Callable[[_Told], str] | None] = {
    FlagId.EMERGENCY: None,
    FlagId.NO_URINE_SWELLING: None,
    FlagId.DRUG_NAMED: None,
    FlagId.MISSED_CHECK_IN: None,
    FlagId.SHORT_SLEEP: None,
    FlagId.LOW_ENERGY: None,
    FlagId.WEEKLY_LOSS: None,
    FlagId.AFTER_SHOW_COMPLAINT: None,
    FlagId.AFTER_SHOW_RISE: None,
    FlagId.SYMPTOM_UNREAD: lambda told: tr("What you wrote goes to a person to read."),
    FlagId.DOUBT: lambda told: tr(
        "Please answer my question first; carbs stay on plan until then."
    ),
    FlagId.LOW_SODIUM: lambda told: advice.low_sodium(""),
    FlagId.WEIGHT_DROP_DAY: lambda told: tr(
        "You lost {percent} % since the last morning, which is a lot. Eat and drink as planned, and "
        "sweat no more of it off. Feel unwell? Call a doctor.",
        percent=told.number("down_percent"),
    ),
    FlagId.WEIGHT_DROP_BASELINE: lambda told: tr(
        "You are {percent} % lighter than before the week, which is a lot. Eat and drink as planned, "
        "and sweat no more of it off. Feel unwell? Call a doctor.",
        percent=told.number("down_percent"),
    ),
    FlagId.WATER_UNDER_ADEQUATE: _too_little,
    FlagId.WATER_UNDER_TARGET: _too_little,
    FlagId.WATER_OVER_TARGET: lambda told: tr(
        "{water} is far over your {target}. Don't drink to catch up on anything; stay at {target} "
        "today. Headache, nausea, swollen hands or confusion: get medical help at once.",
        water=told.water("water_l"),
        target=told.water("target_l"),
    ),
    FlagId.WATER_OVER_GUARD_RAIL: lambda told: tr(
        "{water} is more than is safe for your weight. Drink only to thirst today. Headache, nausea, "
        "swollen hands or confusion: get medical help at once.",
        water=told.water("water_l"),
    ),
    FlagId.WATER_TOO_FAST: lambda told: advice.too_fast(),
    FlagId.PULSE_HIGH: lambda told: tr(
        "Your pulse at rest is {pulse}. No training and no caffeine today; have a doctor look if it "
        "stays over 100.",
        pulse=told.number("pulse"),
    ),
}


def line(flag: FlagId, facts: Mapping[str, Any], *, weight_unit: str, volume_unit: str) -> str:
    """The finding for the athlete; "" where they are told otherwise."""
    says = LINES[flag]
    return says(_Told(facts, weight_unit, volume_unit)) if says is not None else ""


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
