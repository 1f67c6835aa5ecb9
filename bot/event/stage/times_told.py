"""Word of when the classes are on, typed with no command: the day is set from it, or changed.

What may tell of the times among other things is asked about with one tap, which sets it.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import datetime, time, timedelta
from functools import partial
from typing import NamedTuple
from zoneinfo import ZoneInfo

from bot.core.chat.outbox import Button, Buttons
from bot.core.timing.instants import local_instant
from bot.core.turn import Act, Turn
from bot.dialogue import asking
from bot.event.buttons import LATE, TOLD, Told
from bot.event.stage import day as stage_day
from bot.event.stage import views, words
from bot.event.stage.flow import NIGHT_UNTIL, STAGE
from bot.people.people import name_of, profile_of
from bot.people.telling import answer, say_to
from bot.store.tables.event import StageRow
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import EventRow
from bot.week.load import current_event
from bot.words.languages import language
from engine.written.late import Late
from engine.written.stage_perhaps import perhaps_stage_word, tells_a_time
from engine.written.stage_times import LAST, StageWord, may_be_of_stage, parse_stage_word

_HALF_A_DAY = timedelta(hours=12)
#: What joins a name to what is told of it: "Mira has two classes", "Mira: 15:00".
_OF_HER = Late(r"(?:'s|\u2019s)?[\s,:]*(?:has|hat|is|ist)?\b", re.IGNORECASE)


def heard(turn: Turn, person: Person, text: str) -> bool:
    """Whether it was such word of a day that this person may set; then that is done and said."""
    if not may_be_of_stage(text):
        return False
    found = whose(turn, person, text, parse_stage_word)
    return found is not None and set_by_word(turn, person, found)


class TimesTold(NamedTuple):
    """Whose classes are told of, at which event, and what."""

    profile: AthleteProfile
    event: EventRow
    word: StageWord


def set_by_word(turn: Turn, person: Person, told: TimesTold) -> bool:
    """Begin the questions for the day with that, or change the day that runs; whether it could be."""
    row = stage_day.stage_row(turn.session, told.event)
    if row is None or row.cancelled_at is not None:
        return _begin(turn, person, told)
    return stage_day.running(row, turn.context) and _change(turn, person, told, row)


def whose(
    turn: Turn, person: Person, text: str, read: Callable[[str, str], StageWord | None]
) -> TimesTold | None:
    """Whose classes are told of, and what: one's own, the named athlete's, or the only one's.

    For a coach that looks up each athlete's event, so whether it may be such word is asked before.
    """
    own = profile_of(turn.session, person.id)
    event = current_event(turn.session, own.person_id) if own is not None else None
    if own is not None and event is not None:
        word = read(text, language())
        return TimesTold(own, event, word) if word is not None else None
    coached = views.coached(turn.session, person)
    told = [(one, _without_name(turn, one, text)) for one in coached]
    named = [(one, rest) for one, rest in told if rest is not None]
    meant = named or [(one, text) for one in coached]
    if len(meant) != 1:
        return None
    profile, rest = meant[0]
    event = current_event(turn.session, profile.person_id)
    word = read(rest or "", language())
    return TimesTold(profile, event, word) if event is not None and word is not None else None


def _without_name(turn: Turn, profile: AthleteProfile, text: str) -> str | None:
    """The text without the athlete's name; None where it does not name them."""
    name = rf"(?<!\w){re.escape(name_of(turn.session, profile.person_id))}(?!\w)"
    match = re.search(name, text, re.IGNORECASE)
    if match is None:
        return None
    joint = _OF_HER.match(text, match.end())
    return text[: match.start()] + text[joint.end() if joint is not None else match.end() :]


def _begin(turn: Turn, person: Person, told: TimesTold) -> bool:
    """The questions for the day, begun with what was told; whether that was enough to begin with."""
    profile, event, word = told
    if word.which not in (0, 1) or not word.clocks:
        return False
    first, *later = [f"{clock:%H:%M}" for clock in word.clocks]
    earlier = asking.open_questions(
        turn.session, person, flow=STAGE.id, subject_id=profile.person_id
    )
    given = dict(earlier[-1].answers) if earlier else views.context_of(turn, profile, event)
    given |= {"stage": first} | ({"second": " ".join(later)} if later else {})
    if STAGE.next_step(given) is None:
        return False
    asking.open_question(turn, person, STAGE, profile.person_id, given)
    return True


def _change(turn: Turn, person: Person, told: TimesTold, row: StageRow) -> bool:
    profile, event, word = told
    day = stage_day.day_of(row)
    stages = _changed(day.stages, word, event, turn.now)
    if stages is None:
        return False
    if list(stages) != sorted(set(stages)):
        say_to(turn, person, words.second_not_later())
        return True
    on_the_day = stage_day.local_day(event, turn.context)
    if stages != day.stages:
        stage_day.lay_out(turn, profile, event, replace(day, stages=stages), person)
        for other in views.others(turn.session, person, profile):
            lead = partial(words.times_changed_by, person.first_name)
            views.say_day(turn, other, profile, lead=lead, rest=on_the_day)
    lead_own = words.times_are_now if stages != day.stages else ""
    views.say_day(turn, person, profile, lead=lead_own, rest=on_the_day)
    return True


def _changed(
    stages: Sequence[datetime], word: StageWord, event: EventRow, now: datetime
) -> tuple[datetime, ...] | None:
    """The classes as they are after that word; None where it fits no class that is still ahead.

    Classes behind one that has moved up to them or past them move with it.
    """
    if len(word.clocks) > 1:
        past = [stage for stage in stages if stage <= now]
        told = [_instant(event, clock) for clock in word.clocks]
        return (*past, *(stage for stage in told if stage > now)) or None
    number = _number(stages, word, now)
    if number is None:
        return None
    was = stages[number] if number < len(stages) else None
    if word.off:
        rest = [stage for place, stage in enumerate(stages) if place != number]
        return tuple(rest) or None
    at = _told(word, event, now, was, after=max([now, *stages[:number]]))
    if at is None or at <= now:
        return None
    moved = [*stages[:number], at]
    for stage in stages[number + 1 :]:
        pushed = at - was if was is not None and stage <= moved[-1] else timedelta(0)
        moved.append(stage + pushed)
    return tuple(moved)


def _number(stages: Sequence[datetime], word: StageWord, now: datetime) -> int | None:
    """The place of the class that is meant; one past the last where one more is told of."""
    ahead = [place for place, stage in enumerate(stages) if stage > now]
    if word.which == 0:
        return ahead[0] if ahead else None
    place = len(stages) - 1 if word.which == LAST else word.which - 1
    another = bool(word.clocks) and (
        place == len(stages) or (word.which == LAST and len(stages) == 1)
    )
    if another:
        return len(stages)
    return place if place in ahead else None


def _told(
    word: StageWord, event: EventRow, now: datetime, was: datetime | None, *, after: datetime
) -> datetime | None:
    if word.in_min is not None:
        return now.replace(second=0, microsecond=0) + timedelta(minutes=word.in_min)
    if word.by_min is not None:
        return was + timedelta(minutes=word.by_min) if was is not None else None
    if not word.clocks:
        return None
    at = _instant(event, word.clocks[0])
    evening = word.clocks[0].hour < 12 and at <= after  # "moved to 8", of a class at 19:30
    return at + _HALF_A_DAY if evening else at


def _instant(event: EventRow, clock: time) -> datetime:
    day = event.day + timedelta(days=1) if clock < NIGHT_UNTIL else event.day
    return local_instant(day, clock, event.zone)


#: How long before an event a time of day may well be one of the stage's.
AHEAD = timedelta(days=3)
#: As it stands on a button.
_CLOCK, _JOINT = "%H%M", "-"


def asked_about(turn: Turn, person: Person, text: str) -> bool:
    """Whether it may tell of when the classes of a day are on that this person may set; then it is
    asked, with the button that does it.
    """
    if not tells_a_time(text, language()):
        return False
    found = whose(turn, person, text, perhaps_stage_word)
    if found is None:
        return False
    profile, event, word = found
    own = profile.person_id == person.id
    name = name_of(turn.session, profile.person_id)
    if word.by_min is not None:
        row = stage_day.stage_row(turn.session, event)
        if not (stage_day.local_day(event, turn.context) and stage_day.running(row, turn.context)):
            return False
        label = words.late_button if word.by_min > 0 else words.early_button
        key = Button(label(abs(word.by_min)), LATE(profile.person_id, word.by_min))
        say_to(
            turn,
            person,
            words.perhaps_late() if own else words.perhaps_late_of(name),
            buttons=[[key]],
        )
        return True
    if not _is_near(turn, event):
        return False
    sentence = words.perhaps_times() if own else words.perhaps_times_of(name)
    say_to(turn, person, sentence, buttons=_keys(profile, word))
    return True


def tapped(turn: Act, pressed: Told) -> None:
    """Yes, that is when they are on."""
    found = views.day_of(turn, pressed.athlete)
    if found is None:
        return
    try:
        clocks = tuple(map(_clock, pressed.clocks.split(_JOINT)))
    except ValueError:  # no button of ours
        clocks = ()
    word = StageWord(pressed.which, clocks=clocks)
    done = bool(clocks) and set_by_word(turn, turn.person, TimesTold(*found, word))
    answer(turn, "" if done else words.day_not_here())


def _keys(profile: AthleteProfile, word: StageWord) -> Buttons:
    clocks = _JOINT.join(f"{clock:{_CLOCK}}" for clock in word.clocks)
    label = words.on_stage_button([f"{clock:%H:%M}" for clock in word.clocks])
    return [[Button(label, TOLD(profile.person_id, word.which, clocks))]]


def _clock(said: str) -> time:
    return datetime.strptime(said, _CLOCK).time()  # noqa: DTZ007 (a time of day has no zone)


def _is_near(turn: Turn, event: EventRow) -> bool:
    today = turn.now.astimezone(ZoneInfo(event.zone)).date()
    return timedelta(0) <= event.day - today <= AHEAD
