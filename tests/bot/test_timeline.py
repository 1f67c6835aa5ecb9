"""A season at a glance: body mass, trials and shows on one line of time, as a picture and in words."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from typing import Any

import matplotlib as mpl
import pytest
from matplotlib.text import Text
from sqlmodel import select

from bot.drawing import canvas
from bot.pictures.timeline import words
from bot.pictures.timeline.drawn import WIDTH, draw
from bot.pictures.timeline.words import Season, SeasonEvent
from bot.store.tables.traffic import OutboxRow
from bot.words.languages import speaking
from tests.support.files import files_for
from tests.support.past_weeks import ORDINARY, Lived, behind, moved
from tests.support.weeks import Team, gone_on
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """A week before the show; two trials lie behind Mira."""
    return gone_on(team_at(datetime(2027, 5, 2, 6, 0, tzinfo=UTC)), two_trials)


def two_trials(team: Team) -> None:
    behind(team, date(2027, 3, 14), Lived(told=moved(ORDINARY, 1.5)), look="flat")
    behind(team, date(2027, 4, 11), look="full")


def sent(team: Team) -> list[dict[str, Any]]:
    with team.world.session() as session:
        rows = session.exec(select(OutboxRow).where(OutboxRow.method == "sendPhoto")).all()
    return [row.payload for row in rows]


def test_the_coach_sees_the_season_from_the_card_with_the_same_in_words(team: Team) -> None:
    team.coach.presses(f"c:timeline:{team.athlete_id}")
    said = sent(team)[-1]["caption"].splitlines()
    assert said[0] == "Mira: 16 weights and 3 events, 7 Mar to 9 May 2027."
    assert said[1].startswith("Trial, Sun 14 Mar: flat, load ")
    assert said[2].endswith("62.2 kg, 1.5 kg less than at the one before")
    assert said[3] == "Show, Sun 9 May: in 7 days"
    assert said[4] == "Weight: 63.3 kg on Sun 7 Mar, 62.2 kg on Sun 11 Apr."
    _, documents = files_for(team.coach, "sendPhoto")[-1]
    assert documents[0].content.startswith(b"\x89PNG")


def test_the_athlete_gets_their_own_and_nobody_that_of_another(team: Team) -> None:
    team.athlete.writes("/season")
    assert len(sent(team)) == 1
    team.athlete.presses(f"c:timeline:{team.athlete_id}")
    assert len(sent(team)) == 1


def test_before_there_is_anything_it_is_said(team: Team) -> None:
    with team.world.engine.begin() as connection:
        for table in ("checkin", "plan", "limits"):
            connection.exec_driver_sql(f"delete from {table}")
    said = text_of(team.coach.presses(f"c:timeline:{team.athlete_id}"))
    assert "no season to show yet: Mira has no event" in said


def long_season() -> Season:
    """A year with a trial or a show every other week, and a long name."""
    first = date(2026, 10, 4)
    events = tuple(
        SeasonEvent(
            kind=("trial", "show", "shoot")[n % 3], day=first + timedelta(weeks=2 * n),
            look="spilled over", weight_kg=160.0 - n, load_per_kg=10.5, placing="2nd of 9",
        )
        for n in range(26)
    )  # fmt: skip
    weights = tuple((first + timedelta(days=3 * n), 90.0 - n / 8) for n in range(110))
    return Season(
        name="Maximiliane-Charlotte von Hohenstein-Wittelsbach", weight_unit="st",
        today=first + timedelta(days=340), weights=weights, events=events,
    )  # fmt: skip


@pytest.mark.parametrize("language", ["en", "de"])
def test_even_a_full_year_is_legible_and_its_words_fit(ours: None, language: str) -> None:
    season = long_season()
    with mpl.rc_context(), speaking(language):
        mpl.rcdefaults()
        mpl.rcParams.update(canvas.STYLE)
        figure = draw(season).figure
        boxes = [
            (text.get_text(), text.get_window_extent())
            for text in figure.findobj(Text)
            if isinstance(text, Text) and text.get_text()
        ]
        assert len(words.caption(season).encode("utf-16-le")) <= 2048
        assert "2026" in words.span(season) and "2027" in words.span(season)
    for number, (text, box) in enumerate(boxes):
        assert box.x0 >= 0 and box.x1 <= WIDTH + 1, text
        for other, other_box in boxes[number + 1 :]:
            across = min(box.x1, other_box.x1) - max(box.x0, other_box.x0)
            along = min(box.y1, other_box.y1) - max(box.y0, other_box.y0)
            assert across <= 0 or along <= 6, f"{text} on {other}"


def test_a_season_of_a_single_day_names_it_once_and_counts_no_weights_that_are_not_there() -> None:
    show = SeasonEvent(kind="show", day=date(2027, 5, 9))
    season = Season(
        name="Mira", weight_unit="kg", today=date(2027, 5, 1), weights=(), events=(show,)
    )
    assert words.caption(season).startswith("Mira: 1 event, 9 May 2027.\n")


def test_two_weights_in_stones_are_pounds_apart() -> None:
    two = tuple(
        SeasonEvent(kind="show", day=date(2027, month, 9), weight_kg=kg)
        for month, kg in ((4, 63.6), (5, 63.0))
    )
    season = Season(name="Mira", weight_unit="st", today=date(2027, 6, 1), weights=(), events=two)
    assert "1.3 lb less than at the one before" in words.caption(season)
