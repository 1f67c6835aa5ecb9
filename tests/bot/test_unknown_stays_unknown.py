"""Who counts neither salt nor fibre sees no figure for them on any screen, and nothing cuts them."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from importlib import import_module

import pytest
from alembic.migration import MigrationContext
from alembic.operations import Operations
from sqlalchemy import Engine
from sqlmodel import select

from bot.decision import words_target as athlete_words
from bot.people.people import get_profile
from bot.store.db import transaction
from bot.store.tables.week import PlanRow
from bot.week.load import current_week
from bot.words.languages import speaking
from engine.values.plan import DayTarget
from tests.bot.test_food import FOODS, add, food
from tests.bot.test_sheets_in_and_out import handed_out, page_of, sends_back, with_cells
from tests.support.weeks import Team, gone_on, in_peak_week
from tests.support.world import text_of

UNSURE = ("14", "not sure", "not sure")
FIGURE = re.compile(r"(sodium|fibre|salt)\D{0,3}\d|\d ?mg", re.IGNORECASE)


@pytest.fixture
def team(own_engine: Engine) -> Team:
    """Two days out, at six in London."""
    return gone_on(in_peak_week(own_engine, later=UNSURE), two_days_out)


def two_days_out(team: Team) -> None:
    team.world.until(datetime(2027, 5, 7, 5, 0, tzinfo=UTC))


def day(team: Team, days_out: int) -> DayTarget:
    with team.world.session() as session:
        profile = get_profile(session, team.athlete_id)
        week = current_week(session, profile)
        assert week is not None
        found = week.plan.day(days_out)
        assert found is not None
        return found


def test_the_days_targets_say_as_always_and_give_no_figure(team: Team) -> None:
    said = text_of(team.athlete.writes("/today"))
    assert "Salt and fibre as always" in said
    assert not FIGURE.search(said)


def test_the_menu_asks_for_no_sodium_and_says_to_salt_as_usual(team: Team) -> None:
    for query, name, liking in FOODS:
        add(team, query, name, liking)
    said = food(team).text
    assert "Salt and fibre as you usually do." in said
    assert not FIGURE.search(said) and "Not quite" not in said


def test_the_draft_explains_that_they_stay_as_always(team: Team) -> None:
    team.coach.presses(f"c:draft:{team.athlete_id}")
    for button in ("Even", "8.2 g/kg", "Mild"):
        said = team.coach.all_said()[-1]
        team.coach.taps(next(b for b in said.buttons if b.casefold().startswith(button.casefold())))
    said = text_of(team.coach.taps("Why these numbers"))
    assert "Sodium, as always" in said and "Fibre, as always" in said
    assert not FIGURE.search(said)


def test_a_coach_may_set_a_figure_is_cautioned_and_may_take_it_back(team: Team) -> None:
    said = text_of(team.coach.writes("Mira 1 days out sodium 2000"))
    assert "Caution: sodium has a figure, and nobody has counted the habit" in said
    assert day(team, 1).sodium_mg == 2000
    assert "as always" in text_of(team.coach.writes("Mira 1 days out sodium as always"))
    assert day(team, 1).sodium_mg is None


def test_a_sheet_carries_as_always_out_and_back(team: Team) -> None:
    content = handed_out(team)
    _, page = page_of(content)
    words = [cell.value for row in page.iter_rows() for cell in row if cell.value == "as always"]
    assert len(words) == 16  # two a day
    back = with_cells(content, C12=300)
    said = sends_back(team, back)
    assert "as always" not in said and "sodium" not in said.lower()


def test_german_says_it_too(ours: None) -> None:
    target = DayTarget(days_out=2, carb_g=400, protein_g=120, fat_g=40, water_l=3.5)
    with speaking("de"):
        assert "Salz und Ballaststoffe wie immer" in athlete_words.target_lines(target, 400, "l")


@pytest.mark.parametrize("stood_in", [("sodium_mg",), ()], ids=["it stood in", "it was counted"])
def test_an_ordinary_figure_that_stood_in_goes_and_one_that_was_counted_stays(
    any_engine: Engine, stood_in: tuple[str, ...]
) -> None:
    team = in_peak_week(any_engine, later=("14", "25", "2000"))
    with transaction(any_engine) as session:
        profile = get_profile(session, team.athlete_id)
        profile.screening = profile.screening | {"_assumed": list(stood_in)}
        session.add(profile)
    revision = import_module("bot.store.migrations.versions.0034_what_is_not_counted_stays_unknown")
    with (
        any_engine.begin() as connection,
        Operations.context(MigrationContext.configure(connection)),
    ):
        revision.upgrade()
    kept = None if stood_in else 2000
    assert team.profile().baseline["sodium_mg"] == kept
    assert team.profile().baseline["fibre_g"] == 25
    assert day(team, 2).sodium_mg == kept and day(team, 2).fibre_g is not None
    with team.world.session() as session:
        assert len(session.exec(select(PlanRow)).all()) == 1
