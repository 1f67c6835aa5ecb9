"""The week at a glance, for a phone held upright: a column a day, a panel a measure."""

from __future__ import annotations

from bot.drawing import canvas as c
from bot.drawing.canvas import Area, Canvas, Letters, Paint, drawn
from bot.pictures.week_picture import words
from bot.pictures.week_picture.layout import (
    DAYS_TOP,
    HEADING,
    LEFT,
    NOTE_LINE,
    RIGHT,
    TEXT,
    TITLE,
    TOP,
    UNDER_TITLE,
    WIDTH,
    Columns,
    Drawing,
    Layout,
    lay_out,
)
from bot.pictures.week_picture.panels import PANELS, weight_bounds
from bot.pictures.week_picture.values import ChartOdds, ChartWeek

TEN = 10
#: From the top of the strip of chances.
ODDS_HEADING, ODDS_BOXES, ODDS_KEYS = 38, 72, 156


def week_png(week: ChartWeek) -> bytes:
    """The picture, 1080 pixels wide and as high as what is known takes; the same from the same."""
    return drawn(lambda: draw(week))


def layout(week: ChartWeek) -> Layout:
    return lay_out(week, PANELS)


def draw(week: ChartWeek) -> Canvas:
    plan = layout(week)
    page, columns = Canvas(WIDTH, plan.height), Columns(week)
    _title(page, week)
    _days(page, week, columns, plan.bottom)
    for panel, top in plan.panels:
        panel.draw(Drawing(page, week, columns, top))
    for number, note in enumerate(plan.notes):
        page.words(
            (20, plan.bottom + 34 + number * NOTE_LINE), note, Letters(TEXT - 4), align="left",
            room=WIDTH - 40,
        )  # fmt: skip
    if week.odds is not None:
        _odds(page, week, week.odds, plan.odds_top)
    return page


def _title(page: Canvas, week: ChartWeek) -> None:
    """Whose week it is; below it the weight on file and what the faint line is."""
    event = page.words((WIDTH - 20, TITLE), words.title(week), Letters(34), align="right", room=620)
    page.words(
        (20, TITLE), week.name, Letters(42, bold=True), align="left", room=WIDTH - 70 - event
    )
    x = 20.0
    silent = words.silent(week)
    if silent:
        x += page.words((x, UNDER_TITLE), silent, Letters(TEXT - 3), align="left", room=480) + 34
    if weight_bounds(week)[2] is not None:
        page.line([(x, UNDER_TITLE), (x + 46, UNDER_TITLE)], colour=c.INK, width=3)
        x += 58
        on_file = words.baseline(week)
        x += page.words((x, UNDER_TITLE), on_file, Letters(TEXT - 3), align="left", room=480) + 34
    trial = words.before(week)
    if trial:
        page.line([(x, UNDER_TITLE), (x + 46, UNDER_TITLE)], colour=c.FAINT, width=5, dashed=True)
        x += 58
        page.words((x, UNDER_TITLE), trial, Letters(TEXT - 3), align="left", room=WIDTH - 20 - x)


def _days(page: Canvas, week: ChartWeek, columns: Columns, bottom: float) -> None:
    for day in week.days:
        left, middle = columns.left(day), columns.middle(day)
        if week.ahead(day):
            page.box(Area(left, TOP, columns.width, bottom - TOP), Paint(fill=c.WASH), above=0)
        page.line([(left, TOP), (left, bottom)], colour=c.LINES, width=2, above=1)
        event, today = day.days_out == 0, day.date == week.today
        if event:
            page.box(
                Area(left + 4, DAYS_TOP + 8, columns.width - 8, TOP - DAYS_TOP - 14),
                Paint(fill=c.INK),
            )
        if today:
            page.box(
                Area(left + 3, DAYS_TOP + 6, columns.width - 6, bottom - DAYS_TOP - 8),
                Paint(edge=c.INK, line=5), above=1,
            )  # fmt: skip
        rows = zip((34, 75, 114), words.column(week, day), (True, False, False), strict=True)
        for y, text, bold in rows:
            page.words(
                (middle, DAYS_TOP + y), text,
                Letters(TEXT if bold else TEXT - 2, colour=c.PAPER if event else c.INK, bold=bold),
                room=columns.width - 14,
            )  # fmt: skip
    page.line([(RIGHT, TOP), (RIGHT, bottom)], colour=c.LINES, width=2, above=1)
    page.line([(LEFT, bottom), (RIGHT, bottom)], colour=c.LINES, width=2, above=1)


def _odds(page: Canvas, week: ChartWeek, odds: ChartOdds, top: float) -> None:
    """Ten boxes, as many of each look as of ten such days; from too little to too much."""
    y = top + ODDS_HEADING
    wide = page.words(
        (20, y), words.odds_heading(), Letters(HEADING, bold=True), align="left", room=620,
    )  # fmt: skip
    page.words(
        (RIGHT - 10, y), words.odds_given(week, odds), Letters(TEXT - 2, colour=c.QUIET),
        align="right", room=RIGHT - 60 - wide,
    )  # fmt: skip
    looks = [("flat", odds.flat), ("full", odds.full), ("spilled", odds.spilled)]
    width = (RIGHT - 20) / TEN
    told = [look for look, tenths in looks for _ in range(tenths)]
    for number, look in enumerate(told):
        _odds_box(page, look, Area(20 + number * width, top + ODDS_BOXES, width - 10, 46))
    y = top + ODDS_KEYS
    for (look, tenths), x in zip(looks, (20, 320, 620), strict=True):
        _odds_box(page, look, Area(x, y - 17, 34, 34))
        room = 240 if x < 620 else WIDTH - 10 - x - 46
        label = words.odds_label(look, tenths)
        page.words((x + 46, y), label, Letters(TEXT, bold=True), align="left", room=room)


def _odds_box(page: Canvas, look: str, area: Area) -> None:
    """Hatched for flat, solid for full, solid with a bar across for spilled over."""
    flat = look == "flat"
    page.box(
        area,
        Paint(
            fill=None if flat else c.QUIET,
            edge=c.QUIET if flat else c.INK,
            line=4,
            hatch="//" if flat else "",
        ),
    )
    if look == "spilled":
        left, top, width, height = area
        middle = top + height / 2
        page.line([(left, middle), (left + width, middle)], colour=c.INK, width=14, above=4)
