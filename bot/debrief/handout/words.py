"""What stands on a page to hand over."""

from __future__ import annotations

from collections.abc import Sequence

from bot.debrief.words import WHY
from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, tr
from engine.planning.behind.debrief import DayBehind
from engine.written.units import WeightUnit

caption = SentenceOn(
    "{name}'s week on one page, without your own note. It holds health data: keep it safe."
)


own_caption = Sentence("Your week on one page. It holds health data: keep it safe.")
days_heading = Sentence("Day by day, carbs in g")
in_sum_heading = Sentence("Looking back")


def under_title(name: str, coach: str) -> str:
    if name == coach:
        return tr("Athlete and coach: {name}", name=name)
    return tr("Athlete: {name}. Coach: {coach}.", name=name, coach=coach)


def columns() -> tuple[str, ...]:
    return (
        tr("Day"),
        tr("Planned"),
        tr("Set"),
        tr("Eaten"),
        tr("Weight"),
        tr("Full"),
        tr("Sharp"),
        tr("Why changed"),
    )


def day_row(day: DayBehind, why: str, weight_unit: str) -> tuple[str, ...]:
    told = day.morning
    weight, full, sharp = (
        (None, None, None) if told is None else (told.weight_kg, told.fullness, told.sharpness)
    )
    return (
        figures.days_out(day.days_out),
        figures.number(day.target.carb_g),
        figures.number(day.set_g),
        _or_dash(None if day.eaten_g is None else figures.number(day.eaten_g)),
        _or_dash(None if weight is None else figures.weight(weight, weight_unit)),
        _or_dash(None if full is None else figures.plain(full)),
        _or_dash(None if sharp is None else figures.plain(sharp)),
        tr(WHY[why]) if why in WHY else why.replace("-", " "),
    )


# The charts


axis = Sentence("days out")
caution = Sentence(
    "Carbs in g a day. Full of 10, sharp of 5, on that day's morning. This is a record, not "
    "medical advice; what a doctor or dietitian says comes first."
)


def mass(kg: float, unit: str) -> str:
    """The end of a scale, without the unit, which the title names; stones and pounds on two lines."""
    said = figures.weight(kg, unit)
    if unit == WeightUnit.ST:
        return said.replace(" st ", " st\n").removesuffix(" lb")
    return said.split()[0]


def carbs_panel() -> tuple[str, str]:
    """A chart's title, and what its marks are."""
    return tr("Carbs (g)"), tr("frame planned, bar set, dot eaten")


def weight_panel(unit: WeightUnit) -> tuple[str, str]:
    said = "st lb" if unit is WeightUnit.ST else unit.value
    return tr("Weight ({unit})", unit=said), tr("in the morning")


def ratings_panel() -> tuple[str, str]:
    return tr("Full and sharp"), tr("dot full of 10, square sharp of 5")


def charts_in_words(days: Sequence[DayBehind], weight_unit: str) -> str:
    """What is read aloud in place of the charts; every figure of them is in the table above."""
    parts = [tr("Three charts of the table above, by days out.")]
    load = max(days, key=lambda day: day.set_g)
    parts.append(
        tr(
            "Most carbs were set {when}: {grams}.",
            when=figures.days_out(load.days_out),
            grams=figures.grams(load.set_g),
        )
    )
    weights = [
        (d, d.morning.weight_kg) for d in days if d.morning and d.morning.weight_kg is not None
    ]
    if len(weights) > 1:
        (first, began), (last, ended) = weights[0], weights[-1]
        parts.append(
            tr(
                "Weight went from {began} ({first}) to {ended} ({last}).",
                began=figures.weight(began, weight_unit),
                first=figures.days_out(first.days_out),
                ended=figures.weight(ended, weight_unit),
                last=figures.days_out(last.days_out),
            )
        )
    fulls = [d.morning.fullness for d in days if d.morning and d.morning.fullness is not None]
    if fulls:
        parts.append(
            tr("Fullness was between {low} and {high} of 10.", low=min(fulls), high=max(fulls))
        )
    return " ".join(parts)


def _or_dash(said: str | None) -> str:
    return "–" if said is None else said
