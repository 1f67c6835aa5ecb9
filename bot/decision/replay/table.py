"""Replay: a finished week decided again, on the athlete's card; `brimline replay` does it for all."""

from __future__ import annotations

from bot.core.chat.routes import view
from bot.decision.replay import buttons, what_if
from bot.decision.replay.flow import WHAT_IF_LIMIT
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature

FEATURE = Feature(
    on_card=(
        view(buttons.WHAT_IF, what_if.show),
        view(buttons.WHAT_IF_USE, what_if.with_forecast),
        view(buttons.WHAT_IF_LESS, what_if.without_rule),
        view(buttons.ASK_LIMIT, what_if.ask_limit),
    ),
    flows=(FlowBinding(WHAT_IF_LIMIT, what_if.limit_given),),
)
