"""A coach's morning: who needs them and what changed, all others by name, and answers in one tap."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta

import pytest
from sqlmodel import select

from bot.store.db import transaction
from bot.store.tables.coach import CoachSettings, HoldRow
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.photos import PhotoRow
from bot.store.tables.week import CheckInRow, DecisionRow, EventRow
from engine.values.case import ForecastUse
from tests.support.many import Alike, many_athletes
from tests.support.weeks import Team, arrive
from tests.support.world import Said, Someone, text_of

FLAT, FINE = "61.0 1 3.5 5 on target fine", "61.0 6 3.5 4 on target fine"
TODAY = datetime(2027, 5, 7, 6, 0, tzinfo=UTC)  # seven in London, two days before Mira's event


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London, before the check-in."""
    return team_at(TODAY)


def beside_mira(team: Team, count: int, *, answered: bool = True) -> list[Someone]:
    """So many more of Ravi's athletes, two days out; those who have answered were moved by 25 g."""
    with transaction(team.world.engine) as session:
        ids = many_athletes(
            session,
            1,
            count,
            team.world.now,
            Alike(answered=answered, zones=("Europe/London",), name="A", within_days=1),
        )
        for event in session.exec(select(EventRow)):
            event.day = team.event_day
            session.add(event)
        for profile in session.exec(select(AthleteProfile)):
            profile.forecast = ForecastUse.RULES_ONLY
            session.add(profile)
        people = [session.get_one(Person, one) for one in ids]
    return [Someone(team.world, one.chat_id, one.first_name) for one in people]


def waiting(team: Team) -> list[DecisionRow]:
    with team.world.session() as session:
        return list(session.exec(select(DecisionRow).where(DecisionRow.status == "waiting")))


def blocks(said: Said) -> list[str]:
    return said.text.split("\n\n")


def block_of(said: Said, name: str) -> str:
    """What is said of one who needs the coach."""
    return next(part for part in blocks(said) if part.startswith(f"{name}, 2 days out\n"))


@dataclass
class Counted:
    """A coach whose actions are counted: what is typed, and each tap."""

    someone: Someone
    actions: int = 0

    def writes(self, text: str) -> list[Said]:
        self.actions += 1
        return self.someone.writes(text)

    def taps(self, label: str, said: Said | None = None) -> list[Said]:
        self.actions += 1
        return self.someone.taps(label, said)


def test_a_morning_with_twenty_of_whom_three_need_something_is_five_actions(team: Team) -> None:
    others = beside_mira(team, 17)
    (bela, caro) = beside_few(team, ("Bela", "Caro"))
    team.athlete.writes(FLAT)
    bela.writes(FLAT)
    caro.writes("61.0 6 1.0 4 on target headache")  # drank a litre: a caution
    arrive(team)
    coach = Counted(team.coach)
    (glance,) = coach.writes("/roster")
    assert "Roster: 20 athletes, 3 need you" in glance.text
    assert f"17 adjusted: {others[0].name} 525 g (+25 g), " in glance.text
    assert blocks(glance)[1].startswith("Caro, 2 days out\nNeeds you: open caution. Drank 1.0 L")
    assert len(glance.text) < 1400
    (seen,) = coach.taps("Approve 2 raises at once: flat in the load")
    assert "Mira, 2 days out: 500 g → 550 g (+50 g) on Fri 7 May. 61.0 kg" in seen.text
    done = coach.taps("Approve all 2")
    assert "Approved: Mira 550 g, Bela 550 g." in text_of(done)
    (card,) = coach.taps("Caro", glance)
    coach.taps("Acknowledge: caution (too little water)", card)
    assert not waiting(team)
    assert "20 athletes, nobody needs you" in text_of(team.coach.writes("/roster"))
    print(f"\na morning with twenty, three need something: {coach.actions} actions")  # noqa: T201
    assert coach.actions == 5


def beside_few(team: Team, names: Sequence[str]) -> list[Someone]:
    found = []
    for number, name in enumerate(names):
        with transaction(team.world.engine) as session:
            (one,) = many_athletes(
                session,
                1,
                1,
                team.world.now,
                Alike(
                    answered=False,
                    zones=("Europe/London",),
                    name=name,
                    first_chat=7000 + 2 * number,
                ),
            )
            person = session.get_one(Person, one)
            person.first_name = name
            event = session.exec(select(EventRow).where(EventRow.athlete_id == one)).one()
            event.day = team.event_day
            profile = session.get_one(AthleteProfile, one)
            profile.forecast = ForecastUse.RULES_ONLY
            session.add_all([person, event, profile])
            found.append(Someone(team.world, person.chat_id, name))
    return found


def test_what_changed_since_yesterday_stands_beside_each_who_needs_the_coach(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(TODAY - timedelta(days=1))
    team.athlete.writes("61.4 5 3.5 4 on target fine")
    team.morning(2)
    with transaction(team.world.engine) as session:
        session.add(
            PhotoRow(athlete_id=2, date=team.world.now.date(), pose="front", name="f" * 32,
                     received_at=team.world.now, kept_at=team.world.now)
        )  # fmt: skip
    team.athlete.writes(FLAT)
    (glance,) = team.coach.writes("/roster")
    assert block_of(glance, "Mira").splitlines()[1:] == [
        "Needs you: approve by 09:00 (Mira's time).",
        "61.0 kg (−0.4 kg since yesterday), fullness 1 (expected 6), sharpness 5 (was 4), "
        "water 3.5 L, photo sent; proposed 550 g (+50 g) for Fri 7 May: flat in the load.",
    ]


def test_without_a_check_in_yesterday_the_day_before_is_named_and_units_are_the_athletes(
    team: Team,
) -> None:
    with transaction(team.world.engine) as session:
        profile = session.get_one(AthleteProfile, 2)
        profile.weight_unit = "st"
        session.add(profile)
        session.add(
            CheckInRow(athlete_id=2, date=team.world.now.date() - timedelta(days=2),
                       weight_kg=61.4, answered_at=team.world.now)
        )  # fmt: skip
    team.athlete.writes("9 st 8.5 lb, 1, 3.5, 5, on target, fine")
    said = block_of(team.coach.writes("/roster")[0], "Mira")
    assert "9 st 8.5 lb (−0.9 lb since Wed 5 May)" in said
    assert "no photo" in said


def test_all_others_are_named_in_a_line_for_each_way_of_being_in_order(team: Team) -> None:
    moved = beside_mira(team, 2)
    plan, told, held, *_ = beside_few(team, ("Plana", "Tola", "Hela", "Missa", "Paula", "Ova"))
    plan.writes(FINE)
    told.writes("61.0 6 3.5 4 on target, bloated")
    held.writes(FINE)
    with transaction(team.world.engine) as session:
        of = {one.first_name: one.id for one in session.exec(select(Person))}
        session.add(
            HoldRow(athlete_id=of["Hela"], first=team.world.now.date(), carb_g=480,
                    last=team.world.now.date(), set_by=1, set_at=team.world.now)
        )  # fmt: skip
        paula = session.get_one(AthleteProfile, of["Paula"])
        paula.status = AthleteStatus.PAUSED
        far = session.exec(select(EventRow).where(EventRow.athlete_id == of["Ova"])).one()
        far.day += timedelta(days=20)
        session.add_all([paula, far])
    team.athlete.writes(FLAT)
    (glance,) = team.coach.writes("/roster")
    lines = glance.text.splitlines()
    assert "1 on plan: Plana" in lines
    assert f"2 adjusted: {moved[0].name} 525 g (+25 g), {moved[1].name} 525 g (+25 g)" in lines
    assert "1 on hold: Hela (480 g until Fri 7 May)" in lines
    assert "1 with complaints: Tola (bloating)" in lines
    assert "1 not checked in yet: Missa" in lines
    assert "2 not in a peak week: Paula (paused), Ova (22 days out)" in lines
    assert "Plana" not in glance.buttons
    assert text_of(team.coach.writes("Plana")).startswith("Plana\n")  # typing the name opens
    (everybody,) = team.coach.taps("All 9", glance)
    assert {"Plana", "Missa", "Paula", "Mira"} <= set(everybody.buttons)


def test_times_are_the_coachs_with_the_athletes_beside_where_they_differ(team: Team) -> None:
    beside_mira(team, 4)
    (early,) = beside_few(team, ("Tomo",))
    with transaction(team.world.engine) as session:
        session.merge(CoachSettings(person_id=1, zone="Europe/Berlin"))
        person = session.exec(select(Person).where(Person.chat_id == early.user_id)).one()
        profile = session.get_one(AthleteProfile, person.id)
        profile.prompt_time = time(8, 30)
        session.add(profile)
    team.athlete.writes(FLAT)
    said = text_of(team.coach.writes("/roster"))
    assert "approve by 10:00 your time (09:00 for Mira)" in said
    assert "1 asked at 09:30 your time (08:30 for Tomo): Tomo" in said
    assert "As of 08:00 (Europe/Berlin)" in said


def test_a_tap_under_the_glance_answers_and_the_glance_follows(team: Team) -> None:
    beside_mira(team, 4)
    team.athlete.writes(FLAT)
    (glance,) = team.coach.writes("/roster")
    after = team.coach.taps("Mira: approve 550 g", glance)
    assert "nobody needs you" in after[-1].text
    assert "Mira 550 g (+50 g)" in after[-1].text
    assert "approved" in text_of(team.athlete.hears())
    team.coach.taps("Keep 500 g", glance)  # an old message: the first word stands
    assert "Approved by Ravi" in team.coach.answers_to_taps()[-1]


def test_what_changed_while_the_coach_looked_is_left_out_and_said(team: Team) -> None:
    (bela, caro, dela) = beside_few(team, ("Bela", "Caro", "Dela"))
    for one in (team.athlete, bela, caro, dela):
        one.writes(FLAT)
    (glance,) = team.coach.writes("/roster")
    (seen,) = team.coach.taps("Approve 4 raises at once: flat in the load", glance)
    bela.writes("61.0 5 3.5 5 on target fine")  # answers anew
    caro.writes("I took a diuretic")  # an alert, and the proposal goes
    team.coach.taps("Dela: approve 550 g", glance)
    said = text_of(team.coach.taps("Approve all 4", seen))
    assert "Left out: Bela. Something changed, so I worked out Bela's day again." in said
    assert "Left out: Caro. An alert has come in since" in said
    approved = said.split("Approved: ")[1].splitlines()[0]
    assert "Bela" not in approved
    assert "Caro" not in approved
    assert "Dela" not in approved
    assert "Left out: Dela. Approved by Ravi" in said
    assert "Mira 550 g" in approved


def test_who_has_an_open_alert_is_not_among_those_approved_together(team: Team) -> None:
    (bela, caro) = beside_few(team, ("Bela", "Caro"))
    for one in (team.athlete, bela, caro):
        one.writes(FLAT)
    with transaction(team.world.engine) as session:
        person = session.exec(select(Person).where(Person.first_name == "Caro")).one()
        profile = session.get_one(AthleteProfile, person.id)
        profile.frozen_at = team.world.now
        session.add(profile)
    (glance,) = team.coach.writes("/roster")
    assert "Caro: approve 550 g" not in glance.buttons
    (seen,) = team.coach.taps("Approve 2 raises at once: flat in the load", glance)
    assert "Not among them: Caro (frozen)." in seen.text
    assert "Nothing was approved" in text_of(team.coach.taps("Approve none of them here", seen))
    assert len(waiting(team)) == 3


def test_a_typed_yes_approves_nobody(team: Team) -> None:
    (bela,) = beside_few(team, ("Bela",))
    team.athlete.writes(FLAT)
    bela.writes(FLAT)
    team.coach.writes("/roster")
    team.coach.taps("Approve 2 raises at once: flat in the load")
    team.coach.writes("yes")
    assert len(waiting(team)) == 2
    assert "Bela\n" in text_of(team.coach.writes("Bela"))  # a name still opens the card


def test_a_question_for_a_place_eats_neither_a_name_nor_a_command(team: Team) -> None:
    team.coach.writes("/digest")
    assert text_of(team.coach.writes("Mira")).startswith("Mira\n")  # a town in Portugal, too
    assert "Roster: 1 athlete" in text_of(team.coach.writes("/roster"))
    assert "Lisbon" in text_of(team.coach.writes("Lisbon")) or team.coach.all_said()[-1].buttons


def test_thirty_who_all_need_the_coach_with_the_longest_names_fit_telegrams_limits(
    team: Team,
) -> None:
    with transaction(team.world.engine) as session:
        many_athletes(
            session,
            1,
            30,
            team.world.now,
            Alike(zones=("Europe/London",), name="🏋" * 60, within_days=1),
        )
        for number, row in enumerate(session.exec(select(DecisionRow)).all()):
            row.status = "waiting"
            row.sign_off_due_at = team.world.now + timedelta(hours=1 + number / 10)
            row.decision = {
                **row.decision, "rule": "flat-in-load", "lapse_g": 525.0,
                "trace": {**row.decision["trace"], "facts": {"expected_fullness": 7}},
            }  # fmt: skip
            session.add(row)
    (page,) = team.coach.writes("/roster")
    openers = 0
    while True:
        assert len(page.text.encode("utf-16-le")) // 2 <= 4096
        rows = page.payload["reply_markup"]["inline_keyboard"]
        assert sum(len(row) for row in rows) <= 100
        openers += sum(b["callback_data"].startswith("c:card:") for row in rows for b in row)
        if "Next page" not in page.buttons:
            break
        (page,) = team.coach.taps("Next page", page)
    assert openers == 30
    (seen,) = team.coach.taps("Approve 12 raises at once: flat in the load", page)
    assert len(seen.text.encode("utf-16-le")) // 2 <= 4096


def test_thirty_in_order_are_one_short_message(team: Team) -> None:
    beside_mira(team, 29)
    team.athlete.writes(FINE)
    (glance,) = team.coach.writes("/roster")
    assert len(glance.text) < 1600
    assert glance.text.startswith("Roster: 30 athletes, nobody needs you\n\n")
    assert "1 on plan: Mira\n29 adjusted: A 0 525 g (+25 g), A 1 " in glance.text


def test_whom_a_rule_wants_looked_at_is_not_among_those_on_plan(team: Team) -> None:
    looked_at, fine, *_ = beside_mira(team, 6, answered=False)
    looked_at.writes("61.0 4 3.5 2 on target fine")
    fine.writes(FINE)
    (said,) = team.coach.writes("/roster")
    assert f"1 to look at: {looked_at.name} (" in said.text
    assert f"on plan: {fine.name}" in said.text or f"adjusted: {fine.name}" in said.text
