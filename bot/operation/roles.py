"""Coaches and invitations, for whoever runs the bot: to see, and to take back."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import func
from sqlmodel import Session, col, select

from bot.core.turn import Turn
from bot.membership import flow_invitations
from bot.membership.invitations import InviteKind
from bot.people.telling import say_to
from bot.store.tables.people import AthleteProfile, AthleteStatus, Invite, Person

INVITED = {
    InviteKind.COACH: "a coach",
    InviteKind.ATHLETE: "an athlete",
    InviteKind.CONTACT: "a second contact",
    InviteKind.SECOND: "a second coach",
}


def coaches_and_invitations(session: Session, now: datetime) -> str:
    """Coaches with how many they coach, and the invitations that can still be used."""
    coaches = session.exec(
        select(Person).where(col(Person.is_coach)).order_by(col(Person.id))
    ).all()
    lines = ["Coaches:"]
    for coach in coaches:
        lines.append(f"  {coach.id:>4}  {coach.first_name}, athletes: {_athletes(session, coach)}"
                     + ("" if coach.reachable else ", has blocked the bot"))  # fmt: skip
    invites = session.exec(
        select(Invite)
        .where(col(Invite.used_at).is_(None), col(Invite.expires_at) > now)
        .order_by(col(Invite.id))
    ).all()
    lines += ["" if coaches else "  nobody yet", "Invitations that can still be used:"]
    for invite in invites:
        by = session.get(Person, invite.invited_by) if invite.invited_by else None
        lines.append(
            f"  {invite.id:>4}  for {INVITED[InviteKind(invite.kind)]}, from "
            f"{by.first_name if by else 'whoever runs the bot'}, until "
            f"{invite.expires_at:%Y-%m-%d %H:%M} UTC"
        )
    return "\n".join([*lines, *([] if invites else ["  none"])])


def revoke_invitation(session: Session, number: int, now: datetime) -> str | None:
    """Make an invitation useless. Returns what is in the way; None where it is done."""
    invite = session.get(Invite, number)
    if invite is None:
        return f"there is no invitation {number}; `brimline coaches` lists them"
    if invite.used_at is not None:
        return f"invitation {number} has been used; what it made is taken back by itself"
    invite.expires_at = min(invite.expires_at, now)
    session.add(invite)
    return None


def revoke_coach(turn: Turn, number: int) -> str | None:
    """Take the coach's role from somebody without athletes, and tell them. Returns what is in the
    way; None where it is done. Their invitations can no longer be used.
    """
    session = turn.session
    coach = session.get(Person, number)
    if coach is None or not coach.is_coach:
        return f"there is no coach {number}; `brimline coaches` lists them"
    count = _athletes(session, coach)
    if count:
        return (
            f"{coach.first_name} still coaches {count} athletes, who would be left alone in their "
            "week: let each take up another coach's invitation, or the coach end it, first"
        )
    coach.is_coach = False
    session.add(coach)
    for invite in session.exec(select(Invite).where(Invite.invited_by == number)):
        if invite.used_at is None:
            invite.expires_at = min(invite.expires_at, turn.now)
            session.add(invite)
    say_to(turn, coach, flow_invitations.no_longer_a_coach)
    return None


def _athletes(session: Session, coach: Person) -> int:
    """How many others this coach coaches."""
    query = select(func.count()).select_from(AthleteProfile).where(
        AthleteProfile.coach_id == coach.id,
        AthleteProfile.person_id != coach.id,
        col(AthleteProfile.status) != AthleteStatus.ENDED,
    )  # fmt: skip
    return session.exec(query).one()
