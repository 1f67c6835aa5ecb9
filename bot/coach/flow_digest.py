"""The digest and a coach's settings in words, and what is asked for them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, time

from bot.dialogue.flow import Answers, Flow, InvalidAnswer, Step, buttons
from bot.membership.onboarding.flow import ONBOARDING
from bot.words import figures
from bot.words.common import KINDS
from bot.words.languages import Sentence, SentenceOn, SentenceOnTwo, tr, tr_if
from engine.written.units import parse_clock

UNITS = 4000  # UTF-16 units that a digest may take, of the 4096 that fit a message
LINES_TRIED = (60, 30, 15, 8, 4, 2)

digest_menu = Sentence("Your daily digest and quiet hours")

# Setting it

ask_place = Sentence(
    "Where are you, so that I use your local time? Send a city, or what time it is now, "
    "for example 14:35."
)
ask_digest_at = Sentence("When do you want the digest? Pick a time or type one.")
ask_quiet_from = Sentence(
    "From what time on should Info messages wait? Warnings and cautions come at any hour. "
    "Pick a time or type one."
)
quiet_is_empty = Sentence("That is the same time. When do the quiet hours end?")
off_button = Sentence("No digest")
zone_button = Sentence("Where I am")
quiet_button = Sentence("Quiet hours")
quiet_off_button = Sentence("No quiet hours")
not_a_setting = Sentence("That is not a setting of yours.")
ask_quiet_to = SentenceOn("From {begins} until when?", figures.clock)


def settings(digest_at: time | None, zone: str | None, quiet: tuple[time, time] | None) -> str:
    comes = (
        tr(
            "Your digest comes at {at} on days with something to report.",
            at=figures.clock(digest_at),
        )
        if digest_at is not None
        else tr("You get no digest.")
    )
    hours = (
        tr(
            "Quiet hours: {begins} to {ends}. Info messages wait until they are over; warnings "
            "and cautions come at any hour.",
            begins=figures.clock(quiet[0]),
            ends=figures.clock(quiet[1]),
        )
        if quiet is not None
        else tr("No quiet hours: Info messages come silently at any hour.")
    )
    clock = tr_if(
        zone, "Your time zone: {zone}.", "Your time zone: not known yet, so I use UTC.", zone=zone
    )
    return f"{comes}\n{hours}\n{clock}"


def time_button(*, is_on: bool) -> str:
    return tr("Another time") if is_on else tr("Set a time")


# The digest itself


def digest(day: date, sections: Sequence[tuple[str, Sequence[str]]]) -> str:
    """Headed sections of lines; long ones are cut, with a word on what is left out, until it fits."""
    text = ""
    head = tr("Digest, {day}", day=figures.short_day(day))
    for most in LINES_TRIED:
        text = "\n\n".join([head, *(_section(*s, most) for s in sections)])
        if len(text.encode("utf-16-le")) <= 2 * UNITS:
            break
    return text


def _section(heading: str, lines: Sequence[str], most: int) -> str:
    shown = list(lines[:most])
    if len(lines) > most:
        shown.append(tr("and {count} more: /roster", count=len(lines) - most))
    return "\n".join([heading, *shown])


needs_you = SentenceOn("Needs you ({count})")
alerts = SentenceOn("Warnings and cautions ({count})")


def alert_line(name: str, level: str, what: str, end: str) -> str:
    """`what` and `end` are whole sentences."""
    return tr("- {name}, {level}: {what} {end}", name=name, level=tr(level), what=what, end=end)


not_acknowledged = Sentence("Nobody has acknowledged it yet.")
today = Sentence("Today")
you = Sentence("You")
changed = SentenceOn("Changed ({count})")
checked_in = SentenceOn("Checked in ({count})")
not_yet = SentenceOn("No check-in yet today ({count})")
notes = SentenceOn("Info ({count})")


def today_line(name: str, kind: str, *, self_coached: bool) -> str:
    what = tr(KINDS[kind])
    return tr_if(self_coached, "- your {kind}", "- {name}'s {kind}", name=name, kind=what)


def changed_line(name: str, what: str, why: str, *, self_coached: bool = False) -> str:
    """`why` speaks to the athlete, who is the reader where it is their `own`."""
    if not self_coached:
        why = tr("Why, as {name} reads it: {why}", name=name, why=why)
    return f"- {name}: {what}. {why}"


not_taken = SentenceOnTwo(
    "{proposed} proposed for {day}; on plan", figures.grams, figures.short_day
)


def small_step_stands(proposed_g: float, default_carb_g: float, day: date) -> str:
    return tr(
        "{proposed} proposed for {day}; nobody answered, {stands} stood",
        proposed=figures.grams(proposed_g),
        day=figures.short_day(day),
        stands=figures.grams(default_carb_g),
    )


other_figure = SentenceOnTwo(
    "{proposed} proposed for {day}; another number was set", figures.grams, figures.short_day
)


def names(of: Sequence[str]) -> str:
    return ", ".join(of)


def note_line(text: str) -> str:
    return f"- {' '.join(text.split())}"


def _place_steps(*, when_known: bool) -> tuple[Step, ...]:
    """Where the coach is; passed over where that is known, unless it is what is to change."""

    def unknown(answers: Answers) -> bool:
        return when_known or answers.get("_zone") is None

    place, which = ONBOARDING.step("place"), ONBOARDING.step("which_place")
    assert place is not None
    assert which is not None
    return (replace(place, ask=ask_place, when=unknown), replace(which, when=unknown))


def _clock(text: str) -> str:
    return parse_clock(text).strftime("%H:%M")


def _quiet_to(text: str, answers: Answers) -> str:
    ends = _clock(text)
    if ends == answers["quiet_from"]:
        raise InvalidAnswer(quiet_is_empty())
    return ends


#: Context for all three: "_zone", the coach's zone or None.
DIGEST = Flow(
    id="coach-digest",
    steps=(
        *_place_steps(when_known=False),
        Step(
            key="digest_at",
            ask=ask_digest_at,
            read=_clock,
            choices=buttons(
                (("6:00", "06:00"), ("7:00", "07:00"), ("8:00", "08:00")),
                (("9:00", "09:00"), ("12:00", "12:00"), ("20:00", "20:00")),
            ),
        ),
    ),
)
ZONE = Flow(
    id="coach-zone", steps=tuple(replace(step, when=None) for step in _place_steps(when_known=True))
)
QUIET = Flow(
    id="coach-quiet",
    steps=(
        *_place_steps(when_known=False),
        Step(
            key="quiet_from",
            ask=ask_quiet_from,
            read=_clock,
            choices=buttons((("20:00", "20:00"), ("21:00", "21:00"), ("22:00", "22:00"))),
        ),
        Step(
            key="quiet_to",
            ask=lambda answers: ask_quiet_to(time.fromisoformat(answers["quiet_from"])),
            read_with=_quiet_to,
            choices=buttons((("6:00", "06:00"), ("7:00", "07:00"), ("8:00", "08:00"))),
        ),
    ),
)
