"""Conversations as data: answers so far in, next question out. Pure; nothing here touches a chat.

A flow is a row of steps. A step knows how to ask, which buttons to offer and how to read an answer,
typed or tapped: a button's value goes through the same `read` as typed text. Answers are plain
JSON values by step key; keys that begin with "_" are context that was laid in when the flow began.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Any

from bot.words.languages import Sentence, worded

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


def both(first: When | None, second: When) -> When:
    """Where the one holds, if there is one, and the other too."""
    return second if first is None else lambda answers: first(answers) and second(answers)


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One question. `read` raises a `ParseError` or an `InvalidAnswer` for what it cannot take.

    What it asks, offers and whether it applies may hang on the answers so far, or not. `read` needs
    the text alone; a step whose reading hangs on the answers has `read_with`, which sees "_now" among
    them, the instant of the answer as ISO text; one that only leads back needs neither. `ask` sees
    "_again" where an answer could not be read and the question stands once more.

    With `many`, choices are ticked one by one until "done", and the answer is a list; typed text is
    one more entry and ends the step; `none` is what the last button says while nothing is ticked.
    Steps whose `when` is false are passed over. `stays` keeps the question readable after a tap;
    otherwise the next question takes its place. With `back_to`, an answer that reads as None puts
    that earlier question again, and with `returns` any answer does. A step that `spreads` reads
    several answers by key (`given_by`).
    One that is `free` is answered by whatever words are typed, at least where that holds.
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
    private: bool = False
    ticks: str = field(
        init=False
    )  # under which key ticked choices are kept until they are done with

    def __post_init__(self) -> None:
        object.__setattr__(self, "ticks", f"_ticked_{self.key}")
        ways = [way for way in (self.read, self.read_with) if way is not None]
        if len(ways) != 1 and not (self.back_to and not ways):
            raise ValueError(f"step {self.key} is read in one way")

    def asked(self, answers: Answers) -> str:
        return worded(self.ask, answers)

    def offers(self, answers: Answers) -> Choices:
        return self.choices(answers) if callable(self.choices) else self.choices

    def applies(self, answers: Answers) -> bool:
        return self.when is None or self.when(answers)

    def takes_anything(self, answers: Answers) -> bool:
        """Whether whatever is typed could be its answer."""
        return self.free(answers) if callable(self.free) else self.free

    def answer(self, text: str, answers: Answers) -> Any:
        """What the text or a button's value says, as `read` or `read_with` has it."""
        if self.read_with is not None:
            return self.read_with(text, answers)
        return self.read(text) if self.read is not None else None


@dataclass(frozen=True, slots=True, kw_only=True)
class Flow:
    """`so_far` is a line that shows the answers given, put above the next question. What is asked by
    one that is `patient` has free words as its answer days later, too.
    """

    id: str
    steps: tuple[Step, ...]
    so_far: Callable[[Answers], str] | None = None
    can_cancel: bool = True
    patient: bool = False

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
