"""Weeks side by side: chosen by taps, as a table no wider than a phone, as a picture, with photos."""

from __future__ import annotations

import io
from collections.abc import Callable
from datetime import UTC, date, datetime
from typing import Any

import matplotlib as mpl
import pytest
from matplotlib.text import Text
from PIL import Image
from pydantic import TypeAdapter
from sqlmodel import select

from bot.drawing import canvas
from bot.pictures.comparison import words
from bot.pictures.comparison.drawn import WIDTH, draw
from bot.pictures.comparison.words import Compared
from bot.pictures.photos import kept
from bot.store.tables.traffic import OutboxRow
from bot.words.figures import MOST_ACROSS
from tests.support.files import files_for
from tests.support.past_weeks import ORDINARY, Lived, behind, moved
from tests.support.pictures import BLUE, RED, picture
from tests.support.weeks import Team
from tests.support.world import Said, text_of

APRIL, MAY, MARCH = date(2027, 4, 4), date(2027, 4, 18), date(2027, 3, 14)


VALUES = TypeAdapter(Compared)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """A week before the show; two trials lie behind Mira."""
    team = team_at(datetime(2027, 5, 2, 6, 0, tzinfo=UTC))
    behind(team, APRIL, Lived(load_g=420, told=moved(ORDINARY, 0.8, -2), photos=(1,)), look="flat")
    behind(team, MAY, Lived(load_g=520, photos=(3, 1)), look="full")
    return team


def table_of(said: Said) -> list[str]:
    """The lines of the block of one width, as Telegram is told where it lies."""
    (block,) = said.payload["entities"]
    assert block["type"] == "pre"
    units = said.text.encode("utf-16-le")
    start = 2 * block["offset"]
    return units[start : start + 2 * block["length"]].decode("utf-16-le").split("\n")


def pictures(team: Team) -> list[dict[str, Any]]:
    with team.world.session() as session:
        rows = session.exec(select(OutboxRow).where(OutboxRow.method == "sendPhoto")).all()
    return [{**row.payload, **(row.attached or {})} for row in rows]


def shown(team: Team) -> Said:
    return team.coach.presses(f"c:weeks:{team.athlete_id}")[-1]


def test_two_weeks_are_compared_at_once_aligned_by_days_out(team: Team) -> None:
    said = shown(team)
    assert "A: trial, Sun 4 Apr 2027: flat (load 6.9 g/kg a day" in said.text
    assert "B: trial, Sun 18 Apr 2027: full (load 8.5 g/kg a day" in said.text
    assert "2.0 kg up" in said.text
    lines = table_of(said)
    assert lines[0].split() == ["A", "B"]
    third = next(line for line in lines if line.startswith("3 out"))
    assert third.split()[2:] == ["500/420/470", "500/520/470"]
    assert max(map(len, lines)) <= MOST_ACROSS


def test_the_other_tables_take_the_place_of_the_first(team: Team) -> None:
    said = shown(team)
    weight = team.coach.taps("Weight", said)[-1]
    assert weight.method == "editMessageText"
    assert any(line.split() == ["3", "out", "61.0", "60.2"] for line in table_of(weight))
    look = team.coach.taps("Look", weight)[-1]
    assert any(
        line.split() == ["1", "out", "6", "▄", "4", "8", "▄", "4"] for line in table_of(look)
    )
    assert "▁ flat" in look.text
    water = team.coach.taps("Water, complaints", look)[-1]
    assert "! A, 3 out: cramps" in water.text
    assert any(line.split() == ["2", "out", "3.2", "3.2"] for line in table_of(water))


def test_of_more_than_two_weeks_it_is_asked_which_and_four_at_most_are_shown(team: Team) -> None:
    for month in (1, 2, 3):
        behind(team, date(2027, month, 14))
    said = shown(team)
    assert "Which of Mira's weeks?" in said.text
    assert said.buttons["☑ trial Sun 18 Apr 2027"]
    for label in ("☐ trial Sun 14 Mar 2027", "☐ trial Sun 14 Feb 2027"):
        said = team.coach.taps(label, said)[-1]
    before = len(team.coach.all_said())
    team.coach.taps("☐ trial Thu 14 Jan 2027", said)
    assert len(team.coach.all_said()) == before
    assert "4 weeks fit on a phone" in team.coach.answers_to_taps()[-1]
    said = team.coach.taps("☑ trial Sun 4 Apr 2027", said)[-1]
    said = team.coach.taps("Compare", said)[-1]
    letters = [line[:2] for line in said.text.splitlines() if line[1:2] == ":"]
    assert letters == ["A:", "B:", "C:"]
    assert "Other weeks" in said.buttons


def test_less_than_two_chosen_or_there_is_said_and_nothing_else(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 2, 6, 0, tzinfo=UTC))
    assert "Mira does not have two yet" in text_of(team.coach.presses("c:weeks:2"))
    assert "There are not two yet" in text_of(team.athlete.writes("/weeks"))
    first = behind(team, APRIL)
    behind(team, MAY)
    assert team.coach.presses(f"c:weeks:2:carbs:{first}") == []
    assert team.coach.presses("c:weeks:2:carbs:98.99") == []
    assert team.coach.presses("c:weeks:2:nonsense:1.2") == []


def test_the_athlete_compares_their_own_weeks(team: Team) -> None:
    said = team.athlete.writes("/weeks")[-1]
    assert "A: trial, Sun 4 Apr 2027" in said.text
    assert "Weight" in said.buttons
    team.athlete.taps("As a chart", said)
    (sent,) = pictures(team)
    assert sent["caption"].startswith("A: trial, Sun 4 Apr 2027: flat")
    _, documents = files_for(team.athlete, "sendPhoto")[-1]
    assert documents[0].content.startswith(b"\x89PNG")


def test_a_picture_is_drawn_for_nobody_who_may_not_see_the_athlete(team: Team) -> None:
    team.athlete.presses(f"c:weeks:{team.athlete_id}:picture:2.3")
    assert pictures(team) == []


def test_photos_of_the_same_morning_stand_side_by_side(team: Team, tmp_path: Any) -> None:
    team.world.photo_dir = tmp_path
    said = shown(team)
    with team.world.session() as session:
        names = session.connection().exec_driver_sql("select name from photo order by id").all()
    for (name,), colour in zip(names, (RED, RED, BLUE), strict=True):
        kept.write(tmp_path, name, picture(colour))
    team.coach.taps("Photos side by side", said)
    (sent,) = pictures(team)
    assert sent["caption"].startswith("1 out\nA: trial")
    _, documents = files_for(team.coach, "sendPhoto")[-1]
    with Image.open(io.BytesIO(documents[0].content)) as image:
        assert image.width > 1.4 * image.height


def compared(team: Team, **changes: Any) -> Compared:
    team.coach.taps("As a chart", shown(team))
    values = VALUES.validate_python(pictures(team)[-1]["photo"]["compared"])
    return VALUES.validate_python({**VALUES.dump_python(values, mode="json"), **changes})


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_picture_tells_weeks_apart_by_letters_and_no_words_lie_on_others(
    ours: None, team: Team, language: str
) -> None:
    from bot.words.languages import speaking  # noqa: PLC0415

    values = compared(team, weight_unit="st", name="Maximiliane-Charlotte von Hohenstein")
    with mpl.rc_context(), speaking(language):
        mpl.rcdefaults()
        mpl.rcParams.update(canvas.STYLE)
        figure = draw(values).figure
        texts = [text for text in figure.findobj(Text) if text.get_text()]  # type: ignore[attr-defined]
        boxes = [(text.get_text(), text.get_window_extent()) for text in texts]
        assert len(words.caption(values).encode("utf-16-le")) <= 2048
    assert sum(text == "A" for text, _ in boxes) == sum(text == "B" for text, _ in boxes) == 8
    for number, (text, box) in enumerate(boxes):
        assert box.x0 >= 0 and box.x1 <= WIDTH, text
        for other, other_box in boxes[number + 1 :]:
            across = min(box.x1, other_box.x1) - max(box.x0, other_box.x0)
            along = min(box.y1, other_box.y1) - max(box.y0, other_box.y0)
            assert across <= 0 or along <= 6, f"{text} on {other}"
