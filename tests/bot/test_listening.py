"""Whatever is typed lands somewhere, and its writer is told where it went."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any

import pytest
from sqlmodel import delete

from bot.core.turn import Kind
from bot.dialogue import asking
from bot.dialogue.flow import InvalidAnswer, Step
from bot.dialogue.requests import requested
from bot.features import FLOWS
from bot.store.db import transaction
from bot.store.tables.coach import Rights
from bot.store.tables.people import OpenQuestion
from engine.values.limits import LIMIT_KEYS
from engine.written.units import ParseError
from tests.bot.test_leaving import beside
from tests.bot.test_who_may_do_what import ABOUT
from tests.support.weeks import Team, arrive_and_read
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 7, 5, 0, tzinfo=UTC))


def test_a_step_is_free_where_whatever_is_typed_answers_it_and_nowhere_else() -> None:
    told = {"_names": [], "_field": "training"}

    def takes(step: Step) -> bool:
        try:
            step.answer("zxqv blorp, fizz? qwop!", told)
        except (InvalidAnswer, ParseError):
            return False
        return True

    steps = [(flow, step) for flow, bound in FLOWS.items() for step in bound.flow.steps]
    by_text = [(flow, step) for flow, step in steps if step.read_with is None or step.free]
    assert len(by_text) > 80
    for flow, step in by_text:
        assert step.takes_anything(told) == takes(step), (flow, step.key)


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


def test_a_reply_to_several_sentences_quotes_no_thanks_or_thumb_among_them(team: Team) -> None:
    for said in ("can I swap the rice for pasta", "thanks", "👍"):
        team.athlete.writes(said)
    arrive_and_read(team)
    assert "thanks" in team.coach.all_said()[-1].text  # in the message that it was gathered in
    came = next(one for one in team.coach.all_said() if "pasta" in one.text)
    team.coach.writes("Yes, same grams dry", reply_to=came.outbox_id)
    said = text_of(team.athlete.hears())
    assert said.startswith("You wrote: “can I swap the rice for pasta”\n\nFrom")


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


def test_a_question_of_the_plan_in_looser_words_reaches_the_coach_and_is_answered_by_the_plan(
    team: Team,
) -> None:
    for asked, part in (
        ("is it a high day today or a rest day", "Carbs"),
        ("can you list all my days to the show", "show"),
    ):
        said = text_of(team.athlete.writes(asked))
        assert "I've passed that on to Ravi." in said and part in said
        assert asked in text_of(team.coach.hears())


def test_a_coach_asks_after_everybody_or_the_alerts_in_words() -> None:
    for asked in (
        "who is flat today?", "who hasn't checked in yet", "how many are loading", "who needs me",
        "wer ist heute flach?", "wer hat noch keinen Check-in gemacht", "wie viele laden gerade",
    ):  # fmt: skip
        assert requested(asked) == "roster", asked
    assert requested("who acknowledged it?") == requested("wer hat das bestätigt") == "alerts"
    assert requested("who is your judge on saturday") is None


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


def test_a_question_about_an_amount_of_water_is_answered_with_the_plans_and_keeps_its_place(
    team: Team,
) -> None:
    team.athlete.writes("/checkin")
    team.athlete.writes("60.9")
    team.athlete.writes("7")
    said = team.athlete.writes("is 3.5 liters a lot?")
    assert "Your plan has 3.5 L of water for today" in text_of(said)
    assert "I've passed that on to Ravi." in text_of(said)
    assert "drink yesterday" in text_of(said)
    said = text_of(team.athlete.writes("my hair appointment is at three"))
    assert "I've passed that on to Ravi." in said
    assert "drink yesterday" in said


def test_a_voice_message_is_turned_into_typing_and_the_coach_hears_that_it_came(team: Team) -> None:
    said = text_of(team.athlete.writes("", kind=Kind.OTHER, media="voice"))
    assert said == (
        "I can't listen to voice messages yet: please type it. I've told Ravi that it came."
    )
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
    assert "about drugs" in text_of(team.coach.writes("Mira take 40 mg furosemide"))
    assert team.athlete.hears() == []


def test_the_second_contacts_words_go_to_the_coach(team: Team) -> None:
    ola = beside(team, "Ola", 160, Rights.ALERTS)
    assert "passed that on to Ravi" in text_of(ola.writes("I have called her, all good"))
    assert "From Ola" in text_of(team.coach.hears())
    arrive_and_read(team)
    team.coach.writes("thanks, stay with her", reply_to=team.coach.all_said()[-1].outbox_id)
    assert text_of(ola.hears()) == "From Ravi:\nthanks, stay with her"
    assert not team.athlete.hears()


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


#: What the questions of all flows are opened with, together; invented.
LAID_IN: dict[str, Any] = {
    "_date": "2027-05-07", "_day": "2027-05-09", "_today": "2027-05-07", "_event_day": "2027-05-09",
    "_first": "2027-05-07", "_last": "2027-05-09", "_weight_unit": "kg", "_volume_unit": "l",
    "weight_unit": "kg", "volume_unit": "l", "_zone": "Europe/London", "_home": "Europe/London",
    "_away": "Europe/Dublin", "_wake": "06:30", "birth_year": 1990, "sex": "female", "consent": "yes",
    "place": [{"name": "London", "zone": "Europe/London"}],
    "which_place": [{"name": "London", "zone": "Europe/London"}], "_concern": "body",
    "body_mass_kg": 61.0, "body_fat_percent": 14.0, "height_cm": 165.0,
    "_doubts": [{"code": "not-a-number", "answer": "weight_kg", "given": "6o", "options": [],
    "facts": {}}],
    "_name": "Mira", "_coach": "Ravi",
    "_field": "carb_g", "_key": "step_g", "_value": 300.0, "_days_out": 2, "shape": "even", "days": 1,
    "_load": {"2027-05-08": 500.0}, "_limits": dict.fromkeys(LIMIT_KEYS, 9000.0),
    "_stands_g": 500.0, "_planned_g": 500.0,
    "_proposed_g": 550.0, "carb_g": 520.0, "_names": ["summer"], "query": "rice", "basis": "100",
    "convention": "eu", "_foods": [], "_times": ["08:00"], "_symptom": "fainting", "_words": "grey",
    "stage": "15:00", "_old": "Ravi", "_new": "Noa", "_invite": None, "_text": "hello",
    "_athletes": [[2, "Mira"]], "_to": 2, "_warnings": "much", "_answers": {}, "_base": None,
    "_event": 1, "_readiness": 1, "_kind": "show", "_mornings": 5, "_days": 7, "_eaten": 0.9,
    "_own": False, "_sex": "female", "quiet_from": "20:00", "_ids": [1], "_listed": "Mira",
    "_ahead": [[1, "show", "2027-05-09"]], "day": "2027-05-16", "_step_g": 25.0,
    "when": {"day": "2027-05-16", "kind": "show", "place": "London"},
    "_problems": "too much", "_raises": "", "_past": "", "_room": "", "_rows": [{}], "_many": True,
    "_group": None, "_near": False, "_called": "rice", "_between": 7, "_templates": [[1, "summer"]],
    "_earlier": "show", "_table": "a table", "_said": "said", "_height_cm": 165.0,
    "_athlete": {"sex": "female", "birth_year": 1990, "body_mass_kg": 61.0,
    "body_fat_percent": 14.0, "height_cm": 165.0},
}  # fmt: skip


#: Answered, it looks for a row that only its own beginning makes.
NOTHING_TO_FINISH = {"coach-ready-anyway"}


def test_at_every_question_there_is_free_words_neither_fail_nor_vanish(team: Team) -> None:
    for flow_id, registered in FLOWS.items():
        somebody = (2, team.athlete) if ABOUT[flow_id] == "own" else (1, team.coach)
        for step in registered.flow.steps:
            with transaction(team.world.engine) as session:
                session.exec(delete(OpenQuestion))  # type: ignore[call-overload]
                laid_in = {key: value for key, value in LAID_IN.items() if key != step.key}
                question = OpenQuestion(
                    person_id=somebody[0], flow=flow_id, subject_id=2, step=step.key,
                    answers=laid_in, asked_at=team.world.now,
                )  # fmt: skip
                session.add(question)
            said = somebody[1].writes("trains, zebras and the odd blorp")
            assert said or flow_id in NOTHING_TO_FINISH, (flow_id, step.key)


def test_an_answer_to_what_was_asked_is_one_however_it_sounds(team: Team) -> None:
    team.athlete.writes("/stage")
    team.athlete.taps("Set the times")
    assert "On stage: 14:00" in text_of(team.athlete.writes("it's 2 pm I think"))
    assert not team.coach.hears()


def test_not_knowing_is_the_button_that_says_so(team: Team) -> None:
    for flow, key in (("ready-health", "sleep_h"), ("unwell", "pulse"), ("checkin", "fullness")):
        step = FLOWS[flow].flow.step(key)
        assert step is not None
        asked = OpenQuestion(
            person_id=2, flow=flow, step=key, answers={"_more": []}, asked_at=team.world.now
        )
        read = asking.read_answer(step, "no idea", asked, team.world.context)
        assert read in (None, {key: None}), flow


def test_a_button_is_typed_without_its_article(team: Team) -> None:
    step = FLOWS["coach-event"].flow.step("kind")
    assert step is not None
    asked = OpenQuestion(
        person_id=1, flow="coach-event", step="kind", answers={}, asked_at=team.world.now
    )
    assert asking.read_answer(step, "Photo shoot", asked, team.world.context) == "shoot"


@pytest.mark.parametrize("said", ["please don't tell Ravi", "keep this between us"])
def test_who_asks_that_nobody_is_told_hears_frankly_who_reads_it(team: Team, said: str) -> None:
    (answer,) = team.athlete.writes(said)
    assert "I can't keep anything back" in answer.text and "Ravi" in answer.text
    assert "passed that on" not in answer.text
    assert said in text_of(team.coach.hears())


def test_who_asks_whether_a_person_answers_is_told_that_it_is_a_program(team: Team) -> None:
    (answer,) = team.athlete.writes("are you a real person?")
    assert answer.text.startswith("I am a program, not a person.")
