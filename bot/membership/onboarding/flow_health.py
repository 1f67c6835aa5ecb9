"""Three lists to tick before a first week: conditions, eating, signs of too little energy."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator

from bot.dialogue.flow import DONE, NONE, Answers, Choice, Choices, InvalidAnswer, Step, said
from bot.words import figures
from bot.words.common import none_of_these_button
from bot.words.languages import (
    Sentence,
    SentenceAbout,
    SentenceBy,
    SentenceOnTwo,
    listed,
    mark,
    tr,
    tr_if,
)
from bot.words.names import cited
from engine.evidence.planning.health import SCOFF_1999
from engine.planning.health_screen import Health, Part, Sign, asked_of, sign_named
from engine.values.athlete import Sex

#: Of these words, and of such as may stand beside them, an answer is that means none of a list.
NONE_OF_IT = mark("no, none, nothing, nope, nah, neither, no one")
BESIDE_NONE = mark(
    "of, these, those, them, that, this, to, all, any, apply, applies, the, above, me, for, here, at, "
    "i, have, everything, both, five, questions, question, answers, thanks, thank, you, luckily"
)
AND = mark("and")
ONLY = mark("only, just, number, numbers, question, questions")

#: What a button says, or, for the five questions on eating, the question as it was published.
SIGNS = {
    Sign.DIABETES: mark("Diabetes or blood sugar"),
    Sign.KIDNEY: mark("Kidneys"),
    Sign.HEART: mark("Heart, rhythm, blood pressure"),
    Sign.FAINTED: mark("Fainted in the last years"),
    Sign.LOW_SODIUM: mark("Low sodium in the blood"),
    Sign.MEDICINES: mark("Medicines"),
    Sign.GUT: mark("Gut disease"),
    Sign.GALLSTONES: mark("Gallstones"),
    Sign.EATING_DISORDER: mark("Eating disorder"),
    Sign.PREGNANT: mark("Pregnant or breastfeeding"),
    Sign.SICK: mark("Do you make yourself sick (vomit) because you feel uncomfortably full?"),
    Sign.CONTROL: mark("Do you worry you have lost control over how much you eat?"),
    Sign.ONE_STONE: mark(
        "Have you recently lost more than one stone (14 lb, 6.35 kg) in a 3 month period?"
    ),
    Sign.FAT: mark("Do you believe yourself to be fat when others say you are too thin?"),
    Sign.FOOD: mark("Would you say that food dominates your life?"),
    Sign.PERIODS_AWAY: mark("No period for 3 months"),
    Sign.PERIODS_IRREGULAR: mark("Periods irregular"),
    Sign.DRIVE_GONE: mark("Sex drive or erections gone"),
    Sign.DRIVE_LOW: mark("Sex drive or erections weaker"),
    Sign.STRESS_FRACTURE: mark("Stress fracture"),
    Sign.ILL_OFTEN: mark("Ill again and again"),
    Sign.ALWAYS_COLD: mark("Always cold"),
    Sign.LOW_MOOD: mark("Low mood on most days"),
    Sign.BAD_SLEEP: mark("Sleeping badly"),
}
#: How people call a condition in a sentence of their own.
CALLED = {
    Sign.DIABETES: mark("diabetes, diabetic, type 1, type 2"),
    Sign.KIDNEY: mark("kidney, kidneys, renal"),
    Sign.HEART: mark("heart, arrhythmia, high blood pressure, hypertension, heart condition"),
    Sign.FAINTED: mark("fainted, faint, passed out, blacked out"),
    Sign.LOW_SODIUM: mark("hyponatraemia, hyponatremia, low sodium"),
    Sign.GUT: mark("crohn, crohns, crohn's, colitis, coeliac, celiac, ibd"),
    Sign.GALLSTONES: mark("gallstone, gallstones"),
    Sign.EATING_DISORDER: mark(
        "eating disorder, eating disorders, anorexia, anorexic, bulimia, bulimic, binge eating"
    ),
    Sign.PREGNANT: mark("pregnant, breastfeeding"),
}
#: Beside one of these, a condition that is named may be nobody's, or somebody else's.
NOT_OWN = mark(
    "no, not, never, none, without, don't, dont, didn't, haven't, mother, mum, mom, father, dad, "
    "sister, brother, family, aunt, uncle, grandmother, grandfather, friend"
)
#: What stands behind a button that is too short to say it.
MEANT = {
    Sign.FAINTED: mark("fainted more than once, or nobody found out why"),
    Sign.LOW_SODIUM: mark("low sodium in the blood (hyponatraemia), ever"),
    Sign.MEDICINES: mark(
        "medicines that shift fluid or salts (for blood pressure, heart, kidneys, hormones, mood), or "
        "you are not sure whether yours do"
    ),
    Sign.GUT: mark("gut disease, such as Crohn's, colitis or coeliac disease"),
    Sign.EATING_DISORDER: mark("an eating disorder, now or earlier"),
    Sign.PREGNANT: mark("pregnant, perhaps pregnant, or breastfeeding"),
    Sign.PERIODS_AWAY: mark(
        "no period for three months or more (contraception that stops them does not count)"
    ),
    Sign.DRIVE_GONE: mark("no sex drive or no morning erections for three months or more"),
    Sign.STRESS_FRACTURE: mark("a stress fracture in the last two years"),
}
#: What a coach does about a sign that is no doctor's matter by itself.
CARE = {
    Sign.GUT: mark(
        "Gut disease: only foods that are known to sit well, and a flare is for the doctor."
    ),
    Sign.GALLSTONES: mark(
        "Gallstones: no fat load, and pain under the right ribs is for a doctor at once."
    ),
    Sign.PERIODS_IRREGULAR: mark("Periods irregular: it can come of too little food."),
    Sign.DRIVE_LOW: mark("Sex drive or erections weaker: it can come of too little food."),
    Sign.ILL_OFTEN: mark("Ill again and again: it can come of too little food."),
    Sign.ALWAYS_COLD: mark("Always cold: it can come of too little food."),
    Sign.LOW_MOOD: mark(
        "Low mood on most days: ask how things are; it can come of too little food."
    ),
    Sign.BAD_SLEEP: mark("Sleeping badly: it can come of too little food."),
}


HEADS = {
    Part.CONDITIONS: mark(
        "Your health first. Tap everything that you have or were ever told about."
    ),
    Part.ENERGY: mark(
        "A body that gets too little energy shows it. Tap what has been so in the last three months."
    ),
}


def ask(part: Part, signs: Iterable[Sign], *, self_coached: bool) -> str:
    """The list with what its lines mean; the five questions on eating stand whole.

    `own` for somebody who coaches themself: then nobody else is told anything.
    """
    if part is Part.EATING:
        head = tr(
            "Five short questions on eating, the same for everybody. Tap each one that you would "
            "answer with yes. There is no wrong answer."
        )
        sees = tr(
            "Nobody sees which you tap: your coach is only told if a doctor should look first."
        )
        below = "\n".join(
            f"{number}. {tr(SIGNS[sign])}" for number, sign in enumerate(signs, start=1)
        )
    else:
        head, sees = tr(HEADS[part]), tr("Your coach sees it.")
        meant = "\n".join(f"• {tr(MEANT[sign])}" for sign in signs if sign in MEANT)
        below = tr("Some of it means:\n{meant}", meant=meant)
    return f"{head if self_coached else f'{head} {sees}'}\n\n{below}"


sign_button = SentenceBy(SIGNS)


def tap_or_type(part: Part) -> str:
    return tr_if(
        part is Part.EATING,
        "Nobody sees what you answer here, so I have passed that on to nobody. Please tap the "
        "numbers of the questions that you would answer with yes, or type them (such as 1 3). If "
        "there is none, tap or type: none of these.",
        "Please tap what is true of you, or type it as it stands on the button. If nothing is, tap or "
        "type: none of these.",
    )


# What the athlete is told


def clearance_first(health: Health, coach_name: str, *, self_coached: bool) -> str:
    """Gentle words, and no figures. `own` for somebody who coaches themself."""
    if self_coached:
        parts = [
            tr(
                "Thank you for answering openly. Some of it is for a doctor to look at before a peak "
                "week, and only a doctor can. Please show a doctor what you are planning. Until then "
                "eat, drink and salt as you usually do. The check-ins start once you have a doctor's "
                "clearance and have noted it on your card."
            )
        ]
    else:
        parts = [
            tr(
                "Thank you for answering openly. Some of it is for a doctor to look at before a peak "
                "week, and only a doctor can. Please show a doctor what you and {coach_name} are "
                "planning. Until then eat, drink and salt as you usually do. {coach_name} knows that "
                "a doctor's clearance comes first, and starts the check-ins once you have it.",
                coach_name=coach_name,
            )
        ]
    if health.eating:
        parts.append(
            tr(
                "If food or your body weighs on your mind, you are not alone with it, and it gets "
                "better with help. A doctor is a good first person to tell."
            )
        )
    if health.floor:
        parts.append(
            tr(
                "At the weight you gave for your height I run no peak week: your body has nothing to "
                "spare for one. If one of the two was mistyped, it can be asked again."
            )
        )
    return "\n\n".join(parts)


# What the coach is told


def lines(health: Health, *, self_coached: bool) -> str:
    """What was answered, a matter a line; of the five questions on eating only what they come to."""
    said = [tr("Doctor's clearance first: {what}", what=_sign(sign)) for sign in health.clearance]
    if health.eating:
        source = cited(SCOFF_1999.citation)
        about = tr(
            "Doctor's clearance first: the short questions on eating. ({source})", source=source
        )
        care = tr(
            "They raise a question and answer none, so please don't ask what was ticked: say that you "
            "are there, and leave food and weight out of it."
        )
        said.append(about if self_coached else f"{about} {care}")
    if health.low_energy:
        said.append(tr("Doctor's clearance first: several signs of too little energy"))
    if health.underweight and not health.floor:
        said.append(
            tr(
                "Doctor's clearance first: underweight for the height (body mass index {bmi})",
                bmi=figures.number(health.bmi, 1),
            )
        )
    if health.floor:
        said.append(
            tr(
                "No peak week: body mass index {bmi} is under what I run one at, with or without a "
                "clearance",
                bmi=figures.number(health.bmi, 1),
            )
        )
    said += [tr("Caution: {what}", what=tr(CARE[sign])) for sign in health.cautions]
    return "\n".join(said) or tr("Health questions: nothing to act on")


def _sign(sign: Sign) -> str:
    return tr(MEANT[sign]) if sign in MEANT else tr(SIGNS[sign]).lower()


#: In place of noting a clearance.
floor_holds = SentenceAbout(
    "At the weight on file for your height I run no peak week, with or without a clearance. "
    "If height or weight was mistyped or has changed, answer them again.",
    "At the weight on file for {name}'s height I run no peak week, with or without a clearance. "
    "If height or weight was mistyped or has changed, I can ask {name} again.",
)
ask_again_button = SentenceAbout("Answer again", "Ask {name} again")
asked_again = SentenceAbout("Asked.", "I am asking {name} for height and weight.")
measures_kept = Sentence("Thank you, height and weight are saved.")
coach_told_measures = SentenceOnTwo("{name} has answered height and weight again.\n\n{lines}")

IN_A_ROW = 5
_GAPS = re.compile(r"[\s,;.&+/]+")
_WORD = re.compile(r"[\w'-]+")
_BETWEEN = re.compile(r"\s*[,;&+/]\s*|\s+(?:and|und)\s+")


def steps(when: Callable[[Answers], bool]) -> tuple[Step, ...]:
    """The three lists, a step each, put where `when` holds."""
    return tuple(_step(part, when) for part in Part)


def ticked(answers: Answers) -> tuple[Sign, ...]:
    """Everything that was ticked or typed, over all lists."""
    return tuple(sign_named(one) for part in Part for one in _flat(answers.get(part.value, [])))


def _step(part: Part, when: Callable[[Answers], bool]) -> Step:
    return Step(
        key=part.value,
        ask=lambda answers: ask(
            part, asked_of(part, Sex(answers["sex"])), self_coached=answers.get("_own", False)
        ),
        read_with=lambda text, answers: _read(text, part, asked_of(part, Sex(answers["sex"]))),
        choices=lambda answers: _choices(part, asked_of(part, Sex(answers["sex"]))),
        when=when,
        many=True,
        private=part is Part.EATING,
        none=none_of_these_button,
    )


def _choices(part: Part, signs: tuple[Sign, ...]) -> Choices:
    """The five questions on eating are tapped by number, as they stand whole in the text above."""
    if part is Part.EATING:
        return ([Choice(str(n), sign.value) for n, sign in enumerate(signs, start=1)],)
    return tuple([Choice(sign_button(sign), sign.value)] for sign in signs)


def _read(text: str, part: Part, signs: tuple[Sign, ...]) -> str | list[str]:
    """Typed: lines by the words of their buttons, questions by their numbers, or none of them."""
    plain = " ".join(text.split()).strip(" .!").casefold()
    if plain == DONE or said(plain, NONE) or _says_none(plain):
        return DONE
    if part is Part.EATING:
        known = {str(number): sign for number, sign in enumerate(signs, start=1)}
        parts = [one for one in _GAPS.split(plain) if one and one not in listed(ONLY)]
    else:
        known = {sign_button(sign).casefold(): sign for sign in signs}
        parts = [plain] if plain in known else [one for one in _BETWEEN.split(plain) if one]
    parts = [one for one in parts if one not in listed(AND)]
    known |= {sign.value: sign for sign in signs}
    if parts and all(one in known for one in parts):
        return [known[one].value for one in parts]
    if part is Part.CONDITIONS and (told := _called(plain, signs)):
        return told
    raise InvalidAnswer(tap_or_type(part))


def _says_none(plain: str) -> bool:
    """Whether it is a none, in whatever words: "no to all of them", "nichts davon trifft zu"."""
    said_so = _WORD.findall(plain)
    none, beside = listed(NONE_OF_IT), listed(BESIDE_NONE)
    return any(one in none for one in said_so) and all(one in none + beside for one in said_so)


def _called(plain: str, signs: tuple[Sign, ...]) -> list[str]:
    """Conditions named in a sentence ("I had an eating disorder at 17"); none where it says of one that
    it is not so, or of somebody else.
    """
    said_so = f" {' '.join(_WORD.findall(plain))} "
    if any(f" {word} " in said_so for word in listed(NOT_OWN)):
        return []
    return [
        sign.value
        for sign in signs
        if sign in CALLED and any(f" {name} " in said_so for name in listed(CALLED[sign]))
    ]


def _flat(answer: object) -> Iterator[str]:
    if isinstance(answer, list):
        for one in answer:
            yield from _flat(one)
    elif isinstance(answer, str) and answer != DONE:
        yield answer
