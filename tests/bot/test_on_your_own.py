"""Somebody who is coach and athlete in one: nothing speaks of a coach who is told."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest

from bot.people.people import get_profile, profile_of
from bot.store.db import transaction
from bot.store.tables.people import Person
from tests.support.weeks import Team
from tests.support.world import Someone, text_of


@pytest.fixture
def mira(team_at: Callable[[datetime], Team]) -> Someone:
    """Two days out, Friday 7 May, at seven in London, before the check-in; Mira coaches herself."""
    team = team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))
    with transaction(team.world.engine) as session:
        profile, person = profile_of(session, 2), session.get_one(Person, 2)
        assert profile is not None
        profile.coach_id, person.is_coach = 2, True
        session.add(profile)
        session.add(person)
    return team.athlete


def heard(mira: Someone, text: str) -> str:
    return text_of(mira.writes(text))


def test_cautions_symptoms_drugs_and_a_pause_name_no_coach(mira: Someone) -> None:
    said = heard(mira, "I have a headache")
    assert "Saved: headache." in said and "If it gets worse" in said
    said += heard(mira, "I took a diuretic")
    assert "tell them about your diet" in said
    said += heard(mira, "I drank 2 litres in half an hour")
    assert "stop drinking for now" in said
    said += heard(mira, "61.0 4 1.0 5 on target fine")
    assert "You drank 1.0 L of 3.5 L. Get back to 3.5 L today" in said
    assert "I won't add carbs on these answers" in said
    said += heard(mira, "/pause")
    assert "Paused" in said
    assert "your coach" not in said.lower()
    assert "Mira can see" not in said


def test_a_sigh_is_no_note_and_words_are(mira: Someone) -> None:
    heard(mira, "61.0 4 3.5 5 on target fine")
    assert heard(mira, "hm") == "OK."
    said = heard(mira, "the hotel has no fridge")
    assert "Saved as a note to yourself" in said


def test_a_figure_of_ones_own_and_a_freeze_of_ones_own_are_said_to_be(mira: Someone) -> None:
    mira.presses("c:hand:2:2")
    mira.writes("480")
    assert "You have set this figure." in heard(mira, "61.0 4 3.5 5 on target fine")
    mira.presses("c:freeze:2")
    said = heard(mira, "61.0 5 3.5 5 on target fine")
    assert "You have frozen adjusting" in said
    assert "Flat and blurred" not in said


def test_a_missed_morning_is_told_once_and_to_nobody_else(mira: Someone) -> None:
    mira.world.later(hours=6)
    said = mira.hears()
    told = [one for one in said if "No check-in this morning" in one.text]
    assert len(told) == 1
    assert "your coach" not in told[0].text


def test_a_word_on_ones_own_proposal_is_a_tap_and_can_be_taken_back(mira: Someone) -> None:
    mira.writes("61.0 1 3.5 5 on target fine")
    assert "You have approved the change" in text_of(mira.taps("Take 550 g"))
    mira.world.later(minutes=1)
    mira.presses("c:undo:2")
    said = text_of(mira.taps("Take it back"))
    assert "Undone. Everything is as it was before." in said
    assert "your coach" not in said.lower()
    assert "a change for you to approve" in said
    assert "You coach yourself" in heard(mira, "/leave")
    assert "no coach here to write to" in heard(mira, "/write")


def test_a_replaced_proposal_keeps_the_numbers_that_it_was_made_of(mira: Someone) -> None:
    mira.writes("61.0 1 3.5 5 on target fine")
    mira.writes("61.0 4 3.5 5 on target fine")
    (settled,) = [one for one in mira.all_said() if "worked this out again" in one.text]
    assert "This morning: 61.0 kg, fullness 1," in settled.text


def test_help_says_what_becomes_of_words_and_shows_a_morning_in_their_units(mira: Someone) -> None:
    with transaction(mira.world.engine) as session:
        profile = get_profile(session, 2)
        profile.weight_unit, profile.volume_unit = "lb", "us fl oz"
        session.add(profile)
    said = heard(mira, "/help").partition("Your morning in one line")[2]
    assert "what I can't answer I keep as your own note" in said
    assert "your coach" not in said.lower()
    assert "such as 134.9 7 118 4." in said  # 61.2 kg and 3.5 L


def test_a_doctors_clearance_is_ones_own_to_note(mira: Someone) -> None:
    with transaction(mira.world.engine) as session:
        profile = get_profile(session, 2)
        profile.status = "doctor-first"
        session.add(profile)
    said = heard(mira, "/food")
    assert "Note it on your card" in said
    assert "your coach" not in said.lower()


def test_what_somebody_on_their_own_tells_is_answered_and_alerted_in_one_message(
    mira: Someone,
) -> None:
    (said,) = mira.writes("I fainted this morning and my chest hurts")
    assert said.text.startswith("Stop. You reported: chest pain, fainting.")
    assert said.text.endswith("Tap Acknowledge once you have seen to it. I repeat this until then.")
    assert set(said.buttons) == {"Acknowledge"}
    settled = text_of(mira.presses(said.buttons["Acknowledge"], said.outbox_id))
    assert "Warning: you" in settled
    assert "chest pain, fainting" in settled


def test_a_binge_told_by_somebody_on_their_own_is_one_message_too(mira: Someone) -> None:
    (said,) = mira.writes("I binged last night")
    assert said.text.startswith("Thank you for telling me.")
    assert set(said.buttons) == {"Acknowledge"}


def test_a_drug_told_by_somebody_on_their_own_is_one_message_too(mira: Someone) -> None:
    (said,) = mira.writes("took two water tablets")
    assert said.text.startswith("I can't help with drugs or medicines of any kind")
    assert set(said.buttons) == {"Acknowledge"}
    settled = text_of(mira.presses(said.buttons["Acknowledge"], said.outbox_id))
    assert "A drug was named." in settled


def with_a_second_contact(mira: Someone) -> Someone:
    mira.writes("/contact")
    code = re.search(r"/join (\S+)", text_of(mira.hears()) or mira.all_said()[-1].text)
    assert code is not None
    kira = Someone(mira.world, 909, "Kira")
    kira.writes(f"/join {code[1]}")
    return kira


def test_a_doubt_nobody_answers_reaches_the_second_contact_of_who_coaches_themself(
    mira: Someone,
) -> None:
    kira = with_a_second_contact(mira)
    heard(mira, "61.0 4 3.5 5 on target fine")
    assert "To be sure" in heard(mira, "my legs feel heavy today")
    mira.world.until(mira.world.context.now + timedelta(hours=3))
    told = text_of(kira.hears())
    assert "I asked whether that means weak or heavy limbs, and have no answer yet" in told


def test_the_card_of_who_coaches_themself_says_no_code_and_quotes_them_as_you(
    mira: Someone,
) -> None:
    heard(mira, "61.0 4 3.5 5 on target fine")
    heard(mira, "my legs feel heavy today")
    heard(mira, "no")
    heard(mira, "took a water pill")
    assert "cleared:" not in heard(mira, "Mira")
    roster = heard(mira, "/roster")
    assert 'You wrote "took a water pill"' in roster and "Ask them" not in roster
