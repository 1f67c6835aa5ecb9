"""For any day what was set and what changed it; taking the last change back; holding at a figure."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta
from inspect import get_annotations

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.people.changes import KINDS, Back, Change
from bot.people.people import get_profile, profile_of
from bot.store.db import transaction
from bot.store.tables.people import HistoryRow, Person
from bot.store.tables.week import LimitsRow
from bot.undo.kinds import WAYS
from bot.week.load import current_event, current_plan, current_week, day_set, limits_row
from engine.values.limits import LIMIT_KEYS
from tests.support.weeks import Team, arrive, in_peak_week
from tests.support.world import Said, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, Thursday 6 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def figures(team: Team) -> dict[date, float]:
    """The week's carbs as they hold now."""
    with team.world.session() as session:
        profile = get_profile(session, team.athlete_id)
        week = current_week(session, profile)
        assert week is not None
        found = {}
        for target in week.plan:
            day = week.date_of(target.days_out)
            row = day_set(session, team.athlete_id, day)
            found[day] = row.carb_g if row else target.carb_g
        return found


def history(team: Team, day: str = "") -> str:
    return text_of(team.coach.presses(f"c:history:2{':' + day if day else ''}"))


def set_by_hand(team: Team, days_out: int, grams: str) -> None:
    team.coach.presses(f"c:hand:2:{days_out}")
    team.coach.writes(grams)


def hold(team: Team, days: str, grams: str) -> list[Said]:
    team.coach.presses("c:hold:2")
    team.coach.writes(days)
    return team.coach.writes(grams)


def test_a_day_tells_what_was_set_what_changed_it_who_when_and_why(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.world.later(minutes=20)
    team.coach.presses("c:hand:2:3")
    team.coach.writes("700")
    team.coach.taps("Yes, 700 g")
    team.coach.writes("Looked flat on video")
    said = history(team, "2027-05-06")
    for part in (
        "History of Mira: Thu 6 May 2027, 3 days out",
        "Set for the day: 700 g (+200 g against the plan), by the coach.",
        "- Thu 6 May, 07:00, Mira: checked in",
        "- Thu 6 May, 07:00, Brimline: adjusted: 525 g for Thu 6 May (planned 500 g). Rule: "
        "flat in the load",
        "- Thu 6 May, 07:20, Ravi: set Thu 6 May by hand to 700 g. Why: Looked flat on video",
    ):
        assert part in said, part


def test_a_change_made_today_for_another_day_is_told_on_both(team: Team) -> None:
    set_by_hand(team, 1, "480")
    line = "- Thu 6 May, 07:00, Ravi: set Sat 8 May by hand to 480 g"
    assert line in history(team, "2027-05-06")
    assert line in history(team, "2027-05-08")
    assert line not in history(team, "2027-05-07")


def test_a_changed_number_of_the_plan_and_of_the_limits_reads_from_and_to(team: Team) -> None:
    team.coach.presses("c:num:2:1:carb_g")
    team.coach.writes("450")
    team.coach.presses("c:lim:2:step_g")
    team.coach.writes("20")
    said = history(team)
    assert "Ravi: set the plan (1 day out: carbs 500 g to 450 g)" in said
    assert "Ravi: set the limits (step" in said
    assert "25 g to 20 g)" in said


def test_messages_are_kept_with_who_and_when(team: Team) -> None:
    team.coach.presses("c:message:2")
    team.coach.writes("Sleep well tonight")
    assert '- Thu 6 May, 07:00, Ravi: wrote to the athlete "Sleep well tonight"' in history(team)


def test_the_coach_can_ask_for_any_day_by_buttons_and_by_date(team: Team) -> None:
    history(team)
    assert "History of Mira: Wed 5 May 2027, 4 days out" in text_of(team.coach.taps("← Wed 5 May"))
    team.coach.taps("Another day")
    assert "History of Mira: Sat 1 May" in text_of(team.coach.writes("1 May 2027"))
    team.coach.presses("c:history-day:2")
    assert "could not read a date" in text_of(team.coach.writes("32 May 2027"))
    assert "History of Mira: Thu 6 May" in history(team, "no-date")


def test_a_day_on_which_much_happened_still_fits_a_message(team: Team) -> None:
    for number in range(30):
        team.coach.presses("c:message:2")
        team.coach.writes(f"{number} " + "word " * 60)
    said = history(team)
    assert len(said) <= 4096
    assert "more that day" in said
    assert '"29 word' in said


def test_every_change_of_figures_by_a_person_has_its_way_back() -> None:
    by_itself = {Change.DECIDED, Change.SIGN_OFF_LAPSED, Change.TAKEN_BACK}
    assert by_itself == {kind for kind in KINDS.values() if kind.back is Back.NEVER}
    assert {*WAYS} == {*Back} - {Back.NEVER, Back.TIMES}


def test_an_entry_keeps_what_held_before_just_where_it_can_be_taken_back() -> None:
    keeps = {kind for kind in KINDS.values() if "before" in get_annotations(kind.detail)}
    assert keeps == {kind for kind in KINDS.values() if kind.back not in (None, Back.NEVER)}


# Taking back


def test_a_day_set_by_hand_and_not_sent_yet_is_taken_back_without_a_word(team: Team) -> None:
    arrive(team)
    before = figures(team)
    set_by_hand(team, 1, "480")
    team.coach.presses("c:undo:2")
    said = text_of([team.coach.all_said()[-1]])
    assert "set Sat 8 May by hand to 480 g" in said
    assert "Nothing was sent about it yet" in said
    team.athlete.hears()
    team.coach.taps("Take it back")
    assert figures(team) == before
    assert team.athlete.hears() == []
    assert not [said for said in team.athlete.all_said() if "480 g" in said.text]


def test_what_has_gone_out_is_corrected(team: Team) -> None:
    before = figures(team)
    set_by_hand(team, 1, "480")
    arrive(team)
    team.athlete.hears()
    team.world.later(minutes=1)
    team.coach.presses("c:undo:2")
    assert "I send a correction" in team.coach.all_said()[-1].text
    team.coach.taps("Take it back")
    assert figures(team) == before
    told = text_of(team.athlete.hears())
    assert "A correction: your coach has taken the last change back." in told
    assert "Saturday 8 May" in told
    assert "500 g" in told
    assert "Ravi: took back: set Sat 8 May by hand to 480 g" in history(team)


def test_after_a_check_in_the_morning_is_decided_anew_without_the_override(team: Team) -> None:
    team.athlete.writes(FLAT)
    arrive(team)
    team.world.later(minutes=5)
    set_by_hand(team, 3, "480")
    arrive(team)
    team.athlete.hears()
    assert figures(team)[date(2027, 5, 6)] == 480
    team.world.later(minutes=5)
    team.coach.presses("c:undo:2")
    team.coach.taps("Take it back")
    assert figures(team)[date(2027, 5, 6)] == 525
    assert "A correction" in text_of(team.athlete.hears())


def test_a_plan_number_is_taken_back_with_the_figures_that_had_followed_it(team: Team) -> None:
    set_by_hand(team, 1, "480")
    team.world.later(minutes=1)
    before = figures(team)
    team.coach.presses("c:num:2:1:carb_g")
    team.coach.writes("450")
    assert figures(team)[date(2027, 5, 8)] == 450
    team.coach.presses("c:undo:2")
    team.coach.taps("Take it back")
    assert figures(team) == before
    with team.world.session() as session:
        event = current_event(session, 2)
        assert event is not None
        plan = current_plan(session, event)
    assert plan is not None
    day = plan.day(1)
    assert day is not None
    assert day.carb_g == 500


def test_limits_are_taken_back_as_a_new_version(team: Team) -> None:
    with team.world.session() as session:
        event = current_event(session, 2)
        assert event is not None
        first = limits_row(session, event)
    assert first is not None
    team.coach.presses("c:lim:2:step_g")
    team.coach.writes("20")
    team.coach.presses("c:undo:2")
    team.coach.taps("Take it back")
    with team.world.session() as session:
        last = limits_row(session, event)
        versions = session.exec(select(LimitsRow.id).order_by("id")).all()
    assert last is not None
    assert last.bounds == {key: first.bounds[key] for key in LIMIT_KEYS}
    assert len(versions) == 3 and (versions[0], versions[-1]) == (first.id, last.id)


def test_what_was_decided_since_is_not_undone_under_it(team: Team) -> None:
    set_by_hand(team, 1, "480")
    team.coach.presses("c:undo:2")
    team.world.later(minutes=1)
    team.athlete.writes(FLAT)
    before = figures(team)
    said = text_of(team.coach.taps("Take it back"))
    assert "too late to undo that" in said
    assert "can't be undone: adjusted: 525 g" in text_of(team.coach.presses("c:undo:2"))
    assert figures(team) == before


def test_a_second_press_takes_nothing_more_back(team: Team) -> None:
    set_by_hand(team, 2, "470")
    team.world.later(minutes=1)
    set_by_hand(team, 1, "480")
    team.coach.presses("c:undo:2")
    asked = team.coach.all_said()[-1]
    team.coach.taps("Take it back", asked)
    team.coach.taps("Take it back", asked)
    assert figures(team)[date(2027, 5, 7)] == 470
    assert figures(team)[date(2027, 5, 8)] == 500


def test_nothing_to_take_back_and_leaving_it_are_said(team: Team) -> None:
    assert "You have no change left" in text_of(team.coach.presses("c:undo:2"))
    set_by_hand(team, 1, "480")
    team.coach.presses("c:undo:2")
    assert "OK, nothing was changed." in text_of(team.coach.taps("No, leave it"))
    assert figures(team)[date(2027, 5, 8)] == 480


# Holding


def test_a_hold_keeps_the_figure_whatever_the_check_ins_say_and_then_ends(team: Team) -> None:
    said = text_of(hold(team, "2", "480"))
    assert "Hold: Mira stays at 480 g until Fri 7 May." in said
    told = text_of(team.athlete.hears())
    assert "Ravi has set a hold: eat 480 g of carbs every day until Fri 7 May" in told
    assert "Carbs 480 g" in text_of(team.athlete.writes(FLAT))
    assert "Hold: 480 g until Fri 7 May." in text_of(team.coach.writes("/roster"))
    team.morning(2)
    assert "Carbs 480 g" in text_of(team.athlete.writes(FLAT))
    team.morning(1)
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    assert figures(team)[date(2027, 5, 8)] != 480
    assert "Hold: 480 g until" not in text_of(team.coach.writes("/roster"))


def test_the_figure_that_stands_is_a_tap_away(team: Team) -> None:
    team.coach.presses("c:hold:2")
    team.coach.taps("To event day (4)")
    said = text_of(team.coach.taps("As now, 500 g"))
    assert "stays at 500 g until Sun 9 May" in said


@pytest.mark.parametrize("typed", ["0", "5", "1.5", "many", "-1", "🏋", "x" * 4096])
def test_what_is_no_number_of_days_is_refused_and_asked_again(team: Team, typed: str) -> None:
    team.coach.presses("c:hold:2")
    said = text_of(team.coach.writes(typed))
    assert "between 1 and 4" in said
    assert "for how many days" in said


def test_a_hold_outside_the_guard_rail_is_refused_and_past_a_limit_wants_a_reason(
    team: Team,
) -> None:
    team.coach.presses("c:hold:2")
    team.coach.writes("1")
    # Burke et al. 2011: 10-12 g/kg a day; 12 g/kg x 61.2 kg = 734.4 g
    assert "734 g is the most" in text_of(team.coach.writes("735"))
    assert "over your own limit" in text_of(team.coach.writes("700"))
    team.coach.taps("Yes, 700 g")
    team.coach.writes("Lost two kilos by travel")
    assert figures(team)[date(2027, 5, 6)] == 700
    assert "Why: Lost two kilos by travel" in text_of(team.coach.presses("c:hold:2"))


def test_held_load_days_together_are_held_against_the_load_total(team: Team) -> None:
    # Planned 3 x 500 g; what the load total leaves is shared among the days that are held.
    with team.world.session() as session:
        event = current_event(session, 2)
        assert event is not None
        row = limits_row(session, event)
    assert row is not None
    most = row.bounds["load_total_g"] / 3
    each = int(most) + 1
    assert each < row.bounds["carb_ceiling_g"]
    said = text_of(hold(team, "3", str(each)))
    assert "over your own limit (" in said
    assert "what it leaves for this day" in said


def test_a_hold_is_ended_by_a_tap_and_the_day_is_decided_anew(team: Team) -> None:
    hold(team, "4", "480")
    team.athlete.writes(FLAT)
    team.athlete.hears()
    team.coach.presses("c:hold:2")
    team.coach.taps("End the hold")
    told = text_of(team.athlete.hears())
    assert "ended the hold" in told
    assert figures(team)[date(2027, 5, 6)] == 525
    assert figures(team)[date(2027, 5, 7)] == 500
    assert "There is no hold" in text_of(team.coach.presses("c:hold-end:2"))


def test_a_hold_can_be_taken_back(team: Team) -> None:
    before = figures(team)
    hold(team, "3", "480")
    team.coach.presses("c:undo:2")
    team.coach.taps("Take it back")
    assert figures(team) == before
    assert "Hold: 480 g" not in text_of(team.coach.writes("/roster"))


def test_a_frozen_athlete_is_not_held(team: Team) -> None:
    team.coach.presses("c:freeze:2")
    assert "frozen" in text_of(team.coach.presses("c:hold:2"))


def test_before_the_week_begins_a_hold_says_from_when_it_can_be(own_engine: Engine) -> None:
    team = in_peak_week(own_engine)  # eight days out; event, plan and limits are set
    said = text_of(team.coach.presses("c:hold:2"))
    assert said == "You can hold from Sun 2 May, when the week starts."


def test_on_ones_own_hold_and_taking_back_say_you(team: Team) -> None:
    with transaction(team.world.engine) as session:
        profile = profile_of(session, team.athlete_id)
        person = session.get_one(Person, team.athlete_id)
        assert profile is not None
        profile.coach_id, person.is_coach = team.athlete_id, True
        session.add(profile)
        session.add(person)
    mira = team.athlete
    mira.presses("c:hold:2")
    mira.writes("2")
    said = text_of(mira.writes("480"))
    assert "Hold: you stay at 480 g until Fri 7 May." in said
    assert "You hold this figure." in said
    assert "Your coach" not in said
    mira.presses("c:undo:2")
    said = text_of(mira.taps("Take it back"))
    assert "Undone" in said
    assert "correction" not in said


def test_history_rows_say_who_even_where_the_bot_did_it(team: Team) -> None:
    team.athlete.writes(FLAT)
    with team.world.session() as session:
        rows = session.exec(select(HistoryRow)).all()
    assert {row.by_id for row in rows if row.what == "decided"} == {None}
    assert all(row.at <= team.world.now + timedelta(0) for row in rows)
