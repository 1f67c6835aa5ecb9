"""Figures, days and clock times as coaches read them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from zoneinfo import ZoneInfo

from bot.words.figures import (
    all_of,
    capital,
    change,
    grams,
    milligrams,
    number,
    plain,
    signed,
    weight,
    weight_apart,
    weight_change,
)
from bot.words.figures import clock as hour
from bot.words.figures import clock_in as clock
from bot.words.figures import moment_in as moment
from bot.words.figures import short_day as day
from bot.words.figures import volume as litres
from bot.words.languages import mark, tr, trn
from engine.values.limits import LIMIT_KEYS

__all__ = [
    "LIMIT_LABELS",
    "all_of",
    "both_clocks",
    "both_moments",
    "capital",
    "change",
    "clock",
    "clock_with_zone",
    "day",
    "days_out",
    "grams",
    "hour",
    "limit",
    "limit_label",
    "litres",
    "milligrams",
    "moment",
    "number",
    "plain",
    "sentence",
    "signed",
    "weight",
    "weight_apart",
    "weight_change",
]

#: The limits as the engine calls them, in the order in which they are asked.
LIMIT_LABELS = {
    "carb_floor_g": mark("carb floor a day"),
    "carb_ceiling_g": mark("carb ceiling a day"),
    "step_g": mark("step"),
    "change_per_day_g": mark("largest change from the plan"),
    "load_total_g": mark("load total"),
    "apply_without_asking_g": mark("auto-approve changes up to"),
    "water_floor_l": mark("water floor a day"),
    "water_ceiling_l": mark("water ceiling a day"),
}


def days_out(value: int) -> str:
    if value < 0:
        return tr("over")
    if value == 0:
        return tr("event day")
    return trn("{number} day out", "{number} days out", value)


def limit(key: str, value: float, volume_unit: str = "l") -> str:
    """A limit's value with its unit; water in the athlete's."""
    if LIMIT_KEYS[key].unit == "L":
        return litres(value, volume_unit)
    return grams(value)


def limit_label(key: str) -> str:
    """ "carb floor a day", for the middle of a sentence."""
    return tr(LIMIT_LABELS[key])


def sentence(text: str) -> str:
    """The text with a capital and a full stop."""
    text = text.strip()
    if not text:
        return ""
    return capital(text) + ("" if text[-1] in ".!?" else ".")


def both_clocks(instant: datetime, here: str | None, there: str | None, name: str) -> str:
    """ "11:00 your time (09:00 for Orla)": on the reader's clocks with the athlete's beside them.

    One reading where both clocks show the same; the athlete's alone where the reader's zone is not
    known. With the day where the two differ in that.
    """
    if here is not None and _local(instant, here).date() != _local(instant, there).date():
        return both_moments(instant, here, there, name)
    return _beside(instant, here, there, name, clock)


def both_moments(instant: datetime, here: str | None, there: str | None, name: str) -> str:
    """The same with the day: "Sun 2 May, 08:30 your time (06:30 for Orla)"."""
    beside = moment
    if here is not None and _local(instant, here).date() == _local(instant, there).date():
        beside = clock
    return _beside(instant, here, there, name, moment, beside)


def _beside(
    instant: datetime,
    here: str | None,
    there: str | None,
    name: str,
    say: Callable[[datetime, str | None], str],
    beside: Callable[[datetime, str | None], str] | None = None,
) -> str:
    if there is None:  # before somebody has told where they are, no clock is theirs
        return say(instant, here) if here is not None else f"{say(instant, None)} (UTC)"
    if here is None:
        return tr("{there} ({name}'s time)", there=say(instant, there), name=name)
    if say(instant, here) == say(instant, there):
        return say(instant, here)
    return tr(
        "{here} your time ({there} for {name})",
        here=say(instant, here), there=(beside or say)(instant, there), name=name,
    )  # fmt: skip


def _local(instant: datetime, zone: str | None) -> datetime:
    return instant.astimezone(ZoneInfo(zone or "UTC"))


def clock_with_zone(instant: datetime, zone: str | None) -> str:
    """ "07:05 (Europe/London)", on the reader's own clocks; UTC where they are not known."""
    return f"{clock(instant, zone)} ({zone or 'UTC'})"
