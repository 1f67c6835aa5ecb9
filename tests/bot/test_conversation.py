"""Hundreds of invented messages in both languages, in every state of an athlete's days: each lands
where it belongs, exactly once, and is answered.

The messages stand in `tests.support.conversation_en` and `_de`, by where they have to land. They are
our own, and so is the choice of states; the messages take turns among them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime
from types import ModuleType
from typing import Any

import pytest
from sqlalchemy import bindparam
from sqlmodel import Session, col, func, select

from bot.alerts import words_athlete as safety_words
from bot.core.turn import ChatTurn, Incoming, Kind, Turn
from bot.dialogue import answering, asking
from bot.direct import words
from bot.dispatcher import COMMANDS, USE_CASES
from bot.people.changes import Change
from bot.store.db import transaction
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, OpenQuestion, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import AlertRow, CheckInRow, SymptomReport
from bot.words.languages import speaking
from engine.written.chatter import is_chatter
from tests.bot.test_stage import lay_out
from tests.support import conversation_de, conversation_en
from tests.support.weeks import Team, invited
from tests.support.world import World

ATHLETE = 2
#: The flows of the questions whether something is wrong.
ABOUT_SIGNS = ("symptom-check", "something-wrong", "unwell")
#: The history's row for a complaint in words that had not been kept before.
TOLD_OF_A_SYMPTOM = Change.SYMPTOM
#: Of what is harmless, so much may be asked about at most: the ears are set to miss nothing.
ASKED_IN_VAIN = 0.08
# A message is tried in every so manieth state, each beginning at another one: in a few seconds a run,
# or each nearly everywhere.
A_FEW, MOST = 36, 2
A_FEW_CHECK_INS = 3  # of these every so manieth, wherever one may come, or each of them
AFTER_TURNS = 2  # so many states come after the event: each message is tried in one of them
TABLES = {"en": conversation_en, "de": conversation_de}


@dataclass
class State:
    """A moment in an athlete's days. `step` is the question that is open, "" for none."""

    name: str
    world: World
    step: str = ""
    may_check_in: bool = False
    landing: str = "coach"  # of what is nothing else
    over: bool = False  # the event, so that what is said then is tried too
    kinds: frozenset[str] = frozenset(
        {"chatter", "question", "food", "request", "complaint", "drug"}
    )


@dataclass
class Came:
    """Where one message landed, and what was said to its writer."""

    landed: list[str] = field(default_factory=list)
    said: str = ""
    to_coach: str = ""


# Made once, since every message asks them twice.
_LAST: Any = select(
    *(
        select(func.max(table.id)).scalar_subquery()  # type: ignore[attr-defined]
        for table in (OutboxRow, HistoryRow, AlertRow, SymptomReport, OpenQuestion)
    )
)
_NEW_SAID = select(OutboxRow).where(col(OutboxRow.id) > bindparam("last"))
_NEW_HISTORY = select(HistoryRow.what).where(col(HistoryRow.id) > bindparam("last"))
_ASKED_ABOUT_SIGNS = select(OpenQuestion.id).where(
    col(OpenQuestion.id) > bindparam("last"), col(OpenQuestion.flow).in_(ABOUT_SIGNS)
)
_QUESTIONS = select(OpenQuestion.id, OpenQuestion.closed_at, OpenQuestion.answers)
_CHECK_INS = select(CheckInRow.id, CheckInRow.revision)


class _BackOutError(Exception):
    pass


def send(world: World, language: str, text: str) -> Came:
    """What becomes of a message, found out and taken back."""
    came = Came()
    with pytest.raises(_BackOutError), transaction(world.engine) as session:
        before = _Kept.of(session)
        person = session.get_one(Person, ATHLETE)
        USE_CASES.incoming(
            ChatTurn(
                session,
                world.context,
                Incoming(
                    update_id=990_001, chat_id=person.chat_id, private=True,
                    user_id=person.telegram_user_id, first_name=person.first_name,
                    language=language, kind=Kind.TEXT, text=text, message_id=770_001, tap_id=None,
                    sent_at=world.now,
                ),
            )
        )  # fmt: skip
        session.flush()
        with speaking(language):
            before.compare(session, came, person.chat_id)
        raise _BackOutError
    return came


@dataclass
class _Kept:
    """What there was before a message."""

    outbox: int
    history: int
    alerts: int
    reports: int
    questions: int
    answers: dict[int, tuple[bool, str]]
    checkins: dict[int, int]

    @classmethod
    def of(cls, session: Session) -> _Kept:
        return cls(
            *(last or 0 for last in session.exec(_LAST).one()),
            _answers(session),
            _checkins(session),
        )

    def compare(self, session: Session, came: Came, chat: int) -> None:
        new = session.exec(_NEW_SAID, params={"last": self.outbox}).all()
        mine = [row for row in new if row.chat_id == chat and row.method != "setMyCommands"]
        came.said = "\n---\n".join(row.payload.get("text", row.method) for row in mine)
        came.to_coach = "\n---\n".join(
            row.payload.get("text", "") for row in new if row.chat_id != chat
        )
        history = session.exec(_NEW_HISTORY, params={"last": self.history}).all()
        _, _, alerts, reports, _ = session.exec(_LAST).one()
        asked = session.exec(_ASKED_ABOUT_SIGNS, params={"last": self.questions}).first()
        # said again while its alert is open it opens no other one: it is kept in the new words,
        # and they are added to what the coach has before them
        again = TOLD_OF_A_SYMPTOM in history
        opened = (alerts or 0) > self.alerts or (reports or 0) > self.reports
        alerted = opened or again or asked is not None
        came.landed += ["coach"] * sum(what == "message to coach" for what in history)
        came.landed += ["note"] * sum(what == "own note" for what in history)
        came.landed += ["alert"] if alerted else []
        came.landed += ["check-in"] if _checkins(session) != self.checkins else []
        now = _answers(session)
        if any(now.get(number) != held for number, held in self.answers.items()):
            came.landed += ["answer"] if "check-in" not in came.landed else []
        if not came.landed and came.said:
            came.landed.append(_by_words(came.said))


def _answers(session: Session) -> dict[int, tuple[bool, str]]:
    """Each question: what has been answered in it so far."""
    return {
        number or 0: (
            closed_at is not None,
            repr(sorted((k, v) for k, v in answers.items() if k not in ("_typed_in", "_meant"))),
        )
        for number, closed_at, answers in session.exec(_QUESTIONS)
    }


def _checkins(session: Session) -> dict[int, int]:
    return {number or 0: revision for number, revision in session.exec(_CHECK_INS)}


def _by_words(said: str) -> str:
    """Where it landed, by what its writer was told: nowhere else is it to be seen."""
    for landing, sentence in (
        ("nobody", words.nobody_reads()), ("not agreed", words.not_before_you_agree()),
    ):  # fmt: skip
        if sentence in said:
            return landing
    return "reply"


def served(world: World, language: str, command: str) -> str:
    return send(world, language, f"/{command}").said


# The states

#: A morning, a question at a time: what is answered, or the value of the button that is tapped; any
#: other question is answered by its first button.
MORNING = {
    "weight_kg": "60.4", "fullness": "6", "water_l": "3.5", "sharpness": "4", "carb_eaten_g": "500",
    "training_done": "as-planned", "fine": "off", "symptoms": "done", "gut": "fine", "sleep_h": "7",
    "note": "skip",
}  # fmt: skip
#: Of these questions, those whose answer may come with the whole morning in a line.
IN_A_LINE = ("weight_kg", "fullness", "water_l", "sharpness", "carb_eaten_g", "fine")


def states(
    team_at: Callable[[datetime], Team], make_engine: Callable[[], Team], language: str
) -> Iterator[State]:
    """One state after the other; each is left before the next begins."""
    yield from _first_days(make_engine(), language)
    team = team_at(datetime(2027, 5, 4, 9, 0, tzinfo=UTC))
    team.athlete.language = language
    yield State("the morning's question is open since hours", team.world, "weight_kg", True)
    team.athlete.writes("60.4 5 3.5 fine")
    yield State("after the check-in", team.world, may_check_in=True)
    team.world.until(datetime(2027, 5, 7, 5, 0, tzinfo=UTC))
    _close_questions(team)
    yield State("before the prompt, in the load", team.world, may_check_in=True)
    team.world.until(datetime(2027, 5, 7, 5, 40, tzinfo=UTC))
    team.athlete.writes("/checkin")
    while step := _open_step(team.world):
        answer = MORNING.get(step) or _first_button(team)
        yield State(
            f"{step} asked", team.world, step, step in IN_A_LINE,
            landing="answer" if step in ("note", "symptoms") else "coach",
        )  # fmt: skip
        _answer(team, step, answer)
        assert _open_step(team.world) != step, step
    yield State("after the check-in, in the load", team.world, may_check_in=True)
    team.athlete.presses("set:prompt_time")
    yield State("a setting asked", team.world, _open_step(team.world), may_check_in=False)
    team.athlete.writes("06:30")
    team.athlete.writes("/pause")
    yield State("paused", team.world)
    team.athlete.writes("/resume")
    team.athlete.writes("my heart was pounding at my desk, maybe the coffee")
    yield State("a symptom asked about", team.world, _open_step(team.world))
    team.athlete.writes("I fell and hit my head, I fainted")
    yield State("a warning open", team.world, _open_step(team.world))
    team.world.until(datetime(2027, 5, 9, 9, 0, tzinfo=UTC))
    _close_questions(team)
    yield State("the day itself", team.world)
    lay_out(team)
    yield State("on the day, by its timetable", team.world)
    for day, name in ((10, "the day after"), (16, "a week after")):
        team.world.until(datetime(2027, 5, day, 16, 0, tzinfo=UTC))
        _close_questions(team)
        yield State(f"{name} the event", team.world, over=True)
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, ATHLETE)
        profile.status = AthleteStatus.ENDED
        session.add(profile)
    yield State(
        "nobody coaches", team.world, landing="nobody",
        kinds=frozenset({"chatter", "question", "food"}),
    )  # fmt: skip


def _close_questions(team: Team) -> None:
    with transaction(team.world.engine) as session:
        for question in session.exec(select(OpenQuestion).where(OpenQuestion.person_id == ATHLETE)):
            asking.close(Turn(session, team.world.context), question)


def _first_days(team: Team, language: str) -> Iterator[State]:
    """From the invitation to the last of the first questions, and before a plan."""
    team.athlete.language = language
    yield State(
        "before consent", team.world, "consent", landing="not agreed",
        kinds=frozenset({"chatter", "question", "food", "request"}),
    )  # fmt: skip
    told = {"sex", "diabetes", "place", "which_place", "carb_g"}
    with transaction(team.world.engine) as session:
        question = asking.open_questions(session, session.get_one(Person, ATHLETE))[0]
        step = question.step
    while step:
        if step in told:
            yield State(f"first questions: {step}", team.world, step)
        _answer(team, step, FIRST.get(step, "no"))
        following = _open_step(team.world)
        assert following != step, step
        step = following
    yield State("before a plan", team.world)


#: The first questions' answers, or the values of their buttons; all others are answered with a no.
FIRST = {
    "consent": "yes", "birth_year": "1996", "sex": "female", "weight_unit": "kg", "volume_unit": "l",
    "place": "Dublin", "which_place": "0", "prompt_time": "06:30", "height_cm": "165",
    "body_mass_kg": "61.2", "body_fat_percent": "14", "carb_g": "310", "protein_g": "140",
    "fat_g": "55", "fibre_g": "25", "water_l": "3.5", "sodium_mg": "2300",
}  # fmt: skip


def _answer(team: Team, step: str, answer: str) -> None:
    """Tap the button with this value, where there is one; else type the answer."""
    for said in reversed(team.athlete.all_said()):
        for data in said.buttons.values():
            if data.split(":")[0] == "q" and data.split(":", 2)[2] == f"{step}:{answer}":
                team.athlete.presses(data, said.outbox_id)
                return
    team.athlete.writes(answer)


def _first_button(team: Team) -> str:
    """The value of the first button under what is asked; a check-in's question has its answer so."""
    return next(iter(team.athlete.all_said()[-1].buttons.values())).split(":", 3)[3]


def _open_step(world: World) -> str:
    with world.session() as session:
        asked = asking.open_questions(session, session.get_one(Person, ATHLETE))
        return asked[-1].step if asked else ""


# The messages


def messages(table: ModuleType, state: State, turn: int, every: int) -> Iterator[tuple[str, str]]:
    """(kind, text) of those whose turn it is in this state."""
    told: dict[str, list[str]] = {
        "chatter": list(table.CHATTER),
        "question": list(table.QUESTIONS),
        "food": list(table.FOOD),
        "complaint": list(table.COMPLAINTS),
        "drug": list(table.DRUGS),
    }
    for kind, texts in told.items():
        if kind in state.kinds:
            yield from ((kind, text) for n, text in enumerate(texts) if (n + turn) % every == 0)
    if "request" in state.kinds:
        asked = [(name, text) for name, texts in table.REQUESTS.items() for text in texts]
        yield from (
            (f"/{name}", text) for n, (name, text) in enumerate(asked) if (n + turn) % every == 0
        )
    if state.over:
        after = [(kind, text) for kind, texts in table.AFTER.items() for text in texts]
        yield from (one for n, one in enumerate(after) if (n + turn) % AFTER_TURNS == 0)
    yield from (("answer", text) for text in table.ANSWERS.get(state.step, ()))
    if state.may_check_in:
        some = A_FEW_CHECK_INS if every == A_FEW else 1
        yield from (("check-in", t) for n, t in enumerate(table.CHECK_INS) if (n + turn) % some < 1)


IN_VAIN = "was asked about in vain"


def problem(state: State, language: str, kind: str, text: str, shown: dict[str, str]) -> str:
    """What is wrong with where this message landed; "" where nothing is."""
    came = send(state.world, language, text)
    landed = sorted(came.landed)
    if not came.said:
        return "was not answered"
    with speaking(language):  # before consent nothing becomes an alert, and the answer says so
        told_nobody = safety_words.stays_with_you(self_coached=False) in came.said
    if ("alert" in landed or told_nobody) and kind not in ("complaint", "drug"):
        return IN_VAIN
    if kind.startswith("/"):
        command = kind[1:]
        free = state.landing == "answer" and landed in (["answer"], ["check-in"])
        if command not in shown:
            shown[command] = served(state.world, language, command)
        return "" if free or came.said == shown[command] else f"was not served: {came.said}"
    if landed not in _wanted(state, kind, text):
        return f"landed in {landed}: {came.said}"
    return _not_passed_on(state, language, kind, text, came) if landed == ["coach"] else ""


def _wanted(state: State, kind: str, text: str) -> list[list[str]]:
    if kind in ("complaint", "drug"):
        told = [["answer"]] if state.step == "symptoms" else []
        return [["alert"], ["alert", "answer"], ["alert", "check-in"], *told]
    if kind == "answer":
        return [["answer"], ["check-in"]]
    if kind == "check-in":
        return [["check-in"], ["answer"]] if state.step else [["check-in"]]
    wanted = [[state.landing], *([["check-in"]] if state.landing == "answer" else [])]
    if state.step and len(text.split()) <= answering.MOST_WORDS_OF_AN_ATTEMPT:
        wanted.append(["reply"])  # taken for an answer that went wrong, and asked again
    if state.step == "fine" and text.strip(" !.👍").casefold() in ("ok", "okay", "k"):
        wanted.append(["check-in"])  # "Anything else going on?": nothing is
    if state.step in ("place", "which_place") and len(text.split()) <= 2:
        wanted.append(["answer"])  # there are places by many names
    return wanted


def _not_passed_on(state: State, language: str, kind: str, text: str, came: Came) -> str:
    """What is missing of a message that was passed on: in its words, once, and its writer knows."""
    if is_chatter(text):  # kept for their next words, and nobody is disturbed
        return "" if _says_so(came.said, language, words.kept_for) and not came.to_coach else "told"
    if came.to_coach.count(text.strip()) != 1:
        return f"reached the coach as {came.to_coach!r}"
    if not _says_so(came.said, language):
        return f"its writer does not know: {came.said}"
    if kind == "food" and state.may_check_in and "/food" not in came.said:
        return f"the way to the food was not shown: {came.said}"
    return ""


def _says_so(
    said: str, language: str, sentence: Callable[[list[str]], str] = words.passed_on
) -> bool:
    with speaking(language):
        return sentence(["Ravi"]) in said


@pytest.mark.timeout(600)
@pytest.mark.parametrize("every", [A_FEW, pytest.param(MOST, marks=pytest.mark.soak)])
@pytest.mark.parametrize("language", list(TABLES))
def test_every_message_lands_where_it_belongs_exactly_once_and_is_answered(
    ours: None,
    team_at: Callable[[datetime], Team],
    shaped_engine: Callable[[], Team],
    language: str,
    every: int,
) -> None:
    table, wrong, tried, in_vain = TABLES[language], [], 0, []
    for turn, state in enumerate(states(team_at, shaped_engine, language)):
        shown: dict[str, str] = {}
        for kind, text in messages(table, state, turn, every):
            tried += 1
            found = problem(state, language, kind, text, shown)
            if found == IN_VAIN:
                in_vain.append(text)
            elif found:
                wrong.append(f"{state.name}: {text!r} ({kind}) {found}")
    assert not wrong, f"{len(wrong)} of {tried}:\n" + "\n".join(wrong)
    assert tried > 250
    assert len(in_vain) <= ASKED_IN_VAIN * tried, in_vain


def test_there_are_three_hundred_messages_in_each_language_and_no_two_alike() -> None:
    for table in TABLES.values():
        every = [
            *table.CHATTER, *table.QUESTIONS, *table.FOOD, *table.COMPLAINTS, *table.DRUGS,
            *table.CHECK_INS, *(text for texts in table.AFTER.values() for text in texts),
            *(text for texts in table.REQUESTS.values() for text in texts),
        ]  # fmt: skip
        answers = [text for texts in table.ANSWERS.values() for text in texts]
        assert len(every) + len(answers) >= 300
        assert len(set(every)) == len(every)
        assert set(table.REQUESTS) <= set(COMMANDS)


@pytest.fixture
def shaped_engine(own_engine: object) -> Callable[[], Team]:
    """Mira has just been invited, on a database of her own."""
    return lambda: invited(own_engine)  # type: ignore[arg-type]
