"""Changes that wait for the coach's word: approved, replaced by another figure, kept, or lapsed."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime

import pytest
from sqlmodel import col, select

from bot.core.turn import Kind, Turn
from bot.decision.signoff import signoff
from bot.store.db import transaction
from bot.store.tables.coach import CoachSettings
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.store.tables.week import DecisionRow, DecisionStatus, LimitsRow
from bot.week.load import day_set
from tests.support.weeks import Team
from tests.support.world import Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"  # flat, sharp: two steps up, more than goes out unasked
DAY = date(2027, 5, 7)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, at seven in London."""
    return team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))


def decisions(team: Team) -> list[DecisionRow]:
    with team.world.session() as session:
        return list(session.exec(select(DecisionRow).order_by(col(DecisionRow.id))))


def in_force(team: Team) -> float | None:
    with team.world.session() as session:
        row = day_set(session, team.athlete_id, DAY)
        return row.carb_g if row else None


def test_the_coach_reads_plan_proposal_reason_and_deadline(team: Team) -> None:
    athlete_reads = text_of(team.athlete.writes(FLAT))
    (asked,) = team.coach.hears()
    assert "Planned 500 g, proposed 550 g (+50 g" in asked.text
    assert "61.0 kg, fullness 1, sharpness 5, water 3.5 L" in asked.text
    assert "flatter than planned (1, I expected" in asked.text
    assert "Mira eats 525 g for now: the small step that needs no approval" in asked.text
    assert "Answer by 09:00 (Mira's time), or it stays and I tell Mira so" in asked.text
    assert list(asked.buttons) == ["Approve 550 g", "Set another number", "Keep the plan, 500 g"]
    assert "550 g" in athlete_reads
    assert "Eat 525 g for now, a small step. Ravi may change it to 550 g by" in athlete_reads
    assert in_force(team) == 525


def test_while_it_waits_the_athlete_reads_one_amount_to_eat(team: Team) -> None:
    reads = text_of(team.athlete.writes(FLAT))
    assert "so eat 25 g more today" in reads and "Carbs 525 g (+25" in reads
    assert "50 g more" not in reads + text_of(team.athlete.writes("/why"))
    team.coach.taps("Approve 550 g")
    assert "so eat 50 g more today" in text_of(team.athlete.writes("/why"))


def test_where_nothing_goes_out_alone_the_plan_stands_until_the_coach_has_answered(
    team: Team,
) -> None:
    with transaction(team.world.engine) as session:
        row = session.exec(select(LimitsRow)).one()
        row.bounds = {**row.bounds, "apply_without_asking_g": 0.0}
        session.add(row)
    athlete_reads = text_of(team.athlete.writes(FLAT))
    (asked,) = team.coach.hears()
    assert "Answer by 09:00 (Mira's time), or 500 g stands and I tell Mira so" in asked.text
    assert "Stay at 500 g for now, as planned. Ravi may change it to 550 g" in athlete_reads
    assert in_force(team) == 500
    team.world.later(hours=3)
    assert "told to stay on plan, 500 g" in text_of(team.coach.hears())
    assert "No answer came in time. Stay on plan" in text_of(team.athlete.hears())
    assert in_force(team) == 500


def test_a_typed_ok_at_a_proposal_brings_it_back_with_its_buttons_and_approves_nothing(
    team: Team,
) -> None:
    team.athlete.writes(FLAT)
    team.coach.hears()
    (again,) = team.coach.writes("ok")
    assert again.text.startswith("Do you mean this? Tap the number you want")
    assert "Planned 500 g, proposed 550 g" in again.text
    assert in_force(team) == 525
    team.coach.presses(again.buttons["Approve 550 g"], again.outbox_id)
    assert in_force(team) == 550
    assert "Do you mean this?" not in text_of(team.coach.writes("ok"))


def test_the_deadline_stands_on_the_coachs_own_clock_with_the_athletes_beside_it(
    team: Team,
) -> None:
    with transaction(team.world.engine) as session:
        session.merge(CoachSettings(person_id=1, zone="Asia/Tokyo"))
    team.athlete.writes(FLAT)
    (asked,) = team.coach.hears()
    # London is an hour ahead of UTC in May, Tokyo nine.
    assert "Answer by 17:00 your time (09:00 for Mira), or it stays" in asked.text
    assert "approve by 17:00 your time (09:00 for Mira)" in text_of(team.coach.writes("/roster"))


def test_approving_puts_the_figure_in_force_and_tells_the_athlete(team: Team) -> None:
    team.athlete.writes(FLAT)
    said = text_of(team.coach.taps("Approve 550 g"))
    assert "Approved by Ravi, Fri 7 May, 07:00" in said
    assert "Carbs 550 g" in text_of(team.athlete.hears())
    assert (in_force(team), decisions(team)[0].status) == (550, DecisionStatus.APPROVED)
    team.world.later(hours=3)
    assert team.coach.hears() == []
    assert in_force(team) == 550


def test_keeping_the_plan_tells_the_athlete(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Keep the plan, 500 g")
    assert "keeps the plan" in text_of(team.athlete.hears())
    assert (in_force(team), decisions(team)[0].status) == (500, DecisionStatus.PLAN_KEPT)


@pytest.mark.parametrize(
    ("typed", "answered"),
    [
        ("", "empty"),
        ("lots", "need a number here"),
        ("-1", "below zero"),
        ("840 kg", "only need the number"),
        ("🍚", "need a number here"),
        ("x" * 4096, "too long"),
        ("5000", "at most"),
        ("900", "734 g is the most for this body mass"),
        ("8.4", "31 g is the least for this body mass"),
    ],
)
def test_what_is_no_figure_is_refused_and_asked_again(
    team: Team, typed: str, answered: str
) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Set another number")
    said = text_of(team.coach.writes(typed))
    assert answered in said.replace("between 0 and 1,500 g", "at most 1,500 g")
    assert "How many grams of carbs for Mira's Fri 7 May?" in said
    assert decisions(team)[0].status == DecisionStatus.WAITING
    team.coach.writes("530")
    assert in_force(team) == 530


def test_a_figure_past_the_guard_rail_is_refused_with_its_source(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Set another number")
    # Burke et al. 2011: 10-12 g/kg a day; 12 g/kg x 61.2 kg = 734.4 g
    said = text_of(team.coach.writes("735"))
    assert "Burke et al. 2011" in said
    assert in_force(team) == 525


def test_a_figure_past_ones_own_limit_needs_a_second_tap(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Set another number")
    assert "over your own limit (carb ceiling a day: 685 g)" in text_of(team.coach.writes("700"))
    assert in_force(team) == 525
    team.coach.taps("No, another number")
    team.coach.writes("700")
    assert "Why? A few words" in text_of(team.coach.taps("Yes, 700 g"))
    assert "a few words" in text_of(team.coach.writes("?"))
    team.coach.writes("Slept badly, looked flat all day")
    assert (in_force(team), decisions(team)[0].status) == (700, DecisionStatus.OTHER_FIGURE)
    assert "Carbs 700 g" in text_of(team.athlete.hears())


def test_a_sticker_is_no_figure(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Set another number")
    assert "please type it" in text_of(team.coach.writes("", kind=Kind.OTHER))


def test_without_a_word_the_small_step_stays_at_the_deadline_and_both_are_told(team: Team) -> None:
    team.athlete.writes(FLAT)
    (asked,) = team.coach.hears()
    team.world.later(hours=1, minutes=59, seconds=59)
    assert team.coach.hears() == []
    team.athlete.hears()
    team.world.later(seconds=1)
    rewritten, told = team.coach.hears()
    assert "Nobody answered by 09:00" in rewritten.text
    assert rewritten.buttons == {}
    assert "told to eat 525 g, the small step" in told.text
    assert "No answer came in time. The small step stays" in text_of(team.athlete.hears())
    assert decisions(team)[0].status == DecisionStatus.LAPSED
    team.coach.taps("Approve 550 g", asked)
    assert "Nobody answered by 09:00" in team.coach.answers_to_taps()[-1]
    assert in_force(team) == 525


@pytest.mark.parametrize(
    ("answered_at_utc", "due_utc"),
    [
        ((7, 6, 0), (7, 8, 0)),  # two hours
        ((7, 9, 30), (7, 11, 0)),  # not past noon in London
        ((7, 10, 5), (7, 12, 5)),  # after the cut-off: tomorrow's figure, two hours again
    ],
)
def test_the_deadline_is_two_hours_and_not_past_noon_of_the_day_that_is_set(
    team: Team, answered_at_utc: tuple[int, int, int], due_utc: tuple[int, int, int]
) -> None:
    day, hour, minute = answered_at_utc
    team.world.now = datetime(2027, 5, day, hour, minute, tzinfo=UTC)
    team.athlete.writes(FLAT)
    day, hour, minute = due_utc
    due = decisions(team)[0].sign_off_due_at
    assert due == datetime(2027, 5, day, hour, minute, tzinfo=UTC)


def test_a_decision_made_late_leaves_half_an_hour_at_least(team: Team) -> None:
    team.world.now = datetime(2027, 5, 7, 9, 59, tzinfo=UTC)
    team.athlete.writes(FLAT)
    # On the way the athlete's clocks moved: noon of that day has passed where they are now.
    team.world.now = datetime(2027, 5, 7, 10, 30, tzinfo=UTC)
    with transaction(team.world.engine) as session:
        row = session.get_one(DecisionRow, 1)
        profile = session.get_one(AthleteProfile, team.athlete_id)
        profile.zone = "Asia/Tokyo"
        signoff.ask_coach(Turn(session, team.world.context), profile, row)
    assert decisions(team)[0].sign_off_due_at == datetime(2027, 5, 7, 11, 0, tzinfo=UTC)


def test_a_changed_answer_takes_the_proposal_back_and_closes_the_question(team: Team) -> None:
    team.athlete.writes(FLAT)
    (asked,) = team.coach.hears()
    team.coach.taps("Set another number", asked)
    team.athlete.writes("61.0 5 3.5 5 on target fine")
    rewritten = text_of(team.coach.hears())
    assert "worked out Mira's day again" in rewritten
    assert "For Mira:\n“520”" in text_of(team.coach.writes("520"))
    team.coach.taps("Approve 550 g", asked)
    assert "worked out Mira's day again" in team.coach.answers_to_taps()[-1]
    assert in_force(team) == 500
    team.world.later(hours=3)
    assert decisions(team)[0].status == DecisionStatus.REPLACED


def test_the_first_press_counts_and_the_second_reads_what_happened(team: Team) -> None:
    team.athlete.writes(FLAT)
    (asked,) = team.coach.hears()
    team.coach.taps("Keep the plan, 500 g", asked)
    team.coach.taps("Approve 550 g", asked)
    assert "Ravi kept the plan" in team.coach.answers_to_taps()[-1]
    assert in_force(team) == 500


@pytest.mark.parametrize("data", ["sign:approve:99", "sign:approve:x", "sign:approve", "sign:no:1"])
def test_a_button_that_was_never_offered_does_nothing(team: Team, data: str) -> None:
    team.athlete.writes(FLAT)
    team.coach.presses(data)
    assert "You can't approve this one." in team.coach.answers_to_taps()
    assert decisions(team)[0].status == DecisionStatus.WAITING


def test_nobody_but_the_athletes_coach_can_sign(team: Team) -> None:
    team.athlete.writes(FLAT)
    for person in (team.athlete, Someone(team.world, 190, "Kit")):
        person.presses("sign:approve:1")
    assert decisions(team)[0].status == DecisionStatus.WAITING


def test_no_raise_is_approved_once_a_warning_has_been_told(team: Team) -> None:
    team.athlete.writes(FLAT)
    (asked,) = team.coach.hears()
    team.athlete.writes("I fainted")
    assert "worked out Mira's day again" in text_of(team.coach.hears())
    team.coach.taps("Approve 550 g", asked)
    assert "worked out Mira's day again" in team.coach.answers_to_taps()[-1]
    assert in_force(team) == 500
    assert [row.status for row in decisions(team)].count(DecisionStatus.APPROVED) == 0


def test_no_raise_is_approved_while_the_plan_is_frozen(team: Team) -> None:
    team.athlete.writes(FLAT)
    (asked,) = team.coach.hears()
    with transaction(team.world.engine) as session:
        session.get_one(AthleteProfile, team.athlete_id).frozen_at = team.world.now
    assert "frozen" in text_of(team.coach.taps("Approve 550 g", asked))
    assert in_force(team) == 525
    team.coach.taps("Keep the plan, 500 g", asked)
    assert decisions(team)[0].status == DecisionStatus.PLAN_KEPT


def test_a_day_set_by_hand_stays_whatever_the_check_in_says(team: Team) -> None:
    team.coach.presses(f"c:hand:{team.athlete_id}")
    team.coach.taps("2 out")
    said = text_of(team.coach.writes("480"))
    assert "Mira's Fri 7 May is set to 480 g" in said
    assert "480 g" in text_of(team.athlete.hears())
    said = text_of(team.athlete.writes(FLAT))
    assert "Carbs 480 g" in said
    assert in_force(team) == 480


def test_a_day_that_is_over_cannot_be_set_by_hand(team: Team) -> None:
    team.coach.presses(f"c:hand:{team.athlete_id}:2")
    team.world.later(hours=20)
    assert "That day is over" in text_of(team.coach.writes("480"))


def test_who_set_what_and_when_is_on_record(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Approve 550 g")
    with team.world.session() as session:
        row = session.exec(select(HistoryRow).where(HistoryRow.what == "signed off")).one()
    assert (row.by_id, row.detail["carb_g"], row.at) == (1, 550, team.world.now)


def test_the_reason_for_passing_ones_own_limit_is_kept(team: Team) -> None:
    team.coach.presses(f"c:hand:{team.athlete_id}:2")
    team.coach.writes("700")
    team.coach.taps("Yes, 700 g")
    team.coach.writes("Flat for two days")
    with team.world.session() as session:
        row = session.exec(select(HistoryRow).where(HistoryRow.what == "day set by hand")).one()
    assert (row.detail["carb_g"], row.detail["because"]) == (700, "Flat for two days")


def test_on_ones_own_the_sign_off_is_a_second_look_at_oneself(team: Team) -> None:
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, team.athlete_id)
        profile.coach_id = team.athlete_id
        person = session.get_one(Person, team.athlete_id)
        person.is_coach = True
        session.add(profile)
        session.add(person)
    said = text_of(team.athlete.writes(FLAT))
    assert "for you to approve as your own coach" in said
    assert "your own approval until 09:00" in said
    done = text_of(team.athlete.taps("Take 550 g"))
    assert "Carbs 550 g" in done


def nothing_goes_out_alone(team: Team) -> None:
    with transaction(team.world.engine) as session:
        row = session.exec(select(LimitsRow)).one()
        row.bounds = {**row.bounds, "apply_without_asking_g": 0.0}
        session.add(row)


@pytest.mark.parametrize("own_coach", [False, True])
def test_whoever_asks_reads_what_waits_and_that_it_is_not_to_be_followed(
    team: Team, own_coach: bool
) -> None:
    nothing_goes_out_alone(team)
    if own_coach:
        with transaction(team.world.engine) as session:
            session.get_one(AthleteProfile, team.athlete_id).coach_id = team.athlete_id
            session.get_one(Person, team.athlete_id).is_coach = True
    team.athlete.writes(FLAT)
    waits = "waits for your own approval until" if own_coach else "Ravi may change it to 550 g by"
    for asked in ("/today", "/why", "what are my carbs today?"):
        reads = text_of(team.athlete.writes(asked))
        assert "Stay at 500 g for now" in reads and waits in reads, asked
        assert "not approved yet: " in reads, asked

    team.world.later(hours=3)
    for asked in ("/today", "/why"):
        reads = text_of(team.athlete.writes(asked))
        assert "No answer came in time. Stay on plan." in reads and waits not in reads, asked
    assert "not to be followed: You're flatter" in reads


def test_what_waits_for_tomorrow_is_said_with_today(team: Team) -> None:
    with transaction(team.world.engine) as session:
        session.get_one(AthleteProfile, team.athlete_id).always_tomorrow = True
    team.athlete.writes(FLAT)
    reads = text_of(team.athlete.writes("/today"))
    assert "For Saturday 8 May: Eat 525 g for now" in reads
    assert "Friday 7 May: load" in reads and "Carbs 500 g" in reads
    team.world.later(hours=30)
    assert "For Saturday" not in text_of(team.athlete.writes("/today"))


@pytest.mark.parametrize(
    ("alone", "stands"), [(25.0, "set to 525 g (+25 g)"), (0.0, "on plan: 500 g")]
)
def test_a_lapsed_proposal_does_not_read_as_if_it_had_been_adjusted(
    team: Team, alone: float, stands: str
) -> None:
    if not alone:
        nothing_goes_out_alone(team)
    team.athlete.writes(FLAT)
    team.world.later(hours=3)
    for shown in (
        text_of(team.coach.writes("/roster")),
        text_of(team.coach.presses(f"c:card:{team.athlete_id}")),
    ):
        assert f"no answer in time, {stands} for Fri 7 May" in shown.replace(
            "No answer", "no answer"
        )
        assert "adjusted" not in shown.lower()


def test_a_plan_that_was_kept_reads_as_the_plan(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.taps("Keep the plan, 500 g")
    assert "; on plan: 500 g for Fri 7 May" in text_of(team.coach.writes("/roster"))
    assert "not to be followed: You're flatter" in text_of(team.athlete.writes("/why"))
