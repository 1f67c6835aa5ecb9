"""What an athlete is told to do about a complaint: first things first, plain, and never a remedy."""

from __future__ import annotations

from collections.abc import Sequence

from bot.alerts.words_athlete import if_worse
from bot.words.languages import Sentence, mark, tr, tr_if
from bot.words.names import symptom_names
from engine.safety.words import LOW_SODIUM_ADVICE, TOO_FAST_ADVICE
from engine.symptoms import Symptom
from engine.values.level import Level

#: What to do now, by complaint; the graver come first, and two of them are told at most.
ADVICE = {
    "fast-heart": mark(
        "Sit down and rest, no training and no caffeine today. If it does not settle within ten "
        "minutes, or you feel faint or your chest hurts: your local emergency number."
    ),
    "no-urine": mark(
        "Have a doctor look today. If your hands, legs or face swell too: your local emergency number."
    ),
    "urine-dark": mark(
        "No training until a doctor has looked, today. If your muscles hurt or feel weak too: your "
        "local emergency number now."
    ),
    "drying-out": mark(
        "No sauna, and drink again as your plan has it, spread over the day; thirst may always be "
        "quenched. Drying out has killed athletes, and it makes muscles look flat."
    ),
    "fall": mark(
        "Sit down and stay near somebody. If you hit your head or were gone even for a moment, have a "
        "doctor look today."
    ),
    "bleeding": mark(
        "Have a doctor look today. If it does not stop, or it is a lot: your local emergency number."
    ),
    "severe-gut": mark("Have a doctor look today. Smaller meals until then, no new foods."),
    "vomiting": mark(
        "Let your stomach rest, then small sips and plain food. If it comes again, or you feel "
        "confused: your local emergency number."
    ),
    "blurred-vision": mark(
        "Don't drive. Have a doctor look today. If it came suddenly or one side is worse: your local "
        "emergency number."
    ),
    "fever": mark("No training with a fever. Drink to thirst, and have a doctor look if it stays."),
    "dizzy": mark(
        "Sit down until it passes. Then eat something, drink, and salt your food as usual. Train only "
        "once it is gone. Low blood pressure and low iron make people dizzy in a diet: if it comes "
        "back, have a doctor check both."
    ),
    "shaky": mark("Sit down and eat something now. If it does not pass, don't stay alone."),
    "swelling": mark(
        "Drink to thirst and no more. One leg only, or one that hurts: have a doctor look today. A "
        "swollen face, a bad headache, confusion or short breath: your "
        "local emergency number."
    ),
    "swollen-hands": mark(
        "Drink to thirst and no more. A swollen face, a bad headache, confusion or short breath: your "
        "local emergency number."
    ),
    "headache": mark("Rest, eat as planned, and drink no extra water for it."),
    "nausea": mark("Smaller meals, spread out, and drink no extra water for it."),
    "diarrhoea": mark(
        "Plain food, and small sips through the day. If it lasts more than a day or you see blood: a "
        "doctor today."
    ),
    "cramps": mark("For cramps: stop, and stretch gently. Eat, drink and salt as usual."),
    "tingling": mark("If it stays, spreads, or a limb feels weak: your local emergency number."),
    "stomach-pain": mark(
        "Smaller meals. If it is getting worse or you can't stand straight: a doctor now."
    ),
    "constipation": mark("Keep drinking as planned, and walk a little. No laxatives."),
    "bloating": mark("Smaller meals, eaten slowly, and no new foods this week."),
    "sleepless": mark(
        "Take it slowly today. If you are too tired to drive or to train safely, don't."
    ),
    "exhaustion": mark("Take it slowly today, and rest before you train."),
    "unwell": mark("Take it slowly today, and don't train through it."),
}
#: The same where thirst alone counts, because there may be too much water in the blood already.
ADVICE_TO_THIRST = {
    "drying-out": mark(
        "No sauna. Drink when you are thirsty, and no more than that until a doctor has looked."
    ),
    "dizzy": mark(
        "Sit down until it passes, and stay near somebody. Eat something, and drink only to thirst. "
        "Train only once a doctor has looked."
    ),
    "cramps": mark(
        "For cramps: stop, and stretch gently. Eat and salt as usual; drink only to thirst."
    ),
    "constipation": mark("Walk a little, and drink only to thirst. No laxatives."),
}
AT_MOST = 2
#: What is said already where one of these is told as well: smaller meals.
_SAID_WITH = {"bloating": {"stomach-pain", "severe-gut", "nausea"}}


def advice(symptoms: Sequence[str], *, to_thirst: bool = False) -> str:
    """What to do now about the gravest of these. `to_thirst`: nothing tells them to drink more."""
    sentences = ADVICE | ADVICE_TO_THIRST if to_thirst else ADVICE
    told = [
        sentences[symptom]
        for symptom in ADVICE
        if symptom in symptoms and _SAID_WITH.get(symptom, set()).isdisjoint(symptoms)
    ]
    return " ".join(tr(sentence) for sentence in list(dict.fromkeys(told))[:AT_MOST])


def told(
    symptoms: Sequence[str], coach: str, *, warned: bool = False, to_thirst: bool = False
) -> str:
    """To the athlete: that the coach knows, and what to do. `coach` is "" for who coaches themself.

    `warned`: a warning stands, and nothing is said that might go against it (eat, drink, train).
    `to_thirst`: there may be too much water in the blood.
    """
    named = symptom_names(symptoms)
    first = tr_if(coach, "I've told {coach}: {named}.", "Saved: {named}.", coach=coach, named=named)
    if warned:
        return " ".join(part for part in (first, under_a_warning(symptoms)) if part)
    what_to_do = advice(symptoms, to_thirst=to_thirst)
    return " ".join(part for part in (first, what_to_do, if_worse()) if part)


sit_down = Sentence("Sit down until it passes.")


def under_a_warning(symptoms: Sequence[str]) -> str:
    """What is still told of these while a warning stands: what a doctor has to look at."""
    graver = advice([one for one in symptoms if Symptom(one).level is not Level.ADVISORY])
    reels = not {"dizzy", "shaky"}.isdisjoint(symptoms)
    return " ".join(part for part in (sit_down() if reels else "", graver) if part)


def told_at_once(coach: str) -> str:
    """Something nobody could place was written where a complaint was asked for."""
    if not coach:
        return tr("Saved in your words.") + " " + if_worse()
    return tr("I've passed that on to {coach} in your words.", coach=coach) + " " + if_worse()


def low_sodium(coach: str) -> str:
    """Too much water in the blood may be behind it: no more of it, and a doctor."""
    return tr(LOW_SODIUM_ADVICE) + _told(coach)


too_fast = Sentence(TOO_FAST_ADVICE)
#: In place of a target, while that stands.
figures_kept_back = Sentence(
    "Your answers are saved, and your plan stays as it is. I don't send you figures just now; if "
    "you want them, they are under /today."
)


def drank_too_fast(coach: str) -> str:
    return too_fast() + _told(coach)


def _told(coach: str) -> str:
    """After a sentence, with its space; nothing where there is no coach but the reader."""
    return " " + tr("I've told {coach}.", coach=coach) if coach else ""


#: Said gently, and without a figure in it.
MOOD = {
    "purging": mark(
        "Thank you for telling me. That takes a lot to write. It can upset your heart and your salts, "
        "so please let a doctor look at you soon. Don't make up for anything today: no extra cardio, "
        "no skipped meals."
    ),
    "bingeing": mark(
        "Thank you for telling me. It happens to many who diet hard, and it says nothing bad about "
        "you. Don't make up for it: no extra cardio, no skipped meals. Just your next ordinary meal."
    ),
    "starving": mark(
        "Please eat today, ordinary meals and in company if you can. No stage is worth going without, "
        "and nothing is gained by it."
    ),
    "body-hate": mark(
        "I'm sorry it feels like that. A diet this hard bends how you see yourself. You are more than "
        "how you look this week."
    ),
    "low-mood": mark(
        "I'm sorry it is that heavy just now. A hard diet pulls the mood down, and that is no "
        "weakness. Please tell somebody close to you today how it is."
    ),
}


def gently(symptoms: Sequence[str]) -> str:
    """The gentle answer to the gravest of these, without who knows of it; "" where there is none."""
    return next((tr(MOOD[symptom]) for symptom in MOOD if symptom in symptoms), "")


def mood(
    symptoms: Sequence[str], coach: str, helpline: str, *, beside: Sequence[str] = (),
    to_thirst: bool = False,
) -> str:  # fmt: skip
    """To somebody who told of eating, their body or their mood: `coach` "" for who coaches themself.

    `beside`: complaints of the body that were told with it, each of which gets its advice.
    """
    said = gently(symptoms)
    rest = tr_if(
        coach,
        "I've told {coach}, who will talk with you. Your plan stays as it is until then. I don't "
        "send you today's figures now; if you want them, they are under /today.",
        "Your plan stays as it is until you lift that. I don't send you today's figures now; if "
        "you want them, they are under /today. Please talk to somebody about it, a doctor best.",
        coach=coach,
    )
    lines = [
        " ".join(part for part in (said, advice(beside, to_thirst=to_thirst)) if part),
        rest,
        tr("If it gets worse: {helpline}, day or night.", helpline=helpline)
        if helpline
        else tr(
            "If it gets worse, call a crisis line or your local emergency number, day or night."
        ),
    ]
    return "\n\n".join(lines)
