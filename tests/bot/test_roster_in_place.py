"""The roster as one message that stays true: order, filters, pages, and edits in place."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta

import pytest
from sqlalchemy import event
from sqlmodel import select

from bot.coach.roster import roster
from bot.core.chat.outbox import Topic, on
from bot.store.db import transaction
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.traffic import OutboxRow, TopicKind
from bot.store.tables.week import AlertRow, EventRow, LimitsRow, PlanRow
from tests.support.many import Alike, many_athletes
from tests.support.typed import typed
from tests.support.weeks import Team, arrive
from tests.support.world import Said, Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def add(team: Team, count: int, *, answered: bool = True, name: str = "Athlete") -> list[int]:
    with transaction(team.world.engine) as session:
        return many_athletes(
            session,
            1,
            count,
            team.world.now,
            Alike(answered=answered, zones=("Europe/London",), name=name),
        )


def edits(messages: list[Said]) -> list[Said]:
    return [said for said in messages if said.method == "editMessageText"]


def names(said: str) -> list[str]:
    return [line.split(",")[0] for line in said.split("\n\n")[1:-1]]


def test_who_needs_the_coach_comes_first_then_whoever_is_nearest_the_stage(team: Team) -> None:
    ids = add(team, 8)
    with transaction(team.world.engine) as session:
        for athlete_id, level in ((ids[6], "warning"), (ids[5], "caution")):
            session.add(
                AlertRow(
                    athlete_id=athlete_id, coach_id=1, flag="pulse-high", level=level,
                    date=team.world.now.date(), opened_at=team.world.now,
                )
            )  # fmt: skip
    team.morning(2)
    team.athlete.writes(FLAT)
    said = text_of(team.coach.writes("/roster"))
    # At seven the others have not answered this second morning; nobody has missed it yet.
    assert names(said)[:3] == ["Athlete 6", "Athlete 5", "Mira"]
    team.morning(2, hour=10, minute=30)
    said = text_of(team.coach.writes("/roster"))
    missed = [line for line in said.split("\n\n") if "Missed the check-in" in line]
    assert [line.splitlines()[0].split(", ")[1] for line in missed][:3] == [
        "event day", "1 day out", "2 days out",
    ]  # fmt: skip


def test_a_check_in_counts_as_missed_from_the_hour_at_which_the_coach_is_told(team: Team) -> None:
    team.morning(3, hour=9, minute=59)
    assert "Has not checked in yet." in text_of(team.coach.writes("/roster"))
    team.morning(3, hour=10)
    assert "Missed the check-in; on plan." in text_of(team.coach.writes("/roster"))


def test_after_the_show_nobody_needs_the_coach_until_the_next_event_is_set(team: Team) -> None:
    team.morning(-1)  # the week is closed
    said = text_of(team.coach.writes("/roster"))
    assert "Mira, over. The event is over." in said
    assert "nobody needs you" in said


def test_who_was_set_up_too_late_to_be_asked_today_is_not_waited_for(team: Team) -> None:
    add(team, 1, answered=False)
    with transaction(team.world.engine) as session:
        for row in (*session.exec(select(PlanRow)), *session.exec(select(LimitsRow))):
            row.set_at = datetime(2027, 5, 6, 9, 30, tzinfo=UTC)  # half past ten in London
            session.add(row)
    team.morning(3, hour=9, minute=45)
    assert "Has not checked in yet." in text_of(team.coach.writes("/roster"))
    with transaction(team.world.engine) as session:
        for limits in session.exec(select(LimitsRow)):
            limits.set_at = datetime(2027, 5, 6, 10, 30, tzinfo=UTC)  # past the cut-off
            session.add(limits)
    team.morning(3, hour=10, minute=45)
    assert "Has not checked in yet." not in text_of(team.coach.writes("/roster"))


def test_filters_show_who_needs_the_coach_who_loads_and_whose_day_is_near(team: Team) -> None:
    ids = add(team, 10)
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, ids[9])
        profile.status = AthleteStatus.DOCTOR_FIRST
        trial = session.exec(select(EventRow).where(EventRow.athlete_id == ids[1])).one()
        trial.kind = "trial"
        session.add(profile)
        session.add(trial)
    (first,) = team.coach.writes("/roster")
    assert [label for label in first.buttons if label.split()[-1].isdigit()][-4:] == [
        "✓ Needs me 1", "All 11", "Loading 4", "This week 9",
    ]  # fmt: skip
    assert names(first.text)[0] == "Athlete 9"
    assert "11 athletes, 1 needs you" in first.text
    (loading,) = team.coach.taps("Loading 4")
    assert sorted(names(loading.text)) == ["Athlete 1", "Athlete 2", "Athlete 3", "Mira"]
    assert "Athlete 1, 1 day out (trial): " in loading.text
    (week,) = team.coach.taps("This week 9")
    assert "Athlete 8" not in week.text


def test_a_filter_that_matches_nobody_says_so(team: Team) -> None:
    team.morning(-1)
    team.coach.writes("/roster")
    assert "Nobody is loading" in text_of(team.coach.taps("Loading 0"))


def test_two_hundred_athletes_come_in_pages_that_each_fit_a_message(team: Team) -> None:
    # The longest first name that Telegram lets people have, in characters of two units each.
    add(team, 200, name="🏋" * 60)
    team.coach.writes("/roster")
    (page,) = team.coach.taps("All 201")
    listed = 0
    while True:
        assert len(page.text.encode("utf-16-le")) // 2 <= 4096
        assert "…" not in page.text[-60:]
        rows = page.payload["reply_markup"]["inline_keyboard"]
        openers = [b for row in rows for b in row if b["callback_data"].startswith("c:card:")]
        assert len(openers) == len(names(page.text))
        listed += len(names(page.text))
        if "Next page" not in page.buttons:
            break
        (page,) = team.coach.taps("Next page", page)
    assert listed == 201


def test_the_roster_reads_the_database_as_often_for_200_athletes_as_for_20(team: Team) -> None:
    counts = []
    for more in (20, 180):
        add_more(team, more)
        statements: list[str] = []

        def note(_c: object, _k: object, statement: str, *_: object) -> None:
            statements.append(statement)  # noqa: B023 - used within this turn of the loop only

        with transaction(team.world.engine) as session:
            coach = session.get_one(Person, 1)
            event.listen(team.world.engine, "before_cursor_execute", note)
            roster.show_roster(typed(session, team.world.context, coach))
            event.remove(team.world.engine, "before_cursor_execute", note)
        counts.append(len(statements))
    assert counts[1] <= counts[0] < 25


def add_more(team: Team, count: int) -> None:
    with transaction(team.world.engine) as session:
        taken = session.exec(select(Person)).all()
        many_athletes(
            session,
            1,
            count,
            team.world.now,
            Alike(zones=("Europe/London",), first_chat=9000 + len(taken)),
        )


def test_what_happens_shows_in_the_open_roster_without_a_new_message(team: Team) -> None:
    team.coach.writes("/roster")
    arrive(team)
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    assert team.coach.hears() == []
    team.world.later(seconds=30)
    (told,) = team.coach.hears()
    assert told.method == "editMessageText"
    assert "Mira, 3 days out: 61.0 kg, fullness 4" in told.text
    assert "Hold: 500 g" in told.text or "on plan: 500 g" in told.text


def test_a_page_and_filter_stay_as_they_were_when_the_roster_is_brought_up_to_date(
    team: Team,
) -> None:
    add(team, 3)
    team.coach.writes("/roster")
    team.coach.taps("Loading 3")
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    team.world.later(seconds=30)
    (told,) = edits(team.coach.hears())
    assert "✓ Loading 3" in told.buttons


def test_a_card_that_took_the_rosters_place_is_left_alone(team: Team) -> None:
    (said,) = team.coach.writes("/roster")
    arrive(team)
    team.coach.taps("Mira", said)
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    team.world.later(seconds=30)
    assert edits(team.coach.hears()) == []
    back = team.coach.presses("c:roster:0", said.outbox_id)
    assert "Roster: 1 athlete" in text_of(back)
    team.athlete.writes("61.0 5 3.5 5 on target fine")
    team.world.later(seconds=30)
    assert "fullness 5" in text_of(edits(team.coach.hears()))


def test_only_the_newest_roster_is_kept_up_to_date(team: Team) -> None:
    team.coach.writes("/roster")
    arrive(team)
    (second,) = team.coach.writes("/roster")
    arrive(team)
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    team.world.later(seconds=30)
    team.coach.hears()
    with team.world.session() as session:
        edited = session.exec(
            select(OutboxRow.edits_outbox_id).where(*on(Topic(TopicKind.ROSTER, 1)))
        ).all()
    assert edited == [second.outbox_id]


def test_refreshing_by_hand_answers_the_tap(team: Team) -> None:
    team.coach.writes("/roster")
    said = text_of(team.coach.taps("Refresh"))
    assert "As of 06:00 (UTC)" in said
    assert team.coach.answers_to_taps()[-1] == "Up to date."


def test_twenty_mornings_at_once_are_one_edit_of_the_roster(team: Team) -> None:
    ids = add(team, 20, answered=False)
    team.coach.writes("/roster")
    arrive(team)
    team.world.now += timedelta(minutes=35)  # the prompts of these athletes are not on the agenda
    for someone in _as_people(team, ids):
        someone.writes("61.0 4 3.5 5 on target fine")
    team.coach.hears()
    team.world.later(seconds=30)
    told = team.coach.hears()
    assert [said.method for said in told if "Roster" in said.text] == ["editMessageText"]
    assert "Athlete 19" in told[-1].text or "page 1 of 2" in told[-1].text


def _as_people(team: Team, ids: list[int]) -> list[Someone]:
    with team.world.session() as session:
        people = [session.get_one(Person, one) for one in ids]
    return [Someone(team.world, one.chat_id, one.first_name) for one in people]


def test_days_of_the_clock_change_do_not_move_the_hour_at_which_it_counts_as_missed(
    team: Team,
) -> None:
    # Europe/London leaves summer time on 31 October 2027: 11:00 there is 11:00 UTC from then on.
    assert date(2027, 10, 31).weekday() == 6
    with transaction(team.world.engine) as session:
        row = session.exec(select(EventRow)).one()
        row.day = date(2027, 11, 1)
        session.add(row)
    team.world.now = datetime(2027, 10, 31, 10, 59, tzinfo=UTC)
    assert "Has not checked in yet." in text_of(team.coach.writes("/roster"))
    team.world.now = datetime(2027, 10, 31, 11, 0, tzinfo=UTC)
    assert "Missed the check-in" in text_of(team.coach.writes("/roster"))
