"""The coach puts the load where they want it: in a draft, on a day, by a typed line, in a sheet."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

import pytest
from sqlmodel import select

from bot.people.changes import Change
from bot.store.tables.people import HistoryRow
from bot.store.tables.week import DecisionRow, PlanRow
from engine.decision.decide import case_from_dict, decide
from engine.values.plan import Phase
from tests.bot.test_sheets_in_and_out import handed_out, sends_back, with_cells
from tests.support.weeks import Team
from tests.support.world import text_of


@pytest.fixture
def team(team_at: Callable[[datetime], Team]) -> Team:
    """Everything is set; seven days out, at six in London, before the first question."""
    return team_at(datetime(2027, 5, 2, 5, 0, tzinfo=UTC))


def as_before_phases(team: Team) -> None:
    """The plan's row as it was kept before days were named."""
    with team.world.session() as session:
        for row in session.exec(select(PlanRow)):
            row.days = [{k: v for k, v in day.items() if k != "phase"} for day in row.days]
            session.add(row)
        session.commit()


def drafts(team: Team, *taps: str) -> str:
    team.coach.presses(f"c:draft:{team.athlete_id}")
    said = ""
    for tap in taps:
        said = text_of(team.coach.taps(tap))
    return said


def test_a_front_load_is_drafted_from_five_days_out_and_the_plan_says_what_each_day_is_for(
    team: Team,
) -> None:
    said = drafts(team, "front-load", "8.2 g/kg", "Mild")
    assert "Depletion\n7, Sun 2 May" in said
    assert "Load\n5, Tue 4 May: 600 / " in said
    assert "Rest from the load\n2, Fri 7 May" in said
    assert "Event day\n0, Sun 9 May" in said
    assert "Load, 5 to 3 days out: 1,500 g carbs in all" in said


@pytest.mark.parametrize(
    ("typed", "line"),
    [
        ("5-3", "Load, 5 to 3 days out"),
        ("4 2 1", "Load, 4, 2 and 1 days out"),
        ("1", "Load, 1 day out"),
        ("5 to 1", "Load, 5 to 1 days out"),
    ],
)
def test_the_load_of_a_draft_goes_on_the_days_that_the_coach_sends(
    team: Team, typed: str, line: str
) -> None:
    assert "Use it?" in drafts(team, "even", "8.2 g/kg", "Mild")
    assert "The load is 3 to 1 days out now" in text_of(team.coach.taps("Other load days"))
    for nonsense in ("soon", "8 7", "6-1", "0"):
        assert "from 7 to 1 days out" in text_of(team.coach.writes(nonsense)), nonsense
    assert line in text_of(team.coach.writes(typed))
    assert "Load, 2 to 1 days out" in (
        text_of(team.coach.taps("Other load days")) and text_of(team.coach.taps("2 to 1 days out"))
    )


def test_a_plan_of_before_phases_is_shown_with_its_load_where_it_was(team: Team) -> None:
    as_before_phases(team)
    assert team.week().plan.load_days == (3, 2, 1)
    shown = text_of(team.coach.presses(f"c:plan:{team.athlete_id}"))
    assert "Load\n3, Thu 6 May" in shown
    team.coach.presses(f"c:num:{team.athlete_id}:2:protein_g")
    team.coach.writes("130")
    plan = team.week().plan
    assert [plan.phase(out) for out in (4, 3, 0)] == [Phase.DEPLETION, Phase.LOAD, Phase.EVENT]
    # That the days have names now is no change of the coach's.
    with team.world.session() as session:
        rows = session.exec(select(HistoryRow).where(HistoryRow.what == Change.PLAN_SET)).all()
    assert [day["fields"].keys() for day in rows[-1].detail["changed"]] == [{"protein_g"}]


def test_a_coach_says_what_a_day_is_for_by_a_tap_or_in_words(team: Team) -> None:
    team.coach.presses(f"c:day:{team.athlete_id}:4")
    asked = text_of(team.coach.taps("Phase"))
    assert "4 days out is a depletion day now" in asked
    assert "Phase, 4 days out: Load." in text_of(team.coach.taps("Load"))
    shown = text_of(team.coach.presses(f"c:history:{team.athlete_id}"))
    assert "set the plan (4 days out: phase Depletion to Load)" in shown
    assert team.week().plan.load_days == (4, 3, 2, 1)
    assert "Phase, 2 days out: Rest from the load." in text_of(
        team.coach.writes("Mira 2 days out phase rest")
    )
    assert team.week().plan.load_days == (4, 3, 1)
    assert "tap" in text_of(team.coach.writes("Mira 2 days out phase party")).lower()


def test_a_large_day_five_out_is_named_and_a_spill_after_it_is_seen_for_what_it_is(
    team: Team,
) -> None:
    said = text_of(team.coach.writes("Mira 5 days out carbs 450"))
    assert "5 days out now counts as a refeed. Tap Phase on that day to say otherwise." in said
    team.world.now = datetime(2027, 5, 5, 6, 30, tzinfo=UTC)  # the morning after
    team.athlete.writes("60.9 7 3.5 2 soft and blurry, spilled over")
    with team.world.session() as session:
        row = session.exec(select(DecisionRow)).one()
    assert row.decision["rule"] == "spilled-over"
    assert row.decision["days_out"] == 4
    assert decide(case_from_dict(row.case)).rule == "spilled-over"


def test_a_sheet_has_a_column_for_the_phase_and_one_without_it_changes_none(team: Team) -> None:
    content = handed_out(team)
    said = sends_back(team, with_cells(content, L9="load", C9=450))
    assert "4 days out, phase: Depletion → Load" in said
    team.coach.writes("no")
    assert "nothing in it is different" in sends_back(team, with_cells(content, L5="mine", L9=None))
    wrong = sends_back(team, with_cells(content, L9="party", L13="load"))
    assert 'L9: "party" is nothing that this day can be for' in wrong
    assert 'L13: "load" is nothing that this day can be for' in wrong
    long: dict[str, Any] = {f"L{row}": "load" for row in range(6, 13)}
    assert "at most 5 days" in sends_back(team, with_cells(content, **long))


def test_a_plan_from_a_sheet_may_move_the_load_as_a_whole(team: Team) -> None:
    names = ["depletion", "load", "load", "load", "rest", "rest", "rest"]
    cells: dict[str, Any] = {f"L{6 + at}": name for at, name in enumerate(names)}
    sends_back(
        team,
        with_cells(handed_out(team), **cells, C7=500, C8=450, C9=400, C10=200, C11=190, C12=180),
    )
    team.coach.taps("Use these changes")
    assert team.week().plan.load_days == (6, 5, 4)
    assert replace(team.week().plan.days[1], phase=None).carb_g == 500


def test_what_the_day_is_for_stands_in_the_question_the_target_today_the_week_and_on_the_card(
    team: Team,
) -> None:
    drafts(team, "front-load", "8.2 g/kg", "Mild")
    team.coach.taps("Use this plan")
    expected = {
        7: "Low day",
        5: "Load, day 1 of 3",
        3: "Load, day 3 of 3",
        2: "Taper after the load",
    }
    for out, phase in expected.items():
        team.morning(out)
        assert f"{out} days out. {phase}." in text_of(team.athlete.hears())
        inside = phase[0].lower() + phase[1:]
        sharp = " 4" if out <= 5 else ""
        said = text_of(team.athlete.writes(f"61.2 6 3.5{sharp} on target fine"))
        assert f": {inside}\nCarbs" in said
        assert f": {inside}\nCarbs" in text_of(team.athlete.writes("/today"))
        (card,) = team.coach.presses(f"c:card:{team.athlete_id}")
        assert f"({inside})" in card.text
    shown = text_of(team.athlete.writes("/week"))
    assert "\n\nLoad\n5 out, Tue 4 May" in shown
    assert "\n\nRest from the load\n2 out, Fri 7 May" in shown
