"""What an athlete reads of their week, their past mornings and their settings."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from typing import Any

from bot.decision.words_forecast import why_lines
from bot.decision.words_target import bound_name, gate_name, signed
from bot.words import figures
from bot.words.common import kind_word
from bot.words.figures import volume_unit_name, weight_unit_name
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr
from bot.words.names import cited, rule_name, seen_in
from engine.decision.decide import Decision
from engine.values.checkin import CheckIn
from engine.values.limits import Window
from engine.values.plan import DayTarget
from engine.written.units import Towards

menu_checkin = Sentence("This morning's check-in")
menu_today = Sentence("Today's targets")
menu_week = Sentence("The whole week")
menu_why = Sentence("How the last figure came about")
menu_past = Sentence("Your check-ins so far")
menu_settings = Sentence("Time, place and units")
menu_pause = Sentence("Stop the morning question")
menu_resume = Sentence("Take it up again")
paused = Sentence(
    "Paused: I won't ask until you send /resume. Your coach knows. The plan's figures stay as "
    "they are, nothing is adjusted meanwhile."
)
resumed = Sentence("Good to have you back. I'll ask again in the morning.")
not_checked_in_yet = Sentence(
    "You have not checked in this morning, so this is the plan's figure. /checkin"
)
not_paused = Sentence("You are not paused: I ask in the mornings of your peak week.")
no_week = SentenceOn(
    "{coach_name} has not set the event, the plan and the limits yet, so there is no target."
)
no_target = SentenceOn(
    "Your plan has no target for {day}. /week shows the days it has.", figures.long_day
)


def for_a_day(day: date, what: str) -> str:
    """What holds for a day to come, where another one is asked for."""
    return tr("For {day}: {what}", day=figures.long_day(day), what=what)


def week_message(title: str, rows: Sequence[str]) -> str:
    return title + "\n" + "\n".join(rows)


def week_title(kind: str, day: date) -> str:
    return tr(
        "Towards your {kind} on {day}. Carbs, protein, fat in grams, then water.",
        kind=kind_word(kind),
        day=figures.long_day(day),
    )


def week_heading(phase: str) -> str:
    """Above the days that are for the same."""
    return f"\n{phase}"


def week_row(
    planned: DayTarget, target: DayTarget, day: date, volume_unit: str, *, fixed: bool
) -> str:
    change = target.carb_g - planned.carb_g
    moved = f" ({signed(change)})" if abs(change) >= 0.5 else ""
    carbs = f"{target.carb_g:.0f}{moved}"
    row = tr(
        "{days_out} out, {day}: {carbs} / {protein_g:.0f} / {fat_g:.0f}, {water}",
        days_out=planned.days_out,
        day=figures.short_day(day),
        carbs=carbs,
        protein_g=target.protein_g,
        fat_g=target.fat_g,
        water=figures.volume(target.water_l, volume_unit),
    )
    return row if fixed else f"{row} " + tr("planned")


def on_today(row: str) -> str:
    """The row of today, marked as that."""
    return f"{row} ← " + tr("today")


def past_message(rows: Sequence[str]) -> str:
    if not rows:
        return tr("There are no check-ins yet.")
    return tr("Your check-ins, the latest first:") + "\n\n" + "\n".join(rows)


def past_row(checkin: CheckIn, carb_g: float | None, weight_unit: str, volume_unit: str) -> str:
    kg, litres = checkin.weight_kg, checkin.water_l
    parts = [figures.weight(kg, weight_unit) if kg is not None else tr("no weight")]
    if checkin.fullness is not None:
        parts.append(tr("fullness {score}", score=checkin.fullness))
    if checkin.sharpness is not None:
        parts.append(tr("sharpness {score}", score=checkin.sharpness))
    if litres is not None:
        parts.append(tr("water {water}", water=figures.volume(litres, volume_unit)))
    if carb_g is not None:
        parts.append(tr("carbs set {carb_g:.0f} g", carb_g=carb_g))
    return f"{figures.short_day(checkin.date)}: " + ", ".join(parts)


def settings_message(
    zone: str, prompt_time: str, weight_unit: str, volume_unit: str, paused: bool
) -> str:
    lines = [
        tr(
            "You are asked at {prompt_time}, by the clock of {zone}.",
            prompt_time=prompt_time,
            zone=zone,
        ),
        tr(
            "Weight in {weight_unit}, drinks in {volume_unit}.",
            weight_unit=weight_unit_name(weight_unit),
            volume_unit=volume_unit_name(volume_unit),
        ),
    ]
    if paused:
        lines.append(tr("Paused: nothing is asked until /resume."))
    return "\n".join(lines)


SETTINGS_BUTTONS = {
    "prompt_time": mark("Another time"),
    "place": mark("Another place"),
    "weight_unit": mark("Weight unit"),
    "volume_unit": mark("Drinks unit"),
}

settings_button = SentenceBy(SETTINGS_BUTTONS)


def settings_changed(lines: str) -> str:
    return tr("Changed.") + "\n" + lines


coach_told_paused = SentenceOn(
    "{name} has paused the check-ins. Nothing is adjusted until they resume."
)
coach_told_resumed = SentenceOn("{name} has resumed the check-ins.")


def why_message(decision: Decision, why: str, weight_unit: str, volume_unit: str) -> str:
    """`why`, and the trace, for a person: gates, what was weighed up, what held it, the sources."""
    parts = [why]
    weighed = [
        *_seen(decision, weight_unit, volume_unit),
        _stopped_or_clear(decision),
        *why_lines(decision, weight_unit),
    ]
    if decision.trace.window is not None:
        weighed.append(_allowed(decision, decision.trace.window))
    parts.append("\n".join(f"• {line}" for line in weighed))
    sources = sorted({cited(source.citation) for source in decision.sources})
    if sources:
        parts.append(tr("Based on:") + "\n" + "\n".join(f"• {source}" for source in sources))
    return "\n\n".join(parts)


def _seen(decision: Decision, weight_unit: str, volume_unit: str) -> Iterator[str]:
    facts: Mapping[str, Any] = decision.trace.facts
    band = decision.band
    if band is not None:
        yield tr(
            "Weight expected this morning: {low} to {high}, most likely {expected}",
            low=figures.weight(band.low_kg, weight_unit, Towards.LEAST),
            high=figures.weight(band.high_kg, weight_unit, Towards.MOST),
            expected=figures.weight(band.expected_kg, weight_unit),
        )
    if not facts:
        return
    look = []
    if facts["fullness"] is not None:
        look.append(
            tr(
                "Fullness {fullness}, expected {expected}",
                fullness=facts["fullness"],
                expected=facts["expected_fullness"],
            )
        )
    if facts["sharpness"] is not None:
        look.append(tr("sharpness {score}", score=facts["sharpness"]))
    if look:
        yield "; ".join(look)
    if coach_sees := seen_in(facts):
        yield tr("The coach sees: {look}", look=coach_sees)
    if facts["water_l"] is not None:
        yield tr(
            "Water {water} of {target}",
            water=figures.volume(facts["water_l"], volume_unit),
            target=figures.volume(facts["water_target_l"], volume_unit),
        )


def _stopped_or_clear(decision: Decision) -> str:
    stopped = [gate.id for gate in decision.trace.gates if not gate.passed]
    if stopped:
        return tr("No rule was used: {gate}", gate=gate_name(stopped[0]))
    return tr("All safety checks were clear. Rule: {rule}", rule=rule_name(decision.rule))


def _allowed(decision: Decision, window: Window) -> str:
    wanted_g, low, high = decision.trace.wanted_g, window.low, window.high
    if not decision.bound or wanted_g is None:
        return tr(
            "Allowed for that day: {low:.0f} to {high:.0f} g; no limit applied", low=low, high=high
        )
    return tr(
        "Allowed for that day: {low:.0f} to {high:.0f} g; the rule wanted {wanted_g:.0f} g, "
        "limited by: {limit}",
        low=low,
        high=high,
        wanted_g=wanted_g,
        limit=bound_name(decision.bound),
    )


nothing_decided = Sentence(
    "Nothing has been decided yet. After your next check-in, /why shows how I decide."
)
