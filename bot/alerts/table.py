"""Alerts: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.alerts import delivery, notes
from bot.core.chat.routes import Duty
from bot.dialogue.feature import Feature

FEATURE = Feature(
    duties=(
        Duty(
            notes.RELEASE,
            notes.release,
            "the end of the quiet hours, when notes that were held go out",
        ),
        Duty(delivery.REPEAT, delivery.repeat, "an alert that nobody has acknowledged"),
    )
)
