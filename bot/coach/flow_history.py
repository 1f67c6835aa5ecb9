"""What happened, page by page: how each entry is told, and which day is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime
from typing import Any
from zoneinfo import ZoneInfo

from bot.dialogue.flow import Answers, Flow, Step, day_in
from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, mark, tr

Detail = Mapping[str, Any]
LONGEST_QUOTE = 200


history_button = Sentence("History")
nothing_set = Sentence("No carbs were set for the day.")
nothing_happened = Sentence("Nothing was changed for that day, and nothing happened on it.")

brimline = Sentence("Brimline")
another_day_button = Sentence("Another day")
undo_button = Sentence("Take back the last change")
ask_day = Sentence("Which day? Send a date, for example 6 May.")


def head(name: str, day: date, days_out: int | None) -> str:
    text = tr(
        "History of {name}: {day} {year}", name=name, day=figures.short_day(day), year=day.year
    )
    return f"{text}, {figures.days_out(days_out)}" if days_out is not None else text


SET_BY = {
    "decision": mark("Set for the day: {figure}, by the check-in."),
    "coach": mark("Set for the day: {figure}, by the coach."),
    "plan": mark("Set for the day: {figure}, by the plan."),
}


def in_force(carb_g: float, planned_g: float | None, by: str) -> str:
    """`by`: decision | coach | plan, as kept with the figure."""
    figure = figures.grams(carb_g)
    if planned_g is not None and abs(carb_g - planned_g) >= 0.5:
        change = figures.change(carb_g - planned_g)
        figure = tr("{figure} ({change} against the plan)", figure=figure, change=change)
    return tr(SET_BY[by], figure=figure)


as_planned = SentenceOn("Set for the day: {planned}, as planned.", figures.grams)
cut = SentenceOn("… and {left_out} more that day.")


def line(when: str, who: str, what: str) -> str:
    return f"- {when}, {who}: {what}"


def changed_by(name: str, by: str, what: str) -> str:
    """What one who coaches an athlete has changed, for the others."""
    return tr("{name}, by {who}: {what}", name=name, who=by, what=what)


def _read_day(text: str, answers: Answers) -> str:
    today = datetime.fromisoformat(answers["_now"]).astimezone(ZoneInfo(answers["_zone"])).date()
    return day_in(text, today).isoformat()


#: Context: "_zone", the athlete's.
HISTORY_DAY = Flow(
    id="coach-history-day", steps=(Step(key="day", ask=ask_day, read_with=_read_day),)
)
