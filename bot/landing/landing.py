"""Where a typed sentence lands: as an answer, a check-in, a request, or a word to a person.

The first that fits has it, and nothing falls through: what is none of the others is passed on to a
person, and its writer is told to whom. Complaints have been heard before any of this.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, replace
from zoneinfo import ZoneInfo

from bot.athlete.flow_settings import SETTINGS
from bot.checkin import typed
from bot.core.chat import outbox
from bot.core.turn import ChatTurn, Kind
from bot.core.zones import find_places
from bot.decision.signoff import taps as signoff_typed
from bot.dialogue import answering, asking
from bot.direct import messages, passing_on, words
from bot.direct.flow import PASS_ON, SURE, sends
from bot.event.stage import times_told
from bot.event.stage import views as stage_views
from bot.landing.persons import (
    House,
    Landing,
    agreed,
    coaches,
    go_on,
    opens_card,
    say_empty,
    say_no_words,
    served,
    show_beside,
    tell_coach,
)
from bot.people.people import profile_of
from bot.people.telling import say_to
from bot.plan import typed as plan_typed
from bot.plan.next_load import looks
from bot.safety import alert_taps
from bot.safety import watch as safety_watch
from bot.store.tables.people import AthleteStatus, OpenQuestion, Person
from bot.words.common import Media
from engine.written.whereabouts import now_in


def now_elsewhere(it: Landing) -> bool:
    """An athlete says that they are in a place with other clocks: whether these are to be theirs now is
    one tap, and the coach has the words.
    """
    place = now_in(it.text)
    profile = profile_of(it.turn.session, it.person.id) if place and not it.heard else None
    if profile is None or profile.zone is None or profile.status != AthleteStatus.ACTIVE:
        return False
    found = find_places(place)
    offset = it.turn.now.astimezone(ZoneInfo(profile.zone)).utcoffset()
    away = [
        one for one in found if it.turn.now.astimezone(ZoneInfo(one.zone)).utcoffset() != offset
    ]
    if not found or len(away) != len(found):
        return False
    say_to(it.turn, it.person, tell_coach(it, it.text))
    asking.open_question(it.turn, it.person, SETTINGS["place"], profile.person_id, {
        "place": [asdict(one) for one in found],
    })  # fmt: skip
    return True


def replied(it: Landing) -> bool:
    """Telegram's own reply: a coach's to an athlete's words, an athlete's to the coach's."""
    if it.turn.incoming.reply_to is None or (not it.is_coach and not agreed(it)):
        return False
    latest = it.latest
    row = messages.message_answered(it.turn.session, it.person, it.turn.incoming.reply_to)
    if row is None or (latest is not None and latest.outbox_id == row.id):
        return False
    if it.is_coach and passing_on.replied(it.turn, it.person):
        return True
    coach_id = messages.coach_answered(it.turn.session, it.person, it.turn.incoming)
    if coach_id is None or "athlete" not in it.house.roles:
        return False
    if it.heard:  # the coach has these words with what is made of them
        return True
    messages.to_coaches(it.turn, it.person, it.text.strip(), coach_id)
    return True


def typed_for_a_tap(it: Landing) -> bool:
    """What a coach says in words that only a tap decides: of an alert, a proposal, a look. Not where
    another question waits for an answer.
    """
    if it.latest is not None and it.latest.flow != PASS_ON.id:
        return False
    return (
        (it.is_coach and alert_taps.heard(it.turn, it.person))
        or signoff_typed.assented(it.turn, it.person)
        or (it.is_coach and looks.heard(it.turn, it.person))
    )


def answered(it: Landing) -> bool:
    if it.latest is not None and _sends_unseen(it, it.latest):
        asking.ask_again(it.turn, it.person, it.latest, it.house.flows)
        return True
    taken = answering.answered(it.turn, it.person, it.house.flows, asked=it.asked)
    return taken is not None


def _sends_unseen(it: Landing, asked: OpenQuestion) -> bool:
    """Whether an "ok" would send words to an athlete although something else was shown since: then it
    may be meant for that.
    """
    if asked.flow != PASS_ON.id or asked.step != SURE:
        return False
    return sends(it.text) and outbox.said_since(it.turn.session, it.person.chat_id, asked.outbox_id)


def answered_in_part(it: Landing) -> bool:
    """Several answers at once, or one with more behind it, which then goes on by itself."""
    if it.latest is None:
        return False
    taken = answering.answered_in_part(it.turn, it.person, it.house.flows, it.latest)
    if taken is None:
        return False
    if taken.rest and not it.heard:
        rest = replace(it.turn.incoming, text=taken.rest)
        go_on(replace(it, turn=replace(it.turn, incoming=rest), asked=()))
    return True


def given_in_words(it: Landing) -> bool:
    """Free words to the question that waits for them, unless they name another athlete, or the
    question was put so long ago that they can hardly be meant for it.
    """
    latest = it.latest
    assert latest is not None
    patient = it.house.flows[latest.flow].flow.patient and "?" not in it.text
    listens = answering.LISTENS_LONG if patient else answering.LISTENS_FOR
    if it.turn.now - latest.asked_at > listens:
        return False
    if safety_watch.asks_of_something_else(latest, it.text):
        return False
    if it.is_coach and passing_on.names_another(it.turn.session, it.person, latest, it.text):
        return False
    if not answered(it):  # empty, too long, or about a drug
        asking.refuse(it.turn, it.person, latest, it.house.flows, it.text)
    return True


def land(
    turn: ChatTurn,
    person: Person,
    house: House,
    *,
    asked: Sequence[OpenQuestion],
    heard: bool = False,
) -> None:
    """A typed text. `asked` are the questions that were open when it was written."""
    ordered = messages.question_first(turn.session, person, turn.incoming, asked)
    it = Landing(turn, person, house, ordered, heard)
    if not it.text.strip():
        say_empty(it)
        return
    if replied(it):
        return
    if it.latest is not None and opens_card(it):  # a city may be called like an athlete
        return
    if _came_late(it):
        return
    waits_for_words = it.latest is not None and answering.takes_anything(it.latest, house.flows)
    if not waits_for_words and answered(it):
        return
    if (
        typed.one_line(turn, person)
        or _delayed(it)
        or (not it.heard and times_told.heard(turn, person, it.text))
        or plan_typed.heard(turn, person, it.text, house.flows, asked=ordered)
        or now_elsewhere(it)
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
    numbers = bool(it.text.strip()) and (_came_late(it) or typed.one_line(turn, person))
    if not kept:
        lead = words.file_unread()
        if agreed(it) and not coaches(it):
            lead = f"{lead} {tell_coach(it, it.text, words.file_told)}".strip()
        say_to(turn, person, lead)
    elif it.text.strip() and not numbers and not heard and not _is_label(it.text):
        go_on(it)


def unreadable(
    turn: ChatTurn, person: Person, house: House, *, asked: Sequence[OpenQuestion], heard: bool
) -> None:
    """A voice message, a sticker, a place on the map: say what to do instead, and tell the coach. What
    is written under one is read as anywhere.
    """
    it = Landing(turn, person, house, asked, heard)
    media = turn.incoming.media or Media.ELSE
    if it.text.strip() and (heard or typed.one_line(turn, person)):
        say_to(turn, person, words.cannot_read(media))
        return
    say_no_words(it, media)


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


def _came_late(it: Landing) -> bool:
    """A morning of a day that is over: the coach has the words, and the figures are not today's."""
    if not typed.came_late(it.turn, it.person):
        return False
    told = "" if it.heard else tell_coach(it, it.text)
    say_to(it.turn, it.person, f"{words.came_late()} {told}".strip())
    return True


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
