"""What is said around workbooks, and the words in their cells."""

from __future__ import annotations

from datetime import date

from bot.words import figures
from bot.words.common import files_button
from bot.words.languages import Sentence, SentenceBy, SentenceOn, mark, tr
from bot.words.names import word

FILE = "brimline"

#: Who set a day's carbs.
set_by = SentenceBy({"plan": mark("plan"), "decision": mark("check-in"), "coach": mark("coach")})
status = SentenceBy(
    {
        "in-force": mark("in force"),
        "waiting": mark("waits for the coach"),
        "approved": mark("approved"),
        "other-figure": mark("coach set another figure"),
        "plan-kept": mark("coach kept the plan"),
        "lapsed": mark("not answered in time"),
        "closed": mark("closed, coaching ended"),
        "replaced": mark("replaced"),
    }
)
TRAINING = {
    "as-planned": mark("as planned"),
    "less": mark("less than planned"),
    "more": mark("more than planned"),
    "none": mark("none"),
}
liking = SentenceBy(
    {
        "favourite": mark("favourite"),
        "well": mark("liked"),
        "so-so": mark("so-so"),
        "never": mark("never"),
    }
)
format_button = SentenceBy({"xlsx": mark("Workbook (XLSX)"), "csv": mark("CSV files (ZIP)")})


def training_done(done: str | None) -> str:
    return tr(TRAINING[done]) if done else ""


def week_label(kind: str, day: date) -> str:
    """The heading of a week's column: "show 2027-05-09"."""
    return f"{word(kind)} {day.isoformat()}"


week_number = SentenceOn("Week {number}")


# The readme


readme_title = Sentence("Read me")
whose_own = Sentence("Your weeks, check-ins and targets")


def readme_headings() -> tuple[str, ...]:
    return (mark("Sheet"), mark("Column"), mark("Unit"), mark("Key"), mark("What it is"))


def readme_lines(whose: str, made_on: str) -> tuple[str, ...]:
    return (
        tr("{whose}. Made on {day}.", whose=whose, day=made_on),
        tr("An empty cell means: not told, or not known. It never means 0."),
        tr("Dates are days on the athlete's own clocks, and so are times of day."),
        tr("Weights are in kg and volumes in L, whatever units are set in the chat."),
        tr("Chances come from a forecast that has never been tested on real peak weeks."),
        tr("This is a record, not medical advice. It holds health data: keep it safe."),
    )


whose_athlete = SentenceOn("Weeks, check-ins and targets of {name}")
whose_all = SentenceOn("All athletes of {coach}")


def made_on(day: date) -> str:
    return figures.date_in_figures(day)


# In the chat


menu = Sentence("Check-ins, targets and weeks as files")
ask_own = Sentence(
    "Your check-ins, targets, decisions with their reasons, foods and weeks compared, as a "
    "file. The workbook explains every column on its first sheet."
)
caption_own = Sentence("Your data. It holds health data: keep it safe.")
nobody = Sentence("You coach nobody at the moment, so there is nothing to put into a file.")
nothing_yet = Sentence(
    "Nothing has been answered or planned yet, so there is nothing to put into a file."
)


all_button = SentenceOn("All athletes: {format}", format_button)


ask_athlete = SentenceOn(
    "{name}'s check-ins, targets, decisions with their reasons, flags, foods and weeks "
    "compared, as a file. The workbook explains every column on its first sheet."
)


def ask_all() -> str:
    return tr(
        'All of your athletes in one file. For one athlete, open the card and tap "{button}".',
        button=files_button(),
    )


caption_athlete = SentenceOn("{name}'s data. It holds health data: keep it safe.")
caption_all = SentenceOn("Your athletes: {count}. It holds health data: keep it safe.")
