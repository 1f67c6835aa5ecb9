"""The week as a table, read from the database: what was told, planned and set, and what happened."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from zoneinfo import ZoneInfo

from sqlmodel import Session, col, select

from bot.decision.words_target import BOUNDS
from bot.people.changes import Change
from bot.rehearsal.driver import Driver
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.store.tables.week import AlertRow, DecisionRow, DecisionStatus, EventRow
from bot.week.cases import decision_of
from bot.week.load import checkin_row, current_plan, day_set
from engine.values.plan import PLAN_DAYS, DayTarget

HEADS = ("Out", "Day", "Weight", "Full", "Sharp", "Water", "Planned", "Set", "What happened")
WIDTHS = (3, 10, 7, 4, 5, 6, 7, 5)
AGAIN = {1: "", 2: " twice"}
SIGNED = {
    DecisionStatus.APPROVED: "approved by the coach",
    DecisionStatus.OTHER_FIGURE: "another figure set by the coach",
    DecisionStatus.PLAN_KEPT: "the coach kept the plan",
    DecisionStatus.LAPSED: "no word in time, so the small step stands",
    DecisionStatus.WAITING: "waits for the coach",
}


@dataclass(frozen=True, slots=True)
class Row:
    """One day. The figures are texts as shown; `carb_g` is what was in force (None: no target)."""

    days_out: int
    cells: tuple[str, ...]
    carb_g: float | None
    happened: tuple[str, ...]


def week_rows(driver: Driver) -> list[Row]:
    """The eight days of the event set last; empty where there is none with a plan."""
    with Session(driver.engine) as session:
        event = session.exec(select(EventRow).order_by(col(EventRow.id).desc())).first()
        plan = current_plan(session, event) if event else None
        if event is None or plan is None:
            return []
        return [_row(session, event, plan.day(out), out) for out in PLAN_DAYS]


def table_lines(rows: Sequence[Row], width: int) -> list[str]:
    """The rows under their heads; what happened is wrapped in its own column."""
    room = max(width - sum(WIDTHS) - 2 * len(WIDTHS), 24)
    lines = [_line(HEADS), "─" * min(width, sum(WIDTHS) + 2 * len(WIDTHS) + room)]
    for row in rows:
        wrapped = textwrap.wrap("; ".join(row.happened), room) or [""]
        lines.append(_line((*row.cells, wrapped[0])))
        lines += [_line(("",) * len(WIDTHS) + (more,)) for more in wrapped[1:]]
    return lines


def _line(cells: Sequence[str]) -> str:
    shown = [
        cell.ljust(width) if number < 2 else cell.rjust(width)
        for number, (cell, width) in enumerate(zip(cells, WIDTHS, strict=False))
    ]
    return "  ".join((*shown, cells[len(WIDTHS)])).rstrip()


def _row(session: Session, event: EventRow, planned: DayTarget | None, days_out: int) -> Row:
    day = event.day - timedelta(days=days_out)
    told = checkin_row(session, event.athlete_id, day)
    standing = day_set(session, event.athlete_id, day)
    carb_g = standing.carb_g if standing else planned.carb_g if planned else None
    cells = (
        str(days_out),
        f"{day:%a} {day.day} {day:%b}",
        _shown(told.weight_kg if told else None, " kg", 1),
        _shown(told.fullness if told else None),
        _shown(told.sharpness if told else None),
        _shown(told.water_l if told else None, " L", 1),
        _shown(planned.carb_g if planned else None, " g"),
        _shown(carb_g, " g"),
    )
    return Row(days_out, cells, carb_g, tuple(_happened(session, event, day)))


def _shown(value: float | None, unit: str = "", decimals: int = 0) -> str:
    return "" if value is None else f"{value:.{decimals}f}{unit}"


def _happened(session: Session, event: EventRow, day: date) -> list[str]:
    return [
        *_missed(session, event, day),
        *_decided(session, event, day),
        *_alerts(session, event, day),
        *_set_by_hand(session, event, day),
    ]


def _decided(session: Session, event: EventRow, day: date) -> list[str]:
    query = (
        select(DecisionRow)
        .where(DecisionRow.athlete_id == event.athlete_id, DecisionRow.sets_date == day)
        .order_by(col(DecisionRow.id))
    )
    rows = list(session.exec(query))
    if not rows:
        return []
    last = rows[-1]
    decision = decision_of(last)
    change = decision.change_g
    what = f"{last.outcome}, {decision.rule.replace('-', ' ')}"
    if change:
        what += f", {change:+.0f} g"
    said = [what]
    if decision.bound:
        said.append(f"held by {BOUNDS[decision.bound]}")
    if last.status in SIGNED:
        said.append(SIGNED[DecisionStatus(last.status)])
    again = len(rows) - 1
    if again:
        said.append(f"decided again{AGAIN.get(again, f' {again} times')}")
    return said


def _missed(session: Session, event: EventRow, day: date) -> list[str]:
    zone = ZoneInfo(session.get_one(AthleteProfile, event.athlete_id).zone or "UTC")
    query = select(HistoryRow).where(
        HistoryRow.athlete_id == event.athlete_id, HistoryRow.what == Change.MISSED
    )
    missed = [row for row in session.exec(query) if row.at.astimezone(zone).date() == day]
    return ["check-in missed, the coach was told"] if missed else []


def _alerts(session: Session, event: EventRow, day: date) -> list[str]:
    query = (
        select(AlertRow)
        .where(AlertRow.athlete_id == event.athlete_id, AlertRow.date == day)
        .order_by(col(AlertRow.id))
    )
    return [_alert(session, row) for row in session.exec(query)]


def _alert(session: Session, row: AlertRow) -> str:
    what = f"{row.level}: {row.flag.replace('-', ' ')}"
    if row.acknowledged_by is None:
        return what if row.acknowledged_at else f"{what}, not acknowledged yet"
    return f"{what}, acknowledged by {session.get_one(Person, row.acknowledged_by).first_name}"


def _set_by_hand(session: Session, event: EventRow, day: date) -> list[str]:
    query = select(HistoryRow).where(
        HistoryRow.athlete_id == event.athlete_id, HistoryRow.what == Change.DAY_SET_BY_HAND
    )
    by_hand = [row for row in session.exec(query) if row.detail.get("day") == day.isoformat()]
    return ["set by the coach's hand"] if by_hand else []
