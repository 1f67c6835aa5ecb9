"""The coach's athletes on one page, and each athlete's card."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from zoneinfo import ZoneInfo

from sqlmodel import Session, select

from bot.context import Context
from bot.incoming import Incoming
from bot.messages import alerts as alert_words
from bot.messages import coach as words
from bot.messages import coach_figures as figures
from bot.messages.outlook import forecast_button
from bot.messages.safety import symptom_name
from bot.outbox import Button, Buttons, say
from bot.service.alerts import open_alerts
from bot.service.people import athletes_of, get_person, local_date
from bot.service.planning import event_line
from bot.service.signoff import morning_line
from bot.service.tapping import answer, rewrite
from bot.service.week import (
    checkin_row,
    current_event,
    current_plan,
    current_week,
    reported_symptoms,
    target_in_force,
)
from bot.store.people import AthleteProfile, AthleteStatus, Person
from bot.store.week import CheckInRow, DecisionRow, DecisionStatus, EventRow
from engine.plan import PLAN_DAYS
from engine.safety import Level

ON_A_PAGE = 20
BUTTONS_IN_A_ROW = 3


@dataclass(frozen=True, slots=True)
class Standing:
    """How an athlete stands just now; a lower `rank` needs the coach sooner."""

    rank: int
    state: str


def show_roster(session: Session, coach: Person, _rest: str, context: Context) -> None:
    """/roster"""
    text, buttons = _page(session, coach, 0, context)
    say(session, chat_id=coach.chat_id, text=text, buttons=buttons, now=context.now)


def turn_page(
    session: Session, coach: Person, number: str, incoming: Incoming, context: Context
) -> None:
    """Buttons "c:roster:PAGE"."""
    answer(session, incoming, context)
    text, buttons = _page(session, coach, int(number) if number.isdigit() else 0, context)
    rewrite(session, incoming, text, context, buttons)


def show_card(
    session: Session,
    coach: Person,
    profile: AthleteProfile,
    _rest: list[str],
    incoming: Incoming,
    context: Context,
) -> None:
    """One athlete, with everything that can be done about them."""
    answer(session, incoming, context)
    text, buttons = card(session, coach, profile, context)
    rewrite(session, incoming, text, context, buttons)


def card(
    session: Session, coach: Person, profile: AthleteProfile, context: Context
) -> tuple[str, Buttons]:
    name = get_person(session, profile.person_id).first_name
    own = coach.id == profile.person_id
    lines = _card_lines(session, profile, context)
    return words.card(name, lines), _card_buttons(profile, name, own=own)


def _page(session: Session, coach: Person, page: int, context: Context) -> tuple[str, Buttons]:
    standings = [
        (standing(session, profile, context), profile) for profile in athletes_of(session, coach)
    ]
    if not standings:
        return words.nobody_yet(), ()
    standings.sort(key=lambda pair: pair[0].rank)
    pages = -(-len(standings) // ON_A_PAGE)
    page = min(page, pages - 1)
    shown = standings[page * ON_A_PAGE : (page + 1) * ON_A_PAGE]
    lines = [_line(session, profile, found, context) for found, profile in shown]
    openers = [
        Button(get_person(session, profile.person_id).first_name, f"c:card:{profile.person_id}")
        for _, profile in shown
    ]
    turning = []
    if page > 0:
        turning.append(Button(words.earlier_button(), f"c:roster:{page - 1}"))
    if page < pages - 1:
        turning.append(Button(words.next_button(), f"c:roster:{page + 1}"))
    rows = [openers[i : i + BUTTONS_IN_A_ROW] for i in range(0, len(openers), BUTTONS_IN_A_ROW)]
    head = words.roster_head(len(standings), page, pages)
    return "\n\n".join([head, *lines]), [*rows, turning]


def standing(session: Session, profile: AthleteProfile, context: Context) -> Standing:
    """What about this athlete needs the coach most."""
    urgent = [row for row in open_alerts(session, profile.person_id) if row.level != Level.ADVISORY]
    if urgent:
        warned = urgent[0].level == Level.WARNING
        return Standing(0 if warned else 1, words.state_alert(urgent[0].level))
    waiting = _waiting(session, profile)
    if waiting is not None and waiting.sign_off_due_at is not None:
        until = figures.clock(waiting.sign_off_due_at, profile.zone)
        return Standing(2, words.state_waiting(until))
    if profile.frozen_at is not None:
        return Standing(3, words.state_frozen())
    if not get_person(session, profile.person_id).reachable:
        return Standing(4, words.state_unreachable())
    by_status = {
        AthleteStatus.DOCTOR_FIRST: Standing(5, words.state_doctor()),
        AthleteStatus.ONBOARDING: Standing(9, words.state_onboarding()),
        AthleteStatus.PAUSED: Standing(10, words.state_paused()),
    }
    if profile.status in by_status:
        return by_status[AthleteStatus(profile.status)]
    return _standing_of_week(session, profile, context)


def _standing_of_week(session: Session, profile: AthleteProfile, context: Context) -> Standing:
    event = current_event(session, profile.person_id)
    week = current_week(session, profile)
    if event is None:
        return Standing(7, words.state_to_set("event"))
    if week is None:
        missing = "plan" if current_plan(session, event) is None else "limits"
        return Standing(6, words.state_to_set(missing))
    today = local_date(profile, context)
    days_out = week.days_out(today)
    if days_out < 0:
        return Standing(13, words.state_over())
    if days_out > max(PLAN_DAYS):
        return Standing(12, words.state_ahead())
    clock = context.now.astimezone(ZoneInfo(profile.zone or "UTC")).time()
    asked = clock >= profile.prompt_time
    if asked and checkin_row(session, profile.person_id, today) is None:
        return Standing(8, words.state_missing())
    return Standing(11, words.state_fine())


def _line(session: Session, profile: AthleteProfile, found: Standing, context: Context) -> str:
    today = local_date(profile, context)
    event = current_event(session, profile.person_id)
    row = checkin_row(session, profile.person_id, today)
    days_out = (event.day - today).days if event is not None else None
    in_week = days_out is not None and 0 <= days_out <= max(PLAN_DAYS)
    return words.roster_line(
        get_person(session, profile.person_id).first_name,
        days_out,
        morning_line(profile, row) if row is not None else words.no_numbers() if in_week else None,
        _decided(session, profile, row),
        found.state,
    )


def _card_lines(session: Session, profile: AthleteProfile, context: Context) -> list[str]:
    today = local_date(profile, context)
    event = current_event(session, profile.person_id)
    week = current_week(session, profile)
    row = checkin_row(session, profile.person_id, today)
    lines = [_event_words(profile, event, context)]
    target = target_in_force(session, week, today) if week is not None else None
    if target is not None:
        water = figures.litres(target.water_l, profile.volume_unit)
        lines.append(words.card_today(today, target.carb_g, water))
    if row is not None:
        lines.append(words.card_morning(morning_line(profile, row)))
    told = _also_told(session, profile, row, today)
    lines += [told] if told else []
    if row is not None:
        decided = _decided(session, profile, row)
        lines += [figures.sentence(decided)] if decided else []
    if profile.zone is not None:
        at = f"{profile.prompt_time:%H:%M}"
        lines.append(words.card_asked(at, profile.zone, always_tomorrow=profile.always_tomorrow))
    lines.append(standing(session, profile, context).state)
    return lines


def _also_told(
    session: Session, profile: AthleteProfile, row: CheckInRow | None, today: date
) -> str:
    """What the athlete said today beside the numbers, in a line; "" where that is nothing."""
    reported = reported_symptoms(session, profile.person_id, today)
    symptoms = [*(row.symptoms if row is not None else ()), *reported]
    return words.card_also_told(
        [symptom_name(symptom) for symptom in dict.fromkeys(symptoms)],
        row.gut if row is not None else None,
        row.sleep_h if row is not None else None,
        row.note if row is not None else "",
    )


def _event_words(profile: AthleteProfile, event: EventRow | None, context: Context) -> str:
    return event_line(profile, event, context) if event is not None else words.no_event()


def _decided(session: Session, profile: AthleteProfile, row: CheckInRow | None) -> str | None:
    """What this morning's numbers led to, with the figure that stands now."""
    if row is None:
        return None
    query = select(DecisionRow).where(
        DecisionRow.checkin_id == row.id, DecisionRow.status != DecisionStatus.REPLACED
    )
    decision = session.exec(query).first()
    if decision is None:
        return None
    waiting = decision.status == DecisionStatus.WAITING
    week = current_week(session, profile)
    target = target_in_force(session, week, decision.sets_date) if week is not None else None
    carb_g = decision.carb_g if waiting or target is None else target.carb_g
    return words.decided(
        decision.outcome, carb_g, decision.planned_carb_g, decision.sets_date, waiting=waiting
    )


def _waiting(session: Session, profile: AthleteProfile) -> DecisionRow | None:
    query = select(DecisionRow).where(
        DecisionRow.athlete_id == profile.person_id, DecisionRow.status == DecisionStatus.WAITING
    )
    return session.exec(query).first()


def _card_buttons(profile: AthleteProfile, name: str, *, own: bool) -> Buttons:
    def button(label: str, view: str) -> Button:
        return Button(label, f"c:{view}:{profile.person_id}")

    frozen = profile.frozen_at is not None
    freezing = (
        button(alert_words.lift_button(), "lift")
        if frozen
        else button(words.freeze_button(), "freeze")
    )
    tomorrow = words.tomorrow_button(always_tomorrow=profile.always_tomorrow)
    rows = [
        [
            button(words.event_button(), "event"),
            button(words.plan_button(), "plan"),
            button(words.limits_button(), "limits"),
        ],
        [button(words.why_button(), "why"), button(words.answers_button(), "answers")],
        [button(words.hand_button(), "hand"), freezing],
        [button(tomorrow, "tomorrow"), button(forecast_button(profile.foresight), "forecast")],
        [] if own else [button(words.message_button(name), "message")],
        [Button(words.roster_button(), "c:roster:0")],
    ]
    if profile.status == AthleteStatus.DOCTOR_FIRST:
        rows.insert(0, [button(words.doctor_button(), "doctor")])
    return rows
