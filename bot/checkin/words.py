"""The words of the morning check-in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from bot.words import figures
from bot.words.common import kind_word, shown
from bot.words.languages import Sentence, SentenceBy, SentenceOn, SentenceOnTwo, mark, tr, trn
from bot.words.names import symptom_name, training_went
from engine.values.checkin import TrainingDone

Answers = dict[str, Any]


def morning(name: str, days_out: int | None, kind: str, phase: str = "") -> str:
    """The line above the first question of the morning. `phase`: what the plan has the day for."""
    if days_out is None:
        return tr("Good morning, {name}.", name=name)
    if days_out == 0:
        return tr(
            "Good morning, {name}. This is the day of your {kind}.", name=name, kind=kind_word(kind)
        )
    greeting = trn(
        "Good morning, {name}. {number} day out.",
        "Good morning, {name}. {number} days out.",
        days_out,
        name=name,
    )
    return f"{greeting} {figures.capital(phase)}." if phase else greeting


def ask_weight(answers: Answers) -> str:
    unit = {"kg": "kg", "lb": "lb", "st": tr("st and lb")}[answers["_weight_unit"]]
    question = tr("Your weight this morning, in {unit}?", unit=unit)
    greeting = answers.get("_greeting")
    if not greeting or answers.get("_again"):  # one answer is changed, or asked for once more
        return question
    line = example(answers)
    how = (
        tr("(Or all in one line: weight, fullness, water and sharpness, such as {line})", line=line)
        if answers.get("_wants_sharpness")
        else tr("(Or all in one line: weight, fullness and water, such as {line})", line=line)
    )
    return f"{greeting}\n{question}\n{how}"


def example(answers: Answers) -> str:
    """A morning in one line in the reader's own units, near what they usually tell."""
    habit = answers.get("_habit", {})
    kg = habit.get("weight_kg") or habit.get("on_file_kg") or 61.2
    litres = answers.get("_water_target_l") or 3.5
    parts = [
        bare(figures.weight(kg, answers["_weight_unit"]), " kg", " lb"),
        "7",
        bare(
            figures.volume(litres, answers["_volume_unit"]), " L", " ml", " US fl oz", " imp fl oz"
        ),
        *(["4"] if answers.get("_wants_sharpness") else []),
    ]
    return " ".join(parts)


def bare(shown: str, *units: str) -> str:
    for unit in units:
        shown = shown.removesuffix(unit)
    return shown.removesuffix(".0").removesuffix(",0")


no_scale_button = Sentence("No scale today")
do_not_know_button = Sentence("I don't know")
ask_fullness = Sentence("Fullness, 1 to 10?\n1 = completely flat, 10 = as full as you can get")
ask_water = Sentence("What did you drink yesterday, all drinks together? Tap or type.")
ask_sharpness = Sentence("Sharpness, 1 to 5?\n1 = blurred, 5 = crisp")
ask_training = Sentence("Did yesterday's training and cardio go as planned?")
use_training_buttons = Sentence("Please tap one, or type as planned, less, more or none.")
ask_fine = Sentence("Anything else going on?")
all_fine_button = Sentence("All fine")
ask_symptoms = Sentence("What is it? Tick all that fit, or write it in your own words.")
ask_gut = Sentence("How is your stomach?")
ask_sleep = Sentence("Hours of sleep last night?")
ask_note = Sentence("Anything to add? Write it, or skip.")
change_which = Sentence("Which answer shall we change?")
re_decided = Sentence("Updated with your new answers:")
no_longer_a_check_in = Sentence(
    "I could not read the edited message as a check-in, so what it said before still counts. "
    "To change an answer, edit it again or use the button under the day's targets."
)
missed = Sentence(
    "No check-in this morning, so I have told your coach and today stays as planned. "
    "If you can still send your answers, do: they help tomorrow. /checkin"
)
taken_unfinished = SentenceOn(
    "The time for this morning's check-in is over, so I kept what you told me: {told}. Today stays "
    "as planned. Anything that was still open you can send any time, such as “fullness 5”."
)
left_unfinished = SentenceOnTwo("{name} left this morning's check-in unfinished. Told: {told}.")


def ask_carbs(answers: Answers) -> str:
    if answers.get("_off_target"):
        return tr("Carbs not on target: about how many grams did you eat yesterday?")
    if answers.get("_carb_set_g") is None:
        return tr("Yesterday's carbs, in grams?")
    return tr("Yesterday's carbs? Tap if they were on target, or type the grams you ate.")


on_target_button = SentenceOn("On target ({grams:.0f} g)")

TRAINED = {
    TrainingDone.AS_PLANNED: mark("As planned"),
    TrainingDone.LESS: mark("Did less"),
    TrainingDone.MORE: mark("Did more"),
    TrainingDone.NONE: mark("Did none"),
}
#: Words that say the same when they are typed to that question, with commas between them.
TRAINED_SAID = {
    TrainingDone.AS_PLANNED: mark("as planned, yes, done, all done, y, yep, yeah, all of it"),
    TrainingDone.LESS: mark(
        "less, did less, a bit less, half, only half, just half, half of it, did half, shorter, not all"
    ),
    TrainingDone.MORE: mark("more, did more, a bit more, longer, extra"),
    TrainingDone.NONE: mark("none, no, did none, nothing, not at all, skipped it, missed it"),
}


#: What is said, too early, to the question whether anything else is going on.
FINE_SAID = mark("fine, all fine, all good, everything fine, everything is fine")
#: And to that question itself.
NOTHING_ELSE = mark("good, great, ok, okay, nothing else, that's it, no all good, all ok")

training_button = SentenceBy(TRAINED)


def only_the_number(key: str, answers: Answers) -> str:
    """To words where a figure was asked for."""
    shown = {
        "weight_kg": example(answers).split(" ")[0],
        "water_l": bare(
            figures.volume(answers.get("_water_target_l") or 3.5, answers["_volume_unit"]),
            " L", " ml", " US fl oz", " imp fl oz",
        ),
        "carb_eaten_g": figures.plain(answers.get("_carb_set_g") or 300),
        "fullness": "7",
        "sharpness": "4",
        "sleep_h": "7",
    }[key]  # fmt: skip
    return tr(
        'I only need the number, such as {shown}. If you don\'t have one, write "skip".',
        shown=shown,
    )


def so_far(answers: Answers) -> str:
    """The answers given, in one line, in the athlete's units."""
    return " · ".join(parts(answers).values())


def parts(answers: Answers) -> dict[str, str]:
    """Each given answer as a person would say it, by key."""
    weight_unit, volume_unit = answers["_weight_unit"], answers["_volume_unit"]
    say: dict[str, Callable[[Any], str]] = {
        "weight_kg": lambda kg: figures.weight(kg, weight_unit),
        "fullness": lambda score: tr("fullness {score}", score=score),
        "water_l": lambda litres: tr("water {water}", water=figures.volume(litres, volume_unit)),
        "sharpness": lambda score: tr("sharpness {score}", score=score),
        "carb_eaten_g": lambda grams: tr("carbs {grams:.0f} g", grams=grams),
        "fine": lambda fine: tr("all fine") if fine == "fine" else tr("something off"),
        "symptoms": lambda told: ", ".join(symptom_name(symptom) for symptom in told),
        "gut": gut_felt,
        "sleep_h": lambda hours: tr("sleep {hours} h", hours=figures.plain(hours)),
        "training_done": training_went,
    }
    said = {
        key: words
        for key, put in say.items()
        if answers.get(key) is not None and (words := put(answers[key]))
    }
    return said | {
        key: tr(without)
        for key, without in SKIPPED.items()
        if key in answers and answers[key] is None
    }


#: What is said of an answer that was skipped.
SKIPPED = {
    "weight_kg": mark("no weight"),
    "fullness": mark("no fullness"),
    "water_l": mark("water not known"),
}


GUT = {"fine": mark("gut fine"), "heavy": mark("gut heavy"), "bad": mark("gut bad")}

#: How the gut felt, inside a sentence.
gut_felt = SentenceBy(GUT)

#: What an answer is called on a button, and in a question about it.
NAMES = {
    "weight_kg": mark("Weight"),
    "fullness": mark("Fullness"),
    "water_l": mark("Water"),
    "sharpness": mark("Sharpness"),
    "carb_eaten_g": mark("Carbs eaten"),
    "training_done": mark("Training"),
    "fine": mark("How you feel"),
    "sleep_h": mark("Sleep"),
}

changeable = SentenceBy(NAMES)


def worked_out(answers: Answers) -> str:
    """What was taken for words that gave no figure by themselves, or two: "6-7", "as yesterday"."""
    taken_as = answers.get("_taken_as")
    told = parts(answers) if taken_as else {}
    lines = [
        tr("For “{words}” I took {answer}.", words=shown(words), answer=told[key])
        for key, words in (taken_as or {}).items()
        if key in told
    ]
    return "\n".join([*lines, tr("Not right? Just send the right number.")]) if lines else ""


def changed(old: Answers, new: Answers) -> str:
    """What is different now: "Changed: fullness 6 → fullness 5." """
    before, after = parts(old), parts(new)
    keys = [key for key in {**before, **after} if before.get(key) != after.get(key)]
    added = [after[key] for key in keys if key not in before]
    nothing = tr("nothing")
    moves = [f"{before[key]} → {after.get(key, nothing)}" for key in keys if key in before]
    lines = [tr("Added: {answers}.", answers="; ".join(added))] if added else []
    lines += [tr("Changed: {moves}.", moves="; ".join(moves))] if moves else []
    return " ".join(lines) or tr("The note was changed.")


too_late_to_change = SentenceOn(
    "{day} has been decided and is past, so its answers stay as they are."
)


def beside_the_numbers(
    symptoms: Sequence[str], gut: str | None, sleep_h: float | None, note: str
) -> str:
    """What the athlete said beside the numbers, in a line; empty where there was nothing."""
    parts = [symptom_name(symptom) for symptom in symptoms]
    if gut in ("heavy", "bad"):
        parts.append(gut_felt(gut))
    if parts and sleep_h is not None:
        parts.append(tr("{hours} h of sleep", hours=figures.plain(sleep_h)))
    if note:
        parts.append(tr('"{words}"', words=note))
    return ", ".join(parts)


passed_on = SentenceOnTwo("{name} adds to this morning's answers: {told}")


def beside_passed_on(said: str, coach: str) -> str:
    """Of words beside the figures. `coach` is "" for who coaches themself."""
    if not coach:
        return tr('I\'ve saved "{words}" with your answers.', words=said)
    return tr('I\'ve passed "{words}" on to {coach}.', words=said, coach=coach)


def nudge(first: bool, example: str) -> str:
    """`example`: a morning in one line in the reader's units."""
    if first:
        return tr(
            "This morning's answers are still missing. Weight first, or all in one line "
            "such as: {example}",
            example=example,
        )
    return tr("Last reminder for this morning: without your answers, today stays as planned.")
