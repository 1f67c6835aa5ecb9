"""Symptoms and drugs in what an athlete writes, whatever it is about."""

from __future__ import annotations

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.alerts import words_advice as advice
from bot.alerts import words_athlete as words
from bot.store.tables.week import AlertRow, DaySetRow, DecisionRow
from tests.support.weeks import Team, arrive_and_read, in_peak_week, onboarded
from tests.support.world import text_of


def alerts(team: Team) -> list[AlertRow]:
    with team.world.session() as session:
        return list(session.exec(select(AlertRow)))


@pytest.mark.parametrize(
    ("text", "flag"),
    [
        ("I fainted in the kitchen", "fainting"),
        ("my heart keeps fluttering", "palpitations"),
        ("i have chest pain", "chest-pain"),
        ("can't lift my arms, legs feel paralysed", "limb-weakness"),
        ("threw up five times since midnight", "repeated-vomiting"),
        ("Ich bin heute Morgen in der Küche ohnmächtig geworden", "fainting"),
    ],
)
def test_a_warning_in_free_text_stops_the_athlete_and_fetches_the_coach_at_once(
    own_engine: Engine, text: str, flag: str
) -> None:
    team = in_peak_week(own_engine)
    said = text_of(team.athlete.writes(text))
    assert "Stop." in said and "emergency number" in said and "Don't drive" in said
    told = team.coach.hears()
    assert any("Warning" in m.text and not m.silent for m in told)
    assert flag in {alert.flag for alert in alerts(team)}
    assert team.profile().frozen_at is not None


def test_after_a_warning_nothing_is_adjusted_until_the_coach_lifts_it(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("I passed out after cardio")
    team.morning(6)
    said = text_of(team.athlete.writes("58.9 2 3.5 dizzy"))
    with team.world.session() as session:
        made = session.exec(select(DecisionRow)).all()[-1]
        in_force = session.exec(select(DaySetRow)).all()[-1]
    assert made.decision["rule"] == "frozen" and made.carb_g == made.planned_carb_g
    assert in_force.carb_g == made.planned_carb_g
    assert "frozen" in said


def test_a_warning_told_in_the_check_in_escalates_and_sends_no_target(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    said = text_of(team.athlete.writes("61.0 6 3.5 palpitations all night"))
    with team.world.session() as session:
        made = session.exec(select(DecisionRow)).one()
    assert made.outcome == "escalated"
    assert "Carbs" not in said and "emergency number" in said


def test_a_denied_symptom_alarms_nobody(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    for said in (
        "no dizziness, no chest pain, no palpitations, all good",
        "kein Schwindel, keine Brustschmerzen, alles gut",
    ):
        team.athlete.writes(said)
        assert alerts(team) == []
        (passed_on,) = team.coach.hears()
        assert passed_on.silent or passed_on.method == "editMessageText"  # which makes no sound
        assert passed_on.text.startswith("From Mira:") and said in passed_on.text


def test_a_doubtful_phrase_is_asked_about_and_no_clears_it(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    said = team.athlete.writes("my heart was pounding at my desk, maybe the coffee")
    assert "To be sure" in text_of(said)
    (told,) = team.coach.hears()
    assert told.silent and told.buttons == {}
    assert 'Mira wrote "my heart was pounding at my desk, maybe the coffee"' in told.text
    assert "I've asked whether that means palpitations" in told.text
    assert "I've told Ravi that it is not that" in text_of(team.athlete.taps("No"))
    (corrected,) = team.coach.hears()
    assert corrected.method == "editMessageText"
    assert "Answered since: it is not that." in corrected.text
    team.world.later(minutes=30)
    assert team.coach.hears() == []
    assert {alert.level for alert in alerts(team)} == {"advisory"}
    assert team.profile().frozen_at is None


def test_a_doubtful_phrase_confirmed_is_a_warning(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.athlete.writes("my heart was pounding at my desk, maybe the coffee")
    assert "Stop." in text_of(team.athlete.taps("Yes"))
    (warning,) = [alert for alert in alerts(team) if alert.level == "warning"]
    assert warning.flag == "palpitations"
    assert warning.facts["words"] == "my heart was pounding at my desk, maybe the coffee"


def test_a_doubt_left_unanswered_is_told_as_a_doubt_and_asked_again(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.athlete.writes("my heart was pounding at my desk, maybe the coffee")
    arrive_and_read(team)
    team.world.later(minutes=9)
    assert team.coach.hears() == []
    team.world.later(minutes=1)
    (told,) = [m for m in team.coach.hears() if m.method == "sendMessage"]
    assert told.text.startswith("Not sure: Mira")
    assert 'Mira wrote "my heart was pounding at my desk, maybe the coffee".' in told.text
    assert "have no answer yet" in told.text and "Call Mira and ask" in told.text
    assert "Warning" not in told.text and "Acknowledge" in told.buttons
    again = text_of(team.athlete.hears())
    assert "I ask once more" in again and "do you mean palpitations" in again
    assert "Stop." not in again and team.profile().frozen_at is None
    team.athlete.taps("No")
    (settled,) = [m for m in team.coach.hears() if "Answered since" in m.text]
    assert settled.method == "editMessageText" and settled.buttons == {}
    team.world.later(hours=2)
    assert not [m for m in team.coach.hears() if "palpitations" in m.text]


@pytest.mark.parametrize(
    "text",
    [
        "can I take furosemide tonight?",
        "how much potassium before stage",
        "thinking about a laxative",
    ],
)
def test_a_drug_gets_a_plain_refusal_without_a_dose_and_a_caution_to_the_coach(
    own_engine: Engine, text: str
) -> None:
    team = in_peak_week(own_engine)
    said = text_of(team.athlete.writes(text))
    assert "can't help with drugs" in said and "ask a doctor" in said
    assert not any(char.isdigit() for char in said)
    told = team.coach.hears()
    assert any("Caution" in m.text and text in m.text for m in told)  # in their own words
    assert [alert.flag for alert in alerts(team)] == ["drug-named"]


def test_a_drug_named_before_the_check_in_forbids_a_raise_that_morning(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("thinking about a laxative")
    team.athlete.writes("60.2 5 3.5 dizzy")
    with team.world.session() as session:
        made = session.exec(select(DecisionRow)).one()
    assert (made.decision["rule"], made.decision["bound"]) == ("dropping-too-fast", "caution")
    assert made.decision["change_g"] == 0


def test_water_drunk_too_fast_is_met_at_once_and_counts_in_the_check_in(own_engine: Engine) -> None:
    """Kidneys pass 0.7 to 1.0 L an hour at most (IOM 2005, as quoted in reviews)."""
    team = in_peak_week(own_engine)
    team.morning(7)
    said = text_of(team.athlete.writes("drank 2 litres in an hour"))
    assert "more water in a short time" in said
    assert [alert.flag for alert in alerts(team)] == ["water-too-fast"]
    team.athlete.writes("60.2 5 3.5 dizzy")
    with team.world.session() as session:
        made = session.exec(select(DecisionRow)).one()
    assert "water-too-fast" in [flag["id"] for flag in made.decision["flags"]]


def test_somebody_in_despair_is_answered_as_a_person(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    asked = text_of(team.athlete.writes("i might hurt myself"))
    assert "are you thinking of harming yourself?" in asked
    said = text_of(team.athlete.taps("Yes"))
    assert "should not be alone" in said and "crisis line" in said and "Carbs" not in said
    assert any("Warning" in m.text for m in team.coach.hears())


def test_despair_said_plainly_is_answered_without_a_question(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    said = text_of(team.athlete.writes("i want to kill myself"))
    assert "should not be alone" in said and "crisis line" in said and "Carbs" not in said
    assert any("Warning" in m.text for m in team.coach.hears())


def test_a_symptom_told_before_the_check_in_counts_in_it(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("feeling dizzy this morning")
    team.athlete.writes("61.0 6 3.5")
    with team.world.session() as session:
        made = session.exec(select(DecisionRow)).one()
    assert made.decision["rule"] == "dropping-too-fast"


def test_a_symptom_told_after_the_check_in_decides_again(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("61.0 6 3.5")
    said = text_of(team.athlete.writes("feeling quite dizzy now"))
    assert "I've told Ravi: dizziness" in said and "emergency number" in said
    assert said.index("Sit down until it passes") < said.index("You felt dizzy")
    assert "blood pressure" in said and "iron" in said


def test_symptoms_are_watched_for_while_another_question_is_open(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    said = text_of(team.athlete.writes("I have chest pain"))
    assert "emergency number" in said and "weight this morning" not in said
    assert "Fullness" in text_of(team.athlete.writes("61.0"))


def test_two_doubts_are_each_asked_about_and_told_as_what_they_are(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.athlete.writes("legs feel weak after training")
    said = text_of(team.athlete.writes("chest a bit tight after bench"))
    assert "To be sure" in said and "Please use one of the buttons" not in said
    team.world.later(minutes=10)
    assert [(a.flag, a.level) for a in alerts(team)] == [("doubt", "caution"), ("doubt", "caution")]
    told = text_of(team.coach.hears())
    assert "legs feel weak" in told and "chest a bit tight" in told


def test_a_check_in_in_one_line_is_taken_while_a_doubtful_phrase_is_asked_about(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("legs feel weak after training")
    assert "Carbs" in text_of(team.athlete.writes("61.0 6 3.5"))


def test_symptoms_are_watched_for_before_the_coach_has_set_a_week(own_engine: Engine) -> None:
    team = onboarded(own_engine)
    assert "Stop." in text_of(team.athlete.writes("I fainted"))
    assert [alert.flag for alert in alerts(team)] == ["fainting"]


def test_the_same_warning_twice_pings_the_coach_once_while_it_is_open(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)
    team.athlete.writes("I fainted")
    assert len(team.coach.hears()) == 1
    arrive_and_read(team)
    team.athlete.writes("I fainted again")
    (grown,) = team.coach.hears()
    assert grown.method == "editMessageText"
    assert '"I fainted; I fainted again"' in grown.text and "Acknowledge" in grown.buttons


def test_no_sentence_to_an_athlete_names_a_drug_with_a_dose() -> None:
    said = [
        words.drug_refusal("Ravi"),
        words.emergency(["fainting"], "Ravi"),
        *(advice.advice([symptom]) for symptom in advice.ADVICE),
        *(advice.mood([symptom], "Ravi", "") for symptom in advice.MOOD),
    ]
    assert not any(unit in text for text in said for unit in (" mg", " mcg", "tablet of"))


@pytest.mark.parametrize("command", ["/why", "/food", "/today", "/week", "/chart", "/late 45"])
def test_a_command_is_not_taken_for_a_complaint(own_engine: Engine, command: str) -> None:
    team = in_peak_week(own_engine)
    team.coach.hears()
    assert "Is something wrong with you?" not in text_of(team.athlete.writes(command))
    assert not [message for message in team.coach.hears() if command in message.text]


def test_nobody_is_told_to_drink_more_while_there_may_be_too_much_water_in_the_blood(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    team.athlete.writes("my hands are swollen and I have a headache and feel sick")
    arrive_and_read(team)
    said = text_of(team.athlete.writes("I have not drunk anything since noon and was in the sauna"))
    told = text_of(team.coach.hears())
    assert "drink again" not in said + told
    assert advice.advice(["drying-out"], to_thirst=True) in said
    assert advice.advice(["drying-out"], to_thirst=True) in told
    said = text_of(team.athlete.writes("and I am dizzy"))
    assert advice.advice(["dizzy"], to_thirst=True) in said
