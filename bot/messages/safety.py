"""What an athlete is told when something may be wrong. Never a drug, never a dose."""

from __future__ import annotations

from collections.abc import Sequence

# The ids are those of engine.symptoms; the nine that lead to a warning come first.
SYMPTOM_BUTTONS = {
    "fainting": "Fainted",
    "palpitations": "Palpitations",
    "chest-pain": "Chest pain",
    "breathlessness": "Short of breath",
    "limb-weakness": "Weak or heavy limbs",
    "confusion": "Confused",
    "severe-headache": "Severe headache",
    "repeated-vomiting": "Vomiting again and again",
    "dizzy": "Dizzy",
    "headache": "Headache",
    "nausea": "Nausea",
    "swollen-hands": "Swollen hands",
    "cramps": "Cramps",
    "diarrhoea": "Diarrhoea",
    "bloating": "Bloated",
    "sleepless": "Hardly slept",
}
# How a symptom is called inside a sentence, where its id would not do.
SYMPTOM_NAMES = {
    "seizure": "a fit (seizure)",
    "limb-weakness": "weak or heavy limbs",
    "breathlessness": "shortness of breath",
    "severe-headache": "a severe headache",
    "repeated-vomiting": "vomiting again and again",
    "severe-gut": "severe gut trouble",
    "dizzy": "dizziness",
    "sleepless": "hardly any sleep",
    "shaky": "feeling shaky",
    "swollen-hands": "swollen hands",
    "urine-dark": "dark urine",
    "no-urine": "no urine",
    "self-harm": "thoughts of harming yourself",
}


IF_WORSE = (
    "If it gets worse, or you faint, have chest pain, palpitations or weak limbs: stop and call "
    "your local emergency number."
)


def symptom_name(symptom: str) -> str:
    """The symptom in words, for a sentence."""
    return SYMPTOM_NAMES.get(symptom, symptom.replace("-", " "))


def emergency(symptoms: Sequence[str]) -> str:
    if "self-harm" in symptoms:
        return despair()
    named = ", ".join(symptom_name(s) for s in symptoms)
    return (
        f"Stop. You reported: {named}.\n\n"
        "This can be dangerous, and it does not wait:\n"
        "• Call your local emergency number now, and say you are dieting for a stage or a shoot.\n"
        "• Don't drive. Don't stay alone: call somebody to you.\n"
        "• No training, no cardio, no sauna. Don't force food or water down.\n\n"
        "I have alerted your coach and keep on until they answer. Nothing in your plan is adjusted "
        "until they lift that. I am not a doctor: what the emergency people say goes."
    )


def despair() -> str:
    """Somebody who writes of harming themselves needs a person, not instructions about carbs."""
    return (
        "I'm glad you wrote that. No stage is worth this, and you should not be alone with it now.\n\n"
        "• If you might act on it: call your local emergency number, or go to the nearest hospital.\n"
        "• Call a crisis line in your country, day or night, or somebody you trust, and say it as "
        "plainly as you said it here.\n"
        "• Leave the diet and the training for today. Eat something.\n\n"
        "I have alerted your coach too and keep on until somebody answers. Nothing in your plan is "
        "adjusted until then."
    )


def emergency_self_coached(symptoms: Sequence[str]) -> str:
    return emergency(symptoms).replace(
        "I have alerted your coach and keep on until they answer. Nothing in your plan is adjusted "
        "until they lift that.",
        "I have alerted your second contact, if you have named one. Nothing in your plan is adjusted "
        "until you lift that, and please do so only with a doctor's word.",
    )


def drug_refusal() -> str:
    return (
        "I can't help with drugs or medicines of any kind: no doses, no timing, nothing. Water pills, "
        "laxatives, potassium, insulin and the like have killed people in peak week. Please ask a "
        "doctor, and tell them about your diet. I have let your coach know that it came up."
    )


def doubtful(symptom: str, words: str) -> str:
    if symptom == "self-harm":
        return (
            f'You wrote "{words}". I have to ask plainly: are you thinking of harming yourself? '
            "Whatever the answer, you need not be alone with it."
        )
    meant = symptom_name(symptom)
    return f'You wrote "{words}". To be sure: do you mean {meant}, now or since yesterday?'


def doubtful_cleared() -> str:
    return "Good. Noted that it is not that."


def told_coach(symptoms: Sequence[str], coach_name: str) -> str:
    named = ", ".join(symptom_name(s) for s in symptoms)
    return f"Noted: {named}. {coach_name} can see it. {IF_WORSE}"


def caution_line(causes: Sequence[str]) -> str:
    return (
        f"This wants a second look: {' '.join(causes)}\nI let your coach know, and nothing is "
        "raised today. If you feel unwell, stop and see a doctor."
    )


def noted_symptoms(symptoms: Sequence[str]) -> str:
    named = ", ".join(symptom_name(s) for s in symptoms)
    return f"Noted: {named}. {IF_WORSE} I have looked at today again with that:"


def warning_seen_to() -> str:
    return (
        "There was a warning today that has been seen to. Nothing is adjusted on such a day, so this "
        "figure stands; adjusting goes on with your next check-in."
    )


def drank_too_fast() -> str:
    return (
        "That is more water in a short time than kidneys can pass, and it can thin the blood's salt "
        "dangerously. Please stop drinking for now, and don't make up for anything later. Headache, "
        "nausea, swollen hands, confusion: get medical help at once. Your coach has been told."
    )
