"""Conversations as data: answers so far in, next question out. Pure; nothing here touches a chat.

A flow is a row of steps. A step knows how to ask, which buttons to offer and how to read an answer,
typed or tapped: a button's value goes through the same `read` as typed text. Answers are plain
JSON values by step key; keys that begin with "_" are context that was laid in when the flow began.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Any

Answers = dict[str, Any]
DONE = "done"  # the value that ends a step with many answers


class InvalidAnswer(ValueError):  # noqa: N818 - it is an answer to a person, not a fault
    """An answer that this step cannot take, with the sentence that says what to do instead."""


@dataclass(frozen=True, slots=True)
class Choice:
    label: str
    value: str


Choices = Sequence[Sequence[Choice]]


def no_choices(answers: Answers) -> Choices:
    return ()


def always(answers: Answers) -> bool:
    return True


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One question. `read` raises a `ParseError` or an `InvalidAnswer` for what it cannot take.

    `read` sees the answers so far and "_now", the instant of the answer as ISO text; `ask` sees
    "_again" where an answer could not be read and the question stands once more.

    With `many`, choices are ticked one by one until "done", and the answer is a list; typed text is
    one more entry and ends the step; `none` is what the last button says while nothing is ticked.
    Steps whose `when` is false are passed over. `stays` keeps the question readable after a tap;
    otherwise the next question takes its place. With `back_to`, an answer that reads as None puts
    that earlier question again, and with `returns` any answer does. A step that `spreads` reads
    several answers by key (`given_by`).
    With `names`, the answer is a name in the writer's own words, and a few words are meant as one.
    What is typed to one that is `private` is passed on to nobody, unless it asks something.
    """

    key: str
    ask: Callable[[Answers], str]
    read: Callable[[str, Answers], Any]
    choices: Callable[[Answers], Choices] = no_choices
    when: Callable[[Answers], bool] = always
    many: bool = False
    none: Callable[[], str] | None = None
    stays: bool = False
    back_to: str = ""
    returns: bool = False
    spreads: bool = False
    names: bool = False
    private: bool = False
    ticks: str = field(
        init=False
    )  # under which key ticked choices are kept until they are done with

    def __post_init__(self) -> None:
        object.__setattr__(self, "ticks", f"_ticked_{self.key}")


def nothing_yet(answers: Answers) -> str:
    return ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Flow:
    """`so_far` is a line that shows the answers given, put above the next question. What is asked by
    one that is `patient` has free words as its answer days later, too.
    """

    id: str
    steps: tuple[Step, ...]
    so_far: Callable[[Answers], str] = nothing_yet
    can_cancel: bool = True
    patient: bool = False

    def __post_init__(self) -> None:
        keys = [step.key for step in self.steps]
        if len(set(keys)) != len(keys):
            raise ValueError(f"flow {self.id} asks a key twice")

    def next_step(self, answers: Answers) -> Step | None:
        """The first step that applies and has no answer yet; None when all is said."""
        return next(
            (step for step in self.steps if step.key not in answers and step.when(answers)), None
        )

    def step(self, key: str) -> Step | None:
        return next((step for step in self.steps if step.key == key), None)


def given_by(step: Step, answer: Any) -> Answers:
    """What an answer to this step adds to the answers so far."""
    return dict(answer) if step.spreads else {step.key: answer}


def offered(step: Step, answers: Answers) -> set[str]:
    """The values that a button of this step may send back."""
    return {choice.value for row in step.choices(answers) for choice in row}
