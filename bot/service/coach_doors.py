"""The coach's and second contact's commands, buttons, flows and timed duties: the whole list."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from sqlmodel import Session

from bot.context import Context
from bot.flows.coach_digest import DIGEST, QUIET, ZONE
from bot.flows.coach_event import EVENT
from bot.flows.coach_figure import DAY_BY_HAND, OTHER_FIGURE
from bot.flows.coach_history import HISTORY_DAY
from bot.flows.coach_hold import HOLD
from bot.flows.coach_invitations import CHANGE_COACH
from bot.flows.coach_limits import LIMIT
from bot.flows.coach_message import TO_ATHLETE, TO_COACH
from bot.flows.coach_plan import DRAFT, PLAN_NUMBER
from bot.flows.coach_second import SECOND
from bot.flows.next_load import NEXT_LOAD
from bot.flows.passing_on import PASS_ON
from bot.flows.plan_review import PLAN_REVIEW, PLAN_TOTAL
from bot.flows.sheets import SHEET
from bot.flows.templates import TEMPLATE_NAME, TEMPLATE_USE
from bot.incoming import Incoming
from bot.messages import alerts as alert_words
from bot.messages import coach as words
from bot.messages import coach_digest as digest_words
from bot.messages import coach_invitations as invitation_words
from bot.messages import templates as template_words
from bot.service import (
    alert_taps,
    alerts,
    calendar_file,
    card,
    card_actions,
    compare,
    debrief,
    desk,
    desk_settings,
    digest,
    ending,
    event_setting,
    forecast_use,
    health_screen,
    history_view,
    holding,
    invitations,
    limit_setting,
    looks,
    messages_across,
    next_load,
    notes,
    passing_on,
    picture,
    plan_numbers,
    plan_reviewing,
    plan_typed,
    planning,
    roster,
    second_coach,
    sheets,
    signoff,
    signoff_taps,
    templates,
    undoing,
)
from bot.service.asking import Registered
from bot.service.handles import ATHLETE, COACH, COACHING, TOLD_OF_ALERTS, Command, Duty, Tap
from bot.service.people import own_athlete
from bot.service.rights import is_first_coach
from bot.service.tapping import answer
from bot.service.unreachable import became_unreachable
from bot.store.people import AthleteProfile, Person

__all__ = ["COMMANDS", "DUTIES", "FLOWS", "TAPS", "became_unreachable"]

OnCard = Callable[[Session, Person, AthleteProfile, list[str], Incoming, Context], None]

#: Buttons "c:VIEW:ATHLETE:..." of cards, plans and limits. The athlete is the coach's own, or one
#: that they stand in for with full rights.
ON_CARD: Mapping[str, OnCard] = {
    "card": card.show_card,
    "event": event_setting.ask_event,
    "draft": planning.ask_draft,
    "plan": plan_numbers.show_plan,
    "day": plan_numbers.show_day,
    "num": plan_numbers.ask_number,
    "set": plan_typed.set_tapped,
    "sheet": sheets.offer_sheet,
    "calendar": calendar_file.on_card,
    "photos": compare.show_photos,
    "cmp": compare.compare_athlete,
    "tpl": templates.use_template,
    "tpl-save": templates.ask_to_save,
    "learnt": next_load.show,
    "learnt-no": next_load.leave,
    "review": plan_reviewing.show_review,
    "kcal": plan_reviewing.ask_total,
    "limits": limit_setting.show_limits,
    "limits-use": limit_setting.use_suggested_limits,
    "lim": limit_setting.ask_limit,
    "sign": card_actions.sign_from_card,
    "ack": card_actions.acknowledge_from_card,
    "why": card_actions.show_why,
    "answers": card_actions.show_answers,
    "picture": picture.show_picture,
    "debrief": debrief.show,
    "debrief-note": debrief.ask_note,
    "hand": card_actions.set_by_hand,
    "hold": holding.ask_hold,
    "hold-end": holding.end_hold,
    "history": history_view.show_history,
    "history-day": history_view.ask_day,
    "undo": undoing.ask_undo,
    "undo-yes": undoing.undo,
    "undo-no": undoing.keep,
    "tomorrow": card_actions.turn_tomorrow,
    "forecast": forecast_use.show,
    "forecast-use": forecast_use.choose,
    "doctor": card_actions.ask_doctor,
    "doctor-yes": card_actions.doctor_said_yes,
    "doctor-no": card_actions.doctor_not_yet,
    "measure": health_screen.ask_measures,
    "message": messages_across.ask_message,
    "freeze": alert_taps.freeze,
    "lift": alert_taps.ask_to_lift,
    "lift-yes": alert_taps.lift,
    "lift-no": alert_taps.keep_frozen,
    "second": second_coach.show_second,
    "second-ask": second_coach.ask_second,
    "second-end": second_coach.end_second,
    "end": ending.ask_to_end,
    "end-yes": ending.end,
    "end-no": ending.keep,
}

#: The relation itself is the first coach's alone.
FIRST_COACH_ONLY = frozenset({"second", "second-ask", "second-end", "end", "end-yes", "end-no"})


def card_tapped(
    session: Session, coach: Person, arguments: list[str], incoming: Incoming, context: Context
) -> None:
    """Hand a card's button on, once it is clear that the athlete is this coach's."""
    view, number, *rest = (*arguments, "", "")
    if view == "roster":
        roster.turn_page(session, coach, [number, *rest], incoming, context)
        return
    profile = own_athlete(session, coach, int(number)) if number.isdigit() else None
    if profile is None or view not in ON_CARD or not _may(coach, profile, view):
        answer(session, incoming, context, words.not_your_athlete())
        return
    desk.card_opened(session, coach, profile.person_id, context)
    ON_CARD[view](session, coach, profile, [part for part in rest if part], incoming, context)


def _may(coach: Person, profile: AthleteProfile, view: str) -> bool:
    return view not in FIRST_COACH_ONLY or is_first_coach(coach, profile)


COMMANDS = (
    Command("roster", COACHING, roster.show_roster, words.roster_menu),
    Command("alerts", TOLD_OF_ALERTS, alert_taps.list_alerts, alert_words.alerts_menu),
    Command("digest", COACHING, desk_settings.show_settings, digest_words.digest_menu),
    Command("templates", COACHING, templates.list_templates, template_words.templates_menu),
    Command("invite", COACH, invitations.invite_athlete, invitation_words.invite_menu),
    Command("contact", COACH, invitations.invite_contact, invitation_words.contact_menu),
    Command("write", ATHLETE, messages_across.write, words.write_menu, takes_words=True),
    Command("selfcoach", COACH, invitations.self_coach, invitation_words.selfcoach_menu),
)

TAPS = (
    Tap("c", COACHING, card_tapped),
    Tap("alert", TOLD_OF_ALERTS, alert_taps.alert_tapped),
    Tap("sign", COACHING, signoff_taps.sign_tapped),
    Tap("desk", COACHING, desk_settings.desk_tapped),
    Tap("tpl", COACHING, templates.tapped),
    Tap("contact", COACH, invitations.contact_tapped),
    Tap("look", COACH, looks.look_tapped),
    Tap("reply", ATHLETE, messages_across.reply_tapped),
)

FLOWS = (
    Registered(EVENT, event_setting.event_given),
    Registered(DRAFT, planning.draft_given),
    Registered(PLAN_NUMBER, plan_numbers.number_given),
    Registered(TEMPLATE_NAME, templates.name_given),
    Registered(TEMPLATE_USE, templates.use_answered),
    Registered(NEXT_LOAD, next_load.answered),
    Registered(SHEET, sheets.sheet_answered),
    Registered(PLAN_REVIEW, plan_reviewing.review_answered),
    Registered(PLAN_TOTAL, plan_reviewing.total_given),
    Registered(LIMIT, limit_setting.limit_given),
    Registered(OTHER_FIGURE, signoff_taps.other_figure_given),
    Registered(DAY_BY_HAND, signoff_taps.day_by_hand_given),
    Registered(HOLD, holding.hold_given),
    Registered(SECOND, invitations.second_given),
    Registered(HISTORY_DAY, history_view.day_given),
    *(Registered(flow, desk_settings.setting_given) for flow in (DIGEST, ZONE, QUIET)),
    Registered(CHANGE_COACH, invitations.coach_change_answered),
    Registered(TO_ATHLETE, messages_across.message_given),
    Registered(TO_COACH, messages_across.reply_given),
    Registered(PASS_ON, passing_on.answered),
)

DUTIES = (
    Duty(desk.ROSTER, roster.refresh),
    Duty(notes.RELEASE, notes.release),
    Duty(digest.DIGEST, digest.send),
    Duty(second_coach.OVER, second_coach.over),
    Duty(alerts.REPEAT, alerts.repeat),
    Duty(signoff.LAPSE, signoff_taps.lapse),
)
