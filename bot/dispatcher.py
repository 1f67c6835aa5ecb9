"""Where everything that happens in a chat comes in, and whom it is handed to.

The tables of the features are the whole list: commands and buttons with the roles that may use them,
flows, timed duties. What is not listed there does not exist.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import nullcontext
from dataclasses import replace
from functools import cache, partial

from sqlmodel import Session

from bot import features, files, going_first
from bot.checkin import ahead, typed
from bot.checkin.flow import load_patterns
from bot.coach.history import note_to_others
from bot.core.chat.buttons import CARD, OnCard, UnreadableError, beginnings, on_card
from bot.core.chat.outbox import menu_shown, say, set_menu
from bot.core.chat.routes import ANYONE_KNOWN, COACHING, FORMER, CallbackRoute, Command, View
from bot.core.timing.agenda import Subject, about, kind_alone
from bot.core.turn import Act, ChatTurn, Kind, Turn
from bot.core.use_cases import UseCases
from bot.dialogue import answering, asking
from bot.features import DUTIES, FLOWS, ON_CARD, once
from bot.landing import landing
from bot.landing.persons import House
from bot.membership import invitations, second_coach
from bot.people import coach_settings, locks
from bot.people.changes import Follows, following
from bot.people.people import (
    example_of,
    given_to,
    is_first_coach,
    is_own_coach,
    is_second_contact,
    own_athlete,
    pending_entries,
    person_in_chat,
    profile_of,
    sender,
    touch_person,
)
from bot.people.telling import answer, say_to, speaking_to
from bot.reachability import reachability
from bot.safety import unheard
from bot.safety import watch as safety_watch
from bot.store.base import id_of
from bot.store.tables.coach import Rights
from bot.store.tables.people import AthleteProfile, OpenQuestion, Person
from bot.store.tables.traffic import AgendaRow, FetchRow, OutboxRow
from bot.words import common
from bot.words.languages import catalogue, nearest, speaking

NOTED = following(Follows.NOTED)


def help_view(turn: Act) -> None:
    """What this person can do here, read off the tables."""
    roles = roles_of(turn.session, turn.person)
    lines = _menu_of(roles, catalogue())
    own = profile_of(turn.session, turn.person.id)
    example = example_of(own) if own is not None and "athlete" in roles else ""
    text = common.help_message(lines, example, self_coached=own is not None and is_own_coach(own))
    say_to(turn, turn.person, text)


COMMANDS = once(
    (
        *features.COMMANDS.values(),
        Command("help", ANYONE_KNOWN, help_view, common.help_menu),
        Command("start", ANYONE_KNOWN, help_view, takes_words=True),  # a code, or nothing
    ),
    lambda command: command.name,
)


def roles_of(session: Session, person: Person) -> frozenset[str]:
    """What this person is here: none, some or all of the roles of `handles`."""
    given = {row.rights for row in given_to(session, person)}
    held = {
        "athlete": profile_of(session, person.id) is not None,
        "coach": person.is_coach,
        "contact": is_second_contact(session, person),
        "second": Rights.FULL in given,
        "second-alerts": Rights.ALERTS in given,
    }
    return frozenset(role for role, holds in held.items() if holds)


def incoming(turn: ChatTurn) -> None:
    """One thing that somebody did in a chat; what is said to them is in their language."""
    locks.hold_sender(turn.session, turn.incoming.user_id)
    known = sender(turn) if turn.incoming.private else None
    away = (  # who acts and could not be reached until now
        known is not None and not known.reachable and turn.incoming.kind is not Kind.BLOCKED
    )
    person = touch_person(turn) if known is not None else None
    with speaking(nearest(turn.incoming.language)) if person is None else speaking_to(person):
        _taken_in(turn, person, away=away)
    _after(turn)


def _taken_in(turn: ChatTurn, person: Person | None, *, away: bool) -> None:
    if not turn.incoming.private:
        _refuse_group(turn)
        return
    if person is not None:
        second_coach.end_overdue(turn, person)
        if away:
            reachability.came_back(turn, person)
    if turn.incoming.kind is Kind.BLOCKED:
        if person is not None:
            reachability.became_unreachable(turn, person)
        return
    if turn.incoming.kind is Kind.UNBLOCKED:
        return
    if turn.incoming.kind is Kind.TEXT and invitations.claim(turn):
        person = touch_person(turn)
    elif person is None:
        answer(turn)
        say(turn, chat_id=turn.incoming.chat_id, text=common.stranger())
        return
    elif not (roles := roles_of(turn.session, person)):
        _former(turn, person)
        return
    else:
        number = id_of(person)
        _known(turn, person, roles)
        if noted := [row for row in pending_entries(turn.session) if row.what in NOTED]:
            note_to_others(turn, person, noted)
        person = turn.session.get(Person, number)  # who may have gone with their data
    if person is not None:
        refresh_menu(turn, person)


def _former(turn: ChatTurn, person: Person) -> None:
    """Somebody who is nothing here any more gets at what is kept of them, and at nothing else."""
    text = turn.incoming.text
    tap = _tap_of(text) if turn.incoming.kind is Kind.TAP else None
    if tap is not None and tap.roles & FORMER:
        _tap(turn, person, FORMER)
        return
    if text.startswith("/"):
        command = COMMANDS.get(text[1:].strip().partition("@")[0].lower())
        if command is not None and command.roles & FORMER:
            command.run(turn.by(person))
            return
    answer(turn)
    say_to(turn, person, common.former())


def refresh_menu(turn: Turn, person: Person) -> None:
    """The command menu as this person's roles and language call for it."""
    with speaking_to(person):
        wanted = _menu_of(roles_of(turn.session, person), catalogue())
        if wanted != menu_shown(turn.session, person.chat_id):
            set_menu(turn, chat_id=person.chat_id, commands=wanted)


@cache
def _menu_of(roles: frozenset[str], _words: object) -> list[tuple[str, str]]:
    """The commands that these roles may use, with what each does in the language in force."""
    return [(c.name, c.menu()) for c in COMMANDS.values() if c.menu and c.roles & roles]


#: Whose text somebody typed, be it under a picture or a video.
_WRITTEN = frozenset({Kind.TEXT, Kind.EDITED, Kind.FILE, Kind.OTHER})


def _known(turn: ChatTurn, person: Person, roles: frozenset[str]) -> None:
    every = asking.open_questions(turn.session, person)
    asked = [one for one in every if not asking.is_outdated(one, FLOWS)]
    outdated = [one for one in every if asking.is_outdated(one, FLOWS)]
    house = House(FLOWS, COMMANDS, roles)
    heard = False
    tapped_in_words = bool(asked) and asking.is_button(asked[-1], FLOWS, turn.incoming.text)
    if turn.incoming.kind in _WRITTEN and not tapped_in_words:
        answers = partial(answering.reads, asked, FLOWS, turn.incoming.text, turn.context)
        heard = safety_watch.screen(turn, person, answers)
    if turn.incoming.kind is Kind.TAP:
        _tap(turn, person, roles)
    elif turn.incoming.kind is Kind.FILE:
        kept = files.received(turn, person)
        landing.caption(turn, person, house, kept=kept, heard=heard)
    elif turn.incoming.kind not in (Kind.TEXT, Kind.EDITED):
        landing.unreadable(turn, person, house, asked=asked, heard=heard)
    elif turn.incoming.kind is Kind.EDITED and typed.edited(turn, person):
        return
    elif turn.incoming.text.startswith("/"):
        _command(turn, person, house, asked=asked, heard=heard)
    elif turn.incoming.kind is Kind.EDITED:
        landing.edited(turn, person, house, asked=asked, heard=heard)
    elif not (outdated and every[-1] is outdated[-1] and answering.is_bare(turn.incoming.text)):
        landing.land(turn, person, house, asked=asked, heard=heard)
    if turn.incoming.kind is Kind.TAP or turn.incoming.text.startswith("/") or heard:
        return
    for question in outdated:
        if question.closed_at is None:
            asking.bring_up_to_date(turn, person, question, FLOWS)


def _command(
    turn: ChatTurn, person: Person, house: House, *, asked: Sequence[OpenQuestion], heard: bool
) -> None:
    """A command; what was typed behind one that takes no words lands by itself."""
    word, _, rest = turn.incoming.text[1:].partition(" ")
    command = COMMANDS.get(word.partition("@")[0].lower())
    if command is None or not command.roles & house.roles:
        say_to(turn, person, common.not_for_you())
        command = None
    else:
        command.run(turn.by(person, words=rest.strip()))
    if rest.strip() and not heard and (command is None or not command.takes_words):
        behind = replace(turn.incoming, kind=Kind.TEXT, text=rest.strip())
        landing.land(replace(turn, incoming=behind), person, house, asked=asked)


def _tap(turn: ChatTurn, person: Person, roles: frozenset[str]) -> None:
    data = turn.incoming.text
    if asking.ANSWER.begins(data):
        answering.tapped(turn, person, FLOWS)
        return
    tap = _tap_of(data)
    if tap is None or not tap.roles & roles:
        answer(turn, common.not_your_button())
        return
    try:
        pressed = tap.read(data)
    except UnreadableError:
        answer(turn, (tap.unreadable or common.not_your_button)())
        return
    answer(turn)
    tap.run(turn.by(person), pressed)


def _tap_of(data: str) -> CallbackRoute | None:
    return next((TAPS[one] for one in beginnings(data) if one in TAPS), None)


def _card(turn: Act, pressed: OnCard) -> None:
    """Hand a card's button on, once it is clear that the athlete is this coach's."""
    profile, view = (
        own_athlete(turn.session, turn.person, pressed.athlete),
        ON_CARD.get(pressed.view),
    )
    if profile is None or view is None or not _may(turn.person, profile, view):
        answer(turn, common.not_your_athlete())
        return
    coach_settings.card_opened(turn, turn.person, profile.person_id)
    try:
        fields = view.read(pressed.parts)
    except UnreadableError:
        answer(turn, (view.unreadable or common.already_answered)())
        return
    view.run(turn.on(profile), fields)


#: Beside the features' own: "c:VIEW:ATHLETE:...", which leads to the views of a card.
TAPS = once(
    (
        *features.TAPS.values(),
        CallbackRoute(CARD, COACHING, on_card, _card, common.not_your_athlete),
    ),
    lambda tap: tap.prefix,
)


def _may(coach: Person, profile: AthleteProfile, view: View) -> bool:
    return not view.first_coach_only or is_first_coach(coach, profile)


def _refuse_group(turn: ChatTurn) -> None:
    """Health data goes to private chats only. Said to commands, not to all the talk of a group."""
    if turn.incoming.kind is Kind.TEXT and turn.incoming.text.startswith("/"):
        text = common.private_chats_only()
        say(turn, chat_id=turn.incoming.chat_id, text=text)


def due(turn: Turn, row: AgendaRow) -> None:
    """A timed duty whose instant has come; what is said is for the athlete or coach it is about."""
    found = about(row)
    person = None
    if found is not None and found[0] in (Subject.ATHLETE, Subject.COACH):
        person = turn.session.get(Person, found[1])
    with speaking_to(person) if person is not None else nullcontext():
        DUTIES[kind_alone(row.kind)].run(turn, row)
    _after(turn)


def fetched(turn: Turn, row: FetchRow, outcome: object) -> None:
    """What follows from a file that somebody sent."""
    locks.hold(turn.session, row.person_id)
    files.fetched(turn, row, outcome)
    _after(turn)


def _after(turn: Turn) -> None:
    kept = pending_entries(turn.session)
    for after in features.AFTER:
        if found := [row for row in kept if row.what in after.kinds]:
            after.run(turn, found)


def undeliverable(turn: Turn, row: OutboxRow) -> None:
    """A message that cannot reach its chat: the person stopped the bot, or is gone."""
    locks.hold_chat(turn.session, row.chat_id)
    person = person_in_chat(turn.session, row.chat_id)
    if person is not None:
        reachability.became_unreachable(turn, person)


def moved(turn: Turn, old_chat_id: int, new_chat_id: int) -> None:
    """A chat that Telegram gave another id."""
    locks.hold_chat(turn.session, old_chat_id)
    person = person_in_chat(turn.session, old_chat_id)
    if person is not None:
        person.chat_id = new_chat_id
        turn.session.add(person)


def poisoned(turn: Turn, chat_id: int, urgent: str) -> None:
    """Something that a person sent could not be handled: they are told, and nothing else waits. What
    may be `urgent` of an athlete's goes to whoever coaches them, as it stands.
    """
    locks.hold_chat(turn.session, chat_id)
    person = person_in_chat(turn.session, chat_id)
    if person is None:
        return
    with speaking_to(person):
        profile = profile_of(turn.session, person.id)
        if urgent and profile is not None:
            unheard.bring(turn, person, profile, urgent)
        else:
            text = common.gone_wrong(self_coached=profile is not None and is_own_coach(profile))
            say(turn, chat_id=chat_id, text=text)
    _after(turn)


def load() -> None:
    """What the first morning needs: the tables of complaints, and the patterns of a check-in."""
    safety_watch.may_be_urgent("I am well")
    load_patterns()


USE_CASES = UseCases(
    incoming=incoming,
    due=due,
    undeliverable=undeliverable,
    moved=moved,
    poisoned=poisoned,
    unpack=files.unpack,
    fetched=fetched,
    document=files.document,
    how_urgent=going_first.how_urgent,
    foresee=ahead.foresee,
    hold_their_people=True,
    hold_duty=locks.hold_subject,
    load=load,
)
