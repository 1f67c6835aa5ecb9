"""What takes long is worked out with nothing locked, and never of what has changed meanwhile."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from types import ModuleType
from typing import Any

import pytest
from sqlalchemy import Engine, text
from sqlmodel import Session, col, select

from bot.core.timing.clock import DrivenClock
from bot.core.turn import ChatTurn, Context
from bot.core.use_cases import Runtime
from bot.dispatcher import USE_CASES
from bot.food.list import figures_of
from bot.store.base import id_of
from bot.store.db import in_transaction, is_sqlite, make_engine, transaction
from bot.store.tables.food import FoodDayRow, FoodRow
from bot.store.tables.people import OpenQuestion, Person
from bot.store.tables.setting import SettingRow
from bot.store.tables.traffic import InboxRow, OutboxRow
from bot.store.tables.week import CheckInRow, DecisionRow, EventRow, LimitsRow
from bot.store.working_out import MOST_BEGINNINGS, AtHand, worked_out
from bot.telegram.intake import Intake
from bot.telegram.reading import read
from bot.telegram.worker import Worker
from engine.decision import foresight
from engine.decision.decide import case_from_dict, decide, decision_as_dict
from engine.food.foods import search
from engine.food.portions import menu
from engine.planning import teaching
from engine.symptoms import screen as screening_of
from engine.symptoms import screening
from engine.values.athlete import EventKind
from tests.bench.crew import NOW, into_inbox, tapped, typed
from tests.support.many import Alike, many_athletes

LINE = "60.4 5 3.5 4 on target fine"
ANSWERS = {
    "weight_kg": "60.4", "fullness": "5", "sharpness": "4", "water_l": "3.5",
    "carb_eaten_g": "on target", "training_done": "as planned",
}  # fmt: skip
CHAT, COACH_CHAT = 5003, 4000
CONTEXT = Context(now=NOW)


@dataclass
class Week:
    """An athlete three days out who has told two mornings, in a database; and another process's way to
    the same database.
    """

    engine: Engine
    other: Engine
    athlete_id: int

    def worker(self) -> Worker:
        return Worker(
            Runtime(self.engine, USE_CASES, DrivenClock(NOW), lambda: CONTEXT),
            threads=1,
            handled=lambda: None,
        )

    def does(self, raw: dict[str, Any]) -> None:
        into_inbox(self.engine, [raw])
        told = raw.get("message") or raw["callback_query"]["message"]
        assert self.worker().handle(raw["update_id"], told["chat"]["id"])
        with Session(self.engine) as session:
            assert session.get_one(InboxRow, raw["update_id"]).status == "done"

    def asked(self) -> OpenQuestion:
        with Session(self.engine) as session:
            query = select(OpenQuestion).where(col(OpenQuestion.closed_at).is_(None))
            return session.exec(query).one()

    def decided(self) -> DecisionRow:
        """The newest decision; what is stored of it is what is decided of its case, to the bit."""
        forget()
        with Session(self.engine) as session:
            row = session.exec(select(DecisionRow).order_by(col(DecisionRow.id).desc())).first()
        assert row is not None
        assert decision_as_dict(decide(case_from_dict(row.case))) == row.decision
        return row


@pytest.fixture
def week(any_engine: Engine) -> Iterator[Week]:
    with transaction(any_engine) as session:
        coach = Person(
            telegram_user_id=COACH_CHAT, chat_id=COACH_CHAT, first_name="Ravi", is_coach=True,
            created_at=NOW,
        )  # fmt: skip
        session.add(coach)
        ids = many_athletes(
            session, id_of(coach), 4, NOW, Alike(answered=False, zones=("UTC",), first_chat=5000)
        )
        for back in (2, 1):
            session.add(
                CheckInRow(
                    athlete_id=ids[3], date=NOW.date() - timedelta(days=back),
                    weight_kg=60.0 + back / 10, fullness=5, sharpness=4, water_l=3.5,
                    gut="fine", answered_at=NOW - timedelta(days=back),
                )
            )  # fmt: skip
    other = make_engine(any_engine.url.render_as_string(hide_password=False))
    forget()
    yield Week(any_engine, other, ids[3])
    other.dispose()


def forget() -> None:
    """Nothing that the model has said before is at hand."""
    foresight._looked_ahead.cache_clear()
    foresight._odds_of.cache_clear()


@contextmanager
def meanwhile(
    monkeypatch: pytest.MonkeyPatch, module: ModuleType, work: str, do: Callable[[], object]
) -> Iterator[list[int]]:
    """Whenever this is about to be worked out, that is done first; how often it is is counted."""
    real, times = getattr(module, work), list[int]()

    def worked(*given: Any, **named: Any) -> Any:
        times.append(1)
        do()
        return real(*given, **named)

    with monkeypatch.context() as patched:
        patched.setattr(module, work, worked)
        yield times


def others_can_write(other: Engine) -> None:
    """Raises where anybody holds what a writer needs: the file, or locks of rows or people."""
    if is_sqlite(other):
        with other.connect() as connection:
            connection.exec_driver_sql("PRAGMA busy_timeout = 0")
            connection.exec_driver_sql("INSERT INTO setting VALUES ('tried', '')")
            connection.rollback()
        return
    with other.connect() as connection:
        held = connection.execute(
            text(
                "SELECT locktype, mode FROM pg_locks WHERE pid <> pg_backend_pid() AND granted"
                " AND (locktype IN ('advisory', 'transactionid', 'tuple')"
                " OR mode IN ('RowShareLock', 'RowExclusiveLock'))"
            )
        ).all()
        assert held == []


def test_what_is_held_while_a_use_case_writes_is_seen(week: Week) -> None:
    """Or what follows could not fail."""
    with transaction(week.engine) as session:
        session.add(SettingRow(name="one", value=""))
        session.flush()
        with pytest.raises(Exception, match=r"locked|RowExclusiveLock"):
            others_can_write(week.other)


def test_others_write_while_a_mornings_forecast_is_made(
    week: Week, monkeypatch: pytest.MonkeyPatch
) -> None:
    with meanwhile(
        monkeypatch, foresight, "forecast", lambda: others_can_write(week.other)
    ) as times:
        week.does(typed(CHAT, LINE))

    assert times
    assert week.decided().decision["foresight"]["planned"] is not None


def test_a_forecast_that_nobody_could_guess_is_made_with_nothing_locked_too(
    week: Week, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A morning put right is decided again: that is found out within the use case."""
    week.does(typed(CHAT, LINE))
    with meanwhile(
        monkeypatch, foresight, "forecast", lambda: others_can_write(week.other)
    ) as times:
        week.does(typed(CHAT, "59.8 4 3.5 4 on target fine"))

    assert times
    row = week.decided()
    assert (row.revision, row.case["checkin"]["weight_kg"]) == (2, 59.8)


@pytest.mark.parametrize("tap", [False, True])
def test_a_mornings_answers_are_guessed_so_that_it_begins_once(week: Week, tap: bool) -> None:
    """Told in one line, or finished by tapping the last of the buttons."""
    raw = typed(CHAT, LINE)
    if tap:
        week.does(typed(CHAT, "/checkin"))
        while (question := week.asked()).step != "fine":
            week.does(typed(CHAT, ANSWERS[question.step]))
        raw = tapped(CHAT, f"q:{question.id}:fine:fine", 1)
    into_inbox(week.engine, [raw])

    at_hand = week.worker()._foreseen(raw["update_id"], CHAT)
    assert len(at_hand.found) == 1
    with transaction(week.engine, locked=True) as session:
        at_hand.begins(session)  # whatever is not at hand would end this
        incoming = read(raw, NOW)
        assert incoming is not None
        USE_CASES.incoming(ChatTurn(session, CONTEXT, incoming))

    assert len(at_hand.found) == 1
    assert week.decided().decision["foresight"]["planned"] is not None


def test_once_a_morning_is_told_its_chat_is_left_alone_until_the_next_one(
    week: Week, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Looking ahead is a statement for each message; it is done where something may come of it."""
    real, looked = USE_CASES.foresee, list[datetime]()
    context = Context(now=NOW)

    def foresee(session: Session, told: Context, *more: Any) -> datetime | None:
        looked.append(told.now)
        return real(session, told, *more)

    clock = DrivenClock(NOW)
    use_cases = replace(USE_CASES, foresee=foresee)
    worker = Worker(
        Runtime(week.engine, use_cases, clock, lambda: context), threads=1, handled=lambda: None
    )

    def says(words: str) -> None:
        raw = typed(CHAT, words)
        into_inbox(week.engine, [raw])
        assert worker.handle(raw["update_id"], CHAT)

    for words in ("/today", LINE, "/today", "/week", "/today"):
        says(words)
    assert len(looked) == 3  # the morning may still come, it comes, and it is there

    # Put right, the morning asks the model after all: the next message is looked at again.
    with meanwhile(
        monkeypatch, foresight, "forecast", lambda: others_can_write(week.other)
    ) as times:
        says("59.8 4 3.5 4 on target fine")
    assert times
    says("/today")
    assert len(looked) == 4

    context = Context(now=NOW + timedelta(days=1))
    clock.advance(timedelta(days=1))
    says(LINE)
    assert len(looked) == 5
    assert week.decided().decision["foresight"]["planned"] is not None


def test_limits_set_while_the_forecast_is_made_are_those_that_hold(
    week: Week, monkeypatch: pytest.MonkeyPatch
) -> None:
    def tighten() -> None:
        """The coach's turn, in another process: once."""
        with transaction(week.other) as session:
            row = session.exec(select(LimitsRow).order_by(col(LimitsRow.id).desc())).first()
            assert row is not None
            if row.bounds["step_g"] != 7.0:
                session.add(
                    LimitsRow(
                        event_id=row.event_id, bounds=row.bounds | {"step_g": 7.0},
                        set_by=row.set_by, set_at=row.set_at,
                    )
                )  # fmt: skip

    with meanwhile(monkeypatch, foresight, "forecast", tighten) as times:
        week.does(typed(CHAT, LINE))

    assert len(times) > 1  # it was made for the old ones first
    assert week.decided().case["limits"]["step_g"] == 7.0


def test_a_menu_is_made_with_nothing_locked(week: Week, monkeypatch: pytest.MonkeyPatch) -> None:
    with transaction(week.engine) as session:
        for name in ("white rice, cooked", "chicken breast, roasted", "olive oil"):
            food = next(iter(search(name)))
            session.add(
                FoodRow(
                    athlete_id=week.athlete_id, source=food.id, name=food.name,
                    figures=figures_of(food), step_g=food.step_g, piece=food.piece,
                    liking="favourite", added_at=NOW,
                )
            )  # fmt: skip
    with meanwhile(monkeypatch, menu, "solve_day", lambda: others_can_write(week.other)) as times:
        week.does(typed(CHAT, "/food"))

    assert times
    with Session(week.engine) as session:
        assert session.exec(select(FoodDayRow)).one().meals


def test_what_was_screened_as_it_came_in_is_at_hand_when_its_turn_comes_in_a_rush(
    week: Week, monkeypatch: pytest.MonkeyPatch
) -> None:
    intake = Intake(week.engine, DrivenClock(NOW), USE_CASES.how_urgent)
    raws = [typed(CHAT, f"{LINE} and walked {n} steps") for n in range(4)]
    others = [typed(9_000 + n, f"slept {n} minutes") for n in range(300)]
    really, screened = screening.screen, list[str]()

    def counted(text: str) -> screening.Screening:
        screened.append(text)
        return really(text)

    screening_of.cache_clear()
    monkeypatch.setattr(screening, "screen", counted)
    intake.store([*raws, *others])
    worker = week.worker()
    for raw in raws:
        assert worker.handle(raw["update_id"], CHAT)
    assert len(screened) >= 304
    assert len(set(screened)) == len(screened)


def test_what_a_trial_would_teach_is_worked_out_with_nothing_locked(
    week: Week, monkeypatch: pytest.MonkeyPatch
) -> None:
    with transaction(week.engine) as session:
        for event in session.exec(select(EventRow).where(EventRow.athlete_id == week.athlete_id)):
            event.kind = EventKind.TRIAL
    week.does(tapped(COACH_CHAT, f"c:draft:{week.athlete_id}", 1))
    for words in ("back-load", "8"):
        week.does(typed(COACH_CHAT, words))
    with meanwhile(monkeypatch, teaching, "lessons", lambda: others_can_write(week.other)) as times:
        week.does(typed(COACH_CHAT, "Mild"))

    assert times == [1]
    with Session(week.engine) as session:
        query = select(OutboxRow).where(OutboxRow.chat_id == COACH_CHAT)
        said = session.exec(query.order_by(col(OutboxRow.id).desc())).first()
    assert said is not None
    assert "This is the trial" in said.payload["text"]


def _doubled(number: int) -> int:
    return 2 * number


def _refused(_number: int) -> int:
    raise ArithmeticError("cannot be")


def _use_case(session: Session, begun: list[int]) -> list[int]:
    begun.append(1)
    session.add(SettingRow(name=f"begun {len(begun)}", value=""))
    session.flush()
    return [worked_out(session, _doubled, one) for one in (1, 2, 1)]


def test_a_use_case_that_begins_again_leaves_nothing_of_what_it_did_before(
    any_engine: Engine,
) -> None:
    begun: list[int] = []

    assert in_transaction(any_engine, lambda session: _use_case(session, begun)) == [2, 4, 2]

    assert len(begun) == 3
    with Session(any_engine) as session:
        assert session.exec(select(SettingRow.name)).all() == ["begun 3"]


def test_what_is_at_hand_is_not_worked_out_again(sqlite_engine: Engine) -> None:
    at_hand, begun = AtHand(), list[int]()
    with transaction(sqlite_engine) as session:
        at_hand.looks_ahead(session)
        for one in (1, 2):
            worked_out(session, _doubled, one)

    in_transaction(sqlite_engine, lambda session: _use_case(session, begun), at_hand=at_hand)

    assert len(begun) == 1


def test_what_cannot_be_worked_out_is_refused_where_it_was_asked_for(sqlite_engine: Engine) -> None:
    def tries(session: Session) -> str:
        try:
            worked_out(session, _refused, 1)
        except ArithmeticError as error:
            return str(error)
        return ""

    assert in_transaction(sqlite_engine, tries) == "cannot be"


def test_a_use_case_that_asks_for_ever_more_comes_to_its_end(sqlite_engine: Engine) -> None:
    begun: list[int] = []

    def asks(session: Session) -> int:
        begun.append(1)
        return sum(worked_out(session, _doubled, one) for one in range(100))

    assert in_transaction(sqlite_engine, asks) == 2 * sum(range(100))
    assert len(begun) == MOST_BEGINNINGS
