"""The life of an alert: told, repeated, brought to the second contact, acknowledged, lifted."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any

import pytest
from sqlalchemy import Engine
from sqlmodel import select

from bot.alerts import alerts
from bot.alerts.words_athlete import cause
from bot.core.turn import Kind, Turn
from bot.people.people import get_profile
from bot.store.db import transaction
from bot.store.tables.people import AthleteStatus
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import AlertRow
from engine.evidence import safety as evidence
from engine.safety import Flag, Level
from engine.symptoms import WARNINGS
from tests.support.weeks import Team, arrive, in_peak_week
from tests.support.world import Said, Someone, text_of

WATER = Flag(
    "water-under-target",
    Level.CAUTION,
    {"water_l": 1.9, "target_l": 3.5},
    (evidence.WATER_UNDER_TARGET.source,),
)
MUCH_WATER = Flag(
    "water-over-target",
    Level.CAUTION,
    {"water_l": 6.0, "target_l": 3.5},
    (evidence.WATER_OVER_TARGET.source,),
)
SLEEP = Flag(
    "short-sleep",
    Level.ADVISORY,
    {"last_night_h": 4.0, "night_before_h": 4.5},
    (evidence.ADULT_SLEEP,),
)


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """The first morning, seven days out, at seven in London."""
    return team_at(datetime(2027, 5, 2, 6, 0, tzinfo=UTC))


def second_contact(team: Team) -> Someone:
    code = re.search(r"/join (\S+)", text_of(team.coach.writes("/contact")))
    assert code is not None
    lea = Someone(team.world, 104, "Lea")
    lea.writes(f"/join {code[1]}")
    team.coach.hears()
    return lea


def raise_flags(team: Team, *flags: Flag, told_anew: bool = True) -> list[Said]:
    with transaction(team.world.engine) as session:
        profile = get_profile(session, team.athlete_id)
        found = alerts.Found(flags, team.world.now.date(), told_anew)
        alerts.raise_flags(Turn(session, team.world.context), profile, found)
    return team.coach.hears()


def pings(messages: list[Said]) -> list[Said]:
    """Messages that make a sound or at least appear, edits left out."""
    return [said for said in messages if said.method == "sendMessage"]


def alert_rows(team: Team) -> list[AlertRow]:
    with team.world.session() as session:
        return list(session.exec(select(AlertRow).where(AlertRow.flag != "missed-check-in")))


def test_a_warning_pings_the_coach_at_once_aloud_with_what_to_do(team: Team) -> None:
    team.athlete.writes("I fainted in the shower")
    (told,) = pings(team.coach.hears())
    assert not told.silent
    assert told.text.startswith("Warning: Mira, Sun 2 May, 07:00 (Mira's time)")
    for part in ("fainting", "Mira was told: stop", "Call Mira", "emergency number", "a doctor"):
        assert part in told.text
    assert "Acknowledge" in told.buttons
    assert team.profile().frozen_at is not None


def test_a_caution_shows_the_figures_in_the_athletes_units_with_the_threshold(team: Team) -> None:
    (told,) = raise_flags(team, WATER)
    assert told.text.startswith("Caution: Mira")
    assert "1.9 L" in told.text
    assert "3.5 L" in told.text
    assert "60 %" in told.text
    assert not told.silent


def test_an_advisory_is_told_silently_needs_no_word_and_comes_once_a_day(team: Team) -> None:
    (told,) = raise_flags(team, SLEEP)
    assert told.silent
    assert told.buttons == {}
    assert told.text.startswith("Info: Mira")
    assert raise_flags(team, SLEEP) == []
    team.world.later(hours=3)
    assert not [said for said in team.coach.hears() if "Slept" in said.text]
    team.world.later(days=1)
    team.coach.hears()
    assert len(raise_flags(team, SLEEP)) == 1


def test_the_same_cause_while_open_pings_once_and_a_worse_level_again(team: Team) -> None:
    advisory = Flag("pulse-high", Level.ADVISORY, {"pulse": 101.0}, (evidence.RESTING_PULSE,))
    caution = Flag("pulse-high", Level.CAUTION, {"pulse": 108.0}, (evidence.RESTING_PULSE,))
    warning = Flag("pulse-high", Level.WARNING, {"pulse": 140.0}, (evidence.RESTING_PULSE,))
    assert len(pings(raise_flags(team, advisory))) == 1
    assert len(pings(raise_flags(team, caution))) == 1
    assert pings(raise_flags(team, caution)) == []
    assert pings(raise_flags(team, advisory)) == []
    said = raise_flags(team, warning)
    assert [m.text.partition(":")[0] for m in pings(said)] == ["Warning"]
    (closed,) = [m for m in said if m.method == "editMessageText"]
    assert "has become a warning" in closed.text
    assert closed.buttons == {}
    team.world.later(minutes=40)
    assert all("Warning: Mira" in m.text for m in pings(team.coach.hears()))


def test_a_caution_acknowledged_today_is_silent_on_the_same_figures_and_loud_on_others(
    team: Team,
) -> None:
    raise_flags(team, WATER)
    team.coach.taps("Acknowledge")
    assert raise_flags(team, WATER) == []
    less = Flag(WATER.id, WATER.level, {"water_l": 0.9, "target_l": 3.5}, WATER.sources)
    assert len(pings(raise_flags(team, less))) == 1


def test_a_warning_said_once_more_after_it_was_acknowledged_pings_again(team: Team) -> None:
    team.athlete.writes("I fainted")
    team.coach.hears()
    team.coach.taps("Acknowledge")
    team.athlete.writes("I fainted again just now")
    assert [m.text[:8] for m in pings(team.coach.hears())] == ["Warning:"]


def test_a_warning_repeats_every_five_minutes_then_the_second_contact_joins_at_fifteen(
    team: Team,
) -> None:
    lea = second_contact(team)
    team.athlete.writes("I fainted")
    team.coach.hears()
    team.athlete.hears()
    for _ in range(2):
        team.world.later(minutes=4, seconds=59)
        assert team.coach.hears() == []
        team.world.later(seconds=1)
        (again,) = pings(team.coach.hears())
        assert "Not acknowledged yet" in again.text
        assert "fainting" in again.text
        assert not again.silent
        assert lea.hears() == []
    team.world.later(minutes=5)
    assert len(pings(team.coach.hears())) == 1
    (brought,) = pings(lea.hears())
    assert "Ravi has not answered" in brought.text
    assert "Warning: Mira" in brought.text
    assert "Lea has been told too" in text_of(team.athlete.hears())
    team.world.later(minutes=14, seconds=59)
    assert (team.coach.hears(), lea.hears()) == ([], [])
    team.world.later(seconds=1)
    assert (len(pings(team.coach.hears())), len(pings(lea.hears()))) == (1, 1)


def test_a_caution_repeats_every_half_hour_and_reaches_the_second_contact_after_two_hours(
    team: Team,
) -> None:
    lea = second_contact(team)
    raise_flags(team, MUCH_WATER)
    for number in range(1, 5):
        assert lea.hears() == []
        arrive(team)
        team.world.later(minutes=30)
        assert len([m for m in pings(team.coach.hears()) if "Drank" in m.text]) == 1, number
    assert "Ravi has not answered" in text_of(lea.hears())


def test_nobody_is_fetched_in_the_night_for_a_half_empty_bottle(team: Team) -> None:
    lea = second_contact(team)
    raise_flags(team, WATER)
    team.world.later(hours=2)
    assert not [m for m in pings(team.coach.hears()) if "Drank" in m.text]
    team.world.later(hours=20)
    assert [m for m in pings(team.coach.hears()) if "Drank" in m.text]  # asked again by day
    assert lea.hears() == []


def test_only_the_newest_message_of_an_alert_keeps_its_button(team: Team) -> None:
    team.athlete.writes("I fainted")
    arrive(team)
    (first,) = team.coach.hears()
    team.world.later(minutes=5)
    again, edit = team.coach.hears()
    assert "Acknowledge" in again.buttons
    assert edit.method == "editMessageText"
    assert (edit.text, edit.buttons) == (first.text, {})


def test_repeating_stops_after_a_day_and_says_so_and_the_alert_stays_listed(team: Team) -> None:
    lea = second_contact(team)
    team.athlete.writes("I fainted")
    team.world.later(hours=25)
    for person in (team.coach, lea):
        last = pings([m for m in person.hears() if "fainting" in m.text])[-1]
        assert "I stop repeating it" in last.text
    team.world.later(hours=12)
    assert not [m for m in team.coach.hears() if "fainting" in m.text]
    listed = team.coach.writes("/alerts")
    assert "One alert is open" in listed[0].text
    assert "Acknowledge" in listed[1].buttons


def test_acknowledging_stops_the_repeats_says_who_and_when_and_offers_to_lift(team: Team) -> None:
    lea = second_contact(team)
    team.athlete.writes("I fainted")
    team.world.later(minutes=15)
    team.coach.hears()
    lea.hears()
    team.athlete.hears()
    done = team.coach.taps("Acknowledge")
    assert "Acknowledged by Ravi, Sun 2 May, 07:15" in done[0].text
    assert list(done[0].buttons) == ["Lift the freeze"]
    assert "Ravi has acknowledged the alert about Mira" in text_of(lea.hears())
    assert "Ravi has seen this and will contact you" in text_of(team.athlete.hears())
    team.world.later(hours=2)
    assert not [m for m in team.coach.hears() if "fainting" in m.text]
    assert lea.hears() == []


def test_the_second_contact_can_acknowledge_and_the_coach_is_told_and_may_lift(team: Team) -> None:
    lea = second_contact(team)
    team.athlete.writes("I fainted")
    team.world.later(minutes=15)
    team.coach.hears()
    lea.hears()
    done = lea.taps("Acknowledge")
    assert "Acknowledged by Lea" in done[0].text
    assert done[0].buttons == {}
    told = pings(team.coach.hears())[-1]
    assert "Lea has acknowledged the alert about Mira" in told.text
    assert list(told.buttons) == ["Lift the freeze"]
    lea.presses(f"c:lift-yes:{team.athlete_id}")
    assert team.profile().frozen_at is not None


def test_a_second_press_says_who_was_first(team: Team) -> None:
    team.athlete.writes("I fainted")
    (told,) = pings(team.coach.hears())
    team.coach.taps("Acknowledge", told)
    team.world.later(minutes=3)
    team.coach.taps("Acknowledge", told)
    assert "Acknowledged already by Ravi, Sun 2 May, 07:00" in team.coach.answers_to_taps()[-1]
    assert [row.acknowledged_by for row in alert_rows(team)] == [1]


@pytest.mark.parametrize(
    "data", ["alert:ack:999", "alert:ack:x", "alert:ack", "alert", "alert:go:1"]
)
def test_a_button_for_an_alert_that_is_not_there_does_nothing(team: Team, data: str) -> None:
    raise_flags(team, WATER)
    team.coach.presses(data)
    assert "That alert is not yours." in team.coach.answers_to_taps()
    assert all(row.acknowledged_at is None for row in alert_rows(team))


def test_nobody_else_can_acknowledge_or_lift(team: Team) -> None:
    raise_flags(team, WATER)
    row = alert_rows(team)[-1]
    stranger = Someone(team.world, 190, "Kit")
    for person in (team.athlete, stranger):
        person.presses(f"alert:ack:{row.id}")
        person.presses(f"c:lift-yes:{team.athlete_id}")
    assert alert_rows(team)[-1].acknowledged_at is None


def test_a_freeze_is_lifted_on_a_second_tap_only_and_not_while_the_alert_is_open(
    team: Team,
) -> None:
    team.athlete.writes("I fainted")
    team.coach.hears()
    refused = team.coach.presses(f"c:lift-yes:{team.athlete_id}")
    assert "Acknowledge it first" in text_of(refused)
    team.coach.taps("Acknowledge")
    asked = team.coach.taps("Lift the freeze")
    assert "a doctor has said" in text_of(asked)
    team.coach.taps("Keep it frozen")
    assert team.profile().frozen_at is not None
    team.coach.taps("Lift the freeze")
    team.coach.taps("Lift it")
    assert team.profile().frozen_at is None


def test_once_lifted_the_same_days_numbers_do_not_sound_the_warning_again(team: Team) -> None:
    team.athlete.writes("I fainted")
    team.athlete.writes("61.0 5 3.5 on target fine")
    team.coach.hears()
    team.coach.taps("Acknowledge")
    team.coach.taps("Lift the freeze")
    team.athlete.hears()
    team.coach.taps("Lift it")
    calm = text_of(team.athlete.hears())
    assert "has been seen to" in calm
    assert "emergency number" not in calm
    changed = text_of(team.athlete.writes("60.8 5 3.5 on target fine"))
    assert "emergency number" not in changed
    assert pings(team.coach.hears()) == []
    assert team.profile().frozen_at is None


def test_a_coach_who_cannot_be_reached_has_alerts_go_to_the_second_contact_at_once(
    team: Team,
) -> None:
    lea = second_contact(team)
    team.coach.writes("", kind=Kind.BLOCKED)
    assert "I can't reach Ravi here" in text_of(lea.hears())
    told = text_of(team.athlete.writes("I fainted"))
    (brought,) = pings(lea.hears())
    assert "Ravi cannot be reached" in brought.text
    assert "Warning: Mira" in brought.text
    assert "Ravi cannot be reached" in told
    assert "Lea has been told too" in told
    assert "emergency number now" in told


def test_a_coach_who_leaves_while_an_alert_is_open_hands_it_to_the_second_contact(
    team: Team,
) -> None:
    lea = second_contact(team)
    team.athlete.writes("I fainted")
    team.coach.writes("", kind=Kind.BLOCKED)
    assert "Warning: Mira" in text_of(lea.hears())
    team.coach.writes("", kind=Kind.BLOCKED)
    assert lea.hears() == []


def fails_for(team: Team, who: Someone) -> None:
    """What waits for them cannot be delivered, as the sender notes it."""
    with transaction(team.world.engine) as session:
        for row in session.exec(select(OutboxRow).where(OutboxRow.chat_id == who.user_id)):
            row.status = "failed" if row.status == "waiting" else row.status
            session.add(row)


def test_a_coach_who_comes_back_is_told_of_the_alerts_that_went_past_them(team: Team) -> None:
    lea = second_contact(team)
    arrive(team)
    team.coach.writes("", kind=Kind.BLOCKED)
    team.athlete.writes("I fainted")
    lea.taps("Acknowledge")
    team.athlete.writes("and my heart is racing, palpitations")
    fails_for(team, team.coach)
    team.world.later(minutes=2)
    lea.hears()
    said = pings(team.coach.writes("", kind=Kind.UNBLOCKED))
    assert "you missed these 2 alerts" in said[0].text
    assert "fainting" in said[1].text and "Acknowledged by Lea" in said[1].text
    assert said[1].buttons == {}
    assert "palpitations" in said[2].text and "Acknowledge" in said[2].buttons
    (told,) = pings(lea.hears())
    assert "Ravi can be reached here again" in told.text and told.silent
    arrive(team)
    team.coach.writes("", kind=Kind.BLOCKED)
    assert "you missed" not in text_of(team.coach.writes("/roster"))


def test_a_coach_who_comes_back_gets_the_proposals_that_still_wait_for_them(team: Team) -> None:
    team.morning(2)
    team.coach.writes("", kind=Kind.BLOCKED)
    team.athlete.writes("60.6 2 3.5 5 on target fine")
    fails_for(team, team.coach)
    said = pings(team.coach.writes("", kind=Kind.UNBLOCKED))
    (proposal,) = [one for one in said if "for you to approve" in one.text]
    team.coach.taps("Approve 550 g", proposal)
    assert "approved the change" in text_of(team.athlete.hears())


def test_an_athlete_who_comes_back_is_asked_the_mornings_question_again(team: Team) -> None:
    team.athlete.writes("", kind=Kind.BLOCKED)
    team.coach.hears()
    team.morning(6)
    fails_for(team, team.athlete)
    (asked,) = pings(team.athlete.writes("", kind=Kind.UNBLOCKED))
    assert "Your weight this morning" in asked.text
    told = [said for said in team.coach.hears() if "can be reached again" in said.text]
    assert len(told) == 1 and told[0].silent
    said = text_of(team.athlete.writes("60.9 6 3.5"))
    assert "6 days out" in said


def test_without_a_second_contact_the_athlete_is_told_not_to_wait(team: Team) -> None:
    team.athlete.writes("I fainted")
    team.athlete.hears()
    team.world.later(minutes=15)
    told = text_of(team.athlete.hears())
    assert "There is no second contact" in told
    assert "Don't wait" in told


def test_an_athlete_on_their_own_has_warnings_go_to_the_second_contact_at_once(team: Team) -> None:
    lea = second_contact(team)
    with transaction(team.world.engine) as session:
        profile = get_profile(session, team.athlete_id)
        profile.person_id, profile.status = 1, AthleteStatus.ACTIVE
        session.add(profile)
    (said,) = team.coach.writes("I fainted")
    assert said.text.startswith("Stop. You reported: fainting.")
    assert set(said.buttons) == {"Acknowledge"}
    assert "Call Ravi" not in said.text
    assert "Ravi is their own coach" in text_of(lea.hears())


def test_alerts_are_listed_worst_first_and_only_ones_own(team: Team) -> None:
    assert "No alert is open" in text_of(team.coach.writes("/alerts"))
    raise_flags(team, WATER)
    team.world.later(minutes=1)
    team.athlete.writes("I fainted")
    listed = team.coach.writes("/alerts")
    assert [m.text.partition(":")[0] for m in listed[1:3]] == ["Warning", "Caution"]
    assert "I don't know that command" in text_of(team.athlete.writes("/alerts"))


def test_a_repeat_that_was_delayed_is_caught_up_by_one_message_not_many(team: Team) -> None:
    team.athlete.writes("I fainted")
    team.world.later(minutes=30)
    with team.world.session() as session:
        waiting = session.exec(
            select(OutboxRow).where(
                OutboxRow.chat_id == team.coach.user_id,
                OutboxRow.status == "waiting",
                OutboxRow.method == "sendMessage",
            )
        ).all()
    assert len([row for row in waiting if "fainting" in row.payload["text"]]) == 1


ALL_FLAGS: dict[str, dict[str, Any]] = {
    "weight-drop-24h": {"weight_kg": 59.0, "before_kg": 61.2, "down_percent": 3.6},
    "weight-drop-baseline": {"weight_kg": 58.0, "before_kg": 61.2, "down_percent": 5.2},
    "weekly-loss-fast": {"weight_kg": 60.0, "before_kg": 61.2, "days": 7.0, "percent": 2.0},
    "low-sodium-pattern": {"weight_kg": 62.6, "before_kg": 61.2, "up_percent": 2.3, "water_l": 6.0},
    "water-under-adequate": {"water_l": 1.5, "adequate_l": 2.0},
    "water-under-target": {"water_l": 1.5, "target_l": 3.5},
    "water-over-target": {"water_l": 6.0, "target_l": 3.5},
    "water-over-guard-rail": {"water_l": 6.5, "most_l": 6.12},
    "water-too-fast": {"water_l_per_h": 2.0, "most_l_per_h": 1.0},
    "urine-dark": {"colour": 8.0},
    "pulse-high": {"pulse": 112.0},
    "drug-named": {"words": "lasix"},
    "symptom-unread": {"words": "toes feel odd"},
    "missed-check-in": {"mornings": 1.0},
    "short-sleep": {"last_night_h": 4.0, "night_before_h": 4.5},
    "low-energy-availability": {"kcal_per_kg": 24.0},
}


@pytest.mark.parametrize("flag", [*ALL_FLAGS, *sorted(WARNINGS)])
def test_every_flag_is_told_in_words_with_its_figures(flag: str) -> None:
    facts = ALL_FLAGS.get(flag, {"words": "it went black before my eyes"})
    text = cause(flag, facts, weight_unit="lb", volume_unit="l")
    assert text.endswith(".")
    assert "{" not in text
    assert "_" not in text
    assert (" lb" in text) == ("weight_kg" in facts)


def test_figures_put_right_after_a_warning_was_seen_to_leave_it_as_it_was_read_and_come_anew(
    own_engine: Engine,
) -> None:
    team = in_peak_week(own_engine)
    team.morning(7)
    team.athlete.writes("60.4 kg, fullness 6, water 3.5 l")
    team.morning(6)
    team.athlete.writes("61.4 kg, fullness 5, water 3.8 l")
    team.coach.hears()
    team.athlete.writes("I fainted in the shower, my head hurts a little")
    assert "60.4 kg to 61.4 kg" in text_of(team.coach.hears())
    team.coach.taps("Acknowledge")
    team.athlete.writes("61.8 kg, fullness 5, water 3.8 l")
    (heard,) = team.coach.hears()
    assert heard.method == "sendMessage"
    assert "60.4 kg to 61.8 kg" in heard.text
    warning, gathered, *_ = sorted(alert_rows(team), key=lambda row: row.id or 0)
    assert gathered.facts["_in"] == warning.id  # still known to have been told in that message
