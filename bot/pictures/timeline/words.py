"""A season in words, the words on its picture, and what both are made of."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from datetime import date

from bot.pictures.week_picture import words as week_words
from bot.words import figures
from bot.words.common import event_name, fits_under_a_picture
from bot.words.languages import Sentence, SentenceAbout, tr, trn
from bot.words.names import word


@dataclass(frozen=True, slots=True, kw_only=True)
class SeasonEvent:
    """A trial, show or shoot. `weight_kg` is that of the last morning of its week, if one is known;
    `load_per_kg` g a kg and day of the load; both None where its day is still to come.
    """

    kind: str
    day: dt.date
    look: str | None = None
    placing: str = ""
    weight_kg: float | None = None
    load_per_kg: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Season:
    """An athlete's weights by date and events, oldest first, as seen on `today`; never none of both."""

    name: str
    weight_unit: str
    today: dt.date
    weights: tuple[tuple[dt.date, float], ...]
    events: tuple[SeasonEvent, ...]

    @property
    def first(self) -> dt.date:
        return min([*(day for day, _ in self.weights), *(one.day for one in self.events)])

    @property
    def last(self) -> dt.date:
        return max([*(day for day, _ in self.weights), *(one.day for one in self.events)])


button = Sentence("Season at a glance")
menu = Sentence("Your season on one line of time")


nothing_yet = SentenceAbout(
    "There is no season to show yet: no event is set and no weight is known.",
    "There is no season to show yet: {name} has no event set and no weight known.",
)


def title(season: Season) -> str:
    return season.name


def span(season: Season) -> str:
    """ "4 Apr to 26 Sep 2027"; with both years where there are two."""
    first, last = figures.day_and_month(season.first), figures.day_and_month(season.last)
    if season.first == season.last:
        return f"{last} {season.last.year}"
    if season.first.year != season.last.year:
        first = f"{first} {season.first.year}"
    return tr("{first} to {last}", first=first, last=f"{last} {season.last.year}")


def weight_heading(season: Season) -> str:
    return week_words.heading("weight", season.weight_unit, "l")


def event_label(event: SeasonEvent) -> str:
    """ "trial 18 Apr: full"."""
    when = f"{event_name(event.kind)} {week_words.column_date(event.day)}"
    return f"{when}: {word(event.look)}" if event.look else when


def month_label(day: date) -> str:
    """A month under the line of time."""
    return figures.dated(day, "LLL")


def caption(season: Season) -> str:
    """The same in words, an event a line; the oldest are left out where they would not fit."""
    weights, events = len(season.weights), len(season.events)
    there = [
        *([trn("{number} weight", "{number} weights", weights)] if weights else []),
        *([trn("{number} event", "{number} events", events)] if events else []),
    ]
    lead = f"{season.name}: {figures.all_of(there)}, {span(season)}."
    lines = [_line(season, number) for number in range(len(season.events))]
    if season.weights:
        first, last = season.weights[0], season.weights[-1]
        lines.append(
            tr(
                "Weight: {first} on {first_day}, {last} on {last_day}.",
                first=figures.weight(first[1], season.weight_unit),
                first_day=figures.short_day(first[0]),
                last=figures.weight(last[1], season.weight_unit),
                last_day=figures.short_day(last[0]),
            )
        )
    while not fits_under_a_picture("\n".join([lead, *lines])):
        del lines[0]
    return "\n".join([lead, *lines])


def _line(season: Season, number: int) -> str:
    event = season.events[number]
    parts = []
    if event.look:
        parts.append(word(event.look))
    if event.placing:
        parts.append(event.placing)
    if event.load_per_kg is not None:
        parts.append(tr("load {per_kg} g/kg a day", per_kg=figures.number(event.load_per_kg, 1)))
    if event.weight_kg is not None:
        parts.append(figures.weight(event.weight_kg, season.weight_unit))
        before = next(
            (e for e in reversed(season.events[:number]) if e.weight_kg is not None), None
        )
        if before is not None and before.weight_kg is not None:
            moved = event.weight_kg - before.weight_kg
            size = figures.weight_apart(moved, season.weight_unit)
            parts.append(
                tr("{size} more than at the one before", size=size)
                if moved >= 0
                else tr("{size} less than at the one before", size=size)
            )
    ahead = (event.day - season.today).days
    if ahead > 0:
        parts.append(trn("in {number} day", "in {number} days", ahead))
    when = f"{figures.capital(event_name(event.kind))}, {figures.short_day(event.day)}"
    return f"{when}: {', '.join(parts)}" if parts else when
