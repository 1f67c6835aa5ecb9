"""Check-ins in every shape, as the athlete lives them: read, asked about, skipped, nothing lost."""

from __future__ import annotations

import datetime as dt
from dataclasses import fields

import pytest
from sqlalchemy import Engine

from bot.checkin import words
from bot.checkin.checkins import _write
from bot.checkin.flow import QUESTIONS
from bot.store.tables.week import CheckInRow
from bot.week.cases import checkin_of
from engine.values.checkin import CheckIn
from tests.bot.test_checkin import checkins, decisions, draft, given
from tests.support.weeks import Team, in_peak_week
from tests.support.world import text_of

# columns and fields that are not asked for in the check-in: who and when, and what is told elsewhere
NOT_ASKED = {
    "id", "athlete_id", "date", "revision", "urine_colour", "resting_pulse",
    "water_within_one_hour_l", "message_id", "answered_at", "cleared",
}  # fmt: skip


def a_morning(engine: Engine, days_out: int = 6) -> Team:
    """A morning with one before it, on which Mira weighed 60.4 kg and was at 5."""
    team = in_peak_week(engine)
    team.morning(days_out + 1)
    team.athlete.writes("60.4 5 3.5 4" if days_out < 3 else "60.4 5 3.5")
    team.morning(days_out)
    team.athlete.hears()
    return team


def figures(team: Team) -> tuple[float | None, int | None, float | None]:
    row = checkins(team)[-1]
    return (row.weight_kg, row.fullness, row.water_l)


@pytest.mark.parametrize(
    "line",
    [
        "weight 60.1 fullness 5 water 3.5",
        "water 3.5, 60.1kg, full 5",
        "60.1,5,3.5",
        "full 5, drank 3.5 litres, weighed in at 60.1",
        "about 60.1, fullness 5, roughly 3.5 litres",
    ],
)
def test_a_whole_morning_in_another_shape_ends_in_a_target(own_engine: Engine, line: str) -> None:
    team = a_morning(own_engine)
    assert "Carbs" in text_of(team.athlete.writes(line))
    assert figures(team) == (60.1, 5, 3.5)
    assert len(decisions(team)) == 2


def test_a_fourth_number_before_the_load_is_asked_about_and_nothing_read_is_lost(
    own_engine: Engine,
) -> None:
    team = a_morning(own_engine)
    said = team.athlete.writes("60.2 5 3.5 170 fine")
    assert "but not 170. Are those yesterday's carbs?" in text_of(said)
    assert len(decisions(team)) == 1
    assert "Carbs" in text_of(team.athlete.taps("Yes"))
    assert figures(team) == (60.2, 5, 3.5)
    assert checkins(team)[-1].carb_eaten_g == 170


def test_a_fourth_number_that_is_not_the_carbs_stays_in_the_note(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    team.athlete.writes("60.2 5 3.5 170")
    team.athlete.writes("no")
    assert figures(team) == (60.2, 5, 3.5)
    assert (checkins(team)[-1].carb_eaten_g, checkins(team)[-1].note) == (None, "170")


def test_who_tells_all_of_it_once_more_is_not_asked_about_the_first_line(
    own_engine: Engine,
) -> None:
    team = a_morning(own_engine)
    team.athlete.writes("60.2 5 3.5 170 fine")
    said = text_of(team.athlete.writes("60.4 6 4.0 all fine"))
    assert "Carbs" in said and "170. Are those" not in said
    assert figures(team) == (60.4, 6, 4.0)


def test_a_morning_in_two_messages_is_one(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    team.athlete.writes("60.2")
    team.athlete.writes("5 3.5")
    assert given(draft(team)) == {"weight_kg": 60.2, "fullness": 5, "water_l": 3.5}


def test_a_weight_in_the_other_unit_is_questioned_by_name_before_it_is_taken(
    own_engine: Engine,
) -> None:
    team = a_morning(own_engine)
    said = text_of(team.athlete.writes("133 5 3.5"))
    assert "133.0 kg can't be right: you were 60.4 kg." in said
    assert "Did you mean 133 lb (60.3 kg)?" in said
    assert len(decisions(team)) == 1
    team.athlete.writes("yes")
    assert figures(team) == (pytest.approx(60.33, abs=0.01), 5, 3.5)


def test_a_new_number_answers_the_question_whether_one_was_right(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    team.athlete.writes("133 5 3.5")
    team.athlete.writes("60.3")
    assert figures(team) == (60.3, 5, 3.5)


def test_no_to_what_was_probably_meant_asks_for_the_figure_again(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    team.athlete.writes("60.2 55 3.5")
    assert "Fullness is 1 to 10, I read 55. Did you mean 5?" in text_of(team.athlete.all_said())
    said = team.athlete.writes("no")
    assert "Fullness" in said[-1].text and len(decisions(team)) == 1
    team.athlete.taps("6")
    assert figures(team) == (60.2, 6, 3.5)


def test_a_swapped_order_is_asked_about_before_it_moves_carbs(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    said = team.athlete.writes("60.2 4 7")
    assert "fullness 7, water 4.0 L" in said[-1].buttons
    assert len(decisions(team)) == 1
    team.athlete.taps("fullness 7, water 4.0 L")
    assert figures(team) == (60.2, 7, 4.0)


def test_a_range_or_a_run_of_commas_is_asked_about_with_its_meanings(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    said = team.athlete.writes("60 or 61")
    assert {"60.0 kg", "60.5 kg", "61.0 kg"} <= set(said[-1].buttons)
    team.athlete.taps("61.0 kg")
    assert given(draft(team)) == {"weight_kg": 61.0}


def test_what_was_worked_out_from_words_is_taken_and_said(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    said = text_of(team.athlete.writes("300 g less than yesterday, fullness 6-7, 3.5 L"))
    assert "For “300 g less than yesterday” I took 60.1 kg." in said
    assert "For “6-7” I took fullness 6." in said
    assert "Carbs" in said
    assert figures(team) == (60.1, 6, 3.5)
    assert "“" not in text_of(team.athlete.writes("fullness 7"))
    team.athlete.taps("Yes")
    assert figures(team) == (60.1, 7, 3.5)


def test_of_two_weighings_the_one_that_counts_is_said_and_can_be_put_right(
    own_engine: Engine,
) -> None:
    team = a_morning(own_engine)
    said = text_of(team.athlete.writes("60.9 with clothes on, 60.3 without. 6. 3 litres"))
    assert "For “60.9 with clothes on, 60.3 without” I took 60.3 kg." in said
    assert figures(team) == (60.3, 6, 3.0)
    team.athlete.writes("60.2")
    assert figures(team) == (60.2, 6, 3.0)


def test_carbs_said_not_to_be_on_target_are_asked_for(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    asked = text_of(team.athlete.writes("60.3 6 3.5 on target? no"))
    assert "how many grams did you eat yesterday" in asked
    team.athlete.writes("about 120")
    assert (checkins(team)[-1].carb_eaten_g, *figures(team)) == (120, 60.3, 6, 3.5)
    assert "how many grams did you eat yesterday" in text_of(team.athlete.writes("off target"))
    team.athlete.writes("150")
    assert checkins(team)[-1].carb_eaten_g == 150


def test_a_weight_told_by_yesterdays_is_asked_for_where_there_was_none_yesterday(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("60.4 5 3.5")
    team.morning(5)
    team.athlete.hears()
    said = text_of(team.athlete.writes("300 g less than yesterday, fullness 6, 3.5 L"))
    assert "eight" in said and "60.1" not in said


def test_a_number_where_none_is_asked_for_is_no_answer(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    for answer in ("60.2", "5", "3.5", "170"):
        team.athlete.writes(answer)
    before = draft(team)
    team.athlete.writes("61 or 62")
    assert given(draft(team)) == given(before) and draft(team).step == "training_done"


def test_every_figure_can_be_skipped_and_what_is_missing_is_said(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    team.athlete.taps("No scale today")
    said = text_of(team.athlete.writes("skip"))
    assert "no weight" in said and "no fullness" in said
    team.athlete.taps("I don't know")
    assert given(draft(team)) == {"weight_kg": None, "fullness": None, "water_l": None}


def test_a_morning_without_a_scale_is_one_line_too(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    assert "Carbs" in text_of(team.athlete.writes("no scale today, full 5, water 3.5"))
    assert figures(team) == (None, 5, 3.5)
    team.athlete.hears()
    team.world.later(hours=6)
    assert team.athlete.hears() == []  # told is told: nobody asks for it again


def test_a_score_in_words_is_asked_for_as_a_number(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    said = team.athlete.writes("60.2, pretty flat, 3.5")
    assert "pretty flat" in said[-1].text and {"2", "3", "4"} <= set(said[-1].buttons)
    team.athlete.taps("3")
    assert figures(team) == (60.2, 3, 3.5)


def test_how_the_training_went_is_one_tap_and_one_word_in_a_line(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    for answer in ("60.2", "5", "3.5", "170"):
        team.athlete.writes(answer)
    assert "training" in team.athlete.all_said()[-1].text
    team.athlete.taps("Did less")
    team.athlete.taps(words.all_fine_button())
    assert checkins(team)[-1].training_done == "less"
    team.morning(5)
    team.athlete.writes("60.2 5 3.5 no gym")
    assert checkins(team)[-1].training_done == "none"
    team.athlete.taps("Change an answer")
    team.athlete.taps("Training")
    team.athlete.taps("As planned")
    assert checkins(team)[-1].training_done == "as-planned"


def test_words_beside_the_figures_reach_the_coach(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    team.coach.hears()
    team.athlete.writes("60.2 5 3.5, moving house today")
    assert "moving house today" in text_of(team.coach.hears())


def test_words_of_a_morning_that_is_never_finished_reach_the_coach(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    team.coach.hears()
    team.athlete.writes("60.2 kg, moving house today")
    team.world.later(hours=8)
    assert "moving house today" in text_of(team.coach.hears())


def test_a_figure_told_after_the_check_in_is_asked_about_before_it_changes_anything(
    own_engine: Engine,
) -> None:
    team = a_morning(own_engine)
    team.athlete.writes("60.2 5 2.9")
    said = team.athlete.writes("water 3.4")
    assert "water 2.9 L → water 3.4 L" in text_of(said) and len(decisions(team)) == 2
    team.athlete.taps("Yes")
    assert figures(team) == (60.2, 5, 3.4)
    assert len(decisions(team)) == 3


def test_a_figure_put_right_within_a_sentence_is_asked_about_too(own_engine: Engine) -> None:
    team = a_morning(own_engine)
    team.athlete.writes("60.2 5 2.9")
    said = team.athlete.writes("sorry weight was 61.2 not 60.2")
    assert "60.2 kg → 61.2 kg" in text_of(said)
    team.athlete.taps("Yes")
    assert figures(team) == (61.2, 5, 2.9)


def test_every_question_has_its_row_its_field_its_words_and_its_button() -> None:
    columns = {question.key for question in QUESTIONS if question.stored}
    assert columns - set(CheckInRow.model_fields) == set(), "no column, and not in_note"
    assert columns == set(CheckInRow.model_fields) - NOT_ASKED
    assert columns == {field.name for field in fields(CheckIn)} - NOT_ASKED
    named = {question.key for question in QUESTIONS if question.changeable}
    assert named - set(words.NAMES) == set(), "no name on a button in bot/checkin/words.py"
    about = {"_weight_unit": "kg", "_volume_unit": "l"}
    told = {
        "weight_kg": 60.0, "fullness": 5, "water_l": 3.5, "sharpness": 4, "carb_eaten_g": 170,
        "training_done": "less", "fine": "off", "symptoms": ["dizzy"], "gut": "bad", "sleep_h": 7,
    }  # fmt: skip
    asked = {question.key for question in QUESTIONS} - {"note"}
    assert asked - set(told) == set(), "give an answer to it above"
    for key in asked:
        shown = words.so_far(about | {key: told[key]})
        assert shown, f"{key} is asked and never shown: bot/checkin/words.py has no words for it"


def test_an_answer_that_no_rule_looks_at_joins_the_note_once_in_the_words_it_is_shown_in() -> None:
    row = CheckInRow(
        athlete_id=1, date=dt.date(2027, 5, 1), answered_at=dt.datetime(2027, 5, 1, tzinfo=dt.UTC),
    )  # fmt: skip
    told = {"_weight_unit": "kg", "_volume_unit": "l", "note": "moving house", "sleep_h": 6}
    for _ in range(2):  # and again where another answer is changed
        _write(row, told | {"note": row.note or "moving house"}, in_note=("sleep_h", "gut"))
    assert row.note == "moving house / sleep 6 h"


def test_every_question_reaches_the_engine() -> None:
    row = CheckInRow(
        athlete_id=1, date=dt.date(2027, 5, 1), answered_at=dt.datetime(2027, 5, 1, tzinfo=dt.UTC),
        weight_kg=60.0, fullness=5, water_l=3.5, sharpness=4, carb_eaten_g=170,
        training_done="less", symptoms=["dizzy"], gut="bad", sleep_h=7, note="moving house",
    )  # fmt: skip
    checkin = checkin_of(row)
    empty = CheckIn(date=row.date)
    for question in QUESTIONS:
        if question.stored:
            reached = getattr(checkin, question.key)
            assert reached != getattr(empty, question.key), f"{question.key} is asked and dropped"
