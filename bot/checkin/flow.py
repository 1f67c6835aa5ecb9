"""The morning check-in: its questions, each declared once, and how a typed answer is read.

Whatever is typed at any of its questions is read as a report (`engine.written.oneline`): one answer,
several, or the whole morning. What was doubtful is asked about first, one question at a time.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

from bot.alerts.words_athlete import SYMPTOM_BUTTONS, symptom_button
from bot.checkin import words, words_doubts
from bot.checkin.flow_reading import (
    ALL_FINE,
    DOUBTS,
    IN_ONE,
    LEAVE,
    OFF_TARGET,
    ON_TARGET,
    SKIPPED,
    SOMETHING_OFF,
    TAKEN_AS,
    carb_choices,
    doubt_choices,
    insisted,
    kept,
    keys_of,
    known_of,
    left_out,
    plain_doubt,
    read_fine,
    read_told,
    scale,
    taken_from,
    wants_sharpness,
    water_choices,
    with_why,
)
from bot.dialogue import flow as reading
from bot.dialogue.flow import (
    Answers,
    Choice,
    Choices,
    Flow,
    InvalidAnswer,
    Step,
    When,
    buttons,
    free_text,
    one_of,
    said,
    two_a_row,
)
from bot.plan.flow_number import read_number
from bot.words import languages, names
from bot.words.common import skip_button, something_off_button
from bot.words.languages import Sentence, listed
from engine.values.checkin import TrainingDone
from engine.written.oneline import CORE, IN_ORDER, DoubtCode, Report


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """One question of the check-in, and everything that hangs on it.

    Its step's key is the column of its row and the field of `engine.values.checkin.CheckIn`, unless
    the answer only leads on (`leads_on`), or no rule and no flag looks at it (`in_note`): then it
    joins the note, said as it is shown, and so reaches the coach and is screened as any words are.
    `core`: before these are answered or skipped, nothing is decided. `changeable`: offered under
    "Change an answer".
    """

    step: Step
    leads_on: bool = False
    in_note: bool = False
    core: bool = False
    changeable: bool = False

    @property
    def key(self) -> str:
        return self.step.key

    @property
    def stored(self) -> bool:
        """Whether it has a column of its own."""
        return not (self.leads_on or self.in_note)

    @property
    def of_what_is_off(self) -> bool:
        """Whether it is asked only where something is; the others stand by themselves."""
        return self.step.when is _is_off


def read_morning(text: str, answers: Answers, first: str = "") -> Report:
    """A whole morning told once more replaces what was told; else it answers what is still open."""
    if read_number(text) is not None:
        return Report(note=text)  # "2 days out carbs 420" is about the plan
    whole = read_told(text, known_of(answers, ()))
    if whole.whole:
        return whole
    return read_told(text, known_of(answers, open_figures(answers, first)))


def open_figures(answers: Answers, first: str = "") -> tuple[str, ...]:
    """The answers still open that bare numbers may be, in order; the one asked for first of all."""
    keys = [
        question.key
        for question in QUESTIONS
        if question.key in IN_ORDER and question.key not in answers and _applies(question, answers)
    ]
    return tuple(dict.fromkeys(([first] if first else []) + keys))


def _applies(question: Question, answers: Answers) -> bool:
    return question.core or question.step.applies(answers | {IN_ONE: False})


#: Where "fine" may be meant of what was asked.
_OF_THE_LOOK = ("fullness", "sharpness")


def _figures(key: str) -> Callable[[str, Answers], Answers]:
    """A reader of figures where this one was asked for: of it, or of several at once."""

    def read(text: str, answers: Answers) -> Answers:
        if text.strip().lower() in (SKIPPED, "-"):
            return {key: None}
        on_target = text == ON_TARGET or said(text, reading.ON_TARGET)
        if key == "carb_eaten_g" and on_target and answers.get("_carb_set_g") is not None:
            return {key: float(answers["_carb_set_g"])}
        if key == "sleep_h":
            text = reading.without(text, reading.HOURS)
        report = read_morning(text, answers, key)
        if not report.answers and len(report.doubts) == 1 and not report.note:
            (doubt,) = report.doubts
            if doubt.code is DoubtCode.SPARE and [list(option) for option in doubt.options] == [
                [key]
            ]:
                return {key: doubt.options[0][key]}  # "480 g", to the question for the grams
        fine = report.all_fine and key not in _OF_THE_LOOK and said(text, words.FINE_SAID)
        if not report.told and report.training is None and not fine:
            raise InvalidAnswer(words.only_the_number(key, answers))
        if not report.answers and all(not doubt.options for doubt in report.doubts):
            about = [doubt for doubt in report.doubts if doubt.answer == key] or report.doubts
            if about:
                raise InvalidAnswer(words_doubts.doubt(plain_doubt(about[0]), answers))
        found = taken_from(report, answers)
        if _is_tapped(key, text) and key in report.answers:
            found = {key: report.answers[key], TAKEN_AS: left_out(answers, (key,))}
        return found

    return read


def _is_tapped(key: str, text: str) -> bool:
    return text.isdecimal() and key in ("fullness", "sharpness")


def _read_doubt(text: str, answers: Answers) -> Answers:
    """The answer to what was doubtful: one of the meanings, yes or no, or the figure anew."""
    doubt, *later = answers[DOUBTS]
    options = doubt["options"]
    plain = text.strip().casefold()
    if plain.startswith("o") and plain[1:].isdecimal() and int(plain[1:]) < len(options):
        return dict(options[int(plain[1:])]) | {DOUBTS: later}
    if said(text, reading.YES) and len(options) == 1:
        return dict(options[0]) | {DOUBTS: later}
    if plain == LEAVE or said(text, reading.NO):
        return {DOUBTS: later} | kept(doubt, answers)
    if plain in (SKIPPED, "-"):
        return {doubt["answer"]: None, DOUBTS: later}
    whole = read_told(text, known_of(answers, ()))
    if set(CORE) <= whole.answers.keys():
        return taken_from(whole, answers)  # told once more: nothing else is in doubt any longer
    asked = () if doubt["answer"] == "spare" else (doubt["answer"],)
    known = known_of(answers, asked or open_figures(answers))
    report = read_told(text, known)
    if asked and not report.answers and not any(one.options for one in report.doubts):
        report = _as_another_answer(text, answers, asked) or report
    if not report.told:
        raise InvalidAnswer(words_doubts.yes_no_or_number(options))
    found = taken_from(report, answers)
    settled = set(report.answers) | {one["answer"] for one in found[DOUBTS]}
    right = insisted(doubt, found[DOUBTS])
    if right is not None:
        return right | {DOUBTS: later}
    rest = [one for one in later if not settled & {one["answer"], *keys_of(one)}]
    stands = not settled & {doubt["answer"], *keys_of(doubt)}
    found[DOUBTS] = [*found[DOUBTS], *([doubt] if stands else []), *rest]
    return found


def _as_another_answer(text: str, answers: Answers, asked: tuple[str, ...]) -> Report | None:
    """A figure that can't be what was asked about, but answers what comes after it."""
    rest = tuple(key for key in open_figures(answers) if key not in asked)
    report = read_told(text, known_of(answers, rest)) if rest else None
    return report if report is not None and report.answers and not report.note else None


def _step_by_step(answers: Answers) -> bool:
    """Whether the rest is asked for too: who tells a whole morning in one message is left alone."""
    return not answers.get(IN_ONE)


def _asks_for_carbs(answers: Answers) -> bool:
    """Also of who tells a whole morning, where the carbs were said to be off target."""
    return _step_by_step(answers) or bool(answers.get(OFF_TARGET))


def _trained(answers: Answers) -> bool:
    return bool(answers.get("_trained")) and _step_by_step(answers)


def _is_off(answers: Answers) -> bool:
    return answers.get("fine") == SOMETHING_OFF


def _one_training(text: str, answers: Answers) -> Answers:
    """How yesterday's training went: a button, or the words for it, beside whatever else is told."""
    if text in tuple(TrainingDone):
        return {"training_done": text}
    if text.strip().lower() in (SKIPPED, "-"):
        return {"training_done": None}
    plain = {said_as: way for way in TrainingDone for said_as in listed(words.TRAINED_SAID[way])}
    if (way := plain.get(text.strip().casefold().rstrip(".!"))) is not None:
        return {"training_done": way.value}
    report = read_told(text, known_of(answers, open_figures(answers)))
    if report.training is None:
        raise InvalidAnswer(words.use_training_buttons())
    return taken_from(report, answers)


def _figure(
    key: str,
    ask: Sentence | Callable[[Answers], str],
    choices: Choices | Callable[[Answers], Choices],
    when: When | None = None,
) -> Step:
    """The step for a figure of the morning; an answer that tells several is taken apart."""
    asked, read = with_why(key, ask), _figures(key)
    return Step(key=key, ask=asked, read_with=read, choices=choices, when=when, spreads=True)


_SKIP = [Choice(skip_button, SKIPPED)]
QUESTIONS: tuple[Question, ...] = (
    Question(
        core=True,
        changeable=True,
        step=_figure("weight_kg", words.ask_weight, buttons(((words.no_scale_button, SKIPPED),))),
    ),
    Question(
        core=True,
        changeable=True,
        step=_figure("fullness", words.ask_fullness, [scale(1, 5), scale(6, 10), _SKIP]),
    ),
    Question(
        core=True, changeable=True, step=_figure("water_l", words.ask_water, water_choices)
    ),
    Question(
        changeable=True,
        step=_figure(
            "sharpness", words.ask_sharpness, [scale(1, 5), _SKIP],
            lambda answers: wants_sharpness(answers) and _step_by_step(answers),
        ),
    ),
    Question(
        changeable=True,
        step=_figure("carb_eaten_g", words.ask_carbs, carb_choices, _asks_for_carbs),
    ),
    Question(
        changeable=True,
        step=Step(
            key="training_done",
            ask=words.ask_training,
            read_with=_one_training,
            choices=[
                [Choice(partial(words.training_button, way), way.value) for way in pair]
                for pair in (
                    (TrainingDone.AS_PLANNED, TrainingDone.LESS),
                    (TrainingDone.MORE, TrainingDone.NONE),
                )
            ],
            when=_trained,
            spreads=True,
        ),
    ),
    Question(
        leads_on=True,
        changeable=True,
        step=Step(
            key="fine",
            ask=words.ask_fine,
            read=read_fine,
            choices=buttons(
                ((words.all_fine_button, ALL_FINE), (something_off_button, SOMETHING_OFF))
            ),
            when=_step_by_step,
        ),
    ),
    Question(
        step=Step(
            key="symptoms",
            ask=words.ask_symptoms,
            read=free_text, free=True,
            choices=two_a_row((partial(symptom_button, s), s) for s in SYMPTOM_BUTTONS),
            when=_is_off,
            many=True,
        ),
    ),
    Question(
        step=Step(
            key="gut",
            ask=words.ask_gut,
            read=one_of("fine", "heavy", "bad"),
            choices=buttons(
                tuple((partial(names.gut_button, gut), gut) for gut in names.gut_button.table)
            ),
            when=_is_off,
        ),
    ),
    Question(
        step=_figure(
            "sleep_h", words.ask_sleep,
            buttons(tuple((hours, hours) for hours in "45678"), ((skip_button, SKIPPED),)),
            _is_off,
        ),
    ),
    Question(
        step=Step(
            key="note",
            ask=words.ask_note,
            read=free_text, free=True,
            choices=[_SKIP],
            when=_is_off,
        ),
    ),
)  # fmt: skip
DOUBT = Step(
    key="doubt",
    ask=lambda answers: (
        words_doubts.first_of(answers[DOUBTS], answers) if answers.get(DOUBTS) else ""
    ),
    read_with=_read_doubt,
    choices=doubt_choices,
    when=lambda answers: bool(answers.get(DOUBTS)),
    spreads=True,
)
CHECK_IN = Flow(
    id="checkin",
    so_far=words.so_far,
    can_cancel=False,
    steps=(DOUBT, *(question.step for question in QUESTIONS)),
)
STORED = {question.key: question for question in QUESTIONS if question.stored}
IN_NOTE = tuple(question.key for question in QUESTIONS if question.in_note)
CHANGEABLE = tuple(question.key for question in QUESTIONS if question.changeable)


def enough(answers: Answers) -> bool:
    """Whether what has to be there for a decision has been answered or skipped."""
    wanted = [question.key for question in QUESTIONS if question.core]
    if wants_sharpness(answers):
        wanted.append("sharpness")
    return all(key in answers for key in wanted) and not answers.get(DOUBTS)


def load_patterns() -> None:
    """What is compiled at its first use, which takes a hundred times as long as a reading after it."""
    for code in languages.known():
        with languages.speaking(code):
            read_morning("61.2 kg 7 3.5 l", {"_weight_unit": "kg", "_volume_unit": "l"})
