"""Where everything that happens in a chat comes in, and whom it is handed to.

The tables of `athlete_doors` and `coach_doors` are the whole list: commands and buttons with the
roles that may use them, flows, timed duties. What is not listed there does not exist.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import nullcontext
from dataclasses import replace

from sqlmodel import Session, select

from bot.context import Context, UseCases
from bot.incoming import Incoming, Kind
from bot.languages import nearest, speaking
from bot.messages import common
from bot.outbox import say
from bot.service import (
    after_show,
    answering,
    asking,
    athlete_doors,
    calendar_file,
    checkins,
    coach_doors,
    coming_back,
    debrief,
    documents,
    food_doors,
    invitations,
    landing,
    ready_doors,
    safety_watch,
    second_coach,
    stage_doors,
    tongue,
    travel,
    uploads,
)
from bot.service.handles import ANYONE_KNOWN, Command
from bot.service.menus import keep_menu
from bot.service.people import meet, person_in_chat, profile_of, speaking_to
from bot.service.reading_along import note_to_others
from bot.service.rights import given_to
from bot.service.tapping import answer
from bot.store.desk import Rights
from bot.store.people import OpenQuestion, Person
from bot.store.traffic import AgendaRow, OutboxRow


def help_view(session: Session, person: Person, rest: str, context: Context) -> None:
    """What this person can do here, read off the tables."""
    roles = roles_of(session, person)
    lines = [(c.name, c.menu()) for c in COMMANDS.values() if c.menu and c.roles & roles]
    text = common.help_message(lines, "athlete" in roles)
    say(session, chat_id=person.chat_id, text=text, now=context.now)


COMMANDS = {
    command.name: command
    for command in (
        *athlete_doors.COMMANDS,
        *coach_doors.COMMANDS,
        *food_doors.COMMANDS,
        *stage_doors.COMMANDS,
        *calendar_file.COMMANDS,
        *travel.COMMANDS,
        *ready_doors.COMMANDS,
        *tongue.COMMANDS,
        Command("help", ANYONE_KNOWN, help_view, common.help_menu),
        Command("start", ANYONE_KNOWN, help_view, takes_words=True),  # a code, or nothing
    )
}
_TABLES = (
    athlete_doors,
    coach_doors,
    food_doors,
    stage_doors,
    after_show,
    travel,
    ready_doors,
    tongue,
    calendar_file,
    debrief,
)
TAPS = {tap.prefix: tap for table in _TABLES for tap in table.TAPS}
DUTIES = {duty.kind: duty for table in _TABLES for duty in table.DUTIES}
FLOWS: asking.Flows = {
    registered.flow.id: registered for table in _TABLES for registered in table.FLOWS
}


def roles_of(session: Session, person: Person) -> frozenset[str]:
    """What this person is here: none, some or all of the roles of `handles`."""
    is_contact = select(Person.id).where(Person.second_contact_id == person.id)
    given = {row.rights for row in given_to(session, person)}
    held = {
        "athlete": profile_of(session, person.id) is not None,
        "coach": person.is_coach,
        "contact": session.exec(is_contact).first() is not None,
        "second": Rights.FULL in given,
        "second-alerts": Rights.ALERTS in given,
    }
    return frozenset(role for role, holds in held.items() if holds)


def incoming(session: Session, incoming: Incoming, context: Context) -> None:
    """One thing that somebody did in a chat; what is said to them is in their language."""
    away = incoming.private and coming_back.is_away(session, incoming)
    person = meet(session, incoming, context) if incoming.private else None
    with speaking(nearest(incoming.language)) if person is None else speaking_to(person):
        _taken_in(session, person, incoming, context, away=away)


def _taken_in(
    session: Session, person: Person | None, incoming: Incoming, context: Context, *, away: bool
) -> None:
    if not incoming.private:
        _refuse_group(session, incoming, context)
        return
    if person is not None:
        second_coach.end_overdue(session, person, context)
        if away:
            coming_back.came_back(session, person, context)
    if incoming.kind is Kind.BLOCKED:
        if person is not None:
            coach_doors.became_unreachable(session, person, context)
        return
    if incoming.kind is Kind.UNBLOCKED:
        return
    if incoming.kind is Kind.TEXT and invitations.claim(session, incoming, context):
        person = meet(session, incoming, context)
    elif person is None or not roles_of(session, person):
        answer(session, incoming, context)
        say(session, chat_id=incoming.chat_id, text=common.stranger(), now=context.now)
        return
    else:
        _known(session, person, incoming, context)
        note_to_others(session, person, context)
        person = meet(session, incoming, context)  # who may have gone with their data
    if person is not None:
        refresh_menu(session, person, context)


def refresh_menu(session: Session, person: Person, context: Context) -> None:
    """The command menu as this person's roles and language call for it."""
    with speaking_to(person):
        keep_menu(session, person, roles_of(session, person), COMMANDS.values(), context)


def _known(session: Session, person: Person, incoming: Incoming, context: Context) -> None:
    every = asking.open_questions(session, person)
    asked = [one for one in every if not asking.is_outdated(one, FLOWS)]
    outdated = [one for one in every if asking.is_outdated(one, FLOWS)]
    house = landing.House(FLOWS, COMMANDS, roles_of(session, person))
    heard = False
    tapped_in_words = bool(asked) and asking.is_button(asked[-1], FLOWS, incoming.text)
    if incoming.kind in (Kind.TEXT, Kind.EDITED, Kind.FILE) and not tapped_in_words:
        heard = safety_watch.screen(session, person, incoming, context)
    if incoming.kind is Kind.TAP:
        _tap(session, person, incoming, context)
    elif incoming.kind is Kind.FILE:
        kept = uploads.received(session, person, incoming, context)
        landing.caption(session, person, incoming, context, house, kept=kept, heard=heard)
    elif incoming.kind not in (Kind.TEXT, Kind.EDITED):
        landing.unreadable(session, person, incoming, context, house, asked=asked)
    elif incoming.kind is Kind.EDITED and checkins.edited(session, person, incoming, context):
        return
    elif incoming.text.startswith("/"):
        _command(session, person, incoming, context, house, asked=asked, heard=heard)
    elif incoming.kind is Kind.EDITED:
        landing.edited(session, person, incoming, context, house, asked=asked, heard=heard)
    elif not (outdated and every[-1] is outdated[-1] and answering.is_bare(incoming.text)):
        landing.land(session, person, incoming, context, house, asked=asked, heard=heard)
    if incoming.kind is Kind.TAP or incoming.text.startswith("/") or heard:
        return
    for question in outdated:
        if question.closed_at is None:
            asking.bring_up_to_date(session, person, question, FLOWS, context)


def _command(
    session: Session,
    person: Person,
    incoming: Incoming,
    context: Context,
    house: landing.House,
    *,
    asked: Sequence[OpenQuestion],
    heard: bool,
) -> None:
    """A command; what was typed behind one that takes no words lands by itself."""
    word, _, rest = incoming.text[1:].partition(" ")
    command = COMMANDS.get(word.partition("@")[0].lower())
    if command is None or not command.roles & house.roles:
        say(session, chat_id=person.chat_id, text=common.not_for_you(), now=context.now)
        command = None
    else:
        command.run(session, person, rest.strip(), context)
    if rest.strip() and not heard and (command is None or not command.takes_words):
        behind = replace(incoming, kind=Kind.TEXT, text=rest.strip())
        landing.land(session, person, behind, context, house, asked=asked)


def _tap(session: Session, person: Person, incoming: Incoming, context: Context) -> None:
    prefix, *arguments = incoming.text.split(":")
    if prefix == "q":
        asking.tapped(session, person, arguments, incoming, FLOWS, context)
        return
    tap = TAPS.get(prefix)
    if tap is None or not tap.roles & roles_of(session, person):
        answer(session, incoming, context, common.not_your_button())
        return
    tap.run(session, person, arguments, incoming, context)


def _refuse_group(session: Session, incoming: Incoming, context: Context) -> None:
    """Health data goes to private chats only. Said to commands, not to all the talk of a group."""
    if incoming.kind is Kind.TEXT and incoming.text.startswith("/"):
        text = common.private_chats_only()
        say(session, chat_id=incoming.chat_id, text=text, now=context.now)


def due(session: Session, row: AgendaRow, context: Context) -> None:
    """A timed duty whose instant has come; what is said is for the athlete or coach it is about."""
    whose, _, number = row.subject.partition(":")
    person = session.get(Person, int(number)) if whose in ("athlete", "coach") else None
    with speaking_to(person) if person is not None else nullcontext():
        DUTIES[row.kind.partition(":")[0]].run(session, row, context)


def undeliverable(session: Session, row: OutboxRow, context: Context) -> None:
    """A message that cannot reach its chat: the person stopped the bot, or is gone."""
    person = person_in_chat(session, row.chat_id)
    if person is not None:
        coach_doors.became_unreachable(session, person, context)


def moved(session: Session, old_chat_id: int, new_chat_id: int, context: Context) -> None:
    """A chat that Telegram gave another id."""
    person = person_in_chat(session, old_chat_id)
    if person is not None:
        person.chat_id = new_chat_id
        session.add(person)


def poisoned(session: Session, chat_id: int, context: Context) -> None:
    """Something that a person sent could not be handled: they are told, and nothing else waits."""
    person = person_in_chat(session, chat_id)
    if person is not None:
        with speaking_to(person):
            say(session, chat_id=chat_id, text=common.gone_wrong(), now=context.now)


USE_CASES = UseCases(
    incoming=incoming,
    due=due,
    undeliverable=undeliverable,
    moved=moved,
    poisoned=poisoned,
    unpack=uploads.unpack,
    fetched=uploads.fetched,
    document=documents.document,
    may_be_urgent=safety_watch.may_be_urgent,
)
