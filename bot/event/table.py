"""Event: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature
from bot.event import setting as event_setting
from bot.event.flow import EVENT

FEATURE = Feature(
    id="event",
    on_card={
        "event": event_setting.ask_event,
    },
    flows=(Registered(EVENT, event_setting.event_given),),
)
