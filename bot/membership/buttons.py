"""Membership: its buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.buttons import CardRoute, Nothing, Route
from bot.core.cards import OfRow


class Sure(StrEnum):
    YES = "yes"
    NO = "no"


class IsSure(NamedTuple):
    sure: Sure


class Language(NamedTuple):
    """A code, or the word for following Telegram's own setting."""

    code: str


LEAVE = Route("leave", IsSure)
GONE = Route("gone", IsSure)
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
