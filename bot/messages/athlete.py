"""What an athlete reads day by day: targets, the week, why, past check-ins, settings, help."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any

from bot.messages.onboarding import VOLUME_UNITS, WEIGHT_UNITS
from bot.messages.outlook import why_lines
from bot.messages.reasons import BOUNDS, reason
from engine.plan import DayTarget
from engine.units import VolumeUnit, WeightUnit, show_volume, show_weight

Decision = Mapping[str, Any]


def day_name(day: date) -> str:
    return f"{day:%A} {day.day} {day:%B}"


def short_day(day: date) -> str:
    return f"{day:%a} {day.day} {day:%b}"


def out(days_out: int) -> str:
    if days_out == 0:
        return "The day"
    return "1 day out" if days_out == 1 else f"{days_out} days out"


def signed(change_g: float) -> str:
    """ "+25", "−25": with a minus that is as wide as the plus."""
    return f"{change_g:+.0f}".replace("-", "−")


def grams_change(carb_g: float, planned_g: float) -> str:
    """The figure against the plan: "(+25 on the plan's 410)", or that it is the plan's."""
    change = carb_g - planned_g
    if abs(change) < 0.5:
        return "(as planned)"
    return f"({signed(change)} on the plan's {planned_g:.0f})"


def target_lines(target: DayTarget, planned_carb_g: float, volume_unit: str) -> str:
    """A day's targets, three short lines."""
    lines = [
        f"Carbs {target.carb_g:.0f} g {grams_change(target.carb_g, planned_carb_g)}",
        f"Protein {target.protein_g:.0f} g · fat {target.fat_g:.0f} g · fibre {target.fibre_g:.0f} g",
        f"Water {show_volume(target.water_l, VolumeUnit(volume_unit))} · "
        f"sodium {target.sodium_mg:,.0f} mg",
    ]
    moving = []
    if target.training:
        moving.append(f"Training: {target.training}")
    if target.cardio_min is not None:
        moving.append(f"cardio {target.cardio_min:.0f} min" if target.cardio_min else "no cardio")
    if target.steps is not None:
        moving.append(f"{target.steps:,} steps")
    if moving:
        line = " · ".join(moving)
        lines.append(line[0].upper() + line[1:])
    return "\n".join(lines)


def target_message(
    day: date, days_out: int, lines: str, why: str, *, lead: str = "", caution: str = ""
) -> str:
    parts = [lead, f"{out(days_out)}, {day_name(day)}\n{lines}", why, caution]
    return "\n\n".join(part for part in parts if part)


def waiting_for_coach(
    coach_name: str, proposed_g: float, stands_g: float, until: str, self_coached: bool
) -> str:
    who = "your own word" if self_coached else f"{coach_name}'s word"
    return (
        f"A larger change is on the table: {proposed_g:.0f} g. It waits for {who} until {until}. "
        f"Unless you hear from me, {stands_g:.0f} g holds, as planned."
    )


BECAUSE = {
    "approved": "Your coach has approved the change.",
    "other-figure": "Your coach has set this figure.",
    "plan-kept": "Your coach keeps the plan.",
    "lapsed": "There was no word in time, so the plan holds.",
    "coach-set": "Your coach has set this day's carbs.",
    "plan-changed": "Your coach has changed the plan.",
    "limits-changed": "Your coach has changed the limits.",
    "lifted": "Your coach has lifted the freeze.",
    "frozen": "Your coach has frozen adjusting: the plan holds until it is lifted.",
    "missed": "No check-in came this morning, so the plan holds.",
    "held": "Your coach holds you at this figure.",
    "hold-ended": "Your coach has ended the hold.",
    "taken-back": "A correction: your coach has taken the last change back.",
}
BECAUSE_ON_YOUR_OWN = BECAUSE | {
    "approved": "You have approved the change.",
    "other-figure": "You have set this figure.",
    "plan-kept": "You keep the plan.",
    "coach-set": "You have set this day's carbs.",
    "plan-changed": "You have changed the plan.",
    "limits-changed": "You have changed the limits.",
    "lifted": "You have lifted the freeze.",
    "frozen": "You have frozen adjusting: the plan holds until you lift it.",
    "held": "You hold this figure.",
    "hold-ended": "You have ended the hold.",
    "taken-back": "The last change is taken back.",
}


def because(key: str, *, own: bool = False) -> str:
    """What came before a target that is sent outside a check-in; "" where that needs no word."""
    return (BECAUSE_ON_YOUR_OWN if own else BECAUSE).get(key, key)


def change_button() -> str:
    return "Change an answer"


def off_button() -> str:
    return "Something's off"


def nudge(first: bool) -> str:
    if first:
        return (
            "Your morning numbers are still missing. Weight first, or all in one line "
            "such as: 61.2 7 3.5"
        )
    return "Last reminder for this morning: without your numbers the plan's figure holds today."


def missed() -> str:
    return (
        "No check-in this morning, so I have told your coach and today stays as planned. "
        "If you can still send your numbers, do: they help tomorrow. /checkin"
    )


def no_week(coach_name: str) -> str:
    return f"{coach_name} has not set the day, the plan and the limits yet, so there is no target."


def no_target(day: date) -> str:
    return f"Your plan has no target for {day_name(day)}."


def week_message(title: str, rows: Sequence[str]) -> str:
    return title + "\n\n" + "\n".join(rows)


def week_title(kind: str, day: date) -> str:
    return f"Towards your {kind} on {day_name(day)}. Carbs, protein, fat in grams, then water."


def week_row(
    days_out: int, day: date, target: DayTarget, planned_g: float, volume_unit: str,
    *, today: bool, fixed: bool,
) -> str:  # fmt: skip
    change = target.carb_g - planned_g
    moved = f" ({signed(change)})" if abs(change) >= 0.5 else ""
    mark = " ← today" if today else ""
    state = "" if fixed else " planned"
    return (
        f"{days_out} out, {short_day(day)}: {target.carb_g:.0f}{moved} / {target.protein_g:.0f} / "
        f"{target.fat_g:.0f}, {show_volume(target.water_l, VolumeUnit(volume_unit))}{state}{mark}"
    )


def why_message(decision: Decision, weight_unit: str, volume_unit: str) -> str:
    """The trace, for a person: gates, what was weighed up, what held it, the sources."""
    trace, band = decision["trace"], decision["band"]
    parts = [reason(decision, weight_unit, volume_unit)]
    unit = WeightUnit(weight_unit)
    weighed = []
    if band is not None:
        weighed.append(
            f"• Weight band for this morning: {show_weight(band['low_kg'], unit)} to "
            f"{show_weight(band['high_kg'], unit)}, {show_weight(band['expected_kg'], unit)} expected"
        )
    facts = trace["facts"]
    if facts:
        weighed.append(
            f"• Fullness {facts['fullness']}, {facts['expected_fullness']} expected"
            + (f"; sharpness {facts['sharpness']}" if facts["sharpness"] is not None else "")
        )
        weighed.append(
            f"• Water {show_volume(facts['water_l'], VolumeUnit(volume_unit))} of "
            f"{show_volume(facts['water_target_l'], VolumeUnit(volume_unit))}"
        )
    stopped = [gate["id"] for gate in trace["gates"] if not gate["passed"]]
    weighed.append(
        f"• Stopped before the rules: {stopped[0].replace('-', ' ')}"
        if stopped
        else f'• All checks before the rules were clear; the rule is "{decision["rule"]}"'
    )
    weighed += why_lines(decision, weight_unit)
    window = trace["window"]
    if window is not None:
        weighed.append(
            f"• Allowed for that day: {window['low']:.0f} to {window['high']:.0f} g; "
            + (
                f"asked for {trace['wanted_g']:.0f} g, held by {BOUNDS.get(decision['bound'], '')}"
                if decision["bound"] and trace["wanted_g"] is not None
                else "no limit was in the way"
            )
        )
    parts.append("\n".join(weighed))
    sources = sorted({source["citation"] for source in decision["sources"]})
    if sources:
        parts.append("Rests on:\n" + "\n".join(f"• {source}" for source in sources))
    return "\n\n".join(parts)


def nothing_decided() -> str:
    return "Nothing has been decided yet. After your next check-in, /why tells how it came about."


def past_message(rows: Sequence[str]) -> str:
    if not rows:
        return "There are no check-ins yet."
    return "Your check-ins, the latest first:\n\n" + "\n".join(rows)


def past_row(
    day: date, weight_kg: float | None, fullness: int | None, sharpness: int | None,
    water_l: float | None, carb_g: float | None, weight_unit: str, volume_unit: str,
) -> str:  # fmt: skip
    parts = [
        show_weight(weight_kg, WeightUnit(weight_unit)) if weight_kg is not None else "no weight",
        f"fullness {fullness}" if fullness is not None else "",
        f"sharpness {sharpness}" if sharpness is not None else "",
        f"water {show_volume(water_l, VolumeUnit(volume_unit))}" if water_l is not None else "",
        f"carbs set {carb_g:.0f} g" if carb_g is not None else "",
    ]
    return f"{short_day(day)}: " + ", ".join(part for part in parts if part)


def settings_message(
    zone: str, prompt_time: str, weight_unit: str, volume_unit: str, paused: bool
) -> str:
    return (
        f"You are asked at {prompt_time}, by the clock of {zone}.\n"
        f"Weight in {WEIGHT_UNITS[weight_unit]}, drinks in {VOLUME_UNITS[volume_unit]}."
        + ("\nPaused: nothing is asked until /resume." if paused else "")
    )


SETTINGS_BUTTONS = {
    "prompt_time": "Another time",
    "place": "Another place",
    "weight_unit": "Weight unit",
    "volume_unit": "Drinks unit",
}


def settings_changed(lines: str) -> str:
    return f"Changed.\n{lines}"


def paused() -> str:
    return (
        "Paused: I won't ask until you send /resume. Your coach knows. The plan's figures stay as "
        "they are, nothing is adjusted meanwhile."
    )


def coach_told_paused(name: str) -> str:
    return f"{name} has paused the check-ins. Nothing is adjusted until they resume."


def coach_told_resumed(name: str) -> str:
    return f"{name} has resumed the check-ins."


def resumed() -> str:
    return "Good to have you back. I'll ask again in the morning."


def not_active(status: str) -> str:
    return {
        "onboarding": "Let's finish the first questions first.",
        "paused": "You have paused. /resume takes it up again.",
        "doctor-first": "A doctor's word comes first. Your coach starts the check-ins after it.",
        "ended": (
            "Nobody coaches you here now, so I ask nothing in the mornings. What you told and what "
            "was decided is yours: /past, /why. A coach's invitation takes it up again."
        ),
        "declined": "Nothing is open for you here. Your coach can send a new invitation.",
    }[status]


def event_over(kind: str) -> str:
    return (
        f"The {kind} is behind you. Eat and drink to appetite, not all at once: after long dieting, "
        "very large meals can upset heart and muscles. Weakness, palpitations, swelling or "
        "breathlessness in the next days: see a doctor at once. I stop asking in the mornings now."
    )


def ask_again_button(key: str) -> str:
    return {
        "weight_kg": "Weight again",
        "fullness": "Fullness",
        "water_l": "Water again",
        "sharpness": "Sharpness",
        "carb_eaten_g": "Carbs again",
    }.get(key, key.replace("_", " "))


def coach_note(name: str, why: str) -> str:
    """To the coach, when a rule wants them to have a look."""
    return f"Note on {name}, for you to look at. They were told:\n{why}"


def not_checked_in_yet() -> str:
    return "You have not checked in this morning, so this is the plan's figure. /checkin"


def not_paused() -> str:
    return "You are not paused: I ask in the mornings of your peak week."


MENU = {
    "checkin": "This morning's numbers",
    "today": "Today's targets",
    "week": "The whole week",
    "picture": "Your week as a picture",
    "why": "How the last figure came about",
    "past": "Your check-ins so far",
    "settings": "Time, place and units",
    "pause": "Stop the morning question",
    "resume": "Take it up again",
}
