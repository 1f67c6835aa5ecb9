"""Pictures: the buttons of photos, of weeks and of seasons, and what they carry."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing, Route
from bot.store.tables.photos import Pose


class Do(StrEnum):
    PICK = "pick"
    POSE = "pose"
    DROP = "drop"
    BACK = "back"


class OnPhoto(NamedTuple):
    do: Do
    photo: int
    pose: Pose | None = None


class OfMorning(NamedTuple):
    day: date | None = None


class TwoMornings(NamedTuple):
    left: date | None = None
    right: date | None = None


ON_PHOTO = Route("ph", OnPhoto)
SEE = Route("ph:see", OfMorning)
WIPE = Route("ph:wipe", Nothing)
WIPE_YES = Route("ph:wipe-yes", Nothing)
WIPE_NO = Route("ph:wipe-no", Nothing)
OWN_COMPARED = Route("ph:cmp", TwoMornings)

PHOTOS = CardRoute("photos", OfMorning)
COMPARED = CardRoute("cmp", TwoMornings)


class Weeks(NamedTuple):
    """A view (or "p" and days out: photos) of some weeks, their events joined by points."""

    view: str | None = None
    events: str | None = None


WEEKS = CardRoute("weeks", Weeks)
OWN_WEEKS = Route("wks", Weeks)


TIMELINE = CardRoute("timeline", Nothing)
