"""What the numbers are counted from, as sheets: one can count again and differently."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from bot.sheets.coach_numbers import reckoning as r
from bot.sheets.coach_numbers import words
from bot.sheets.coach_numbers.gather import Frames
from bot.sheets.workbook.tables import Column, Kind
from bot.sheets.workbook.writing import Page, cells
from bot.words.languages import mark, tr
from bot.words.names import word
from engine.values.checkin import Look
from engine.values.shares import Share

if TYPE_CHECKING:
    import pandas as pd

_N = Kind.NUMBER
SHARES = (
    Column(key="what", heading=mark("What")),
    Column(key="which", heading=mark("Which")),
    Column(key="count", heading=mark("Count"), kind=_N),
    Column(key="total", heading=mark("Of"), kind=_N),
    Column(key="percent", heading=mark("Share"), kind=_N, unit="%", places=1),
    Column(key="low", heading=mark("95 % from"), kind=_N, unit="%", places=1),
    Column(key="high", heading=mark("95 % to"), kind=_N, unit="%", places=1),
)
_ATHLETE = Column(key="athlete_id", heading=mark("Athlete no."), kind=_N)
ROWS: tuple[tuple[str, str, tuple[Column, ...]], ...] = (
    (
        "weeks", mark("Weeks"),
        (
            _ATHLETE,
            Column(key="event_day", heading=mark("Event day"), kind=Kind.DATE),
            Column(key="kind", heading=mark("Event")),
            Column(key="look", heading=mark("Look on the day")),
            Column(key="imported", heading=mark("Imported")),
        ),
    ),
    (
        "mornings", mark("Mornings"),
        (
            _ATHLETE,
            Column(key="date", heading=mark("Date"), kind=Kind.DATE),
            Column(key="days_out", heading=mark("Days out"), kind=_N),
            Column(key="asked", heading=mark("Asked")),
            Column(key="answered", heading=mark("Answered")),
            Column(
                key="after_prompt_min", heading=mark("After the question"), kind=_N, unit="min",
                places=0,
            ),
            Column(key="fullness", heading=mark("Fullness"), kind=_N, unit="1-10"),
            Column(key="expected", heading=mark("Fullness expected"), kind=_N, unit="1-10"),
            Column(key="sharpness", heading=mark("Sharpness"), kind=_N, unit="1-5"),
            Column(
                key="coach_sharpness", heading=mark("Sharpness, seen by the coach"), kind=_N,
                unit="1-5",
            ),
            Column(key="change_g", heading=mark("Change"), kind=_N, unit="g"),
            Column(key="rule", heading=mark("Rule")),
        ),
    ),
    (
        "proposals", mark("Proposals"),
        (
            _ATHLETE,
            Column(key="date", heading=mark("For the day"), kind=Kind.DATE),
            Column(key="status", heading=mark("What became of it")),
            Column(
                key="minutes", heading=mark("Time to the coach's answer"), kind=_N, unit="min",
                places=0,
            ),
        ),
    ),
    (
        "forecasts", mark("Forecasts"),
        (
            _ATHLETE,
            Column(key="flat", heading=mark("Chance flat"), kind=_N, places=2),
            Column(key="full", heading=mark("Chance full"), kind=_N, places=2),
            Column(key="spilled", heading=mark("Chance spilled over"), kind=_N, places=2),
            Column(key="look", heading=mark("Look on the day")),
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
    return words.status(str(value)) if key == "status" else word(str(value))


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
