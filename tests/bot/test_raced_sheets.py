"""A sheet and another change at the same moment: one outcome, and everybody concerned reads it.

On SQLite and on PostgreSQL, with threads that really run at the same time.
"""

from __future__ import annotations

from sqlmodel import col, select

from bot.people.people import get_profile
from bot.store.tables.people import HistoryRow
from bot.store.tables.week import PlanRow
from bot.week.load import current_week
from tests.bot.test_raced_actions import Two, at_once, pressing, two, writing
from tests.bot.test_sheets_in_and_out import handed_out, with_cells
from tests.support.files import sends_file
from tests.support.world import Someone, text_of

__all__ = ["two"]

MOVED_ON = "have changed since this sheet was made"


def carbs(two: Two, days_out: int) -> float:
    with two.team.world.session() as session:
        profile = get_profile(session, 2)
        week = current_week(session, profile)
        assert week is not None
        day = week.plan.day(days_out)
        assert day is not None
        return day.carb_g


def versions(two: Two) -> int:
    with two.team.world.session() as session:
        return len(session.exec(select(PlanRow)).all())


def asked_to_take(someone: Someone, content: bytes) -> str:
    """The sheet is sent, its differences are shown; the data of the button that takes it over."""
    (shown,) = [one for one in sends_file(someone, content, name="plan.xlsx") if one.buttons]
    return shown.buttons["Use these changes"]


def test_two_sheets_of_one_version_taken_at_once_are_one_and_the_other_reads_why(two: Two) -> None:
    ravi, noa = two.team.coach, two.noa
    content = handed_out(two.team)
    first = asked_to_take(ravi, with_cells(content, C12=470))
    second = asked_to_take(noa, with_cells(content, C12=460))
    for someone in (ravi, noa, two.team.athlete):
        someone.hears()
    at_once(two.engine, pressing(two, ravi, first), pressing(two, noa, second))
    assert versions(two) == 2
    ravis = carbs(two, 1) == 470
    assert carbs(two, 1) == (470 if ravis else 460)
    winner, loser = (ravi, noa) if ravis else (noa, ravi)
    said = text_of(winner.hears())
    assert "Done: 1 change is now set" in said
    assert MOVED_ON not in said
    said = text_of(loser.hears())
    assert MOVED_ON in said
    assert f"Mira, by {winner.name}: set the plan (1 day out: carbs 500 g to" in said
    assert len([m for m in two.team.athlete.hears() if "changed the plan" in m.text]) == 1


def test_a_sheet_taken_while_a_number_changes_is_taken_first_or_not_at_all(two: Two) -> None:
    ravi, noa = two.team.coach, two.noa
    take = asked_to_take(noa, with_cells(handed_out(two.team), C12=470, D12=150))
    ravi.presses("c:num:2:0:carb_g")
    for someone in (ravi, noa):
        someone.hears()
    at_once(two.engine, pressing(two, noa, take), writing(two, ravi, "420"))
    # The number stands either way; the sheet's two cells stand together or not at all.
    assert carbs(two, 0) == 420
    taken = carbs(two, 1) == 470
    assert versions(two) == (3 if taken else 2)
    with two.team.world.session() as session:
        rows = session.exec(
            select(HistoryRow).where(HistoryRow.what == "plan set").order_by(col(HistoryRow.id))
        ).all()
        profile = get_profile(session, 2)
        week = current_week(session, profile)
    assert week is not None
    protein = [day.protein_g for day in week.plan if day.days_out == 1]
    assert (protein == [150]) == taken
    assert [row.by_id for row in rows] == ([3, 1] if taken else [1])
    said = text_of(noa.hears())
    assert (MOVED_ON in said) != taken
    assert ("now set" in said) == taken
    assert "Mira, by Ravi: set the plan (" in said
    assert ("Mira, by Noa: set the plan" in text_of(ravi.hears())) == taken
    late = text_of(sends_file(noa, with_cells(handed_out(two.team), C12=480), name="plan.xlsx"))
    assert "Use these changes?" in late  # a fresh sheet is of the version that now holds
