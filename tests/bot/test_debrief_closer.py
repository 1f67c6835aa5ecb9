"""The closer look at a week: what it taught, what was foreseen, what to do next time."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, date, datetime

import pytest

from bot.debrief import words_deeper as words
from bot.debrief.past_week import moved_by
from bot.words.languages import speaking
from engine.planning.behind.next_time import CARRIED_OUT
from tests.support.decided import decided
from tests.support.past_weeks import ORDINARY, Lived, behind, moved
from tests.support.weeks import Team, gone_on
from tests.support.world import text_of

TRIAL, SHOW = date(2027, 4, 4), date(2027, 4, 25)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """A trial that was flat and a show that was full lie behind Mira."""
    return gone_on(team_at(datetime(2027, 5, 1, 18, 0, tzinfo=UTC)), trial_and_show)


def trial_and_show(team: Team) -> None:
    behind(team, TRIAL, Lived(load_g=420, told=moved(ORDINARY, 0.3, -2)), look="flat")
    upset = {**ORDINARY, 2: replace(ORDINARY[2], carb_eaten_g=500)}
    behind(team, SHOW, Lived(load_g=530, told=upset), kind="show", look="full")


def closer(team: Team) -> str:
    return team.coach.presses(f"c:closer:{team.athlete_id}")[-1].text


def test_what_the_week_taught_is_said_with_its_doubt_and_beside_what_was_believed(
    team: Team,
) -> None:
    text = closer(team)
    assert text.startswith("Debrief of Mira's show, Sun 25 Apr 2027: a closer look")
    assert "- Muscles hold about " in text
    assert "- Spills over from about " in text
    assert text.count("Before: ") == 4
    assert "9 in 10 such ranges should hold" in text
    assert "not on real peak weeks" in text


def test_three_sentences_say_what_to_do_next_time(team: Team) -> None:
    three = closer(team).split("Next time:\n")[1].split("\n\n")[0].split("\n")
    assert [line[:3] for line in three] == ["1. ", "2. ", "3. "]
    assert "8.7 g/kg a load day again: it came in full" in three[0]
    assert "in 10" in three[0]


def test_a_change_is_weighed_with_the_forecast_without_it_beside_it(team: Team) -> None:
    text = closer(team)
    assert "3 days out, +30 g (set by hand" in text
    assert "set by hand): with it full " in text
    assert "; without it full " in text


def test_the_placing_is_kept_with_the_week(team: Team) -> None:
    closer(team)
    team.coach.taps("Placing")
    assert "Saved with the week." in text_of(team.coach.writes("2nd of 9, Bikini B"))
    assert "Placing: 2nd of 9, Bikini B" in closer(team)


def test_the_same_is_read_twice_and_fits_in_a_message_in_german_too(ours: None, team: Team) -> None:
    first = closer(team)
    assert closer(team) == first
    team.coach.language = "de"
    team.coach.writes("/roster")
    text = closer(team)
    assert text.startswith("Rückblick für Mira: Wettkampf, So. 25. Apr. 2027: genauer hingesehen")
    assert max(len(text), len(first)) < 4096


def test_before_any_week_lies_behind_there_is_nothing_to_look_at(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 3, 12, 0, tzinfo=UTC))
    for view in ("closer", "placing"):
        said = text_of(team.coach.presses(f"c:{view}:{team.athlete_id}"))
        assert "Mira has not finished a week yet" in said


def test_every_sentence_of_the_engine_has_its_words() -> None:
    with speaking("en"):
        assert set(CARRIED_OUT) <= set(words.ADVICE)


@pytest.mark.parametrize(
    ("rule_g", "forecast_g", "asked_g", "by"),
    [
        (0.0, -125.0, -125.0, "forecast"),  # flat, and less: no rule asks for that
        (25.0, 75.0, 75.0, "flat-in-load"),  # the rule's own direction, larger
        (25.0, None, 25.0, "flat-in-load"),
        (0.0, -25.0, 0.0, "flat-in-load"),  # a limit moved the day, and nobody asked for it
    ],
)
def test_a_change_that_no_rule_asked_for_is_called_the_forecasts(
    rule_g: float, forecast_g: float | None, asked_g: float, by: str
) -> None:
    trace = {"rule_g": rule_g, "forecast_g": forecast_g, "asked_g": asked_g}
    assert moved_by(decided(rule="flat-in-load", trace=trace)) == by
