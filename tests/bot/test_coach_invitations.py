"""Invitations: who comes in, as what, and who does not."""

from __future__ import annotations

import re
from datetime import UTC, datetime

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.core.turn import Turn
from bot.membership.invitations import ALPHABET, LENGTH, invite_coach_command, make_invite
from bot.people.people import profile_of
from bot.store.db import transaction
from bot.store.tables.people import Invite, Person
from bot.store.tables.traffic import OutboxRow
from tests.support.weeks import ONBOARDING_ANSWERS, in_peak_week, onboarded
from tests.support.world import Said, Someone, World, text_of

NOW = datetime(2027, 5, 1, 15, 0, tzinfo=UTC)


@pytest.fixture
def world(own_engine: Engine) -> World:
    return World(own_engine, NOW)


def code_in(messages: list[Said]) -> str:
    found = re.search(r"/join (\S+)", text_of(messages))
    assert found is not None, "no code in what was said"
    return found[1]


def coach_in(world: World, user_id: int, name: str) -> Someone:
    """Somebody who came in by an invitation from whoever runs the bot."""
    with transaction(world.engine) as session:
        code = re.search(r"/join (\S+)", invite_coach_command(Turn(session, world.context)))
    assert code is not None
    someone = Someone(world, user_id, name)
    someone.writes(f"/join {code[1]}")
    return someone


def menu_of(world: World, someone: Someone) -> set[str]:
    with world.session() as session:
        rows = session.exec(
            select(OutboxRow).where(
                OutboxRow.chat_id == someone.user_id, OutboxRow.method == "setMyCommands"
            )
        ).all()
    return {command["command"] for command in rows[-1].payload["commands"]}


def test_the_printed_invitation_makes_a_coach_who_reads_the_cautions_and_what_to_do_first(
    world: World,
) -> None:
    ravi = coach_in(world, 101, "Ravi")
    said = text_of(ravi.all_said())
    assert "not a medical device" in said
    assert all(command in said for command in ("/contact", "/invite", "/roster", "/selfcoach"))
    assert {"roster", "invite", "contact", "alerts", "help"} <= menu_of(world, ravi)
    assert "checkin" not in menu_of(world, ravi)


@pytest.mark.parametrize(
    "typed",
    [
        "/start {code}",
        "/START {code}",
        "/start@brimline_test_bot {code}",
        "/join {spaced}",
        "/join {lower}",
        "{code}",
        "{spaced}",
        "  {lower} ",
    ],
)
def test_a_code_is_taken_however_it_is_typed(world: World, typed: str) -> None:
    with transaction(world.engine) as session:
        code = make_invite(Turn(session, world.context), "coach", None)
    lower = " ".join(code.lower()[i : i + 4] for i in range(0, LENGTH, 4))
    spaced = "-".join(code[i : i + 4] for i in range(0, LENGTH, 4))
    someone = Someone(world, 101, "Ravi")
    said = someone.writes(typed.format(code=code, lower=lower, spaced=spaced))
    assert "set up here as a coach" in text_of(said)


def test_letters_that_look_like_digits_are_taken_for_them(world: World) -> None:
    with transaction(world.engine) as session:
        code = make_invite(Turn(session, world.context), "coach", None)
    misread = code.replace("0", "O").replace("1", "l")
    assert "set up here as a coach" in text_of(Someone(world, 101, "Ravi").writes(misread))


def test_a_token_is_kept_as_a_hash_only_and_is_long_enough(world: World) -> None:
    with transaction(world.engine) as session:
        code = make_invite(Turn(session, world.context), "coach", None)
    with world.session() as session:
        row = session.exec(select(Invite)).one()
    assert code not in repr(row.model_dump())
    assert len(ALPHABET) ** LENGTH >= 2**80


def test_an_invitation_works_once(world: World) -> None:
    with transaction(world.engine) as session:
        code = make_invite(Turn(session, world.context), "coach", None)
    Someone(world, 101, "Ravi").writes(code)
    stranger = Someone(world, 102, "Noa")
    assert "used by somebody already" in text_of(stranger.writes(code))
    assert "works by invitation" in text_of(stranger.writes("hello"))


def test_whoever_used_it_and_taps_the_link_again_is_told_that_they_are_in(world: World) -> None:
    with transaction(world.engine) as session:
        code = make_invite(Turn(session, world.context), "coach", None)
    ravi = Someone(world, 101, "Ravi")
    ravi.writes(code)
    assert "so you are in" in text_of(ravi.writes(f"/start {code}"))


def test_an_expired_invitation_is_refused_and_leaves_nobody_behind(world: World) -> None:
    with transaction(world.engine) as session:
        code = make_invite(Turn(session, world.context), "coach", None)
    world.later(days=7)
    assert "has expired" in text_of(Someone(world, 101, "Ravi").writes(code))
    with world.session() as session:
        assert session.exec(select(Person)).all() == []


def test_an_invitation_that_nobody_made_is_refused_kindly(world: World) -> None:
    said = Someone(world, 101, "Ravi").writes("/start ABCDEFGHJKMNPQRS")
    assert "don't know that invitation" in text_of(said)
    assert "after the command" in text_of(Someone(world, 101, "Ravi").writes("/join"))


def test_whoever_guesses_codes_is_let_nothing_more_try_for_an_hour_a_good_one_included(
    world: World,
) -> None:
    ravi = coach_in(world, 101, "Ravi")
    good = code_in(ravi.writes("/invite"))
    guesser = Someone(world, 104, "Vera")
    for number in range(10):
        said = guesser.writes(f"/join {number}ABCDEFGHJKMNPQR")
    assert "many codes" not in text_of(said)

    assert "many codes" in text_of(guesser.writes(f"/join {good}"))
    other = Someone(world, 106, "Lena")
    assert "many codes" not in text_of(other.writes("/join ABCDEFGHJKMNPQRS"))
    world.later(minutes=61)
    assert "Please read this first" in text_of(guesser.writes(f"/join {good}"))


def test_sixteen_letters_from_somebody_known_are_words_and_no_code(world: World) -> None:
    ravi = coach_in(world, 101, "Ravi")
    assert "don't know that invitation" not in text_of(ravi.writes("great work today"))


def test_an_athlete_comes_in_by_the_coachs_link_and_the_coach_hears_of_it(world: World) -> None:
    ravi = coach_in(world, 101, "Ravi")
    invitation = ravi.writes("/invite")
    assert "https://t.me/brimline_test_bot?start=" in text_of(invitation)
    mira = Someone(world, 102, "Mira")
    assert "Ravi has invited you" in text_of(mira.writes(f"/start {code_in(invitation)}"))
    assert "Mira has taken your invitation" in text_of(ravi.hears())
    assert {"checkin", "today"} <= menu_of(world, mira)
    assert "roster" not in menu_of(world, mira)


def test_an_athlete_is_asked_before_another_coach_takes_over(own_engine: Engine) -> None:
    team = onboarded(own_engine)
    noa = coach_in(team.world, 103, "Noa")
    code = code_in(noa.writes("/invite"))
    said = team.athlete.writes(f"/start {code}")
    assert "coached by Ravi now" in text_of(said)
    team.athlete.taps("No, change nothing")
    assert team.profile().coach_id == 1
    team.athlete.writes(f"/start {code}")
    team.athlete.taps("Yes, Noa takes over")
    assert "Mira is now your athlete" in text_of(noa.hears())
    assert "chosen another coach" in text_of(team.coach.hears())
    assert "Mira" not in text_of(team.coach.writes("/roster"))
    assert "Mira" in text_of(noa.writes("/roster"))
    assert "already used that invitation" in text_of(team.athlete.writes(f"/start {code}"))


def test_no_coach_takes_over_while_an_alert_is_open(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    noa = coach_in(team.world, 103, "Noa")
    code = code_in(noa.writes("/invite"))
    team.athlete.writes("I fainted this morning")
    assert "still open" in text_of(team.athlete.writes(f"/start {code}"))
    assert team.profile().coach_id == 1


def test_a_coach_can_be_their_own_athlete_in_one_chat(world: World) -> None:
    ravi = coach_in(world, 101, "Ravi")
    assert "Do you understand this" in text_of(ravi.writes("/selfcoach"))
    with world.session() as session:
        profile = profile_of(session, 1)
    assert profile is not None
    assert profile.coach_id == profile.person_id
    assert {"roster", "checkin"} <= menu_of(world, ravi)
    assert "You already coach yourself" in text_of(ravi.writes("/selfcoach"))


def test_who_coaches_themself_hears_of_the_doctors_word_in_their_own_terms(world: World) -> None:
    ravi = coach_in(world, 101, "Ravi")
    ravi.writes("/selfcoach")
    answers = list(ONBOARDING_ANSWERS)
    answers[3] = "Diabetes or blood sugar"
    for answer in answers:
        ravi.writes(answer)
    said = text_of(ravi.all_said())
    assert "Please show a doctor what you are planning" in said
    assert "you and Ravi are planning" not in said


def test_a_second_contact_comes_in_and_can_be_replaced_and_removed(world: World) -> None:
    ravi = coach_in(world, 101, "Ravi")
    lea, sam = Someone(world, 104, "Lea"), Someone(world, 105, "Sam")
    said = lea.writes(f"/start {code_in(ravi.writes('/contact'))}")
    assert "second contact for Ravi" in text_of(said)
    assert "Lea is now your second contact" in text_of(ravi.hears())
    assert menu_of(world, lea) == {"alerts", "delete_my_data", "help", "language", "mydata"}
    sam.writes(f"/start {code_in(ravi.writes('/contact'))}")
    assert "no longer second contact for Ravi" in text_of(lea.hears())
    ravi.writes("/contact")
    ravi.taps("Remove Sam")
    assert "no longer second contact for Ravi" in text_of(sam.hears())
    assert "works by invitation" in text_of(sam.writes("/alerts"))


def test_a_coach_cannot_be_their_own_second_contact_and_the_code_stays_good(world: World) -> None:
    ravi = coach_in(world, 101, "Ravi")
    code = code_in(ravi.writes("/contact"))
    assert "has to be somebody else" in text_of(ravi.writes(f"/start {code}"))
    lea = Someone(world, 104, "Lea")
    assert "second contact for Ravi" in text_of(lea.writes(f"/start {code}"))


def test_an_athlete_cannot_see_other_athletes_alerts_as_second_contact(own_engine: Engine) -> None:
    team = onboarded(own_engine)
    code = code_in(team.coach.writes("/contact"))
    assert "can't be Ravi's second contact" in text_of(team.athlete.writes(f"/start {code}"))


def test_a_bare_start_from_somebody_known_is_no_invitation(world: World) -> None:
    ravi = coach_in(world, 101, "Ravi")
    assert "/roster" in text_of(ravi.writes("/start"))
