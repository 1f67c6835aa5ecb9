"""Two coaches agree to their sheets at the same moment: one holds, and the other is shown what changed.

On SQLite and on PostgreSQL, with threads that really run at the same time.
"""

from __future__ import annotations

from sqlmodel import col, select

from bot.store.tables.week import PlanRow
from tests.bot.test_raced_actions import Two, at_once, pressing, two
from tests.support.files import sends_file
from tests.support.roster_sheets import csv_of
from tests.support.world import Someone, text_of

__all__ = ["two"]


def asked(someone: Someone, plan: str) -> str:
    """The sheet is sent, what it would do is shown; the data of the button that agrees to it."""
    content = csv_of({"Code": "A2-E1", "Event": "show", "Day": "", "Plan": plan})
    shown = next(one for one in sends_file(someone, content, name="a.csv") if one.buttons)
    return shown.buttons["Set it up"]


def test_two_sheets_agreed_to_at_once_are_one_and_the_other_is_shown_anew(two: Two) -> None:
    ravi, noa = two.team.coach, two.noa
    first, second = asked(ravi, "front-load"), asked(noa, "back-load")
    for someone in (ravi, noa, two.team.athlete):
        someone.hears()
    at_once(two.engine, pressing(two, ravi, first), pressing(two, noa, second))
    with two.team.world.session() as session:
        rows = session.exec(select(PlanRow).order_by(col(PlanRow.id))).all()
    assert len(rows) == 2
    winner, loser = (ravi, noa) if rows[-1].shape == "front-load" else (noa, ravi)
    assert "Done: 1 athlete is set up" in text_of(winner.hears())
    assert "something has changed for Mira. Nothing was set up" in text_of(loser.hears())
