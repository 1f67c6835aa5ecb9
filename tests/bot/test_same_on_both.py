"""The same days on SQLite and on PostgreSQL: everybody reads the same words in the same order."""

from __future__ import annotations

from typing import Any

from sqlalchemy import Engine
from sqlmodel import Session, col, select

from bot.store.tables.people import HistoryRow
from bot.store.tables.traffic import OutboxRow
from bot.store.tables.week import AlertRow, CheckInRow, DaySetRow, DecisionRow
from tests.support.weeks import in_peak_week

DAYS = {
    7: ("61.0 5 3.5 4 on target", "fullness 4"),
    6: ("60.8", "6", "/week", "slept badly, legs heavy"),
    5: ("60.6 3 3 4", "calves cramp a bit since the night"),
    4: ("60.9 5 3.5 4", "I fainted this morning, chest pain", "/today"),
}  # fmt: skip


def lived_through(engine: Engine) -> dict[str, list[Any]]:
    """What was said and kept in these days, without the numbers that a database gives to rows."""
    team = in_peak_week(engine)
    for days_out, written in DAYS.items():
        team.morning(days_out)
        for text in written:
            team.athlete.writes(text)
        team.coach.writes("/roster")
    with Session(engine) as session:
        said = session.exec(select(OutboxRow).order_by(col(OutboxRow.id))).all()
        decided = session.exec(select(DecisionRow).order_by(col(DecisionRow.id))).all()
        answered = session.exec(select(CheckInRow).order_by(col(CheckInRow.id))).all()
        alerts = session.exec(select(AlertRow).order_by(col(AlertRow.id))).all()
        sets = session.exec(select(DaySetRow).order_by(col(DaySetRow.id))).all()
        changes = session.exec(select(HistoryRow).order_by(col(HistoryRow.id))).all()
    return {
        "said": [(row.chat_id, row.method, row.payload.get("text"), row.status) for row in said],
        "decided": [(d.sets_date, d.outcome, d.status, d.carb_g, d.decision) for d in decided],
        "answered": [(c.date, c.revision, c.weight_kg, c.fullness, c.water_l) for c in answered],
        "alerts": [(a.flag, a.level, a.date, a.facts) for a in alerts],
        "sets": [(one.date, one.carb_g, one.by) for one in sets],
        "changes": [(one.what, one.at) for one in changes],
    }


def test_everybody_reads_the_same_in_the_same_order_on_either_database(
    sqlite_engine: Engine, postgres_engine: Engine
) -> None:
    there, here = lived_through(postgres_engine), lived_through(sqlite_engine)
    for what, rows in here.items():
        assert there[what] == rows, what
        assert rows, what
