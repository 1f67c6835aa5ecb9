"""What an athlete reads in the mornings after a show."""

from __future__ import annotations

from bot.alerts.words_athlete import SYMPTOM_BUTTONS
from bot.words.common import kind_word
from bot.words.languages import Sentence, mark, tr

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
        "Your {kind} is over. Eat and drink to appetite, not all at once: after long dieting, "
        "very large meals can upset heart and muscles for days. Weakness, palpitations, "
        "swelling or breathlessness: see a doctor at once. I ask you one short question on "
        "each of the next {mornings} mornings.",
        kind=kind_word(kind),
        mornings=mornings,
    )


def ask(name: str, day: int) -> str:
    question = tr("Day {day} after. How do you feel?", day=day)
    return tr("Good morning, {name}.", name=name) + " " + question if day == 1 else question


fine_button = Sentence("Fine")
off_button = Sentence("Something's wrong")
ask_what = Sentence("What is it? Tap all that fit, or write it in your own words.")
ask_weight = Sentence(
    "Your weight, if you stepped on the scale? It goes up by a few kilos now; that is food "
    "and water."
)
skip_button = Sentence("Not today")
end = Sentence(
    "That was my last question. It is worth writing down now what went well and what did not."
)


def fine(last: bool) -> str:
    text = tr("Good. Ordinary meals, to appetite; drink to thirst.")
    return f"{text} {end()}" if last else text


def rising(*, self_coached: bool) -> str:
    parts = [
        tr("Your weight has gone up fast."),
        "" if self_coached else tr("I have told your coach."),
        tr(
            "Eat smaller meals, not everything at once. Swelling, weakness or palpitations: "
            "see a doctor at once."
        ),
    ]
    return " ".join(part for part in parts if part)


def coach_told(name: str, said: list[str]) -> str:
    words = "; ".join(tr(SYMPTOMS[text]) if text in SYMPTOMS else text for text in said)
    return tr(
        "{name} reports after the show: {words}. I said: see a doctor today. Please call.",
        name=name,
        words=words or tr("no more than that"),
    )
