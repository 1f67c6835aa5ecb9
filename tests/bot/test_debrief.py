"""Looking back on a week: whole for the coach, in short for the athlete, and again before a draft."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot.debrief.words import LESSONS
from engine.evidence.planning.health import AFTER_DAYS
from tests.support.weeks import Team, gone_on
from tests.support.world import Said, text_of

HEAD = "Debrief of Mira's show, Sun 9 May 2027"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The evening of the show; Mira's last four mornings are there, and she was flat in the load."""
    return gone_on(team_at(datetime(2027, 5, 6, 5, 31, tzinfo=UTC)), to_the_evening)


def to_the_evening(team: Team) -> None:
    team.athlete.writes("59.3 1 3.5 5 on target fine")
    team.morning(2, hour=5, minute=31)
    team.athlete.writes("60.1 7 3.5 4 carbs 430 fine")
    team.morning(1, hour=5, minute=31)
    team.athlete.writes("61.0 8 3.5 4 carbs 420 fine")
    team.morning(0, hour=5, minute=31)
    team.athlete.writes("61.4 8 3.5 4 carbs 430 fine")
    team.world.until(datetime(2027, 5, 9, 18, 0, tzinfo=UTC))
    team.athlete.hears()
    team.coach.hears()


def days_after(team: Team, number: int) -> None:
    team.world.until(datetime(2027, 5, 9, 5, 31, tzinfo=UTC) + timedelta(days=number))


def the_debrief(said: list[Said]) -> Said:
    return next(message for message in said if message.text.startswith("Debrief of"))


def look_back(team: Team, look: str = "Flat") -> tuple[list[Said], list[Said]]:
    """The coach says how it looked; then the morning after the lighter ones: coach's, athlete's."""
    days_after(team, 1)
    team.coach.taps(look)
    days_after(team, int(AFTER_DAYS.value))
    team.athlete.taps("Fine")
    team.athlete.writes("63.0")
    team.coach.hears()
    days_after(team, int(AFTER_DAYS.value) + 1)
    return team.coach.hears(), team.athlete.hears()


def test_after_the_lighter_mornings_the_coach_reads_the_week_whole(team: Team) -> None:
    said, _ = look_back(team)
    text = the_debrief(said).text
    assert text.startswith(HEAD)
    assert "7 out: 185 / 185 / – · no check-in" in text
    assert "3 out: 500 / 525 / 430 (flat in the load) · 59.3 kg, full 1, sharp 5" in text
    assert "Day: 185 / 185 / – · 61.4 kg, full 8, sharp 4" in text
    assert "Load: 1,500 g planned, 1,525 g set (8.3 g/kg a day)." in text
    assert "Eaten of it, as reported: 84 %." in text
    assert "Weight over the load: 2.1 kg up." in text
    assert "Your verdict on the look: flat." in text
    assert "Weight by day 3 after: 1.6 kg more than on event day." in text
    assert "Flat, but only 84 % of the load was eaten" in text
    assert "4 mornings without a check-in" in text
    assert "one week proves little" in text


def test_the_athlete_reads_a_short_one_and_is_asked_one_thing(team: Team) -> None:
    _, said = look_back(team)
    text = text_of(said)
    assert "Looking back on your show: You checked in on 4 of 8 mornings." in text
    assert "you ate 84 % of what was set" in text
    assert "flat" not in text.lower()  # the coach's word on the look is the coach's to give
    thanked = text_of(team.athlete.writes("Too much rice, my stomach was full."))
    assert "Thank you. Ravi has it." in thanked
    told = team.coach.hears()
    assert 'Mira on the week that is over: "Too much rice' in text_of(told)
    assert told[-1].silent
    team.coach.presses(f"c:debrief:{team.athlete_id}")
    assert 'Mira says: "Too much rice' in team.coach.all_said()[-1].text


def test_the_question_can_be_left(team: Team) -> None:
    team = gone_on(team, look_back)
    assert "All right. Eat well." in text_of(team.athlete.taps("Skip"))
    assert team.coach.hears() == []


def test_left_open_the_question_does_not_swallow_what_is_written_weeks_later(team: Team) -> None:
    team = gone_on(team, look_back)
    days_after(team, 8)
    team.athlete.writes("is it warm in Lisbon in June?")
    assert "on the week that is over" not in text_of(team.coach.hears())


def test_a_word_on_the_week_is_taken_a_day_later_too_and_a_question_is_passed_on(
    team: Team,
) -> None:
    team = gone_on(team, look_back)
    team.world.later(hours=26)
    team.athlete.writes("can I have coffee again?")
    assert "on the week that is over" not in text_of(team.coach.hears())
    team.athlete.writes("timing was good, never again that much rice")
    assert "on the week that is over" in text_of(team.coach.hears())


def test_it_comes_once(team: Team) -> None:
    team = gone_on(team, look_back)
    days_after(team, 12)
    assert not [m for m in team.coach.hears() if m.text.startswith("Debrief of")]


def test_a_word_on_the_look_that_is_missing_can_be_given_under_it(team: Team) -> None:
    days_after(team, int(AFTER_DAYS.value) + 1)
    found = the_debrief(team.coach.hears())
    assert "Your verdict on the look: none yet" in found.text
    team.coach.taps("Full", found)
    team.coach.presses(f"c:debrief:{team.athlete_id}")
    again = team.coach.all_said()[-1]
    assert "Your verdict on the look: full." in again.text
    assert "Full" not in again.buttons


def test_the_note_and_the_lessons_are_read_before_the_next_draft(team: Team) -> None:
    team = gone_on(team, look_back)
    team.coach.taps("Note for next time")
    assert "I show it" in text_of(team.coach.writes("White rice in five meals, not three"))
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("20 June")
    team.coach.taps("Same time zone")
    said = team.coach.presses(f"c:draft:{team.athlete_id}")
    before = said[0].text
    assert before.startswith("From the show of Sun 9 May, before you draft:")
    assert "eat all of the same load before trying a larger one" in before
    assert "Your note: White rice in five meals, not three" in before
    assert "load be spread" in said[-1].text


def test_a_note_that_names_a_drug_is_not_kept(team: Team) -> None:
    team = gone_on(team, look_back)
    team.coach.taps("Note for next time")
    assert "Saved" not in text_of(team.coach.writes("add a diuretic next time"))


def test_a_trial_is_looked_back_on_after_a_day_and_weeks_are_compared(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 8, 5, 31, tzinfo=UTC))
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A trial")
    team.coach.writes("9 May")
    team.coach.taps("Same time zone")
    team.athlete.writes("61.0 8 3.5 4 on target fine")
    days_after(team, 1)
    team.coach.taps("Full")
    team.coach.hears()
    days_after(team, 2)
    assert the_debrief(team.coach.hears()).text.startswith("Debrief of Mira's trial, Sun 9 May")
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("19 May")
    team.coach.taps("Same time zone")
    team.coach.presses(f"c:draft:{team.athlete_id}")
    team.coach.taps("even")
    team.coach.writes("7")
    team.coach.taps("None")
    team.coach.taps("Use this plan")
    team.coach.presses(f"c:limits-use:{team.athlete_id}")
    team.world.until(datetime(2027, 5, 19, 5, 31, tzinfo=UTC))
    team.athlete.writes("61.0 8 3.5 4 on target fine")
    team.world.until(datetime(2027, 5, 20, 9, 0, tzinfo=UTC))
    team.coach.presses(f"c:debrief:{team.athlete_id}")
    text = team.coach.all_said()[-1].text
    assert text.startswith("Debrief of Mira's show, Wed 19 May 2027")
    assert "Last time: trial Sun 9 May, 8.2 g/kg a day, full." in text


def test_while_the_next_week_asks_its_own_questions_the_athlete_is_not_asked(team: Team) -> None:
    days_after(team, 2)
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("16 May")
    team.coach.taps("Same time zone")
    team.athlete.hears()
    days_after(team, int(AFTER_DAYS.value) + 1)
    assert "A look back" not in text_of(team.athlete.hears())
    assert the_debrief(team.coach.hears())


def test_after_a_warning_the_athlete_is_not_asked_how_it_was(team: Team) -> None:
    days_after(team, 3)
    team.athlete.writes("my legs are so weak I can hardly stand")
    team.athlete.hears()
    days_after(team, int(AFTER_DAYS.value) + 1)
    assert "A look back" not in text_of(team.athlete.hears())


def test_before_any_week_lies_behind_there_is_nothing_to_look_back_on(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 3, 12, 0, tzinfo=UTC))
    for view in ("debrief", "debrief-note"):
        said = text_of(team.coach.presses(f"c:{view}:{team.athlete_id}"))
        assert "Mira has not finished a week yet" in said


def test_a_week_in_which_nobody_said_anything_is_not_looked_back_on(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 9, 18, 0, tzinfo=UTC))
    days_after(team, int(AFTER_DAYS.value) + 1)
    assert not [m for m in team.coach.hears() if m.text.startswith("Debrief of")]


def test_each_lesson_has_its_sentence() -> None:
    code = (Path(__file__).parents[2] / "engine" / "planning" / "behind" / "debrief.py").read_text(
        encoding="utf-8"
    )
    assert set(re.findall(r'Lesson\("([a-z-]+)"', code)) == set(LESSONS)


def test_each_reads_it_in_their_own_language(ours: None, team: Team) -> None:
    team.coach.language = "de"
    team.coach.writes("/roster")
    team.athlete.language = "en"
    team.athlete.writes("/today")
    days_after(team, 1)
    team.coach.taps("Flach")
    days_after(team, int(AFTER_DAYS.value) + 1)
    text = next(m.text for m in team.coach.hears() if m.text.startswith("Rückblick"))
    assert text.startswith("Rückblick für Mira: Wettkampf, So. 9. Mai 2027")
    assert "3 vorher: 500 / 525 / 430 (flach beim Laden) · 59,3 kg, voll 1, Definition 5" in text
    assert "Laden: 1.500 g geplant, 1.525 g vorgegeben (8,3 g/kg am Tag)." in text
    assert "Flach, aber nur 84 % der Lademenge wurden gegessen" in text
    assert "Looking back on your show:" in text_of(team.athlete.all_said())
    team.athlete.language = "de"
    assert "In Ordnung. Iss gut." in text_of(team.athlete.writes("überspringen"))
