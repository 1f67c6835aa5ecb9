"""Whatever is typed lands somewhere, and its writer is told where it went."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest

from bot.incoming import Kind
from bot.store.desk import Rights
from tests.bot.test_leaving import beside
from tests.support.weeks import Team, arrive_and_read
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 7, 5, 0, tzinfo=UTC))


def test_what_an_athlete_writes_of_their_own_accord_reaches_the_coach_silently(team: Team) -> None:
    assert text_of(team.athlete.writes("my period started")) == "I've passed that on to Ravi."
    (came,) = team.coach.hears()
    assert came.silent
    assert came.text == "From Mira:\nmy period started"
    assert set(came.buttons) == {"Reply"}
    assert 'Mira: wrote to Ravi "my period started"' in text_of(team.coach.presses("c:history:2"))


def test_what_comes_in_one_stretch_is_one_message_that_grows(team: Team) -> None:
    team.athlete.writes("my period started")
    team.coach.hears()
    team.athlete.writes("legs feel great today")
    (grown,) = team.coach.hears()
    assert grown.method == "editMessageText"
    assert grown.text == "From Mira:\n• my period started\n• legs feel great today"
    team.world.later(minutes=16)
    team.coach.hears()
    team.athlete.writes("the judges changed the order")
    assert [one.method for one in team.coach.hears()] == ["sendMessage"]


def test_the_coachs_reply_goes_back_to_the_sentence_it_answers(team: Team) -> None:
    team.athlete.writes("can I swap the rice for pasta")
    arrive_and_read(team)
    came = team.coach.all_said()[-1]
    team.coach.writes("Yes, same grams dry", reply_to=came.outbox_id)
    said = text_of(team.athlete.hears())
    assert said == (
        "You wrote: “can I swap the rice for pasta”\n\nFrom your coach Ravi:\nYes, same grams dry"
    )
    team.coach.taps("Reply", came)
    team.coach.writes("And cook it soft")
    assert "“can I swap the rice for pasta”" in text_of(team.athlete.hears())


def test_an_athletes_reply_goes_to_the_coach_who_wrote(team: Team) -> None:
    team.coach.presses("c:message:2")
    team.coach.writes("Early night today")
    arrive_and_read(team)
    came = team.athlete.all_said()[-1]
    assert "Sent to Ravi." in text_of(team.athlete.writes("Will do", reply_to=came.outbox_id))
    (heard,) = team.coach.hears()
    assert (heard.text, heard.silent) == ("From Mira:\nWill do", False)


def test_an_edited_sentence_is_changed_where_it_was_passed_on(team: Team) -> None:
    team.athlete.writes("can I swap the rise", message_id=900)
    team.coach.hears()
    said = team.athlete.writes("can I swap the rice", kind=Kind.EDITED, message_id=900)
    assert text_of(said) == "I've changed that for Ravi too."
    assert text_of(team.coach.hears()) == "From Mira:\ncan I swap the rice"


def test_a_question_that_waits_for_an_answer_swallows_nothing(team: Team) -> None:
    team.athlete.writes("/checkin")
    team.athlete.writes("60.9")
    said = team.athlete.writes("can we talk about my posing")
    assert "I've passed that on to Ravi." in text_of(said)
    assert "ullness" in text_of(said)
    assert "5" in said[-1].buttons
    assert "From Mira:\ncan we talk about my posing" in text_of(team.coach.hears())
    assert "drink yesterday" in text_of(team.athlete.writes("7"))


def test_a_mistyped_answer_is_asked_again_and_told_to_nobody(team: Team) -> None:
    team.athlete.writes("/checkin")
    said = text_of(team.athlete.writes("6091 0"))
    assert "passed that on" not in said
    assert "eight" in said
    assert team.coach.hears() == []


@pytest.mark.parametrize(
    ("asked", "part"),
    [
        ("what do I eat today", "Carbs"),
        ("Was esse ich heute?", "Carbs"),
        ("hi, what are my targets please", "Carbs"),
        ("why?", "decided"),
        ("help", "/today"),
        ("how does my week look", "passed that on"),
        ("what does my week look like", "show"),
        ("I'm running late", "late"),
        ("I want to change my weight", "eight"),
    ],
)
def test_what_a_command_serves_is_served_when_it_is_asked_for_in_words(
    team: Team, asked: str, part: str
) -> None:
    assert part in text_of(team.athlete.writes(asked))


def test_words_behind_a_command_that_takes_none_land_as_well(team: Team) -> None:
    said = text_of(team.athlete.writes("/today and can I have sushi"))
    assert "Carbs" in said
    assert "passed that on to Ravi" in said
    assert "can I have sushi" in text_of(team.coach.hears())
    team.athlete.writes("/write Can I swap the rice?")
    assert "From Mira:\nCan I swap the rice?" in text_of(team.coach.hears())


def test_a_question_about_food_goes_to_the_coach_and_shows_the_way_to_the_food(team: Team) -> None:
    said = text_of(team.athlete.writes("can I eat sushi tonight?"))
    assert "I've passed that on to Ravi. /food shows" in said


def test_a_voice_message_is_turned_into_typing_and_the_coach_hears_that_it_came(team: Team) -> None:
    said = text_of(team.athlete.writes("", kind=Kind.OTHER, media="voice"))
    assert "can't listen to voice messages yet: please type it." in said
    assert "a voice message" in text_of(team.coach.hears())
    said = text_of(team.athlete.writes("", kind=Kind.OTHER, media="sticker"))
    assert "stickers" in said
    assert team.coach.hears() == []


def test_a_coachs_words_go_to_the_athlete_they_name_after_one_tap(team: Team) -> None:
    said = team.coach.writes("Mira drink some water")
    assert "For Mira:\n“drink some water”" in text_of(said)
    assert team.athlete.hears() == []
    assert "Sent to Mira." in text_of(team.coach.taps("Send to Mira"))
    assert text_of(team.athlete.hears()) == "From your coach Ravi:\ndrink some water"


def test_a_coachs_words_can_be_kept_back(team: Team) -> None:
    team.coach.writes("tell Mira to hurry up")
    assert "Not sent." in text_of(team.coach.writes("no"))
    assert team.athlete.hears() == []


def test_an_athletes_bare_name_opens_the_card(team: Team) -> None:
    said = team.coach.writes("mira")
    assert said[-1].text.startswith("Mira\n")


def test_a_drug_is_passed_on_to_no_athlete(team: Team) -> None:
    assert "names a drug" in text_of(team.coach.writes("Mira take 40 mg furosemide"))
    assert team.athlete.hears() == []


def test_the_second_contacts_words_go_to_the_coach(team: Team) -> None:
    ola = beside(team, "Ola", 160, Rights.ALERTS)
    assert "passed that on to Ravi" in text_of(ola.writes("I have called her, all good"))
    assert "From Ola" in text_of(team.coach.hears())


def test_several_answers_in_one_message_are_taken_in_order(team: Team) -> None:
    team.athlete.presses("st:set:2")
    said = text_of(team.athlete.writes("15:00, none"))
    assert "ravel" in said or "long" in said


def test_where_nobody_coaches_it_is_said_kindly(team: Team) -> None:
    team.coach.presses("c:end-yes:2")
    team.athlete.hears()
    team.coach.hears()
    assert "nobody reads what you write here" in text_of(team.athlete.writes("hello again"))
    assert team.coach.hears() == []
