"""The lighter check-in of the mornings after a show: how it feels, and the weight, if told."""

from __future__ import annotations

from contextlib import suppress
from functools import partial

from bot.alerts.words_athlete import SYMPTOM_BUTTONS
from bot.dialogue.flow import Answers, Flow, Step, buttons, free_text, one_of, said, two_a_row
from bot.safety.flow_symptom import FINE_WORDS, UNWELL_WORDS
from bot.words.common import kind_word
from bot.words.languages import Sentence, SentenceBy, mark, tr
from engine.written.units import ParseError, WeightUnit, parse_weight

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

symptom_button = SentenceBy(SYMPTOMS)


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


FINE, OFF, SKIP = "fine", "off", "skip"


def _read_feels(text: str, answers: Answers) -> Answers:
    """How it is; a weight that comes before it is kept, and how it is asked once more."""
    plain = text.strip().rstrip(" .!").casefold()
    if said(plain, FINE_WORDS):
        return {"feels": FINE}
    if said(plain, UNWELL_WORDS):
        return {"feels": OFF}
    with suppress(ParseError):
        return {"weight_kg": _read_weight(text, answers)}
    return {"feels": one_of(FINE, OFF)(text)}


def _read_weight(text: str, answers: Answers) -> float | None:
    if text.strip().lower() == SKIP:
        return None
    return parse_weight(text, unit=WeightUnit(answers["_weight_unit"])).kg


#: Context: "_day" (1 to 3), "_name", "_weight_unit".
AFTER_SHOW = Flow(
    id="after-show",
    can_cancel=False,
    steps=(
        Step(
            key="feels",
            ask=lambda answers: ask(answers["_name"], answers["_day"]),
            read_with=_read_feels,
            spreads=True,
            choices=buttons(((fine_button, FINE), (off_button, OFF))),
        ),
        Step(
            key="symptoms",
            ask=ask_what,
            read=free_text,
            free=True,
            choices=two_a_row((partial(symptom_button, s), s) for s in SYMPTOMS),
            when=lambda answers: answers.get("feels") == OFF,
            many=True,
        ),
        Step(
            key="weight_kg",
            ask=ask_weight,
            read_with=_read_weight,
            choices=buttons(((skip_button, SKIP),)),
        ),
    ),
)
