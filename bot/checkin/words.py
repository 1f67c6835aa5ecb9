"""The words of the morning check-in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from bot.words import figures
from bot.words.common import kind_word
from bot.words.languages import Sentence, mark, tr, trn
from bot.words.refusals import refusal_text
from bot.words.symptoms import symptom_name
from engine.values.checkin import TrainingDone
from engine.written.oneline import DoubtCode
from engine.written.units import Refusal, RefusalCode, WeightUnit, show_weight

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
        _bare(figures.weight(kg, answers["_weight_unit"]), " kg", " lb"),
        "7",
        _bare(
            figures.volume(litres, answers["_volume_unit"]), " L", " ml", " US fl oz", " imp fl oz"
        ),
        *(["4"] if answers.get("_wants_sharpness") else []),
    ]
    return " ".join(parts)


def _bare(shown: str, *units: str) -> str:
    for unit in units:
        shown = shown.removesuffix(unit)
    return shown.removesuffix(".0").removesuffix(",0")


no_scale_button = Sentence("No scale today")
do_not_know_button = Sentence("I don't know")
ask_fullness = Sentence(
    "Fullness, 1 to 10?\n1 = completely flat, 10 = as full as you can get"
).for_any
ask_water = Sentence("What did you drink yesterday, all drinks together? Tap or type.").for_any
ask_sharpness = Sentence("Sharpness, 1 to 5?\n1 = blurred, 5 = crisp").for_any
ask_training = Sentence("Did yesterday's training and cardio go as planned?").for_any
use_training_buttons = Sentence("Please tap one, or type as planned, less, more or none.")
ask_fine = Sentence("Anything else going on?").for_any
all_fine_button = Sentence("All fine")
ask_symptoms = Sentence("What is it? Tick all that fit, or write it in your own words.").for_any
ask_gut = Sentence("How is your stomach?").for_any
ask_sleep = Sentence("Hours of sleep last night?").for_any
ask_note = Sentence("Anything to add? Write it, or skip.").for_any

change_which = Sentence("Which answer shall we change?")
re_decided = Sentence("Updated with your new answers:")
no_longer_a_check_in = Sentence(
    "I could not read the edited message as a check-in, so what it said before still holds. "
    "To change an answer, edit it again or use the button under the day's targets."
)


def ask_carbs(answers: Answers) -> str:
    if answers.get("_carb_set_g") is None:
        return tr("Yesterday's carbs, in grams?")
    return tr("Yesterday's carbs? Tap if they were on target, or type the grams you ate.")


def on_target_button(grams: float) -> str:
    return tr("On target ({grams:.0f} g)", grams=grams)


TRAINED = {
    TrainingDone.AS_PLANNED: mark("As planned"),
    TrainingDone.LESS: mark("Did less"),
    TrainingDone.MORE: mark("Did more"),
    TrainingDone.NONE: mark("Did none"),
}
#: Words that say the same when they are typed to that question, with commas between them.
TRAINED_SAID = {
    TrainingDone.AS_PLANNED: mark("as planned, yes, done, all done, y, yep, yeah, all of it"),
    TrainingDone.LESS: mark("less, did less, a bit less, half, shorter, not all"),
    TrainingDone.MORE: mark("more, did more, a bit more, longer, extra"),
    TrainingDone.NONE: mark("none, no, did none, nothing, not at all, skipped it, missed it"),
}
_TRAINING_WENT = {
    TrainingDone.AS_PLANNED: mark("training as planned"),
    TrainingDone.LESS: mark("less training than planned"),
    TrainingDone.MORE: mark("more training than planned"),
    TrainingDone.NONE: mark("no training"),
}


def training_button(way: TrainingDone) -> str:
    return tr(TRAINED[way])


def training_went(way: str) -> str:
    """How the training went, inside a list of answers."""
    return tr(_TRAINING_WENT[TrainingDone(way)])


def only_the_number(key: str, answers: Answers) -> str:
    """To words where a figure was asked for."""
    shown = {
        "weight_kg": example(answers).split(" ")[0],
        "water_l": _bare(
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


def yes_no_or_number(options: Sequence[Answers]) -> str:
    if len(options) == 1:
        return tr("Please answer yes or no, or send the right number.")
    return tr("Please tap one, or send the right number.")


def option_button(option: Answers, doubt: Answers, answers: Answers) -> str:
    """A likely meaning, short enough for a button: "7", "133 lb (60.3 kg)", "fullness 7, water 4 L"."""
    if len(option) == 1:
        return _figure_meant(option, doubt, answers)
    units = {key: answers[key] for key in ("_weight_unit", "_volume_unit")}
    return ", ".join(_parts(units | option).values())


def _figure_meant(option: Answers, doubt: Answers, answers: Answers) -> str:
    ((key, value),) = option.items()
    if key == "weight_kg":
        return _weight_meant(value, str(doubt["given"]), answers["_weight_unit"])
    if key == "water_l":
        return figures.volume(value, answers["_volume_unit"])
    if key == "carb_eaten_g":
        return figures.grams(value)
    if key == "sleep_h":
        return tr("{hours} h", hours=figures.plain(value))
    return str(value) if len(_keys(doubt)) == 1 else _parts(answers | option)[key]


def _keys(doubt: Answers) -> set[str]:
    return {key for option in doubt["options"] for key in option}


def _weight_meant(kg: float, given: str, unit: str) -> str:
    """ "60.3 kg"; with the unit that was meant, where it was another: "133 lb (60.3 kg)"."""
    shown = figures.weight(kg, unit)
    number = "".join(char for char in given if char.isdecimal() or char in ".,").replace(",", ".")
    for other in (WeightUnit.LB, WeightUnit.KG):
        written = show_weight(kg, other).removesuffix(f" {other}").removesuffix(".0")
        if other != unit and written == number.removesuffix(".0"):
            return f"{figures.in_digits(written)} {other} ({shown})"
    return shown


def doubt(doubt: Answers, answers: Answers) -> str:
    """The question about something that was read and is not taken yet."""
    code, key, given = doubt["code"], doubt["answer"], str(doubt["given"])
    options = doubt["options"]
    several = len(options) > 1 and code in (
        RefusalCode.AMBIGUOUS_SEPARATOR, RefusalCode.AMBIGUOUS_STONE,
    )  # fmt: skip
    put = _which if several else _DOUBTS.get(code, _refused)
    sentence = put(doubt, answers)
    if len(options) == 1 and code in _ASKS_WHAT_WAS_MEANT | set(RefusalCode):
        if options[0].get(key) == doubt["facts"].get("value"):
            return sentence + " " + tr("Is that right?")
        meant = _figure_meant(options[0], doubt, answers) if len(options[0]) == 1 else given
        return sentence + " " + tr("Did you mean {meant}?", meant=meant)
    return sentence


def _name(key: str) -> str:
    return tr(NAMES[key]) if key in NAMES else ""


def _range_doubt(doubt: Answers, answers: Answers) -> str:
    return tr(
        "{name}: you wrote {given}. Which one shall I take?",
        name=_name(doubt["answer"]), given=doubt["given"],
    )  # fmt: skip


def _far(doubt: Answers, answers: Answers) -> str:
    facts, key = doubt["facts"], doubt["answer"]
    if key == "weight_kg":
        given = figures.weight(facts["value"], answers["_weight_unit"])
        before = figures.weight(facts["before"], answers["_weight_unit"])
        insists = any(option.get(key) == facts["value"] for option in doubt["options"])
        if insists:
            return tr("{given} is far from the {before} I have of you.", given=given, before=before)
        return tr("{given} can't be right: you were {before}.", given=given, before=before)
    if key == "water_l":
        return tr(
            "I read {given} of water, and your target was {before}.",
            given=figures.volume(facts["value"], answers["_volume_unit"]),
            before=figures.volume(facts["before"], answers["_volume_unit"]),
        )
    if key == "carb_eaten_g":
        return tr(
            "I read {given} of carbs, and {before} were planned.",
            given=figures.grams(facts["value"]), before=figures.grams(facts["before"]),
        )  # fmt: skip
    return tr(
        "I read fullness {given}, and last time it was {before}.",
        given=figures.plain(facts["value"]), before=figures.plain(facts["before"]),
    )  # fmt: skip


def _spare(doubt: Answers, answers: Answers) -> str:
    read = tr("I read {read}, but not {given}.", read=so_far(answers), given=doubt["given"])
    if doubt["options"]:
        return read + " " + tr("Are those yesterday's carbs?")
    ask = tr('What is it? Send it with its name, such as "carbs 170", or leave it out.')
    return f"{read} {ask}"


def _unclear(doubt: Answers, answers: Answers) -> str:
    return tr(
        "I am not sure about {given}. Is it your answer to: {name}?",
        given=doubt["given"], name=_name(doubt["answer"]),
    )  # fmt: skip


def _which(doubt: Answers, answers: Answers) -> str:
    if len(doubt["options"]) == 1:
        units = {key: answers[key] for key in ("_weight_unit", "_volume_unit")}
        meant = ", ".join(_parts(units | doubt["options"][0]).values())
        return tr("I can't tell which number is which. Did you mean {meant}?", meant=meant)
    return tr("I can read that in more than one way. Which is right?")


def _change(doubt: Answers, answers: Answers) -> str:
    """Of an answer that was told this morning already."""
    (option,) = doubt["options"]
    units = {key: answers[key] for key in ("_weight_unit", "_volume_unit")}
    before = _parts(units | {key: answers.get(key) for key in option})
    after = _parts(units | option)
    nothing = tr("nothing")
    moves = [f"{before.get(key, nothing)} → {after[key]}" for key in after]
    return tr("Shall I change this morning's answer: {moves}?", moves="; ".join(moves))


def _in_words(doubt: Answers, answers: Answers) -> str:
    if doubt["answer"] == "sharpness":
        return tr(
            '"{given}": what is that as a number, 1 (blurred) to 5 (crisp)?', given=doubt["given"]
        )
    return tr('"{given}": what is that as a number, 1 (flat) to 10 (full)?', given=doubt["given"])


def _bound(doubt: Answers, answers: Answers) -> str:
    return tr("{name}: {given} is not exact.", name=_name(doubt["answer"]), given=doubt["given"])


def _refused(doubt: Answers, answers: Answers) -> str:
    """What an answer has to be, by its name, and what was read."""
    key, given = doubt["answer"], doubt["given"]
    if key == "fullness":
        return tr("Fullness is 1 to 10, I read {given}.", given=given)
    if key == "sharpness":
        return tr("Sharpness is 1 to 5, I read {given}.", given=given)
    facts = {name: fact for name, fact in doubt["facts"].items() if name != "hint"}
    if "_weight_unit" in answers:
        facts["example"] = example(answers)
    sentence = refusal_text(Refusal(RefusalCode(doubt["code"]), **facts))
    return f"{_name(key)}: {sentence}" if _name(key) else sentence


_ASKS_WHAT_WAS_MEANT = {DoubtCode.FAR, DoubtCode.BOUND, DoubtCode.RANGE}
_DOUBTS: dict[str, Callable[[Answers, Answers], str]] = {
    DoubtCode.FAR: _far,
    DoubtCode.RANGE: _range_doubt,
    DoubtCode.BOUND: _bound,
    DoubtCode.IN_WORDS: _in_words,
    DoubtCode.SPARE: _spare,
    DoubtCode.UNCLEAR: _unclear,
    DoubtCode.ORDER: _which,
    DoubtCode.TWO_VALUES: _which,
    DoubtCode.CHANGE: _change,
}


def so_far(answers: Answers) -> str:
    """The answers given, in one line, in the athlete's units."""
    return " · ".join(_parts(answers).values())


def _parts(answers: Answers) -> dict[str, str]:
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


def gut_felt(gut: str) -> str:
    """How the gut felt, inside a sentence."""
    return tr(GUT[gut])


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


def changeable(key: str) -> str:
    return tr(NAMES[key])


def changed(old: Answers, new: Answers) -> str:
    """What is different now: "Changed: fullness 6 → fullness 5." """
    before, after = _parts(old), _parts(new)
    keys = [key for key in {**before, **after} if before.get(key) != after.get(key)]
    nothing = tr("nothing")
    moves = [f"{before.get(key, nothing)} → {after.get(key, nothing)}" for key in keys]
    return tr("Changed: {moves}.", moves="; ".join(moves)) if moves else tr("The note was changed.")


def too_late_to_change(day: str) -> str:
    return tr("{day} has been decided and is past, so its answers stay as they are.", day=day)


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


def passed_on(name: str, told: str) -> str:
    return tr("{name} adds to this morning's answers: {told}", name=name, told=told)
