"""Looking after a running bot: what is behind is seen and told, and what was given out taken back."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from prometheus_client.parser import text_string_to_metric_families
from sqlalchemy import Engine
from sqlmodel import Session, select
from telegram.error import NetworkError

from bot.cli import main
from bot.core.chat.outbox import Delivery, say
from bot.core.timing.clock import DrivenClock
from bot.core.turn import Context, Turn
from bot.operation.roles import coaches_and_invitations, revoke_coach, revoke_invitation
from bot.operation.status import status
from bot.store.db import transaction
from bot.store.tables.people import Invite
from bot.store.tables.traffic import InboxRow, Urgency
from bot.watching.health import metrics
from bot.watching.watch import LONGEST, SPOKEN, Watch, backlog
from tests.support.line import Line
from tests.support.weeks import Team
from tests.support.world import text_of

MORNING = datetime(2027, 5, 5, 6, 30, tzinfo=UTC)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    team = team_at(MORNING)
    with transaction(team.world.engine) as session:  # what was said so far has been sent
        session.connection().exec_driver_sql(
            "UPDATE outbox SET status = 'sent', sent_at = created_at"
        )
    return team


def alert_waits(team: Team, since: datetime) -> None:
    with transaction(team.world.engine) as session:
        say(
            Turn(session, Context(since)),
            chat_id=101,
            text="Warning",
            how=Delivery(urgency=Urgency.URGENT),
        )


def test_every_queue_has_its_longest_wait_and_its_words(own_engine: Engine) -> None:
    with Session(own_engine) as session:
        names = {queue.name for queue in backlog(session, MORNING).queues}
    assert names == set(LONGEST) == set(SPOKEN)


def test_status_says_that_all_is_well_and_what_is_behind_where_it_is_not(team: Team) -> None:
    with team.world.session() as session:
        text, well = status(session, MORNING)
    assert well
    assert "All is well." in text
    assert "1 active" in text
    assert "Mira" not in text

    alert_waits(team, MORNING - timedelta(minutes=9))
    with transaction(team.world.engine) as session:
        session.add(
            InboxRow(update_id=7, raw={}, received_at=MORNING, status="poison", problem="KeyError")
        )
    with team.world.session() as session:
        text, well = status(session, MORNING)

    assert not well
    assert "1 urgent messages, alerts among them, wait to be sent, the oldest for 9 minutes" in text
    assert "update 7" in text


async def test_the_operator_is_told_once_again_each_hour_and_when_it_is_over(team: Team) -> None:
    clock, line = DrivenClock(MORNING), Line()
    watch = Watch(team.world.engine, clock, line, 555)

    def told() -> list[dict[str, Any]]:
        return [payload for method, payload in line.heard if method == "sendMessage"]

    async def look() -> int:
        looking = asyncio.ensure_future(watch.look())
        await asyncio.sleep(0)
        clock.move_to(clock.now() + timedelta(seconds=30))
        await looking
        return len(told())

    assert await look() == 0
    alert_waits(team, clock.now() - timedelta(minutes=5))
    line.fail(NetworkError("away"))
    assert await look() == 0
    assert await look() == 1
    assert await look() == 1
    clock.move_to(clock.now() + timedelta(hours=1))
    assert await look() == 2
    with transaction(team.world.engine) as session:
        session.connection().exec_driver_sql("UPDATE outbox SET status = 'sent'")
        session.connection().exec_driver_sql("UPDATE agenda SET status = 'done'")
    assert await look() == 3

    assert {call["chat_id"] for call in told()} == {555}
    assert "urgent" in told()[0]["text"]
    assert "caught up" in told()[2]["text"]
    assert "Mira" not in str(told())


def test_metrics_are_read_by_an_independent_parser_and_name_nobody(team: Team) -> None:
    alert_waits(team, MORNING - timedelta(seconds=90))

    text = metrics(team.world.engine, MORNING)

    samples = {
        (sample.name, sample.labels.get("queue")): sample.value
        for family in text_string_to_metric_families(text)
        for sample in family.samples
    }
    assert samples["brimline_queue_rows", "urgent"] == 1
    assert samples["brimline_queue_oldest_seconds", "urgent"] == 90
    assert samples["brimline_set_aside", None] == 0
    assert "Mira" not in text
    assert "Ravi" not in text


def test_an_invitation_that_was_revoked_lets_nobody_in(team: Team) -> None:
    team.coach.writes("/invite")
    code = text_of(team.coach.all_said()).rpartition("?start=")[2].split()[0]
    with transaction(team.world.engine) as session:
        listed = coaches_and_invitations(session, team.world.now)
        newest = max(row.id or 0 for row in session.exec(select(Invite)))
        assert f"{newest:>4}  for an athlete, from Ravi" in listed
        assert revoke_invitation(session, newest, team.world.now) is None
        assert "none" in coaches_and_invitations(session, team.world.now)
        assert "there is no invitation 999" in str(revoke_invitation(session, 999, MORNING))

    stranger = type(team.coach)(team.world, 104, "Vera")
    said = stranger.writes(f"/start {code}")

    assert "expired" in text_of(said) or "no longer" in text_of(said)


def test_a_coach_with_athletes_is_not_revoked_and_one_without_is_and_is_told(team: Team) -> None:
    with transaction(team.world.engine) as session:
        turn = Turn(session, team.world.context)
        assert "still coaches 1" in str(revoke_coach(turn, 1))
        assert "there is no coach 2" in str(revoke_coach(turn, 2))
        session.connection().exec_driver_sql("UPDATE athlete_profile SET status = 'ended'")
        session.expire_all()
        assert revoke_coach(turn, 1) is None

    assert "ended your role as a coach" in text_of(team.coach.hears())
    assert "Invite an athlete" not in text_of(team.coach.writes("/invite"))


def test_every_command_of_the_operator_is_told_by_help(capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        main(["--help"])
    said = capsys.readouterr().out
    for name in ("setup", "doctor", "status", "backup", "restore", "coaches", "revoke"):
        assert f"    {name}" in said
