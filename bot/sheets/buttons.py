"""Sheets: the buttons of the workbook, of past weeks and of a coach's numbers, and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import CardRoute, Route


class Whose(StrEnum):
    OWN = "own"
    ALL = "all"


class OwnFiles(NamedTuple):
    whose: Whose
    format: str


OWN_FILES = Route("fl", OwnFiles)


class OfImport(NamedTuple):
    row: int | None = None


BACK = CardRoute("past-back", OfImport)
BACK_YES = CardRoute("past-back-yes", OfImport)
BACK_NO = CardRoute("past-back-no", OfImport)


class Numbers(NamedTuple):
    format: str


NUMBERS = Route("nb", Numbers)
