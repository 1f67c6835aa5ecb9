"""What each flag says, once: its name, its sentence for coaches and its line for athletes.

A new flag is a member of `FlagId`, its words here, and whoever raises it, all in this package; a number
that it alone goes by may stand beside it as a `Number` with its source.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass

from engine.evidence import safety as evidence
from engine.evidence.planning.health import AFTER_RISE
from engine.safety.flag import Finding, FlagId, OfFinding
from engine.symptoms import Symptom
from engine.values.telling import mark

#: What to do, said beside other things too.
LOW_SODIUM_ADVICE = mark(
    "These signs together can mean that there is too much water in your blood. Don't drink more "
    "now than thirst asks for, whatever the plan says, and see a doctor today. Confused, being "
    "sick, a bad headache, short breath: your local emergency number at once."
)
TOO_FAST_ADVICE = mark(
    "That is more water in a short time than kidneys can pass, and it can thin the blood's salt "
    "dangerously. Please stop drinking for now, and don't make up for anything later. Headache, "
    "nausea, swollen hands, confusion: get medical help at once."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Worded:
    """What people read of a flag.

    `name`: in a line of the history. `cause`: for coaches, with its figures and thresholds. `line`: for
    the athlete, what it is and what to do today; None where it is answered elsewhere, or is for the
    coach alone.
    """

    name: str
    cause: Callable[[OfFinding], str]
    line: Callable[[OfFinding], str] | None = None


def cause(found: Finding, told: OfFinding) -> str:
    """What was found, in a sentence or two."""
    if isinstance(found, FlagId):
        return WORDED[found].cause(told)
    return _urine(told) if found is Symptom.URINE_DARK else _symptom(found, told)


def _symptom(symptom: Symptom, told: OfFinding) -> str:
    beside = (one for one in told.facts.get("_with", ()) if one in set(Symptom))
    named = told.symptoms((symptom, *beside))
    return told.with_words(told.tr("Reported: {symptom}.", symptom=named))


def _urine(told: OfFinding) -> str:
    if "colour" not in told.facts:
        return told.with_words(told.tr("Dark urine."))
    return told.with_words(
        told.tr(
            "Urine colour {colour} of 8; from {dark} on that is a sign of having drunk far too "
            "little. Beetroot, vitamins and medicines darken it too.",
            dark=told.bound(evidence.URINE_DARK),
        )
    )


def _emergency(told: OfFinding) -> str:
    said = (
        told.tr("{name} says it is an emergency.")
        if told.name
        else told.tr("You said it is an emergency.")
    )
    return told.with_words(said)


def _doubt(told: OfFinding) -> str:
    """What was written, what was asked about it, and how far that has come."""
    if not told.name:
        return told.with_words(told.tr("My question about this is still open."))
    about = str(told.facts.get("about", ""))
    state = str(told.facts.get("state", "asked"))
    if state == "unwell":
        return told.with_words(told.tr("{name} says they feel unwell, and I've asked what it is."))
    if state == "unwell-silent":
        return told.with_words(
            told.tr(
                "{name} says they feel unwell. I asked what it is, and have no full answer yet."
            )
        )
    if about:
        meant = told.symptoms(about.split(", "))
        asked = (
            told.tr("I asked whether that means {meant}, and have no answer yet.", meant=meant)
            if state == "silent"
            else told.tr("I've asked whether that means {meant}.", meant=meant)
        )
    elif state == "silent":
        asked = told.tr("I asked whether something is wrong, and have no answer yet.")
    else:
        asked = told.tr("I've asked whether something is wrong.")
    return f"{told.wrote()} {asked}"


def _low_sodium(told: OfFinding) -> str:
    parts = []
    if told.facts.get("up_percent", 0) > 0:
        parts.append(told.tr("Weight up {percent} % since the last morning, {before} to {now}."))
    if "target_l" in told.facts:
        parts.append(told.tr("Drank {water} of {target} yesterday."))
    elif "water_l" in told.facts:
        parts.append(told.tr("Drank {water} yesterday."))
    else:
        parts.append(told.tr("How much was drunk is not known."))
    if told.facts.get("words"):
        parts.append(told.wrote())
    elif told.facts.get("signs"):
        signs = told.symptoms(str(told.facts["signs"]).split(", "))
        parts.append(told.tr("Reported: {signs}.", signs=signs))
    parts.append(
        told.tr(
            "Together that can be low blood sodium from too much water: a doctor has to look, and "
            "more water makes it worse."
        )
    )
    return " ".join(parts)


def _drug(told: OfFinding) -> str:
    if not told.name:  # who coaches themself
        own = told.tr(
            "I give no advice on it: ask a doctor, and say that you are dieting for a stage. "
            "Diuretics, potassium and insulin have killed people in peak week."
        )
        return told.with_words(told.tr("A drug was named.")) + " " + own
    then = told.tr(
        "I gave no advice and said to ask a doctor. Ask them what they are taking, and bring in a "
        "doctor; diuretics, potassium and insulin have killed people in peak week."
    )
    return told.with_words(told.tr("A drug was named.")) + " " + then


def _complaints(told: OfFinding) -> str:
    """Ticked complaints by their names, written ones in the athlete's words."""
    if told.facts.get("words"):
        return told.quote()
    return told.symptoms(str(told.facts.get("symptoms", "")).split(", "))


def _too_little(told: OfFinding, sentence: str) -> str:
    if not told.facts.get("again"):
        return sentence
    return sentence + " " + told.tr("It was too little the day before too.")


def _drink_again(told: OfFinding) -> str:
    return told.tr(
        "You drank {water} of {target}. Get back to {target} today, spread over the day. Feel unwell? "
        "Call a doctor."
    )


def _missed(told: OfFinding) -> str:
    if told.facts["mornings"] < float(evidence.MISSED_IN_SILENCE):
        return told.tr("No check-in this morning; the plan's figure stands.")
    return told.tr(
        "No check-in for {mornings} mornings running, and no message since. Please call {name} and ask "
        "how they are; it may only be the phone. The plan's figures stand."
    )


WORDED: Mapping[FlagId, Worded] = {
    FlagId.EMERGENCY: Worded(name=mark("an emergency"), cause=_emergency),
    FlagId.LOW_SODIUM: Worded(
        name=mark("signs of low sodium"),
        cause=_low_sodium,
        line=lambda told: told.tr(LOW_SODIUM_ADVICE),
    ),
    FlagId.NO_URINE_SWELLING: Worded(
        name=mark("no urine, and swelling"),
        cause=lambda told: told.with_words(
            told.tr(
                "No urine, and swelling: kidneys that fail, or water held back, until shown otherwise."
            )
        ),
    ),
    FlagId.DOUBT: Worded(
        name=mark("not sure"),
        cause=_doubt,
        line=lambda told: told.tr(
            "Please answer my question first; carbs stay on plan until then."
        ),
    ),
    FlagId.WEIGHT_DROP_DAY: Worded(
        name=mark("weight drop in 24 h"),
        cause=lambda told: told.tr(
            "Weight down {percent} % since the last morning, {before} to {now} "
            "(looked at from {bound} %).",
            bound=told.bound(evidence.WEIGHT_DROP_DAY),
        ),
        line=lambda told: told.tr(
            "You lost {percent} % since the last morning, which is a lot. Eat and drink as "
            "planned, and sweat no more of it off. Feel unwell? Call a doctor."
        ),
    ),
    FlagId.WEIGHT_DROP_BASELINE: Worded(
        name=mark("weight drop since the week began"),
        cause=lambda told: told.tr(
            "Weight down {percent} % from before the week, {before} to {now} "
            "(looked at from {bound} %).",
            bound=told.bound(evidence.WEIGHT_DROP_BASELINE),
        ),
        line=lambda told: told.tr(
            "You are {percent} % lighter than before the week, which is a lot. Eat and drink as "
            "planned, and sweat no more of it off. Feel unwell? Call a doctor."
        ),
    ),
    FlagId.WEEKLY_LOSS: Worded(
        name=mark("losing weight too fast this week"),
        cause=lambda told: told.tr(
            "Weight down {percent} % in a week, {before} to {now} (I tell you from {bound} %).",
            bound=told.bound(evidence.WEEKLY_LOSS),
        ),
    ),
    FlagId.WATER_UNDER_ADEQUATE: Worded(
        name=mark("too little water"),
        cause=lambda told: _too_little(
            told,
            told.tr(
                "Drank {water} yesterday, under the {adequate} a day that is taken to be enough, food "
                "included."
            ),
        ),
        line=_drink_again,
    ),
    FlagId.WATER_UNDER_TARGET: Worded(
        name=mark("water under target"),
        cause=lambda told: _too_little(
            told,
            told.tr(
                "Drank {water} yesterday of a target of {target}, under {bound} % of it.",
                bound=told.bound(evidence.WATER_UNDER_TARGET),
            ),
        ),
        line=_drink_again,
    ),
    FlagId.WATER_OVER_TARGET: Worded(
        name=mark("water over target"),
        cause=lambda told: told.tr(
            "Drank {water} yesterday of a target of {target}, over {bound} % of it.",
            bound=told.bound(evidence.WATER_OVER_TARGET),
        ),
        line=lambda told: told.tr(
            "{water} is far over your {target}. Don't drink to catch up on anything; stay at {target} "
            "today. Headache, nausea, swollen hands or confusion: get medical help at once."
        ),
    ),
    FlagId.WATER_OVER_GUARD_RAIL: Worded(
        name=mark("water over the safety bound"),
        cause=lambda told: told.tr(
            "Drank {water} yesterday; {most} is the most for this body mass. Too much water lowers "
            "blood sodium."
        ),
        line=lambda told: told.tr(
            "{water} is more than is safe for your weight. Drink only to thirst today. Headache, "
            "nausea, swollen hands or confusion: get medical help at once."
        ),
    ),
    FlagId.WATER_TOO_FAST: Worded(
        name=mark("water drunk too fast"),
        cause=lambda told: told.tr(
            "Drank {water} within an hour; kidneys clear about {most} an hour at most.",
            water=told.water("water_l_per_h"),
            most=told.water("most_l_per_h"),
        ),
        line=lambda told: told.tr(TOO_FAST_ADVICE),
    ),
    FlagId.PULSE_HIGH: Worded(
        name=mark("high pulse"),
        cause=lambda told: told.tr(
            "Resting pulse {pulse} a minute (looked at over {bound}).",
            bound=told.bound(evidence.PULSE_HIGH),
        ),
        line=lambda told: told.tr(
            "Your pulse at rest is {pulse}. No training and no caffeine today; have a doctor look if "
            "it stays over 100."
        ),
    ),
    FlagId.DRUG_NAMED: Worded(name=mark("drug named"), cause=_drug),
    FlagId.SYMPTOM_UNREAD: Worded(
        name=mark("unclear complaint"),
        cause=lambda told: told.tr(
            "Something I can't place: {words}. Please read it and ask.", words=told.quote()
        ),
        line=lambda told: told.tr("What you wrote goes to a person to read."),
    ),
    FlagId.MISSED_CHECK_IN: Worded(name=mark("missed check-in"), cause=_missed),
    FlagId.SHORT_SLEEP: Worded(
        name=mark("short sleep"),
        cause=lambda told: told.tr(
            "Slept {last} h and {before} h the last two nights (I tell you under {bound} h on both).",
            last=told.number("last_night_h"),
            before=told.number("night_before_h"),
            bound=told.bound(evidence.SHORT_SLEEP),
        ),
    ),
    FlagId.LOW_ENERGY: Worded(
        name=mark("low energy availability"),
        cause=lambda told: told.tr(
            "The day's plan leaves {energy} kcal per kg of fat-free mass after training (I tell you "
            "under {bound}).",
            energy=told.number("kcal_per_kg"),
            bound=told.bound(evidence.LOW_ENERGY_AVAILABILITY),
        ),
    ),
    FlagId.AFTER_SHOW_COMPLAINT: Worded(
        name=mark("complaint after the show"),
        cause=lambda told: told.tr(
            "Reported after the show: {words}. Food that comes back at once after long restriction "
            "can lower potassium and phosphate: a doctor today, and no large meals until then.",
            words=_complaints(told),
        ),
    ),
    FlagId.AFTER_SHOW_RISE: Worded(
        name=mark("weight rise after the show"),
        cause=lambda told: told.tr(
            "Weight up {percent} % since the last morning before the stage, {before} to {now} "
            "(looked at past {bound} % in the days after).",
            bound=told.bound(AFTER_RISE),
        ),
    ),
}
