"""What an athlete reads in the mornings after a show."""

from __future__ import annotations

from bot.messages.safety import SYMPTOM_BUTTONS

#: What is asked about in these days; the serious first.
SYMPTOMS = {
    key: SYMPTOM_BUTTONS[key]
    for key in (
        "limb-weakness", "palpitations", "fainting", "chest-pain", "breathlessness", "confusion",
    )
} | {
    "swelling": "Swollen legs or feet",
    "swollen-hands": "Swollen hands",
    "cramps": "Cramps",
    "tingling": "Tingling",
    "dizzy": "Dizzy",
    "exhaustion": "Worn out",
}  # fmt: skip


def over(kind: str, mornings: int) -> str:
    return (
        f"The {kind} is behind you. Eat and drink to appetite, not all at once: after long dieting, "
        "very large meals can upset heart and muscles for days. Weakness, palpitations, swelling or "
        f"breathlessness: see a doctor at once. For {mornings} mornings I ask one short thing."
    )


def ask(name: str, day: int) -> str:
    greeting = f"Good morning, {name}. " if day == 1 else ""
    return f"{greeting}Day {day} after. How is it?"


def fine_button() -> str:
    return "Fine"


def off_button() -> str:
    return "Something is off"


def ask_what() -> str:
    return "What is it? Tap all that fit, or write it in your own words."


def ask_weight() -> str:
    return (
        "Your weight, if you stepped on the scale? It goes up by some kilos now; that is food and "
        "water."
    )


def skip_button() -> str:
    return "Not today"


def fine(last: bool) -> str:
    text = "Good. Ordinary meals, to appetite; drink to thirst."
    return f"{text} {end()}" if last else text


def look_into_it(coach: str, *, own: bool) -> str:
    told = "" if own else f" I have told {coach}."
    return (
        f"That is for a doctor to look at, today.{told} In these days weakness, heavy limbs, "
        "palpitations or swelling can come of minerals falling as food comes back. No large meals "
        "until somebody has looked. If it gets worse: call your local emergency number."
    )


def rising(*, own: bool) -> str:
    told = "" if own else " I have told your coach."
    return (
        f"That is a steep rise.{told} Smaller meals, not everything at once; swelling, weakness or "
        "palpitations: a doctor at once."
    )


def end() -> str:
    return "That was the last of these mornings. What went well and what not is worth writing down now."


def coach_told(name: str, said: list[str]) -> str:
    words = "; ".join(SYMPTOMS.get(text, text) for text in said) or "no more than that"
    return f"{name} says that something is off after the show: {words}. I said: a doctor, today."
