"""How what is typed becomes answers of the check-in, what of it is asked about, and its buttons."""

from __future__ import annotations

import re
from collections.abc import Callable, Container, Mapping
from dataclasses import asdict, replace
from typing import Any

from bot.checkin import words, words_doubts
from bot.dialogue import flow as reading
from bot.dialogue.flow import Answers, Choice, Choices, InvalidAnswer, said
from bot.words import figures, invalid_answers
from bot.words.common import leave_out_button, no, none_of_these_button, yes
from bot.words.languages import Sentence, language, worded
from engine.symptoms import screen
from engine.values.level import Level
from engine.written.late import Late
from engine.written.oneline import CORE, IN_ORDER, Doubt, DoubtCode, Known, Report, read_report
from engine.written.units import Volume, VolumeUnit, WeightUnit, show_volume

ALL_FINE, SOMETHING_OFF = "fine", "off"
# Laid in beside the answers:
DOUBTS = "_doubts"  # what is to be asked about first
WHY = "_why"  # why a question is put again
NOTED = "_noted"  # the words that were no answer
TAKEN_AS = "_taken_as"  # the words that an answer was worked out from, by its key
OFF_TARGET = "_off_target"  # the carbs were said to be other than the figure set
IN_ONE = "_in_one"  # a whole morning came in one message
ON_TARGET = "on"
SKIPPED = "skip"
LEAVE = "no"
WATER_STEPS_L = (-1.0, -0.5, 0.0, 0.5)  # quick picks around the target
FEWEST_OF_A_MORNING = 2  # answers that make a text one, where nobody asked
#: Who puts a figure right, whatever else stands around it.
CORRECTS = Late(
    r"\b(?:sorry|correct\w*|typo|mistake|mistyped|wrong|meant|i mean|instead of|change|"
    r"make (?:it|that)|not \d|korrektur|korrigier\w*|tippfehler|vertippt|falsch|meinte|ich mein|"
    r"statt|ändern?|änder|nicht \d)\b",
    re.IGNORECASE,
)
ONE_FIGURE = Late(r"\s*\d+(?:[.,]\d+)?\s*[.!]?\s*")


def known_of(answers: Answers, asked: tuple[str, ...]) -> Known:
    """What the reading of a report may know of the athlete."""
    return Known(
        weight_unit=WeightUnit(answers["_weight_unit"]),
        volume_unit=VolumeUnit(answers["_volume_unit"]),
        wants_sharpness=wants_sharpness(answers),
        language=language(),
        asked=asked,
        water_l=answers.get("_water_target_l"),
        carb_g=answers.get("_carb_set_g"),
        **answers.get("_habit", {}),
    )


def taken_from(report: Report, answers: Answers) -> Answers:
    """What a report adds to the answers of a check-in, with what has to be asked about."""
    found: Answers = dict(report.answers)
    if report.on_target and answers.get("_carb_set_g") is not None:
        found.setdefault("carb_eaten_g", float(answers["_carb_set_g"]))
    elif report.off_target:
        found[OFF_TARGET] = True
    if report.training is not None:
        found["training_done"] = report.training
    if report.all_fine:
        found["fine"] = ALL_FINE
    offered = [doubt for doubt in report.doubts if doubt.options or doubt.answer == "spare"]
    told = {doubt.answer: plain_doubt(doubt) for doubt in report.doubts if doubt not in offered}
    found[DOUBTS] = [plain_doubt(doubt) for doubt in offered]
    found[WHY] = {k: v for k, v in answers.get(WHY, {}).items() if k not in report.answers} | told
    found[TAKEN_AS] = left_out(answers, report.answers) | dict(report.meant)
    if report.note:
        found[NOTED] = " / ".join(part for part in (answers.get(NOTED, ""), report.note) if part)
    in_core = [key for key in CORE if key in report.answers or _in_doubt(key, report)]
    if len(in_core) == len(CORE):
        found[IN_ONE] = True
    return found


def left_out(answers: Answers, told: Container[str]) -> dict[str, str]:
    """The words behind the answers that were worked out, but for those that are told anew."""
    return {key: words for key, words in answers.get(TAKEN_AS, {}).items() if key not in told}


def _whole_score(report: Report, known: Known) -> Report:
    """A fullness between two scores as one of them: the one nearer to the last, as it is kept."""
    score = report.answers.get("fullness")
    if score is None or score == int(score):
        return report
    up = known.fullness is not None and known.fullness > score
    whole = int(score) + 1 if up else int(score)
    return replace(report, answers={**report.answers, "fullness": whole})


def _in_doubt(key: str, report: Report) -> bool:
    return any(
        doubt.answer == key or any(key in option for option in doubt.options)
        for doubt in report.doubts
    )


def plain_doubt(doubt: Doubt) -> dict[str, Any]:
    """A doubt as JSON keeps it."""
    return asdict(doubt) | {"options": [dict(option) for option in doubt.options]}


def read_told(text: str, known: Known) -> Report:
    """What a text says of the morning; of one that warns of danger figures alone, never words:
    "came round on the floor" is no answer to how full somebody is.
    """
    report = _whole_score(read_report(text, known), known)
    if report.answers or not report.doubts:
        return report
    warns = any(hit.sure and hit.symptom.level is Level.WARNING for hit in screen(text).hits)
    return Report(note=text.strip()) if warns else report


def is_morning(report: Report, *, asked: bool, whole_week: bool) -> bool:
    """Whether a text tells of the morning, rather than of anything else with figures in it."""
    if asked:
        return report.told > 0
    told = sum(1 for key in report.answers if key in IN_ORDER)
    if report.told >= len(CORE) and told:
        return True
    if told >= FEWEST_OF_A_MORNING and (report.labelled or "weight_kg" in report.answers):
        return True
    return whole_week and told == 1 and not report.note and not report.doubts


def is_whole(report: Report) -> bool:
    """Whether nothing but a morning can be meant, whatever else was asked and not answered by it."""
    return "weight_kg" in report.answers and report.told >= len(CORE) and not report.doubts


def agreed(report: Report, old: Answers) -> Report:
    """A report without the doubts that were answered before: what stands is what they may mean."""
    answers, doubts = dict(report.answers), []
    for doubt in report.doubts:
        stands = [
            option
            for option in doubt.options
            if option and all(old.get(key) == value for key, value in option.items())
        ]
        if stands:
            answers |= stands[0]
        else:
            doubts.append(doubt)
    return replace(report, answers=answers, doubts=tuple(doubts))


def insisted(doubt: Mapping[str, Any], again: list[dict[str, Any]]) -> Answers | None:
    """The same figure once more, to the question whether it is right: then it is."""
    if doubt["code"] != DoubtCode.FAR or len(again) != 1 or again[0]["code"] != DoubtCode.FAR:
        return None
    same = again[0]["facts"].get("value") == doubt["facts"].get("value")
    offered = [o for o in doubt["options"] if o.get(doubt["answer"]) == doubt["facts"].get("value")]
    return dict(offered[0]) if same and offered else None


def kept(doubt: Mapping[str, Any], answers: Answers) -> Answers:
    """A number that was none of the answers is not lost: it stays in the note."""
    if doubt["code"] not in (DoubtCode.SPARE, DoubtCode.UNCLEAR) or not doubt["given"]:
        return {}
    parts = (answers.get(NOTED, ""), doubt["given"])
    return {} if doubt["given"] in parts[0] else {NOTED: " / ".join(part for part in parts if part)}


def wants_sharpness(answers: Answers) -> bool:
    return bool(answers.get("_wants_sharpness"))


def water_choices(answers: Answers) -> Choices:
    skip = [Choice(words.do_not_know_button(), SKIPPED)]
    unit = VolumeUnit(answers["_volume_unit"])
    target = answers.get("_water_target_l")
    if target is None:
        return [skip]
    amounts = [target + step for step in WATER_STEPS_L if target + step > 0]
    # The value carries the unit that is shown, so that a tap is read exactly like the same words.
    shown = [show_volume(Volume(amount, unit).litres, unit) for amount in amounts]
    return [[Choice(figures.in_digits(text), text) for text in shown], skip]


def scale(low: int, high: int) -> list[Choice]:
    return [Choice(str(n), str(n)) for n in range(low, high + 1)]


def carb_choices(answers: Answers) -> Choices:
    grams = answers.get("_carb_set_g")
    skip = [Choice(words.do_not_know_button(), SKIPPED)]
    if grams is None or answers.get(OFF_TARGET):
        return [skip]
    return [[Choice(words.on_target_button(grams), ON_TARGET)], skip]


def doubt_choices(answers: Answers) -> Choices:
    if not answers.get(DOUBTS):
        return ()
    doubt = answers[DOUBTS][0]
    options = doubt["options"]
    if not options:
        return [[Choice(leave_out_button(), LEAVE)]]
    if len(options) == 1:
        return [[Choice(yes(), "o0"), Choice(no(), LEAVE)]]
    labelled = [
        Choice(words_doubts.option_button(option, doubt, answers), f"o{n}")
        for n, option in enumerate(options)
    ]
    rows = [labelled[i : i + 2] for i in range(0, len(labelled), 2)]
    return [*rows, [Choice(none_of_these_button(), LEAVE)]]


def with_why(key: str, ask: Sentence | Callable[[Answers], str]) -> Callable[[Answers], str]:
    """The question, below the reason why what was written could not be taken."""

    def asked(answers: Answers) -> str:
        doubt = answers.get(WHY, {}).get(key)
        if doubt is None or answers.get("_again"):
            return worded(ask, answers)
        return f"{words_doubts.doubt(doubt, answers)}\n\n{worded(ask, answers | {'_again': True})}"

    return asked


def read_fine(text: str) -> str:
    """Whether anything else is going on: a button, or "no", "fine", "yes"."""
    plain = text.strip(" .!").casefold()
    nothing = (words.FINE_SAID, words.NOTHING_ELSE, reading.NO, reading.NONE)
    if plain == ALL_FINE or any(said(plain, one) for one in nothing):
        return ALL_FINE
    if plain == SOMETHING_OFF or said(plain, reading.YES):
        return SOMETHING_OFF
    raise InvalidAnswer(invalid_answers.use_buttons())
