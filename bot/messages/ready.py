"""What a coach reads about whether a peak week is worth it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from bot.messages.coach_plan import KIND_WORDS
from engine.readiness import CONDITIONS, Injury, Outcome, Periods, Readiness, Reason

PERIODS = {
    Periods.REGULAR: "Regular",
    Periods.IRREGULAR: "Irregular",
    Periods.AWAY: "Away for three months or more",
    Periods.COVERED: "Contraception covers them",
    Periods.UNKNOWN: "Not known",
}
INJURIES = {Injury.NONE: "None", Injury.MINOR: "Minor", Injury.SERIOUS: "Serious"}


def menu() -> str:
    return "Is a peak week worth it?"


def due(name: str, kind: str, days_out: int, *, own: bool) -> str:
    whose = "Your" if own else f"{name}'s"
    return (
        f"{whose} {KIND_WORDS[kind]} is in {days_out} days. Is a peak week worth it? A few questions, "
        "a minute."
    )


def answer_button() -> str:
    return "Answer now"


def which_athlete() -> str:
    return "Whose?"


def nobody() -> str:
    return "You have no athlete who has answered the first questions yet."


def ask_condition(name: str, *, own: bool) -> str:
    who = "are you" if own else f"is {name}"
    return f"How lean {who}, unpumped and by daylight?"


def condition_button(number: int) -> str:
    return f"{number} {CONDITIONS[number]}"


def not_known_button() -> str:
    return "Not known"


def ask_body_fat() -> str:
    return "Body fat, in %, if it was measured?"


def skinfolds_button() -> str:
    return "From skinfolds"


def ask_folds(sites: Sequence[str]) -> str:
    return (
        f"Three folds in mm: {', '.join(sites)}; such as 8 10 9. Or all seven: chest, midaxillary, "
        "triceps, subscapular, abdomen, suprailiac, thigh."
    )


def how_many_folds() -> str:
    return "Please send three or seven numbers with spaces between, in mm."


def ask_loss(unit: str) -> str:
    return f"How much weight has gone in the last two weeks, in {_unit(unit)}? 0 for none."


def ask_lost(unit: str) -> str:
    return f"And over the whole diet so far, in {_unit(unit)}?"


def _unit(unit: str) -> str:
    return "kg" if unit == "kg" else "lb"


def ask_weeks() -> str:
    return "How many weeks has the diet run?"


def ask_periods(*, own: bool) -> str:
    return "Your periods?" if own else "Her periods?"


def ask_sleep() -> str:
    return "Sleep on most nights lately, in hours?"


def ask_injury() -> str:
    return "Any injury?"


def so_far(answers: Mapping[str, Any]) -> str:
    parts = []
    if "condition" in answers:
        parts.append(f"condition {answers['condition']}")
    fat = answers.get("folds_fat") or answers.get("body_fat")
    if isinstance(fat, int | float):
        parts.append(f"body fat {fat:g} %")
    if answers.get("weeks") is not None:
        parts.append(f"{answers['weeks']:g} weeks")
    text = ", ".join(parts)
    return text[:1].upper() + text[1:]


OUTCOMES = {
    Outcome.RUN: "Run it: there is something to peak.",
    Outcome.KEEP_DIETING: "Keep dieting, no peak week.",
    Outcome.DOCTOR: "A doctor first.",
}


def outcome(name: str, found: Readiness, *, own: bool) -> str:
    lead = "" if own else f"{name}. "
    lines = [f"- {reason_text(reason)}" for reason in found.reasons]
    figures = [f"Resting energy about {found.resting_kcal:,.0f} kcal a day"]
    if found.availability is not None:
        figures.append(
            f"energy availability of the habitual day about {found.availability:.0f} kcal per kg lean "
            "mass, training taken off as an hour of lifting"
        )
    return (
        f"{lead}{OUTCOMES[found.outcome]}\n"
        + "\n".join(lines)
        + f"\n\n{'; '.join(figures)}. Estimates all."
    )


def reason_text(reason: Reason) -> str:
    said = REASON_WORDS[reason.id].format_map(reason.facts)
    return f"{said} ({reason.source.citation})"


REASON_WORDS = {
    "screening": "An answer of the health screening still waits for a doctor's word.",
    "injury-serious": "A serious injury is for a doctor to look at.",
    "periods-away": "Periods have been away for three months or more.",
    "bmi-low": "Body mass index is {bmi:.1f}.",
    "lost-much": "{percent:.0f} % of body mass has gone over the diet.",
    "availability-very-low": "Energy availability is very low, about {kcal_per_kg:.0f}.",
    "not-lean": "Condition {condition:.0f} of 5: there is fat left that no peak week hides.",
    "lean": "Condition {condition:.0f} of 5.",
    "body-fat-doubts": (
        "Body fat of {percent:.1f} % sits oddly with that rating (over {usual:.0f} %); look again."
    ),
    "loss-too-fast": "Weight is going at {percent:.1f} % a week, which is too fast: eat more first.",
    "loss-fast": "Weight is going at {percent:.1f} % a week, which is fast.",
    "availability-low": "Energy availability is low, about {kcal_per_kg:.0f}.",
    "periods-irregular": "Irregular periods can come of too little energy: worth a doctor's look.",
    "diet-long": "The diet has run for {weeks:.0f} weeks.",
    "sleep-short": "Sleep is short, {hours:g} h.",
    "injury-minor": "A minor injury: train around it, and nothing new.",
}


def go_on_button() -> str:
    return "Go on all the same"


def agreed_button() -> str:
    return "So be it"


def agreed(outcome: str) -> str:
    if outcome == Outcome.DOCTOR:
        return "Noted. Until a doctor has looked, eat and drink as usual."
    return "Noted. The event stands; without a plan no peak week runs."


def ask_reason() -> str:
    return "For what reason? It is kept with these answers."


def reason_empty() -> str:
    return "That was empty. Send a few words on why you go on."


def reason_kept(reason: str) -> str:
    return f"Kept: {reason}"


def settled() -> str:
    return "That is settled already."


def no_measures(name: str) -> str:
    return f"{name} has not answered the first questions yet."
