"""One-time keys: who invites whom, and what happens when a key is used."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming


def make_invite(session: Session, kind: str, invited_by: int | None, context: Context) -> str:
    """A new one-time token of this kind (coach, athlete, contact); only its hash is kept."""
    raise NotImplementedError


def invitation_link(bot_username: str, token: str) -> str:
    return f"https://t.me/{bot_username}?start={token}"


def claim(session: Session, incoming: Incoming, context: Context) -> bool:
    """Whether this was an invitation attempt; everything about it has then been said and done."""
    return False
