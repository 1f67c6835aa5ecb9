"""An athlete ends the coaching: everybody concerned is told, nothing stays open, nothing is lost."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlmodel import col, select

from bot.core.timing import agenda
from bot.membership.second_coach import OVER
from bot.store.db import transaction
from bot.store.tables.coach import Rights, SecondCoach
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import AlertRow, DecisionRow, DecisionStatus
from tests.support.weeks import Team
from tests.support.world import Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))


def beside(team: Team, name: str, chat: int, rights: Rights, *, one: bool = True) -> Someone:
    """Somebody who stands beside Ravi, for Mira or for all his athletes."""
    now = team.world.now
    with transaction(team.world.engine) as session:
        person = Person(telegram_user_id=chat, chat_id=chat, first_name=name, created_at=now)
        session.add(person)
        session.flush()
        until = datetime(2027, 5, 9, 23, 0, tzinfo=UTC)
        row = SecondCoach(
            coach_id=1, person_id=person.id or 0, athlete_id=2 if one else None, rights=rights,
            given_at=now, until_day=until.date(), until_at=until,
        )  # fmt: skip
        session.add(row)
        session.flush()
        agenda.put(session, agenda.Named(f"second:{row.id}", until.date(), OVER), due_at=until)
    return Someone(team.world, chat, name)


def leave(team: Team) -> str:
    team.athlete.writes("/leave")
    return text_of(team.athlete.taps("Yes, end it"))


def test_it_takes_a_second_tap_that_says_what_it_means(team: Team) -> None:
    said = text_of(team.athlete.writes("/leave"))
    assert "End the coaching with Ravi? Check-ins stop" in said
    assert "You keep all your answers" in said
    assert "goes on" in text_of(team.athlete.taps("No, keep coaching"))
    assert team.profile().coach_id == 1
    assert team.coach.hears() == []


def test_coach_and_second_coaches_are_told_and_see_nothing_any_more(team: Team) -> None:
    noa = beside(team, "Noa", 150, Rights.FULL)
    ola = beside(team, "Ola", 160, Rights.ALERTS, one=False)
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    team.coach.hears()
    said = leave(team)
    assert "You have ended the coaching with Ravi" in said
    assert "don't go on with it alone" in said
    assert "Mira has ended the coaching. You no longer see Mira's answers" in text_of(
        team.coach.hears()
    )
    told = text_of(noa.hears())
    assert "Mira has ended the coaching with Ravi" in told
    assert "Your time as second coach with Ravi is over" in told
    told = text_of(ola.hears())
    assert "Mira has ended the coaching with Ravi" in told
    assert "is over" not in told  # Ravi's other athletes are still theirs to be told of
    team.coach.presses("c:card:2")
    assert "not on your roster" in team.coach.answers_to_taps()[-1]
    assert "no athletes yet" in text_of(team.coach.writes("/roster"))
    assert "61.0" in text_of(team.athlete.writes("/past"))
    assert "Based on" in text_of(team.athlete.writes("/why"))
    team.athlete.hears()
    team.world.later(days=2)
    assert team.athlete.hears() == []
    assert team.coach.hears() == []


def test_open_alerts_are_closed_with_a_word_and_never_repeated(team: Team) -> None:
    team.athlete.writes("I fainted")
    team.coach.hears()
    said = text_of(team.athlete.writes("/leave"))
    assert "A warning about you is still open" in said
    assert "local emergency number" in said
    team.athlete.taps("Yes, end it")
    told = team.coach.hears()
    assert "Closed: Mira has ended the coaching." in text_of(told)
    assert "please call Mira" in text_of(told)
    assert not [one for one in told if "Acknowledge" in one.buttons]
    team.coach.presses("alert:ack:1")
    assert "Closed: the coaching has ended." in team.coach.answers_to_taps()[-1]
    assert "No alert is open" in text_of(team.coach.writes("/alerts"))
    team.world.later(hours=25)
    assert team.coach.hears() == []
    with team.world.session() as session:
        (row,) = session.exec(select(AlertRow).where(AlertRow.level == "warning")).all()
        steps = session.exec(select(HistoryRow).where(HistoryRow.what == "alert closed")).all()
    assert row.acknowledged_at is not None
    assert row.acknowledged_by is None
    assert [step.by_id for step in steps] == [2]


def test_a_figure_that_waited_for_a_word_is_closed_and_the_plan_holds(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.hears()
    assert "is closed too" in text_of(team.athlete.writes("/leave"))
    team.athlete.taps("Yes, end it")
    assert "Closed: Mira has ended the coaching." in text_of(team.coach.hears())
    team.coach.presses("sign:approve:1")
    assert "can't approve this one" in team.coach.answers_to_taps()[-1]
    with team.world.session() as session:
        row = session.exec(select(DecisionRow)).one()
        waiting = session.exec(
            select(AgendaRow).where(
                AgendaRow.status == "waiting", col(AgendaRow.kind) == "sign-off-lapse"
            )
        ).all()
    assert row.status == DecisionStatus.CLOSED
    assert waiting == []


def test_another_coach_takes_it_up_and_reads_in_the_history_what_was_closed(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.athlete.writes("I fainted")
    leave(team)
    with transaction(team.world.engine) as session:
        session.add(
            Person(
                telegram_user_id=150, chat_id=150, first_name="Noa", is_coach=True,
                created_at=team.world.now,
            )
        )  # fmt: skip
    noa = Someone(team.world, 150, "Noa")
    code = re.search(r"/join (\S+)", text_of(noa.writes("/invite")))
    assert code is not None
    assert "Noa is now your coach" in text_of(team.athlete.writes(f"/join {code[1]}"))
    assert team.profile().status == AthleteStatus.ACTIVE
    said = text_of(noa.presses("c:history:2"))
    for line in (
        "Mira: ended the coaching with Ravi",
        "Mira: warning (fainting) closed, because the coaching ended",
        "Noa: took over the coaching",
    ):
        assert line in said, line
    assert "Frozen" in text_of(noa.writes("/roster"))  # only a coach lifts what a warning froze
    team.coach.presses("sign:approve:1")
    assert "can't approve this one" in team.coach.answers_to_taps()[-1]


def test_what_was_held_for_quiet_hours_is_not_told_after_all(team: Team) -> None:
    team.coach.writes("/digest")
    team.coach.writes("London")
    team.coach.taps(next(one for one in team.coach.all_said()[-1].buttons if "London" in one))
    team.coach.writes("20:00")
    team.coach.presses("desk:quiet")
    team.coach.writes("06:00")
    team.coach.writes("09:00")
    team.coach.hears()
    team.athlete.writes("61.0 2 3.5 1 on target fine")  # flat and watery: the coach gets a note
    assert team.coach.hears() == []
    leave(team)
    team.coach.hears()
    team.world.until(datetime(2027, 5, 8, 20, 0, tzinfo=UTC))
    assert team.coach.hears() == []  # neither when the quiet hours end nor in the digest


def test_a_doubtful_word_is_asked_about_once_more_and_whoever_coached_hears_nothing_of_it(
    team: Team,
) -> None:
    assert "To be sure" in text_of(
        team.athlete.writes("my heart was pounding at my desk, maybe the coffee")
    )
    leave(team)
    team.coach.hears()
    team.athlete.hears()
    team.world.later(minutes=11)
    again = text_of(team.athlete.hears())
    assert "I ask once more" in again and "do you mean palpitations" in again
    assert team.coach.hears() == []
    assert "emergency number" in text_of(team.athlete.taps("Yes"))
    assert team.coach.hears() == []


def test_whoever_coaches_themself_or_has_left_already_is_told_so(team: Team) -> None:
    leave(team)
    assert "Nobody coaches you right now" in text_of(team.athlete.writes("/leave"))
    assert "Nobody coaches you right now" in text_of(team.athlete.presses("leave:yes"))
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, 2)
        profile.status = AthleteStatus.ACTIVE
        session.add(profile)
    assert "You coach yourself" in text_of(team.athlete.writes("/leave"))


def test_with_another_coach_whoever_stood_beside_the_first_for_them_alone_is_out_too(
    team: Team,
) -> None:
    noa = beside(team, "Noa", 150, Rights.FULL)
    with transaction(team.world.engine) as session:
        session.add(
            Person(
                telegram_user_id=170, chat_id=170, first_name="Bea", is_coach=True,
                created_at=team.world.now,
            )
        )  # fmt: skip
    code = re.search(r"/join (\S+)", text_of(Someone(team.world, 170, "Bea").writes("/invite")))
    assert code is not None
    team.athlete.writes(f"/join {code[1]}")
    team.athlete.taps("Yes, Bea takes over")
    assert "Your time as second coach with Ravi is over" in text_of(noa.hears())
    assert "Noa is no longer your second coach" in text_of(team.athlete.all_said())
