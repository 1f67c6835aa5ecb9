"""The roster, an athlete's card, messages across, and whose athlete is whose."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.core.turn import Kind
from bot.features import ON_CARD
from bot.store.db import transaction
from bot.store.tables.people import AthleteProfile, AthleteStatus, HistoryRow, Person
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import DaySetRow, EventRow, LimitsRow, PlanRow
from tests.support.weeks import ONBOARDING_ANSWERS, Team, onboarded
from tests.support.world import Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Everything is set; three days out, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def another(team: Team, user_id: int, name: str, **profile: Any) -> Someone:
    """One more athlete of Ravi's, in the state given."""
    with transaction(team.world.engine) as session:
        person = Person(
            telegram_user_id=user_id, chat_id=user_id, first_name=name, created_at=team.world.now
        )
        session.add(person)
        session.flush()
        session.add(
            AthleteProfile(
                person_id=person.id or 0, coach_id=1, created_at=team.world.now,
                **{"status": AthleteStatus.ACTIVE, "zone": "Europe/London", **profile},
            )
        )  # fmt: skip
    return Someone(team.world, user_id, name)


def other_coach(team: Team) -> Someone:
    with transaction(team.world.engine) as session:
        session.add(
            Person(
                telegram_user_id=150, chat_id=150, first_name="Noa", is_coach=True,
                created_at=team.world.now,
            )
        )  # fmt: skip
    return Someone(team.world, 150, "Noa")


def kept(team: Team) -> list[object]:
    """All that a button could have changed."""
    tables = (AthleteProfile, EventRow, PlanRow, LimitsRow, DaySetRow, HistoryRow)
    with team.world.session() as session:
        return [row.model_dump() for table in tables for row in session.exec(select(table))]


def test_the_roster_shows_each_athletes_morning_in_their_units_and_what_came_of_it(
    team: Team,
) -> None:
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, team.athlete_id)
        profile.weight_unit, profile.volume_unit = "lb", "ml"
        session.add(profile)
    team.athlete.writes("134.5 lb 1 3500 ml 5 on target fine")
    said = text_of(team.coach.writes("/roster"))
    assert "Mira, 3 days out: 134.5 lb, fullness 1, sharpness 5, water 3500 ml" in said
    assert "adjusted to 525 g (+25 g) for Thu 6 May" in said


def test_the_roster_has_first_who_needs_the_coach_first(team: Team) -> None:
    another(team, 201, "Ana", status=AthleteStatus.PAUSED)
    another(team, 202, "Bo", frozen_at=team.world.now)
    another(team, 203, "Cleo", status=AthleteStatus.DOCTOR_FIRST)
    eli = another(team, 204, "Eli")
    another(team, 205, "Finn")
    eli.writes("I have chest pain")
    said = text_of(team.coach.writes("/roster"))
    names = ["Eli", "Bo", "Cleo", "Finn", "Mira", "Ana"]
    assert sorted(names, key=said.index) == names
    for state in (
        "open warning",
        "Frozen",
        "doctor's clearance",
        "set the event",
        "not checked in",
    ):
        assert state in said, state


def test_a_waiting_change_is_told_with_its_deadline(team: Team) -> None:
    team.morning(2)
    team.athlete.writes(FLAT)
    said = text_of(team.coach.writes("/roster"))
    assert "proposed 550 g (+50 g) for Fri 7 May" in said
    assert "approve by 09:00 (Mira's time)" in said


def test_a_long_roster_has_pages_and_fits_a_message(team: Team) -> None:
    for number in range(30):
        another(team, 300 + number, f"A{number:02d}")
    team.coach.writes("/roster")
    (first,) = team.coach.taps("All 31")
    assert "31 athletes, page 1 of 2" in first.text
    assert len(first.text) < 4096
    (second,) = team.coach.taps("Next page")
    assert "page 2 of 2" in second.text
    assert "page 1 of 2" in text_of(team.coach.taps("Earlier page"))
    assert "page 2 of 2" in text_of(team.coach.presses("c:roster:99:all"))


def test_a_coach_without_athletes_is_told_how_to_invite_one(team: Team) -> None:
    assert "/invite" in text_of(other_coach(team).writes("/roster"))


def test_the_card_shows_the_day_and_everything_that_can_be_done(team: Team) -> None:
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    team.coach.writes("/roster")
    (card,) = team.coach.taps("Mira")
    for part in (
        "Show, Sun 9 May 2027 (Europe/London), 3 days out",
        "Today, Thu 6 May: 500 g carbs, water 3.5 L",
        "This morning: 61.0 kg, fullness 4, sharpness 5, water 3.5 L",
        "On plan: 500 g for Thu 6 May",
        "Check-in 06:30 (Europe/London)",
    ):
        assert part in card.text
    pages = [card.buttons]
    for page in ("Plan …", "Event …", "Person …"):
        (opened,) = team.coach.taps(page)
        pages.append(opened.buttons)
        team.coach.presses("c:card:2")
    views = {data.split(":")[1] for page in pages for data in page.values()}
    assert views >= {
        "event", "plan", "limits", "why", "answers", "hand", "freeze", "tomorrow", "message",
    }  # fmt: skip
    assert views - {"roster"} <= set(ON_CARD)


def test_why_shows_the_trace_with_its_sources_and_the_first_answers_are_there(team: Team) -> None:
    assert "Nothing is decided for Mira yet" in text_of(team.coach.presses("c:why:2"))
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    assert "Based on" in text_of(team.coach.presses("c:why:2"))
    assert "nothing to act on" in text_of(team.coach.presses("c:answers:2"))


def test_another_coachs_button_an_athletes_and_a_strangers_change_and_show_nothing(
    team: Team,
) -> None:
    noa, stranger = other_coach(team), Someone(team.world, 190, "Kit")
    before = kept(team)
    for view in (*ON_CARD, "roster-all", ""):
        for person in (noa, team.athlete, stranger):
            said = text_of(person.presses(f"c:{view}:{team.athlete_id}:3:carb_g"))
            assert "Mira" not in said, view
            assert "500" not in said, view
        assert kept(team) == before, view
        assert "not on your roster" in noa.answers_to_taps()[-1], view


def test_a_question_left_open_takes_no_answer_once_the_athlete_has_gone(team: Team) -> None:
    team.coach.presses("c:num:2:2:carb_g")
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, team.athlete_id)
        profile.coach_id = 2
        session.add(profile)
    before = kept(team)
    team.coach.writes("510")
    assert kept(team) == before


@pytest.mark.parametrize("command", ["/roster", "/invite", "/contact", "/selfcoach", "/alerts"])
def test_a_coachs_commands_do_not_exist_for_an_athlete(team: Team, command: str) -> None:
    assert "don't know that command" in text_of(team.athlete.writes(command))


def test_freezing_by_hand_is_told_and_holds_the_next_decision_until_lifted(team: Team) -> None:
    team.coach.presses("c:freeze:2")
    assert "frozen the adjusting" in text_of(team.athlete.hears())
    said = text_of(team.athlete.writes(FLAT))
    assert "Carbs 500 g (as planned)" in said
    team.coach.taps("Lift the freeze")
    team.coach.taps("Lift it")
    assert "Carbs 525 g" in text_of(team.athlete.hears())


def test_a_doctors_word_is_noted_on_a_second_tap_and_starts_the_mornings(
    own_engine: Engine,
) -> None:
    answers = list(ONBOARDING_ANSWERS)
    answers[3] = "Diabetes or blood sugar"
    team = onboarded(own_engine, tuple(answers))
    card = team.coach.presses("c:card:2")[-1]
    assert next(iter(card.buttons)) == "Doctor's clearance received"
    team.coach.taps("Doctor's clearance received")
    team.coach.taps("Not yet")
    assert team.profile().status == AthleteStatus.DOCTOR_FIRST
    team.coach.taps("Doctor's clearance received", card)
    team.coach.taps("Yes, a doctor has")
    profile = team.profile()
    assert (profile.status, profile.cleared_at) == (AthleteStatus.ACTIVE, team.world.now)
    assert "a doctor has cleared you" in text_of(team.athlete.hears())
    with team.world.session() as session:
        row = session.exec(select(HistoryRow).where(HistoryRow.what == "doctor's word noted")).one()
    assert row.by_id == 1
    assert "No doctor's clearance is needed" in text_of(team.coach.presses("c:doctor:2"))


def test_a_morning_can_always_set_the_day_after(team: Team) -> None:
    said = text_of(team.coach.presses("c:tomorrow:2"))
    assert "sets tomorrow's carbs" in said
    assert "Friday 7 May" in text_of(team.athlete.writes(FLAT))
    assert "sets today's carbs" in text_of(team.coach.presses("c:tomorrow:2"))


def test_a_message_goes_across_with_its_senders_name_and_can_be_answered(team: Team) -> None:
    team.coach.presses("c:message:2")
    assert "Sent to Mira" in text_of(team.coach.writes("Sleep well. Great work today."))
    told = text_of(team.athlete.hears())
    assert "From your coach Ravi:\nSleep well. Great work today." in told
    team.athlete.taps("Reply")
    assert "Sent to Ravi" in text_of(team.athlete.writes("Thank you!"))
    assert "From Mira:\nThank you!" in text_of(team.coach.hears())


@pytest.mark.parametrize(
    ("typed", "answered"),
    [
        ("   ", "empty"),
        ("x" * 4096, "4,096 characters"),
        ("take some furosemide tonight", "don't pass on anything about drugs"),
    ],
)
def test_a_message_that_cannot_go_is_refused_and_asked_again(
    team: Team, typed: str, answered: str
) -> None:
    team.coach.presses("c:message:2")
    said = text_of(team.coach.writes(typed))
    assert answered in said
    assert "What shall I tell Mira?" in said
    assert team.athlete.hears() == []


def test_the_coach_hears_once_that_an_athlete_has_stopped_the_bot(team: Team) -> None:
    team.athlete.writes("", kind=Kind.BLOCKED)
    assert "I can't reach Mira any more" in text_of(team.coach.hears())
    team.athlete.writes("", kind=Kind.BLOCKED)
    assert team.coach.hears() == []
    assert "Can't be reached" in text_of(team.coach.writes("/roster"))
    team.coach.presses("c:message:2")
    assert "may not arrive" in text_of(team.coach.writes("Are you there?"))
    team.athlete.writes("/today")
    assert "Can't be reached" not in text_of(team.coach.writes("/roster"))


def test_menus_are_set_once_and_only_when_roles_change(team: Team) -> None:
    team.coach.writes("/roster")
    team.coach.writes("/roster")
    with team.world.session() as session:
        menus = session.exec(
            select(OutboxRow).where(OutboxRow.method == "setMyCommands", OutboxRow.chat_id == 101)
        ).all()
    assert len(menus) == 1


def test_buttons_fit_telegrams_64_bytes_for_large_ids(team: Team) -> None:
    for view in ON_CARD:
        assert len(f"c:{view}:{2**31}:apply_without_asking_g".encode()) <= 64
