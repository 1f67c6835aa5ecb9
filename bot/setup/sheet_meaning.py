"""The rows of a sheet of many athletes -> what is wanted for each; what cannot be read, by cell.

Dates, times and units are taken as people write them and as spreadsheet programs keep them.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from typing import Any, TypeVar

from sqlmodel import Session

from bot.core.turn import Context
from bot.core.zones import find_places
from bot.dialogue.flow import InvalidAnswer, day_in
from bot.event.flow_asks import AS_USUAL, NONE, read_cap, read_look
from bot.people.people import local_date, name_of
from bot.setup import roster_sheet
from bot.setup import words_sheet as words
from bot.setup.foreseen import Wanted
from bot.setup.roster_sheet import Roster, Row
from bot.sheets.format.opening import NOTHING, Cell, Content
from bot.store.tables.people import AthleteProfile
from bot.week.load import event_ahead
from bot.words.invalid_answers import parse_error_text
from bot.words.languages import known as known_languages
from bot.words.languages import speaking
from engine.evidence.staging import LOOK_SOONEST_MIN, LOOK_USELESS_MIN
from engine.values.limits import LIMIT_KEYS
from engine.values.plan import PLAN_DAYS
from engine.written.units import (
    ParseError,
    ParseErrorCode,
    VolumeUnit,
    parse_clock,
    parse_grams,
    parse_number,
    parse_volume,
)

#: Days as spreadsheet programs count them: number 1 is 1 January 1900, with a leap day that never was.
_COUNTED_FROM = date(1899, 12, 30)
_DAYS = range(36526, 73051)  # the years 2000 to 2099
_T = TypeVar("_T")
_LONGEST_CLASS = 60
_LONGEST_REASON = 300


@dataclass(frozen=True, slots=True)
class Line:
    """What is wrong at a cell ("" for the sheet as a whole), in words."""

    cell: str
    text: str


@dataclass(frozen=True, slots=True)
class Known:
    """Whom and what a sheet may name: the coach's athletes by id, plans by what they are called."""

    session: Session
    context: Context
    athletes: Mapping[int, AthleteProfile]
    plans: Mapping[str, str]

    def called(self, name: str) -> list[AthleteProfile]:
        plain = name.casefold()
        return [
            one for one in self.athletes.values()
            if " ".join(name_of(self.session, one.person_id).split()).casefold() == plain
        ]  # fmt: skip


class _Unreadable(ValueError):  # noqa: N818 - it is an answer to a person, not a fault
    """A cell that cannot be taken, with the sentence that says why."""


def meant(roster: Roster, known: Known) -> tuple[list[Wanted], list[Line], list[str]]:
    """What every row wants, what is wrong, and who is named in a row that asks for nothing."""
    lines = [Line(cell, words.heading_twice()) for cell in roster.twice]
    lines += [Line(area, words.merged()) for area in roster.merged]
    if roster.too_many:
        lines.append(Line("", words.too_many_rows()))
    wanted: list[Wanted] = []
    idle: list[str] = []
    for row in roster.rows:
        profile = _athlete(row, known, lines)
        if profile is None:
            continue
        if _asks_nothing(row):
            idle.append(name_of(known.session, profile.person_id))
            continue
        found = _Reader(row, known, profile).read(lines)
        if found is not None:
            wanted.append(found)
    lines += _doubles(wanted)
    return wanted, lines, list(dict.fromkeys(idle))


def _doubles(wanted: list[Wanted]) -> list[Line]:
    """Rows that want the same day, or the same event, of one athlete twice."""
    days = Counter((one.athlete_id, one.day) for one in wanted)
    events = Counter((one.athlete_id, one.event_id) for one in wanted if one.event_id)
    return [
        Line(one.cell(roster_sheet.DAY), words.row_twice())
        for one in wanted
        if days[one.athlete_id, one.day] > 1 or events[one.athlete_id, one.event_id] > 1
    ]


def _asks_nothing(row: Row) -> bool:
    """Whether beside the name nothing is filled in: as in the sheet that was handed out."""
    return all(
        cell.content is Content.EMPTY
        for key, cell in row.cells.items()
        if key
        not in (roster_sheet.CODE, roster_sheet.ATHLETE, roster_sheet.PLACE, roster_sheet.ASKED)
    )


def _athlete(row: Row, known: Known, lines: list[Line]) -> AthleteProfile | None:
    code, name = row.text(roster_sheet.CODE), row.text(roster_sheet.ATHLETE)
    if code:
        named = roster_sheet.code_in(code)
        profile = known.athletes.get(named[0]) if named is not None else None
        if profile is None:
            lines.append(Line(row.names.get(roster_sheet.CODE, ""), words.no_such_code(code)))
        return profile
    where = row.names.get(roster_sheet.ATHLETE, row.names.get(roster_sheet.CODE, ""))
    if not name:
        lines.append(Line(where, words.nobody_named()))
        return None
    found = known.called(name)
    if len(found) == 1:
        return found[0]
    lines.append(Line(where, words.several_called(name) if found else words.nobody_called(name)))
    return None


@dataclass(frozen=True, slots=True)
class _Reader:
    row: Row
    known: Known
    profile: AthleteProfile

    def read(self, lines: list[Line]) -> Wanted | None:
        before = len(lines)
        code = roster_sheet.code_in(self.row.text(roster_sheet.CODE))
        number = code[1] if code is not None else 0
        event = event_ahead(self.known.session, self.profile.person_id, number) if number else None
        if number and event is None:
            lines.append(Line(self.row.names.get(roster_sheet.CODE, ""), words.event_gone()))
        day = self._take(roster_sheet.DAY, self._day, lines)
        if day is None and len(lines) == before:
            if event is None:
                lines.append(Line(self.row.names.get(roster_sheet.DAY, ""), words.day_missing()))
            else:
                day = event.day
        bounds = {
            key: value
            for key in LIMIT_KEYS
            if (value := self._take(key, _limit(key), lines)) is not None
        }
        kind = self._take(roster_sheet.KIND, self._kind, lines)
        zone = self._take(roster_sheet.PLACE, self._zone, lines)
        stage = self._take(roster_sheet.STAGE, _clock, lines)
        plan = self._take(roster_sheet.PLAN, self._plan, lines)
        load = self._take(roster_sheet.LOAD, _load, lines)
        depletion = self._take(roster_sheet.DEPLETION, _depletion, lines)
        asked = self._take(roster_sheet.ASKED, _clock, lines)
        look = self._take(roster_sheet.LOOK, _look, lines)
        asks = self._asks(day, lines)
        if load is not None and not plan and len(lines) == before:
            lines.append(Line(self.row.names[roster_sheet.LOAD], words.load_without_plan()))
        if len(lines) > before or day is None:
            return None
        return Wanted(
            athlete_id=self.profile.person_id, event_id=number,
            kind=kind or (event.kind if event is not None else "show"),
            day=day.isoformat(),
            zone=zone or (event.zone if event is not None else self.profile.zone or ""),
            class_name=self.row.text(roster_sheet.CLASS)[:_LONGEST_CLASS],
            stage=f"{stage:%H:%M}" if stage is not None else "",
            plan=plan or "", load_g_per_kg=load, depletion=depletion or "", bounds=bounds,
            asked_at=f"{asked:%H:%M}" if asked is not None else "",
            look_before_min=look, asks=asks,
            reason=self.row.text(roster_sheet.REASON)[:_LONGEST_REASON],
            cells=self.row.names,
        )  # fmt: skip

    def _asks(self, day: date | None, lines: list[Line]) -> dict[str, Any]:
        """The look and the weigh-in that the row names; a weigh-in needs cap, day and time."""
        found: dict[str, Any] = {}
        look = self._take(roster_sheet.TARGET, _target, lines)
        if look is not None:
            found["look"] = None if look == AS_USUAL else look
        cap = self._take(roster_sheet.CAP, self._cap, lines)
        on = self._take(roster_sheet.WEIGH_DAY, self._day, lines)
        clock = self._take(roster_sheet.WEIGH_AT, _clock, lines)
        if cap == NONE:
            found["weigh_in"] = None
            return found
        given = {roster_sheet.CAP: cap, roster_sheet.WEIGH_DAY: on, roster_sheet.WEIGH_AT: clock}
        if day is None or all(one is None for one in given.values()):
            return found
        empty = [key for key in given if self.row.cells.get(key, NOTHING).content is Content.EMPTY]
        if empty:
            where = self.row.names.get(empty[0]) or self.row.names.get(roster_sheet.DAY, "")
            lines.append(Line(where, words.weigh_in_incomplete()))
        elif isinstance(cap, dict) and on is not None and clock is not None:
            days_out = (day - on).days
            if 0 <= days_out <= max(PLAN_DAYS):
                found["weigh_in"] = {"days_out": days_out, "at": f"{clock:%H:%M}", **cap}
            else:
                lines.append(Line(self.row.names[roster_sheet.WEIGH_DAY], words.weigh_in_far_off()))
        return found

    def _cap(self, cell: Cell) -> dict[str, float] | str:
        text = _plain(cell.value) if cell.content is Content.NUMBER else cell.text
        if not any(sign.isalpha() for sign in text):
            text = f"{text} kg"  # as the heading says
        return _read(lambda: read_cap(text, "kg", self.profile.height_cm))

    def _take(self, key: str, read: Callable[[Cell], _T], lines: list[Line]) -> _T | None:
        cell = self.row.cells.get(key)
        if cell is None or cell.content is Content.EMPTY:
            return None
        if cell.content in (Content.FORMULA, Content.TRUTH, Content.ERROR):
            odd = words.odd_cell(cell.content.value)
            lines.append(Line(self.row.names[key], words.given(cell.text, odd)))
            return None
        try:
            return read(cell)
        except ParseError as error:
            lines.append(Line(self.row.names[key], words.given(cell.text, parse_error_text(error))))
        except _Unreadable as unread:
            lines.append(Line(self.row.names[key], words.given(cell.text, str(unread))))
        return None

    def _day(self, cell: Cell) -> date:
        today = local_date(self.profile, self.known.context)
        if cell.content is Content.NUMBER:
            if cell.value not in _DAYS:
                raise _Unreadable(words.no_day())
            return _COUNTED_FROM + timedelta(days=int(cell.value))
        try:  # as spreadsheet programs keep a date, and as the standard writes it
            return datetime.fromisoformat(cell.text.strip()).date()
        except ValueError:
            return _day_in_any_language(cell.text, today)

    def _kind(self, cell: Cell) -> str:
        kind = words.kinds().get(cell.label)
        if kind is None:
            raise _Unreadable(words.no_such_kind())
        return kind

    def _zone(self, cell: Cell) -> str:
        if cell.content is not Content.TEXT:
            raise _Unreadable(words.no_such_place())
        try:
            found = find_places(cell.text.strip())
        except ParseError:
            raise _Unreadable(words.no_such_place()) from None
        if not found:
            raise _Unreadable(words.no_such_place())
        return found[0].zone  # the likeliest; where it is not the athlete's own it is shown

    def _plan(self, cell: Cell) -> str:
        plan = self.known.plans.get(cell.label)
        if plan is None:
            raise _Unreadable(words.no_such_plan())
        return plan


def _day_in_any_language(text: str, today: date) -> date:
    """A sheet may have been filled in by somebody who writes dates otherwise than its sender reads."""
    try:
        return day_in(text, today)
    except ParseError as refused:
        if refused.code is ParseErrorCode.AMBIGUOUS_DATE:
            raise  # day and month in figures alone stay doubtful, whatever a language makes of them
        for code in known_languages():
            with speaking(code):
                try:
                    return day_in(text, today)
                except ParseError:
                    continue
        raise


def _clock(cell: Cell) -> time:
    if cell.content is Content.NUMBER and 0 <= cell.value < 1 and cell.value != 0:
        minutes = round(cell.value * 24 * 60)  # a time as spreadsheet programs count it
        return time(minutes // 60 % 24, minutes % 60)
    if cell.content is Content.DATE:
        text = cell.text.rpartition(" ")[2]
        try:
            return time.fromisoformat(text).replace(second=0, microsecond=0)
        except ValueError:
            raise _Unreadable(words.no_time()) from None
    text = cell.text.strip()
    if text.count(":") == 2 and text.endswith(":00"):
        text = text.removesuffix(":00")
    return parse_clock(text)


def _limit(key: str) -> Callable[[Cell], float]:
    def read(cell: Cell) -> float:
        if cell.content is Content.NUMBER:
            return parse_number(_plain(cell.value), low=0)
        if LIMIT_KEYS[key].unit == "L":
            return parse_volume(cell.text, unit=VolumeUnit.L).litres
        return parse_grams(cell.text, high=10_000)

    return read


def _load(cell: Cell) -> float:
    if cell.content is Content.NUMBER:
        return parse_number(_plain(cell.value), low=0, high=20)
    plain = cell.text.casefold().replace("g/kg", "").replace("g per kg", "")
    return parse_number(plain, low=0, high=20)


def _depletion(cell: Cell) -> str:
    found = words.depletions().get(cell.label)
    if found is None:
        raise _Unreadable(words.no_such_depletion())
    return found


def _target(cell: Cell) -> dict[str, Any] | str:
    head, _, said = cell.text.partition(":")
    look = _read(lambda: AS_USUAL if words.says_usual(head) else read_look(head))
    return {**look, "words": " ".join(said.split())} if isinstance(look, dict) else look


def _read(reader: Callable[[], _T]) -> _T:
    """As a question of the chat reads it, with its sentence where it can't be taken."""
    try:
        return reader()
    except InvalidAnswer as unread:
        raise _Unreadable(str(unread)) from None


def _look(cell: Cell) -> float:
    if words.says_none(cell.text):
        return 0.0
    low, high = float(LOOK_USELESS_MIN), float(LOOK_SOONEST_MIN)
    plain = cell.text.casefold().replace("min", "")
    value = parse_number(_plain(cell.value) if cell.content is Content.NUMBER else plain, low=0)
    if value and not low <= value <= high:
        raise _Unreadable(words.look_out(low, high))
    return value


def _plain(value: float) -> str:
    """A cell's number for the readers: no exponent, and never three decimals (see the plan's sheet)."""
    return f"{value:.4f}" if math.isfinite(value) else "?"
