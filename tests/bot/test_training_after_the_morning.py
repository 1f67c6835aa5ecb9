"""How yesterday's training went, told once the morning's answers are in."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from tests.support.weeks import Team
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The first morning of the load, half an hour after the question. The show is on 9 May."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def test_training_told_after_the_morning_changes_that_answer(team: Team) -> None:
    team.athlete.writes("61.0 5 3.5 3 fine")
    heard = text_of(team.athlete.writes("actually skipped cardio"))
    assert "Added: less training than planned." in heard
    heard = text_of(team.athlete.writes("no training at all"))
    assert "less training than planned → no training" in heard


def test_the_coach_reads_how_the_training_went_beside_the_mornings_numbers(team: Team) -> None:
    team.athlete.writes("61.0 5 3.5 3 did not train")
    card = text_of(team.coach.writes("Mira"))
    assert "This morning: 61.0 kg, fullness 5, sharpness 3, water 3.5 L, no training" in card
