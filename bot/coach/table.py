"""Coach: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.coach import desk_settings, words
from bot.coach.card import actions as card_actions
from bot.coach.card import card, forecast_use, pages
from bot.coach.digest import digest
from bot.coach.digest import words as digest_words
from bot.coach.digest.flow import DIGEST, QUIET, ZONE
from bot.coach.history import view as history_view
from bot.coach.history.flow import HISTORY_DAY
from bot.coach.roster import roster, several
from bot.coach.roster.flow_several import SEVERAL
from bot.core.routes import COACHING, Command, Duty, Tap
from bot.dialogue.asking import Registered
from bot.dialogue.feature import Feature
from bot.people import desk

FEATURE = Feature(
    id="coach",
    commands=(
        Command("roster", COACHING, roster.show_roster, words.roster_menu, rank=150),
        Command(
            "digest", COACHING, desk_settings.show_settings, digest_words.digest_menu, rank=170
        ),
    ),
    taps=(
        Tap("desk", COACHING, desk_settings.desk_tapped),
        Tap("m", COACHING, roster.answered_here),
    ),
    on_card={
        "forecast": forecast_use.show,
        "forecast-use": forecast_use.choose,
        "card": card.show_card,
        "page": pages.show,
        "sign": card_actions.sign_from_card,
        "ack": card_actions.acknowledge_from_card,
        "why": card_actions.show_why,
        "answers": card_actions.show_answers,
        "hand": card_actions.set_by_hand,
        "history": history_view.show_history,
        "history-day": history_view.ask_day,
        "tomorrow": card_actions.turn_tomorrow,
        "doctor": card_actions.ask_doctor,
        "doctor-yes": card_actions.doctor_said_yes,
        "doctor-no": card_actions.doctor_not_yet,
    },
    flows=(
        Registered(HISTORY_DAY, history_view.day_given),
        Registered(SEVERAL, several.given),
        *(Registered(flow, desk_settings.setting_given) for flow in (DIGEST, ZONE, QUIET)),
    ),
    duties=(
        Duty(desk.ROSTER, roster.refresh),
        Duty(digest.DIGEST, digest.send),
    ),
)
