"""The buttons of an athlete's own pictures: "ph:ACTION:..."."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from bot.core.callbacks import answer
from bot.core.turn import Act
from bot.photos import compare, photos
from bot.words import common

OnTap = Callable[[Act], None]

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


def tapped(turn: Act) -> None:
    """Hand a button on by its action."""
    action = ACTIONS.get(turn.arguments[0] if turn.arguments else "")
    if action is None:
        answer(turn, common.not_your_button())
        return
    action(turn)
