"""Two at once, and too late: one outcome, and everybody concerned is told that one.

On SQLite and on PostgreSQL, with threads that really run at the same time.
"""

from __future__ import annotations

import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta

import pytest
from sqlalchemy import Engine
from sqlmodel import Session, col, select

from bot.core.timing import agenda
from bot.core.turn import ChatTurn, Context, Incoming, Kind, Turn
from bot.dispatcher import USE_CASES
from bot.store.db import in_transaction, looking, transaction
from bot.store.tables.coach import Rights, SecondCoach
from bot.store.tables.people import HistoryRow, Person
from bot.store.tables.traffic import AgendaRow, OutboxRow, TopicKind
from bot.store.tables.week import AlertRow, CheckInRow, DecisionRow, DecisionStatus
from bot.week.load import day_set
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team, in_peak_week, played_once
from tests.support.world import Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"
DAY = date(2027, 5, 7)
SETTLED = {DecisionStatus.APPROVED, DecisionStatus.PLAN_KEPT, DecisionStatus.LAPSED}


@dataclass
class Two:
    """The team with a second coach of full rights, two days out, Mira's change waiting."""

    team: Team
    noa: Someone

    @property
    def engine(self) -> Engine:
        return self.team.world.engine

    @property
    def context(self) -> Context:
        return self.team.world.context

    def decision(self) -> DecisionRow:
        with self.team.world.session() as session:
            query = select(DecisionRow).where(DecisionRow.status != DecisionStatus.REPLACED)
            return session.exec(query).one()

    def signs(self, how: str) -> str:
        """The button with which a coach keeps the plan or approves of the change."""
        return f"sign:{how}:{self.decision().id}"

    def in_force(self) -> float:
        with self.team.world.session() as session:
            row = day_set(session, 2, DAY)
            assert row is not None
            return row.carb_g


@pytest.fixture
def two(any_engine: Engine) -> Two:
    team = played_once(("two coaches",), any_engine, lambda: _two_coaches(any_engine))
    return Two(team, Someone(team.world, 150, "Noa"))


def _two_coaches(any_engine: Engine) -> Team:
    team = in_peak_week(any_engine)
    team.world.until(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))
    noa = Someone(team.world, 150, "Noa")
    with transaction(any_engine) as session:
        person = Person(
            telegram_user_id=150, chat_id=150, first_name="Noa", created_at=team.world.now
        )
        session.add(person)
        session.flush()
        session.add(
            SecondCoach(
                coach_id=1, person_id=person.id or 0, athlete_id=2, rights=Rights.FULL,
                given_at=team.world.now, until_day=date(2027, 5, 9),
                until_at=team.world.now + timedelta(days=3),
            )
        )  # fmt: skip
    team.athlete.writes(FLAT)
    team.coach.hears()
    noa.hears()
    return team


def pressing(two: Two, someone: Someone, data: str) -> Callable[[Session], None]:
    two.team.world.updates += 1
    number = two.team.world.updates
    incoming = Incoming(
        update_id=number, chat_id=someone.user_id, private=True, user_id=someone.user_id,
        first_name=someone.name, language="en", kind=Kind.TAP, text=data, message_id=1,
        tap_id=f"tap-{number}", sent_at=two.team.world.now,
    )  # fmt: skip
    return lambda session: USE_CASES.incoming(ChatTurn(session, two.context, incoming))


def writing(two: Two, someone: Someone, text: str) -> Callable[[Session], None]:
    two.team.world.updates += 1
    incoming = Incoming(
        update_id=two.team.world.updates, chat_id=someone.user_id, private=True,
        user_id=someone.user_id, first_name=someone.name, language="en", kind=Kind.TEXT,
        text=text, message_id=two.team.world.updates, tap_id=None, sent_at=two.team.world.now,
    )  # fmt: skip
    return lambda session: USE_CASES.incoming(ChatTurn(session, two.context, incoming))


def at_once(engine: Engine, *works: Callable[[Session], None]) -> None:
    """Begin them all at the same moment, each in a transaction of its own as the workers do."""
    together = threading.Barrier(len(works))

    def run(work: Callable[[Session], None]) -> None:
        together.wait()
        in_transaction(engine, work)

    with ThreadPoolExecutor(len(works)) as pool:
        for done in [pool.submit(run, work) for work in works]:
            done.result()


def outcome_words(two: Two) -> str:
    return {
        DecisionStatus.APPROVED: "Approved by",
        DecisionStatus.PLAN_KEPT: "kept the plan",
        DecisionStatus.LAPSED: "Nobody answered by",
    }[DecisionStatus(two.decision().status)]


def signed(two: Two) -> list[HistoryRow]:
    with two.team.world.session() as session:
        query = select(HistoryRow).where(
            col(HistoryRow.what).in_(("signed off", "sign-off lapsed"))
        )
        return list(session.exec(query))


@pytest.mark.parametrize("_time", range(3))
def test_two_coaches_who_sign_at_once_have_one_outcome_and_both_read_it(
    two: Two, _time: int
) -> None:
    at_once(
        two.engine,
        pressing(two, two.team.coach, two.signs("keep")),
        pressing(two, two.noa, two.signs("approve")),
    )
    kept = two.decision().status == DecisionStatus.PLAN_KEPT
    assert two.in_force() == (500 if kept else 550)
    assert len(signed(two)) == 1
    for coach in (two.team.coach, two.noa):
        assert outcome_words(two) in text_of(coach.hears())
    late = two.noa if kept else two.team.coach
    assert outcome_words(two) in late.answers_to_taps()[-1]
    told = text_of(two.team.athlete.hears())
    assert ("keeps the plan" in told) == kept
    assert ("approved the change" in told) != kept


def test_the_deadline_that_lapses_while_a_button_is_pressed_has_one_outcome(two: Two) -> None:
    two.team.world.now = two.decision().sign_off_due_at or two.team.world.now
    with looking(two.engine) as session:
        found = agenda.due(session, two.team.world.now)
    (duty,) = [row for row in found if row.kind == "sign-off-lapse"]

    def lapse(session: Session) -> None:
        row = agenda.take(session, duty.id or 0, two.team.world.now)
        if row is not None:
            USE_CASES.due(Turn(session, two.context), row)

    at_once(two.engine, lapse, pressing(two, two.team.coach, two.signs("approve")))
    assert two.decision().status in (DecisionStatus.APPROVED, DecisionStatus.LAPSED)
    approved = two.decision().status == DecisionStatus.APPROVED
    # Lapsed, the small step that goes out alone stands (500 g and one step of 25 g).
    assert two.in_force() == (550 if approved else 525)
    assert len(signed(two)) == 1
    for coach in (two.team.coach, two.noa):
        assert outcome_words(two) in text_of(coach.hears()) + text_of(coach.all_said())


def test_a_plan_that_changes_while_a_check_in_runs_leaves_the_figure_of_one_of_them(
    two: Two,
) -> None:
    two.team.coach.presses(two.signs("keep"))
    two.team.coach.presses("c:num:2:2:carb_g")
    at_once(
        two.engine,
        writing(two, two.team.coach, "450"),
        writing(two, two.team.athlete, "60.9 4 3.5 5 on target fine"),
    )
    # Whichever came last was decided on the plan as it then stood: both end on 450.
    decision = two.decision()
    assert decision.planned_carb_g == 450
    with two.team.world.session() as session:
        standing = day_set(session, 2, DAY)
        checkins = session.exec(select(CheckInRow).where(CheckInRow.date == DAY)).all()
    assert standing is not None
    assert standing.carb_g == (decision.carb_g if decision.status == "in-force" else 450)
    assert [row.weight_kg for row in checkins] == [60.9]


def test_two_who_acknowledge_at_once_are_one_and_the_other_reads_who_was_first(two: Two) -> None:
    two.team.athlete.writes("I fainted")
    with two.team.world.session() as session:
        alert = session.exec(select(AlertRow).where(AlertRow.level == "warning")).one()
    for someone in (two.team.coach, two.noa):
        someone.hears()
    data = f"alert:ack:{alert.id}"
    at_once(two.engine, pressing(two, two.team.coach, data), pressing(two, two.noa, data))
    with two.team.world.session() as session:
        row = session.get_one(AlertRow, alert.id)
        steps = session.exec(
            select(HistoryRow).where(HistoryRow.what == "alert acknowledged")
        ).all()
    assert len(steps) == 1
    first = two.team.coach if row.acknowledged_by == 1 else two.noa
    for someone in (two.team.coach, two.noa):
        assert f"cknowledged by {first.name}" in text_of(someone.hears())


def test_two_who_take_the_last_change_back_at_once_take_one_back(two: Two) -> None:
    two.team.coach.presses(two.signs("keep"))
    for grams in ("470", "480"):
        two.team.world.later(minutes=1)
        two.team.coach.presses("c:hand:2:1")
        two.team.coach.writes(grams)
    with two.team.world.session() as session:
        last = max(row.id or 0 for row in session.exec(select(HistoryRow)))
    data = f"c:undo-yes:2:{last}"
    two.team.world.later(minutes=1)
    at_once(two.engine, pressing(two, two.team.coach, data), pressing(two, two.noa, data))
    with two.team.world.session() as session:
        standing = day_set(session, 2, date(2027, 5, 8))
    assert standing is not None
    assert standing.carb_g == 470


def test_a_leaving_and_a_word_on_a_proposal_at_once_come_one_after_the_other(two: Two) -> None:
    coach, athlete = two.team.coach, two.team.athlete
    at_once(
        two.engine, pressing(two, athlete, "leave:yes"), pressing(two, coach, two.signs("approve"))
    )
    left_open_or_approved(two)


def test_a_word_that_comes_after_the_leaving_changes_nothing(two: Two) -> None:
    at_once(two.engine, pressing(two, two.team.athlete, "leave:yes"))
    at_once(two.engine, pressing(two, two.team.coach, two.signs("approve")))
    assert two.decision().status == DecisionStatus.CLOSED
    left_open_or_approved(two)


def left_open_or_approved(two: Two) -> None:
    """Approved before she left, or closed: then the small step that had gone out stands."""
    coach = two.team.coach
    approved = two.decision().status == DecisionStatus.APPROVED
    assert two.decision().status in (DecisionStatus.APPROVED, DecisionStatus.CLOSED)
    assert two.in_force() == (550 if approved else 525)
    assert len(signed(two)) == approved
    said = text_of(coach.hears())
    assert "Mira has ended the coaching" in said
    assert ("Approved by Ravi" in said) == approved
    assert ("Closed: Mira has ended the coaching" in said) != approved
    assert ("can't approve this one" in text_of_taps(coach)) != approved


def text_of_taps(someone: Someone) -> str:
    return "\n".join(someone.answers_to_taps())


def test_twenty_mornings_at_once_are_one_edit_of_the_roster_and_nothing_aloud(
    any_engine: Engine,
) -> None:
    team = in_peak_week(any_engine)
    team.world.until(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))
    with transaction(any_engine) as session:
        ids = many_athletes(
            session, 1, 20, team.world.now, Alike(answered=False, zones=("Europe/London",))
        )
        chats = [session.get_one(Person, one).chat_id for one in ids]
    team.coach.writes("/roster")
    team.coach.hears()
    two = Two(team, Someone(team.world, 150, "Noa"))
    athletes = [Someone(team.world, chat, "A") for chat in chats]
    # Two in the load are flat and watery, of which the coach is told; one has drunk far too little
    # and has a headache.
    lines = [
        "61.0 5 3.5 4 on target fine" if number % 10 <= 3 else "61.0 5 3.5 on target fine"
        for number in range(20)
    ]
    lines[2] = lines[12] = "61.0 2 3.5 1 on target fine"
    lines[7] = "61.0 5 1.0 on target headache"
    for begin in range(0, 20, 5):
        at_once(
            any_engine,
            *(writing(two, a, text) for a, text in zip(
                athletes[begin : begin + 5], lines[begin : begin + 5], strict=True
            )),
        )  # fmt: skip
    team.world.later(seconds=30)
    with team.world.session() as session:
        rows = session.exec(
            select(OutboxRow).where(OutboxRow.chat_id == 101).order_by(col(OutboxRow.id))
        ).all()
        refreshes = session.exec(select(AgendaRow).where(AgendaRow.kind == "roster")).all()
        waiting = session.exec(
            select(DecisionRow).where(DecisionRow.status == DecisionStatus.WAITING)
        ).all()
        checkins = session.exec(select(CheckInRow).where(CheckInRow.date == DAY)).all()
    assert len(checkins) == 20
    roster = next(row for row in rows if "Roster:" in row.payload.get("text", ""))
    since = [row for row in rows if (row.id or 0) > (roster.id or 0) and row.status == "waiting"]
    edits = [row for row in since if row.method == "editMessageText"]
    assert [row.topic_about for row in edits if row.topic == TopicKind.ROSTER] == [1]
    assert len(refreshes) == 1
    new = [row for row in since if row.method == "sendMessage"]
    aloud = [row for row in new if not row.payload.get("disable_notification")]
    silent = [row for row in new if row.payload.get("disable_notification")]
    texts = [row.payload["text"] for row in aloud]
    assert len(silent) <= 1, str([row.payload["text"] for row in silent])
    assert len([t for t in texts if t.startswith("Caution")]) >= 1
    # What is aloud is a true alert or a change that waits for the coach's word, nothing else.
    asked = [t for t in texts if "for you to approve" in t]
    assert len(asked) == len(waiting)
    assert len(aloud) == len(asked) + len([t for t in texts if t.startswith("Caution")])
