"""The ordered rule table: what the morning's facts ask for, in steps. The first match wins.

A rule proposes a direction and a size in the coach's steps; `engine.values.limits` has the last word on
the grams. No rule touches water or salt.
"""

from __future__ import annotations

from collections.abc import Sequence

from engine.decision.facts import Facts
from engine.decision.rules.rule import Forecast, Rule, always
from engine.decision.rules.words import (
    say_ahead,
    say_blurring,
    say_coach_sees_blur,
    say_coach_sees_flat,
    say_coach_sees_nothing_flat,
    say_coach_sees_too_much,
    say_drink_too,
    say_dropping,
    say_flat_in_load,
    say_full_and_sharp,
    say_fuller,
    say_gut,
    say_over_usual,
    say_says_spilled,
    say_softening,
    say_spilled,
    say_steady,
    say_under_usual,
    say_unwell_and_heavy,
)
from engine.evidence import deciding as e
from engine.evidence import grading
from engine.values.checkin import CoachLook
from engine.values.telling import mark

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
#: 11: a trial beside a load that came in full, and a load between two that were looked at, stand
#: as planned; the forecast has no say there.
TABLE = 11


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
        name=mark("stomach upset"),
        forecast=Forecast.DEEPENS,
        when=lambda f: f.loading and f.gut_bad,
        steps=_gut_steps,
        tells=say_gut,
        sources=(e.DE_MORAES_2019, e.COMMON_PRACTICE),
        tell_coach=lambda f: bool(f.severe_gut) or f.blurring,
    ),
    # A coach's eye is the steadier of the two, and a spilled-over athlete often feels flat.
    Rule(
        id="coach-sees-spill",
        name=mark("the coach sees spill"),
        forecast=Forecast.DEEPENS,
        when=lambda f: (f.loading or f.refed) and f.coach_saw == CoachLook.SPILLED,
        steps=lambda f: -2 if f.loaded else 0,
        tells=say_coach_sees_too_much,
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="coach-sees-softening",
        name=mark("the coach sees softening"),
        forecast=Forecast.LOWERS,
        when=lambda f: (f.loading or f.refed) and f.coach_saw == CoachLook.SOFTENING,
        steps=_softening_steps,
        tells=say_coach_sees_too_much,
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="coach-sees-flat-over-blur",
        name=mark("the coach sees flat, the answers tell of blur"),
        forecast=Forecast.LOWERS,
        when=lambda f: f.loading and f.seen_flat and (f.spilling or f.softening or f.says_spilled),
        steps=always(0),
        tells=lambda told: told.tr(
            "Your coach sees: {look}; you said fullness {fullness} and sharpness {sharpness}. The two "
            "don't agree, so nothing is moved. Stay on plan."
        ),
        sources=(e.COMMON_PRACTICE,),
    ),
    # Before the load nothing has been eaten that could spill, so the two rules for it wait for it.
    Rule(
        id="spilled-over",
        name=mark("spilled over"),
        forecast=Forecast.DEEPENS,
        when=lambda f: f.spilling,
        steps=always(-2),
        tells=say_spilled,
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
    ),
    Rule(
        id="softening",
        name=mark("softening"),
        forecast=Forecast.LOWERS,
        when=lambda f: f.softening,
        steps=always(-1),
        tells=say_softening,
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
    ),
    Rule(
        id="says-spilled",
        name=mark("spilled over in their words"),
        forecast=Forecast.LOWERS,
        when=lambda f: f.says_spilled and not f.blurring,
        steps=_said_steps,
        tells=say_says_spilled,
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    # Where less than all of it is asked for, more than that is a miss too.
    Rule(
        id="fuller-than-asked",
        name=mark("fuller than asked for"),
        forecast=Forecast.LOWERS,
        when=lambda f: f.loaded and f.too_full,
        steps=always(-1),
        tells=say_fuller,
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="coach-sees-blur",
        name=mark("the coach sees blurred lines"),
        forecast=Forecast.LOWERS,
        when=lambda f: f.loading and f.seen_blurred,
        steps=_less_if_too_much,
        tells=say_coach_sees_blur,
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="flat-and-watery",
        name=mark("flat and blurred"),
        forecast=Forecast.SILENT,
        when=lambda f: f.flat and f.blurred,
        steps=always(0),
        tells=lambda told: (
            told.tr(
                "Flat and blurred (fullness {fullness}, sharpness {sharpness}). Usually that's salt, "
                "water, sleep or stress, not carbs. Stay on plan."
            )
            + say_drink_too(told)
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    Rule(
        id="blurring",
        name=mark("lines blurring"),
        forecast=Forecast.LOWERS,
        when=lambda f: f.blurring,
        steps=_less_if_too_much,
        tells=say_blurring,
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    # The forecast has weighed look and scale already; what it sees is the coach's to judge.
    Rule(
        id="flat-but-heavy",
        name=mark("flat but heavy"),
        forecast=Forecast.ASKS,
        when=lambda f: f.flat and f.above_band,
        steps=always(0),
        tells=lambda told: (
            told.tr(
                "You're flatter than expected ({fullness}, I expected {expected}) but heavier than "
                "expected ({weight}, {band_high} at most). Stay on plan."
            )
            + say_drink_too(told)
        ),
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
        tell_coach=lambda _: True,
    ),
    # Little water does not stop glycogen coming back (Neufer 1991, Fernandez-Elias 2015); it does
    # leave the muscle short of what is stored with it, so the look can't be judged before.
    Rule(
        id="underdrunk",
        name=mark("too little water"),
        forecast=Forecast.SILENT,
        when=lambda f: f.flat and f.underdrunk,
        steps=always(0),
        tells=lambda told: told.tr(
            "You're flat, but you drank {water} of {target}, and carbs are stored with water. Get "
            "back to {target} first, spread over the day. No extra carbs today."
        ),
        sources=(e.FERNANDEZ_ELIAS_2015, e.COMMON_PRACTICE),
    ),
    Rule(
        id="coach-sees-full",
        name=mark("flat in the answers, full to the coach"),
        forecast=Forecast.LOWERS,
        when=lambda f: f.loading and f.flat and f.coach_saw == CoachLook.FULL,
        steps=always(0),
        tells=say_coach_sees_nothing_flat,
        sources=(e.COMMON_PRACTICE,),
    ),
    # Here the forecast, which has weighed both, may still see the need for more.
    Rule(
        id="coach-sees-on-course",
        name=mark("flat in the answers, on course to the coach"),
        when=lambda f: f.loading and f.flat and f.coach_saw == CoachLook.ON_COURSE,
        steps=always(0),
        tells=say_coach_sees_nothing_flat,
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="flat-in-load",
        name=mark("flat in the load"),
        when=lambda f: f.loading and f.flat and f.sharp,
        steps=_flat_steps,
        tells=say_flat_in_load,
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
        tell_coach=lambda f: f.raise_due and not f.measured,
    ),
    Rule(
        id="flat-and-softening",
        name=mark("flat and softening"),
        when=lambda f: f.loading and f.flat,
        steps=always(0),
        tells=lambda told: told.tr(
            "You're flatter than expected ({fullness}, I expected {expected}), but the lines are "
            "softening, so no extra carbs. Stay on plan."
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    Rule(
        id="coach-sees-flat",
        name=mark("the coach sees flat"),
        when=lambda f: f.loading and f.seen_flat and f.sharp and not (f.above_band or f.underdrunk),
        steps=always(1),
        tells=say_coach_sees_flat,
        sources=(e.COMMON_PRACTICE,),
    ),
    # Before the look that is not chased: a load that runs ahead spills on its last day.
    Rule(
        id="ahead-of-plan",
        name=mark("ahead of the plan"),
        forecast=Forecast.DECIDES,
        when=lambda f: f.ahead,
        steps=always(-1),
        tells=say_ahead,
        sources=(e.COMMON_PRACTICE, grading.GRADED),
    ),
    # A first load's distance from the usual one; where a week has shown its load, there is none.
    Rule(
        id="load-over-usual",
        name=mark("a load over the usual one"),
        forecast=Forecast.DECIDES,
        when=lambda f: f.much_to_come,
        steps=always(-1),
        tells=say_over_usual,
        sources=(e.COMMON_PRACTICE, grading.USUAL),
    ),
    Rule(
        id="load-under-usual",
        name=mark("a load under the usual one"),
        forecast=Forecast.DECIDES,
        when=lambda f: f.little_to_come,
        steps=always(1),
        tells=say_under_usual,
        sources=(e.COMMON_PRACTICE, grading.USUAL),
    ),
    # For the load alone: in depletion it would hide an athlete who drops too fast.
    Rule(
        id="full-and-sharp",
        name=mark("full and sharp"),
        when=lambda f: f.loading and f.full and f.crisp,
        steps=always(0),
        tells=say_full_and_sharp,
        sources=(e.COMMON_PRACTICE,),
    ),
    Rule(
        id="unwell-and-heavy",
        name=mark("unwell and heavy"),
        forecast=Forecast.SILENT,
        when=lambda f: f.depleting and f.unwell and f.above_band,
        steps=always(0),
        tells=say_unwell_and_heavy,
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda _: True,
    ),
    Rule(
        id="dropping-too-fast",
        name=mark("dropping too fast"),
        when=lambda f: f.depleting and (f.under_band or f.unwell),
        steps=always(1),
        tells=say_dropping,
        sources=(e.COMMON_PRACTICE, e.CHEUVRONT_2004),
        tell_coach=lambda f: f.unwell,
    ),
    Rule(
        id="flat-before-load",
        name=mark("flat before the load"),
        when=lambda f: f.flat,
        steps=always(0),
        tells=lambda told: told.tr(
            "You're flatter than expected ({fullness}, I expected {expected}). That happens before the "
            "load. Stay on plan."
        ),
        sources=(e.COMMON_PRACTICE,),
        tell_coach=lambda f: f.very_flat,
    ),
    Rule(
        id="steady",
        name=mark("all in range"),
        when=lambda _: True,
        steps=always(0),
        tells=say_steady,
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
