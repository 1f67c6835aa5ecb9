"""Replay: a finished week decided again, on the athlete's card; `brimline replay` does it for all."""

from __future__ import annotations

from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature
from bot.replay import what_if
from bot.replay.flow import WHAT_IF_LIMIT

FEATURE = Feature(
    id="replay",
    on_card={
        "whatif": what_if.show,
        "whatif-use": what_if.with_forecast,
        "whatif-less": what_if.without_rule,
        "whatif-limit": what_if.ask_limit,
    },
    flows=(Registered(WHAT_IF_LIMIT, what_if.limit_given),),
)
