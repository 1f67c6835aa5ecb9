"""The strip of chances under the picture of a week: what it shows, for which eyes, and when not."""

from __future__ import annotations

import io
from dataclasses import replace
from datetime import date, timedelta
from types import SimpleNamespace

import matplotlib as mpl
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.figure import Figure
from PIL import Image
from sqlalchemy import Engine
from sqlmodel import col, select

from bot.drawing import canvas
from bot.pictures.week_picture import words
from bot.pictures.week_picture.layout import ODDS_ROOM, RIGHT, WIDTH
from bot.pictures.week_picture.picture import week_values
from bot.pictures.week_picture.values import ChartOdds, ChartWeek
from bot.pictures.week_picture.week import ODDS_BOXES, draw, layout, week_png
from bot.store.tables.traffic import OutboxRow
from bot.words import chances
from tests.bot.test_foresight import LINES, up_to_two_days_out
from tests.bot.test_picture_drawn import EYES, contrast, seen, texts, through, week
from tests.support.weeks import Team, in_peak_week


def with_odds(flat: int, full: int, spilled: int, *, unit: str = "kg") -> ChartWeek:
    odds = ChartOdds(
        morning=date(2027, 5, 7), sets_date=date(2027, 5, 7), carb_g=475.0,
        flat=flat, full=full, spilled=spilled,
    )  # fmt: skip
    return replace(week(unit), odds=odds)


def test_without_chances_the_picture_is_as_it_was_and_with_them_only_longer() -> None:
    plain, longer = seen(week()), seen(with_odds(1, 7, 2))
    height = layout(week()).height
    assert longer.shape[0] == height + ODDS_ROOM
    assert np.array_equal(plain[: height - 20], longer[: height - 20])
    with Image.open(io.BytesIO(week_png(with_odds(1, 7, 2)))) as image:
        assert image.size == (WIDTH, height + ODDS_ROOM)


@pytest.mark.parametrize("eyes", EYES)
def test_no_colour_has_to_tell_flat_full_and_spilled_over_apart(eyes: str) -> None:
    """By what lies in a box: hatching, nothing, or a bar across; on paper all are seen."""
    rgb = seen(with_odds(1, 7, 2))
    width = (RIGHT - 20) / 10
    boxes = int(layout(week()).odds_top) + ODDS_BOXES
    paper = through(eyes, np.array(mpl.colors.to_rgb(canvas.PAPER)))

    def box(number: int) -> tuple[float, float]:
        left = int(20 + number * width) + 20
        inside = through(eyes, rgb[boxes + 8 : boxes + 38, left : left + 50])
        seen_on_paper = float((contrast(inside, paper) >= 3).mean())
        # Rows that differ from each other: a bar lies across, a solid box has none.
        rows = inside.mean(axis=(1, 2))
        return seen_on_paper, float(rows.max() - rows.min())

    flat, full, spilled = box(0), box(4), box(9)
    # WCAG 2.2, success criterion 1.4.11: 3:1 for the parts of a graphic that are needed.
    assert 0.1 < flat[0] < 0.9
    assert full[0] == 1.0
    assert full[1] < 0.01
    assert spilled[0] == 1.0
    assert spilled[1] > 0.04


@pytest.mark.parametrize(
    ("odds", "labels"),
    [
        ((1, 7, 2), {"flat 1 in 10", "full 7 in 10", "spilled over 2 in 10"}),
        ((0, 10, 0), {"flat < 1 in 10", "full > 9 in 10", "spilled over < 1 in 10"}),
    ],
)
def test_the_words_are_under_the_boxes_clear_of_each_other_and_in_the_caption(
    odds: tuple[int, int, int], labels: set[str]
) -> None:
    whole = with_odds(*odds, unit="lb")
    figure: Figure = draw(whole).figure
    boxes = {text.get_text(): text.get_window_extent() for text in texts(figure)}
    assert labels <= set(boxes)
    mine = [boxes[label] for label in [*labels, "Chances on the day", "with 475 g today"]]
    for number, one in enumerate(mine):
        assert one.x0 >= 0
        assert one.x1 <= WIDTH
        assert one.y0 >= 0
        for other in mine[number + 1 :]:
            across = min(one.x1, other.x1) - max(one.x0, other.x0)
            along = min(one.y1, other.y1) - max(one.y0, other.y0)
            assert across <= 0 or along <= 6
    said = words.caption(whole, own=False).splitlines()[-1]
    assert said.startswith("Chances on event day with 475 g today: ")
    assert all(label in said for label in labels)
    assert "%" not in said


@settings(max_examples=100)
@given(st.tuples(*[st.floats(0, 1)] * 3).filter(lambda odds: sum(odds) > 0.01))
def test_chances_in_tenths_add_up_to_ten_and_are_a_tenth_off_at_most(
    odds: tuple[float, float, float],
) -> None:
    exact = {
        look: value / sum(odds) for look, value in zip(chances.LOOKS, odds, strict=True)
    }  # fmt: skip
    tenths = chances.in_ten(SimpleNamespace(**exact))
    assert sum(tenths.values()) == 10
    for look, value in exact.items():
        assert abs(tenths[look] - 10 * value) < 1 + 1e-9


def captions(team: Team) -> list[str]:
    team.coach.presses(f"c:picture:{team.athlete_id}")
    with team.world.session() as session:
        sent = select(OutboxRow).where(OutboxRow.method == "sendPhoto")
        rows = session.exec(sent.order_by(col(OutboxRow.id))).all()
    return [row.payload["caption"] for row in rows]


def shown_after(team: Team, days: int) -> bool:
    """Whether the chances of this morning would still be shown so many days later."""
    with team.world.session() as session:
        today = team.world.now.date() + timedelta(days=days)
        values = week_values(session, team.profile(), today)
        assert values is not None
        return values.odds is not None


def test_the_strip_is_there_while_the_forecast_is_on_and_its_figure_stands(
    own_engine: Engine,
) -> None:
    team = up_to_two_days_out(own_engine)
    team.athlete.writes(LINES[5])
    last = captions(team)[-1].splitlines()[-1]
    assert last.startswith("Chances on event day with ")
    assert "today: full " in last
    assert [shown_after(team, days) for days in (0, 1, 2, 5)] == [True, True, False, False]
    for use in ("rules-only", "shows"):
        team.coach.presses(f"c:forecast-use:{team.athlete_id}:{use}")
        assert "Chances on event day" not in captions(team)[-1]
    team.coach.presses(f"c:forecast-use:{team.athlete_id}:proposes")
    assert "Chances on event day" in captions(team)[-1]
    # Set by hand since, the day has another figure than the chances were worked out for.
    team.coach.presses(f"c:hand:{team.athlete_id}:2")
    team.coach.writes("200")
    caption = captions(team)[-1]
    assert "carbs 200" in caption
    assert "Chances on event day" not in caption


def test_no_strip_before_the_model_has_anything_to_go_by(own_engine: Engine) -> None:
    team = in_peak_week(own_engine, foresight=True)
    team.morning(7)
    team.athlete.writes(LINES[0])
    assert "Chances on event day" not in captions(team)[-1]
