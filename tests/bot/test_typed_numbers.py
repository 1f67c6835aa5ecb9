"""A number of the plan by one typed line: "2 days out carbs 420"."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from bot.people.people import get_profile
from bot.plan.flow_number import TypedNumber, read_number
from bot.store.db import transaction
from bot.store.tables.coach import Rights
from bot.week.load import current_week
from bot.words.languages import speaking
from engine.values.plan import DayTarget
from tests.bot.test_leaving import beside
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, Thursday 6 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def day(team: Team, days_out: int) -> DayTarget:
    with team.world.session() as session:
        profile = get_profile(session, 2)
        week = current_week(session, profile)
        assert week is not None
        found = week.plan.day(days_out)
        assert found is not None
        return found


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("2 days out carbs 420", TypedNumber(None, 2, "carb_g", "420")),
        ("Mira, 1 day out: carbs 420 g", TypedNumber("Mira", 1, "carb_g", "420 g")),
        ("show day water 3,5 L", TypedNumber(None, 0, "water_l", "3,5 L")),
        ("Mira Lund 3 days out  Fiber = 20", TypedNumber("Mira Lund", 3, "fibre_g", "20")),
        ("2 days out salt 5", None),
        ("9 days out carbs 420", None),
        ("2 days out carbs", None),
        ("61.0 4 3.5 5", None),
        ("I felt flat 2 days out", None),
    ],
)
def test_what_such_a_line_says(text: str, meant: TypedNumber | None) -> None:
    assert read_number(text) == meant


@pytest.mark.usefixtures("ours")
@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("2 Tage vorher Kohlenhydrate 420", TypedNumber(None, 2, "carb_g", "420")),
        ("Mira, 1 Tag vorher: Eiweiß 150 g", TypedNumber("Mira", 1, "protein_g", "150 g")),
        ("Mira am Wettkampftag Wasser 3,5 L", TypedNumber("Mira", 0, "water_l", "3,5 L")),
        ("2 days out carbs 420", TypedNumber(None, 2, "carb_g", "420")),
        ("2 Tage vorher war ich flach", None),
    ],
)
def test_in_german_it_is_read_in_german_and_in_english(
    text: str, meant: TypedNumber | None
) -> None:
    with speaking("de"):
        assert read_number(text) == meant


def test_it_is_set_said_and_can_be_taken_back(team: Team) -> None:
    said = text_of(team.coach.writes("2 days out carbs 420"))
    assert "2 days out" in said
    assert "420 g" in said
    assert day(team, 2).carb_g == 420
    assert "set the plan (2 days out: carbs 500 g to 420 g)" in text_of(
        team.coach.presses("c:history:2")
    )
    team.coach.writes("Mira 2 days out water 3,5 l")
    assert day(team, 2).water_l == 3.5


def test_what_cannot_be_is_refused_with_the_reason_and_changes_nothing(team: Team) -> None:
    before = [day(team, out) for out in range(8)]
    for text, told in (
        ("2 days out carbs 42000", "between 0 and 1,500 g"),
        ("2 days out carbs many", "need a number here"),
        ("7 days out carbs 200", "That day is over"),
        ("Zoe 2 days out carbs 420", "Nobody on your roster is called Zoe"),
    ):
        assert told in text_of(team.coach.writes(text)), text
    assert "ceiling" in text_of(team.coach.writes("2 days out carbs 700"))
    assert [day(team, out) for out in range(8)] == before


def test_among_several_the_name_tells_whose_or_a_button_does(team: Team) -> None:
    with transaction(team.world.engine) as session:
        many_athletes(
            session, 1, 2, team.world.now, Alike(answered=False, zones=("Europe/London",))
        )
    asked = team.coach.writes("2 days out carbs 420")[-1]
    assert "Whose plan? 2 days out, carbs: 420" in asked.text
    assert len(asked.buttons) == 3
    assert day(team, 2).carb_g == 500
    team.coach.taps("Mira", asked)
    assert day(team, 2).carb_g == 420
    team.coach.writes("mira 1 day out carbs 430")
    assert day(team, 1).carb_g == 430


def test_an_open_question_that_can_take_the_words_has_them(team: Team) -> None:
    team.coach.presses("c:message:2")
    team.coach.writes("2 days out carbs 420")
    assert "2 days out carbs 420" in text_of(team.athlete.hears())
    assert day(team, 2).carb_g == 500
    team.coach.presses("c:num:2:1:carb_g")  # waits for a number, which this is not
    team.coach.writes("2 days out carbs 420")
    assert day(team, 2).carb_g == 420
    assert day(team, 1).carb_g == 500


def test_it_is_for_those_who_coach_the_athlete_with_full_rights_only(team: Team) -> None:
    noa, ola = beside(team, "Noa", 150, Rights.FULL), beside(team, "Ola", 160, Rights.ALERTS)
    assert "passed that on to Ravi" in text_of(team.athlete.writes("2 days out carbs 420"))
    assert "passed that on to Ravi" in text_of(ola.writes("2 days out carbs 420"))
    assert day(team, 2).carb_g == 500
    noa.writes("2 days out carbs 420")
    assert day(team, 2).carb_g == 420
