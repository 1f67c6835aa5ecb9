"""From rows to the frames of a workbook: a few queries for all athletes, joined and counted by pandas.

A frame has the columns of its table (`workbook.tables`) by key. Words in it (names of symptoms,
reasons) are in the language in force; instants are on the athlete's own clocks, without a zone.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from typing import TYPE_CHECKING, Any
from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.sheets.workbook import words
from bot.sheets.workbook.records import (
    Record,
    Who,
    checkins,
    days_of,
    decisions,
    eaten,
    flags,
    foods,
    names_of,
    weeks_in,
)
from bot.sheets.workbook.tables import CHECKINS, COMPARED, MEASURES, TABLES, TARGETS, Column, Kind
from bot.store.tables.people import AthleteProfile
from bot.week.weeks_of import weeks_of

if TYPE_CHECKING:
    import pandas as pd


def frames_of(
    session: Session, profiles: Collection[AthleteProfile], *, reader_id: int
) -> dict[str, pd.DataFrame]:
    """Every sheet of a workbook about these athletes, by table id, sorted as it is read.

    A coach's note on a week is for coaches: an athlete reads only what they wrote themself.
    """
    import pandas as pd  # noqa: PLC0415 - it takes half a second to load

    known = {profile.person_id: profile for profile in profiles}
    ids = sorted(known)
    who = Who(session, known, names_of(session, ids))
    weeks = [week for found in weeks_of(session, ids).values() for week in found]
    days = pd.DataFrame.from_records(
        days_of(weeks), columns=["athlete_id", "event_day", "kind", *_DAY_KEYS]
    )
    records: dict[str, Iterator[Record]] = {
        "weeks": weeks_in(session, weeks, who, reader_id),
        "check-ins": checkins(session, ids),
        "targets": iter(()),
        "decisions": decisions(session, ids, who),
        "flags": flags(session, ids, who),
        "foods": foods(session, ids, who),
        "eaten": eaten(session, ids),
    }
    frames = {}
    for table in TABLES:
        if table is COMPARED:
            continue
        keys = [column.key for column in table.columns]
        frame = (
            days.copy()
            if table.id == "targets"
            else pd.DataFrame.from_records(list(records[table.id]), columns=_own(keys, table.id))
        )
        for column in table.columns:
            if column.kind is Kind.MOMENT:
                frame[column.key] = _on_own_clocks(frame, column.key, who)
        if "days_out" in keys and table.id != "targets":
            frame = _in_their_weeks(frame, days, table.id)
        frame["athlete"] = frame["athlete_id"].map(who.names)
        by = [key for key in ("event_day", "date", "sets_date") if key in keys]
        frame = frame.sort_values(
            ["athlete", "athlete_id", *by], kind="stable", na_position="first"
        )
        frames[table.id] = frame.reindex(columns=keys).reset_index(drop=True)
    frames[COMPARED.id] = compared(days, who)
    return frames


#: What a day of a week says of itself, as `TARGETS` has it, and what check-ins take from it.
_DAY_KEYS = (
    "date", "days_out", "phase", "carb_planned_g", "carb_g", "set_by", "carb_eaten_g", "eaten_off_g",
    "protein_g", "fat_g", "fibre_g", "kcal_planned", "kcal", "water_target_l", "water_l",
    "sodium_mg", "training", "cardio_min", "steps", "weight_kg", "fullness", "sharpness",
    "band_low_kg", "band_high_kg", "expected_fullness",
)  # fmt: skip
_OF_THE_WEEK = ("event_day", "kind", "days_out")
_OF_THE_MORNING = ("band_low_kg", "band_high_kg", "expected_fullness")


def _own(keys: Sequence[str], table: str) -> list[str]:
    """The columns that a record brings itself; the rest is joined to it."""
    if table == "weeks":
        return [key for key in keys if key != "athlete"]
    joined = {"athlete", *_OF_THE_WEEK} | (set(_OF_THE_MORNING) if table == "check-ins" else set())
    return [key for key in keys if key not in joined]


def _in_their_weeks(frame: pd.DataFrame, days: pd.DataFrame, table: str) -> pd.DataFrame:
    """Each row with the week that its date belongs to: of two that overlap, the nearer event."""
    wanted = [*_OF_THE_WEEK, *(_OF_THE_MORNING if table == "check-ins" else ())]
    nearest = days.sort_values("days_out", kind="stable").drop_duplicates(["athlete_id", "date"])
    return frame.merge(
        nearest[["athlete_id", "date", *wanted]], on=["athlete_id", "date"], how="left"
    )


def _on_own_clocks(frame: pd.DataFrame, key: str, who: Who) -> pd.Series[Any]:
    """Instants as each athlete's own clocks showed them, to the second and without a zone."""
    import pandas as pd  # noqa: PLC0415

    instants = pd.to_datetime(frame[key], utc=True)
    shown = instants.dt.tz_localize(None)
    zones = frame["athlete_id"].map(who.zone)
    for zone in zones.unique():
        there = zones == zone
        shown[there] = instants[there].dt.tz_convert(ZoneInfo(zone)).dt.tz_localize(None)
    return shown.dt.floor("s")


def compared(days: pd.DataFrame, who: Who) -> pd.DataFrame:
    """Measures by days out, with a column a week; of one athlete the column says which week."""
    import pandas as pd  # noqa: PLC0415

    keys = [column.key for column in COMPARED.columns]
    order = days[["athlete_id", "event_day", "kind"]].drop_duplicates()
    order["number"] = order.groupby("athlete_id").cumcount() + 1
    if len(who.profiles) == 1:
        order["label"] = [
            words.week_label(kind, day)
            for kind, day in zip(order["kind"], order["event_day"], strict=True)
        ]
    else:
        order["label"] = order["number"].map(words.week_number)
    labels = list(dict.fromkeys(order.sort_values("number", kind="stable")["label"]))
    long = days.merge(order, on=["athlete_id", "event_day", "kind"]).melt(
        id_vars=["athlete_id", "days_out", "label"], value_vars=list(MEASURES), var_name="key"
    )
    long["value"] = pd.to_numeric(long["value"])
    wide = long.pivot_table(
        index=["athlete_id", "key", "days_out"], columns="label", values="value", aggfunc="first"
    ).reset_index()
    wide["athlete"] = wide["athlete_id"].map(who.names)
    wide["rank"] = wide["key"].map({key: n for n, key in enumerate(MEASURES)})
    wide["measure"] = wide["key"].map({key: _measure(key).titled() for key in MEASURES})
    by = ["athlete", "athlete_id", "rank", "days_out"]
    wide = wide.sort_values(by, ascending=[True, True, True, False])
    return wide.reindex(columns=[*keys, *labels]).reset_index(drop=True)


def _measure(key: str) -> Column:
    """The column that a measure is in elsewhere."""
    return next(c for t in (TARGETS, CHECKINS) for c in t.columns if c.key == key)
