"""The buttons of an athlete's own pictures: "ph:ACTION:..."."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from sqlmodel import Session

from bot.context import Context
from bot.incoming import Incoming
from bot.messages import common
from bot.service import compare, photos
from bot.service.tapping import answer
from bot.store.people import Person

OnTap = Callable[[Session, Person, list[str], Incoming, Context], None]

ACTIONS: Mapping[str, OnTap] = {
    "pick": photos.pick,
    "pose": photos.pick,
    "drop": photos.pick,
    "back": photos.pick,
    "see": photos.see,
    "wipe": photos.wipe,
    "wipe-yes": photos.wipe,
    "wipe-no": photos.wipe,
    "cmp": compare.compare_own,
}


def tapped(
    session: Session, person: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Hand a button on by its action."""
    action = ACTIONS.get(arguments[0] if arguments else "")
    if action is None:
        answer(session, incoming, context, common.not_your_button())
        return
    action(session, person, arguments, incoming, context)
