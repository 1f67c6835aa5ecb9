"""Athlete: its buttons and what they carry."""

from __future__ import annotations

from typing import NamedTuple

from bot.core.chat.buttons import Route


class Setting(NamedTuple):
    """One of `flow_settings.SETTINGS`."""

    key: str


SETTING = Route("set", Setting)
