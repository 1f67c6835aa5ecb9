"""Event: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.routes import Duty
from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature
from bot.event import bridging, season, season_views
from bot.event import setting as event_setting
from bot.event.flow import EVENT
from bot.event.flow_bridge import BRIDGE_WEEK

FEATURE = Feature(
    id="event",
    on_card={
        "event": event_setting.ask_event,
        "season": season_views.show,
        "season-off": season_views.ask_remove,
        "season-out": season_views.remove,
        "bridge": bridging.ask,
    },
    flows=(
        Registered(EVENT, event_setting.event_given),
        Registered(BRIDGE_WEEK, bridging.answered),
    ),
    duties=(Duty(season.TAKE_OVER, season.due),),
    after=(season.settle_planned,),
)
