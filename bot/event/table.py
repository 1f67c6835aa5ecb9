"""Event: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import Duty, view
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import After, Feature
from bot.event import bridging, buttons
from bot.event import setting as event_setting
from bot.event.asks import asks
from bot.event.asks.flow import TARGET_LOOK, WEIGH_IN
from bot.event.flow import EVENT
from bot.event.flow_bridge import BRIDGE_WEEK
from bot.event.season import season
from bot.event.season import views as season_views
from bot.people.changes import Change

FEATURE = Feature(
    id="event",
    on_card=(
        view(cards.EVENT, event_setting.ask_event),
        view(cards.SEASON, season_views.show),
        view(buttons.SEASON_OFF, season_views.ask_remove),
        view(buttons.SEASON_OUT, season_views.remove),
        view(buttons.BRIDGE, bridging.ask),
        view(buttons.ASKS, asks.show),
        view(buttons.ASKS_LOOK, asks.ask_look),
        view(buttons.ASKS_WEIGH_IN, asks.ask_weigh_in),
    ),
    flows=(
        FlowBinding(EVENT, event_setting.event_given),
        FlowBinding(BRIDGE_WEEK, bridging.answered),
        FlowBinding(TARGET_LOOK, asks.look_given),
        FlowBinding(WEIGH_IN, asks.weigh_in_given),
    ),
    duties=(Duty(season.TAKE_OVER, season.due, "the next event, which counts from now on"),),
    after=(After((Change.PLAN_SET, Change.LIMITS_SET), season.choose_active_of_planned),),
)
