"""Finished weeks of a coach's athletes sharpen that coach's next forecast, and nobody else's."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest
from sqlmodel import Session, select

from bot.cli import main
from bot.core.turn import Turn
from bot.debrief.pooling import LEARN, learn
from bot.people.changes import Change
from bot.people.people import get_profile, record
from bot.store.db import transaction
from bot.store.tables import setting
from bot.store.tables.coach import TaughtRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import AgendaRow
from bot.store.tables.week import DecisionRow, EventRow
from bot.week.cases import prior_for, prior_used
from engine.decision.decide import case_from_dict, decide, decision_as_dict
from engine.model.particles import ALIKE, MODEL
from engine.values.case import ForecastUse
from tests.support.weeks import Team, gone_on
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Mira's show is over and she has answered two mornings of it; Ravi is yet to say how it looked."""
    return gone_on(team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC)), two_mornings)


def two_mornings(team: Team) -> None:
    team.coach.language = team.athlete.language = "en"
    team.athlete.writes("60.4 4 3.5 4")
    team.morning(1)
    team.athlete.writes("60.6 4 3.5 4")
    team.world.now = datetime(2027, 5, 10, 12, 0, tzinfo=UTC)
    with transaction(team.world.engine) as session:
        event = session.exec(select(EventRow)).one()
        event.active = False
        session.add(event)
    team.coach.hears()


def taught_rows(team: Team) -> list[TaughtRow]:
    with team.world.session() as session:
        return list(session.exec(select(TaughtRow)))


def learnt(team: Team) -> None:
    """The word on the look is given, and what follows from it is done."""
    team.coach.presses("look:1:flat")
    with transaction(team.world.engine) as session:
        duty = session.exec(
            select(AgendaRow).where(AgendaRow.kind == LEARN, AgendaRow.status == "waiting")
        ).one()
        assert duty.due_at == team.world.now
        assert learn(Turn(session, team.world.context), _profile(session))


def _profile(session: Session, number: int = 2) -> AthleteProfile:
    return get_profile(session, number)


def another_athlete(session: Session, coach_id: int, now: datetime) -> AthleteProfile:
    person = Person(telegram_user_id=700, chat_id=700, first_name="Ida", created_at=now)
    session.add(person)
    session.flush()
    mira = _profile(session)
    copied = mira.model_dump(exclude={"person_id", "coach_id"})
    profile = AthleteProfile(**copied, person_id=person.id, coach_id=coach_id)
    session.add(profile)
    session.flush()
    return profile


def test_a_week_that_was_looked_back_on_is_summed_up_once_however_often(team: Team) -> None:
    team = gone_on(team, learnt)
    with transaction(team.world.engine) as session:
        learn(Turn(session, team.world.context), _profile(session))
    (row,) = taught_rows(team)
    assert (row.coach_id, row.athlete_id, row.weeks, row.model) == (1, 2, 1, MODEL)


def test_it_counts_for_the_coachs_other_athletes_and_for_nobody_elses(team: Team) -> None:
    team = gone_on(team, learnt)
    with transaction(team.world.engine) as session:
        assert prior_for(session, _profile(session)) is None, "her own weeks are her trials"
        ida = another_athlete(session, 1, team.world.now)
        prior = prior_for(session, ida)
        assert prior is not None and (prior.weeks, prior.athletes) == (1, 1)
        stranger = Person(
            telegram_user_id=701, chat_id=701, first_name="Ola", is_coach=True,
            created_at=team.world.now,
        )  # fmt: skip
        session.add(stranger)
        session.flush()
        ida.coach_id = stranger.id or 0
        session.add(ida)
        session.flush()
        assert prior_for(session, ida) is None


def test_weeks_with_an_earlier_coach_stay_with_that_coach(team: Team) -> None:
    with transaction(team.world.engine) as session:
        turn = Turn(session, team.world.context)
        record(turn, 2, Change.COACH_CHANGED(to=1), by=2)
        assert not learn(turn, _profile(session))
    assert taught_rows(team) == []


def test_a_decision_holds_the_prior_that_it_used_and_replays(team: Team) -> None:
    team = gone_on(team, learnt)
    with transaction(team.world.engine) as session:
        # The row is given to another athlete, so that Mira's next decision rests on it.
        ida = another_athlete(session, 1, team.world.now)
        row = session.exec(select(TaughtRow)).one()
        row.athlete_id = ida.person_id
        profile, event = _profile(session), session.exec(select(EventRow)).one()
        profile.forecast = ForecastUse.PROPOSES
        event.active, event.day = True, team.world.now.date() + timedelta(days=2)
        for one in (row, profile, event):
            session.add(one)
        assert prior_used(session, profile) is None, "off until it is switched on"
        setting.keep(session, setting.PRIORS, "on")
    team.athlete.writes("60.4 4 3.5 4")
    with team.world.session() as session:
        decided = session.exec(select(DecisionRow).order_by(DecisionRow.id.desc())).first()  # type: ignore[union-attr]
    assert decided is not None
    assert decided.case["prior"]["weeks"] == 1
    assert decision_as_dict(decide(case_from_dict(decided.case))) == decided.decision


def test_the_forecasts_view_and_the_command_tell_on_how_many_weeks_it_rests(
    team: Team, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    with transaction(team.world.engine) as session:
        profile = _profile(session)
        profile.forecast = ForecastUse.PROPOSES
        session.add(profile)
    assert "none of your finished weeks" in text_of(team.coach.presses("c:forecast:2"))
    monkeypatch.setenv("BRIMLINE_DATABASE_URL", team.world.engine.url.render_as_string())
    assert main(["priors"]) == 0
    assert "no finished weeks yet" in capsys.readouterr().out
    learnt(team)
    with transaction(team.world.engine) as session:
        ida = another_athlete(session, 1, team.world.now).person_id
    shown = text_of(team.coach.presses(f"c:forecast:{ida}"))
    assert "1 finished week of your athletes is summed up and not used" in shown
    assert main(["priors", "--use", "on"]) == 0
    assert "They are used for new decisions" in capsys.readouterr().out
    shown = text_of(team.coach.presses(f"c:forecast:{ida}"))
    assert "begins from 1 finished week of another athlete of yours" in shown
    assert main(["priors"]) == 0
    assert f"coach 1: 1 finished weeks of 1 athletes, model {MODEL}" in capsys.readouterr().out


def test_rows_of_an_older_model_count_for_nothing_until_they_are_made_anew(
    team: Team, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    team = gone_on(team, learnt)
    with transaction(team.world.engine) as session:
        row = session.exec(select(TaughtRow)).one()
        row.model, row.taught = min(ALIKE) - 1, {**row.taught, "model": min(ALIKE) - 1}
        session.add(row)
        ida = another_athlete(session, 1, team.world.now)
        assert prior_for(session, ida) is None
    monkeypatch.setenv("BRIMLINE_DATABASE_URL", team.world.engine.url.render_as_string())
    assert main(["priors"]) == 0
    assert "1 of an older model wait for --anew" in capsys.readouterr().out
