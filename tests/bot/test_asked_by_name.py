"""A question whose button was offered is asked when it is tapped, whatever else the day asks for."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

from tests.support.weeks import Team
from tests.support.world import text_of


def test_sharpness_missing_for_tomorrow_is_asked_for_although_today_needs_none(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 5, 12, 0, tzinfo=UTC))
    team.athlete.writes("60.1 3 3.5")
    told = team.athlete.all_said()[-1]
    assert "I still need: how sharp" in told.text
    asked = text_of(team.athlete.presses(told.buttons["Sharpness"], told.outbox_id))
    assert "Sharpness, 1 to 5?" in asked
