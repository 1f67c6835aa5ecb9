"""The rows of each sheet of a workbook, as its table has them by key: a few queries for all athletes.

Words in them (names of symptoms, reasons) are in the language in force; instants are as stored.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from functools import cache
from typing import Any
from zoneinfo import ZoneInfo

from sqlalchemy import DateTime, type_coerce
from sqlalchemy import select as pick
from sqlmodel import Session

from bot.alerts.words_athlete import cause
from bot.decision import words_target
from bot.decision.words_forecast import odds_in_force
from bot.food.words_names import food_name
from bot.people.changes import Change
from bot.sheets.past_weeks.importing import imported_events
from bot.sheets.workbook import words
from bot.store.base import batches, id_of, rows_of_all
from bot.store.driver import UTCDateTime
from bot.store.tables.coach import CoachLookRow
from bot.store.tables.event import DebriefRow
from bot.store.tables.food import EatenRow, FoodRow
from bot.store.tables.people import AthleteProfile, HistoryRow, Person
from bot.store.tables.week import AlertRow, CheckInRow, DecisionRow
from bot.week.cases import READINGS
from bot.week.weeks_of import WeekRows
from bot.words import common, names
from bot.words.names import flag_name, seen_look, symptom_name
from bot.words.phases import phase_words, training_words
from engine.decision.kept import decided_in_short
from engine.decision.rules import RULE_IDS
from engine.values.athlete import energy_kcal

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


def names_of(session: Session, ids: Sequence[int]) -> dict[int, str]:
    people = rows_of_all(session, Person, Person.id, ids)
    return {id_of(person): person.first_name for person in people}


def days_of(weeks: Sequence[WeekRows]) -> list[Record]:
    # Each word is looked up once, for as long as one language is in force.
    kind, set_by = cache(names.word), cache(words.set_by)
    training, phase = cache(training_words), cache(phase_words)
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


def weeks_in(
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
    kept = rows_of_all(session, DebriefRow, DebriefRow.athlete_id, ids)
    of_note = HistoryRow.what == Change.DEBRIEF_NOTE
    noted = rows_of_all(session, HistoryRow, HistoryRow.athlete_id, ids, of_note)
    return {row.event_id: row for row in kept}, {row.detail["event"]: row.by_id for row in noted}


def checkins(session: Session, ids: Sequence[int]) -> Iterator[Record]:
    seen_by_coaches = rows_of_all(session, CoachLookRow, CoachLookRow.athlete_id, ids)
    looks = {(row.athlete_id, row.date): row for row in seen_by_coaches}
    said = cache(names.word)
    for (
        athlete_id, day, answered_at, weight_kg, fullness, sharpness, water_l, carb_eaten_g, gut,
        sleep_h, urine_colour, resting_pulse, training_done, symptoms, note,
    ) in _rows(session, CheckInRow, _OF_A_CHECKIN, ids):  # fmt: skip
        seen = looks.get((athlete_id, day))
        yield {
            "athlete_id": athlete_id, "date": day, "answered_at": answered_at,
            "weight_kg": weight_kg, "fullness": fullness, "sharpness": sharpness,
            "coach_look": seen_look(seen.look) if seen else "",
            "coach_sharpness": seen.sharpness if seen else None,
            "water_l": water_l, "carb_eaten_g": carb_eaten_g,
            "gut": said(gut) if gut else "", "sleep_h": sleep_h,
            "urine_colour": urine_colour, "resting_pulse": resting_pulse,
            "training": words.training_done(training_done),
            "symptoms": ", ".join(
                [symptom_name(s) for s in symptoms if not s.startswith(READINGS)]
            ),
            "note": note,
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
    """Only what is read of so many rows, in the order of `columns`; each athlete's oldest first.

    Instants are as the driver has them, all in UTC: what reads them here takes that for granted.
    """
    of = table.__table__.c  # type: ignore[union-attr]
    wanted = [
        type_coerce(of[name], DateTime()) if isinstance(of[name].type, UTCDateTime) else of[name]
        for name in columns
    ]
    session.flush()
    for chunk in batches(ids):
        # In the order of the index: sorted otherwise, whole decisions would be put aside first.
        query = pick(*wanted).where(of.athlete_id.in_(chunk)).order_by(of.athlete_id, of.id)
        yield from session.connection().execute(query)


def decisions(session: Session, ids: Sequence[int], who: Who) -> Iterator[Record]:
    outcome, status, rule = cache(names.word), cache(words.status), cache(_rule)
    units = {
        number: (profile.weight_unit, profile.volume_unit)
        for number, profile in who.profiles.items()
    }
    # Whole histories are in `case`: nothing here reads them.
    for (
        athlete_id, sets_date, came_to, became, carb_g, planned_carb_g, kept, made_at, signed_by,
        signed_at,
    ) in _rows(session, DecisionRow, _OF_A_DECISION, ids):  # fmt: skip
        decision = decided_in_short(kept)
        odds = odds_in_force(decision)
        yield {
            "athlete_id": athlete_id, "date": decision.date, "sets_date": sets_date,
            "outcome": outcome(came_to), "status": status(became),
            "planned_carb_g": planned_carb_g, "carb_g": carb_g, "change_g": decision.change_g,
            "rule": rule(decision.rule),
            "bound": words_target.bound_name(decision.bound) if decision.bound else "",
            "reason": words_target.reason(decision, *units[athlete_id]),
            "flat_percent": 100 * odds.flat if odds is not None else None,
            "full_percent": 100 * odds.full if odds is not None else None,
            "spilled_percent": 100 * odds.spilled if odds is not None else None,
            "made_at": made_at, "signed_by": who.named(signed_by), "signed_at": signed_at,
            "sign_off_min": (signed_at - made_at).total_seconds() / 60 if signed_at else None,
        }  # fmt: skip


def _rule(rule: str) -> str:
    if rule in RULE_IDS:
        return names.rule_name(rule)
    return words_target.gate_name(rule)


def flags(session: Session, ids: Sequence[int], who: Who) -> Iterator[Record]:
    for row in rows_of_all(session, AlertRow, AlertRow.athlete_id, ids):
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


def foods(session: Session, ids: Sequence[int], who: Who) -> Iterator[Record]:
    for row in rows_of_all(session, FoodRow, FoodRow.athlete_id, ids):
        yield {
            "athlete_id": row.athlete_id, "food": food_name(row.name),
            "liking": words.liking(row.liking), "usual_g": row.usual_g,
            **{key: row.figures[key] for key in _NUTRIENTS},
            "added": _day_of(who.local(row.athlete_id, row.added_at)),
            "removed": _day_of(who.local(row.athlete_id, row.removed_at)),
        }  # fmt: skip


_NUTRIENTS = ("kcal", "carb_g", "protein_g", "fat_g", "fibre_g", "sodium_mg")


def eaten(session: Session, ids: Sequence[int]) -> Iterator[Record]:
    foods = {row.id: row for row in rows_of_all(session, FoodRow, FoodRow.athlete_id, ids)}
    for row in rows_of_all(session, EatenRow, EatenRow.athlete_id, ids):
        food = foods[row.food_id]
        yield {
            "athlete_id": row.athlete_id, "date": row.date, "grams": row.grams,
            "at": row.at, "food": food_name(food.name),
            **{f"eaten_{key}": food.figures[key] * row.grams / 100
               for key in _NUTRIENTS if key != "fibre_g"},
        }  # fmt: skip


def _day_of(moment: datetime | None) -> date | None:
    return moment.date() if moment is not None else None
