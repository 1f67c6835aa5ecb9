"""What comes to a coach in their own time: the digest, gathered notes, and quiet hours."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime, timedelta

import pytest
from sqlmodel import select

from bot.alerts import alerts
from bot.coach import flow_digest
from bot.core.turn import Kind, Turn
from bot.people.people import get_profile, profile_of
from bot.store.db import transaction
from bot.store.tables.people import HistoryRow, Person
from bot.store.tables.traffic import AgendaRow, OutboxRow
from bot.store.tables.week import EventRow
from engine.evidence import safety as evidence
from engine.safety import Flag, Level
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team, arrive
from tests.support.world import Said, Someone, text_of

FLAT = "61.0 1 3.5 5 on target fine"
SLEEP = Flag(
    "short-sleep",
    Level.ADVISORY,
    {"last_night_h": 4.0, "night_before_h": 4.5},
    (evidence.ADULT_SLEEP,),
)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Three days out, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))


def digest_at(team: Team, clock: str, place: str = "London") -> None:
    team.coach.writes("/digest")
    team.coach.writes(place)
    team.coach.taps(next(label for label in team.coach.all_said()[-1].buttons if place in label))
    team.coach.writes(clock)


def quiet(team: Team, begins: str, ends: str) -> None:
    team.coach.presses("desk:quiet")
    team.coach.writes(begins)
    team.coach.writes(ends)


def advise(team: Team, athlete_id: int = 2) -> list[Said]:
    with transaction(team.world.engine) as session:
        profile = get_profile(session, athlete_id)
        found = alerts.Found([SLEEP], team.world.now.date())
        alerts.raise_flags(Turn(session, team.world.context), profile, found)
    return team.coach.hears()


def new_messages(said: list[Said]) -> list[Said]:
    return [one for one in said if one.method == "sendMessage"]


def digests(said: list[Said]) -> list[Said]:
    return [one for one in said if one.text.startswith("Digest")]


def test_the_coach_is_asked_where_they_are_and_when_and_reads_what_holds(team: Team) -> None:
    assert "Where are you" in text_of(team.coach.writes("/digest"))
    (asked,) = team.coach.writes("Tokyo")
    team.coach.taps(next(iter(asked.buttons)))
    said = text_of(team.coach.writes("7:15"))
    assert "comes at 07:15 on days with something to report" in said
    assert "Asia/Tokyo" in said
    again = team.coach.writes("/digest")[0]
    assert set(again.buttons) == {"Another time", "No digest", "Quiet hours", "Where I am"}


def test_the_digest_comes_at_the_coachs_own_hour_and_not_the_athletes(team: Team) -> None:
    digest_at(team, "18:00", "Tokyo")  # 09:00 UTC
    team.athlete.writes(FLAT)
    team.coach.hears()
    team.morning(3, hour=8, minute=59)
    assert digests(team.coach.hears()) == []
    team.morning(3, hour=9)
    (said,) = digests(team.coach.hears())
    assert said.text.startswith("Digest, Thu 6 May")


def test_words_beside_the_numbers_are_a_note_said_once_and_held_in_quiet_hours(team: Team) -> None:
    team.coach.writes("/digest")
    team.coach.writes("London")
    team.coach.taps(next(iter(team.coach.all_said()[-1].buttons)))
    team.coach.writes("20:00")
    quiet(team, "22:00", "8:00")
    team.coach.hears()
    team.athlete.writes("61.0 4 3.5 4 the hotel bed was hard", message_id=900)
    team.athlete.writes("61.0 5 3.5 4 the hotel bed was hard", Kind.EDITED, message_id=900)
    assert team.coach.hears() == []
    team.morning(3, hour=7)  # eight in London
    (note,) = new_messages(team.coach.hears())
    assert note.silent and note.text.count("the hotel bed was hard") == 1


def test_each_change_is_a_line_with_its_reason_and_the_rest_is_named(team: Team) -> None:
    digest_at(team, "12:00")
    with transaction(team.world.engine) as session:
        many_athletes(
            session, 1, 3, team.world.now, Alike(answered=False, zones=("Europe/London",))
        )
    team.athlete.writes(FLAT)
    team.morning(3, hour=11)
    (said,) = digests(team.coach.hears())
    assert (
        "Changed (1)\n- Mira: adjusted to 525 g (+25 g) for Thu 6 May. Why, as Mira reads it: You're "
        "flatter than planned (1, I expected 4)"
    ) in said.text
    assert "Checked in (1)\nMira" in said.text
    # Nobody asked these three and it is past eleven: their mornings count as missed.
    assert "Needs you (3)" in said.text
    assert "Today\n- Athlete 0's show" in said.text


def test_the_days_warnings_and_cautions_are_told_with_who_saw_to_them(team: Team) -> None:
    digest_at(team, "12:00")
    team.athlete.writes("I fainted")
    team.coach.taps("Acknowledge")
    team.athlete.writes("61.0 5 7.4 5 on target")  # litres: far over the guard rail
    team.morning(3, hour=11)
    (said,) = digests(team.coach.hears())
    told = said.text.partition("Warnings and cautions (2)\n")[2]
    assert told.startswith(
        '- Mira, Warning: Reported: fainting. Mira wrote "I fainted". '
        "Acknowledged by Ravi, Thu 6 May, 07:00."
    )
    assert "- Mira, Caution: Drank 7.4 L yesterday" in told
    assert "Nobody has acknowledged it yet." in told


def test_a_proposal_that_lapsed_is_not_told_as_done(team: Team) -> None:
    digest_at(team, "12:00")
    team.morning(2)
    team.athlete.writes(FLAT)
    team.morning(2, hour=11)
    *_, said = digests(team.coach.hears())
    assert "- Mira: 550 g proposed for Fri 7 May; nobody answered, 525 g stood." in said.text


def test_there_is_no_digest_on_a_day_with_nothing_to_tell_and_one_on_the_next(team: Team) -> None:
    with transaction(team.world.engine) as session:
        row = session.exec(select(EventRow)).one()
        row.day += timedelta(days=30)
        session.add(row)
    digest_at(team, "08:00")
    team.world.later(days=1)
    assert digests(team.coach.hears()) == []
    with transaction(team.world.engine) as session:
        row = session.exec(select(EventRow)).one()
        row.day = team.world.now.date() + timedelta(days=1)
        session.add(row)
    team.world.later(days=1)
    assert len(digests(team.coach.hears())) == 1


def test_a_day_on_which_the_clocks_skip_the_hour_still_has_its_digest_once(team: Team) -> None:
    # Europe/London skips 01:00 to 02:00 on Sunday 28 March 2027.
    team.world.now = datetime(2027, 3, 27, 12, tzinfo=UTC)
    digest_at(team, "01:30")
    with transaction(team.world.engine) as session:
        many_athletes(session, 1, 1, team.world.now + timedelta(days=1), Alike(answered=False))
    instants = []
    for _ in range(3):
        with team.world.session() as session:
            row = session.exec(
                select(AgendaRow).where(AgendaRow.kind == "digest", AgendaRow.status == "waiting")
            ).one()
        instants.append(row.due_at)
        team.world.until(row.due_at)
    assert instants == [
        datetime(2027, 3, 28, 1, 0, tzinfo=UTC),  # the first instant after the gap
        datetime(2027, 3, 29, 0, 30, tzinfo=UTC),
        datetime(2027, 3, 30, 0, 30, tzinfo=UTC),
    ]


def test_no_digest_ends_it_and_a_changed_hour_moves_it_without_a_second_one(team: Team) -> None:
    digest_at(team, "12:00")
    team.athlete.writes(FLAT)
    team.coach.writes("/digest")
    team.coach.taps("Another time")
    team.coach.writes("13:00")
    team.morning(3, hour=12)
    assert len(digests(team.coach.hears())) == 1
    team.coach.writes("/digest")
    assert "You get no digest" in text_of(team.coach.taps("No digest"))
    team.world.later(days=2)
    assert digests(team.coach.hears()) == []


@pytest.mark.parametrize(
    ("typed", "answered"), [("soon", "time of day"), ("25:00", "time of day"), ("", "empty")]
)
def test_what_is_no_time_is_refused_and_asked_again(team: Team, typed: str, answered: str) -> None:
    team.coach.writes("/digest")
    team.coach.writes("London")
    team.coach.taps(next(iter(team.coach.all_said()[-1].buttons)))
    said = text_of(team.coach.writes(typed))
    assert answered in said
    assert "When do you want the digest?" in said


def test_notes_that_come_close_together_are_one_silent_message_that_grows(team: Team) -> None:
    with transaction(team.world.engine) as session:
        ids = many_athletes(
            session, 1, 20, team.world.now, Alike(answered=False, zones=("Europe/London",))
        )
    (first,) = advise(team)
    assert first.silent
    arrive(team)
    told: list[Said] = []
    for athlete_id in ids:
        told += advise(team, athlete_id)
    assert new_messages(told) == []
    for number in range(20):
        assert f"Info: Athlete {number}, " in told[-1].text
    assert "Info: Mira" in told[-1].text


def test_notes_that_no_longer_fit_go_on_in_another_message_and_none_is_lost(team: Team) -> None:
    with transaction(team.world.engine) as session:
        ids = many_athletes(
            session, 1, 60, team.world.now, Alike(answered=False, zones=("Europe/London",))
        )
    told: list[Said] = []
    for athlete_id in ids:
        told += advise(team, athlete_id)
    assert 1 < len(new_messages(told)) < 6
    with team.world.session() as session:
        rows = session.exec(select(OutboxRow).where(OutboxRow.chat_id == 101)).all()
    whole = "\n".join(row.payload.get("text", "") for row in rows if row.status != "dropped")
    assert all(f"Athlete {number}, " in whole for number in range(60))
    assert all(len(said.text) <= 4096 for said in told)


def test_quiet_hours_hold_notes_and_let_cautions_through(team: Team) -> None:
    digest_at(team, "20:00")
    quiet(team, "22:00", "8:00")  # it is seven in London
    team.coach.hears()
    assert advise(team) == []
    team.athlete.writes("61.0 4 3.5 5 on target fine")
    said = text_of(team.athlete.writes("I took a diuretic"))
    assert said
    assert "Caution: Mira" in text_of(new_messages(team.coach.hears()))
    team.morning(3, hour=6, minute=59)
    assert "Info: Mira" not in text_of(team.coach.hears())
    team.morning(3, hour=7)
    (released,) = [one for one in team.coach.hears() if "Info: Mira" in one.text]
    assert released.silent


def test_notes_held_over_the_digest_are_told_in_it_and_not_twice(team: Team) -> None:
    digest_at(team, "7:30")
    quiet(team, "22:00", "8:00")
    advise(team)
    team.morning(3, hour=6, minute=30)
    (said,) = digests(team.coach.hears())
    assert "Info (1)\n- Info: Mira" in said.text
    team.morning(3, hour=7)
    assert "Info: Mira" not in text_of(team.coach.hears())


def test_quiet_hours_of_no_length_are_refused_and_can_be_ended(team: Team) -> None:
    digest_at(team, "20:00")
    team.coach.presses("desk:quiet")
    team.coach.writes("22:00")
    assert "the same time" in text_of(team.coach.writes("22:00"))
    team.coach.writes("6:00")
    assert "No quiet hours" in text_of(team.coach.taps("No quiet hours"))
    assert len(advise(team)) == 1


def test_a_digest_of_two_hundred_athletes_fits_a_message_and_says_what_is_left_out() -> None:
    day = datetime(2027, 5, 6, tzinfo=UTC).date()
    lines = [flow_digest.changed_line("🏋" * 24, "adjusted to 525 g", "w" * 200)] * 200
    text = flow_digest.digest(day, [("Changed (200)", lines), ("Notes (200)", lines)])
    assert len(text.encode("utf-16-le")) // 2 <= 4096
    assert text.count("more: /roster") == 2


def test_on_ones_own_the_digest_says_you_and_nothing_is_noted_twice(team: Team) -> None:
    with transaction(team.world.engine) as session:
        profile = profile_of(session, team.athlete_id)
        person = session.get_one(Person, team.athlete_id)
        assert profile is not None
        profile.coach_id, person.is_coach = team.athlete_id, True
        session.add(profile)
        session.add(person)
    mira = team.athlete
    assert "When do you want the digest" in text_of(mira.writes("/digest"))  # her place is known
    mira.writes("12:00")
    said = text_of(mira.writes("61.0 1 3.5 1 on target fine"))  # flat and watery: coach told
    assert "for you to look at" not in said
    mira.hears()
    team.morning(3, hour=11)
    (told,) = digests(mira.hears())
    assert "Checked in (1)\nYou" in told.text


def test_an_athlete_has_no_digest(team: Team) -> None:
    assert "don't know that command" in text_of(team.athlete.writes("/digest"))
    team.athlete.presses("desk:off")
    assert "not yours" in team.athlete.answers_to_taps()[-1]


def test_the_whole_life_of_an_alert_is_kept(team: Team) -> None:
    lea = Someone(team.world, 104, "Lea")
    code = text_of(team.coach.writes("/contact")).split("/join ")[1].split()[0]
    lea.writes(f"/join {code}")
    team.athlete.writes("I fainted")
    team.world.later(minutes=16)
    lea.taps("Acknowledge")
    with team.world.session() as session:
        rows = session.exec(select(HistoryRow).order_by(HistoryRow.id)).all()  # type: ignore[arg-type]
    steps = [row.what for row in rows if row.detail.get("flag") == "fainting"]
    assert steps == [
        "alert opened", "alert repeated", "alert repeated", "alert repeated",
        "second contact told", "alert acknowledged",
    ]  # fmt: skip
    acknowledged = rows[-1]
    assert acknowledged.by_id == 3
