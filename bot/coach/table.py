"""Coach: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.coach import buttons, digest, flow_digest, history, settings, words
from bot.coach.card import actions as card_actions
from bot.coach.card import card, pages
from bot.coach.flow_digest import DIGEST, QUIET, ZONE
from bot.coach.flow_history import HISTORY_DAY
from bot.coach.roster import flow_morning, roster
from bot.coach.roster.flow_morning import SEVERAL
from bot.core.chat import cards
from bot.core.chat.routes import COACHING, Command, Duty, tap, view
from bot.decision.signoff.words import not_your_decision
from bot.dialogue.asking import FlowBinding, of_own_athlete
from bot.dialogue.feature import Feature
from bot.people import coach_settings

FEATURE = Feature(
    commands=(
        Command("roster", COACHING, roster.show_roster, words.roster_menu, rank=150),
        Command("digest", COACHING, settings.show_settings, flow_digest.digest_menu, rank=170),
    ),
    taps=(
        tap(buttons.SETTINGS, COACHING, settings.settings_tapped, flow_digest.not_a_setting),
        tap(buttons.GLANCE, COACHING, roster.answered_here, not_your_decision),
        tap(buttons.TOGETHER, COACHING, roster.show, flow_morning.nothing_alike),
        tap(cards.ROSTER, COACHING, roster.turn_page),
    ),
    on_card=(
        view(buttons.FORECAST, card_actions.show),
        view(buttons.FORECAST_USE, card_actions.choose),
        view(cards.CARD, card.show_card),
        view(buttons.PAGE, pages.show),
        view(buttons.SIGN, card_actions.sign_from_card),
        view(buttons.ACKNOWLEDGE, card_actions.acknowledge_from_card),
        view(buttons.WHY, card_actions.show_why),
        view(buttons.ANSWERS, card_actions.show_answers),
        view(buttons.BY_HAND, card_actions.set_by_hand),
        view(buttons.HISTORY, history.show_history),
        view(buttons.ANOTHER_DAY, history.ask_day),
        view(buttons.TOMORROW, card_actions.turn_tomorrow),
        view(buttons.DOCTOR, card_actions.ask_doctor),
        view(buttons.DOCTOR_YES, card_actions.doctor_said_yes),
        view(buttons.DOCTOR_NO, card_actions.doctor_not_yet),
    ),
    flows=(
        FlowBinding(HISTORY_DAY, of_own_athlete(history.day_given)),
        FlowBinding(SEVERAL, roster.given),
        *(FlowBinding(flow, settings.setting_given) for flow in (DIGEST, ZONE, QUIET)),
    ),
    duties=(
        Duty(coach_settings.ROSTER, roster.refresh, "the roster brought up to date"),
        Duty(digest.DIGEST, digest.send, "the daily digest"),
    ),
)
