"""What a coach reads of a change that waits for their word."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from bot.words import figures
from bot.words.languages import Sentence, SentenceAbout, SentenceOn, tr, tr_if
from bot.words.names import cited, training_went


@dataclass(frozen=True, slots=True, kw_only=True)
class Proposal:
    """What is put before a coach. `alone_g`: what goes out without asking; `foreseen`: the chances.

    `small`: what stands without an answer is a small step in the same direction, not the plan.
    """

    name: str
    day: date
    days_out: int
    planned_g: float
    proposed_g: float
    alone_g: float
    why: str
    morning: str
    until: str
    default_carb_g: float
    self_coached: bool
    foreseen: str = ""
    small: bool = False


def proposal(of: Proposal) -> str:
    name, why, until, foreseen, small = of.name, of.why, of.until, of.foreseen, of.small
    when = f"{figures.days_out(of.days_out)}, {figures.short_day(of.day)}"
    told = {
        "planned": figures.grams(of.planned_g),
        "proposed": figures.grams(of.proposed_g),
        "change": figures.change(of.proposed_g - of.planned_g),
        "alone": figures.grams(of.alone_g),
        "morning": of.morning,
    }
    stands = figures.grams(of.default_carb_g)
    if of.self_coached:
        parts = (
            tr("Your carbs for {when}: a change for you to approve as your own coach.", when=when),
            tr(
                "Planned {planned}, proposed {proposed} ({change}; you auto-approve up to "
                "{alone}).\nThis morning: {morning}.",
                **told,
            ),
            tr("Why: {why}", why=why),
            foreseen,
            tr(
                "You have {stands} for now: the small step that needs no approval. Answer by "
                "{until}, or it stays.",
                until=until,
                stands=stands,
            )
            if small
            else tr("Answer by {until}, or {stands} stands.", until=until, stands=stands),
        )
    else:
        parts = (
            tr("{name}, {when}: a change for you to approve.", name=name, when=when),
            tr(
                "Planned {planned}, proposed {proposed} ({change}; auto-approved up to "
                "{alone}).\nThis morning: {morning}.",
                **told,
            ),
            tr("Why, as {name} reads it: {why}", name=name, why=why),
            foreseen,
            tr_if(
                small,
                "{name} eats {stands} for now: the small step that needs no approval. Answer by "
                "{until}, or it stays and I tell {name} so.",
                "Answer by {until}, or {stands} stands and I tell {name} so.",
                until=until,
                stands=stands,
                name=name,
            ),
        )
    return "\n\n".join(part for part in parts if part)


tap_to_answer = Sentence("Do you mean this? Tap the number you want, so that there is no mix-up.")
other_button = Sentence("Set another number")
in_force_already = Sentence("That is already set.")
not_your_decision = Sentence("You can't approve this one.")
#: What the load total leaves, in place of a limit's label.
load_room_label = Sentence("load total, what it leaves for this day")
rather_not_button = Sentence("No, another number")
ask_reason = Sentence("Why? A few words; I save them with the change.")
reason_too_short = Sentence("Please send a few words, so you both understand it later.")


def approve_button(proposed_g: float, *, self_coached: bool) -> str:
    if self_coached:
        return tr("Take {proposed}", proposed=figures.grams(proposed_g))
    return tr("Approve {proposed}", proposed=figures.grams(proposed_g))


keep_button = SentenceOn("Keep the plan, {stands}", figures.grams)


def settled(text: str, what: str) -> str:
    return f"{text}\n\n{what}"


def approved(by: str, carb_g: float, when: str) -> str:
    return tr("Approved by {by}, {when}: {carb}.", by=by, when=when, carb=figures.grams(carb_g))


def other_figure(by: str, carb_g: float | None, when: str) -> str:
    """`carb_g` is None where the day has been set again since."""
    if carb_g is None:
        return tr("Set by {by}, {when}: another number.", by=by, when=when)
    return tr("Set by {by}, {when}: {carb}.", by=by, when=when, carb=figures.grams(carb_g))


def day_set(name: str, day: date, carb_g: float, *, self_coached: bool) -> str:
    return tr_if(
        self_coached,
        "Your {day} is set to {carb}.",
        "{name}'s {day} is set to {carb}.",
        name=name,
        day=figures.short_day(day),
        carb=figures.grams(carb_g),
    )


taken_back = SentenceOn("{name} has taken that answer back. Use the newer message.")


def plan_kept(by: str, carb_g: float, when: str) -> str:
    return tr("{by} kept the plan, {when}: {carb}.", by=by, when=when, carb=figures.grams(carb_g))


def lapsed(carb_g: float, when: str, *, small: bool = False) -> str:
    if small:
        return tr(
            "Nobody answered by {when}. The small step stands: {carb}.",
            when=when,
            carb=figures.grams(carb_g),
        )
    return tr("Nobody answered by {when}. On plan: {carb}.", when=when, carb=figures.grams(carb_g))


def lapsed_told(name: str, carb_g: float, *, small: bool) -> str:
    return tr_if(
        small,
        "Too late for this message: {name} was told to eat {carb}, the small step. You can "
        "still set the day by hand from /roster.",
        "Too late for this message: {name} was told to stay on plan, {carb}. You can still set "
        "the day by hand from /roster.",
        name=name,
        carb=figures.grams(carb_g),
    )


def replaced(name: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("You changed an answer, so I worked this out again. Use the newer message.")
    return tr(
        "Something changed, so I worked out {name}'s day again. Use the newer message.", name=name
    )


frozen = SentenceAbout(
    "Your plan is frozen, so I change nothing. You can keep the plan; for anything "
    "else, lift the freeze first (/roster, then your card).",
    "{name}'s plan is frozen, so I change nothing. You can keep the plan; for anything "
    "else, lift the freeze first (/roster, then {name}'s card).",
)


def ask_figure(
    name: str, day: date, planned_g: float, proposed_g: float, *, self_coached: bool
) -> str:
    return tr_if(
        self_coached,
        "How many grams of carbs for your {day}? Planned {planned}, proposed {proposed}.",
        "How many grams of carbs for {name}'s {day}? Planned {planned}, proposed {proposed}.",
        name=name,
        day=figures.short_day(day),
        planned=figures.grams(planned_g),
        proposed=figures.grams(proposed_g),
    )


def ask_figure_by_hand(name: str, day: date, default_carb_g: float, *, self_coached: bool) -> str:
    return tr_if(
        self_coached,
        "How many grams of carbs for your {day}? Now {stands}. What you set stays, "
        "whatever the check-in says, until you change it.",
        "How many grams of carbs for {name}'s {day}? Now {stands}. What you set stays, "
        "whatever the check-in says, until you change it.",
        name=name,
        day=figures.short_day(day),
        stands=figures.grams(default_carb_g),
    )


def past_own_limit(carb_g: float, bound_g: float, label: str) -> str:
    return tr_if(
        carb_g > bound_g,
        "{carb} is over your own limit ({label}: {bound}). Set it anyway, for this one "
        "day? Your limits stay as they are.",
        "{carb} is under your own limit ({label}: {bound}). Set it anyway, for this one day? "
        "Your limits stay as they are.",
        carb=figures.grams(carb_g),
        label=label,
        bound=figures.grams(bound_g),
    )


set_anyway_button = SentenceOn("Yes, {carb}", figures.grams)


def outside_guard_rail(carb_g: float, bound_g: float, citation: str) -> str:
    return tr_if(
        carb_g > bound_g,
        "{carb} is over the safety bound: {bound} is the most for this body mass. Source: "
        "{citation}.",
        "{carb} is under the safety bound: {bound} is the least for this body mass. Source: "
        "{citation}.",
        carb=figures.grams(carb_g),
        bound=figures.grams(bound_g),
        citation=cited(citation),
    )


day_is_over = SentenceOn("That day is over where {name} is, so I changed nothing.")


def morning_line(
    weight: str | None,
    fullness: int | None,
    sharpness: int | None,
    water: str | None,
    training: str | None = None,
) -> str:
    """The morning's numbers, what was not answered left out."""
    parts = [
        weight,
        tr("fullness {fullness}", fullness=fullness) if fullness is not None else None,
        tr("sharpness {sharpness}", sharpness=sharpness) if sharpness is not None else None,
        tr("water {water}", water=water) if water is not None else None,
        training_went(training) if training is not None else None,
    ]
    return ", ".join(part for part in parts if part) or tr("no check-in")
