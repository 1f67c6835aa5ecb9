"""An update, or a duty, that takes its process along each time is not begun on for ever."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import Engine, text
from sqlalchemy.exc import OperationalError
from sqlmodel import Session, select

from bot.core.chat import outbox
from bot.core.timing import agenda
from bot.core.timing.clock import FIRST_WHILE_S, DrivenClock
from bot.core.timing.duties import Duties
from bot.core.turn import ChatTurn, Context, Turn
from bot.core.use_cases import Came, Runtime, UseCases
from bot.dispatcher import poisoned
from bot.store.db import transaction
from bot.store.tables.traffic import AgendaRow, InboxRow, OutboxRow, Urgency
from bot.store.tables.week import AlertRow
from bot.telegram.beginnings import MOST
from bot.telegram.intake import Intake
from bot.telegram.worker import Worker
from tests.support.weeks import Team, in_peak_week
from tests.support.world import text_of

START = datetime(2027, 6, 1, 7, tzinfo=UTC)
INES, MARA = 11, 12


class Killed(BaseException):
    """What nobody catches, as nobody catches a signal: the transaction is lost."""


def _dies_of_it(turn: ChatTurn) -> None:
    outbox.say(turn, chat_id=turn.incoming.user_id, text=turn.incoming.text)
    if "deadly" in turn.incoming.text:
        raise Killed


def _apologise(turn: Turn, chat_id: int, urgent: str) -> None:
    outbox.say(turn, chat_id=chat_id, text=f"sorry {urgent}".strip())


def _how_urgent(_session: Session, _now: datetime, came: Sequence[Came]) -> list[Urgency]:
    return [Urgency.URGENT if "chest" in said else Urgency.ORDINARY for _, said in came]


class Installation:
    """A database, and one process after the other at work on it."""

    def __init__(
        self,
        engine: Engine,
        incoming: Callable[[ChatTurn], None] = _dies_of_it,
        told: Callable[[Turn, int, str], None] = _apologise,
        load: Callable[[], None] = lambda: None,
    ) -> None:
        self.engine, self.clock = engine, DrivenClock(START)
        use_cases = UseCases(
            incoming=incoming,
            due=lambda turn, row: None,
            undeliverable=lambda turn, row: None,
            poisoned=told,
            load=load,
        )
        self._runtime = Runtime(engine, use_cases, self.clock, lambda: Context(self.clock.now()))

    def receives(self, *said: tuple[int, str]) -> None:
        Intake(self.engine, self.clock, _how_urgent).store(
            [
                {
                    "update_id": number,
                    "message": {
                        "message_id": number, "date": int(START.timestamp()), "text": words,
                        "chat": {"id": chat, "type": "private"},
                        "from": {"id": chat, "is_bot": False, "first_name": "P"},
                    },
                }
                for number, (chat, words) in enumerate(said, 1)
            ]
        )  # fmt: skip

    def begins(self) -> Worker:
        return Worker(self._runtime, threads=2, handled=lambda: None, noted_for_s=FIRST_WHILE_S)

    def lives(self) -> bool:
        """One process, until it has done all it can or is killed; whether it is alive then."""
        worker = self.begins()
        try:
            for row in self.rows():
                if row.status == "new":
                    worker.handle(row.update_id, row.chat_id)
        except Killed:
            return False
        return True

    def rows(self) -> Sequence[InboxRow]:
        with Session(self.engine) as session:
            return session.exec(select(InboxRow).order_by("update_id")).all()

    def statuses(self) -> list[str]:
        return [row.status for row in self.rows()]

    def said(self, chat_id: int) -> list[str]:
        with Session(self.engine) as session:
            rows = select(OutboxRow).where(OutboxRow.chat_id == chat_id).order_by("id")
            return [row.payload["text"] for row in session.exec(rows)]


def test_what_has_killed_process_after_process_is_gone_past_at_last(any_engine: Engine) -> None:
    bot = Installation(any_engine)
    bot.receives((INES, "deadly"), (MARA, "61.2"), (INES, "and now?"))

    assert [bot.lives() for _ in range(MOST + 1)] == [False] * MOST + [True]

    assert bot.statuses() == ["poison", "done", "done"]
    assert bot.rows()[0].problem == "TookItsProcessAlong"
    assert bot.said(INES) == ["sorry", "and now?"]
    assert bot.said(MARA) == ["61.2"]


def test_what_is_killed_while_it_loads_is_nobodys_fault(any_engine: Engine) -> None:
    def dies() -> None:
        raise Killed

    bot = Installation(any_engine, load=dies)
    bot.receives((INES, "61.2"))
    assert [bot.lives() for _ in range(MOST + 2)] == [False] * (MOST + 2)
    assert (bot.statuses(), bot.rows()[0].attempts) == (["new"], 0)


def test_what_may_be_urgent_in_it_is_told_as_it_stands(any_engine: Engine) -> None:
    bot = Installation(any_engine)
    bot.receives((INES, "deadly chest pain"))
    assert [bot.lives() for _ in range(MOST + 1)] == [False] * MOST + [True]
    assert bot.said(INES) == ["sorry deadly chest pain"]


@pytest.mark.parametrize(("deadly", "then"), [("chest", ["sorry"]), ("", [])])
def test_where_telling_of_it_kills_too_less_is_told(
    any_engine: Engine, deadly: str, then: list[str]
) -> None:
    def tells(turn: Turn, chat_id: int, urgent: str) -> None:
        if deadly in urgent:
            raise Killed
        _apologise(turn, chat_id, urgent)

    bot = Installation(any_engine, told=tells)
    bot.receives((INES, "deadly chest pain"), (MARA, "61.2"))
    lives = 0
    while not bot.lives():
        lives += 1
        assert lives < 2 * MOST
    assert lives == MOST + 1 + (not then)
    assert bot.said(INES) == then
    assert bot.statuses() == ["poison", "done"]


def test_where_telling_of_it_fails_it_is_told_in_fewer_words(any_engine: Engine) -> None:
    def fails(turn: ChatTurn) -> None:
        raise ZeroDivisionError

    def tells(turn: Turn, chat_id: int, urgent: str) -> None:
        _apologise(turn, chat_id, urgent)
        if urgent:
            raise ZeroDivisionError

    bot = Installation(any_engine, incoming=fails, told=tells)
    bot.receives((INES, "chest pain"))
    worker = bot.begins()
    for _ in range(3):
        worker.handle(1, INES)
    assert bot.statuses() == ["poison"]
    assert bot.rows()[0].attempts == 3  # each was one, noted ahead or not
    assert bot.said(INES) == ["sorry"]


def test_a_database_that_goes_away_amid_an_update_counts_as_one_beginning(
    any_engine: Engine,
) -> None:
    def away(turn: ChatTurn) -> None:
        raise OperationalError("", {}, Exception())

    bot = Installation(any_engine, incoming=away)
    bot.receives((INES, "61.2"))
    worker = bot.begins()
    for _ in range(5):
        with pytest.raises(OperationalError):
            worker.handle(1, INES)
    assert bot.statuses() == ["new"]
    assert bot.rows()[0].attempts == 1


def test_a_chat_that_another_process_is_at_work_on_is_not_begun_on(postgres_engine: Engine) -> None:
    bot = Installation(postgres_engine)
    bot.receives((INES, "61.2"))
    with postgres_engine.begin() as other:
        other.execute(text(f"SELECT pg_advisory_xact_lock({INES})"))
        assert not bot.begins().handle(1, INES)
    assert bot.rows()[0].attempts == 0


async def test_after_the_first_while_nothing_is_noted_and_chats_are_served_side_by_side(
    any_engine: Engine,
) -> None:
    bot = Installation(any_engine)
    bot.receives((INES, "one"), (MARA, "two"))
    worker = bot.begins()
    await worker.step()
    assert worker.busy == 1
    await worker.drain()
    assert worker.slots == 1
    assert [row.attempts for row in bot.rows() if row.status == "done"] == [0]  # it has not failed
    bot.clock.advance(timedelta(seconds=FIRST_WHILE_S + 1))
    assert worker.slots == 2
    bot.receives((INES, "one"), (MARA, "two"), (13, "deadly"))
    with pytest.raises(Killed):
        worker.handle(3, 13)
    assert bot.rows()[2].attempts == 0
    await worker.close()


def test_a_duty_that_kills_is_put_off_for_longer_each_time_and_holds_up_nobody(
    any_engine: Engine,
) -> None:
    clock, done = DrivenClock(START), list[str]()

    def does(_turn: Turn, row: AgendaRow) -> None:
        if row.kind == "deadly":
            raise Killed
        done.append(row.kind)

    use_cases = UseCases(incoming=_dies_of_it, due=does, undeliverable=lambda turn, row: None)

    def lives() -> bool:
        """One process looks for what is due, once or until it is killed."""
        duties = Duties(
            Runtime(any_engine, use_cases, clock, lambda: Context(clock.now())),
            noted_for_s=FIRST_WHILE_S,
        )
        try:
            duties.do_due()
        except Killed:
            return False
        return True

    with transaction(any_engine) as session:
        for minutes, kind in enumerate(("deadly", "prompt", "nudge")):
            named = agenda.Named("athlete:1", START.date(), kind)
            agenda.put(session, named, due_at=START - timedelta(minutes=9 - minutes))

    assert [lives() for _ in range(4)] == [False, False, False, True]
    assert done == ["prompt", "nudge"]  # in their order, behind what is put off
    pauses = []
    for _ in range(4):
        began = clock.now()
        while lives():
            clock.advance(timedelta(seconds=5))
        pauses.append((clock.now() - began).total_seconds())
    assert pauses == [15, 30, 60, 120]
    with Session(any_engine) as session:
        rows = session.exec(select(AgendaRow).order_by("id")).all()
        assert [(row.status, row.attempts) for row in rows] == [
            ("waiting", 7), ("done", 0), ("done", 0),
        ]  # fmt: skip


def test_a_duty_that_was_killed_over_once_is_done_before_what_comes_behind_it(
    any_engine: Engine,
) -> None:
    clock, done, kills = DrivenClock(START), list[str](), iter([Killed()])

    def does(_turn: Turn, row: AgendaRow) -> None:
        for kill in kills:
            raise kill
        done.append(row.kind)

    use_cases = UseCases(incoming=_dies_of_it, due=does, undeliverable=lambda turn, row: None)
    runtime = Runtime(any_engine, use_cases, clock, lambda: Context(clock.now()))
    with transaction(any_engine) as session:
        for kind in ("prompt", "nudge"):
            named = agenda.Named("athlete:1", START.date(), kind)
            agenda.put(session, named, due_at=START)
    with pytest.raises(Killed):
        Duties(runtime, noted_for_s=FIRST_WHILE_S).do_due()
    Duties(runtime).do_due()
    assert done == ["prompt", "nudge"]


DANGER = "I fainted twice and my chest hurts"


@pytest.fixture
def team(own_engine: Engine) -> Team:
    return in_peak_week(own_engine)


def not_handled(team: Team, chat_id: int, said: str) -> None:
    with transaction(team.world.engine, locked=True) as session:
        poisoned(Turn(session, Context(team.world.now)), chat_id, said)


def test_danger_that_could_not_be_handled_reaches_the_coach_as_a_warning_until_it_is_answered(
    team: Team,
) -> None:
    team.coach.hears()
    not_handled(team, team.athlete.user_id, DANGER)

    (told,) = team.coach.hears()
    assert told.text.startswith("Warning: Mira") and not told.silent
    assert DANGER in told.text and "Call Mira" in told.text
    said = text_of(team.athlete.hears())
    assert "could not make anything of your last message" in said
    assert "Ravi" in said and "your local emergency number" in said
    assert team.profile().frozen_at is not None
    with team.world.session() as session:
        (alert,) = session.exec(select(AlertRow).where(AlertRow.flag == "symptom-unread"))
        assert alert.acknowledged_at is None
    team.world.later(minutes=6)
    assert DANGER in text_of(team.coach.hears())


def test_what_is_not_urgent_or_no_athletes_is_apologised_for(team: Team) -> None:
    team.coach.hears()
    not_handled(team, team.athlete.user_id, "")
    assert "send it again" in text_of(team.athlete.hears())
    not_handled(team, team.coach.user_id, DANGER)
    assert "send it again" in text_of(team.coach.hears())
