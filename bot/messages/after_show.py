"""What an athlete reads in the mornings after a show."""

from __future__ import annotations

from bot.languages import mark, tr
from bot.messages.common import kind_word
from bot.messages.safety import SYMPTOM_BUTTONS

#: What is asked about in these days; the serious first.
SYMPTOMS = {
    "limb-weakness": SYMPTOM_BUTTONS["limb-weakness"],
    "palpitations": SYMPTOM_BUTTONS["palpitations"],
    "fainting": SYMPTOM_BUTTONS["fainting"],
    "chest-pain": SYMPTOM_BUTTONS["chest-pain"],
    "breathlessness": SYMPTOM_BUTTONS["breathlessness"],
    "confusion": SYMPTOM_BUTTONS["confusion"],
    "swelling": mark("Swollen legs or feet"),
    "swollen-hands": SYMPTOM_BUTTONS["swollen-hands"],
    "cramps": SYMPTOM_BUTTONS["cramps"],
    "tingling": mark("Tingling"),
    "dizzy": SYMPTOM_BUTTONS["dizzy"],
    "exhaustion": mark("Worn out"),
}


def symptom_button(symptom: str) -> str:
    return tr(SYMPTOMS[symptom])


def over(kind: str, mornings: int) -> str:
    return tr(
        "The {kind} is behind you. Eat and drink to appetite, not all at once: after long dieting, "
        "very large meals can upset heart and muscles for days. Weakness, palpitations, swelling or "
        "breathlessness: see a doctor at once. For {mornings} mornings I ask one short thing.",
        kind=kind_word(kind),
        mornings=mornings,
    )


def ask(name: str, day: int) -> str:
    question = tr("Day {day} after. How is it?", day=day)
    return tr("Good morning, {name}.", name=name) + " " + question if day == 1 else question


def fine_button() -> str:
    return tr("Fine")


def off_button() -> str:
    return tr("Something is off")


def ask_what() -> str:
    return tr("What is it? Tap all that fit, or write it in your own words.")


def ask_weight() -> str:
    return tr(
        "Your weight, if you stepped on the scale? It goes up by some kilos now; that is food and "
        "water."
    )


def skip_button() -> str:
    return tr("Not today")


def fine(last: bool) -> str:
    text = tr("Good. Ordinary meals, to appetite; drink to thirst.")
    return f"{text} {end()}" if last else text


def look_into_it(coach: str, *, own: bool) -> str:
    parts = [
        tr("That is for a doctor to look at, today."),
        "" if own else tr("I have told {coach}.", coach=coach),
        tr(
            "In these days weakness, heavy limbs, palpitations or swelling can come of minerals "
            "falling as food comes back. No large meals until somebody has looked. If it gets worse: "
            "call your local emergency number."
        ),
    ]
    return " ".join(part for part in parts if part)


def rising(*, own: bool) -> str:
    parts = [
        tr("That is a steep rise."),
        "" if own else tr("I have told your coach."),
        tr(
            "Smaller meals, not everything at once; swelling, weakness or palpitations: a doctor at "
            "once."
        ),
    ]
    return " ".join(part for part in parts if part)


def end() -> str:
    return tr(
        "That was the last of these mornings. What went well and what not is worth writing down now."
    )


def coach_told(name: str, said: list[str]) -> str:
    words = "; ".join(tr(SYMPTOMS[text]) if text in SYMPTOMS else text for text in said)
    return tr(
        "{name} says that something is off after the show: {words}. I said: a doctor, today.",
        name=name,
        words=words or tr("no more than that"),
    )
