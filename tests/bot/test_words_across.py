"""Words between an athlete and those who coach them: each reaches whoever should read it, no more."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from bot.core.turn import Kind
from bot.store.tables.coach import Rights
from tests.bot.test_leaving import beside
from tests.support.weeks import Team
from tests.support.world import Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))


@pytest.fixture
def noa(team: Team) -> Someone:
    return beside(team, "Noa", 150, Rights.FULL)


@pytest.fixture
def ola(team: Team) -> Someone:
    return beside(team, "Ola", 160, Rights.ALERTS)


def test_a_reply_goes_to_the_second_coach_who_wrote_and_the_first_reads_along(
    team: Team, noa: Someone, ola: Someone
) -> None:
    noa.presses("c:message:2")
    assert "Sent to Mira." in text_of(noa.writes("How did you sleep?"))
    assert text_of(team.athlete.hears()) == (
        "From Noa, second coach with Ravi:\nHow did you sleep?"
    )
    (along,) = team.coach.hears()
    assert along.silent
    assert along.text == "Noa to Mira: How did you sleep?"
    assert "What shall I tell Noa?" in text_of(team.athlete.taps("Reply"))
    assert "Sent to Noa." in text_of(team.athlete.writes("Seven hours, thank you"))
    (came,) = noa.hears()
    assert came.text == "From Mira:\nSeven hours, thank you"
    assert not came.silent
    assert set(came.buttons) == {"Reply"}
    (along,) = team.coach.hears()  # the note that has not been sent yet grows
    assert "Mira to Noa: Seven hours, thank you" in along.text
    assert ola.hears() == []
    said = text_of(team.coach.presses("c:history:2"))
    assert 'Noa: wrote to the athlete "How did you sleep?"' in said
    assert 'Mira: wrote to Noa "Seven hours, thank you"' in said


def test_a_reply_to_the_coach_goes_to_the_coach_and_the_second_reads_along(
    team: Team, noa: Someone
) -> None:
    team.coach.presses("c:message:2")
    team.coach.writes("Early night today")
    assert "Ravi to Mira: Early night today" in text_of(noa.hears())
    assert "From your coach Ravi" in text_of(team.athlete.hears())
    team.athlete.taps("Reply")
    team.athlete.writes("Will do")
    assert "From Mira:\nWill do" in text_of(team.coach.hears())
    assert "Mira to Ravi: Will do" in text_of(noa.hears())


def test_an_answer_to_somebody_who_no_longer_stands_there_goes_to_the_coach(
    team: Team, noa: Someone
) -> None:
    noa.presses("c:message:2")
    noa.writes("How did you sleep?")
    team.athlete.hears()
    asked = team.athlete.taps("Reply")[-1]
    team.world.until(datetime(2027, 5, 9, 23, 30, tzinfo=UTC))
    noa.hears()
    team.coach.hears()
    assert "Noa" in asked.text
    team.athlete.presses("reply:3")
    assert "What shall I tell Ravi?" in team.athlete.all_said()[-1].text
    team.athlete.writes("Seven hours")
    assert "From Mira:\nSeven hours" in text_of(team.coach.hears())
    assert noa.hears() == []


def test_an_athletes_own_word_goes_to_all_who_coach_them_with_full_rights(
    team: Team, noa: Someone, ola: Someone
) -> None:
    assert "What shall I tell Ravi, Noa?" in text_of(team.athlete.writes("/write"))
    assert "Sent to Ravi, Noa." in text_of(team.athlete.writes("Can I swap the rice?"))
    for reader in (team.coach, noa):
        (came,) = reader.hears()
        assert came.text == "From Mira:\nCan I swap the rice?"
    assert ola.hears() == []


def test_in_quiet_hours_a_word_comes_without_a_sound(team: Team) -> None:
    team.coach.writes("/digest")
    team.coach.writes("London")
    team.coach.taps(next(one for one in team.coach.all_said()[-1].buttons if "London" in one))
    team.coach.writes("20:00")
    team.coach.presses("desk:quiet")
    team.coach.writes("06:00")
    team.coach.writes("09:00")
    team.coach.hears()
    team.athlete.writes("/write")
    team.athlete.writes("Can I swap the rice?")
    assert [one.silent for one in team.coach.hears()] == [True]
    team.athlete.writes("I fainted")
    assert [one.silent for one in team.coach.hears()] == [False]


def test_whoever_cannot_be_reached_is_named(team: Team, noa: Someone) -> None:
    noa.writes("", kind=Kind.BLOCKED)
    team.athlete.writes("/write")
    said = text_of(team.athlete.writes("Can I swap the rice?"))
    assert "Sent to Ravi." in said
    assert "Noa has stopped the bot" in said


def test_a_word_that_tells_of_a_warning_sign_is_heard_as_one_too(team: Team, ola: Someone) -> None:
    team.athlete.writes("/write")
    assert "emergency number" in text_of(team.athlete.writes("I fainted this morning"))
    assert "Warning: Mira" in text_of(ola.hears())


def test_nobody_is_written_to_where_nobody_coaches(team: Team) -> None:
    team.coach.presses("c:message:2")
    team.coach.writes("Early night today")
    team.athlete.taps("Reply")
    team.coach.presses("c:end-yes:2")
    team.coach.hears()
    team.athlete.hears()
    assert "Nobody coaches you right now" in text_of(team.athlete.presses("reply:1"))
    assert "Nobody coaches you right now" in text_of(team.athlete.writes("/write"))
    team.athlete.writes("Thank you")
    assert team.coach.hears() == []


def test_what_is_told_of_a_morning_and_of_the_day_reaches_the_stand_in_as_well(
    team: Team, noa: Someone, ola: Someone
) -> None:
    team.coach.presses("st:set:2")
    team.coach.writes("15:00")
    team.coach.taps("One class only")
    for _ in range(3):
        team.coach.taps("None")
    assert "15:00  on stage" in text_of(noa.hears())
    assert "15:00  on stage" in text_of(noa.writes("/stage"))
    team.world.until(datetime(2027, 5, 9, 9, 0, tzinfo=UTC))
    noa.hears()
    noa.writes("late 30")
    assert "15:30  on stage" in text_of(team.athlete.hears())
    assert "15:30  on stage" in text_of(team.coach.hears())
    team.athlete.writes("", kind=Kind.BLOCKED)
    assert "can't reach Mira" in text_of(noa.hears())
    assert not [said for said in ola.all_said() if "stage" in said.text]


def test_a_top_up_is_asked_of_both_and_the_first_word_settles_it(team: Team, noa: Someone) -> None:
    team.coach.presses("c:lim:2:apply_without_asking_g")
    team.coach.writes("10")
    noa.presses("st:set:2")
    noa.writes("15:00")
    noa.taps("One class only")
    for _ in range(3):
        noa.taps("None")
    team.world.until(datetime(2027, 5, 9, 12, 0, tzinfo=UTC))
    for answer in ("4", "5", "fine"):
        asked = team.athlete.all_said()[-1]
        (label,) = [one for one in asked.buttons if one.lower() == answer]
        team.athlete.taps(label, asked)
    noa.taps("Top up 25 g")
    assert "Noa says yes: 25 g" in text_of(team.athlete.hears())
    assert "Noa has answered this." in text_of(team.coach.hears())
    team.coach.taps("No top-up")
    assert "settled already" in team.coach.answers_to_taps()[-1]
