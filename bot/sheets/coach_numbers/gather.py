"""From rows to the frames that a coach's numbers are counted in: own athletes only, few queries."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import TYPE_CHECKING, Any

from sqlalchemy import select as pick
from sqlmodel import Session

from bot.core.timing import instants
from bot.decision.words_forecast import nearest
from bot.people.people import athletes_of
from bot.sheets.coach_numbers import reckoning as r
from bot.sheets.past_weeks.importing import imported_events
from bot.store.base import batches, id_of, rows_of_all
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow, DecisionRow, DecisionStatus, EventRow
from bot.week.prompts import asked_that_day
from bot.week.weeks_of import WeekRows, weeks_of
from engine.decision.foresight import Odds
from engine.decision.record import built, by_forecast
from engine.values.checkin import CoachLook
from engine.values.shares import Share

if TYPE_CHECKING:
    import pandas as pd

DAY = timedelta(days=1)
#: What rule and forecast asked for, as a trace has it.
ASKED = ("rule_g", "forecast_g", "asked_g")
#: Where on the scale of fullness a coach's word puts a morning, against what was expected then.
GRADES = {
    CoachLook.FLAT: -2, CoachLook.ON_COURSE: 0, CoachLook.FULL: 0, CoachLook.SOFTENING: 1,
    CoachLook.SPILLED: 2,
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Frames:
    """What was counted, for whoever wants to count again: a row a week, a day, a proposal."""

    weeks: pd.DataFrame
    days: pd.DataFrame
    changes: pd.DataFrame
    forecasts: pd.DataFrame
    proposals: pd.DataFrame


def numbers_of(session: Session, coach: Person, now: datetime) -> tuple[r.Numbers, Frames]:
    """Everything about this coach's athletes, as they are now, and weeks that lie behind."""
    import pandas as pd  # noqa: PLC0415 - it takes half a second to load

    profiles = {profile.person_id: profile for profile in athletes_of(session, coach)}
    ids = sorted(profiles)
    imported = imported_events(session, ids)
    over = [
        week
        for found in weeks_of(session, ids, until=now.date()).values()
        for week in found
        if week.day < now.date() and week.mornings
    ]
    asked = _asked(session, over, profiles, imported)
    decisions = list(_decisions(session, ids))
    foreseen = {
        (row.athlete_id, row.sets_date)
        for row in decisions
        if row.status != DecisionStatus.REPLACED
        and by_forecast(row.rule_g, row.forecast_g, row.asked_g)
    }
    looked = _looked(session, ids, id_of(coach))
    days = _frame(pd, _days(over, looked, asked, imported, foreseen), _OF_A_DAY)
    days = days.merge(_answered(session, ids, profiles), on=["athlete_id", "date"], how="left")
    # A week from a sheet was asked about nobody knows when.
    days.loc[days["event_id"].isin(imported), "after_prompt_min"] = None
    weeks = _frame(
        pd,
        (
            {
                "athlete_id": week.athlete_id, "event_id": week.event_id, "event_day": week.day,
                "kind": week.kind, "look": week.look, "imported": week.event_id in imported,
            }
            for week in over
        ),
        ("athlete_id", "event_id", "event_day", "kind", "look", "imported"),
    )  # fmt: skip
    proposals = _frame(pd, _proposals(decisions), ("athlete_id", "date", "status", "minutes"))
    forecasts = _frame(pd, _forecasts(decisions, over), _OF_A_FORECAST)
    changed = r.changes(days)
    bands, brier = r.calibration(forecasts)
    return (
        r.Numbers(
            athletes=len(profiles),
            weeks=len(weeks),
            imported=int(weeks["imported"].sum()),
            looks=r.looks(weeks),
            helped=r.shares_by(changed, "done"),
            by_rule=r.shares_by(changed[changed["done"] != r.KEPT], "rule"),
            answered=_share(days.loc[days["asked"].astype(bool), "answered"]),
            after_prompt=r.minutes(days["after_prompt_min"]),
            signed=_share(proposals["status"].isin(_ANSWERED)),
            to_sign=r.minutes(proposals["minutes"]),
            sharpness=r.apart(days["sharpness"] - days["coach_sharpness"]),
            fullness=r.apart(days["fullness"] - days["expected"] - days["coach_grade"]),
            bands=bands,
            brier=brier,
        ),
        Frames(weeks, days, changed, forecasts, proposals),
    )


_OF_A_DAY = (
    "athlete_id", "event_id", "date", "days_out", "asked", "answered", "fullness", "expected",
    "sharpness", "coach_grade", "coach_sharpness", "change_g", "rule",
)  # fmt: skip
_OF_A_FORECAST = ("athlete_id", "event_id", "flat", "full", "spilled", "look")
_ANSWERED = (DecisionStatus.APPROVED, DecisionStatus.OTHER_FIGURE, DecisionStatus.PLAN_KEPT)
_NUMBERS = (
    "fullness", "expected", "sharpness", "coach_grade", "coach_sharpness", "change_g", "minutes",
    "flat", "full", "spilled", "days_out",
)  # fmt: skip


def _frame(pandas: Any, rows: Iterator[dict[str, Any]], columns: Sequence[str]) -> pd.DataFrame:
    frame: pd.DataFrame = pandas.DataFrame.from_records(list(rows), columns=list(columns))
    for column in set(columns) & set(_NUMBERS):
        frame[column] = pandas.to_numeric(frame[column])
    return frame


def _share(told: pd.Series[Any]) -> Share:
    return Share(int(told.astype(bool).sum()), len(told))


def _days(
    weeks: Sequence[WeekRows],
    looked: dict[tuple[int, date], CoachLookRow],
    asked: set[tuple[int, date]],
    imported: set[int],
    foreseen: set[tuple[int, date]],
) -> Iterator[dict[str, Any]]:
    """`foreseen`: by athlete and date, the days that the forecast alone moved."""
    for week in weeks:
        for day in week.days:
            key = week.athlete_id, day.date
            seen = looked.get(key)
            moved = day.carb_g is not None and day.planned is not None
            by_hand = day.set_by == "coach" and day.status != DecisionStatus.APPROVED
            yield {
                "athlete_id": week.athlete_id, "event_id": week.event_id, "date": day.date,
                "days_out": day.days_out, "answered": day.answered,
                "asked": key in asked and week.event_id not in imported,
                "fullness": day.fullness, "expected": day.expected_fullness,
                "sharpness": day.sharpness,
                "coach_grade": GRADES[CoachLook(seen.look)] if seen else None,
                "coach_sharpness": seen.sharpness if seen else None,
                "change_g": day.carb_g - day.planned.carb_g  # type: ignore[operator,union-attr]
                if moved else None,
                "rule": "coach" if by_hand else "forecast" if key in foreseen else day.rule,
            }  # fmt: skip


def _asked(
    session: Session,
    weeks: Sequence[WeekRows],
    profiles: dict[int, AthleteProfile],
    imported: set[int],
) -> set[tuple[int, date]]:
    """The mornings that were asked about: those after the week had been set up."""
    lived = [week.event_id for week in weeks if week.event_id not in imported]
    events = rows_of_all(session, EventRow, EventRow.id, lived)
    set_at = {id_of(event): event.set_at for event in events}
    return {
        (week.athlete_id, day.date)
        for week in weeks
        if week.event_id in set_at
        for day in week.days
        if asked_that_day(profiles[week.athlete_id], day.date, set_at[week.event_id])
    }


def _answered(
    session: Session, ids: Sequence[int], profiles: dict[int, AthleteProfile]
) -> pd.DataFrame:
    """How many minutes after its question each morning was answered, as the question is set now."""
    import pandas as pd  # noqa: PLC0415

    rows = []
    for chunk in batches(ids):
        table = CheckInRow.__table__.c  # type: ignore[attr-defined]
        query = pick(table.athlete_id, table.date, table.answered_at)
        found = session.connection().execute(query.where(table.athlete_id.in_(chunk)))
        for athlete, day, at in found:
            profile = profiles[athlete]
            asked = instants.local_instant(day, profile.prompt_time, profile.zone or "UTC")
            minutes = (at - asked).total_seconds() / 60
            # Answers ahead of the question, or corrected days later, say nothing of a habit.
            rows.append((athlete, day, minutes if 0 <= minutes < 24 * 60 else None))
    return pd.DataFrame.from_records(rows, columns=["athlete_id", "date", "after_prompt_min"])


def _looked(
    session: Session, ids: Sequence[int], coach_id: int
) -> dict[tuple[int, date], CoachLookRow]:
    own = CoachLookRow.by_id == coach_id
    looks = rows_of_all(session, CoachLookRow, CoachLookRow.athlete_id, ids, own)
    return {(row.athlete_id, row.date): row for row in looks}


def _decisions(session: Session, ids: Sequence[int]) -> Iterator[Any]:
    """What is read of each decision; its whole record stays in the database."""
    table = DecisionRow.__table__.c  # type: ignore[attr-defined]
    record = table.decision
    columns = (
        table.id, table.athlete_id, table.event_id, table.sets_date, table.status, table.made_at,
        table.signed_at, table.sign_off_due_at, record["carb_g"].as_float().label("carb_g"),
        *(record[("trace", name)].as_float().label(name) for name in ASKED),
        record[("foresight", "planned")].label("planned"),
        record[("foresight", "best")].label("best"),
    )  # fmt: skip
    for chunk in batches(ids):
        query = pick(*columns).where(table.athlete_id.in_(chunk)).order_by(table.id)
        yield from session.connection().execute(query)


def _odds(row: Any) -> Odds | None:
    """The chances that this decision told."""
    if row.planned is None or row.best is None or row.carb_g is None:
        return None
    return nearest((built(Odds, row.planned), built(Odds, row.best)), row.carb_g)


def _proposals(decisions: Sequence[Any]) -> Iterator[dict[str, Any]]:
    """Those that waited for the coach and are settled one way or the other."""
    for row in decisions:
        if row.sign_off_due_at is not None and row.status in (*_ANSWERED, DecisionStatus.LAPSED):
            waited = (row.signed_at - row.made_at).total_seconds() / 60 if row.signed_at else None
            yield {
                "athlete_id": row.athlete_id, "date": row.sets_date, "status": row.status,
                "minutes": waited,
            }  # fmt: skip


def _forecasts(decisions: Sequence[Any], weeks: Sequence[WeekRows]) -> Iterator[dict[str, Any]]:
    """The last chances that were told before each event on whose look there is a verdict."""
    last = {
        row.event_id: odds
        for row in decisions
        if row.status != DecisionStatus.REPLACED and (odds := _odds(row)) is not None
    }
    for week in weeks:
        odds = last.get(week.event_id)
        if odds is not None and week.look is not None:
            yield {
                "athlete_id": week.athlete_id, "event_id": week.event_id, "look": week.look,
                **{key: getattr(odds, key) for key in ("flat", "full", "spilled")},
            }  # fmt: skip
