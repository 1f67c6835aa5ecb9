"""What an athlete reads day by day: targets, the week, why."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any

from bot.words import figures, phases
from bot.words.figures import InChat
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, mark, tr, tr_if, trn
from bot.words.names import seen_in
from bot.words.phases import training_words
from engine.decision import reason as engine_reason
from engine.decision.decide import Decision
from engine.decision.kept import InShort
from engine.decision.reason import BY_GATE
from engine.decision.rules.rule import Told
from engine.values.plan import DayTarget, PeakPlan


def out(days_out: int) -> str:
    if days_out == 0:
        return tr("The day")
    return trn("{number} day out", "{number} days out", days_out)


def signed(change_g: float) -> str:
    """ "+25", "−25": with a minus that is as wide as the plus."""
    return f"{change_g:+.0f}".replace("-", "−")


def grams_change(carb_g: float, planned_g: float) -> str:
    """The figure against the plan: "(+25 on the plan's 410)", or that it is the plan's."""
    change = carb_g - planned_g
    if abs(change) < 0.5:
        return tr("(as planned)")
    return tr(
        "({change} on the plan's {planned_g:.0f})", change=signed(change), planned_g=planned_g
    )


def target_lines(
    target: DayTarget, planned_carb_g: float, volume_unit: str, *,
    to_thirst: bool = False, resting: str | None = None,
) -> str:  # fmt: skip
    """A day's targets in short lines; what is not counted has no figure and stays as always.

    `to_thirst`: water without a figure. `resting`: what stands in place of all training.
    """
    lines = [
        tr(
            "Carbs {carb_g:.0f} g {against_plan}",
            carb_g=target.carb_g,
            against_plan=grams_change(target.carb_g, planned_carb_g),
        ),
        _macros(target),
        _water_and_salt(
            target,
            tr("to thirst, no more") if to_thirst else figures.volume(target.water_l, volume_unit),
        ),
    ]
    if target.fibre_g is None:
        lines.append(tr_if(target.sodium_mg is None, "Salt and fibre as always", "Fibre as always"))
    elif target.sodium_mg is None:
        lines.append(tr("Salt as always"))
    if resting is not None:
        lines.append(resting)
        return "\n".join(lines)
    moving = []
    if target.training:
        moving.append(tr("Training: {training}", training=training_words(target.training)))
    if target.cardio_min:
        moving.append(tr("cardio {minutes:.0f} min", minutes=target.cardio_min))
    elif target.cardio_min is not None:
        moving.append(tr("no cardio"))
    if target.steps is not None:
        moving.append(
            trn("{steps} step", "{steps} steps", target.steps, steps=figures.number(target.steps))
        )
    if moving:
        lines.append(figures.capital(" · ".join(moving)))
    return "\n".join(lines)


def _macros(target: DayTarget) -> str:
    return tr_if(
        target.fibre_g is None,
        "Protein {protein_g:.0f} g · fat {fat_g:.0f} g",
        "Protein {protein_g:.0f} g · fat {fat_g:.0f} g · fibre {fibre_g:.0f} g",
        protein_g=target.protein_g,
        fat_g=target.fat_g,
        fibre_g=target.fibre_g,
    )


def resting_line(coach: str, *, warned: bool) -> str:
    """Why there is no training; `coach` lifts a warning, "" for the reader themself."""
    if not warned:
        return tr("No training and no cardio today, until a doctor has looked")
    if coach:
        return tr("No training, no cardio until {coach} lifts that", coach=coach)
    return tr("No training, no cardio until you lift that")


def _water_and_salt(target: DayTarget, water: str) -> str:
    if target.sodium_mg is None:
        return tr("Water {water}", water=water)
    return tr(
        "Water {water} · sodium {sodium}", water=water, sodium=figures.milligrams(target.sodium_mg)
    )


def target_head(plan: PeakPlan, day: date, days_out: int) -> str:
    """Which day it is, and by the plan what for."""
    phase = phases.of_day(plan, days_out)
    return ": ".join(part for part in (f"{out(days_out)}, {figures.long_day(day)}", phase) if part)


def target_message(head: str, lines: str, why: str, *, lead: str = "", caution: str = "") -> str:
    parts = [lead, f"{head}\n{lines}", why, caution]
    return "\n\n".join(part for part in parts if part)


def waiting_for_coach(
    coach_name: str, proposed_g: float, default_carb_g: float, until: str, *, small: bool = False
) -> str:
    """`coach_name` is "" for who coaches themself. `small`: what stands until then is a small step in
    the same direction, not the plan.
    """
    if small:
        return _small_step_for_now(coach_name, proposed_g, default_carb_g, until)
    return tr_if(
        not coach_name,
        "Stay at {default_carb_g:.0f} g for now, as planned. A change to {proposed_g:.0f} g "
        "waits for your own approval until {until}.",
        "Stay at {default_carb_g:.0f} g for now, as planned. {coach_name} may change it to "
        "{proposed_g:.0f} g by {until}.",
        coach_name=coach_name,
        proposed_g=proposed_g,
        default_carb_g=default_carb_g,
        until=until,
    )


def _small_step_for_now(
    coach_name: str, proposed_g: float, default_carb_g: float, until: str
) -> str:
    return tr_if(
        not coach_name,
        "Eat {default_carb_g:.0f} g for now, a small step. The whole change to {proposed_g:.0f} g "
        "waits for your own approval until {until}; without it the small step stays.",
        "Eat {default_carb_g:.0f} g for now, a small step. {coach_name} may change it to "
        "{proposed_g:.0f} g by {until}; without an answer the small step stays.",
        coach_name=coach_name,
        proposed_g=proposed_g,
        default_carb_g=default_carb_g,
        until=until,
    )


# A reason whose change waits for approval: not yet to be followed.
suggested = SentenceOn("My suggestion, not approved yet: {why}")
# And one whose change was not taken: not to be followed.
had_suggested = SentenceOn("What I had suggested, which is not to be followed: {why}")

BECAUSE = {
    "approved": mark("Your coach has approved the change."),
    "other-figure": mark("Your coach has set this figure."),
    "plan-kept": mark("Your coach keeps the plan."),
    "lapsed": mark("No answer came in time. Stay on plan."),
    "lapsed-small": mark("No answer came in time. The small step stays."),
    "coach-set": mark("Your coach has set this day's carbs."),
    "plan-changed": mark("Your coach has changed the plan."),
    "limits-changed": mark("Your coach has changed the limits."),
    "lifted": mark("Your coach has lifted the freeze."),
    "frozen": mark("Your coach has frozen adjusting. Stay on plan until the freeze is lifted."),
    "missed": mark("No check-in came this morning. Stay on plan."),
    "held": mark("Your coach has set a hold: eat this amount every day."),
    "hold-ended": mark("Your coach has ended the hold."),
    "taken-back": mark("A correction: your coach has taken the last change back."),
}
BECAUSE_ON_YOUR_OWN = BECAUSE | {
    "approved": mark("You have approved the change."),
    "other-figure": mark("You have set this figure."),
    "plan-kept": mark("You keep the plan."),
    "coach-set": mark("You have set this day's carbs."),
    "plan-changed": mark("You have changed the plan."),
    "limits-changed": mark("You have changed the limits."),
    "lifted": mark("You have lifted the freeze."),
    "frozen": mark("You have frozen adjusting. Stay on plan until you lift the freeze."),
    "held": mark("You hold this figure."),
    "hold-ended": mark("You have ended the hold."),
    "taken-back": mark("The last change is taken back."),
}


def because(key: str, *, self_coached: bool = False) -> str:
    """What came before a target that is sent outside a check-in; "" where that needs no word."""
    sentence = (BECAUSE_ON_YOUR_OWN if self_coached else BECAUSE).get(key)
    return tr(sentence) if sentence else key


change_button = Sentence("Change an answer")
nothing_planned_today = Sentence(
    "Saved, thank you. Your plan runs from seven days out, so nothing is adjusted yet."
)


def ask_again_button(key: str) -> str:
    return {
        "weight_kg": tr("Weight again"),
        "fullness": tr("Fullness"),
        "water_l": tr("Water again"),
        "sharpness": tr("Sharpness"),
        "carb_eaten_g": tr("Carbs again"),
    }.get(key, key.replace("_", " "))


#: To the coach, when a rule wants them to have a look.
coach_note = SentenceOnTwo("Info: {name}, for you to look at. I told {name}:\n{why}")
no_plan_yet = SentenceOn(
    "Saved, thank you. {coach_name} has not set the event, the plan and the limits yet, so there "
    "is nothing to adjust. You'll hear from me when there is."
)

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


def bound_name(bound: str) -> str:
    """What held a figure, inside a sentence."""
    return tr(BOUNDS[bound]) if bound in BOUNDS else bound


def gate_name(gate: str) -> str:
    return tr(BY_GATE[gate].name) if gate in BY_GATE else gate.replace("-", " ")


class ToldInChat(InChat, Told):
    """A decision's facts in the language in force."""

    def look(self) -> str:
        return seen_in(self.facts)


def change_in_words(change_g: float) -> str:
    return ToldInChat({}, change_g).change


def reason(
    decision: Decision | InShort,
    weight_unit: str,
    volume_unit: str,
    *,
    self_coached: bool = False,
    stands_g: float | None = None,
) -> str:
    """One to three sentences for the athlete (see `engine.decision.reason`), in their units."""

    def teller(facts: Mapping[str, Any], change_g: float) -> Told:
        told = ToldInChat(facts, change_g)
        told.weight_unit, told.volume_unit = weight_unit, volume_unit
        return told

    return engine_reason.reason(decision, teller, self_coached=self_coached, stands_g=stands_g)
