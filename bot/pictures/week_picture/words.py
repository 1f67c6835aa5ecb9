"""The picture of a week: its labels, and the same told in words beneath it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from bot.pictures.week_picture.values import ChartDay, ChartOdds, ChartWeek
from bot.words import chances, figures
from bot.words.common import day_and_year, event_name, fits_under_a_picture
from bot.words.languages import Sentence, SentenceAbout, SentenceBy, mark, tr, tr_if
from bot.words.names import seen_look, symptom_name
from engine.evidence.units import KG_PER_LB, LB_PER_STONE
from engine.values.plan import Phase
from engine.written.units import Towards, WeightUnit

TEN = 10


no_week_to_show = SentenceAbout(
    "There is no chart yet: your event and plan have to be set first.",
    "There is no chart yet: {name}'s event and plan have to be set first.",
)


# Labels on the picture


def title(week: ChartWeek) -> str:
    """ "show, Sun 9 May 2027", beside the name."""
    return tr("{kind}, {day}", kind=event_name(week.kind), day=day_and_year(week.event_day))


def baseline(week: ChartWeek) -> str:
    if week.baseline_kg is None:
        return ""
    return tr("on file {weight}", weight=figures.weight(week.baseline_kg, week.weight_unit))


def before(week: ChartWeek) -> str:
    """What the faint line is."""
    if week.before is None:
        return ""
    if week.first_kg is None:
        return tr("trial {day}", day=column_date(week.before.event_day))
    return tr("trial {day} (weight as it moved)", day=column_date(week.before.event_day))


def silent(week: ChartWeek) -> str:
    return "" if any(day.answered for day in week.days) else tr("no check-in yet")


def notes(week: ChartWeek) -> list[str]:
    """The complaints in words, in as many lines as there are mornings with any, four at most."""
    told = [
        tr(
            "{day}: {symptoms}", day=_days_out(week, day),
            symptoms=", ".join(symptom_name(one) for one in day.symptoms),
        )
        for day in week.days
        if day.symptoms
    ]  # fmt: skip
    return [*told[: NOTES - 1], " · ".join(told[NOTES - 1 :])] if len(told) >= NOTES else told


NOTES = 4


def heading(panel: str, weight_unit: str, volume_unit: str) -> str:
    unit = "st lb" if weight_unit == WeightUnit.ST else weight_unit
    return {
        "weight": tr("Weight, {unit}", unit=unit),
        "carbs": tr("Carbs, g"),
        "water": tr("Water, {unit}", unit=figures.volume(1, volume_unit).partition(" ")[2]),
        "fullness": tr("Fullness"),
        "eye": tr("Coach's eye"),
        "sharpness": tr("Sharpness"),
        "symptoms": tr("Complaints"),
    }[panel]


#: What a day is for, in a word that fits its column.
PHASES = {
    Phase.DEPLETION: mark("low"),
    Phase.USUAL: mark("as usual"),
    Phase.REFEED: mark("refeed"),
    Phase.LOAD: mark("load"),
    Phase.REST: mark("rest"),
}


def phase_label(day: ChartDay) -> str:
    if day.phase is None or day.phase == Phase.EVENT:
        return ""
    return tr(PHASES[Phase(day.phase)])


key = SentenceBy(
    {
        "band": mark("expected"),
        "inside": mark("morning"),
        "outside": mark("outside"),
        "planned": mark("planned"),
        "set": mark("set"),
        "eaten": mark("eaten"),
        "change": mark("± plan"),
        "drunk": mark("drunk"),
        "expected": mark("expected"),
        "fullness": mark("of 10"),
        "eye": mark("flat to spilled over"),
        "sharpness": mark("of 5"),
    }
)


def column(week: ChartWeek, day: ChartDay) -> tuple[str, str, str]:
    """A column's three lines: days out or the event, weekday, date."""
    weekday = today_label() if day.date == week.today else figures.short_weekday(day.date)
    event = day.days_out == 0
    out = tr(KIND_LABELS[week.kind]) if event else tr("{number} out", number=day.days_out)
    return out, weekday, column_date(day.date)


def column_date(day: date) -> str:
    """ "10 Nov", in as few characters as the language has for it: a column holds about seven."""
    return figures.dated(day, tr("d LLL"))


def _days_out(week: ChartWeek, day: ChartDay) -> str:
    if day.days_out == 0:
        return figures.capital(event_name(week.kind))
    return tr("{days_out} out", days_out=day.days_out)


# Over a column, where about five characters fit.
KIND_LABELS = {"show": mark("Show"), "shoot": mark("Shoot"), "trial": mark("Trial")}


menu = Sentence("Your week as a chart")
today_label = Sentence("today")
missed_label = Sentence("no check-in")
odds_heading = Sentence("Chances on the day")


def weight_label(kg: float, unit: str) -> str:
    """The figure alone, as the heading has the unit; stones and pounds on two lines."""
    shown = figures.weight(kg, unit)
    if unit == WeightUnit.ST:
        return shown.replace(" st ", " st\n").removesuffix(" lb")
    return shown.split(" ")[0]


def weight_tick(value: float, unit: str) -> str:
    """A line of the weight scale: kg, or lb; lb as stones and pounds for those who weigh so."""
    if unit != WeightUnit.ST:
        return figures.plain(value)
    stones, pounds = divmod(round(value), round(float(LB_PER_STONE)))
    return f"{stones} st {pounds}"


def on_scale(kg: float, unit: str) -> float:
    """The mass in the scale's own unit: kg, or lb (for stones too)."""
    return kg if unit == WeightUnit.KG else kg / float(KG_PER_LB)


def water_label(litres: float, unit: str) -> str:
    """The figure alone, as the heading has the unit."""
    return figures.volume(litres, unit).partition(" ")[0]


def carbs_label(grams: float) -> str:
    return f"{grams:.0f}"


def carbs_change(day: ChartDay) -> str:
    """ "+25" against the plan; "" where the plan's figure stands."""
    if day.set_carb_g is None or day.planned_carb_g is None:
        return ""
    change = round(day.set_carb_g) - round(day.planned_carb_g)
    return f"{'+' if change > 0 else '−'}{abs(change)}" if change else ""


def odds_given(week: ChartWeek, odds: ChartOdds) -> str:
    """What the odds suppose."""
    figure = figures.grams(odds.carb_g)
    if odds.sets_date == week.today:
        return tr("with {figure} today", figure=figure)
    return tr("with {figure} on {day}", figure=figure, day=figures.short_day(odds.sets_date))


def odds_label(look: str, tenths: int) -> str:
    """ "full 7 in 10"; at the ends "flat < 1 in 10", "full > 9 in 10"."""
    name = chances.look_name(look)
    if tenths == 0:
        return tr("{look} < 1 in 10", look=name)
    if tenths == TEN:
        return tr("{look} > 9 in 10", look=name)
    return tr("{look} {tenths} in 10", look=name, tenths=tenths)


# In words


@dataclass(frozen=True, slots=True)
class Said:
    """What of a week is told in its caption; less where all of it would not fit."""

    figures_of_band: bool = True
    fullness_expected: bool = True
    water: bool = True
    eaten: bool = True
    symptoms: bool = True


#: From everything to what matters most; the last one always fits.
_LESS = (
    Said(),
    Said(water=False),
    Said(water=False, fullness_expected=False),
    Said(water=False, fullness_expected=False, figures_of_band=False),
    Said(water=False, fullness_expected=False, figures_of_band=False, eaten=False),
    Said(water=False, fullness_expected=False, figures_of_band=False, eaten=False, symptoms=False),
)


def caption(week: ChartWeek, *, own: bool) -> str:
    """The same as the picture, as far as it fits."""
    for told in _LESS:
        said = _caption(week, own=own, told=told)
        if fits_under_a_picture(said):
            break
    return said


def _odds_line(week: ChartWeek, odds: ChartOdds) -> str:
    told = {
        "figure": figures.grams(odds.carb_g),
        "full": odds_label("full", odds.full),
        "flat": odds_label("flat", odds.flat),
        "spilled": odds_label("spilled", odds.spilled),
    }
    if odds.sets_date == week.today:
        return tr("Chances on event day with {figure} today: {full}, {flat}, {spilled}.", **told)
    return tr(
        "Chances on event day with {figure} on {day}: {full}, {flat}, {spilled}.",
        day=figures.short_day(odds.sets_date),
        **told,
    )


def _caption(week: ChartWeek, *, own: bool, told: Said) -> str:
    kind, day = event_name(week.kind), f"{figures.short_day(week.event_day)} {week.event_day.year}"
    lead = tr_if(
        own,
        "Your week to the {kind} on {day}: morning weight (expected range), fullness of "
        "10, sharpness of 5, carbs in g (against the plan).",
        "{name}'s week to the {kind} on {day}: morning weight (expected range), fullness "
        "of 10, sharpness of 5, carbs in g (against the plan).",
        name=week.name,
        kind=kind,
        day=day,
    )
    lines = [_line(week, day, told) for day in week.days]
    if week.odds is not None:
        lines.append(_odds_line(week, week.odds))
    return "\n".join([lead, *lines])


def _line(week: ChartWeek, day: ChartDay, told: Said) -> str:
    parts = [_weight(week, day, figures_of_band=told.figures_of_band)]
    if day.fullness is not None:
        parts.append(_fullness(day, expected=told.fullness_expected))
    if day.eye is not None:
        parts.append(tr("coach: {look}", look=seen_look(day.eye)))
    if day.sharpness is not None:
        parts.append(tr("sharp {score}", score=day.sharpness))
    if week.missed(day):
        parts = [missed_label()]
    if day.symptoms and told.symptoms:
        parts += [symptom_name(one) for one in day.symptoms]
    parts.append(_carbs(day))
    if day.eaten_carb_g is not None and told.eaten:
        parts.append(tr("ate {grams}", grams=carbs_label(day.eaten_carb_g)))
    if day.water_l is not None and told.water:
        parts.append(tr("water {volume}", volume=figures.volume(day.water_l, week.volume_unit)))
    said = ", ".join(part for part in parts if part) or "–"
    today = f" ({today_label()})" if day.date == week.today else ""
    return f"{_days_out(week, day)}, {figures.short_day(day.date)}{today}: {said}"


def _weight(week: ChartWeek, day: ChartDay, *, figures_of_band: bool) -> str:
    if day.weight_kg is None:
        return tr("no weight") if day.answered else ""
    weight = figures.weight(day.weight_kg, week.weight_unit)
    if day.against_band is None or day.band_low_kg is None or day.band_high_kg is None:
        return weight
    if not figures_of_band:
        return {
            1: tr("{weight} (above the expected range)", weight=weight),
            0: tr("{weight} (in the expected range)", weight=weight),
            -1: tr("{weight} (below the expected range)", weight=weight),
        }[day.against_band]
    unit = week.weight_unit
    low = figures.weight(day.band_low_kg, unit, Towards.LEAST)
    high = figures.weight(day.band_high_kg, unit, Towards.MOST)
    if unit != WeightUnit.ST:
        low, high = low.split(" ")[0], high.split(" ")[0]
    return {
        1: tr("{weight} (above {low}–{high})", weight=weight, low=low, high=high),
        0: tr("{weight} (in {low}–{high})", weight=weight, low=low, high=high),
        -1: tr("{weight} (below {low}–{high})", weight=weight, low=low, high=high),
    }[day.against_band]


def _fullness(day: ChartDay, *, expected: bool) -> str:
    if day.expected_fullness is None or not expected:
        return tr("full {score}", score=day.fullness)
    return tr(
        "full {score} ({expected} expected)", score=day.fullness, expected=day.expected_fullness
    )


def _carbs(day: ChartDay) -> str:
    if day.set_carb_g is None:
        if day.planned_carb_g is None:
            return ""
        return tr("carbs {grams} planned", grams=carbs_label(day.planned_carb_g))
    change = carbs_change(day)
    told = tr("carbs {grams}", grams=carbs_label(day.set_carb_g))
    return f"{told} ({change})" if change else told
