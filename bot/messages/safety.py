"""What an athlete is told when something may be wrong. Never a drug, never a dose."""

from __future__ import annotations

from collections.abc import Sequence

from bot.languages import mark, tr

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
# How a symptom is called inside a sentence.
SYMPTOM_NAMES = {
    "chest-pain": mark("chest pain"),
    "fainting": mark("fainting"),
    "palpitations": mark("palpitations"),
    "confusion": mark("confusion"),
    "headache": mark("headache"),
    "nausea": mark("nausea"),
    "vomiting": mark("vomiting"),
    "swelling": mark("swelling"),
    "blurred-vision": mark("blurred vision"),
    "cramps": mark("cramps"),
    "tingling": mark("tingling"),
    "stomach-pain": mark("stomach pain"),
    "diarrhoea": mark("diarrhoea"),
    "constipation": mark("constipation"),
    "bloating": mark("bloating"),
    "fever": mark("fever"),
    "exhaustion": mark("exhaustion"),
    "seizure": mark("a fit (seizure)"),
    "limb-weakness": mark("weak or heavy limbs"),
    "breathlessness": mark("shortness of breath"),
    "severe-headache": mark("a severe headache"),
    "repeated-vomiting": mark("vomiting again and again"),
    "severe-gut": mark("severe gut trouble"),
    "dizzy": mark("dizziness"),
    "sleepless": mark("hardly any sleep"),
    "shaky": mark("feeling shaky"),
    "swollen-hands": mark("swollen hands"),
    "urine-dark": mark("dark urine"),
    "no-urine": mark("no urine"),
    "self-harm": mark("thoughts of harming yourself"),
    "stroke-signs": mark("signs of a stroke"),
    "heavy-bleeding": mark("heavy bleeding"),
    "double-vision": mark("double vision"),
    "muscle-breakdown": mark("dark urine with muscle pain"),
    "fall": mark("a fall"),
    "fast-heart": mark("a fast heart at rest"),
    "bleeding": mark("bleeding"),
    "drying-out": mark("drying out (sauna, no drinking)"),
    "purging": mark("vomiting or laxatives on purpose"),
    "bingeing": mark("a binge"),
    "starving": mark("not eating"),
    "body-hate": mark("being at war with your body"),
    "low-mood": mark("feeling very low"),
    "unwell": mark("feeling unwell"),
}


IF_WORSE = mark(
    "If it gets worse, or you faint, have chest pain, palpitations or weak limbs: stop and call "
    "your local emergency number."
)


def symptom_name(symptom: str) -> str:
    """The symptom in words, for a sentence."""
    name = SYMPTOM_NAMES.get(symptom)
    return tr(name) if name else symptom  # in the person's own words


def symptom_button(symptom: str) -> str:
    return tr(SYMPTOM_BUTTONS[symptom])


def if_worse() -> str:
    return tr(IF_WORSE)


def emergency(symptoms: Sequence[str]) -> str:
    if "self-harm" in symptoms:
        return despair()
    return _stop(symptoms) + tr(
        "I have alerted your coach and keep on until they answer. Nothing in your plan is adjusted "
        "until they lift that. I am not a doctor: what the emergency people say goes."
    )


def _stop(symptoms: Sequence[str]) -> str:
    named = ", ".join(symptom_name(s) for s in symptoms)
    sentences = tr(
        "Stop. You reported: {named}.\n\n"
        "This can be dangerous, and it does not wait:\n"
        "• Call your local emergency number now, and say you are dieting for a stage or a shoot.\n"
        "• Don't drive. Don't stay alone: call somebody to you.\n"
        "• No training, no cardio, no sauna. Don't force food or water down.",
        named=named,
    )
    return sentences + "\n\n"


def despair() -> str:
    """Somebody who writes of harming themselves needs a person, not instructions about carbs."""
    return tr(
        "I'm glad you wrote that. No stage is worth this, and you should not be alone with it now.\n\n"
        "• If you might act on it: call your local emergency number, or go to the nearest hospital.\n"
        "• Call a crisis line in your country, day or night, or somebody you trust, and say it as "
        "plainly as you said it here.\n"
        "• Leave the diet and the training for today. Eat something.\n\n"
        "I have alerted your coach too and keep on until somebody answers. Nothing in your plan is "
        "adjusted until then."
    )


def emergency_self_coached(symptoms: Sequence[str]) -> str:
    if "self-harm" in symptoms:
        return despair()
    return _stop(symptoms) + tr(
        "I have alerted your second contact, if you have named one. Nothing in your plan is adjusted "
        "until you lift that, and please do so only with a doctor's word. I am not a doctor: what the "
        "emergency people say goes."
    )


def drug_refusal() -> str:
    return tr(
        "I can't help with drugs or medicines of any kind: no doses, no timing, nothing. Water pills, "
        "laxatives, potassium, insulin and the like have killed people in peak week. Please ask a "
        "doctor, and tell them about your diet. I have let your coach know that it came up."
    )


def doubtful(symptom: str, words: str) -> str:
    if symptom == "self-harm":
        return tr(
            'You wrote "{words}". I have to ask plainly: are you thinking of harming yourself? '
            "Whatever the answer, you need not be alone with it.",
            words=words,
        )
    meant = symptom_name(symptom)
    return tr(
        'You wrote "{words}". To be sure: do you mean {meant}, now or since yesterday?',
        words=words,
        meant=meant,
    )


def doubtful_cleared() -> str:
    return tr("Good. Noted that it is not that.")


def told_coach(symptoms: Sequence[str], coach_name: str) -> str:
    named = ", ".join(symptom_name(s) for s in symptoms)
    return tr(
        "Noted: {named}. {coach_name} can see it. {if_worse}",
        named=named,
        coach_name=coach_name,
        if_worse=if_worse(),
    )


def caution_line(causes: Sequence[str]) -> str:
    return tr(
        "This wants a second look: {causes}\nI let your coach know, and nothing is raised today. If "
        "you feel unwell, stop and see a doctor.",
        causes=" ".join(causes),
    )


def noted_symptoms(symptoms: Sequence[str]) -> str:
    named = ", ".join(symptom_name(s) for s in symptoms)
    return tr(
        "Noted: {named}. {if_worse} I have looked at today again with that:",
        named=named,
        if_worse=if_worse(),
    )


def warning_seen_to() -> str:
    return tr(
        "There was a warning today that has been seen to. Nothing is adjusted on such a day, so this "
        "figure stands; adjusting goes on with your next check-in."
    )


def drank_too_fast() -> str:
    return tr(
        "That is more water in a short time than kidneys can pass, and it can thin the blood's salt "
        "dangerously. Please stop drinking for now, and don't make up for anything later. Headache, "
        "nausea, swollen hands, confusion: get medical help at once. Your coach has been told."
    )
