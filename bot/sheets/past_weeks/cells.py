"""What a cell of the sheet says, by the kind of its column."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from datetime import date, timedelta
from functools import partial
from typing import Any, NamedTuple

from bot.plan.flow import LONGEST_TRAINING
from bot.sheets.format.cells import from_csv
from bot.sheets.format.opening import Cell, Content
from bot.sheets.past_weeks.layout import Reads
from bot.words.calendar_words import calendar_words
from bot.words.common import KINDS, event_name
from bot.words.languages import tr, ways_written
from bot.words.names import gut_button
from bot.words.phases import as_drafted, phase_in
from engine.values.checkin import Look
from engine.written.units import (
    ParseError,
    ParseErrorCode,
    VolumeUnit,
    WeightUnit,
    parse_day,
    parse_grams,
    parse_number,
    parse_score,
    parse_volume,
    parse_weight,
)

YEAR = timedelta(days=365)


LONGEST_NOTE = 1000


_EPOCH = date(1899, 12, 30)  # of a spreadsheet's day numbers (ECMA-376 Part 1, 18.17.4.1)


_SERIALS = range(36526, 73051)  # those of this century's years up to 2099


_ISO = re.compile(r"(\d{4}-\d\d-\d\d)(?: 00:00:00)?")


_HOUR = r"(?:h|hours?|hrs?|std|stunden?)\.?"


_HOURS = re.compile(rf" ?{_HOUR}$")


_MINUTES = r"(?:m|min|minutes?|minuten?)\.?"


CLOCKED = re.compile(
    rf"(\d{{1,2}})(?::| ?{_HOUR} ?)([0-5]?\d)(?::00| ?{_MINUTES}| ?{_HOUR})?", re.IGNORECASE
)


_TWO_NUMBERS = re.compile(r"(\d{1,2}) ?[/.-] ?(\d{1,2}) ?[/.-] ?(\d{4}|\d\d)")


class Told(NamedTuple):
    """A cell, the unit that its column is in, and the day on which it is read."""

    cell: Cell
    unit: str
    today: date

    @property
    def text(self) -> str:
        return _text(self.cell)


def _day(told: Told) -> tuple[date, ...]:
    """The dates that a cell may mean: one, or two where day and month could be either."""
    cell = told.cell
    if cell.content is Content.NUMBER:
        if cell.value not in _SERIALS:
            raise ParseError(ParseErrorCode.NOT_A_DATE)
        return (_EPOCH + timedelta(days=int(cell.value)),)
    text = cell.text.strip()
    if found := _ISO.fullmatch(text):
        return (_real(found[1]),)
    if found := _TWO_NUMBERS.fullmatch(text):
        first, second, year = int(found[1]), int(found[2]), int(found[3])
        year += 2000 if year < 100 else 0
        either = [(second, first), (first, second)]  # (month, day): day first, then month first
        days = [_real(f"{year:04}-{m:02}-{d:02}") for m, d in either if m <= 12]
        return tuple(dict.fromkeys(days)) if len(days) < 2 else (days[0], days[1])
    return (parse_day(text, today=told.today - YEAR, words=calendar_words()),)


def _real(iso: str) -> date:
    try:
        return date.fromisoformat(iso)
    except ValueError as error:
        raise ParseError(ParseErrorCode.NOT_A_DATE) from error


def _text(cell: Cell) -> str:
    """The cell for the readers of what people write: a number without exponent, and never with three
    decimals, which they refuse as perhaps thousands.
    """
    if cell.content is not Content.NUMBER:
        return cell.text.strip()
    return str(int(cell.value)) if cell.value == int(cell.value) else f"{cell.value:.4f}"


def _of(high: int) -> Callable[[Told], int]:
    return lambda told: parse_score(_whole(told.cell), 1, high)


def _whole(cell: Cell) -> str:
    return f"{cell.value:g}" if cell.content is Content.NUMBER else cell.text.strip()


def _hours(told: Told) -> float:
    """7.5, "7:30", "7 h 30 min", "7,5 Std."."""
    text = told.text.casefold()
    if found := CLOCKED.fullmatch(text):
        return parse_number(found[1], low=0, high=24) + int(found[2]) / 60
    return parse_number(_HOURS.sub("", text), low=0, high=24)


def _phase(told: Told) -> str:
    phase = phase_in(from_csv(told.cell.text))
    if phase is None:
        raise KeyError(told.cell.text)
    return phase.value


def _one_of(*tables: Mapping[str, str]) -> Callable[[Told], str]:
    def read(told: Told) -> str:
        known = {
            text: key
            for table in tables
            for key, said in table.items()
            for text in ways_written(partial(tr, said))
        }
        return known[" ".join(told.cell.text.split()).casefold()]

    return read


READERS: Mapping[Reads, Callable[[Told], Any]] = {
    Reads.DAY: _day,
    Reads.KIND: _one_of(KINDS, event_name.table),
    Reads.LOOK: _one_of({look.value: look.value for look in Look}),
    Reads.GRAMS: lambda told: parse_grams(told.text, high=1500),
    Reads.WEIGHT: lambda told: parse_weight(told.text, unit=WeightUnit(told.unit)).kg,
    Reads.VOLUME: lambda told: parse_volume(told.text, unit=VolumeUnit(told.unit.lower())).litres,
    Reads.OF_TEN: _of(10),
    Reads.OF_FIVE: _of(5),
    Reads.GUT: _one_of(gut_button.table, {gut: gut for gut in gut_button.table}),
    Reads.HOURS: _hours,
    Reads.PHASE: _phase,
    Reads.TRAINING: lambda told: as_drafted(from_csv(told.text))[:LONGEST_TRAINING],
    Reads.WORDS: lambda told: from_csv(told.text)[:LONGEST_NOTE],
}
