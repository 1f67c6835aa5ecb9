"""Safety: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.alerts import words as alert_words
from bot.core.routes import TOLD_OF_ALERTS, Command, Duty, Tap
from bot.dialogue.feature import Feature
from bot.safety import alert_taps
from bot.safety import watch as safety_watch

FEATURE = Feature(
    id="safety",
    commands=(
        Command(
            "alerts", TOLD_OF_ALERTS, alert_taps.list_alerts, alert_words.alerts_menu, rank=160
        ),
    ),
    taps=(Tap("alert", TOLD_OF_ALERTS, alert_taps.alert_tapped),),
    on_card={
        "freeze": alert_taps.freeze,
        "lift": alert_taps.ask_to_lift,
        "lift-yes": alert_taps.lift,
        "lift-no": alert_taps.keep_frozen,
    },
    flows=(*safety_watch.FLOWS,),
    duties=(Duty(safety_watch.UNANSWERED, safety_watch.unanswered),),
)
