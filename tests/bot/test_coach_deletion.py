"""A coach, a stand-in and a second contact have everything deleted, and what becomes of the others."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Engine
from sqlmodel import Session, select

from bot.membership.deletion.coach import OWN_TABLES
from bot.membership.my_data.owned import Me, as_coach, as_person, owned
from bot.people.people import profile_of
from bot.store.db import transaction
from bot.store.tables import metadata
from bot.store.tables.coach import TemplateRow
from bot.store.tables.people import AthleteStatus, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import AlertRow, DecisionRow, DecisionStatus
from tests.support.files import files_for
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team, in_peak_week
from tests.support.world import Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, at seven in London."""
    return team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))


def joins(team: Team, user_id: int, name: str, *asked: Callable[[], Any]) -> Someone:
    """Somebody takes up the invitation that the coach gets at the end of this."""
    said = [text_of(one()) for one in asked][-1]
    code = re.search(r"/join (\S+)", said)
    assert code is not None, said
    someone = Someone(team.world, user_id, name)
    someone.writes(f"/join {code[1]}")
    team.coach.hears()
    team.athlete.hears()
    return someone


def second(
    team: Team, rights: str = "Everything", user_id: int = 150, name: str = "Noa"
) -> Someone:
    coach = team.coach
    return joins(
        team, user_id, name,
        lambda: coach.presses("c:second-ask:2"), lambda: coach.taps("Only Mira"),
        lambda: coach.taps(rights), lambda: coach.writes("9 May"),
    )  # fmt: skip


def contact(team: Team) -> Someone:
    return joins(team, 180, "Xanthe", lambda: team.coach.writes("/contact"))


def deletes(someone: Someone) -> str:
    someone.writes("/delete_my_data")
    return text_of(someone.taps("Yes, delete it all"))


def all_sent(team: Team) -> None:
    """What waited has come into its chats."""
    with transaction(team.world.engine) as session:
        for row in session.exec(select(OutboxRow).where(OutboxRow.status != "sent")):
            row.status = "sent"
            session.add(row)


def everything_kept(team: Team) -> dict[str, str]:
    with team.world.session() as session:
        return {
            f"{table.name} {row[0]}": str(tuple(row))
            for table in metadata.sorted_tables
            for row in session.connection().execute(table.select())
        }


def rows_of(session: Session, me: Me) -> dict[str, int]:
    """Rows that are this person's, as a coach or whatever they are; by the same declaration as what is
    handed out."""
    found = {}
    for table in metadata.sorted_tables:
        if owned(table).nobodys:
            continue
        for whose in (as_coach, as_person):
            mine = whose(table, me)
            # What is about an athlete is the athlete's.
            if mine is None or (whose is as_coach and owned(table).athlete):
                continue
            rows = session.connection().execute(table.select().where(mine)).all()
            if rows:
                found[table.name] = len(rows)
    return found


# Before it is done


def test_a_coach_reads_what_becomes_of_each_athlete_before_anything_is_deleted(team: Team) -> None:
    second(team)
    with transaction(team.world.engine) as session:
        many_athletes(session, 1, 1, team.world.now, Alike(name="Orla", answered=False))
    team.athlete.writes(FLAT)
    team.athlete.writes("I fainted this morning")
    said = text_of(team.coach.writes("/delete_my_data"))
    assert "can't be undone" in said
    assert "An alert is still open about Mira. Please see to it first." in said
    assert "Noa, who stands in for you, becomes the coach of Mira" in said
    assert "After this nobody coaches Orla 0." in said
    assert "Until then nobody gets their check-ins or alerts" in said
    assert "OK, nothing was deleted" in text_of(team.coach.taps("Keep it"))
    assert "Mira" in text_of(team.coach.writes("/roster"))


def test_what_has_changed_since_it_was_asked_is_asked_again(team: Team) -> None:
    team.coach.writes("/delete_my_data")
    team.athlete.writes("I fainted this morning")
    team.coach.hears()
    said = text_of(team.coach.taps("Yes, delete it all"))
    assert "Something has changed meanwhile" in said and "An alert is still open about Mira" in said
    assert "Mira" in text_of(team.coach.writes("/roster"))
    assert "Done." in text_of(team.coach.taps("Yes, delete it all"))


# Nobody stands in


def test_the_athlete_is_told_kindly_keeps_everything_and_can_go_on_with_another(team: Team) -> None:
    team.athlete.writes("61.1 5 3.5 4 on target")
    assert "Done. Everything saved here about you is deleted" in deletes(team.coach)
    said = text_of(team.athlete.hears())
    assert "Ravi has deleted all data here and no longer coaches you" in said
    assert (
        "nobody gets your check-ins or alerts" in said and "eat and drink as you usually do" in said
    )
    assert "61.1 kg" in text_of(team.athlete.writes("/past"))
    profile = team.profile()
    assert profile.status == AthleteStatus.ENDED and profile.coach_id == profile.person_id
    assert "by invitation" in text_of(team.coach.writes("/roster"))
    team.world.until(datetime(2027, 5, 10, tzinfo=UTC))
    assert text_of(team.coach.hears()) == ""


def test_an_open_alert_goes_once_more_to_everybody_who_was_there_for_it(team: Team) -> None:
    xanthe, rio = contact(team), second(team, "Alerts only", 160, "Rio")
    team.athlete.writes("I fainted this morning")
    for one in (xanthe, rio, team.athlete):
        one.hears()
    deletes(team.coach)
    for one in (xanthe, rio):
        said = text_of(one.hears())
        assert "Please call Mira now" in said and "I fainted this morning" in said
        assert "I no longer follow this up" in said and "Tap Acknowledge" not in said
        assert "no longer" in said  # what they were for this coach is over
    said = text_of(team.athlete.hears())
    assert "I have told Rio, Xanthe" in said and "call your local emergency number" in said
    team.world.later(hours=2)
    assert text_of(xanthe.hears()) == "" and text_of(rio.hears()) == ""


def test_with_nobody_else_there_the_athlete_is_told_that_nobody_follows_it_up(team: Team) -> None:
    team.athlete.writes("I fainted this morning")
    team.athlete.hears()
    deletes(team.coach)
    said = text_of(team.athlete.hears())
    assert said.startswith("An alert about you was open, and nobody follows it up any more.")
    assert "call your local emergency number now" in said
    # What is said later is still answered, to the one person who is left.
    assert "emergency" in text_of(team.athlete.writes("I fainted again"))


def test_a_change_that_waited_is_closed_and_the_plan_holds(team: Team) -> None:
    team.athlete.writes(FLAT)
    with team.world.session() as session:
        assert session.exec(select(DecisionRow)).all()[-1].status == DecisionStatus.WAITING
    deletes(team.coach)
    with team.world.session() as session:
        assert session.exec(select(DecisionRow)).all()[-1].status == DecisionStatus.CLOSED
    team.world.until(datetime(2027, 5, 8, tzinfo=UTC))
    assert "approv" not in text_of(team.athlete.hears())


# Somebody stands in


def test_who_stands_in_takes_over_with_the_alert_and_the_change_as_they_stand(team: Team) -> None:
    noa = second(team)
    team.athlete.writes(FLAT)
    team.athlete.writes("I fainted this morning")
    noa.hears()
    team.athlete.hears()
    deletes(team.coach)
    said = text_of(team.athlete.hears())
    assert (
        "Noa, who already stood in for Ravi, coaches you from now on" in said and "/leave" in said
    )
    said = text_of(noa.hears())
    assert "You now coach Mira" in said and "name a second contact: /contact" in said
    team.world.later(minutes=6)
    assert "I fainted this morning" in text_of(noa.hears())
    with team.world.session() as session:
        alert = session.exec(select(AlertRow)).all()[-1]
        profile = profile_of(session, 2)
        assert profile is not None and alert.coach_id == profile.coach_id
    noa.presses(f"alert:ack:{alert.id}")
    with team.world.session() as session:
        assert session.get_one(AlertRow, alert.id).acknowledged_by == profile.coach_id
    assert "Mira" in text_of(noa.writes("/roster"))
    team.world.until(datetime(2027, 5, 11, tzinfo=UTC))  # when standing in would have ended
    assert "Mira" in text_of(noa.writes("/roster"))


# A stand-in, a contact


def test_a_contact_who_goes_is_missed_by_the_coach_and_by_nobody_else(team: Team) -> None:
    xanthe = contact(team)
    said = text_of(xanthe.writes("/delete_my_data"))
    assert "You are then no longer second contact for Ravi" in said
    assert "Done." in text_of(xanthe.taps("Yes, delete it all"))
    assert "Xanthe has deleted all data here and is no longer your second contact" in text_of(
        team.coach.hears()
    )
    assert "by invitation" in text_of(xanthe.writes("/help"))
    team.athlete.writes("I fainted this morning")
    team.world.later(minutes=40)
    assert text_of(xanthe.hears()) == ""


def test_who_is_nothing_here_any_more_still_gets_at_what_is_kept_of_them(team: Team) -> None:
    xanthe = contact(team)
    deletes(team.coach)
    said = text_of(xanthe.writes("hello?"))
    assert "by invitation" in said and "/mydata, /delete_my_data" in said
    xanthe.writes("/mydata")
    assert files_for(xanthe, "sendDocument")
    said = text_of(xanthe.writes("/delete_my_data"))
    assert "everything saved here about you" in said
    assert "Done." in text_of(xanthe.taps("Yes, delete it all"))
    said = text_of(xanthe.writes("/mydata"))
    assert "by invitation" in said and "saved about you" not in said
    with team.world.session() as session:
        assert not session.exec(select(Person).where(Person.first_name == "Xanthe")).all()
    assert "by invitation" in text_of(xanthe.presses("c:card:2"))


def test_a_stand_in_who_goes_is_missed_by_coach_and_athlete(team: Team) -> None:
    noa = second(team)
    assert "Done." in deletes(noa)
    assert "Noa has deleted all data here and no longer stands in" in text_of(team.coach.hears())
    assert "Noa" in text_of(team.athlete.hears())
    assert "by invitation" in text_of(noa.writes("/roster"))


def test_an_athlete_who_also_coaches_may_delete_the_one_or_both(team: Team) -> None:
    team.coach.writes("/selfcoach")
    team.coach.taps("I understand and agree")
    said = text_of(team.coach.writes("/delete_my_data"))
    assert "What you have here as a coach or contact stays" in said
    said = text_of(team.coach.taps("All of it, not only the athlete's"))
    assert "What is saved about you as an athlete goes too" in said
    assert "After this nobody coaches Mira" in said
    assert "Done." in text_of(team.coach.taps("Yes, delete it all"))
    with team.world.session() as session:
        me = Me(1, team.coach.user_id)
        assert set(rows_of(session, me)) <= {"person", "inbox", "outbox"}
        assert profile_of(session, 1) is None
    assert "by invitation" in text_of(team.coach.writes("/roster"))


# What is left


def lived_through(team: Team) -> None:
    """Something of everything that is a coach's."""
    with transaction(team.world.engine) as session:
        session.add(TemplateRow(
            coach_id=1, name="Ravi's usual", shape="even", days=[], made_at=team.world.now,
        ))  # fmt: skip
    contact(team)
    second(team, "Alerts only", 160, "Rio")
    team.coach.writes("/invite")
    team.athlete.writes(FLAT)
    team.coach.presses("c:hand:2:1")
    team.coach.writes("480")
    team.coach.presses(f"c:message:{team.athlete_id}")
    team.coach.writes("well done, Ravi here")
    team.coach.writes("/roster")
    team.coach.presses("c:hand:2:1")  # a question left open
    team.coach.hears()
    team.athlete.writes("thank you")
    team.world.later(minutes=2)
    team.athlete.hears()


def test_no_row_is_theirs_afterwards_and_their_name_stands_nowhere(team: Team) -> None:
    lived_through(team)
    before = everything_kept(team)
    assert sum("Ravi" in text for text in before.values()) > 5
    deletes(team.coach)
    all_sent(team)
    with team.world.session() as session:
        assert set(rows_of(session, Me(1, team.coach.user_id))) <= {"person", "inbox", "outbox"}
        place = session.get(Person, 1)
        assert place is not None and place.first_name == "–" and place.telegram_user_id < 0
        mine = session.exec(select(OutboxRow).where(OutboxRow.chat_id == 101)).all()
        assert all("480" not in str(row.payload) and "Mira" not in str(row.payload) for row in mine)
    team.world.later(hours=3)
    left = {key: text for key, text in everything_kept(team).items() if "Ravi" in text}
    assert left == {}
    assert not any(key.startswith("plan_template") for key in everything_kept(team))


def test_the_athletes_record_still_says_what_was_set_only_not_by_whom(team: Team) -> None:
    lived_through(team)
    deletes(team.coach)
    said = text_of(team.athlete.writes("/why"))
    assert "480" in said or "480" in str(everything_kept(team))
    assert "Ravi" not in said
    assert "Ravi" not in text_of(team.athlete.writes("/weeks"))
    assert "Ravi" not in text_of(team.athlete.writes("/mydata"))


@pytest.mark.sqlite
def test_nothing_of_it_is_left_in_the_file_of_the_database(team: Team) -> None:
    """https://www.sqlite.org/pragma.html#pragma_secure_delete"""
    lived_through(team)
    file = Path(str(team.world.engine.url.database))
    team.world.engine.pool.dispose()
    assert b"Ravi's usual" in file.read_bytes()
    deletes(team.coach)
    all_sent(team)
    team.world.later(hours=3)
    team.world.engine.pool.dispose()
    assert b"Ravi" not in file.read_bytes()


def test_a_message_on_its_way_reaches_its_reader_whole_and_is_then_rewritten(team: Team) -> None:
    with transaction(team.world.engine) as session:
        session.add(OutboxRow(
            chat_id=102, method="sendMessage", status="sending", not_before=team.world.now,
            payload={"text": "Ravi has approved 480 g"}, created_at=team.world.now,
        ))  # fmt: skip
    deletes(team.coach)
    assert any("Ravi has approved" in text for text in everything_kept(team).values())
    all_sent(team)
    team.world.later(hours=3)
    assert any("– has approved 480 g" in text for text in everything_kept(team).values())
    assert not any("Ravi" in text for text in everything_kept(team).values())


def test_it_works_on_either_database(any_engine: Engine) -> None:
    team = in_peak_week(any_engine)
    team.world.until(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))
    lived_through(team)
    deletes(team.coach)
    all_sent(team)
    team.world.later(hours=3)
    assert not [key for key, text in everything_kept(team).items() if "Ravi" in text]


def test_pressing_twice_and_strangers_do_no_harm(team: Team) -> None:
    stranger = Someone(team.world, 999, "Nobody")
    assert "by invitation" in text_of(stranger.presses("gone:all-yes:000000000000"))
    team.athlete.presses("gone:all-yes:000000000000")
    assert team.profile().status == AthleteStatus.ACTIVE
    team.coach.writes("/delete_my_data")
    data = next(iter(team.coach.all_said()[-1].buttons.values()))
    assert "Done." in text_of(team.coach.presses(data))
    assert "by invitation" in text_of(team.coach.presses(data))


def test_every_table_that_is_a_coachs_own_goes() -> None:
    own = {table.name for table in metadata.sorted_tables if owned(table).coach}
    own -= {table.name for table in metadata.sorted_tables if owned(table).athlete}
    assert own - {"invite"} <= set(OWN_TABLES)  # invitations go by whoever took them up, too
