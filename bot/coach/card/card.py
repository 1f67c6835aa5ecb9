"""One athlete's card: how they stand today, what is open, and all that can be done about them."""

from __future__ import annotations

from datetime import date, timedelta

from sqlalchemy import bindparam
from sqlmodel import Session, col, select

from bot.alerts.alerts import to_acknowledge
from bot.alerts.delivery import second_contact
from bot.coach import words
from bot.coach.buttons import ACKNOWLEDGE, SIGN
from bot.coach.card import pages
from bot.coach.roster.rows import Decided, RosterRow, load_roster_rows
from bot.coach.roster.standing import decided_line, standing
from bot.core.chat.cards import Say
from bot.core.chat.outbox import Button, Buttons
from bot.core.turn import Context, OnAthlete, Turn
from bot.decision.eye import words as eye_words
from bot.decision.signoff import words as signoff_words
from bot.decision.signoff.signoff import morning_line
from bot.event import season
from bot.membership import flow_second
from bot.people import coach_settings
from bot.people.coach_settings import clock_for, moment_for
from bot.people.people import get_person, given_by, name_of
from bot.people.telling import rewrite
from bot.pictures.photos.photo_rows import mornings_of
from bot.plan.planning import event_line
from bot.store.base import id_of
from bot.store.tables.people import AthleteProfile, Person
from bot.store.tables.week import CheckInRow, DecisionRow, EventRow
from bot.week.cases import CLEARED, look_rows, plan_g, reported_symptoms
from bot.week.load import Week, current_week, target_in_force
from bot.words import figures, phases
from bot.words.names import symptom_name
from engine.values.limits import LIMIT_KEYS

NOTES_BACK = timedelta(days=7)
LIMITS_SHOWN = ("carb_floor_g", "carb_ceiling_g", "step_g", "apply_without_asking_g")


def open_lines(
    session: Session, reader: Person, profile: AthleteProfile, waiting: Decided | None
) -> list[str]:
    """A line each for what waits for a word, the worst first; then a freeze."""
    self_coached = reader.id == profile.person_id
    lines = [
        words.card_alert(row.level, row.flag, moment_for(session, reader, profile, row.opened_at))
        for row in to_acknowledge(session, profile.person_id)
    ]
    if waiting is not None and waiting.carb_g is not None and waiting.sign_off_due_at is not None:
        until = clock_for(session, reader, profile, waiting.sign_off_due_at)
        lines.append(
            words.card_waiting(waiting.carb_g, waiting.sets_date, until, self_coached=self_coached)
        )
    if profile.frozen_at is not None:
        lines.append(words.card_frozen(moment_for(session, reader, profile, profile.frozen_at)))
    return lines


def open_buttons(
    session: Session, profile: AthleteProfile, seen: RosterRow, *, self_coached: bool
) -> Buttons:
    """A tap for each of them: acknowledge, approve, another figure, keep the plan."""
    number = profile.person_id
    rows = [
        [
            Button(
                words.card_acknowledge_button(row.level, row.flag), ACKNOWLEDGE(number, id_of(row))
            )
        ]
        for row in to_acknowledge(session, profile.person_id)
    ]
    decision = session.get(DecisionRow, seen.waiting.id) if seen.waiting is not None else None
    if decision is not None and decision.carb_g is not None:
        approve = signoff_words.approve_button(decision.carb_g, self_coached=self_coached)
        keep = signoff_words.keep_button(plan_g(decision))
        rows += [
            [
                Button(approve, SIGN(number, Say.APPROVE, id_of(decision))),
                Button(signoff_words.other_button(), SIGN(number, Say.OTHER, id_of(decision))),
            ],
            [Button(keep, SIGN(number, Say.KEEP, id_of(decision)))],
        ]
    return rows


def limits_line(week: Week, profile: AthleteProfile) -> str:
    """The limits that say how far a morning can move the carbs, in a line."""
    shown = [
        words.card_limit(key, getattr(week.limits, key), profile.volume_unit)
        for key in LIMITS_SHOWN
        if key in LIMIT_KEYS
    ]
    return words.card_limits(", ".join(shown))


def looks(session: Session, profile: AthleteProfile, day: date) -> list[str]:
    """What coaches see of that morning, a line each."""
    return [
        eye_words.sees(name_of(session, row.by_id), row.look, row.sharpness)
        for row in look_rows(session, profile.person_id, day, day)
    ]


# Built once: building a statement costs several times what asking it does.
_NOTES = (
    select(CheckInRow)
    .where(
        CheckInRow.athlete_id == bindparam("athlete"),
        col(CheckInRow.date) < bindparam("today"),
        col(CheckInRow.date) >= bindparam("first"),
        CheckInRow.note != "",
    )
    .order_by(col(CheckInRow.date).desc())
    .limit(1)
)


def pictures_line(session: Session, profile: AthleteProfile) -> str:
    """The newest morning with pictures; "" where there is none."""
    mornings = mornings_of(session, profile.person_id)
    return words.card_pictures(mornings[-1], len(mornings)) if mornings else ""


def note_line(session: Session, profile: AthleteProfile, today: date) -> str:
    """The newest words of the athlete beside a morning's numbers, of the days before today."""
    asked = {"athlete": profile.person_id, "today": today, "first": today - NOTES_BACK}
    row = session.exec(_NOTES, params=asked).first()
    return words.card_note(row.date, row.note) if row is not None else ""


def contacts_line(session: Session, profile: AthleteProfile) -> str:
    """Who coaches, who stands beside, and who is told when nobody answers."""
    coach = get_person(session, profile.coach_id)
    beside = [
        flow_second.beside(name_of(session, row.person_id), row.rights)
        for row in given_by(session, id_of(coach))
        if row.athlete_id in (None, profile.person_id)
    ]
    contact = second_contact(session, coach)
    return words.card_contacts(
        coach.first_name, ", ".join(beside), contact.first_name if contact is not None else ""
    )


def show_card(turn: OnAthlete) -> None:
    """One athlete, in the place of the message that was tapped."""
    coach_settings.roster_left(turn.session, turn.person, turn.incoming)
    rewrite(turn, *card(turn, turn.person, turn.profile))


def card(turn: Turn, coach: Person, profile: AthleteProfile) -> tuple[str, Buttons]:
    name = name_of(turn.session, profile.person_id)
    self_coached = coach.id == profile.person_id
    (seen,) = load_roster_rows(turn, [profile])
    lines = _card_lines(turn, coach, profile, seen)
    buttons = [
        *open_buttons(turn.session, profile, seen, self_coached=self_coached),
        *pages.first_page(pages.of_card(turn, coach, profile), set_up=seen.event is not None),
    ]
    return words.card(name, lines), buttons


def _card_lines(turn: Turn, coach: Person, profile: AthleteProfile, seen: RosterRow) -> list[str]:
    today, row = seen.today, seen.morning
    week = current_week(turn.session, profile)
    lines = [_event_words(profile, seen.event, turn.context), season.ahead_line(turn, profile)]
    target = target_in_force(turn.session, week, today) if week is not None else None
    if week is not None and target is not None:
        phase = phases.of_day(week.plan, week.days_out(today))
        water = figures.volume(target.water_l, profile.volume_unit)
        lines.append(words.card_today(today, target.carb_g, water, phase))
    if row is not None:
        lines.append(words.card_morning(morning_line(profile, row)))
    lines += looks(turn.session, profile, today)
    told = _also_told(turn.session, profile, row, today)
    lines += [told] if told else []
    decided = decided_line(seen)
    lines += [figures.sentence(decided)] if decided else []
    if profile.zone is not None:
        at = f"{profile.prompt_time:%H:%M}"
        lines.append(words.card_asked(at, profile.zone, always_tomorrow=profile.always_tomorrow))
    if week is not None:
        lines.append(limits_line(week, profile))
    lines.append(
        standing(seen, turn.context, coach_settings.zone_of_coach(turn.session, coach)).state
    )
    lines += open_lines(turn.session, coach, profile, seen.waiting)
    lines.append(note_line(turn.session, profile, today))
    lines.append(pictures_line(turn.session, profile))
    lines.append(contacts_line(turn.session, profile))
    return [line for line in lines if line]


def _also_told(
    session: Session, profile: AthleteProfile, row: CheckInRow | None, today: date
) -> str:
    """What the athlete said today beside the numbers, in a line; "" where that is nothing."""
    reported = reported_symptoms(session, profile.person_id, today)
    told = [one for one in reported if not one.startswith(CLEARED)]  # what it was not is no news
    symptoms = [*(row.symptoms if row is not None else ()), *told]
    return words.card_also_told(
        [symptom_name(symptom) for symptom in dict.fromkeys(symptoms)],
        row.gut if row is not None else None,
        row.sleep_h if row is not None else None,
        row.note if row is not None else "",
    )


def _event_words(profile: AthleteProfile, event: EventRow | None, context: Context) -> str:
    return event_line(profile, event, context) if event is not None else words.no_event()
