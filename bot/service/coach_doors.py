"""What coaches can do: the commands, buttons, conversations and timed duties of their side."""

from __future__ import annotations

from sqlmodel import Session

from bot.context import Context
from bot.service.asking import Registered
from bot.service.handles import Command, Duty, Tap
from bot.store.people import Person

COMMANDS: tuple[Command, ...] = ()
TAPS: tuple[Tap, ...] = ()
FLOWS: tuple[Registered, ...] = ()
DUTIES: tuple[Duty, ...] = ()


def became_unreachable(session: Session, person: Person, context: Context) -> None:
    """Somebody stopped the bot, or is gone."""
    raise NotImplementedError
