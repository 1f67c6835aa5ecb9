"""From rows to the frames of a workbook: a few queries for all athletes, joined and counted by pandas.

A frame has the columns of its table (`bot.workbook.tables`) by key. Words in it (names of symptoms,
reasons) are in the language in force; instants are on the athlete's own clocks, without a zone.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from functools import cache
from typing import TYPE_CHECKING, Any
from zoneinfo import ZoneInfo

from sqlalchemy import select as pick
from sqlmodel import Session, col, select

from bot.alerts.words_alert_causes import cause, flag_name
from bot.decision import words_reasons
from bot.decision.words_outlook import odds_in_force
from bot.food.words_names import food_name
from bot.past_weeks.importing import imported_events
from bot.people.changes import Change
from bot.store.base import id_of
from bot.store.batches import batches
from bot.store.tables.coach_eye import CoachLookRow
from bot.store.tables.debrief import DebriefRow
from bot.store.tables.food import EatenRow, FoodRow
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.store.tables.week import AlertRow, CheckInRow, DecisionRow
from bot.week.cases import READINGS
from bot.week.weeks_of import WeekRows, weeks_of
from bot.words import common, names
from bot.words.phases import phase_words
from bot.words.symptoms import symptom_name
from bot.words.training import training_words
from bot.workbook import words
from bot.workbook.columns import Column, Kind
from bot.workbook.tables import CHECKINS, COMPARED, MEASURES, TABLES, TARGETS
from engine.decision.kept import decided_in_short
from engine.values.energy import energy_kcal

if TYPE_CHECKING:
    import pandas as pd

Record = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Who:
    """The athletes of a workbook, and first names by person, looked up when they are first said."""

    session: Session
    profiles: dict[int, AthleteProfile]
    names: dict[int, str]

    def local(self, athlete_id: int, instant: datetime | None) -> datetime | None:
        """The instant on the athlete's own clocks, without its zone, as sheets know times."""
        if instant is None:
            return None
        return instant.astimezone(ZoneInfo(self.zone(athlete_id))).replace(
            tzinfo=None, microsecond=0
        )

    def zone(self, athlete_id: int) -> str:
        return self.profiles[athlete_id].zone or "UTC"

    def named(self, person_id: int | None) -> str:
        if person_id is None:
            return ""
        if person_id not in self.names:
            person = self.session.get(Person, person_id)
            self.names[person_id] = person.first_name if person is not None else ""
        return self.names[person_id]


def frames_of(
    session: Session, profiles: Collection[AthleteProfile], *, reader_id: int
) -> dict[str, pd.DataFrame]:
    """Every sheet of a workbook about these athletes, by table id, sorted as it is read.

    A coach's note on a week is for coaches: an athlete reads only what they wrote themself.
    """
    import pandas as pd  # noqa: PLC0415 - it takes half a second to load

    known = {profile.person_id: profile for profile in profiles}
    ids = sorted(known)
    who = Who(session, known, _names(session, ids))
    weeks = [week for found in weeks_of(session, ids).values() for week in found]
    days = pd.DataFrame.from_records(
        _days(weeks),
        columns=["athlete_id", "event_day", "kind", *_DAY_KEYS],
    )
    records: dict[str, Iterator[Record]] = {
        "weeks": _weeks(session, weeks, who, reader_id),
        "check-ins": _checkins(session, ids),
        "targets": iter(()),
        "decisions": _decisions(session, ids, who),
        "flags": _flags(session, ids, who),
        "foods": _foods(session, ids, who),
        "eaten": _eaten(session, ids),
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


def _names(session: Session, ids: Sequence[int]) -> dict[int, str]:
    found: dict[int, str] = {}
    for chunk in batches(ids):
        query = select(Person).where(col(Person.id).in_(chunk))
        found |= {id_of(person): person.first_name for person in session.exec(query)}
    return found


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


def _days(weeks: Sequence[WeekRows]) -> list[Record]:
    kind, set_by, training = map(_once_each, (names.word, words.set_by, training_words))
    phase = cache(phase_words)
    found = []
    for week in weeks:
        of_week = {
            "athlete_id": week.athlete_id, "event_day": week.day, "kind": kind(week.kind)
        }  # fmt: skip
        for day in week.days:
            planned, carb_g = day.planned, day.carb_g
            record = of_week | {
                "date": day.date, "days_out": day.days_out, "carb_g": carb_g,
                "set_by": set_by(day.set_by or "plan"), "carb_eaten_g": day.eaten_carb_g,
                "water_l": day.water_l, "weight_kg": day.weight_kg, "fullness": day.fullness,
                "sharpness": day.sharpness, "band_low_kg": day.band_low_kg,
                "band_high_kg": day.band_high_kg, "expected_fullness": day.expected_fullness,
            }  # fmt: skip
            if carb_g is not None and day.eaten_carb_g is not None:
                record["eaten_off_g"] = day.eaten_carb_g - carb_g
            if planned is not None and carb_g is not None:
                others = (planned.protein_g, planned.fat_g, planned.fibre_g)
                record |= {
                    "phase": phase(planned.phase), "carb_planned_g": planned.carb_g,
                    "protein_g": planned.protein_g, "fat_g": planned.fat_g,
                    "fibre_g": planned.fibre_g, "water_target_l": planned.water_l,
                    "sodium_mg": planned.sodium_mg, "training": training(planned.training),
                    "cardio_min": planned.cardio_min, "steps": planned.steps,
                    "kcal_planned": energy_kcal(planned.carb_g, *others),
                    "kcal": energy_kcal(carb_g, *others),
                }  # fmt: skip
            found.append(record)
    return found


def _weeks(
    session: Session, weeks: Sequence[WeekRows], who: Who, reader_id: int
) -> Iterator[Record]:
    debriefs, writers = _debriefs(session, list(who.profiles))
    imported = imported_events(session, who.profiles)
    for week in weeks:
        load = week.load
        known = [day for day in load if day.eaten_carb_g is not None and day.carb_g]
        set_g = sum(day.carb_g or 0.0 for day in load)
        mass = who.profiles[week.athlete_id].body_mass_kg
        first, event = (load[0] if load else None), week.at(0)
        debrief, writer = debriefs.get(week.event_id), writers.get(week.event_id)
        may_read = reader_id == writer or reader_id != week.athlete_id
        yield {
            "athlete_id": week.athlete_id, "event_day": week.day, "kind": names.word(week.kind),
            "look": names.word(week.look) if week.look else "",
            "mornings": week.mornings,
            "load_planned_g": sum(day.planned.carb_g for day in load if day.planned),
            "load_set_g": set_g,
            "load_g_per_kg": set_g / len(load) / mass if load and mass else None,
            "eaten_percent": 100 * sum(day.eaten_carb_g or 0 for day in known)
            / sum(day.carb_g or 0 for day in known) if known else None,
            "weight_first_kg": first.weight_kg if first else None,
            "weight_event_kg": event.weight_kg if event else None,
            "fullness_event": event.fullness if event else None,
            "imported": common.yes() if week.event_id in imported else "",
            "placing": debrief.placing if debrief else "",
            "athlete_said": debrief.athlete_said if debrief else "",
            "coach_note": debrief.coach_note if debrief and may_read else "",
        }  # fmt: skip


def _debriefs(
    session: Session, ids: Sequence[int]
) -> tuple[dict[int, DebriefRow], dict[int, int | None]]:
    """By event, what was kept of the week, and who wrote the coach's note last."""
    rows: dict[int, DebriefRow] = {}
    writers: dict[int, int | None] = {}
    for chunk in batches(ids):
        kept = select(DebriefRow).where(col(DebriefRow.athlete_id).in_(chunk))
        rows |= {row.event_id: row for row in session.exec(kept)}
        noted = select(HistoryRow).where(
            col(HistoryRow.athlete_id).in_(chunk), HistoryRow.what == Change.DEBRIEF_NOTE
        )
        for row in session.exec(noted.order_by(col(HistoryRow.id))):
            writers[row.detail["event"]] = row.by_id
    return rows, writers


def _checkins(session: Session, ids: Sequence[int]) -> Iterator[Record]:
    looks: dict[tuple[int, date], CoachLookRow] = {}
    for chunk in batches(ids):
        query = select(CoachLookRow).where(col(CoachLookRow.athlete_id).in_(chunk))
        looks |= {(row.athlete_id, row.date): row for row in session.exec(query)}
    said = _once_each(names.word)
    for row in _rows(session, CheckInRow, _OF_A_CHECKIN, ids):
        seen = looks.get((row.athlete_id, row.date))
        yield {
            "athlete_id": row.athlete_id, "date": row.date,
            "answered_at": row.answered_at,
            "weight_kg": row.weight_kg, "fullness": row.fullness, "sharpness": row.sharpness,
            "coach_look": words.look_seen(seen.look) if seen else "",
            "coach_sharpness": seen.sharpness if seen else None,
            "water_l": row.water_l, "carb_eaten_g": row.carb_eaten_g,
            "gut": said(row.gut) if row.gut else "", "sleep_h": row.sleep_h,
            "urine_colour": row.urine_colour, "resting_pulse": row.resting_pulse,
            "training": words.training_done(row.training_done),
            "symptoms": ", ".join(
                symptom_name(s) for s in row.symptoms if not s.startswith(READINGS)
            ),
            "note": row.note,
        }  # fmt: skip


_OF_A_CHECKIN = (
    "athlete_id", "date", "answered_at", "weight_kg", "fullness", "sharpness", "water_l",
    "carb_eaten_g", "gut", "sleep_h", "urine_colour", "resting_pulse", "training_done", "symptoms",
    "note",
)  # fmt: skip
_OF_A_DECISION = (
    "athlete_id", "sets_date", "outcome", "status", "carb_g", "planned_carb_g", "decision",
    "made_at", "signed_by", "signed_at",
)  # fmt: skip


def _rows(
    session: Session,
    table: type[CheckInRow | DecisionRow],
    columns: Sequence[str],
    ids: Sequence[int],
) -> Iterator[Any]:
    """Only what is read of so many rows; oldest first."""
    of = table.__table__.c  # type: ignore[union-attr]
    session.flush()
    for chunk in batches(ids):
        query = pick(*(of[name] for name in columns)).where(of.athlete_id.in_(chunk))
        yield from session.connection().execute(query.order_by(of.id))


def _once_each(say: Callable[[str], str]) -> Callable[[str], str]:
    """The same words, looked up once each; for as long as one language is in force."""
    return cache(say)


def _decisions(session: Session, ids: Sequence[int], who: Who) -> Iterator[Record]:
    outcome, status, rule = map(_once_each, (names.word, words.status, _rule))
    # Whole histories are in `case`: nothing here reads them.
    for row in _rows(session, DecisionRow, _OF_A_DECISION, ids):
        decision, profile = decided_in_short(row.decision), who.profiles[row.athlete_id]
        odds = odds_in_force(decision)
        waited = (row.signed_at - row.made_at).total_seconds() / 60 if row.signed_at else None
        yield {
            "athlete_id": row.athlete_id, "date": decision.date,
            "sets_date": row.sets_date, "outcome": outcome(row.outcome),
            "status": status(row.status), "planned_carb_g": row.planned_carb_g,
            "carb_g": row.carb_g, "change_g": decision.change_g, "rule": rule(decision.rule),
            "bound": words_reasons.bound_name(decision.bound) if decision.bound else "",
            "reason": words_reasons.reason(decision, profile.weight_unit, profile.volume_unit),
            **{f"{look}_percent": 100 * getattr(odds, look) if odds is not None else None
               for look in ("flat", "full", "spilled")},
            "made_at": row.made_at,
            "signed_by": who.named(row.signed_by),
            "signed_at": row.signed_at, "sign_off_min": waited,
        }  # fmt: skip


def _rule(rule: str) -> str:
    if rule in words_reasons.RULE_NAMES:
        return words_reasons.rule_name(rule)
    return words_reasons.gate_name(rule)


def _flags(session: Session, ids: Sequence[int], who: Who) -> Iterator[Record]:
    for chunk in batches(ids):
        query = select(AlertRow).where(col(AlertRow.athlete_id).in_(chunk))
        for row in session.exec(query.order_by(col(AlertRow.id))):
            profile, done = who.profiles[row.athlete_id], row.acknowledged_at
            yield {
                "athlete_id": row.athlete_id, "date": row.date, "level": names.word(row.level),
                "flag": flag_name(row.flag),
                "cause": cause(
                    row.flag, row.facts, name=who.named(row.athlete_id),
                    weight_unit=profile.weight_unit, volume_unit=profile.volume_unit,
                ),
                "opened_at": row.opened_at,
                "acknowledged_at": done,
                "acknowledged_by": who.named(row.acknowledged_by),
                "acknowledged_min": (done - row.opened_at).total_seconds() / 60 if done else None,
            }  # fmt: skip


def _foods(session: Session, ids: Sequence[int], who: Who) -> Iterator[Record]:
    for row in _food_rows(session, ids):
        yield {
            "athlete_id": row.athlete_id, "food": food_name(row.name),
            "liking": words.liking(row.liking), "usual_g": row.usual_g,
            **{key: row.figures[key] for key in _NUTRIENTS},
            "added": _day_of(who.local(row.athlete_id, row.added_at)),
            "removed": _day_of(who.local(row.athlete_id, row.removed_at)),
        }  # fmt: skip


_NUTRIENTS = ("kcal", "carb_g", "protein_g", "fat_g", "fibre_g", "sodium_mg")


def _eaten(session: Session, ids: Sequence[int]) -> Iterator[Record]:
    foods = {row.id: row for row in _food_rows(session, ids)}
    for chunk in batches(ids):
        query = select(EatenRow).where(col(EatenRow.athlete_id).in_(chunk))
        for row in session.exec(query.order_by(col(EatenRow.id))):
            food = foods[row.food_id]
            yield {
                "athlete_id": row.athlete_id, "date": row.date, "grams": row.grams,
                "at": row.at, "food": food_name(food.name),
                **{f"eaten_{key}": food.figures[key] * row.grams / 100
                   for key in _NUTRIENTS if key != "fibre_g"},
            }  # fmt: skip


def _food_rows(session: Session, ids: Sequence[int]) -> list[FoodRow]:
    found: list[FoodRow] = []
    for chunk in batches(ids):
        query = select(FoodRow).where(col(FoodRow.athlete_id).in_(chunk))
        found += session.exec(query.order_by(col(FoodRow.id)))
    return found


def _day_of(moment: datetime | None) -> date | None:
    return moment.date() if moment is not None else None
