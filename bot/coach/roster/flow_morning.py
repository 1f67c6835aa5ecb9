"""The roster after the morning, alike ones together: what is said, and the question about several."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from typing import NamedTuple

from bot.coach.roster.words import cut_short, how_many, short, which_page, wrote_last
from bot.dialogue.flow import Answers, Choice, Choices, Flow, InvalidAnswer, Step
from bot.words import figures
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, mark, tr, trn

LONGEST_CAUSE = 160  # characters


def head(needing: int, of_all: int, page: int, pages: int) -> str:
    need = trn("1 needs you", "{number} need you", needing) if needing else tr("nobody needs you")
    return f"{how_many(of_all)}, {need}{which_page(page, pages)}"


def block(start: str, state: str, numbers: str, proposal: str, wrote: str) -> str:
    """One who needs the coach: who, why, what changed, what is proposed, what they wrote."""
    told = figures.sentence("; ".join(part for part in (numbers, proposal) if part))
    parts = (start, state, told, wrote_last(wrote))
    return "\n".join(part for part in parts if part)


def weight(now: str, change: str, since: date | None) -> str:
    """ "61.0 kg (−0.4 kg since yesterday)". No `change`: as it was; `since` None: yesterday."""
    if change and since is None:
        return tr("{weight} ({change} since yesterday)", weight=now, change=change)
    if change:
        day = figures.short_day(since) if since is not None else ""
        return tr("{weight} ({change} since {day})", weight=now, change=change, day=day)
    if since is None:
        return tr("{weight} (as yesterday)", weight=now)
    return tr("{weight} (as on {day})", weight=now, day=figures.short_day(since))


def fullness(now: int, expected: int | None) -> str:
    if expected is None:
        return tr("fullness {fullness}", fullness=now)
    if expected == now:
        return tr("fullness {fullness} (as expected)", fullness=now)
    return tr("fullness {fullness} (expected {expected})", fullness=now, expected=expected)


def sharpness(now: int, before: int | None) -> str:
    if before is None or before == now:
        return tr("sharpness {sharpness}", sharpness=now)
    return tr("sharpness {sharpness} (was {before})", sharpness=now, before=before)


water = SentenceOn("water {water}")


def photo(*, there: bool) -> str:
    return tr("photo sent") if there else tr("no photo")


told_of = SentenceOn("reported: {symptoms}")


def short_cause(text: str) -> str:
    """As much of an alert's cause as the glance has room for; the card has it whole."""
    return text if len(text) <= LONGEST_CAUSE else f"{text[: LONGEST_CAUSE - 1]}…"


def proposed(what: str, why: str) -> str:
    """ "proposed 550 g (+50 g) for Fri 7 May: flat in the load"."""
    return f"{what}: {why}" if why else what


# All others: a line for each way in which they are in order


#: What a line says of those named in it.
GROUPS = {
    "look": mark("{number} to look at: {names}"),
    "plan": mark("{number} on plan: {names}"),
    "moved": mark("{number} adjusted: {names}"),
    "hold": mark("{number} on hold: {names}"),
    "told": mark("{number} with complaints: {names}"),
    "missing": mark("{number} not checked in yet: {names}"),
    "later": mark("{number} asked at {when}: {names}"),
    "outside": mark("{number} not in a peak week: {names}"),
}


def asked_at(at: datetime, here: str | None, zone: str | None, names: Sequence[str]) -> str:
    """When all of these are asked, on the coach's clocks with theirs beside it."""
    if len(names) == 1:
        return figures.both_clocks(at, here, zone, names[0])
    if here is None:
        return figures.clock_in(at, zone)
    return figures.both_clocks(at, here, zone, tr("them"))


def group(which: str, number: int, names: Sequence[str], more: int, when: str) -> str:
    """A line of those who are in order in the same way; `more` of them have no room in it.

    `when`: at what time, where the line says it.
    """
    listed = ", ".join(names)
    if more:
        listed = trn("{names} and 1 more", "{names} and {number} more", more, names=listed)
    return tr(GROUPS[which], number=number, names=listed, when=when)


def moved(name: str, carb_g: float, change_g: float) -> str:
    return f"{name} {figures.grams(carb_g)} ({figures.change(change_g)})"


def held(name: str, carb_g: float, last: date) -> str:
    return tr(
        "{name} ({carb} until {last})", name=name, carb=figures.grams(carb_g),
        last=figures.short_day(last),
    )  # fmt: skip


def with_word(name: str, word: str) -> str:
    return f"{name} ({word})"


asked_about = Sentence("I have asked what it is")
paused = Sentence("paused")
first_questions = Sentence("first questions")
how_to_open = Sentence("Type a name to open somebody's card, or tap All for a button each.")
where_are_you = Sentence("Times are your athletes' own: set your time zone with /digest.")


def wrote(name: str, words: str) -> str:
    return tr("{name} wrote: “{said}”", name=name, said=cut_short(words))


# Answers from the roster


def approve_button(name: str, carb_g: float) -> str:
    return tr("{name}: approve {carb}", name=short(name), carb=figures.grams(carb_g))


keep_button = SentenceOn("Keep {carb}", figures.grams)


def several_button(count: int, rule: str, *, raised: bool) -> str:
    if raised:
        return tr("Approve {count} raises at once: {rule}", count=count, rule=rule)
    return tr("Approve {count} cuts at once: {rule}", count=count, rule=rule)


def several(lines: Sequence[str], rule: str, until: str, left_out: Sequence[str]) -> str:
    parts = [
        tr(
            "{number} changes of one kind ({rule}), the first to be answered by {until}:",
            number=len(lines), rule=rule, until=until,
        ),
        *lines,
    ]  # fmt: skip
    if left_out:
        parts.append(tr("Not among them: {names}.", names=", ".join(left_out)))
    return "\n\n".join(parts)


class Proposed(NamedTuple):
    """The carbs of a day (g): as planned, and as they are proposed."""

    day: date
    planned_g: float
    proposed_g: float


def several_line(name: str, days_out: int | None, carbs: Proposed, numbers: str) -> str:
    """ "Mira, 2 days out: 500 g → 550 g (+50 g) on Fri 7 May. 61.0 kg, fullness 1 (expected 6)"."""
    when = f", {figures.days_out(days_out)}" if days_out is not None else ""
    change = tr(
        "{planned} → {proposed} ({change}) on {day}",
        planned=figures.grams(carbs.planned_g),
        proposed=figures.grams(carbs.proposed_g),
        change=figures.change(carbs.proposed_g - carbs.planned_g),
        day=figures.short_day(carbs.day),
    )
    return f"{short(name)}{when}: {change}. {figures.sentence(numbers)}".strip()


ask_several = SentenceOn("Approve all {number} as proposed?")
yes_several_button = SentenceOn("Approve all {number}")
no_several_button = Sentence("Approve none of them here")
use_the_buttons = Sentence("Use the buttons: approve them all, or none of them here.")
is_frozen = Sentence("frozen")
nothing_alike = Sentence("There are no longer two of that kind open.")
alert_since = Sentence("An alert has come in since: look at the card first.")
not_yours_any_more = Sentence("You don't coach them any more.")
none_approved = Sentence("Nothing was approved; each still waits for your answer.")
has_open_alert = SentenceOn("open {level}")


def approved(names: Sequence[str], left_out: Sequence[str]) -> str:
    """What the one tap has done; `left_out`: a sentence each."""
    done = (
        tr("Approved: {names}.", names=", ".join(names)) if names else tr("Nothing was approved.")
    )
    return "\n".join([done, *left_out])


left_out = SentenceOnTwo("Left out: {name}. {why}")

ALL, NONE = "all", "none"


def _read(text: str) -> str:
    """Only the buttons, and their words: a "yes" that is typed may be meant for something else."""
    if text in (ALL, NONE):
        return text
    raise InvalidAnswer(use_the_buttons())


def _choices(answers: Answers) -> Choices:
    return [
        [Choice(yes_several_button(len(answers["_ids"])), ALL)],
        [Choice(no_several_button(), NONE)],
    ]


#: Context: "_ids" of the decisions, and "_listed", what is shown of them.
SEVERAL = Flow(
    id="coach-several",
    steps=(
        Step(
            key="sure",
            ask=lambda answers: ask_several(len(answers["_ids"])),
            read=_read,
            choices=_choices,
        ),
    ),
    so_far=lambda answers: str(answers["_listed"]),
    can_cancel=False,
)
