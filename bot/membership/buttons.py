"""Membership: its buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing, Route
from bot.core.chat.cards import OfRow


class Sure(StrEnum):
    YES = "yes"
    NO = "no"


class IsSure(NamedTuple):
    sure: Sure


class Gone(StrEnum):
    YES = "yes"
    NO = "no"
    ALL = "all"
    ALL_YES = "all-yes"


class IsGone(NamedTuple):
    """`mark`: what was foreseen of deleting all, for the second tap on it."""

    what: Gone
    mark: str | None = None


class Language(NamedTuple):
    """A code, or the word for following Telegram's own setting."""

    code: str


LEAVE = Route("leave", IsSure)
GONE = Route("gone", IsGone)
CONTACT_REMOVE = Route("contact:remove", Nothing)
MORE = Route("more:ask", Nothing)
LANGUAGE = Route("lang", Language)

ASK_MEASURES = CardRoute("measure", Nothing)
SECOND = CardRoute("second", Nothing)
SECOND_ASK = CardRoute("second-ask", Nothing)
SECOND_END = CardRoute("second-end", OfRow)
END = CardRoute("end", Nothing)
END_YES = CardRoute("end-yes", Nothing)
END_NO = CardRoute("end-no", Nothing)
