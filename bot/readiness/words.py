"""What coach and athlete read about whether a peak week is worth it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from bot.words import figures
from bot.words.common import event_name
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, mark, tr
from bot.words.names import cited
from engine.planning.readiness import (
    CONDITIONS,
    Energy,
    Injury,
    Outcome,
    Periods,
    Readiness,
    Reason,
)

PERIODS = {
    Periods.REGULAR: mark("Regular"),
    Periods.IRREGULAR: mark("Irregular"),
    Periods.AWAY: mark("Away for three months or more"),
    Periods.COVERED: mark("Contraception covers them"),
    Periods.UNKNOWN: mark("Not known"),
}
ENERGY = {Energy.GOOD: mark("Good"), Energy.LOW: mark("Low"), Energy.DRAINED: mark("Hardly any")}
INJURIES = {Injury.NONE: mark("None"), Injury.MINOR: mark("Minor"), Injury.SERIOUS: mark("Serious")}

menu = Sentence("Is a peak week worth it?")
mine_anew_button = Sentence("Answer mine again")
answer_button = Sentence("Answer now")
which_athlete = Sentence("Whose?")
about_me_button = Sentence("About myself")
first_questions_first = Sentence("Answer the first questions first; then send /ready again.")
nobody = Sentence("You have no athlete who has answered the first questions yet.")
not_known_button = Sentence("Not known")
ask_body_fat = Sentence("Body fat, in %, if it was measured?")
skinfolds_button = Sentence("From skinfolds")
how_many_folds = Sentence("Please send three or seven numbers with spaces between, in mm.")
ask_weeks = Sentence("How many weeks has the diet run?")
ask_periods = Sentence("Your periods in the last months: how are they?")
ask_energy = Sentence("Your energy on most days lately?")
ask_sleep = Sentence("Sleep on most nights lately, in hours?")
ask_injury = Sentence("Any injury?")
go_on_button = Sentence("Run it anyway")
ask_reason = Sentence("For what reason? It is kept with these answers.")


def due(name: str, kind: str, days_out: int, *, self_coached: bool) -> str:
    values = {"name": name, "kind": event_name(kind), "days": days_out}
    if self_coached:
        return tr(
            "Your {kind} is in {days} days. Is a peak week worth it? A few questions, a minute.",
            **values,
        )
    return tr(
        "{name}'s {kind} is in {days} days. Is a peak week worth it? A few questions, a minute.",
        **values,
    )


def due_for_athlete(kind: str, days_out: int, coach: str) -> str:
    return tr(
        "Your {kind} is in {days} days. Is a peak week worth it? A few short questions on your health; "
        "{coach} answers those on your condition, and you both get the result.",
        kind=event_name(kind), days=days_out, coach=coach,
    )  # fmt: skip


asked_by_coach = SentenceOn(
    "{coach} is looking at whether a peak week is worth it. A few short questions on your health, "
    "and you both get the result."
)
# The coach has answered, the athlete has not.
athlete_open = SentenceOn(
    "Saved. Still open: {name}'s answers on health (periods, energy, sleep, injuries). I have "
    "asked {name}, and you both get the result when they are here."
)
# The athlete has answered, the coach has not.
coach_open = SentenceOn(
    "Saved. Still open: {coach}'s view of your condition. I have asked, and you both get the "
    "result."
)
athlete_answered = SentenceOn(
    "{name} has answered the questions on health. Yours are still open: condition and the diet so "
    "far, a minute."
)

#: Asked for again while the athlete's half is open.
in_place = SentenceOnTwo(
    "You rated {name}'s condition {condition} of 5. Still open: {name}'s answers on health."
)
ask_again_button = SentenceOn("Ask {name} again")
asked_again = SentenceOn("I have asked {name} again.")


def ask_condition(name: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("How lean are you, unpumped and by daylight?")
    return tr("How lean is {name}, unpumped and by daylight?", name=name)


def condition_button(number: int) -> str:
    return f"{number} {tr(CONDITIONS[number])}"


def ask_folds(sites: Sequence[str]) -> str:
    return tr(
        "Three folds in mm: {sites}; such as 8 10 9. Or all seven: chest, midaxillary, "
        "triceps, subscapular, abdomen, suprailiac, thigh.",
        sites=", ".join(tr(site) for site in sites),
    )


def _unit(unit: str) -> str:
    return "kg" if unit == "kg" else "lb"


ask_loss = SentenceOn(
    "How much weight has gone in the last two weeks, in {unit}? 0 for none.", _unit
)
ask_lost = SentenceOn("And over the whole diet so far, in {unit}?", _unit)


def so_far(answers: Mapping[str, Any]) -> str:
    parts = []
    if "condition" in answers:
        parts.append(tr("condition {condition}", condition=answers["condition"]))
    fat = answers.get("folds_fat") or answers.get("body_fat")
    if isinstance(fat, int | float):
        parts.append(tr("body fat {percent} %", percent=figures.plain(fat)))
    if answers.get("weeks") is not None:
        parts.append(tr("{weeks} weeks", weeks=figures.plain(answers["weeks"])))
    return figures.capital(", ".join(parts))


OUTCOMES = {
    Outcome.RUN: mark("Run it: there is something to peak."),
    Outcome.KEEP_DIETING: mark("Keep dieting, no peak week."),
    Outcome.DOCTOR: mark("A doctor first."),
}


def outcome(name: str, found: Readiness, *, self_coached: bool) -> str:
    said = tr(OUTCOMES[found.outcome])
    if not self_coached:
        said = f"{name}. {said}"
    lines = [f"- {reason_text(reason)}" for reason in found.reasons]
    energy = [
        tr("Resting energy about {energy} kcal a day", energy=figures.number(found.resting_kcal))
    ]
    if found.availability is not None:
        energy.append(
            tr(
                "energy availability of the habitual day about {energy} kcal per kg lean mass, "
                "training taken off as an hour of lifting",
                energy=figures.plain(round(found.availability)),
            )
        )
    reckoned = tr("{figures}. Estimates all.", figures="; ".join(energy))
    return "\n\n".join(["\n".join([said, *lines]), reckoned])


def outcome_for_athlete(found: Readiness, coach: str) -> str:
    """The same result as the athlete reads it: the outcome and what speaks for it, no estimates."""
    said = tr(ATHLETES_OUTCOMES[found.outcome], coach=coach)
    reasons = [reason for reason in found.reasons if reason.id not in FOR_THE_COACH]
    return "\n".join([said, *(f"- {reason_text(reason, to_athlete=True)}" for reason in reasons)])


ATHLETES_OUTCOMES = {
    Outcome.RUN: mark("Result: a peak week is worth it. {coach} has it too."),
    Outcome.KEEP_DIETING: mark("Result: no peak week yet. Talk with {coach} about how to go on."),
    Outcome.DOCTOR: mark(
        "Result: see a doctor first. Until then eat, drink and salt as usual. {coach} has it too."
    ),
}
#: Asides to the coach about their own rating.
FOR_THE_COACH = {"body-fat-doubts"}
ATHLETES_REASONS = {
    "not-lean": mark("Condition {condition} of 5: it is too early for a peak week.")
}


def reason_text(reason: Reason, *, to_athlete: bool = False) -> str:
    facts = {name: _shown(reason.id, name, value) for name, value in reason.facts.items()}
    said = (ATHLETES_REASONS if to_athlete else {}).get(reason.id, REASON_WORDS[reason.id])
    return f"{tr(said, **facts)} ({cited(reason.source.citation)})"


REASON_WORDS = {
    "screening": mark("A health answer still waits for a doctor's clearance."),
    "injury-serious": mark("A serious injury is for a doctor to look at."),
    "periods-away": mark("Periods have been away for three months or more."),
    "bmi-low": mark("Body mass index is {bmi}."),
    "lost-much": mark("{percent} % of body mass has gone over the diet."),
    "availability-very-low": mark("Energy availability is very low, about {kcal_per_kg}."),
    "not-lean": mark("Condition {condition} of 5: there is fat left that no peak week hides."),
    "lean": mark("Condition {condition} of 5."),
    "body-fat-doubts": mark(
        "Body fat of {percent} % sits oddly with that rating (over {usual} %); look again."
    ),
    "loss-too-fast": mark(
        "Weight is going at {percent} % a week, which is too fast: eat more first."
    ),
    "loss-fast": mark("Weight is going at {percent} % a week, which is fast."),
    "availability-low": mark("Energy availability is low, about {kcal_per_kg}."),
    "periods-irregular": mark(
        "Irregular periods can come of too little energy: worth a doctor's look."
    ),
    "energy-low": mark("Energy has been low lately, which can come of eating too little."),
    "diet-long": mark("The diet has run for {weeks} weeks."),
    "sleep-short": mark("Sleep is short, {hours} h."),
    "injury-minor": mark("A minor injury: train around it, and nothing new."),
}


def agreed_button(outcome: str) -> str:
    return tr("OK, a doctor first") if outcome == Outcome.DOCTOR else tr("OK, no peak week")


def agreed(outcome: str) -> str:
    if outcome == Outcome.DOCTOR:
        return tr("OK. Until a doctor has looked, eat, drink and salt as usual.")
    return tr("OK. The event stands; without a plan no peak week runs.")


reason_kept = SentenceOn("Saved: {reason}")
no_measures = SentenceOn("{name} has not answered the first questions yet.")

#: Facts of reasons that are shown to a tenth; hours are shown as given, all others whole.
TENTHS = {
    ("bmi-low", "bmi"),
    ("body-fat-doubts", "percent"),
    ("loss-too-fast", "percent"),
    ("loss-fast", "percent"),
}


def _shown(reason: str, fact: str, value: float) -> str:
    if fact == "hours":
        return figures.plain(value)
    places = 1 if (reason, fact) in TENTHS else 0
    return figures.in_digits(f"{value:.{places}f}")
