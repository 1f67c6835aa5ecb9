"""Event, the day on stage and travel: their commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import ATHLETE, COACHING, Command, Duty, tap, view
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import After, Feature
from bot.event import asks, bridging, buttons, flow_travel, season, setting, travel
from bot.event.flow import BRIDGE_WEEK, EVENT
from bot.event.flow_asks import TARGET_LOOK, WEIGH_IN
from bot.event.flow_travel import TRAVEL
from bot.event.stage import day as stage_day
from bot.event.stage import look as stage_look
from bot.event.stage import times_told, words
from bot.event.stage import views as stage_views
from bot.event.stage.day import REMIND
from bot.event.stage.flow import LOOK, STAGE
from bot.event.words import not_there
from bot.people.changes import Change
from bot.plan.prep import of_own_event
from bot.plan.words import event_first

_BOTH = ATHLETE | COACHING
_NOT_HERE = words.day_not_here

FEATURE = Feature(
    commands=(
        Command("stage", _BOTH, stage_views.show, words.menu, rank=240),
        Command("late", _BOTH, stage_views.late, words.late_menu, takes_words=True, rank=250),
        Command("early", _BOTH, stage_views.early, takes_words=True),
        Command("travel", ATHLETE, travel.command, flow_travel.menu, rank=270),
    ),
    taps=(
        tap(buttons.ON_STAGE, _BOTH, stage_views.tapped, _NOT_HERE),
        tap(buttons.LATE, _BOTH, stage_views.late_tapped, _NOT_HERE),
        tap(buttons.TOLD, _BOTH, times_told.tapped, _NOT_HERE),
        tap(buttons.TOP_UP, _BOTH, stage_views.top_up_tapped, _NOT_HERE),
    ),
    on_card=(
        view(cards.EVENT, setting.ask_event),
        view(cards.SEASON, season.show),
        view(buttons.SEASON_OFF, season.ask_remove),
        view(buttons.SEASON_OUT, season.remove),
        view(buttons.BRIDGE, bridging.ask),
        view(buttons.ASKS, asks.show),
        view(buttons.ASKS_LOOK, asks.ask_look),
        view(buttons.ASKS_WEIGH_IN, asks.ask_weigh_in),
    ),
    flows=(
        FlowBinding(EVENT, of_own_athlete(setting.event_given, gone=None)),
        FlowBinding(BRIDGE_WEEK, of_own_event(bridging.answered, gone=not_there)),
        FlowBinding(TARGET_LOOK, of_own_event(asks.look_given, gone=event_first)),
        FlowBinding(WEIGH_IN, of_own_event(asks.weigh_in_given, gone=event_first)),
        FlowBinding(STAGE, stage_views.times_given),
        FlowBinding(LOOK, stage_look.look_given),
        FlowBinding(TRAVEL, travel.given),
    ),
    duties=(
        Duty(season.TAKE_OVER, season.due, "the next event, which counts from now on"),
        Duty(REMIND, stage_day.remind, "a reminder of the day itself"),
        Duty(travel.ARRIVE, travel.arrived, "the arrival in another zone"),
    ),
    after=(After((Change.PLAN_SET, Change.LIMITS_SET), season.choose_active_of_planned),),
)
