"""Why a day's carbs are what they are: one plain sentence a rule or gate, in the athlete's units."""

from __future__ import annotations

from bot.decision.reasons.words_rules import BY_RULE
from bot.decision.reasons.words_told import Told, change_in_words
from bot.words import figures
from bot.words.languages import mark, tr
from bot.words.looks import seen_in
from engine.decision.decide import Decision
from engine.decision.kept import InShort
from engine.decision.rule import Forecast
from engine.decision.rules import RULES
from engine.values.limits import CAUTION

GATE_SENTENCES = {
    "warning-flag": mark("Carbs are not adjusted while a warning is open."),
    "frozen": mark("Your coach has frozen adjusting. Stay on plan for now."),
    "coach-override": mark("Your coach has set this figure."),
    "no-plan": mark("Your plan has no target for that day."),
    "eating-or-mood": mark("Your plan stays as it is for now. Your coach knows how you feel."),
    "missing-answer": mark("I still need: {missing}. Stay on plan until then."),
    "implausible-answer": mark("One answer can't be right. Stay on plan until it is corrected."),
    "stale-answer": mark("Those answers are from another day. Stay on plan."),
    "limits-conflict": (
        mark(
            "The plan and your coach's limits don't fit together for this day. Your coach has been "
            "told."
        )
    ),
}

#: Rules that stand on what is seen: their own sentence is told, whatever the forecast adds to it.
SEEN_FIRST = frozenset(rule.id for rule in RULES if rule.forecast is Forecast.DEEPENS)

BOUNDS = {
    "carb_floor_g": mark("the day's floor"),
    "carb_ceiling_g": mark("the day's ceiling"),
    "change_per_day_g": mark("the largest change a day"),
    "load_total_g": mark("the total for the load"),
    # Of decisions made while a last day was allowed half the change.
    "last_day_change": mark("the smaller change allowed so near the day"),
    "guard_rail": mark("the safety bound"),
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
    "eating-or-mood": mark("eating or mood"),
    "limits-conflict": mark("limits conflict"),
}


RULE_NAMES = {
    "gut-unsettled": mark("stomach upset"),
    "coach-sees-spill": mark("the coach sees spill"),
    "coach-sees-softening": mark("the coach sees softening"),
    "coach-sees-flat-over-blur": mark("the coach sees flat, the answers tell of blur"),
    "coach-sees-blur": mark("the coach sees blurred lines"),
    "coach-sees-full": mark("flat in the answers, full to the coach"),
    "coach-sees-on-course": mark("flat in the answers, on course to the coach"),
    "coach-sees-flat": mark("the coach sees flat"),
    "spilled-over": mark("spilled over"),
    "softening": mark("softening"),
    "says-spilled": mark("spilled over in their words"),
    "fuller-than-asked": mark("fuller than asked for"),
    "flat-and-watery": mark("flat and blurred"),
    "blurring": mark("lines blurring"),
    "flat-but-heavy": mark("flat but heavy"),
    "underdrunk": mark("too little water"),
    "flat-in-load": mark("flat in the load"),
    "flat-and-softening": mark("flat and softening"),
    "ahead-of-plan": mark("ahead of the plan"),
    "load-over-usual": mark("a load over the usual one"),
    "load-under-usual": mark("a load under the usual one"),
    "full-and-sharp": mark("full and sharp"),
    "unwell-and-heavy": mark("unwell and heavy"),
    "dropping-too-fast": mark("dropping too fast"),
    "flat-before-load": mark("flat before the load"),
    "steady": mark("all in range"),
}


def rule_name(rule: str) -> str:
    return tr(RULE_NAMES[rule]) if rule in RULE_NAMES else rule.replace("-", " ")


def bound_name(bound: str) -> str:
    """What held a figure, inside a sentence."""
    return tr(BOUNDS[bound]) if bound in BOUNDS else bound


def gate_name(gate: str) -> str:
    return tr(GATE_NAMES[gate]) if gate in GATE_NAMES else gate.replace("-", " ")


def reason(
    decision: Decision | InShort,
    weight_unit: str,
    volume_unit: str,
    *,
    self_coached: bool = False,
    stands_g: float | None = None,
) -> str:
    """One to three sentences for the athlete; `own` is somebody without another coach.

    `stands_g`: the change that is in force while a larger one waits, so that nobody eats the larger.
    """
    rule = decision.rule
    if rule in GATE_SENTENCES:
        return tr(GATE_SENTENCES[rule], missing=_missing(decision))
    told = Told(decision, weight_unit, volume_unit)
    foreseen = "" if rule in SEEN_FIRST else _foreseen(decision, told, self_coached=self_coached)
    in_force = told
    if stands_g is not None:
        in_force = Told(decision, weight_unit, volume_unit, stands_g=stands_g)
    said = [
        foreseen or BY_RULE[rule](in_force),
        _seen_too(told) if foreseen else "",
        _not_told(told),
    ]
    if decision.bound == CAUTION:
        said.append(tr("I won't add carbs on these answers."))
    if decision.tell_coach and not self_coached and not foreseen:
        said.append(tr("Your coach will have a look."))
    return " ".join(part for part in said if part)


def _foreseen(decision: Decision | InShort, told: Told, *, self_coached: bool) -> str:
    """The sentence where the forecast, and not the rule alone, made the figure what it is."""
    trace, rule_g = decision.trace, decision.trace.rule_g or 0.0
    if trace.disagree and self_coached:
        return tr(
            "Going by this morning alone I would have said {change}, but the forecast for the day is "
            "no better with it. Stay on plan.",
            change=change_in_words(rule_g),
        )
    if trace.disagree:
        return tr(
            "Going by this morning alone I would have said {change}, but the forecast for the day is "
            "no better with it. Stay on plan. Your coach has been told.",
            change=change_in_words(rule_g),
        )
    if trace.forecast_g is None or trace.asked_g == trace.rule_g:
        return ""
    if told["weight_kg"] is None:
        return told.tr(
            "Fullness {fullness} this morning. The forecast for the day is best with {change}."
        )
    return told.tr(
        "Fullness {fullness} and {weight} this morning. The forecast for the day is best with "
        "{change}."
    )


def _seen_too(told: Told) -> str:
    """What the coach saw, where the sentence of the rule that says so is not told."""
    look = seen_in(told.facts)
    return tr("Your coach sees: {look}.", look=look) if look else ""


#: The answers of the look inside a sentence.
LOOK_NEEDED = {"fullness": mark("how full you are"), "sharpness": mark("how sharp the lines are")}


def _missing(decision: Decision | InShort) -> str:
    """The answers that nothing is decided without, by name."""
    needed = [tr(name) for key, name in LOOK_NEEDED.items() if key in decision.ask_again]
    return figures.each_and(needed)


def _not_told(told: Told) -> str:
    """What was skipped, where that leaves more doubt."""
    if told["weight_kg"] is None:
        return tr("Without a weight I went by the look alone.")
    if told["water_l"] is None:
        return tr("I don't know how much you drank.")
    return ""
