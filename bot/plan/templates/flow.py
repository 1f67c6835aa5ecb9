"""The questions around plan templates (what to call one, whether to use it), and what a coach reads."""

from __future__ import annotations

from datetime import datetime

from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, buttons, yes_or_no
from bot.plan.words import use_plan_button
from bot.words import figures
from bot.words.languages import Sentence, SentenceAbout, SentenceOn, tr

LONGEST_NAME = 40

save_button = Sentence("Save as template")
use_button = Sentence("Use a template")
templates_menu = Sentence("Your own plan templates")
ask_name = Sentence(
    "What do you want to call this template? It stores the load in g per kg of body mass, "
    "the days before as shares of what the athlete normally eats and drinks, the limits "
    "likewise, the time of the check-in, the target look, a weigh-in by height, meal times and "
    "what you have fixed of the meals, and how the stage day is laid out. No name and no "
    "weight go into it. Only you can see it."
)
name_empty = Sentence("That was empty. Send a short name, for example: slow front-load.")
gone = Sentence("That template is no longer there. /templates lists what you have.")
leave_button = Sentence("Don't change it")
moved_on = Sentence(
    "The plan has changed since I showed you this, so I changed nothing. Please look again."
)
delete_yes_button = Sentence("Yes, delete it")
kept = Sentence("Kept.")


def name_too_long(length: int) -> str:
    return tr(
        "That is {length} characters; {most} fit on a button. Please send a shorter name.",
        length=figures.number(length),
        most=LONGEST_NAME,
    )


name_taken = SentenceOn(
    "You already have a template called {name}. Please send another name. /templates lists them."
)
too_many = SentenceOn(
    "You have {most} templates, which is the most I keep. Delete one first: /templates."
)


def saved(name: str) -> str:
    return tr(
        'Saved as {name}. "{use_button}" in an athlete\'s plan puts it on that athlete; '
        "/templates lists what you have.",
        name=name,
        use_button=use_button(),
    )


def none_yet() -> str:
    return tr(
        'You have no templates yet. "{save_button}" under an athlete\'s plan makes one.',
        save_button=save_button(),
    )


which = SentenceAbout(
    "Which template, scaled to your body mass and habits? I show the plan before it is used.",
    "Which template, scaled to {name}'s body mass and habits? I show the plan before it is used.",
)


def ask_use(template: str, table: str, name: str, *, self_coached: bool, days_over: bool) -> str:
    head = (
        tr("{template}, scaled for you:", template=template)
        if self_coached
        else tr("{template}, scaled for {name}:", template=template, name=name)
    )
    asked = tr("Replace the current plan with it?")
    if days_over:
        asked += " " + tr("Days that are over stay as they were.")
    return "\n\n".join([head, table, asked])


listed = SentenceOn("Your templates:\n{rows}", "\n".join)


def row(name: str, made_at: datetime) -> str:
    return tr(
        "- {name}, saved {day} {year}",
        name=name,
        day=figures.short_day(made_at.date()),
        year=made_at.year,
    )


delete_button = SentenceOn("Delete {name}")
ask_delete = SentenceOn(
    "Delete the template {name}? Plans that were made from it stay as they are."
)
deleted = SentenceOn("Deleted: {name}.")


def _read_name(text: str, answers: Answers) -> str:
    name = " ".join(text.split())
    if not name:
        raise InvalidAnswer(name_empty())
    if len(name) > LONGEST_NAME:
        raise InvalidAnswer(name_too_long(len(name)))
    if name.casefold() in answers["_names"]:
        raise InvalidAnswer(name_taken(name))
    return name


#: Context: "_names", those of the coach's templates in lower case.
TEMPLATE_NAME = Flow(
    id="coach-template-name",
    steps=(Step(key="name", ask=ask_name, read_with=_read_name, free=True),),
)


def _ask_use(answers: Answers) -> str:
    asked = ask_use(
        answers["_template"], answers["_table"], answers["_name"],
        self_coached=answers["_own"], days_over=answers["_days_over"],
    )  # fmt: skip
    return "\n\n".join(part for part in (answers.get("_for", ""), asked) if part)


#: Context: "_template" (its name), "_shape", "_name", "_own", "_table", "_days_over" and "_for" (which
#: event, where it is another than the one that counts) to show; "_event", its id;
#: "_days", the plan as it would become; "_plan", the id of the one it would replace (0: none).
TEMPLATE_USE = Flow(
    id="coach-template-use",
    can_cancel=False,
    steps=(
        Step(
            key="use",
            ask=_ask_use,
            read=yes_or_no,
            choices=buttons(((use_plan_button, "yes"), (leave_button, "no"))),
        ),
    ),
)
