"""Decision: its commands, buttons, flows and timed duties; the coach's eye and replay with them."""

from __future__ import annotations

from bot.core.chat import cards
from bot.core.chat.routes import COACHING, Duty, tap, view
from bot.decision import buttons, holding
from bot.decision.eye import looking
from bot.decision.eye import words as eye_words
from bot.decision.flow_figure import DAY_BY_HAND, HOLD, OTHER_FIGURE
from bot.decision.replay import what_if
from bot.decision.replay.flow import WHAT_IF_LIMIT
from bot.decision.signoff import signoff
from bot.decision.signoff import taps as signoff_taps
from bot.decision.signoff import words as words_signoff
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import Feature

FEATURE = Feature(
    taps=(tap(cards.SIGN, COACHING, signoff_taps.sign_tapped, words_signoff.not_your_decision),),
    on_card=(
        view(buttons.HOLD, holding.ask_hold),
        view(buttons.HOLD_END, holding.end_hold),
        view(buttons.EYE, looking.show, eye_words.no_such_morning),
        view(buttons.EYE_LOOK, looking.look_tapped, eye_words.no_such_morning),
        view(buttons.EYE_SHARPNESS, looking.sharpness_tapped, eye_words.no_such_morning),
        view(buttons.EYE_BACK, looking.take_back, eye_words.no_such_morning),
        view(buttons.WHAT_IF, what_if.show),
        view(buttons.WHAT_IF_USE, what_if.with_forecast),
        view(buttons.WHAT_IF_LESS, what_if.without_rule),
        view(buttons.ASK_LIMIT, what_if.ask_limit),
    ),
    flows=(
        FlowBinding(OTHER_FIGURE, signoff_taps.other_figure_given),
        FlowBinding(
            DAY_BY_HAND,
            of_own_athlete(signoff_taps.day_by_hand_given, words_signoff.not_your_decision),
        ),
        FlowBinding(HOLD, of_own_athlete(holding.hold_given)),
        FlowBinding(WHAT_IF_LIMIT, of_own_athlete(what_if.limit_given)),
    ),
    duties=(
        Duty(
            signoff.LAPSE, signoff_taps.lapse, "the deadline of a change that waits for the coach"
        ),
    ),
)
