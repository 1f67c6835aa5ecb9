"""Every sign reaches the coach at its level, in the athlete's words, and is answered as itself."""

from __future__ import annotations

import re

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.alerts import words_advice as advice
from bot.alerts import words_athlete as safety
from bot.core.turn import Turn
from bot.people.changes import Change
from bot.people.people import get_person, get_profile
from bot.people.telling import speaking_to
from bot.safety import watch as safety_watch
from bot.store.db import transaction
from bot.store.tables.people import HistoryRow
from bot.store.tables.week import AlertRow
from engine.symptoms import Concern
from tests.support.weeks import Team, arrive, arrive_and_read, gone_on, in_peak_week
from tests.support.world import text_of


@pytest.fixture
def team(own_engine: Engine) -> Team:
    """Seven days out, half past seven, checked in with nothing to tell."""
    return gone_on(in_peak_week(own_engine), nothing_to_tell)


def nothing_to_tell(team: Team) -> None:
    team.morning(7)
    team.athlete.writes("61.2 6 3.5 fine")
    arrive_and_read(team)


def levels(team: Team) -> dict[str, str]:
    with team.world.session() as session:
        return {row.flag: row.level for row in session.exec(select(AlertRow))}


# Hew-Butler 2015 (Clin J Sport Med 25:303-320): headache, nausea and swollen hands after much water
def test_signs_of_too_much_water_after_the_check_in_alert_and_take_the_figure_off_the_target(
    team: Team,
) -> None:
    said = text_of(team.athlete.writes("my hands are swollen, headache and feel sick"))
    assert "too much water in your blood" in said
    assert "Water to thirst, no more" in said and "3.5 L" not in said
    assert "No training and no cardio today, until a doctor has looked" in said
    (told,) = team.coach.hears()  # one message, not one a sign
    assert told.text.startswith("Caution: Mira") and not told.silent
    assert 'Mira wrote "my hands are swollen, headache and feel sick".' in told.text
    assert levels(team)["low-sodium-pattern"] == "caution"
    assert "All in order" not in text_of(team.coach.writes("/roster"))


def test_a_complaint_is_told_at_once_silently_and_shows_in_the_roster(team: Team) -> None:
    said = text_of(team.athlete.writes("bad cramps in my calves"))
    assert "I've told Ravi: cramps" in said and "salt as usual" in said
    (told,) = team.coach.hears()
    assert told.silent and told.text.startswith("Info: Mira")
    assert '"bad cramps in my calves"' in told.text and "I told Mira: " in told.text
    roster = text_of(team.coach.writes("/roster"))
    assert "Reported: cramps." in roster and "All in order" not in roster


def test_a_mild_complaint_in_doubt_is_asked_about_where_it_would_change_the_day(team: Team) -> None:
    said = text_of(team.athlete.writes("could be a headache coming"))
    assert "do you mean headache" in said
    (told,) = team.coach.hears()
    assert told.silent and '"could be a headache coming"' in told.text
    assert "I've told Ravi: headache" in text_of(team.athlete.taps("Yes"))


@pytest.mark.parametrize("answer", ["no headache at all, just tired", "nope", "not really"])
def test_a_denial_in_words_closes_the_question_and_the_coach_reads_it(
    team: Team, answer: str
) -> None:
    team.athlete.writes("could be a headache coming")
    arrive_and_read(team)
    said = [one for one in team.athlete.writes(answer) if one.method == "sendMessage"]
    assert text_of(said) == "Good. I've told Ravi that it is not that."
    told = text_of(team.coach.hears())
    assert "it is not that" in told and (answer == "nope" or answer in told)
    team.world.later(hours=3)
    assert team.athlete.hears() == [] and team.coach.hears() == []


@pytest.mark.parametrize("by", ["all good now, had some food", "60.9 6 3.5 fine"])
def test_whether_something_is_wrong_is_settled_by_all_being_fine_later(team: Team, by: str) -> None:
    asked = text_of(team.athlete.writes("my insides feel like jelly"))
    assert "Is something wrong with you?" in asked
    team.world.later(minutes=30)
    if "60.9" in by:
        team.morning(6)
    arrive_and_read(team)
    said = [one for one in team.athlete.writes(by) if one.method == "sendMessage"]
    assert "wrong" not in text_of(said)
    told = text_of(team.coach.hears())
    assert "Answered since" in told and "fine" in told
    arrive_and_read(team)
    team.world.later(hours=12)
    assert "jelly" not in text_of(team.coach.hears()) + text_of(team.athlete.hears())


def test_chatter_costs_nobody_a_message_and_comes_with_the_next_words(team: Team) -> None:
    for idle in ("ok lol", "hm"):
        (said,) = team.athlete.writes(idle)
        assert said.text == "Saved for Ravi." and said.silent
    assert team.coach.hears() == []
    assert "waits" not in text_of(team.coach.writes("/roster"))
    team.athlete.writes("the hotel has no fridge")
    assert text_of(team.coach.hears()) == "From Mira:\n• ok lol\n• hm\n• the hotel has no fridge"


def test_an_ok_to_what_the_coach_wrote_is_brought_to_the_coach(team: Team) -> None:
    team.coach.writes("Mira: call me at five")
    team.coach.taps("Send to Mira")
    team.coach.hears()
    assert "passed that on" in text_of(team.athlete.writes("ok"))
    assert "ok" in text_of(team.coach.hears())


def test_who_asks_how_to_drink_is_answered_and_has_not_given_it_up(team: Team) -> None:
    said = text_of(team.athlete.writes("only sips from now or can I drink normally?"))
    assert "Plain water when you're thirsty is always fine" in said
    (told,) = team.coach.hears()
    assert told.silent and "only sips from now" in told.text
    assert levels(team) == {}
    team.athlete.writes("I've had only sips since yesterday, and the sauna")
    assert levels(team)["drying-out"] == "caution"


def test_news_beside_an_open_doubt_are_no_answer_that_went_wrong(team: Team) -> None:
    team.athlete.writes("my insides feel like jelly")
    said = text_of(team.athlete.writes("2nd place!!!"))
    assert "passed that on" in said and "emergency" not in said and "jelly" not in said


def test_any_other_in_doubt_is_with_the_coach_at_once_and_with_what_it_may_mean(team: Team) -> None:
    said = text_of(team.athlete.writes("almost a cramp in the last set"))
    assert "I've passed that on to Ravi." in said and "write me that" in said
    (told,) = team.coach.hears()
    assert told.silent and "almost a cramp in the last set (This may mean cramps" in told.text


def test_who_says_that_the_answers_come_later_is_not_asked_again_at_once(team: Team) -> None:
    team.morning(6)
    said = text_of(team.athlete.writes("still at the gym, numbers later"))
    assert "Send the answers when you can." in said and "in kg?" not in said


def test_a_caution_that_was_acknowledged_today_is_still_said_in_the_roster(team: Team) -> None:
    team.world.later(days=1)
    team.athlete.writes("61.0 5 6.0 on target fine")
    (alert,) = [told for told in team.coach.hears() if told.text.startswith("Caution: Mira")]
    team.coach.taps("Acknowledge", alert)
    roster = text_of(team.coach.writes("/roster"))
    assert "nobody needs you" in roster and "All in order" not in roster
    assert "Caution today, acknowledged: water over target." in roster


def test_what_is_of_eating_is_answered_gently_without_figures_and_holds_adjusting(
    team: Team,
) -> None:
    said = text_of(team.athlete.writes("I binged and made myself sick last night"))
    assert "Thank you for telling me" in said and "I've told Ravi" in said
    assert not any(character.isdigit() for character in said) and "Carbs" not in said
    (told,) = team.coach.hears()
    assert told.text.startswith("Caution: Mira") and "listen" in told.text
    assert team.profile().frozen_because == "eating-and-mood"
    team.athlete.writes("60.9 6 3.5 fine")
    assert "Carbs" not in text_of(team.athlete.hears())
    assert "Carbs" in text_of(team.athlete.writes("/today"))  # who asks for it has it


def test_what_the_coach_reads_of_self_harm_is_what_was_said_and_what_helps(team: Team) -> None:
    said = text_of(team.athlete.writes("I don't want to live like this anymore"))
    assert "you should not be alone with it" in said
    (told,) = team.coach.hears()
    assert told.text.startswith("Warning: Mira")
    assert "they need not be alone with it" in told.text
    assert "Ask plainly" in told.text
    for not_said_to_her in ("don't drive", "No extra water"):
        assert not_said_to_her not in told.text


def test_whoever_runs_the_bot_can_name_a_helpline() -> None:
    assert "Lifeline, 555 0100" in safety.despair("Ravi", "Lifeline, 555 0100")
    assert "Lifeline, 555 0100" in advice.mood(["low-mood"], "Ravi", "Lifeline, 555 0100")
    assert "crisis line" in safety.despair("Ravi", "")


def test_another_complaint_under_a_warning_is_answered_as_itself(team: Team) -> None:
    team.athlete.writes("my heart is racing, palpitations")
    arrive_and_read(team)
    said = text_of(team.athlete.writes("constipated for 5 days"))
    assert "constipation" in said and "Stop. You reported" not in said
    assert "The warning still stands (palpitations)" in said
    assert "Constipation" in text_of(team.coach.hears())


def test_what_is_told_under_a_warning_is_not_answered_against_it(team: Team) -> None:
    team.athlete.writes("I fainted in the shower")
    arrive_and_read(team)
    said = text_of(team.athlete.writes("bad cramps in my calves"))
    assert "I've told Ravi: cramps." in said and "The warning still stands (fainting)" in said
    assert "as usual" not in said and "stretch" not in said
    assert "I told Mira" not in text_of(team.coach.hears())
    asked = text_of(team.athlete.writes("can I do my cardio later?"))
    assert "passed that on" in asked and "No training, no cardio until Ravi lifts that" in asked


def test_dizzy_again_while_a_warning_stands_fetches_the_coach_and_waits_for_them(
    team: Team,
) -> None:
    team.athlete.writes("I fainted in the shower")
    arrive_and_read(team)
    team.coach.taps("Acknowledge")
    team.world.later(hours=20)
    arrive_and_read(team)
    said = text_of(team.athlete.writes("dizzy again"))
    assert "Sit down until it passes." in said and "no training, no cardio" in said
    (told,) = [one for one in team.coach.hears() if "dizz" in one.text.lower()]
    assert told.text.startswith("Caution: Mira") and not told.silent
    assert "while a warning still stands" in told.text
    team.coach.presses(f"c:lift:{team.athlete_id}")
    assert team.profile().frozen_at is not None


def test_under_a_warning_no_training_is_printed_and_it_is_not_lifted_over_another_one(
    team: Team,
) -> None:
    team.athlete.writes("I fainted in the bathroom when I got up")
    (warning,) = team.coach.hears()
    assert '"I fainted in the bathroom when I got up"' in warning.text
    today = text_of(team.athlete.writes("/today"))
    assert "No training, no cardio until Ravi lifts that" in today
    assert "steps" not in today and "session" not in today
    team.athlete.writes("chest pain too")
    team.coach.hears()
    team.coach.taps("Acknowledge", warning)
    refused = text_of(team.coach.presses(f"c:lift-yes:{team.athlete_id}"))
    assert "still open" in refused and "chest pain" in refused and "fainting" not in refused
    with team.world.session() as session:
        kept = [row.detail for row in session.exec(select(HistoryRow)) if row.what == "symptom"]
    assert "I fainted in the bathroom when I got up" in [detail["words"] for detail in kept]


def test_water_that_is_put_right_puts_the_alert_right_in_its_place(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    said = text_of(team.athlete.writes("61.2 6 0.9 fine"))
    assert "You drank 0.9 L of 3.5 L. Get back to 3.5 L today" in said
    assert "stop" not in said.lower()
    assert "Caution" in text_of(team.coach.hears())
    arrive_and_read(team)
    team.athlete.writes("61.2 6 3.0 fine")
    (corrected,) = [m for m in team.coach.hears() if "Corrected since" in m.text]
    assert corrected.method == "editMessageText" and corrected.buttons == {}
    assert "water is 3.0 L, not 0.9 L. So this no longer applies." in corrected.text
    assert "won't add carbs" not in corrected.text


def test_a_half_empty_bottle_is_an_info_the_first_day(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.2 6 2.0 fine")
    told = team.coach.hears()
    assert told and all(message.silent for message in told)
    assert levels(team) == {"water-under-target": "advisory"}


def something_wrong(team: Team, text: str = "idk whats going on with my body rn") -> None:
    """A sentence that one of the ears takes for the body; asked about whichever it is."""
    with transaction(team.world.engine) as session:
        person = get_person(session, team.athlete_id)
        profile = get_profile(session, team.athlete_id)
        with speaking_to(person):
            safety_watch._ask_what_is_wrong(
                Turn(session, team.world.context), person, profile, Concern.BODY, text
            )


def test_is_something_wrong_fine_is_told_to_the_coach_who_had_heard_of_the_doubt(
    team: Team,
) -> None:
    something_wrong(team)
    (asked,) = team.athlete.hears()
    assert list(asked.buttons) == ["I'm fine", "I feel unwell", "It's an emergency"]
    (doubt,) = team.coach.hears()
    assert doubt.silent and "I've asked whether something is wrong" in doubt.text
    assert "I've told Ravi that you are fine" in text_of(team.athlete.writes("I'm fine"))
    assert "they are fine" in text_of(team.coach.hears())


def test_a_vague_doubt_left_open_is_told_once_and_not_every_half_hour(team: Team) -> None:
    something_wrong(team)
    team.coach.hears()
    team.world.later(minutes=11)
    told = [m for m in team.coach.hears() if "idk whats going on" in m.text and not m.silent]
    assert len(told) == 1 and "Call Mira and ask" in told[0].text
    team.world.later(hours=2)
    assert not [m for m in team.coach.hears() if "idk whats going on" in m.text]


def test_is_something_wrong_an_emergency_is_a_warning_in_their_words(team: Team) -> None:
    something_wrong(team)
    assert "Stop." in text_of(team.athlete.taps("It's an emergency"))
    warning = next(m for m in team.coach.hears() if m.text.startswith("Warning"))
    assert "Mira says it is an emergency" in warning.text
    assert '"idk whats going on with my body rn"' in warning.text


def test_is_something_wrong_unwell_asks_what_and_for_pulse_and_urine(team: Team) -> None:
    something_wrong(team)
    team.athlete.taps("I feel unwell")
    team.athlete.taps("Dizzy")
    assert "take your pulse" in text_of(team.athlete.taps("That's all"))
    assert "colour was your urine" in text_of(team.athlete.writes("112"))
    said = text_of(team.athlete.taps("Dark yellow"))
    assert "I've told Ravi: dizziness" in said
    # Tachycardia: more than 100 beats a minute at rest
    assert levels(team)["pulse-high"] == "caution" and levels(team)["dizzy"] == "advisory"
    assert "urine-dark" not in levels(team)


def test_a_complaint_typed_where_the_pulse_is_asked_for_is_told_as_what_it_is(team: Team) -> None:
    something_wrong(team)
    team.athlete.taps("I feel unwell")
    team.athlete.taps("Dizzy")
    assert "take your pulse" in text_of(team.athlete.taps("That's all"))
    team.coach.hears()
    said = text_of(team.athlete.writes("my pee is dark brown"))
    assert "No training until a doctor has looked" in said
    assert any("Caution" in one.text and not one.silent for one in team.coach.hears())
    assert levels(team)["urine-dark"] == "caution"


def test_what_may_be_a_warning_is_asked_about_where_it_was_asked_if_something_is_wrong(
    team: Team,
) -> None:
    something_wrong(team)
    arrive_and_read(team)
    said = text_of(team.athlete.writes("legs feel heavy today"))
    assert "legs feel heavy today" in said and "weak" in said
    assert any("legs feel heavy today" in one.text for one in team.coach.hears())
    arrive_and_read(team)
    assert "not that" in text_of(team.athlete.writes("no"))
    assert "not that" in text_of(team.coach.hears())


def test_words_that_answer_whether_something_is_wrong_stay_with_those_before(team: Team) -> None:
    something_wrong(team)
    arrive_and_read(team)
    team.athlete.writes("i just feel off")
    told = text_of(team.coach.hears())
    assert "idk whats going on with my body rn; i just feel off" in told
    team.world.later(minutes=11)
    told = text_of(team.coach.hears())
    assert "no full answer yet" in told and "i just feel off" in told


def test_what_is_wrong_in_their_words_is_with_the_coach_before_the_other_questions_are_answered(
    team: Team,
) -> None:
    something_wrong(team)
    team.athlete.taps("I feel unwell")
    arrive_and_read(team)
    team.athlete.writes("my ears ring all the time")
    assert "my ears ring all the time" in text_of(team.coach.hears())


def test_a_question_of_the_plan_is_no_word_of_what_is_wrong(team: Team) -> None:
    something_wrong(team)
    said = text_of(team.athlete.writes("can i do the cardio in the evening"))
    assert "passed that on to Ravi" in said and "What is it?" not in said
    team.athlete.taps("I feel unwell")
    team.coach.hears()
    said = text_of(team.athlete.writes("can i do the cardio in the evening"))
    assert "passed that on to Ravi" in said and "take your pulse" not in said
    assert "can i do the cardio in the evening" in text_of(team.coach.hears())


def test_two_mornings_without_a_word_ask_the_coach_to_call(team: Team) -> None:
    team.morning(6, hour=12)
    team.coach.hears()
    team.morning(5, hour=12)
    (told,) = [one for one in team.coach.hears() if "mornings running" in one.text]
    assert "call Mira" in told.text


def test_a_second_missed_morning_is_only_a_note_where_something_was_written_between(
    team: Team,
) -> None:
    team.morning(6, hour=12)
    team.athlete.writes("travelling all day, no scale")
    team.coach.hears()
    team.morning(5, hour=12)
    told = team.coach.hears()
    assert any("No check-in this morning" in one.text and one.silent for one in told)
    assert "mornings running" not in text_of(told)


def test_who_has_just_told_of_eating_is_not_pressed_for_a_weight(team: Team) -> None:
    team.morning(4, hour=5, minute=0)
    team.athlete.writes("I made myself sick after dinner")
    team.morning(4, hour=5, minute=31)
    team.athlete.hears()
    team.world.later(hours=2)
    assert "missing" not in text_of(team.athlete.hears())
    assert "reminder" not in text_of(team.athlete.hears())


def test_after_a_warning_nobody_is_asked_what_its_words_are_as_a_score(team: Team) -> None:
    team.morning(3)
    said = text_of(team.athlete.writes("fell over in the corridor and came round on the floor"))
    assert "Stop. You reported: fainting" in said
    assert "as a number" not in said


@pytest.mark.parametrize(
    "look",
    [
        "soft and blurry, spilled over i think",
        "flat in the delts, the rest pops",
        "holding some water",
    ],
)
def test_the_trades_words_for_a_look_are_no_sign_of_illness(team: Team, look: str) -> None:
    team.athlete.writes(look)
    assert levels(team) == {}


NAMED_AND_NO_MORE = (
    "61.0 4 1.0 4 wie geplant Kopfschmerzen",
    "61.0 4 1.0 4 as planned headache",
    "ich habe leichte Kopfschmerzen",
)


@pytest.mark.parametrize("words", NAMED_AND_NO_MORE)
def test_a_mild_complaint_called_by_its_name_beside_figures_is_told_once_and_asked_about_no_more(
    team: Team, words: str
) -> None:
    said = text_of(team.athlete.writes(words))
    assert "I've told Ravi: headache." in said and "Is something wrong" not in said
    told = coach_reads(team, words, hours=6)
    assert len(told) <= 1  # the alert of it, and nothing again


def coach_reads(team: Team, words: str, *, hours: int) -> list[str]:
    """What rings at the coach with these words in it, everything being sent as it would be."""
    read: list[str] = []
    for _ in range(2 * hours):
        team.world.later(minutes=30)
        read += [
            told.text
            for told in team.coach.hears()
            if words in told.text and told.method == "sendMessage"
        ]
        arrive(team)
    return read


def test_a_doubt_that_stays_unanswered_is_brought_to_the_coach_a_few_times_and_not_all_night(
    team: Team,
) -> None:
    team.world.later(hours=15)  # half past ten in the evening
    words = "es ist als wär ich nicht ganz bei mir"
    assert "Is something wrong" in text_of(team.athlete.writes(words))
    night = coach_reads(team, words, hours=8)
    assert 4 <= len(night) <= 6  # until all who can be fetched were
    assert "has not answered" in text_of(team.athlete.all_said())
    assert 3 <= len(coach_reads(team, words, hours=15)) <= 6  # by day it is asked again


def test_a_caution_that_nobody_acknowledges_sounds_seldomer_once_everybody_was_told(
    team: Team,
) -> None:
    team.athlete.writes("my vision is blurry today")
    team.world.later(hours=24)
    with team.world.session() as session:
        query = select(HistoryRow).where(HistoryRow.what == Change.ALERT_REPEATED)
        assert 12 <= len(session.exec(query).all()) <= 17


@pytest.mark.parametrize(
    "words", ["I'm bleeding", "ich blute", "alles ist verschwommen", "my vision is blurry"]
)
def test_who_is_sent_to_a_doctor_today_is_sent_to_no_session(team: Team, words: str) -> None:
    team.athlete.writes(words)
    today = text_of(team.athlete.writes("/today"))
    assert "No training and no cardio today, until a doctor has looked" in today
    assert "steps" not in today


THIRST = (
    "can I drink something now",
    "I'm so thirsty",
    "so thirsty, can I have some water?",
    "am I allowed to drink?",
    "hab so Durst",
    "darf ich jetzt was trinken?",
    "ich bin durstig",
    "kann ich noch einen Schluck Wasser trinken",
)


def test_an_athlete_may_always_drink_and_the_coach_reads_the_question_with_its_answer(
    team: Team,
) -> None:
    for words in THIRST:
        said = text_of(team.athlete.writes(words))
        assert "You may always drink when you're thirsty" in said, words
        assert "Is something wrong" not in said, words
        assert f"{words} (I answered that drinking when thirsty is always fine.)" in text_of(
            team.coach.hears()
        )
    assert "may always drink" not in text_of(team.athlete.writes("can I drink wine tonight?"))
    said = text_of(team.athlete.writes("so thirsty but I stopped drinking water yesterday"))
    assert "drink again" in said  # held back: that is a sign, and answered as one


def test_what_the_coach_reads_as_answered_was_answered(team: Team) -> None:
    """Said together, eating and the stomach are answered in one message, and each alert quotes it."""
    said = text_of(team.athlete.writes("I had a binge last night and I threw up this morning"))
    told = text_of(team.coach.hears())
    for quoted in re.findall(r'was told: "([^"]+)"|I told Mira: (.+)', told):
        assert "".join(quoted).split(". ")[0] in said
    assert "Let your stomach rest" in said or "please let a doctor look at you" in said


def test_after_the_show_the_coach_reads_what_was_said_and_nothing_of_a_plan(team: Team) -> None:
    team.morning(-1, hour=8)
    team.coach.hears()
    assert "See a doctor today" in text_of(team.athlete.writes("swollen legs"))
    told = text_of(team.coach.hears())
    assert "Mira was told to see a doctor today, with no large meals until then" in told
    assert "today's plan" not in told


def test_heavy_legs_are_asked_about_in_words_that_tell_tired_from_weak(team: Team) -> None:
    asked = text_of(team.athlete.writes("my legs feel heavy today"))
    assert "Tired muscles are a no." in asked and "hard to stand up" in asked


@pytest.mark.parametrize(
    "said", ["meine Beine fühlen sich heute schwer an", "my legs feel heavy today"]
)
def test_heavy_legs_are_a_doubt_in_either_language_and_no_warning(team: Team, said: str) -> None:
    asked = text_of(team.athlete.writes(said))
    assert "Stop. You reported" not in asked and "To be sure" in asked
    assert text_of(team.coach.hears()).startswith("Not sure: Mira")


def test_a_complaint_in_two_words_is_answered_and_not_asked_about_as_well(team: Team) -> None:
    said = team.athlete.writes("ich blute")
    assert "I've told Ravi: bleeding" in text_of(said)
    assert "Is something wrong with you?" not in text_of(said)
    assert len(team.coach.hears()) == 1


def test_who_says_plainly_what_was_asked_about_is_answered_once(team: Team) -> None:
    team.athlete.writes("passed out asleep at 9")
    assert "do you mean fainting" in team.athlete.all_said()[-1].text
    team.coach.hears()
    said = [one.text for one in team.athlete.writes("yes I fainted in the bathroom")]
    assert sum(text.startswith("Stop.") for text in said) == 1
    warned = [one for one in team.coach.hears() if one.text.startswith("Warning")]
    assert len(warned) == 1


def test_mood_and_body_told_in_one_sentence_are_one_message_that_says_what_to_do_of_both(
    team: Team,
) -> None:
    (said,) = team.athlete.writes("I binged and feel dizzy")
    assert "Thank you for telling me." in said.text and "Sit down until it passes." in said.text
    (told,) = team.coach.hears()
    assert told.text.startswith("Caution: Mira")
    assert 'Reported: a binge, dizziness. Mira wrote "I binged and feel dizzy".' in told.text
    assert "No talk of weight, food or the look." in told.text
    assert 'Mira was told: "Sit down until it passes.' in told.text


def test_a_warning_told_with_a_binge_says_what_to_do_of_both_and_not_that_both_were_answered(
    team: Team,
) -> None:
    team.athlete.writes("I made myself sick and then I fainted")
    (told,) = team.coach.hears()
    assert told.text.startswith("Warning: Mira")
    assert "Reported: fainting, vomiting or laxatives on purpose." in told.text
    assert "1. Call Mira." in told.text and "ask how they are, and listen" in told.text
    assert "answered gently" not in told.text  # the answer was of the fainting alone


def test_two_warnings_of_the_mood_and_of_the_body_are_fetched_for_one_by_one(team: Team) -> None:
    team.athlete.writes("I fainted and I want to kill myself")
    body, mood = team.coach.hears()
    assert "Reported: fainting." in body.text and "No extra water, salt, food" in body.text
    assert "thoughts of self-harm" in mood.text and "Ask plainly" in mood.text


def test_a_binge_beside_signs_of_too_much_water_is_answered_as_both(team: Team) -> None:
    said = team.athlete.writes("I binged and my hands are swollen, headache and feel sick")
    assert "Thank you for telling me." in said[0].text
    assert "too much water in your blood" in said[0].text
    told = team.coach.hears()[0].text
    assert "low blood sodium" in told and "before they drink any more" in told


def test_a_drug_that_is_purging_is_one_message_and_the_drug_is_refused_too(team: Team) -> None:
    (said,) = team.athlete.writes("I took a laxative")
    assert "Thank you for telling me." in said.text and "I can't help with drugs" in said.text
    (told,) = team.coach.hears()
    assert "vomiting or laxatives on purpose" in told.text and "A drug was named." in told.text
