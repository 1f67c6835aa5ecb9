"""One-time keys: who invites whom, and what happens when a key is used."""

from __future__ import annotations

import hashlib
import secrets
from collections.abc import Callable
from datetime import date, timedelta
from enum import StrEnum
from functools import partial
from typing import Any

from sqlalchemy import func
from sqlmodel import Session, col, select

from bot.core.chat.outbox import Button, Buttons, Delivery, Shown, Topic, answer_tap, edit, on, say
from bot.core.turn import Act, ChatTurn, Context, Turn
from bot.dialogue.asking import open_question
from bot.membership import ending, flow_invitations, flow_second, second_coach
from bot.membership.buttons import CONTACT_REMOVE
from bot.membership.ending import has_pending_items
from bot.membership.flow_invitations import CHANGE_COACH
from bot.membership.onboarding import onboarding
from bot.people import locks
from bot.people.changes import Change
from bot.people.people import (
    get_or_create_person,
    get_person,
    name_of,
    person_in_chat,
    profile_of,
    record,
    tell_apart,
)
from bot.people.telling import say_to
from bot.store.base import id_of
from bot.store.tables.people import AthleteStatus, Invite, OpenQuestion, Person
from bot.store.tables.traffic import OutboxRow, TopicKind

# Crockford's base 32: no letter that is taken for a digit. Sixteen of them are 80 bits.
ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 16
MOST_GUESSES, GUESSES_WITHIN = 10, timedelta(hours=1)
_LOOKALIKES = str.maketrans({"O": "0", "I": "1", "L": "1", "-": None, "–": None, "—": None})


class InviteKind(StrEnum):
    COACH = "coach"
    ATHLETE = "athlete"
    CONTACT = "contact"
    SECOND = "second"


def make_invite(
    turn: Turn, kind: str, invited_by: int | None, detail: dict[str, Any] | None = None
) -> str:
    """A new one-time token of this kind (coach, athlete, contact, second); only its hash is kept.

    `invited_by` is a person's id; None for a coach invited by whoever runs the bot. `detail` is
    what is agreed with it.
    """
    token = "".join(secrets.choice(ALPHABET) for _ in range(LENGTH))
    turn.session.add(
        Invite(
            kind=InviteKind(kind),
            token_hash=_hash(token),
            invited_by=invited_by,
            created_at=turn.now,
            expires_at=turn.now + timedelta(days=turn.context.invite_days),
            detail=detail,
        )
    )
    turn.session.flush()
    return token


def invitation_link(bot_username: str, token: str) -> str:
    """The deep link that opens the bot with this token; "" while the bot's name is unknown."""
    return f"https://t.me/{bot_username}?start={token}" if bot_username else ""


def spaced(token: str) -> str:
    """The token as a person reads it out: ABCD-EFGH-JKMN-PQRS."""
    return "-".join(token[i : i + 4] for i in range(0, len(token), 4))


def invite_coach_command(turn: Turn) -> str:
    """An invitation for a coach, as whoever runs the bot reads it in the terminal."""
    token = make_invite(turn, InviteKind.COACH, None)
    link = invitation_link(turn.context.bot_username, token)
    return flow_invitations.coach_invitation(link, spaced(token), turn.context.invite_days)


def invite_athlete(turn: Act) -> None:
    """/invite"""
    token = make_invite(turn, InviteKind.ATHLETE, turn.person.id)
    say_to(
        turn,
        turn.person,
        flow_invitations.for_you_to_forward("an athlete", turn.context.invite_days),
    )
    link = invitation_link(turn.context.bot_username, token)
    say_to(
        turn,
        turn.person,
        flow_invitations.athlete_invitation(turn.person.first_name, link, spaced(token)),
    )


def invite_contact(turn: Act) -> None:
    """/contact"""
    contact = _contact_of(turn.session, turn.person)
    buttons: Buttons = (
        [[Button(flow_invitations.remove_contact_button(contact.first_name), CONTACT_REMOVE())]]
        if contact
        else []
    )
    now_and_next = "\n\n".join(
        (
            flow_invitations.your_contact(contact.first_name if contact else None),
            flow_invitations.for_you_to_forward("a second contact", turn.context.invite_days),
        )
    )
    say_to(turn, turn.person, now_and_next, buttons=buttons)
    token = make_invite(turn, InviteKind.CONTACT, turn.person.id)
    link = invitation_link(turn.context.bot_username, token)
    say_to(
        turn,
        turn.person,
        flow_invitations.contact_invitation(turn.person.first_name, link, spaced(token)),
    )


def second_given(turn: Turn, coach: Person, question: OpenQuestion) -> None:
    """The end of the questions about a second coach: the invitation to forward."""
    detail = second_coach.agreed(turn, coach, question)
    if detail is None:
        return
    until = date.fromisoformat(detail["until"])
    one = detail["athlete_id"]
    name = name_of(turn.session, one) if one is not None else None
    what = flow_second.what_is_invited(flow_second.who(name), detail["rights"], until)
    say_to(turn, coach, flow_invitations.for_you_to_forward(what, turn.context.invite_days))
    token = make_invite(turn, InviteKind.SECOND, coach.id, detail)
    ways_in = flow_invitations.ways_in(
        invitation_link(turn.context.bot_username, token), spaced(token)
    )
    text = flow_second.invitation(
        coach.first_name, flow_second.theirs(name), detail["rights"], until, ways_in
    )
    say_to(turn, coach, text)


def contact_tapped(turn: Act) -> None:
    """The button that removes the second contact."""
    contact = _contact_of(turn.session, turn.person)
    said = (
        flow_invitations.contact_removed(contact.first_name)
        if contact
        else flow_invitations.no_contact_to_remove()
    )
    if contact is not None:
        turn.person.second_contact_id = None
        turn.session.add(turn.person)
        say_to(turn, contact, partial(flow_invitations.no_longer_contact, turn.person.first_name))
    if turn.incoming.tap_id is not None:
        answer_tap(turn, chat_id=turn.person.chat_id, tap_id=turn.incoming.tap_id, text=said)
    if turn.incoming.message_id is not None:
        edit(turn, Shown(turn.person.chat_id, message_id=turn.incoming.message_id), text=said)


def self_coach(turn: Act) -> None:
    """/selfcoach"""
    _begin_or_change(turn, turn.person, turn.person, None)


def claim(turn: ChatTurn) -> bool:
    """Whether this was an invitation attempt; everything about it has then been said and done."""
    code, is_bare = _code_in(turn.incoming.text)
    if code is None:
        return False
    if code and _has_guessed_enough(turn):
        _refuse(turn, flow_invitations.too_many_codes())
        return True
    invite = turn.session.exec(select(Invite).where(Invite.token_hash == _hash(code))).first()
    person = person_in_chat(turn.session, turn.incoming.chat_id)
    if invite is None and is_bare and person is not None:
        return False  # sixteen letters from somebody known are words, not a code
    if invite is not None:
        # Whoever invited is concerned from here on, and nobody else may take it up meanwhile.
        locks.hold(turn.session, invite.invited_by)
        turn.session.refresh(invite, with_for_update=True)
    problem = flow_invitations.join_how() if not code else _problem(invite, person, turn.context)
    if problem or invite is None:
        _refuse(turn, problem)
        return True
    _CLAIMS[InviteKind(invite.kind)](turn, get_or_create_person(turn), invite)
    return True


def _refuse(turn: ChatTurn, problem: str) -> None:
    chat_id = turn.incoming.chat_id
    say(turn, chat_id=chat_id, text=problem, how=Delivery(topic=_refused_in(chat_id)))


def _has_guessed_enough(turn: ChatTurn) -> bool:
    """Whether this chat has tried so many codes that no further one is looked up for a while."""
    tried = select(func.count()).where(
        *on(_refused_in(turn.incoming.chat_id)),
        col(OutboxRow.created_at) > turn.now - GUESSES_WITHIN,
    )
    return turn.session.exec(tried).one() >= MOST_GUESSES


def _refused_in(chat_id: int) -> Topic:
    return Topic(TopicKind.CODE_REFUSED, chat_id)


def coach_change_answered(turn: Turn, person: Person, question: OpenQuestion) -> None:
    """The end of the flow that asks whether another coach shall take over."""
    profile = profile_of(turn.session, person.id)
    locks.hold(turn.session, question.about)
    coach = get_person(turn.session, question.about)
    invite = turn.session.get(Invite, question.answers["_invite"] or 0)
    if profile is None or not question.answers["change"]:
        say_to(turn, person, flow_invitations.stayed())
        return
    if question.answers["_invite"] is not None:
        problem = _problem(invite, person, turn.context)
        if problem:
            say_to(turn, person, problem)
            return
    old = get_person(turn.session, profile.coach_id)
    if has_pending_items(turn.session, profile):
        say_to(turn, person, flow_invitations.settle_first(_called(old, person)))
        return
    _use(turn, invite, person)
    ending.let_go(turn, profile, old)
    profile.coach_id = id_of(coach)
    turn.session.add(profile)
    record(turn, profile.person_id, Change.COACH_CHANGED(to=id_of(coach)), by=person.id)
    say_to(turn, person, flow_invitations.coach_changed(_called(coach, person)))
    shared = tell_apart(turn.session, person, id_of(coach))
    if coach.id != person.id:
        say_to(turn, coach, partial(flow_invitations.took_over, person.first_name, shared))
    if old.id != person.id:
        say_to(turn, old, partial(flow_invitations.left_you, person.first_name))


def _as_coach(turn: Turn, person: Person, invite: Invite) -> None:
    if person.is_coach:
        say_to(turn, person, flow_invitations.already_coach())
        return
    _use(turn, invite, person)
    person.is_coach = True
    turn.session.add(person)
    say_to(turn, person, flow_invitations.coach_welcome(person.first_name))


def _as_athlete(turn: Turn, person: Person, invite: Invite) -> None:
    _begin_or_change(turn, person, _inviter(turn, invite), invite)


def _as_contact(turn: Turn, person: Person, invite: Invite) -> None:
    coach = _inviter(turn, invite)
    profile = profile_of(turn.session, person.id)
    if coach.id == person.id:
        say_to(turn, person, flow_invitations.not_your_own_contact())
        return
    if coach.second_contact_id == person.id:
        say_to(turn, person, flow_invitations.already_contact(coach.first_name))
        return
    if profile is not None and profile.coach_id == coach.id:
        say_to(turn, person, flow_invitations.athlete_is_no_contact(coach.first_name))
        return
    _use(turn, invite, person)
    former = _contact_of(turn.session, coach)
    if former is not None:
        say_to(turn, former, partial(flow_invitations.no_longer_contact, coach.first_name))
    coach.second_contact_id = person.id
    turn.session.add(coach)
    say_to(turn, person, flow_invitations.contact_welcome(coach.first_name))
    say_to(turn, coach, partial(flow_invitations.contact_joined, person.first_name))


def _as_second(turn: Turn, person: Person, invite: Invite) -> None:
    coach, detail = _inviter(turn, invite), invite.detail or {}
    refused = second_coach.refusal(turn.session, person, coach)
    if refused:
        say_to(turn, person, refused)
        return
    if not second_coach.join(turn, person, coach, detail):
        say_to(turn, person, flow_invitations.expired_invitation())
        return
    _use(turn, invite, person)


_CLAIMS: dict[InviteKind, Callable[[Turn, Person, Invite], None]] = {
    InviteKind.COACH: _as_coach,
    InviteKind.ATHLETE: _as_athlete,
    InviteKind.CONTACT: _as_contact,
    InviteKind.SECOND: _as_second,
}


def _begin_or_change(turn: Turn, person: Person, coach: Person, invite: Invite | None) -> None:
    """Make the person an athlete of this coach, asking first where they have another."""
    profile = profile_of(turn.session, person.id)
    if profile is None or profile.status == AthleteStatus.DECLINED:
        _use(turn, invite, person)
        initial = turn.incoming.initial if isinstance(turn, ChatTurn) else ""
        shared = tell_apart(turn.session, person, id_of(coach), initial=initial)
        onboarding.begin(turn, person, id_of(coach))
        if coach.id != person.id:
            say_to(turn, coach, partial(flow_invitations.athlete_joined, person.first_name, shared))
        return
    if profile.status == AthleteStatus.ENDED:
        _use(turn, invite, person)
        tell_apart(turn.session, person, id_of(coach))
        if profile.baseline:
            ending.take_up(turn, person, profile, coach)
        else:
            onboarding.begin(turn, person, id_of(coach))
        return
    if profile.coach_id == coach.id:
        self_coached = coach.id == person.id
        known = (
            flow_invitations.already_self_coached()
            if self_coached
            else flow_invitations.already_your_coach(coach.first_name)
        )
        say_to(turn, person, known)
        return
    old = get_person(turn.session, profile.coach_id)
    if has_pending_items(turn.session, profile):
        say_to(turn, person, flow_invitations.settle_first(_called(old, person)))
        return
    open_question(turn, person, CHANGE_COACH, coach.id, {
        "_old": _called(old, person),
        "_new": _called(coach, person),
        "_invite": invite.id if invite else None,
    })  # fmt: skip


def _problem(invite: Invite | None, person: Person | None, context: Context) -> str:
    """Why this invitation cannot be used; "" where it can."""
    if invite is None:
        return flow_invitations.unknown_invitation()
    if invite.used_at is not None:
        by_them = person is not None and invite.used_by == person.id
        return flow_invitations.used_by_you() if by_them else flow_invitations.used_invitation()
    return flow_invitations.expired_invitation() if invite.expires_at <= context.now else ""


def _use(turn: Turn, invite: Invite | None, person: Person) -> None:
    if invite is not None:
        invite.used_at, invite.used_by = turn.now, person.id
        turn.session.add(invite)


def _contact_of(session: Session, coach: Person) -> Person | None:
    return session.get(Person, coach.second_contact_id) if coach.second_contact_id else None


def _called(person: Person, by: Person) -> str:
    return flow_invitations.yourself() if person.id == by.id else person.first_name


def _code_in(text: str) -> tuple[str | None, bool]:
    """The code in a message, and whether it stood there alone; None where there is no attempt."""
    word, _, rest = text.strip().partition(" ")
    command = word.partition("@")[0].lower()
    if command == "/join":
        return _plain(rest), False
    if command == "/start":
        return (_plain(rest), False) if rest.strip() else (None, False)
    bare = _plain(text)
    is_code = len(bare) == LENGTH and all(c in ALPHABET for c in bare)
    return (bare, True) if is_code else (None, False)


def _plain(code: str) -> str:
    return "".join(code.split()).upper().translate(_LOOKALIKES)


def _hash(token: str) -> str:
    return hashlib.sha256(token.encode()).hexdigest()


def _inviter(turn: Turn, invite: Invite) -> Person:
    assert invite.invited_by is not None
    return get_person(turn.session, invite.invited_by)
