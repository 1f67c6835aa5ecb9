"""Buttons by which features lead to one another: a view that several show is declared here."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Nothing, Route


class CalendarDo(StrEnum):
    GET = "get"


class OfEvent(NamedTuple):
    """An event ahead; without it the one that counts."""

    event: int | None = None


class InFormat(NamedTuple):
    """A file's format; without it the choice of formats."""

    format: str | None = None


class OfRow(NamedTuple):
    """A row that has to be there."""

    row: int


class Message(NamedTuple):
    """`here`: under notes, which are answered where they stand."""

    where: str | None = None


class PlanInFormat(NamedTuple):
    """A plan as a file; without a format the choice of them, without an event that which counts."""

    format: str | None = None
    event: int | None = None


class OfTemplate(NamedTuple):
    """A template; without it the choice of them. Without an event, for the one that counts."""

    template: int | None = None
    event: int | None = None


class Page(NamedTuple):
    """A page of the roster; `shown` is one of its filters."""

    page: int | None = None
    shown: str | None = None


class Say(StrEnum):
    APPROVE = "approve"
    OTHER = "other"
    KEEP = "keep"


class OnProposal(NamedTuple):
    say: Say
    decision: int


class AtLook(NamedTuple):
    """How a day looked, of that event; "-" where the coach leaves it open."""

    event: int
    look: str


class OnCalendar(NamedTuple):
    do: CalendarDo
    athlete: int


CARD = CardRoute("card", Nothing)
PLAN = CardRoute("plan", OfEvent)
DRAFT = CardRoute("draft", OfEvent)
LIMITS = CardRoute("limits", OfEvent)
EVENT = CardRoute("event", Nothing)
SEASON = CardRoute("season", Nothing)
SETUP = CardRoute("setup", Nothing)
LEARNT = CardRoute("learnt", Nothing)
TEMPLATES = CardRoute("tpl", OfTemplate)
PLAN_SHEET = CardRoute("sheet", PlanInFormat)
FILES = CardRoute("files", InFormat)
HANDOUT = CardRoute("handout", Nothing)
IMPORTS = CardRoute("past", InFormat)
PICTURE = CardRoute("picture", Nothing)
CALENDAR = CardRoute("calendar", Nothing)
MESSAGE = CardRoute("message", Message)
UNDO = CardRoute("undo", Nothing)
LOOK = Route("look", AtLook)
CALENDAR_FILE = Route("cal", OnCalendar)
ROSTER = Route("c:roster", Page)
SIGN = Route("sign", OnProposal)
