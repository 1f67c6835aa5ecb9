"""Decision: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.core.routes import COACHING, Duty, Tap
from bot.decision import holding, signoff, signoff_taps
from bot.decision.flow_figure import DAY_BY_HAND, OTHER_FIGURE
from bot.decision.flow_hold import HOLD
from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature

FEATURE = Feature(
    id="decision",
    taps=(Tap("sign", COACHING, signoff_taps.sign_tapped),),
    on_card={
        "hold": holding.ask_hold,
        "hold-end": holding.end_hold,
    },
    flows=(
        Registered(OTHER_FIGURE, signoff_taps.other_figure_given),
        Registered(DAY_BY_HAND, signoff_taps.day_by_hand_given),
        Registered(HOLD, holding.hold_given),
    ),
    duties=(Duty(signoff.LAPSE, signoff_taps.lapse),),
)
