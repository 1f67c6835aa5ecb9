"""What a coach reads around plan templates."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from bot.messages import coach_figures as figures

LONGEST_NAME = 40


def save_button() -> str:
    return "Save as template"


def use_button() -> str:
    return "Use a template"


def templates_menu() -> str:
    return "Your own plan templates"


def ask_name() -> str:
    return (
        "What shall this template be called? It keeps the load in g per kg of body mass and the days "
        "before as shares of what the athlete habitually eats and drinks; no name or weight goes "
        "into it. Only you can see it."
    )


def name_empty() -> str:
    return "That was empty. Send a short name, such as: slow front-load."


def name_too_long(length: int) -> str:
    return f"That is {length:,} characters; {LONGEST_NAME} is what fits on a button. A shorter one?"


def name_taken(name: str) -> str:
    return f"You have a template called {name} already. Another name? /templates lists them."


def too_many(most: int) -> str:
    return (
        f"You have {most} templates, which is as many as I keep. /templates lets you delete some."
    )


def saved(name: str) -> str:
    return (
        f'Saved as {name}. "{use_button()}" in an athlete\'s plan puts it on that athlete; '
        "/templates lists what you have."
    )


def none_yet() -> str:
    return f'You have no templates yet. "{save_button()}" under an athlete\'s plan makes one.'


def which(name: str, *, own: bool) -> str:
    whose = "your" if own else f"{name}'s"
    return f"Which template, scaled to {whose} body mass and habits? I show the plan before it is used."


def gone() -> str:
    return "That template is no longer there. /templates lists what you have."


def ask_use(template: str, table: str, name: str, *, own: bool, days_over: bool) -> str:
    whom = "you" if own else name
    kept = " Days that are over stay as they were." if days_over else ""
    return f"{template}, scaled for {whom}:\n\n{table}\n\nUse it in place of the plan?{kept}"


def use_it_button() -> str:
    return "Use this plan"


def leave_button() -> str:
    return "Leave it as it is"


def left() -> str:
    return "Left as it was. Nothing was changed."


def moved_on() -> str:
    return "The plan has changed since I showed you this, so nothing was taken over. Please look again."


def listed(rows: Sequence[str]) -> str:
    return "Your templates:\n" + "\n".join(rows)


def row(name: str, made_at: datetime) -> str:
    return f"- {name}, saved {figures.day(made_at.date())} {made_at.year}"


def delete_button(name: str) -> str:
    return f"Delete {name}"


def ask_delete(name: str) -> str:
    return f"Delete the template {name}? Plans that were made from it stay as they are."


def delete_yes_button() -> str:
    return "Yes, delete it"


def keep_button() -> str:
    return "Keep it"


def deleted(name: str) -> str:
    return f"Deleted: {name}."


def kept() -> str:
    return "Kept."
