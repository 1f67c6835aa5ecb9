"""Who gets the picture of a week, and that it shows what was answered and decided."""

from __future__ import annotations

import io
from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from PIL import Image
from sqlalchemy import Engine
from sqlmodel import select

from bot.core.turn import Document
from bot.store.db import transaction
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.traffic import OutboxRow
from tests.support.files import files_for
from tests.support.weeks import Team, onboarded
from tests.support.world import Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Everything is set; three days out, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def sent(team: Team) -> list[tuple[int, str]]:
    """Every picture on its way: to whom, with which words."""
    with team.world.session() as session:
        rows = session.exec(select(OutboxRow).where(OutboxRow.method == "sendPhoto")).all()
    return [(row.chat_id, row.payload["caption"]) for row in rows]


def newest(who: Someone) -> Document:
    """The picture that would be uploaded to them now."""
    _, documents = files_for(who, "sendPhoto")[-1]
    return documents[0]


def other_coach(team: Team) -> Someone:
    with transaction(team.world.engine) as session:
        session.add(
            Person(
                telegram_user_id=150, chat_id=150, first_name="Noa", is_coach=True,
                created_at=team.world.now,
            )
        )  # fmt: skip
    return Someone(team.world, 150, "Noa")


def test_the_coach_gets_the_picture_from_the_card_and_nobody_else_does(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.writes("/roster")
    team.coach.taps("Mira")
    team.coach.taps("Chart")
    ((chat, caption),) = sent(team)
    assert chat == team.coach.user_id
    assert caption.startswith("Mira's week to the show on Sun 9 May 2027")
    assert "carbs 525 (+25)" in caption
    document = newest(team.coach)
    assert document.name == "week-2027-05-09.png"
    with Image.open(io.BytesIO(document.content)) as image:
        assert image.format == "PNG"


def test_the_athlete_gets_their_own_week_by_command(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.athlete.writes("/picture")
    ((chat, caption),) = sent(team)
    assert chat == team.athlete.user_id
    assert caption.startswith("Your week to the show")
    assert newest(team.athlete).content.startswith(b"\x89PNG")
    assert "/chart" in text_of(team.athlete.writes("/help"))


def test_the_band_and_the_fullness_expected_are_those_of_the_mornings_last_decision(
    team: Team,
) -> None:
    team.athlete.writes(FLAT)
    team.athlete.writes(FLAT.replace("on target", "carbs 700"))
    why = text_of(team.athlete.writes("/why"))
    low, high = why.split("Weight expected this morning: ")[1].split(" kg,")[0].split(" kg to ")
    expected = why.split("Fullness 1, expected ")[1].split(";")[0]
    team.coach.presses("c:picture:2")
    ((_, caption),) = sent(team)
    assert "3 out, Thu 6 May (today): 61.0 kg (" in caption
    assert f" {low}–{high}), full 1 ({expected} expected)" in caption


def test_a_changed_answer_is_drawn_as_it_stands_and_a_missed_morning_as_missed(team: Team) -> None:
    team.athlete.writes(FLAT, message_id=70)
    team.athlete.writes("60.8 4 3.5 5 on target fine", message_id=71)
    team.coach.presses("c:picture:2")
    caption = sent(team)[-1][1]
    assert "60.8 kg" in caption
    assert "61.0 kg" not in caption
    for line in caption.splitlines()[1:5]:
        assert "no check-in" in line


def test_the_picture_is_in_the_athletes_unit(team: Team) -> None:
    team.athlete.writes("/settings")
    team.athlete.taps("Weight unit")
    team.athlete.taps("pounds")
    team.athlete.writes("134.5 4 3.5 5 on target fine")
    team.coach.presses("c:picture:2")
    assert "134.5 lb" in sent(team)[-1][1]


def test_nobody_else_gets_a_picture_whatever_they_press_or_write(team: Team) -> None:
    team.athlete.writes(FLAT)
    noa, stranger = other_coach(team), Someone(team.world, 190, "Kit")
    for person in (noa, stranger, team.athlete):
        person.presses("c:picture:2")
        person.presses("c:picture:2:1")
    assert "don't know that command" in text_of(noa.writes("/picture"))
    stranger.writes("/picture")
    assert sent(team) == []


def test_a_picture_on_its_way_is_not_drawn_for_a_coach_who_has_lost_the_athlete(team: Team) -> None:
    team.coach.presses("c:picture:2")
    noa = other_coach(team)
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, team.athlete_id)
        coach = session.exec(select(Person).where(Person.telegram_user_id == noa.user_id)).one()
        assert coach.id is not None
        profile.coach_id = coach.id
        session.add(profile)
    ((_, documents),) = files_for(team.coach, "sendPhoto")
    assert documents == []


def test_a_picture_sent_late_or_twice_still_shows_what_its_words_say(team: Team) -> None:
    team.coach.presses("c:picture:2")
    before = newest(team.coach)
    team.athlete.writes(FLAT)
    assert newest(team.coach) == before
    team.coach.presses("c:picture:2")
    assert newest(team.coach) != before


def test_before_there_is_a_plan_it_is_said_what_is_missing(own_engine: Engine) -> None:
    team = onboarded(own_engine)
    said = text_of(team.coach.presses("c:picture:2"))
    assert "There is no chart yet: Mira's event and plan" in said
    assert "no chart yet" in text_of(team.athlete.writes("/picture"))
    assert sent(team) == []


def test_the_week_can_still_be_looked_at_when_it_is_over(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.morning(-1, hour=12)
    team.coach.presses("c:picture:2")
    assert "full 1" in sent(team)[-1][1]
    assert "(today)" not in sent(team)[-1][1]
