"""Safety: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.alerts import words_after
from bot.alerts.buttons import ALERT
from bot.core.chat.routes import TOLD_OF_ALERTS, Command, Duty, tap, view
from bot.dialogue.feature import Feature
from bot.safety import alert_taps, answers, buttons
from bot.safety import watch as safety_watch

FEATURE = Feature(
    commands=(
        Command(
            "alerts", TOLD_OF_ALERTS, alert_taps.list_alerts, words_after.alerts_menu, rank=160
        ),
    ),
    taps=(tap(ALERT, TOLD_OF_ALERTS, alert_taps.alert_tapped, words_after.not_your_alert),),
    on_card=(
        view(buttons.FREEZE, alert_taps.freeze),
        view(buttons.LIFT, alert_taps.ask_to_lift),
        view(buttons.LIFT_YES, alert_taps.lift),
        view(buttons.LIFT_NO, alert_taps.keep_frozen),
    ),
    flows=(*answers.FLOWS,),
    duties=(
        Duty(
            safety_watch.UNANSWERED,
            answers.unanswered,
            "a question about a symptom that got no answer",
        ),
    ),
)
