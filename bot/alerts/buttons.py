"""Alerts: its buttons and what they carry."""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from bot.core.chat.buttons import Route


class Do(StrEnum):
    ACKNOWLEDGE = "ack"


class OnAlert(NamedTuple):
    do: Do
    alert: int


ALERT = Route("alert", OnAlert)
