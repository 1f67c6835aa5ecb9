"""One-time keys: who invites whom, and what happens when a key is used."""

from __future__ import annotations

import hashlib
import secrets
from collections.abc import Callable
from datetime import date, timedelta
from enum import StrEnum
from typing import Any

from sqlmodel import Session, select

from bot.context import Context
from bot.flows.coach_invitations import CHANGE_COACH
from bot.incoming import Incoming
from bot.messages import coach_invitations as words
from bot.messages import coach_second as second_words
from bot.outbox import Button, Buttons, answer_tap, edit, say
from bot.service import ending, onboarding, second_coach
from bot.service.asking import open_question
from bot.service.open_matters import open_matters
from bot.service.people import (
    get_person,
    person_in_chat,
    profile_of,
    record,
    speaking_to,
    welcome,
)
from bot.store.people import AthleteStatus, Invite, OpenQuestion, Person

# Crockford's base 32: no letter that is taken for a digit. Sixteen of them are 80 bits.
ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 16
_LOOKALIKES = str.maketrans({"O": "0", "I": "1", "L": "1", "-": None, "–": None, "—": None})


class InviteKind(StrEnum):
    COACH = "coach"
    ATHLETE = "athlete"
    CONTACT = "contact"
    SECOND = "second"


def make_invite(
    session: Session,
    kind: str,
    invited_by: int | None,
    context: Context,
    detail: dict[str, Any] | None = None,
) -> str:
    """A new one-time token of this kind (coach, athlete, contact, second); only its hash is kept.

    `invited_by` is a person's id; None for a coach invited by whoever runs the bot. `detail` is
    what is agreed with it.
    """
    token = "".join(secrets.choice(ALPHABET) for _ in range(LENGTH))
    session.add(
        Invite(
            kind=InviteKind(kind),
            token_hash=_hash(token),
            invited_by=invited_by,
            created_at=context.now,
            expires_at=context.now + timedelta(days=context.invite_days),
            detail=detail,
        )
    )
    session.flush()
    return token


def invitation_link(bot_username: str, token: str) -> str:
    """The deep link that opens the bot with this token; "" while the bot's name is unknown."""
    return f"https://t.me/{bot_username}?start={token}" if bot_username else ""


def spaced(token: str) -> str:
    """The token as a person reads it out: ABCD-EFGH-JKMN-PQRS."""
    return "-".join(token[i : i + 4] for i in range(0, len(token), 4))


def invite_coach_command(session: Session, context: Context) -> str:
    """An invitation for a coach, as whoever runs the bot reads it in the terminal."""
    token = make_invite(session, InviteKind.COACH, None, context)
    link = invitation_link(context.bot_username, token)
    return words.coach_invitation(link, spaced(token), context.invite_days)


def invite_athlete(session: Session, coach: Person, _rest: str, context: Context) -> None:
    """/invite"""
    token = make_invite(session, InviteKind.ATHLETE, coach.id, context)
    _tell(session, coach, words.for_you_to_forward("an athlete", context.invite_days), context)
    link = invitation_link(context.bot_username, token)
    _tell(session, coach, words.athlete_invitation(coach.first_name, link, spaced(token)), context)


def invite_contact(session: Session, coach: Person, _rest: str, context: Context) -> None:
    """/contact"""
    contact = _contact_of(session, coach)
    buttons: Buttons = (
        [[Button(words.remove_contact_button(contact.first_name), "contact:remove")]]
        if contact
        else []
    )
    now_and_next = "\n\n".join(
        (
            words.your_contact(contact.first_name if contact else None),
            words.for_you_to_forward("a second contact", context.invite_days),
        )
    )
    _tell(session, coach, now_and_next, context, buttons)
    token = make_invite(session, InviteKind.CONTACT, coach.id, context)
    link = invitation_link(context.bot_username, token)
    _tell(session, coach, words.contact_invitation(coach.first_name, link, spaced(token)), context)


def second_given(session: Session, coach: Person, question: OpenQuestion, context: Context) -> None:
    """The end of the questions about a second coach: the invitation to forward."""
    detail = second_coach.agreed(session, coach, question, context)
    if detail is None:
        return
    until = date.fromisoformat(detail["until"])
    one = detail["athlete_id"]
    name = get_person(session, one).first_name if one is not None else None
    what = second_words.what_is_invited(second_words.who(name), detail["rights"], until)
    _tell(session, coach, words.for_you_to_forward(what, context.invite_days), context)
    token = make_invite(session, InviteKind.SECOND, coach.id, context, detail)
    ways_in = words.ways_in(invitation_link(context.bot_username, token), spaced(token))
    text = second_words.invitation(
        coach.first_name, second_words.theirs(name), detail["rights"], until, ways_in
    )
    _tell(session, coach, text, context)


def contact_tapped(
    session: Session, coach: Person, _arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """The button that removes the second contact."""
    contact = _contact_of(session, coach)
    said = words.contact_removed(contact.first_name) if contact else words.no_contact_to_remove()
    if contact is not None:
        coach.second_contact_id = None
        session.add(coach)
        with speaking_to(contact):
            _tell(session, contact, words.no_longer_contact(coach.first_name), context)
    if incoming.tap_id is not None:
        answer_tap(
            session, chat_id=coach.chat_id, tap_id=incoming.tap_id, text=said, now=context.now
        )
    if incoming.message_id is not None:
        edit(
            session, chat_id=coach.chat_id, message_id=incoming.message_id, now=context.now,
            text=said,
        )  # fmt: skip


def self_coach(session: Session, coach: Person, _rest: str, context: Context) -> None:
    """/selfcoach"""
    _begin_or_change(session, coach, coach, None, context)


def claim(session: Session, incoming: Incoming, context: Context) -> bool:
    """Whether this was an invitation attempt; everything about it has then been said and done."""
    code, is_bare = _code_in(incoming.text)
    if code is None:
        return False
    invite = session.exec(select(Invite).where(Invite.token_hash == _hash(code))).first()
    person = person_in_chat(session, incoming.chat_id)
    if invite is None and is_bare and person is not None:
        return False  # sixteen letters from somebody known are words, not a code
    problem = words.join_how() if not code else _problem(invite, person, context)
    if problem or invite is None:
        say(session, chat_id=incoming.chat_id, text=problem, now=context.now)
        return True
    _CLAIMS[InviteKind(invite.kind)](session, welcome(session, incoming, context), invite, context)
    return True


def coach_change_answered(
    session: Session, person: Person, question: OpenQuestion, context: Context
) -> None:
    """The end of the flow that asks whether another coach shall take over."""
    profile = profile_of(session, person.id)
    coach = get_person(session, question.subject_id or 0)
    invite = session.get(Invite, question.answers["_invite"] or 0)
    if profile is None or not question.answers["change"]:
        _tell(session, person, words.stayed(), context)
        return
    if question.answers["_invite"] is not None:
        problem = _problem(invite, person, context)
        if problem:
            _tell(session, person, problem, context)
            return
    old = get_person(session, profile.coach_id)
    if open_matters(session, profile):
        _tell(session, person, words.settle_first(_called(old, person)), context)
        return
    _use(session, invite, person, context)
    profile.coach_id = coach.id or 0
    session.add(profile)
    record(session, profile.person_id, "coach changed", context, by=person.id, to=coach.id)
    _tell(session, person, words.coach_changed(_called(coach, person)), context)
    if coach.id != person.id:
        with speaking_to(coach):
            _tell(session, coach, words.took_over(person.first_name), context)
    if old.id != person.id:
        with speaking_to(old):
            _tell(session, old, words.left_you(person.first_name), context)


def _as_coach(session: Session, person: Person, invite: Invite, context: Context) -> None:
    if person.is_coach:
        _tell(session, person, words.already_coach(), context)
        return
    _use(session, invite, person, context)
    person.is_coach = True
    session.add(person)
    _tell(session, person, words.coach_welcome(person.first_name), context)


def _as_athlete(session: Session, person: Person, invite: Invite, context: Context) -> None:
    _begin_or_change(session, person, get_person(session, invite.invited_by or 0), invite, context)


def _as_contact(session: Session, person: Person, invite: Invite, context: Context) -> None:
    coach = get_person(session, invite.invited_by or 0)
    profile = profile_of(session, person.id)
    if coach.id == person.id:
        _tell(session, person, words.not_your_own_contact(), context)
        return
    if coach.second_contact_id == person.id:
        _tell(session, person, words.already_contact(coach.first_name), context)
        return
    if profile is not None and profile.coach_id == coach.id:
        _tell(session, person, words.athlete_is_no_contact(coach.first_name), context)
        return
    _use(session, invite, person, context)
    former = _contact_of(session, coach)
    if former is not None:
        with speaking_to(former):
            _tell(session, former, words.no_longer_contact(coach.first_name), context)
    coach.second_contact_id = person.id
    session.add(coach)
    _tell(session, person, words.contact_welcome(coach.first_name), context)
    with speaking_to(coach):
        _tell(session, coach, words.contact_joined(person.first_name), context)


def _as_second(session: Session, person: Person, invite: Invite, context: Context) -> None:
    coach, detail = get_person(session, invite.invited_by or 0), invite.detail or {}
    refused = second_coach.refusal(session, person, coach, detail)
    if refused:
        _tell(session, person, refused, context)
        return
    if not second_coach.join(session, person, coach, detail, context):
        _tell(session, person, words.expired_invitation(), context)
        return
    _use(session, invite, person, context)


_CLAIMS: dict[InviteKind, Callable[[Session, Person, Invite, Context], None]] = {
    InviteKind.COACH: _as_coach,
    InviteKind.ATHLETE: _as_athlete,
    InviteKind.CONTACT: _as_contact,
    InviteKind.SECOND: _as_second,
}


def _begin_or_change(
    session: Session, person: Person, coach: Person, invite: Invite | None, context: Context
) -> None:
    """Make the person an athlete of this coach, asking first where they have another."""
    profile = profile_of(session, person.id)
    if profile is None or profile.status == AthleteStatus.DECLINED:
        _use(session, invite, person, context)
        onboarding.begin(session, person, coach.id or 0, context)
        if coach.id != person.id:
            with speaking_to(coach):
                _tell(session, coach, words.athlete_joined(person.first_name), context)
        return
    if profile.status == AthleteStatus.ENDED:
        _use(session, invite, person, context)
        if profile.baseline:
            ending.take_up(session, person, profile, coach, context)
        else:
            onboarding.begin(session, person, coach.id or 0, context)
        return
    if profile.coach_id == coach.id:
        own = coach.id == person.id
        known = words.already_self_coached() if own else words.already_your_coach(coach.first_name)
        _tell(session, person, known, context)
        return
    old = get_person(session, profile.coach_id)
    if open_matters(session, profile):
        _tell(session, person, words.settle_first(_called(old, person)), context)
        return
    open_question(
        session, person, CHANGE_COACH, context=context, subject_id=coach.id,
        answers={
            "_old": _called(old, person),
            "_new": _called(coach, person),
            "_invite": invite.id if invite else None,
        },
    )  # fmt: skip


def _problem(invite: Invite | None, person: Person | None, context: Context) -> str:
    """Why this invitation cannot be used; "" where it can."""
    if invite is None:
        return words.unknown_invitation()
    if invite.used_at is not None:
        by_them = person is not None and invite.used_by == person.id
        return words.used_by_you() if by_them else words.used_invitation()
    return words.expired_invitation() if invite.expires_at <= context.now else ""


def _use(session: Session, invite: Invite | None, person: Person, context: Context) -> None:
    if invite is not None:
        invite.used_at, invite.used_by = context.now, person.id
        session.add(invite)


def _contact_of(session: Session, coach: Person) -> Person | None:
    return session.get(Person, coach.second_contact_id) if coach.second_contact_id else None


def _called(person: Person, by: Person) -> str:
    return words.yourself() if person.id == by.id else person.first_name


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


def _tell(
    session: Session, person: Person, text: str, context: Context, buttons: Buttons = ()
) -> None:
    say(session, chat_id=person.chat_id, text=text, buttons=buttons, now=context.now)
