"""A week that is over on one page, to hand over: what the debrief says, as a PDF."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from bot.debrief.handout import words
from bot.debrief.handout.tagged import TaggedPage
from bot.debrief.handout.week_drawn import HEIGHT_MM, draw_week
from bot.debrief.past_week import BehindWeek
from bot.words.languages import language

#: Type sizes in points, the first that lets everything stand on one page; with the charts as long as
#: the text stays large enough to be read easily.
SIZES = (10.0, 9.5, 9.0, 8.5, 8.0, 7.5, 7.0)
DRAWN = (10.0, 9.5, 9.0, 8.5)
WIDTHS = (0.15, 0.105, 0.105, 0.12, 0.12, 0.07, 0.125, 0.205)


@dataclass(frozen=True, slots=True)
class Handout:
    """What is to stand on the page. `paragraphs`: the debrief's, its heading first, its table of days
    left out.
    """

    found: BehindWeek
    paragraphs: list[str]
    name: str
    coach: str
    weight_unit: str
    made_at: datetime


def handout_pdf(what: Handout) -> bytes:
    """One page whatever there is to say."""
    head = what.paragraphs[0]
    tries = [*((size, True) for size in DRAWN), *((size, False) for size in SIZES)]
    for size, drawn in tries:
        page = TaggedPage(title=head, author=what.coach, language=language(), made_at=what.made_at)
        page.heading(head, level=1, size=size * 1.6)
        page.paragraph(words.under_title(what.name, what.coach), size=size, quiet=True)
        _fill(page, what, size=size, drawn=drawn)
        if page.left >= 0 or (size, drawn) == tries[-1]:
            break
        page.close()
    return page.content()


def _fill(page: TaggedPage, what: Handout, *, size: float, drawn: bool) -> None:
    """What stands beneath the title."""
    found, weight_unit = what.found, what.weight_unit
    page.heading(words.days_heading(), level=2, size=size * 1.2)
    page.table(
        words.columns(),
        [words.day_row(day, found.why.get(day.days_out, ""), weight_unit) for day in found.days],
        widths=WIDTHS,
        size=size - 0.5,
    )
    if drawn:
        with page.figure(
            height=HEIGHT_MM, alt=words.charts_in_words(found.days, weight_unit)
        ) as figure:
            draw_week(figure, found, weight_unit)
    page.heading(words.in_sum_heading(), level=2, size=size * 1.2)
    for paragraph in what.paragraphs[1:]:
        _paragraph(page, paragraph, size)
    page.paragraph(words.caution(), size=size - 1, quiet=True)


def _paragraph(page: TaggedPage, text: str, size: float) -> None:
    """Lines that begin with a dash are a list; all others, one by one, are paragraphs."""
    points: list[str] = []
    for line in [*text.split("\n"), ""]:
        if line.startswith("- "):
            points.append(line.removeprefix("- "))
            continue
        if points:
            page.points(points, size=size)
            points = []
        if line.strip():
            page.paragraph(line, size=size)
