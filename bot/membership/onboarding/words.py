"""What a new athlete reads, and what their coach is told of the answers."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import time
from typing import Any

from bot.words import figures
from bot.words.common import event_name
from bot.words.languages import (
    Sentence,
    SentenceAbout,
    SentenceBy,
    SentenceOn,
    SentenceOnTwo,
    mark,
    tr,
    tr_if,
)

#: Which text of `cautions` is agreed to; it is kept with the consent, and raised whenever what either
#: text says is changed. A test holds it to them.
CONSENT_VERSION = "2"

#: `own` for somebody who coaches themself.
cautions = SentenceAbout(
    "Hello. You are your own coach here: you set the limits, and every alert comes to you.\n\n"
    "Please read this first:\n"
    "• I am not a doctor, a dietitian or a medical device. I calculate from what you report, "
    "inside the limits that you set. What a doctor or dietitian tells you comes first.\n"
    "• Very low food, big swings of water or salt, and eating a great deal very fast after "
    "long dieting have put people in hospital. I never cut your water or salt.\n"
    "• I say nothing about drugs, diuretics or laxatives. Ask a doctor.\n"
    "• Fainting, chest pain, palpitations, weakness in the limbs, confusion, a fit, trouble "
    "breathing, repeated vomiting or a severe headache: stop, and call your local emergency "
    "number. Don't wait for me. Nobody else reads along unless you name a second contact.\n\n"
    "What you tell me is kept for you, and goes to nobody else but the second contact that you "
    "may name, who only gets alerts. Before you agree I keep nothing but an emergency. "
    "Telegram carries it: chats with a bot are not end-to-end encrypted. You can stop at any "
    "time with /pause.\n\n"
    "Do you understand this, and agree that I keep your answers?",
    "Hello. {coach_name} has invited you to check in here through your peak week.\n\n"
    "Please read this first:\n"
    "• I am not a doctor, a dietitian or a medical device. I calculate from what you report, "
    "inside limits that {coach_name} sets. What a doctor or dietitian tells you comes first.\n"
    "• Very low food, big swings of water or salt, and eating a great deal very fast after long "
    "dieting have put people in hospital. I never cut your water or salt.\n"
    "• I say nothing about drugs, diuretics or laxatives. Ask a doctor.\n"
    "• Fainting, chest pain, palpitations, weakness in the limbs, confusion, a fit, trouble "
    "breathing, repeated vomiting or a severe headache: stop, and call your local emergency "
    "number. Don't wait for me.\n\n"
    "What you tell me (weights, symptoms, how you feel) is kept so that {coach_name} can see it, "
    "and goes to nobody else but the second contact {coach_name} has named, and that one only "
    "gets alerts. Whatever else you write here I pass on to {coach_name}, in your own words. "
    "Before you agree I pass on nothing but an emergency. "
    "Telegram carries it: chats with a bot are not end-to-end encrypted. You can stop at any time "
    "with /pause.\n\n"
    "Do you understand this, and agree that {coach_name} sees your answers?",
)


def agree_again(coach_name: str, *, self_coached: bool) -> str:
    """The question once more, without everything that stands above it."""
    if self_coached:
        return tr("Do you understand what I wrote above, and agree that I keep your answers?")
    return tr(
        "Do you understand what I wrote above, and agree that {coach_name} sees your answers?",
        coach_name=coach_name,
    )


agree_button = Sentence("I understand and agree")
ask_birth_year = Sentence("Which year were you born? (four digits)")
ask_eighteen = Sentence("Have you had your 18th birthday?")
ask_sex = Sentence(
    "Are you female or male? The published figures for water and carbs differ, and so do some of "
    "the health questions."
)
ask_weight_unit = Sentence("Which unit does your scale show?")
ask_volume_unit = Sentence("And how do you measure what you drink?")
ask_place = Sentence(
    "Where are you? I ask by your own clock. Send a city, "
    "or tell me what time it is where you are, such as 14:35."
)
ask_which_place = Sentence("Is it this one? Tap it, so that I have the right clock.")
somewhere_else_button = Sentence("Somewhere else")
other_place_button = Sentence("I am somewhere else")
not_sure_button = Sentence("Not sure")
an_estimate_will_do = Sentence(
    "An honest estimate will do: think of yesterday. The number alone is enough."
)
later_button = Sentence("Body fat, fibre, salt: answer now")
later_known_already = Sentence("You have answered these already.")
later_kept = Sentence("Saved, thank you. They are used from the next plan on.")

SEXES = {"female": mark("Female"), "male": mark("Male")}
SEX_WORDS = {"female": mark("female"), "male": mark("male")}

sex_button = SentenceBy(SEXES)


def ask_prompt_time(place: Mapping[str, str] | None = None) -> str:
    """`place`: the only one of that name, which is taken and said."""
    asked = tr(
        "At what time shall I ask each morning? Best is right after getting up, after the toilet "
        "and before food or drink. Pick a time or type one."
    )
    return f"{place['name']} ({place['zone']}).\n\n{asked}" if place is not None else asked


def prompt_time_range(earliest: time, latest: time) -> str:
    return tr(
        "It has to be between {earliest} and {latest}: a weight is only comparable before "
        "breakfast, and the day's carbs are settled in the morning.",
        earliest=figures.clock(earliest),
        latest=figures.clock(latest),
    )


BASELINE = {
    "carb_g": mark(
        "Last one: what you ordinarily eat and drink a day, lately, in one line. Carbs, protein and "
        "fat in grams, then all drinks together, such as 310 140 55 and 3.5 L or 118 fl oz. "
        "An honest estimate will do."
    ),
    "protein_g": mark("Protein a day, in grams?"),
    "fat_g": mark("Fat a day, in grams?"),
    "fibre_g": mark("Fibre a day, in grams? If you don't count it, say so with the button."),
    "water_l": mark(
        "What do you ordinarily drink a day, all drinks together? Such as 3.5 L or 118 fl oz."
    ),
    "sodium_mg": (
        mark(
            "Sodium a day, in milligrams? (Salt times 0.4: 5 g of salt is 2,000 mg.) "
            "If you don't count it, say so with the button."
        )
    ),
}


def under_age(*, self_coached: bool) -> str:
    """`own`: nobody else coaches them."""
    return tr_if(
        self_coached,
        "Thank you for being straight with me. A peak week is for adults: under 18, your body is "
        "still building itself, and I won't take part in it. Train, eat well, and if food or "
        "weight ever worries you, talk to a parent, a doctor or someone you trust. "
        "None of your answers is kept except this one.",
        "Thank you for being straight with me. A peak week is for adults: under 18, your body is "
        "still building itself, and I won't take part in it. Your coach knows. Train, eat well, and "
        "if food or weight ever worries you, talk to a parent, a doctor or someone you trust. "
        "None of your answers is kept except this one.",
    )


def no_consent(*, self_coached: bool) -> str:
    return tr_if(
        self_coached,
        "That is fine. I keep none of your answers. If you change your mind, send /selfcoach "
        "again.",
        "That is fine. I keep none of your answers and won't write to you. If you change your mind, "
        "ask your coach for a new invitation.",
    )


def all_set(prompt_time: str, coach_name: str, example: str, *, self_coached: bool) -> str:
    """`example`: a check-in in one line, in the reader's units."""
    values = {"prompt_time": prompt_time, "coach_name": coach_name, "example": example}
    if self_coached:
        return tr(
            "All set. I'll ask at {prompt_time} each morning of your peak week, as soon as you have "
            "set the event, the plan and the limits.\n\n"
            "A check-in takes a few taps, or one line: weight, fullness (1 to 10), water, such as\n"
            "{example}\n\n"
            "/today shows the day's targets, /week the whole week, /help the rest.",
            **values,
        )
    return tr(
        "All set. I'll ask at {prompt_time} each morning of your peak week, as soon as {coach_name} "
        "has set the event, the plan and the limits.\n\n"
        "A check-in takes a few taps, or one line: weight, fullness (1 to 10), water, such as\n"
        "{example}\n\n"
        "/today shows the day's targets, /week the whole week, /help the rest.",
        **values,
    )


# Once there is an event to draft a plan for.
later_asked = SentenceOn(
    "Three short questions more make the plan for your {kind} better: body fat, fibre, salt. "
    "Skip what you don't know.",
    event_name,
)
coach_told_later = SentenceOnTwo(
    "{name} has answered the rest of the first questions. A plan drafted from now on uses "
    "them:\n\n{lines}"
)
open_button = SentenceOn("Open {name}")


def coach_told_all_set(name: str, lines: str, *, self_coached: bool) -> str:
    if self_coached:
        return tr("Your answers:\n\n{lines}\n\nNext: the event, the plan, the limits.", lines=lines)
    return tr(
        "{name} is through the first questions:\n\n{lines}\n\nNext: the event, the plan, the "
        "limits.",
        name=name,
        lines=lines,
    )


def coach_told_doctor_first(name: str, lines: str, *, self_coached: bool) -> str:
    return tr_if(
        self_coached,
        "Your answers. Nothing starts before a doctor's clearance:\n\n{lines}",
        "{name} is through the first questions. Caution: a doctor's clearance comes first, so please "
        "don't start before {name} has it.\n\n{lines}",
        name=name,
        lines=lines,
    )


coach_told_under_age = SentenceOn(
    "{name} is under 18. There is no peak week for minors here, so I have closed it kindly."
)
coach_told_no_consent = SentenceOn(
    "{name} did not agree to the cautions, so nothing was started and no answer is kept."
)


def answers_lines(answers: Mapping[str, Any]) -> str:
    """What was answered at onboarding, a line each, in the athlete's own units."""
    lines = [
        ", ".join(_body(answers)),
        _ordinary_day(answers),
        tr(
            "Zone {zone}, asked at {prompt_time}",
            zone=answers["zone"],
            prompt_time=answers["prompt_time"],
        ),
        answers["health"],
    ]
    return "\n".join(lines)


def _ordinary_day(answers: Mapping[str, Any]) -> str:
    fibre, sodium = answers.get("fibre_g"), answers.get("sodium_mg")
    unknown = tr("not counted") if "fibre_g" in answers else tr("not asked yet")
    return tr(
        "Ordinary day: carbs {carb_g:.0f} g, protein {protein_g:.0f} g, fat {fat_g:.0f} g, "
        "fibre {fibre}, water {water}, sodium {sodium}",
        carb_g=answers["carb_g"],
        protein_g=answers["protein_g"],
        fat_g=answers["fat_g"],
        fibre=unknown if fibre is None else figures.grams(fibre),
        water=figures.volume(answers["water_l"], answers["volume_unit"]),
        sodium=unknown if sodium is None else figures.milligrams(sodium),
    )


def _body(answers: Mapping[str, Any]) -> Iterator[str]:
    sex = SEX_WORDS[answers["sex"]]
    yield tr(sex)
    yield tr("born {year}", year=answers["birth_year"])
    yield tr("{height_cm:.0f} cm", height_cm=answers["height_cm"])
    yield figures.weight(answers["body_mass_kg"], answers["weight_unit"])
    fat = answers.get("body_fat_percent")
    yield tr("{fat:.0f} % body fat", fat=fat) if fat else tr("body fat not known")
