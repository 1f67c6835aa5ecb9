"""One athlete's card: how they stand today, and everything that can be done about them."""

from __future__ import annotations

from datetime import date

from sqlmodel import Session

from bot.alerts import words as alert_words
from bot.coach import words
from bot.coach.buttons import ANSWERS, BY_HAND, DOCTOR, FORECAST, HISTORY, TOMORROW, WHY
from bot.coach.card import lines as card_lines
from bot.coach.history import words as history_words
from bot.coach.roster.standing import Seen, decided_line, look, standing
from bot.comparison import words as comparison_words
from bot.comparison.buttons import WEEKS
from bot.core.callbacks import answer, rewrite
from bot.core.cards import (
    CALENDAR,
    EVENT,
    FILES,
    LEARNT,
    LIMITS,
    MESSAGE,
    PICTURE,
    PLAN,
    PLAN_SHEET,
    ROSTER,
    SEASON,
    SETUP,
)
from bot.core.context import Context
from bot.core.outbox import Button, Buttons
from bot.core.turn import OnAthlete, Turn
from bot.debrief import words as debrief_words
from bot.debrief.buttons import DEBRIEF
from bot.decision import words_forecast_use as forecast_words
from bot.decision import words_holding as hold_words
from bot.decision.buttons import HOLD
from bot.decision.signoff import morning_line
from bot.event import season_lines
from bot.event import words_season as season_words
from bot.eye import words as eye_words
from bot.eye.buttons import EYE
from bot.food import words_coach as food_words
from bot.food.buttons import FOOD_OF
from bot.membership import words_second as second_words
from bot.membership.buttons import END, SECOND
from bot.people import desk
from bot.people.people import get_person
from bot.people.rights import is_first_coach
from bot.photos import words as photo_words
from bot.photos.buttons import PHOTOS
from bot.plan.next_load.learnt import something_learnt
from bot.plan.next_load.words import learnt_button
from bot.plan.planning import event_line
from bot.replay import words as replay_words
from bot.replay.buttons import WHAT_IF
from bot.safety.buttons import FREEZE, LIFT
from bot.store.tables.people import AthleteProfile, AthleteStatus, Person
from bot.store.tables.week import CheckInRow, EventRow
from bot.timeline import words as timeline_words
from bot.timeline.buttons import TIMELINE
from bot.week.load import current_week, reported_symptoms, target_in_force
from bot.words import coach_figures as figures
from bot.words import common
from bot.words.symptoms import symptom_name


def show_card(turn: OnAthlete) -> None:
    """One athlete, in the place of the message that was tapped."""
    answer(turn)
    desk.roster_left(turn.session, turn.person, turn.incoming)
    text, buttons = card(turn, turn.person, turn.profile)
    rewrite(turn, text, buttons)


def card(turn: Turn, coach: Person, profile: AthleteProfile) -> tuple[str, Buttons]:
    name = get_person(turn.session, profile.person_id).first_name
    own = coach.id == profile.person_id
    (seen,) = look(turn, [profile])
    lines = _card_lines(turn, coach, profile, seen)
    first = is_first_coach(coach, profile)
    learnt = something_learnt(turn.session, profile)
    buttons = [
        *card_lines.open_buttons(turn.session, profile, seen, own=own),
        *_card_buttons(profile, name, own=own, first=first, learnt=learnt),
    ]
    return words.card(name, lines), buttons


def _card_lines(turn: Turn, coach: Person, profile: AthleteProfile, seen: Seen) -> list[str]:
    today, row = seen.today, seen.morning
    week = current_week(turn.session, profile)
    lines = [
        _event_words(profile, seen.event, turn.context),
        season_lines.ahead_line(turn, profile),
    ]
    target = target_in_force(turn.session, week, today) if week is not None else None
    if target is not None:
        water = figures.litres(target.water_l, profile.volume_unit)
        lines.append(words.card_today(today, target.carb_g, water))
    if row is not None:
        lines.append(words.card_morning(morning_line(profile, row)))
    lines += card_lines.looks(turn.session, profile, today)
    told = _also_told(turn.session, profile, row, today)
    lines += [told] if told else []
    decided = decided_line(seen)
    lines += [figures.sentence(decided)] if decided else []
    if profile.zone is not None:
        at = f"{profile.prompt_time:%H:%M}"
        lines.append(words.card_asked(at, profile.zone, always_tomorrow=profile.always_tomorrow))
    if week is not None:
        lines.append(card_lines.limits_line(week, profile))
    lines.append(standing(seen, turn.context, desk.zone_of_coach(turn.session, coach)).state)
    lines += card_lines.open_lines(turn.session, coach, profile, seen.waiting)
    lines.append(card_lines.note_line(turn.session, profile, today))
    lines.append(card_lines.pictures_line(turn.session, profile))
    lines.append(card_lines.contacts_line(turn.session, profile))
    return [line for line in lines if line]


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


def _card_buttons(
    profile: AthleteProfile, name: str, *, own: bool, first: bool, learnt: bool
) -> Buttons:
    number = profile.person_id

    frozen = profile.frozen_at is not None
    freezing = (
        Button(alert_words.lift_button(), LIFT(number))
        if frozen
        else Button(words.freeze_button(), FREEZE(number))
    )
    tomorrow = words.tomorrow_button(always_tomorrow=profile.always_tomorrow)
    rows = [
        [
            Button(common.event_button(), EVENT(number)),
            Button(season_words.season_button(), SEASON(number)),
            Button(words.plan_button(), PLAN(number)),
            Button(words.limits_button(), LIMITS(number)),
        ],
        [
            Button(words.why_button(), WHY(number)),
            Button(common.picture_button(), PICTURE(number)),
            Button(words.answers_button(), ANSWERS(number)),
            Button(history_words.history_button(), HISTORY(number)),
        ],
        [
            Button(common.sheet_button(), PLAN_SHEET(number)),
            Button(photo_words.photos_button(), PHOTOS(number)),
            *([] if own else [Button(eye_words.eye_button(), EYE(number))]),
            *([Button(learnt_button(), LEARNT(number))] if learnt else []),
            Button(common.setup_button(), SETUP(number)),
        ],
        [
            Button(common.calendar_button(), CALENDAR(number)),
            Button(food_words.button(), FOOD_OF(number)),
            Button(debrief_words.button(), DEBRIEF(number)),
            Button(common.files_button(), FILES(number)),
            Button(replay_words.button(), WHAT_IF(number)),
        ],
        [
            Button(comparison_words.button(), WEEKS(number)),
            Button(timeline_words.button(), TIMELINE(number)),
        ],
        [
            Button(words.hand_button(), BY_HAND(number)),
            Button(hold_words.hold_button(), HOLD(number)),
            freezing,
        ],
        [Button(tomorrow, TOMORROW(number)), Button(forecast_words.button(), FORECAST(number))],
        [] if own else [Button(words.message_button(name), MESSAGE(number))],
        [Button(second_words.second_button(), SECOND(number))] if first else [],
        [Button(second_words.end_button(), END(number))] if first and not own else [],
        [Button(words.roster_button(), ROSTER(0))],
    ]
    if profile.status == AthleteStatus.DOCTOR_FIRST:
        rows.insert(0, [Button(words.doctor_button(), DOCTOR(number))])
    return rows
