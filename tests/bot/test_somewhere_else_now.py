"""Another place or another hour, told in words instead of in the settings."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from tests.support.weeks import Team
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at noon in London. The show is on Sunday 9 May."""
    return team_at(datetime(2027, 5, 7, 11, 0, tzinfo=UTC))


def test_who_is_in_a_place_with_other_clocks_is_offered_them_and_the_coach_knows(
    team: Team,
) -> None:
    heard = text_of(team.athlete.writes("just landed in Madrid"))
    assert "Is it this one?" in heard
    assert "just landed in Madrid" in text_of(team.coach.hears())
    team.athlete.taps("Madrid, ES (Europe/Madrid)")
    assert team.profile().zone == "Europe/Madrid"


def test_who_is_at_home_or_in_no_place_is_offered_no_clock(team: Team) -> None:
    for said in ("I'm in Leeds now", "I'm in the gym now"):
        assert "Is it this one?" not in text_of(team.athlete.writes(said))


def test_the_hour_of_the_question_is_changed_in_words(team: Team) -> None:
    assert "You are asked at" in text_of(team.athlete.writes("ask me at 7 from tomorrow"))
    team.athlete.taps("Another time")
    team.athlete.writes("ask me at 7:15 from tomorrow")
    assert f"{team.profile().prompt_time:%H:%M}" == "07:15"
