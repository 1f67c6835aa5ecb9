"""People answer in their own words, and are asked in words that a tired reader follows."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

import pytest
from sqlalchemy import Engine

from bot.membership.onboarding import in_words, words
from bot.membership.onboarding.flow_measures import height_with_unit
from bot.store.tables.people import AthleteStatus
from bot.words.languages import speaking
from tests.support.weeks import Team, invited
from tests.support.world import text_of

LOW, HIGH = 1927, 2022  # birth years that are taken in 2027


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Four days out, Wednesday 5 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 5, 6, 0, tzinfo=UTC))


def asked_up_to(engine: Engine, *answers: str) -> Team:
    team = invited(engine)
    for answer in answers:
        team.athlete.writes(answer)
    team.coach.hears()
    return team


# The first questions


def test_agreeing_in_words_is_agreeing_and_a_question_is_not(own_engine: Engine) -> None:
    team = invited(own_engine)
    team.coach.hears()
    again = text_of(team.athlete.writes("what is this"))
    assert words.agree_again("Ravi", self_coached=False) in again
    assert "medical device" not in again  # it stands above, and is not put on top of itself
    assert not team.coach.hears()
    assert words.ask_birth_year() in text_of(team.athlete.writes("ok, I agree"))


@pytest.mark.parametrize("said", ["ok", "I do not agree", "maybe", "I agree?! no", "thanks"])
def test_nothing_less_than_agreeing_is_taken_for_it(said: str) -> None:
    assert not in_words.agrees(said)


def test_a_year_of_birth_is_read_out_of_a_sentence_or_a_date() -> None:
    read = {
        said: in_words.birth_year(said, LOW, HIGH)
        for said in ("born 1996", "12.03.1996", "1996-03-12", "12 March 1996", "I was born in 96",
                     "Jahrgang 96", "ich bin von 96")
    }  # fmt: skip
    assert set(read.values()) == {"1996"}, read


def test_a_year_that_may_be_an_age_is_not_guessed() -> None:
    said = ("96", "31", "I am 31", "born in 24", "was it 1996?", "1996 or 1997")
    assert {one: in_words.birth_year(one, LOW, HIGH) for one in said} == dict.fromkeys(said, "")


@pytest.mark.usefixtures("ours")
def test_a_man_and_a_woman_say_so_in_their_language() -> None:
    assert [in_words.sex(one) for one in ("I'm a woman", "woman", "F")] == ["female"] * 3
    assert [in_words.sex(one) for one in ("a man", "m", "I am male")] == ["male"] * 3
    with speaking("de"):
        said = ("ich bin eine Frau", "Frau", "ich bin ein Mann")
        assert [in_words.sex(one) for one in said] == ["female", "female", "male"]
    assert [in_words.sex(one) for one in ("fine", "yes", "other", "my wife is a woman")] == [""] * 4


def test_a_condition_told_in_a_sentence_is_ticked_and_a_denied_one_is_not(
    own_engine: Engine,
) -> None:
    team = asked_up_to(own_engine, "yes", "1996", "female")
    asked = text_of(team.athlete.writes("no eating disorder, my mother has diabetes"))
    assert "Your health first" in asked
    team.athlete.writes("I had an eating disorder when I was 17, fine now")
    for answer in ("none", "none", "Leeds", "7:00", "165", "61.2", "310 140 55 3.5"):
        team.athlete.writes(answer)
    assert team.profile().status == AthleteStatus.DOCTOR_FIRST
    assert "a doctor's clearance comes first" in text_of(team.coach.hears())


def test_a_height_is_about_and_one_without_a_unit_is_asked_for_its_unit(own_engine: Engine) -> None:
    team = asked_up_to(own_engine, "yes", "1996", "female", *["none"] * 3, "Leeds", "7:00")
    refused = text_of(team.athlete.writes("70"))
    assert height_with_unit() in refused and "3.5 L" not in refused
    assert "weigh" in text_of(team.athlete.writes("about 165"))


@pytest.mark.usefixtures("ours")
def test_an_ordinary_day_is_read_by_its_names_in_any_order() -> None:
    whole = {"carb_g": "310", "protein_g": "140", "fat_g": "55", "water_l": "3.5 l"}
    for said in (
        "310 carbs, 140 protein, 55 fat, 3.5 l",
        "protein 140 carbs 310 fat 55 water 3.5 l",
    ):
        assert in_words.day_by_name(said) == whole, said
    with speaking("de"):
        assert in_words.day_by_name("310 kh, 140 Eiweiß, 55 Fett, 3.5 l") == whole
    for said in ("310 140 55 3.5", "carbs 310 320 protein", "310 carbs 200 carbs", "3.5 l"):
        assert in_words.day_by_name(said) == {}, said


# A bare yes, no or "none of these" is meant for what was asked


def test_a_yes_to_a_choice_of_two_is_asked_again_and_nobody_else_reads_it(team: Team) -> None:
    team.athlete.writes("69.1 5")
    team.coach.hears()
    for said in ("yes", "yep"):
        assert "Please tap one, or send the right number." in text_of(team.athlete.writes(said))
    assert not team.coach.hears()


def test_the_next_answer_is_kept_while_the_one_before_is_in_doubt(team: Team) -> None:
    team.athlete.writes("69.1 5")
    said = text_of(team.athlete.writes("3.5"))
    assert "water 3.5 L" in said and "69.1 kg is far from" in said
    assert "61.1 kg · fullness 5 · water 3.5 L" in text_of(team.athlete.writes("61.1"))


def test_fine_said_too_early_is_kept_and_the_question_stands(team: Team) -> None:
    for answer in ("60.4", "5", "3.5"):
        team.athlete.writes(answer)
    team.coach.hears()
    said = text_of(team.athlete.writes("fine"))
    assert "all fine" in said and "Yesterday's carbs?" in said
    assert not team.coach.hears()


def test_words_beside_the_figures_are_said_to_have_been_passed_on(team: Team) -> None:
    said = text_of(team.athlete.writes("60.4 5 3.5 and my dog says hi"))
    assert 'my dog says hi" on to Ravi.' in said
    assert "my dog says hi" in text_of(team.coach.hears())


@pytest.mark.usefixtures("ours")
def test_amounts_to_tap_are_written_as_the_reader_writes_them(team: Team) -> None:
    team.athlete.writes("/language")
    team.athlete.taps("Deutsch")
    for answer in ("60,4", "5"):
        said = team.athlete.writes(answer)
    assert "3,5 L" in said[-1].buttons
    assert "Wasser 3,5 L" in text_of(team.athlete.taps("3,5 L"))


# A coach's words that wait for a tap


def test_words_that_were_not_sent_are_asked_about_once_more_and_only_once(team: Team) -> None:
    team.coach.writes("Mira: well done this week")
    team.world.later(minutes=25)
    (again,) = [m for m in team.coach.hears() if "not gone out" in m.text]
    assert "well done" in again.text
    team.coach.taps("Send to Mira", again)
    assert "well done" in text_of(team.athlete.hears())
    team.world.later(hours=1)
    assert "not gone out" not in text_of(team.coach.hears())


def test_words_that_were_sent_are_not_asked_about(team: Team) -> None:
    team.coach.writes("Mira: well done this week")
    team.coach.taps("Send to Mira")
    team.world.later(hours=1)
    assert "not gone out" not in text_of(team.coach.hears())


def test_an_ok_sends_them_and_other_words_are_offered_instead(team: Team) -> None:
    team.coach.writes("Mira: well done this week")
    for other in ("Mira 420", "rest today please", "are you fine?"):
        assert "Shall I send it?" in (said := text_of(team.coach.writes(other)))
        assert other.removeprefix("Mira ") in said and "well done" not in said
    team.coach.writes("ok")
    assert "are you fine?" in text_of(team.athlete.hears())


def test_a_bare_word_that_nobody_sent_is_not_brought_up_again(team: Team) -> None:
    team.coach.writes("thanks")
    team.world.later(hours=1)
    assert "not gone out" not in text_of(team.coach.hears())


def test_a_figure_typed_at_an_athlete_is_said_to_be_words_only(team: Team) -> None:
    for said in ("Mira 420", "set Mira to 450 tomorrow", "Mira eat 420 g"):
        assert "they change no target" in text_of(team.coach.writes(said)), said
    for said in (
        "Mira call me at 7:30",
        "Mira: train at 10 and rest, then eat your last two meals",
    ):
        assert "they change no target" not in text_of(team.coach.writes(said)), said


# How it looked


def test_a_look_told_in_words_brings_its_question_back_and_a_tap_counts(team: Team) -> None:
    team.morning(-1, hour=9)
    (asked,) = team.coach.writes("full")
    assert "Is that your verdict on how Mira looked" in asked.text
    assert "Saved: Mira was full" in text_of(team.coach.taps("Full", asked))
    assert "Is that your verdict" not in text_of(team.coach.writes("full"))  # it is given


def test_a_longer_word_on_the_look_is_offered_to_the_athlete_as_well(team: Team) -> None:
    team.morning(-1, hour=9)
    said = text_of(team.coach.writes("she looked full, a bit soft on the legs"))
    assert "Is that your verdict" in said and "Shall I send it?" in said
    assert "Is that your verdict" not in text_of(team.coach.writes("flat or full, who knows"))


def test_a_name_opens_the_card_while_words_wait_to_be_sent(team: Team) -> None:
    team.coach.writes("Mira: well done this week")
    assert "Limits: carb floor" in text_of(team.coach.writes("Mira"))


# What only a tap decides, said in words


@pytest.mark.parametrize("said", ["on it", "Acknowledge", "I called her, she's fine"])
def test_words_at_an_open_alert_bring_it_back_and_acknowledge_nothing(
    team: Team, said: str
) -> None:
    team.athlete.writes("my pee is dark brown")
    told = team.coach.writes(said)
    assert "Dark urine" in told[-1].text and "Acknowledge" in told[-1].buttons
    assert "Shall I send it?" not in text_of(told)
    assert "One alert is open" in text_of(team.coach.writes("/alerts"))


@pytest.mark.parametrize("said", ["530", "keep the plan", "approve"])
def test_words_at_a_proposal_bring_it_back_and_decide_nothing(team: Team, said: str) -> None:
    team.morning(1)
    team.athlete.writes("61.6 3 3.5 4 on target fine")
    team.coach.writes("what is this")  # and words wait to be sent
    (told,) = team.coach.writes(said)
    assert "Tap the number you want" in told.text and "Approve 550 g" in told.buttons


def test_with_nothing_open_the_same_words_are_for_the_athlete(team: Team) -> None:
    for said in ("on it", "530", "keep the plan"):
        assert "Shall I send it?" in text_of(team.coach.writes(said)), said


def test_what_is_kept_of_them_is_asked_for_in_words(team: Team) -> None:
    assert "Delete it all?" in text_of(team.athlete.writes("delete my data"))
    assert "photos" in text_of(team.athlete.writes("photos"))
    assert "You are asked at" in text_of(team.athlete.writes("change the time to 7"))
    assert not team.coach.hears()


# What is eaten and drunk, as it is said


@pytest.mark.usefixtures("ours")
def test_everything_eaten_is_on_target_and_takes_no_score_along(team: Team) -> None:
    team.morning(3)
    said = text_of(team.athlete.writes("60 4 3.5 4 ate all of it"))
    assert "sharpness 4 · carbs 185 g" in said
    team.athlete.writes("/language")
    team.athlete.taps("Deutsch")
    again = text_of(team.athlete.writes("60,2 4 3,5 4 alles gegessen"))
    assert "Auf Kurs" in again and "weitergeleitet" not in again


@pytest.mark.usefixtures("ours")
def test_what_was_drunk_is_put_right_in_german_too(team: Team) -> None:
    team.athlete.writes("60.4 5 2.0")
    team.athlete.writes("/language")
    team.athlete.taps("Deutsch")
    assert "Wasser 2,0 L → Wasser 3,0 L" in text_of(team.athlete.writes("wasser waren 3 l"))


def test_the_right_figure_sent_after_one_was_worked_out_takes_its_place(team: Team) -> None:
    assert "Just send the right number" in text_of(team.athlete.writes("60.4 6-7 3.5"))
    team.coach.hears()
    assert "fullness 6 → fullness 7" in text_of(team.athlete.writes("7"))
    assert not team.coach.hears()


def test_a_bare_figure_after_a_morning_told_in_figures_changes_nothing(team: Team) -> None:
    team.athlete.writes("60.4 6 3.5")
    assert "passed that on" in text_of(team.athlete.writes("7"))


def test_a_coachs_figure_is_read_with_what_people_put_around_it(team: Team) -> None:
    for said in ("around 190", "190g please", "190 i think"):
        team.coach.presses(f"c:hand:{team.athlete_id}:2")
        assert "is set to 190 g" in text_of(team.coach.writes(said)), said
    team.coach.presses(f"c:hand:{team.athlete_id}:2")
    refused = text_of(team.coach.writes("190 potatoes"))
    assert "I only need the number" in refused and "fl oz" not in refused


@pytest.mark.parametrize(
    ("said", "led_to"), [("no", "Carbs"), ("ok", "Carbs"), ("yes", "What is it?")]
)
def test_no_and_yes_answer_whether_anything_else_is_going_on(
    team: Team, said: str, led_to: str
) -> None:
    for answer in ("60.4", "5", "3.5", "on target", "as planned"):
        asked = text_of(team.athlete.writes(answer))
    assert "Anything else going on?" in asked
    assert led_to in text_of(team.athlete.writes(said))
    assert not team.coach.hears()
