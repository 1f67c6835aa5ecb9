"""A message to an athlete and the reply; whom words are put to, and the tap that sends them."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence

from bot.dialogue.flow import NO, YES, Answers, Choice, Choices, Flow, InvalidAnswer, Step, said
from bot.direct import words
from bot.words import common, invalid_answers
from bot.words.languages import listed
from engine.symptoms import screen

LONGEST = 3000


def _read(text: str) -> str:
    said = text.strip()
    if not said:
        raise InvalidAnswer(common.message_empty())
    if len(said) > LONGEST:
        raise InvalidAnswer(common.message_too_long(len(said), LONGEST))
    return said


def _read_from_coach(text: str) -> str:
    said = _read(text)
    if screen(said).drug:
        raise InvalidAnswer(invalid_answers.message_names_drug())
    return said


#: Context: "_name", the athlete's.
TO_ATHLETE = Flow(
    id="coach-message",
    steps=(
        Step(
            key="text",
            ask=lambda answers: words.ask_message(answers["_name"]),
            read=_read_from_coach,
            free=True,
        ),
    ),
)
#: Context: "_coach", the coach's name.
TO_COACH = Flow(
    id="reply-to-coach",
    steps=(
        Step(
            key="text",
            ask=lambda answers: words.ask_reply(answers["_coach"]),
            read=_read,
            free=True,
        ),
    ),
)


SEND, OTHER, LEAVE = "send", "other", "leave"
SURE = "sure"  # the question whether they go to whom they seem to be for
ALL = "all"  # where several were addressed
OWN = "own"  # for nobody else: a note of one's own, or a word to one's own coach
IN_A_ROW = 3


def sends(text: str) -> bool:
    """Whether a text says that the words which were shown are to go out."""
    plain = text.strip().rstrip(".! ")
    return said(plain, YES) or said(plain, words.SENDS)


def _asked(answers: Answers, question: str) -> str:
    """The question, and what comes first where the words tell of an emergency."""
    return f"{words.if_it_is_now()}\n\n{question}" if answers.get("_alarm") else question


def _named(answers: Answers) -> bool:
    return answers.get("_to") is not None


def _read_sure(text: str) -> str:
    word = text.strip().lower()
    if said(text, YES) or said(text, words.SENDS) or word == SEND:
        return SEND
    if said(text, NO) or said(text, words.LEAVES) or word == LEAVE:
        return LEAVE
    if word == OTHER:
        return OTHER
    raise InvalidAnswer(invalid_answers.use_buttons())


def _sure(answers: Answers) -> Choices:
    send = [Choice(words.send_button(answers["_name"]), SEND)]
    more = [Choice(words.somebody_else_button(), OTHER)] if len(answers["_athletes"]) > 1 else []
    return [send, more]


def _read_to(text: str, answers: Answers) -> str:
    plain = " ".join(text.split()).casefold().rstrip(" .!")
    if answers.get("_all") and (plain == ALL or said(plain, words.EVERYBODY)):
        return ALL
    for number, name in answers["_athletes"]:
        if plain in (str(number), name.casefold()):
            return str(number)
    if said(text, NO) or said(text, words.LEAVES) or plain == LEAVE:
        return LEAVE
    raise InvalidAnswer(words.not_a_name())


def _to(answers: Answers) -> Choices:
    everybody = [Choice(name, str(number)) for number, name in answers["_athletes"]]
    all_of_them = [[Choice(words.to_all_button, ALL)]] if answers.get("_all") else []
    return [
        *all_of_them,
        *(everybody[i : i + IN_A_ROW] for i in range(0, len(everybody), IN_A_ROW)),
    ]


#: Context: "_text"; "_alarm", whether it tells of a warning sign; "_athletes" as [id, name]; "_all"
#: where they were addressed together; "_to" and "_name" where it seems clear for whom.
PASS_ON = Flow(
    id="coach-pass-on",
    concurrent=True,
    steps=(
        Step(
            key=SURE,
            ask=lambda answers: _asked(answers, words.ask_sure(answers["_name"], answers["_text"])),
            read=_read_sure,
            choices=_sure,
            when=_named,
        ),
        Step(
            key="to",
            ask=lambda answers: _asked(answers, words.ask_to(answers["_text"])),
            read_with=_read_to,
            choices=_to,
            when=lambda answers: not _named(answers) or answers.get("sure") == OTHER,
        ),
    ),
)


_TO = r"(?:(?:to|for|an|für|tell|sag|sage)\s+)?"
_THEN = r"(?:\s*[,:;!–-]\s*|,?\s+(?:that|dass)\s+)"
_JOINT = r"\s*(?:,|&|\+|and|und)\s*(?:and\s+|und\s+)?"


def addressed_together(names: Sequence[str], text: str) -> tuple[list[str], str]:
    """Those at whom a text is put together ("Mia and Dora, …", "an alle: …"), and the text without
    that; else nobody.
    """
    said = text.strip()
    if not names:
        return [], said
    for everybody in (True, False):
        one_of = _either(listed(words.EVERYBODY) if everybody else names)
        begin = rf"{_TO}{one_of}(?!\w){_THEN}" if everybody else (
            rf"@?{one_of}(?:{_JOINT}@?{one_of})+(?!\w)[\s,:;–-]*"
        )  # fmt: skip
        match = re.match(begin, said, re.IGNORECASE)
        if match is not None and said[match.end() :]:
            named = re.findall(rf"(?<!\w){one_of}(?!\w)", match[0], re.IGNORECASE)
            meant = {name.casefold() for name in named}
            found = [name for name in names if everybody or name.casefold() in meant]
            return found, said[match.end() :]
    return [], said


def is_of_them(said: str, rest: str) -> bool:
    """Whether the name that a text begins with is its subject, and no call: "Mia has to sleep"."""
    called = re.search(r"[,:;–-]\s*$", said[: len(said) - len(rest)])
    first = rest.split(maxsplit=1)[0].casefold() if rest else ""
    return called is None and first in listed(words.OF_THEM)


def _either(said: Iterable[str]) -> str:
    return f"(?:{'|'.join(sorted(map(re.escape, said), key=len, reverse=True))})"
