"""Three lists to tick before a first week: conditions, eating, signs of too little energy."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator

from bot.dialogue.flow import DONE, NONE, Answers, Choice, Choices, InvalidAnswer, Step, said
from bot.membership.onboarding import words_health as words
from bot.words.common import none_of_these_button
from bot.words.languages import listed
from engine.planning.health_screen import Part, Sign, asked_of, sign_named
from engine.values.athlete import Sex

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
        ask=lambda answers: words.ask(
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
    return tuple([Choice(words.sign_button(sign), sign.value)] for sign in signs)


def _read(text: str, part: Part, signs: tuple[Sign, ...]) -> str | list[str]:
    """Typed: lines by the words of their buttons, questions by their numbers, or none of them."""
    plain = " ".join(text.split()).strip(" .!").casefold()
    if plain == DONE or said(plain, NONE) or _says_none(plain):
        return DONE
    if part is Part.EATING:
        known = {str(number): sign for number, sign in enumerate(signs, start=1)}
        parts = [one for one in _GAPS.split(plain) if one and one not in listed(words.ONLY)]
    else:
        known = {words.sign_button(sign).casefold(): sign for sign in signs}
        parts = [plain] if plain in known else [one for one in _BETWEEN.split(plain) if one]
    parts = [one for one in parts if one not in listed(words.AND)]
    known |= {sign.value: sign for sign in signs}
    if parts and all(one in known for one in parts):
        return [known[one].value for one in parts]
    if part is Part.CONDITIONS and (told := _called(plain, signs)):
        return told
    raise InvalidAnswer(words.tap_or_type(part))


def _says_none(plain: str) -> bool:
    """Whether it is a none, in whatever words: "no to all of them", "nichts davon trifft zu"."""
    said_so = _WORD.findall(plain)
    none, beside = listed(words.NONE_OF_IT), listed(words.BESIDE_NONE)
    return any(one in none for one in said_so) and all(one in none + beside for one in said_so)


def _called(plain: str, signs: tuple[Sign, ...]) -> list[str]:
    """Conditions named in a sentence ("I had an eating disorder at 17"); none where it says of one that
    it is not so, or of somebody else.
    """
    said_so = f" {' '.join(_WORD.findall(plain))} "
    if any(f" {word} " in said_so for word in listed(words.NOT_OWN)):
        return []
    return [
        sign.value
        for sign in signs
        if sign in words.CALLED
        and any(f" {name} " in said_so for name in listed(words.CALLED[sign]))
    ]


def _flat(answer: object) -> Iterator[str]:
    if isinstance(answer, list):
        for one in answer:
            yield from _flat(one)
    elif isinstance(answer, str) and answer != DONE:
        yield answer
