"""Workbook: its buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import Route


class Whose(StrEnum):
    OWN = "own"
    ALL = "all"


class OwnFiles(NamedTuple):
    whose: Whose
    format: str


OWN_FILES = Route("fl", OwnFiles)
