"""Conversations as data: answers so far in, next question out; how answers are read. Pure.

A flow is a row of steps. A step knows how to ask, which buttons to offer and how to read an answer,
typed or tapped: a button's value goes through the same `read` as typed text. Answers are plain
JSON values by step key; keys that begin with "_" are context that was laid in when the flow began.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from functools import partial
from typing import Any, TypeVar

from bot.words import invalid_answers
from bot.words.calendar_words import calendar_words
from bot.words.languages import Sentence, listed, mark, tr, worded
from engine.written.late import Late
from engine.written.units import parse_day

Answers = dict[str, Any]
DONE = "done"  # the value that ends a step with many answers


class InvalidAnswer(ValueError):  # noqa: N818 - it is an answer to a person, not a fault
    """An answer that this step cannot take, with the sentence that says what to do instead."""


@dataclass(frozen=True, slots=True)
class Choice:
    """A button: what it says, in words or as the sentence that is said once it is shown."""

    says: str | Callable[[], str]
    value: str

    @property
    def label(self) -> str:
        return self.says if isinstance(self.says, str) else self.says()


Choices = Sequence[Sequence[Choice]]
When = Callable[[Answers], bool]
#: A pure function of a module and the values that it is to be given.
Long = tuple[Callable[..., Any], tuple[object, ...]]
FOUND = "_found"


def _at_once(function: Callable[..., Any], *values: object) -> Any:
    return function(*values)


def both(first: When | None, second: When) -> When:
    """Where the one holds, if there is one, and the other too."""
    return second if first is None else lambda answers: first(answers) and second(answers)


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One question. `read` raises a `ParseError` or an `InvalidAnswer` for what it cannot take.

    What it asks, offers and whether it applies may hang on the answers so far, or not. `read` needs
    the text alone; a step whose reading hangs on the answers has `read_with`, which sees "_now" among
    them, the instant of the answer as ISO text; one that only leads back needs neither, nor one that
    its fixed buttons answer, whose words typed out are taken as well. `ask` sees
    "_again" where an answer could not be read and the question stands once more.

    With `many`, choices are ticked one by one until "done", and the answer is a list; typed text is
    one more entry and ends the step; `none` is what the last button says while nothing is ticked.
    Steps whose `when` is false are passed over. `stays` keeps the question readable after a tap;
    otherwise the next question takes its place. With `back_to`, an answer that reads as None puts
    that earlier question again, and with `returns` any answer does. A step that `spreads` reads
    several answers by key (`given_by`).
    One that is `free` is answered by whatever words are typed, at least where that holds.
    What asking takes long to work out is told by `beforehand`, and `ask` sees what came of it as
    "_found": it is worked out while nobody waits for it.
    With `names`, the answer is a name in the writer's own words, and a few words are meant as one.
    What is typed to one that is `private` is passed on to nobody, unless it asks something.
    """

    key: str
    ask: Sentence | Callable[[Answers], str]
    read: Callable[[str], Any] | None = None
    read_with: Callable[[str, Answers], Any] | None = None
    choices: Choices | Callable[[Answers], Choices] = ()
    when: When | None = None
    many: bool = False
    none: Callable[[], str] | None = None
    stays: bool = False
    back_to: str = ""
    returns: bool = False
    spreads: bool = False
    names: bool = False
    free: bool | When = False
    beforehand: Callable[[Answers], Long | None] | None = None
    private: bool = False
    ticks: str = field(
        init=False
    )  # under which key ticked choices are kept until they are done with

    def __post_init__(self) -> None:
        object.__setattr__(self, "ticks", f"_ticked_{self.key}")
        ways = [way for way in (self.read, self.read_with) if way is not None]
        by_button = bool(self.choices) and not callable(self.choices)
        if len(ways) > 1 or not (ways or self.back_to or by_button):
            raise ValueError(f"step {self.key} is read in one way")

    def asked(self, answers: Answers, work: Callable[..., Any] = _at_once) -> str:
        """The question. `work` is how something is worked out that takes long."""
        long = self.beforehand(answers) if self.beforehand is not None else None
        if long is not None:
            function, values = long
            answers = answers | {FOUND: work(function, *values)}
        return worded(self.ask, answers)

    def offers(self, answers: Answers) -> Choices:
        return self.choices(answers) if callable(self.choices) else self.choices

    def applies(self, answers: Answers) -> bool:
        return self.when is None or self.when(answers)

    def takes_anything(self, answers: Answers) -> bool:
        """Whether whatever is typed could be its answer."""
        return self.free(answers) if callable(self.free) else self.free

    def answer(self, text: str, answers: Answers) -> Any:
        """What the text or a button's value says, as `read` or `read_with` has it, or the buttons."""
        if self.read_with is not None:
            return self.read_with(text, answers)
        if self.read is not None:
            return self.read(text)
        return None if self.back_to else one_of(*offered(self, answers))(text)


@dataclass(frozen=True, slots=True, kw_only=True)
class Flow:
    """`so_far` is a line that shows the answers given, put above the next question. What is asked by
    one that is `patient` has free words as its answer days later, too. An earlier run of one that is
    `concurrent` stays open when it is begun again: each is to be answered.
    """

    id: str
    steps: tuple[Step, ...]
    so_far: Callable[[Answers], str] | None = None
    can_cancel: bool = True
    patient: bool = False
    concurrent: bool = False

    def __post_init__(self) -> None:
        keys = [step.key for step in self.steps]
        if len(set(keys)) != len(keys):
            raise ValueError(f"flow {self.id} asks a key twice")

    def given(self, answers: Answers) -> str:
        """The line that shows the answers so far, "" where there is none."""
        return self.so_far(answers) if self.so_far is not None else ""

    def next_step(self, answers: Answers) -> Step | None:
        """The first step that applies and has no answer yet; None when all is said."""
        return next(
            (step for step in self.steps if step.key not in answers and step.applies(answers)), None
        )

    def step(self, key: str) -> Step | None:
        return next((step for step in self.steps if step.key == key), None)


def given_by(step: Step, answer: Any) -> Answers:
    """What an answer to this step adds to the answers so far."""
    return dict(answer) if step.spreads else {step.key: answer}


def offered(step: Step, answers: Answers) -> set[str]:
    """The values that a button of this step may send back."""
    return {choice.value for row in step.offers(answers) for choice in row}


LONGEST_NOTE = 1000

# Words that answer without a button, with commas between them; a translation may have other ones,
# and as many as it likes.
YES = mark("yes, y, yeah, yep, yup, yes please, sure, of course, aye, ya")
NO = mark("no, n, nope, nah, no thanks")
SKIP = mark("skip, -, no, none, nothing")
NONE = mark("none, no, nothing")
#: What is typed where a button says that it is not known, and what such buttons say.
UNKNOWN = mark(
    "don't know, dont know, i don't know, i dont know, no idea, not sure, unsure, dunno, idk, no clue, "
    "not known, unknown, can't say, cant say, hard to say"
)
VARIES = mark("varies, it varies")
AS_ALWAYS = mark("as always, always, as usual, usual, not counted, -")
ON_TARGET = mark(
    "on target, target, yes, yeah, yep, yup, all of it, yes all of it, yep all of it, all eaten, "
    "everything, ate everything, ate it all, every gram, as planned, to the gram, spot on"
)
ABOUT = mark("about, around, roughly, approximately, approx, approx., ca, ca., circa, maybe, ~")
# Units that may stand behind a number, the longer first.
MINUTES = mark("minutes, minute, min")
HOURS = mark("hours, hour, h")
WEEKS = mark("weeks, week")
STEPS = mark("steps")

_COURTESY = Late(
    r"[\s,]*\b(?:please|pls|thanks|thank you|thx|i think|i guess|or so|bitte|danke|denk(?:e)? ich|"
    r"glaub(?:e)? ich|oder so)[.! ]*$",
    re.IGNORECASE,
)
_LEAD = Late(
    r"^(?:(?:i think|i guess|ich glaube?|ich denke?|probably|wahrscheinlich)[ ,]+)?"
    r"(?:(?:it(?:'s| is)|that(?:'s| is)|i'm on|es ist|das ist|ist) )?"
    r"(?:(?:at|around|about|on|until|um|gegen|so um|circa|ca|am|bis|den) )?(?=\d)",
    re.IGNORECASE,
)

_Value = TypeVar("_Value", bound=str)


def reason(text: str) -> str:
    """Why somebody goes ahead all the same: any words, but some."""
    words = " ".join(text.split())
    if not words:
        raise InvalidAnswer(invalid_answers.reason_empty())
    if len(words) > LONGEST_NOTE:
        raise InvalidAnswer(invalid_answers.long_note(len(words), LONGEST_NOTE))
    return words


def said(text: str, words: str) -> bool:
    """Whether the text is one of these words, in English or in the language in force."""
    return text.strip().casefold() in listed(words)


def without(text: str, units: str) -> str:
    """The text without one of these units at its end."""
    plain = text.strip().casefold()
    for unit in listed(units):
        if plain.endswith(unit):
            return plain.removesuffix(unit).rstrip()
    return plain


def plainly(text: str) -> str:
    """A figure without what people put around it: "about 480", "520 g please"."""
    plain = _LEAD.sub("", _COURTESY.sub("", text.strip()).replace("\u2019", "'"))
    for word in sorted(listed(ABOUT), key=len, reverse=True):
        if plain.casefold().startswith(word):
            rest = plain[len(word) :].lstrip()
            if rest[:1].isdigit():
                return rest
    return plain


def one_of(*values: str) -> Callable[[str], str]:
    """A reader for steps that are answered by a button; the word typed out is taken as well."""

    def read(text: str) -> str:
        word = text.strip().lower()
        if word not in values:
            raise InvalidAnswer(invalid_answers.use_buttons())
        return word

    return read


def read_offered(choices: Callable[[Answers], Choices]) -> Callable[[str, Answers], str]:
    """The same where the answers so far say which buttons there are."""

    def read(text: str, answers: Answers) -> str:
        return one_of(*(one.value for row in choices(answers) for one in row))(text)

    return read


def yes_or_no(text: str) -> bool:
    if said(text, YES):
        return True
    if said(text, NO):
        return False
    raise InvalidAnswer(invalid_answers.use_buttons())


def day_in(text: str, today: date) -> date:
    """A date as people write it; without a year it is the next such day."""
    return parse_day(text, today=today, words=calendar_words())


def free_text(text: str) -> str:
    """A note in the person's own words; "skip" is the empty note."""
    words = text.strip()
    if said(words, SKIP):
        return ""
    if not words:
        raise InvalidAnswer(invalid_answers.empty_note())
    if len(words) > LONGEST_NOTE:
        raise InvalidAnswer(invalid_answers.long_note(len(words), LONGEST_NOTE))
    return words


def buttons(*rows: tuple[tuple[str | Callable[[], str], str], ...]) -> Choices:
    """Fixed choices: rows of (label, value)."""
    return tuple(tuple(Choice(label, value) for label, value in row) for row in rows)


def two_a_row(labelled: Iterable[tuple[str | Callable[[], str], str]]) -> Choices:
    each = list(labelled)
    return buttons(*(tuple(each[i : i + 2]) for i in range(0, len(each), 2)))


def one_a_row(named: Mapping[_Value, str]) -> Choices:
    """Fixed choices below each other, as a table names them by the marked words for each."""
    return tuple((Choice(partial(tr, words), value),) for value, words in named.items())


def zone_of(answers: Answers) -> str:
    """The zone that was settled on."""
    chosen = answers.get("which_place", 0)  # not asked where only one place has the name
    if isinstance(chosen, int):
        return str(answers["place"][chosen]["zone"])
    return str(chosen[answers.get("which_of_them", 0)]["zone"])
