"""An athlete's card: what is open and what is set, and a tap for what waits."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime

import pytest

from bot.store.db import transaction
from bot.store.tables.coach import Rights
from bot.store.tables.people import Person
from bot.store.tables.photos import PhotoRow
from bot.week.load import day_set
from tests.bot.test_leaving import beside
from tests.support.weeks import Team
from tests.support.world import Said, text_of

FLAT = "61.0 1 3.5 5 on target fine"


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Two days out, Friday 7 May, at seven in London, before the check-in."""
    return team_at(datetime(2027, 5, 7, 6, 0, tzinfo=UTC))


def card(team: Team) -> Said:
    (shown,) = team.coach.presses("c:card:2")
    return shown


def test_a_drug_named_after_the_check_in_takes_back_the_raise_that_waits(team: Team) -> None:
    team.athlete.writes(FLAT)
    assert "Waits for approval" in card(team).text
    team.athlete.writes("I took a diuretic")
    assert "Waits for approval" not in card(team).text


def test_what_is_open_stands_on_the_card_with_a_tap_for_each(
    team_at: Callable[[datetime], Team],
) -> None:
    team = team_at(datetime(2027, 5, 6, 6, 0, tzinfo=UTC))
    team.athlete.writes("I took a diuretic")
    team.athlete.writes("61.2 5 3.5 4 on target fine")
    team.morning(2)
    team.athlete.writes(FLAT)
    shown = card(team)
    assert "Open since Thu 6 May, 07:00 (Mira's time): caution (drug named)" in shown.text
    assert "Waits for approval until 09:00 (Mira's time): 550 g for Fri 7 May" in shown.text
    after = team.coach.taps("Acknowledge: caution (drug named)", shown)
    assert "Open since" not in after[-1].text
    after = team.coach.taps("Keep the plan, 500 g", after[-1])
    assert "Waits for approval" not in after[-1].text
    assert not {"Approve 550 g", "Keep the plan, 500 g"} & set(after[-1].buttons)
    with team.world.session() as session:
        standing = day_set(session, 2, date(2027, 5, 7))
    assert standing is not None
    assert standing.carb_g == 500
    team.coach.taps("Keep the plan, 500 g", shown)
    assert "kept the plan" in team.coach.answers_to_taps()[-1]


#: Everything that a card leads to, by the name in its buttons.
LEADS_TO = {
    "event", "season", "asks", "plan", "limits", "why", "picture", "answers", "history", "sheet",
    "photos", "eye", "setup", "calendar", "food", "debrief", "files", "whatif", "weeks", "timeline",
    "hand", "hold", "freeze", "tomorrow", "forecast", "message", "second", "end",
}  # fmt: skip
MOST_AT_FIRST, PAGES = 8, ("Plan …", "Event …", "Person …")


def test_the_first_page_has_what_a_morning_needs_and_all_the_rest_is_a_tap_further(
    team: Team,
) -> None:
    first = card(team)
    views = [data.split(":")[1] for data in first.buttons.values()]
    assert len([view for view in views if view not in ("page", "food", "roster")]) <= MOST_AT_FIRST
    for page in PAGES:
        (shown,) = team.coach.taps(page, first)
        views += [data.split(":")[1] for data in shown.buttons.values()]
        assert "Mira\n" in text_of(team.coach.taps("Back to the card", shown))
    beside = [view for view in views if view not in ("page", "roster", "card")]
    assert sorted(beside) == sorted(LEADS_TO), "each of them, on one page only"


def test_two_taps_from_the_roster_decide(team: Team) -> None:
    team.athlete.writes(FLAT)
    team.coach.writes("/roster")
    team.coach.taps("Mira")
    team.coach.taps("Approve 550 g")
    assert "approved the change" in text_of(team.athlete.hears())


def test_the_last_words_beside_a_mornings_numbers_stay_in_sight(team: Team) -> None:
    team.athlete.writes("61.0 4 3.5 5 slept on a sofa")
    assert 'Also reported today: "slept on a sofa"' in card(team).text
    team.morning(1)
    assert 'Last note, Fri 7 May: "slept on a sofa"' in card(team).text


def test_limits_pictures_freeze_and_contacts_are_said(team: Team) -> None:
    beside(team, "Noa", 150, Rights.FULL)
    with transaction(team.world.engine) as session:
        ola = Person(telegram_user_id=160, chat_id=160, first_name="Ola", created_at=team.world.now)
        session.add(ola)
        session.flush()
        ravi = session.get_one(Person, 1)
        ravi.second_contact_id = ola.id
        session.add(ravi)
        for day in (5, 6):
            session.add(
                PhotoRow(
                    athlete_id=2, date=date(2027, 5, day), pose="front", name=f"{day}" * 32,
                    received_at=team.world.now, kept_at=team.world.now,
                )
            )  # fmt: skip
    team.coach.presses("c:freeze:2")
    said = card(team).text
    assert (
        "Limits: carb floor 135 g, carb ceiling 685 g, step 25 g, auto-approve up to 25 g" in said
    )
    assert "Last photos: Thu 6 May (2 mornings in all)" in said
    assert "Frozen since Fri 7 May, 07:00" in said
    assert "Coach: Ravi. Second coach: Noa (everything). Second contact: Ola" in said
