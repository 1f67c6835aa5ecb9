"""What the numbers are counted from, as sheets: one can count again and differently."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from bot.sheets.coach_numbers import reckoning as r
from bot.sheets.coach_numbers import words
from bot.sheets.coach_numbers.gather import Frames
from bot.sheets.workbook.tables import Column, Kind, day, number, text
from bot.sheets.workbook.words import status
from bot.sheets.workbook.writing import Page, cells
from bot.words.languages import mark, tr
from bot.words.names import word
from engine.values.checkin import Look
from engine.values.shares import Share

if TYPE_CHECKING:
    import pandas as pd

SHARES = (
    text("what", mark("What")),
    text("which", mark("Which")),
    number("count", mark("Count")),
    number("total", mark("Of")),
    number("percent", mark("Share"), "%", places=1),
    number("low", mark("95 % from"), "%", places=1),
    number("high", mark("95 % to"), "%", places=1),
)
_ATHLETE = number("athlete_id", mark("Athlete no."))
ROWS: tuple[tuple[str, str, tuple[Column, ...]], ...] = (
    (
        "weeks", mark("Weeks"),
        (
            _ATHLETE,
            day("event_day", mark("Event day")),
            text("kind", mark("Event")),
            text("look", mark("Look on the day")),
            text("imported", mark("Imported")),
        ),
    ),
    (
        "mornings", mark("Mornings"),
        (
            _ATHLETE,
            day("date", mark("Date")),
            number("days_out", mark("Days out")),
            text("asked", mark("Asked")),
            text("answered", mark("Answered")),
            number("after_prompt_min", mark("After the question"), "min", places=0),
            number("fullness", mark("Fullness"), "1-10"),
            number("expected", mark("Fullness expected"), "1-10"),
            number("sharpness", mark("Sharpness"), "1-5"),
            number("coach_sharpness", mark("Sharpness, seen by the coach"), "1-5"),
            number("change_g", mark("Change"), "g"),
            text("rule", mark("Rule")),
        ),
    ),
    (
        "proposals", mark("Proposals"),
        (
            _ATHLETE,
            day("date", mark("For the day")),
            text("status", mark("What became of it")),
            number("minutes", mark("Time to the coach's answer"), "min", places=0),
        ),
    ),
    (
        "forecasts", mark("Forecasts"),
        (
            _ATHLETE,
            number("flat", mark("Chance flat"), places=2),
            number("full", mark("Chance full"), places=2),
            number("spilled", mark("Chance spilled over"), places=2),
            text("look", mark("Look on the day")),
        ),
    ),
)  # fmt: skip


def sheets(found: r.Numbers, frames: Frames) -> list[Page]:
    """The counts first, then what was counted."""
    of = {
        "weeks": frames.weeks, "mornings": frames.days, "proposals": frames.proposals,
        "forecasts": frames.forecasts,
    }  # fmt: skip
    counts = Page(
        id="shares", title=tr(mark("Shares")), columns=SHARES, rows=_shares(found),
        headings=tuple(column.titled() for column in SHARES),
    )  # fmt: skip
    return [counts, *(_rows(id, title, columns, of[id]) for id, title, columns in ROWS)]


def _rows(id: str, title: str, columns: tuple[Column, ...], frame: pd.DataFrame) -> Page:
    frame = frame.copy()
    for column in columns:
        if column.kind is Kind.TEXT:
            frame[column.key] = [_said(column.key, value) for value in frame[column.key]]
    return Page(
        id=id, title=tr(title), columns=columns, rows=cells(frame, columns),
        headings=tuple(column.titled() for column in columns),
    )  # fmt: skip


def _said(key: str, value: Any) -> str:
    if value is None or value != value:  # noqa: PLR0124 - pandas writes "not known" as a NaN
        return ""
    if isinstance(value, bool) or key in ("asked", "answered", "imported"):
        return words.yes_no(bool(value))
    if key == "rule":
        return words.why(str(value))
    return status(str(value)) if key == "status" else word(str(value))


def _shares(found: r.Numbers) -> list[tuple[Any, ...]]:
    looked = [(word(look.value), found.looks[look]) for look in Look]
    groups: list[tuple[str, list[tuple[str, Share]]]] = [
        (tr("How weeks ended"), looked),
        (tr("Nearer the next morning"), [(tr(words.DONE[d]), s) for d, s in found.helped.items()]),
        (tr("Nearer the next morning, by rule"), [(words.why(d), s) for d, s in found.by_rule.items()]),
        (tr("Answers"), [
            (tr("mornings answered"), found.answered),
            (tr("proposals answered in time"), found.signed),
        ]),
        (tr("Forecast: how often full came"), [
            (words.said_full(band), band.came) for band in found.bands
        ]),
    ]  # fmt: skip
    return [
        (
            what, which, share.count, share.total,
            *((100 * v if share.total else None) for v in (share.share, share.low, share.high)),
        )
        for what, lines in groups
        for which, share in lines
    ]  # fmt: skip
