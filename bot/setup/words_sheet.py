"""The sheet of many athletes: its words, what may stand in it, and what is wrong with a cell."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from bot.dialogue.flow import NONE
from bot.plan.words_draft_reasons import depletion_button
from bot.words import figures
from bot.words.common import KINDS, event_name
from bot.words.languages import Sentence, SentenceOn, in_each, listed, mark, tr
from bot.words.names import shape_words
from engine.planning.drafting.bridge import BRIDGE
from engine.planning.drafting.draft import DEEP, MILD, SHAPES
from engine.planning.drafting.draft import NONE as NO_DEPLETION
from engine.values.checkin import TargetLook

_LONGEST_WORDS = 60
_USUAL = mark("usual")
#: What a bridge between two shows is called in a sheet.
BRIDGE_WORD = mark("bridge")
DEPLETIONS = (NO_DEPLETION, MILD, DEEP)

page_title = Sentence("Athletes")
notes_title = Sentence("Notes")


def notes(plans: Sequence[str]) -> list[str]:
    """What the second page says."""
    return [
        tr("One row for each event of an athlete. Leave out what is to stay as it is."),
        tr("Code: keep it. A row with an event's code changes that event; to add another event, copy "
           "the row and leave only the athlete's part of the code (A12)."),
        tr("Day: 2027-05-09 or 9 May 2027. Stage time and check-in: 14:30 or 2:30 pm, in the "
           "place's and the athlete's time."),
        tr("Place: the nearest large city, or a time zone such as Europe/Madrid; empty: the "
           "athlete's own."),
        tr("Plan: the name of a template, or one of: {plans}. Empty: the plan stays.",
           plans=", ".join(plans)),
        tr("Load: the average load day in g per kg of body mass; empty: the published figure."),
        tr("Limits: empty as in the template, or as suggested around the plan."),
        tr('Target look: "full 7-9 sharp 3-4", with your own words after a colon; or usual. Weigh-in '
           "cap: a weight in kg, or height +4 for a class by height; none for no weigh-in. Its day "
           "and time are those of the place."),
        tr("Reason: why you go on where the review warns. Without it you are asked in the chat."),
        tr("Send the file back to the chat. Nothing changes before you have seen what it would do."),
    ]  # fmt: skip


def shapes() -> dict[str, str]:
    """What a drafted plan may be called, in any language and case, to its key."""
    found: dict[str, str] = {}
    for key, shape in SHAPES.items():
        found[key] = key
        for text in in_each(partial(shape_words, shape.label)):
            found[_plain(text)] = key
    for text in in_each(partial(tr, BRIDGE_WORD)):
        found[_plain(text)] = BRIDGE
    return found


def shape_names() -> list[str]:
    """The same as they are offered."""
    return [*(shape_words(shape.label) for shape in SHAPES.values()), tr(BRIDGE_WORD)]


def depletions() -> dict[str, str]:
    found = {}
    for key in DEPLETIONS:
        found[key] = key
        for text in in_each(partial(depletion_button, key)):
            found[_plain(text)] = key
    return found


def depletion_names() -> list[str]:
    return [depletion_button(key) for key in DEPLETIONS]


def kinds() -> dict[str, str]:
    found = {}
    for words in (KINDS, event_name.table):
        for key, word in words.items():
            for text in in_each(partial(tr, word)):
                found[_plain(text)] = key
    return found


def kind_names() -> list[str]:
    return [tr(word) for word in KINDS.values()]


def says_none(text: str) -> bool:
    return _plain(text) in listed(NONE)


def _plain(text: str) -> str:
    return " ".join(text.split()).casefold()


# What is wrong with a cell


def given(text: str, why: str) -> str:
    shown = text if len(text) <= _LONGEST_WORDS else f"{text[:_LONGEST_WORDS]}…"
    return f'"{shown}": {why}'


heading_twice = Sentence("this heading is there twice")
merged = Sentence("merged cells; split them")
too_many_rows = Sentence("more rows than I read at once; send it in two files")
row_twice = Sentence("this athlete has another row with the same day or event")
nobody_named = Sentence("no athlete is named in this row")
event_gone = Sentence(
    "the event of this code is no longer ahead; leave only the athlete's part of the code"
)
day_missing = Sentence("empty, but the day of the event is needed")
load_without_plan = Sentence("a load needs a plan in the same row: a shape such as even")
weigh_in_incomplete = Sentence(
    "a weigh-in needs its cap, its day and its time; for none, write none as the cap"
)
weigh_in_far_off = Sentence("a weigh-in is on the event day or in the seven days before it")
no_day = Sentence("not a day; write it as 2027-05-09")
no_time = Sentence("not a time of day; write it as 14:30")
no_such_kind = Sentence("not a kind of event; show, shoot or trial")
no_such_place = Sentence(
    "no place I know; write the nearest large city, or a time zone such as Europe/Madrid"
)
no_such_depletion = Sentence("not a depletion; none, mild or deep")


def no_such_code(code: str) -> str:
    return tr("{code} is no code of an athlete of yours", code=f'"{code[:_LONGEST_WORDS]}"')


def nobody_called(name: str) -> str:
    return tr("nobody on your roster is called {name}", name=name[:_LONGEST_WORDS])


several_called = SentenceOn("more than one athlete is called {name}; put the code there")


def odd_cell(content: str) -> str:
    return {
        "formula": tr("a formula without a stored result; put the value there"),
        "truth": tr("true or false is not what belongs there"),
        "error": tr("an error"),
    }[content]


def says_usual(text: str) -> bool:
    """The usual look, in any language that there is."""
    return _plain(text) in {"usual", *(_plain(one) for one in in_each(partial(tr, _USUAL)))}


def look_cell(look: TargetLook) -> str:
    """As it is read back."""
    said = tr(
        "full {full}-{fullest} sharp {sharp}-{sharpest}",
        full=look.fullness_low, fullest=look.fullness_high,
        sharp=look.sharpness_low, sharpest=look.sharpness_high,
    )  # fmt: skip
    return f"{said}: {look.words}" if look.words else said


by_height = SentenceOn("height {over}", "{:+g}".format)


def no_such_plan() -> str:
    return tr(
        "no template of yours and no shape; shapes are {shapes}", shapes=", ".join(shape_names())
    )


def look_out(low: float, high: float) -> str:
    return tr(
        "a look check is of use {high} to {low} min before the stage, or none",
        low=figures.plain(low), high=figures.plain(high),
    )  # fmt: skip
