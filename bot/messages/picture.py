"""The picture of a week: its labels, and the same told in words beneath it."""

from __future__ import annotations

from bot.charts.values import ChartDay, ChartOdds, ChartWeek
from bot.languages import tr
from bot.messages import chances
from bot.messages import coach_figures as figures
from bot.messages.coach_plan import KIND_WORDS
from engine.evidence.units import KG_PER_LB, LB_PER_STONE
from engine.units import WeightUnit, show_weight

CAPTION_UNITS = 1024  # what Telegram takes, in UTF-16 units
TEN = 10


def picture_button() -> str:
    return "Picture"


def no_week_to_show(name: str, *, own: bool) -> str:
    whose = "your" if own else f"{name}'s"
    return f"There is nothing to draw yet: event and plan of {whose} week have to be there first."


# Labels on the picture


def heading(panel: str, weight_unit: str) -> str:
    return {
        "weight": f"Weight, {'st lb' if weight_unit == WeightUnit.ST else weight_unit}",
        "carbs": "Carbs, g",
        "fullness": "Fullness",
        "sharpness": "Sharpness",
    }[panel]


KEYS = {
    "band": "expected",
    "inside": "morning",
    "outside": "outside",
    "planned": "planned",
    "set": "set",
    "expected": "expected",
    "fullness": "of 10",
    "sharpness": "of 5",
}


def column(week: ChartWeek, day: ChartDay) -> tuple[str, str, str]:
    """A column's three lines: days out or the event, weekday, date."""
    weekday = today_label() if day.date == week.today else f"{day.date:%a}"
    return _days_out(week, day), weekday, f"{day.date.day} {day.date:%b}"


def _days_out(week: ChartWeek, day: ChartDay) -> str:
    return KIND_LABELS[week.kind] if day.days_out == 0 else f"{day.days_out} out"


KIND_LABELS = {"show": "Show", "shoot": "Shoot", "trial": "Trial"}


def today_label() -> str:
    return "today"


def missed_label() -> str:
    return "no check-in"


def weight_label(kg: float, unit: str) -> str:
    """The figure alone, as the heading has the unit; stones and pounds on two lines."""
    shown = show_weight(kg, WeightUnit(unit))
    if unit == WeightUnit.ST:
        return shown.replace(" st ", " st\n").removesuffix(" lb")
    return shown.split(" ")[0]


def weight_tick(value: float, unit: str) -> str:
    """A line of the weight scale: kg, or lb; lb as stones and pounds for those who weigh so."""
    if unit != WeightUnit.ST:
        return f"{value:g}"
    stones, pounds = divmod(round(value), round(float(LB_PER_STONE)))
    return f"{stones} st {pounds}"


def on_scale(kg: float, unit: str) -> float:
    """The mass in the scale's own unit: kg, or lb (for stones too)."""
    return kg if unit == WeightUnit.KG else kg / float(KG_PER_LB)


def carbs_label(grams: float) -> str:
    return f"{grams:.0f}"


def carbs_change(day: ChartDay) -> str:
    """ "+25" against the plan; "" where the plan's figure stands."""
    if day.set_carb_g is None or day.planned_carb_g is None:
        return ""
    change = round(day.set_carb_g) - round(day.planned_carb_g)
    return f"{'+' if change > 0 else '−'}{abs(change)}" if change else ""


def odds_heading() -> str:
    return tr("Of ten such days")


def odds_given(week: ChartWeek, odds: ChartOdds) -> str:
    """What the odds suppose."""
    grams = carbs_label(odds.carb_g)
    if odds.sets_date == week.today:
        return tr("with {grams} g today", grams=grams)
    return tr("with {grams} g on {day}", grams=grams, day=figures.day(odds.sets_date))


def odds_label(look: str, tenths: int) -> str:
    """ "full 7"; at the ends "flat under 1", "full over 9"."""
    name = chances.look_name(look)
    if tenths == 0:
        return tr("{look} under 1", look=name)
    if tenths == TEN:
        return tr("{look} over 9", look=name)
    return tr("{look} {tenths}", look=name, tenths=tenths)


# In words


def caption(week: ChartWeek, *, own: bool) -> str:
    """The same as the picture; without some of the figures expected where they would not fit."""
    for figures_of_band, fullness_expected in ((True, True), (False, True), (False, False)):
        said = _caption(
            week, own=own, figures_of_band=figures_of_band, fullness_expected=fullness_expected
        )
        if len(said.encode("utf-16-le")) <= 2 * CAPTION_UNITS:
            break
    return said


def _odds_line(week: ChartWeek, odds: ChartOdds) -> str:
    return tr(
        "{of_ten} {given}: {full}, {flat}, {spilled}.",
        of_ten=odds_heading(),
        given=odds_given(week, odds),
        full=odds_label("full", odds.full),
        flat=odds_label("flat", odds.flat),
        spilled=odds_label("spilled", odds.spilled),
    )


def _caption(week: ChartWeek, *, own: bool, figures_of_band: bool, fullness_expected: bool) -> str:
    whose = "Your" if own else f"{week.name}'s"
    event = f"{KIND_WORDS[week.kind]} on {figures.day(week.event_day)} {week.event_day.year}"
    lead = (
        f"{whose} week to the {event}: morning weight (band expected), fullness of 10, sharpness of "
        "5, carbs in g (against the plan)."
    )
    lines = [lead]
    lines += [
        _line(week, day, figures_of_band=figures_of_band, fullness_expected=fullness_expected)
        for day in week.days
    ]
    if week.odds is not None:
        lines.append(_odds_line(week, week.odds))
    return "\n".join(lines)


def _line(week: ChartWeek, day: ChartDay, *, figures_of_band: bool, fullness_expected: bool) -> str:
    parts = [_weight(week, day, figures_of_band=figures_of_band)]
    if day.fullness is not None:
        expected = _expected_fullness(day) if fullness_expected else ""
        parts.append(f"full {day.fullness}{expected}")
    if day.sharpness is not None:
        parts.append(f"sharp {day.sharpness}")
    if week.missed(day):
        parts = [missed_label()]
    parts.append(_carbs(day))
    told = ", ".join(part for part in parts if part) or "–"
    today = f" ({today_label()})" if day.date == week.today else ""
    return f"{_days_out(week, day)}, {figures.day(day.date)}{today}: {told}"


def _weight(week: ChartWeek, day: ChartDay, *, figures_of_band: bool) -> str:
    if day.weight_kg is None:
        return "no weight" if day.answered else ""
    shown = show_weight(day.weight_kg, WeightUnit(week.weight_unit))
    if day.against_band is None or day.band_low_kg is None or day.band_high_kg is None:
        return shown
    where = {1: "above", 0: "in", -1: "below"}[day.against_band]
    if not figures_of_band:
        return f"{shown} ({where} band)"
    unit = WeightUnit(week.weight_unit)
    low, high = show_weight(day.band_low_kg, unit), show_weight(day.band_high_kg, unit)
    if unit is not WeightUnit.ST:
        low, high = low.split(" ")[0], high.split(" ")[0]
    return f"{shown} ({where} {low}–{high})"


def _expected_fullness(day: ChartDay) -> str:
    return f" ({day.expected_fullness} expected)" if day.expected_fullness is not None else ""


def _carbs(day: ChartDay) -> str:
    if day.set_carb_g is None:
        if day.planned_carb_g is None:
            return ""
        return f"carbs {carbs_label(day.planned_carb_g)} planned"
    change = carbs_change(day)
    return f"carbs {carbs_label(day.set_carb_g)}" + (f" ({change})" if change else "")
