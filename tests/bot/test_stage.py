"""`/stage` in chat: the timetable for both, its reminders exactly once, and what moves it."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest
from sqlmodel import col, select

from bot.core.turn import Turn
from bot.dialogue.flow import InvalidAnswer
from bot.event.stage import day as stage_reminders
from bot.event.stage.flow import LOOK, STAGE, stage_day_of
from bot.store.db import transaction
from bot.store.tables.event import StageRow
from bot.store.tables.people import HistoryRow
from bot.store.tables.traffic import AgendaRow, OutboxRow, Urgency
from engine.written.stage_times import parse_delay
from tests.support.weeks import Team, gone_on, replacing
from tests.support.world import Said, text_of

REMINDERS = (
    "It is the day", "A meal now", "Time to leave", "Registration now", "Tan now",
    "From here sips", "The last meal before the stage", "Quick sugar now", "Pump-up now",
    "On stage now", "Done. Eat something ordinary",
)  # fmt: skip


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The day before, at noon in London (an hour ahead of UTC). The show is on Sunday 9 May."""
    return team_at(datetime(2027, 5, 8, 11, 0, tzinfo=UTC))


def lay_out(team: Team, stage: str = "15:00", *, second: str = "", by: str = "coach") -> list[Said]:
    who = team.coach if by == "coach" else team.athlete
    who.presses(f"st:set:{team.athlete_id}")
    who.writes(stage)
    if second:
        who.writes(second)
    else:
        who.taps("One class only")
    who.writes("40")
    who.writes("10:00")
    return who.writes("10:30")


def noon(team: Team, hour: int, minute: int = 0) -> datetime:
    """A time of the day by London's clocks."""
    return datetime(2027, 5, 9, hour, minute, tzinfo=UTC) - timedelta(hours=1)


def reminders(said: list[Said]) -> list[str]:
    return [mark for message in said for mark in REMINDERS if mark in message.text]


def test_the_coach_lays_the_day_out_and_both_see_it(team: Team) -> None:
    assert "not set yet" in text_of(team.coach.writes("/stage"))
    seen = text_of(lay_out(team))
    assert "Mira's day, backwards from the stage" in seen
    for line in (
        "06:30  up; drink as usual",
        "07:00  meal, familiar food",
        "09:20  leave",
        "10:00  registration",
        "10:30  tan",
        "12:00  from here sips, about 0.5 L",
        "13:00  look check",
        "13:30  last meal before the stage",
        "14:15  quick sugar",
        "14:30  pump-up, about 20 min at half effort",
        "15:00  on stage",
        "15:15  eat, drink to thirst",
    ):
        assert line in seen, line
    told = text_of(team.athlete.hears())
    assert "Ravi has set the times of your day" in told
    assert "15:00  on stage" in told
    assert "15:00  on stage" in text_of(team.athlete.writes("/stage"))


def test_the_athlete_may_lay_it_out_too_and_the_coach_is_told(team: Team) -> None:
    lay_out(team, by="athlete")
    told = text_of(team.coach.hears())
    assert "Mira has set the times of the day" in told
    assert "Mira's day" in told


def test_every_reminder_comes_once_and_in_order(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.athlete.hears()
    team.world.until(noon(team, 18))
    heard = reminders(team.athlete.hears())
    assert heard[0] == "It is the day"
    assert heard[-1] == "Done. Eat something ordinary"
    once = [mark for mark in heard if mark != "A meal now"]
    assert len(once) == len(set(once)) == len(REMINDERS) - 1
    assert heard.count("A meal now") == 3  # 07:00, 09:10 before leaving, 11:20
    team.world.until(noon(team, 23))
    assert reminders(team.athlete.hears()) == []
    with team.world.session() as session:
        rows = session.exec(select(OutboxRow).where(col(OutboxRow.dedupe).startswith("stage:")))
        assert {row.urgency for row in rows} == {Urgency.STAGE_DAY}  # mornings do not hold it up


def test_with_a_warning_open_nobody_is_sent_to_pump_up(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 13, 40))
    team.athlete.writes("I fainted")
    seen = text_of(team.athlete.writes("/stage"))
    assert "no cardio until Ravi lifts that" in seen
    assert "pump-up" not in seen and "15:00  on stage" in seen
    assert "pump-up" not in text_of(team.coach.writes("/stage"))
    team.world.until(noon(team, 15, 30))
    said = team.athlete.hears()
    assert "Pump-up now" not in text_of(said) and "Quick sugar now" in text_of(said)


def test_a_duty_done_twice_says_nothing_twice(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 7, 5))
    with team.world.session() as session:
        row = session.exec(
            select(AgendaRow).where(AgendaRow.kind == "stage:wake", AgendaRow.status == "done")
        ).one()
    with transaction(team.world.engine) as session:
        stage_reminders.remind(Turn(session, team.world.context), row)
    heard = [m for m in team.athlete.all_said() if "It is the day" in m.text]
    assert len(heard) == 1


def test_a_delay_whose_unit_is_left_open_is_asked_about(team: Team) -> None:
    lay_out(team)
    team.world.until(noon(team, 13, 10))
    team.coach.hears()
    for typed in ("late 1.5", "running 1.5 late"):
        said = text_of(team.athlete.writes(typed))
        assert said == "By how many minutes? Such as: late 45, or: early 20."
    assert team.coach.hears() == []


def test_late_45_moves_the_rest_for_both_and_nothing_comes_twice(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 13, 10))
    team.athlete.hears()
    said = text_of(team.athlete.writes("late 45"))
    assert "Moved 45 min later. The rest of the day now" in said
    assert "15:45  on stage" in said
    assert "14:15  last meal" in said
    assert "registration" not in said
    assert "✓ 10:00  registration" in text_of(team.athlete.writes("/stage"))
    assert "Moved 45 min later (Mira said so)" in text_of(team.coach.hears())
    team.athlete.hears()
    team.world.until(noon(team, 18))
    heard = reminders(team.athlete.hears())
    assert heard == [
        "The last meal before the stage", "Quick sugar now", "Pump-up now", "On stage now",
        "Done. Eat something ordinary",
    ]  # fmt: skip


def test_an_hour_behind_said_by_the_coach_in_plain_words(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 12, 30))
    said = text_of(team.coach.writes("They're running an hour behind"))
    assert "16:00  on stage" in said
    assert "(Ravi said so)" in text_of(team.athlete.hears())


def test_an_early_call_by_button_puts_nothing_in_the_past(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 14))
    team.athlete.hears()
    team.athlete.writes("/stage")
    said = text_of(team.athlete.taps("30 min early"))
    assert "14:30  on stage" in said
    ahead = re.findall(r"^(\d\d:\d\d)", said, re.MULTILINE)
    assert all(at >= "14:00" for at in ahead)
    team.world.until(noon(team, 18))
    heard = reminders(team.athlete.hears())
    assert heard == [
        "Quick sugar now", "Pump-up now", "On stage now", "Done. Eat something ordinary",
    ]  # fmt: skip


def test_called_off_no_reminder_comes_and_the_other_is_told(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 9))
    team.athlete.hears()
    team.coach.writes("/stage")
    assert "really off" in text_of(team.coach.taps("Cancelled"))
    team.coach.taps("Yes, it is off")
    assert "The stage is off" in text_of(team.athlete.hears())
    team.world.until(noon(team, 20))
    assert reminders(team.athlete.hears()) == []


def test_called_off_by_mistake_it_can_be_set_again(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.coach.writes("/stage")
    team.coach.taps("Cancelled")
    assert "15:00  on stage" in text_of(team.coach.taps("No, it stands"))
    team.coach.taps("Cancelled")
    team.coach.taps("Yes, it is off")
    lay_out(team, "16:00")
    team.athlete.hears()
    team.world.until(noon(team, 19))
    heard = reminders(team.athlete.hears())
    assert heard.count("On stage now") == 1


def test_the_look_check_ends_in_one_small_choice_that_both_read(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 13, 1))
    assert "Look check. How full" in team.athlete.hears()[-1].text
    team.athlete.taps("6")
    team.athlete.taps("5")
    said = text_of(team.athlete.taps("Fine"))
    assert "A small top-up: 25 g of quick carbs" in said
    told = text_of(team.coach.hears())
    assert "Mira's look check: fullness 6, sharpness 5, stomach fine. A small top-up: 25 g" in told


@pytest.mark.parametrize(
    ("full", "sharp", "gut", "why"),
    [
        ("9", "5", "Fine", "full; leave it"),
        ("6", "2", "Fine", "softened only soften more"),
        ("6", "5", "Bad", "unsettled gut"),
    ],
)
def test_no_top_up_where_it_can_only_harm(
    team: Team, full: str, sharp: str, gut: str, why: str
) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 13, 1))
    team.athlete.hears()
    team.athlete.taps(full)
    team.athlete.taps(sharp)
    said = text_of(team.athlete.taps(gut))
    assert "A small top-up" not in said
    assert why in said


def look_past_what_goes_out_alone(team: Team) -> None:
    team.coach.presses(f"c:lim:{team.athlete_id}:apply_without_asking_g")
    team.coach.writes("10")
    lay_out(team)
    team.world.until(noon(team, 13, 1))
    team.athlete.hears()
    team.coach.hears()
    team.athlete.taps("6")
    team.athlete.taps("5")
    assert "I've asked Ravi about a small top-up" in text_of(team.athlete.taps("Fine"))


def test_a_top_up_past_what_goes_out_alone_waits_for_the_coachs_word(team: Team) -> None:
    team = gone_on(team, look_past_what_goes_out_alone)
    asked = team.coach.hears()[-1]
    assert "Approve it?" in asked.text
    team.coach.taps("Top up 25 g", asked)
    assert "Ravi says yes: 25 g of quick carbs" in text_of(team.athlete.hears())
    team.coach.taps("No top-up", asked)
    assert "settled already" in team.coach.answers_to_taps()[-1]
    assert team.athlete.hears() == []


def test_a_top_up_allowed_too_late_is_not_passed_on(team: Team) -> None:
    team = gone_on(team, look_past_what_goes_out_alone)
    asked = team.coach.hears()[-1]
    team.world.until(noon(team, 14))
    team.athlete.hears()
    team.coach.taps("Top up 25 g", asked)
    assert "too close to the stage" in team.coach.answers_to_taps()[-1]
    assert team.athlete.hears() == []


def test_an_athlete_cannot_allow_their_own_top_up(team: Team) -> None:
    team = gone_on(team, look_past_what_goes_out_alone)
    asked = team.coach.hears()[-1]
    team.athlete.presses(asked.buttons["Top up 25 g"])
    with team.world.session() as session:
        assert "top-up" not in [row.what for row in session.exec(select(HistoryRow))]


def test_two_classes_have_a_pump_up_each_and_one_after(team: Team) -> None:
    seen = text_of(lay_out(team, "13:00", second="18:00"))
    assert "13:00  on stage, class 1" in seen
    assert "18:00  on stage, class 2" in seen
    team.athlete.hears()
    team.world.until(noon(team, 21))
    heard = reminders(team.athlete.hears())
    assert heard.count("Pump-up now") == 2
    assert heard.count("Done. Eat something ordinary") == 1


def test_only_the_class_order_gives_an_estimate(team: Team) -> None:
    team.coach.presses(f"st:set:{team.athlete_id}")
    team.coach.taps("Only the class order")
    team.coach.writes("12:00")
    team.coach.writes("9")
    team.coach.taps("15 min")
    team.coach.taps("One class only")
    team.coach.taps("None")
    team.coach.taps("None")
    # the first at 12:00, eight classes of 15 min before the ninth
    assert "14:00  on stage" in text_of(team.coach.taps("None"))


def test_a_stage_after_midnight_is_the_night_after(team: Team) -> None:
    team.coach.presses(f"st:set:{team.athlete_id}")
    team.coach.writes("00:30")
    team.coach.taps("One class only")
    for _ in range(2):
        team.coach.taps("None")
    seen = text_of(team.coach.taps("None"))
    assert "Monday 10 May:\n00:00  pump-up" in seen
    assert seen.index("Monday 10 May") < seen.index("00:30  on stage")
    team.world.until(noon(team, 23, 50))
    assert "01:00  on stage" in text_of(team.athlete.writes("30 min late"))
    team.athlete.hears()
    team.world.until(datetime(2027, 5, 10, 0, 30, tzinfo=UTC))
    assert "On stage now" in reminders(team.athlete.hears())


@pytest.mark.parametrize("nonsense", ["", "abc", "🤷", "25:00", "-1", "x" * 4096])
def test_a_time_that_is_none_is_asked_again(team: Team, nonsense: str) -> None:
    team.coach.presses(f"st:set:{team.athlete_id}")
    assert "at what time on stage?" in text_of(team.coach.writes(nonsense))


def test_times_that_contradict_each_other_are_asked_again(team: Team) -> None:
    team.coach.presses(f"st:set:{team.athlete_id}")
    team.coach.writes("15:00")
    assert "come after the one before" in text_of(team.coach.writes("14:00"))
    team.coach.taps("One class only")
    team.coach.writes("30")
    assert "not before the stage time" in text_of(team.coach.writes("16:00"))


def test_word_of_a_delay_on_another_day_moves_nothing(team: Team) -> None:
    team = gone_on(team, lay_out)
    before = stage_facts(team)
    assert "Moved" not in text_of(team.athlete.writes("late 45"))
    assert "no timetable running" in text_of(team.athlete.writes("/late 45"))
    assert stage_facts(team) == before


def stage_facts(team: Team) -> dict[str, object]:
    with team.world.session() as session:
        return session.exec(select(StageRow)).one().facts


def test_late_as_a_command_asks_by_how_much_where_it_is_not_said(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 12))
    for text in ("/late", "/late soon", "/late 0", "/late 9999"):
        assert "By how many minutes?" in text_of(team.athlete.writes(text)), text
    assert "15:20  on stage" in text_of(team.athlete.writes("/late 20"))


def test_by_how_much_can_be_tapped(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 12))
    (asked,) = team.athlete.writes("/late")
    assert "15:30  on stage" in text_of(team.athlete.taps("30 min late", asked))


@pytest.mark.parametrize(
    "said", ["/early 20", "they called us early, 20 minutes earlier", "my class is 20 min early"]
)
def test_an_early_call_in_plain_words_moves_the_day(team: Team, said: str) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 12))
    team.coach.hears()
    assert "14:40  on stage" in text_of(team.athlete.writes(said))
    assert "14:40  on stage" in text_of(team.coach.hears())


def test_a_moved_day_shows_what_is_ahead_and_the_whole_day_is_a_command_away(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.world.until(noon(team, 12))
    moved = text_of(team.athlete.writes("/late 20"))
    assert "on stage" in moved and "✓" not in moved and "registration" not in moved
    assert "✓ 10:00  registration" in text_of(team.athlete.writes("/stage"))


def test_with_no_day_running_nobody_is_asked_by_how_much(team: Team) -> None:
    assert "no timetable running" in text_of(team.athlete.writes("/late"))


def test_a_stale_reminder_after_the_bot_was_away_is_not_said(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.athlete.hears()
    team.world.now = noon(team, 14, 20)  # nobody was there to do what fell due
    with team.world.session() as session:
        rows = session.exec(
            select(AgendaRow)
            .where(AgendaRow.status == "waiting", col(AgendaRow.kind).startswith("stage:"))
            .where(AgendaRow.due_at <= team.world.now)
            .order_by(col(AgendaRow.due_at))
        ).all()
    assert len(rows) > 5
    team.world.until(noon(team, 14, 20))
    assert reminders(team.athlete.hears()) == ["Quick sugar now"]


def test_a_new_event_leaves_the_old_days_reminders_unsaid(team: Team) -> None:
    team = gone_on(team, lay_out)
    team.coach.presses(f"c:event:{team.athlete_id}")
    team.coach.taps("A show")
    team.coach.writes("16 May")
    replacing(team.coach, team.coach.taps("Same time zone"))
    team.athlete.hears()
    team.world.until(noon(team, 20))
    assert reminders(team.athlete.hears()) == []


@pytest.mark.parametrize(
    "data", ["st", "st:", "st:day:999", "st:late:2:x", "st:top:2:9:25", "st:odd:2", "st:top:2"]
)
def test_an_odd_button_breaks_nothing(team: Team, data: str) -> None:
    team = gone_on(team, lay_out)
    before = stage_facts(team)
    team.coach.presses(data)
    assert stage_facts(team) == before


def test_somebody_elses_day_cannot_be_moved(team: Team) -> None:
    team = gone_on(team, lay_out)
    before = stage_facts(team)
    team.athlete.presses("st:late:1:30")
    assert stage_facts(team) == before


def test_further_classes_and_a_look_are_read_as_people_type_them_in_a_line() -> None:
    laid = {"_day": "2027-05-09", "_zone": "Europe/London", "_wake": "06:30", "stage": "14:00"}
    second, look = STAGE.step("second"), LOOK.step("fullness")
    assert second is not None and look is not None
    assert second.answer("two more, 16:30 and 7 pm", laid) == "16:30 19:00"
    day = stage_day_of(laid | {"second": "16:30 19:00", "travel_min": 0.0})
    assert [f"{stage:%H:%M}" for stage in day.stages] == ["13:00", "15:30", "18:00"]  # UTC
    with pytest.raises(InvalidAnswer, match="after the one before"):
        second.answer("19:00 16:30", laid)
    assert look.answer("7 4 fine", {}) == {"fullness": 7, "sharpness": 4, "gut": "fine"}
    assert look.answer("7", {}) == {"fullness": 7}
    way = STAGE.step("travel_min")
    assert way is not None
    spoken = {text: way.answer(text, {}) for text in ("half an hour", "45", "45 min", "1.5 h")}
    assert list(spoken.values()) == [30, 45, 45, 90]
    tan = STAGE.step("tan")
    assert tan is not None and tan.answer("no idea", laid) is None


@pytest.mark.parametrize(
    ("told", "language", "minutes"),
    [
        ("they say we run an hour late", "en", 60), ("ok now 15 minutes behind", "en", 15),
        ("now it's 20 min early again, they just called my class", "en", -20),
        ("die sagen wir sind eine Stunde später", "de", 60), ("es heißt 30 min später", "de", 30),
        ("they said my weight is 20 late", "en", None),
    ],
)  # fmt: skip
def test_a_delay_is_one_whoever_says_so(told: str, language: str, minutes: int | None) -> None:
    assert parse_delay(told, language) == minutes


def test_a_delay_with_other_news_moves_the_day_and_the_rest_is_passed_on(team: Team) -> None:
    lay_out(team)
    team.world.until(noon(team, 12, 10))
    team.coach.hears()
    said = text_of(team.athlete.writes("running 40 minutes late, and mum says hi"))
    assert "15:40  on stage" in said and "I've passed that on to Ravi" in said
    told = text_of(team.coach.hears())
    assert "15:40  on stage" in told and "mum says hi" in told and "running 40" not in told


def test_who_is_late_and_dizzy_has_both_seen_to(team: Team) -> None:
    lay_out(team)
    team.world.until(noon(team, 12, 10))
    said = text_of(team.athlete.writes("we're half an hour late and I feel dizzy"))
    assert "15:30  on stage" in said and "Sit down until it passes" in said
