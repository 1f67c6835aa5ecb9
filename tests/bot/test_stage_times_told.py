"""When the classes are on, typed with no command: the day is set by it, and changed by it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from tests.support.weeks import Team
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The day before, at noon in London (an hour ahead of UTC). The show is on Sunday 9 May."""
    return team_at(datetime(2027, 5, 8, 11, 0, tzinfo=UTC))


def set_by_words(team: Team) -> None:
    team.athlete.writes("two classes, 15:00 and 19:30")
    for answer in ("20 min", "none", "none"):
        team.athlete.writes(answer)


def at(team: Team, hour: int, minute: int = 0) -> None:
    team.world.until(datetime(2027, 5, 9, hour - 1, minute, tzinfo=UTC))
    team.coach.hears()


def test_two_classes_typed_begin_the_questions_for_the_day_with_them(team: Team) -> None:
    heard = text_of(team.athlete.writes("I have two classes, 15:00 and 19:30"))
    assert "On stage: 15:00, class 2 19:30" in heard and "How long is the way" in heard
    assert "wrong with you" not in heard


def test_two_times_answer_the_question_when_it_is_on_stage(team: Team) -> None:
    team.athlete.writes("/stage")
    team.athlete.taps("Set the times")
    assert "class 2 19:30" in text_of(team.athlete.writes("3pm and 7.30pm"))


def test_a_class_that_is_told_of_later_moves_alone_and_both_see_it(team: Team) -> None:
    set_by_words(team)
    at(team, 13)
    heard = text_of(team.athlete.writes("prejudging not before 5pm"))
    assert "17:00  on stage, class 1" in heard and "19:30  on stage, class 2" in heard
    told = text_of(team.coach.hears())
    assert "has changed the times" in told and "17:00  on stage, class 1" in told


def test_a_class_that_moves_up_to_the_next_pushes_it_on(team: Team) -> None:
    set_by_words(team)
    at(team, 13)
    heard = text_of(team.athlete.writes("prejudging at 19:45"))
    assert "19:45  on stage, class 1" in heard and "00:15  on stage, class 2" in heard


def test_an_early_call_is_heard_as_minutes_from_now(team: Team) -> None:
    set_by_words(team)
    at(team, 14)
    heard = text_of(team.athlete.writes("they call us in 20 min"))
    assert "14:20  on stage, class 1" in heard and "sips for class 2" in heard


def test_a_last_class_that_falls_out_leaves_what_to_eat_and_drink_after_the_stage(
    team: Team,
) -> None:
    set_by_words(team)
    at(team, 17)
    heard = text_of(team.athlete.writes("my second class is cancelled"))
    assert "on stage, class 2" not in heard and "eat, drink to thirst" in heard


def test_a_coach_sets_and_moves_the_day_of_the_athlete_they_name(team: Team) -> None:
    team.coach.writes("Mira has two classes, 15:00 and 19:30")
    for answer in ("20", "none", "none"):
        team.coach.writes(answer)
    assert "19:30  on stage, class 2" in text_of(team.athlete.hears())
    team.coach.writes("Mira's second class is at 8pm")
    assert "20:00  on stage, class 2" in text_of(team.athlete.hears())


def test_a_whole_morning_typed_is_taken_while_another_question_waits(team: Team) -> None:
    team.athlete.writes("/stage")
    team.athlete.taps("Set the times")
    team.world.until(datetime(2027, 5, 9, 5, 0, tzinfo=UTC))
    heard = text_of(team.athlete.writes("61.4 7 3.5 3 fine"))
    assert "61.4 kg" in heard or "Carbs" in heard


def test_times_said_in_passing_are_asked_about_with_one_tap_that_sets_them(team: Team) -> None:
    heard = text_of(
        team.athlete.writes(
            "no idea about the tan lady but I'm on at 3, and the finals are at half seven"
        )
    )
    assert "Is that when you are on?" in heard and "On stage: " not in heard
    heard = text_of(team.athlete.taps("On stage 15:00, 19:30"))
    assert "On stage: 15:00, class 2 19:30" in heard and "How long is the way" in heard


def test_a_delay_said_in_passing_on_the_day_waits_for_a_tap(team: Team) -> None:
    set_by_words(team)
    at(team, 13)
    heard = text_of(
        team.athlete.writes("running forty minutes behind backstage, what do I eat now?")
    )
    assert "Does that move the day?" in heard and "Moved" not in heard
    assert "15:40  on stage, class 1" in text_of(team.athlete.taps("40 min late"))


def test_a_coach_who_tells_times_in_passing_is_asked_whether_to_set_them(team: Team) -> None:
    heard = text_of(
        team.coach.writes("Mira they say the class is on about ten past three, stay calm")
    )
    assert "Is that when Mira is on?" in heard
    assert "On stage: 15:10" in text_of(team.coach.taps("On stage 15:10"))


def test_a_time_told_a_week_before_or_of_something_else_is_not_asked_about(team: Team) -> None:
    assert "Is that when" not in text_of(
        team.athlete.writes("be at the hall by 7.15, said the email")
    )
