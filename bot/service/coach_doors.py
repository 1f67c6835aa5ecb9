"""The coach's and second contact's commands, buttons, flows and timed duties: the whole list."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from sqlmodel import Session

from bot.context import Context
from bot.flows.coach_event import EVENT
from bot.flows.coach_figure import DAY_BY_HAND, OTHER_FIGURE
from bot.flows.coach_invitations import CHANGE_COACH
from bot.flows.coach_limits import LIMIT
from bot.flows.coach_message import TO_ATHLETE, TO_COACH
from bot.flows.coach_plan import DRAFT, PLAN_NUMBER
from bot.flows.plan_review import PLAN_REVIEW, PLAN_TOTAL
from bot.incoming import Incoming
from bot.messages import alerts as alert_words
from bot.messages import coach as words
from bot.messages import coach_invitations as invitation_words
from bot.service import (
    alert_taps,
    alerts,
    card_actions,
    invitations,
    limit_setting,
    messages_across,
    plan_numbers,
    plan_reviewing,
    planning,
    roster,
    signoff,
    signoff_taps,
)
from bot.service.asking import Registered
from bot.service.handles import ATHLETE, COACH, Command, Duty, Tap
from bot.service.people import own_athlete
from bot.service.tapping import answer
from bot.service.unreachable import became_unreachable
from bot.store.people import AthleteProfile, Person

__all__ = ["COMMANDS", "DUTIES", "FLOWS", "TAPS", "became_unreachable"]

COACH_OR_CONTACT = frozenset({"coach", "contact"})

OnCard = Callable[[Session, Person, AthleteProfile, list[str], Incoming, Context], None]

#: Buttons "c:VIEW:ATHLETE:..." of cards, plans and limits. The athlete is the coach's own.
ON_CARD: Mapping[str, OnCard] = {
    "card": roster.show_card,
    "event": planning.ask_event,
    "draft": planning.ask_draft,
    "plan": plan_numbers.show_plan,
    "day": plan_numbers.show_day,
    "num": plan_numbers.ask_number,
    "review": plan_reviewing.show_review,
    "kcal": plan_reviewing.ask_total,
    "limits": limit_setting.show_limits,
    "limits-use": limit_setting.use_suggested_limits,
    "lim": limit_setting.ask_limit,
    "why": card_actions.show_why,
    "answers": card_actions.show_answers,
    "hand": card_actions.set_by_hand,
    "tomorrow": card_actions.turn_tomorrow,
    "doctor": card_actions.ask_doctor,
    "doctor-yes": card_actions.doctor_said_yes,
    "doctor-no": card_actions.doctor_not_yet,
    "message": messages_across.ask_message,
    "freeze": alert_taps.freeze,
    "lift": alert_taps.ask_to_lift,
    "lift-yes": alert_taps.lift,
    "lift-no": alert_taps.keep_frozen,
}


def card_tapped(
    session: Session, coach: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Hand a card's button on, once it is clear that the athlete is this coach's."""
    view, number, *rest = (*arguments, "", "")
    if view == "roster":
        roster.turn_page(session, coach, number, incoming, context)
        return
    profile = own_athlete(session, coach, int(number)) if number.isdigit() else None
    if profile is None or view not in ON_CARD:
        answer(session, incoming, context, words.not_your_athlete())
        return
    ON_CARD[view](session, coach, profile, [part for part in rest if part], incoming, context)


COMMANDS = (
    Command("roster", COACH, roster.show_roster, words.roster_menu),
    Command("alerts", COACH_OR_CONTACT, alert_taps.list_alerts, alert_words.alerts_menu),
    Command("invite", COACH, invitations.invite_athlete, invitation_words.invite_menu),
    Command("contact", COACH, invitations.invite_contact, invitation_words.contact_menu),
    Command("selfcoach", COACH, invitations.self_coach, invitation_words.selfcoach_menu),
)

TAPS = (
    Tap("c", COACH, card_tapped),
    Tap("alert", COACH_OR_CONTACT, alert_taps.alert_tapped),
    Tap("sign", COACH, signoff_taps.sign_tapped),
    Tap("contact", COACH, invitations.contact_tapped),
    Tap("reply", ATHLETE, messages_across.reply_tapped),
)

FLOWS = (
    Registered(EVENT, planning.event_given),
    Registered(DRAFT, planning.draft_given),
    Registered(PLAN_NUMBER, plan_numbers.number_given),
    Registered(PLAN_REVIEW, plan_reviewing.review_answered),
    Registered(PLAN_TOTAL, plan_reviewing.total_given),
    Registered(LIMIT, limit_setting.limit_given),
    Registered(OTHER_FIGURE, signoff_taps.other_figure_given),
    Registered(DAY_BY_HAND, signoff_taps.day_by_hand_given),
    Registered(CHANGE_COACH, invitations.coach_change_answered),
    Registered(TO_ATHLETE, messages_across.message_given),
    Registered(TO_COACH, messages_across.reply_given),
)

DUTIES = (
    Duty(alerts.REPEAT, alerts.repeat),
    Duty(signoff.LAPSE, signoff_taps.lapse),
)
