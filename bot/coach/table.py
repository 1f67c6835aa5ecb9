"""Coach: its commands, buttons, flows and timed duties."""

from __future__ import annotations

from bot.coach import buttons, settings, words
from bot.coach.card import actions as card_actions
from bot.coach.card import card, forecast_use, pages
from bot.coach.digest import digest
from bot.coach.digest import words as digest_words
from bot.coach.digest.flow import DIGEST, QUIET, ZONE
from bot.coach.history import view as history_view
from bot.coach.history.flow import HISTORY_DAY
from bot.coach.roster import roster, several, words_morning
from bot.coach.roster.flow_several import SEVERAL
from bot.core.chat import cards
from bot.core.chat.routes import COACHING, Command, Duty, tap, view
from bot.decision.signoff.words import not_your_decision
from bot.dialogue.asking import FlowBinding
from bot.dialogue.feature import Feature
from bot.people import coach_settings

FEATURE = Feature(
    commands=(
        Command("roster", COACHING, roster.show_roster, words.roster_menu, rank=150),
        Command("digest", COACHING, settings.show_settings, digest_words.digest_menu, rank=170),
    ),
    taps=(
        tap(buttons.SETTINGS, COACHING, settings.settings_tapped, digest_words.not_a_setting),
        tap(buttons.GLANCE, COACHING, roster.answered_here, not_your_decision),
        tap(buttons.TOGETHER, COACHING, several.show, words_morning.nothing_alike),
        tap(cards.ROSTER, COACHING, roster.turn_page),
    ),
    on_card=(
        view(buttons.FORECAST, forecast_use.show),
        view(buttons.FORECAST_USE, forecast_use.choose),
        view(cards.CARD, card.show_card),
        view(buttons.PAGE, pages.show),
        view(buttons.SIGN, card_actions.sign_from_card),
        view(buttons.ACKNOWLEDGE, card_actions.acknowledge_from_card),
        view(buttons.WHY, card_actions.show_why),
        view(buttons.ANSWERS, card_actions.show_answers),
        view(buttons.BY_HAND, card_actions.set_by_hand),
        view(buttons.HISTORY, history_view.show_history),
        view(buttons.ANOTHER_DAY, history_view.ask_day),
        view(buttons.TOMORROW, card_actions.turn_tomorrow),
        view(buttons.DOCTOR, card_actions.ask_doctor),
        view(buttons.DOCTOR_YES, card_actions.doctor_said_yes),
        view(buttons.DOCTOR_NO, card_actions.doctor_not_yet),
    ),
    flows=(
        FlowBinding(HISTORY_DAY, history_view.day_given),
        FlowBinding(SEVERAL, several.given),
        *(FlowBinding(flow, settings.setting_given) for flow in (DIGEST, ZONE, QUIET)),
    ),
    duties=(
        Duty(coach_settings.ROSTER, roster.refresh, "the roster brought up to date"),
        Duty(digest.DIGEST, digest.send, "the daily digest"),
    ),
)
