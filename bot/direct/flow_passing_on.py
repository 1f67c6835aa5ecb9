"""What a coach typed without saying for whom: shown once more, and sent with one tap."""

from __future__ import annotations

from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step
from bot.dialogue.readers import NO, YES, said
from bot.direct import words_passing_on as words
from bot.words import invalid_answers

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
