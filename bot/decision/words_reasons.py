"""Why a day's carbs are what they are: one plain sentence a rule or gate, in the athlete's units."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from bot.words import figures
from bot.words.languages import mark, tr
from bot.words.looks import seen_in
from engine.decision.decide import Decision
from engine.decision.rules import RULES, Forecast
from engine.evidence.deciding import FLAT_BY, FULL_FROM
from engine.values.limits import CAUTION


def change_in_words(change_g: float) -> str:
    if change_g == 0:
        return tr("no change")
    if change_g > 0:
        return tr("{grams:.0f} g more", grams=change_g)
    return tr("{grams:.0f} g less", grams=-change_g)


class _Told:
    """A decision's facts, with the weights and waters as the athlete writes them."""

    def __init__(self, decision: Decision, weight_unit: str, volume_unit: str) -> None:
        self.facts: Mapping[str, Any] = decision.trace.facts
        self._weight_unit = weight_unit
        self._volume_unit = volume_unit
        self.change_g = decision.change_g
        self.change = change_in_words(self.change_g)

    def weight(self, key: str) -> str:
        return figures.weight(self.facts[key], self._weight_unit)

    def water(self, key: str) -> str:
        return figures.volume(self.facts[key], self._volume_unit)

    def __getitem__(self, key: str) -> Any:
        return self.facts[key]

    def get(self, key: str) -> Any:
        """A fact that decisions of an earlier table did not know; None there."""
        return self.facts.get(key)


def _steady(told: _Told) -> str:
    if told["weight_kg"] is None:
        return tr(
            "Fullness {fullness} is in the range I expected. Stay on plan.",
            fullness=told["fullness"],
        )
    values = {"fullness": told["fullness"], "weight": told.weight("weight_kg")}
    if told["above_band"]:
        return tr(
            "Fullness {fullness} is fine, but {weight} is heavier than expected ({band_high} at most). "
            "No extra carbs today. Stay on plan.",
            **values,
            band_high=told.weight("band_high_kg"),
        )
    if told["under_band"]:
        return tr(
            "Fullness {fullness} is fine; {weight} is lighter than expected ({band_low} at least). "
            "Stay on plan.",
            **values,
            band_low=told.weight("band_low_kg"),
        )
    # Decisions of the first table, which had no rule of its own for it.
    if told["fullness_short"] >= FLAT_BY.value:
        return tr(
            "You're flatter than expected ({fullness}, I expected {expected}), but not sharp enough "
            "for more carbs. Stay on plan.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
        )
    if told["sharpness_fall"]:
        return tr(
            "Fullness {fullness} and {weight} are in the range I expected; the lines are a touch "
            "softer. Stay on plan.",
            **values,
        )
    return tr(
        "Fullness {fullness} and {weight} are in the range I expected. Stay on plan.", **values
    )


def _dropping(told: _Told) -> str:
    """What to do about the dizziness itself is said with the complaint, before any target."""
    if told["under_band"]:
        cause = tr(
            "You're lighter than expected ({weight}, {band_low} at least)",
            weight=told.weight("weight_kg"),
            band_low=told.weight("band_low_kg"),
        )
    else:
        cause = tr("You felt dizzy") if told["dizzy"] else tr("You hardly slept")
    if told.change_g > 0:
        return tr("{cause}, so eat {change} today.", cause=cause, change=told.change)
    return tr("{cause}. Stay on plan today.", cause=cause)


def _unwell_and_heavy(told: _Told) -> str:
    first = f"{tr('You felt dizzy')}." if told["dizzy"] else tr("You hardly slept.")
    return (
        first
        + " "
        + tr(
            "You're heavier than expected ({weight}), so more carbs are not the answer. Stay on plan.",
            weight=told.weight("weight_kg"),
        )
    )


def _gut(told: _Told) -> str:
    if told.get("blurring"):
        if told.change_g < 0:
            return tr(
                "Your gut is struggling and the lines have blurred: eat {change} today. Smaller meals, "
                "more of them, only foods that have always sat well.",
                change=told.change,
            )
        return tr(
            "Your gut is struggling and the lines have blurred: no extra carbs. Smaller meals, more of "
            "them, only foods that have always sat well."
        )
    if told.change_g < 0:
        return tr(
            "Your gut is struggling with the load: eat {change} today. Smaller meals, more of them, "
            "only foods that have always sat well.",
            change=told.change,
        )
    return tr(
        "Your gut is struggling with the load: no extra carbs. Smaller meals, more of them, only foods "
        "that have always sat well."
    )


def _spilled(told: _Told) -> str:
    if told.change_g < 0:
        return tr(
            "The lines have blurred (sharpness {sharpness}) and you are full or heavy: that looks "
            "spilled over, or like water. Eat {change} today.",
            sharpness=told["sharpness"],
            change=told.change,
        )
    return tr(
        "The lines have blurred (sharpness {sharpness}) and you are full or heavy: that looks spilled "
        "over, or like water. No extra carbs today.",
        sharpness=told["sharpness"],
    )


def _says_spilled(told: _Told) -> str:
    if told.change_g < 0:
        return tr("You say you've spilled over, so eat {change} today.", change=told.change)
    return tr("You say you've spilled over. No extra carbs today.")


def _fuller(told: _Told) -> str:
    if told.change_g < 0:
        return tr(
            "You're fuller ({fullness}) than this event asks for ({most} at most): eat {change} today.",
            fullness=told["fullness"],
            most=told["fullness_most"],
            change=told.change,
        )
    return tr(
        "You're fuller ({fullness}) than this event asks for ({most} at most). No extra carbs today.",
        fullness=told["fullness"],
        most=told["fullness_most"],
    )


def _softening(told: _Told) -> str:
    if told.change_g < 0:
        return tr(
            "You're full ({fullness}), a touch softer than before and on the heavy side: eat {change} "
            "today.",
            fullness=told["fullness"],
            change=told.change,
        )
    return tr(
        "You're full ({fullness}), a touch softer than before and on the heavy side. No extra carbs "
        "today.",
        fullness=told["fullness"],
    )


def _flat_in_load(told: _Told) -> str:
    if told.change_g > 0:
        return tr(
            "You're flatter than planned ({fullness}, I expected {expected}) and still sharp, so eat "
            "{change} today.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
            change=told.change,
        )
    return tr(
        "You're flatter than planned ({fullness}, I expected {expected}) and still sharp, but more is "
        "not allowed today. Stay on plan.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
    )


def _ahead(told: _Told) -> str:
    if told.change_g < 0:
        return tr(
            "You're fuller than expected already ({fullness}, I expected {expected}), with carbs still "
            "to come: eat {change} today.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
            change=told.change,
        )
    return tr(
        "You're fuller than expected already ({fullness}, I expected {expected}). No extra carbs "
        "today.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
    )


def _blurring(told: _Told) -> str:
    if told.change_g < 0:
        return tr(
            "The lines have blurred (sharpness {sharpness}), and more is planned than there is room "
            "for: eat {change} today.",
            sharpness=told["sharpness"],
            change=told.change,
        )
    return tr(
        "The lines have blurred (sharpness {sharpness}). Usually that's salt, water, sleep or stress. "
        "No extra carbs. Stay on plan.",
        sharpness=told["sharpness"],
    )


def _coach_sees_blur(told: _Told) -> str:
    if told.change_g < 0:
        return tr(
            "Your coach sees blurred lines ({look}), and more is planned than there is room for: eat "
            "{change} today.",
            look=seen_in(told.facts),
            change=told.change,
        )
    return tr(
        "Your coach sees blurred lines ({look}). No extra carbs. Stay on plan.",
        look=seen_in(told.facts),
    )


def _full_and_sharp(told: _Told) -> str:
    values = {"fullness": told["fullness"], "sharpness": told["sharpness"]}
    if told["fullness"] < (told.get("full_from") or FULL_FROM.value):
        return tr(
            "On course (fullness {fullness}, I expected {expected}) and sharp ({sharpness}). Don't "
            "change anything.",
            **values,
            expected=told["expected_fullness"],
        )
    return tr(
        "Full and sharp (fullness {fullness}, sharpness {sharpness}). That's the look. Don't change "
        "anything.",
        **values,
    )


def _drink_too(told: _Told) -> str:
    """After a sentence, with its space: that the water was short as well."""
    if not told.get("underdrunk"):
        return ""
    return " " + tr(
        "You drank {water} of {target}: get back to that, spread over the day.",
        water=told.water("water_l"),
        target=told.water("water_target_l"),
    )


def _coach_sees_too_much(told: _Told) -> str:
    said = {"look": seen_in(told.facts), "fullness": told["fullness"]}
    if told.change_g < 0:
        return tr(
            "Your coach sees: {look}; you said fullness {fullness}. What your coach sees goes first, "
            "so eat {change} today.",
            **said,
            change=told.change,
        )
    return tr(
        "Your coach sees: {look}; you said fullness {fullness}. What your coach sees goes first. No "
        "extra carbs. Stay on plan.",
        **said,
    )


def _coach_sees_flat(told: _Told) -> str:
    said = {"look": seen_in(told.facts), "fullness": told["fullness"]}
    if told.change_g > 0:
        return tr(
            "Your coach sees: {look}; you said fullness {fullness}. You're still sharp, so eat "
            "{change} today.",
            **said,
            change=told.change,
        )
    return tr(
        "Your coach sees: {look}; you said fullness {fullness}. More is not allowed today. Stay on "
        "plan.",
        **said,
    )


def _coach_sees_nothing_flat(told: _Told) -> str:
    return tr(
        "You feel flat ({fullness}, I expected {expected}), but your coach sees: {look}. What your "
        "coach sees goes first. Stay on plan.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
        look=seen_in(told.facts),
    )


_RULES: dict[str, Callable[[_Told], str]] = {
    "gut-unsettled": _gut,
    "coach-sees-spill": _coach_sees_too_much,
    "coach-sees-softening": _coach_sees_too_much,
    "coach-sees-flat-over-blur": lambda told: tr(
        "Your coach sees: {look}; you said fullness {fullness} and sharpness {sharpness}. The two "
        "don't agree, so nothing is moved. Stay on plan.",
        look=seen_in(told.facts),
        fullness=told["fullness"],
        sharpness=told["sharpness"],
    ),
    "coach-sees-blur": _coach_sees_blur,
    "coach-sees-full": _coach_sees_nothing_flat,
    "coach-sees-on-course": _coach_sees_nothing_flat,
    "coach-sees-flat": _coach_sees_flat,
    "spilled-over": _spilled,
    "softening": _softening,
    "says-spilled": _says_spilled,
    "fuller-than-asked": _fuller,
    "flat-and-watery": lambda told: (
        tr(
            "Flat and blurred (fullness {fullness}, sharpness {sharpness}). Usually that's salt, "
            "water, sleep or stress, not carbs. Stay on plan.",
            fullness=told["fullness"],
            sharpness=told["sharpness"],
        )
        + _drink_too(told)
    ),
    "blurring": _blurring,
    "flat-but-heavy": lambda told: (
        tr(
            "You're flatter than expected ({fullness}, I expected {expected}) but heavier than "
            "expected ({weight}, {band_high} at most). Stay on plan.",
            fullness=told["fullness"],
            expected=told["expected_fullness"],
            weight=told.weight("weight_kg"),
            band_high=told.weight("band_high_kg"),
        )
        + _drink_too(told)
    ),
    "underdrunk": lambda told: tr(
        "You're flat, but you drank {water} of {target}, and carbs are stored with water. Get back to "
        "{target} first, spread over the day. No extra carbs today.",
        water=told.water("water_l"),
        target=told.water("water_target_l"),
    ),
    "flat-in-load": _flat_in_load,
    "flat-and-softening": lambda told: tr(
        "You're flatter than expected ({fullness}, I expected {expected}), but the lines are "
        "softening, so no extra carbs. Stay on plan.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
    ),
    "ahead-of-plan": _ahead,
    "full-and-sharp": _full_and_sharp,
    "unwell-and-heavy": _unwell_and_heavy,
    "dropping-too-fast": _dropping,
    "flat-before-load": lambda told: tr(
        "You're flatter than expected ({fullness}, I expected {expected}). That happens before the "
        "load. Stay on plan.",
        fullness=told["fullness"],
        expected=told["expected_fullness"],
    ),
    "steady": _steady,
}

_GATES = {
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


def reason(decision: Decision, weight_unit: str, volume_unit: str, *, own: bool = False) -> str:
    """One to three sentences for the athlete; `own` is somebody without another coach."""
    rule = decision.rule
    if rule in _GATES:
        return tr(_GATES[rule], missing=_missing(decision))
    told = _Told(decision, weight_unit, volume_unit)
    foreseen = "" if rule in SEEN_FIRST else _foreseen(decision, told, own=own)
    said = [foreseen or _RULES[rule](told), _seen_too(told) if foreseen else "", _not_told(told)]
    if decision.bound == CAUTION:
        said.append(tr("I won't add carbs on these numbers."))
    if decision.tell_coach and not own and not foreseen:
        said.append(tr("Your coach will have a look."))
    return " ".join(part for part in said if part)


def _foreseen(decision: Decision, told: _Told, *, own: bool) -> str:
    """The sentence where the forecast, and not the rule alone, made the figure what it is."""
    trace, rule_g = decision.trace, decision.trace.rule_g or 0.0
    if trace.disagree and own:
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
        return tr(
            "Fullness {fullness} this morning. The forecast for the day is best with {change}.",
            fullness=told["fullness"],
            change=told.change,
        )
    return tr(
        "Fullness {fullness} and {weight} this morning. The forecast for the day is best with "
        "{change}.",
        fullness=told["fullness"],
        weight=told.weight("weight_kg"),
        change=told.change,
    )


def _seen_too(told: _Told) -> str:
    """What the coach saw, where the sentence of the rule that says so is not told."""
    look = seen_in(told.facts)
    return tr("Your coach sees: {look}.", look=look) if look else ""


#: The answers of the look inside a sentence.
LOOK_NEEDED = {"fullness": mark("how full you are"), "sharpness": mark("how sharp the lines are")}


def _missing(decision: Decision) -> str:
    """The answers that nothing is decided without, by name."""
    needed = [tr(name) for key, name in LOOK_NEEDED.items() if key in decision.ask_again]
    return figures.each_and(needed)


def _not_told(told: _Told) -> str:
    """What was skipped, where that leaves more doubt."""
    if told["weight_kg"] is None:
        return tr("Without a weight I went by the look alone.")
    if told["water_l"] is None:
        return tr("I don't know how much you drank.")
    return ""
