"""What somebody types under a video or a voice message is read as if it stood alone."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from bot.core.turn import Kind
from tests.support.weeks import Team
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The first morning of the load, half an hour after the question. The show is on 9 May."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def under(team: Team, words: str, media: str) -> str:
    return text_of(team.athlete.writes(words, kind=Kind.OTHER, media=media))


def test_an_emergency_written_under_a_video_is_one(team: Team) -> None:
    assert "emergency number" in under(team, "I fainted in the bathroom", "video")
    assert "Reported: fainting" in text_of(team.coach.hears())


def test_a_morning_written_under_a_voice_message_is_taken(team: Team) -> None:
    said = under(team, "61.0 5 3.5 3 fine", "voice")
    assert "please type it" in said and "61.0 kg" in said


def test_other_words_under_a_video_are_passed_on(team: Team) -> None:
    assert "passed that on" in under(team, "my posing from the side", "video")
    assert "my posing from the side" in text_of(team.coach.hears())
