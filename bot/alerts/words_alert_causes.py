"""Each flag in a sentence or two, with its figures and thresholds; and its name in a line."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from bot.words import coach_figures as figures
from bot.words.languages import mark, tr
from bot.words.symptoms import symptom_name, symptom_names
from engine.evidence import safety as evidence
from engine.evidence.after import AFTER_RISE
from engine.evidence.source import Number
from engine.safety import FlagId, finding
from engine.symptoms import Symptom

LONGEST_QUOTE = 200


def cause(
    flag: str, facts: Mapping[str, Any], *, name: str = "", weight_unit: str, volume_unit: str
) -> str:
    """What was found; `name` is whose words are quoted, "" for the reader's own."""
    told = _Facts(facts, name, weight_unit, volume_unit)
    found = finding(flag)
    if isinstance(found, FlagId):
        return CAUSES[found](told)
    return _urine(told) if found is Symptom.URINE_DARK else _symptom(found, told)


@dataclass(frozen=True, slots=True)
class _Facts:
    """A flag's facts, weights and waters in the athlete's units."""

    facts: Mapping[str, Any]
    name: str
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
        return tr('"{words}"', words=short)

    def wrote(self) -> str:
        """The same as a sentence; "" where a button was tapped."""
        if not self.facts.get("words"):
            return ""
        if not self.name:
            return tr("You wrote {words}.", words=self.quote())
        return tr("{name} wrote {words}.", name=self.name, words=self.quote())

    def with_words(self, sentence: str) -> str:
        return " ".join(part for part in (sentence, self.wrote()) if part)


def _symptom(symptom: Symptom, told: _Facts) -> str:
    beside = (one for one in told.facts.get("_with", ()) if one in set(Symptom))
    named = symptom_names((symptom, *beside))
    return told.with_words(tr("Reported: {symptom}.", symptom=named))


def _urine(told: _Facts) -> str:
    if "colour" not in told.facts:
        return told.with_words(tr("Dark urine."))
    return told.with_words(
        tr(
            "Urine colour {colour} of 8; from {dark} on that is a sign of having drunk far too "
            "little. Beetroot, vitamins and medicines darken it too.",
            colour=told.number("colour"),
            dark=_threshold(evidence.URINE_DARK),
        )
    )


def _emergency(told: _Facts) -> str:
    said = (
        tr("{name} says it is an emergency.", name=told.name)
        if told.name
        else tr("You said it is an emergency.")
    )
    return told.with_words(said)


def _doubt(told: _Facts) -> str:
    """What was written, what was asked about it, and how far that has come."""
    if not told.name:
        return told.with_words(tr("My question about this is still open."))
    about = str(told.facts.get("about", ""))
    state = str(told.facts.get("state", "asked"))
    if state == "unwell":
        return told.with_words(
            tr("{name} says they feel unwell, and I've asked what it is.", name=told.name)
        )
    if state == "unwell-silent":
        return told.with_words(
            tr(
                "{name} says they feel unwell. I asked what it is, and have no full answer yet.",
                name=told.name,
            )
        )
    if about:
        meant = symptom_names(about.split(", "))
        asked = (
            tr("I asked whether that means {meant}, and have no answer yet.", meant=meant)
            if state == "silent"
            else tr("I've asked whether that means {meant}.", meant=meant)
        )
    elif state == "silent":
        asked = tr("I asked whether something is wrong, and have no answer yet.")
    else:
        asked = tr("I've asked whether something is wrong.")
    return f"{told.wrote()} {asked}"


def _low_sodium(told: _Facts) -> str:
    parts = []
    if told.facts.get("up_percent", 0) > 0:
        parts.append(
            tr(
                "Weight up {percent} % since the last morning, {before} to {now}.",
                percent=told.number("up_percent"),
                before=told.weight("before_kg"),
                now=told.weight("weight_kg"),
            )
        )
    if "target_l" in told.facts:
        parts.append(
            tr(
                "Drank {water} of {target} yesterday.",
                water=told.water("water_l"),
                target=told.water("target_l"),
            )
        )
    elif "water_l" in told.facts:
        parts.append(tr("Drank {water} yesterday.", water=told.water("water_l")))
    else:
        parts.append(tr("How much was drunk is not known."))
    if told.facts.get("words"):
        parts.append(told.wrote())
    elif told.facts.get("signs"):
        signs = symptom_names(str(told.facts["signs"]).split(", "))
        parts.append(tr("Reported: {signs}.", signs=signs))
    parts.append(
        tr(
            "Together that can be low blood sodium from too much water: a doctor has to look, and "
            "more water makes it worse."
        )
    )
    return " ".join(parts)


def _drug(told: _Facts) -> str:
    if not told.name:  # who coaches themself
        own = tr(
            "I give no advice on it: ask a doctor, and say that you are dieting for a stage. "
            "Diuretics, potassium and insulin have killed people in peak week."
        )
        return told.with_words(tr("A drug was named.")) + " " + own
    then = tr(
        "I gave no advice and said to ask a doctor. Ask them what they are taking, and bring in a "
        "doctor; diuretics, potassium and insulin have killed people in peak week."
    )
    return told.with_words(tr("A drug was named.")) + " " + then


def _complaints(told: _Facts) -> str:
    """Ticked complaints by their names, written ones in the athlete's words."""
    if told.facts.get("words"):
        return told.quote()
    return symptom_names(str(told.facts.get("symptoms", "")).split(", "))


def _threshold(number: Number) -> str:
    return figures.plain(float(number))


def _too_little(told: _Facts, sentence: str) -> str:
    if not told.facts.get("again"):
        return sentence
    return sentence + " " + tr("It was too little the day before too.")


CAUSES: dict[FlagId, Callable[[_Facts], str]] = {
    FlagId.EMERGENCY: _emergency,
    FlagId.DOUBT: _doubt,
    FlagId.NO_URINE_SWELLING: lambda told: told.with_words(
        tr("No urine, and swelling: kidneys that fail, or water held back, until shown otherwise.")
    ),
    FlagId.WEIGHT_DROP_DAY: lambda told: tr(
        "Weight down {percent} % since the last morning, {before} to {now} "
        "(looked at from {bound} %).",
        percent=told.number("down_percent"),
        before=told.weight("before_kg"),
        now=told.weight("weight_kg"),
        bound=_threshold(evidence.WEIGHT_DROP_DAY),
    ),
    FlagId.WEIGHT_DROP_BASELINE: lambda told: tr(
        "Weight down {percent} % from before the week, {before} to {now} "
        "(looked at from {bound} %).",
        percent=told.number("down_percent"),
        before=told.weight("before_kg"),
        now=told.weight("weight_kg"),
        bound=_threshold(evidence.WEIGHT_DROP_BASELINE),
    ),
    FlagId.WEEKLY_LOSS: lambda told: tr(
        "Weight down {percent} % in a week, {before} to {now} (I tell you from {bound} %).",
        percent=told.number("percent"),
        before=told.weight("before_kg"),
        now=told.weight("weight_kg"),
        bound=_threshold(evidence.WEEKLY_LOSS),
    ),
    FlagId.LOW_SODIUM: _low_sodium,
    FlagId.WATER_UNDER_ADEQUATE: lambda told: _too_little(
        told,
        tr(
            "Drank {water} yesterday, under the {adequate} a day that is taken to be enough, food "
            "included.",
            water=told.water("water_l"),
            adequate=told.water("adequate_l"),
        ),
    ),
    FlagId.WATER_UNDER_TARGET: lambda told: _too_little(
        told,
        tr(
            "Drank {water} yesterday of a target of {target}, under {bound} % of it.",
            water=told.water("water_l"),
            target=told.water("target_l"),
            bound=_threshold(evidence.WATER_UNDER_TARGET),
        ),
    ),
    FlagId.WATER_OVER_TARGET: lambda told: tr(
        "Drank {water} yesterday of a target of {target}, over {bound} % of it.",
        water=told.water("water_l"),
        target=told.water("target_l"),
        bound=_threshold(evidence.WATER_OVER_TARGET),
    ),
    FlagId.WATER_OVER_GUARD_RAIL: lambda told: tr(
        "Drank {water} yesterday; {most} is the most for this body mass. Too much water lowers "
        "blood sodium.",
        water=told.water("water_l"),
        most=told.water("most_l"),
    ),
    FlagId.WATER_TOO_FAST: lambda told: tr(
        "Drank {water} within an hour; kidneys clear about {most} an hour at most.",
        water=told.water("water_l_per_h"),
        most=told.water("most_l_per_h"),
    ),
    FlagId.PULSE_HIGH: lambda told: tr(
        "Resting pulse {pulse} a minute (looked at over {bound}).",
        pulse=told.number("pulse"),
        bound=_threshold(evidence.PULSE_HIGH),
    ),
    FlagId.DRUG_NAMED: _drug,
    FlagId.AFTER_SHOW_COMPLAINT: lambda told: tr(
        "Reported after the show: {words}. Food that comes back at once after long restriction "
        "can lower potassium and phosphate: a doctor today, and no large meals until then.",
        words=_complaints(told),
    ),
    FlagId.AFTER_SHOW_RISE: lambda told: tr(
        "Weight up {percent} % since the last morning before the stage, {before} to {now} "
        "(looked at past {bound} % in the days after).",
        percent=told.number("up_percent"),
        before=told.weight("before_kg"),
        now=told.weight("weight_kg"),
        bound=_threshold(AFTER_RISE),
    ),
    FlagId.SYMPTOM_UNREAD: lambda told: tr(
        "Something I can't place: {words}. Please read it and ask.", words=told.quote()
    ),
    FlagId.MISSED_CHECK_IN: lambda told: (
        tr("No check-in this morning; the plan's figure stands.")
        if told.facts["mornings"] < float(evidence.MISSED_IN_SILENCE)
        else tr(
            "No check-in for {mornings} mornings running, and not a word since. The plan's figures "
            "stand.",
            mornings=told.number("mornings"),
        )
    ),
    FlagId.SHORT_SLEEP: lambda told: tr(
        "Slept {last} h and {before} h the last two nights (I tell you under {bound} h on both).",
        last=told.number("last_night_h"),
        before=told.number("night_before_h"),
        bound=_threshold(evidence.SHORT_SLEEP),
    ),
    FlagId.LOW_ENERGY: lambda told: tr(
        "The day's plan leaves {energy} kcal per kg of fat-free mass after training (I tell you under "
        "{bound}).",
        energy=told.number("kcal_per_kg"),
        bound=_threshold(evidence.LOW_ENERGY_AVAILABILITY),
    ),
}


#: The findings of a flag for the history; single complaints are called there as everywhere.
FLAGS: dict[FlagId, str] = {
    FlagId.EMERGENCY: mark("an emergency"),
    FlagId.LOW_SODIUM: mark("signs of low sodium"),
    FlagId.NO_URINE_SWELLING: mark("no urine, and swelling"),
    FlagId.DOUBT: mark("not sure"),
    FlagId.WEIGHT_DROP_DAY: mark("weight drop in 24 h"),
    FlagId.WEIGHT_DROP_BASELINE: mark("weight drop since the week began"),
    FlagId.WEEKLY_LOSS: mark("losing weight too fast this week"),
    FlagId.WATER_UNDER_ADEQUATE: mark("too little water"),
    FlagId.WATER_UNDER_TARGET: mark("water under target"),
    FlagId.WATER_OVER_TARGET: mark("water over target"),
    FlagId.WATER_OVER_GUARD_RAIL: mark("water over the safety bound"),
    FlagId.WATER_TOO_FAST: mark("water drunk too fast"),
    FlagId.PULSE_HIGH: mark("high pulse"),
    FlagId.DRUG_NAMED: mark("drug named"),
    FlagId.SYMPTOM_UNREAD: mark("unclear complaint"),
    FlagId.MISSED_CHECK_IN: mark("missed check-in"),
    FlagId.SHORT_SLEEP: mark("short sleep"),
    FlagId.LOW_ENERGY: mark("low energy availability"),
    FlagId.AFTER_SHOW_COMPLAINT: mark("complaint after the show"),
    FlagId.AFTER_SHOW_RISE: mark("weight rise after the show"),
}


def flag_name(flag: str) -> str:
    """ "low sodium pattern", "dark urine", for a line of the history."""
    return tr(FLAGS[FlagId(flag)]) if flag in set(FlagId) else symptom_name(flag)
