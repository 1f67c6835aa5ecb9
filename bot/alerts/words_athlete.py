"""What an athlete is told when something may be wrong. Never a drug, never a dose."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

from bot.words import figures
from bot.words.figures import InChat
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr, tr_if
from bot.words.names import symptom_name, symptom_names
from engine.safety import FlagId, finding
from engine.safety import words as engine_words
from engine.safety.flag import OfFinding
from engine.safety.words import WORDED

# The ids are those of engine.symptoms; the nine that lead to a warning come first.
SYMPTOM_BUTTONS = {
    "fainting": mark("Fainted"),
    "palpitations": mark("Palpitations"),
    "chest-pain": mark("Chest pain"),
    "breathlessness": mark("Short of breath"),
    "limb-weakness": mark("Weak or heavy limbs"),
    "confusion": mark("Confused"),
    "severe-headache": mark("Severe headache"),
    "repeated-vomiting": mark("Vomiting again and again"),
    "dizzy": mark("Dizzy"),
    "headache": mark("Headache"),
    "nausea": mark("Nausea"),
    "swollen-hands": mark("Swollen hands"),
    "cramps": mark("Cramps"),
    "diarrhoea": mark("Diarrhoea"),
    "bloating": mark("Bloated"),
    "sleepless": mark("Hardly slept"),
}


IF_WORSE = mark(
    "If it gets worse, or you faint, have chest pain, palpitations or weak limbs: stop and call "
    "your local emergency number."
)

symptom_button = SentenceBy(SYMPTOM_BUTTONS)


def if_worse() -> str:
    return tr(IF_WORSE)


def emergency(symptoms: Sequence[str], coach: str, helpline: str = "") -> str:
    if "self-harm" in symptoms:
        return despair(coach, helpline)
    return _stop(symptoms) + tr(
        "I have alerted {coach} and keep on until somebody answers. Nothing in your plan is adjusted "
        "until {coach} lifts that. I am not a doctor: what the emergency people say goes.",
        coach=coach,
    )


def _stop(symptoms: Sequence[str]) -> str:
    named = symptom_names(symptoms)
    sentences = tr(
        "Stop. You reported: {named}.\n\n"
        "This can be dangerous, and it does not wait:\n"
        "• Call your local emergency number now, and say you are dieting for a stage or a shoot.\n"
        "• Don't drive. Don't stay alone: call somebody to you.\n"
        "• No training, no cardio, no sauna. Don't force food or water down.",
        named=named,
    )
    return sentences + "\n\n"


def despair(coach: str, helpline: str = "", *, self_coached: bool = False) -> str:
    """Somebody who writes of harming themselves needs a person, not instructions about carbs."""
    alerted = (
        tr("I have alerted your second contact, if you have named one.")
        if self_coached
        else tr("I have alerted {coach} too and keep on until somebody answers.", coach=coach)
    )
    text = tr(
        "I'm glad you wrote that. No stage is worth this, and you should not be alone with it now.\n\n"
        "• If you might act on it: call your local emergency number, or go to the nearest hospital.\n"
        "• {crisis_line}\n"
        "• Leave the diet and the training for today. Eat something.",
        crisis_line=crisis_line(helpline),
    )
    return f"{text}\n\n{alerted} " + tr("Nothing in your plan is adjusted until then.")


def crisis_line(helpline: str) -> str:
    """Whom to call, day or night: as whoever runs the bot has put it, or in general."""
    return tr_if(
        helpline,
        "Call {helpline}, or somebody you trust, and say it as plainly as you said it here.",
        "Call a crisis line in your country, day or night, or somebody you trust, and say it as "
        "plainly as you said it here.",
        helpline=helpline,
    )


def emergency_self_coached(symptoms: Sequence[str], helpline: str = "") -> str:
    if "self-harm" in symptoms:
        return despair("", helpline, self_coached=True)
    return _stop(symptoms) + tr(
        "I have alerted your second contact, if you have named one. Nothing in your plan is adjusted "
        "until you lift that, and please do so only once a doctor says so. I am not a doctor: what "
        "the emergency people say goes."
    )


def could_not_be_handled(coach: str, helpline: str = "", *, self_coached: bool = False) -> str:
    """Words that may tell of danger made the bot fail. `coach`: who has them, "" for nobody."""
    parts = [
        tr(
            "Something went wrong on my side: I could not make anything of your last message, and it "
            "may be about something dangerous."
        ),
        tr(
            "I have sent it to {coach} as it stands, and keep on until somebody answers.",
            coach=coach,
        )
        if coach
        else "",
        tr("I have alerted your second contact, if you have named one.") if self_coached else "",
        tr(
            "If you don't feel well, stop: no training, no cardio, no sauna, don't drive, don't stay "
            "alone. If it may be serious, call your local emergency number now."
        ),
        crisis_line(helpline),
    ]
    return "\n\n".join(part for part in parts if part)


def warning_stands(symptoms: Sequence[str], coach: str, *, self_coached: bool) -> str:
    """Something else was told while a warning is open: its advice holds, and is not shouted again."""
    named = symptom_names(symptoms)
    until = (
        tr("until you have lifted the freeze")
        if self_coached
        else tr("until {coach} has lifted the freeze", coach=coach)
    )
    return tr_if(
        "self-harm" in symptoms,
        "Nothing in your plan is adjusted {until}. You need not be alone with it.",
        "The warning still stands ({named}): no training, no cardio, nothing adjusted {until}. If it "
        "is still going on: your local emergency number.",
        named=named,
        until=until,
    )


def rests_until_talked(*, self_coached: bool) -> str:
    """Why nothing is adjusted, where a warning or the mood has stopped it and not the coach's hand."""
    if self_coached:
        return tr("Nothing is adjusted until you lift the freeze.")
    return tr("Adjusting is frozen until your coach has talked with you and lifted it.")


answers_saved = Sentence("Your answers are saved.")
decided_anew = Sentence("With that, today's target is now:")
fine_button = Sentence("I'm fine")
unwell_button = Sentence("I feel unwell")
emergency_button = Sentence("It's an emergency")
tap_how_you_are = Sentence(
    "Please tap how you are: I'm fine, I feel unwell, or it's an emergency. In an emergency call "
    "your local emergency number first."
)
ask_what_is_wrong = Sentence(
    "I'm sorry. What is it? Tap all that fit, or write it in your own words."
)
ask_pulse = Sentence(
    "Can you take your pulse? Sit for five minutes, count the beats for half a minute, and "
    "double them."
)
ask_urine = Sentence("What colour was your urine last time?")
warning_seen_to = Sentence(
    "There was a warning today that has been seen to. Nothing is adjusted on such a day, so this "
    "figure stands; adjusting goes on with your next check-in."
)
tap_urine = Sentence("Please tap the colour that comes closest.")
drug_refusal = SentenceOn(
    "I can't help with drugs or medicines of any kind: no doses, no timing, nothing. Water pills, "
    "laxatives, potassium, insulin and the like have killed people in peak week. Please ask a "
    "doctor, and tell them about your diet. I have let {coach} know that it came up."
)


def doubtful(symptom: str, words: str) -> str:
    if symptom == "self-harm":
        return tr(
            'You wrote "{words}". I have to ask plainly: are you thinking of harming yourself? '
            "Whatever the answer, you need not be alone with it.",
            words=words,
        )
    if symptom == "limb-weakness":
        return tr(
            'You wrote "{words}". To be sure: are your arms or legs so weak, now or since yesterday, '
            "that it is hard to stand up, climb stairs or hold things? Tired muscles are a no.",
            words=words,
        )
    meant = symptom_name(symptom)
    return tr(
        'You wrote "{words}". To be sure: do you mean {meant}, now or since yesterday?',
        words=words,
        meant=meant,
    )


def asked_once_more(question: str) -> str:
    return tr("I have not heard from you, so I ask once more.") + "\n" + question


def doubtful_cleared(coach: str) -> str:
    if not coach:
        return tr("Good, then that is settled.")
    return tr("Good. I've told {coach} that it is not that.", coach=coach)


def is_something_wrong(concern: str, words: str) -> str:
    if concern == "mood":
        return tr('You wrote "{words}". How are you? Is something wrong with you?', words=words)
    return tr('You wrote "{words}". Is something wrong with you?', words=words)


#: Four steps of the colour chart with its eight (Armstrong 1994), by the number each stands for.
URINE_COLOURS = {
    2: mark("Clear or pale"),
    4: mark("Yellow"),
    6: mark("Dark yellow"),
    8: mark("Brown"),
}

urine_button = SentenceBy(URINE_COLOURS)


def glad_you_are_fine(coach: str) -> str:
    if not coach:
        return tr("Good to hear.")
    return tr("Good to hear. I've told {coach} that you are fine.", coach=coach)


#: Behind the advice on too much water, in the days after a show.
and_no_large_meals = Sentence(
    "No training and no large meals until a doctor has looked: in these days minerals in your blood "
    "can fall as well, now that you eat more."
)


def look_into_it(coach: str, *, self_coached: bool) -> str:
    parts = [
        tr("See a doctor today."),
        "" if self_coached else tr("I have told {coach}.", coach=coach),
        tr(
            "In these days weakness, heavy limbs, palpitations or swelling can mean that "
            "minerals in your blood are falling now that you eat more. No large meals until a "
            "doctor has looked. If it gets worse, call your local emergency number."
        ),
    ]
    return " ".join(part for part in parts if part)


def stays_with_you(*, self_coached: bool) -> str:
    """Of what was told before somebody has agreed that it is passed on or kept."""
    if self_coached:
        return tr("I have not saved that, because you have not agreed yet.")
    return tr("I have told nobody of that, because you have not agreed yet.")


class _InChat(InChat, OfFinding):
    """A finding's facts in the language in force, in the athlete's units."""

    def __init__(
        self, facts: Mapping[str, Any], name: str, weight_unit: str, volume_unit: str
    ) -> None:
        super().__init__(facts, name)
        self.weight_unit, self.volume_unit = weight_unit, volume_unit

    def plain(self, value: float) -> str:
        return figures.plain(value)

    def symptoms(self, ids: Iterable[str]) -> str:
        return symptom_names(ids)


def cause(
    flag: str, facts: Mapping[str, Any], *, name: str = "", weight_unit: str, volume_unit: str
) -> str:
    """What was found; `name` is whose words are quoted, "" for the reader's own."""
    return engine_words.cause(finding(flag), _InChat(facts, name, weight_unit, volume_unit))


def line(flag: FlagId, facts: Mapping[str, Any], *, weight_unit: str, volume_unit: str) -> str:
    """The finding for the athlete; "" where they are told otherwise."""
    says = WORDED[flag].line
    return says(_InChat(facts, "", weight_unit, volume_unit)) if says is not None else ""


def together(lines: Sequence[str], coach: str, *, no_raise: bool) -> str:
    """All of a morning's, and who knows of them. `coach` is "" for who coaches themself."""
    said = " ".join(dict.fromkeys(line for line in lines if line))
    if not no_raise:
        return said
    known = (
        tr("I've told {coach}, and I won't add carbs on these answers.", coach=coach)
        if coach
        else tr("I won't add carbs on these answers.")
    )
    return f"{said} {known}".strip()
