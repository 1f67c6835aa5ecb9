"""What an athlete asks for in loose words goes to the coach, and the view that answers it is shown."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from bot.dispatcher import COMMANDS
from engine.asked import View
from tests.bot.test_food import listing
from tests.support.weeks import Team, arrive_and_read
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 7, 5, 0, tzinfo=UTC))


@pytest.fixture
def on_the_day(team_at: Callable[[datetime], Team]) -> Team:
    """Sunday 9 May at ten in London, and nobody has set the times of the day."""
    return team_at(datetime(2027, 5, 9, 9, 0, tzinfo=UTC))


def test_every_view_that_is_heard_is_a_command_of_athletes() -> None:
    assert [view for view in View if "athlete" not in COMMANDS[view].roles] == []


@pytest.mark.parametrize(
    ("text", "command"),
    [
        ("can you resend what i'm on for today", "today"),
        ("what do the next few days look like from here on", "week"),
        ("honestly, how did you come up with that number", "why"),
        ("what do I eat and when on show day", "stage"),
        ("how has my weight been going this week", "past"),
    ],
)
def test_a_request_is_passed_on_and_its_view_is_shown_below(
    team: Team, text: str, command: str
) -> None:
    shown = text_of(team.athlete.writes(f"/{command}"))
    passed, *below = team.athlete.writes(text)
    assert passed.text.startswith("I've passed that on to Ravi.")
    assert [said.text for said in below] == [shown]
    arrive_and_read(team)
    assert text in team.coach.all_said()[-1].text


def test_a_question_about_food_has_the_menu_below_it_where_there_is_a_list(team: Team) -> None:
    (passed,) = team.athlete.writes("can I eat sushi?")
    assert "/food shows what fits your targets today." in passed.text
    listing(team)
    shown = text_of(team.athlete.writes("/food"))
    for text in ("can I eat sushi?", "no cod at the shop, would haddock do in its place"):
        passed, menu = team.athlete.writes(text)
        assert passed.text.startswith("I've passed that on to Ravi.")
        assert menu.text == shown


def test_thanks_and_talk_get_no_view(team: Team) -> None:
    for text in (
        "thanks a million for last night",
        "posing was great fun today",
        "which suit do you like better",
        "can we talk at six",
    ):
        assert len(team.athlete.writes(text)) == 1, text


def test_where_a_question_waits_the_view_comes_above_it(team: Team) -> None:
    shown = text_of(team.athlete.writes("/week"))
    team.athlete.writes("/checkin")
    view, question = team.athlete.writes("when does my load start and how long does it go on")
    assert view.text == shown
    assert "I've passed that on to Ravi." in question.text
    assert "weight" in question.text.lower()


def test_where_the_body_is_wondered_about_the_view_is_shown_all_the_same(team: Team) -> None:
    shown = text_of(team.athlete.writes("/today"))
    asked, view = team.athlete.writes("my insides feel like jelly, what are my carbs today")
    assert "Is something wrong with you?" in asked.text
    assert view.text == shown


def test_where_the_mood_may_be_meant_no_figures_are_shown(team: Team) -> None:
    said = team.athlete.writes("could I eat nothing today, I only deserve water")
    assert all("Carbs" not in one.text for one in said)


def test_what_may_as_well_be_meant_is_named(team: Team) -> None:
    said = team.athlete.writes("could use the numbers for the two days im away")[0].text
    assert "If you meant something else, see /" in said


@pytest.mark.parametrize(
    "text", ["they say we run 40 minutes late", "we're running late", "delayed by an hour"]
)
def test_a_delay_on_a_day_without_times_says_how_to_set_them(on_the_day: Team, text: str) -> None:
    told = on_the_day.athlete.writes(text)
    lead = "The times of the day are not set, so a delay moves nothing yet."
    (said,) = [one for one in told if one.text.startswith(lead)]
    on_the_day.athlete.presses(said.buttons["Set the times"])
    assert "?" in on_the_day.athlete.all_said()[-1].text
