"""Past weeks from a sheet: a dry run, a yes, and they count as weeks that are over.

They become what weeks that were lived here leave behind (event, plan, figures set, mornings), without
a decision, since none was made. Nothing of them is sent to anybody.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from sqlalchemy import delete
from sqlmodel import Session, col, select

from bot.core.chat.cards import IMPORTS, InFormat
from bot.core.chat.outbox import Button, send_document
from bot.core.turn import Context, Document, OnAthlete, Turn
from bot.dialogue import asking
from bot.people.changes import Change
from bot.people.people import local_date, name_of, own_athlete, record
from bot.people.telling import answer, ask_sure, rewrite, say_to
from bot.sheets import words as sheet_words
from bot.sheets.buttons import BACK, BACK_NO, BACK_YES, OfImport
from bot.sheets.flow import IMPORT
from bot.sheets.format.making import FORMATS
from bot.sheets.format.opening import Grid
from bot.sheets.format.reading import SheetProblems, Wrong
from bot.sheets.past_weeks import layout, words
from bot.sheets.past_weeks.reading import PastDay, PastWeekRead, PastWeeks, read_past_weeks
from bot.sheets.past_weeks.rows import DAY, days_with_rows, load_of, mornings_of, rows_of
from bot.store.base import batches, id_of
from bot.store.tables import metadata
from bot.store.tables.event import PastImportRow
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.week import CheckInRow, DaySetRow, EventRow
from bot.week.cases import PAST_WEEKS
from bot.words import figures
from bot.words.common import day_and_year, keep_them_button
from engine.values.plan import PLAN_DAYS

MAKE = "past-weeks-sheet"
#: A weight further off than this from the body mass told at the start is asked about: a slip of units.
FAR_SHARE = 0.3
WEEK = timedelta(days=max(PLAN_DAYS))


def show(turn: OnAthlete, pressed: InFormat) -> None:
    """What was imported, and an empty sheet."""
    answer(turn)
    profile, name = turn.profile, name_of(turn.session, turn.profile.person_id)
    self_coached, number = turn.person.id == profile.person_id, profile.person_id
    if not profile.baseline or profile.body_mass_kg is None:
        say_to(turn, turn.person, words.not_onboarded(name))
        return
    form = pressed.format
    if form in FORMATS:
        send_document(
            turn,
            chat_id=turn.person.chat_id,
            document={
                "make": MAKE, "format": form, "athlete": number, "reader": turn.person.id,
                "last": (local_date(profile, turn.context) - DAY).isoformat(),
            },
            caption=words.caption(name, self_coached=self_coached),
        )  # fmt: skip
        return
    here = _imports(turn.session, number)
    told = [_batch(turn, profile, row) for row in here]
    empty = [Button(words.sheet_button(form), IMPORTS(number, form)) for form in FORMATS]
    back_ = [
        Button(words.back_button(_day(profile, row), len(row.days)), BACK(number, id_of(row)))
        for row in here
    ]
    buttons = [empty, *([one] for one in back_)]
    say_to(
        turn,
        turn.person,
        "\n\n".join([words.offer(name, self_coached=self_coached), *told]),
        buttons=buttons,
    )


def make(turn: Turn, named: dict[str, Any]) -> Document | None:
    """The empty sheet."""
    reader = turn.session.get(Person, named["reader"])
    profile = own_athlete(turn.session, reader, named["athlete"]) if reader is not None else None
    if profile is None:
        return None
    name = name_of(turn.session, profile.person_id)
    last, form = date.fromisoformat(named["last"]), str(named["format"])
    content = layout.empty_sheet(name, profile.person_id, last, form)
    return Document(f"past-weeks.{form}", content)


@dataclass(frozen=True, slots=True)
class Unpacked:
    """What a sheet holds, or everything that is wrong with it."""

    weeks: PastWeeks | None = None
    wrong: tuple[Wrong, ...] = ()


def unpack(grid: Grid, context: Context) -> Unpacked:
    """Read a sheet, outside any transaction."""
    try:
        return Unpacked(read_past_weeks(grid, context.now.date()))
    except SheetProblems as problems:
        return Unpacked(wrong=tuple(problems.found))


def came(turn: Turn, coach: Person, unpacked: Unpacked) -> None:
    """A filled-in sheet: say what it holds, or what is wrong, by cell; nothing is kept yet."""
    outcome = unpacked.weeks
    if outcome is None:
        _say_wrong(turn, coach, unpacked.wrong)
        return
    profile = own_athlete(turn.session, coach, outcome.athlete_id)
    if profile is None:
        say_to(turn, coach, sheet_words.not_yours())
        return
    name = name_of(turn.session, profile.person_id)
    self_coached = coach.id == profile.person_id
    if not profile.baseline or profile.body_mass_kg is None:
        say_to(turn, coach, words.not_onboarded(name))
        return
    wrong = list(_misfits(turn, profile, outcome))
    if wrong:
        _say_wrong(turn, coach, wrong)
        return
    lines = [
        words.line(week.kind, week.day, mornings_of(week), load_of(profile, week), week.look)
        for week in outcome.weeks
    ]
    asking.open_question(turn, coach, IMPORT, profile.person_id, {
        "_said": words.dry_run(name, lines, PAST_WEEKS, self_coached=self_coached),
        "_weeks": [_as_kept(week) for week in outcome.weeks],
    })  # fmt: skip


def answered(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """All of the weeks in one go, or none."""
    profile = own_athlete(turn.session, coach, question.about)
    if profile is None or not question.answers["take"]:
        say_to(turn, coach, words.left())
        return
    weeks = [_from_kept(week) for week in question.answers["_weeks"]]
    if list(_misfits(turn, profile, PastWeeks(profile.person_id, tuple(weeks)))):
        say_to(turn, coach, words.moved_on())
        return
    made: dict[str, list[int]] = {}
    for week in weeks:
        for row in rows_of(turn, coach, profile, week):
            made.setdefault(str(row.__tablename__), []).append(id_of(row))
    days = [week.day.isoformat() for week in weeks]
    kept = PastImportRow(
        athlete_id=profile.person_id, by_id=id_of(coach), at=turn.now, rows=made, days=days
    )
    turn.session.add(kept)
    record(turn, profile.person_id, Change.WEEKS_IMPORTED(of=id_of(kept), days=days), by=coach.id)
    say_to(turn, coach, words.imported(len(weeks)))


def ask_back(turn: OnAthlete, pressed: OfImport) -> None:
    """What goes, and a second tap."""
    answer(turn)
    row = _import(turn, pressed)
    if row is None:
        say_to(turn, turn.person, words.gone_already())
        return
    number = turn.profile.person_id
    yes = Button(words.back_yes_button(), BACK_YES(number, id_of(row)))
    no = Button(keep_them_button(), BACK_NO(number, id_of(row)))
    ask_sure(turn, turn.person, words.back_sure(_batch(turn, turn.profile, row)), yes, no)


def back(turn: OnAthlete, pressed: OfImport) -> None:
    """Everything that the sheet made goes again, with what came to hang on its events since."""
    answer(turn)
    row = _import(turn, pressed)
    if row is None:
        rewrite(turn, words.gone_already())
        return
    _take_out(turn.session, row)
    row.rows, row.taken_back_at = {}, turn.now
    turn.session.add(row)
    entry = Change.IMPORT_TAKEN_BACK(of=id_of(row), days=row.days)
    record(turn, turn.profile.person_id, entry, by=turn.person.id)
    rewrite(turn, words.taken_back(len(row.days)))


def keep(turn: OnAthlete, _: OfImport) -> None:
    answer(turn)
    rewrite(turn, words.kept())


def imported_events(session: Session, athletes: Collection[int]) -> set[int]:
    """The events of these athletes that came from a sheet."""
    found: set[int] = set()
    for chunk in batches(athletes):
        query = select(PastImportRow.rows).where(
            col(PastImportRow.athlete_id).in_(chunk), col(PastImportRow.taken_back_at).is_(None)
        )
        for rows in session.exec(query):
            found |= set(rows.get(EventRow.__tablename__, []))
    return found


def _take_out(session: Session, row: PastImportRow) -> None:
    events = row.rows.get(EventRow.__tablename__, [])
    for table in reversed(metadata.sorted_tables):
        if "event_id" in table.c and events:
            session.connection().execute(delete(table).where(table.c.event_id.in_(events)))
        if table.name in row.rows:
            ids = row.rows[table.name]
            session.connection().execute(delete(table).where(table.c.id.in_(ids)))
    session.expire_all()


# What may come in


def _misfits(turn: Turn, profile: AthleteProfile, read: PastWeeks) -> Iterator[Wrong]:
    """What this athlete's own rows, or the calendar, do not leave room for."""
    today = local_date(profile, turn.context)
    events = [
        event.day
        for event in turn.session.exec(
            select(EventRow).where(EventRow.athlete_id == profile.person_id)
        )
        if event.active or _lived(turn.session, event)
    ]
    for index, week in enumerate(read.weeks):
        where = next((read.cells[day.date] for day in week.days if day.date in read.cells), "")
        if week.day >= today:
            yield Wrong(where, "past-not-over")
        near = [
            other
            for other in (*events, *(other.day for other in read.weeks[:index]))
            if abs((other - week.day).days) <= WEEK.days
        ]
        for other in near:
            yield Wrong(where, "past-overlaps", {"day": day_and_year(other)})
        # Of a week that is here already each of its mornings is, and need not be said.
        for day in () if near else days_with_rows(week):
            if _taken(turn.session, profile.person_id, day):
                yield Wrong(read.cells.get(day, where), "past-answered")
        now = profile.body_mass_kg or 0.0
        for one in week.days:
            kg = one.figures.get("weight_kg")
            if kg is not None and abs(kg - now) > FAR_SHARE * now:
                yield Wrong(
                    read.cells.get(one.date, where), "past-far-weight",
                    {
                        "given": figures.weight(kg, profile.weight_unit),
                        "now": figures.weight(now, profile.weight_unit),
                    },
                )  # fmt: skip


def _lived(session: Session, event: EventRow) -> bool:
    """Whether anybody answered anything in the week of an event that is over or was moved."""
    query = select(CheckInRow.id).where(
        CheckInRow.athlete_id == event.athlete_id,
        CheckInRow.date > event.day - WEEK,
        CheckInRow.date <= event.day,
    )
    return session.exec(query).first() is not None


def _taken(session: Session, athlete_id: int, day: date) -> bool:
    for table in (CheckInRow, DaySetRow):
        query = select(table.id).where(table.athlete_id == athlete_id, table.date == day)
        if session.exec(query).first() is not None:
            return True
    return False


# What becomes of them


def _as_kept(week: PastWeekRead) -> dict[str, Any]:
    return {
        "day": week.day.isoformat(), "kind": week.kind, "look": week.look, "row": week.row,
        "days": [[day.date.isoformat(), dict(day.figures)] for day in week.days],
    }  # fmt: skip


def _from_kept(kept: dict[str, Any]) -> PastWeekRead:
    days = tuple(PastDay(date.fromisoformat(day), told) for day, told in kept["days"])
    return PastWeekRead(
        date.fromisoformat(kept["day"]), kept["kind"], kept["look"], days, kept["row"]
    )


def _imports(session: Session, athlete_id: int) -> list[PastImportRow]:
    query = select(PastImportRow).where(
        PastImportRow.athlete_id == athlete_id, col(PastImportRow.taken_back_at).is_(None)
    )
    return list(session.exec(query.order_by(col(PastImportRow.id))))


def _import(turn: OnAthlete, pressed: OfImport) -> PastImportRow | None:
    here = _imports(turn.session, turn.profile.person_id)
    return next((row for row in here if row.id == pressed.row), None)


def _batch(turn: Turn, profile: AthleteProfile, row: PastImportRow) -> str:
    days = [date.fromisoformat(day) for day in row.days]
    by = name_of(turn.session, row.by_id)
    return words.batch(_day(profile, row), by, days)


def _day(profile: AthleteProfile, row: PastImportRow) -> date:
    return row.at.astimezone(ZoneInfo(profile.zone or "UTC")).date()


def _say_wrong(turn: Turn, coach: Person, wrong: Sequence[Wrong]) -> None:
    lines = [(found.cell, words.wrong_cell(found.why, found.facts)) for found in wrong]
    say_to(turn, coach, words.problems(lines))
