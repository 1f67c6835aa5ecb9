"""The ordered rule table: what the morning's facts ask for, in steps. The first match wins.

A rule proposes a direction and a size in the coach's steps; `engine.values.limits` has the last word on
the grams. No rule touches water or salt.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.decision.facts import Facts
from engine.decision.rule import Forecast, Rule, always
from engine.evidence import deciding as e
from engine.evidence import grading
from engine.values.observed import CoachLook

#: The number of this table, kept with each decision. A rule's id never changes its meaning; where
#: its edges do, the number goes up, so that a stored decision is not held against edges that it
#: never knew. 1: blurred lines counted above the weight band only. 2: the look goes before the band.
#: 3: what the coach sees is known, and counts in the gut's steps. 4: the phases of the plan, and the
#: look that the event asks for. 5: proposals are graded; ahead of the plan. 6: what is blurred anyhow
#: is so under a softer look, and the athlete's own words of spill count. 7: a raise waits until it is
#: due: behind on both mornings, later and sooner in the load by more; flat but heavy, the forecast
#: asks; what a trial has shown counts for more than a morning. 8: answers are held against those of
#: a week that came in full, or flat or spilled over. 9: lines that soften on a load over the usual
#: one earn a larger cut. 10: a first load well over or under the usual one is moved towards it.
TABLE = 10


def _too_much(facts: Facts) -> bool:
    """Ahead of the plan, or with more of it to come than most take up."""
    return facts.ahead or facts.much_to_come


def _less_if_too_much(facts: Facts) -> int:
    return -1 if _too_much(facts) else 0


def _said_steps(facts: Facts) -> int:
    """A step off where something else bears the word out; never against what the coach sees."""
    borne_out = (facts.full or facts.above_band) and not facts.crisp
    return -1 if _too_much(facts) or (borne_out and not facts.coach_saw) else 0


def _gut_steps(facts: Facts) -> int:
    """Never less than the same morning would be answered with without the gut."""
    if facts.seen_spilled or (facts.load_eaten and facts.blurring):
        return -2
    less = facts.severe_gut or facts.softening or facts.seen_softening or _too_much(facts)
    return -1 if less or (facts.says_spilled and _said_steps(facts)) else 0


def _softening_steps(facts: Facts) -> int:
    """Two where the athlete's own answers tell of spill; none where there is no load behind."""
    if facts.spilling:
        return -2
    return -1 if facts.seen_softening else 0


def _flat_steps(facts: Facts) -> int:
    """None before a raise is due: what is eaten too much shows later, and can't be taken back."""
    if not facts.raise_due:
        return 0
    return 2 if facts.very_flat and facts.measured else 1


RULES: tuple[Rule, ...] = (
    Rule(
        id="gut-unsettled",
        forecast=Forecast.DEEPENS,
        when=lambda f: f.loading and f.gut_bad,
        steps=_gut_steps,
        reason=(
            "The gut is {gut_signs} in the middle of the load{blur_said}: {change}, in smaller meals."
        ),
        sources=(e.DE_MORAES_2019, e.COMMON_PRACTICE),
        tell_coach=lambda f: bool(f.severe_gut) or f.blurring,
    ),
    # A coach's eye is the steadier of the two, and a spilled-over athlete often feels flat.
    Rule(
        id="coach-sees-spill",
        forecast=Forecast.DEEPENS,
        when=lambda f: (f.loading or f.refed) and f.coach_saw == CoachLook.SPILLED,
        steps=lambda f: -2 if f.loaded else 0,
        reason=(
            "The coach sees {coach_said}; told was {told_said}, and {weight_said}. What the coach "
            "sees goes first: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="coach-sees-softening",
        forecast=Forecast.LOWERS,
        when=lambda f: (f.loading or f.refed) and f.coach_saw == CoachLook.SOFTENING,
        steps=_softening_steps,
        reason=(
            "The coach sees {coach_said}; told was {told_said}, and {weight_said}. What the coach "
            "sees goes first: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="coach-sees-flat-over-blur",
        forecast=Forecast.LOWERS,
        when=lambda f: f.loading and f.seen_flat and (f.spilling or f.softening or f.says_spilled),
        steps=always(0),
        reason=(
            "The coach sees {coach_said}, yet told was {told_said}, and {weight_said}. The two pull "
            "apart, so neither moves the plan: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    # Before the load nothing has been eaten that could spill, so the two rules for it wait for it.
    Rule(
        id="spilled-over",
        forecast=Forecast.DEEPENS,
        when=lambda f: f.spilling,
        steps=always(-2),
        reason=(
            "The lines have blurred ({sharpness_said}) at fullness {fullness} ({expected_fullness} "
            "expected), and {weight_said}. That looks spilled over, or like water: {change}."
        ),
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
    ),
    Rule(
        id="softening",
        forecast=Forecast.LOWERS,
        when=lambda f: f.softening,
        steps=always(-1),
        reason=(
            "Fullness is {fullness} already, sharpness slipped to {sharpness}, and {weight_said}, "
            "in its upper half or over it{load_said}: {change}."
        ),
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
    ),
    Rule(
        id="says-spilled",
        forecast=Forecast.LOWERS,
        when=lambda f: f.says_spilled and not f.blurring,
        steps=_said_steps,
        reason=(
            "In the athlete's own words it has spilled over; told was {told_said}, and "
            "{weight_said}: {change}, and the coach has a look."
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    # Where less than all of it is asked for, more than that is a miss too.
    Rule(
        id="fuller-than-asked",
        forecast=Forecast.LOWERS,
        when=lambda f: f.loaded and f.too_full,
        steps=always(-1),
        reason=(
            "Fullness is {fullness}, over the {fullness_most} that this event asks for at most "
            "({sharpness_said}): {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="coach-sees-blur",
        forecast=Forecast.LOWERS,
        when=lambda f: f.loading and f.seen_blurred,
        steps=_less_if_too_much,
        reason=(
            "The coach sees {coach_said}; told was {told_said}, and {weight_said}. Blurred lines are "
            "nothing to add to: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="flat-and-watery",
        forecast=Forecast.SILENT,
        when=lambda f: f.flat and f.blurred,
        steps=always(0),
        reason=(
            "Fullness {fullness} is under the {expected_fullness} expected and the lines are "
            "blurred (sharpness {sharpness}). Salt, water, sleep and stress come before carbs: "
            "{change}, and the coach has a look.{drink_said}"
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    Rule(
        id="blurring",
        forecast=Forecast.LOWERS,
        when=lambda f: f.blurring,
        steps=_less_if_too_much,
        reason=(
            "The lines have blurred ({sharpness_said}) at fullness {fullness} ({expected_fullness} "
            "expected), and {weight_said}. Not enough to call it spill, too much to add to: "
            "{change}, and the coach has a look."
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    # The forecast has weighed look and scale already; what it sees is the coach's to judge.
    Rule(
        id="flat-but-heavy",
        forecast=Forecast.ASKS,
        when=lambda f: f.flat and f.above_band,
        steps=always(0),
        reason=(
            "Fullness {fullness} is {fullness_short} under the {expected_fullness} expected, yet "
            "{weight_said}. More may spill, and water may hide the muscle: {change}, and the coach "
            "has a look.{drink_said}"
        ),
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
        tell_coach=lambda _: True,
    ),
    # Little water does not stop glycogen coming back (Neufer 1991, Fernandez-Elias 2015); it does
    # leave the muscle short of what is stored with it, so the look can't be judged before.
    Rule(
        id="underdrunk",
        forecast=Forecast.SILENT,
        when=lambda f: f.flat and f.underdrunk,
        steps=always(0),
        reason=(
            "Fullness {fullness} is under the {expected_fullness} expected, but only {water_l:g} L "
            "of {water_target_l:g} L water was drunk, and each gram of glycogen is stored with at "
            "least 3 g of it. Water back to its target first: {change}."
        ),
        sources=(e.FERNANDEZ_ELIAS_2015, e.COMMON_PRACTICE),
    ),
    Rule(
        id="coach-sees-full",
        forecast=Forecast.LOWERS,
        when=lambda f: f.loading and f.flat and f.coach_saw == CoachLook.FULL,
        steps=always(0),
        reason=(
            "Told was {told_said}, which is flat, but the coach sees {coach_said}, and "
            "{weight_said}. What the coach sees goes first: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    # Here the forecast, which has weighed both, may still see the need for more.
    Rule(
        id="coach-sees-on-course",
        when=lambda f: f.loading and f.flat and f.coach_saw == CoachLook.ON_COURSE,
        steps=always(0),
        reason=(
            "Told was {told_said}, which is flat, but the coach sees {coach_said}, and "
            "{weight_said}. What the coach sees goes first: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="flat-in-load",
        when=lambda f: f.loading and f.flat and f.sharp,
        steps=_flat_steps,
        reason=(
            "Fullness {fullness} is {fullness_short} under the {expected_fullness} expected, the "
            "lines are sharp ({sharpness}), and {weight_said}{waits_said}: {change}."
        ),
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
        tell_coach=lambda f: f.raise_due and not f.measured,
    ),
    Rule(
        id="flat-and-softening",
        when=lambda f: f.loading and f.flat,
        steps=always(0),
        reason=(
            "Fullness {fullness} is {fullness_short} under the {expected_fullness} expected, but the "
            "lines are softening ({sharpness_said}), and {weight_said}: {change}, and the coach has "
            "a look."
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    Rule(
        id="coach-sees-flat",
        when=lambda f: f.loading and f.seen_flat and f.sharp and not (f.above_band or f.underdrunk),
        steps=always(1),
        reason=(
            "The coach sees {coach_said}, though told was {told_said}, and {weight_said}: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    # Before the look that is not chased: a load that runs ahead spills on its last day.
    Rule(
        id="ahead-of-plan",
        forecast=Forecast.DECIDES,
        when=lambda f: f.ahead,
        steps=always(-1),
        reason=(
            "Fullness {fullness} is over the {expected_fullness} expected{lately_said}, with more of "
            "the load to come{load_said}: {change}."
        ),
        sources=(e.COMMON_PRACTICE, grading.GRADED),
    ),
    # A first load's distance from the usual one; where a week has shown its load, there is none.
    Rule(
        id="load-over-usual",
        forecast=Forecast.DECIDES,
        when=lambda f: f.much_to_come,
        steps=always(-1),
        reason=(
            "Fullness is {fullness} ({expected_fullness} expected){load_said}, which is more than "
            "most take up: {change}."
        ),
        sources=(e.COMMON_PRACTICE, grading.USUAL),
    ),
    Rule(
        id="load-under-usual",
        forecast=Forecast.DECIDES,
        when=lambda f: f.little_to_come,
        steps=always(1),
        reason=(
            "Fullness is {fullness} ({expected_fullness} expected), the lines are sharp ({sharpness})"
            "{little_said}, and most take up more: {change}."
        ),
        sources=(e.COMMON_PRACTICE, grading.USUAL),
    ),
    # For the load alone: in depletion it would hide an athlete who drops too fast.
    Rule(
        id="full-and-sharp",
        when=lambda f: f.loading and f.full and f.crisp,
        steps=always(0),
        reason=(
            "Fullness {fullness} ({expected_fullness} expected) and sharp lines ({sharpness}): on "
            "course and nothing to chase, {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="unwell-and-heavy",
        forecast=Forecast.SILENT,
        when=lambda f: f.depleting and f.unwell and f.above_band,
        steps=always(0),
        reason=(
            "In depletion {signs_of_dropping}, but {weight_said}. That is not for want of carbs: "
            "{change}, and the coach has a look."
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    Rule(
        id="dropping-too-fast",
        when=lambda f: f.depleting and (f.under_band or f.unwell),
        steps=always(1),
        reason="Depletion is biting, as {signs_of_dropping}: {change}.",
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
        tell_coach=lambda f: f.unwell,
    ),
    Rule(
        id="flat-before-load",
        when=lambda f: f.flat,
        steps=always(0),
        reason=(
            "Fullness {fullness} is {fullness_short} under the {expected_fullness} expected, as it "
            "may be before the load, and {weight_said}: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda f: f.very_flat,
    ),
    Rule(
        id="steady",
        when=lambda _: True,
        steps=always(0),
        reason=(
            "Fullness {fullness} ({expected_fullness} expected), {sharpness_said}, and "
            "{weight_said}: {change}."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
)


def first_match(
    facts: Facts, without: frozenset[str] = frozenset(), table: Sequence[Rule] = RULES
) -> Rule:
    """The first rule of the table that matches; those in `without` are passed over.

    Raises ValueError where the last rule is left out, which matches whatever no other does.
    """
    if table[-1].id in without:
        raise ValueError(f"{table[-1].id} can't be left out: it is what remains")
    return next(rule for rule in table if rule.id not in without and rule.when(facts))
