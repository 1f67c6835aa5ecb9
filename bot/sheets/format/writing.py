"""A plan and its limits as XLSX or CSV."""

from __future__ import annotations

from bot.plan.flow import UNCOUNTED
from bot.plan.words import FIELDS
from bot.sheets import words
from bot.sheets.format import layout as at
from bot.sheets.format.cells import heading_font
from bot.sheets.format.making import as_csv, lay_out, new_book, put, saved
from bot.words.languages import tr
from bot.words.phases import phase_words, training_words
from engine.values.limits import LIMIT_KEYS
from engine.values.plan import DayTarget

_WIDTHS = {1: 30, 2: 14, 9: 30, 12: 20}
_OTHERS = 10  # the other columns
#: The row of the headings.
HEAD = 5


def write(sheet: at.PlanSheet, form: str) -> bytes:
    """The file's bytes. `form`: one of FORMATS."""
    return _xlsx(sheet) if form == "xlsx" else as_csv(_rows(sheet))


def _rows(sheet: at.PlanSheet) -> list[list[float | int | str]]:
    rows: list[list[float | int | str]] = [
        [tr(at.PLAN_OF), sheet.name],
        [tr(at.EVENT), sheet.event],
        [tr(at.VERSION), str(sheet.version)],
        [],
        [
            tr(at.DAYS_OUT), tr(at.DAY), *(words.heading(key) for key in FIELDS),
            *(f"{tr(heading)} ({unit})" for _, heading, unit in at.BESIDE),
        ],
    ]  # fmt: skip
    rows += [
        [
            target.days_out,
            sheet.days[target.days_out],
            *(_shown(target, key) for key in FIELDS),
            *(at.shown(sheet.beside.get(target.days_out, {}).get(key)) for key, _, _ in at.BESIDE),
        ]
        for target in sheet.plan
    ]
    rows.append(["", tr(at.LOAD_TOTAL), *(_total(sheet, key) for key in _NUMBERS)])
    if sheet.limits is not None:
        rows += [[tr(at.LIMIT), tr(at.VALUE), tr(at.UNIT)]]
        rows += [
            [words.limit_heading(key), at.shown(getattr(sheet.limits, key)), limit.unit]
            for key, limit in LIMIT_KEYS.items()
        ]
    return rows


#: The columns behind the day's name, in order.
_NUMBERS = (*FIELDS, *(key for key, _, _ in at.BESIDE))


def _total(sheet: at.PlanSheet, key: str) -> float | int | str:
    """The sum over the load days; nothing where it is no amount, or not known of each of them."""
    if key not in at.SUMMED:
        return ""
    load = [target for target in sheet.plan if target.days_out in sheet.plan.load_days]
    told = [
        getattr(target, key, None)
        if key in FIELDS
        else sheet.beside.get(target.days_out, {}).get(key)
        for target in load
    ]
    return at.shown(sum(told)) if told and None not in told else ""  # type: ignore[arg-type]


def _shown(target: DayTarget, key: str) -> float | int | str:
    if key == "training":
        return training_words(target.training)
    if key == "phase":
        return phase_words(target.phase)
    value = getattr(target, key)
    return tr(at.AS_ALWAYS) if value is None and key in UNCOUNTED else at.shown(value)


def _xlsx(sheet: at.PlanSheet) -> bytes:
    book, page = new_book(at.SHEET_NAME)
    for number, row in enumerate(_rows(sheet), start=1):
        for column, value in enumerate(row, start=1):
            put(page, number, column, value)
            if row[0] == tr(at.LIMIT) or (column == 1 and isinstance(value, str)):
                page.cell(number, column).font = heading_font()
    widths = [_WIDTHS.get(number, _OTHERS) for number in range(1, len(_NUMBERS) + 3)]
    lay_out(page, HEAD, widths, beside="C", pages=1)
    return saved(book)
