"""Event: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.routes import Duty
from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature
from bot.event import asks, bridging, season, season_views
from bot.event import setting as event_setting
from bot.event.flow import EVENT
from bot.event.flow_asks import TARGET_LOOK, WEIGH_IN
from bot.event.flow_bridge import BRIDGE_WEEK

FEATURE = Feature(
    id="event",
    on_card={
        "event": event_setting.ask_event,
        "season": season_views.show,
        "season-off": season_views.ask_remove,
        "season-out": season_views.remove,
        "bridge": bridging.ask,
        "asks": asks.show,
        "asks-look": asks.ask_look,
        "asks-weigh": asks.ask_weigh_in,
    },
    flows=(
        Registered(EVENT, event_setting.event_given),
        Registered(BRIDGE_WEEK, bridging.answered),
        Registered(TARGET_LOOK, asks.look_given),
        Registered(WEIGH_IN, asks.weigh_in_given),
    ),
    duties=(Duty(season.TAKE_OVER, season.due),),
    after=(season.settle_planned,),
)
