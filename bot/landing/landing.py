"""Where a typed sentence lands: as an answer, a check-in, a request, or a word to a person.

The first that fits has it, and nothing falls through: what is none of the others is passed on to a
person, and its writer is told to whom. Complaints have been heard before any of this.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.checkin import typed
from bot.core.chat.incoming import Kind, Media
from bot.core.turn import ChatTurn
from bot.dialogue import answering
from bot.direct import passing_on, replies
from bot.direct import words_passing_on as words
from bot.event.stage import times_told
from bot.event.stage import views as stage_views
from bot.landing.answers import answered, answered_in_part, given_in_words, replied, typed_for_a_tap
from bot.landing.persons import agreed, coaches, go_on, say_empty, say_no_words, tell_coach
from bot.landing.requests import opens_card, served, show_beside
from bot.landing.text import House, Landing
from bot.people.telling import say_to
from bot.plan import typed as plan_typed
from bot.safety import watch as safety_watch
from bot.store.tables.people import OpenQuestion, Person


def land(
    turn: ChatTurn,
    person: Person,
    house: House,
    *,
    asked: Sequence[OpenQuestion],
    heard: bool = False,
) -> None:
    """A typed text. `asked` are the questions that were open when it was written."""
    ordered = replies.question_first(turn.session, person, turn.incoming, asked)
    it = Landing(turn, person, house, ordered, heard)
    if not it.text.strip():
        say_empty(it)
        return
    if replied(it):
        return
    if it.latest is not None and opens_card(it):  # a city may be called like an athlete
        return
    waits_for_words = it.latest is not None and answering.takes_anything(it.latest, house.flows)
    if not waits_for_words and answered(it):
        return
    if (
        typed.one_line(turn, person)
        or _delayed(it)
        or (not it.heard and times_told.heard(turn, person, it.text))
        or plan_typed.heard(turn, person, it.text, house.flows, asked=ordered)
        or served(it, at_least_words=2 if waits_for_words else 1)
        or opens_card(it)
        or typed_for_a_tap(it)
    ):
        return
    if waits_for_words and given_in_words(it):
        return
    if not waits_for_words and answered_in_part(it):
        return
    if not heard:
        go_on(it)
    elif safety_watch.only_wonders(turn, person):
        show_beside(it)


def caption(turn: ChatTurn, person: Person, house: House, *, kept: bool, heard: bool) -> None:
    """What stands under a file: the morning's numbers, or a word to the coach. Not `kept`: nobody
    here can open that file.
    """
    it = Landing(turn, person, house, (), heard)
    numbers = bool(it.text.strip()) and typed.one_line(turn, person)
    if not kept:
        lead = words.file_unread()
        if agreed(it) and not coaches(it):
            lead = f"{lead} {tell_coach(it, it.text, words.file_told)}".strip()
        say_to(turn, person, lead)
    elif it.text.strip() and not numbers and not heard and not _is_label(it.text):
        go_on(it)


def unreadable(
    turn: ChatTurn, person: Person, house: House, *, asked: Sequence[OpenQuestion]
) -> None:
    """A voice message, a sticker, a place on the map: say what to do instead, and tell the coach."""
    it = Landing(turn, person, house, asked)
    say_no_words(it, turn.incoming.media or Media.ELSE)


def edited(
    turn: ChatTurn, person: Person, house: House, *, asked: Sequence[OpenQuestion], heard: bool
) -> None:
    """A message was changed that held no answer of a check-in: where it had been passed on, it is
    changed there; else it is taken as if it were new.
    """
    if turn.incoming.message_id is not None and passing_on.edited(
        turn, person, turn.incoming.message_id, turn.incoming.text, heard=heard
    ):
        return
    as_new = replace(turn.incoming, kind=Kind.TEXT)
    land(replace(turn, incoming=as_new), person, house, asked=asked, heard=heard)


def _delayed(it: Landing) -> bool:
    """Word that the day runs late is served, and what was said beside it lands by itself."""
    rest = stage_views.heard_delay(it.turn, it.person, it.text)
    if rest and not it.heard:
        beside = replace(it.turn.incoming, text=rest)
        land(replace(it.turn, incoming=beside), it.person, it.house, asked=it.asked)
    return rest is not None


def _is_label(text: str) -> bool:
    """Whether a caption only says which side a picture shows."""
    return len(text.split()) <= 2
