"""What a coach reads of a change that waits for their word."""

from __future__ import annotations

from datetime import date

from bot.messages import coach_figures as figures


def proposal(
    *,
    name: str,
    day: date,
    days_out: int,
    planned_g: float,
    proposed_g: float,
    alone_g: float,
    why: str,
    morning: str,
    until: str,
    stands_g: float,
    own: bool,
    foreseen: str = "",
) -> str:
    """The whole proposal. `alone_g`: what goes out without asking; `foreseen`: the chances."""
    when = f"{figures.days_out(days_out)}, {figures.day(day)}"
    change = figures.change(proposed_g - planned_g)
    if own:
        head = f"Your carbs for {when}: a change that wants a second look from you as coach."
        unasked = f"more than the {figures.grams(alone_g)} that you let through without a look"
        quoted = f"Why: {why}"
        lapse = f"Without a tap from you by {until}, {figures.grams(stands_g)} holds."
    else:
        head = f"{name}, {when}: a change that waits for your word."
        unasked = f"more than the {figures.grams(alone_g)} that go out without asking you"
        quoted = f"Why, as {name} will read it: {why}"
        lapse = (
            f"Without a word from you by {until} (their time), {figures.grams(stands_g)} holds, "
            f"and {name} is told so."
        )
    return "\n\n".join(
        part
        for part in (
            head,
            f"Planned {figures.grams(planned_g)}, proposed {figures.grams(proposed_g)} "
            f"({change}; {unasked}).\nThis morning: {morning}.",
            quoted,
            foreseen,
            lapse,
        )
        if part
    )


def approve_button(proposed_g: float, *, own: bool) -> str:
    return f"{'Take' if own else 'Approve'} {figures.grams(proposed_g)}"


def other_button() -> str:
    return "Set another figure"


def keep_button(stands_g: float) -> str:
    return f"Keep the plan, {figures.grams(stands_g)}"


def settled(text: str, what: str) -> str:
    return f"{text}\n\n{what}"


def approved(by: str, carb_g: float, when: str) -> str:
    return f"Approved by {by}, {when}: {figures.grams(carb_g)}."


def other_figure(by: str, carb_g: float | None, when: str) -> str:
    """`carb_g` is None where the day has been set again since."""
    figure = figures.grams(carb_g) if carb_g is not None else "another figure"
    return f"Set by {by}, {when}: {figure}."


def day_set(name: str, day: date, carb_g: float, *, own: bool) -> str:
    whose = "Your" if own else f"{name}'s"
    return f"{whose} {figures.day(day)} is set to {figures.grams(carb_g)}."


def plan_kept(by: str, carb_g: float, when: str) -> str:
    return f"{by} kept the plan, {when}: {figures.grams(carb_g)}."


def lapsed(carb_g: float, when: str) -> str:
    return f"Nobody answered by {when}, so the plan holds: {figures.grams(carb_g)}."


def lapsed_told(name: str, carb_g: float, *, own: bool) -> str:
    whose = "your" if own else f"{name}'s"
    return (
        f"The time to answer about {whose} carbs has passed, so the plan holds: "
        f"{figures.grams(carb_g)}."
        + ("" if own else f" {name} has been told. You can still set the day by hand from /roster.")
    )


def replaced(name: str, *, own: bool) -> str:
    if own:
        return "An answer was changed, so this was decided anew. Use the newer message."
    return f"Something changed since, so {name}'s day was decided anew. Use the newer message."


def in_force_already() -> str:
    return "That is in force already."


def frozen(name: str, *, own: bool) -> str:
    whose = "Your plan" if own else f"{name}'s plan"
    return (
        f"{whose} is frozen, so no figure is changed. The plan can be kept; for anything else, lift "
        "the freeze first, on the card in /roster."
    )


def not_your_decision() -> str:
    return "That is not yours to sign."


def ask_figure(name: str, day: date, planned_g: float, proposed_g: float, *, own: bool) -> str:
    whose = "your" if own else f"{name}'s"
    return (
        f"How many grams of carbs for {whose} {figures.day(day)}? "
        f"Planned {figures.grams(planned_g)}, proposed {figures.grams(proposed_g)}."
    )


def ask_figure_by_hand(name: str, day: date, stands_g: float, *, own: bool) -> str:
    whose = "your" if own else f"{name}'s"
    return (
        f"How many grams of carbs for {whose} {figures.day(day)}? {figures.grams(stands_g)} stands "
        "now. What you set here stays, whatever the check-in says, until you change it."
    )


def past_own_limit(carb_g: float, bound_g: float, label: str) -> str:
    side = "over" if carb_g > bound_g else "under"
    return (
        f"{figures.grams(carb_g)} is {side} your own limit ({label}: {figures.grams(bound_g)}). "
        "Your limits stay as they are. Set it all the same, for this one day?"
    )


def set_anyway_button(carb_g: float) -> str:
    return f"Yes, {figures.grams(carb_g)}"


def rather_not_button() -> str:
    return "No, another figure"


def ask_reason() -> str:
    return "Why, in a few words? It is kept with the change."


def reason_too_short() -> str:
    return "Please send a few words, so that it can be understood later."


def outside_guard_rail(carb_g: float, bound_g: float, citation: str) -> str:
    side = "most" if carb_g > bound_g else "least"
    return (
        f"{figures.grams(carb_g)} is outside what anybody can set here: {figures.grams(bound_g)} "
        f"is the {side} for this body mass. Where that comes from: {citation}."
    )


def day_is_over(name: str) -> str:
    return f"That day is over where {name} is, so nothing was changed."


def morning_line(
    weight: str | None, fullness: int | None, sharpness: int | None, water: str | None
) -> str:
    """The morning's numbers, what was not answered left out."""
    parts = [
        weight,
        f"fullness {fullness}" if fullness is not None else None,
        f"sharpness {sharpness}" if sharpness is not None else None,
        f"water {water}" if water is not None else None,
    ]
    return ", ".join(part for part in parts if part) or "no numbers"
