"""What the pages of an athlete's card are called."""

from __future__ import annotations

from bot.words import figures
from bot.words.languages import mark, tr

PAGES = {"plan": mark("Plan …"), "event": mark("Event …"), "person": mark("Person …")}
_WHAT = {
    "plan": mark("{name}: plan, limits, and how the figures come about."),
    "event": mark("{name}: events, the event day, and what came of it."),
    "person": mark("{name}: answers, earlier weeks, and who coaches."),
}
_OWN = {
    "plan": mark("Your plan and limits, and how the figures come about."),
    "event": mark("Your events, the event day, and what came of it."),
    "person": mark("Your answers, earlier weeks, and who coaches."),
}


def page_button(key: str) -> str:
    return tr(PAGES[key])


def head(name: str, key: str, *, self_coached: bool) -> str:
    return tr(_OWN[key]) if self_coached else tr(_WHAT[key], name=figures.capital(name))
