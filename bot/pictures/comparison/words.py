"""Weeks side by side in words: what is asked, the tables, what stands under the picture."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date

from bot.pictures.week_picture import words as week_words
from bot.pictures.week_picture.values import ChartDay
from bot.words import figures
from bot.words.common import day_and_year, event_name, fits_under_a_picture
from bot.words.figures import tables
from bot.words.languages import Sentence, SentenceAbout, mark, tr
from bot.words.names import seen_look, symptom_name, word
from engine.values.checkin import CoachLook
from engine.values.plan import PLAN_DAYS

#: How the weeks are called, oldest first, whatever their colours.
LETTERS = "ABCD"
MOST = len(LETTERS)


@dataclass(frozen=True, slots=True, kw_only=True)
class ComparedWeek:
    """A week with its days from the furthest out; `load_per_kg` is g a kg and day of the load."""

    kind: str  # show | shoot | trial
    event_day: dt.date
    look: str | None
    load_per_kg: float | None
    eaten_share: float | None
    load_from: int = 3  # the first load day, in days out
    days: tuple[ChartDay, ...]

    @property
    def load_weight_kg(self) -> float | None:
        """How the weight moved from the morning of the first load day to that of the event."""
        return _moved(self.days, self.load_from)

    def at(self, days_out: int) -> ChartDay | None:
        return next((day for day in self.days if day.days_out == days_out), None)


@dataclass(frozen=True, slots=True, kw_only=True)
class Compared:
    """Two to four weeks of one athlete, oldest first, in the athlete's units."""

    name: str
    weight_unit: str
    volume_unit: str
    weeks: tuple[ComparedWeek, ...]

    def lettered(self) -> list[tuple[str, ComparedWeek]]:
        return list(zip(LETTERS, self.weeks, strict=False))


def _moved(days: tuple[ChartDay, ...], load_from: int) -> float | None:
    weights = {day.days_out: day.weight_kg for day in days}
    first, last = weights.get(load_from), weights.get(0)
    return last - first if first is not None and last is not None else None


button = Sentence("Compare weeks")
menu = Sentence("Compare your peak weeks")
compare_button = Sentence("Compare")
at_least_two = Sentence("Choose two at least.")
gone = Sentence("Those weeks are not there any more.")

picture_button = Sentence("As a chart")
photos_button = Sentence("Photos side by side")
other_weeks_button = Sentence("Other weeks")


two_needed = SentenceAbout(
    "Comparing takes two of your peak weeks with check-ins. There are not two yet.",
    "Comparing takes two peak weeks with check-ins. {name} does not have two yet.",
)


def which(name: str, *, own: bool) -> str:
    if own:
        return tr("Which of your weeks? Tap two to {most}, then Compare.", most=MOST)
    return tr("Which of {name}'s weeks? Tap two to {most}, then Compare.", name=name, most=MOST)


def week_button(kind: str, day: date, *, chosen: bool) -> str:
    return f"{'☑' if chosen else '☐'} {event_name(kind)} {day_and_year(day)}"


def most_at_once() -> str:
    return tr("{most} weeks fit on a phone. Take one out first.", most=MOST)


#: The tables, by view, as they are called on a button.
VIEWS = {
    "carbs": mark("Carbs"),
    "weight": mark("Weight"),
    "look": mark("Look"),
    "water": mark("Water, complaints"),
}


def view_button(view: str, *, shown: bool) -> str:
    name = tr(VIEWS[view])
    return f"· {name} ·" if shown else name


# In a chat


def message(compared: Compared, view: str) -> str:
    """The weeks and how each went, one table of them, and how to read it."""
    head = [
        f"{letter}: {legend(week)}{_how_it_went(compared, week)}"
        for letter, week in compared.lettered()
    ]
    return "\n".join([*head, "", *_TABLES[view](compared)])


def legend(week: ComparedWeek) -> str:
    """ "trial, Sun 18 Apr 2027: full"."""
    when = f"{event_name(week.kind)}, {day_and_year(week.event_day)}"
    return f"{when}: {word(week.look)}" if week.look else when


def _how_it_went(compared: Compared, week: ComparedWeek) -> str:
    parts = []
    if week.load_per_kg is not None:
        parts.append(tr("load {per_kg} g/kg a day", per_kg=figures.number(week.load_per_kg, 1)))
    if week.eaten_share is not None:
        parts.append(tr("eaten {percent} %", percent=figures.number(100 * week.eaten_share)))
    moved = week.load_weight_kg
    if moved is not None:
        size = figures.weight_apart(moved, compared.weight_unit)
        parts.append(tr("{size} up", size=size) if moved >= 0 else tr("{size} down", size=size))
    return f" ({', '.join(parts)})" if parts else ""


def column(days_out: int) -> str:
    """Over a column, where about five characters fit."""
    return tr("Day") if days_out == 0 else tr("{number} out", number=days_out)


def spoken(days_out: int) -> str:
    """The same inside a text, where there is room."""
    return tr("Day") if days_out == 0 else tr("{days} out", days=days_out)


def _carbs(compared: Compared) -> list[str]:
    """Two weeks with planned, set and eaten in one cell; more in a block each."""
    if len(compared.weeks) == 2:
        return [
            tr("Carbs in g: planned / set / eaten"),
            _block(
                compared,
                lambda day: "/".join(
                    (_grams(day.planned_carb_g), _grams(day.carb_g), _grams(day.eaten_carb_g))
                ),
            ),
        ]
    found = []
    of: tuple[tuple[str, Callable[[ChartDay], float | None]], ...] = (
        (tr("Carbs set, g"), lambda day: day.carb_g),
        (tr("Carbs eaten, g"), lambda day: day.eaten_carb_g),
        (tr("Carbs planned, g"), lambda day: day.planned_carb_g),
    )
    for title, figure in of:
        found += [title, _block(compared, lambda day, figure=figure: _grams(figure(day)))]  # type: ignore[misc]
    return found


def _weight(compared: Compared) -> list[str]:
    unit = compared.weight_unit

    def cell(day: ChartDay) -> str:
        if day.weight_kg is None:
            return "–"
        place = day.against_band
        sign = " " if place is None else {1: "▲", -1: "▼", 0: "="}[place]
        return f"{week_words.weight_label(day.weight_kg, unit).replace(chr(10), ' ')}{sign}"

    table = [week_words.heading("weight", unit, compared.volume_unit), _block(compared, cell)]
    if any(day.against_band is not None for week in compared.weeks for day in week.days):
        table.append(tr("= in the expected range, ▲ above it, ▼ below it"))
    return table


#: What a coach saw, as a rising bar: from flat to spilled over.
BARS = dict(zip(CoachLook, "▁▂▄▆█", strict=True))


def _look(compared: Compared) -> list[str]:
    seen = any(day.eye is not None for week in compared.weeks for day in week.days)

    def cell(day: ChartDay) -> str:
        full = "–" if day.fullness is None else str(day.fullness)
        sharp = "–" if day.sharpness is None else str(day.sharpness)
        eye = [] if not seen else ["·" if day.eye is None else BARS[CoachLook(day.eye)]]
        return " ".join([full, *eye, sharp])

    if not seen:
        return [tr("Fullness of 10, sharpness of 5"), _block(compared, cell)]
    scale = ", ".join(f"{BARS[look]} {seen_look(look)}" for look in CoachLook)
    return [
        tr("Fullness of 10, what the coach saw, sharpness of 5"),
        _block(compared, cell),
        tr("Coach: {scale}", scale=scale),
    ]


def _water(compared: Compared) -> list[str]:
    unit = compared.volume_unit

    def cell(day: ChartDay) -> str:
        drunk = "–" if day.water_l is None else week_words.water_label(day.water_l, unit)
        return f"{drunk}{'!' if day.symptoms else ' '}"

    found = [week_words.heading("water", compared.weight_unit, unit), _block(compared, cell)]
    told = [
        tr(
            "! {letter}, {day}: {symptoms}", letter=letter, day=spoken(day.days_out),
            symptoms=", ".join(symptom_name(one) for one in day.symptoms),
        )
        for letter, week in compared.lettered()
        for day in week.days
        if day.symptoms
    ]  # fmt: skip
    return [*found, *(told or [tr("No complaints in these weeks.")])]


_TABLES: dict[str, Callable[[Compared], list[str]]] = {
    "carbs": _carbs,
    "weight": _weight,
    "look": _look,
    "water": _water,
}


def _block(compared: Compared, cell: Callable[[ChartDay], str]) -> str:
    names = [" ", *(column(out) for out in PLAN_DAYS)]
    columns = []
    for letter, week in compared.lettered():
        days = [week.at(out) for out in PLAN_DAYS]
        columns.append([letter, *("–" if day is None else cell(day) for day in days)])
    return tables(names, columns)


def _grams(value: float | None) -> str:
    return "–" if value is None else week_words.carbs_label(value)


# On and under the picture


HINTS = {
    "weight": mark("against each week's first morning"),
    "carbs": mark("hatched planned, green set, black eaten"),
    "water": mark("hatched planned, black drunk"),
    "fullness": mark("of 10"),
    "eye": mark("flat to spilled over"),
    "sharpness": mark("of 5"),
}


def hint(measure: str) -> str:
    return tr(HINTS[measure]) if measure in HINTS else ""


def caption(compared: Compared) -> str:
    """The same in words, as far as it fits: how each week went, then its mornings."""
    lines = [
        f"{letter}: {legend(week)}{_how_it_went(compared, week)}"
        for letter, week in compared.lettered()
    ]
    for days_out in PLAN_DAYS[::-1]:
        line = f"{figures.capital(spoken(days_out))}: " + "; ".join(
            f"{letter} {_morning(compared, week.at(days_out))}"
            for letter, week in compared.lettered()
        )
        if not fits_under_a_picture("\n".join([*lines, line])):
            break
        lines.append(line)
    return "\n".join(lines)


def _morning(compared: Compared, day: ChartDay | None) -> str:
    if day is None:
        return "–"
    parts = []
    if day.weight_kg is not None:
        parts.append(figures.weight(day.weight_kg, compared.weight_unit))
    if day.fullness is not None:
        parts.append(tr("full {score}", score=day.fullness))
    if day.sharpness is not None:
        parts.append(tr("sharp {score}", score=day.sharpness))
    if day.carb_g is not None:
        parts.append(tr("carbs {grams}", grams=week_words.carbs_label(day.carb_g)))
    return ", ".join(parts) or "–"


# Photos


which_day = Sentence("Photos of which morning?")


no_photos = SentenceAbout(
    "There is no morning on which two of these weeks have photos of the same pose.",
    "There is no morning on which two of these weeks have photos of the same pose from {name}.",
)


def photo_label(letter: str, day: date) -> str:
    """Over a photo."""
    return f"{letter} · {day_and_year(day)}"


def photos_caption(days_out: int, weeks: Sequence[tuple[str, ComparedWeek]]) -> str:
    told = "\n".join(f"{letter}: {legend(week)}" for letter, week in weeks)
    return f"{spoken(days_out)}\n{told}"
